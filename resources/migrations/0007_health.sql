-- The book, version 7: samples sent to a laboratory, mites that fell, strips taken out, the end of quarantined kit,
-- what is notifiable where the keeper is, who the keeper is, and which lines of the history altered the medicine book.

-- A sample of one colony on its way: its answer is a result. No rule reads it; it lifts nothing and holds nothing.
CREATE TABLE sample (
    id INTEGER PRIMARY KEY,
    colony INTEGER NOT NULL REFERENCES colony (id),
    day TEXT NOT NULL CHECK (day > '0001' AND date(day) IS day), -- taken
    disease TEXT NOT NULL CHECK (disease IN ('afb', 'efb')),
    material TEXT NOT NULL CHECK (material IN ('brood', 'bees', 'honey', 'debris', 'other')),
    laboratory TEXT NOT NULL CHECK (laboratory <> ''),           -- where it goes
    number TEXT CHECK (number <> ''),                            -- written on it
    sent TEXT CHECK (sent >= day AND date(sent) IS sent),        -- NULL: not sent yet
    result INTEGER UNIQUE REFERENCES result (id),                -- its answer
    lost TEXT CHECK (lost >= day AND date(lost) IS lost),        -- since when no answer is awaited
    by_whom TEXT CHECK (by_whom <> ''),                          -- who took it
    note TEXT CHECK (note <> ''),
    CHECK (result IS NULL OR lost IS NULL)
) STRICT;
CREATE INDEX sample_colony ON sample (colony, day);

-- Mites that fell onto a board under the hive. Never turned into mites per 100 bees.
CREATE TABLE mite_fall (
    id INTEGER PRIMARY KEY,
    colony INTEGER NOT NULL REFERENCES colony (id),
    day TEXT NOT NULL CHECK (day > '0001' AND date(day) IS day), -- counted
    days INTEGER NOT NULL CHECK (days BETWEEN 1 AND 60),         -- that the board lay there before
    mites INTEGER NOT NULL CHECK (mites BETWEEN 0 AND 100000),
    by_whom TEXT CHECK (by_whom <> ''),
    note TEXT CHECK (note <> ''),
    UNIQUE (colony, day)
) STRICT;
CREATE INDEX mite_fall_day ON mite_fall (day);

-- What a treatment left in a hive is out again. Of a yard's treatment: a row for each colony.
CREATE TABLE strips_out (
    id INTEGER PRIMARY KEY,
    treatment INTEGER NOT NULL REFERENCES treatment (id),
    colony INTEGER NOT NULL REFERENCES colony (id),
    day TEXT NOT NULL CHECK (day > '0001' AND date(day) IS day),
    by_whom TEXT CHECK (by_whom <> ''),
    note TEXT CHECK (note <> ''),
    UNIQUE (treatment, colony)
) STRICT;
CREATE INDEX strips_out_colony ON strips_out (colony);

-- How kit that was kept apart came to its end, or could be used again: who, when, by which paper.
CREATE TABLE kit_end (
    id INTEGER PRIMARY KEY,
    day TEXT NOT NULL CHECK (day > '0001' AND date(day) IS day),
    yard INTEGER REFERENCES yard (id),                 -- where it lay; NULL: the store room
    part TEXT NOT NULL CHECK (part <> ''),
    colony INTEGER REFERENCES colony (id),             -- that it came off
    count INTEGER NOT NULL CHECK (count BETWEEN 1 AND 1000000),
    how TEXT NOT NULL CHECK (how IN ('irradiated', 'dipped', 'burned', 'other')),
    by_whom TEXT NOT NULL CHECK (by_whom <> ''),
    paper TEXT CHECK (paper <> ''),
    note TEXT CHECK (note <> ''),
    CHECK (how <> 'other' OR note IS NOT NULL)
) STRICT;
CREATE INDEX kit_end_day ON kit_end (day);
CREATE INDEX kit_end_colony ON kit_end (colony) WHERE colony IS NOT NULL;

-- What must be reported where. A row stands in place of the shipped one of the same place and disease.
CREATE TABLE notifiable (
    id INTEGER PRIMARY KEY,
    place TEXT NOT NULL CHECK (length(place) BETWEEN 1 AND 60 AND place = trim(place)),
    key TEXT NOT NULL CHECK (key <> ''),               -- of `place`
    disease TEXT NOT NULL CHECK (disease IN ('afb', 'efb', 'small-hive-beetle', 'tropilaelaps', 'varroa')),
    must INTEGER NOT NULL CHECK (must IN (0, 1)),
    tell TEXT CHECK (tell <> ''),                      -- whom: office, telephone
    source TEXT CHECK (source <> ''),
    UNIQUE (key, disease)
) STRICT;

-- Whose book it is: stands on the register and the report. At most one row.
CREATE TABLE keeper (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CHECK (name <> ''),
    address TEXT CHECK (address <> ''),
    contact TEXT CHECK (contact <> ''),
    registration TEXT CHECK (registration <> ''),
    place TEXT CHECK (place <> '')                     -- whose rules hold: a place of what is notifiable
) STRICT;

-- Lines of the history that altered or removed a treatment, or put it back. Not records: made from the history anew at
-- any time. A row of treatment 0 says that this is still to be done: of a book that had a history before.
CREATE TABLE medicine_line (
    treatment INTEGER NOT NULL,
    seq INTEGER NOT NULL REFERENCES history (seq),
    PRIMARY KEY (treatment, seq)
) STRICT, WITHOUT ROWID;
INSERT INTO medicine_line (treatment, seq) SELECT 0, max(seq) FROM history HAVING max(seq) IS NOT NULL;
