-- SPDX-License-Identifier: GPL-3.0-or-later
-- Schema 3: how a guest is reached.

-- statement
ALTER TABLE persons ADD COLUMN phone TEXT NOT NULL DEFAULT '';

-- statement
ALTER TABLE persons ADD COLUMN email TEXT NOT NULL DEFAULT '';

-- statement
ALTER TABLE session_guests ADD COLUMN phone TEXT NOT NULL DEFAULT '';

-- statement
ALTER TABLE session_guests ADD COLUMN email TEXT NOT NULL DEFAULT '';
