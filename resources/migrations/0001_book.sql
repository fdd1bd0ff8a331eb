-- The book, version 1.
-- Days are ISO text; quantities integers of the smallest unit: quarter frames (_q), hundredths of a kilogram (_dag),
-- millimetres (_mm). Not recorded is NULL, never zero and never an empty text. A `key` is the name or label after
-- Unicode simple case folding: names are unique without regard to case. Sources of the box sizes: a list of hive sizes
-- (Langstroth), an open textbook (National); where a size is not known it is NULL.
-- The runner splits at a semicolon that ends a line.

CREATE TABLE book (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    uuid TEXT NOT NULL CHECK (length(uuid) = 36)
) STRICT;

CREATE TABLE yard (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 60 AND name = trim(name)),
    key TEXT NOT NULL UNIQUE CHECK (key <> ''),
    latitude_deg REAL CHECK (latitude_deg BETWEEN -90 AND 90),
    longitude_deg REAL CHECK (longitude_deg BETWEEN -180 AND 180),
    gate_x_mm INTEGER CHECK (gate_x_mm BETWEEN -10000000 AND 10000000),
    gate_y_mm INTEGER CHECK (gate_y_mm BETWEEN -10000000 AND 10000000),
    note TEXT CHECK (note <> ''),
    closed INTEGER NOT NULL CHECK (closed IN (0, 1))
) STRICT;

CREATE TABLE stand (
    id INTEGER PRIMARY KEY,
    yard INTEGER NOT NULL REFERENCES yard (id),
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 60 AND name = trim(name)),
    key TEXT NOT NULL CHECK (key <> ''),
    x_mm INTEGER NOT NULL CHECK (x_mm BETWEEN -10000000 AND 10000000),
    y_mm INTEGER NOT NULL CHECK (y_mm BETWEEN -10000000 AND 10000000),
    removed INTEGER NOT NULL CHECK (removed IN (0, 1)),
    UNIQUE (yard, key)
) STRICT;

CREATE TABLE box_kind (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 60 AND name = trim(name)),
    key TEXT NOT NULL UNIQUE CHECK (key <> ''),
    frames INTEGER NOT NULL CHECK (frames BETWEEN 1 AND 24),
    width_mm INTEGER CHECK (width_mm BETWEEN 1 AND 2000),
    length_mm INTEGER CHECK (length_mm BETWEEN 1 AND 2000),
    height_mm INTEGER CHECK (height_mm BETWEEN 1 AND 2000),
    tare_dag INTEGER CHECK (tare_dag BETWEEN 0 AND 10000)
) STRICT;

CREATE TABLE colony (
    id INTEGER PRIMARY KEY,
    label TEXT NOT NULL CHECK (length(label) BETWEEN 1 AND 60 AND label = trim(label) AND instr(label, '@') = 0),
    key TEXT NOT NULL CHECK (key <> ''),
    since TEXT NOT NULL CHECK (since > '0001' AND date(since) IS since),
    ended TEXT CHECK (ended >= since AND date(ended) IS ended),
    end_kind TEXT CHECK (end_kind IN ('dead', 'destroyed', 'united', 'shaken-out', 'sold')),
    box INTEGER NOT NULL REFERENCES box_kind (id),
    brood_boxes INTEGER NOT NULL CHECK (brood_boxes IN (1, 2)),
    queen_born INTEGER CHECK (queen_born BETWEEN 1990 AND 2100),
    note TEXT CHECK (note <> ''),
    UNIQUE (key, since),
    CHECK ((ended IS NULL) = (end_kind IS NULL))
) STRICT;
CREATE UNIQUE INDEX colony_living_label ON colony (key) WHERE ended IS NULL;
CREATE INDEX colony_box ON colony (box);

CREATE TABLE placement (
    id INTEGER PRIMARY KEY,
    colony INTEGER NOT NULL REFERENCES colony (id),
    stand INTEGER NOT NULL REFERENCES stand (id),
    heading_deg INTEGER CHECK (heading_deg BETWEEN 0 AND 359),
    since TEXT NOT NULL CHECK (since > '0001' AND date(since) IS since),
    until TEXT CHECK (until >= since AND date(until) IS until),
    first INTEGER NOT NULL CHECK (first IN (0, 1))
) STRICT;
CREATE UNIQUE INDEX placement_first ON placement (colony) WHERE first = 1;
CREATE UNIQUE INDEX placement_carried ON placement (colony, since) WHERE first = 0;
CREATE UNIQUE INDEX placement_open_colony ON placement (colony) WHERE until IS NULL;
CREATE UNIQUE INDEX placement_open_stand ON placement (stand) WHERE until IS NULL;
CREATE INDEX placement_stand ON placement (stand, since);

CREATE TABLE visit (
    id INTEGER PRIMARY KEY,
    colony INTEGER NOT NULL REFERENCES colony (id),
    day TEXT NOT NULL CHECK (day > '0001' AND date(day) IS day),
    boxes INTEGER CHECK (boxes IN (1, 2)),
    bees_top_q INTEGER CHECK (bees_top_q BETWEEN 0 AND 96),
    bees_bottom_q INTEGER CHECK (bees_bottom_q BETWEEN 0 AND 96),
    upper_bees_top_q INTEGER CHECK (upper_bees_top_q BETWEEN 0 AND 96),
    upper_bees_bottom_q INTEGER CHECK (upper_bees_bottom_q BETWEEN 0 AND 96),
    stores_q INTEGER CHECK (stores_q BETWEEN 0 AND 96),
    upper_stores_q INTEGER CHECK (upper_stores_q BETWEEN 0 AND 96),
    queen TEXT CHECK (queen IN ('seen', 'eggs', 'virgin', 'drone-layer', 'none', 'laying-workers', 'unknown')),
    brood_frames INTEGER CHECK (brood_frames BETWEEN 0 AND 24),
    brood_checked INTEGER CHECK (brood_checked BETWEEN 0 AND 24),
    supers INTEGER CHECK (supers BETWEEN 0 AND 10),
    gross_dag INTEGER CHECK (gross_dag BETWEEN 0 AND 30000),
    mites INTEGER CHECK (mites BETWEEN 0 AND 10000),
    mite_sample INTEGER CHECK (mite_sample BETWEEN 1 AND 10000),
    by_whom TEXT CHECK (by_whom <> ''),
    note TEXT CHECK (note <> ''),
    CHECK (brood_checked <= brood_frames),
    CHECK ((mites IS NULL) = (mite_sample IS NULL))
) STRICT;
CREATE UNIQUE INDEX visit_day ON visit (colony, day);
CREATE INDEX visit_boxes ON visit (colony, day, boxes) WHERE boxes IS NOT NULL;
CREATE INDEX visit_count ON visit (colony, day, bees_top_q, bees_bottom_q, upper_bees_top_q, upper_bees_bottom_q,
    stores_q, upper_stores_q, brood_frames)
    WHERE bees_top_q IS NOT NULL OR bees_bottom_q IS NOT NULL OR upper_bees_top_q IS NOT NULL
        OR upper_bees_bottom_q IS NOT NULL;
CREATE INDEX visit_stores ON visit (colony, day, stores_q, upper_stores_q)
    WHERE stores_q IS NOT NULL OR upper_stores_q IS NOT NULL;
CREATE INDEX visit_queen ON visit (colony, day, queen) WHERE queen IS NOT NULL;
CREATE INDEX visit_brood ON visit (colony, day, brood_frames) WHERE brood_frames IS NOT NULL;
CREATE INDEX visit_check ON visit (colony, day, brood_checked, brood_frames) WHERE brood_checked >= 1;
CREATE INDEX visit_weight ON visit (colony, day, gross_dag, supers) WHERE gross_dag IS NOT NULL;
CREATE INDEX visit_mites ON visit (colony, day, mites, mite_sample) WHERE mites IS NOT NULL;

CREATE TABLE visit_sign (
    id INTEGER PRIMARY KEY,
    visit INTEGER NOT NULL REFERENCES visit (id),
    sign TEXT NOT NULL CHECK (sign IN ('afb', 'efb', 'brood-doubt', 'chalkbrood', 'sacbrood', 'nosema',
        'deformed-wings')),
    UNIQUE (visit, sign)
) STRICT;
CREATE INDEX visit_sign_trouble ON visit_sign (visit, sign) WHERE sign IN ('afb', 'efb', 'brood-doubt');

CREATE TABLE transfer (
    id INTEGER PRIMARY KEY,
    day TEXT NOT NULL CHECK (day > '0001' AND date(day) IS day),
    giver INTEGER NOT NULL REFERENCES colony (id),
    receiver INTEGER NOT NULL REFERENCES colony (id) CHECK (receiver <> giver),
    what TEXT NOT NULL CHECK (what IN ('frames', 'brood', 'bees', 'box', 'feed')),
    count INTEGER CHECK (count BETWEEN 1 AND 1000),
    note TEXT CHECK (note <> '')
) STRICT;
CREATE INDEX transfer_giver ON transfer (giver, day);
CREATE INDEX transfer_receiver ON transfer (receiver, day);

CREATE TABLE result (
    id INTEGER PRIMARY KEY,
    colony INTEGER REFERENCES colony (id),
    yard INTEGER REFERENCES yard (id),
    day TEXT NOT NULL CHECK (day > '0001' AND date(day) IS day),
    disease TEXT NOT NULL CHECK (disease IN ('afb', 'efb')),
    verdict TEXT NOT NULL CHECK (verdict IN ('positive', 'negative', 'release', 'order')),
    method TEXT NOT NULL CHECK (method IN ('laboratory', 'inspector', 'field')),
    by_whom TEXT NOT NULL CHECK (by_whom <> ''),
    paper TEXT CHECK (paper <> ''),
    note TEXT CHECK (note <> ''),
    CHECK ((colony IS NULL) <> (yard IS NULL)),
    CHECK (verdict NOT IN ('release', 'order') OR (method = 'inspector' AND paper IS NOT NULL)),
    CHECK (yard IS NULL OR verdict IN ('release', 'order'))
) STRICT;
CREATE INDEX result_colony ON result (colony, day) WHERE colony IS NOT NULL;
CREATE INDEX result_yard ON result (yard, day) WHERE yard IS NOT NULL;

CREATE TABLE treatment (
    id INTEGER PRIMARY KEY,
    colony INTEGER REFERENCES colony (id),
    yard INTEGER REFERENCES yard (id),
    day TEXT NOT NULL CHECK (day > '0001' AND date(day) IS day),
    product TEXT NOT NULL CHECK (product <> ''),
    substance TEXT NOT NULL CHECK (substance <> ''),
    antibiotic INTEGER NOT NULL CHECK (antibiotic IN (0, 1)),
    batch TEXT CHECK (batch <> ''),
    quantity REAL CHECK (quantity >= 0),
    unit TEXT CHECK (unit <> ''),
    method TEXT CHECK (method <> ''),
    supplier TEXT CHECK (supplier <> ''),
    supplier_address TEXT CHECK (supplier_address <> ''),
    bought TEXT CHECK (bought > '0001' AND date(bought) IS bought),
    quantity_bought REAL CHECK (quantity_bought >= 0),
    proof TEXT CHECK (proof <> ''),
    prescriber TEXT CHECK (prescriber <> ''),
    prescriber_contact TEXT CHECK (prescriber_contact <> ''),
    days INTEGER CHECK (days BETWEEN 0 AND 1000),
    withdrawal_days INTEGER CHECK (withdrawal_days BETWEEN 0 AND 1000),
    disposed TEXT CHECK (disposed > '0001' AND date(disposed) IS disposed),
    disposed_quantity REAL CHECK (disposed_quantity >= 0),
    disposed_how TEXT CHECK (disposed_how <> ''),
    by_whom TEXT CHECK (by_whom <> ''),
    reason TEXT CHECK (reason <> ''),
    CHECK ((colony IS NULL) <> (yard IS NULL))
) STRICT;
CREATE INDEX treatment_colony ON treatment (colony, day) WHERE colony IS NOT NULL;
CREATE INDEX treatment_yard ON treatment (yard, day) WHERE yard IS NOT NULL;

CREATE TABLE lineage (
    id INTEGER PRIMARY KEY,
    day TEXT NOT NULL CHECK (day > '0001' AND date(day) IS day),
    how TEXT NOT NULL CHECK (how IN ('united', 'shaken-out', 'divided')),
    colony INTEGER NOT NULL REFERENCES colony (id),
    into_colony INTEGER NOT NULL REFERENCES colony (id) CHECK (into_colony <> colony),
    by_whom TEXT CHECK (by_whom <> ''),
    note TEXT CHECK (note <> '')
) STRICT;
CREATE INDEX lineage_colony ON lineage (colony, day);
CREATE INDEX lineage_into ON lineage (into_colony, day);
CREATE UNIQUE INDEX lineage_end ON lineage (colony) WHERE how <> 'divided';
CREATE UNIQUE INDEX lineage_birth ON lineage (into_colony) WHERE how = 'divided';

CREATE TABLE kit (
    id INTEGER PRIMARY KEY,
    yard INTEGER REFERENCES yard (id),
    part TEXT NOT NULL CHECK (part <> ''),
    state TEXT NOT NULL CHECK (state IN ('usable', 'to-clean', 'quarantined', 'burned', 'sterilised')),
    colony INTEGER REFERENCES colony (id),
    count INTEGER NOT NULL CHECK (count BETWEEN 0 AND 1000000)
) STRICT;
CREATE INDEX kit_yard ON kit (yard);
CREATE INDEX kit_colony ON kit (colony) WHERE colony IS NOT NULL;

CREATE TABLE setting (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL UNIQUE CHECK (name <> ''),
    value TEXT NOT NULL CHECK (value <> '')
) STRICT;

-- One line an edit, never changed: what it was, what it became, who, when. The blobs come last, so that a list of
-- lines does not read them.
CREATE TABLE history (
    seq INTEGER PRIMARY KEY,
    at TEXT NOT NULL,
    by_whom TEXT CHECK (by_whom <> ''),
    sentence TEXT NOT NULL CHECK (sentence <> ''),
    reason TEXT CHECK (reason <> ''),
    kind TEXT NOT NULL CHECK (kind IN ('do', 'undo', 'redo')),
    of_seq INTEGER REFERENCES history (seq) CHECK (of_seq < seq),
    changes BLOB NOT NULL,
    attachments BLOB,
    CHECK ((kind = 'do') = (of_seq IS NULL))
) STRICT;
CREATE INDEX history_of ON history (of_seq) WHERE of_seq IS NOT NULL;

-- The rows of ranges that a line deleted (the undo of an import), packed in parts, so that they can come back as they
-- were.
CREATE TABLE history_part (
    seq INTEGER NOT NULL REFERENCES history (seq),
    of_range INTEGER NOT NULL CHECK (of_range >= 0),
    part INTEGER NOT NULL CHECK (part >= 0),
    rows BLOB NOT NULL,
    PRIMARY KEY (seq, of_range, part)
) STRICT;

INSERT INTO box_kind (id, name, key, frames, width_mm, length_mm, height_mm, tare_dag) VALUES
    (1, 'langstroth-10', 'langstroth-10', 10, 413, 505, 244, NULL),
    (2, 'langstroth-8', 'langstroth-8', 8, 356, 505, 244, NULL),
    (3, 'dadant-12', 'dadant-12', 12, NULL, NULL, NULL, NULL),
    (4, 'national-11', 'national-11', 11, 460, 460, 225, NULL),
    (5, 'zander-10', 'zander-10', 10, NULL, NULL, NULL, NULL);
