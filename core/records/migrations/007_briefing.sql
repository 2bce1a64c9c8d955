-- SPDX-License-Identifier: GPL-3.0-or-later
-- Schema 7: the guest's card (second language, units), the check of hand signals, and the skills of a
-- session. Signals and skills stand as their names in files, a space between; each list is read and
-- written whole.

-- statement
ALTER TABLE session_guests ADD COLUMN second_language TEXT NOT NULL DEFAULT '';

-- statement
ALTER TABLE session_guests ADD COLUMN units TEXT NOT NULL DEFAULT 'house'
    CHECK (units IN ('house', 'metric', 'imperial'));

-- statement
ALTER TABLE session_guests ADD COLUMN signals_understood TEXT NOT NULL DEFAULT '';

-- statement
ALTER TABLE session_guests ADD COLUMN signals_checked_on TEXT
    CHECK (signals_checked_on IS date(signals_checked_on));

-- statement
ALTER TABLE session_guests ADD COLUMN signals_language TEXT NOT NULL DEFAULT '';

-- statement
ALTER TABLE sessions ADD COLUMN skills TEXT NOT NULL DEFAULT
    'breathe_from_mouthpiece clear_mask clear_mouthpiece find_mouthpiece clear_ears fill_and_empty_bcd share_air float_at_surface';
