<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>BackgroundJob</name>
    <message>
        <source>Stop</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Wird abgebrochen&#xa0;…</translation>
    </message>
</context>
<context>
    <name>BeachSheet</name>
    <message>
        <source>%1: %2</source>
        <comment>severity: what is wrong</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>severity, whom it is about: what is wrong</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>whom it is about: what is wrong</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 Goes ahead because: %2</source>
        <translation>%1 Trotzdem, weil: %2</translation>
    </message>
    <message>
        <source>%1 Goes ahead because: %2 (%3)</source>
        <translation>%1 Trotzdem, weil: %2 (%3)</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>nicht gefragt</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>signals known</comment>
        <translation>%1 von %2</translation>
    </message>
    <message numerus="yes">
        <source>%n years</source>
        <translation>
            <numerusform>%n Jahr</numerusform>
            <numerusform>%n Jahre</numerusform>
        </translation>
    </message>
    <message>
        <source>age not known</source>
        <translation>Alter nicht bekannt</translation>
    </message>
    <message>
        <source>health clear</source>
        <translation>Gesundheit in Ordnung</translation>
    </message>
    <message>
        <source>health: %1, %2</source>
        <comment>before the day, today</comment>
        <translation>Gesundheit: %1, %2</translation>
    </message>
    <message>
        <source>signals %1</source>
        <translation>Zeichen: %1</translation>
    </message>
    <message>
        <source>Signals not yet known: %1.</source>
        <translation>Noch nicht gekonnte Zeichen: %1.</translation>
    </message>
    <message>
        <source>&gt;%1</source>
        <comment>more minutes than</comment>
        <translation>&gt;%1</translation>
    </message>
    <message>
        <source>Instructor: %1 at least, to bring one guest up.</source>
        <translation>Tauchlehrer: mindestens %1, um einen Gast nach oben zu bringen.</translation>
    </message>
    <message>
        <source>In %1, up by %2 (%3): the air ends it before the plan does.</source>
        <translation>Ins Wasser %1, oben bis %2 (%3): Die Luft endet vor dem Plan.</translation>
    </message>
    <message>
        <source>In %1, back by %2 (%3).</source>
        <translation>Ins Wasser %1, zurück bis %2 (%3).</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>role, name</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 · meet %2 · in the water %3</source>
        <translation>%1 · Treffen %2 · im Wasser %3</translation>
    </message>
    <message>
        <source>In an emergency call</source>
        <translation>Im Notfall anrufen</translation>
    </message>
    <message>
        <source>not entered: write it here</source>
        <translation>nicht eingetragen: hier aufschreiben</translation>
    </message>
    <message>
        <source>No emergency plan is entered: write it here (oxygen, phone, chamber, way out)</source>
        <translation>Kein Notfallplan eingetragen: hier aufschreiben (Sauerstoff, Telefon, Druckkammer, Rettungsweg)</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Gast</translation>
    </message>
    <message>
        <source>what to know, kit</source>
        <translation>Wichtiges, Ausrüstung</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Wenig</translation>
    </message>
    <message>
        <source>of low</source>
        <translation>Luft, Nr.</translation>
    </message>
    <message>
        <source>Signal at</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>Turn at</source>
        <translation>Umkehr</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Mind.</translation>
    </message>
    <message>
        <source>Lasts</source>
        <translation>Reicht</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>RMV</source>
        <translation>AMV</translation>
    </message>
    <message>
        <source>Nobody is in this group yet.</source>
        <translation>In dieser Gruppe ist noch niemand.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>guest, flag</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Signals of need</source>
        <translation>Notzeichen</translation>
    </message>
    <message>
        <source>Heads, air, log</source>
        <translation>Kopfzahl, Luft, Protokoll</translation>
    </message>
    <message>
        <source>write %1, %2</source>
        <translation>in %1, %2</translation>
    </message>
    <message>
        <source>In</source>
        <translation>Hinein</translation>
    </message>
    <message>
        <source>2 tick</source>
        <translation>2 haken ab</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation>Max. Tiefe</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Heraus</translation>
    </message>
    <message>
        <source>Heads in</source>
        <translation>Hinein</translation>
    </message>
    <message>
        <source>Heads out</source>
        <translation>Heraus</translation>
    </message>
    <message>
        <source>of %1</source>
        <comment>heads of the whole group</comment>
        <translation>von %1</translation>
    </message>
    <message>
        <source>at</source>
        <comment>a time of day</comment>
        <translation>um</translation>
    </message>
    <message>
        <source>by</source>
        <comment>who counted</comment>
        <translation>von</translation>
    </message>
    <message>
        <source>Open.</source>
        <translation>Offen.</translation>
    </message>
    <message>
        <source>Decided.</source>
        <translation>Entschieden.</translation>
    </message>
    <message>
        <source>No stop and no caution of the group is open.</source>
        <translation>Für die Gruppe ist kein Stopp und kein „Achtung“ offen.</translation>
    </message>
    <message>
        <source>over %1 min</source>
        <translation>über %1&#xa0;min</translation>
    </message>
    <message>
        <source>Somebody is low on air after about %2 (in 10 of 100 dives before %3), most likely first: %1.</source>
        <translation>Jemand hat nach etwa %2 wenig Luft (bei 10 von 100 Tauchgängen vor %3), am ehesten zuerst: %1.</translation>
    </message>
    <message>
        <source>The table gives each guest’s own forecast; in brackets: sooner in 10 of 100 dives.</source>
        <translation>Die Tabelle nennt für jeden Gast die eigene Vorhersage; in Klammern: bei 10 von 100 Tauchgängen früher.</translation>
    </message>
    <message>
        <source>No forecast: the table gives the planned minutes. About half of all dives are low on air sooner.</source>
        <translation>Keine Vorhersage: Die Tabelle nennt die geplanten Minuten. Bei etwa der Hälfte der Tauchgänge ist die Luft früher knapp.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n more under “Open”.</source>
        <comment>severity, flags of a guest</comment>
        <translation>
            <numerusform>%1: %n weiteres unter „Offen“.</numerusform>
            <numerusform>%1: %n weitere unter „Offen“.</numerusform>
        </translation>
    </message>
    <message>
        <source>Photo</source>
        <comment>room for one, in the table of guests</comment>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Low after</source>
        <translation>Knapp nach</translation>
    </message>
    <message>
        <source>min (early)</source>
        <comment>column of a table</comment>
        <translation>min (früh)</translation>
    </message>
    <message>
        <source>min, plan</source>
        <comment>column of a table</comment>
        <translation>min, Plan</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>minutes, early minutes</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>The whole plan stands on page %1.</source>
        <translation>Der ganze Plan steht auf Seite %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n more on page %1.</source>
        <comment>findings, flags of guests and decisions</comment>
        <translation>
            <numerusform>%n weiterer Punkt auf Seite %1.</numerusform>
            <numerusform>%n weitere Punkte auf Seite %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Kit.</source>
        <translation>Ausrüstung.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>guest, kit</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Continued: what to know</source>
        <translation>Fortsetzung: was zu wissen ist</translation>
    </message>
</context>
<context>
    <name>Bookings</name>
    <message>
        <source>Not used</source>
        <translation>Nicht verwendet</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>First name</source>
        <translation>Vorname</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Nachname</translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation>Geburtsdatum</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Shoe size</source>
        <translation>Schuhgröße</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation>E-Mail</translation>
    </message>
    <message>
        <source>Dives before</source>
        <translation>Bisherige Tauchgänge</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>day, month, year (31/12/1990)</source>
        <translation>Tag, Monat, Jahr (31.12.1990)</translation>
    </message>
    <message>
        <source>month, day, year (12/31/1990)</source>
        <translation>Monat, Tag, Jahr (12/31/1990)</translation>
    </message>
    <message>
        <source>year, month, day (1990/12/31)</source>
        <translation>Jahr, Monat, Tag (1990/12/31)</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>Kilogramm</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>Pfund (lb)</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>Zentimeter</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>feet and inches (5&apos;9&quot;)</source>
        <translation>Fuß und Zoll (5&apos;9&quot;)</translation>
    </message>
    <message>
        <source>UTF-8</source>
        <translation>UTF-8</translation>
    </message>
    <message>
        <source>UTF-16</source>
        <translation>UTF-16</translation>
    </message>
    <message>
        <source>Windows-1252</source>
        <translation>Windows-1252</translation>
    </message>
    <message>
        <source>There is no name. Choose the column with the names, or untick the row.</source>
        <translation>Der Name fehlt. Wählen Sie die Spalte mit den Namen, oder entfernen Sie das Häkchen der Zeile.</translation>
    </message>
    <message>
        <source>%1 characters; at most %2 can be kept. Shorten it in the list.</source>
        <translation>%1 Zeichen; höchstens %2 können behalten werden. Kürzen Sie den Text in der Liste.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date in this order. Check it, or choose the order of dates above.</source>
        <translation>„%1“ ist in dieser Reihenfolge kein Datum. Prüfen Sie es, oder wählen Sie oben die Reihenfolge der Datumsangaben.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is after the session on %2. Check the year.</source>
        <translation>„%1“ liegt nach dem Termin am %2. Prüfen Sie das Jahr.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a weight. Wanted: a number, with kg or lb behind it if you like.</source>
        <translation>„%1“ ist kein Gewicht. Erwartet: eine Zahl, auf Wunsch mit kg oder lb dahinter.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a height. Wanted: 175, 1.75 m or 5&apos;9&quot;.</source>
        <translation>„%1“ ist keine Körpergröße. Erwartet: 175, 1,75&#xa0;m oder 5&apos;9&quot;.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is outside 15 to 250 kg. Check the number and the unit above.</source>
        <translation>„%1“ liegt nicht zwischen 15 und 250&#xa0;kg. Prüfen Sie die Zahl und die Einheit oben.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is outside 80 to 250 cm. Check the number and the unit above.</source>
        <translation>„%1“ liegt nicht zwischen 80 und 250&#xa0;cm. Prüfen Sie die Zahl und die Einheit oben.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read in more than one way. Answer the question above.</source>
        <translation>„%1“ lässt sich auf mehrere Arten lesen. Beantworten Sie die Frage oben.</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: the year was taken for %2. Check it with the guest.</source>
        <translation>„%1“: Als Jahr wurde %2 angenommen. Fragen Sie den Gast.</translation>
    </message>
    <message>
        <source>%1 years old on the day. Check the birth date.</source>
        <translation>%1 Jahre alt an diesem Tag. Prüfen Sie das Geburtsdatum.</translation>
    </message>
    <message>
        <source>Age %1 goes into the note. Ask for the birth date: without it the rules on age cannot be checked.</source>
        <translation>Das Alter %1 kommt in die Notiz. Fragen Sie nach dem Geburtsdatum: Ohne dieses lassen sich die Altersregeln nicht prüfen.</translation>
    </message>
    <message>
        <source>The list says %1 years, the birth date %2. One of them is wrong; ask the guest.</source>
        <translation>Die Liste sagt %1 Jahre, das Geburtsdatum %2. Eines davon ist falsch; fragen Sie den Gast.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an age. Left out.</source>
        <translation>„%1“ ist kein Alter. Weggelassen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no language known here. English is put; choose another in the Roster.</source>
        <translation>„%1“ ist hier als Sprache nicht bekannt. Englisch wurde eingesetzt; wählen Sie in der Gästeliste eine andere.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no European shoe size (20 to 55). Left empty.</source>
        <translation>„%1“ ist keine europäische Schuhgröße (20 bis 55). Leer gelassen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number of dives. Left empty.</source>
        <translation>„%1“ ist keine Zahl von Tauchgängen. Leer gelassen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not look like an e-mail address. Taken over as it is.</source>
        <translation>„%1“ sieht nicht wie eine E-Mail-Adresse aus. Unverändert übernommen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not look like a phone number. Taken over as it is.</source>
        <translation>„%1“ sieht nicht wie eine Telefonnummer aus. Unverändert übernommen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: some letters could not be read. Correct them in the Roster.</source>
        <translation>„%1“: Einige Buchstaben waren nicht lesbar. Berichtigen Sie sie in der Gästeliste.</translation>
    </message>
    <message>
        <source>Same phone or e-mail as %1 in the roster: family, perhaps.</source>
        <translation>Gleiches Telefon oder gleiche E-Mail wie %1 in der Gästeliste: vielleicht Familie.</translation>
    </message>
    <message>
        <source>Same phone or e-mail as %1 in row %2: family, perhaps.</source>
        <translation>Gleiches Telefon oder gleiche E-Mail wie %1 in Zeile %2: vielleicht Familie.</translation>
    </message>
    <message>
        <source>Same as %1 in the roster</source>
        <translation>Gleich wie %1 in der Gästeliste</translation>
    </message>
    <message>
        <source>Same as %1 in row %2</source>
        <translation>Gleich wie %1 in Zeile %2</translation>
    </message>
</context>
<context>
    <name>CardLanguage</name>
    <message>
        <source>language not entered</source>
        <translation>Sprache nicht eingetragen</translation>
    </message>
    <message>
        <source>Language not entered: the card is in English</source>
        <translation>Sprache nicht eingetragen: Die Karte ist auf Englisch</translation>
    </message>
    <message>
        <source>No %1 yet: the card is in English</source>
        <translation>%1 gibt es noch nicht: Die Karte ist auf Englisch</translation>
    </message>
    <message>
        <source>%1: a draft, not checked by a speaker</source>
        <translation>%1: ein Entwurf, von niemandem geprüft, der die Sprache spricht</translation>
    </message>
    <message>
        <source>%1: checked by a speaker</source>
        <translation>%1: geprüft von jemandem, der die Sprache spricht</translation>
    </message>
    <message>
        <source>%1: checked by %2</source>
        <translation>%1: geprüft von %2</translation>
    </message>
    <message>
        <source>%1 (draft)</source>
        <comment>a language</comment>
        <translation>%1 (Entwurf)</translation>
    </message>
    <message>
        <source>English, no %1 yet</source>
        <comment>a language</comment>
        <translation>Englisch, noch kein %1</translation>
    </message>
    <message>
        <source>%1, no %2 yet</source>
        <comment>two languages</comment>
        <translation>%1, noch kein %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>two languages</comment>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>Cards in %1: drafted, not checked by a speaker.</source>
        <translation>Karten auf %1: Entwürfe, von niemandem geprüft, der die Sprache spricht.</translation>
    </message>
    <message>
        <source>No cards in %1: in English instead.</source>
        <translation>Keine Karten auf %1: stattdessen auf Englisch.</translation>
    </message>
</context>
<context>
    <name>Commands</name>
    <message>
        <source>No card for %1: a stop stands. &quot;leadline plan&quot; says which.</source>
        <translation>Keine Karte für %1: Ein Stopp besteht. „leadline plan“ zeigt, welcher.</translation>
    </message>
    <message>
        <source>No cards were written.</source>
        <translation>Es wurden keine Karten geschrieben.</translation>
    </message>
    <message>
        <source>Cards: %1. Pages: %2. Written to %3</source>
        <translation>Karten: %1. Seiten: %2. Geschrieben nach %3</translation>
    </message>
    <message>
        <source>No display was found: showing the plan here and writing the cards.</source>
        <translation>Kein Bildschirm gefunden: Der Plan wird hier gezeigt, die Karten werden geschrieben.</translation>
    </message>
    <message>
        <source>%1 cannot be made.</source>
        <translation>%1 kann nicht angelegt werden.</translation>
    </message>
    <message>
        <source>%1 cannot be written.</source>
        <translation>%1 kann nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>No font here has the letters %1 of &quot;%2&quot;: write them by hand, or install a font that has them.</source>
        <translation>Keine Schrift hier hat die Zeichen %1 aus „%2“: von Hand schreiben oder eine Schrift installieren, die sie hat.</translation>
    </message>
    <message>
        <source>The card of %1 lacks the second language: there is none in %2.</source>
        <translation>Der Karte von %1 fehlt die zweite Sprache: Es gibt keine auf %2.</translation>
    </message>
    <message>
        <source>The card of %1 is in English: there is none in %2.</source>
        <translation>Die Karte von %1 ist auf Englisch: Es gibt keine auf %2.</translation>
    </message>
    <message>
        <source>--kind is one of %1.</source>
        <translation>--kind ist eines von %1.</translation>
    </message>
    <message>
        <source>Nothing was written: there is no group. Make one on the Roster.</source>
        <translation>Nichts geschrieben: Es gibt keine Gruppe. Legen Sie eine in der Gästeliste an.</translation>
    </message>
    <message>
        <source>Pages: %1. Written to %2</source>
        <translation>Seiten: %1. Geschrieben nach %2</translation>
    </message>
    <message>
        <source>Cut on a card for want of room: &quot;%1&quot;. Shorten it.</source>
        <translation>Auf einer Karte aus Platzmangel gekürzt: „%1“. Kürzer fassen.</translation>
    </message>
    <message numerus="yes">
        <source>%n cards have no room for all their words: read them before you hand them out.</source>
        <translation>
            <numerusform>Auf %n Karte passt nicht der ganze Text: Lesen Sie sie, bevor Sie sie ausgeben.</numerusform>
            <numerusform>Auf %n Karten passt nicht der ganze Text: Lesen Sie sie, bevor Sie sie ausgeben.</numerusform>
        </translation>
    </message>
    <message>
        <source>--size is one of %1.</source>
        <translation>--size ist eines von %1.</translation>
    </message>
    <message>
        <source>--guest-language is one or two of %1, with a comma between.</source>
        <translation>--guest-language ist eine oder zwei von %1, mit Komma dazwischen.</translation>
    </message>
</context>
<context>
    <name>EarsAndLungs</name>
    <message>
        <source>3 ft</source>
        <translation>3 ft</translation>
    </message>
    <message>
        <source>1 m</source>
        <translation>1&#xa0;m</translation>
    </message>
    <message>
        <source>less than a second</source>
        <translation>weniger als eine Sekunde</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1&#xa0;s</translation>
    </message>
    <message>
        <source>%1 mmHg</source>
        <translation>%1&#xa0;mmHg</translation>
    </message>
    <message>
        <source>Clear before %1: this dive is shallower than one step. The tube locks after %2 without clearing.</source>
        <translation>Druckausgleich vor %1 Tiefe: Dieser Tauchgang ist flacher als ein Schritt. Ohne Druckausgleich verschließt sich die Ohrtrompete nach %2.</translation>
    </message>
    <message>
        <source>once on the way down</source>
        <translation>einmal beim Abstieg</translation>
    </message>
    <message>
        <source>%1 times on the way down, every %2 at the planned speed</source>
        <translation>%1-mal beim Abstieg, alle %2 bei der geplanten Geschwindigkeit</translation>
    </message>
    <message>
        <source>Clear at least every %1: %2. The tube locks after %3 without clearing.</source>
        <translation>Druckausgleich mindestens alle %1: %2. Ohne Druckausgleich verschließt sich die Ohrtrompete nach %3.</translation>
    </message>
    <message>
        <source>Largest step for half of that: %1. The step of the rules is longer.</source>
        <translation>Größter Schritt für die Hälfte davon: %1. Der Schritt der Regeln ist länger.</translation>
    </message>
    <message>
        <source>Largest step for half of that: %1.</source>
        <translation>Größter Schritt für die Hälfte davon: %1.</translation>
    </message>
    <message>
        <source>Pain is the limit, not a figure: stop, go up %1, clear, go on. Never force. Ears that will not clear end the dive; ears that still hurt afterwards need a physician.</source>
        <translation>Die Grenze ist der Schmerz, keine Zahl: anhalten, %1 aufsteigen, Druck ausgleichen, weiter. Nie erzwingen. Gelingt der Druckausgleich nicht, ist der Tauchgang zu Ende; Ohren, die danach noch schmerzen, gehören zum Arzt.</translation>
    </message>
    <message>
        <source>People were hurt from %1.</source>
        <translation>Verletzt wurden Menschen schon ab %1.</translation>
    </message>
    <message>
        <source>On so shallow a dive the surface comes before the published limit, which is no promise. %1</source>
        <translation>Bei einem so flachen Tauchgang kommt die Oberfläche vor der veröffentlichten Grenze; das ist keine Zusage. %1</translation>
    </message>
    <message>
        <source>From anywhere on this dive, about %1 of ascent with held breath and full lungs can tear a lung. %2</source>
        <translation>Von jeder Stelle dieses Tauchgangs aus können schon etwa %1 Aufstieg mit angehaltenem Atem und voller Lunge die Lunge reißen lassen. %2</translation>
    </message>
    <message>
        <source>Breathe all the time, most of all on the way up. Pain in the chest, trouble breathing or anything odd after a dive: oxygen, the emergency line, a physician.</source>
        <translation>Immer atmen, vor allem beim Aufstieg. Schmerzen in der Brust, Atemnot oder sonst etwas Ungewöhnliches nach einem Tauchgang: Sauerstoff, Notruf, Arzt.</translation>
    </message>
</context>
<context>
    <name>EmergencySheet</name>
    <message>
        <source>In an emergency: the plan goes on</source>
        <translation>Im Notfall: Fortsetzung des Plans</translation>
    </message>
    <message>
        <source>In an emergency call</source>
        <translation>Im Notfall anrufen</translation>
    </message>
    <message>
        <source>not entered: write it here</source>
        <translation>nicht eingetragen: hier aufschreiben</translation>
    </message>
    <message>
        <source>Where to come to</source>
        <translation>Hierher kommen</translation>
    </message>
    <message>
        <source>Where to come to:</source>
        <translation>Hierher kommen:</translation>
    </message>
    <message>
        <source>Site without a name</source>
        <translation>Tauchplatz ohne Namen</translation>
    </message>
    <message>
        <source>The water lies %1 above sea level: tell the physician.</source>
        <translation>Das Wasser liegt %1 über dem Meeresspiegel: dem Arzt sagen.</translation>
    </message>
    <message>
        <source>The water lies %1 below sea level: tell the physician.</source>
        <translation>Das Wasser liegt %1 unter dem Meeresspiegel: dem Arzt sagen.</translation>
    </message>
    <message>
        <source>Guests are taken to %1; the bottom lies at %2.</source>
        <translation>Gäste werden bis %1 geführt; der Grund liegt bei %2.</translation>
    </message>
    <message>
        <source>Guests are taken to %1.</source>
        <translation>Gäste werden bis %1 geführt.</translation>
    </message>
    <message>
        <source>Oxygen is at</source>
        <translation>Sauerstoff steht</translation>
    </message>
    <message>
        <source>First aid kit is at</source>
        <translation>Verbandkasten liegt</translation>
    </message>
    <message>
        <source>Phone or radio</source>
        <translation>Telefon oder Funk</translation>
    </message>
    <message>
        <source>Nearest chamber, how far</source>
        <translation>Nächste Druckkammer, wie weit</translation>
    </message>
    <message>
        <source>Way out for the ambulance</source>
        <translation>Weg für den Rettungswagen</translation>
    </message>
    <message>
        <source>Who gives first aid</source>
        <translation>Wer Erste Hilfe leistet</translation>
    </message>
    <message>
        <source>Position for rescuers</source>
        <translation>Position für die Retter</translation>
    </message>
    <message>
        <source>Who gives first aid today</source>
        <translation>Wer heute Erste Hilfe leistet</translation>
    </message>
    <message>
        <source>Local rules, the centre&apos;s own plan and the rescue service come first. Put right by hand what has changed.</source>
        <translation>Örtliche Regeln, der eigene Plan der Basis und der Rettungsdienst gehen vor. Von Hand berichtigen, was sich geändert hat.</translation>
    </message>
</context>
<context>
    <name>Errors</name>
    <message>
        <source>%1 cannot be read (%2). Check the name and the permissions.</source>
        <translation>%1 kann nicht gelesen werden (%2). Prüfen Sie den Namen und die Berechtigungen.</translation>
    </message>
    <message>
        <source>%1 cannot be written (%2). Choose another folder or free some space.</source>
        <translation>%1 kann nicht geschrieben werden (%2). Wählen Sie einen anderen Ordner oder schaffen Sie Platz.</translation>
    </message>
    <message>
        <source>%1 is too large (%2 bytes; at most %3). Choose another file.</source>
        <translation>%1 ist zu groß (%2 Bytes; höchstens %3). Wählen Sie eine andere Datei.</translation>
    </message>
    <message>
        <source>Not valid JSON at %1: %2. Correct the text there.</source>
        <translation>Kein gültiges JSON bei %1: %2. Berichtigen Sie den Text dort.</translation>
    </message>
    <message>
        <source>Nested too deep at %1 (at most %2 levels). This is not a session file.</source>
        <translation>Bei %1 zu tief geschachtelt (höchstens %2 Ebenen). Das ist keine Termindatei.</translation>
    </message>
    <message>
        <source>The file has version %1; this program reads up to %2. Update Leadline.</source>
        <translation>Die Datei hat die Version %1; dieses Programm liest bis %2. Aktualisieren Sie Leadline.</translation>
    </message>
    <message>
        <source>%1 %2 was not found. It may have been removed meanwhile.</source>
        <translation>%1 %2 wurde nicht gefunden. Vielleicht wurde es inzwischen entfernt.</translation>
    </message>
    <message>
        <source>The records in %1 cannot be used (%2). Check the disk and the permissions, or choose another file with --database.</source>
        <translation>Die Aufzeichnungen in %1 sind nicht benutzbar (%2). Prüfen Sie Datenträger und Berechtigungen, oder wählen Sie mit --database eine andere Datei.</translation>
    </message>
    <message>
        <source>The records in %1 were written by a newer Leadline (schema %2; this one knows %3). Update Leadline; nothing was changed.</source>
        <translation>Die Aufzeichnungen in %1 stammen von einem neueren Leadline (Schema %2; dieses kennt %3). Aktualisieren Sie Leadline; es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>The records in %1 are in use by another program. Close it and try again.</source>
        <translation>Die Aufzeichnungen in %1 werden gerade von einem anderen Programm benutzt. Schließen Sie es und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The list has %1 rows; at most %2 can be read. Split it.</source>
        <translation>Die Liste hat %1 Zeilen; höchstens %2 können gelesen werden. Teilen Sie sie.</translation>
    </message>
    <message>
        <source>The list has %1 columns; at most %2 can be read. Take out those that are not needed.</source>
        <translation>Die Liste hat %1 Spalten; höchstens %2 können gelesen werden. Nehmen Sie nicht benötigte heraus.</translation>
    </message>
    <message>
        <source>A quotation mark is opened in %1 of the list and never closed. Close it, or save the list anew as CSV.</source>
        <translation>In %1 der Liste wird ein Anführungszeichen geöffnet und nie geschlossen. Schließen Sie es, oder speichern Sie die Liste neu als CSV.</translation>
    </message>
    <message>
        <source>There are no rows to be read. Save the list as CSV (comma-separated values) and choose that file.</source>
        <translation>Es gibt keine Zeilen zu lesen. Speichern Sie die Liste als CSV (durch Komma getrennte Werte) und wählen Sie diese Datei.</translation>
    </message>
    <message>
        <source>%1 is damaged or holds no records (%2). Put back a copy: Records, Copies of the records. The damaged file is kept.</source>
        <translation>%1 ist beschädigt oder enthält keine Aufzeichnungen (%2). Spielen Sie eine Kopie zurück: Aufzeichnungen, Kopien der Aufzeichnungen. Die beschädigte Datei bleibt erhalten.</translation>
    </message>
    <message>
        <source>The records file %1 is not there, or another one took its place. Bring the folder or disk back and try again; until then nothing can be saved.</source>
        <translation>Die Datei %1 mit den Aufzeichnungen ist nicht da, oder eine andere nahm ihren Platz ein. Bringen Sie Ordner oder Datenträger zurück und versuchen Sie es noch einmal; bis dahin kann nichts gespeichert werden.</translation>
    </message>
    <message>
        <source>The records in %1 may not be written (%2). Change the permissions of the file and its folder, then try again.</source>
        <translation>Die Aufzeichnungen in %1 dürfen nicht geschrieben werden (%2). Ändern Sie die Berechtigungen der Datei und ihres Ordners, dann versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>There is no room on the disk for %1 (%2). Free some space and try again; what was saved before stands.</source>
        <translation>Auf dem Datenträger ist kein Platz für %1 (%2). Schaffen Sie Platz und versuchen Sie es noch einmal; was vorher gespeichert war, bleibt.</translation>
    </message>
    <message>
        <source>%1 holds no records of Leadline (%2). Choose another file; nothing was changed.</source>
        <translation>%1 enthält keine Aufzeichnungen von Leadline (%2). Wählen Sie eine andere Datei; es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Stopped; nothing was changed (%1).</source>
        <translation>Abgebrochen; es wurde nichts geändert (%1).</translation>
    </message>
    <message>
        <source>%1: %2 is not %3. Correct it.</source>
        <translation>%1: %2 ist nicht %3. Berichtigen Sie es.</translation>
    </message>
    <message>
        <source>%1: there is no field &quot;%2&quot;. Remove it or use one of: %3.</source>
        <translation>%1: Es gibt kein Feld „%2“. Entfernen Sie es oder verwenden Sie eines von: %3.</translation>
    </message>
    <message>
        <source>%1: the field &quot;%2&quot; is missing. Add it.</source>
        <translation>%1: Das Feld „%2“ fehlt. Ergänzen Sie es.</translation>
    </message>
    <message>
        <source>%1: %2 is outside %3. Enter a value in that range.</source>
        <translation>%1: %2 liegt nicht in %3. Geben Sie einen Wert aus diesem Bereich ein.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a choice. Use one of: %3.</source>
        <translation>%1: „%2“ steht nicht zur Wahl. Verwenden Sie eines von: %3.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; does not fit. Wanted: %3.</source>
        <translation>%1: „%2“ passt nicht. Erwartet: %3.</translation>
    </message>
    <message>
        <source>%1: has %2 entries, wanted %3.</source>
        <translation>%1: hat %2 Einträge, erwartet %3.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a date. Write it as 2026-07-31.</source>
        <translation>%1: „%2“ ist kein Datum. Schreiben Sie es als 2026-07-31.</translation>
    </message>
    <message>
        <source>%1: born on %2, after the session on %3. Correct the date.</source>
        <translation>%1: geboren am %2, nach dem Termin am %3. Berichtigen Sie das Datum.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is there twice. Give each its own.</source>
        <translation>%1: „%2“ steht zweimal da. Geben Sie jedem einen eigenen Wert.</translation>
    </message>
    <message>
        <source>%1: nothing is called &quot;%2&quot;. Correct the name or add what it names.</source>
        <translation>%1: Nichts heißt „%2“. Berichtigen Sie den Namen, oder ergänzen Sie, was er nennt.</translation>
    </message>
    <message>
        <source>%1: %2 bar is over the working pressure of %3 bar. Read the gauge again; never use an overfilled cylinder.</source>
        <translation>%1: %2&#xa0;bar sind mehr als der Betriebsdruck von %3&#xa0;bar. Lesen Sie das Finimeter noch einmal ab; verwenden Sie nie eine überfüllte Flasche.</translation>
    </message>
    <message>
        <source>%1: %2 min is not later than the point before (%3 min). Times must grow.</source>
        <translation>%1: %2&#xa0;min ist nicht später als der Punkt davor (%3&#xa0;min). Die Zeiten müssen steigen.</translation>
    </message>
    <message>
        <source>%1: starts at %2, while another lasts until %3. Correct the times.</source>
        <translation>%1: beginnt um %2, während ein anderer bis %3 dauert. Berichtigen Sie die Zeiten.</translation>
    </message>
    <message>
        <source>%1: ends at %2, before it starts at %3. Correct the times.</source>
        <translation>%1: endet um %2, bevor es um %3 beginnt. Berichtigen Sie die Zeiten.</translation>
    </message>
    <message>
        <source>%1: %2 m; the dive must start and end at the surface (0 m).</source>
        <translation>%1: %2&#xa0;m; der Tauchgang muss an der Oberfläche (0&#xa0;m) beginnen und enden.</translation>
    </message>
    <message>
        <source>%1: the log is of %2; here it is %3. Open this session&apos;s own log, or enter it by hand.</source>
        <translation>%1: Das Protokoll ist von %2; hier ist %3. Öffnen Sie das eigene Protokoll dieses Termins, oder geben Sie es von Hand ein.</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>niemand</translation>
    </message>
    <message>
        <source>%1: %2 bar is more than the %3 bar at the start. Read the gauge again.</source>
        <translation>%1: %2&#xa0;bar sind mehr als die %3&#xa0;bar am Anfang. Lesen Sie das Finimeter noch einmal ab.</translation>
    </message>
    <message>
        <source>The health vault is not set up yet. Set it up in the menu Health vault.</source>
        <translation>Der Gesundheitstresor ist noch nicht eingerichtet. Richten Sie ihn im Menü Gesundheitstresor ein.</translation>
    </message>
    <message>
        <source>These records have a health vault already. Unlock it instead.</source>
        <translation>Zu diesen Aufzeichnungen gibt es schon einen Gesundheitstresor. Öffnen Sie ihn stattdessen.</translation>
    </message>
    <message>
        <source>The health vault is locked. Unlock it first.</source>
        <translation>Der Gesundheitstresor ist verschlossen. Öffnen Sie ihn zuerst.</translation>
    </message>
    <message>
        <source>The key in this computer&apos;s keyring does not open the vault. Use another way.</source>
        <translation>Der Schlüssel im Schlüsselbund dieses Computers öffnet den Tresor nicht. Nehmen Sie einen anderen Weg.</translation>
    </message>
    <message>
        <source>This recovery key does not open the vault. Perhaps a newer one was made.</source>
        <translation>Dieser Wiederherstellungsschlüssel öffnet den Tresor nicht. Vielleicht wurde ein neuerer gemacht.</translation>
    </message>
    <message>
        <source>This passphrase does not open the vault.</source>
        <translation>Diese Passphrase öffnet den Tresor nicht.</translation>
    </message>
    <message>
        <source>After wrong tries the vault waits. Try again in %1 s.</source>
        <translation>Nach falschen Versuchen wartet der Tresor. Versuchen Sie es in %1&#xa0;s noch einmal.</translation>
    </message>
    <message>
        <source>This is the last way into the vault. Add another one first.</source>
        <translation>Das ist der letzte Weg in den Tresor. Fügen Sie zuerst einen anderen hinzu.</translation>
    </message>
    <message>
        <source>The passphrase has %1 characters; it needs %2. A few words in a row are easy to keep.</source>
        <translation>Die Passphrase hat %1 Zeichen; sie braucht %2. Ein paar Wörter hintereinander merkt man sich leicht.</translation>
    </message>
    <message>
        <source>This is no recovery key: a sign is missing or mistyped. Compare it with the paper.</source>
        <translation>Das ist kein Wiederherstellungsschlüssel: Ein Zeichen fehlt oder ist vertippt. Vergleichen Sie ihn mit dem Papier.</translation>
    </message>
    <message>
        <source>%1 %2 cannot be opened: it is damaged, or was changed outside Leadline. Nothing was removed. Take a backup, and ask the guest again.</source>
        <translation>%1 %2 lässt sich nicht öffnen: Es ist beschädigt, oder es wurde außerhalb von Leadline geändert. Es wurde nichts entfernt. Nehmen Sie eine Sicherung, und fragen Sie den Gast noch einmal.</translation>
    </message>
    <message>
        <source>Not enough memory to check the passphrase (%1 needed). Close other programs and try again.</source>
        <translation>Nicht genug Arbeitsspeicher, um die Passphrase zu prüfen (%1 nötig). Schließen Sie andere Programme und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>This computer&apos;s keyring does not answer (%1). Use the passphrase or the recovery key.</source>
        <translation>Der Schlüsselbund dieses Computers antwortet nicht (%1). Nehmen Sie die Passphrase oder den Wiederherstellungsschlüssel.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>characters</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>bytes</source>
        <translation>Byte</translation>
    </message>
</context>
<context>
    <name>Findings</name>
    <message>
        <source>for one instructor</source>
        <translation>für einen Tauchlehrer</translation>
    </message>
    <message>
        <source>even with an assistant</source>
        <translation>auch mit einem Assistenten</translation>
    </message>
    <message>
        <source>in this visibility</source>
        <translation>bei dieser Sicht</translation>
    </message>
    <message>
        <source>in this current</source>
        <translation>bei dieser Strömung</translation>
    </message>
    <message>
        <source>in these waves</source>
        <translation>bei diesen Wellen</translation>
    </message>
    <message>
        <source>with a child in the group</source>
        <translation>mit einem Kind in der Gruppe</translation>
    </message>
    <message>
        <source>when a guest shares no language with the staff</source>
        <translation>wenn ein Gast mit dem Team keine Sprache gemeinsam hat</translation>
    </message>
    <message>
        <source>with a nervous guest in the group</source>
        <translation>mit einem nervösen Gast in der Gruppe</translation>
    </message>
    <message>
        <source>Planned to %1, deeper than the %2 allowed.</source>
        <translation>Geplant bis %1, tiefer als die erlaubten %2.</translation>
    </message>
    <message>
        <source>Plan no deeper than %1.</source>
        <translation>Planen Sie nicht tiefer als %1.</translation>
    </message>
    <message>
        <source>Planned to %1; %2 is usual for a first dive.</source>
        <translation>Geplant bis %1; üblich für einen ersten Tauchgang sind %2.</translation>
    </message>
    <message>
        <source>Stay shallower unless the site asks for it.</source>
        <translation>Bleiben Sie flacher, wenn der Platz es nicht anders verlangt.</translation>
    </message>
    <message>
        <source>The bottom lies at %1; no more than %2 is wanted below first-time guests.</source>
        <translation>Der Grund liegt bei %1; unter Gästen beim ersten Tauchgang sind höchstens %2 erwünscht.</translation>
    </message>
    <message>
        <source>Choose a shallower spot, or keep guests over a slope or a line.</source>
        <translation>Wählen Sie eine flachere Stelle, oder halten Sie die Gäste über einem Hang oder an einer Leine.</translation>
    </message>
    <message>
        <source>The water has %1, colder than the %2 wanted.</source>
        <translation>Das Wasser ist mit %1 kälter als die erwünschten %2.</translation>
    </message>
    <message>
        <source>Choose warmer water, a shorter dive or warmer suits.</source>
        <translation>Wählen Sie wärmeres Wasser, einen kürzeren Tauchgang oder wärmere Anzüge.</translation>
    </message>
    <message>
        <source>Planned for %1; at most %2 while the water is below %3.</source>
        <translation>Geplant für %1; höchstens %2, solange das Wasser kälter als %3 ist.</translation>
    </message>
    <message>
        <source>Shorten the dive to %1.</source>
        <translation>Verkürzen Sie den Tauchgang auf %1.</translation>
    </message>
    <message>
        <source>Visibility is %1; at least %2 is wanted.</source>
        <translation>Die Sicht beträgt %1; mindestens %2 sind erwünscht.</translation>
    </message>
    <message>
        <source>Take fewer guests within arm&apos;s reach, or do not dive.</source>
        <translation>Nehmen Sie weniger Gäste in Armreichweite, oder tauchen Sie nicht.</translation>
    </message>
    <message>
        <source>There is more current than first-time guests should meet.</source>
        <translation>Die Strömung ist stärker, als sie Gäste beim ersten Tauchgang erleben sollen.</translation>
    </message>
    <message>
        <source>Wait for slack water or choose a sheltered spot.</source>
        <translation>Warten Sie auf Stillwasser, oder wählen Sie eine geschützte Stelle.</translation>
    </message>
    <message>
        <source>Waves reach %1; at most %2 is wanted.</source>
        <translation>Die Wellen erreichen %1; höchstens %2 sind erwünscht.</translation>
    </message>
    <message>
        <source>Choose a sheltered entry or do not dive.</source>
        <translation>Wählen Sie einen geschützten Einstieg, oder tauchen Sie nicht.</translation>
    </message>
    <message>
        <source>Goes up at %1, faster than the %2 allowed.</source>
        <translation>Aufstieg mit %1, schneller als die erlaubten %2.</translation>
    </message>
    <message>
        <source>Give the way up more time.</source>
        <translation>Geben Sie dem Aufstieg mehr Zeit.</translation>
    </message>
    <message>
        <source>Goes down at %1, faster than the %2 wanted.</source>
        <translation>Abstieg mit %1, schneller als die erwünschten %2.</translation>
    </message>
    <message>
        <source>Give the way down more time: ears need it.</source>
        <translation>Geben Sie dem Abstieg mehr Zeit: Die Ohren brauchen sie.</translation>
    </message>
    <message>
        <source>Clearing every %1 is too seldom: the tube to the ear can lock after %2.</source>
        <translation>Druckausgleich alle %1 ist zu selten: Die Ohrtrompete kann sich nach %2 verschließen.</translation>
    </message>
    <message>
        <source>Clear in smaller steps.</source>
        <translation>Gleichen Sie den Druck in kleineren Schritten aus.</translation>
    </message>
    <message>
        <source>No rules are chosen, so no limit of depth, age or ratio is checked.</source>
        <translation>Es sind keine Regeln gewählt; daher wird keine Grenze für Tiefe, Alter oder Gruppengröße geprüft.</translation>
    </message>
    <message>
        <source>Tick the rules that apply on the Site tab.</source>
        <translation>Haken Sie im Register Tauchplatz die geltenden Regeln an.</translation>
    </message>
    <message>
        <source>No emergency number is entered for the site.</source>
        <translation>Für den Tauchplatz ist keine Notrufnummer eingetragen.</translation>
    </message>
    <message>
        <source>Enter the number to call; it is printed on every card.</source>
        <translation>Geben Sie die Nummer ein, die zu wählen ist; sie steht auf jeder Karte.</translation>
    </message>
    <message>
        <source>Is %1; the least age is %2.</source>
        <translation>Ist %1 Jahre alt; das Mindestalter ist %2.</translation>
    </message>
    <message>
        <source>Offer something else: no dive before %1.</source>
        <translation>Bieten Sie etwas anderes an: kein Tauchgang unter %1 Jahren.</translation>
    </message>
    <message>
        <source>The birth date is missing, so no age limit can be checked.</source>
        <translation>Das Geburtsdatum fehlt; daher lässt sich keine Altersgrenze prüfen.</translation>
    </message>
    <message>
        <source>Enter the birth date.</source>
        <translation>Geben Sie das Geburtsdatum ein.</translation>
    </message>
    <message>
        <source>Is %1 and no guardian&apos;s consent is on record.</source>
        <translation>Ist %1 Jahre alt, und es liegt keine Einwilligung der Sorgeberechtigten vor.</translation>
    </message>
    <message>
        <source>Get a guardian&apos;s signed consent and tick it.</source>
        <translation>Holen Sie eine unterschriebene Einwilligung der Sorgeberechtigten ein und haken Sie sie an.</translation>
    </message>
    <message>
        <source>Is in no group.</source>
        <translation>Ist in keiner Gruppe.</translation>
    </message>
    <message>
        <source>Put the guest into a group.</source>
        <translation>Ordnen Sie den Gast einer Gruppe zu.</translation>
    </message>
    <message>
        <source>Reads %1, which nobody leading the group speaks.</source>
        <translation>Liest %1; das spricht niemand, der die Gruppe führt.</translation>
    </message>
    <message>
        <source>Swap groups, find a translator, or brief with pictures and a small group.</source>
        <translation>Tauschen Sie Gruppen, suchen Sie jemanden zum Übersetzen, oder erklären Sie mit Bildern und in kleiner Gruppe.</translation>
    </message>
    <message>
        <source>Has no cylinder.</source>
        <translation>Hat keine Flasche.</translation>
    </message>
    <message>
        <source>Hand one out and enter its pressure.</source>
        <translation>Geben Sie eine aus und tragen Sie ihren Druck ein.</translation>
    </message>
    <message>
        <source>Still missing: %1.</source>
        <translation>Es fehlt noch: %1.</translation>
    </message>
    <message>
        <source>Fit it and enter the size or number.</source>
        <translation>Geben Sie das Fehlende aus, und tragen Sie Größe oder Nummer ein.</translation>
    </message>
    <message>
        <source>Leads a group and has no cylinder entered.</source>
        <translation>Führt eine Gruppe, und es ist keine Flasche eingetragen.</translation>
    </message>
    <message>
        <source>Enter it, so that the air for bringing a guest up can be checked.</source>
        <translation>Tragen Sie sie ein, damit sich die Luft prüfen lässt, die es braucht, einen Gast nach oben zu bringen.</translation>
    </message>
    <message>
        <source>The health questions are still open.</source>
        <translation>Die Gesundheitsfragen sind noch offen.</translation>
    </message>
    <message>
        <source>Go through them with the guest, or take the centre&apos;s own form.</source>
        <translation>Gehen Sie sie mit dem Gast durch, oder nehmen Sie das eigene Formular der Basis.</translation>
    </message>
    <message>
        <source>The health questions call for a physician.</source>
        <translation>Nach den Gesundheitsfragen ist zuerst ein Arzt zu fragen.</translation>
    </message>
    <message>
        <source>Ask the guest for a physician&apos;s written release to dive, and tick it when you have read it.</source>
        <translation>Bitten Sie den Gast um eine schriftliche ärztliche Freigabe zum Tauchen, und haken Sie sie an, wenn Sie sie gelesen haben.</translation>
    </message>
    <message>
        <source>Does not dive, by the health questions.</source>
        <translation>Taucht nicht, nach den Gesundheitsfragen.</translation>
    </message>
    <message>
        <source>Tell the guest in private, and offer something else. No release changes this.</source>
        <translation>Sagen Sie es dem Gast unter vier Augen, und bieten Sie etwas anderes an. Keine Freigabe ändert das.</translation>
    </message>
    <message>
        <source>Not today, by the questions of the day.</source>
        <translation>Heute nicht, nach den Fragen des Tages.</translation>
    </message>
    <message>
        <source>Tell the guest in private, and offer another day.</source>
        <translation>Sagen Sie es dem Gast unter vier Augen, und bieten Sie einen anderen Tag an.</translation>
    </message>
    <message>
        <source>Dives with care, by the questions of the day.</source>
        <translation>Taucht mit Vorsicht, nach den Fragen des Tages.</translation>
    </message>
    <message>
        <source>Talk it over with the guest, see that all were asked, and when in doubt do not dive today.</source>
        <translation>Besprechen Sie es mit dem Gast, sorgen Sie dafür, dass alle gefragt wurden, und tauchen Sie im Zweifel heute nicht.</translation>
    </message>
    <message>
        <source>Today&apos;s questions are still open.</source>
        <translation>Die Fragen von heute sind noch offen.</translation>
    </message>
    <message>
        <source>Ask them before kitting up.</source>
        <translation>Stellen Sie sie vor dem Anlegen der Ausrüstung.</translation>
    </message>
    <message>
        <source>The day of the health check is not on record.</source>
        <translation>Der Tag des Gesundheitschecks ist nicht vermerkt.</translation>
    </message>
    <message>
        <source>Go through the questions again with the guest.</source>
        <translation>Gehen Sie die Fragen noch einmal mit dem Gast durch.</translation>
    </message>
    <message>
        <source>The health check of %1 counts for %2 months and is out of date.</source>
        <translation>Der Gesundheitscheck vom %1 gilt %2 Monate und ist abgelaufen.</translation>
    </message>
    <message>
        <source>The health check or the physician&apos;s release has the date %1, after the session.</source>
        <translation>Der Gesundheitscheck oder die ärztliche Freigabe hat das Datum %1, nach dem Termin.</translation>
    </message>
    <message>
        <source>Correct the date, or go through the questions again.</source>
        <translation>Berichtigen Sie das Datum, oder gehen Sie die Fragen noch einmal durch.</translation>
    </message>
    <message>
        <source>The day of the physician&apos;s release is not on record.</source>
        <translation>Der Tag der ärztlichen Freigabe ist nicht vermerkt.</translation>
    </message>
    <message>
        <source>Read the release and enter its date; without one nobody can tell whether it still counts.</source>
        <translation>Lesen Sie die Freigabe und tragen Sie ihr Datum ein; ohne Datum weiß niemand, ob sie noch gilt.</translation>
    </message>
    <message>
        <source>The physician&apos;s release of %1 is out of date.</source>
        <translation>Die ärztliche Freigabe vom %1 ist abgelaufen.</translation>
    </message>
    <message>
        <source>Ask the guest for a new one.</source>
        <translation>Bitten Sie den Gast um eine neue.</translation>
    </message>
    <message>
        <source>The physician&apos;s release of %1 is older than the health check.</source>
        <translation>Die ärztliche Freigabe vom %1 ist älter als der Gesundheitscheck.</translation>
    </message>
    <message>
        <source>Make sure that the physician knew what the guest answered since; else ask for a new one.</source>
        <translation>Vergewissern Sie sich, dass der Arzt wusste, was der Gast seither geantwortet hat; sonst bitten Sie um eine neue.</translation>
    </message>
    <message>
        <source>Nobody has signed the health check.</source>
        <translation>Niemand hat den Gesundheitscheck unterschrieben.</translation>
    </message>
    <message>
        <source>Have the guest sign, and for a minor a guardian too.</source>
        <translation>Lassen Sie den Gast unterschreiben, bei Minderjährigen auch Sorgeberechtigte.</translation>
    </message>
    <message>
        <source>It is not on record which questions were asked.</source>
        <translation>Es ist nicht vermerkt, welche Fragen gestellt wurden.</translation>
    </message>
    <message>
        <source>The questions were those of an earlier edition (%1).</source>
        <translation>Die Fragen waren die einer früheren Ausgabe (%1).</translation>
    </message>
    <message>
        <source>At the next check the present ones are asked.</source>
        <translation>Beim nächsten Check werden die heutigen gestellt.</translation>
    </message>
    <message>
        <source>%1 places used, %2 allowed %3.</source>
        <translation>%1 Plätze belegt, %2 erlaubt %3.</translation>
    </message>
    <message>
        <source>Move guests to another group, add an instructor, or dive in turns.</source>
        <translation>Setzen Sie Gäste in eine andere Gruppe, nehmen Sie einen Tauchlehrer dazu, oder tauchen Sie nacheinander.</translation>
    </message>
    <message>
        <source>Is counted on in %1 groups at once.</source>
        <translation>Wird in %1 Gruppen zugleich gebraucht.</translation>
    </message>
    <message>
        <source>Give each group staff of its own, or let the groups dive one after the other in sessions of their own.</source>
        <translation>Geben Sie jeder Gruppe ein eigenes Team, oder lassen Sie die Gruppen nacheinander in eigenen Terminen tauchen.</translation>
    </message>
    <message>
        <source>Has no instructor.</source>
        <translation>Hat keinen Tauchlehrer.</translation>
    </message>
    <message>
        <source>Name an instructor for the group.</source>
        <translation>Benennen Sie für die Gruppe einen Tauchlehrer.</translation>
    </message>
    <message>
        <source>Has no guests.</source>
        <translation>Hat keine Gäste.</translation>
    </message>
    <message>
        <source>Add guests or remove it.</source>
        <translation>Fügen Sie Gäste hinzu, oder entfernen Sie die Gruppe.</translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>Noch keine Gäste.</translation>
    </message>
    <message>
        <source>Add the first one on the Roster tab.</source>
        <translation>Fügen Sie den ersten im Register Gästeliste hinzu.</translation>
    </message>
    <message>
        <source>Would surface with %1; %2 must be left. The reserve is reached after %3.</source>
        <translation>Würde mit %1 auftauchen; %2 müssen übrig sein. Die Reserve ist nach %3 erreicht.</translation>
    </message>
    <message>
        <source>Shorten the dive, go shallower, or give a bigger or fuller cylinder.</source>
        <translation>Verkürzen Sie den Tauchgang, bleiben Sie flacher, oder geben Sie eine größere oder vollere Flasche.</translation>
    </message>
    <message>
        <source>Bringing two up from the deepest point takes %1, more than the reserve of %2.</source>
        <translation>Zwei Personen vom tiefsten Punkt nach oben zu bringen braucht %1, mehr als die Reserve von %2.</translation>
    </message>
    <message>
        <source>Have the guest signal at the higher pressure; the card says so.</source>
        <translation>Lassen Sie den Gast schon beim höheren Druck Zeichen geben; so steht es auf der Karte.</translation>
    </message>
    <message>
        <source>All last the planned dive in only %1 of 100 such dives.</source>
        <translation>Nur bei %1 von 100 solchen Tauchgängen reicht die Luft aller für die geplante Dauer.</translation>
    </message>
    <message>
        <source>See what would buy more minutes on the Gas tab, or plan a shorter dive.</source>
        <translation>Sehen Sie im Register Luft, was mehr Minuten brächte, oder planen Sie einen kürzeren Tauchgang.</translation>
    </message>
    <message>
        <source>If a guest&apos;s air fails, this cylinder brings both up in only %1 of 100 cases.</source>
        <translation>Fällt einem Gast die Luft aus, bringt diese Flasche nur in %1 von 100 Fällen beide nach oben.</translation>
    </message>
    <message>
        <source>Take a bigger or fuller cylinder, or stay less deep.</source>
        <translation>Nehmen Sie eine größere oder vollere Flasche, oder bleiben Sie flacher.</translation>
    </message>
    <message>
        <source>Is planned to have %1 at the ascent; bringing a guest up takes %2.</source>
        <translation>Hat nach Plan beim Aufstieg %1; einen Gast nach oben zu bringen braucht %2.</translation>
    </message>
    <message>
        <source>Take a bigger or fuller cylinder, or shorten the dive.</source>
        <translation>Nehmen Sie eine größere oder vollere Flasche, oder verkürzen Sie den Tauchgang.</translation>
    </message>
    <message>
        <source>Would make dive number %1 today; at most %2 are wanted.</source>
        <translation>Käme heute auf %1 Tauchgänge; höchstens %2 sind erwünscht.</translation>
    </message>
    <message>
        <source>Have somebody else lead this group, or dive on another day.</source>
        <translation>Lassen Sie jemand anderen diese Gruppe führen, oder tauchen Sie an einem anderen Tag.</translation>
    </message>
    <message>
        <source>Would come up %1 times today; at most %2 are wanted.</source>
        <translation>Käme heute auf %1 Aufstiege; höchstens %2 sind erwünscht.</translation>
    </message>
    <message>
        <source>Plan fewer training ascents, or share them with others.</source>
        <translation>Planen Sie weniger Übungsaufstiege, oder teilen Sie sie mit anderen.</translation>
    </message>
    <message>
        <source>Dives on day %1 in a row; at most %2 are wanted.</source>
        <translation>Taucht am %1. Tag in Folge; höchstens %2 sind erwünscht.</translation>
    </message>
    <message>
        <source>Plan a day without diving.</source>
        <translation>Planen Sie einen Tag ohne Tauchgang.</translation>
    </message>
    <message>
        <source>Would be in the water for %1 with %2 left before a stop is needed: could not go straight up with a guest.</source>
        <translation>Geplant sind %1 im Wasser, bis zu einem nötigen Stopp bleiben %2: könnte mit einem Gast nicht direkt aufsteigen.</translation>
    </message>
    <message>
        <source>Dive shallower or shorter, wait longer, or have somebody else lead.</source>
        <translation>Tauchen Sie flacher oder kürzer, warten Sie länger, oder lassen Sie jemand anderen führen.</translation>
    </message>
    <message>
        <source>May be cold after %1; %2 are planned.</source>
        <translation>Friert vielleicht nach %1; geplant sind %2.</translation>
    </message>
    <message>
        <source>Give a warmer suit or shorten the dive. Shivering ends it at once.</source>
        <translation>Geben Sie einen wärmeren Anzug, oder verkürzen Sie den Tauchgang. Zittern beendet ihn sofort.</translation>
    </message>
    <message>
        <source>With %1 of lead may be heavier at depth than the %2 the BCD is likely to lift.</source>
        <translation>Ist mit %1 Blei in der Tiefe vielleicht schwerer als die %2, die das Jacket wohl trägt.</translation>
    </message>
    <message>
        <source>Take off lead, or give a BCD with more lift.</source>
        <translation>Nehmen Sie Blei weg, oder geben Sie ein Jacket mit mehr Auftrieb.</translation>
    </message>
    <message>
        <source>With %1 of lead is likely to float up near the end, with little air left; %2 to %3 is expected.</source>
        <translation>Treibt mit %1 Blei gegen Ende, mit wenig Luft in der Flasche, wahrscheinlich auf; erwartet werden %2 bis %3.</translation>
    </message>
    <message>
        <source>Check at the surface, and take spare lead along.</source>
        <translation>Prüfen Sie es an der Oberfläche, und nehmen Sie Blei zum Nachgeben mit.</translation>
    </message>
    <message>
        <source>Carries %1 of lead; %2 to %3 is expected.</source>
        <translation>Trägt %1 Blei; erwartet werden %2 bis %3.</translation>
    </message>
    <message>
        <source>Check at the surface before going down.</source>
        <translation>Prüfen Sie es an der Oberfläche, bevor Sie abtauchen.</translation>
    </message>
    <message>
        <source>Went to %1; %2 was planned.</source>
        <translation>War auf %1; geplant waren %2.</translation>
    </message>
    <message>
        <source>Talk it over and hold the depth next time.</source>
        <translation>Besprechen Sie es, und halten Sie beim nächsten Mal die Tiefe.</translation>
    </message>
    <message>
        <source>Went to %1, deeper than the %2 allowed.</source>
        <translation>War auf %1, tiefer als die erlaubten %2.</translation>
    </message>
    <message>
        <source>Report it as the centre asks, and ask how the guest feels.</source>
        <translation>Melden Sie es, wie die Basis es verlangt, und fragen Sie, wie es dem Gast geht.</translation>
    </message>
    <message>
        <source>Came back with %1; %2 should have been left.</source>
        <translation>Kam mit %1 zurück; %2 hätten übrig sein sollen.</translation>
    </message>
    <message>
        <source>Use the guest&apos;s own breathing rate for the next plan.</source>
        <translation>Nehmen Sie für den nächsten Plan den eigenen Luftverbrauch des Gastes.</translation>
    </message>
    <message>
        <source>Was in the water for %1; %2 was planned.</source>
        <translation>War %1 im Wasser; geplant waren %2.</translation>
    </message>
    <message>
        <source>Check the air and the cold for the longer time.</source>
        <translation>Prüfen Sie Luft und Kälte für die längere Zeit.</translation>
    </message>
    <message>
        <source>Has no entry in the log.</source>
        <translation>Hat keinen Eintrag im Protokoll.</translation>
    </message>
    <message>
        <source>Enter the pressures and the time.</source>
        <translation>Tragen Sie Drücke und Zeit ein.</translation>
    </message>
    <message>
        <source>%1 went in, %2 counted back.</source>
        <translation>%1 gingen hinein, %2 wurden bei der Rückkehr gezählt.</translation>
    </message>
    <message>
        <source>Count again, two people, by name. Nobody leaves before it agrees.</source>
        <translation>Zählen Sie noch einmal, zu zweit, mit Namen. Niemand geht weg, bevor die Zahl stimmt.</translation>
    </message>
    <message>
        <source>Group %1</source>
        <translation>Gruppe %1</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Termin</translation>
    </message>
</context>
<context>
    <name>GasTab</name>
    <message>
        <source>First of %1, likely %2</source>
        <translation>%1: zuerst wohl %2</translation>
    </message>
    <message>
        <source>First, likely %1</source>
        <translation>Zuerst wohl %1</translation>
    </message>
    <message>
        <source>the instructor</source>
        <translation>der Tauchlehrer</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1: no instructor named yet, so nobody to share air with is known.</source>
        <translation>%1: Noch kein Tauchlehrer benannt; daher ist niemand bekannt, mit dem die Luft zu teilen wäre.</translation>
    </message>
    <message>
        <source>%1: no cylinder is known for %2, so sharing it is not reckoned.</source>
        <translation>%1: Für %2 ist keine Flasche bekannt; daher ist das Teilen der Luft nicht berechnet.</translation>
    </message>
    <message>
        <source>%1: if a guest&apos;s air fails at depth, both reach the surface on the cylinder of %2 in %3.</source>
        <translation>%1: Fällt einem Gast in der Tiefe die Luft aus, erreichen beide mit der Flasche von %2 in %3 die Oberfläche.</translation>
    </message>
    <message>
        <source>within the standard error of the runs</source>
        <translation>innerhalb des Standardfehlers der Läufe</translation>
    </message>
    <message>
        <source>within three standard errors of the runs</source>
        <translation>innerhalb von drei Standardfehlern der Läufe</translation>
    </message>
    <message>
        <source>further apart than the runs explain: do not rely on it</source>
        <translation>weiter auseinander, als die Läufe erklären: Verlassen Sie sich nicht darauf</translation>
    </message>
    <message>
        <source>%1, all last: %2 of 100 in closed form (first of several lognormals: David and Nagaraja, Order Statistics, 2003, from memory); %3 ± %4 of 100 in %5 runs, %6.</source>
        <translation>%1, die Luft aller reicht: %2 von 100 in geschlossener Form (Erster aus mehreren Lognormalen: David und Nagaraja, Order Statistics, 2003, aus dem Gedächtnis); %3 ± %4 von 100 in %5 Läufen, %6.</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>%1 to over %2</source>
        <translation>%1 bis über %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: nobody in this group yet.</source>
        <translation>%1: Noch niemand in dieser Gruppe.</translation>
    </message>
    <message>
        <source>%1: too many guests in one group for a forecast. Form groups of at most 100.</source>
        <translation>%1: Zu viele Gäste in einer Gruppe für eine Vorhersage. Bilden Sie Gruppen von höchstens 100.</translation>
    </message>
    <message>
        <source>%1: no cylinder is known. Enter cylinder and pressure in the table.</source>
        <translation>%1: Keine Flasche ist bekannt. Tragen Sie Flasche und Druck in der Tabelle ein.</translation>
    </message>
    <message>
        <source>%1 is likely first at %2, after about %3.</source>
        <translation>%1 ist wohl zuerst bei %2, nach etwa %3.</translation>
    </message>
    <message>
        <source>%1 is at %2 after about %3.</source>
        <translation>%1 ist bei %2 nach etwa %3.</translation>
    </message>
    <message>
        <source>%1: the air does not last. %2 All last the planned %3 in %4 dives.</source>
        <translation>%1: Die Luft reicht nicht. %2 Für die geplanten %3 reicht sie allen in %4 Tauchgängen.</translation>
    </message>
    <message>
        <source>All last the planned %1 in %2 dives.</source>
        <translation>Für die geplanten %1 reicht die Luft allen in %2 Tauchgängen.</translation>
    </message>
    <message>
        <source>The air lasts the planned %1 in %2 dives.</source>
        <translation>Die Luft reicht für die geplanten %1 in %2 Tauchgängen.</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>%1: no instructor named yet.</source>
        <translation>%1: Noch kein Tauchlehrer benannt.</translation>
    </message>
    <message>
        <source>%1: no cylinder is known for %2, so the air for bringing a guest up is not checked.</source>
        <translation>%1: Für %2 ist keine Flasche bekannt; daher ist die Luft, um einen Gast nach oben zu bringen, nicht geprüft.</translation>
    </message>
    <message>
        <source>%1: %2 needs %3 to bring a guest up, and is planned to have %4 at the ascent.</source>
        <translation>%1: %2 braucht %3, um einen Gast nach oben zu bringen, und hat nach Plan beim Aufstieg %4.</translation>
    </message>
    <message>
        <source>In no group yet: %1. Put them into one on the Roster tab.</source>
        <translation>Noch in keiner Gruppe: %1. Ordnen Sie sie im Register Gästeliste einer zu.</translation>
    </message>
    <message>
        <source>%1: all last the planned dive in %2 dives; in %3 when %4 starts with %5 less; in %6 when somebody&apos;s regulator blows off air for 10 to 60 s.</source>
        <translation>%1: Die Luft reicht allen für den geplanten Tauchgang in %2 Tauchgängen; in %3, wenn %4 mit %5 weniger beginnt; in %6, wenn jemandes Atemregler 10 bis 60&#xa0;s lang abbläst.</translation>
    </message>
    <message>
        <source>How one guest breathes is a spread, not a number: lognormal about the RMV in the table. Where nothing is known, of 100 guests the 10th and the 90th differ by a factor of two; sea and briefing move all of a group together. How wide, and how much is shared: common practice, no source.</source>
        <translation>Wie ein Gast atmet, ist eine Spanne, keine Zahl: lognormal um das AMV in der Tabelle. Wo nichts bekannt ist, unterscheiden sich von 100 Gästen der 10. und der 90. um den Faktor zwei; See und Briefing verschieben alle einer Gruppe gemeinsam. Wie breit, und wie viel davon gemeinsam: übliche Praxis, keine Quelle.</translation>
    </message>
    <message>
        <source>The minutes hold for a group that stays at the depth from which the final ascent starts. In brackets: 10 of 100 such dives are there before the first figure, 10 after the second. Minutes and chances are rounded down.</source>
        <translation>Die Minuten gelten für eine Gruppe, die auf der Tiefe bleibt, von der der letzte Aufstieg beginnt. In Klammern: 10 von 100 solchen Tauchgängen sind vor der ersten Zahl so weit, 10 nach der zweiten. Minuten und Chancen sind abgerundet.</translation>
    </message>
    <message>
        <source>The same session always gives the same figures: the runs start from one fixed number, %1. They are estimates for planning: in the water the gauge and the guest&apos;s sign decide.</source>
        <translation>Derselbe Termin ergibt immer dieselben Zahlen: Die Läufe beginnen bei einer festen Zahl, %1. Es sind Schätzungen zum Planen: Im Wasser entscheiden das Finimeter und das Zeichen des Gastes.</translation>
    </message>
    <message>
        <source>Not changed: %1 is over the working pressure of %2&apos;s cylinder, %3. Read the gauge again; never use an overfilled cylinder.</source>
        <translation>Nicht geändert: %1 ist mehr als der Betriebsdruck der Flasche von %2, %3. Lesen Sie das Finimeter noch einmal ab; verwenden Sie nie eine überfüllte Flasche.</translation>
    </message>
    <message>
        <source>Not changed for %1. %2</source>
        <translation>Für %1 nicht geändert. %2</translation>
    </message>
</context>
<context>
    <name>GuestBody</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>the core cools by %1 over the planned dive</source>
        <translation>der Körperkern kühlt über den geplanten Tauchgang um %1 ab</translation>
    </message>
    <message>
        <source>the core does not cool over the planned dive</source>
        <translation>der Körperkern kühlt über den geplanten Tauchgang nicht ab</translation>
    </message>
    <message>
        <source>Suit %1 mm: %2 clo at the surface, squeezed to %3 clo at %4. Ten minutes after reaching depth the body loses %5 W; %6.</source>
        <translation>Anzug %1&#xa0;mm: %2 clo an der Oberfläche, auf %4 zusammengedrückt auf %3 clo. Zehn Minuten nach Erreichen der Tiefe verliert der Körper %5 W; %6.</translation>
    </message>
    <message>
        <source>with the %1 carried</source>
        <translation>mit den getragenen %1</translation>
    </message>
    <message>
        <source>with the %1 to try first, as none is entered</source>
        <translation>mit den %1 zum ersten Versuch, da nichts eingetragen ist</translation>
    </message>
    <message>
        <source>no BCD is entered</source>
        <translation>kein Jacket ist eingetragen</translation>
    </message>
    <message>
        <source>the BCD is taken to lift %1</source>
        <translation>angenommen ist, dass das Jacket %1 trägt</translation>
    </message>
    <message>
        <source>Lead %1; %2, the guest %3 at depth with %4 left; %5.</source>
        <translation>Blei %1; %2, der Gast %3 in der Tiefe bei %4 in der Flasche; %5.</translation>
    </message>
    <message>
        <source>sinks %1</source>
        <translation>sinkt mit %1</translation>
    </message>
    <message>
        <source>lifts %1</source>
        <translation>treibt mit %1 auf</translation>
    </message>
    <message>
        <source>%1: empty %2, full %3</source>
        <translation>%1: leer %2, voll %3</translation>
    </message>
    <message>
        <source>Cylinders in this water, by usual models (from memory; the maker&apos;s figures prevail). %1.</source>
        <translation>Flaschen in diesem Wasser, nach üblichen Modellen (aus dem Gedächtnis; die Angaben des Herstellers gehen vor). %1.</translation>
    </message>
    <message>
        <source>Too cold: the core is at %1 (ISO 9886:2004, from memory) or the body has lost 3 kcal for each kg of its mass (Webb and others, Proposed thermal limits for divers, 1976, from memory), were the group to stay at the depth from which the final ascent starts. In brackets from a leaner guest who keeps stiller in a suit of poorer fit to a fatter one who moves in one of good fit. Rely on the first, the safe side. Rounded down.</source>
        <translation>Zu kalt: Der Körperkern ist bei %1 (ISO 9886:2004, aus dem Gedächtnis), oder der Körper hat 3&#xa0;kcal je kg seiner Masse verloren (Webb und andere, Proposed thermal limits for divers, 1976, aus dem Gedächtnis), wenn die Gruppe auf der Tiefe bliebe, von der der letzte Aufstieg beginnt. In Klammern von einem schlankeren Gast, der sich weniger bewegt, in einem schlechter sitzenden Anzug, bis zu einem fülligeren, der sich bewegt, in einem gut sitzenden. Verlassen Sie sich auf die erste Zahl, die sichere Seite. Abgerundet.</translation>
    </message>
    <message>
        <source>Feels cold: a net loss of 40 Wh/m² of a standard body (ISO 11079:2007, from memory).</source>
        <translation>Friert: ein Nettoverlust von 40 Wh/m² eines Normkörpers (ISO 11079:2007, aus dem Gedächtnis).</translation>
    </message>
    <message>
        <source>Warmth is a heat balance of core and shell, in the form of Gagge 1971 (from memory): body surface by DuBois and DuBois 1916, fat by Deurenberg and others 1991, oxygen uptake by Knafelc 1989 and Arieli and others 1997. The suit&apos;s gas cells are squeezed by Boyle&apos;s law and conduct by Maxwell&apos;s relation; 1 clo is 0.155 m²K/W. Shivering, which makes heat, is left out: the safe side. Nobody has measured novices or children on such dives.</source>
        <translation>Die Wärme ist eine Wärmebilanz von Kern und Schale, in der Form von Gagge 1971 (aus dem Gedächtnis): Körperoberfläche nach DuBois und DuBois 1916, Fett nach Deurenberg und anderen 1991, Sauerstoffaufnahme nach Knafelc 1989 und Arieli und anderen 1997. Die Gaszellen des Anzugs werden nach dem Gesetz von Boyle zusammengedrückt und leiten nach der Beziehung von Maxwell; 1 clo ist 0,155 m²K/W. Zittern, das Wärme erzeugt, ist weggelassen: die sichere Seite. Niemand hat Anfänger oder Kinder bei solchen Tauchgängen gemessen.</translation>
    </message>
    <message>
        <source>Lead by Archimedes, for being neutral at the surface at the end of the dive: cylinder at the reserve, lungs half full, BCD empty, and nothing more for comfort. Density of the body by Siri 1961, lungs by Quanjer and others 1993 (from memory; children: no source), foam of 150 to 250 kg/m³, lead 11 340 kg/m³. Regulator, BCD, fins and mask together pull down %1: common practice, no source. Spreads are added in squares (JCGM 100:2008).</source>
        <translation>Blei nach Archimedes, um am Ende des Tauchgangs an der Oberfläche zu schweben: Flasche auf Reserve, Lunge halb voll, Jacket leer, und kein Zuschlag zur Bequemlichkeit. Dichte des Körpers nach Siri 1961, Lunge nach Quanjer und anderen 1993 (aus dem Gedächtnis; Kinder: keine Quelle), Schaum von 150 bis 250 kg/m³, Blei 11 340 kg/m³. Atemregler, Jacket, Flossen und Maske ziehen zusammen %1 nach unten: übliche Praxis, keine Quelle. Spannen werden quadratisch addiert (JCGM 100:2008).</translation>
    </message>
    <message>
        <source>Try first is the middle in the pieces that are in stock, or in whole kilograms. Too heavy is the greater danger, but a guest too light floats up when the cylinder is nearly empty: at the surface with a full one, a guest should sink by what the air weighs. What the BCD lifts is taken from its size (S %1, M %2, L %3), the lower end of jackets as sold, from memory; the maker&apos;s figure prevails.</source>
        <translation>Zuerst versuchen ist die Mitte, in den Stücken des Bestands oder in ganzen Kilogramm. Zu schwer ist die größere Gefahr; ein zu leichter Gast aber treibt auf, wenn die Flasche fast leer ist: An der Oberfläche sollte ein Gast mit voller Flasche um das sinken, was die Luft wiegt. Was das Jacket trägt, ist nach seiner Größe angenommen (S %1, M %2, L %3), am unteren Ende der verkauften Jackets, aus dem Gedächtnis; die Angabe des Herstellers geht vor.</translation>
    </message>
    <message>
        <source>May be too cold before the end</source>
        <translation>Vielleicht vor dem Ende zu kalt</translation>
    </message>
    <message>
        <source>The BCD may not hold this guest up</source>
        <translation>Jacket trägt diesen Gast vielleicht nicht</translation>
    </message>
    <message>
        <source>May not stay down near the end</source>
        <translation>Treibt gegen Ende vielleicht auf</translation>
    </message>
    <message>
        <source>Carries more lead than expected</source>
        <translation>Trägt mehr Blei als erwartet</translation>
    </message>
    <message>
        <source>Carries less lead than expected</source>
        <translation>Trägt weniger Blei als erwartet</translation>
    </message>
    <message>
        <source>Weight is missing: Roster, Kit</source>
        <translation>Gewicht fehlt: Gästeliste, Ausrüstung</translation>
    </message>
    <message>
        <source>Height is missing: Roster, Kit</source>
        <translation>Größe fehlt: Gästeliste, Ausrüstung</translation>
    </message>
    <message>
        <source>Suit in mm is missing: Roster, Kit</source>
        <translation>Anzug in mm fehlt: Gästeliste, Ausrüstung</translation>
    </message>
    <message>
        <source>Warmth: outside what the estimate holds for (check weight, height and age)</source>
        <translation>Wärme: außerhalb dessen, wofür die Schätzung gilt (Gewicht, Größe und Alter prüfen)</translation>
    </message>
    <message>
        <source>Cylinder is missing: Roster, Kit</source>
        <translation>Flasche fehlt: Gästeliste, Ausrüstung</translation>
    </message>
    <message>
        <source>Lead: outside what the estimate holds for (check weight, height and age)</source>
        <translation>Blei: außerhalb dessen, wofür die Schätzung gilt (Gewicht, Größe und Alter prüfen)</translation>
    </message>
    <message>
        <source>BCD is missing, so what it holds up is not checked: Roster, Kit</source>
        <translation>Jacket fehlt; was es trägt, ist daher nicht geprüft: Gästeliste, Ausrüstung</translation>
    </message>
    <message>
        <source>Perhaps too cold before the end, too: %1.</source>
        <translation>Vielleicht ebenfalls vor dem Ende zu kalt: %1.</translation>
    </message>
    <message>
        <source>likely after %1</source>
        <translation>wohl nach %1</translation>
    </message>
    <message>
        <source>likely not within %1, in a bad case after %2</source>
        <translation>wohl nicht innerhalb von %1, im schlechten Fall nach %2</translation>
    </message>
    <message>
        <source>Planned: %1.</source>
        <translation>Geplant: %1.</translation>
    </message>
    <message>
        <source>Nobody is likely to get cold within %1. %2</source>
        <translation>Wohl niemand friert innerhalb von %1. %2</translation>
    </message>
    <message>
        <source>Nobody is likely to get too cold within %1. First to feel cold: %2, after about %3. %4</source>
        <translation>Wohl niemandem wird innerhalb von %1 zu kalt. Zuerst friert: %2, nach etwa %3. %4</translation>
    </message>
    <message>
        <source>First to get too cold: %1, %2. %3</source>
        <translation>Zuerst zu kalt: %1, %2. %3</translation>
    </message>
    <message>
        <source>First to get too cold: %1, %2. Likely feels cold from %3 on. %4</source>
        <translation>Zuerst zu kalt: %1, %2. Friert wohl ab %3. %4</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>In no group yet</source>
        <translation>Noch in keiner Gruppe</translation>
    </message>
    <message>
        <source>%1: </source>
        <translation>%1: </translation>
    </message>
    <message>
        <source>%1 – %2: %3 %4</source>
        <translation>%1 – %2: %3 %4</translation>
    </message>
    <message>
        <source>%1 – too heavy for the BCD, perhaps, %2 more: see the table.</source>
        <translation>%1 – vielleicht zu schwer für das Jacket, %2 weitere: siehe Tabelle.</translation>
    </message>
    <message>
        <source>May not stay down with a nearly empty cylinder: %1.</source>
        <translation>Bleibt mit fast leerer Flasche vielleicht nicht unten: %1.</translation>
    </message>
    <message>
        <source>Lead: as far as there is an estimate, nobody is too heavy for the BCD or too light at the end.</source>
        <translation>Blei: Soweit eine Schätzung vorliegt, ist niemand zu schwer für das Jacket oder am Ende zu leicht.</translation>
    </message>
    <message>
        <source>%1 (%2).</source>
        <translation>%1 (%2).</translation>
    </message>
    <message>
        <source>all guests</source>
        <translation>alle Gäste</translation>
    </message>
    <message>
        <source>over %1 (from %2)</source>
        <translation>über %1 (ab %2)</translation>
    </message>
    <message>
        <source>neutral</source>
        <translation>schwebt</translation>
    </message>
    <message>
        <source>floats %1</source>
        <translation>treibt mit %1 auf</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 (set aside)</source>
        <translation>%1 (übergangen)</translation>
    </message>
    <message>
        <source>%1 Set aside: %2</source>
        <translation>%1 Übergangen: %2</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
</context>
<context>
    <name>GuestFile</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Geboren</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation>E-Mail</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Shoe size (EU)</source>
        <translation>Schuhgröße (EU)</translation>
    </message>
    <message>
        <source>Air use measured</source>
        <translation>Luftverbrauch, gemessen</translation>
    </message>
    <message>
        <source>Dives before</source>
        <translation>Bisherige Tauchgänge</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>Anzug</translation>
    </message>
    <message>
        <source>Jacket</source>
        <translation>Jacket</translation>
    </message>
    <message>
        <source>Fins</source>
        <translation>Flossen</translation>
    </message>
    <message>
        <source>Mask</source>
        <translation>Maske</translation>
    </message>
    <message>
        <source>Regulator</source>
        <translation>Atemregler</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Blei</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Filled to</source>
        <translation>Gefüllt auf</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>Gesundheitsfragen</translation>
    </message>
    <message>
        <source>Asked on</source>
        <translation>Gefragt am</translation>
    </message>
    <message>
        <source>Edition of the questions</source>
        <translation>Ausgabe der Fragen</translation>
    </message>
    <message>
        <source>Asked by</source>
        <translation>Gefragt von</translation>
    </message>
    <message>
        <source>Physician&apos;s release seen</source>
        <translation>Ärztliche Freigabe gesehen</translation>
    </message>
    <message>
        <source>Date on the release</source>
        <translation>Datum auf der Freigabe</translation>
    </message>
    <message>
        <source>On the day</source>
        <translation>Am Tag</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>Pressure at the start</source>
        <translation>Druck am Anfang</translation>
    </message>
    <message>
        <source>Pressure at the end</source>
        <translation>Druck am Ende</translation>
    </message>
    <message>
        <source>Time in the water</source>
        <translation>Zeit im Wasser</translation>
    </message>
    <message>
        <source>Trouble with ears</source>
        <translation>Probleme mit den Ohren</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Depths</source>
        <translation>Tiefen</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Breathing taken as</source>
        <translation>Atmung angenommen als</translation>
    </message>
    <message>
        <source>Certified</source>
        <translation>Brevetiert</translation>
    </message>
    <message>
        <source>Guardian&apos;s consent seen</source>
        <translation>Einwilligung der Sorgeberechtigten gesehen</translation>
    </message>
    <message>
        <source>Note of the staff</source>
        <translation>Notiz des Teams</translation>
    </message>
    <message>
        <source>As known on the day</source>
        <translation>Wie am Tag bekannt</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Dive at</source>
        <translation>Tauchgang um</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Tauchplatz</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Gewässer</translation>
    </message>
    <message>
        <source>In the water</source>
        <translation>Im Wasser</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Gone ahead despite a finding</source>
        <translation>Trotz einer Feststellung weitergemacht</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Sealed health records</source>
        <translation>Versiegelte Gesundheitsdaten</translation>
    </message>
    <message>
        <source>Records on file: %1. Sealed: open the vault to include them.</source>
        <translation>Abgelegte Aufzeichnungen: %1. Versiegelt: Öffnen Sie den Tresor, um sie aufzunehmen.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>What is kept of %1</source>
        <translation>Was über %1 aufbewahrt wird</translation>
    </message>
    <message>
        <source>Also on record as</source>
        <translation>Auch erfasst als</translation>
    </message>
    <message>
        <source>Written on %1. All that the centre&apos;s records hold of this person: nothing of other guests, nothing of staff but the name of who decided something. Notes on a whole dive are left out, as they may speak of others.</source>
        <translation>Geschrieben am %1. Alles, was die Aufzeichnungen der Basis über diese Person enthalten: nichts über andere Gäste, nichts über das Team außer dem Namen dessen, der etwas entschieden hat. Notizen zu einem ganzen Tauchgang sind weggelassen, da sie von anderen sprechen können.</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>No session is on record.</source>
        <translation>Kein Termin ist erfasst.</translation>
    </message>
</context>
<context>
    <name>GuestGasModel</name>
    <message>
        <source>Guest</source>
        <translation>Gast</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>As read</source>
        <translation>Abgelesen</translation>
    </message>
    <message>
        <source>Read at</source>
        <translation>Luft bei</translation>
    </message>
    <message>
        <source>Breathing</source>
        <translation>Atmung</translation>
    </message>
    <message>
        <source>RMV</source>
        <translation>AMV</translation>
    </message>
    <message>
        <source>Read →
in the water</source>
        <translation>Abgelesen →
im Wasser</translation>
    </message>
    <message>
        <source>At the
end</source>
        <translation>Am
Ende</translation>
    </message>
    <message>
        <source>Until
reserve</source>
        <translation>Bis
Reserve</translation>
    </message>
    <message>
        <source>10 to 90
of 100</source>
        <translation>10 bis 90
von 100</translation>
    </message>
    <message>
        <source>Ends
the dive</source>
        <translation>Beendet
Tauchgang</translation>
    </message>
    <message>
        <source>Turn at</source>
        <translation>Umkehr
bei</translation>
    </message>
    <message>
        <source>Leave
bottom at</source>
        <translation>Aufstieg
bei</translation>
    </message>
    <message>
        <source>Minimum
for two</source>
        <translation>Minimum
für zwei</translation>
    </message>
    <message>
        <source>Signal
at</source>
        <translation>Zeichen
bei</translation>
    </message>
    <message>
        <source>Guests of the group; who is likely first at the reserve in bold.</source>
        <translation>Gäste der Gruppe; wer wohl zuerst auf Reserve ist, steht fett.</translation>
    </message>
    <message>
        <source>The guest&apos;s group.</source>
        <translation>Die Gruppe des Gastes.</translation>
    </message>
    <message>
        <source>Size and working pressure as the trade names them. What is stamped on the cylinder prevails.</source>
        <translation>Größe und Betriebsdruck, wie sie im Handel heißen. Was auf der Flasche eingeschlagen ist, geht vor.</translation>
    </message>
    <message>
        <source>Gauge reading when the cylinder was handed out. A gauge may read %1 wrong: 2.5 % of its scale (EN 837-1, from memory), common practice that diving gauges are of this class.</source>
        <translation>Anzeige des Finimeters bei der Ausgabe der Flasche. Ein Finimeter kann um %1 falsch anzeigen: 2,5&#xa0;% seiner Skala (EN 837-1, aus dem Gedächtnis); dass Finimeter zu dieser Klasse gehören, ist übliche Praxis.</translation>
    </message>
    <message>
        <source>Temperature of the air in the cylinder when the gauge was read. Warm air reads high and loses pressure in the water.</source>
        <translation>Temperatur der Luft in der Flasche beim Ablesen. Warme Luft zeigt mehr an und verliert im Wasser Druck.</translation>
    </message>
    <message>
        <source>How the guest is likely to breathe: calm %1, not known %2, nervous %3, child %4. Common practice, no source; errs to the high side.</source>
        <translation>Wie der Gast wohl atmet: ruhig %1, nicht bekannt %2, nervös %3, Kind %4. Übliche Praxis, keine Quelle; im Zweifel eher zu hoch.</translation>
    </message>
    <message>
        <source>Respiratory minute volume: air breathed a minute at the pressure around the guest. By class, or measured on an own past dive; empty it to go back to the class.</source>
        <translation>Atemminutenvolumen: je Minute geatmete Luft beim Druck um den Gast. Nach Klasse, oder gemessen bei einem eigenen früheren Tauchgang; leeren Sie es, um zur Klasse zurückzukehren.</translation>
    </message>
    <message>
        <source>What the reading becomes once the cylinder is as cold as the water: no air is lost, but pressure. Air as a real gas: Lemmon and others, J. Phys. Chem. Ref. Data 29 (2000). Rounded down.</source>
        <translation>Was aus der Anzeige wird, wenn die Flasche so kalt ist wie das Wasser: Es geht keine Luft verloren, aber Druck. Luft als reales Gas: Lemmon und andere, J. Phys. Chem. Ref. Data 29 (2000). Abgerundet.</translation>
    </message>
    <message>
        <source>Left at the end of the planned dive. RMV × pressure around the guest × time, with more for settling, the way down and skills (common practice); errs to the low side.</source>
        <translation>Übrig am Ende des geplanten Tauchgangs. AMV × Druck um den Gast × Zeit, mit mehr für das Eingewöhnen, den Abstieg und die Übungen (übliche Praxis); im Zweifel eher zu niedrig.</translation>
    </message>
    <message>
        <source>From the start until the guest is at the reserve in the middle one of all such dives, were the group to stay at the depth from which the final ascent starts. Rounded down.</source>
        <translation>Vom Anfang, bis der Gast auf Reserve ist, im mittleren aller solchen Tauchgänge, wenn die Gruppe auf der Tiefe bliebe, von der der letzte Aufstieg beginnt. Abgerundet.</translation>
    </message>
    <message>
        <source>Minutes until the reserve in the 10th and in the 90th of 100 such dives, fastest first: how much this guest&apos;s breathing may differ from what is planned with (lognormal; its width is common practice, no source). Rounded down.</source>
        <translation>Minuten bis zur Reserve im 10. und im 90. von 100 solchen Tauchgängen, der schnellste zuerst: wie weit die Atmung dieses Gastes vom Plan abweichen kann (lognormal; die Breite ist übliche Praxis, keine Quelle). Abgerundet.</translation>
    </message>
    <message>
        <source>How many of 100 such dives end because this guest is the first of the group at the reserve. Rounded down.</source>
        <translation>Wie viele von 100 solchen Tauchgängen enden, weil in der Gruppe dieser Gast zuerst auf Reserve ist. Abgerundet.</translation>
    </message>
    <message>
        <source>Half of what the tour may use is gone: go back. Common practice, no source. Rounded up.</source>
        <translation>Die Hälfte dessen, was die Tour verbrauchen darf, ist weg: Umkehren. Übliche Praxis, keine Quelle. Aufgerundet.</translation>
    </message>
    <message>
        <source>Start the ascent now to surface with the reserve, and never with less than the minimum for two and the %1 that a gauge may read too high. Rounded up.</source>
        <translation>Jetzt den Aufstieg beginnen, um mit der Reserve aufzutauchen, und nie mit weniger als dem Minimum für zwei und den %1, um die ein Finimeter zu viel anzeigen kann. Aufgerundet.</translation>
    </message>
    <message>
        <source>Enough in this cylinder for guest and instructor, both stressed (%1 and %2, common practice): one minute at the deepest point, then up at the allowed rate, with a margin for the regulator (U.S. Navy Diving Manual, vol. 2, p. 8-3). Rounded up.</source>
        <translation>Genug in dieser Flasche für Gast und Tauchlehrer, beide unter Stress (%1 und %2, übliche Praxis): eine Minute am tiefsten Punkt, dann mit der erlaubten Geschwindigkeit nach oben, mit einem Zuschlag für den Atemregler (U.S. Navy Diving Manual, Bd. 2, S. 8-3). Aufgerundet.</translation>
    </message>
    <message>
        <source>What the card says: the reserve, or the minimum for two with the %1 that a gauge may read too high, the greater, rounded well up. At this reading the guest tells the instructor.</source>
        <translation>Was auf der Karte steht: die Reserve, oder das Minimum für zwei mit den %1, um die ein Finimeter zu viel anzeigen kann; der größere Wert, reichlich aufgerundet. Bei dieser Anzeige gibt der Gast dem Tauchlehrer Bescheid.</translation>
    </message>
</context>
<context>
    <name>GuestNames</name>
    <message>
        <source>Guest removed</source>
        <translation>Gast entfernt</translation>
    </message>
</context>
<context>
    <name>HealthQuestions</name>
    <message>
        <source>Lungs</source>
        <translation>Lunge</translation>
    </message>
    <message>
        <source>Do your lungs or your breathing ever give you trouble?</source>
        <translation>Macht Ihnen Ihre Lunge oder Ihre Atmung manchmal Probleme?</translation>
    </message>
    <message>
        <source>Do you wheeze, have asthma, or carry an inhaler?</source>
        <translation>Pfeift Ihr Atem, haben Sie Asthma, oder tragen Sie ein Spray zum Inhalieren bei sich?</translation>
    </message>
    <message>
        <source>Has a lung ever collapsed, or has your chest been operated on?</source>
        <translation>Ist schon einmal ein Lungenflügel zusammengefallen, oder wurden Sie am Brustkorb operiert?</translation>
    </message>
    <message>
        <source>Have you had pneumonia, or a cough that went on for weeks, in the past year?</source>
        <translation>Hatten Sie im letzten Jahr eine Lungenentzündung oder wochenlang Husten?</translation>
    </message>
    <message>
        <source>Has a doctor ever found anything else wrong with your lungs?</source>
        <translation>Hat ein Arzt sonst etwas an Ihrer Lunge festgestellt?</translation>
    </message>
    <message>
        <source>Heart and blood</source>
        <translation>Herz und Blut</translation>
    </message>
    <message>
        <source>Has anything ever been found wrong with your heart, your blood pressure or your blood?</source>
        <translation>Wurde an Ihrem Herzen, Ihrem Blutdruck oder Ihrem Blut je etwas festgestellt?</translation>
    </message>
    <message>
        <source>Is your blood pressure high, or do you take something to lower it?</source>
        <translation>Ist Ihr Blutdruck hoch, oder nehmen Sie etwas ein, um ihn zu senken?</translation>
    </message>
    <message>
        <source>Have you had a heart attack, pain in the chest on effort, or heart failure?</source>
        <translation>Hatten Sie einen Herzinfarkt, Brustschmerzen bei Anstrengung oder eine Herzschwäche?</translation>
    </message>
    <message>
        <source>Does your heart beat out of step, or do you have a pacemaker or a stent?</source>
        <translation>Schlägt Ihr Herz unregelmäßig, oder haben Sie einen Schrittmacher oder einen Stent?</translation>
    </message>
    <message>
        <source>Were you born with a fault of the heart, or has a valve or a hole in it been found or mended?</source>
        <translation>Wurden Sie mit einem Herzfehler geboren, oder wurde an Ihrem Herzen eine Klappe oder ein Loch festgestellt oder behoben?</translation>
    </message>
    <message>
        <source>Do you bleed or clot too easily, or has your blood been treated?</source>
        <translation>Bluten Sie zu leicht, gerinnt Ihr Blut zu leicht, oder wurde Ihr Blut behandelt?</translation>
    </message>
    <message>
        <source>Has a doctor found or operated on anything else of your heart, your vessels or your blood?</source>
        <translation>Hat ein Arzt sonst etwas an Ihrem Herzen, Ihren Gefäßen oder Ihrem Blut festgestellt oder operiert?</translation>
    </message>
    <message>
        <source>From 45 on</source>
        <translation>Ab 45</translation>
    </message>
    <message>
        <source>Do you smoke or breathe in nicotine in any way?</source>
        <translation>Rauchen Sie, oder atmen Sie auf irgendeine Art Nikotin ein?</translation>
    </message>
    <message>
        <source>Have you been told that your cholesterol is high?</source>
        <translation>Wurde Ihnen gesagt, dass Ihr Cholesterin hoch ist?</translation>
    </message>
    <message>
        <source>Did a parent, brother or sister have a heart attack or a stroke before turning 50?</source>
        <translation>Hatte ein Elternteil, ein Bruder oder eine Schwester vor dem 50. Geburtstag einen Herzinfarkt oder Schlaganfall?</translation>
    </message>
    <message>
        <source>Has a doctor asked you to lose weight or to be more careful with your heart?</source>
        <translation>Hat ein Arzt Ihnen geraten, abzunehmen oder Ihr Herz mehr zu schonen?</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>Anstrengung</translation>
    </message>
    <message>
        <source>Would a brisk walk for a quarter of an hour, or two lengths of a pool, leave you gasping or in pain?</source>
        <translation>Würden Sie nach einer Viertelstunde zügigen Gehens oder nach zwei Bahnen im Schwimmbad nach Luft ringen oder Schmerzen haben?</translation>
    </message>
    <message>
        <source>Eyes, ears, sinuses</source>
        <translation>Augen, Ohren, Nebenhöhlen</translation>
    </message>
    <message>
        <source>Have your eyes, ears, nose or sinuses been operated on, or do they keep giving you trouble?</source>
        <translation>Wurden Sie an Augen, Ohren, Nase oder Nebenhöhlen operiert, oder machen sie Ihnen immer wieder Probleme?</translation>
    </message>
    <message>
        <source>Have your sinuses been operated on in the past half year, or are they often inflamed?</source>
        <translation>Wurden Sie im letzten halben Jahr an den Nebenhöhlen operiert, oder sind diese oft entzündet?</translation>
    </message>
    <message>
        <source>Has an ear been operated on, or do you hear badly or lose your balance?</source>
        <translation>Wurden Sie an einem Ohr operiert, hören Sie schlecht, oder verlieren Sie das Gleichgewicht?</translation>
    </message>
    <message>
        <source>Do your ears hurt or stay blocked in aeroplanes, or has an eardrum been torn?</source>
        <translation>Schmerzen Ihre Ohren im Flugzeug oder bleiben sie dort zu, oder war einmal ein Trommelfell gerissen?</translation>
    </message>
    <message>
        <source>Has an eye been operated on in the past three months?</source>
        <translation>Wurden Sie in den letzten drei Monaten an einem Auge operiert?</translation>
    </message>
    <message>
        <source>Has a doctor found anything else wrong with your eyes, ears, nose or sinuses?</source>
        <translation>Hat ein Arzt sonst etwas an Augen, Ohren, Nase oder Nebenhöhlen festgestellt?</translation>
    </message>
    <message>
        <source>Operation</source>
        <translation>Operation</translation>
    </message>
    <message>
        <source>Were you operated on in the past twelve months, or does an older operation still hold you back?</source>
        <translation>Wurden Sie in den letzten zwölf Monaten operiert, oder schränkt eine ältere Operation Sie noch ein?</translation>
    </message>
    <message>
        <source>Head and nerves</source>
        <translation>Kopf und Nerven</translation>
    </message>
    <message>
        <source>Have you ever passed out, had a fit, hurt your head badly, or had trouble with your nerves?</source>
        <translation>Waren Sie schon einmal bewusstlos, hatten Sie einen Krampfanfall, eine schwere Kopfverletzung oder Probleme mit den Nerven?</translation>
    </message>
    <message>
        <source>Did a blow to the head knock you out in the past five years?</source>
        <translation>Waren Sie in den letzten fünf Jahren nach einem Schlag auf den Kopf bewusstlos?</translation>
    </message>
    <message>
        <source>Have you had a fit or epilepsy, or do you take something against it?</source>
        <translation>Hatten Sie einen Krampfanfall oder Epilepsie, oder nehmen Sie etwas dagegen?</translation>
    </message>
    <message>
        <source>Did you faint or black out in the past five years?</source>
        <translation>Sind Sie in den letzten fünf Jahren ohnmächtig geworden oder hatten Sie einen Blackout?</translation>
    </message>
    <message>
        <source>Do you get headaches that stop you, or take something every day to keep them away?</source>
        <translation>Haben Sie Kopfschmerzen, die Sie außer Gefecht setzen, oder nehmen Sie täglich etwas, um sie fernzuhalten?</translation>
    </message>
    <message>
        <source>Have you had a stroke, numbness that stayed, or an illness of the nerves?</source>
        <translation>Hatten Sie einen Schlaganfall, ein bleibendes Taubheitsgefühl oder eine Nervenkrankheit?</translation>
    </message>
    <message>
        <source>Mind</source>
        <translation>Psyche</translation>
    </message>
    <message>
        <source>Have you been treated for your mood, for panic, for attention or for an addiction?</source>
        <translation>Wurden Sie wegen Ihrer Stimmung, wegen Panik, wegen Ihrer Aufmerksamkeit oder wegen einer Sucht behandelt?</translation>
    </message>
    <message>
        <source>Do you get attacks of panic, or are closed spaces or open water hard to bear?</source>
        <translation>Haben Sie Panikattacken, oder fällt es Ihnen schwer, enge Räume oder offenes Wasser zu ertragen?</translation>
    </message>
    <message>
        <source>Are you in treatment now, or do you take something for your mood or attention?</source>
        <translation>Sind Sie jetzt in Behandlung, oder nehmen Sie etwas für Ihre Stimmung oder Aufmerksamkeit?</translation>
    </message>
    <message>
        <source>Have you been in hospital for your mind, or thought of taking your life?</source>
        <translation>Waren Sie wegen einer seelischen Krankheit im Krankenhaus, oder haben Sie daran gedacht, sich das Leben zu nehmen?</translation>
    </message>
    <message>
        <source>In the past five years, have alcohol or drugs been a problem for you?</source>
        <translation>Waren in den letzten fünf Jahren Alkohol oder Drogen für Sie ein Problem?</translation>
    </message>
    <message>
        <source>Back, hernia, ulcer, diabetes</source>
        <translation>Rücken, Bruch, Geschwür, Diabetes</translation>
    </message>
    <message>
        <source>Do you have trouble with your back, a hernia, an ulcer or diabetes?</source>
        <translation>Haben Sie Probleme mit dem Rücken, einen Eingeweidebruch (Hernie), ein Geschwür oder Diabetes?</translation>
    </message>
    <message>
        <source>Has your back kept you from what you do every day in the past half year?</source>
        <translation>Hat Ihr Rücken Sie im letzten halben Jahr an Ihren alltäglichen Tätigkeiten gehindert?</translation>
    </message>
    <message>
        <source>Has your back or spine been operated on?</source>
        <translation>Wurden Sie am Rücken oder an der Wirbelsäule operiert?</translation>
    </message>
    <message>
        <source>Do you have diabetes, or did you have it in pregnancy?</source>
        <translation>Haben Sie Diabetes, oder hatten Sie ihn in der Schwangerschaft?</translation>
    </message>
    <message>
        <source>Do you have a hernia that has not been mended and gets in your way?</source>
        <translation>Haben Sie einen nicht operierten Eingeweidebruch (Hernie), der Sie behindert?</translation>
    </message>
    <message>
        <source>Do you have an ulcer, or have you had one treated in the past half year?</source>
        <translation>Haben Sie ein Geschwür, oder wurde in den letzten sechs Monaten eines behandelt?</translation>
    </message>
    <message>
        <source>Stomach and gut</source>
        <translation>Magen und Darm</translation>
    </message>
    <message>
        <source>Do your stomach or your gut give you trouble?</source>
        <translation>Macht Ihnen Ihr Magen oder Ihr Darm Probleme?</translation>
    </message>
    <message>
        <source>Do you have an opening of the gut at the belly, or were you operated on to lose weight?</source>
        <translation>Haben Sie einen künstlichen Darmausgang, oder wurden Sie operiert, um abzunehmen?</translation>
    </message>
    <message>
        <source>Have you lost much fluid by vomiting or diarrhoea in the past week?</source>
        <translation>Haben Sie in der letzten Woche durch Erbrechen oder Durchfall viel Flüssigkeit verloren?</translation>
    </message>
    <message>
        <source>Do you have heartburn or food coming up most weeks?</source>
        <translation>Haben Sie in den meisten Wochen Sodbrennen, oder stößt Ihnen Essen auf?</translation>
    </message>
    <message>
        <source>Is your gut inflamed for long times, or does it bleed?</source>
        <translation>Ist Ihr Darm über längere Zeit entzündet, oder blutet er?</translation>
    </message>
    <message>
        <source>Medicine</source>
        <translation>Medikamente</translation>
    </message>
    <message>
        <source>Do you take medicine that a doctor prescribed, other than for birth control or against malaria?</source>
        <translation>Nehmen Sie Medikamente, die ein Arzt verschrieben hat, außer zur Verhütung oder gegen Malaria?</translation>
    </message>
    <message>
        <source>Pregnancy</source>
        <translation>Schwangerschaft</translation>
    </message>
    <message>
        <source>Are you pregnant, might you be, or are you trying to be?</source>
        <translation>Sind Sie schwanger, könnten Sie es sein, oder möchten Sie es werden?</translation>
    </message>
</context>
<context>
    <name>KitSheet</name>
    <message>
        <source>%1 × %2</source>
        <comment>how many of which kind</comment>
        <translation>%1 × %2</translation>
    </message>
    <message numerus="yes">
        <source>%1 in all, for %n guests</source>
        <translation>
            <numerusform>%1 zusammen, für %n Gast</numerusform>
            <numerusform>%1 zusammen, für %n Gäste</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sets (%1)</source>
        <translation>
            <numerusform>%n Stück (%1)</numerusform>
            <numerusform>%n Stück (%1)</numerusform>
        </translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>Noch keine Gäste.</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Gast</translation>
    </message>
    <message>
        <source>Still missing.</source>
        <translation>Es fehlt noch.</translation>
    </message>
    <message>
        <source>To pack in all</source>
        <translation>Zusammen einzupacken</translation>
    </message>
    <message>
        <source>All groups</source>
        <translation>Alle Gruppen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>guest: items of kit</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Staff bring their own kit; their cylinders are counted. Check every set before it leaves.</source>
        <translation>Das Team bringt die eigene Ausrüstung mit; seine Flaschen sind mitgezählt. Jede Ausrüstung prüfen, bevor sie hinausgeht.</translation>
    </message>
    <message>
        <source>–: still missing, write it in.</source>
        <translation>–: fehlt noch, bitte eintragen.</translation>
    </message>
</context>
<context>
    <name>LanguageMenu</name>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>Kept. The language changes when Leadline is started again.</source>
        <translation>Gespeichert. Die Sprache wechselt beim nächsten Start von Leadline.</translation>
    </message>
    <message>
        <source>That of the &amp;computer</source>
        <translation>Die des &amp;Computers</translation>
    </message>
    <message>
        <source>%1 (draft)</source>
        <comment>a language nobody has checked</comment>
        <translation>%1 (Entwurf)</translation>
    </message>
</context>
<context>
    <name>Levers</name>
    <message>
        <source>over 99</source>
        <translation>über 99</translation>
    </message>
    <message>
        <source>fewer than 1</source>
        <translation>unter 1</translation>
    </message>
    <message>
        <source>No deeper than %1</source>
        <translation>Nicht tiefer als %1</translation>
    </message>
    <message>
        <source>%1 less for skills</source>
        <translation>%1 weniger für Übungen</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 für %2</translation>
    </message>
    <message>
        <source>Suit %1 for %2</source>
        <translation>Anzug %1 für %2</translation>
    </message>
    <message>
        <source>%1 and %2 change places</source>
        <translation>%1 und %2 tauschen den Platz</translation>
    </message>
    <message>
        <source>Without %1</source>
        <translation>Ohne %1</translation>
    </message>
    <message>
        <source>one is free by the stock list</source>
        <translation>laut Bestandsliste ist eine frei</translation>
    </message>
    <message>
        <source>if one is free</source>
        <translation>falls eine frei ist</translation>
    </message>
    <message>
        <source>Heavier to carry</source>
        <translation>Schwerer zu tragen</translation>
    </message>
    <message>
        <source>About as heavy</source>
        <translation>Etwa gleich schwer</translation>
    </message>
    <message>
        <source>%1 more on land</source>
        <translation>%1 mehr an Land</translation>
    </message>
    <message>
        <source>%1 less on land</source>
        <translation>%1 weniger an Land</translation>
    </message>
    <message>
        <source>Ask first whether they came together. %1: %2 last the plan.</source>
        <translation>Fragen Sie zuerst, ob sie zusammen gekommen sind. %1: Die Luft reicht allen in %2.</translation>
    </message>
    <message>
        <source>Less to see.</source>
        <translation>Weniger zu sehen.</translation>
    </message>
    <message>
        <source>Less practice; the whole dive is %1 shorter.</source>
        <translation>Weniger Übung; der ganze Tauchgang ist %1 kürzer.</translation>
    </message>
    <message>
        <source>%1; %2. Read its gauge, check the lead.</source>
        <translation>%1; %2. Finimeter ablesen, Blei prüfen.</translation>
    </message>
    <message>
        <source>Needs more lead, check at the surface; %1.</source>
        <translation>Braucht mehr Blei, an der Oberfläche prüfen; %1.</translation>
    </message>
    <message>
        <source>Needs another group or another time.</source>
        <translation>Braucht eine andere Gruppe oder eine andere Zeit.</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>−%1</source>
        <translation>−%1</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>over +%1</source>
        <translation>über +%1</translation>
    </message>
    <message>
        <source>+%1</source>
        <translation>+%1</translation>
    </message>
    <message>
        <source>%1 until the first is at the reserve</source>
        <translation>%1, bis der Erste auf Reserve ist</translation>
    </message>
    <message>
        <source>the first is at the reserve later than %1</source>
        <translation>der Erste ist später als nach %1 auf Reserve</translation>
    </message>
    <message>
        <source>%1: %2. %3; all last the plan in %4, now %5. %6</source>
        <translation>%1: %2. %3; die Luft reicht allen in %4, jetzt %5. %6</translation>
    </message>
    <message>
        <source>%1 of 100</source>
        <translation>%1 von 100</translation>
    </message>
    <message>
        <source>%1 of 100, as now</source>
        <translation>%1 von 100, wie jetzt</translation>
    </message>
    <message>
        <source>%1 → %2 of 100</source>
        <translation>%1 → %2 von 100</translation>
    </message>
    <message>
        <source>Group %1</source>
        <translation>Gruppe %1</translation>
    </message>
</context>
<context>
    <name>LogEdits</name>
    <message>
        <source>Open a log</source>
        <translation>Protokoll öffnen</translation>
    </message>
    <message>
        <source>Use measured breathing</source>
        <translation>Gemessene Atmung verwenden</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>&quot;leadline --help&quot; shows how to call it.</source>
        <translation>„leadline --help“ zeigt, wie man es aufruft.</translation>
    </message>
    <message>
        <source>Session file to open.</source>
        <translation>Termindatei, die geöffnet wird.</translation>
    </message>
    <message>
        <source>Write JSON; every key names its unit.</source>
        <translation>JSON schreiben; jeder Schlüssel nennt seine Einheit.</translation>
    </message>
    <message>
        <source>Feet, psi and degrees Fahrenheit.</source>
        <translation>Fuß, psi und Grad Fahrenheit.</translation>
    </message>
    <message>
        <source>Records file to use instead of the default.</source>
        <translation>Datei mit den Aufzeichnungen statt der üblichen.</translation>
    </message>
    <message>
        <source>Write a picture of every tab to a folder and quit.</source>
        <translation>Von jedem Register ein Bild in einen Ordner schreiben, dann beenden.</translation>
    </message>
    <message>
        <source>Start with the dark look.</source>
        <translation>Mit dunkler Darstellung beginnen.</translation>
    </message>
    <message>
        <source>One file at a time: &quot;%1&quot; is too much.</source>
        <translation>Nur eine Datei auf einmal: „%1“ ist zu viel.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; needs a session file.</source>
        <translation>„%1“ braucht eine Termindatei.</translation>
    </message>
    <message>
        <source>No display was found, and no session file was named.</source>
        <translation>Kein Bildschirm gefunden, und keine Termindatei genannt.</translation>
    </message>
    <message>
        <source>Language of the window, for example &quot;en&quot;.</source>
        <translation>Sprache des Fensters, zum Beispiel „en“.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no language of the window. There are: %2.</source>
        <translation>„%1“ ist keine Sprache des Fensters. Es gibt: %2.</translation>
    </message>
    <message>
        <source>Plans a first, supervised scuba session, prints a card for every guest and reviews the log.

  leadline [FILE]                        open the window
  leadline plan FILE [--json]            numbers and findings
  leadline cards FILE --output OUT.pdf   a card for every guest
  leadline sheet FILE --kind KIND --output OUT.pdf   a sheet for staff
  leadline review FILE [--json]          planned against actual

Exit codes: 0 done; 1 a stop stands; 2 bad input.
A planning aid: local law, the instructor and a physician come first.</source>
        <translation>Plant einen ersten, begleiteten Tauchgang, druckt eine Karte für jeden Gast und wertet das Protokoll aus.

  leadline [DATEI]                       Fenster öffnen
  leadline plan DATEI [--json]           Zahlen und Feststellungen
  leadline cards DATEI --output AUS.pdf  eine Karte für jeden Gast
  leadline sheet DATEI --kind ART --output AUS.pdf   ein Blatt für das Team
  leadline review DATEI [--json]         geplant gegen getaucht

Exit-Codes: 0 fertig; 1 ein Stopp besteht; 2 falsche Eingabe.
Eine Planungshilfe: Das örtliche Recht, der Tauchlehrer und der Arzt gehen vor.</translation>
    </message>
    <message>
        <source>Where the cards or the sheet go.</source>
        <translation>Wohin die Karten oder das Blatt kommen.</translation>
    </message>
    <message>
        <source>Which sheet: beach, skills, kit, emergency or pictures.</source>
        <translation>Welches Blatt: beach, skills, kit, emergency oder pictures.</translation>
    </message>
    <message>
        <source>Letter paper: cards of a quarter instead of A6.</source>
        <translation>Letter-Papier: Karten als Viertel statt A6.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; needs --output OUT.pdf.</source>
        <translation>„%1“ braucht --output AUS.pdf.</translation>
    </message>
    <message>
        <source>Cards: %1; a name with &quot;paper&quot; has one card on a sheet of that size.</source>
        <translation>Karten: %1; bei einem Namen mit „paper“ eine Karte je Blatt dieser Größe.</translation>
    </message>
    <message>
        <source>The page of pictures: one language or two, for example &quot;de,ar&quot;; English if none is given. There are: %1.</source>
        <translation>Die Bilderseite: eine Sprache oder zwei, zum Beispiel „de,ar“; ohne Angabe Englisch. Es gibt: %1.</translation>
    </message>
</context>
<context>
    <name>Names</name>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Care</source>
        <translation>Achtung</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>At the surface</source>
        <translation>An der Oberfläche</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Abstieg</translation>
    </message>
    <message>
        <source>Skills</source>
        <translation>Übungen</translation>
    </message>
    <message>
        <source>Tour</source>
        <translation>Tour</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Aufstieg</translation>
    </message>
    <message>
        <source>Calm</source>
        <translation>Ruhig</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>Nervous</source>
        <translation>Nervös</translation>
    </message>
    <message>
        <source>Child, at ease</source>
        <translation>Kind, entspannt</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Slight</source>
        <translation>Leicht</translation>
    </message>
    <message>
        <source>Moderate</source>
        <translation>Mäßig</translation>
    </message>
    <message>
        <source>Strong</source>
        <translation>Stark</translation>
    </message>
    <message>
        <source>From the shore</source>
        <translation>Vom Ufer</translation>
    </message>
    <message>
        <source>From a boat</source>
        <translation>Vom Boot</translation>
    </message>
    <message>
        <source>Down steps</source>
        <translation>Über Stufen</translation>
    </message>
    <message>
        <source>Instructor</source>
        <translation>Tauchlehrer</translation>
    </message>
    <message>
        <source>Assistant</source>
        <translation>Assistent</translation>
    </message>
    <message>
        <source>Steel</source>
        <translation>Stahl</translation>
    </message>
    <message>
        <source>Aluminium</source>
        <translation>Aluminium</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>Not answered</source>
        <translation>Nicht beantwortet</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>In Ordnung</translation>
    </message>
    <message>
        <source>Physician first</source>
        <translation>Zuerst zum Arzt</translation>
    </message>
    <message>
        <source>Does not dive</source>
        <translation>Taucht nicht</translation>
    </message>
    <message>
        <source>read in the source</source>
        <translation>in der Quelle gelesen</translation>
    </message>
    <message>
        <source>from a summary of the source</source>
        <translation>aus einer Zusammenfassung der Quelle</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>own depths</source>
        <translation>eigene Tiefen</translation>
    </message>
    <message>
        <source>depths of the group</source>
        <translation>Tiefen der Gruppe</translation>
    </message>
    <message>
        <source>planned depths</source>
        <translation>geplante Tiefen</translation>
    </message>
    <message>
        <source>Not asked today</source>
        <translation>Heute nicht gefragt</translation>
    </message>
    <message>
        <source>Clear today</source>
        <translation>Heute in Ordnung</translation>
    </message>
    <message>
        <source>With care today</source>
        <translation>Heute mit Vorsicht</translation>
    </message>
    <message>
        <source>Not today</source>
        <translation>Heute nicht</translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation>Nicht unterschrieben</translation>
    </message>
    <message>
        <source>Signed on the screen</source>
        <translation>Am Bildschirm unterschrieben</translation>
    </message>
    <message>
        <source>Signed on paper</source>
        <translation>Auf Papier unterschrieben</translation>
    </message>
    <message>
        <source>by the centre&apos;s own form</source>
        <translation>mit dem eigenen Formular der Basis</translation>
    </message>
    <message>
        <source>edition %1</source>
        <translation>Ausgabe %1</translation>
    </message>
    <message>
        <source>birth date</source>
        <translation>Geburtsdatum</translation>
    </message>
    <message>
        <source>guardian&apos;s consent</source>
        <translation>Einwilligung der Sorgeberechtigten</translation>
    </message>
    <message>
        <source>health questions</source>
        <translation>Gesundheitsfragen</translation>
    </message>
    <message>
        <source>physician&apos;s release</source>
        <translation>ärztliche Freigabe</translation>
    </message>
    <message>
        <source>to be told: does not dive</source>
        <translation>mitzuteilen: taucht nicht</translation>
    </message>
    <message>
        <source>health check anew</source>
        <translation>Gesundheitscheck neu</translation>
    </message>
    <message>
        <source>date of the health check</source>
        <translation>Datum des Gesundheitschecks</translation>
    </message>
    <message>
        <source>physician&apos;s release anew</source>
        <translation>ärztliche Freigabe neu</translation>
    </message>
    <message>
        <source>Cold or blocked ears</source>
        <translation>Erkältung oder Ohren zu</translation>
    </message>
    <message>
        <source>Alcohol or drugs</source>
        <translation>Alkohol oder Drogen</translation>
    </message>
    <message>
        <source>New medicine</source>
        <translation>Neue Medikamente</translation>
    </message>
    <message>
        <source>Flight or mountain</source>
        <translation>Flug oder Gebirge</translation>
    </message>
    <message>
        <source>Unwilling or very afraid</source>
        <translation>Will nicht oder hat große Angst</translation>
    </message>
    <message>
        <source>Cannot swim</source>
        <translation>Kann nicht schwimmen</translation>
    </message>
    <message>
        <source>Do you feel ill or unwell today, or have a cold, or ears or a nose that will not clear?</source>
        <translation>Fühlen Sie sich heute krank oder unwohl, sind Sie erkältet, oder sind Ohren oder Nase zu?</translation>
    </message>
    <message>
        <source>Have you had alcohol or any drug since last night?</source>
        <translation>Haben Sie seit gestern Abend Alkohol getrunken oder Drogen genommen?</translation>
    </message>
    <message>
        <source>Have you taken any medicine today that you did not tell us about?</source>
        <translation>Haben Sie heute Medikamente genommen, von denen Sie uns nichts gesagt haben?</translation>
    </message>
    <message>
        <source>Will you fly or drive over a mountain within the next 24 hours?</source>
        <translation>Werden Sie in den nächsten 24 Stunden fliegen oder über einen Berg fahren?</translation>
    </message>
    <message>
        <source>Would you rather not dive, are you very afraid of it, or did somebody talk you into it?</source>
        <translation>Möchten Sie lieber nicht tauchen, haben Sie große Angst davor, oder hat Sie jemand dazu überredet?</translation>
    </message>
    <message>
        <source>Are you unable to swim or float by yourself?</source>
        <translation>Sind Sie Nichtschwimmer, oder brauchen Sie Hilfe, um an der Oberfläche zu bleiben?</translation>
    </message>
    <message>
        <source>suit</source>
        <translation>Anzug</translation>
    </message>
    <message>
        <source>BCD</source>
        <translation>Jacket</translation>
    </message>
    <message>
        <source>fins</source>
        <translation>Flossen</translation>
    </message>
    <message>
        <source>mask</source>
        <translation>Maske</translation>
    </message>
    <message>
        <source>regulator</source>
        <translation>Atemregler</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>Blei</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a name, and what is said of it</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>PdfPath</name>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF speichern</translation>
    </message>
    <message>
        <source>A file %1 is there already. Replace it?</source>
        <translation>Eine Datei %1 ist schon da. Ersetzen?</translation>
    </message>
    <message>
        <source>Replace</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>Another name…</source>
        <translation>Anderer Name&#xa0;…</translation>
    </message>
</context>
<context>
    <name>PlaceNumbers</name>
    <message>
        <source> lb/cu ft</source>
        <translation> lb/cu ft</translation>
    </message>
    <message>
        <source> kg/m³</source>
        <translation> kg/m³</translation>
    </message>
    <message>
        <source> At most %1 by %2.</source>
        <translation> Höchstens %1 nach %2.</translation>
    </message>
    <message>
        <source>Pressure at the surface</source>
        <translation>Druck an der Oberfläche</translation>
    </message>
    <message>
        <source>The barometer reading at the site.</source>
        <translation>Die Anzeige des Barometers am Platz.</translation>
    </message>
    <message>
        <source>Standard atmosphere at %1 of altitude (ICAO Doc 7488, 1993); weather moves it by up to 5 %. A barometer reading at the site takes its place.</source>
        <translation>Normalatmosphäre in %1 Höhe (ICAO Doc 7488, 1993); das Wetter verschiebt sie um bis zu 5&#xa0;%. Eine Barometeranzeige am Platz tritt an ihre Stelle.</translation>
    </message>
    <message>
        <source>Pressure at %1</source>
        <translation>Druck auf %1</translation>
    </message>
    <message>
        <source>Surface pressure + density × gravity × depth (hydrostatics); gravity %1 m/s² by the latitude (WGS 84).</source>
        <translation>Oberflächendruck + Dichte × Schwerkraft × Tiefe (Hydrostatik); Schwerkraft %1 m/s² nach der geografischen Breite (WGS 84).</translation>
    </message>
    <message>
        <source>Density of the water</source>
        <translation>Dichte des Wassers</translation>
    </message>
    <message>
        <source>From salinity %1 and %2 (equation of state of sea water 1980: Fofonoff and Millard, UNESCO 44, 1983). The coldest water is the densest: the safe side.</source>
        <translation>Aus Salzgehalt %1 und %2 (Zustandsgleichung des Meerwassers 1980: Fofonoff und Millard, UNESCO 44, 1983). Das kälteste Wasser ist das dichteste: die sichere Seite.</translation>
    </message>
    <message>
        <source>Clear the ears</source>
        <translation>Druckausgleich</translation>
    </message>
    <message>
        <source>every %1, every %2</source>
        <translation>alle %1, alle %2</translation>
    </message>
    <message>
        <source>The step of the rules, and the time it takes at the fastest planned descent, %1. Slower is always better.</source>
        <translation>Der Schritt der Regeln und die Zeit dafür beim schnellsten geplanten Abstieg, %1. Langsamer ist immer besser.</translation>
    </message>
    <message>
        <source>Largest step to clear in</source>
        <translation>Größter Schritt zum Druckausgleich</translation>
    </message>
    <message>
        <source>The water of this step weighs half of the %1 mmHg at which the tube locks, taken where a metre weighs most. Which share to use is common practice.</source>
        <translation>Das Wasser dieses Schritts wiegt die Hälfte der %1&#xa0;mmHg, bei denen sich die Ohrtrompete verschließt, dort genommen, wo ein Meter am meisten wiegt. Welcher Anteil zu nehmen ist, ist übliche Praxis.</translation>
    </message>
    <message>
        <source>On the eardrum before clearing</source>
        <translation>Auf dem Trommelfell vor dem Druckausgleich</translation>
    </message>
    <message>
        <source>at most %1 mmHg of %2</source>
        <translation>höchstens %1&#xa0;mmHg von %2</translation>
    </message>
    <message>
        <source>Density × gravity × step. From %1 mmHg on muscles can no longer open the tube to the ear (80 to 90 in the literature; the lower end is the safe side).</source>
        <translation>Dichte × Schwerkraft × Schritt. Ab %1&#xa0;mmHg können Muskeln die Ohrtrompete nicht mehr öffnen (80 bis 90 in der Literatur; das untere Ende ist die sichere Seite).</translation>
    </message>
    <message>
        <source>Never cleared, ears lock at</source>
        <translation>Ohne Druckausgleich Ohren zu ab</translation>
    </message>
    <message>
        <source>The depth whose water weighs %1 mmHg. Then: go up until it opens, never push.</source>
        <translation>Die Tiefe, deren Wasser %1&#xa0;mmHg wiegt. Dann: aufsteigen, bis es aufgeht, nie pressen.</translation>
    </message>
    <message>
        <source>A breath held from there grows</source>
        <translation>Dort angehaltene Luft wächst</translation>
    </message>
    <message>
        <source>Pressure at %1 / pressure at the surface (Boyle&apos;s law). The lung cannot follow: never hold the breath.</source>
        <translation>Druck auf %1 / Druck an der Oberfläche (Gesetz von Boyle). Die Lunge kann nicht folgen: nie die Luft anhalten.</translation>
    </message>
    <message>
        <source>Breath held: danger after</source>
        <translation>Luft angehalten: Gefahr nach</translation>
    </message>
    <message>
        <source>%1 of way up</source>
        <translation>%1 Aufstieg</translation>
    </message>
    <message>
        <source>With full lungs: the height of water that weighs %1 mmHg, at which a lung can tear (Schaefer and others, 1958; Malhotra and Wright, 1961; from memory; the lower end of 70 to 80).</source>
        <translation>Mit voller Lunge: die Wasserhöhe, die %1&#xa0;mmHg wiegt, bei denen eine Lunge reißen kann (Schaefer und andere, 1958; Malhotra und Wright, 1961; aus dem Gedächtnis; das untere Ende von 70 bis 80).</translation>
    </message>
    <message>
        <source>Fastest way down</source>
        <translation>Schnellster Abstieg</translation>
    </message>
    <message>
        <source>Depth / time of the steepest leg down.</source>
        <translation>Tiefe / Zeit des steilsten Abschnitts nach unten.</translation>
    </message>
    <message>
        <source>Fastest way up</source>
        <translation>Schnellster Aufstieg</translation>
    </message>
    <message>
        <source>Depth / time of the steepest leg up.</source>
        <translation>Tiefe / Zeit des steilsten Abschnitts nach oben.</translation>
    </message>
</context>
<context>
    <name>PlanText</name>
    <message>
        <source>over 240 min</source>
        <translation>über 240&#xa0;min</translation>
    </message>
    <message>
        <source>%1: %2 is likely first at %3, after %4 (10 to 90 of 100 dives: %5 to %6). All last the planned dive in %7 dives.</source>
        <translation>%1: %2 ist wohl zuerst bei %3, nach %4 (10 bis 90 von 100 Tauchgängen: %5 bis %6). Für den geplanten Tauchgang reicht die Luft allen in %7 Tauchgängen.</translation>
    </message>
    <message>
        <source>    Would help most: %1
</source>
        <translation>    Am meisten würde helfen: %1
</translation>
    </message>
    <message>
        <source>%1: the instructor keeps at least %2.
</source>
        <translation>%1: Der Tauchlehrer behält mindestens %2.
</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Gast</translation>
    </message>
    <message>
        <source>Too cold after</source>
        <translation>Zu kalt nach</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>Lead to try first</source>
        <translation>Blei zuerst</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>carried</source>
        <translation>trägt</translation>
    </message>
    <message>
        <source>Staff</source>
        <translation>Team</translation>
    </message>
    <message>
        <source>Dives today</source>
        <translation>Tauchgänge heute</translation>
    </message>
    <message>
        <source>Times up</source>
        <translation>Aufstiege</translation>
    </message>
    <message>
        <source>Days in a row</source>
        <translation>Tage in Folge</translation>
    </message>
    <message>
        <source>No-stop time left</source>
        <translation>Stoppfreie Zeit übrig</translation>
    </message>
    <message>
        <source>Before flying</source>
        <translation>Vor dem Fliegen</translation>
    </message>
    <message>
        <source>over 24 h</source>
        <translation>über 24&#xa0;h</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1&#xa0;h</translation>
    </message>
    <message>
        <source>    Set aside because: %1
</source>
        <translation>    Übergangen, weil: %1
</translation>
    </message>
    <message>
        <source>Readiness: %1 stop, %2 care, %3 note, %4 set aside
</source>
        <translation>Stand: %1 Stopp, %2 Achtung, %3 Hinweis, %4 übergangen
</translation>
    </message>
    <message>
        <source>Deepest %1, %2 there (surface %3); planned %4

</source>
        <translation>Tiefster Punkt %1, dort %2 (Oberfläche %3); geplant %4

</translation>
    </message>
    <message>
        <source>RMV</source>
        <translation>AMV</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Umkehr</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Aufstieg</translation>
    </message>
    <message>
        <source>Signal</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>Reserve after</source>
        <translation>Reserve nach</translation>
    </message>
    <message>
        <source>
Estimates for planning, on the side of more air used. The gauge, the guest&apos;s signal, shivering and the instructor decide. Lead: check at the surface. Staff: the diver&apos;s own computer and a physician prevail.
</source>
        <translation>
Schätzungen zum Planen, zur Seite des höheren Luftverbrauchs. Finimeter, Zeichen des Gastes, Zittern und der Tauchlehrer entscheiden. Blei: an der Oberfläche prüfen. Team: Der eigene Tauchcomputer und der Arzt gehen vor.
</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation>Tiefster Punkt</translation>
    </message>
    <message>
        <source>Planned end</source>
        <translation>Ende geplant</translation>
    </message>
    <message>
        <source>RMV planned</source>
        <translation>AMV geplant</translation>
    </message>
    <message>
        <source>RMV actual</source>
        <translation>AMV tatsächlich</translation>
    </message>
</context>
<context>
    <name>ProfileRefusal</name>
    <message>
        <source>The dive</source>
        <translation>Der Tauchgang</translation>
    </message>
    <message>
        <source>The start</source>
        <translation>Der Anfang</translation>
    </message>
    <message>
        <source>Corner %1</source>
        <translation>Eckpunkt %1</translation>
    </message>
    <message>
        <source>Not changed: %1 would be at %2 min, not later than the corner before it at %3 min. Times must grow from corner to corner.</source>
        <translation>Nicht geändert: %1 läge bei %2&#xa0;min, nicht später als der Eckpunkt davor bei %3&#xa0;min. Die Zeiten müssen von Eckpunkt zu Eckpunkt steigen.</translation>
    </message>
    <message>
        <source>Not changed: %1 would be at %2 min; a dive may last %3 min.</source>
        <translation>Nicht geändert: %1 läge bei %2&#xa0;min; ein Tauchgang darf %3&#xa0;min dauern.</translation>
    </message>
    <message>
        <source>Not changed: %1 would be at %2 m; possible is %3 m.</source>
        <translation>Nicht geändert: %1 läge auf %2&#xa0;m; möglich sind %3&#xa0;m.</translation>
    </message>
    <message>
        <source>Not changed: a dive starts and ends at the surface.</source>
        <translation>Nicht geändert: Ein Tauchgang beginnt und endet an der Oberfläche.</translation>
    </message>
    <message>
        <source>Not changed: a dive has %1 corners with its start.</source>
        <translation>Nicht geändert: Ein Tauchgang hat mit dem Anfang %1 Eckpunkte.</translation>
    </message>
    <message>
        <source>Not changed. %1</source>
        <translation>Nicht geändert. %1</translation>
    </message>
</context>
<context>
    <name>ProfileView</name>
    <message>
        <source>At most %1</source>
        <translation>Max. %1</translation>
    </message>
    <message>
        <source>Usual %1</source>
        <translation>Üblich %1</translation>
    </message>
    <message>
        <source>Bottom %1</source>
        <translation>Grund %1</translation>
    </message>
    <message>
        <source>down</source>
        <translation>ab</translation>
    </message>
    <message>
        <source>up</source>
        <translation>auf</translation>
    </message>
    <message>
        <source>too fast: at most %1</source>
        <translation>zu schnell: höchstens %1</translation>
    </message>
    <message>
        <source>88.8 m</source>
        <translation>88.8&#xa0;m</translation>
    </message>
    <message>
        <source> (below this view)</source>
        <translation> (tiefer)</translation>
    </message>
    <message>
        <source>240 min</source>
        <translation>240&#xa0;min</translation>
    </message>
    <message>
        <source>Clear ears every %1</source>
        <translation>Druckausgleich alle %1</translation>
    </message>
</context>
<context>
    <name>Quantity</name>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>psi</source>
        <translation>psi</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>bar</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>cu ft/min</source>
        <translation>cu ft/min</translation>
    </message>
    <message>
        <source>L/min</source>
        <translation>L/min</translation>
    </message>
    <message>
        <source>ft/min</source>
        <translation>ft/min</translation>
    </message>
    <message>
        <source>m/min</source>
        <translation>m/min</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>cu ft</source>
        <translation>cu ft</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>%1 ft %2 in</source>
        <translation>%1 ft %2 in</translation>
    </message>
    <message>
        <source>ddd d MMMM yyyy</source>
        <translation>ddd d. MMMM yyyy</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <comment>day, name of the month, year</comment>
        <translation>%1. %2 %3</translation>
    </message>
</context>
<context>
    <name>RecoverySheet</name>
    <message>
        <source>Recovery key of the health vault</source>
        <translation>Wiederherstellungsschlüssel des Gesundheitstresors</translation>
    </message>
    <message>
        <source>Made on %1</source>
        <translation>Erstellt am %1</translation>
    </message>
    <message>
        <source>Whoever has this paper and the records can read every guest&apos;s health answers. Keep it locked away, apart from the computer. Do not photograph it.</source>
        <translation>Wer dieses Papier und die Aufzeichnungen hat, kann die Gesundheitsantworten jedes Gastes lesen. Bewahren Sie es verschlossen auf, getrennt vom Computer. Fotografieren Sie es nicht.</translation>
    </message>
    <message>
        <source>It opens the vault when the passphrase is forgotten or the computer&apos;s keyring is lost: choose &quot;Use the recovery key&quot; when unlocking. The nine groups hold no 0, 1, I or O. Small letters will do.</source>
        <translation>Er öffnet den Tresor, wenn die Passphrase vergessen oder der Schlüsselbund des Computers verloren ist: Wählen Sie beim Öffnen „Wiederherstellungsschlüssel verwenden“. Die neun Gruppen enthalten weder 0 noch 1, I oder O. Kleinbuchstaben genügen.</translation>
    </message>
    <message>
        <source>Without passphrase and without this paper nobody can open the vault any more, nor can the makers of Leadline.</source>
        <translation>Ohne Passphrase und ohne dieses Papier kann niemand mehr den Tresor öffnen, auch nicht, wer Leadline macht.</translation>
    </message>
    <message>
        <source>Records: %1</source>
        <translation>Aufzeichnungen: %1</translation>
    </message>
</context>
<context>
    <name>Roster</name>
    <message>
        <source>(no name)</source>
        <translation>(ohne Namen)</translation>
    </message>
    <message>
        <source>Instructor, no name yet</source>
        <translation>Tauchlehrer, noch ohne Namen</translation>
    </message>
    <message>
        <source>Assistant, no name yet</source>
        <translation>Assistent, noch ohne Namen</translation>
    </message>
    <message numerus="yes">
        <source>%n stops</source>
        <translation>
            <numerusform>%n Stopp</numerusform>
            <numerusform>%n Stopps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n care</source>
        <translation>
            <numerusform>%n × Achtung</numerusform>
            <numerusform>%n × Achtung</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RuleSets</name>
    <message>
        <source>House rules of the centre</source>
        <translation>Hausregeln der Basis</translation>
    </message>
    <message>
        <source>Flying after diving workshop, 2002</source>
        <translation>Workshop über Fliegen nach dem Tauchen, 2002</translation>
    </message>
    <message>
        <source>France, Code du sport</source>
        <translation>Frankreich, „Code du sport“</translation>
    </message>
    <message>
        <source>France, federation rules for children</source>
        <translation>Frankreich, Verbandsregeln für Kinder</translation>
    </message>
    <message>
        <source>ISO 11121:2017</source>
        <translation>ISO 11121:2017</translation>
    </message>
    <message>
        <source>Maldives, regulation of 2003</source>
        <translation>Malediven, Verordnung von 2003</translation>
    </message>
    <message>
        <source>Queensland, recreational diving code</source>
        <translation>Queensland, Verhaltenskodex für das Freizeittauchen</translation>
    </message>
    <message>
        <source>RSTC introductory scuba experience, 2001</source>
        <translation>RSTC, Schnuppertauchen, 2001</translation>
    </message>
    <message>
        <source>Spain, Royal Decree 550/2020</source>
        <translation>Spanien, Königliches Dekret 550/2020</translation>
    </message>
    <message>
        <source>Thailand, measures of 2025</source>
        <translation>Thailand, Maßnahmen von 2025</translation>
    </message>
    <message>
        <source>%1</source>
        <comment>a source in English: put it into quotation marks</comment>
        <translation>„%1“</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Suit</source>
        <translation>Anzug</translation>
    </message>
    <message>
        <source>BCD</source>
        <translation>Jacket</translation>
    </message>
    <message>
        <source>Fins</source>
        <translation>Flossen</translation>
    </message>
    <message>
        <source>Mask</source>
        <translation>Maske</translation>
    </message>
    <message>
        <source>Regulator</source>
        <translation>Atemregler</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Blei</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>metal and size of a cylinder</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 –</source>
        <comment>item of kit that is missing</comment>
        <translation>%1 –</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>item of kit, its size</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>A planning aid: figures can be wrong. Gauges, local rules and the instructor on the spot decide.</source>
        <translation>Eine Planungshilfe: Zahlen können falsch sein. Es entscheiden Finimeter, örtliche Regeln und der Tauchlehrer vor Ort.</translation>
    </message>
    <message>
        <source>Metric units</source>
        <translation>Metrische Einheiten</translation>
    </message>
    <message>
        <source>Imperial units</source>
        <translation>Angloamerikanische Einheiten</translation>
    </message>
    <message>
        <source>%1 · %2 · meet %3 · in the water %4</source>
        <comment>site, day, times</comment>
        <translation>%1 · %2 · Treffen %3 · im Wasser %4</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
</context>
<context>
    <name>SheetNames</name>
    <message>
        <source>A card for each guest to take along</source>
        <translation>Eine Karte zum Mitnehmen für jeden Gast</translation>
    </message>
    <message>
        <source>A page for each group, for the instructor</source>
        <translation>Ein Blatt je Gruppe, für den Tauchlehrer</translation>
    </message>
    <message>
        <source>Who has practised what, to tick off</source>
        <translation>Wer was geübt hat, zum Abhaken</translation>
    </message>
    <message>
        <source>What to pack, for whom and how many</source>
        <translation>Was für wen einzupacken ist und wie viel</translation>
    </message>
    <message>
        <source>A page for the wall at the site</source>
        <translation>Ein Blatt für die Wand am Tauchplatz</translation>
    </message>
    <message>
        <source>Signals and air in pictures</source>
        <translation>Zeichen und Luft in Bildern</translation>
    </message>
    <message>
        <source>Cards</source>
        <translation>Karten</translation>
    </message>
    <message>
        <source>Beach sheet</source>
        <translation>Strandblatt</translation>
    </message>
    <message>
        <source>Skills</source>
        <translation>Übungen</translation>
    </message>
    <message>
        <source>Kit list</source>
        <translation>Packliste</translation>
    </message>
    <message>
        <source>Emergency plan</source>
        <translation>Notfallplan</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Bilder</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>session: sheet</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ShortNames</name>
    <message>
        <source>(no name)</source>
        <translation>(ohne Namen)</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 und noch %n</numerusform>
            <numerusform>%1 und noch %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SkillsSheet</name>
    <message>
        <source>Skills</source>
        <translation>Übungen</translation>
    </message>
    <message>
        <source>No skills are chosen for this session.</source>
        <translation>Für diesen Termin sind keine Übungen ausgewählt.</translation>
    </message>
    <message>
        <source>Nobody is in this group yet.</source>
        <translation>In dieser Gruppe ist noch niemand.</translation>
    </message>
    <message>
        <source>What each is for</source>
        <translation>Wozu jede dient</translation>
    </message>
    <message>
        <source>A list to work by: the instructor judges whether a skill is mastered.</source>
        <translation>Eine Arbeitsliste: Ob eine Übung beherrscht wird, beurteilt der Tauchlehrer.</translation>
    </message>
</context>
<context>
    <name>StaffExposure</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>At most %1 dives a day (%2: %3).</source>
        <translation>Höchstens %1 Tauchgänge am Tag (%2: %3).</translation>
    </message>
    <message>
        <source>At most %1 times up a day (%2: %3).</source>
        <translation>Höchstens %1 Aufstiege am Tag (%2: %3).</translation>
    </message>
    <message>
        <source>At most %1 days with a dive in a row (%2: %3).</source>
        <translation>Höchstens %1 Tage mit Tauchgang in Folge (%2: %3).</translation>
    </message>
    <message>
        <source>Limits: the chosen rule sets name none for staff.</source>
        <translation>Grenzen: Die gewählten Regelwerke nennen keine für das Team.</translation>
    </message>
    <message>
        <source>Limits: %1</source>
        <translation>Grenzen: %1</translation>
    </message>
    <message>
        <source>at the worst moment of this dive</source>
        <translation>im schlechtesten Moment dieses Tauchgangs</translation>
    </message>
    <message>
        <source>before this session</source>
        <translation>vor diesem Termin</translation>
    </message>
    <message>
        <source>%1: going straight up %2 would use %3 of what the house allows; nearest to its limit is tissue %4 of 16 (half-time %5 min).</source>
        <translation>%1: Direkt aufzusteigen würde %2 %3 dessen ausschöpfen, was das Haus erlaubt; am nächsten an seiner Grenze ist Gewebe %4 von 16 (Halbwertszeit %5&#xa0;min).</translation>
    </message>
    <message>
        <source>%1: no load above that of the surface.</source>
        <translation>%1: keine Sättigung über der an der Oberfläche.</translation>
    </message>
    <message>
        <source>Before flying %1: %2.</source>
        <translation>Vor dem Fliegen %1: %2.</translation>
    </message>
    <message>
        <source>%1 Set aside: %2</source>
        <translation>%1 Übergangen: %2</translation>
    </message>
    <message>
        <source>needs a stop</source>
        <translation>braucht einen Stopp</translation>
    </message>
    <message>
        <source>over a limit</source>
        <translation>über einer Grenze</translation>
    </message>
    <message>
        <source>Over a limit, set aside</source>
        <translation>Über einer Grenze, übergangen</translation>
    </message>
    <message>
        <source>Does not dive now</source>
        <translation>Taucht jetzt nicht</translation>
    </message>
    <message>
        <source>Within limits</source>
        <translation>Innerhalb der Grenzen</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1&#xa0;min</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1&#xa0;h %2&#xa0;min</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1&#xa0;h</translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>No record</source>
        <translation>Keine Aufzeichnung</translation>
    </message>
    <message>
        <source>over 24 h</source>
        <translation>über 24&#xa0;h</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>%1: %2 Set aside: %3</source>
        <translation>%1: %2 Übergangen: %3</translation>
    </message>
    <message>
        <source>%1 – %2: %3</source>
        <translation>%1 – %2: %3</translation>
    </message>
    <message>
        <source>Within the limits: %1.</source>
        <translation>Innerhalb der Grenzen: %1.</translation>
    </message>
    <message>
        <source>Does not dive in this session: %1.</source>
        <translation>Taucht bei diesem Termin nicht: %1.</translation>
    </message>
    <message>
        <source>Taken as rested, as no earlier dive is on record: %1. Enter dives on the Roster tab, Groups and staff, with the button in the column Dives.</source>
        <translation>Als ausgeruht angenommen, da kein früherer Tauchgang erfasst ist: %1. Tragen Sie Tauchgänge im Register Gästeliste unter Gruppen und Team ein, mit dem Knopf in der Spalte Tauchgänge.</translation>
    </message>
    <message>
        <source>Nitrogen in sixteen tissues by ZH-L16C (Bühlmann, Tauchmedizin, 1995; Bühlmann, Völlm and Nussberger, 2002; partly from memory), with gradient factors %1/%2 of the house: common practice, no source. With %2 at the surface no time without a stop is longer than in the DCIEM table of 1992 (to %3) or in the U.S. Navy&apos;s Revision 7 (to %4). What is left without a stop is at the deepest planned point before this session, rounded down.</source>
        <translation>Stickstoff in sechzehn Geweben nach ZH-L16C (Bühlmann, Tauchmedizin, 1995; Bühlmann, Völlm und Nussberger, 2002; teils aus dem Gedächtnis), mit den Gradientenfaktoren %1/%2 des Hauses: übliche Praxis, keine Quelle. Mit %2 an der Oberfläche ist keine Zeit ohne Stopp länger als in der DCIEM-Tabelle von 1992 (bis %3) oder in der Revision 7 der U.S. Navy (bis %4). Was ohne Stopp übrig ist, gilt am tiefsten geplanten Punkt vor diesem Termin, abgerundet.</translation>
    </message>
    <message>
        <source>What is not known of an earlier dive is taken as what loads more: down at once at %1, at the deepest point for all of its time, up at %2; at an altitude as if just come from the sea. Expected ascents with a guest come on top of the planned time, and no gas lost on them is credited. Dives of the %3 days before this one count.</source>
        <translation>Was von einem früheren Tauchgang nicht bekannt ist, wird so angenommen, dass es mehr sättigt: sofort hinunter mit %1, die ganze Zeit am tiefsten Punkt, hinauf mit %2; in der Höhe, als käme man gerade vom Meer. Erwartete Aufstiege mit einem Gast kommen zur geplanten Zeit hinzu, und dabei abgegebenes Gas wird nicht gutgeschrieben. Tauchgänge der %3 Tage vor diesem zählen.</translation>
    </message>
    <message>
        <source>Flying: %1 h after a single dive, %2 h after repeated dives, %3 h after a dive with stops: the longer of the DAN workshop of 2002 and the UHMS workshop of 1989.</source>
        <translation>Fliegen: %1&#xa0;h nach einem einzelnen Tauchgang, %2&#xa0;h nach wiederholten Tauchgängen, %3&#xa0;h nach einem Tauchgang mit Stopps: die längere Zeit aus dem DAN-Workshop von 2002 und dem UHMS-Workshop von 1989.</translation>
    </message>
    <message>
        <source>Outside the model: bubbles and what repeated ascents do to them, cold, work, dehydration and age. Each ascent carries its own risk.</source>
        <translation>Außerhalb des Modells: Blasen und was wiederholte Aufstiege mit ihnen machen, Kälte, Arbeit, Flüssigkeitsmangel und Alter. Jeder Aufstieg birgt sein eigenes Risiko.</translation>
    </message>
</context>
<context>
    <name>UnsavedQuestion</name>
    <message>
        <source>Not saved</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>The last changes to this session are not saved.</source>
        <translation>Die letzten Änderungen an diesem Termin sind nicht gespeichert.</translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>&amp;Noch einmal versuchen</translation>
    </message>
    <message>
        <source>&amp;Write to a file…</source>
        <translation>In eine &amp;Datei schreiben&#xa0;…</translation>
    </message>
    <message>
        <source>&amp;Lose them</source>
        <translation>&amp;Verwerfen</translation>
    </message>
    <message>
        <source>&amp;Go back</source>
        <translation>&amp;Zurück</translation>
    </message>
</context>
<context>
    <name>VaultDialogs</name>
    <message>
        <source>Your name</source>
        <translation>Ihr Name</translation>
    </message>
    <message>
        <source>Stands in the audit trail.</source>
        <translation>Steht im Zugriffsprotokoll.</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>In Arbeit</translation>
    </message>
</context>
<context>
    <name>VaultWords</name>
    <message>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message>
        <source>Keyring</source>
        <translation>Schlüsselbund</translation>
    </message>
    <message>
        <source>Recovery key</source>
        <translation>Wiederherstellungsschlüssel</translation>
    </message>
    <message>
        <source>Set the vault up</source>
        <translation>Tresor eingerichtet</translation>
    </message>
    <message>
        <source>Unlocked</source>
        <translation>Geöffnet</translation>
    </message>
    <message>
        <source>Failed to unlock</source>
        <translation>Öffnen misslungen</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Verschlossen</translation>
    </message>
    <message>
        <source>Changed the passphrase</source>
        <translation>Passphrase geändert</translation>
    </message>
    <message>
        <source>Set a way to unlock</source>
        <translation>Weg zum Öffnen eingerichtet</translation>
    </message>
    <message>
        <source>Removed a way to unlock</source>
        <translation>Weg zum Öffnen entfernt</translation>
    </message>
    <message>
        <source>Wrote a record</source>
        <translation>Datensatz geschrieben</translation>
    </message>
    <message>
        <source>Opened a record</source>
        <translation>Datensatz geöffnet</translation>
    </message>
    <message>
        <source>Exported records</source>
        <translation>Datensätze exportiert</translation>
    </message>
    <message>
        <source>Erased a record</source>
        <translation>Datensatz gelöscht</translation>
    </message>
    <message>
        <source>Erased a record without the vault&apos;s key</source>
        <translation>Datensatz ohne den Schlüssel des Tresors gelöscht</translation>
    </message>
    <message>
        <source>Moved a record to this guest</source>
        <translation>Datensatz zu diesem Gast verschoben</translation>
    </message>
    <message>
        <source>Found this list broken</source>
        <translation>Diese Liste beschädigt gefunden</translation>
    </message>
    <message>
        <source>Screening answers</source>
        <translation>Antworten auf die Gesundheitsfragen</translation>
    </message>
    <message>
        <source>Physician&apos;s note</source>
        <translation>Notiz des Arztes</translation>
    </message>
    <message>
        <source>Emergency contact</source>
        <translation>Notfallkontakt</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>at entry %1</source>
        <translation>bei Eintrag %1</translation>
    </message>
    <message>
        <source>Broken at entry %1: it was changed outside Leadline.</source>
        <translation>Beschädigt bei Eintrag %1: Er wurde außerhalb von Leadline geändert.</translation>
    </message>
    <message>
        <source>Broken at entry %1: it is missing.</source>
        <translation>Beschädigt bei Eintrag %1: Er fehlt.</translation>
    </message>
    <message>
        <source>Broken at entry %1: it and what came after were cut off.</source>
        <translation>Beschädigt bei Eintrag %1: Er und alles danach wurde abgeschnitten.</translation>
    </message>
    <message>
        <source>Broken: entries up to %1 were written anew outside Leadline.</source>
        <translation>Beschädigt: Die Einträge bis %1 wurden außerhalb von Leadline neu geschrieben.</translation>
    </message>
    <message>
        <source>Broken at entry %1: the seal over the list is missing or false.</source>
        <translation>Beschädigt bei Eintrag %1: Das Siegel über der Liste fehlt oder ist falsch.</translation>
    </message>
    <message>
        <source>Broken at entry %1: it was not written by an open vault.</source>
        <translation>Beschädigt bei Eintrag %1: Er wurde nicht von einem offenen Tresor geschrieben.</translation>
    </message>
    <message>
        <source>This list was found broken before: see entry %1.</source>
        <translation>Diese Liste wurde schon früher beschädigt gefunden: siehe Eintrag %1.</translation>
    </message>
</context>
<context>
    <name>leadline::AirPage</name>
    <message>
        <source>Cylinder, reading, temperature, breathing and RMV can be changed in the table: choose a cell and type, or press F2.</source>
        <translation>Flasche, Anzeige, Temperatur, Atmung und AMV lassen sich in der Tabelle ändern: Zelle wählen und tippen, oder F2 drücken.</translation>
    </message>
    <message>
        <source>Estimates for planning, on the high side of use. In the water the gauge, the guest&apos;s signal and the instructor decide.</source>
        <translation>Schätzungen zum Planen, zur Seite des höheren Verbrauchs. Im Wasser entscheiden das Finimeter, das Zeichen des Gastes und der Tauchlehrer.</translation>
    </message>
    <message>
        <source>Air of each guest</source>
        <translation>Luft jedes Gastes</translation>
    </message>
</context>
<context>
    <name>leadline::AnswerChoice</name>
    <message>
        <source>not answered</source>
        <translation>nicht beantwortet</translation>
    </message>
</context>
<context>
    <name>leadline::AuditDialog</name>
    <message numerus="yes">
        <source>%n entries, none changed or missing.</source>
        <translation>
            <numerusform>%n Eintrag, weder geändert noch fehlend.</numerusform>
            <numerusform>%n Einträge, keiner geändert oder fehlend.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 Whether the end was cut off shows only when the vault is unlocked.</source>
        <translation>%1 Ob das Ende abgeschnitten wurde, zeigt sich erst bei offenem Tresor.</translation>
    </message>
    <message>
        <source>Audit trail of the health vault</source>
        <translation>Zugriffsprotokoll des Gesundheitstresors</translation>
    </message>
    <message>
        <source>Audit trail, newest first</source>
        <translation>Zugriffsprotokoll, das Neueste zuerst</translation>
    </message>
    <message>
        <source>Check &amp;again</source>
        <translation>Noch einmal &amp;prüfen</translation>
    </message>
    <message>
        <source>&quot;Who&quot; is the name given when unlocking; nobody checks it. A file put back to an older state as a whole is not noticed.</source>
        <translation>„Wer“ ist der beim Öffnen angegebene Name; niemand prüft ihn. Eine Datei, die als Ganzes auf einen älteren Stand zurückgesetzt wurde, fällt nicht auf.</translation>
    </message>
    <message>
        <source>%1 Records taken out of the file from outside: %2.</source>
        <translation>%1 Von außen aus der Datei genommene Datensätze: %2.</translation>
    </message>
</context>
<context>
    <name>leadline::AuditModel</name>
    <message>
        <source>no longer on record (%1)</source>
        <translation>nicht mehr erfasst (%1)</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Gast</translation>
    </message>
    <message>
        <source>Of what</source>
        <translation>Wovon</translation>
    </message>
</context>
<context>
    <name>leadline::BackupsDialog</name>
    <message>
        <source>By itself</source>
        <translation>Von selbst</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation>Von Hand</translation>
    </message>
    <message>
        <source>Before a copy was put back</source>
        <translation>Bevor eine Kopie zurückgespielt wurde</translation>
    </message>
    <message>
        <source>Damaged records, kept as they were</source>
        <translation>Beschädigte Aufzeichnungen, so aufbewahrt</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>A&amp;bbrechen</translation>
    </message>
    <message>
        <source>Copies of the records</source>
        <translation>Kopien der Aufzeichnungen</translation>
    </message>
    <message>
        <source>Put back from a file</source>
        <translation>Aus einer Datei zurückspielen</translation>
    </message>
    <message>
        <source>Copies and exports (*.sqlite *.json);;All files (*)</source>
        <translation>Kopien und Exporte (*.sqlite *.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Write everything into a folder</source>
        <translation>Alles in einen Ordner schreiben</translation>
    </message>
    <message>
        <source>While Leadline is open it makes a copy a day of records that have changed: it keeps the last 7 days, then one a week for 8 weeks and one a month for 12 months. They lie in the folder %1. A copy on the same disk does not help when the disk is lost: now and then take one to another place.</source>
        <translation>Solange Leadline offen ist, macht es täglich eine Kopie der Aufzeichnungen, wenn sie sich geändert haben: Es behält die letzten 7 Tage, dann 8 Wochen lang eine je Woche und 12 Monate lang eine je Monat. Sie liegen im Ordner %1. Eine Kopie auf demselben Datenträger hilft nicht, wenn dieser verloren geht: Bringen Sie ab und zu eine an einen anderen Ort.</translation>
    </message>
    <message>
        <source>A copy still holds guests who were erased after it was made. To erase a guest for good, delete the copies from before as well. In a copy, too, only the vault is sealed.</source>
        <translation>Eine Kopie enthält auch Gäste, die nach ihrer Entstehung gelöscht wurden. Um einen Gast endgültig zu löschen, löschen Sie auch die Kopien von davor. Auch in einer Kopie ist nur der Tresor versiegelt.</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Erstellt</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>&amp;Make a copy now</source>
        <translation>Jetzt eine &amp;Kopie machen</translation>
    </message>
    <message>
        <source>&amp;Put back…</source>
        <translation>&amp;Zurückspielen&#xa0;…</translation>
    </message>
    <message>
        <source>Put back from a &amp;file…</source>
        <translation>Aus einer &amp;Datei zurückspielen&#xa0;…</translation>
    </message>
    <message>
        <source>&amp;Delete…</source>
        <translation>&amp;Löschen&#xa0;…</translation>
    </message>
    <message>
        <source>&amp;Write everything out…</source>
        <translation>&amp;Alles herausschreiben&#xa0;…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>checking…</source>
        <translation>wird geprüft&#xa0;…</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>unversehrt</translation>
    </message>
    <message>
        <source>not whole</source>
        <translation>nicht unversehrt</translation>
    </message>
    <message>
        <source>Making a copy…</source>
        <translation>Kopie wird gemacht&#xa0;…</translation>
    </message>
    <message>
        <source>Made and checked: %1</source>
        <translation>Gemacht und geprüft: %1</translation>
    </message>
    <message>
        <source>made %1</source>
        <translation>vom %1</translation>
    </message>
    <message>
        <source>Reading the copy…</source>
        <translation>Kopie wird gelesen&#xa0;…</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Nothing was changed, because the open session is not saved. %1</source>
        <translation>Es wurde nichts geändert, weil der offene Termin nicht gespeichert ist. %1</translation>
    </message>
    <message>
        <source>Putting the copy back…</source>
        <translation>Kopie wird zurückgespielt&#xa0;…</translation>
    </message>
    <message>
        <source>The copy %1 is in place. What stood there before is in the list.</source>
        <translation>Die Kopie %1 ist eingespielt. Was vorher da stand, ist in der Liste.</translation>
    </message>
    <message>
        <source>Delete a copy</source>
        <translation>Kopie löschen</translation>
    </message>
    <message>
        <source>Delete the copy made %1 for good? The records themselves stay.</source>
        <translation>Die Kopie vom %1 endgültig löschen? Die Aufzeichnungen selbst bleiben.</translation>
    </message>
    <message>
        <source>&amp;Delete it</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <source>Deleted.</source>
        <translation>Gelöscht.</translation>
    </message>
    <message>
        <source>Writing everything out…</source>
        <translation>Alles wird herausgeschrieben&#xa0;…</translation>
    </message>
    <message>
        <source>Written to %1. Names, phone numbers and outcomes stand open in it: keep it safe.</source>
        <translation>Geschrieben nach %1. Namen, Telefonnummern und Ergebnisse stehen darin offen: Bewahren Sie es sicher auf.</translation>
    </message>
    <message>
        <source>ddd d MMM yyyy  hh:mm</source>
        <comment>date and time; the letters stay</comment>
        <translation>ddd d. MMM yyyy  hh:mm</translation>
    </message>
</context>
<context>
    <name>leadline::BirthDateLine</name>
    <message>
        <source>Day/month/year</source>
        <translation>Tag.Monat.Jahr</translation>
    </message>
    <message>
        <source>17/5/1990, 17 May 1990 or 1990-05-17</source>
        <translation>17.5.1990, 17. Mai 1990 oder 1990-05-17</translation>
    </message>
</context>
<context>
    <name>leadline::BookingImportDialog</name>
    <message>
        <source>Choose…</source>
        <translation>Wählen&#xa0;…</translation>
    </message>
    <message>
        <source>Import a booking list</source>
        <translation>Buchungsliste einlesen</translation>
    </message>
    <message>
        <source>Reading the list</source>
        <translation>Liste wird gelesen</translation>
    </message>
    <message>
        <source>&amp;Dates are written as</source>
        <translation>&amp;Datumsangaben sind</translation>
    </message>
    <message>
        <source>&amp;Weights are in</source>
        <translation>&amp;Gewichte sind in</translation>
    </message>
    <message>
        <source>&amp;Heights are in</source>
        <translation>Größ&amp;en sind in</translation>
    </message>
    <message>
        <source>The booking list</source>
        <translation>Die Buchungsliste</translation>
    </message>
    <message>
        <source>&amp;Next message</source>
        <translation>&amp;Nächste Meldung</translation>
    </message>
    <message>
        <source>The next cell with something to be looked at</source>
        <translation>Die nächste Zelle, bei der etwas anzusehen ist</translation>
    </message>
    <message>
        <source>&amp;Leave out rows with errors</source>
        <translation>&amp;Zeilen mit Fehlern weglassen</translation>
    </message>
    <message>
        <source>Reading %1…</source>
        <translation>%1 wird gelesen&#xa0;…</translation>
    </message>
    <message>
        <source>%1: %2 rows.</source>
        <translation>%1: %2 Zeilen.</translation>
    </message>
    <message>
        <source>The file does not say how its letters are written; they were read as Windows-1252. Check names with accents.</source>
        <translation>Die Datei sagt nicht, wie ihre Buchstaben geschrieben sind; gelesen wurde sie als Windows-1252. Prüfen Sie Namen mit Akzenten und Umlauten.</translation>
    </message>
    <message>
        <source>No headings were found: choose what each column means.</source>
        <translation>Keine Überschriften gefunden: Wählen Sie, was jede Spalte bedeutet.</translation>
    </message>
    <message>
        <source>No column says the language: English is put.</source>
        <translation>Keine Spalte nennt die Sprache: Englisch wird eingesetzt.</translation>
    </message>
    <message>
        <source>as the list itself says</source>
        <translation>wie die Liste selbst sagt</translation>
    </message>
    <message>
        <source>The list is written in more than one way. Choose one; the cells that do not fit will be shown.</source>
        <translation>Die Liste ist uneinheitlich geschrieben. Wählen Sie eine Art; die Zellen, die nicht passen, werden gezeigt.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read in more than one way. Please choose.</source>
        <translation>„%1“ lässt sich auf mehrere Arten lesen. Bitte wählen Sie.</translation>
    </message>
    <message>
        <source>A cell</source>
        <translation>Eine Zelle</translation>
    </message>
    <message numerus="yes">
        <source>&amp;Add %n guests</source>
        <translation>
            <numerusform>%n Gast &amp;hinzufügen</numerusform>
            <numerusform>%n Gäste &amp;hinzufügen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows with errors</source>
        <translation>
            <numerusform>%n Zeile mit Fehler</numerusform>
            <numerusform>%n Zeilen mit Fehlern</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n there already</source>
        <translation>
            <numerusform>%n schon vorhanden</numerusform>
            <numerusform>%n schon vorhanden</numerusform>
        </translation>
    </message>
    <message>
        <source>There is nothing else to be looked at.</source>
        <translation>Es gibt sonst nichts anzusehen.</translation>
    </message>
    <message>
        <source>A session holds %1 guests at most; there is room for %2 more. Untick some.</source>
        <translation>Ein Termin fasst höchstens %1 Gäste; es ist noch Platz für %2. Entfernen Sie einige Häkchen.</translation>
    </message>
    <message numerus="yes">
        <source>Add %n guests</source>
        <translation>
            <numerusform>%n Gast hinzufügen</numerusform>
            <numerusform>%n Gäste hinzufügen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::BookingModel</name>
    <message>
        <source>Age %1 by the booking list</source>
        <translation>Alter %1 laut Buchungsliste</translation>
    </message>
    <message>
        <source>%1; will be added anyway. Untick to leave it out.</source>
        <translation>%1; wird trotzdem hinzugefügt. Häkchen entfernen, um die Zeile wegzulassen.</translation>
    </message>
    <message>
        <source>%1; will be left out. Tick to add it anyway.</source>
        <translation>%1; wird weggelassen. Anhaken, um trotzdem hinzuzufügen.</translation>
    </message>
    <message>
        <source>Add anyway</source>
        <translation>Trotzdem hinzufügen</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>Cannot be added</source>
        <translation>Nicht hinzufügbar</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>In the list: %1</source>
        <translation>In der Liste: %1</translation>
    </message>
    <message>
        <source>To be added</source>
        <translation>Wird hinzugefügt</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Spalte %1</translation>
    </message>
</context>
<context>
    <name>leadline::BriefingTab</name>
    <message>
        <source>Put &amp;it right</source>
        <translation>In &amp;Ordnung bringen</translation>
    </message>
    <message>
        <source>&amp;Go ahead anyway…</source>
        <translation>Trotzdem &amp;weitermachen&#xa0;…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken&#xa0;…</translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation>Als &amp;PDF speichern&#xa0;…</translation>
    </message>
    <message>
        <source>‹ Back</source>
        <translation>‹ Zurück</translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation>Weiter ›</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>A6, four to an A4 page</source>
        <translation>A6, vier auf ein A4-Blatt</translation>
    </message>
    <message>
        <source>Quarter Letter, four to a page</source>
        <translation>Viertel Letter, vier auf ein Blatt</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Seite davor</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Nächste Seite</translation>
    </message>
    <message>
        <source>Cards &amp;for</source>
        <translation>Karten &amp;für</translation>
    </message>
    <message>
        <source>&amp;All</source>
        <translation>A&amp;lle</translation>
    </message>
    <message>
        <source>N&amp;one</source>
        <translation>&amp;Keinen</translation>
    </message>
    <message>
        <source>Card si&amp;ze</source>
        <translation>Karten&amp;größe</translation>
    </message>
    <message>
        <source>Real size on s&amp;creen</source>
        <translation>Maß&amp;stab 1:1</translation>
    </message>
    <message>
        <source>No guests yet. Add them on the Roster tab.</source>
        <translation>Noch keine Gäste. Fügen Sie sie im Register Gästeliste hinzu.</translation>
    </message>
    <message>
        <source>No card to show: every ticked guest has a stop, or none is ticked.</source>
        <translation>Keine Karte zu zeigen: Jeder angehakte Gast hat einen Stopp, oder keiner ist angehakt.</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>No pages</source>
        <translation>Keine Seiten</translation>
    </message>
    <message>
        <source>The printer did not start. Check that it is switched on and try again.</source>
        <translation>Der Drucker ist nicht angelaufen. Prüfen Sie, ob er eingeschaltet ist, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Gro&amp;up</source>
        <translation>Gr&amp;uppe</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>Sp&amp;rache</translation>
    </message>
    <message>
        <source>Second lang&amp;uage</source>
        <translation>Zweitspr&amp;ache</translation>
    </message>
    <message>
        <source>Guest scree&amp;n</source>
        <translation>G&amp;ästebildschirm</translation>
    </message>
    <message>
        <source>The briefing for guests to look at (F9).</source>
        <translation>Das Briefing, zum Ansehen für die Gäste (F9).</translation>
    </message>
    <message>
        <source>A6 paper, one each</source>
        <translation>A6-Papier, je eine</translation>
    </message>
    <message>
        <source>A5, two to an A4 page</source>
        <translation>A5, zwei auf ein A4-Blatt</translation>
    </message>
    <message>
        <source>Half Letter, two to a page</source>
        <translation>Halbes Letter, zwei auf ein Blatt</translation>
    </message>
    <message>
        <source>A5 paper, one each</source>
        <translation>A5-Papier, je eine</translation>
    </message>
    <message>
        <source>A4, one each: large type</source>
        <translation>A4, je eine: große Schrift</translation>
    </message>
    <message>
        <source>Letter, one each: large type</source>
        <translation>Letter, je eine: große Schrift</translation>
    </message>
    <message>
        <source>One page for each group: guests, air, times, heads and the emergency plan. It tells ages and what health checks came to: keep it with the staff.</source>
        <translation>Ein Blatt je Gruppe: Gäste, Luft, Zeiten, Kopfzahl und der Notfallplan. Es nennt das Alter und das Ergebnis der Gesundheitschecks: Es bleibt beim Team.</translation>
    </message>
    <message>
        <source>Guests and skills, to tick off in the water.</source>
        <translation>Gäste und Übungen, zum Abhaken im Wasser.</translation>
    </message>
    <message>
        <source>Everybody&apos;s kit to tick while packing, and how many of each.</source>
        <translation>Die Ausrüstung aller, zum Abhaken beim Packen, und wie viel wovon.</translation>
    </message>
    <message>
        <source>For the wall at the site: the number and the plan as entered on the Site tab. No guest stands on it.</source>
        <translation>Für die Wand am Tauchplatz: Nummer und Plan, wie im Register Tauchplatz eingetragen. Kein Gast steht darauf.</translation>
    </message>
    <message>
        <source>All signals, the numbers and what pressure does to air here, for guests with whom no language is shared.</source>
        <translation>Alle Zeichen, die Zahlen und was der Druck hier mit Luft macht, für Gäste, mit denen es keine gemeinsame Sprache gibt.</translation>
    </message>
    <message>
        <source>Paper si&amp;ze</source>
        <translation>Papier&amp;größe</translation>
    </message>
    <message>
        <source>Card size</source>
        <translation>Kartengröße</translation>
    </message>
    <message>
        <source>Paper size</source>
        <translation>Papiergröße</translation>
    </message>
    <message>
        <source>All groups</source>
        <translation>Alle Gruppen</translation>
    </message>
    <message>
        <source>Choose s&amp;kills…</source>
        <translation>Übungen &amp;auswählen&#xa0;…</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF speichern</translation>
    </message>
    <message>
        <source>No groups yet. Make them on the Roster tab.</source>
        <translation>Noch keine Gruppen. Bilden Sie sie im Register Gästeliste.</translation>
    </message>
    <message numerus="yes">
        <source>%n cards</source>
        <translation>
            <numerusform>%n Karte</numerusform>
            <numerusform>%n Karten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n refused: a stop stands</source>
        <translation>
            <numerusform>%n ohne Karte: Ein Stopp besteht</numerusform>
            <numerusform>%n ohne Karte: Ein Stopp besteht</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>guest, language</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>In English, as there is no translation yet: %1.</source>
        <translation>Auf Englisch, weil es noch keine Übersetzung gibt: %1.</translation>
    </message>
    <message>
        <source>Without the second language, for the same reason: %1.</source>
        <translation>Ohne die Zweitsprache, aus demselben Grund: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 und %n weiterer</numerusform>
            <numerusform>%1 und %n weitere</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pages</source>
        <translation>
            <numerusform>%n Seite</numerusform>
            <numerusform>%n Seiten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n guests are in no group and stand on no sheet.</source>
        <translation>
            <numerusform>%n Gast ist in keiner Gruppe und steht auf keinem Blatt.</numerusform>
            <numerusform>%n Gäste sind in keiner Gruppe und stehen auf keinem Blatt.</numerusform>
        </translation>
    </message>
    <message>
        <source>No number is entered: the page leaves room to write it. Enter it on the Site tab.</source>
        <translation>Keine Nummer eingetragen: Das Blatt lässt Platz, sie aufzuschreiben. Tragen Sie sie im Register Tauchplatz ein.</translation>
    </message>
    <message>
        <source>No font here has the letters of: %1. They would print as empty boxes. Install a font for them.</source>
        <translation>Keine Schrift hier hat die Buchstaben von: %1. Sie würden als leere Kästchen gedruckt. Installieren Sie eine Schrift dafür.</translation>
    </message>
    <message numerus="yes">
        <source>%n pages saved to %1</source>
        <translation>
            <numerusform>%n Seite gespeichert in %1</numerusform>
            <numerusform>%n Seiten gespeichert in %1</numerusform>
        </translation>
    </message>
    <message>
        <source>No printer is installed on this computer. Save the pages as a PDF instead, or install a printer.</source>
        <translation>Auf diesem Computer ist kein Drucker eingerichtet. Speichern Sie die Seiten als PDF, oder richten Sie einen Drucker ein.</translation>
    </message>
    <message numerus="yes">
        <source>The printer stopped after %n pages.</source>
        <translation>
            <numerusform>Der Drucker hat nach %n Seite aufgehört.</numerusform>
            <numerusform>Der Drucker hat nach %n Seiten aufgehört.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pages sent to the printer</source>
        <translation>
            <numerusform>%n Seite an den Drucker geschickt</numerusform>
            <numerusform>%n Seiten an den Drucker geschickt</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose skills</source>
        <translation>Übungen auswählen</translation>
    </message>
    <message>
        <source>Cut for want of room; shorten it or choose larger cards: %1</source>
        <translation>Aus Platzmangel gekürzt; kürzer fassen oder größere Karten wählen: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n cards have no room for all their words: read them before you hand them out.</source>
        <translation>
            <numerusform>Auf %n Karte passt nicht der ganze Text: Lesen Sie sie, bevor Sie sie ausgeben.</numerusform>
            <numerusform>Auf %n Karten passt nicht der ganze Text: Lesen Sie sie, bevor Sie sie ausgeben.</numerusform>
        </translation>
    </message>
    <message>
        <source>The pages before are still being saved. Wait a moment, or stop that.</source>
        <translation>Die Seiten davor werden noch gespeichert. Warten Sie kurz oder brechen Sie das ab.</translation>
    </message>
</context>
<context>
    <name>leadline::BulkPage</name>
    <message>
        <source>&amp;Put into this group</source>
        <translation>In diese Gruppe &amp;setzen</translation>
    </message>
    <message>
        <source>Choose one</source>
        <translation>Eine wählen</translation>
    </message>
    <message>
        <source>&amp;Hand out to all of them</source>
        <translation>An a&amp;lle ausgeben</translation>
    </message>
    <message>
        <source>Gro&amp;up</source>
        <translation>Gr&amp;uppe</translation>
    </message>
    <message>
        <source>The same cylinder for each</source>
        <translation>Die gleiche Flasche für jeden</translation>
    </message>
    <message>
        <source>C&amp;ylinder</source>
        <translation>Fl&amp;asche</translation>
    </message>
    <message>
        <source>Fi&amp;lled to</source>
        <translation>G&amp;efüllt auf</translation>
    </message>
    <message>
        <source>Gas te&amp;mperature</source>
        <translation>Gaste&amp;mperatur</translation>
    </message>
    <message numerus="yes">
        <source>%n guests selected</source>
        <translation>
            <numerusform>%n Gast ausgewählt</numerusform>
            <numerusform>%n Gäste ausgewählt</numerusform>
        </translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message numerus="yes">
        <source>Put %n guests into a group</source>
        <translation>
            <numerusform>%n Gast in eine Gruppe setzen</numerusform>
            <numerusform>%n Gäste in eine Gruppe setzen</numerusform>
        </translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message numerus="yes">
        <source>Hand out %n cylinders</source>
        <translation>
            <numerusform>%n Flasche ausgeben</numerusform>
            <numerusform>%n Flaschen ausgeben</numerusform>
        </translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Flasche</translation>
    </message>
</context>
<context>
    <name>leadline::CardEditor</name>
    <message>
        <source>%1 (draft)</source>
        <comment>a language</comment>
        <translation>%1 (Entwurf)</translation>
    </message>
    <message>
        <source>%1 (no cards yet)</source>
        <comment>a language</comment>
        <translation>%1 (noch keine Karten)</translation>
    </message>
    <message>
        <source>As this window</source>
        <translation>Wie dieses Fenster</translation>
    </message>
    <message>
        <source>Metric</source>
        <translation>Metrisch</translation>
    </message>
    <message>
        <source>Imperial</source>
        <translation>Angloamerikanisch</translation>
    </message>
    <message>
        <source>different</source>
        <translation>verschieden</translation>
    </message>
    <message>
        <source>Card &amp;language</source>
        <translation>Kartensp&amp;rache</translation>
    </message>
    <message>
        <source>Second lang&amp;uage</source>
        <translation>Zweitspr&amp;ache</translation>
    </message>
    <message>
        <source>Uni&amp;ts</source>
        <translation>&amp;Einheiten</translation>
    </message>
    <message>
        <source>Change the card&apos;s language</source>
        <translation>Sprache der Karte ändern</translation>
    </message>
    <message>
        <source>Change the card&apos;s second language</source>
        <translation>Zweitsprache der Karte ändern</translation>
    </message>
    <message>
        <source>Change the card&apos;s units</source>
        <translation>Einheiten der Karte ändern</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Choose a guest to change the card.</source>
        <translation>Wählen Sie einen Gast, um die Karte zu ändern.</translation>
    </message>
    <message>
        <source>Card of %1</source>
        <translation>Karte von %1</translation>
    </message>
    <message numerus="yes">
        <source>Cards of %n guests</source>
        <translation>
            <numerusform>Karte von %n Gast</numerusform>
            <numerusform>Karten von %n Gästen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::CardList</name>
    <message>
        <source>Guests and their cards</source>
        <translation>Gäste und ihre Karten</translation>
    </message>
    <message>
        <source>Stop: %1</source>
        <translation>Stopp: %1</translation>
    </message>
    <message>
        <source>Ready · %1</source>
        <comment>language</comment>
        <translation>Bereit · %1</translation>
    </message>
</context>
<context>
    <name>leadline::CheckForm</name>
    <message>
        <source>Sign again</source>
        <translation>Neu unterschreiben</translation>
    </message>
    <message>
        <source>For the record</source>
        <translation>Zum Vermerk</translation>
    </message>
    <message>
        <source>Checked on</source>
        <translation>Geprüft am</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Geprüft von</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen&#xa0;…</translation>
    </message>
    <message>
        <source>Own form</source>
        <translation>Eigenes Formular</translation>
    </message>
    <message>
        <source>Outcome by the centre&apos;s own form</source>
        <translation>Ergebnis nach dem eigenen Formular der Basis</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Outcome of the questions of the day</source>
        <translation>Ergebnis der Fragen des Tages</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>Emergency contact</source>
        <translation>Notfallkontakt</translation>
    </message>
    <message>
        <source>Name and phone</source>
        <translation>Name und Telefon</translation>
    </message>
    <message>
        <source>What the physician wrote</source>
        <translation>Was der Arzt schrieb</translation>
    </message>
    <message>
        <source>Physician&apos;s note</source>
        <translation>Notiz des Arztes</translation>
    </message>
    <message>
        <source>What was answered yes</source>
        <translation>Was mit Ja beantwortet wurde</translation>
    </message>
    <message>
        <source>All answers</source>
        <translation>Alle Antworten</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Versiegeln</translation>
    </message>
    <message>
        <source>Which answers are sealed</source>
        <translation>Welche Antworten versiegelt werden</translation>
    </message>
    <message>
        <source>Note: holds 2000 characters; the rest was cut off.</source>
        <translation>Notiz: fasst 2000 Zeichen; der Rest wurde abgeschnitten.</translation>
    </message>
    <message>
        <source>Nobody named</source>
        <translation>Niemand benannt</translation>
    </message>
</context>
<context>
    <name>leadline::ClearableBox</name>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
</context>
<context>
    <name>leadline::ConditionsForm</name>
    <message>
        <source>From altitude</source>
        <translation>Nach der Höhe</translation>
    </message>
    <message>
        <source>As read at the site itself, not reduced to sea level. Empty: standard atmosphere</source>
        <translation>Wie am Platz selbst abgelesen, nicht auf Meereshöhe umgerechnet. Leer: Normalatmosphäre</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>Water temperature</source>
        <translation>Wassertemperatur</translation>
    </message>
    <message>
        <source>The coldest the guests will meet</source>
        <translation>Die kälteste, auf die die Gäste treffen</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>Lufttemperatur</translation>
    </message>
    <message>
        <source>Barometer</source>
        <translation>Barometer</translation>
    </message>
    <message>
        <source>Visibility</source>
        <translation>Sichtweite</translation>
    </message>
    <message>
        <source>&amp;Current</source>
        <translation>&amp;Strömung</translation>
    </message>
    <message>
        <source>Waves</source>
        <translation>Wellen</translation>
    </message>
    <message>
        <source>Change the water temperature</source>
        <translation>Wassertemperatur ändern</translation>
    </message>
    <message>
        <source>Change the air temperature</source>
        <translation>Lufttemperatur ändern</translation>
    </message>
    <message>
        <source>Change the barometer</source>
        <translation>Barometer ändern</translation>
    </message>
    <message>
        <source>Change the visibility</source>
        <translation>Sichtweite ändern</translation>
    </message>
    <message>
        <source>Change the waves</source>
        <translation>Wellen ändern</translation>
    </message>
    <message>
        <source>Change the current</source>
        <translation>Strömung ändern</translation>
    </message>
</context>
<context>
    <name>leadline::CopyTimer</name>
    <message>
        <source>No copy of the records was made. %1</source>
        <translation>Es wurde keine Kopie der Aufzeichnungen gemacht. %1</translation>
    </message>
</context>
<context>
    <name>leadline::CountBox</name>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
</context>
<context>
    <name>leadline::CrewPanel</name>
    <message>
        <source>Blue</source>
        <translation>Blau</translation>
    </message>
    <message>
        <source>White</source>
        <translation>Weiß</translation>
    </message>
    <message>
        <source>Green</source>
        <translation>Grün</translation>
    </message>
    <message>
        <source>Silver</source>
        <translation>Silber</translation>
    </message>
    <message>
        <source>Violet</source>
        <translation>Violett</translation>
    </message>
    <message>
        <source>Brown</source>
        <translation>Braun</translation>
    </message>
    <message>
        <source>&amp;Groups and staff</source>
        <translation>Gruppen un&amp;d Team</translation>
    </message>
    <message>
        <source>Groups and staff</source>
        <translation>Gruppen und Team</translation>
    </message>
    <message>
        <source>Add a group</source>
        <translation>Gruppe hinzufügen</translation>
    </message>
    <message>
        <source>Add staff</source>
        <translation>Teammitglied hinzufügen</translation>
    </message>
    <message numerus="yes">
        <source>%n groups</source>
        <translation>
            <numerusform>%n Gruppe</numerusform>
            <numerusform>%n Gruppen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n staff</source>
        <translation>
            <numerusform>%n im Team</numerusform>
            <numerusform>%n im Team</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stops</source>
        <translation>
            <numerusform>%n Stopp</numerusform>
            <numerusform>%n Stopps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n care</source>
        <translation>
            <numerusform>%n × Achtung</numerusform>
            <numerusform>%n × Achtung</numerusform>
        </translation>
    </message>
    <message>
        <source>Add group</source>
        <translation>Gruppe hinzufügen</translation>
    </message>
</context>
<context>
    <name>leadline::CylinderPicker</name>
    <message>
        <source>Cylinder</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Gauge reading</source>
        <translation>Anzeige des Finimeters</translation>
    </message>
    <message>
        <source>Gas temperature when read</source>
        <translation>Gastemperatur beim Ablesen</translation>
    </message>
    <message>
        <source>As the gauge shows it now.</source>
        <translation>Wie das Finimeter jetzt zeigt.</translation>
    </message>
    <message>
        <source>Of the gas when the gauge was read. Hot from filling or the sun, it holds less.</source>
        <translation>Des Gases beim Ablesen des Finimeters. Heiß vom Füllen oder von der Sonne enthält die Flasche weniger.</translation>
    </message>
</context>
<context>
    <name>leadline::DayEdit</name>
    <message>
        <source>d MMM yyyy</source>
        <comment>date; d, MMM and yyyy stay</comment>
        <translation>d. MMM yyyy</translation>
    </message>
</context>
<context>
    <name>leadline::DebriefModel</name>
    <message>
        <source>%1 % more</source>
        <translation>%1&#xa0;% mehr</translation>
    </message>
    <message>
        <source>%1 % less</source>
        <translation>%1&#xa0;% weniger</translation>
    </message>
    <message>
        <source>as planned</source>
        <translation>wie geplant</translation>
    </message>
    <message>
        <source>%1, least</source>
        <translation>%1, Minimum</translation>
    </message>
    <message>
        <source>not yet known</source>
        <translation>noch nicht bekannt</translation>
    </message>
    <message>
        <source>Air used, over the pressure along the dive (%1). Planned: %2.</source>
        <translation>Verbrauchte Luft, bezogen auf den Druck entlang des Tauchgangs (%1). Geplant: %2.</translation>
    </message>
    <message>
        <source>From %1.</source>
        <translation>Grundlage: %1.</translation>
    </message>
    <message>
        <source>Trouble</source>
        <translation>Probleme</translation>
    </message>
    <message>
        <source>Fine</source>
        <translation>Gut</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Gast</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Ear
trouble</source>
        <translation>Ohren-
probleme</translation>
    </message>
    <message>
        <source>Breathed,
plan → actual</source>
        <translation>Geatmet,
Plan → Ist</translation>
    </message>
    <message>
        <source>Than
planned</source>
        <translation>Gegen
Plan</translation>
    </message>
    <message>
        <source>Planned
end</source>
        <translation>Ende
geplant</translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation>Tiefster
Punkt</translation>
    </message>
    <message>
        <source>Mean
depth</source>
        <translation>Mittlere
Tiefe</translation>
    </message>
    <message>
        <source>Air used,
plan → actual</source>
        <translation>Verbrauch,
Plan → Ist</translation>
    </message>
    <message>
        <source>Change the log</source>
        <translation>Protokoll ändern</translation>
    </message>
</context>
<context>
    <name>leadline::DebriefTab</name>
    <message>
        <source>Use this &amp;breathing rate</source>
        <translation>Diesen Luft&amp;verbrauch übernehmen</translation>
    </message>
    <message>
        <source>Use it for &amp;all</source>
        <translation>Für a&amp;lle übernehmen</translation>
    </message>
    <message>
        <source>Open a log</source>
        <translation>Protokoll öffnen</translation>
    </message>
    <message>
        <source>Sessions (*.json);;All files (*)</source>
        <translation>Termine (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>No log yet</source>
        <translation>Noch kein Protokoll</translation>
    </message>
    <message>
        <source>After the dive, enter each guest&apos;s pressure and time, or open a file that holds the log. Planned and actual then stand side by side.</source>
        <translation>Tragen Sie nach dem Tauchgang Druck und Zeit jedes Gastes ein, oder öffnen Sie eine Datei mit dem Protokoll. Plan und Ist stehen dann nebeneinander.</translation>
    </message>
    <message>
        <source>Start the &amp;log</source>
        <translation>&amp;Protokoll beginnen</translation>
    </message>
    <message>
        <source>&amp;Open a log file…</source>
        <translation>Protokoll la&amp;den&#xa0;…</translation>
    </message>
    <message>
        <source>What should be remembered</source>
        <translation>Woran man sich erinnern soll</translation>
    </message>
    <message>
        <source>Remove the lo&amp;g</source>
        <translation>Prot&amp;okoll entfernen</translation>
    </message>
    <message>
        <source>&amp;In at</source>
        <translation>I&amp;m Wasser von</translation>
    </message>
    <message>
        <source>o&amp;ut at</source>
        <translation>bi&amp;s</translation>
    </message>
    <message>
        <source>Hea&amp;ds in</source>
        <translation>&amp;Köpfe hinein</translation>
    </message>
    <message>
        <source>ba&amp;ck</source>
        <translation>zu&amp;rück</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>What the log shows</source>
        <translation>Was das Protokoll zeigt</translation>
    </message>
    <message>
        <source>Planned and actual for each guest</source>
        <translation>Plan und Ist für jeden Gast</translation>
    </message>
    <message>
        <source>Double-click or type to enter pressures and times.</source>
        <translation>Zum Eingeben doppelklicken oder tippen.</translation>
    </message>
    <message>
        <source>Change the log</source>
        <translation>Protokoll ändern</translation>
    </message>
    <message>
        <source>All back</source>
        <translation>Alle zurück</translation>
    </message>
    <message>
        <source>Stop: count again</source>
        <translation>Stopp: neu zählen</translation>
    </message>
    <message>
        <source>%1: enter each guest&apos;s end pressure and minutes.</source>
        <translation>%1: Tragen Sie für jeden Gast Enddruck und Minuten ein.</translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air so far; still to enter: %3.</source>
        <translation>%1: %2 kam bisher mit der wenigsten Luft zurück; noch einzutragen: %3.</translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air.</source>
        <translation>%1: %2 kam mit der wenigsten Luft zurück.</translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air, as planned.</source>
        <translation>%1: %2 kam mit der wenigsten Luft zurück, wie geplant.</translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air; %3 was expected to.</source>
        <translation>%1: %2 kam mit der wenigsten Luft zurück; erwartet war %3.</translation>
    </message>
    <message>
        <source>No limit was exceeded.</source>
        <translation>Keine Grenze wurde überschritten.</translation>
    </message>
    <message>
        <source>Start the log</source>
        <translation>Protokoll beginnen</translation>
    </message>
    <message>
        <source>Remove the log</source>
        <translation>Protokoll entfernen</translation>
    </message>
    <message>
        <source>No rate could be taken over.</source>
        <translation>Kein Luftverbrauch ließ sich übernehmen.</translation>
    </message>
    <message numerus="yes">
        <source>%n guests will be planned with the rate breathed here.</source>
        <translation>
            <numerusform>%n Gast wird mit dem hier geatmeten Verbrauch geplant.</numerusform>
            <numerusform>%n Gäste werden mit dem hier geatmeten Verbrauch geplant.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::DuplicatesDialog</name>
    <message>
        <source>Who may be on record twice</source>
        <translation>Wer vielleicht zweimal erfasst ist</translation>
    </message>
    <message>
        <source>Look before you merge: brothers and sisters share a phone number, twins a birth date. Measured air use of somebody else would mislead.</source>
        <translation>Schauen Sie hin, bevor Sie zusammenlegen: Geschwister teilen eine Telefonnummer, Zwillinge ein Geburtsdatum. Der gemessene Luftverbrauch eines anderen würde in die Irre führen.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Geboren</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation>E-Mail</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Last session</source>
        <translation>Letzter Termin</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Termine</translation>
    </message>
    <message>
        <source>One person: &amp;merge</source>
        <translation>Eine Person: zusammen&amp;legen</translation>
    </message>
    <message>
        <source>&amp;Two persons</source>
        <translation>&amp;Zwei Personen</translation>
    </message>
    <message>
        <source>&amp;Not now</source>
        <translation>&amp;Jetzt nicht</translation>
    </message>
    <message>
        <source>Take &amp;back</source>
        <translation>Zurück&amp;nehmen</translation>
    </message>
    <message>
        <source>Nobody seems to be on record twice.</source>
        <translation>Niemand scheint zweimal erfasst zu sein.</translation>
    </message>
    <message>
        <source>That was the last pair.</source>
        <translation>Das war das letzte Paar.</translation>
    </message>
    <message>
        <source>Pair %1 of %2</source>
        <translation>Paar %1 von %2</translation>
    </message>
    <message>
        <source>same name</source>
        <translation>gleicher Name</translation>
    </message>
    <message>
        <source>same name, turned round</source>
        <translation>gleicher Name, vertauscht</translation>
    </message>
    <message>
        <source>names one letter apart</source>
        <translation>Namen unterscheiden sich um einen Buchstaben</translation>
    </message>
    <message>
        <source>same birth date</source>
        <translation>gleiches Geburtsdatum</translation>
    </message>
    <message>
        <source>same phone number</source>
        <translation>gleiche Telefonnummer</translation>
    </message>
    <message>
        <source>same e-mail</source>
        <translation>gleiche E-Mail</translation>
    </message>
    <message>
        <source>but the birth dates differ</source>
        <translation>aber die Geburtsdaten sind verschieden</translation>
    </message>
    <message>
        <source>Signs: %1.</source>
        <translation>Anzeichen: %1.</translation>
    </message>
    <message>
        <source>none; you chose these two</source>
        <translation>keine; Sie haben diese beiden gewählt</translation>
    </message>
    <message>
        <source>Keep %1</source>
        <translation>%1 behalten</translation>
    </message>
    <message>
        <source>Merged. All their sessions stand with the one kept.</source>
        <translation>Zusammengelegt. Alle Termine stehen bei der behaltenen Person.</translation>
    </message>
    <message>
        <source>Kept apart. They are not offered again.</source>
        <translation>Getrennt gelassen. Sie werden nicht wieder vorgeschlagen.</translation>
    </message>
    <message>
        <source>Taken back: they are two persons again.</source>
        <translation>Zurückgenommen: Es sind wieder zwei Personen.</translation>
    </message>
</context>
<context>
    <name>leadline::EarChart</name>
    <message>
        <source>Pressure on the eardrum on the way down</source>
        <translation>Druck auf das Trommelfell beim Abstieg</translation>
    </message>
    <message>
        <source>Needs opening
%1 to %2</source>
        <translation>Muss sich öffnen
%1 bis %2</translation>
    </message>
    <message>
        <source>Tube locks
from %1</source>
        <translation>Ohrtrompete zu
ab %1</translation>
    </message>
    <message>
        <source>A scarred drum
tore at %1</source>
        <translation>Vernarbt:
Riss bei %1</translation>
    </message>
    <message>
        <source>A healthy drum
tore at %1</source>
        <translation>Gesund:
Riss bei %1</translation>
    </message>
    <message>
        <source>Feet of water on the eardrum</source>
        <translation>Fuß Wasser auf dem Trommelfell</translation>
    </message>
    <message>
        <source>Metres of water on the eardrum</source>
        <translation>Meter Wasser auf dem Trommelfell</translation>
    </message>
    <message>
        <source>Never cleared: locks at %1</source>
        <translation>Ohne Druckausgleich: zu ab %1</translation>
    </message>
    <message>
        <source>Never cleared</source>
        <translation>Ohne Druckausgleich</translation>
    </message>
    <message>
        <source>Cleared every %1</source>
        <translation>Druckausgleich alle %1</translation>
    </message>
    <message>
        <source>any drum can tear</source>
        <translation>jedes Trommelfell kann reißen</translation>
    </message>
    <message>
        <source>a scarred drum can tear</source>
        <translation>ein vernarbtes Trommelfell kann reißen</translation>
    </message>
    <message>
        <source>tube locked</source>
        <translation>Ohrtrompete zu</translation>
    </message>
    <message>
        <source>needs opening</source>
        <translation>muss sich öffnen</translation>
    </message>
    <message>
        <source>nothing felt yet</source>
        <translation>noch nichts zu spüren</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>%1 deep, water on the eardrum:</source>
        <translation>%1 tief, Wasser auf dem Trommelfell:</translation>
    </message>
    <message>
        <source>Cleared</source>
        <translation>Mit Druckausgleich</translation>
    </message>
    <message>
        <source>At %1: cleared %2, never cleared %3.
</source>
        <translation>Auf %1: mit Druckausgleich %2, ohne %3.
</translation>
    </message>
    <message>
        <source>In the literature: the tube needs opening at %1 to %2 and locks at %3 (80 to 90; the lower end is the safe side). In the laboratory, scarred drums tore from %4, healthy ones from %5 (Jensen and Bonding, 1993). Pain comes far earlier.</source>
        <translation>In der Literatur: Die Ohrtrompete muss sich bei %1 bis %2 öffnen und verschließt sich bei %3 (80 bis 90; das untere Ende ist die sichere Seite). Im Labor rissen vernarbte Trommelfelle ab %4, gesunde ab %5 (Jensen und Bonding, 1993). Schmerz kommt viel früher.</translation>
    </message>
    <message>
        <source>deep</source>
        <translation>tief</translation>
    </message>
</context>
<context>
    <name>leadline::EarLungPanel</name>
    <message>
        <source>Ears on the way down</source>
        <translation>Ohren beim Abstieg</translation>
    </message>
    <message>
        <source>Lungs on the way up</source>
        <translation>Lunge beim Aufstieg</translation>
    </message>
</context>
<context>
    <name>leadline::EarlierDivesDialog</name>
    <message>
        <source>Earlier dives</source>
        <translation>Frühere Tauchgänge</translation>
    </message>
    <message>
        <source>Earlier dives of %1</source>
        <translation>Frühere Tauchgänge von %1</translation>
    </message>
    <message>
        <source>Dives of the seven days before this one count. Times are those of this site&apos;s clock.</source>
        <translation>Tauchgänge der sieben Tage vor diesem zählen. Die Zeiten sind die der Uhr an diesem Tauchplatz.</translation>
    </message>
    <message>
        <source>No dives noted. Add the first one or take them from the records.</source>
        <translation>Keine Tauchgänge vermerkt. Fügen Sie den ersten hinzu, oder übernehmen Sie sie aus den Aufzeichnungen.</translation>
    </message>
    <message>
        <source>No dives noted. Add the first one.</source>
        <translation>Keine Tauchgänge vermerkt. Fügen Sie den ersten hinzu.</translation>
    </message>
    <message>
        <source>&amp;Add a dive</source>
        <translation>Tauchgang &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Insert, in the table</source>
        <translation>Einfg, in der Tabelle</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Delete, in the table</source>
        <translation>Entf, in der Tabelle</translation>
    </message>
    <message>
        <source>Remove the chosen dives</source>
        <translation>Die gewählten Tauchgänge entfernen</translation>
    </message>
    <message>
        <source>&amp;Take from the records</source>
        <translation>&amp;Aus den Aufzeichnungen übernehmen</translation>
    </message>
    <message>
        <source>Dives with a log in the last seven days that %1 led or helped in.</source>
        <translation>Tauchgänge mit Protokoll aus den letzten sieben Tagen, die %1 geführt oder begleitet hat.</translation>
    </message>
    <message>
        <source>No records are open.</source>
        <translation>Es sind keine Aufzeichnungen offen.</translation>
    </message>
    <message>
        <source>People are found by name: enter one first.</source>
        <translation>Personen werden über den Namen gefunden: Geben Sie zuerst einen ein.</translation>
    </message>
    <message>
        <source>&amp;Expected ascents during this dive beside the last</source>
        <translation>Er&amp;wartete Aufstiege bei diesem Tauchgang neben dem letzten</translation>
    </message>
    <message>
        <source>Expected ascents during this dive beside the last</source>
        <translation>Erwartete Aufstiege bei diesem Tauchgang neben dem letzten</translation>
    </message>
    <message>
        <source>Going up with a guest or to train an ascent, and down again.</source>
        <translation>Mit einem Gast oder zur Übung eines Aufstiegs nach oben, und wieder hinunter.</translation>
    </message>
    <message>
        <source>%1 dives are the most. Remove those that are long past.</source>
        <translation>Mehr als %1 Tauchgänge gehen nicht. Entfernen Sie, was lange vorbei ist.</translation>
    </message>
    <message>
        <source>No dive of the last seven days is on record.</source>
        <translation>Kein Tauchgang der letzten sieben Tage ist erfasst.</translation>
    </message>
    <message>
        <source>Taken over: %1.</source>
        <translation>Übernommen: %1.</translation>
    </message>
    <message>
        <source>In the table already: %1.</source>
        <translation>Schon in der Tabelle: %1.</translation>
    </message>
    <message>
        <source>Dive of %1, %2</source>
        <translation>Tauchgang am %1, %2</translation>
    </message>
    <message>
        <source>Change earlier dives of %1</source>
        <translation>Frühere Tauchgänge von %1 ändern</translation>
    </message>
</context>
<context>
    <name>leadline::EarlierDivesModel</name>
    <message>
        <source>Times at the surface, the last one included.</source>
        <translation>Aufstiege zur Oberfläche, der letzte mitgezählt.</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation>Tiefster Punkt</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>Ascents</source>
        <translation>Aufstiege</translation>
    </message>
</context>
<context>
    <name>leadline::EditDesk</name>
    <message>
        <source>Change %1</source>
        <translation>%1 ändern</translation>
    </message>
</context>
<context>
    <name>leadline::FigurePanel</name>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
</context>
<context>
    <name>leadline::FindingList</name>
    <message>
        <source>Overruled</source>
        <translation>Übergangen</translation>
    </message>
    <message>
        <source>Reason: %1</source>
        <translation>Grund: %1</translation>
    </message>
</context>
<context>
    <name>leadline::FindingsPanel</name>
    <message>
        <source>set aside</source>
        <translation>übergangen</translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>Zei&amp;gen</translation>
    </message>
    <message>
        <source>Go ahead &amp;anyway…</source>
        <translation>Trotzdem weiter&amp;machen&#xa0;…</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Feststellungen</translation>
    </message>
    <message>
        <source>Nothing found</source>
        <translation>Nichts gefunden</translation>
    </message>
    <message>
        <source>Findings (%1)</source>
        <translation>Feststellungen (%1)</translation>
    </message>
    <message>
        <source>Choose one to see what to do.</source>
        <translation>Wählen Sie eine, um zu sehen, was zu tun ist.</translation>
    </message>
    <message>
        <source>Set aside because: %1</source>
        <translation>Übergangen, weil: %1</translation>
    </message>
    <message>
        <source>A check of the program itself.</source>
        <translation>Eine Prüfung des Programms selbst.</translation>
    </message>
    <message>
        <source>From: %1</source>
        <translation>Aus: %1</translation>
    </message>
    <message>
        <source>&amp;Withdraw</source>
        <translation>Zurück&amp;nehmen</translation>
    </message>
</context>
<context>
    <name>leadline::GasTab</name>
    <message>
        <source>No guests yet. Add them on the Roster tab and hand out their cylinders; then this tab says how long their air lasts.</source>
        <translation>Noch keine Gäste. Fügen Sie sie im Register Gästeliste hinzu und geben Sie ihre Flaschen aus; dann steht hier, wie lange ihre Luft reicht.</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Was Sie ansehen möchten</translation>
    </message>
    <message>
        <source>A&amp;ir</source>
        <translation>&amp;Luft</translation>
    </message>
    <message>
        <source>Warmth and &amp;lead</source>
        <translation>&amp;Wärme und Blei</translation>
    </message>
    <message>
        <source>S&amp;taff</source>
        <translation>Te&amp;am</translation>
    </message>
    <message>
        <source>Air of the guests</source>
        <translation>Luft der Gäste</translation>
    </message>
    <message>
        <source>&amp;Group</source>
        <translation>&amp;Gruppe</translation>
    </message>
    <message>
        <source>If so&amp;mething goes wrong</source>
        <translation>Wenn etwas &amp;schiefgeht</translation>
    </message>
    <message>
        <source>Wh&amp;y?</source>
        <translation>War&amp;um?</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation>(ohne Namen)</translation>
    </message>
</context>
<context>
    <name>leadline::GroupList</name>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Instructor</source>
        <translation>Tauchlehrer</translation>
    </message>
    <message>
        <source>Assistant</source>
        <translation>Assistent</translation>
    </message>
    <message>
        <source>Guests</source>
        <translation>Gäste</translation>
    </message>
    <message>
        <source>Remove group</source>
        <translation>Gruppe entfernen</translation>
    </message>
    <message>
        <source>Change group</source>
        <translation>Gruppe ändern</translation>
    </message>
    <message>
        <source>Nobody yet</source>
        <translation>Noch niemand</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keiner</translation>
    </message>
    <message>
        <source>Name of group %1</source>
        <translation>Name der Gruppe %1</translation>
    </message>
    <message>
        <source>Instructor of group %1</source>
        <translation>Tauchlehrer der Gruppe %1</translation>
    </message>
    <message>
        <source>Assistant of group %1</source>
        <translation>Assistent der Gruppe %1</translation>
    </message>
    <message>
        <source>Remove group %1</source>
        <translation>Gruppe %1 entfernen</translation>
    </message>
    <message numerus="yes">
        <source>%n guests</source>
        <translation>
            <numerusform>%n Gast</numerusform>
            <numerusform>%n Gäste</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::GuestBodyModel</name>
    <message>
        <source>Guest</source>
        <translation>Gast</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Feels cold
after</source>
        <translation>Friert
nach</translation>
    </message>
    <message>
        <source>Too cold
after</source>
        <translation>Zu kalt
nach</translation>
    </message>
    <message>
        <source>Lead to try
first</source>
        <translation>Blei
zuerst</translation>
    </message>
    <message>
        <source>Lead
carried</source>
        <translation>Blei
getragen</translation>
    </message>
    <message>
        <source>Surface,
full</source>
        <translation>Oberfläche,
voll</translation>
    </message>
    <message>
        <source>Surface,
at the end</source>
        <translation>Oberfläche,
am Ende</translation>
    </message>
    <message>
        <source>At depth,
full</source>
        <translation>In der Tiefe,
voll</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>Anzug</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>Guests; who is likely cold first of a group in bold.</source>
        <translation>Gäste; wer in einer Gruppe wohl zuerst friert, steht fett.</translation>
    </message>
    <message>
        <source>The guest&apos;s group.</source>
        <translation>Die Gruppe des Gastes.</translation>
    </message>
    <message>
        <source>The guest begins to feel cold, in the middle case. Rounded down.</source>
        <translation>Der Gast beginnt zu frieren, im mittleren Fall. Abgerundet.</translation>
    </message>
    <message>
        <source>The body is as cold as it should get, in the middle case; in brackets from the worst to the best case. The first figure in brackets is the safe one. Rounded down.</source>
        <translation>Der Körper ist so kalt, wie er höchstens werden soll, im mittleren Fall; in Klammern vom schlechtesten bis zum besten Fall. Die erste Zahl in Klammern ist die sichere. Abgerundet.</translation>
    </message>
    <message>
        <source>Start the check at the surface with this much; in brackets from the least to the most it is likely to be, in the pieces in stock. A guest who floats at the end cannot be held down: check near the end too.</source>
        <translation>Beginnen Sie die Prüfung an der Oberfläche mit so viel; in Klammern, was es wahrscheinlich mindestens und höchstens ist, in den Stücken des Bestands. Ein Gast, der am Ende auftreibt, ist nicht unten zu halten: Prüfen Sie auch gegen Ende.</translation>
    </message>
    <message>
        <source>What the guest carries: Roster, Kit. The next columns are for this much, or for what to try first while it is open.</source>
        <translation>Was der Gast trägt: Gästeliste, Ausrüstung. Die nächsten Spalten gelten dafür, oder für das zuerst zu Versuchende, solange es offen ist.</translation>
    </message>
    <message>
        <source>With the full cylinder, BCD empty, lungs half full.</source>
        <translation>Mit voller Flasche, leerem Jacket, halb voller Lunge.</translation>
    </message>
    <message>
        <source>With the cylinder at the reserve, BCD empty, lungs half full: should be neutral.</source>
        <translation>Mit der Flasche auf Reserve, leerem Jacket, halb voller Lunge: sollte schweben.</translation>
    </message>
    <message>
        <source>At the deepest planned point, suit squeezed, cylinder full, BCD empty: what the BCD must hold.</source>
        <translation>Am tiefsten geplanten Punkt, Anzug zusammengedrückt, Flasche voll, Jacket leer: was das Jacket tragen muss.</translation>
    </message>
    <message>
        <source>Thickness of the foam, read from the suit&apos;s label.</source>
        <translation>Dicke des Schaums, vom Etikett des Anzugs abgelesen.</translation>
    </message>
    <message>
        <source>What needs attention, and what is missing.</source>
        <translation>Was zu beachten ist und was fehlt.</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1&#xa0;mm</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>%1 mm: %2 clo at the surface, %3 clo at depth</source>
        <translation>%1&#xa0;mm: %2 clo an der Oberfläche, %3 clo in der Tiefe</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nichts</translation>
    </message>
    <message>
        <source>%1, likely cold first</source>
        <translation>%1, friert wohl zuerst</translation>
    </message>
</context>
<context>
    <name>leadline::GuestBodyPanel</name>
    <message>
        <source>Warmth and lead of each guest</source>
        <translation>Wärme und Blei jedes Gastes</translation>
    </message>
    <message>
        <source>No guests yet. Add them on the Roster tab with weight, height, suit and cylinder (page Kit); then this says who gets cold first and how much lead to try.</source>
        <translation>Noch keine Gäste. Fügen Sie sie im Register Gästeliste mit Gewicht, Größe, Anzug und Flasche hinzu (Seite Ausrüstung); dann steht hier, wer zuerst friert und wie viel Blei zu versuchen ist.</translation>
    </message>
    <message>
        <source>Estimates. Shivering or the sign “cold” ends the dive, whatever stands here. Lead is a starting value: check it at the surface before going down (common practice), and allow for the air that will be breathed: a guest light at the end floats up.</source>
        <translation>Schätzungen. Zittern oder das Zeichen „kalt“ beendet den Tauchgang, was auch immer hier steht. Das Blei ist ein Startwert: Prüfen Sie es an der Oberfläche vor dem Abtauchen (übliche Praxis), und rechnen Sie die Luft ein, die geatmet wird: Ein am Ende zu leichter Gast treibt auf.</translation>
    </message>
    <message>
        <source>Why? Warmth and lead</source>
        <translation>Warum? Wärme und Blei</translation>
    </message>
</context>
<context>
    <name>leadline::GuestEditor</name>
    <message>
        <source>&amp;Person</source>
        <translation>&amp;Person</translation>
    </message>
    <message>
        <source>S&amp;creening</source>
        <translation>&amp;Gesundheit</translation>
    </message>
    <message>
        <source>K&amp;it</source>
        <translation>&amp;Ausrüstung</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Screening</source>
        <translation>Gesundheit</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Bereit</translation>
    </message>
    <message>
        <source>Not ready: %1</source>
        <translation>Nicht bereit: %1</translation>
    </message>
    <message>
        <source>Not ready: the group or the session is not</source>
        <translation>Nicht bereit: Die Gruppe oder der Termin ist es nicht</translation>
    </message>
    <message>
        <source>May dive, with care: %1</source>
        <translation>Darf tauchen, mit Vorsicht: %1</translation>
    </message>
    <message>
        <source> (%1 overruled)</source>
        <translation> (%1 übergangen)</translation>
    </message>
    <message>
        <source>stops the dive</source>
        <translation>stoppt den Tauchgang</translation>
    </message>
    <message>
        <source>care</source>
        <translation>Achtung</translation>
    </message>
</context>
<context>
    <name>leadline::GuestGasDelegate</name>
    <message>
        <source>Cylinder of the guest</source>
        <translation>Flasche des Gastes</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Noch keine</translation>
    </message>
    <message>
        <source>How the guest breathes</source>
        <translation>Wie der Gast atmet</translation>
    </message>
    <message>
        <source>Pressure as read</source>
        <translation>Druck wie abgelesen</translation>
    </message>
    <message>
        <source>Temperature of the air when read</source>
        <translation>Temperatur der Luft beim Ablesen</translation>
    </message>
    <message>
        <source>Measured RMV</source>
        <translation>Gemessenes AMV</translation>
    </message>
    <message>
        <source>By class</source>
        <translation>Nach Klasse</translation>
    </message>
</context>
<context>
    <name>leadline::GuestGasModel</name>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>first, %1</source>
        <translation>zuerst, %1</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Noch keine</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation>Nicht abgelesen</translation>
    </message>
    <message>
        <source>%1, measured</source>
        <translation>%1, gemessen</translation>
    </message>
    <message>
        <source>%1, by class</source>
        <translation>%1, nach Klasse</translation>
    </message>
    <message>
        <source>Change a guest&apos;s cylinder</source>
        <translation>Flasche eines Gastes ändern</translation>
    </message>
    <message>
        <source>Change a guest&apos;s pressure</source>
        <translation>Druck eines Gastes ändern</translation>
    </message>
    <message>
        <source>Change the temperature of a guest&apos;s air</source>
        <translation>Lufttemperatur eines Gastes ändern</translation>
    </message>
    <message>
        <source>Change how a guest breathes</source>
        <translation>Atmung eines Gastes ändern</translation>
    </message>
    <message>
        <source>Change a guest&apos;s RMV</source>
        <translation>AMV eines Gastes ändern</translation>
    </message>
</context>
<context>
    <name>leadline::GuestModel</name>
    <message>
        <source>Group: stop</source>
        <translation>Gruppe: Stopp</translation>
    </message>
    <message>
        <source>Session: stop</source>
        <translation>Termin: Stopp</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Bereit</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Fehlt</translation>
    </message>
    <message>
        <source>Complete</source>
        <translation>Vollständig</translation>
    </message>
    <message>
        <source>No %1</source>
        <translation>Fehlt: %1</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Noch nicht</translation>
    </message>
    <message>
        <source>?</source>
        <translation>?</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Noch keine</translation>
    </message>
    <message>
        <source>Overruled</source>
        <translation>Übergangen</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Gast</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Screening</source>
        <translation>Gesundheit</translation>
    </message>
    <message>
        <source>Consent</source>
        <translation>Einwilligung</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
</context>
<context>
    <name>leadline::GuestScreen</name>
    <message>
        <source>Guest screen</source>
        <translation>Gästebildschirm</translation>
    </message>
    <message>
        <source>For the instructor</source>
        <translation>Für den Tauchlehrer</translation>
    </message>
    <message>
        <source>Briefing for</source>
        <translation>Briefing für</translation>
    </message>
    <message>
        <source>Time of a page</source>
        <translation>Zeit je Seite</translation>
    </message>
    <message>
        <source>Nothing glides</source>
        <translation>Ohne Bewegung</translation>
    </message>
    <message>
        <source>Language (L)</source>
        <translation>Sprache (L)</translation>
    </message>
    <message>
        <source>Run or pause (R)</source>
        <translation>Abspielen oder Pause (R)</translation>
    </message>
    <message>
        <source>Blank (B)</source>
        <translation>Leer (B)</translation>
    </message>
    <message>
        <source>Full screen (F11)</source>
        <translation>Vollbild (F11)</translation>
    </message>
    <message>
        <source>Close (Esc)</source>
        <translation>Schließen (Esc)</translation>
    </message>
    <message>
        <source>Everybody</source>
        <translation>Alle</translation>
    </message>
    <message numerus="yes">
        <source>%n seconds</source>
        <translation>
            <numerusform>%n Sekunde</numerusform>
            <numerusform>%n Sekunden</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::GuestScreenControl</name>
    <message>
        <source>Note known signals</source>
        <translation>Gekannte Zeichen vermerken</translation>
    </message>
</context>
<context>
    <name>leadline::GuestTable</name>
    <message>
        <source>Guests</source>
        <translation>Gäste</translation>
    </message>
</context>
<context>
    <name>leadline::KitPage</name>
    <message>
        <source>None yet</source>
        <translation>Noch keine</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>C&amp;ylinder</source>
        <translation>Fla&amp;sche</translation>
    </message>
    <message>
        <source>Fi&amp;lled to</source>
        <translation>Gefüllt a&amp;uf</translation>
    </message>
    <message>
        <source>Gas te&amp;mperature</source>
        <translation>Gaste&amp;mperatur</translation>
    </message>
    <message>
        <source>What others have</source>
        <translation>Was andere haben</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>S&amp;uit</source>
        <translation>A&amp;nzug</translation>
    </message>
    <message>
        <source>&amp;BCD</source>
        <translation>&amp;Jacket</translation>
    </message>
    <message>
        <source>Mas&amp;k</source>
        <translation>Mas&amp;ke</translation>
    </message>
    <message>
        <source>Fi&amp;ns</source>
        <translation>Fl&amp;ossen</translation>
    </message>
    <message>
        <source>Regulat&amp;or no.</source>
        <translation>At&amp;emregler Nr.</translation>
    </message>
    <message>
        <source>Lea&amp;d</source>
        <translation>B&amp;lei</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Blei</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>Heigh&amp;t</source>
        <translation>Gr&amp;öße</translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation>Ge&amp;wicht</translation>
    </message>
    <message>
        <source>Shoe si&amp;ze</source>
        <translation>Schuhg&amp;röße</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Shoe size</source>
        <translation>Schuhgröße</translation>
    </message>
    <message>
        <source>Read the gauge and enter what it shows.</source>
        <translation>Lesen Sie das Finimeter ab und tragen Sie ein, was es zeigt.</translation>
    </message>
</context>
<context>
    <name>leadline::KnownGuestList</name>
    <message>
        <source>Persons on record</source>
        <translation>Erfasste Personen</translation>
    </message>
    <message>
        <source>born %1</source>
        <translation>geboren %1</translation>
    </message>
    <message>
        <source>birth date not known</source>
        <translation>Geburtsdatum nicht bekannt</translation>
    </message>
    <message numerus="yes">
        <source>%n sessions</source>
        <translation>
            <numerusform>%n Termin</numerusform>
            <numerusform>%n Termine</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::LanguageButton</name>
    <message>
        <source>None yet</source>
        <translation>Noch keine</translation>
    </message>
</context>
<context>
    <name>leadline::LeverChart</name>
    <message>
        <source>What would &amp;buy more minutes</source>
        <translation>Was brächte &amp;mehr Minuten</translation>
    </message>
    <message>
        <source>all last the plan</source>
        <translation>Luft reicht allen</translation>
    </message>
    <message>
        <source>A click or Enter makes the change; each judged alone.</source>
        <translation>Klick oder Eingabetaste führt die Änderung aus; jede ist für sich beurteilt.</translation>
    </message>
    <message>
        <source>What would buy more minutes</source>
        <translation>Was mehr Minuten brächte</translation>
    </message>
    <message>
        <source>Take &amp;it back</source>
        <translation>Zurück&amp;nehmen</translation>
    </message>
    <message>
        <source>Nothing here would help: the air is not what limits this dive.</source>
        <translation>Hier hilft nichts: Nicht die Luft begrenzt diesen Tauchgang.</translation>
    </message>
    <message>
        <source>Once a guest has a cylinder and its pressure, the changes that would help stand here.</source>
        <translation>Sobald ein Gast Flasche und Druck hat, stehen hier die Änderungen, die helfen würden.</translation>
    </message>
    <message>
        <source>Done: %1.</source>
        <translation>Erledigt: %1.</translation>
    </message>
</context>
<context>
    <name>leadline::LeverModel</name>
    <message>
        <source>Apply: %1</source>
        <translation>Anwenden: %1</translation>
    </message>
</context>
<context>
    <name>leadline::LogChart</name>
    <message>
        <source>up too fast: %1</source>
        <translation>zu schnell aufwärts: %1</translation>
    </message>
    <message>
        <source>too deep: %1</source>
        <translation>zu tief: %1</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>No depths were read for %1.</source>
        <translation>Für %1 wurden keine Tiefen eingelesen.</translation>
    </message>
    <message>
        <source>Depth over time, planned and logged</source>
        <translation>Tiefe über der Zeit, geplant und protokolliert</translation>
    </message>
</context>
<context>
    <name>leadline::LungChart</name>
    <message>
        <source>Held breath on the way up</source>
        <translation>Angehaltener Atem beim Aufstieg</translation>
    </message>
    <message>
        <source>The same breath at the surface</source>
        <translation>Derselbe Atem an der Oberfläche</translation>
    </message>
    <message>
        <source>A full breath held here</source>
        <translation>Ein voller Atemzug, hier angehalten</translation>
    </message>
    <message>
        <source>%1 up: a lung can tear</source>
        <translation>%1 Aufstieg: Eine Lunge kann reißen</translation>
    </message>
    <message>
        <source>%1 up:
a lung can tear</source>
        <translation>%1 Aufstieg:
Lunge kann reißen</translation>
    </message>
    <message>
        <source>From %1, full lungs:</source>
        <translation>Von %1, volle Lunge:</translation>
    </message>
    <message>
        <source>at the surface %1</source>
        <translation>an der Oberfläche %1</translation>
    </message>
    <message>
        <source>surface before the limit</source>
        <translation>Oberfläche vor der Grenze</translation>
    </message>
    <message>
        <source>can tear after %1</source>
        <translation>kann nach %1 reißen</translation>
    </message>
    <message>
        <source>In the literature: lungs tore from %1 to 80 mmHg across them (Schaefer and others, 1958; Malhotra and Wright, 1961; from memory; the lower end is the safe side). Divers were hurt coming up from 1 m (Benton and others, 1996) and from 1 to 2 m (Harvey and others, 2024).</source>
        <translation>In der Literatur: Lungen rissen ab %1 bis 80&#xa0;mmHg Druckunterschied (Schaefer und andere, 1958; Malhotra und Wright, 1961; aus dem Gedächtnis; das untere Ende ist die sichere Seite). Taucher wurden beim Aufstieg aus 1&#xa0;m (Benton und andere, 1996) und aus 1 bis 2&#xa0;m (Harvey und andere, 2024) verletzt.</translation>
    </message>
</context>
<context>
    <name>leadline::MainWindow</name>
    <message>
        <source>Open a session</source>
        <translation>Termin öffnen</translation>
    </message>
    <message>
        <source>Sessions (*.json);;All files (*)</source>
        <translation>Termine (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Write the session to a file</source>
        <translation>Termin in eine Datei schreiben</translation>
    </message>
    <message>
        <source>Sessions (*.json)</source>
        <translation>Termine (*.json)</translation>
    </message>
    <message>
        <source>Not saved. %1</source>
        <translation>Nicht gespeichert. %1</translation>
    </message>
    <message>
        <source>The five questions</source>
        <translation>Die fünf Fragen</translation>
    </message>
    <message>
        <source>&amp;1 Roster</source>
        <translation>&amp;1 Gästeliste</translation>
    </message>
    <message>
        <source>&amp;2 Site</source>
        <translation>&amp;2 Tauchplatz</translation>
    </message>
    <message>
        <source>&amp;3 Gas</source>
        <translation>&amp;3 Luft</translation>
    </message>
    <message>
        <source>&amp;4 Briefing Sheet</source>
        <translation>&amp;4 Briefingblatt</translation>
    </message>
    <message>
        <source>&amp;5 Debrief</source>
        <translation>&amp;5 Nachbesprechung</translation>
    </message>
    <message>
        <source>&amp;Keep in my records</source>
        <translation>In meine Aufzei&amp;chnungen aufnehmen</translation>
    </message>
    <message>
        <source>Kept. Every change is saved from now on.</source>
        <translation>Aufgenommen. Von jetzt an wird jede Änderung gespeichert.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close the message</source>
        <translation>Meldung schließen</translation>
    </message>
    <message>
        <source>Written to %1. The file holds names and who may dive: keep it safe.</source>
        <translation>Geschrieben nach %1. Die Datei enthält Namen und wer tauchen darf: Bewahren Sie sie sicher auf.</translation>
    </message>
    <message>
        <source>Opened from the file %1: changes are not kept.</source>
        <translation>Aus der Datei %1 geöffnet: Änderungen werden nicht gespeichert.</translation>
    </message>
    <message>
        <source>The records could not be opened: changes are not kept.</source>
        <translation>Die Aufzeichnungen ließen sich nicht öffnen: Änderungen werden nicht gespeichert.</translation>
    </message>
    <message>
        <source>Leadline[*]</source>
        <translation>Leadline[*]</translation>
    </message>
    <message>
        <source>%1[*] – Leadline</source>
        <translation>%1[*] – Leadline</translation>
    </message>
</context>
<context>
    <name>leadline::MarkerChart</name>
    <message>
        <source>Arrow keys read out what holds at a depth.</source>
        <translation>Die Pfeiltasten lesen vor, was auf einer Tiefe gilt.</translation>
    </message>
</context>
<context>
    <name>leadline::MeaningHeader</name>
    <message>
        <source>Meaning of the column %1</source>
        <translation>Bedeutung der Spalte %1</translation>
    </message>
</context>
<context>
    <name>leadline::NoticeStrip</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Undo this step</source>
        <translation>Diesen Schritt rückgängig machen</translation>
    </message>
</context>
<context>
    <name>leadline::OverruleDialog</name>
    <message>
        <source>Go ahead despite this finding</source>
        <translation>Trotz dieser Feststellung weitermachen</translation>
    </message>
    <message>
        <source>The reason is kept with the session. Local law and your centre&apos;s standard come first: they cannot be set aside here.</source>
        <translation>Der Grund wird mit dem Termin aufbewahrt. Das örtliche Recht und die Vorgaben Ihrer Basis gehen vor: Sie lassen sich hier nicht übergehen.</translation>
    </message>
    <message>
        <source>Why is it right to go ahead?</source>
        <translation>Warum ist es richtig, weiterzumachen?</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Grund</translation>
    </message>
    <message>
        <source>&amp;Decided by</source>
        <translation>&amp;Entschieden von</translation>
    </message>
    <message>
        <source>&amp;Go ahead</source>
        <translation>&amp;Weitermachen</translation>
    </message>
    <message>
        <source>Set a finding aside</source>
        <translation>Feststellung übergehen</translation>
    </message>
    <message>
        <source>Withdraw a decision</source>
        <translation>Entscheidung zurücknehmen</translation>
    </message>
</context>
<context>
    <name>leadline::PagePreview</name>
    <message>
        <source>Preview of the pages</source>
        <translation>Vorschau der Seiten</translation>
    </message>
</context>
<context>
    <name>leadline::PeopleDialog</name>
    <message>
        <source>Guests on record</source>
        <translation>Erfasste Gäste</translation>
    </message>
    <message>
        <source>Write all that is kept of this guest</source>
        <translation>Alles schreiben, was über diesen Gast aufbewahrt wird</translation>
    </message>
    <message>
        <source>Page to read (*.html);;Data (*.json)</source>
        <translation>Seite zum Lesen (*.html);;Daten (*.json)</translation>
    </message>
    <message>
        <source>Find by name, phone or e-mail</source>
        <translation>Nach Name, Telefon oder E-Mail suchen</translation>
    </message>
    <message>
        <source>Find a guest by name, phone or e-mail</source>
        <translation>Gast nach Name, Telefon oder E-Mail suchen</translation>
    </message>
    <message>
        <source>&amp;Show them</source>
        <translation>&amp;Zeigen</translation>
    </message>
    <message>
        <source>In a &amp;month</source>
        <translation>In einem &amp;Monat</translation>
    </message>
    <message>
        <source>Last session</source>
        <translation>Letzter Termin</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Termine</translation>
    </message>
    <message>
        <source>Who is here t&amp;wice…</source>
        <translation>Z&amp;weimal erfasst&#xa0;…</translation>
    </message>
    <message>
        <source>Mer&amp;ge two…</source>
        <translation>Zwei zusammen&amp;legen&#xa0;…</translation>
    </message>
    <message>
        <source>Select two guests who are one person</source>
        <translation>Wählen Sie zwei Gäste, die eine Person sind</translation>
    </message>
    <message>
        <source>Take a merge &amp;back</source>
        <translation>Zusammenlegung zurück&amp;nehmen</translation>
    </message>
    <message>
        <source>Write to a &amp;file…</source>
        <translation>In eine &amp;Datei schreiben&#xa0;…</translation>
    </message>
    <message>
        <source>&amp;Remove…</source>
        <translation>&amp;Entfernen&#xa0;…</translation>
    </message>
    <message>
        <source>More than %L1 found</source>
        <translation>Mehr als %L1 gefunden</translation>
    </message>
    <message numerus="yes">
        <source>%Ln guests</source>
        <translation>
            <numerusform>%Ln Gast</numerusform>
            <numerusform>%Ln Gäste</numerusform>
        </translation>
    </message>
    <message>
        <source>Nobody found</source>
        <translation>Niemand gefunden</translation>
    </message>
    <message numerus="yes">
        <source>%Ln found</source>
        <translation>
            <numerusform>%Ln gefunden</numerusform>
            <numerusform>%Ln gefunden</numerusform>
        </translation>
    </message>
    <message>
        <source>health answers</source>
        <translation>Gesundheitsantworten</translation>
    </message>
    <message>
        <source>phone and e-mail</source>
        <translation>Telefon und E-Mail</translation>
    </message>
    <message>
        <source>everything that tells who it was</source>
        <translation>alles, was sagt, wer es war</translation>
    </message>
    <message>
        <source>Due for erasure: %1.</source>
        <translation>Zu löschen: %1.</translation>
    </message>
    <message>
        <source>Select a guest to see what is known.</source>
        <translation>Wählen Sie einen Gast, um zu sehen, was bekannt ist.</translation>
    </message>
    <message>
        <source>Two selected: merge them if they are one person.</source>
        <translation>Zwei gewählt: Legen Sie sie zusammen, wenn sie eine Person sind.</translation>
    </message>
    <message>
        <source>Several selected.</source>
        <translation>Mehrere gewählt.</translation>
    </message>
    <message>
        <source>shoe %1</source>
        <translation>Schuhgröße %1</translation>
    </message>
    <message>
        <source>air use %1</source>
        <translation>Luftverbrauch %1</translation>
    </message>
    <message numerus="yes">
        <source>%n dives before</source>
        <translation>
            <numerusform>bisher %n Tauchgang</numerusform>
            <numerusform>bisher %n Tauchgänge</numerusform>
        </translation>
    </message>
    <message>
        <source>Merged into this guest: %1</source>
        <translation>Mit diesem Gast zusammengelegt: %1</translation>
    </message>
    <message numerus="yes">
        <source>%Ln guests are due for erasure by the centre&apos;s periods. Nothing is erased by itself.</source>
        <translation>
            <numerusform>%Ln Gast ist nach den Fristen der Basis zu löschen. Nichts wird von selbst gelöscht.</numerusform>
            <numerusform>%Ln Gäste sind nach den Fristen der Basis zu löschen. Nichts wird von selbst gelöscht.</numerusform>
        </translation>
    </message>
    <message>
        <source>%L1 due for erasure</source>
        <translation>%L1 zu löschen</translation>
    </message>
    <message>
        <source>Looking for guests on record twice…</source>
        <translation>Zweimal erfasste Gäste werden gesucht&#xa0;…</translation>
    </message>
    <message>
        <source>Taken back: %1 is a guest of their own again.</source>
        <translation>Zurückgenommen: %1 ist wieder ein eigener Gast.</translation>
    </message>
    <message>
        <source>Written to %1. It holds personal data: hand it to nobody but the guest.</source>
        <translation>Geschrieben nach %1. Die Datei enthält persönliche Daten: Geben Sie sie nur dem Gast selbst.</translation>
    </message>
    <message>
        <source>Nobody is removed while the open session is not saved. %1</source>
        <translation>Niemand wird entfernt, solange der offene Termin nicht gespeichert ist. %1</translation>
    </message>
    <message>
        <source>Removing the guest…</source>
        <translation>Gast wird entfernt&#xa0;…</translation>
    </message>
    <message>
        <source>Removed. %1</source>
        <translation>Entfernt. %1</translation>
    </message>
    <message>
        <source>Removed.</source>
        <translation>Entfernt.</translation>
    </message>
    <message>
        <source>Removed. Another program reads the records: close it, and Leadline after it, so that nothing is left on the disk.</source>
        <translation>Entfernt. Ein anderes Programm liest die Aufzeichnungen: Schließen Sie es und danach Leadline, damit nichts auf dem Datenträger bleibt.</translation>
    </message>
</context>
<context>
    <name>leadline::PeopleModel</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Geboren</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>Last session</source>
        <translation>Letzter Termin</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Termine</translation>
    </message>
</context>
<context>
    <name>leadline::PersonPage</name>
    <message>
        <source>as measured</source>
        <translation>wie gemessen</translation>
    </message>
    <message>
        <source>from the choice above</source>
        <translation>aus der Auswahl oben</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>Körpermasse</translation>
    </message>
    <message>
        <source>a suit thin for this water</source>
        <translation>ein für dieses Wasser dünner Anzug</translation>
    </message>
    <message>
        <source>current</source>
        <translation>Strömung</translation>
    </message>
    <message>
        <source>Planned with %1, %2</source>
        <translation>Geplant mit %1, %2</translation>
    </message>
    <message>
        <source>Planned with %1, %2 and: %3</source>
        <translation>Geplant mit %1, %2 und: %3</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>&amp;Written consent seen</source>
        <translation>Schriftliche Ein&amp;willigung gesehen</translation>
    </message>
    <message>
        <source>Certified diver</source>
        <translation>Brevetierter Taucher</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Born</source>
        <translation>G&amp;eboren</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>Sp&amp;rache</translation>
    </message>
    <message>
        <source>Gro&amp;up</source>
        <translation>Gr&amp;uppe</translation>
    </message>
    <message>
        <source>Guardian</source>
        <translation>Sorgeberechtigte</translation>
    </message>
    <message>
        <source>Comes along, uses a place in the group and needs no teaching.</source>
        <translation>Kommt mit, belegt einen Platz in der Gruppe und braucht keinen Unterricht.</translation>
    </message>
    <message>
        <source>Companion</source>
        <translation>Begleitung</translation>
    </message>
    <message>
        <source>In the guest&apos;s life, before this one. Empty: not asked.</source>
        <translation>Im Leben des Gastes, vor diesem. Leer: nicht gefragt.</translation>
    </message>
    <message>
        <source>Dives made before</source>
        <translation>Bisherige Tauchgänge</translation>
    </message>
    <message>
        <source>Guardian&apos;s written consent seen</source>
        <translation>Schriftliche Einwilligung der Sorgeberechtigten gesehen</translation>
    </message>
    <message>
        <source>Companion, a certified diver</source>
        <translation>Begleitung, ein brevetierter Taucher</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Consent</source>
        <translation>Einwilligung</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation>E-Mail</translation>
    </message>
    <message>
        <source>Name: a guest needs one. The last one is kept.</source>
        <translation>Name: Ein Gast braucht einen. Der letzte bleibt.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation>Geburtsdatum</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a date. Write it as 17/5/1990, with four digits for the year.</source>
        <translation>%1: „%2“ ist kein Datum. Schreiben Sie es als 17.5.1990, das Jahr mit vier Ziffern.</translation>
    </message>
    <message>
        <source>Breathing</source>
        <translation>Atmung</translation>
    </message>
    <message>
        <source>Brea&amp;thes</source>
        <translation>At&amp;met</translation>
    </message>
    <message>
        <source>Air used a minute at the surface, from an own past dive.</source>
        <translation>Je Minute an der Oberfläche verbrauchte Luft, von einem eigenen früheren Tauchgang.</translation>
    </message>
    <message>
        <source>&amp;Measured</source>
        <translation>Geme&amp;ssen</translation>
    </message>
    <message>
        <source>Measured breathing</source>
        <translation>Gemessene Atmung</translation>
    </message>
    <message>
        <source>For staff. Never printed. Not for health.</source>
        <translation>Für das Team. Wird nie gedruckt. Nicht für Gesundheitliches.</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Note: holds 2000 characters; the rest was cut off.</source>
        <translation>Notiz: fasst 2000 Zeichen; der Rest wurde abgeschnitten.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Take over %1 from the records</source>
        <translation>%1 aus den Aufzeichnungen übernehmen</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Noch nicht</translation>
    </message>
    <message>
        <source>%1 years old on the day</source>
        <translation>%1 Jahre alt an diesem Tag</translation>
    </message>
    <message>
        <source>Age not known</source>
        <translation>Alter nicht bekannt</translation>
    </message>
</context>
<context>
    <name>leadline::PlaceFindings</name>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>No rules are ticked to compare this place with.</source>
        <translation>Es sind keine Regeln angehakt, mit denen sich dieser Platz vergleichen ließe.</translation>
    </message>
    <message>
        <source>Nothing about the place breaks a rule that is ticked.</source>
        <translation>Nichts an diesem Platz verletzt eine angehakte Regel.</translation>
    </message>
</context>
<context>
    <name>leadline::PlaceForm</name>
    <message>
        <source>Sea</source>
        <translation>Meer</translation>
    </message>
    <message>
        <source>Fresh water</source>
        <translation>Süßwasser</translation>
    </message>
    <message>
        <source>Brackish</source>
        <translation>Brackwasser</translation>
    </message>
    <message>
        <source>Change the site&apos;s name</source>
        <translation>Namen des Tauchplatzes ändern</translation>
    </message>
    <message>
        <source>Name of the site</source>
        <translation>Name des Tauchplatzes</translation>
    </message>
    <message>
        <source>Known sites</source>
        <translation>Bekannte Plätze</translation>
    </message>
    <message>
        <source>Known sites from your records; choosing one fills in this form. Down opens the list.</source>
        <translation>Bekannte Plätze aus Ihren Aufzeichnungen; eine Wahl füllt dieses Formular aus. Pfeil nach unten öffnet die Liste.</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>Change the entry</source>
        <translation>Einstieg ändern</translation>
    </message>
    <message>
        <source>Entr&amp;y</source>
        <translation>&amp;Einstieg</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>The deepest a guest could sink there</source>
        <translation>Wie tief ein Gast dort höchstens sinken könnte</translation>
    </message>
    <message>
        <source>Change the bottom depth</source>
        <translation>Grundtiefe ändern</translation>
    </message>
    <message>
        <source>&amp;Bottom depth</source>
        <translation>&amp;Grundtiefe</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Anderes</translation>
    </message>
    <message>
        <source>Salinity</source>
        <translation>Salzgehalt</translation>
    </message>
    <message>
        <source>Practical salinity, a number without unit: 0 fresh water, 35 open sea</source>
        <translation>Praktischer Salzgehalt, eine Zahl ohne Einheit: 0 Süßwasser, 35 offenes Meer</translation>
    </message>
    <message>
        <source>Change the salinity</source>
        <translation>Salzgehalt ändern</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Kind of water</source>
        <translation>Art des Wassers</translation>
    </message>
    <message>
        <source>Of the water&apos;s surface above the sea</source>
        <translation>Der Wasseroberfläche über dem Meeresspiegel</translation>
    </message>
    <message>
        <source>Change the altitude</source>
        <translation>Höhe ändern</translation>
    </message>
    <message>
        <source>&amp;Altitude</source>
        <translation>H&amp;öhe</translation>
    </message>
    <message>
        <source>North positive, south negative; gravity follows from it</source>
        <translation>Nord positiv, Süd negativ; daraus folgt die Schwerkraft</translation>
    </message>
    <message>
        <source>Change the latitude</source>
        <translation>Geografische Breite ändern</translation>
    </message>
    <message>
        <source>La&amp;titude</source>
        <translation>B&amp;reite</translation>
    </message>
    <message>
        <source>Change the meeting place</source>
        <translation>Treffpunkt ändern</translation>
    </message>
    <message>
        <source>Where guests come together</source>
        <translation>Wo sich die Gäste treffen</translation>
    </message>
    <message>
        <source>&amp;Meeting place</source>
        <translation>Tre&amp;ffpunkt</translation>
    </message>
    <message>
        <source>Change the emergency number</source>
        <translation>Notrufnummer ändern</translation>
    </message>
    <message>
        <source>Printed on every card</source>
        <translation>Steht auf jeder Karte</translation>
    </message>
    <message>
        <source>Emergency n&amp;umber</source>
        <translation>Notr&amp;ufnummer</translation>
    </message>
    <message>
        <source>Oxygen, phone or radio, nearest chamber, the way out, how to recall</source>
        <translation>Sauerstoff, Telefon oder Funk, nächste Druckkammer, Rettungsweg, Rückruf der Taucher</translation>
    </message>
    <message>
        <source>Emergency &amp;plan</source>
        <translation>Notfall&amp;plan</translation>
    </message>
    <message>
        <source>Change the emergency plan</source>
        <translation>Notfallplan ändern</translation>
    </message>
    <message>
        <source>Take the site %1</source>
        <translation>Platz %1 übernehmen</translation>
    </message>
</context>
<context>
    <name>leadline::PlaceNumbers</name>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>Why? %1</source>
        <translation>Warum? %1</translation>
    </message>
</context>
<context>
    <name>leadline::PressureChart</name>
    <message>
        <source>Pressure over time</source>
        <translation>Druck über der Zeit</translation>
    </message>
    <message>
        <source>%1, first</source>
        <translation>%1, zuerst</translation>
    </message>
    <message>
        <source>3000 psi</source>
        <translation>3000 psi</translation>
    </message>
    <message>
        <source>240 min</source>
        <translation>240&#xa0;min</translation>
    </message>
    <message>
        <source>%.0f min</source>
        <comment>format of a number of minutes</comment>
        <translation>%.0f min</translation>
    </message>
    <message>
        <source>%.0f psi</source>
        <comment>format of a pressure</comment>
        <translation>%.0f psi</translation>
    </message>
    <message>
        <source>%.0f bar</source>
        <comment>format of a pressure</comment>
        <translation>%.0f bar</translation>
    </message>
    <message numerus="yes">
        <source>and %n more in the table</source>
        <translation>
            <numerusform>und noch %n in der Tabelle</numerusform>
            <numerusform>und noch %n in der Tabelle</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2 after %3, at %4</source>
        <translation>%1: %2 nach %3, bei %4</translation>
    </message>
    <message>
        <source>At %1 after, staying down (10 to 90 of 100 dives)</source>
        <translation>Bei %1 nach, wenn sie unten bleiben (10 bis 90 von 100 Tauchgängen)</translation>
    </message>
    <message>
        <source>%1: at %2 after %3</source>
        <translation>%1: bei %2 nach %3</translation>
    </message>
    <message>
        <source>Reserve %1</source>
        <translation>Reserve %1</translation>
    </message>
    <message>
        <source>Planned end %1</source>
        <translation>Ende geplant %1</translation>
    </message>
</context>
<context>
    <name>leadline::ProfileDelegate</name>
    <message>
        <source>What is done on the way to the corner</source>
        <translation>Was auf dem Weg zum Eckpunkt getan wird</translation>
    </message>
    <message>
        <source>Time of the corner</source>
        <translation>Zeit des Eckpunkts</translation>
    </message>
    <message>
        <source>Depth of the corner</source>
        <translation>Tiefe des Eckpunkts</translation>
    </message>
</context>
<context>
    <name>leadline::ProfileModel</name>
    <message>
        <source>%1 min</source>
        <translation>%1&#xa0;min</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>What on the way</source>
        <translation>Was unterwegs</translation>
    </message>
    <message>
        <source>Minutes after the start</source>
        <translation>Minuten nach dem Anfang</translation>
    </message>
    <message>
        <source>Depth of the group at that time</source>
        <translation>Tiefe der Gruppe zu dieser Zeit</translation>
    </message>
    <message>
        <source>What the group does on the way to this corner</source>
        <translation>Was die Gruppe auf dem Weg zu diesem Eckpunkt tut</translation>
    </message>
    <message>
        <source>Change the time of a corner</source>
        <translation>Zeit eines Eckpunkts ändern</translation>
    </message>
    <message>
        <source>Change the depth of a corner</source>
        <translation>Tiefe eines Eckpunkts ändern</translation>
    </message>
    <message>
        <source>Change what is done on a leg</source>
        <translation>Ändern, was in einem Abschnitt getan wird</translation>
    </message>
</context>
<context>
    <name>leadline::ProfilePanel</name>
    <message>
        <source>&amp;Deepest</source>
        <translation>Tiefster Pun&amp;kt</translation>
    </message>
    <message>
        <source>Depth of the tour</source>
        <translation>Tiefe der Tour</translation>
    </message>
    <message>
        <source>Skills at</source>
        <translation>Übungen auf</translation>
    </message>
    <message>
        <source>Depth at which the first exercises are done</source>
        <translation>Tiefe, auf der die ersten Übungen gemacht werden</translation>
    </message>
    <message>
        <source>Skills for</source>
        <translation>Übungen für</translation>
    </message>
    <message>
        <source>Minutes of exercises</source>
        <translation>Minuten mit Übungen</translation>
    </message>
    <message>
        <source>Tour &amp;for</source>
        <translation>T&amp;our für</translation>
    </message>
    <message>
        <source>Minutes of the tour</source>
        <translation>Minuten der Tour</translation>
    </message>
    <message>
        <source>Dra&amp;w the plain dive</source>
        <translation>Einf&amp;achen Tauchgang zeichnen</translation>
    </message>
    <message>
        <source>Replaces the corners by: surface, down, skills, down, tour, up</source>
        <translation>Ersetzt die Eckpunkte durch: Oberfläche, Abstieg, Übungen, Abstieg, Tour, Aufstieg</translation>
    </message>
    <message>
        <source>Changed by hand.</source>
        <translation>Von Hand geändert.</translation>
    </message>
    <message>
        <source>Corners of the profile</source>
        <translation>Eckpunkte des Profils</translation>
    </message>
    <message>
        <source>Add c&amp;orner</source>
        <translation>Eckpunkt hinzuf&amp;ügen</translation>
    </message>
    <message>
        <source>Remove corner</source>
        <translation>Eckpunkt entfernen</translation>
    </message>
    <message>
        <source>&amp;Later corners move along</source>
        <translation>Spätere Eckpunkte &amp;mitverschieben</translation>
    </message>
    <message>
        <source>When a corner moves in time, the legs after it keep their length and their speed</source>
        <translation>Wird ein Eckpunkt in der Zeit verschoben, behalten die Abschnitte danach ihre Länge und ihre Geschwindigkeit</translation>
    </message>
    <message>
        <source>Draw the plain dive</source>
        <translation>Einfachen Tauchgang zeichnen</translation>
    </message>
</context>
<context>
    <name>leadline::ProfileView</name>
    <message>
        <source>Dive profile</source>
        <translation>Tauchprofil</translation>
    </message>
    <message>
        <source>Drag this corner, with Shift in small steps. With the keyboard: Tab to the next corner, arrows, Insert, Delete.</source>
        <translation>Ziehen Sie diesen Eckpunkt, mit Umschalt in kleinen Schritten. Mit der Tastatur: Tab zum nächsten Eckpunkt, Pfeile, Einfg, Entf.</translation>
    </message>
    <message>
        <source>%1 min   %2</source>
        <translation>%1&#xa0;min   %2</translation>
    </message>
    <message>
        <source>   %1 absolute</source>
        <translation>   %1 absolut</translation>
    </message>
    <message>
        <source>%1, deepest %2. Tab goes from corner to corner; arrows move it, Insert adds one, Delete removes it. The table beside it holds the same numbers.</source>
        <translation>%1, tiefster Punkt %2. Tab geht von Eckpunkt zu Eckpunkt; Pfeile verschieben ihn, Einfg fügt einen hinzu, Entf entfernt ihn. Die Tabelle daneben enthält dieselben Zahlen.</translation>
    </message>
    <message>
        <source>Corner %1 of %2, end of %3: %4</source>
        <translation>Eckpunkt %1 von %2, Ende von %3: %4</translation>
    </message>
    <message>
        <source>Move a leg of the profile</source>
        <translation>Abschnitt des Profils verschieben</translation>
    </message>
    <message>
        <source>Move a corner of the profile</source>
        <translation>Eckpunkt des Profils verschieben</translation>
    </message>
    <message>
        <source>Add a corner to the profile</source>
        <translation>Eckpunkt zum Profil hinzufügen</translation>
    </message>
    <message>
        <source>Remove a corner of the profile</source>
        <translation>Eckpunkt aus dem Profil entfernen</translation>
    </message>
</context>
<context>
    <name>leadline::QuestionForm</name>
    <message>
        <source>%1: no to all that are open</source>
        <translation>%1: Nein zu allen offenen</translation>
    </message>
    <message>
        <source>Health, before the day</source>
        <translation>Gesundheit, vor dem Tauchtag</translation>
    </message>
    <message>
        <source>Health</source>
        <translation>Gesundheit</translation>
    </message>
    <message>
        <source>%1, more closely</source>
        <translation>%1, genauer</translation>
    </message>
    <message>
        <source>Today, before kitting up</source>
        <translation>Heute, vor dem Anlegen der Ausrüstung</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>All others no to&amp;day</source>
        <translation>Heute alle anderen N&amp;ein</translation>
    </message>
    <message>
        <source>All no to&amp;day</source>
        <translation>Heute alle N&amp;ein</translation>
    </message>
    <message>
        <source>All &amp;others no</source>
        <translation>A&amp;lle anderen Nein</translation>
    </message>
    <message>
        <source>All n&amp;o</source>
        <translation>A&amp;lle Nein</translation>
    </message>
    <message>
        <source>All others no</source>
        <translation>Alle anderen Nein</translation>
    </message>
    <message>
        <source>All no</source>
        <translation>Alle Nein</translation>
    </message>
</context>
<context>
    <name>leadline::RecoveryKeyDialog</name>
    <message>
        <source>New recovery key</source>
        <translation>Neuer Wiederherstellungsschlüssel</translation>
    </message>
    <message>
        <source>&amp;Replace the old key</source>
        <translation>&amp;Alten Schlüssel ersetzen</translation>
    </message>
</context>
<context>
    <name>leadline::RecoveryPage</name>
    <message>
        <source>Save the recovery key</source>
        <translation>Wiederherstellungsschlüssel speichern</translation>
    </message>
    <message>
        <source>recovery-key.pdf</source>
        <translation>wiederherstellungsschluessel.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken&#xa0;…</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>Als PDF &amp;speichern&#xa0;…</translation>
    </message>
    <message>
        <source>This is the recovery key. It opens the vault when the passphrase is forgotten or this computer is lost. Put it on paper and lock it away; it is not shown again.</source>
        <translation>Das ist der Wiederherstellungsschlüssel. Er öffnet den Tresor, wenn die Passphrase vergessen oder dieser Computer verloren ist. Bringen Sie ihn auf Papier und schließen Sie das Papier weg; er wird nicht wieder gezeigt.</translation>
    </message>
    <message>
        <source>Without passphrase and without this key nobody can open the vault any more.</source>
        <translation>Ohne Passphrase und ohne diesen Schlüssel kann niemand mehr den Tresor öffnen.</translation>
    </message>
    <message>
        <source>Group %1: %2</source>
        <translation>Gruppe %1: %2</translation>
    </message>
    <message>
        <source>&amp;Type group %1 from your paper:</source>
        <translation>&amp;Tippen Sie Gruppe %1 von Ihrem Papier ab:</translation>
    </message>
    <message>
        <source>Recovery key</source>
        <translation>Wiederherstellungsschlüssel</translation>
    </message>
    <message>
        <source>Saved to %1. Print it, lock the paper away and delete the file.</source>
        <translation>Gespeichert nach %1. Drucken Sie die Datei, schließen Sie das Papier weg und löschen Sie die Datei.</translation>
    </message>
    <message>
        <source>No printer is installed on this computer. Write the key down, or save it as a PDF on a stick.</source>
        <translation>Auf diesem Computer ist kein Drucker eingerichtet. Schreiben Sie den Schlüssel ab, oder speichern Sie ihn als PDF auf einem Stick.</translation>
    </message>
    <message>
        <source>Sent to the printer. Check the paper before you go on.</source>
        <translation>An den Drucker geschickt. Prüfen Sie das Papier, bevor Sie weitermachen.</translation>
    </message>
    <message>
        <source>The printer did not take it. Check that it is switched on, or write the key down.</source>
        <translation>Der Drucker nahm es nicht an. Prüfen Sie, ob er eingeschaltet ist, oder schreiben Sie den Schlüssel ab.</translation>
    </message>
</context>
<context>
    <name>leadline::RedListDialog</name>
    <message>
        <source>Red list</source>
        <translation>Rote Liste</translation>
    </message>
    <message>
        <source>Save the list</source>
        <translation>Liste speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Who must still see a physician, bring consent, answer or renew, over all sessions on record from today on. Only outcomes are looked at; nothing is unlocked.</source>
        <translation>Wer noch zum Arzt, eine Einwilligung bringen, Fragen beantworten oder etwas erneuern muss, über alle erfassten Termine ab heute. Nur Ergebnisse werden angesehen; nichts wird entsiegelt.</translation>
    </message>
    <message>
        <source>Nobody is waiting for anything.</source>
        <translation>Bei niemandem steht noch etwas aus.</translation>
    </message>
    <message>
        <source>&amp;Open the session</source>
        <translation>Termin ö&amp;ffnen</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>Als PDF &amp;speichern&#xa0;…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>Saved to %1. It holds names and phone numbers: keep it safe.</source>
        <translation>Gespeichert nach %1. Die Liste enthält Namen und Telefonnummern: Bewahren Sie sie sicher auf.</translation>
    </message>
</context>
<context>
    <name>leadline::RedListModel</name>
    <message>
        <source>None on record</source>
        <translation>Nichts erfasst</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Still waited for</source>
        <translation>Worauf noch gewartet wird</translation>
    </message>
    <message>
        <source>Meets</source>
        <translation>Treffen</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Gast</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>Still needed</source>
        <translation>Noch nötig</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Termin</translation>
    </message>
</context>
<context>
    <name>leadline::RemovalDialog</name>
    <message>
        <source>&amp;Everything that tells who it was</source>
        <translation>&amp;Alles, was sagt, wer es war</translation>
    </message>
    <message>
        <source>Only &amp;phone and e-mail</source>
        <translation>Nur &amp;Telefon und E-Mail</translation>
    </message>
    <message>
        <source>Only &amp;health answers</source>
        <translation>Nur &amp;Gesundheitsantworten</translation>
    </message>
    <message>
        <source>I know that this &amp;cannot be undone</source>
        <translation>Ich weiß, dass dies &amp;nicht rückgängig zu machen ist</translation>
    </message>
    <message>
        <source>Remove a guest</source>
        <translation>Gast entfernen</translation>
    </message>
    <message>
        <source>Goes</source>
        <translation>Wird entfernt</translation>
    </message>
    <message>
        <source>Stays</source>
        <translation>Bleibt</translation>
    </message>
    <message>
        <source>Also delete older &amp;copies of the records (%1)</source>
        <translation>Auch ältere &amp;Kopien der Aufzeichnungen löschen (%1)</translation>
    </message>
    <message>
        <source>They were made before an update and still hold this guest and all others.</source>
        <translation>Sie entstanden vor einer Aktualisierung und enthalten diesen Gast und alle anderen noch.</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Care: the last session is less than %1 months ago, and records of it may have to be kept that long (%2; %3). Local law comes first: ask before you remove.</source>
        <translation>Achtung: Der letzte Termin ist weniger als %1 Monate her, und Aufzeichnungen davon müssen vielleicht so lange aufbewahrt werden (%2; %3). Das örtliche Recht geht vor: Fragen Sie nach, bevor Sie entfernen.</translation>
    </message>
    <message numerus="yes">
        <source>%n copies in Records &gt; Copies of the records may still hold this guest. Delete them there, or they bring the guest back when one is restored.</source>
        <translation>
            <numerusform>%n Kopie unter Aufzeichnungen &gt; Kopien der Aufzeichnungen enthält diesen Gast vielleicht noch. Löschen Sie sie dort, sonst bringt sie den Gast beim Zurückspielen wieder.</numerusform>
            <numerusform>%n Kopien unter Aufzeichnungen &gt; Kopien der Aufzeichnungen enthalten diesen Gast vielleicht noch. Löschen Sie sie dort, sonst bringen sie den Gast beim Zurückspielen wieder.</numerusform>
        </translation>
    </message>
    <message>
        <source>Files you wrote or printed, and copies kept elsewhere, are not touched: remove them yourself.</source>
        <translation>Dateien, die Sie geschrieben oder gedruckt haben, und anderswo aufbewahrte Kopien bleiben unberührt: Entfernen Sie sie selbst.</translation>
    </message>
    <message>
        <source>Health answers and sealed records: %1</source>
        <translation>Gesundheitsantworten und versiegelte Datensätze: %1</translation>
    </message>
    <message>
        <source>Phone numbers and e-mail addresses: %1</source>
        <translation>Telefonnummern und E-Mail-Adressen: %1</translation>
    </message>
    <message>
        <source>Sessions: %1, logged dives: %2</source>
        <translation>Termine: %1, protokollierte Tauchgänge: %2</translation>
    </message>
    <message>
        <source>%1, with the guest&apos;s name and all else</source>
        <translation>%1, mit dem Namen des Gastes und allem anderen</translation>
    </message>
    <message>
        <source>Name, birth date, language, sizes</source>
        <translation>Name, Geburtsdatum, Sprache, Größen</translation>
    </message>
    <message>
        <source>Notes of staff: %1</source>
        <translation>Notizen des Teams: %1</translation>
    </message>
    <message>
        <source>The name in other texts of these sessions: %1</source>
        <translation>Der Name in anderen Texten dieser Termine: %1</translation>
    </message>
    <message>
        <source>Merged into this guest: %1</source>
        <translation>Mit diesem Gast zusammengelegt: %1</translation>
    </message>
    <message>
        <source>%1. In them stands &quot;%2&quot;, with lead, cylinder and what was logged.</source>
        <translation>%1. Darin steht „%2“ statt des Namens; Blei, Flasche und das Protokollierte bleiben.</translation>
    </message>
</context>
<context>
    <name>leadline::RestoreDialog</name>
    <message>
        <source>Put back a copy</source>
        <translation>Kopie zurückspielen</translation>
    </message>
    <message>
        <source>Put back the copy %1?</source>
        <translation>Die Kopie %1 zurückspielen?</translation>
    </message>
    <message>
        <source>What would change</source>
        <translation>Was sich ändern würde</translation>
    </message>
    <message>
        <source>&amp;Sessions that change</source>
        <translation>&amp;Termine, die sich ändern</translation>
    </message>
    <message>
        <source>&amp;All tables</source>
        <translation>&amp;Alle Tabellen</translation>
    </message>
    <message>
        <source>The records as they are now are kept as a copy of their own, so that this can be taken back. Close Leadline on other screens first.</source>
        <translation>Die Aufzeichnungen, wie sie jetzt sind, werden als eigene Kopie aufbewahrt, damit sich dies zurücknehmen lässt. Schließen Sie zuerst Leadline auf anderen Bildschirmen.</translation>
    </message>
    <message>
        <source>&amp;Put this copy back</source>
        <translation>Diese Kopie &amp;zurückspielen</translation>
    </message>
    <message>
        <source>The records of now cannot be compared: %1</source>
        <translation>Die jetzigen Aufzeichnungen lassen sich nicht vergleichen: %1</translation>
    </message>
    <message>
        <source>The copy holds %1 sessions, %2 guests in the register and %3 logs.</source>
        <translation>Die Kopie enthält Termine: %1, Gäste im Verzeichnis: %2, Protokolle: %3.</translation>
    </message>
    <message>
        <source>%1: no change.</source>
        <translation>%1: keine Änderung.</translation>
    </message>
    <message>
        <source>%1: %2 would be lost, %3 would come back, %4 would change back.</source>
        <translation>%1: %2 verloren, %3 wieder da, %4 zurückgeändert.</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Termine</translation>
    </message>
    <message>
        <source>Guests in the register</source>
        <translation>Gäste im Verzeichnis</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>Protokolle</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>What would happen</source>
        <translation>Was geschähe</translation>
    </message>
    <message>
        <source>Sessions that would change</source>
        <translation>Termine, die sich ändern würden</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>geht verloren</translation>
    </message>
    <message>
        <source>comes back</source>
        <translation>kommt zurück</translation>
    </message>
    <message>
        <source>changes back</source>
        <translation>wird zurückgeändert</translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation>(ohne Namen)</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Rows now</source>
        <translation>Zeilen jetzt</translation>
    </message>
    <message>
        <source>In the copy</source>
        <translation>In der Kopie</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Verloren</translation>
    </message>
    <message>
        <source>Come back</source>
        <translation>Kommen zurück</translation>
    </message>
    <message>
        <source>Change back</source>
        <translation>Zurückgeändert</translation>
    </message>
    <message>
        <source>Rows of every table</source>
        <translation>Zeilen jeder Tabelle</translation>
    </message>
</context>
<context>
    <name>leadline::RosterTab</name>
    <message>
        <source>Add guest</source>
        <translation>Gast hinzufügen</translation>
    </message>
    <message>
        <source>Remove guest</source>
        <translation>Gast entfernen</translation>
    </message>
    <message>
        <source>Find guest</source>
        <translation>Gast suchen</translation>
    </message>
    <message>
        <source>&amp;Import a booking list…</source>
        <translation>Buchungsliste &amp;einlesen&#xa0;…</translation>
    </message>
    <message>
        <source>&amp;Export the guests…</source>
        <translation>Gäste e&amp;xportieren&#xa0;…</translation>
    </message>
    <message>
        <source>Import a booking list</source>
        <translation>Buchungsliste einlesen</translation>
    </message>
    <message>
        <source>Lists (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Listen (*.csv *.tsv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Export the guests</source>
        <translation>Gäste exportieren</translation>
    </message>
    <message>
        <source>Lists (*.csv)</source>
        <translation>Listen (*.csv)</translation>
    </message>
    <message>
        <source>Find a guest or a group</source>
        <translation>Gast oder Gruppe suchen</translation>
    </message>
    <message>
        <source>Find a guest or a group (Ctrl+F)</source>
        <translation>Suchen (Strg+F)</translation>
    </message>
    <message>
        <source>Show all guests again</source>
        <translation>Wieder alle Gäste zeigen</translation>
    </message>
    <message>
        <source>&amp;Add guest</source>
        <translation>Gast hinzu&amp;fügen</translation>
    </message>
    <message>
        <source>Insert or Ctrl+Shift+N</source>
        <translation>Einfg oder Strg+Umschalt+N</translation>
    </message>
    <message>
        <source>Delete, in the table. Can be undone.</source>
        <translation>Entf, in der Tabelle. Lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <source>Kit in stock…</source>
        <translation>Bestand&#xa0;…</translation>
    </message>
    <message>
        <source>Cylinders, suits and lead that there are to hand out.</source>
        <translation>Flaschen, Anzüge und Blei, die auszugeben sind.</translation>
    </message>
    <message>
        <source>Lists</source>
        <translation>Listen</translation>
    </message>
    <message>
        <source>Take guests from a booking list, or write them to one.</source>
        <translation>Gäste aus einer Buchungsliste nehmen oder in eine schreiben.</translation>
    </message>
    <message>
        <source>No guests yet. Add the first one (Ins) or open a session.</source>
        <translation>Noch keine Gäste. Fügen Sie den ersten hinzu (Einfg), oder öffnen Sie einen Termin.</translation>
    </message>
    <message>
        <source>Nobody is called &quot;%1&quot;. Esc shows all guests again.</source>
        <translation>Niemand heißt „%1“. Esc zeigt wieder alle Gäste.</translation>
    </message>
    <message>
        <source>Choose a guest to see who it is, what the health questions came to and what was handed out.</source>
        <translation>Wählen Sie einen Gast, um zu sehen, wer es ist, was die Gesundheitsfragen ergaben und was ausgegeben wurde.</translation>
    </message>
    <message numerus="yes">
        <source>Remove %n guests</source>
        <translation>
            <numerusform>%n Gast entfernen</numerusform>
            <numerusform>%n Gäste entfernen</numerusform>
        </translation>
    </message>
    <message>
        <source>A session holds %1 guests at most. Open another for the rest.</source>
        <translation>Ein Termin fasst höchstens %1 Gäste. Öffnen Sie für die übrigen einen weiteren.</translation>
    </message>
    <message>
        <source>Guest %1</source>
        <translation>Gast %1</translation>
    </message>
    <message numerus="yes">
        <source>%n guests</source>
        <translation>
            <numerusform>%n Gast</numerusform>
            <numerusform>%n Gäste</numerusform>
        </translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Removed %1</source>
        <translation>Entfernt: %1</translation>
    </message>
    <message numerus="yes">
        <source>Added %n guests from the list</source>
        <translation>
            <numerusform>%n Gast aus der Liste hinzugefügt</numerusform>
            <numerusform>%n Gäste aus der Liste hinzugefügt</numerusform>
        </translation>
    </message>
    <message>
        <source>Written to %1: names, birth dates, sizes, contacts and notes. Health answers and consent are not in it, unless a note speaks of them: read the notes before you pass it on.</source>
        <translation>Geschrieben nach %1: Namen, Geburtsdaten, Größen, Kontakte und Notizen. Gesundheitsantworten und Einwilligungen stehen nicht darin, wenn nicht eine Notiz davon spricht: Lesen Sie die Notizen, bevor Sie die Datei weitergeben.</translation>
    </message>
</context>
<context>
    <name>leadline::RuleSetList</name>
    <message>
        <source>Rule sets that apply</source>
        <translation>Geltende Regelwerke</translation>
    </message>
    <message>
        <source>Where several apply, the strictest value counts. Local law and your centre&apos;s standard come first.</source>
        <translation>Wo mehrere gelten, zählt der strengste Wert. Das örtliche Recht und die Vorgaben Ihrer Basis gehen vor.</translation>
    </message>
    <message>
        <source>Care: no rule set is ticked. Depth, age and the number of guests are not checked.</source>
        <translation>Achtung: Kein Regelwerk ist angehakt. Tiefe, Alter und Zahl der Gäste werden nicht geprüft.</translation>
    </message>
    <message>
        <source>Apply a rule set</source>
        <translation>Regelwerk anwenden</translation>
    </message>
    <message>
        <source>Leave a rule set out</source>
        <translation>Regelwerk weglassen</translation>
    </message>
</context>
<context>
    <name>leadline::SavingRow</name>
    <message>
        <source>Stop saving</source>
        <translation>Speichern abbrechen</translation>
    </message>
    <message>
        <source>Pages saved</source>
        <translation>Gespeicherte Seiten</translation>
    </message>
</context>
<context>
    <name>leadline::ScreeningPage</name>
    <message>
        <source>The vault is locked: what was open here has been put away.</source>
        <translation>Der Tresor ist verschlossen: Was hier offen war, ist weggelegt.</translation>
    </message>
    <message>
        <source>Sealed on %1.</source>
        <translation>Versiegelt am %1.</translation>
    </message>
    <message>
        <source>Sealed on %1 under the name %2: make sure that it is the same person.</source>
        <translation>Versiegelt am %1 unter dem Namen %2: Vergewissern Sie sich, dass es dieselbe Person ist.</translation>
    </message>
    <message>
        <source>The sealed answers of %1 are in a form this program does not know. Go through the questions again.</source>
        <translation>Die versiegelten Antworten vom %1 haben eine Form, die dieses Programm nicht kennt. Gehen Sie die Fragen noch einmal durch.</translation>
    </message>
    <message>
        <source>The sealed answers are those of another edition (%1); the questions are asked anew.</source>
        <translation>Die versiegelten Antworten sind die einer anderen Ausgabe (%1); die Fragen werden neu gestellt.</translation>
    </message>
    <message>
        <source>Nothing is signed yet. Sign on the strip, or choose another way.</source>
        <translation>Noch ist nichts unterschrieben. Unterschreiben Sie auf dem Streifen, oder wählen Sie eine andere Art.</translation>
    </message>
    <message>
        <source>Not recorded: the answers could not be sealed. %1 Try again after locking and opening the vault, or record the outcome alone.</source>
        <translation>Nicht vermerkt: Die Antworten ließen sich nicht versiegeln. %1 Versuchen Sie es noch einmal, nachdem Sie den Tresor verschlossen und geöffnet haben, oder vermerken Sie nur das Ergebnis.</translation>
    </message>
    <message>
        <source>Record the health check</source>
        <translation>Gesundheitscheck vermerken</translation>
    </message>
    <message>
        <source>Health check</source>
        <translation>Gesundheitscheck</translation>
    </message>
    <message>
        <source>Recorded.</source>
        <translation>Vermerkt.</translation>
    </message>
    <message>
        <source>Take over the last health check</source>
        <translation>Letzten Gesundheitscheck übernehmen</translation>
    </message>
    <message>
        <source>Physician&apos;s release</source>
        <translation>Ärztliche Freigabe</translation>
    </message>
    <message>
        <source>Physician&apos;s &amp;written release seen</source>
        <translation>&amp;Schriftliche ärztliche Freigabe gesehen</translation>
    </message>
    <message>
        <source>Date of the physician&apos;s release</source>
        <translation>Datum der ärztlichen Freigabe</translation>
    </message>
    <message>
        <source>dated</source>
        <translation>vom</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date. Write it as 17/5/2026, with four digits for the year.</source>
        <translation>„%1“ ist kein Datum. Schreiben Sie es als 17.5.2026, das Jahr mit vier Ziffern.</translation>
    </message>
    <message>
        <source>Nothing changed: take it over</source>
        <translation>Nichts hat sich geändert: übernehmen</translation>
    </message>
    <message>
        <source>Check anew</source>
        <translation>Neu prüfen</translation>
    </message>
    <message>
        <source>Open the &amp;questions</source>
        <translation>Fragen öff&amp;nen</translation>
    </message>
    <message>
        <source>By the centre&apos;s own &amp;form</source>
        <translation>Mit dem eigenen F&amp;ormular der Basis</translation>
    </message>
    <message>
        <source>The guest filled in a form of the centre: only its outcome is recorded here.</source>
        <translation>Der Gast hat ein Formular der Basis ausgefüllt: Hier wird nur dessen Ergebnis vermerkt.</translation>
    </message>
    <message>
        <source>Ctrl+Return</source>
        <translation>Ctrl+Return</translation>
    </message>
    <message>
        <source>Close without recording</source>
        <translation>Schließen, ohne zu vermerken</translation>
    </message>
    <message>
        <source>Short questions for talking it over. They diagnose nobody: the centre&apos;s own form and the physician prevail.</source>
        <translation>Kurze Fragen zum Durchsprechen. Sie stellen keine Diagnose: Das eigene Formular der Basis und der Arzt gehen vor.</translation>
    </message>
    <message>
        <source>Checked on %1</source>
        <translation>Geprüft am %1</translation>
    </message>
    <message>
        <source>Checked, day not known</source>
        <translation>Geprüft, Tag nicht bekannt</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>Checked on %1: %2. Has anything changed since?</source>
        <translation>Geprüft am %1: %2. Hat sich seither etwas geändert?</translation>
    </message>
    <message>
        <source>Only the outcome is recorded; the form stays with the centre.</source>
        <translation>Nur das Ergebnis wird vermerkt; das Formular bleibt bei der Basis.</translation>
    </message>
    <message>
        <source>Answers, note, contact and a signature drawn here are sealed in the vault.</source>
        <translation>Antworten, Notiz, Kontakt und eine hier gezeichnete Unterschrift werden im Tresor versiegelt.</translation>
    </message>
    <message>
        <source>This session is not in the records: only the outcome is kept, and the answers go when you record.</source>
        <translation>Dieser Termin ist nicht in den Aufzeichnungen: Nur das Ergebnis bleibt; die Antworten werden beim Vermerken verworfen.</translation>
    </message>
    <message>
        <source>The vault is not open: only the outcome is kept, and the answers go when you record.</source>
        <translation>Der Tresor ist nicht offen: Nur das Ergebnis bleibt; die Antworten werden beim Vermerken verworfen.</translation>
    </message>
    <message>
        <source>Comes to: %1</source>
        <translation>Ergibt: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n still open</source>
        <translation>
            <numerusform>%n noch offen</numerusform>
            <numerusform>%n noch offen</numerusform>
        </translation>
    </message>
    <message>
        <source>Record the outcome alone</source>
        <translation>Nur das Ergebnis vermerken</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Vermerken</translation>
    </message>
</context>
<context>
    <name>leadline::SessionLine</name>
    <message>
        <source>Name of the session</source>
        <translation>Name des Termins</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Meet</source>
        <translation>Treffen</translation>
    </message>
    <message>
        <source>Dive</source>
        <translation>Tauchgang</translation>
    </message>
    <message>
        <source>Leads</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Tauchplatz</translation>
    </message>
    <message>
        <source>Rename session</source>
        <translation>Termin umbenennen</translation>
    </message>
    <message>
        <source>Change date</source>
        <translation>Datum ändern</translation>
    </message>
    <message>
        <source>Change meeting time</source>
        <translation>Uhrzeit des Treffens ändern</translation>
    </message>
    <message>
        <source>Change dive time</source>
        <translation>Uhrzeit des Tauchgangs ändern</translation>
    </message>
    <message>
        <source>Change who leads</source>
        <translation>Leitung ändern</translation>
    </message>
    <message>
        <source>Not named</source>
        <translation>Nicht benannt</translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation>(ohne Namen)</translation>
    </message>
    <message numerus="yes">
        <source>%n stops</source>
        <translation>
            <numerusform>%n Stopp</numerusform>
            <numerusform>%n Stopps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n care</source>
        <translation>
            <numerusform>%n × Achtung</numerusform>
            <numerusform>%n × Achtung</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Ready · %n care</source>
        <translation>
            <numerusform>Bereit · %n × Achtung</numerusform>
            <numerusform>Bereit · %n × Achtung</numerusform>
        </translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Bereit</translation>
    </message>
    <message numerus="yes">
        <source>%n set aside</source>
        <translation>
            <numerusform>%n übergangen</numerusform>
            <numerusform>%n übergangen</numerusform>
        </translation>
    </message>
    <message>
        <source>Show the findings</source>
        <translation>Feststellungen zeigen</translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <comment>date; ddd, d, MMM and yyyy stay</comment>
        <translation>ddd d. MMM yyyy</translation>
    </message>
</context>
<context>
    <name>leadline::SessionsDialog</name>
    <message>
        <source>Sessions on record</source>
        <translation>Erfasste Termine</translation>
    </message>
    <message>
        <source>Kept in %1</source>
        <translation>Aufbewahrt in %1</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>Ö&amp;ffnen</translation>
    </message>
    <message>
        <source>&amp;Delete…</source>
        <translation>&amp;Löschen&#xa0;…</translation>
    </message>
    <message>
        <source>Delete session</source>
        <translation>Termin löschen</translation>
    </message>
    <message>
        <source>Delete &quot;%1&quot; with its plan and log for good? The guests stay on record.</source>
        <translation>„%1“ mit Plan und Protokoll endgültig löschen? Die Gäste bleiben erfasst.</translation>
    </message>
</context>
<context>
    <name>leadline::SessionsModel</name>
    <message>
        <source>(no name)</source>
        <translation>(ohne Namen)</translation>
    </message>
    <message>
        <source>%1 (logged)</source>
        <translation>%1 (mit Protokoll)</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Dive</source>
        <translation>Tauchgang</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Tauchplatz</translation>
    </message>
    <message>
        <source>Guests</source>
        <translation>Gäste</translation>
    </message>
</context>
<context>
    <name>leadline::SheetBar</name>
    <message>
        <source>What to print</source>
        <translation>Was gedruckt wird</translation>
    </message>
</context>
<context>
    <name>leadline::ShoeBox</name>
    <message>
        <source>EU </source>
        <translation>EU </translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
</context>
<context>
    <name>leadline::SignaturePad</name>
    <message>
        <source>Strip to sign on</source>
        <translation>Streifen zum Unterschreiben</translation>
    </message>
    <message>
        <source>Sign here</source>
        <translation>Hier unterschreiben</translation>
    </message>
</context>
<context>
    <name>leadline::SiteTab</name>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>What the sea does today</source>
        <translation>Was das Wasser heute macht</translation>
    </message>
    <message>
        <source>Rules that apply</source>
        <translation>Geltende Regeln</translation>
    </message>
    <message>
        <source>Site and conditions</source>
        <translation>Tauchplatz und Bedingungen</translation>
    </message>
    <message>
        <source>Numbers of the place</source>
        <translation>Zahlen des Platzes</translation>
    </message>
    <message>
        <source>Profile and numbers</source>
        <translation>Profil und Zahlen</translation>
    </message>
    <message>
        <source>%1 deep, %2</source>
        <translation>%1 tief, %2</translation>
    </message>
    <message>
        <source>%1 at %2.</source>
        <translation>%1 am Platz %2.</translation>
    </message>
</context>
<context>
    <name>leadline::SkillsDialog</name>
    <message>
        <source>Skills of this session</source>
        <translation>Übungen dieses Termins</translation>
    </message>
    <message>
        <source>Tick what the guests &amp;practise before the tour.</source>
        <translation>Haken Sie an, was die Gäste vor der Tour ü&amp;ben.</translation>
    </message>
</context>
<context>
    <name>leadline::StaffExposureModel</name>
    <message>
        <source>Staff</source>
        <translation>Team</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>No-stop
time left</source>
        <translation>Stoppfreie
Zeit übrig</translation>
    </message>
    <message>
        <source>Planned
now</source>
        <translation>Jetzt
geplant</translation>
    </message>
    <message>
        <source>Share of
the limit</source>
        <translation>Anteil der
Grenze</translation>
    </message>
    <message>
        <source>Dives
today</source>
        <translation>Tauchg.
heute</translation>
    </message>
    <message>
        <source>Times up
today</source>
        <translation>Aufstiege
heute</translation>
    </message>
    <message>
        <source>Days in
a row</source>
        <translation>Tage in
Folge</translation>
    </message>
    <message>
        <source>Since the
last dive</source>
        <translation>Seit letztem
Tauchgang</translation>
    </message>
    <message>
        <source>Before
flying</source>
        <translation>Vor dem
Fliegen</translation>
    </message>
    <message>
        <source>Instructors and assistants of this session.</source>
        <translation>Tauchlehrer und Assistenten dieses Termins.</translation>
    </message>
    <message>
        <source>How this dive stands to the limits of the chosen rules, as far as earlier dives are on record.</source>
        <translation>Wie dieser Tauchgang zu den Grenzen der gewählten Regeln steht, soweit frühere Tauchgänge erfasst sind.</translation>
    </message>
    <message>
        <source>Minutes at the deepest planned point, %1, until going straight up would no longer be allowed, before this session. Rounded down.</source>
        <translation>Minuten am tiefsten geplanten Punkt, %1, bis ein direkter Aufstieg nicht mehr erlaubt wäre, vor diesem Termin. Abgerundet.</translation>
    </message>
    <message>
        <source>Time of this session&apos;s dive.</source>
        <translation>Zeit des Tauchgangs dieses Termins.</translation>
    </message>
    <message>
        <source>Of the nitrogen that the house allows for going straight up, the most used at any moment of this dive; ashore, before this session. 100 % is the limit. Rounded up.</source>
        <translation>Vom Stickstoff, den das Haus für den direkten Aufstieg erlaubt, der größte Anteil in einem Moment dieses Tauchgangs; an Land der vor diesem Termin. 100&#xa0;% ist die Grenze. Aufgerundet.</translation>
    </message>
    <message>
        <source>Dives of this day, this one included.</source>
        <translation>Tauchgänge dieses Tages, dieser mitgezählt.</translation>
    </message>
    <message>
        <source>Times at the surface this day, those expected in this session included.</source>
        <translation>Aufstiege zur Oberfläche an diesem Tag, die bei diesem Termin erwarteten mitgezählt.</translation>
    </message>
    <message>
        <source>Days with a dive up to today.</source>
        <translation>Tage mit Tauchgang bis heute.</translation>
    </message>
    <message>
        <source>Surface interval up to this session&apos;s dive. Rounded down.</source>
        <translation>Oberflächenpause bis zum Tauchgang dieses Termins. Abgerundet.</translation>
    </message>
    <message>
        <source>Hours to stay off aircraft and passes after the last dive, by published guidance.</source>
        <translation>Stunden ohne Flug und ohne Fahrt über einen Bergpass nach dem letzten Tauchgang, nach veröffentlichten Empfehlungen.</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 oder mehr</translation>
    </message>
    <message>
        <source>%1, at most %2</source>
        <translation>%1, höchstens %2</translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation>(ohne Namen)</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>%1 after the last dive: %2</source>
        <translation>%1 nach dem letzten Tauchgang: %2</translation>
    </message>
</context>
<context>
    <name>leadline::StaffExposurePanel</name>
    <message>
        <source>What earlier dives leave to each member of staff</source>
        <translation>Was frühere Tauchgänge jedem im Team übrig lassen</translation>
    </message>
    <message>
        <source>Nobody on the staff yet. Add them on the Roster tab under Groups and staff, and enter their dives of the last seven days there with the button in the column Dives; then this says who is free to lead this dive.</source>
        <translation>Noch niemand im Team. Fügen Sie im Register Gästeliste unter Gruppen und Team Personen hinzu, und tragen Sie dort mit dem Knopf in der Spalte Tauchgänge ihre Tauchgänge der letzten sieben Tage ein; dann steht hier, wer diesen Tauchgang führen kann.</translation>
    </message>
    <message>
        <source>An aid for planning. What the diver&apos;s own computer, a physician and the makers say prevails. Tissues by ZH-L16C with gradient factors %1/%2, common practice.</source>
        <translation>Eine Planungshilfe. Was der eigene Tauchcomputer, ein Arzt und die Hersteller sagen, geht vor. Gewebe nach ZH-L16C mit den Gradientenfaktoren %1/%2, übliche Praxis.</translation>
    </message>
    <message>
        <source>Why? Staff</source>
        <translation>Warum? Team</translation>
    </message>
</context>
<context>
    <name>leadline::StaffList</name>
    <message>
        <source>Staff</source>
        <translation>Team</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Speaks</source>
        <translation>Spricht</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Filled to</source>
        <translation>Gefüllt auf</translation>
    </message>
    <message>
        <source>Gas at</source>
        <translation>Gas bei</translation>
    </message>
    <message>
        <source>Dives</source>
        <translation>Tauchgänge</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Noch keine</translation>
    </message>
    <message>
        <source>Remove member of staff</source>
        <translation>Teammitglied entfernen</translation>
    </message>
    <message>
        <source>Change staff</source>
        <translation>Team ändern</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Name of %1</source>
        <translation>Name von %1</translation>
    </message>
    <message>
        <source>Role of %1</source>
        <translation>Rolle von %1</translation>
    </message>
    <message>
        <source>Languages of %1</source>
        <translation>Sprachen von %1</translation>
    </message>
    <message>
        <source>Cylinder of %1</source>
        <translation>Flasche von %1</translation>
    </message>
    <message>
        <source>Gauge reading of %1</source>
        <translation>Finimeteranzeige von %1</translation>
    </message>
    <message>
        <source>Gas temperature of %1</source>
        <translation>Gastemperatur von %1</translation>
    </message>
    <message>
        <source>%1…</source>
        <translation>%1&#xa0;…</translation>
    </message>
    <message>
        <source>Earlier dives of %1</source>
        <translation>Frühere Tauchgänge von %1</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
</context>
<context>
    <name>leadline::StockDialog</name>
    <message>
        <source>Kit in stock</source>
        <translation>Ausrüstung im Bestand</translation>
    </message>
    <message>
        <source>What there is, kit handed out included. A part left empty is not recorded, and nothing in it counts as missing.</source>
        <translation>Was es gibt, Ausgegebenes mitgezählt. Ein leer gelassener Teil ist nicht erfasst, und nichts darin gilt als fehlend.</translation>
    </message>
    <message>
        <source>Cylinders</source>
        <translation>Flaschen</translation>
    </message>
    <message>
        <source>In stock</source>
        <translation>Im Bestand</translation>
    </message>
    <message>
        <source>%1, in stock</source>
        <translation>%1, im Bestand</translation>
    </message>
    <message numerus="yes">
        <source>%n handed out</source>
        <translation>
            <numerusform>%n ausgegeben</numerusform>
            <numerusform>%n ausgegeben</numerusform>
        </translation>
    </message>
    <message>
        <source>Suits</source>
        <translation>Anzüge</translation>
    </message>
    <message>
        <source>Suits in stock</source>
        <translation>Anzüge im Bestand</translation>
    </message>
    <message>
        <source>&amp;Add a suit</source>
        <translation>Anzug &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Insert, in the table</source>
        <translation>Einfg, in der Tabelle</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Delete, in the table</source>
        <translation>Entf, in der Tabelle</translation>
    </message>
    <message>
        <source>Remove the chosen suits</source>
        <translation>Die gewählten Anzüge entfernen</translation>
    </message>
    <message>
        <source>Add those &amp;handed out</source>
        <translation>&amp;Ausgegebene hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Lead pieces, kg</source>
        <translation>&amp;Bleistücke, kg</translation>
    </message>
    <message>
        <source>&amp;Lead pieces, lb</source>
        <translation>&amp;Bleistücke, lb</translation>
    </message>
    <message>
        <source>Sizes of lead pieces in kilograms</source>
        <translation>Größen der Bleistücke in Kilogramm</translation>
    </message>
    <message>
        <source>Sizes of lead pieces in pounds</source>
        <translation>Größen der Bleistücke in Pfund (lb)</translation>
    </message>
    <message>
        <source>For example 0.5 1 2</source>
        <translation>Zum Beispiel 0,5 1 2</translation>
    </message>
    <message>
        <source>For example 1 2 3</source>
        <translation>Zum Beispiel 1 2 3</translation>
    </message>
    <message>
        <source>%1 labels are the most.</source>
        <translation>Mehr als %1 Bezeichnungen gehen nicht.</translation>
    </message>
    <message>
        <source>Lead pieces: &quot;%1&quot; is not a list of sizes. Write numbers with spaces between: 0.5 1 2.</source>
        <translation>Bleistücke: „%1“ ist keine Liste von Größen. Schreiben Sie Zahlen mit Leerzeichen dazwischen: 0,5 1 2.</translation>
    </message>
    <message>
        <source>Lead pieces, kg</source>
        <translation>Bleistücke, kg</translation>
    </message>
    <message>
        <source>Not recorded: whole kilograms are assumed.</source>
        <translation>Nicht erfasst: Ganze Kilogramm werden angenommen.</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>Change kit in stock</source>
        <translation>Bestand an Ausrüstung ändern</translation>
    </message>
</context>
<context>
    <name>leadline::SuitStockModel</name>
    <message>
        <source>Suit</source>
        <translation>Anzug</translation>
    </message>
    <message>
        <source>In stock</source>
        <translation>Im Bestand</translation>
    </message>
    <message>
        <source>Handed out</source>
        <translation>Ausgegeben</translation>
    </message>
</context>
<context>
    <name>leadline::VaultActions</name>
    <message>
        <source>&amp;Health vault</source>
        <translation>Ge&amp;sundheitstresor</translation>
    </message>
    <message>
        <source>&amp;Unlock…</source>
        <translation>Ö&amp;ffnen&#xa0;…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+L</source>
        <translation>Ctrl+Shift+L</translation>
    </message>
    <message>
        <source>&amp;Lock</source>
        <translation>&amp;Verschließen</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>Lock when &amp;idle for</source>
        <translation>Verschließen nach &amp;Untätigkeit von</translation>
    </message>
    <message>
        <source>&amp;Change the passphrase…</source>
        <translation>Passphrase &amp;ändern&#xa0;…</translation>
    </message>
    <message>
        <source>The passphrase was changed.</source>
        <translation>Die Passphrase wurde geändert.</translation>
    </message>
    <message>
        <source>New &amp;recovery key…</source>
        <translation>Neuer &amp;Wiederherstellungsschlüssel&#xa0;…</translation>
    </message>
    <message>
        <source>The new recovery key counts from now on. Destroy the old paper.</source>
        <translation>Von jetzt an zählt der neue Wiederherstellungsschlüssel. Vernichten Sie das alte Papier.</translation>
    </message>
    <message>
        <source>&amp;Audit trail…</source>
        <translation>&amp;Zugriffsprotokoll&#xa0;…</translation>
    </message>
    <message numerus="yes">
        <source>%n minutes</source>
        <translation>
            <numerusform>%n Minute</numerusform>
            <numerusform>%n Minuten</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Set up…</source>
        <translation>&amp;Einrichten&#xa0;…</translation>
    </message>
    <message>
        <source>&amp;Add a passphrase…</source>
        <translation>&amp;Passphrase hinzufügen&#xa0;…</translation>
    </message>
    <message>
        <source>Health vault locked</source>
        <translation>Gesundheitstresor verschlossen</translation>
    </message>
    <message>
        <source>Unlock it (Ctrl+Shift+L)</source>
        <translation>Öffnen (Strg+Umschalt+L)</translation>
    </message>
    <message>
        <source>No health vault: the records are not open</source>
        <translation>Kein Gesundheitstresor: Die Aufzeichnungen sind nicht offen</translation>
    </message>
    <message>
        <source>Health vault not set up</source>
        <translation>Gesundheitstresor nicht eingerichtet</translation>
    </message>
    <message>
        <source>Set it up</source>
        <translation>Einrichten</translation>
    </message>
    <message>
        <source>Health vault open: %1</source>
        <translation>Gesundheitstresor offen: %1</translation>
    </message>
    <message>
        <source>Lock it (Ctrl+L)</source>
        <translation>Verschließen (Strg+L)</translation>
    </message>
    <message>
        <source>The health vault is set up and open. It locks by itself after %1 min without a key or a click.</source>
        <translation>Der Gesundheitstresor ist eingerichtet und offen. Ohne Taste oder Klick verschließt er sich nach %1&#xa0;min von selbst.</translation>
    </message>
    <message numerus="yes">
        <source>%n answers an older version kept open are sealed now.</source>
        <translation>
            <numerusform>%n Antwort, die eine ältere Version offen aufbewahrte, ist jetzt versiegelt.</numerusform>
            <numerusform>%n Antworten, die eine ältere Version offen aufbewahrte, sind jetzt versiegelt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Copies made before still hold them: delete those in Records &gt; Copies of the records, and files named ...before-schema-*.</source>
        <translation>Vorher gemachte Kopien enthalten sie noch: Löschen Sie jene unter Aufzeichnungen &gt; Kopien der Aufzeichnungen sowie Dateien namens ...before-schema-*.</translation>
    </message>
</context>
<context>
    <name>leadline::VaultPassphraseDialog</name>
    <message>
        <source>Change the passphrase</source>
        <translation>Passphrase ändern</translation>
    </message>
    <message>
        <source>Add a passphrase</source>
        <translation>Passphrase hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Old passphrase</source>
        <translation>Alte &amp;Passphrase</translation>
    </message>
    <message>
        <source>&amp;New passphrase</source>
        <translation>&amp;Neue Passphrase</translation>
    </message>
    <message>
        <source>&amp;Again</source>
        <translation>Noch &amp;einmal</translation>
    </message>
    <message>
        <source>&amp;Change</source>
        <translation>Än&amp;dern</translation>
    </message>
    <message>
        <source>A&amp;dd</source>
        <translation>&amp;Hinzufügen</translation>
    </message>
    <message>
        <source>At least %1 characters: a few words in a row are easy to keep.</source>
        <translation>Mindestens %1 Zeichen: Ein paar Wörter hintereinander merkt man sich leicht.</translation>
    </message>
    <message>
        <source>%1 of at least %2 characters.</source>
        <translation>%1 von mindestens %2 Zeichen.</translation>
    </message>
    <message>
        <source>The two are not the same yet.</source>
        <translation>Die beiden sind noch nicht gleich.</translation>
    </message>
    <message>
        <source>The old passphrase is not the right one. Nothing was changed.</source>
        <translation>Die alte Passphrase ist nicht die richtige. Es wurde nichts geändert.</translation>
    </message>
</context>
<context>
    <name>leadline::VaultSetUpDialog</name>
    <message>
        <source>Set up the health vault</source>
        <translation>Gesundheitstresor einrichten</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <source>A &amp;passphrase of the centre</source>
        <translation>Eine &amp;Passphrase der Basis</translation>
    </message>
    <message>
        <source>This computer&apos;s &amp;keyring</source>
        <translation>&amp;Schlüsselbund dieses Computers</translation>
    </message>
    <message>
        <source>&amp;Who sets it up</source>
        <translation>Wer ihn ein&amp;richtet</translation>
    </message>
    <message>
        <source>Pa&amp;ssphrase</source>
        <translation>Passphr&amp;ase</translation>
    </message>
    <message>
        <source>&amp;Again</source>
        <translation>Noch &amp;einmal</translation>
    </message>
    <message>
        <source>Health answers, notes of physicians, emergency contacts and signatures are kept sealed in a vault. Choose how it is opened.</source>
        <translation>Gesundheitsantworten, Notizen von Ärzten, Notfallkontakte und Unterschriften werden versiegelt in einem Tresor aufbewahrt. Wählen Sie, wie er geöffnet wird.</translation>
    </message>
    <message>
        <source>The keyring opens with the login to this computer: quick, and as safe as that login.</source>
        <translation>Der Schlüsselbund öffnet sich mit der Anmeldung an diesem Computer: schnell, und so sicher wie diese Anmeldung.</translation>
    </message>
    <message>
        <source>At least %1 characters: a few words in a row are easy to keep.</source>
        <translation>Mindestens %1 Zeichen: Ein paar Wörter hintereinander merkt man sich leicht.</translation>
    </message>
    <message>
        <source>%1 of at least %2 characters.</source>
        <translation>%1 von mindestens %2 Zeichen.</translation>
    </message>
    <message>
        <source>The two are not the same yet.</source>
        <translation>Die beiden sind noch nicht gleich.</translation>
    </message>
    <message>
        <source>&amp;Finish</source>
        <translation>&amp;Fertig</translation>
    </message>
    <message>
        <source>This computer&apos;s keyring does not answer. Choose a passphrase.</source>
        <translation>Der Schlüsselbund dieses Computers antwortet nicht. Wählen Sie eine Passphrase.</translation>
    </message>
</context>
<context>
    <name>leadline::VaultUnlockDialog</name>
    <message>
        <source>&amp;Passphrase</source>
        <translation>&amp;Passphrase</translation>
    </message>
    <message>
        <source>Recovery &amp;key</source>
        <translation>&amp;Wiederherstellungsschlüssel</translation>
    </message>
    <message>
        <source>Use the &amp;recovery key</source>
        <translation>&amp;Wiederherstellungsschlüssel verwenden</translation>
    </message>
    <message>
        <source>Unlock the health vault</source>
        <translation>Gesundheitstresor öffnen</translation>
    </message>
    <message>
        <source>Nine groups of four</source>
        <translation>Neun Gruppen zu vier Zeichen</translation>
    </message>
    <message>
        <source>&amp;Unlock</source>
        <translation>Ö&amp;ffnen</translation>
    </message>
    <message>
        <source>Unlock by &amp;keyring</source>
        <translation>Mit dem &amp;Schlüsselbund öffnen</translation>
    </message>
    <message>
        <source>&amp;Who is asking</source>
        <translation>Wer &amp;fragt</translation>
    </message>
    <message>
        <source>Wait %1 s</source>
        <translation>%1&#xa0;s warten</translation>
    </message>
    <message>
        <source>This computer&apos;s keyring has no key of this vault. Use the recovery key.</source>
        <translation>Im Schlüsselbund dieses Computers ist kein Schlüssel zu diesem Tresor. Nehmen Sie den Wiederherstellungsschlüssel.</translation>
    </message>
</context>
<context>
    <name>leadline::WindowActions</name>
    <message>
        <source>&amp;Session</source>
        <translation>&amp;Termin</translation>
    </message>
    <message>
        <source>&amp;New session</source>
        <translation>&amp;Neuer Termin</translation>
    </message>
    <message>
        <source>&amp;Open a file…</source>
        <translation>Datei ö&amp;ffnen&#xa0;…</translation>
    </message>
    <message>
        <source>Open a s&amp;ample</source>
        <translation>&amp;Beispiel öffnen</translation>
    </message>
    <message>
        <source>&amp;Write to a file…</source>
        <translation>In Datei &amp;schreiben&#xa0;…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>&amp;Print cards</source>
        <translation>Karten &amp;drucken</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>B&amp;eenden</translation>
    </message>
    <message>
        <source>&amp;Records</source>
        <translation>Auf&amp;zeichnungen</translation>
    </message>
    <message>
        <source>&amp;Sessions on record…</source>
        <translation>Erfasste &amp;Termine&#xa0;…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+O</source>
        <translation>Ctrl+Shift+O</translation>
    </message>
    <message>
        <source>&amp;Guests on record…</source>
        <translation>Erfasste &amp;Gäste&#xa0;…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+G</source>
        <translation>Ctrl+Shift+G</translation>
    </message>
    <message>
        <source>&amp;Red list…</source>
        <translation>&amp;Rote Liste&#xa0;…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+R</source>
        <translation>Ctrl+Shift+R</translation>
    </message>
    <message>
        <source>Who must still see a physician, bring consent, answer or renew.</source>
        <translation>Wer noch zum Arzt, eine Einwilligung bringen, Fragen beantworten oder etwas erneuern muss.</translation>
    </message>
    <message>
        <source>&amp;Copies of the records…</source>
        <translation>&amp;Kopien der Aufzeichnungen&#xa0;…</translation>
    </message>
    <message>
        <source>No samples installed</source>
        <translation>Keine Beispiele installiert</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Ctrl+Y</source>
        <translation>Ctrl+Y</translation>
    </message>
    <message>
        <source>&amp;Find a guest</source>
        <translation>Gast &amp;suchen</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>Ans&amp;icht</translation>
    </message>
    <message>
        <source>Feet, psi and °F</source>
        <translation>Fuß, psi und °F</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;About Leadline</source>
        <translation>&amp;Über Leadline</translation>
    </message>
    <message>
        <source>About Leadline</source>
        <translation>Über Leadline</translation>
    </message>
    <message>
        <source>&lt;p&gt;&lt;b&gt;Leadline %1&lt;/b&gt;&lt;/p&gt;&lt;p&gt;Plans a first, supervised scuba session, prints a card for every guest and reviews the log.&lt;/p&gt;&lt;p&gt;A planning aid: no dive computer, no medical device, no legal advice. Local law, your organisation&apos;s standard, the instructor and a physician come first. Numbers are estimates to be checked in the water.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later.&lt;/p&gt;</source>
        <translation>&lt;p&gt;&lt;b&gt;Leadline %1&lt;/b&gt;&lt;/p&gt;&lt;p&gt;Plant einen ersten, begleiteten Tauchgang, druckt eine Karte für jeden Gast und wertet das Protokoll aus.&lt;/p&gt;&lt;p&gt;Eine Planungshilfe: kein Tauchcomputer, kein Medizinprodukt, keine Rechtsberatung. Das örtliche Recht, die Vorgaben Ihrer Organisation, der Tauchlehrer und der Arzt gehen vor. Die Zahlen sind Schätzungen, die im Wasser zu prüfen sind.&lt;/p&gt;&lt;p&gt;Freie Software unter der GNU General Public License, Version 3 oder neuer.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>&amp;Guest screen</source>
        <translation>&amp;Gästebildschirm</translation>
    </message>
    <message>
        <source>The briefing for guests to look at, on another monitor if there is one.</source>
        <translation>Das Briefing, zum Ansehen für die Gäste, auf einem zweiten Bildschirm, wenn es einen gibt.</translation>
    </message>
</context>
</TS>
