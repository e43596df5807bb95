-- SPDX-License-Identifier: MIT
--
-- The job book, version 1. This page is the description of the file; tests/db/schema_test.cpp holds the file to it.
-- Frozen once released: later changes go into 0002 and on.
--
-- An ordinary SQLite 3 file (3.37 or later), extension .jobbook, application_id 1397770818 (the letters SPJB),
-- user_version 1, journal_mode DELETE. No triggers, no views, no floats; every table is STRICT.
--
--   id                16 bytes, UUID version 7 (RFC 9562), made by the program
--   *_micros          money, millionths of the book's one currency
--   *_nm              length, nanometres
--   *_ppm             share, parts per million: 8.875 % is 88750
--   *_ms              time spent, milliseconds
--   *_at              moment, UTC, "2026-10-12T09:30:00.000Z";   *_on  day, "2026-10-12"
--   is_*, has_* ...   0 or 1;   position  order in a list, from 0
--   NULL              only where there may be nothing; text that may be missing is ''
--   deleted_at        set when the thing was removed; nothing is ever deleted for real
--   row_version       counts the changes of a row
--   change_seq        the row of the change log that wrote this row last
--
-- change            one row for each thing that an action changed, never altered. `command_id` is the action, `step`
--                   its place in it; `before` and `after` are JSON of the whole thing ('' for none); what a thing is
--                   now is always the `after` of its last row.
-- shop, bench       one row each, with their lists: mark_up_step, rush_step, ladder_quantity, shop_packing, bench_step
-- material          a thing bought and used up; blank_size: the sizes of a blank
-- supplier, pack    who sells, and what they sell; pack_price: price of a pack by number of packs
-- design            with design_stone: stones in one piece
-- customer          with the exemption certificate as filed
-- stock_move        the shelf: what came in (positive) and went out; what lies there is the sum. A movement with
--                   `reverses` takes back that one; both then count for nothing, also in the average cost.
-- quote             a quote and its lines: quote_line, quote_line_stone, quote_line_size. While number is '' it is a
--                   draft. `started_seq` orders quotes, whatever the clock said.
-- counter           the last number given in a year
-- sealed            a quote as it was given: `frozen` is JSON with the order, number, days, total, customer, the
--                   digest of its prices (a row of sealed_part) and the digest of the quote sealed before;
--                   `digest` is the SHA-256 of the bytes of `frozen`.
-- sealed_part       JSON that sealed quotes share, by its SHA-256: a material with its price, the shop, the bench, or
--                   the list of those that made up the prices of one moment.

CREATE TABLE change (
    seq INTEGER PRIMARY KEY NOT NULL,
    command_id BLOB NOT NULL CHECK (length(command_id) = 16),
    step INTEGER NOT NULL CHECK (step >= 1),
    at TEXT NOT NULL CHECK (length(at) = 24),
    actor TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('make', 'change', 'remove', 'give', 'undo', 'redo')),
    entity TEXT NOT NULL CHECK (entity IN ('shop', 'bench', 'material', 'supplier', 'pack', 'design', 'customer',
                                           'movement', 'quote', 'stage')),
    entity_id BLOB NOT NULL CHECK (length(entity_id) = 16),
    before TEXT NOT NULL,
    after TEXT NOT NULL,
    UNIQUE (command_id, step)
) STRICT;
CREATE INDEX change_of ON change (entity, entity_id, seq);

CREATE TABLE material (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16),
    name TEXT NOT NULL CHECK (length(name) >= 1),
    kind TEXT NOT NULL CHECK (kind IN ('stone', 'tape', 'template', 'backing', 'blank', 'packing')),
    basis TEXT NOT NULL CHECK (basis IN ('replacement', 'shelf-average', 'fixed')),
    fixed_price_micros INTEGER NOT NULL CHECK (fixed_price_micros BETWEEN 0 AND 1000000000000000),
    colour TEXT NOT NULL,
    rgb INTEGER NOT NULL CHECK (rgb BETWEEN 0 AND 16777215),
    stone_size TEXT NOT NULL,
    loss_ppm INTEGER NOT NULL CHECK (loss_ppm BETWEEN 0 AND 999999),
    sheet_form TEXT NOT NULL CHECK (sheet_form IN ('sheet', 'roll')),
    width_nm INTEGER NOT NULL CHECK (width_nm BETWEEN 0 AND 1000000000000),
    height_nm INTEGER NOT NULL CHECK (height_nm BETWEEN 0 AND 1000000000000),
    margin_nm INTEGER NOT NULL CHECK (margin_nm BETWEEN 0 AND 1000000000000),
    border_nm INTEGER NOT NULL CHECK (border_nm BETWEEN 0 AND 1000000000000),
    gap_nm INTEGER NOT NULL CHECK (gap_nm BETWEEN 0 AND 1000000000000),
    is_one_way INTEGER NOT NULL CHECK (is_one_way IN (0, 1)),
    share_basis TEXT NOT NULL CHECK (share_basis IN ('whole-sheets', 'by-position')),
    lifts INTEGER NOT NULL CHECK (lifts BETWEEN 1 AND 1000000000),
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq),
    deleted_at TEXT
) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX material_name ON material (name COLLATE NOCASE) WHERE deleted_at IS NULL;

CREATE TABLE blank_size (
    material_id BLOB NOT NULL REFERENCES material (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    name TEXT NOT NULL CHECK (length(name) >= 1),
    extra_cost_micros INTEGER NOT NULL CHECK (extra_cost_micros BETWEEN 0 AND 1000000000000000),
    surcharge_micros INTEGER NOT NULL CHECK (surcharge_micros BETWEEN 0 AND 1000000000000000),
    PRIMARY KEY (material_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE shop (
    only_row INTEGER PRIMARY KEY NOT NULL CHECK (only_row = 1),
    name TEXT NOT NULL,
    lines TEXT NOT NULL,
    terms TEXT NOT NULL,
    care TEXT NOT NULL,
    currency TEXT NOT NULL CHECK (length(currency) = 3),
    paper TEXT NOT NULL CHECK (paper IN ('letter', 'a4')),
    length_unit TEXT NOT NULL CHECK (length_unit IN ('inch', 'millimetre', 'centimetre')),
    temperature_unit TEXT NOT NULL CHECK (temperature_unit IN ('fahrenheit', 'celsius')),
    labour_per_hour_micros INTEGER NOT NULL CHECK (labour_per_hour_micros BETWEEN 0 AND 1000000000000000),
    overhead_per_month_micros INTEGER NOT NULL CHECK (overhead_per_month_micros BETWEEN 0 AND 1000000000000000),
    productive_per_month_ms INTEGER NOT NULL CHECK (productive_per_month_ms BETWEEN 1 AND 36000000000),
    spoilage_ppm INTEGER NOT NULL CHECK (spoilage_ppm BETWEEN 0 AND 999999),
    garment_allowance_micros INTEGER NOT NULL CHECK (garment_allowance_micros BETWEEN 0 AND 1000000000000000),
    rounding_kind TEXT NOT NULL CHECK (rounding_kind IN ('nearest', 'up', 'ending')),
    rounding_step INTEGER NOT NULL CHECK (rounding_step BETWEEN 1 AND 1000000000),
    rounding_ending INTEGER NOT NULL CHECK (rounding_ending BETWEEN 0 AND 99),
    set_up_charge TEXT NOT NULL CHECK (set_up_charge IN ('own-line', 'spread')),
    minimum_order_micros INTEGER NOT NULL CHECK (minimum_order_micros BETWEEN 0 AND 1000000000000000),
    tax_name TEXT NOT NULL,
    tax_ppm INTEGER NOT NULL CHECK (tax_ppm BETWEEN 0 AND 1000000),
    is_tax_inclusive INTEGER NOT NULL CHECK (is_tax_inclusive IN (0, 1)),
    tax_rounding TEXT NOT NULL CHECK (tax_rounding IN ('per-invoice', 'per-line')),
    has_card_fee INTEGER NOT NULL CHECK (has_card_fee IN (0, 1)),
    card_fee_ppm INTEGER NOT NULL CHECK (card_fee_ppm BETWEEN 0 AND 999999),
    card_fee_micros INTEGER NOT NULL CHECK (card_fee_micros BETWEEN 0 AND 1000000000000000),
    deposit_ppm INTEGER NOT NULL CHECK (deposit_ppm BETWEEN 0 AND 1000000),
    deposit_step_micros INTEGER NOT NULL CHECK (deposit_step_micros BETWEEN 0 AND 1000000000000000),
    valid_days INTEGER NOT NULL CHECK (valid_days BETWEEN 0 AND 36500),
    is_ladder_on_sheet INTEGER NOT NULL CHECK (is_ladder_on_sheet IN (0, 1)),
    is_demo INTEGER NOT NULL CHECK (is_demo IN (0, 1)),
    usual_tape_id BLOB REFERENCES material (id),
    usual_template_id BLOB REFERENCES material (id),
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq)
) STRICT;

CREATE TABLE mark_up_step (
    position INTEGER PRIMARY KEY NOT NULL CHECK (position >= 0),
    from_count INTEGER NOT NULL CHECK (from_count BETWEEN 1 AND 1000000000),
    mark_up_ppm INTEGER NOT NULL CHECK (mark_up_ppm BETWEEN -1000000 AND 100000000)
) STRICT;

CREATE TABLE rush_step (
    position INTEGER PRIMARY KEY NOT NULL CHECK (position >= 0),
    days INTEGER NOT NULL CHECK (days BETWEEN 0 AND 36500),
    surcharge_ppm INTEGER NOT NULL CHECK (surcharge_ppm BETWEEN 0 AND 100000000)
) STRICT;

CREATE TABLE ladder_quantity (
    position INTEGER PRIMARY KEY NOT NULL CHECK (position >= 0),
    quantity INTEGER NOT NULL CHECK (quantity BETWEEN 1 AND 1000000000)
) STRICT;

CREATE TABLE shop_packing (
    position INTEGER PRIMARY KEY NOT NULL CHECK (position >= 0),
    material_id BLOB NOT NULL REFERENCES material (id)
) STRICT;

CREATE TABLE bench (
    only_row INTEGER PRIMARY KEY NOT NULL CHECK (only_row = 1),
    press_price_micros INTEGER NOT NULL CHECK (press_price_micros BETWEEN 0 AND 1000000000000000),
    press_salvage_micros INTEGER NOT NULL CHECK (press_salvage_micros BETWEEN 0 AND 1000000000000000),
    press_life INTEGER NOT NULL CHECK (press_life BETWEEN 1 AND 1000000000000),
    platen_width_nm INTEGER NOT NULL CHECK (platen_width_nm BETWEEN 0 AND 1000000000000),
    platen_height_nm INTEGER NOT NULL CHECK (platen_height_nm BETWEEN 0 AND 1000000000000),
    dwell_ms INTEGER NOT NULL CHECK (dwell_ms BETWEEN 0 AND 36000000000),
    handling_ms INTEGER NOT NULL CHECK (handling_ms BETWEEN 0 AND 36000000000),
    warm_up_ms INTEGER NOT NULL CHECK (warm_up_ms BETWEEN 0 AND 36000000000),
    test_presses INTEGER NOT NULL CHECK (test_presses BETWEEN 0 AND 1000000000),
    second_press_ppm INTEGER NOT NULL CHECK (second_press_ppm BETWEEN 0 AND 1000000),
    second_dwell_ms INTEGER NOT NULL CHECK (second_dwell_ms BETWEEN 0 AND 36000000000),
    running_per_hour_micros INTEGER NOT NULL CHECK (running_per_hour_micros BETWEEN 0 AND 1000000000000000),
    temperature_milli INTEGER NOT NULL CHECK (temperature_milli BETWEEN -273150 AND 2000000),
    temperature_unit TEXT NOT NULL CHECK (temperature_unit IN ('fahrenheit', 'celsius')),
    cutter_price_micros INTEGER NOT NULL CHECK (cutter_price_micros BETWEEN 0 AND 1000000000000000),
    cutter_salvage_micros INTEGER NOT NULL CHECK (cutter_salvage_micros BETWEEN 0 AND 1000000000000000),
    cutter_life INTEGER NOT NULL CHECK (cutter_life BETWEEN 1 AND 1000000000000),
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq)
) STRICT;

CREATE TABLE bench_step (
    step TEXT PRIMARY KEY NOT NULL
        CHECK (step IN ('art', 'cut', 'weed', 'set-up', 'brush', 'lift', 'press', 'trim', 'pack')),
    per_job_ms INTEGER NOT NULL CHECK (per_job_ms BETWEEN 0 AND 36000000000),
    per_colour_ms INTEGER NOT NULL CHECK (per_colour_ms BETWEEN 0 AND 36000000000),
    per_piece_ms INTEGER NOT NULL CHECK (per_piece_ms BETWEEN 0 AND 36000000000),
    per_100_stones_ms INTEGER NOT NULL CHECK (per_100_stones_ms BETWEEN 0 AND 36000000000),
    learning_ppm INTEGER NOT NULL CHECK (learning_ppm BETWEEN 500000 AND 1000000)
) STRICT, WITHOUT ROWID;

CREATE TABLE supplier (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16),
    name TEXT NOT NULL CHECK (length(name) >= 1),
    lead_days INTEGER NOT NULL CHECK (lead_days BETWEEN 0 AND 36500),
    shipping_micros INTEGER NOT NULL CHECK (shipping_micros BETWEEN 0 AND 1000000000000000),
    free_from_micros INTEGER CHECK (free_from_micros BETWEEN 0 AND 1000000000000000),
    minimum_micros INTEGER NOT NULL CHECK (minimum_micros BETWEEN 0 AND 1000000000000000),
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq),
    deleted_at TEXT
) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX supplier_name ON supplier (name COLLATE NOCASE) WHERE deleted_at IS NULL;

CREATE TABLE pack (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16),
    material_id BLOB NOT NULL REFERENCES material (id),
    supplier_id BLOB NOT NULL REFERENCES supplier (id),
    name TEXT NOT NULL CHECK (length(name) >= 1),
    amount INTEGER NOT NULL CHECK (amount BETWEEN 1 AND 1000000000),
    is_usual INTEGER NOT NULL CHECK (is_usual IN (0, 1)),
    priced_on TEXT CHECK (length(priced_on) = 10),
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq),
    deleted_at TEXT
) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX pack_name ON pack (material_id, supplier_id, name COLLATE NOCASE) WHERE deleted_at IS NULL;
CREATE UNIQUE INDEX pack_usual ON pack (material_id) WHERE is_usual = 1 AND deleted_at IS NULL;
CREATE INDEX pack_supplier ON pack (supplier_id);

CREATE TABLE pack_price (
    pack_id BLOB NOT NULL REFERENCES pack (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    from_count INTEGER NOT NULL CHECK (from_count BETWEEN 1 AND 1000000000),
    each_micros INTEGER NOT NULL CHECK (each_micros BETWEEN 0 AND 1000000000000000),
    PRIMARY KEY (pack_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE design (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16),
    name TEXT NOT NULL CHECK (length(name) >= 1),
    width_nm INTEGER NOT NULL CHECK (width_nm BETWEEN 0 AND 1000000000000),
    height_nm INTEGER NOT NULL CHECK (height_nm BETWEEN 0 AND 1000000000000),
    has_templates_on_wall INTEGER NOT NULL CHECK (has_templates_on_wall IN (0, 1)),
    planned_pieces INTEGER CHECK (planned_pieces BETWEEN 1 AND 1000000000),
    usual_base_id BLOB REFERENCES material (id),
    art_time_ms INTEGER CHECK (art_time_ms BETWEEN 0 AND 36000000000),
    note TEXT NOT NULL,
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq),
    deleted_at TEXT
) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX design_name ON design (name COLLATE NOCASE) WHERE deleted_at IS NULL;
CREATE INDEX design_base ON design (usual_base_id);

CREATE TABLE design_stone (
    design_id BLOB NOT NULL REFERENCES design (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    material_id BLOB NOT NULL REFERENCES material (id),
    amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000),
    PRIMARY KEY (design_id, position)
) STRICT, WITHOUT ROWID;
CREATE INDEX design_stone_material ON design_stone (material_id);

CREATE TABLE customer (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16),
    name TEXT NOT NULL CHECK (length(name) >= 1),
    contact TEXT NOT NULL,
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
CREATE UNIQUE INDEX customer_name ON customer (name COLLATE NOCASE) WHERE deleted_at IS NULL;

CREATE TABLE stock_move (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16),
    change_seq INTEGER NOT NULL UNIQUE REFERENCES change (seq),
    material_id BLOB NOT NULL REFERENCES material (id),
    amount INTEGER NOT NULL CHECK (amount BETWEEN -1000000000 AND 1000000000 AND amount <> 0),
    cost_micros INTEGER CHECK (cost_micros BETWEEN 0 AND 1000000000000000),
    note TEXT NOT NULL,
    reverses BLOB UNIQUE REFERENCES stock_move (id)
) STRICT, WITHOUT ROWID;
CREATE INDEX stock_move_material ON stock_move (material_id, change_seq);

CREATE TABLE quote (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16),
    started_seq INTEGER NOT NULL UNIQUE REFERENCES change (seq),
    number TEXT NOT NULL,
    stage TEXT NOT NULL
        CHECK (stage IN ('enquiry', 'quoted', 'agreed', 'making', 'ready', 'collected', 'let-go')),
    customer_id BLOB REFERENCES customer (id),
    quoted_on TEXT NOT NULL CHECK (length(quoted_on) = 10),
    wanted_by TEXT CHECK (length(wanted_by) = 10),
    discount_ppm INTEGER CHECK (discount_ppm BETWEEN 0 AND 1000000),
    discount_micros INTEGER CHECK (discount_micros BETWEEN 0 AND 1000000000000000),
    asks_exemption INTEGER NOT NULL CHECK (asks_exemption IN (0, 1)),
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq),
    deleted_at TEXT,
    CHECK (discount_ppm IS NULL OR discount_micros IS NULL)
) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX quote_number ON quote (number) WHERE number <> '';
CREATE INDEX quote_draft ON quote (change_seq) WHERE number = '' AND deleted_at IS NULL;
CREATE INDEX quote_customer ON quote (customer_id);

CREATE TABLE quote_line (
    quote_id BLOB NOT NULL REFERENCES quote (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    id BLOB NOT NULL CHECK (length(id) = 16),
    design_id BLOB REFERENCES design (id),
    title TEXT NOT NULL,
    width_nm INTEGER NOT NULL CHECK (width_nm BETWEEN 0 AND 1000000000000),
    height_nm INTEGER NOT NULL CHECK (height_nm BETWEEN 0 AND 1000000000000),
    onto_id BLOB REFERENCES material (id),
    is_customers_garment INTEGER NOT NULL CHECK (is_customers_garment IN (0, 1)),
    has_templates_on_wall INTEGER NOT NULL CHECK (has_templates_on_wall IN (0, 1)),
    planned_pieces INTEGER CHECK (planned_pieces BETWEEN 1 AND 1000000000),
    art_time_ms INTEGER CHECK (art_time_ms BETWEEN 0 AND 36000000000),
    quantity INTEGER NOT NULL CHECK (quantity BETWEEN 0 AND 1000000000),
    typed_each_micros INTEGER CHECK (typed_each_micros BETWEEN 0 AND 1000000000000000),
    is_taxable INTEGER NOT NULL CHECK (is_taxable IN (0, 1)),
    PRIMARY KEY (quote_id, position)
) STRICT, WITHOUT ROWID;
CREATE INDEX quote_line_design ON quote_line (design_id);
CREATE INDEX quote_line_onto ON quote_line (onto_id);

CREATE TABLE quote_line_stone (
    quote_id BLOB NOT NULL,
    line INTEGER NOT NULL,
    position INTEGER NOT NULL CHECK (position >= 0),
    material_id BLOB REFERENCES material (id),
    amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000),
    PRIMARY KEY (quote_id, line, position),
    FOREIGN KEY (quote_id, line) REFERENCES quote_line (quote_id, position)
) STRICT, WITHOUT ROWID;
CREATE INDEX quote_line_stone_material ON quote_line_stone (material_id);

CREATE TABLE quote_line_size (
    quote_id BLOB NOT NULL,
    line INTEGER NOT NULL,
    position INTEGER NOT NULL CHECK (position >= 0),
    size TEXT NOT NULL,
    amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000),
    PRIMARY KEY (quote_id, line, position),
    FOREIGN KEY (quote_id, line) REFERENCES quote_line (quote_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE counter (
    year INTEGER PRIMARY KEY NOT NULL CHECK (year BETWEEN 1 AND 9999),
    last_number INTEGER NOT NULL CHECK (last_number BETWEEN 1 AND 1000000000)
) STRICT;

CREATE TABLE sealed_part (
    digest BLOB PRIMARY KEY NOT NULL CHECK (length(digest) = 32),
    json TEXT NOT NULL
) STRICT;

CREATE TABLE sealed (
    place INTEGER PRIMARY KEY NOT NULL CHECK (place >= 1),
    quote_id BLOB NOT NULL UNIQUE REFERENCES quote (id),
    number TEXT NOT NULL UNIQUE CHECK (length(number) >= 9),
    total_micros INTEGER NOT NULL CHECK (total_micros BETWEEN -1000000000000000 AND 1000000000000000),
    frozen TEXT NOT NULL,
    digest BLOB NOT NULL UNIQUE CHECK (length(digest) = 32),
    previous_digest BLOB NOT NULL CHECK (length(previous_digest) IN (0, 32))
) STRICT;
