-- The book, version 3: what stands or runs in a yard besides its hives, for the drawing alone: no rule reads it.
-- `points` holds "x,y" of each point in millimetres, joined by single blanks: the run of a fence, hedge or track, the
-- edge of water, the four corners of a shed in turn, the trunk of a tree.

CREATE TABLE fixed_thing (
    id INTEGER PRIMARY KEY,
    yard INTEGER NOT NULL REFERENCES yard (id),
    kind TEXT NOT NULL CHECK (kind IN ('fence', 'hedge', 'shed', 'water', 'track', 'tree')),
    name TEXT CHECK (length(name) BETWEEN 1 AND 60 AND name = trim(name)),
    points TEXT NOT NULL CHECK (points NOT GLOB '*[^-0-9, ]*'
        AND CASE kind
            WHEN 'tree' THEN length(points) - length(replace(points, ',', '')) = 1
            WHEN 'shed' THEN length(points) - length(replace(points, ',', '')) = 4
            WHEN 'water' THEN length(points) - length(replace(points, ',', '')) BETWEEN 3 AND 200
            ELSE length(points) - length(replace(points, ',', '')) BETWEEN 2 AND 200
        END),
    radius_mm INTEGER CHECK (radius_mm BETWEEN 100 AND 50000),
    CHECK ((kind = 'tree') = (radius_mm IS NOT NULL))
) STRICT;
CREATE INDEX fixed_thing_yard ON fixed_thing (yard);
