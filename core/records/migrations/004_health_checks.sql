-- SPDX-License-Identifier: GPL-3.0-or-later
-- Schema 4: of a guest's screening the session keeps what it came to, and no answer. Answers of
-- yes wait in a table of their own until they are sealed; the others are not kept.

-- statement
ALTER TABLE session_guests ADD COLUMN screening_outcome TEXT NOT NULL DEFAULT 'unanswered'
    CHECK (screening_outcome IN ('unanswered', 'clear', 'physician_required', 'does_not_dive'));

-- statement
ALTER TABLE session_guests ADD COLUMN screening_checked_on TEXT
    CHECK (screening_checked_on IS date(screening_checked_on));

-- statement
ALTER TABLE session_guests ADD COLUMN screening_edition TEXT NOT NULL DEFAULT '';

-- statement
ALTER TABLE session_guests ADD COLUMN screening_checked_by TEXT NOT NULL DEFAULT '';

-- statement
ALTER TABLE session_guests ADD COLUMN physician_approval_on TEXT
    CHECK (physician_approval_on IS date(physician_approval_on));

-- statement
ALTER TABLE session_guests ADD COLUMN screening_today TEXT NOT NULL DEFAULT 'unanswered'
    CHECK (screening_today IN ('unanswered', 'clear', 'with_care', 'not_today'));

-- statement
ALTER TABLE session_guests ADD COLUMN screening_signature TEXT NOT NULL DEFAULT 'none'
    CHECK (screening_signature IN ('none', 'on_screen', 'on_paper'));

-- statement
-- By the rules of the time: twelve themes, each yes for the physician, a yes to pregnancy for
-- nobody. A release does not answer what was not asked.
UPDATE session_guests AS g SET screening_outcome = (
    SELECT CASE
        WHEN count(*) FILTER (WHERE a.answer = 'yes' AND a.theme = 'pregnancy') > 0
            THEN 'does_not_dive'
        WHEN count(*) FILTER (WHERE a.answer = 'yes') > 0
             AND (count(*) = 12 OR g.physician_approval_seen = 0)
            THEN 'physician_required'
        WHEN count(*) = 12 THEN 'clear'
        ELSE 'unanswered' END
    FROM screening_answers a
    WHERE a.session_id = g.session_id AND a.guest_id = g.guest_id);

-- statement
-- The questions were answered for the session in which the answers stand.
UPDATE session_guests AS g
SET screening_checked_on = (SELECT s.date FROM sessions s WHERE s.id = g.session_id)
WHERE g.screening_outcome <> 'unanswered';

-- statement
UPDATE session_guests AS g SET screening_today = (
    SELECT CASE
        WHEN count(*) FILTER (WHERE t.answer = 'yes' AND t.question IN
                ('cold_or_blocked_ears', 'alcohol_or_drugs', 'new_medicine',
                 'unwilling_or_very_afraid')) > 0 THEN 'not_today'
        WHEN count(*) FILTER (WHERE t.answer = 'yes') > 0 THEN 'with_care'
        WHEN count(*) = 6 THEN 'clear'
        ELSE 'unanswered' END
    FROM screening_today t
    WHERE t.session_id = g.session_id AND t.guest_id = g.guest_id);

-- statement
-- Not tied to session_guests: a save puts the guests of a session in anew. A person or a session
-- that is taken out takes its answers along. No UNIQUE: one person may stand in a session twice.
CREATE TABLE answers_to_seal (
    id         INTEGER PRIMARY KEY,
    person_id  INTEGER NOT NULL REFERENCES persons ON DELETE CASCADE,
    session_id INTEGER NOT NULL REFERENCES sessions ON DELETE CASCADE,
    question   TEXT NOT NULL CHECK (question <> '')
) STRICT;

-- statement
CREATE INDEX answers_to_seal_by_person ON answers_to_seal (person_id);

-- statement
CREATE INDEX answers_to_seal_by_session ON answers_to_seal (session_id);

-- statement
INSERT INTO answers_to_seal (person_id, session_id, question)
SELECT g.person_id, a.session_id, a.theme
FROM screening_answers a JOIN session_guests g USING (session_id, guest_id)
WHERE a.answer = 'yes';

-- statement
INSERT INTO answers_to_seal (person_id, session_id, question)
SELECT g.person_id, t.session_id, t.question
FROM screening_today t JOIN session_guests g USING (session_id, guest_id)
WHERE t.answer = 'yes';

-- statement
DROP TABLE screening_answers;

-- statement
DROP TABLE screening_today;
