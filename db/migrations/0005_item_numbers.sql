-- SPDX-License-Identifier: MIT
--
-- The job book, version 5: item numbers of packs. What 0001 and 0003 say of names, units and words holds here too.
-- Frozen once released.
--
-- pack              also its item number in the supplier's lists, by which a row of a price list is known again, or
--                   what the list says of it where it has no numbers; an empty text where none is known

ALTER TABLE pack ADD COLUMN item TEXT NOT NULL DEFAULT '';
