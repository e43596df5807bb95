-- SPDX-License-Identifier: MIT
--
-- The job book, version 3: the shape of an order and of a job. What 0001 says of names, units and removal holds here
-- too; tests/db/schema_test.cpp holds the file to the three pages together. Frozen once released.
--
-- Whole values are records: JSON with the kind and the version of what it holds (db/records/FORMAT.md says what stands
-- in them, field for field), kept once, by digest, and never changed. Columns are only for what is listed, searched,
-- summed or referred to. Lists of words that grow (kinds, stages, entities, series) carry no CHECK.
--
-- record            a value by the SHA-256 of its salt and its JSON, both as bytes, the salt first. Most have no salt.
--                   What belongs to a person has one of 16 random bytes: the JSON and the salt can be taken out later
--                   (`erased_at`), and whatever names the digest still holds.
-- change            as before, but `before` and `after` are digests of records, NULL for none
-- shop, bench       one row each: `digest` is all of it; of the shop besides what it refers to, with
-- shop_packing      what goes with each piece ('piece') or each order ('order'), so many of it
-- tax_rate          the rates of tax by name; the first is the usual one. A line of an order names one, '' for the usual
-- customer          also telephone, mail, language ('' for the shop's) and the one it was merged into. Two may have a name
-- job               what is asked for, from enquiry to collected. `number` is that of its newest quote, '' while none was
--                   issued (a draft); `revision` the newest. `started_seq` orders jobs, whatever the clock said.
-- revision          of a job, numbered from 1: `order_digest` is its order, `choice_taken` which of its choices the
--                   customer took, from 0, NULL while none
-- job_line          of each revision's order, by choice and line, one row for each place that is worked on (one row
--                   for a line without any), for lists, search and sums
-- paper             what was issued for a revision: 'quote', later 'invoice', 'receipt' ... Numbers are those of a
--                   series. `until_on`: the last day of a quote, the day an invoice is due. `result`: whether what it
--                   came to is 'sealed' as well; of papers of versions 1 and 2 it is 'open' until it is, or 'lost'
-- seal              what a paper says, sealed: the record `digest`, which also holds `previous_digest`, that of the seal
--                   before, so that none can be altered, exchanged or taken out unseen. `kind` is 'paper', or 'result'
--                   for what was put under a seal of its own after the paper was issued (papers of versions 1 and 2)
-- series            the last number of a series in a year
-- payment           a ledger: received is positive, given back negative; `kind` as the shop names it. A payment is never
--                   changed, only taken back by one that `reverses` it. One without a job is a customer's credit
--
-- An order, in its record: for whom and when, and up to four choices, each with its discount and lines. A line is a
-- 'piece' (a blank or a film, or the customer's own garment) or a 'charge' without stones; it has its quantity and
-- sizes, whether it is at no charge, its tax rate by name, and the places that are worked on (front, back, sleeve), each
-- with design, size, stones, state of the template and position on the blank, and its entries: name, number, size and
-- stones of their own. Before version 3 an order was one choice and each of its lines had one place.

CREATE TABLE record (
    digest BLOB PRIMARY KEY NOT NULL CHECK (length(digest) = 32),
    salt BLOB NOT NULL CHECK (length(salt) IN (0, 16)),
    json TEXT NOT NULL,
    erased_at TEXT
) STRICT;

-- What was given, and what shares its prices, keeps its digest.
INSERT INTO record (digest, salt, json) SELECT digest, x'', json FROM sealed_part;
INSERT OR IGNORE INTO record (digest, salt, json) SELECT digest, x'', frozen FROM sealed ORDER BY place;

CREATE TABLE change_next (
    seq INTEGER PRIMARY KEY NOT NULL,
    command_id BLOB NOT NULL CHECK (length(command_id) = 16),
    step INTEGER NOT NULL CHECK (step >= 1),
    at TEXT NOT NULL CHECK (length(at) = 24),
    actor TEXT NOT NULL,
    kind TEXT NOT NULL,
    entity TEXT NOT NULL,
    entity_id BLOB NOT NULL CHECK (length(entity_id) = 16),
    before BLOB REFERENCES record (digest),
    after BLOB REFERENCES record (digest),
    UNIQUE (command_id, step)
) STRICT;

INSERT OR IGNORE INTO record (digest, salt, json)
SELECT sha256(after), x'', after FROM change WHERE after <> '' ORDER BY seq;
INSERT OR IGNORE INTO record (digest, salt, json)
SELECT sha256(before), x'', before FROM change WHERE before <> '' ORDER BY seq;
INSERT INTO change_next (seq, command_id, step, at, actor, kind, entity, entity_id, before, after)
SELECT seq, command_id, step, at, actor, kind, entity, entity_id,
       iif(before = '', NULL, sha256(before)), iif(after = '', NULL, sha256(after))
FROM change ORDER BY seq;
DROP TABLE change;
ALTER TABLE change_next RENAME TO change;
CREATE INDEX change_of ON change (entity, entity_id, seq);

-- Words without a list of what they may be.

CREATE TABLE material_next (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16),
    name TEXT NOT NULL CHECK (length(name) >= 1),
    kind TEXT NOT NULL,
    basis TEXT NOT NULL,
    fixed_price_micros INTEGER NOT NULL CHECK (fixed_price_micros BETWEEN 0 AND 1000000000000000),
    colour TEXT NOT NULL,
    rgb INTEGER NOT NULL CHECK (rgb BETWEEN 0 AND 16777215),
    stone_size TEXT NOT NULL,
    loss_ppm INTEGER NOT NULL CHECK (loss_ppm BETWEEN 0 AND 999999),
    sheet_form TEXT NOT NULL,
    width_nm INTEGER NOT NULL CHECK (width_nm BETWEEN 0 AND 1000000000000),
    height_nm INTEGER NOT NULL CHECK (height_nm BETWEEN 0 AND 1000000000000),
    margin_nm INTEGER NOT NULL CHECK (margin_nm BETWEEN 0 AND 1000000000000),
    border_nm INTEGER NOT NULL CHECK (border_nm BETWEEN 0 AND 1000000000000),
    gap_nm INTEGER NOT NULL CHECK (gap_nm BETWEEN 0 AND 1000000000000),
    is_one_way INTEGER NOT NULL CHECK (is_one_way IN (0, 1)),
    share_basis TEXT NOT NULL,
    lifts INTEGER NOT NULL CHECK (lifts BETWEEN 1 AND 1000000000),
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq),
    deleted_at TEXT
) STRICT, WITHOUT ROWID;
INSERT INTO material_next
SELECT id, name, kind, basis, fixed_price_micros, colour, rgb, stone_size, loss_ppm, sheet_form, width_nm, height_nm,
       margin_nm, border_nm, gap_nm, is_one_way, share_basis, lifts, row_version, change_seq, deleted_at
FROM material ORDER BY id;
DROP TABLE material;
ALTER TABLE material_next RENAME TO material;
CREATE UNIQUE INDEX material_name ON material (name COLLATE NOCASE) WHERE deleted_at IS NULL;

CREATE TABLE design_artwork_next (
    design_id BLOB PRIMARY KEY NOT NULL REFERENCES design (id),
    file_name TEXT NOT NULL CHECK (length(file_name) >= 1),
    format TEXT NOT NULL,
    file_digest BLOB NOT NULL REFERENCES artwork_file (digest),
    thumbnail_digest BLOB REFERENCES artwork_file (digest),
    unit_nm INTEGER NOT NULL CHECK (unit_nm BETWEEN 1 AND 1000000000000),
    scale_from TEXT NOT NULL,
    unit_name TEXT NOT NULL,
    hole_allowance_nm INTEGER NOT NULL CHECK (hole_allowance_nm BETWEEN 0 AND 1000000000000),
    counts TEXT NOT NULL,
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq),
    deleted_at TEXT
) STRICT, WITHOUT ROWID;
INSERT INTO design_artwork_next
SELECT design_id, file_name, format, file_digest, thumbnail_digest, unit_nm, scale_from, unit_name, hole_allowance_nm,
       counts, row_version, change_seq, deleted_at
FROM design_artwork ORDER BY design_id;
DROP TABLE design_artwork;
ALTER TABLE design_artwork_next RENAME TO design_artwork;
CREATE INDEX design_artwork_file ON design_artwork (file_digest);
CREATE INDEX design_artwork_thumbnail ON design_artwork (thumbnail_digest);

CREATE TABLE csv_column_next (
    supplier_id BLOB NOT NULL REFERENCES csv_columns (supplier_id),
    position INTEGER NOT NULL CHECK (position >= 0),
    meaning TEXT NOT NULL,
    heading TEXT NOT NULL CHECK (length(heading) >= 1),
    PRIMARY KEY (supplier_id, position)
) STRICT, WITHOUT ROWID;
INSERT INTO csv_column_next SELECT supplier_id, position, meaning, heading FROM csv_column ORDER BY supplier_id, position;
DROP TABLE csv_column;
ALTER TABLE csv_column_next RENAME TO csv_column;

CREATE TABLE customer_next (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16),
    name TEXT NOT NULL CHECK (length(name) >= 1),
    contact TEXT NOT NULL,
    telephone TEXT NOT NULL DEFAULT '',
    mail TEXT NOT NULL DEFAULT '',
    language TEXT NOT NULL DEFAULT '',
    merged_into_id BLOB REFERENCES customer (id),
    certificate_number TEXT,
    certificate_place TEXT,
    certificate_issued_on TEXT CHECK (length(certificate_issued_on) = 10),
    certificate_expires_on TEXT CHECK (length(certificate_expires_on) = 10),
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq),
    deleted_at TEXT,
    CHECK ((certificate_number IS NULL) = (certificate_place IS NULL)),
    CHECK ((certificate_number IS NULL) = (certificate_issued_on IS NULL)),
    CHECK (certificate_expires_on IS NULL OR certificate_number IS NOT NULL)
) STRICT, WITHOUT ROWID;
INSERT INTO customer_next (id, name, contact, certificate_number, certificate_place, certificate_issued_on,
                           certificate_expires_on, row_version, change_seq, deleted_at)
SELECT id, name, contact, certificate_number, certificate_place, certificate_issued_on, certificate_expires_on,
       row_version, change_seq, deleted_at
FROM customer ORDER BY id;
DROP TABLE customer;
ALTER TABLE customer_next RENAME TO customer;
CREATE INDEX customer_name ON customer (name COLLATE NOCASE);
CREATE INDEX customer_merged ON customer (merged_into_id);

-- The shop and the bench as records of version 1, from their rows.

CREATE TABLE shop_next (
    only_row INTEGER PRIMARY KEY NOT NULL CHECK (only_row = 1),
    digest BLOB NOT NULL REFERENCES record (digest),
    usual_tape_id BLOB REFERENCES material (id),
    usual_template_id BLOB REFERENCES material (id),
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq)
) STRICT;

CREATE TEMP TABLE shop_json AS
SELECT ('{"format":1,"kind":"shop","value":{"currency":' || json_quote(currency)
        || ',"demo":' || iif(is_demo, 'true', 'false')
        || ',"ladder_on_sheet":' || iif(is_ladder_on_sheet, 'true', 'false')
        || ',"ladder_quantities":['
        || coalesce((SELECT group_concat(quantity) FROM (SELECT quantity FROM ladder_quantity ORDER BY position)), '')
        || '],"length_unit":' || json_quote(length_unit))
    || (',"letterhead":{"care":' || json_quote(care) || ',"lines":' || json_quote(lines)
        || ',"name":' || json_quote(name) || ',"terms":' || json_quote(terms)
        || '},"packing":['
        || coalesce((SELECT group_concat('"' || id_text(material_id) || '"')
                     FROM (SELECT material_id FROM shop_packing ORDER BY position)), '')
        || '],"paper":' || json_quote(paper))
    || (',"rates":{"garment_allowance_micros":' || garment_allowance_micros
        || ',"labour_per_hour_micros":' || labour_per_hour_micros
        || ',"overhead_per_month_micros":' || overhead_per_month_micros
        || ',"productive_per_month_ms":' || productive_per_month_ms
        || ',"spoilage_ppm":' || spoilage_ppm)
    || ('},"rules":{"card_fee":{"charged":' || iif(has_card_fee, 'true', 'false')
        || ',"fixed_micros":' || card_fee_micros || ',"rate_ppm":' || card_fee_ppm
        || '},"deposit_ppm":' || deposit_ppm || ',"deposit_step_micros":' || deposit_step_micros
        || ',"ladder":['
        || coalesce((SELECT group_concat('{"from":' || from_count || ',"mark_up_ppm":' || mark_up_ppm || '}')
                     FROM (SELECT from_count, mark_up_ppm FROM mark_up_step ORDER BY position)), ''))
    || ('],"minimum_order_micros":' || minimum_order_micros
        || ',"rounding":{"ending":' || rounding_ending || ',"kind":' || json_quote(rounding_kind)
        || ',"step":' || rounding_step
        || '},"rush":['
        || coalesce((SELECT group_concat('{"days":' || days || ',"surcharge_ppm":' || surcharge_ppm || '}')
                     FROM (SELECT days, surcharge_ppm FROM rush_step ORDER BY position)), '')
        || '],"set_up":' || json_quote(set_up_charge))
    || (',"tax":{"inclusive":' || iif(is_tax_inclusive, 'true', 'false') || ',"name":' || json_quote(tax_name)
        || ',"rate_ppm":' || tax_ppm || ',"rounding":' || json_quote(tax_rounding)
        || '},"valid_days":' || valid_days || '}')
    || (',"temperature_unit":' || json_quote(temperature_unit)
        || ',"usual_tape":' || coalesce('"' || id_text(usual_tape_id) || '"', 'null')
        || ',"usual_template":' || coalesce('"' || id_text(usual_template_id) || '"', 'null')
        || '}}') AS json
FROM shop;
INSERT OR IGNORE INTO record (digest, salt, json) SELECT sha256(json), x'', json FROM temp.shop_json;
INSERT INTO shop_next (only_row, digest, usual_tape_id, usual_template_id, row_version, change_seq)
SELECT 1, sha256(json), usual_tape_id, usual_template_id, row_version, change_seq FROM shop, temp.shop_json;
DROP TABLE temp.shop_json;

CREATE TABLE tax_rate (
    position INTEGER PRIMARY KEY NOT NULL CHECK (position >= 0),
    name TEXT NOT NULL,
    rate_ppm INTEGER NOT NULL CHECK (rate_ppm BETWEEN 0 AND 1000000)
) STRICT;
INSERT INTO tax_rate (position, name, rate_ppm) SELECT 0, tax_name, tax_ppm FROM shop;

CREATE TABLE shop_packing_next (
    position INTEGER PRIMARY KEY NOT NULL CHECK (position >= 0),
    material_id BLOB NOT NULL REFERENCES material (id),
    amount INTEGER NOT NULL CHECK (amount BETWEEN 1 AND 1000000000),
    per TEXT NOT NULL
) STRICT;
INSERT INTO shop_packing_next (position, material_id, amount, per)
SELECT position, material_id, 1, 'piece' FROM shop_packing ORDER BY position;
DROP TABLE shop_packing;
ALTER TABLE shop_packing_next RENAME TO shop_packing;
DROP TABLE mark_up_step;
DROP TABLE rush_step;
DROP TABLE ladder_quantity;
DROP TABLE shop;
ALTER TABLE shop_next RENAME TO shop;

CREATE TABLE bench_next (
    only_row INTEGER PRIMARY KEY NOT NULL CHECK (only_row = 1),
    digest BLOB NOT NULL REFERENCES record (digest),
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq)
) STRICT;

CREATE TEMP TABLE bench_json AS
SELECT ('{"format":1,"kind":"bench","value":{"cutter":{"life_holes":' || cutter_life
        || ',"price_micros":' || cutter_price_micros || ',"salvage_micros":' || cutter_salvage_micros)
    || ('},"press":{"dwell_ms":' || dwell_ms || ',"handling_ms":' || handling_ms || ',"life_presses":' || press_life)
    || (',"platen_height_nm":' || platen_height_nm || ',"platen_width_nm":' || platen_width_nm
        || ',"price_micros":' || press_price_micros || ',"running_per_hour_micros":' || running_per_hour_micros)
    || (',"salvage_micros":' || press_salvage_micros || ',"second_dwell_ms":' || second_dwell_ms
        || ',"second_press_ppm":' || second_press_ppm)
    || (',"temperature":{"milli":' || temperature_milli || ',"unit":' || json_quote(temperature_unit)
        || '},"test_presses":' || test_presses || ',"warm_up_ms":' || warm_up_ms || '},"steps":{')
    || coalesce((SELECT group_concat(json) FROM (
        SELECT (json_quote(step) || ':{"learning_ppm":' || learning_ppm
                || ',"per_100_stones_ms":' || per_100_stones_ms)
            || (',"per_colour_ms":' || per_colour_ms || ',"per_job_ms":' || per_job_ms
                || ',"per_piece_ms":' || per_piece_ms || '}') AS json
        FROM bench_step ORDER BY step)), '')
    || '}}}' AS json
FROM bench;
INSERT OR IGNORE INTO record (digest, salt, json) SELECT sha256(json), x'', json FROM temp.bench_json;
INSERT INTO bench_next (only_row, digest, row_version, change_seq)
SELECT 1, sha256(json), row_version, change_seq FROM bench, temp.bench_json;
DROP TABLE temp.bench_json;
DROP TABLE bench_step;
DROP TABLE bench;
ALTER TABLE bench_next RENAME TO bench;

-- Jobs from quotes: their orders as records of version 1, from their rows.

CREATE TABLE job (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16),
    started_seq INTEGER NOT NULL UNIQUE REFERENCES change (seq),
    number TEXT NOT NULL,
    stage TEXT NOT NULL,
    customer_id BLOB REFERENCES customer (id),
    quoted_on TEXT NOT NULL CHECK (length(quoted_on) = 10),
    wanted_by TEXT CHECK (length(wanted_by) = 10),
    revision INTEGER NOT NULL CHECK (revision >= 1),
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq),
    deleted_at TEXT
) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX job_number ON job (number) WHERE number <> '';
CREATE INDEX job_draft ON job (change_seq) WHERE number = '' AND deleted_at IS NULL;
CREATE INDEX job_customer ON job (customer_id);
INSERT INTO job (id, started_seq, number, stage, customer_id, quoted_on, wanted_by, revision, row_version, change_seq,
                 deleted_at)
SELECT id, started_seq, number, stage, customer_id, quoted_on, wanted_by, 1, row_version, change_seq, deleted_at
FROM quote ORDER BY id;

CREATE TABLE revision (
    job_id BLOB NOT NULL REFERENCES job (id),
    number INTEGER NOT NULL CHECK (number >= 1),
    order_digest BLOB NOT NULL REFERENCES record (digest),
    choice_taken INTEGER CHECK (choice_taken BETWEEN 0 AND 3),
    PRIMARY KEY (job_id, number)
) STRICT, WITHOUT ROWID;

CREATE TEMP TABLE stone_json (quote_id BLOB, line INTEGER, json TEXT, PRIMARY KEY (quote_id, line)) WITHOUT ROWID;
INSERT INTO temp.stone_json (quote_id, line, json)
SELECT quote_id, line, group_concat(json) FROM (
    SELECT quote_id, line,
        '{"count":' || amount || ',"material":' || coalesce('"' || id_text(material_id) || '"', 'null') || '}' AS json
    FROM quote_line_stone ORDER BY quote_id, line, position)
GROUP BY quote_id, line;

CREATE TEMP TABLE size_json (quote_id BLOB, line INTEGER, json TEXT, PRIMARY KEY (quote_id, line)) WITHOUT ROWID;
INSERT INTO temp.size_json (quote_id, line, json)
SELECT quote_id, line, group_concat(json) FROM (
    SELECT quote_id, line, '{"count":' || amount || ',"size":' || json_quote(size) || '}' AS json
    FROM quote_line_size ORDER BY quote_id, line, position)
GROUP BY quote_id, line;

CREATE TEMP TABLE line_json (quote_id BLOB, position INTEGER, json TEXT, PRIMARY KEY (quote_id, position)) WITHOUT ROWID;
INSERT INTO temp.line_json (quote_id, position, json)
SELECT l.quote_id, l.position,
    ('{"art_time_ms":' || coalesce(l.art_time_ms, 'null')
        || ',"customers_garment":' || iif(l.is_customers_garment, 'true', 'false')
        || ',"design":' || coalesce('"' || id_text(l.design_id) || '"', 'null'))
    || (',"height_nm":' || l.height_nm
        || ',"id":' || iif(l.id = zeroblob(16), 'null', '"' || id_text(l.id) || '"')
        || ',"onto":' || coalesce('"' || id_text(l.onto_id) || '"', 'null'))
    || (',"planned_pieces":' || coalesce(l.planned_pieces, 'null')
        || ',"quantity":' || l.quantity
        || ',"sizes":[' || coalesce(z.json, '') || '],"stones":[' || coalesce(s.json, ''))
    || ('],"taxable":' || iif(l.is_taxable, 'true', 'false')
        || ',"templates_on_wall":' || iif(l.has_templates_on_wall, 'true', 'false')
        || ',"title":' || json_quote(l.title))
    || (',"typed_each_micros":' || coalesce(l.typed_each_micros, 'null')
        || ',"width_nm":' || l.width_nm || '}')
FROM quote_line l
LEFT JOIN temp.stone_json s ON s.quote_id = l.quote_id AND s.line = l.position
LEFT JOIN temp.size_json z ON z.quote_id = l.quote_id AND z.line = l.position
ORDER BY l.quote_id, l.position;

CREATE TEMP TABLE order_json (id BLOB PRIMARY KEY, json TEXT) WITHOUT ROWID;
INSERT INTO temp.order_json (id, json)
SELECT q.id,
    ('{"format":1,"kind":"order","value":{"asks_exemption":' || iif(q.asks_exemption, 'true', 'false')
        || ',"customer":' || coalesce('"' || id_text(q.customer_id) || '"', 'null')
        || ',"discount":{"amount_micros":' || coalesce(q.discount_micros, 'null')
        || ',"share_ppm":' || coalesce(q.discount_ppm, 'null') || '},"lines":[')
    || coalesce((SELECT group_concat(json) FROM (
        SELECT json FROM temp.line_json WHERE quote_id = q.id ORDER BY position)), '')
    || ('],"quoted_on":' || json_quote(q.quoted_on)
        || ',"wanted_by":' || coalesce(json_quote(q.wanted_by), 'null') || '}}')
FROM quote q ORDER BY q.id;
INSERT OR IGNORE INTO record (digest, salt, json) SELECT sha256(json), x'', json FROM temp.order_json ORDER BY id;
INSERT INTO revision (job_id, number, order_digest, choice_taken)
SELECT id, 1, sha256(json), NULL FROM temp.order_json ORDER BY id;
DROP TABLE temp.order_json;
DROP TABLE temp.line_json;
DROP TABLE temp.size_json;
DROP TABLE temp.stone_json;

CREATE TABLE job_line (
    job_id BLOB NOT NULL,
    revision INTEGER NOT NULL,
    choice INTEGER NOT NULL CHECK (choice BETWEEN 0 AND 3),
    line INTEGER NOT NULL CHECK (line >= 0),
    place INTEGER NOT NULL CHECK (place >= 0),
    title TEXT NOT NULL,
    design_id BLOB REFERENCES design (id),
    onto_id BLOB REFERENCES material (id),
    quantity INTEGER NOT NULL CHECK (quantity BETWEEN 0 AND 1000000000),
    PRIMARY KEY (job_id, revision, choice, line, place),
    FOREIGN KEY (job_id, revision) REFERENCES revision (job_id, number)
) STRICT, WITHOUT ROWID;
CREATE INDEX job_line_design ON job_line (design_id);
CREATE INDEX job_line_onto ON job_line (onto_id);
INSERT INTO job_line (job_id, revision, choice, line, place, title, design_id, onto_id, quantity)
SELECT quote_id, 1, 0, position, 0, title, design_id, onto_id, quantity FROM quote_line ORDER BY quote_id, position;

CREATE TABLE paper (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16),
    job_id BLOB NOT NULL,
    revision INTEGER NOT NULL,
    kind TEXT NOT NULL,
    series TEXT NOT NULL,
    number TEXT NOT NULL CHECK (length(number) >= 1),
    issued_on TEXT NOT NULL CHECK (length(issued_on) = 10),
    until_on TEXT,
    total_micros INTEGER NOT NULL CHECK (total_micros BETWEEN -1000000000000000 AND 1000000000000000),
    result TEXT NOT NULL,
    UNIQUE (series, number),
    FOREIGN KEY (job_id, revision) REFERENCES revision (job_id, number)
) STRICT, WITHOUT ROWID;
CREATE INDEX paper_job ON paper (job_id, revision);
CREATE INDEX paper_open ON paper (issued_on, id) WHERE result = 'open';
INSERT INTO paper (id, job_id, revision, kind, series, number, issued_on, until_on, total_micros, result)
SELECT s.quote_id, s.quote_id, 1, 'quote', 'quote', s.number, q.quoted_on,
       iif(json_valid(s.frozen), json_extract(s.frozen, '$.value.valid_until'), NULL), s.total_micros, 'open'
FROM sealed s JOIN quote q ON q.id = s.quote_id ORDER BY s.place;

CREATE TABLE seal (
    place INTEGER PRIMARY KEY NOT NULL CHECK (place >= 1),
    paper_id BLOB NOT NULL REFERENCES paper (id),
    kind TEXT NOT NULL,
    digest BLOB NOT NULL UNIQUE REFERENCES record (digest),
    previous_digest BLOB NOT NULL CHECK (length(previous_digest) IN (0, 32)),
    UNIQUE (paper_id, kind)
) STRICT;
INSERT INTO seal (place, paper_id, kind, digest, previous_digest)
SELECT place, quote_id, 'paper', digest, previous_digest FROM sealed ORDER BY place;

CREATE TABLE series (
    name TEXT NOT NULL CHECK (length(name) >= 1),
    year INTEGER NOT NULL CHECK (year BETWEEN 1 AND 9999),
    last_number INTEGER NOT NULL CHECK (last_number BETWEEN 1 AND 1000000000),
    PRIMARY KEY (name, year)
) STRICT, WITHOUT ROWID;
INSERT INTO series (name, year, last_number) SELECT 'quote', year, last_number FROM counter ORDER BY year;

CREATE TABLE payment (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16),
    change_seq INTEGER NOT NULL UNIQUE REFERENCES change (seq),
    job_id BLOB REFERENCES job (id),
    customer_id BLOB REFERENCES customer (id),
    kind TEXT NOT NULL,
    amount_micros INTEGER NOT NULL CHECK (amount_micros BETWEEN -1000000000000000 AND 1000000000000000),
    paid_on TEXT NOT NULL CHECK (length(paid_on) = 10),
    note TEXT NOT NULL,
    reverses BLOB UNIQUE REFERENCES payment (id)
) STRICT, WITHOUT ROWID;
CREATE INDEX payment_job ON payment (job_id);
CREATE INDEX payment_customer ON payment (customer_id);

DROP TABLE sealed;
DROP TABLE sealed_part;
DROP TABLE counter;
DROP TABLE quote_line_stone;
DROP TABLE quote_line_size;
DROP TABLE quote_line;
DROP TABLE quote;
