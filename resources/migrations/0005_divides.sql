-- The book, version 5: divides on the board, the worksheet and in the close-out of a merge day. What can be divided is
-- worked out anew from the records (rule 4.13); here stands what was asked of it, what was on the printed strips, and
-- what came of each. The new colonies themselves are rows of colony, their mother a row of lineage ('divided').

-- How the divides of that day come to queens: sealed queen cells given, bought queens in cages, or raised by the bees
-- themselves. NULL: not said yet.
ALTER TABLE merge_day ADD COLUMN queens TEXT CHECK (queens IN ('cells', 'bought', 'own'));

-- What is asked of one colony's divide.
CREATE TABLE divide_choice (
    id INTEGER PRIMARY KEY,
    merge_day INTEGER NOT NULL REFERENCES merge_day (id), -- whose plan
    colony INTEGER NOT NULL REFERENCES colony (id),       -- that could be divided
    parts INTEGER NOT NULL CHECK (parts BETWEEN 1 AND 24), -- at most so many, its own counted; 1: it is left whole
    note TEXT CHECK (note <> ''),                         -- why
    UNIQUE (merge_day, colony)
) STRICT;
CREATE INDEX divide_choice_colony ON divide_choice (colony);

-- One divide of the worksheet as it was printed, and what came of it. A divide that never was printed gets its row as it
-- is closed.
CREATE TABLE divide_strip (
    id INTEGER PRIMARY KEY,
    merge_day INTEGER NOT NULL REFERENCES merge_day (id),
    position INTEGER NOT NULL CHECK (position >= 1),      -- among the divides of the worksheet
    colony INTEGER NOT NULL REFERENCES colony (id),       -- divided; it keeps its stand
    parts INTEGER NOT NULL CHECK (parts BETWEEN 2 AND 24), -- its own counted: parts - 1 new colonies
    queens TEXT NOT NULL CHECK (queens IN ('cells', 'bought', 'own')), -- how the new colonies come to theirs
    outcome TEXT CHECK (outcome IN ('done', 'not-done', 'changed')), -- NULL: nothing was written back yet
    note TEXT CHECK (note <> ''),                         -- why not, or what instead
    UNIQUE (merge_day, position),
    UNIQUE (merge_day, colony),
    CHECK (outcome IS NOT 'changed' OR note IS NOT NULL)
) STRICT;
CREATE INDEX divide_strip_colony ON divide_strip (colony);
