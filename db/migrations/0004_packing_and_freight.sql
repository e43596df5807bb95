-- SPDX-License-Identifier: MIT
--
-- The job book, version 4: a design's own packing and what its set of templates cost, freight in, and prices of nothing
-- that are meant. What 0001 and 0003 say of names, units and words holds here too;
-- tests/db/schema_test.cpp holds the file to the four pages together. Frozen once released.
--
-- design            also whether it has packing of its own, instead of the shop's; and what its set cost when it was
--                   first cut, templates and work, both NULL until then
-- material          also whether a price of 0 is meant
-- design_packing    that packing, as shop_packing has the shop's; none where the design goes out without any
-- paper_choice      what each choice comes to on a paper that offers several; the paper's own total is that of the one
--                   looked at when it was issued
-- supplier          also what of its shipping a cost carries: 'nothing', 'share' (of the goods' price) or 'spread' (over
--                   the goods of a usual order)

ALTER TABLE design ADD COLUMN has_own_packing INTEGER NOT NULL DEFAULT 0 CHECK (has_own_packing IN (0, 1));
ALTER TABLE design ADD COLUMN set_templates_micros INTEGER
    CHECK (set_templates_micros BETWEEN 0 AND 1000000000000000);
ALTER TABLE design ADD COLUMN set_work_micros INTEGER
    CHECK (set_work_micros BETWEEN 0 AND 1000000000000000 AND (set_work_micros IS NULL) = (set_templates_micros IS NULL));

ALTER TABLE material ADD COLUMN is_meant_as_nothing INTEGER NOT NULL DEFAULT 0 CHECK (is_meant_as_nothing IN (0, 1));

CREATE TABLE design_packing (
    design_id BLOB NOT NULL REFERENCES design (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    material_id BLOB NOT NULL REFERENCES material (id),
    amount INTEGER NOT NULL CHECK (amount BETWEEN 1 AND 1000000000),
    per TEXT NOT NULL,
    PRIMARY KEY (design_id, position)
) STRICT, WITHOUT ROWID;
CREATE INDEX design_packing_material ON design_packing (material_id);

CREATE TABLE paper_choice (
    paper_id BLOB NOT NULL REFERENCES paper (id),
    choice INTEGER NOT NULL CHECK (choice BETWEEN 0 AND 3),
    total_micros INTEGER NOT NULL CHECK (total_micros BETWEEN -1000000000000000 AND 1000000000000000),
    PRIMARY KEY (paper_id, choice)
) STRICT, WITHOUT ROWID;

ALTER TABLE supplier ADD COLUMN freight TEXT NOT NULL DEFAULT 'nothing';
ALTER TABLE supplier ADD COLUMN freight_ppm INTEGER NOT NULL DEFAULT 0 CHECK (freight_ppm BETWEEN 0 AND 1000000);
ALTER TABLE supplier ADD COLUMN usual_order_micros INTEGER NOT NULL DEFAULT 0
    CHECK (usual_order_micros BETWEEN 0 AND 1000000000000000);
