-- The book, version 2: the people who keep it, offered where a record asks by whom. Records hold the name itself, so
-- that a person may leave the list and stay in the records.

CREATE TABLE person (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 60 AND name = trim(name)),
    key TEXT NOT NULL UNIQUE CHECK (key <> ''),
    active INTEGER NOT NULL CHECK (active IN (0, 1))
) STRICT;
