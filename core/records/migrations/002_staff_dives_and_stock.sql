-- SPDX-License-Identifier: GPL-3.0-or-later
-- Schema 2: dives that guests and staff made before, and what the centre has to hand out.

-- statement
ALTER TABLE persons ADD COLUMN dives_before INTEGER CHECK (dives_before >= 0);

-- statement
ALTER TABLE session_guests ADD COLUMN dives_before INTEGER CHECK (dives_before >= 0);

-- statement
ALTER TABLE staff ADD COLUMN extra_ascents INTEGER NOT NULL DEFAULT 0
    CHECK (extra_ascents >= 0);

-- statement
-- Dives of a member of staff as typed or taken over for this session; a later log changes none.
CREATE TABLE staff_earlier_dives (
    session_id   INTEGER NOT NULL,
    staff_id     TEXT NOT NULL,
    position     INTEGER NOT NULL CHECK (position >= 0),
    date         TEXT NOT NULL CHECK (date IS date(date)),
    start_min    INTEGER NOT NULL CHECK (start_min BETWEEN 0 AND 1439),
    deepest_m    REAL NOT NULL CHECK (deepest_m > 0),
    duration_min REAL NOT NULL CHECK (duration_min > 0),
    ascents      INTEGER NOT NULL CHECK (ascents >= 1),
    PRIMARY KEY (session_id, staff_id, position),
    FOREIGN KEY (session_id, staff_id) REFERENCES staff ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- statement
CREATE TABLE stock_cylinders (
    session_id    INTEGER NOT NULL REFERENCES sessions ON DELETE CASCADE,
    position      INTEGER NOT NULL CHECK (position >= 0),
    cylinder_type TEXT NOT NULL CHECK (cylinder_type <> ''),
    count         INTEGER NOT NULL CHECK (count >= 0),
    PRIMARY KEY (session_id, position),
    UNIQUE (session_id, cylinder_type)
) STRICT, WITHOUT ROWID;

-- statement
CREATE TABLE stock_suits (
    session_id INTEGER NOT NULL REFERENCES sessions ON DELETE CASCADE,
    position   INTEGER NOT NULL CHECK (position >= 0),
    suit       TEXT NOT NULL CHECK (suit <> ''),
    count      INTEGER NOT NULL CHECK (count >= 0),
    PRIMARY KEY (session_id, position),
    UNIQUE (session_id, suit)
) STRICT, WITHOUT ROWID;

-- statement
CREATE TABLE stock_lead_pieces (
    session_id INTEGER NOT NULL REFERENCES sessions ON DELETE CASCADE,
    position   INTEGER NOT NULL CHECK (position >= 0),
    mass_kg    REAL NOT NULL CHECK (mass_kg > 0),
    PRIMARY KEY (session_id, position)
) STRICT, WITHOUT ROWID;
