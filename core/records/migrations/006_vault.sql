-- SPDX-License-Identifier: GPL-3.0-or-later
-- Schema 6: what is sealed about guests, the ways to open it, and who did.

-- statement
-- One vault a file. Its identity is in everything that is sealed.
CREATE TABLE vault (
    id       INTEGER PRIMARY KEY CHECK (id = 1),
    vault_id BLOB NOT NULL CHECK (length(vault_id) = 16),
    made_at  TEXT NOT NULL
) STRICT;

-- statement
-- The data key, wrapped once for each way to open the vault. passes and memory_bytes are what
-- stretching a passphrase costs, 0 where nothing is stretched.
CREATE TABLE vault_keys (
    way          TEXT PRIMARY KEY CHECK (way IN ('passphrase', 'keyring', 'recovery')),
    salt         BLOB NOT NULL CHECK (length(salt) = 16),
    passes       INTEGER NOT NULL CHECK (passes >= 0),
    memory_bytes INTEGER NOT NULL CHECK (memory_bytes >= 0),
    nonce        BLOB NOT NULL,
    wrapped      BLOB NOT NULL,
    made_at      TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- statement
-- Wrong passphrases in a row, and when the last was tried (seconds since 1970, UTC).
CREATE TABLE vault_tries (
    id        INTEGER PRIMARY KEY CHECK (id = 1),
    failed    INTEGER NOT NULL CHECK (failed >= 0),
    last_at_s INTEGER NOT NULL
) STRICT;

-- statement
CREATE TABLE health_records (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    person_id  INTEGER NOT NULL REFERENCES persons,
    session_id INTEGER REFERENCES sessions ON DELETE SET NULL,
    kind       TEXT NOT NULL CHECK (kind IN ('screening', 'physician_note', 'emergency_contact',
                                             'signature')),
    version    INTEGER NOT NULL CHECK (version >= 1),
    made_at    TEXT NOT NULL,
    nonce      BLOB NOT NULL,
    sealed     BLOB NOT NULL
) STRICT;

-- statement
CREATE INDEX health_records_by_person ON health_records (person_id, kind, id);

-- statement
CREATE INDEX health_records_by_session ON health_records (session_id);

-- statement
-- The audit trail. It refers to persons and records by number only, and outlasts them. Each hash
-- covers the one before it.
CREATE TABLE health_openings (
    number    INTEGER PRIMARY KEY CHECK (number >= 1),
    at        TEXT NOT NULL,
    who       TEXT NOT NULL,
    event     TEXT NOT NULL,
    person_id INTEGER NOT NULL,  -- 0: about no person
    record_id INTEGER NOT NULL,  -- 0: about no record
    detail    TEXT NOT NULL,
    hash      BLOB NOT NULL
) STRICT;

-- statement
-- How long the trail is and how it ends, under a key that only the open vault has.
CREATE TABLE health_openings_seal (
    id      INTEGER PRIMARY KEY CHECK (id = 1),
    entries INTEGER NOT NULL CHECK (entries >= 1),
    head    BLOB NOT NULL,
    seal    BLOB NOT NULL
) STRICT;
