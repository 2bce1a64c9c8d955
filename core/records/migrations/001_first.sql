-- SPDX-License-Identifier: GPL-3.0-or-later
-- Schema 1: sessions and all that belongs to them, the registers of persons and sites, settings.
-- The line before every statement separates it from the one before; see ../README.md.
-- A column's name ends with its unit. Yes and no are 1 and 0. `position` keeps the order of a list.

-- statement
-- The register: what lasts of a person from one session to the next.
CREATE TABLE persons (
    id                     INTEGER PRIMARY KEY,
    name                   TEXT NOT NULL CHECK (name <> ''),
    folded_name            TEXT NOT NULL,  -- for searching: lower case, without accents
    birth_date             TEXT CHECK (birth_date IS date(birth_date)),
    language               TEXT NOT NULL,
    body_mass_kg           REAL CHECK (body_mass_kg > 0),
    body_height_m          REAL CHECK (body_height_m > 0),
    shoe_size_eu           REAL CHECK (shoe_size_eu > 0),
    measured_rmv_l_per_min REAL CHECK (measured_rmv_l_per_min > 0),
    -- Two persons of one name without a birth date are two persons: NULLs are distinct here.
    UNIQUE (name, birth_date)
) STRICT;

-- statement
CREATE INDEX persons_by_folded_name ON persons (folded_name, id);

-- statement
-- The register of sites.
CREATE TABLE sites (
    name           TEXT PRIMARY KEY CHECK (name <> ''),
    folded_name    TEXT NOT NULL,
    altitude_m     REAL NOT NULL,
    latitude_deg   REAL NOT NULL CHECK (latitude_deg BETWEEN -90 AND 90),
    salinity       REAL NOT NULL CHECK (salinity >= 0),
    bottom_depth_m REAL CHECK (bottom_depth_m >= 0),
    entry          TEXT NOT NULL CHECK (entry IN ('shore', 'boat', 'pool_steps')),
    meeting_place  TEXT NOT NULL,
    emergency_line TEXT NOT NULL,
    emergency_plan TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- statement
CREATE TABLE settings (
    name  TEXT PRIMARY KEY CHECK (name <> ''),
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- statement
-- AUTOINCREMENT: the number of a removed session is never given to another one.
CREATE TABLE sessions (
    id               INTEGER PRIMARY KEY AUTOINCREMENT,
    title            TEXT NOT NULL,
    date             TEXT NOT NULL CHECK (date IS date(date)),
    meeting_time_min INTEGER NOT NULL CHECK (meeting_time_min BETWEEN 0 AND 1439),
    dive_time_min    INTEGER NOT NULL CHECK (dive_time_min BETWEEN 0 AND 1439)
) STRICT;

-- statement
CREATE INDEX sessions_by_time ON sessions (date, dive_time_min);

-- statement
-- The site as it was on the day: a later change of the register leaves it alone.
CREATE TABLE session_sites (
    session_id     INTEGER PRIMARY KEY REFERENCES sessions ON DELETE CASCADE,
    name           TEXT NOT NULL,
    altitude_m     REAL NOT NULL,
    latitude_deg   REAL NOT NULL CHECK (latitude_deg BETWEEN -90 AND 90),
    salinity       REAL NOT NULL CHECK (salinity >= 0),
    bottom_depth_m REAL CHECK (bottom_depth_m >= 0),
    entry          TEXT NOT NULL CHECK (entry IN ('shore', 'boat', 'pool_steps')),
    meeting_place  TEXT NOT NULL,
    emergency_line TEXT NOT NULL,
    emergency_plan TEXT NOT NULL
) STRICT;

-- statement
CREATE INDEX session_sites_by_name ON session_sites (name);

-- statement
CREATE TABLE conditions (
    session_id          INTEGER PRIMARY KEY REFERENCES sessions ON DELETE CASCADE,
    water_temperature_k REAL NOT NULL CHECK (water_temperature_k > 0),
    air_temperature_k   REAL NOT NULL CHECK (air_temperature_k > 0),
    barometer_pa        REAL CHECK (barometer_pa > 0),
    visibility_m        REAL CHECK (visibility_m >= 0),
    current             TEXT NOT NULL CHECK (current IN ('none', 'slight', 'moderate', 'strong')),
    wave_height_m       REAL CHECK (wave_height_m >= 0)
) STRICT;

-- statement
CREATE TABLE profile_points (
    session_id INTEGER NOT NULL REFERENCES sessions ON DELETE CASCADE,
    position   INTEGER NOT NULL CHECK (position >= 0),
    time_min   REAL NOT NULL CHECK (time_min >= 0),
    depth_m    REAL NOT NULL CHECK (depth_m >= 0),
    phase      TEXT NOT NULL
               CHECK (phase IN ('surface', 'descent', 'skills', 'tour', 'ascent')),
    PRIMARY KEY (session_id, position)
) STRICT, WITHOUT ROWID;

-- statement
CREATE TABLE session_rule_sets (
    session_id  INTEGER NOT NULL REFERENCES sessions ON DELETE CASCADE,
    position    INTEGER NOT NULL CHECK (position >= 0),
    rule_set_id TEXT NOT NULL CHECK (rule_set_id <> ''),
    PRIMARY KEY (session_id, position)
) STRICT, WITHOUT ROWID;

-- statement
CREATE TABLE overrules (
    session_id INTEGER NOT NULL REFERENCES sessions ON DELETE CASCADE,
    position   INTEGER NOT NULL CHECK (position >= 0),
    finding    TEXT NOT NULL,
    reason     TEXT NOT NULL,
    decided_by TEXT NOT NULL,
    PRIMARY KEY (session_id, position)
) STRICT, WITHOUT ROWID;

-- statement
CREATE TABLE staff (
    session_id         INTEGER NOT NULL REFERENCES sessions ON DELETE CASCADE,
    staff_id           TEXT NOT NULL CHECK (staff_id <> ''),
    position           INTEGER NOT NULL CHECK (position >= 0),
    name               TEXT NOT NULL,
    role               TEXT NOT NULL CHECK (role IN ('instructor', 'assistant')),
    leads              INTEGER NOT NULL CHECK (leads IN (0, 1)),
    cylinder_type      TEXT CHECK (cylinder_type <> ''),
    fill_pressure_bar  REAL CHECK (fill_pressure_bar >= 0),
    fill_temperature_k REAL CHECK (fill_temperature_k > 0),
    PRIMARY KEY (session_id, staff_id),
    UNIQUE (session_id, position),
    CHECK ((cylinder_type IS NULL) = (fill_pressure_bar IS NULL)
           AND (cylinder_type IS NULL) = (fill_temperature_k IS NULL))
) STRICT, WITHOUT ROWID;

-- statement
-- At most one leads a session.
CREATE UNIQUE INDEX staff_leader ON staff (session_id) WHERE leads = 1;

-- statement
CREATE TABLE staff_languages (
    session_id INTEGER NOT NULL,
    staff_id   TEXT NOT NULL,
    position   INTEGER NOT NULL CHECK (position >= 0),
    language   TEXT NOT NULL,
    PRIMARY KEY (session_id, staff_id, position),
    FOREIGN KEY (session_id, staff_id) REFERENCES staff ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- statement
CREATE TABLE session_groups (
    session_id INTEGER NOT NULL REFERENCES sessions ON DELETE CASCADE,
    group_id   TEXT NOT NULL CHECK (group_id <> ''),
    position   INTEGER NOT NULL CHECK (position >= 0),
    name       TEXT NOT NULL,
    instructor TEXT,
    assistant  TEXT,
    PRIMARY KEY (session_id, group_id),
    UNIQUE (session_id, position),
    FOREIGN KEY (session_id, instructor) REFERENCES staff,
    FOREIGN KEY (session_id, assistant) REFERENCES staff
) STRICT, WITHOUT ROWID;

-- statement
-- The guests of a session. What lasts of a person stands here too, as it was on the day, so that an
-- old session and its cards stay what they were when the person grows or moves on.
CREATE TABLE session_guests (
    session_id              INTEGER NOT NULL REFERENCES sessions ON DELETE CASCADE,
    guest_id                TEXT NOT NULL CHECK (guest_id <> ''),
    position                INTEGER NOT NULL CHECK (position >= 0),
    person_id               INTEGER NOT NULL REFERENCES persons,
    group_id                TEXT,
    name                    TEXT NOT NULL CHECK (name <> ''),
    birth_date              TEXT CHECK (birth_date IS date(birth_date)),
    language                TEXT NOT NULL,
    body_mass_kg            REAL CHECK (body_mass_kg > 0),
    body_height_m           REAL CHECK (body_height_m > 0),
    shoe_size_eu            REAL CHECK (shoe_size_eu > 0),
    measured_rmv_l_per_min  REAL CHECK (measured_rmv_l_per_min > 0),
    physician_approval_seen INTEGER NOT NULL CHECK (physician_approval_seen IN (0, 1)),
    guardian_consent        INTEGER NOT NULL CHECK (guardian_consent IN (0, 1)),
    certified               INTEGER NOT NULL CHECK (certified IN (0, 1)),
    breathing               TEXT NOT NULL
                            CHECK (breathing IN ('calm', 'average', 'nervous', 'child')),
    suit                    TEXT NOT NULL,
    bcd                     TEXT NOT NULL,
    fins                    TEXT NOT NULL,
    mask                    TEXT NOT NULL,
    regulator               TEXT NOT NULL,
    lead_kg                 REAL CHECK (lead_kg >= 0),
    cylinder_type           TEXT CHECK (cylinder_type <> ''),
    fill_pressure_bar       REAL CHECK (fill_pressure_bar >= 0),
    fill_temperature_k      REAL CHECK (fill_temperature_k > 0),
    note                    TEXT NOT NULL,
    PRIMARY KEY (session_id, guest_id),
    UNIQUE (session_id, position),
    FOREIGN KEY (session_id, group_id) REFERENCES session_groups,
    CHECK ((cylinder_type IS NULL) = (fill_pressure_bar IS NULL)
           AND (cylinder_type IS NULL) = (fill_temperature_k IS NULL))
) STRICT, WITHOUT ROWID;

-- statement
CREATE INDEX session_guests_by_person ON session_guests (person_id);

-- statement
-- Answers given on a health theme; a theme without a row has no answer yet.
CREATE TABLE screening_answers (
    session_id INTEGER NOT NULL,
    guest_id   TEXT NOT NULL,
    theme      TEXT NOT NULL
               CHECK (theme IN ('lungs', 'heart_and_blood', 'over_45_with_risks', 'exercise',
                                'eyes_ears_sinuses', 'surgery_last_year', 'nerves_and_blackouts',
                                'mind', 'back_hernia_diabetes', 'stomach_and_gut',
                                'prescription_medicine', 'pregnancy')),
    answer     TEXT NOT NULL CHECK (answer IN ('no', 'yes')),
    PRIMARY KEY (session_id, guest_id, theme),
    FOREIGN KEY (session_id, guest_id) REFERENCES session_guests ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- statement
-- Answers given on the day; a question without a row has no answer yet.
CREATE TABLE screening_today (
    session_id INTEGER NOT NULL,
    guest_id   TEXT NOT NULL,
    question   TEXT NOT NULL
               CHECK (question IN ('cold_or_blocked_ears', 'alcohol_or_drugs', 'new_medicine',
                                   'flight_or_mountain_within_24_hours',
                                   'unwilling_or_very_afraid', 'cannot_swim')),
    answer     TEXT NOT NULL CHECK (answer IN ('no', 'yes')),
    PRIMARY KEY (session_id, guest_id, question),
    FOREIGN KEY (session_id, guest_id) REFERENCES session_guests ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- statement
CREATE TABLE logs (
    session_id   INTEGER PRIMARY KEY REFERENCES sessions ON DELETE CASCADE,
    time_in_min  INTEGER NOT NULL CHECK (time_in_min BETWEEN 0 AND 1439),
    time_out_min INTEGER NOT NULL CHECK (time_out_min BETWEEN 0 AND 1439),
    heads_in     INTEGER NOT NULL CHECK (heads_in >= 0),
    heads_out    INTEGER NOT NULL CHECK (heads_out >= 0),
    note         TEXT NOT NULL
) STRICT;

-- statement
-- The reference to the guest is deferred: a save puts the guests in anew and leaves the log alone.
-- `position` is not unique: a change of order passes through states in which two have the same.
CREATE TABLE log_divers (
    session_id         INTEGER NOT NULL REFERENCES logs ON DELETE CASCADE,
    guest_id           TEXT NOT NULL,
    position           INTEGER NOT NULL CHECK (position >= 0),
    start_pressure_bar REAL NOT NULL CHECK (start_pressure_bar >= 0),
    end_pressure_bar   REAL NOT NULL
                       CHECK (end_pressure_bar BETWEEN 0 AND start_pressure_bar),
    duration_min       REAL NOT NULL CHECK (duration_min >= 0),
    ears_troubled      INTEGER NOT NULL CHECK (ears_troubled IN (0, 1)),
    note               TEXT NOT NULL,
    PRIMARY KEY (session_id, guest_id),
    FOREIGN KEY (session_id, guest_id) REFERENCES session_guests DEFERRABLE INITIALLY DEFERRED
) STRICT, WITHOUT ROWID;

-- statement
CREATE TABLE log_samples (
    session_id INTEGER NOT NULL,
    guest_id   TEXT NOT NULL,
    position   INTEGER NOT NULL CHECK (position >= 0),
    time_min   REAL NOT NULL CHECK (time_min >= 0),
    depth_m    REAL NOT NULL CHECK (depth_m >= 0),
    PRIMARY KEY (session_id, guest_id, position),
    FOREIGN KEY (session_id, guest_id) REFERENCES log_divers ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
