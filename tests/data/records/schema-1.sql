-- SPDX-License-Identifier: GPL-3.0-or-later
-- Rows of a session as version 0.1 of the program, with schema 1, stored them.

-- statement
INSERT INTO persons (id, name, folded_name, birth_date, language, body_mass_kg, body_height_m, shoe_size_eu, measured_rmv_l_per_min) VALUES
    (1, 'Walter', 'walter', NULL, 'en', NULL, NULL, NULL, NULL),
    (2, 'Žofie Ølgård', 'zofie olgard', '2012-02-29', 'da', 41.3, 1.53, 36.5, 17.1),
    (3, 'Anna', 'anna', '1999-12-31', 'en', NULL, NULL, NULL, NULL);

-- statement
INSERT INTO sites (name, folded_name, altitude_m, latitude_deg, salinity, bottom_depth_m, entry, meeting_place, emergency_line, emergency_plan) VALUES
    ('Grotta "Ó''Brien"', 'grotta "o''brien"', -0.3333333333333333, -35.123456789012344, 37.6, 12.1, 'boat', 'At the third post
behind the kiosk', '+00 123 456', 'Oxygen in the van; 100 % by mask.');

-- statement
INSERT INTO sessions (id, title, date, meeting_time_min, dive_time_min) VALUES
    (1, 'Saturday, first boat', '2026-07-04', 525, 600);

-- statement
INSERT INTO session_sites (session_id, name, altitude_m, latitude_deg, salinity, bottom_depth_m, entry, meeting_place, emergency_line, emergency_plan) VALUES
    (1, 'Grotta "Ó''Brien"', -0.3333333333333333, -35.123456789012344, 37.6, 12.1, 'boat', 'At the third post
behind the kiosk', '+00 123 456', 'Oxygen in the van; 100 % by mask.');

-- statement
INSERT INTO conditions (session_id, water_temperature_k, air_temperature_k, barometer_pa, visibility_m, current, wave_height_m) VALUES
    (1, 289.3, 301.7, 100730.5, 0.30000000000000004, 'moderate', 0.7);

-- statement
INSERT INTO profile_points (session_id, position, time_min, depth_m, phase) VALUES
    (1, 0, 0.0, 0.0, 'surface'),
    (1, 1, 3.3, 0.0, 'surface'),
    (1, 2, 4.7, 2.9, 'descent'),
    (1, 3, 12.1, 2.9, 'skills'),
    (1, 4, 28.333333333333336, 5.1, 'tour'),
    (1, 5, 32.0, 0.0, 'ascent');

-- statement
INSERT INTO session_rule_sets (session_id, position, rule_set_id) VALUES
    (1, 0, 'house'),
    (1, 1, 'general');

-- statement
INSERT INTO overrules (session_id, position, finding, reason, decided_by) VALUES
    (1, 0, 'ratio_exceeded:group-1', 'A second boat stays close.', 'Zoë'),
    (1, 1, 'birth_date_missing:guest-3', 'Known to the house.', '');

-- statement
INSERT INTO staff (session_id, staff_id, position, name, role, leads, cylinder_type, fill_pressure_bar, fill_temperature_k) VALUES
    (1, 'staff-1', 1, 'Ahmet Işık', 'assistant', 0, NULL, NULL, NULL),
    (1, 'staff-4', 2, '', 'instructor', 0, NULL, NULL, NULL),
    (1, 'staff-9', 0, 'Zoë Ångström', 'instructor', 1, 'steel-12', 201.3, 294.4);

-- statement
INSERT INTO staff_languages (session_id, staff_id, position, language) VALUES
    (1, 'staff-4', 0, 'tr'),
    (1, 'staff-4', 1, 'tr'),
    (1, 'staff-9', 0, 'sv'),
    (1, 'staff-9', 1, 'en'),
    (1, 'staff-9', 2, 'de');

-- statement
INSERT INTO session_groups (session_id, group_id, position, name, instructor, assistant) VALUES
    (1, 'group-1', 1, 'Blue', 'staff-4', NULL),
    (1, 'group-2', 0, 'Yellow', 'staff-9', 'staff-1'),
    (1, 'group-7', 2, '', NULL, NULL);

-- statement
INSERT INTO session_guests (session_id, guest_id, position, person_id, group_id, name, birth_date, language, body_mass_kg, body_height_m, shoe_size_eu, measured_rmv_l_per_min, physician_approval_seen, guardian_consent, certified, breathing, suit, bcd, fins, mask, regulator, lead_kg, cylinder_type, fill_pressure_bar, fill_temperature_k, note) VALUES
    (1, 'guest-1', 2, 3, NULL, 'Anna', '1999-12-31', 'en', NULL, NULL, NULL, NULL, 0, 0, 0, 'average', '', '', '', '', '', NULL, NULL, NULL, NULL, ''),
    (1, 'guest-12', 1, 2, 'group-2', 'Žofie Ølgård', '2012-02-29', 'da', 41.3, 1.53, 36.5, 17.1, 1, 1, 1, 'child', '3 mm XS', 'XXS', '36-37', 'small', 'R4', 2.2, 'aluminium-9', 198.7, 300.1, 'Afraid of fish.'),
    (1, 'guest-3', 0, 1, 'group-1', 'Walter', NULL, 'en', NULL, NULL, NULL, NULL, 0, 0, 0, 'nervous', '', '', '', '', '', NULL, NULL, NULL, NULL, '');

-- statement
INSERT INTO screening_answers (session_id, guest_id, theme, answer) VALUES
    (1, 'guest-12', 'back_hernia_diabetes', 'yes'),
    (1, 'guest-12', 'eyes_ears_sinuses', 'no'),
    (1, 'guest-12', 'heart_and_blood', 'no'),
    (1, 'guest-12', 'mind', 'no'),
    (1, 'guest-12', 'over_45_with_risks', 'yes'),
    (1, 'guest-12', 'pregnancy', 'yes'),
    (1, 'guest-12', 'prescription_medicine', 'no'),
    (1, 'guest-12', 'surgery_last_year', 'yes');

-- statement
INSERT INTO screening_today (session_id, guest_id, question, answer) VALUES
    (1, 'guest-12', 'alcohol_or_drugs', 'yes'),
    (1, 'guest-12', 'cold_or_blocked_ears', 'no'),
    (1, 'guest-12', 'flight_or_mountain_within_24_hours', 'no'),
    (1, 'guest-12', 'unwilling_or_very_afraid', 'yes');

-- statement
INSERT INTO logs (session_id, time_in_min, time_out_min, heads_in, heads_out, note) VALUES
    (1, 611, 648, 4, 3, 'One came up with the boat.');

-- statement
INSERT INTO log_divers (session_id, guest_id, position, start_pressure_bar, end_pressure_bar, duration_min, ears_troubled, note) VALUES
    (1, 'guest-12', 1, 193.1, 88.8, 29.9, 1, 'Cleared slowly.'),
    (1, 'guest-3', 0, 199.9, 71.1, 31.7, 0, '');

-- statement
INSERT INTO log_samples (session_id, guest_id, position, time_min, depth_m) VALUES
    (1, 'guest-12', 0, 0.0, 0.0),
    (1, 'guest-12', 1, 0.3333333333333333, 0.7),
    (1, 'guest-12', 2, 29.9, 0.30000000000000004);
