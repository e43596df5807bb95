-- SPDX-License-Identifier: MIT
--
-- The job book, version 2: kits, the drawings of designs, how price lists are read. What 0001 says of names, units and
-- removal holds here too; tests/db/schema_test.cpp holds the file to both pages. Frozen once released.
--
-- It runs with foreign keys off, because the change log, which every row refers to, is made anew with a longer list of
-- what it may speak of; afterwards every reference is gone through.
--
-- kit               materials that a supplier sells together at one price; kit_item: what is in it; kit_tool: what comes
--                   along and is not used up
-- design_artwork    the drawing of a design (its key), with scale and counts; the bytes are in
-- artwork_file      files by their SHA-256, each once, never changed: drawings and their small pictures
-- colour_material   the stone chosen for a colour and size in a drawing
-- csv_columns       how a supplier's (its key) price list is read; csv_column: which heading stands for what

CREATE TABLE change_next (
    seq INTEGER PRIMARY KEY NOT NULL,
    command_id BLOB NOT NULL CHECK (length(command_id) = 16),
    step INTEGER NOT NULL CHECK (step >= 1),
    at TEXT NOT NULL CHECK (length(at) = 24),
    actor TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('make', 'change', 'remove', 'give', 'undo', 'redo')),
    entity TEXT NOT NULL CHECK (entity IN ('shop', 'bench', 'material', 'supplier', 'pack', 'design', 'customer',
                                           'movement', 'quote', 'stage', 'kit', 'artwork', 'colour', 'columns')),
    entity_id BLOB NOT NULL CHECK (length(entity_id) = 16),
    before TEXT NOT NULL,
    after TEXT NOT NULL,
    UNIQUE (command_id, step)
) STRICT;

INSERT INTO change_next (seq, command_id, step, at, actor, kind, entity, entity_id, before, after)
SELECT seq, command_id, step, at, actor, kind, entity, entity_id, before, after FROM change ORDER BY seq;
DROP TABLE change;
ALTER TABLE change_next RENAME TO change;
CREATE INDEX change_of ON change (entity, entity_id, seq);

CREATE TABLE kit (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16),
    name TEXT NOT NULL CHECK (length(name) >= 1),
    supplier_id BLOB NOT NULL REFERENCES supplier (id),
    made_for_id BLOB REFERENCES design (id),
    price_micros INTEGER NOT NULL CHECK (price_micros BETWEEN 0 AND 1000000000000000),
    with_templates_micros INTEGER CHECK (with_templates_micros BETWEEN 0 AND 1000000000000000),
    short_count_ppm INTEGER NOT NULL CHECK (short_count_ppm BETWEEN 0 AND 999999),
    priced_on TEXT CHECK (length(priced_on) = 10),
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq),
    deleted_at TEXT
) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX kit_name ON kit (name COLLATE NOCASE) WHERE deleted_at IS NULL;
CREATE INDEX kit_supplier ON kit (supplier_id);
CREATE INDEX kit_made_for ON kit (made_for_id);

CREATE TABLE kit_item (
    kit_id BLOB NOT NULL REFERENCES kit (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    material_id BLOB NOT NULL REFERENCES material (id),
    amount INTEGER NOT NULL CHECK (amount BETWEEN 1 AND 1000000000),
    PRIMARY KEY (kit_id, position)
) STRICT, WITHOUT ROWID;
CREATE INDEX kit_item_material ON kit_item (material_id);

CREATE TABLE kit_tool (
    kit_id BLOB NOT NULL REFERENCES kit (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    name TEXT NOT NULL CHECK (length(name) >= 1),
    PRIMARY KEY (kit_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE artwork_file (
    digest BLOB PRIMARY KEY NOT NULL CHECK (length(digest) = 32),
    bytes BLOB NOT NULL CHECK (length(bytes) BETWEEN 1 AND 64000000)
) STRICT;

CREATE TABLE design_artwork (
    design_id BLOB PRIMARY KEY NOT NULL REFERENCES design (id),
    file_name TEXT NOT NULL CHECK (length(file_name) >= 1),
    format TEXT NOT NULL CHECK (format IN ('svg', 'dxf')),
    file_digest BLOB NOT NULL REFERENCES artwork_file (digest),
    thumbnail_digest BLOB REFERENCES artwork_file (digest),
    unit_nm INTEGER NOT NULL CHECK (unit_nm BETWEEN 1 AND 1000000000000),
    scale_from TEXT NOT NULL CHECK (scale_from IN ('file', 'proposed', 'typed')),
    unit_name TEXT NOT NULL,
    hole_allowance_nm INTEGER NOT NULL CHECK (hole_allowance_nm BETWEEN 0 AND 1000000000000),
    counts TEXT NOT NULL,
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq),
    deleted_at TEXT
) STRICT, WITHOUT ROWID;
CREATE INDEX design_artwork_file ON design_artwork (file_digest);
CREATE INDEX design_artwork_thumbnail ON design_artwork (thumbnail_digest);

CREATE TABLE colour_material (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16),
    rgb INTEGER NOT NULL CHECK (rgb BETWEEN 0 AND 16777215),
    stone_size TEXT NOT NULL CHECK (length(stone_size) >= 1),
    material_id BLOB NOT NULL REFERENCES material (id),
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq),
    deleted_at TEXT
) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX colour_material_drawn ON colour_material (rgb, stone_size) WHERE deleted_at IS NULL;
CREATE INDEX colour_material_material ON colour_material (material_id);

CREATE TABLE csv_columns (
    supplier_id BLOB PRIMARY KEY NOT NULL REFERENCES supplier (id),
    has_decimal_comma INTEGER NOT NULL CHECK (has_decimal_comma IN (0, 1)),
    row_version INTEGER NOT NULL CHECK (row_version >= 1),
    change_seq INTEGER NOT NULL REFERENCES change (seq),
    deleted_at TEXT
) STRICT, WITHOUT ROWID;

CREATE TABLE csv_column (
    supplier_id BLOB NOT NULL REFERENCES csv_columns (supplier_id),
    position INTEGER NOT NULL CHECK (position >= 0),
    meaning TEXT NOT NULL CHECK (meaning IN ('material', 'pack', 'amount', 'price', 'from-packs')),
    heading TEXT NOT NULL CHECK (length(heading) >= 1),
    PRIMARY KEY (supplier_id, position)
) STRICT, WITHOUT ROWID;
