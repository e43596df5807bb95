-- SPDX-License-Identifier: MIT
--
-- The job book, version 8: what the movements on the shelf were. What 0001 and 0003 say of names, units and words holds
-- here too. Frozen once released.
--
-- stock_move        also its kind: 'bought', 'used', 'lost', 'counted' (a count put it right), 'returned', 'spoiled'; and
--                   the job that it was for, NULL where there is none. `note` is the reason, as somebody said it. A
--                   movement that takes back another has its kind and job. Of those before nobody said a kind: with a
--                   cost they were bought, without one they put the shelf right

ALTER TABLE stock_move ADD COLUMN kind TEXT NOT NULL DEFAULT 'counted';
ALTER TABLE stock_move ADD COLUMN job_id BLOB REFERENCES job (id);
UPDATE stock_move SET kind = 'bought' WHERE cost_micros IS NOT NULL;
CREATE INDEX stock_move_job ON stock_move (job_id, material_id) WHERE job_id IS NOT NULL;
