-- SPDX-License-Identifier: GPL-3.0-or-later
-- Schema 5: an index to search persons with, persons merged into others, persons removed.

-- statement
-- The person this one was found to be; NULL: stands for itself.
ALTER TABLE persons ADD COLUMN merged_into INTEGER REFERENCES persons;

-- statement
-- 1: nothing is left of the person but this row, to which old sessions refer.
ALTER TABLE persons ADD COLUMN erased INTEGER NOT NULL DEFAULT 0 CHECK (erased IN (0, 1));

-- statement
CREATE INDEX persons_merged ON persons (merged_into) WHERE merged_into IS NOT NULL;

-- statement
DROP INDEX persons_by_folded_name;

-- statement
-- Those who are shown, in the order of lists.
CREATE INDEX persons_shown ON persons (folded_name, id) WHERE merged_into IS NULL AND erased = 0;

-- statement
-- What a merge needs to be undone. The merged person's row stays as it was, so that it is enough to
-- know which gaps of the kept one were filled from it: a JSON list of columns.
CREATE TABLE person_merges (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    kept_id    INTEGER NOT NULL REFERENCES persons,
    merged_id  INTEGER NOT NULL REFERENCES persons,
    merged_at  TEXT NOT NULL,
    filled     TEXT NOT NULL CHECK (json_valid(filled))
) STRICT;

-- statement
CREATE INDEX person_merges_by_kept ON person_merges (kept_id);

-- statement
CREATE INDEX person_merges_by_merged ON person_merges (merged_id);

-- statement
-- Guests who pointed to the merged person. A save writes a session's guests anew, so that these rows
-- name them and do not refer to them.
CREATE TABLE person_merge_guests (
    merge_id   INTEGER NOT NULL REFERENCES person_merges ON DELETE CASCADE,
    session_id INTEGER NOT NULL REFERENCES sessions ON DELETE CASCADE,
    guest_id   TEXT NOT NULL,
    PRIMARY KEY (merge_id, session_id, guest_id)
) STRICT, WITHOUT ROWID;

-- statement
CREATE INDEX person_merge_guests_by_session ON person_merge_guests (session_id);

-- statement
-- Two persons who were looked at and are not the same.
CREATE TABLE persons_apart (
    first_id  INTEGER NOT NULL REFERENCES persons ON DELETE CASCADE,
    second_id INTEGER NOT NULL REFERENCES persons ON DELETE CASCADE,
    PRIMARY KEY (first_id, second_id),
    CHECK (first_id < second_id)
) STRICT, WITHOUT ROWID;

-- statement
-- What a person is found by. name: the folded name, its words apart by one space; signs: every sign of
-- a name in a script without spaces between words, else empty; phone: digits alone.
CREATE TABLE person_search (
    person_id INTEGER PRIMARY KEY REFERENCES persons ON DELETE CASCADE,
    name      TEXT NOT NULL,
    signs     TEXT NOT NULL,
    phone     TEXT NOT NULL,
    email     TEXT NOT NULL
) STRICT;

-- statement
-- Han, kana, Hangul (also taken apart) and their extensions count as signs.
CREATE VIEW person_search_source AS
SELECT
    id AS person_id,
    trim(replace(replace(replace(replace(replace(replace(replace(replace(replace(folded_name,
        '-', ' '), '''', ' '), '.', ' '), ',', ' '), '(', ' '), ')', ' '), '"', ' '), '/', ' '),
        '_', ' ')) AS name,
    CASE WHEN folded_name GLOB '*[ᄀ-ᇿ⺀-鿿가-힯豈-﫿𠀀-𯨟]*' THEN
        (WITH RECURSIVE place (n, signs) AS (
             SELECT 0, ''
             UNION ALL
             SELECT n + 1, signs || ' ' || substr(folded_name, n + 1, 1) FROM place
             WHERE n < length(folded_name))
         SELECT signs FROM place ORDER BY n DESC LIMIT 1)
    ELSE '' END AS signs,
    replace(replace(replace(replace(replace(replace(replace(replace(replace(replace(phone,
        ' ', ''), '-', ''), '/', ''), '.', ''), '(', ''), ')', ''), '+', ''), char(160), ''),
        char(8211), ''), char(8209), '') AS phone,
    lower(email) AS email
FROM persons
WHERE merged_into IS NULL AND erased = 0;

-- statement
CREATE VIRTUAL TABLE person_names USING fts5(name, signs, content = 'person_search',
    content_rowid = 'person_id', prefix = '1 2 3', tokenize = 'unicode61 remove_diacritics 0');

-- statement
CREATE VIRTUAL TABLE person_parts USING fts5(name, phone, email, content = 'person_search',
    content_rowid = 'person_id', tokenize = 'trigram');

-- statement
-- Every word of the names, with the number of names that have it: misspelt words are looked up here.
CREATE TABLE name_words (
    word  TEXT PRIMARY KEY,
    names INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

-- statement
CREATE INDEX name_words_by_rest ON name_words (substr(word, 2));

-- statement
INSERT INTO person_search SELECT person_id, name, signs, phone, email FROM person_search_source;

-- statement
INSERT INTO person_names (person_names) VALUES ('rebuild');

-- statement
INSERT INTO person_parts (person_parts) VALUES ('rebuild');

-- statement
INSERT INTO name_words
SELECT word.value, count(*) FROM person_search s,
    json_each('[' || replace(json_quote(s.name), ' ', '","') || ']') word
WHERE word.value <> '' GROUP BY word.value;

-- statement
CREATE TRIGGER person_search_added AFTER INSERT ON person_search BEGIN
    INSERT INTO person_names (rowid, name, signs) VALUES (new.person_id, new.name, new.signs);
    INSERT INTO person_parts (rowid, name, phone, email)
        VALUES (new.person_id, new.name, new.phone, new.email);
    INSERT INTO name_words (word, names)
        SELECT value, 1 FROM json_each('[' || replace(json_quote(new.name), ' ', '","') || ']')
        WHERE value <> ''
        ON CONFLICT (word) DO UPDATE SET names = names + 1;
END;

-- statement
CREATE TRIGGER person_search_removed AFTER DELETE ON person_search BEGIN
    INSERT INTO person_names (person_names, rowid, name, signs)
        VALUES ('delete', old.person_id, old.name, old.signs);
    INSERT INTO person_parts (person_parts, rowid, name, phone, email)
        VALUES ('delete', old.person_id, old.name, old.phone, old.email);
    UPDATE name_words SET names = names - (
            SELECT count(*) FROM json_each('[' || replace(json_quote(old.name), ' ', '","') || ']')
            WHERE value = name_words.word)
        WHERE word IN (
            SELECT value FROM json_each('[' || replace(json_quote(old.name), ' ', '","') || ']'));
    DELETE FROM name_words WHERE names <= 0 AND word IN (
        SELECT value FROM json_each('[' || replace(json_quote(old.name), ' ', '","') || ']'));
END;

-- statement
CREATE TRIGGER persons_added AFTER INSERT ON persons BEGIN
    INSERT INTO person_search
        SELECT person_id, name, signs, phone, email FROM person_search_source
        WHERE person_id = new.id;
END;

-- statement
-- A save writes every guest's person; the index is touched only where it would change.
CREATE TRIGGER persons_changed AFTER UPDATE OF folded_name, phone, email, merged_into, erased
ON persons
WHEN old.folded_name <> new.folded_name OR old.phone <> new.phone OR old.email <> new.email
     OR old.merged_into IS NOT new.merged_into OR old.erased <> new.erased
BEGIN
    DELETE FROM person_search WHERE person_id = old.id;
    INSERT INTO person_search
        SELECT person_id, name, signs, phone, email FROM person_search_source
        WHERE person_id = new.id;
END;

-- statement
-- Not left to the foreign key alone: the index must also be right where keys are not enforced.
CREATE TRIGGER persons_removed BEFORE DELETE ON persons BEGIN
    DELETE FROM person_search WHERE person_id = old.id;
END;
