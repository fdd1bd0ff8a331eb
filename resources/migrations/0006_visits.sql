-- The book, version 6: what was fed, queens and their lives, and what makes typing and finding quick: files of other
-- programs read as before, quick sentences, questions kept under a name, and a search over all notes.

CREATE TABLE feeding (
    id INTEGER PRIMARY KEY,
    colony INTEGER NOT NULL REFERENCES colony (id),
    day TEXT NOT NULL CHECK (day > '0001' AND date(day) IS day),
    what TEXT NOT NULL CHECK (what IN ('syrup', 'fondant', 'sugar', 'honey', 'pollen', 'other')),
    mix TEXT CHECK (mix <> ''),                                -- of syrup: sugar to water by mass, '3:2'
    amount_ml INTEGER CHECK (amount_ml BETWEEN 1 AND 100000),  -- by volume, or
    amount_dag INTEGER CHECK (amount_dag BETWEEN 1 AND 10000), -- by weight, in hundredths of a kilogram
    by_whom TEXT CHECK (by_whom <> ''),
    note TEXT CHECK (note <> ''),
    CHECK ((amount_ml IS NULL) <> (amount_dag IS NULL)),
    CHECK (mix IS NULL OR what = 'syrup')
) STRICT;
CREATE INDEX feeding_colony ON feeding (colony, day);
CREATE INDEX feeding_day ON feeding (day);

-- A queen at the head of one colony, from a day on. One at a time; carried to another colony she gets a row there.
CREATE TABLE queen (
    id INTEGER PRIMARY KEY,
    colony INTEGER NOT NULL REFERENCES colony (id),
    since TEXT NOT NULL CHECK (since > '0001' AND date(since) IS since),
    until TEXT CHECK (until >= since AND date(until) IS until),
    fate TEXT CHECK (fate IN ('superseded', 'replaced', 'dead', 'missing', 'swarmed', 'sold', 'moved')),
    born INTEGER CHECK (born BETWEEN 1990 AND 2100),
    mark TEXT CHECK (mark IN ('white', 'yellow', 'red', 'green', 'blue', 'unmarked')), -- NULL: not recorded
    tag TEXT CHECK (tag <> ''),       -- number on her disc
    origin TEXT CHECK (origin IN ('raised', 'bought', 'swarm', 'emergency', 'supersedure')),
    source TEXT CHECK (source <> ''), -- breeder, line
    mother INTEGER REFERENCES colony (id), -- the colony that she was raised from
    note TEXT CHECK (note <> ''),
    UNIQUE (colony, since),
    CHECK ((until IS NULL) = (fate IS NULL))
) STRICT;
CREATE UNIQUE INDEX queen_open ON queen (colony) WHERE until IS NULL;
CREATE INDEX queen_mother ON queen (mother) WHERE mother IS NOT NULL;

-- How a file of another program becomes one of ours: offered when the same header comes again.
CREATE TABLE file_mapping (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 60 AND name = trim(name)),
    key TEXT NOT NULL UNIQUE CHECK (key <> ''),
    kind TEXT NOT NULL CHECK (kind <> ''),     -- of file: 'visits', ...
    header TEXT NOT NULL CHECK (header <> ''), -- names of the first row, as they stood
    form TEXT NOT NULL CHECK (form <> '')      -- JSON
) STRICT;

-- Sentences that are typed often, offered for notes.
CREATE TABLE phrase (
    id INTEGER PRIMARY KEY,
    short TEXT NOT NULL CHECK (length(short) BETWEEN 1 AND 12 AND short = trim(short)),
    key TEXT NOT NULL UNIQUE CHECK (key <> ''), -- of `short`
    sentence TEXT NOT NULL CHECK (sentence <> '')
) STRICT;

-- A question asked of the book, kept under a name.
CREATE TABLE question (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 60 AND name = trim(name)),
    key TEXT NOT NULL UNIQUE CHECK (key <> ''),
    about TEXT NOT NULL CHECK (about IN ('colonies', 'visits')),
    ask TEXT NOT NULL CHECK (ask <> ''), -- JSON
    on_plan INTEGER NOT NULL CHECK (on_plan IN (0, 1)) -- colonies that it finds are marked on the plan
) STRICT;

-- The words of all notes. Not records: made from them anew at any time. rowid = 16 × id + kind; the kinds are visit 0,
-- colony 1, yard 2, transfer 3, result 4, treatment 5, lineage 6, feeding 7, queen 8.
CREATE VIRTUAL TABLE note_words USING fts5 (words, tokenize = 'unicode61 remove_diacritics 2');
INSERT INTO note_words (rowid, words) SELECT 16 * id, note FROM visit WHERE note IS NOT NULL;
INSERT INTO note_words (rowid, words) SELECT 16 * id + 1, note FROM colony WHERE note IS NOT NULL;
INSERT INTO note_words (rowid, words) SELECT 16 * id + 2, note FROM yard WHERE note IS NOT NULL;
INSERT INTO note_words (rowid, words) SELECT 16 * id + 3, note FROM transfer WHERE note IS NOT NULL;
INSERT INTO note_words (rowid, words) SELECT 16 * id + 4, note FROM result WHERE note IS NOT NULL;
INSERT INTO note_words (rowid, words) SELECT 16 * id + 5, reason FROM treatment WHERE reason IS NOT NULL;
INSERT INTO note_words (rowid, words) SELECT 16 * id + 6, note FROM lineage WHERE note IS NOT NULL;
