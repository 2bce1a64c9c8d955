<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>BackgroundJob</name>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Bookings</name>
    <message>
        <source>Not used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Family name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shoe size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dives before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day, month, year (31/12/1990)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>month, day, year (12/31/1990)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>year, month, day (1990/12/31)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>metres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feet and inches (5&apos;9&quot;)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UTF-8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UTF-16</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Windows-1252</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no name. Choose the column with the names, or untick the row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 characters; at most %2 can be kept. Shorten it in the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date in this order. Check it, or choose the order of dates above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is after the session on %2. Check the year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a weight. Wanted: a number, with kg or lb behind it if you like.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a height. Wanted: 175, 1.75 m or 5&apos;9&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is outside 15 to 250 kg. Check the number and the unit above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is outside 80 to 250 cm. Check the number and the unit above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read in more than one way. Answer the question above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot;: the year was taken for %2. Check it with the guest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 years old on the day. Check the birth date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age %1 goes into the note. Ask for the birth date: without it the rules on age cannot be checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list says %1 years, the birth date %2. One of them is wrong; ask the guest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an age. Left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no language known here. English is put; choose another in the Roster.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no European shoe size (20 to 55). Left empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number of dives. Left empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not look like an e-mail address. Taken over as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not look like a phone number. Taken over as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot;: some letters could not be read. Correct them in the Roster.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Same phone or e-mail as %1 in the roster: family, perhaps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Same phone or e-mail as %1 in row %2: family, perhaps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Same as %1 in the roster</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Same as %1 in row %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Commands</name>
    <message>
        <source>No card for %1: a stop stands. &quot;leadline plan&quot; says which.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No cards were written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cards: %1. Pages: %2. Written to %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No display was found: showing the plan here and writing the cards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be written.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EarsAndLungs</name>
    <message>
        <source>3 ft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less than a second</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mmHg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear before %1: this dive is shallower than one step. The tube locks after %2 without clearing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>once on the way down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 times on the way down, every %2 at the planned speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear at least every %1: %2. The tube locks after %3 without clearing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest step for half of that: %1. The step of the rules is longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest step for half of that: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pain is the limit, not a figure: stop, go up %1, clear, go on. Never force. Ears that will not clear end the dive; ears that still hurt afterwards need a physician.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People were hurt from %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On so shallow a dive the surface comes before the published limit, which is no promise. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From anywhere on this dive, about %1 of ascent with held breath and full lungs can tear a lung. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breathe all the time, most of all on the way up. Pain in the chest, trouble breathing or anything odd after a dive: oxygen, the emergency line, a physician.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Errors</name>
    <message>
        <source>%1 cannot be read (%2). Check the name and the permissions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be written (%2). Choose another folder or free some space.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is too large (%2 bytes; at most %3). Choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not valid JSON at %1: %2. Correct the text there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nested too deep at %1 (at most %2 levels). This is not a session file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file has version %1; this program reads up to %2. Update Leadline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 was not found. It may have been removed meanwhile.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The records in %1 cannot be used (%2). Check the disk and the permissions, or choose another file with --database.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The records in %1 were written by a newer Leadline (schema %2; this one knows %3). Update Leadline; nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The records in %1 are in use by another program. Close it and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list has %1 rows; at most %2 can be read. Split it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list has %1 columns; at most %2 can be read. Take out those that are not needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A quotation mark is opened in %1 of the list and never closed. Close it, or save the list anew as CSV.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no rows to be read. Save the list as CSV (comma-separated values) and choose that file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is damaged or holds no records (%2). Put back a copy: Records, Copies of the records. The damaged file is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The records file %1 is not there, or another one took its place. Bring the folder or disk back and try again; until then nothing can be saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The records in %1 may not be written (%2). Change the permissions of the file and its folder, then try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no room on the disk for %1 (%2). Free some space and try again; what was saved before stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds no records of Leadline (%2). Choose another file; nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped; nothing was changed (%1).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 is not %3. Correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: there is no field &quot;%2&quot;. Remove it or use one of: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the field &quot;%2&quot; is missing. Add it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 is outside %3. Enter a value in that range.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a choice. Use one of: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; does not fit. Wanted: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: has %2 entries, wanted %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a date. Write it as 2026-07-31.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: born on %2, after the session on %3. Correct the date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is there twice. Give each its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: nothing is called &quot;%2&quot;. Correct the name or add what it names.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 bar is over the working pressure of %3 bar. Read the gauge again; never use an overfilled cylinder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 min is not later than the point before (%3 min). Times must grow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: starts at %2, while another lasts until %3. Correct the times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: ends at %2, before it starts at %3. Correct the times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 m; the dive must start and end at the surface (0 m).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the log is of %2; here it is %3. Open this session&apos;s own log, or enter it by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 bar is more than the %3 bar at the start. Read the gauge again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The health vault is not set up yet. Set it up in the menu Health vault.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These records have a health vault already. Unlock it instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The health vault is locked. Unlock it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The key in this computer&apos;s keyring does not open the vault. Use another way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This recovery key does not open the vault. Perhaps a newer one was made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This passphrase does not open the vault.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After wrong tries the vault waits. Try again in %1 s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is the last way into the vault. Add another one first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The passphrase has %1 characters; it needs %2. A few words in a row are easy to keep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is no recovery key: a sign is missing or mistyped. Compare it with the paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 cannot be opened: it is damaged, or was changed outside Leadline. Nothing was removed. Take a backup, and ask the guest again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not enough memory to check the passphrase (%1 needed). Close other programs and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This computer&apos;s keyring does not answer (%1). Use the passphrase or the recovery key.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Findings</name>
    <message>
        <source>for one instructor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>even with an assistant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in this visibility</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in this current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in these waves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with a child in the group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when a guest shares no language with the staff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with a nervous guest in the group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned to %1, deeper than the %2 allowed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan no deeper than %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned to %1; %2 is usual for a first dive.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stay shallower unless the site asks for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bottom lies at %1; no more than %2 is wanted below first-time guests.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a shallower spot, or keep guests over a slope or a line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water has %1, colder than the %2 wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose warmer water, a shorter dive or warmer suits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned for %1; at most %2 while the water is below %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shorten the dive to %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visibility is %1; at least %2 is wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take fewer guests within arm&apos;s reach, or do not dive.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is more current than first-time guests should meet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait for slack water or choose a sheltered spot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waves reach %1; at most %2 is wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a sheltered entry or do not dive.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goes up at %1, faster than the %2 allowed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the way up more time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goes down at %1, faster than the %2 wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the way down more time: ears need it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearing every %1 is too seldom: the tube to the ear can lock after %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear in smaller steps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No rules are chosen, so no limit of depth, age or ratio is checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick the rules that apply on the Site tab.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No emergency number is entered for the site.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the number to call; it is printed on every card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is %1; the least age is %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offer something else: no dive before %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The birth date is missing, so no age limit can be checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the birth date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is %1 and no guardian&apos;s consent is on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Get a guardian&apos;s signed consent and tick it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is in no group.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the guest into a group.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reads %1, which nobody leading the group speaks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swap groups, find a translator, or brief with pictures and a small group.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has no cylinder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand one out and enter its pressure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still missing: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit it and enter the size or number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leads a group and has no cylinder entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter it, so that the air for bringing a guest up can be checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The health questions are still open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go through them with the guest, or take the centre&apos;s own form.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The health questions call for a physician.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask the guest for a physician&apos;s written release to dive, and tick it when you have read it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does not dive, by the health questions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tell the guest in private, and offer something else. No release changes this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not today, by the questions of the day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tell the guest in private, and offer another day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dives with care, by the questions of the day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Talk it over with the guest, see that all were asked, and when in doubt do not dive today.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today&apos;s questions are still open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask them before kitting up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day of the health check is not on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go through the questions again with the guest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The health check of %1 counts for %2 months and is out of date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The health check or the physician&apos;s release has the date %1, after the session.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct the date, or go through the questions again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day of the physician&apos;s release is not on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the release and enter its date; without one nobody can tell whether it still counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The physician&apos;s release of %1 is out of date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask the guest for a new one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The physician&apos;s release of %1 is older than the health check.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make sure that the physician knew what the guest answered since; else ask for a new one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has signed the health check.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have the guest sign, and for a minor a guardian too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not on record which questions were asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The questions were those of an earlier edition (%1).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the next check the present ones are asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 places used, %2 allowed %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move guests to another group, add an instructor, or dive in turns.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is counted on in %1 groups at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give each group staff of its own, or let the groups dive one after the other in sessions of their own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has no instructor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name an instructor for the group.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has no guests.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add guests or remove it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the first one on the Roster tab.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Would surface with %1; %2 must be left. The reserve is reached after %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shorten the dive, go shallower, or give a bigger or fuller cylinder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bringing two up from the deepest point takes %1, more than the reserve of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have the guest signal at the higher pressure; the card says so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All last the planned dive in only %1 of 100 such dives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See what would buy more minutes on the Gas tab, or plan a shorter dive.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If a guest&apos;s air fails, this cylinder brings both up in only %1 of 100 cases.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a bigger or fuller cylinder, or stay less deep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is planned to have %1 at the ascent; bringing a guest up takes %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a bigger or fuller cylinder, or shorten the dive.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Would make dive number %1 today; at most %2 are wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have somebody else lead this group, or dive on another day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Would come up %1 times today; at most %2 are wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan fewer training ascents, or share them with others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dives on day %1 in a row; at most %2 are wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan a day without diving.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Would be in the water for %1 with %2 left before a stop is needed: could not go straight up with a guest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dive shallower or shorter, wait longer, or have somebody else lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May be cold after %1; %2 are planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give a warmer suit or shorten the dive. Shivering ends it at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With %1 of lead may be heavier at depth than the %2 the BCD is likely to lift.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take off lead, or give a BCD with more lift.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With %1 of lead is likely to float up near the end, with little air left; %2 to %3 is expected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check at the surface, and take spare lead along.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carries %1 of lead; %2 to %3 is expected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check at the surface before going down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Went to %1; %2 was planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Talk it over and hold the depth next time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Went to %1, deeper than the %2 allowed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Report it as the centre asks, and ask how the guest feels.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Came back with %1; %2 should have been left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use the guest&apos;s own breathing rate for the next plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Was in the water for %1; %2 was planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check the air and the cold for the longer time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has no entry in the log.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the pressures and the time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 went in, %2 counted back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count again, two people, by name. Nobody leaves before it agrees.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GasTab</name>
    <message>
        <source>First of %1, likely %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First, likely %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the instructor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: no instructor named yet, so nobody to share air with is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: no cylinder is known for %2, so sharing it is not reckoned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: if a guest&apos;s air fails at depth, both reach the surface on the cylinder of %2 in %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within the standard error of the runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within three standard errors of the runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>further apart than the runs explain: do not rely on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, all last: %2 of 100 in closed form (first of several lognormals: David and Nagaraja, Order Statistics, 2003, from memory); %3 ± %4 of 100 in %5 runs, %6.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to over %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: nobody in this group yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: too many guests in one group for a forecast. Form groups of at most 100.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: no cylinder is known. Enter cylinder and pressure in the table.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is likely first at %2, after about %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is at %2 after about %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the air does not last. %2 All last the planned %3 in %4 dives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All last the planned %1 in %2 dives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The air lasts the planned %1 in %2 dives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: no instructor named yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: no cylinder is known for %2, so the air for bringing a guest up is not checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 needs %3 to bring a guest up, and is planned to have %4 at the ascent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In no group yet: %1. Put them into one on the Roster tab.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: all last the planned dive in %2 dives; in %3 when %4 starts with %5 less; in %6 when somebody&apos;s regulator blows off air for 10 to 60 s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How one guest breathes is a spread, not a number: lognormal about the RMV in the table. Where nothing is known, of 100 guests the 10th and the 90th differ by a factor of two; sea and briefing move all of a group together. How wide, and how much is shared: common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The minutes hold for a group that stays at the depth from which the final ascent starts. In brackets: 10 of 100 such dives are there before the first figure, 10 after the second. Minutes and chances are rounded down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same session always gives the same figures: the runs start from one fixed number, %1. They are estimates for planning: in the water the gauge and the guest&apos;s sign decide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not changed: %1 is over the working pressure of %2&apos;s cylinder, %3. Read the gauge again; never use an overfilled cylinder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not changed for %1. %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GuestBody</name>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the core cools by %1 over the planned dive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the core does not cool over the planned dive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suit %1 mm: %2 clo at the surface, squeezed to %3 clo at %4. Ten minutes after reaching depth the body loses %5 W; %6.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with the %1 carried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with the %1 to try first, as none is entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no BCD is entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the BCD is taken to lift %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead %1; %2, the guest %3 at depth with %4 left; %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sinks %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lifts %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: empty %2, full %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cylinders in this water, by usual models (from memory; the maker&apos;s figures prevail). %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too cold: the core is at %1 (ISO 9886:2004, from memory) or the body has lost 3 kcal for each kg of its mass (Webb and others, Proposed thermal limits for divers, 1976, from memory), were the group to stay at the depth from which the final ascent starts. In brackets from a leaner guest who keeps stiller in a suit of poorer fit to a fatter one who moves in one of good fit. Rely on the first, the safe side. Rounded down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feels cold: a net loss of 40 Wh/m² of a standard body (ISO 11079:2007, from memory).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmth is a heat balance of core and shell, in the form of Gagge 1971 (from memory): body surface by DuBois and DuBois 1916, fat by Deurenberg and others 1991, oxygen uptake by Knafelc 1989 and Arieli and others 1997. The suit&apos;s gas cells are squeezed by Boyle&apos;s law and conduct by Maxwell&apos;s relation; 1 clo is 0.155 m²K/W. Shivering, which makes heat, is left out: the safe side. Nobody has measured novices or children on such dives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead by Archimedes, for being neutral at the surface at the end of the dive: cylinder at the reserve, lungs half full, BCD empty, and nothing more for comfort. Density of the body by Siri 1961, lungs by Quanjer and others 1993 (from memory; children: no source), foam of 150 to 250 kg/m³, lead 11 340 kg/m³. Regulator, BCD, fins and mask together pull down %1: common practice, no source. Spreads are added in squares (JCGM 100:2008).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try first is the middle in the pieces that are in stock, or in whole kilograms. Too heavy is the greater danger, but a guest too light floats up when the cylinder is nearly empty: at the surface with a full one, a guest should sink by what the air weighs. What the BCD lifts is taken from its size (S %1, M %2, L %3), the lower end of jackets as sold, from memory; the maker&apos;s figure prevails.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May be too cold before the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The BCD may not hold this guest up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May not stay down near the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carries more lead than expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carries less lead than expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight is missing: Roster, Kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height is missing: Roster, Kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suit in mm is missing: Roster, Kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmth: outside what the estimate holds for (check weight, height and age)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cylinder is missing: Roster, Kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead: outside what the estimate holds for (check weight, height and age)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>BCD is missing, so what it holds up is not checked: Roster, Kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Perhaps too cold before the end, too: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely after %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely not within %1, in a bad case after %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is likely to get cold within %1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is likely to get too cold within %1. First to feel cold: %2, after about %3. %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First to get too cold: %1, %2. %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First to get too cold: %1, %2. Likely feels cold from %3 on. %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In no group yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – %2: %3 %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – too heavy for the BCD, perhaps, %2 more: see the table.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May not stay down with a nearly empty cylinder: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead: as far as there is an estimate, nobody is too heavy for the BCD or too light at the end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all guests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over %1 (from %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neutral</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floats %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (set aside)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Set aside: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GuestFile</name>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Born</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shoe size (EU)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air use measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dives before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jacket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mask</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Regulator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asked on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edition of the questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asked by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Physician&apos;s release seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date on the release</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure at the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time in the water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trouble with ears</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breathing taken as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Certified</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guardian&apos;s consent seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note of the staff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As known on the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dive at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gone ahead despite a finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed health records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records on file: %1. Sealed: open the vault to include them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is kept of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Also on record as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written on %1. All that the centre&apos;s records hold of this person: nothing of other guests, nothing of staff but the name of who decided something. Notes on a whole dive are left out, as they may speak of others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No session is on record.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GuestGasModel</name>
    <message>
        <source>Guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breathing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RMV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read →
in the water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the
end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Until
reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10 to 90
of 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ends
the dive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave
bottom at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minimum
for two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signal
at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guests of the group; who is likely first at the reserve in bold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The guest&apos;s group.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size and working pressure as the trade names them. What is stamped on the cylinder prevails.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gauge reading when the cylinder was handed out. A gauge may read %1 wrong: 2.5 % of its scale (EN 837-1, from memory), common practice that diving gauges are of this class.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the air in the cylinder when the gauge was read. Warm air reads high and loses pressure in the water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the guest is likely to breathe: calm %1, not known %2, nervous %3, child %4. Common practice, no source; errs to the high side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Respiratory minute volume: air breathed a minute at the pressure around the guest. By class, or measured on an own past dive; empty it to go back to the class.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the reading becomes once the cylinder is as cold as the water: no air is lost, but pressure. Air as a real gas: Lemmon and others, J. Phys. Chem. Ref. Data 29 (2000). Rounded down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left at the end of the planned dive. RMV × pressure around the guest × time, with more for settling, the way down and skills (common practice); errs to the low side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the start until the guest is at the reserve in the middle one of all such dives, were the group to stay at the depth from which the final ascent starts. Rounded down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes until the reserve in the 10th and in the 90th of 100 such dives, fastest first: how much this guest&apos;s breathing may differ from what is planned with (lognormal; its width is common practice, no source). Rounded down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many of 100 such dives end because this guest is the first of the group at the reserve. Rounded down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half of what the tour may use is gone: go back. Common practice, no source. Rounded up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the ascent now to surface with the reserve, and never with less than the minimum for two and the %1 that a gauge may read too high. Rounded up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enough in this cylinder for guest and instructor, both stressed (%1 and %2, common practice): one minute at the deepest point, then up at the allowed rate, with a margin for the regulator (U.S. Navy Diving Manual, vol. 2, p. 8-3). Rounded up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the card says: the reserve, or the minimum for two with the %1 that a gauge may read too high, the greater, rounded well up. At this reading the guest tells the instructor.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HealthQuestions</name>
    <message>
        <source>Lungs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do your lungs or your breathing ever give you trouble?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do you wheeze, have asthma, or carry an inhaler?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has a lung ever collapsed, or has your chest been operated on?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have you had pneumonia, or a cough that went on for weeks, in the past year?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has a doctor ever found anything else wrong with your lungs?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heart and blood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has anything ever been found wrong with your heart, your blood pressure or your blood?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is your blood pressure high, or do you take something to lower it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have you had a heart attack, pain in the chest on effort, or heart failure?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does your heart beat out of step, or do you have a pacemaker or a stent?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Were you born with a fault of the heart, or has a valve or a hole in it been found or mended?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do you bleed or clot too easily, or has your blood been treated?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has a doctor found or operated on anything else of your heart, your vessels or your blood?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From 45 on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do you smoke or breathe in nicotine in any way?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have you been told that your cholesterol is high?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Did a parent, brother or sister have a heart attack or a stroke before turning 50?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has a doctor asked you to lose weight or to be more careful with your heart?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Would a brisk walk for a quarter of an hour, or two lengths of a pool, leave you gasping or in pain?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eyes, ears, sinuses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have your eyes, ears, nose or sinuses been operated on, or do they keep giving you trouble?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have your sinuses been operated on in the past half year, or are they often inflamed?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has an ear been operated on, or do you hear badly or lose your balance?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do your ears hurt or stay blocked in aeroplanes, or has an eardrum been torn?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has an eye been operated on in the past three months?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has a doctor found anything else wrong with your eyes, ears, nose or sinuses?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Operation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Were you operated on in the past twelve months, or does an older operation still hold you back?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head and nerves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have you ever passed out, had a fit, hurt your head badly, or had trouble with your nerves?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Did a blow to the head knock you out in the past five years?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have you had a fit or epilepsy, or do you take something against it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Did you faint or black out in the past five years?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do you get headaches that stop you, or take something every day to keep them away?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have you had a stroke, numbness that stayed, or an illness of the nerves?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have you been treated for your mood, for panic, for attention or for an addiction?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do you get attacks of panic, or are closed spaces or open water hard to bear?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Are you in treatment now, or do you take something for your mood or attention?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have you been in hospital for your mind, or thought of taking your life?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the past five years, have alcohol or drugs been a problem for you?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back, hernia, ulcer, diabetes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do you have trouble with your back, a hernia, an ulcer or diabetes?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has your back kept you from what you do every day in the past half year?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has your back or spine been operated on?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do you have diabetes, or did you have it in pregnancy?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do you have a hernia that has not been mended and gets in your way?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do you have an ulcer, or have you had one treated in the past half year?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stomach and gut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do your stomach or your gut give you trouble?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do you have an opening of the gut at the belly, or were you operated on to lose weight?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have you lost much fluid by vomiting or diarrhoea in the past week?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do you have heartburn or food coming up most weeks?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is your gut inflamed for long times, or does it bleed?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Medicine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do you take medicine that a doctor prescribed, other than for birth control or against malaria?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pregnancy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Are you pregnant, might you be, or are you trying to be?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LanguageMenu</name>
    <message>
        <source>&amp;Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept. The language changes when Leadline is started again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That of the &amp;computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (draft)</source>
        <comment>a language nobody has checked</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Levers</name>
    <message>
        <source>over 99</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fewer than 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No deeper than %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 less for skills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suit %1 for %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2 change places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one is free by the stock list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>if one is free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heavier to carry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About as heavy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more on land</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 less on land</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask first whether they came together. %1: %2 last the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Less to see.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Less practice; the whole dive is %1 shorter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; %2. Read its gauge, check the lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needs more lead, check at the surface; %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needs another group or another time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>–</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>−%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over +%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>+%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 until the first is at the reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the first is at the reserve later than %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2. %3; all last the plan in %4, now %5. %6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of 100, as now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 → %2 of 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LogEdits</name>
    <message>
        <source>Open a log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use measured breathing</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>&quot;leadline --help&quot; shows how to call it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plans a first, supervised scuba session, prints a card for every guest and reviews the log.

  leadline [FILE]                        open the window
  leadline plan FILE [--json]            numbers and findings
  leadline cards FILE --output OUT.pdf   a card for every guest
  leadline review FILE [--json]          planned against actual

Exit codes: 0 done; 1 a stop stands; 2 bad input.
A planning aid: local law, the instructor and a physician come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session file to open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write JSON; every key names its unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the cards go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cards of a quarter Letter instead of A6.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feet, psi and degrees Fahrenheit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records file to use instead of the default.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a picture of every tab to a folder and quit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start with the dark look.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One file at a time: &quot;%1&quot; is too much.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; needs a session file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;cards&quot; needs --output OUT.pdf.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No display was found, and no session file was named.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language of the window, for example &quot;en&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no language of the window. There are: %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Names</name>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nervous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Child, at ease</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moderate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the shore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a boat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instructor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assistant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aluminium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>–</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not answered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Physician first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does not dive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read in the source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from a summary of the source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own depths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depths of the group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned depths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not asked today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With care today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed on the screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed on paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the centre&apos;s own form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edition %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>birth date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>guardian&apos;s consent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>health questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>physician&apos;s release</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to be told: does not dive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>health check anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>date of the health check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>physician&apos;s release anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold or blocked ears</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol or drugs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New medicine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flight or mountain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unwilling or very afraid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot swim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do you feel ill or unwell today, or have a cold, or ears or a nose that will not clear?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have you had alcohol or any drug since last night?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have you taken any medicine today that you did not tell us about?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Will you fly or drive over a mountain within the next 24 hours?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Would you rather not dive, are you very afraid of it, or did somebody talk you into it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Are you unable to swim or float by yourself?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>suit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>BCD</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mask</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>regulator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lead</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlaceNumbers</name>
    <message>
        <source> lb/cu ft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> kg/m³</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> At most %1 by %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure at the surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The barometer reading at the site.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standard atmosphere at %1 of altitude (ICAO Doc 7488, 1993); weather moves it by up to 5 %. A barometer reading at the site takes its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surface pressure + density × gravity × depth (hydrostatics); gravity %1 m/s² by the latitude (WGS 84).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Density of the water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From salinity %1 and %2 (equation of state of sea water 1980: Fofonoff and Millard, UNESCO 44, 1983). The coldest water is the densest: the safe side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear the ears</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every %1, every %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The step of the rules, and the time it takes at the fastest planned descent, %1. Slower is always better.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest step to clear in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water of this step weighs half of the %1 mmHg at which the tube locks, taken where a metre weighs most. Which share to use is common practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the eardrum before clearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1 mmHg of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Density × gravity × step. From %1 mmHg on muscles can no longer open the tube to the ear (80 to 90 in the literature; the lower end is the safe side).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never cleared, ears lock at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The depth whose water weighs %1 mmHg. Then: go up until it opens, never push.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A breath held from there grows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure at %1 / pressure at the surface (Boyle&apos;s law). The lung cannot follow: never hold the breath.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breath held: danger after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of way up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With full lungs: the height of water that weighs %1 mmHg, at which a lung can tear (Schaefer and others, 1958; Malhotra and Wright, 1961; from memory; the lower end of 70 to 80).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fastest way down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth / time of the steepest leg down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fastest way up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth / time of the steepest leg up.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlanText</name>
    <message>
        <source>over 240 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 is likely first at %3, after %4 (10 to 90 of 100 dives: %5 to %6). All last the planned dive in %7 dives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>    Would help most: %1
</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the instructor keeps at least %2.
</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too cold after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead to try first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Staff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dives today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days in a row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No-stop time left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before flying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 24 h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>    Set aside because: %1
</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readiness: %1 stop, %2 care, %3 note, %4 set aside
</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deepest %1, %2 there (surface %3); planned %4

</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RMV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reserve after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>
Estimates for planning, on the side of more air used. The gauge, the guest&apos;s signal, shivering and the instructor decide. Lead: check at the surface. Staff: the diver&apos;s own computer and a physician prevail.
</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RMV planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RMV actual</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProfileRefusal</name>
    <message>
        <source>The dive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corner %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not changed: %1 would be at %2 min, not later than the corner before it at %3 min. Times must grow from corner to corner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not changed: %1 would be at %2 min; a dive may last %3 min.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not changed: %1 would be at %2 m; possible is %3 m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not changed: a dive starts and ends at the surface.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not changed: a dive has %1 corners with its start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not changed. %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProfileView</name>
    <message>
        <source>At most %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too fast: at most %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>88.8 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (below this view)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>240 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear ears every %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Quantity</name>
    <message>
        <source>ft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>psi</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cu ft/min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L/min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ft/min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>m/min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cu ft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ft %2 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ddd d MMMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <comment>day, name of the month, year</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RecoverySheet</name>
    <message>
        <source>Recovery key of the health vault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever has this paper and the records can read every guest&apos;s health answers. Keep it locked away, apart from the computer. Do not photograph it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It opens the vault when the passphrase is forgotten or the computer&apos;s keyring is lost: choose &quot;Use the recovery key&quot; when unlocking. The nine groups hold no 0, 1, I or O. Small letters will do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without passphrase and without this paper nobody can open the vault any more, nor can the makers of Leadline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Roster</name>
    <message>
        <source>(no name)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instructor, no name yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assistant, no name yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n stops</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n care</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ShortNames</name>
    <message>
        <source>(no name)</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StaffExposure</name>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most %1 dives a day (%2: %3).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most %1 times up a day (%2: %3).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most %1 days with a dive in a row (%2: %3).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits: the chosen rule sets name none for staff.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the worst moment of this dive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before this session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: going straight up %2 would use %3 of what the house allows; nearest to its limit is tissue %4 of 16 (half-time %5 min).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: no load above that of the surface.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before flying %1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Set aside: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needs a stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over a limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over a limit, set aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does not dive now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Within limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>No record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 24 h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 Set aside: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Within the limits: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does not dive in this session: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken as rested, as no earlier dive is on record: %1. Enter dives on the Roster tab, Groups and staff, with the button in the column Dives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrogen in sixteen tissues by ZH-L16C (Bühlmann, Tauchmedizin, 1995; Bühlmann, Völlm and Nussberger, 2002; partly from memory), with gradient factors %1/%2 of the house: common practice, no source. With %2 at the surface no time without a stop is longer than in the DCIEM table of 1992 (to %3) or in the U.S. Navy&apos;s Revision 7 (to %4). What is left without a stop is at the deepest planned point before this session, rounded down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is not known of an earlier dive is taken as what loads more: down at once at %1, at the deepest point for all of its time, up at %2; at an altitude as if just come from the sea. Expected ascents with a guest come on top of the planned time, and no gas lost on them is credited. Dives of the %3 days before this one count.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flying: %1 h after a single dive, %2 h after repeated dives, %3 h after a dive with stops: the longer of the DAN workshop of 2002 and the UHMS workshop of 1989.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside the model: bubbles and what repeated ascents do to them, cold, work, dehydration and age. Each ascent carries its own risk.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>UnsavedQuestion</name>
    <message>
        <source>Not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last changes to this session are not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Write to a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lose them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Go back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VaultDialogs</name>
    <message>
        <source>Your name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stands in the audit trail.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VaultWords</name>
    <message>
        <source>Passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keyring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recovery key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the vault up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unlocked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Failed to unlock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed the passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set a way to unlock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Removed a way to unlock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrote a record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened a record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exported records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Erased a record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Erased a record without the vault&apos;s key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moved a record to this guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found this list broken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screening answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Physician&apos;s note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Emergency contact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at entry %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Broken at entry %1: it was changed outside Leadline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Broken at entry %1: it is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Broken at entry %1: it and what came after were cut off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Broken: entries up to %1 were written anew outside Leadline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Broken at entry %1: the seal over the list is missing or false.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Broken at entry %1: it was not written by an open vault.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This list was found broken before: see entry %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::AirPage</name>
    <message>
        <source>Cylinder, reading, temperature, breathing and RMV can be changed in the table: choose a cell and type, or press F2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimates for planning, on the high side of use. In the water the gauge, the guest&apos;s signal and the instructor decide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air of each guest</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::AnswerChoice</name>
    <message>
        <source>not answered</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::AuditDialog</name>
    <message numerus="yes">
        <source>%n entries, none changed or missing.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 Whether the end was cut off shows only when the vault is unlocked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Audit trail of the health vault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Audit trail, newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check &amp;again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;Who&quot; is the name given when unlocking; nobody checks it. A file put back to an older state as a whole is not noticed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Records taken out of the file from outside: %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::AuditModel</name>
    <message>
        <source>no longer on record (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of what</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::BackupsDialog</name>
    <message>
        <source>By itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before a copy was put back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Damaged records, kept as they were</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copies of the records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put back from a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copies and exports (*.sqlite *.json);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write everything into a folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>While Leadline is open it makes a copy a day of records that have changed: it keeps the last 7 days, then one a week for 8 weeks and one a month for 12 months. They lie in the folder %1. A copy on the same disk does not help when the disk is lost: now and then take one to another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A copy still holds guests who were erased after it was made. To erase a guest for good, delete the copies from before as well. In a copy, too, only the vault is sealed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Make a copy now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Put back…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put back from a &amp;file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Delete…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Write everything out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>checking…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Making a copy…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made and checked: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading the copy…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was changed, because the open session is not saved. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Putting the copy back…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy %1 is in place. What stood there before is in the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete a copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete the copy made %1 for good? The records themselves stay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Delete it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deleted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing everything out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written to %1. Names, phone numbers and outcomes stand open in it: keep it safe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ddd d MMM yyyy  hh:mm</source>
        <comment>date and time; the letters stay</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::BirthDateLine</name>
    <message>
        <source>Day/month/year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>17/5/1990, 17 May 1990 or 1990-05-17</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::BookingImportDialog</name>
    <message>
        <source>Choose…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import a booking list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Dates are written as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Weights are in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Heights are in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The booking list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Next message</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next cell with something to be looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Leave out rows with errors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading %1…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 rows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file does not say how its letters are written; they were read as Windows-1252. Check names with accents.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No headings were found: choose what each column means.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No column says the language: English is put.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the list itself says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list is written in more than one way. Choose one; the cells that do not fit will be shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read in more than one way. Please choose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>&amp;Add %n guests</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows with errors</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n there already</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>There is nothing else to be looked at.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A session holds %1 guests at most; there is room for %2 more. Untick some.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Add %n guests</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::BookingModel</name>
    <message>
        <source>Age %1 by the booking list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; will be added anyway. Untick to leave it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; will be left out. Tick to add it anyway.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add anyway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot be added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the list: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::BriefingTab</name>
    <message>
        <source>Put &amp;it right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Go ahead anyway…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>‹ Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A6, four to an A4 page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quarter Letter, four to a page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cards &amp;for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card si&amp;ze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Real size on s&amp;creen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No guests yet. Add them on the Roster tab.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No card to show: every ticked guest has a stop, or none is ticked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 refused: a stop stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cards are in English; %1 guests read another language best: go through the pictures together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 page saved to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 pages saved to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No printer is installed on this computer. Save the cards as a PDF instead, or install a printer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer did not start. Check that it is switched on and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer stopped after %1 pages.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 page sent to the printer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 pages sent to the printer</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::BulkPage</name>
    <message>
        <source>&amp;Put into this group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Hand out to all of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gro&amp;up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same cylinder for each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;ylinder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fi&amp;lled to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gas te&amp;mperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n guests selected</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>None</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Put %n guests into a group</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Group</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Hand out %n cylinders</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::CardList</name>
    <message>
        <source>Guests and their cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::CheckForm</name>
    <message>
        <source>Sign again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outcome by the centre&apos;s own form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outcome of the questions of the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Emergency contact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name and phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the physician wrote</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Physician&apos;s note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was answered yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which answers are sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note: holds 2000 characters; the rest was cut off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody named</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::ClearableBox</name>
    <message>
        <source>–</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::ConditionsForm</name>
    <message>
        <source>From altitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As read at the site itself, not reduced to sea level. Empty: standard atmosphere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coldest the guests will meet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Barometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visibility</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the water temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the air temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the barometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the visibility</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the waves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the current</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::CopyTimer</name>
    <message>
        <source>No copy of the records was made. %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::CountBox</name>
    <message>
        <source>–</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::CrewPanel</name>
    <message>
        <source>Blue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>White</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Silver</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Violet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Groups and staff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Groups and staff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add staff</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n groups</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n staff</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stops</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n care</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Add group</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::CylinderPicker</name>
    <message>
        <source>Cylinder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gauge reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gas temperature when read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the gauge shows it now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the gas when the gauge was read. Hot from filling or the sun, it holds less.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::DayEdit</name>
    <message>
        <source>d MMM yyyy</source>
        <comment>date; d, MMM and yyyy stay</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::DebriefModel</name>
    <message>
        <source>%1 % more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air used, over the pressure along the dive (%1). Planned: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trouble</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ear
trouble</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breathed,
plan → actual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Than
planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned
end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean
depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air used,
plan → actual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the log</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::DebriefTab</name>
    <message>
        <source>Use this &amp;breathing rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use it for &amp;all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions (*.json);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No log yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After the dive, enter each guest&apos;s pressure and time, or open a file that holds the log. Planned and actual then stand side by side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the &amp;log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open a log file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What should be remembered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the lo&amp;g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;In at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>o&amp;ut at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hea&amp;ds in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ba&amp;ck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the log shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned and actual for each guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Double-click or type to enter pressures and times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop: count again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: enter each guest&apos;s end pressure and minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air so far; still to enter: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air, as planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air; %3 was expected to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No limit was exceeded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No rate could be taken over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n guests will be planned with the rate breathed here.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::DuplicatesDialog</name>
    <message>
        <source>Who may be on record twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look before you merge: brothers and sisters share a phone number, twins a birth date. Measured air use of somebody else would mislead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Born</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One person: &amp;merge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Two persons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Not now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take &amp;back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody seems to be on record twice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That was the last pair.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pair %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>same name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>same name, turned round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>names one letter apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>same birth date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>same phone number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>same e-mail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>but the birth dates differ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signs: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none; you chose these two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Merged. All their sessions stand with the one kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept apart. They are not offered again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back: they are two persons again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::EarChart</name>
    <message>
        <source>Pressure on the eardrum on the way down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needs opening
%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tube locks
from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A scarred drum
tore at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A healthy drum
tore at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feet of water on the eardrum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Metres of water on the eardrum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never cleared: locks at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never cleared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleared every %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any drum can tear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a scarred drum can tear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tube locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needs opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing felt yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 deep, water on the eardrum:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At %1: cleared %2, never cleared %3.
</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the literature: the tube needs opening at %1 to %2 and locks at %3 (80 to 90; the lower end is the safe side). In the laboratory, scarred drums tore from %4, healthy ones from %5 (Jensen and Bonding, 1993). Pain comes far earlier.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deep</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::EarLungPanel</name>
    <message>
        <source>Ears on the way down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lungs on the way up</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::EarlierDivesDialog</name>
    <message>
        <source>Earlier dives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier dives of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dives of the seven days before this one count. Times are those of this site&apos;s clock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No dives noted. Add the first one or take them from the records.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No dives noted. Add the first one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a dive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert, in the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete, in the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the chosen dives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take from the records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dives with a log in the last seven days that %1 led or helped in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No records are open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People are found by name: enter one first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Expected ascents during this dive beside the last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected ascents during this dive beside the last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Going up with a guest or to train an ascent, and down again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 dives are the most. Remove those that are long past.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No dive of the last seven days is on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken over: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the table already: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dive of %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change earlier dives of %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::EarlierDivesModel</name>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times at the surface, the last one included.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ascents</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::EditDesk</name>
    <message>
        <source>Change %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::FigurePanel</name>
    <message>
        <source>Why?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::FindingList</name>
    <message>
        <source>Overruled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::FindingsPanel</name>
    <message>
        <source>set aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go ahead &amp;anyway…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one to see what to do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set aside because: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A check of the program itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Withdraw</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::GasTab</name>
    <message>
        <source>No guests yet. Add them on the Roster tab and hand out their cylinders; then this tab says how long their air lasts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A&amp;ir</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmth and &amp;lead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;taff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air of the guests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If so&amp;mething goes wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wh&amp;y?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::GroupList</name>
    <message>
        <source>Group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instructor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assistant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of group %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instructor of group %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assistant of group %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove group %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n guests</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::GuestBodyModel</name>
    <message>
        <source>Guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feels cold
after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too cold
after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead to try
first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead
carried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surface,
full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surface,
at the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At depth,
full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guests; who is likely cold first of a group in bold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The guest&apos;s group.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The guest begins to feel cold, in the middle case. Rounded down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The body is as cold as it should get, in the middle case; in brackets from the worst to the best case. The first figure in brackets is the safe one. Rounded down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the check at the surface with this much; in brackets from the least to the most it is likely to be, in the pieces in stock. A guest who floats at the end cannot be held down: check near the end too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the guest carries: Roster, Kit. The next columns are for this much, or for what to try first while it is open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the full cylinder, BCD empty, lungs half full.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the cylinder at the reserve, BCD empty, lungs half full: should be neutral.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the deepest planned point, suit squeezed, cylinder full, BCD empty: what the BCD must hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness of the foam, read from the suit&apos;s label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What needs attention, and what is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm: %2 clo at the surface, %3 clo at depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, likely cold first</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::GuestBodyPanel</name>
    <message>
        <source>Warmth and lead of each guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No guests yet. Add them on the Roster tab with weight, height, suit and cylinder (page Kit); then this says who gets cold first and how much lead to try.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimates. Shivering or the sign “cold” ends the dive, whatever stands here. Lead is a starting value: check it at the surface before going down (common practice), and allow for the air that will be breathed: a guest light at the end floats up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why? Warmth and lead</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::GuestEditor</name>
    <message>
        <source>&amp;Person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;creening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>K&amp;it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not ready: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not ready: the group or the session is not</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May dive, with care: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (%1 overruled)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stops the dive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>care</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::GuestGasDelegate</name>
    <message>
        <source>Cylinder of the guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the guest breathes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure as read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the air when read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured RMV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By class</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::GuestGasModel</name>
    <message>
        <source>%1 → %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, by class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change a guest&apos;s cylinder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change a guest&apos;s pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the temperature of a guest&apos;s air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change how a guest breathes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change a guest&apos;s RMV</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::GuestModel</name>
    <message>
        <source>Group: stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session: stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>–</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Complete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overruled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Consent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::GuestTable</name>
    <message>
        <source>Guests</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::KitPage</name>
    <message>
        <source>None yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;ylinder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fi&amp;lled to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gas te&amp;mperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What others have</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;uit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;BCD</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mas&amp;k</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fi&amp;ns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Regulat&amp;or no.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lea&amp;d</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heigh&amp;t</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shoe si&amp;ze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shoe size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the gauge and enter what it shows.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::KnownGuestList</name>
    <message>
        <source>Persons on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>born %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>birth date not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n sessions</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::LanguageButton</name>
    <message>
        <source>None yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::LeverChart</name>
    <message>
        <source>What would &amp;buy more minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all last the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A click or Enter makes the change; each judged alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would buy more minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take &amp;it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing here would help: the air is not what limits this dive.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once a guest has a cylinder and its pressure, the changes that would help stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::LeverModel</name>
    <message>
        <source>Apply: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::LogChart</name>
    <message>
        <source>up too fast: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too deep: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No depths were read for %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth over time, planned and logged</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::LungChart</name>
    <message>
        <source>Held breath on the way up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same breath at the surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A full breath held here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 up: a lung can tear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 up:
a lung can tear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1, full lungs:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the surface %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>surface before the limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>can tear after %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the literature: lungs tore from %1 to 80 mmHg across them (Schaefer and others, 1958; Malhotra and Wright, 1961; from memory; the lower end is the safe side). Divers were hurt coming up from 1 m (Benton and others, 1996) and from 1 to 2 m (Harvey and others, 2024).</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::MainWindow</name>
    <message>
        <source>Open a session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions (*.json);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the session to a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions (*.json)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The five questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;1 Roster</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;2 Site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;3 Gas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;4 Briefing Sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;5 Debrief</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep in my records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept. Every change is saved from now on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the message</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written to %1. The file holds names and who may dive: keep it safe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened from the file %1: changes are not kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The records could not be opened: changes are not kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leadline[*]</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1[*] – Leadline</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::MarkerChart</name>
    <message>
        <source>Arrow keys read out what holds at a depth.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::MeaningHeader</name>
    <message>
        <source>Meaning of the column %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::NoticeStrip</name>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo this step</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::OverruleDialog</name>
    <message>
        <source>Go ahead despite this finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The reason is kept with the session. Local law and your centre&apos;s standard come first: they cannot be set aside here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why is it right to go ahead?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Decided by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Go ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set a finding aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdraw a decision</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::PagePreview</name>
    <message>
        <source>Preview of the pages</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::PeopleDialog</name>
    <message>
        <source>Guests on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write all that is kept of this guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page to read (*.html);;Data (*.json)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find by name, phone or e-mail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a guest by name, phone or e-mail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Show them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a &amp;month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is here t&amp;wice…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mer&amp;ge two…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select two guests who are one person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a merge &amp;back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write to a &amp;file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than %L1 found</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln guests</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Nobody found</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln found</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>health answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>phone and e-mail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>everything that tells who it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due for erasure: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select a guest to see what is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two selected: merge them if they are one person.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several selected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shoe %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air use %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n dives before</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Merged into this guest: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln guests are due for erasure by the centre&apos;s periods. Nothing is erased by itself.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%L1 due for erasure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for guests on record twice…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back: %1 is a guest of their own again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written to %1. It holds personal data: hand it to nobody but the guest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is removed while the open session is not saved. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Removing the guest…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Removed. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Removed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Removed. Another program reads the records: close it, and Leadline after it, so that nothing is left on the disk.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::PeopleModel</name>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Born</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::PersonPage</name>
    <message>
        <source>as measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the choice above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a suit thin for this water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned with %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned with %1, %2 and: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Written consent seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Certified diver</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Born</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gro&amp;up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guardian</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comes along, uses a place in the group and needs no teaching.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Companion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the guest&apos;s life, before this one. Empty: not asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dives made before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guardian&apos;s written consent seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Companion, a certified diver</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Consent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name: a guest needs one. The last one is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a date. Write it as 17/5/1990, with four digits for the year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breathing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brea&amp;thes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air used a minute at the surface, from an own past dive.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured breathing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For staff. Never printed. Not for health.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note: holds 2000 characters; the rest was cut off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take over %1 from the records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 years old on the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age not known</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::PlaceFindings</name>
    <message>
        <source>%1 – %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No rules are ticked to compare this place with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing about the place breaks a rule that is ticked.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::PlaceForm</name>
    <message>
        <source>Sea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fresh water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brackish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the site&apos;s name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Known sites</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Known sites from your records; choosing one fills in this form. Down opens the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entr&amp;y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The deepest a guest could sink there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the bottom depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bottom depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salinity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practical salinity, a number without unit: 0 fresh water, 35 open sea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the salinity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the water&apos;s surface above the sea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the altitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Altitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>North positive, south negative; gravity follows from it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the latitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>La&amp;titude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the meeting place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where guests come together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Meeting place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the emergency number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printed on every card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Emergency n&amp;umber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Oxygen, phone or radio, nearest chamber, the way out, how to recall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Emergency &amp;plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the emergency plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the site %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::PlaceNumbers</name>
    <message>
        <source>Why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why? %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::PressureChart</name>
    <message>
        <source>Pressure over time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3000 psi</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>240 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%.0f min</source>
        <comment>format of a number of minutes</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%.0f psi</source>
        <comment>format of a pressure</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%.0f bar</source>
        <comment>format of a pressure</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>and %n more in the table</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2 after %3, at %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At %1 after, staying down (10 to 90 of 100 dives)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: at %2 after %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reserve %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned end %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::ProfileDelegate</name>
    <message>
        <source>What is done on the way to the corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time of the corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth of the corner</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::ProfileModel</name>
    <message>
        <source>%1 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What on the way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes after the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth of the group at that time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the group does on the way to this corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the time of a corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the depth of a corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change what is done on a leg</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::ProfilePanel</name>
    <message>
        <source>&amp;Deepest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth of the tour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skills at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth at which the first exercises are done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skills for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes of exercises</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tour &amp;for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes of the tour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dra&amp;w the plain dive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replaces the corners by: surface, down, skills, down, tour, up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corners of the profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add c&amp;orner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Later corners move along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When a corner moves in time, the legs after it keep their length and their speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the plain dive</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::ProfileView</name>
    <message>
        <source>Dive profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag this corner, with Shift in small steps. With the keyboard: Tab to the next corner, arrows, Insert, Delete.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 min   %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>   %1 absolute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, deepest %2. Tab goes from corner to corner; arrows move it, Insert adds one, Delete removes it. The table beside it holds the same numbers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corner %1 of %2, end of %3: %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move a leg of the profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move a corner of the profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a corner to the profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove a corner of the profile</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::QuestionForm</name>
    <message>
        <source>%1: no to all that are open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Health, before the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Health</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, more closely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today, before kitting up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All others no to&amp;day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All no to&amp;day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All &amp;others no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All n&amp;o</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All others no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All no</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::RecoveryKeyDialog</name>
    <message>
        <source>New recovery key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Replace the old key</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::RecoveryPage</name>
    <message>
        <source>Save the recovery key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recovery-key.pdf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is the recovery key. It opens the vault when the passphrase is forgotten or this computer is lost. Put it on paper and lock it away; it is not shown again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without passphrase and without this key nobody can open the vault any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Type group %1 from your paper:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recovery key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved to %1. Print it, lock the paper away and delete the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No printer is installed on this computer. Write the key down, or save it as a PDF on a stick.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sent to the printer. Check the paper before you go on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer did not take it. Check that it is switched on, or write the key down.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::RedListDialog</name>
    <message>
        <source>Red list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who must still see a physician, bring consent, answer or renew, over all sessions on record from today on. Only outcomes are looked at; nothing is unlocked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is waiting for anything.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved to %1. It holds names and phone numbers: keep it safe.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::RedListModel</name>
    <message>
        <source>None on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still waited for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::RemovalDialog</name>
    <message>
        <source>&amp;Everything that tells who it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only &amp;phone and e-mail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only &amp;health answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I know that this &amp;cannot be undone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove a guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Also delete older &amp;copies of the records (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They were made before an update and still hold this guest and all others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Care: the last session is less than %1 months ago, and records of it may have to be kept that long (%2; %3). Local law comes first: ask before you remove.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n copies in Records &gt; Copies of the records may still hold this guest. Delete them there, or they bring the guest back when one is restored.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Files you wrote or printed, and copies kept elsewhere, are not touched: remove them yourself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Health answers and sealed records: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone numbers and e-mail addresses: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions: %1, logged dives: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, with the guest&apos;s name and all else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name, birth date, language, sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes of staff: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The name in other texts of these sessions: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Merged into this guest: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. In them stands &quot;Guest removed&quot;, with lead, cylinder and what was logged.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::RestoreDialog</name>
    <message>
        <source>Put back a copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put back the copy %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Sessions that change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;All tables</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The records as they are now are kept as a copy of their own, so that this can be taken back. Close Leadline on other screens first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Put this copy back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The records of now cannot be compared: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy holds %1 sessions, %2 guests in the register and %3 logs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: no change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 would be lost, %3 would come back, %4 would change back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guests in the register</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Logs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would happen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions that would change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comes back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changes back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Come back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows of every table</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::RosterTab</name>
    <message>
        <source>Add guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import a booking list…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Export the guests…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import a booking list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lists (*.csv *.tsv *.txt);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the guests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lists (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a guest or a group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a guest or a group (Ctrl+F)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show all guests again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert or Ctrl+Shift+N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete, in the table. Can be undone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kit in stock…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cylinders, suits and lead that there are to hand out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lists</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take guests from a booking list, or write them to one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No guests yet. Add the first one (Ins) or open a session.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is called &quot;%1&quot;. Esc shows all guests again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a guest to see who it is, what the health questions came to and what was handed out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Remove %n guests</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>A session holds %1 guests at most. Open another for the rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guest %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n guests</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Removed %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Added %n guests from the list</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Written to %1: names, birth dates, sizes, contacts and notes. Health answers and consent are not in it, unless a note speaks of them: read the notes before you pass it on.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::RuleSetList</name>
    <message>
        <source>Rule sets that apply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where several apply, the strictest value counts. Local law and your centre&apos;s standard come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Care: no rule set is ticked. Depth, age and the number of guests are not checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apply a rule set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave a rule set out</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::ScreeningPage</name>
    <message>
        <source>The vault is locked: what was open here has been put away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed on %1 under the name %2: make sure that it is the same person.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sealed answers of %1 are in a form this program does not know. Go through the questions again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sealed answers are those of another edition (%1); the questions are asked anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is signed yet. Sign on the strip, or choose another way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not recorded: the answers could not be sealed. %1 Try again after locking and opening the vault, or record the outcome alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the health check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Health check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take over the last health check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Physician&apos;s release</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Physician&apos;s &amp;written release seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date of the physician&apos;s release</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date. Write it as 17/5/2026, with four digits for the year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing changed: take it over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the &amp;questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the centre&apos;s own &amp;form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The guest filled in a form of the centre: only its outcome is recorded here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Return</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close without recording</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short questions for talking it over. They diagnose nobody: the centre&apos;s own form and the physician prevail.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked, day not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked on %1: %2. Has anything changed since?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only the outcome is recorded; the form stays with the centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answers, note, contact and a signature drawn here are sealed in the vault.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This session is not in the records: only the outcome is kept, and the answers go when you record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vault is not open: only the outcome is kept, and the answers go when you record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comes to: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n still open</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Record the outcome alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::SessionLine</name>
    <message>
        <source>Name of the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change meeting time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change dive time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change who leads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n stops</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n care</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Ready · %n care</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n set aside</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Show the findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <comment>date; ddd, d, MMM and yyyy stay</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::SessionsDialog</name>
    <message>
        <source>Sessions on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Delete…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete &quot;%1&quot; with its plan and log for good? The guests stay on record.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::SessionsModel</name>
    <message>
        <source>(no name)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (logged)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guests</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::ShoeBox</name>
    <message>
        <source>EU </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>–</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::SignaturePad</name>
    <message>
        <source>Strip to sign on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign here</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::SiteTab</name>
    <message>
        <source>Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the sea does today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules that apply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site and conditions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Numbers of the place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Profile and numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 deep, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::StaffExposureModel</name>
    <message>
        <source>Staff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No-stop
time left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned
now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of
the limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dives
today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times up
today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days in
a row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since the
last dive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before
flying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instructors and assistants of this session.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How this dive stands to the limits of the chosen rules, as far as earlier dives are on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes at the deepest planned point, %1, until going straight up would no longer be allowed, before this session. Rounded down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time of this session&apos;s dive.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the nitrogen that the house allows for going straight up, the most used at any moment of this dive; ashore, before this session. 100 % is the limit. Rounded up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dives of this day, this one included.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times at the surface this day, those expected in this session included.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days with a dive up to today.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surface interval up to this session&apos;s dive. Rounded down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours to stay off aircraft and passes after the last dive, by published guidance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, at most %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 after the last dive: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::StaffExposurePanel</name>
    <message>
        <source>What earlier dives leave to each member of staff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody on the staff yet. Add them on the Roster tab under Groups and staff, and enter their dives of the last seven days there with the button in the column Dives; then this says who is free to lead this dive.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An aid for planning. What the diver&apos;s own computer, a physician and the makers say prevails. Tissues by ZH-L16C with gradient factors %1/%2, common practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why? Staff</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::StaffList</name>
    <message>
        <source>Staff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speaks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gas at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove member of staff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change staff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Role of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Languages of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cylinder of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gauge reading of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gas temperature of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier dives of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::StockDialog</name>
    <message>
        <source>Kit in stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What there is, kit handed out included. A part left empty is not recorded, and nothing in it counts as missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cylinders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, in stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n handed out</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Suits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suits in stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a suit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert, in the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete, in the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the chosen suits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add those &amp;handed out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lead pieces, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lead pieces, lb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sizes of lead pieces in kilograms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sizes of lead pieces in pounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For example 0.5 1 2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For example 1 2 3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 labels are the most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead pieces: &quot;%1&quot; is not a list of sizes. Write numbers with spaces between: 0.5 1 2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead pieces, kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not recorded: whole kilograms are assumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change kit in stock</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::SuitStockModel</name>
    <message>
        <source>Suit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handed out</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::VaultActions</name>
    <message>
        <source>&amp;Health vault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Unlock…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock when &amp;idle for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change the passphrase…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The passphrase was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New &amp;recovery key…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The new recovery key counts from now on. Destroy the old paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Audit trail…</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n minutes</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Set up…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a passphrase…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Health vault locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unlock it (Ctrl+Shift+L)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No health vault: the records are not open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Health vault not set up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set it up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Health vault open: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock it (Ctrl+L)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The health vault is set up and open. It locks by itself after %1 min without a key or a click.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n answers an older version kept open are sealed now.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Copies made before still hold them: delete those in Records &gt; Copies of the records, and files named ...before-schema-*.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::VaultPassphraseDialog</name>
    <message>
        <source>Change the passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Old passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A&amp;dd</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At least %1 characters: a few words in a row are easy to keep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of at least %2 characters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two are not the same yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The old passphrase is not the right one. Nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::VaultSetUpDialog</name>
    <message>
        <source>Set up the health vault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A &amp;passphrase of the centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This computer&apos;s &amp;keyring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Who sets it up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pa&amp;ssphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Health answers, notes of physicians, emergency contacts and signatures are kept sealed in a vault. Choose how it is opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The keyring opens with the login to this computer: quick, and as safe as that login.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At least %1 characters: a few words in a row are easy to keep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of at least %2 characters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two are not the same yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This computer&apos;s keyring does not answer. Choose a passphrase.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::VaultUnlockDialog</name>
    <message>
        <source>&amp;Passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recovery &amp;key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use the &amp;recovery key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unlock the health vault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nine groups of four</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Unlock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unlock by &amp;keyring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Who is asking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait %1 s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This computer&apos;s keyring has no key of this vault. Use the recovery key.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>leadline::WindowActions</name>
    <message>
        <source>&amp;Session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a s&amp;ample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Write to a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Sessions on record…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+O</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Guests on record…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+G</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Red list…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+R</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who must still see a physician, bring consent, answer or renew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copies of the records…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No samples installed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Find a guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feet, psi and °F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;About Leadline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About Leadline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;p&gt;&lt;b&gt;Leadline %1&lt;/b&gt;&lt;/p&gt;&lt;p&gt;Plans a first, supervised scuba session, prints a card for every guest and reviews the log.&lt;/p&gt;&lt;p&gt;A planning aid: no dive computer, no medical device, no legal advice. Local law, your organisation&apos;s standard, the instructor and a physician come first. Numbers are estimates to be checked in the water.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later.&lt;/p&gt;</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
