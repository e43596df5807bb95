-- SPDX-License-Identifier: MIT
--
-- The job book, version 6: drafts that revise a given job. What 0001 and 0003 say of names, units and words holds here
-- too. Frozen once released.
--
-- job               also, of a draft that is to become the next revision of a given job, that job and which of its
--                   revisions the draft was begun from; both NULL of any other
-- paper             of a quote that was revised: the number of the first with "-2", "-3" ... behind it, which takes no
--                   number of the series. A quote with a later revision was replaced by that

ALTER TABLE job ADD COLUMN revises_id BLOB REFERENCES job (id);
ALTER TABLE job ADD COLUMN revises_revision INTEGER
    CHECK (revises_revision >= 1 AND (revises_revision IS NULL) = (revises_id IS NULL));
CREATE INDEX job_revises ON job (revises_id) WHERE revises_id IS NOT NULL;
