-- SPDX-License-Identifier: MIT
--
-- The job book, version 7: change and rounding in the ledger of payments. What 0001 and 0003 say of names, units and
-- words holds here too. Frozen once released.
--
-- payment           also what the row is: 'money', 'change' that was given back of it at once, or 'rounding' that nobody
--                   handed over, because cash has no smaller coins; and of the last two the row of money that they were
--                   made with, NULL where there was none to count out. A row that takes one back has both alike

ALTER TABLE payment ADD COLUMN role TEXT NOT NULL DEFAULT 'money';
ALTER TABLE payment ADD COLUMN part_of BLOB REFERENCES payment (id);
CREATE INDEX payment_part ON payment (part_of) WHERE part_of IS NOT NULL;
