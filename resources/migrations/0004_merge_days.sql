-- The book, version 4: merge days as they are planned, printed and closed. What a plan proposes is worked out anew from
-- the records; here stands what was asked of it, what was on the printed strips, and what came of each.

CREATE TABLE merge_day (
    id INTEGER PRIMARY KEY,
    yard INTEGER NOT NULL REFERENCES yard (id),
    day TEXT NOT NULL CHECK (day > '0001' AND date(day) IS day),
    variant INTEGER NOT NULL CHECK (variant BETWEEN 1 AND 3),
    most INTEGER CHECK (most BETWEEN 0 AND 100000),
    minutes INTEGER CHECK (minutes BETWEEN 1 AND 6000),
    revision INTEGER NOT NULL CHECK (revision >= 1),
    note TEXT CHECK (note <> ''),
    UNIQUE (yard, day, variant)
) STRICT;

CREATE TABLE merge_choice (
    id INTEGER PRIMARY KEY,
    merge_day INTEGER NOT NULL REFERENCES merge_day (id),
    what TEXT NOT NULL CHECK (what IN ('pin', 'forbid', 'leave-out', 'host', 'top')),
    colony INTEGER NOT NULL REFERENCES colony (id),
    other INTEGER REFERENCES colony (id) CHECK (other <> colony),
    note TEXT CHECK (note <> ''),
    UNIQUE (merge_day, what, colony, other),
    CHECK ((what = 'leave-out') = (other IS NULL))
) STRICT;
CREATE INDEX merge_choice_colony ON merge_choice (colony);
CREATE INDEX merge_choice_other ON merge_choice (other) WHERE other IS NOT NULL;
CREATE UNIQUE INDEX merge_choice_left_out ON merge_choice (merge_day, colony) WHERE what = 'leave-out';

CREATE TABLE merge_strip (
    id INTEGER PRIMARY KEY,
    merge_day INTEGER NOT NULL REFERENCES merge_day (id),
    position INTEGER NOT NULL CHECK (position >= 1),
    how TEXT NOT NULL CHECK (how IN ('united', 'shaken-out')),
    moved INTEGER NOT NULL REFERENCES colony (id),
    host INTEGER NOT NULL REFERENCES colony (id) CHECK (host <> moved),
    upper INTEGER REFERENCES colony (id) CHECK (upper IN (moved, host)),
    outcome TEXT CHECK (outcome IN ('done', 'not-done', 'changed')),
    note TEXT CHECK (note <> ''),
    UNIQUE (merge_day, position),
    UNIQUE (merge_day, moved),
    CHECK (outcome IS NOT 'changed' OR note IS NOT NULL),
    CHECK ((how = 'united') = (upper IS NOT NULL))
) STRICT;
CREATE INDEX merge_strip_moved ON merge_strip (moved);
CREATE INDEX merge_strip_host ON merge_strip (host);
CREATE INDEX merge_strip_upper ON merge_strip (upper) WHERE upper IS NOT NULL;
