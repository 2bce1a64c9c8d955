<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>BackgroundJob</name>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Arrêt…</translation>
    </message>
</context>
<context>
    <name>BeachSheet</name>
    <message>
        <source>%1: %2</source>
        <comment>severity: what is wrong</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>severity, whom it is about: what is wrong</comment>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>whom it is about: what is wrong</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 Goes ahead because: %2</source>
        <translation>%1 Poursuivi parce que&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 Goes ahead because: %2 (%3)</source>
        <translation>%1 Poursuivi parce que&#xa0;: %2 (%3)</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>pas demandé</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>signals known</comment>
        <translation>%1 sur %2</translation>
    </message>
    <message numerus="yes">
        <source>%n years</source>
        <translation>
            <numerusform>%n&#xa0;an</numerusform>
            <numerusform>%n&#xa0;ans</numerusform>
        </translation>
    </message>
    <message>
        <source>age not known</source>
        <translation>âge inconnu</translation>
    </message>
    <message>
        <source>health clear</source>
        <translation>santé&#xa0;: rien à signaler</translation>
    </message>
    <message>
        <source>health: %1, %2</source>
        <comment>before the day, today</comment>
        <translation>santé&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>signals %1</source>
        <translation>signes&#xa0;: %1</translation>
    </message>
    <message>
        <source>Signals not yet known: %1.</source>
        <translation>Signes pas encore connus&#xa0;: %1.</translation>
    </message>
    <message>
        <source>&gt;%1</source>
        <comment>more minutes than</comment>
        <translation>&gt;%1</translation>
    </message>
    <message>
        <source>Instructor: %1 at least, to bring one guest up.</source>
        <translation>Moniteur&#xa0;: %1 au moins, pour remonter un client.</translation>
    </message>
    <message>
        <source>In %1, up by %2 (%3): the air ends it before the plan does.</source>
        <translation>À l’eau à %1, remontés à %2 au plus tard (%3)&#xa0;: l’air finit avant le plan.</translation>
    </message>
    <message>
        <source>In %1, back by %2 (%3).</source>
        <translation>À l’eau à %1, retour à %2 au plus tard (%3).</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>role, name</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 · meet %2 · in the water %3</source>
        <translation>%1 · RDV %2 · à l’eau %3</translation>
    </message>
    <message>
        <source>In an emergency call</source>
        <translation>En cas d’urgence, appelez</translation>
    </message>
    <message>
        <source>not entered: write it here</source>
        <translation>non saisi&#xa0;: écrivez-le ici</translation>
    </message>
    <message>
        <source>No emergency plan is entered: write it here (oxygen, phone, chamber, way out)</source>
        <translation>Aucun plan d’urgence saisi&#xa0;: écrivez-le ici (oxygène, téléphone, caisson, chemin de sortie)</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>what to know, kit</source>
        <translation>à savoir, matériel</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Ordre</translation>
    </message>
    <message>
        <source>of low</source>
        <translation>air bas</translation>
    </message>
    <message>
        <source>Signal at</source>
        <translation>Signe à</translation>
    </message>
    <message>
        <source>Turn at</source>
        <translation>½ tour</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Min.</translation>
    </message>
    <message>
        <source>Lasts</source>
        <translation>Dure</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>RMV</source>
        <translation>VRM</translation>
    </message>
    <message>
        <source>Nobody is in this group yet.</source>
        <translation>Encore personne dans cette palanquée.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>guest, flag</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Signals of need</source>
        <translation>Signes de détresse</translation>
    </message>
    <message>
        <source>Heads, air, log</source>
        <translation>Compte, air, relevé</translation>
    </message>
    <message>
        <source>write %1, %2</source>
        <translation>en %1, %2</translation>
    </message>
    <message>
        <source>In</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>2 tick</source>
        <translation>2 cochent</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Début</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation>Prof.</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Sortie</translation>
    </message>
    <message>
        <source>Heads in</source>
        <translation>Entrés</translation>
    </message>
    <message>
        <source>Heads out</source>
        <translation>Sortis</translation>
    </message>
    <message>
        <source>of %1</source>
        <comment>heads of the whole group</comment>
        <translation>sur %1</translation>
    </message>
    <message>
        <source>at</source>
        <comment>a time of day</comment>
        <translation>à</translation>
    </message>
    <message>
        <source>by</source>
        <comment>who counted</comment>
        <translation>par</translation>
    </message>
    <message>
        <source>Open.</source>
        <translation>Ouvert.</translation>
    </message>
    <message>
        <source>Decided.</source>
        <translation>Décidé.</translation>
    </message>
    <message>
        <source>No stop and no caution of the group is open.</source>
        <translation>Pour la palanquée, aucun stop ni point d’attention n’est ouvert.</translation>
    </message>
    <message>
        <source>over %1 min</source>
        <translation>plus de %1 min</translation>
    </message>
    <message>
        <source>Somebody is low on air after about %2 (in 10 of 100 dives before %3), most likely first: %1.</source>
        <translation>Quelqu’un a peu d’air après environ %2 (10 plongées sur 100&#xa0;: avant %3), le plus probable en premier&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The table gives each guest’s own forecast; in brackets: sooner in 10 of 100 dives.</source>
        <translation>Le tableau donne la prévision propre à chaque client&#xa0;; entre parenthèses&#xa0;: plus tôt dans 10 plongées sur 100.</translation>
    </message>
    <message>
        <source>No forecast: the table gives the planned minutes. About half of all dives are low on air sooner.</source>
        <translation>Pas de prévision&#xa0;: le tableau donne les minutes prévues au plan. Dans environ la moitié des plongées, l’air baisse plus tôt.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n more under “Open”.</source>
        <comment>severity, flags of a guest</comment>
        <translation>
            <numerusform>%1&#xa0;: %n de plus sous «&#xa0;Ouvert&#xa0;».</numerusform>
            <numerusform>%1&#xa0;: %n de plus sous «&#xa0;Ouvert&#xa0;».</numerusform>
        </translation>
    </message>
    <message>
        <source>Photo</source>
        <comment>room for one, in the table of guests</comment>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Low after</source>
        <translation>Bas après</translation>
    </message>
    <message>
        <source>min (early)</source>
        <comment>column of a table</comment>
        <translation>min (tôt)</translation>
    </message>
    <message>
        <source>min, plan</source>
        <comment>column of a table</comment>
        <translation>min, plan</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>minutes, early minutes</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>The whole plan stands on page %1.</source>
        <translation>Le plan complet est à la page %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n more on page %1.</source>
        <comment>findings, flags of guests and decisions</comment>
        <translation>
            <numerusform>%n de plus à la page %1.</numerusform>
            <numerusform>%n de plus à la page %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Kit.</source>
        <translation>Équipement.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>guest, kit</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Continued: what to know</source>
        <translation>Suite&#xa0;: ce qu’il faut savoir</translation>
    </message>
</context>
<context>
    <name>Bookings</name>
    <message>
        <source>Not used</source>
        <translation>Non utilisé</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>First name</source>
        <translation>Prénom</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Nom de famille</translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation>Date de naissance</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Âge</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Poids</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Shoe size</source>
        <translation>Pointure</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Téléphone</translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation>E-mail</translation>
    </message>
    <message>
        <source>Dives before</source>
        <translation>Plongées déjà faites</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>day, month, year (31/12/1990)</source>
        <translation>jour, mois, année (31/12/1990)</translation>
    </message>
    <message>
        <source>month, day, year (12/31/1990)</source>
        <translation>mois, jour, année (12/31/1990)</translation>
    </message>
    <message>
        <source>year, month, day (1990/12/31)</source>
        <translation>année, mois, jour (1990/12/31)</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>kilogrammes</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>livres</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>centimètres</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>mètres</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pouces</translation>
    </message>
    <message>
        <source>feet and inches (5&apos;9&quot;)</source>
        <translation>pieds et pouces (5&apos;9&quot;)</translation>
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
        <translation>Il n’y a pas de nom. Choisissez la colonne des noms ou décochez la ligne.</translation>
    </message>
    <message>
        <source>%1 characters; at most %2 can be kept. Shorten it in the list.</source>
        <translation>%1 caractères&#x202f;; on peut en garder %2 au plus. Raccourcissez dans la liste.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date in this order. Check it, or choose the order of dates above.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une date dans cet ordre. Vérifiez-la ou choisissez plus haut l’ordre des dates.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is after the session on %2. Check the year.</source>
        <translation>«&#xa0;%1&#xa0;» est après la séance du %2. Vérifiez l’année.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a weight. Wanted: a number, with kg or lb behind it if you like.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un poids. Attendu&#xa0;: un nombre, suivi au besoin de kg ou lb.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a height. Wanted: 175, 1.75 m or 5&apos;9&quot;.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une taille. Attendu&#xa0;: 175, 1,75&#xa0;m ou 5&apos;9&quot;.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is outside 15 to 250 kg. Check the number and the unit above.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas entre 15 et 250&#xa0;kg. Vérifiez le nombre et l’unité plus haut.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is outside 80 to 250 cm. Check the number and the unit above.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas entre 80 et 250&#xa0;cm. Vérifiez le nombre et l’unité plus haut.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read in more than one way. Answer the question above.</source>
        <translation>«&#xa0;%1&#xa0;» peut se lire de plusieurs façons. Répondez à la question plus haut.</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: the year was taken for %2. Check it with the guest.</source>
        <translation>«&#xa0;%1&#xa0;»&#xa0;: l’année a été lue comme %2. Vérifiez-la avec le client.</translation>
    </message>
    <message>
        <source>%1 years old on the day. Check the birth date.</source>
        <translation>%1&#xa0;ans ce jour-là. Vérifiez la date de naissance.</translation>
    </message>
    <message>
        <source>Age %1 goes into the note. Ask for the birth date: without it the rules on age cannot be checked.</source>
        <translation>L’âge, %1&#xa0;ans, va dans la note. Demandez la date de naissance&#xa0;: sans elle, les règles d’âge ne peuvent pas être vérifiées.</translation>
    </message>
    <message>
        <source>The list says %1 years, the birth date %2. One of them is wrong; ask the guest.</source>
        <translation>La liste dit %1&#xa0;ans, la date de naissance %2. L’un des deux est faux&#x202f;; demandez au client.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an age. Left out.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un âge. Ignoré.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no language known here. English is put; choose another in the Roster.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une langue connue ici. Anglais par défaut&#x202f;; choisissez une autre langue dans Clients.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no European shoe size (20 to 55). Left empty.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une pointure européenne (20 à 55). Laissée vide.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number of dives. Left empty.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un nombre de plongées. Laissé vide.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not look like an e-mail address. Taken over as it is.</source>
        <translation>«&#xa0;%1&#xa0;» ne ressemble pas à une adresse e-mail. Reprise telle quelle.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not look like a phone number. Taken over as it is.</source>
        <translation>«&#xa0;%1&#xa0;» ne ressemble pas à un numéro de téléphone. Repris tel quel.</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: some letters could not be read. Correct them in the Roster.</source>
        <translation>«&#xa0;%1&#xa0;»&#xa0;: certaines lettres n’ont pas pu être lues. Corrigez-les dans Clients.</translation>
    </message>
    <message>
        <source>Same phone or e-mail as %1 in the roster: family, perhaps.</source>
        <translation>Même téléphone ou e-mail que %1 dans la liste des clients&#xa0;: même famille, peut-être.</translation>
    </message>
    <message>
        <source>Same phone or e-mail as %1 in row %2: family, perhaps.</source>
        <translation>Même téléphone ou e-mail que %1, ligne %2&#xa0;: même famille, peut-être.</translation>
    </message>
    <message>
        <source>Same as %1 in the roster</source>
        <translation>Identique à %1 dans la liste des clients</translation>
    </message>
    <message>
        <source>Same as %1 in row %2</source>
        <translation>Identique à %1, ligne %2</translation>
    </message>
</context>
<context>
    <name>CardLanguage</name>
    <message>
        <source>language not entered</source>
        <translation>langue non saisie</translation>
    </message>
    <message>
        <source>Language not entered: the card is in English</source>
        <translation>Langue non saisie&#xa0;: la fiche est en anglais</translation>
    </message>
    <message>
        <source>No %1 yet: the card is in English</source>
        <translation>Pas encore de texte en %1&#xa0;: la fiche est en anglais</translation>
    </message>
    <message>
        <source>%1: a draft, not checked by a speaker</source>
        <translation>Texte en %1&#xa0;: brouillon, pas encore relu par une personne qui parle la langue</translation>
    </message>
    <message>
        <source>%1: checked by a speaker</source>
        <translation>Texte en %1&#xa0;: relu par une personne qui parle la langue</translation>
    </message>
    <message>
        <source>%1: checked by %2</source>
        <translation>Texte en %1&#xa0;: relu par %2</translation>
    </message>
    <message>
        <source>%1 (draft)</source>
        <comment>a language</comment>
        <translation>%1 (brouillon)</translation>
    </message>
    <message>
        <source>English, no %1 yet</source>
        <comment>a language</comment>
        <translation>Anglais, pas encore %1</translation>
    </message>
    <message>
        <source>%1, no %2 yet</source>
        <comment>two languages</comment>
        <translation>%1, pas encore %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>two languages</comment>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>Cards in %1: drafted, not checked by a speaker.</source>
        <translation>Fiches en %1&#xa0;: brouillons, pas encore relus par une personne qui parle la langue.</translation>
    </message>
    <message>
        <source>No cards in %1: in English instead.</source>
        <translation>Pas de fiches en %1&#xa0;: en anglais à la place.</translation>
    </message>
</context>
<context>
    <name>Commands</name>
    <message>
        <source>No card for %1: a stop stands. &quot;leadline plan&quot; says which.</source>
        <translation>Pas de fiche pour %1&#xa0;: un stop subsiste. «&#xa0;leadline plan&#xa0;» dit lequel.</translation>
    </message>
    <message>
        <source>No cards were written.</source>
        <translation>Aucune fiche n’a été écrite.</translation>
    </message>
    <message>
        <source>Cards: %1. Pages: %2. Written to %3</source>
        <translation>Fiches&#xa0;: %1. Pages&#xa0;: %2. Écrites dans %3</translation>
    </message>
    <message>
        <source>No display was found: showing the plan here and writing the cards.</source>
        <translation>Aucun écran trouvé&#xa0;: le plan est affiché ici et les fiches sont écrites.</translation>
    </message>
    <message>
        <source>%1 cannot be made.</source>
        <translation>Impossible de créer %1.</translation>
    </message>
    <message>
        <source>%1 cannot be written.</source>
        <translation>Impossible d’écrire %1.</translation>
    </message>
    <message>
        <source>No font here has the letters %1 of &quot;%2&quot;: write them by hand, or install a font that has them.</source>
        <translation>Aucune police ici n’a les caractères %1 de «&#xa0;%2&#xa0;»&#xa0;: écrivez-les à la main ou installez une police qui les a.</translation>
    </message>
    <message>
        <source>The card of %1 lacks the second language: there is none in %2.</source>
        <translation>La fiche de %1 n’a pas la deuxième langue&#xa0;: il n’y en a pas en %2.</translation>
    </message>
    <message>
        <source>The card of %1 is in English: there is none in %2.</source>
        <translation>La fiche de %1 est en anglais&#xa0;: il n’y en a pas en %2.</translation>
    </message>
    <message>
        <source>--kind is one of %1.</source>
        <translation>--kind accepte&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Nothing was written: there is no group. Make one on the Roster.</source>
        <translation>Rien n’a été écrit&#xa0;: il n’y a pas de palanquée. Formez-en une dans l’onglet Clients.</translation>
    </message>
    <message>
        <source>Pages: %1. Written to %2</source>
        <translation>Pages&#xa0;: %1. Écrites dans %2</translation>
    </message>
    <message>
        <source>Cut on a card for want of room: &quot;%1&quot;. Shorten it.</source>
        <translation>Coupé sur une fiche, faute de place&#xa0;: «&#xa0;%1&#xa0;». Raccourcissez.</translation>
    </message>
    <message numerus="yes">
        <source>%n cards have no room for all their words: read them before you hand them out.</source>
        <translation>
            <numerusform>%n fiche n’a pas la place pour tous ses mots&#xa0;: relisez-la avant de la distribuer.</numerusform>
            <numerusform>%n fiches n’ont pas la place pour tous leurs mots&#xa0;: relisez-les avant de les distribuer.</numerusform>
        </translation>
    </message>
    <message>
        <source>--size is one of %1.</source>
        <translation>--size accepte&#xa0;: %1.</translation>
    </message>
    <message>
        <source>--guest-language is one or two of %1, with a comma between.</source>
        <translation>--guest-language accepte une ou deux langues parmi %1, séparées par une virgule.</translation>
    </message>
</context>
<context>
    <name>EarsAndLungs</name>
    <message>
        <source>3 ft</source>
        <translation>3&#xa0;ft</translation>
    </message>
    <message>
        <source>1 m</source>
        <translation>1&#xa0;m</translation>
    </message>
    <message>
        <source>less than a second</source>
        <translation>moins d’une seconde</translation>
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
        <translation>Équilibrer avant %1&#xa0;: cette plongée est moins profonde qu’un seul pas. Sans équilibrer, la trompe se bloque après %2.</translation>
    </message>
    <message>
        <source>once on the way down</source>
        <translation>une fois à la descente</translation>
    </message>
    <message>
        <source>%1 times on the way down, every %2 at the planned speed</source>
        <translation>%1 fois à la descente, toutes les %2 à la vitesse prévue</translation>
    </message>
    <message>
        <source>Clear at least every %1: %2. The tube locks after %3 without clearing.</source>
        <translation>Équilibrer au moins tous les %1&#xa0;: %2. Sans équilibrer, la trompe se bloque après %3.</translation>
    </message>
    <message>
        <source>Largest step for half of that: %1. The step of the rules is longer.</source>
        <translation>Plus grand pas pour la moitié de cette valeur&#xa0;: %1. Le pas des règles est plus long.</translation>
    </message>
    <message>
        <source>Largest step for half of that: %1.</source>
        <translation>Plus grand pas pour la moitié de cette valeur&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Pain is the limit, not a figure: stop, go up %1, clear, go on. Never force. Ears that will not clear end the dive; ears that still hurt afterwards need a physician.</source>
        <translation>La limite est la douleur, pas un chiffre&#xa0;: s’arrêter, remonter de %1, équilibrer, repartir. Ne jamais forcer. Des oreilles qui ne passent pas mettent fin à la plongée&#x202f;; des oreilles qui font encore mal ensuite doivent être vues par un médecin.</translation>
    </message>
    <message>
        <source>People were hurt from %1.</source>
        <translation>Des personnes ont été blessées dès %1.</translation>
    </message>
    <message>
        <source>On so shallow a dive the surface comes before the published limit, which is no promise. %1</source>
        <translation>Pour une plongée si peu profonde, la surface arrive avant la limite publiée, ce qui ne promet rien. %1</translation>
    </message>
    <message>
        <source>From anywhere on this dive, about %1 of ascent with held breath and full lungs can tear a lung. %2</source>
        <translation>Où que l’on soit dans cette plongée, il peut suffire d’environ %1 de remontée, souffle bloqué et poumons pleins, pour déchirer un poumon. %2</translation>
    </message>
    <message>
        <source>Breathe all the time, most of all on the way up. Pain in the chest, trouble breathing or anything odd after a dive: oxygen, the emergency line, a physician.</source>
        <translation>Respirer tout le temps, surtout à la remontée. Douleur à la poitrine, gêne pour respirer ou quoi que ce soit d’anormal après une plongée&#xa0;: oxygène, numéro d’urgence, médecin.</translation>
    </message>
</context>
<context>
    <name>EmergencySheet</name>
    <message>
        <source>In an emergency: the plan goes on</source>
        <translation>En cas d’urgence&#xa0;: suite du plan</translation>
    </message>
    <message>
        <source>In an emergency call</source>
        <translation>En cas d’urgence, appelez</translation>
    </message>
    <message>
        <source>not entered: write it here</source>
        <translation>non saisi&#xa0;: écrivez-le ici</translation>
    </message>
    <message>
        <source>Where to come to</source>
        <translation>Où venir</translation>
    </message>
    <message>
        <source>Where to come to:</source>
        <translation>Où venir&#xa0;:</translation>
    </message>
    <message>
        <source>Site without a name</source>
        <translation>Site sans nom</translation>
    </message>
    <message>
        <source>The water lies %1 above sea level: tell the physician.</source>
        <translation>L’eau est à %1 au-dessus du niveau de la mer&#xa0;: dites-le au médecin.</translation>
    </message>
    <message>
        <source>The water lies %1 below sea level: tell the physician.</source>
        <translation>L’eau est à %1 au-dessous du niveau de la mer&#xa0;: dites-le au médecin.</translation>
    </message>
    <message>
        <source>Guests are taken to %1; the bottom lies at %2.</source>
        <translation>Les clients sont emmenés à %1&#x202f;; le fond est à %2.</translation>
    </message>
    <message>
        <source>Guests are taken to %1.</source>
        <translation>Les clients sont emmenés à %1.</translation>
    </message>
    <message>
        <source>Oxygen is at</source>
        <translation>L’oxygène est à</translation>
    </message>
    <message>
        <source>First aid kit is at</source>
        <translation>La trousse de secours est à</translation>
    </message>
    <message>
        <source>Phone or radio</source>
        <translation>Téléphone ou radio</translation>
    </message>
    <message>
        <source>Nearest chamber, how far</source>
        <translation>Caisson le plus proche, distance</translation>
    </message>
    <message>
        <source>Way out for the ambulance</source>
        <translation>Sortie vers l’ambulance</translation>
    </message>
    <message>
        <source>Who gives first aid</source>
        <translation>Qui donne les premiers secours</translation>
    </message>
    <message>
        <source>Position for rescuers</source>
        <translation>Position pour les secours</translation>
    </message>
    <message>
        <source>Who gives first aid today</source>
        <translation>Qui donne les premiers secours aujourd’hui</translation>
    </message>
    <message>
        <source>Local rules, the centre&apos;s own plan and the rescue service come first. Put right by hand what has changed.</source>
        <translation>Les règles locales, le plan du centre et les secours passent avant. Corrigez à la main ce qui a changé.</translation>
    </message>
</context>
<context>
    <name>Errors</name>
    <message>
        <source>%1 cannot be read (%2). Check the name and the permissions.</source>
        <translation>%1 ne peut pas être lu (%2). Vérifiez le nom et les droits.</translation>
    </message>
    <message>
        <source>%1 cannot be written (%2). Choose another folder or free some space.</source>
        <translation>%1 ne peut pas être écrit (%2). Choisissez un autre dossier ou libérez de la place.</translation>
    </message>
    <message>
        <source>%1 is too large (%2 bytes; at most %3). Choose another file.</source>
        <translation>%1 est trop gros (%2 octets&#x202f;; %3 au plus). Choisissez un autre fichier.</translation>
    </message>
    <message>
        <source>Not valid JSON at %1: %2. Correct the text there.</source>
        <translation>JSON non valide à %1&#xa0;: %2. Corrigez le texte à cet endroit.</translation>
    </message>
    <message>
        <source>Nested too deep at %1 (at most %2 levels). This is not a session file.</source>
        <translation>Imbrication trop profonde à %1 (%2 niveaux au plus). Ce n’est pas un fichier de séance.</translation>
    </message>
    <message>
        <source>The file has version %1; this program reads up to %2. Update Leadline.</source>
        <translation>Le fichier a la version %1&#x202f;; ce programme lit jusqu’à la %2. Mettez Leadline à jour.</translation>
    </message>
    <message>
        <source>%1 %2 was not found. It may have been removed meanwhile.</source>
        <translation>%1 %2 est introuvable. L’élément a peut-être été retiré entre-temps.</translation>
    </message>
    <message>
        <source>The records in %1 cannot be used (%2). Check the disk and the permissions, or choose another file with --database.</source>
        <translation>Le registre dans %1 ne peut pas être utilisé (%2). Vérifiez le disque et les droits, ou choisissez un autre fichier avec --database.</translation>
    </message>
    <message>
        <source>The records in %1 were written by a newer Leadline (schema %2; this one knows %3). Update Leadline; nothing was changed.</source>
        <translation>Le registre dans %1 a été écrit par un Leadline plus récent (schéma %2&#x202f;; celui-ci connaît le %3). Mettez Leadline à jour&#x202f;; rien n’a été modifié.</translation>
    </message>
    <message>
        <source>The records in %1 are in use by another program. Close it and try again.</source>
        <translation>Le registre dans %1 est utilisé par un autre programme. Fermez-le et réessayez.</translation>
    </message>
    <message>
        <source>The list has %1 rows; at most %2 can be read. Split it.</source>
        <translation>La liste a %1 lignes&#x202f;; on peut en lire %2 au plus. Divisez-la.</translation>
    </message>
    <message>
        <source>The list has %1 columns; at most %2 can be read. Take out those that are not needed.</source>
        <translation>La liste a %1 colonnes&#x202f;; on peut en lire %2 au plus. Retirez celles qui ne servent pas.</translation>
    </message>
    <message>
        <source>A quotation mark is opened in %1 of the list and never closed. Close it, or save the list anew as CSV.</source>
        <translation>Un guillemet est ouvert dans %1 de la liste et jamais fermé. Fermez-le, ou réenregistrez la liste en CSV.</translation>
    </message>
    <message>
        <source>There are no rows to be read. Save the list as CSV (comma-separated values) and choose that file.</source>
        <translation>Il n’y a aucune ligne à lire. Enregistrez la liste en CSV (valeurs séparées par des virgules) et choisissez ce fichier.</translation>
    </message>
    <message>
        <source>%1 is damaged or holds no records (%2). Put back a copy: Records, Copies of the records. The damaged file is kept.</source>
        <translation>%1 est endommagé ou ne contient pas de registre (%2). Restaurez une copie&#xa0;: Registre, Copies du registre. Le fichier endommagé est conservé.</translation>
    </message>
    <message>
        <source>The records file %1 is not there, or another one took its place. Bring the folder or disk back and try again; until then nothing can be saved.</source>
        <translation>Le fichier du registre %1 n’est plus là, ou un autre a pris sa place. Remettez le dossier ou le disque et réessayez&#x202f;; d’ici là, rien ne peut être enregistré.</translation>
    </message>
    <message>
        <source>The records in %1 may not be written (%2). Change the permissions of the file and its folder, then try again.</source>
        <translation>Le registre dans %1 ne peut pas être modifié (%2). Changez les droits du fichier et de son dossier, puis réessayez.</translation>
    </message>
    <message>
        <source>There is no room on the disk for %1 (%2). Free some space and try again; what was saved before stands.</source>
        <translation>Il n’y a plus de place sur le disque pour %1 (%2). Libérez de la place et réessayez&#x202f;; ce qui était enregistré avant est intact.</translation>
    </message>
    <message>
        <source>%1 holds no records of Leadline (%2). Choose another file; nothing was changed.</source>
        <translation>%1 ne contient pas de registre de Leadline (%2). Choisissez un autre fichier&#x202f;; rien n’a été modifié.</translation>
    </message>
    <message>
        <source>Stopped; nothing was changed (%1).</source>
        <translation>Arrêté&#x202f;; rien n’a été modifié (%1).</translation>
    </message>
    <message>
        <source>%1: %2 is not %3. Correct it.</source>
        <translation>%1&#xa0;: %2 n’est pas %3. Corrigez.</translation>
    </message>
    <message>
        <source>%1: there is no field &quot;%2&quot;. Remove it or use one of: %3.</source>
        <translation>%1&#xa0;: le champ «&#xa0;%2&#xa0;» n’existe pas. Retirez-le ou utilisez l’un de ceux-ci&#xa0;: %3.</translation>
    </message>
    <message>
        <source>%1: the field &quot;%2&quot; is missing. Add it.</source>
        <translation>%1&#xa0;: le champ «&#xa0;%2&#xa0;» manque. Ajoutez-le.</translation>
    </message>
    <message>
        <source>%1: %2 is outside %3. Enter a value in that range.</source>
        <translation>%1&#xa0;: %2 est hors de %3. Entrez une valeur dans cet intervalle.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a choice. Use one of: %3.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» n’est pas un choix possible. Utilisez l’un de ceux-ci&#xa0;: %3.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; does not fit. Wanted: %3.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» ne convient pas. Attendu&#xa0;: %3.</translation>
    </message>
    <message>
        <source>%1: has %2 entries, wanted %3.</source>
        <translation>%1&#xa0;: a %2 entrées, attendu&#xa0;: %3.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a date. Write it as 2026-07-31.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» n’est pas une date. Écrivez-la ainsi&#xa0;: 2026-07-31.</translation>
    </message>
    <message>
        <source>%1: born on %2, after the session on %3. Correct the date.</source>
        <translation>%1&#xa0;: naissance le %2, après la séance du %3. Corrigez la date.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is there twice. Give each its own.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» existe deux fois. Donnez à chacun le sien.</translation>
    </message>
    <message>
        <source>%1: nothing is called &quot;%2&quot;. Correct the name or add what it names.</source>
        <translation>%1&#xa0;: rien ne s’appelle «&#xa0;%2&#xa0;». Corrigez le nom ou ajoutez ce qu’il désigne.</translation>
    </message>
    <message>
        <source>%1: %2 bar is over the working pressure of %3 bar. Read the gauge again; never use an overfilled cylinder.</source>
        <translation>%1&#xa0;: %2&#xa0;bar dépasse la pression de service de %3&#xa0;bar. Relisez le manomètre&#x202f;; n’utilisez jamais une bouteille trop gonflée.</translation>
    </message>
    <message>
        <source>%1: %2 min is not later than the point before (%3 min). Times must grow.</source>
        <translation>%1&#xa0;: %2&#xa0;min n’est pas après le point précédent (%3&#xa0;min). Les temps doivent croître.</translation>
    </message>
    <message>
        <source>%1: starts at %2, while another lasts until %3. Correct the times.</source>
        <translation>%1&#xa0;: commence à %2, alors qu’une autre dure jusqu’à %3. Corrigez les heures.</translation>
    </message>
    <message>
        <source>%1: ends at %2, before it starts at %3. Correct the times.</source>
        <translation>%1&#xa0;: finit à %2, avant de commencer à %3. Corrigez les heures.</translation>
    </message>
    <message>
        <source>%1: %2 m; the dive must start and end at the surface (0 m).</source>
        <translation>%1&#xa0;: %2&#xa0;m&#x202f;; la plongée doit commencer et finir à la surface (0&#xa0;m).</translation>
    </message>
    <message>
        <source>%1: the log is of %2; here it is %3. Open this session&apos;s own log, or enter it by hand.</source>
        <translation>%1&#xa0;: le relevé est du %2&#x202f;; ici c’est le %3. Ouvrez le relevé de cette séance, ou saisissez-le à la main.</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>personne</translation>
    </message>
    <message>
        <source>%1: %2 bar is more than the %3 bar at the start. Read the gauge again.</source>
        <translation>%1&#xa0;: %2&#xa0;bar, c’est plus que les %3&#xa0;bar du début. Relisez le manomètre.</translation>
    </message>
    <message>
        <source>The health vault is not set up yet. Set it up in the menu Health vault.</source>
        <translation>Le coffre santé n’est pas encore créé. Créez-le dans le menu Coffre santé.</translation>
    </message>
    <message>
        <source>These records have a health vault already. Unlock it instead.</source>
        <translation>Ce registre a déjà un coffre santé. Ouvrez-le plutôt.</translation>
    </message>
    <message>
        <source>The health vault is locked. Unlock it first.</source>
        <translation>Le coffre santé est verrouillé. Ouvrez-le d’abord.</translation>
    </message>
    <message>
        <source>The key in this computer&apos;s keyring does not open the vault. Use another way.</source>
        <translation>La clé du trousseau de cet ordinateur n’ouvre pas le coffre. Utilisez un autre moyen.</translation>
    </message>
    <message>
        <source>This recovery key does not open the vault. Perhaps a newer one was made.</source>
        <translation>Cette clé de secours n’ouvre pas le coffre. Une plus récente a peut-être été faite.</translation>
    </message>
    <message>
        <source>This passphrase does not open the vault.</source>
        <translation>Cette phrase secrète n’ouvre pas le coffre.</translation>
    </message>
    <message>
        <source>After wrong tries the vault waits. Try again in %1 s.</source>
        <translation>Après des essais manqués, le coffre attend. Réessayez dans %1&#xa0;s.</translation>
    </message>
    <message>
        <source>This is the last way into the vault. Add another one first.</source>
        <translation>C’est le dernier moyen d’ouvrir le coffre. Ajoutez-en d’abord un autre.</translation>
    </message>
    <message>
        <source>The passphrase has %1 characters; it needs %2. A few words in a row are easy to keep.</source>
        <translation>La phrase secrète a %1 caractères&#x202f;; il en faut %2. Quelques mots à la suite se retiennent facilement.</translation>
    </message>
    <message>
        <source>This is no recovery key: a sign is missing or mistyped. Compare it with the paper.</source>
        <translation>Ce n’est pas une clé de secours&#xa0;: un signe manque ou est mal saisi. Comparez avec le papier.</translation>
    </message>
    <message>
        <source>%1 %2 cannot be opened: it is damaged, or was changed outside Leadline. Nothing was removed. Take a backup, and ask the guest again.</source>
        <translation>%1 %2 ne peut pas être ouvert&#xa0;: endommagé, ou modifié hors de Leadline. Rien n’a été retiré. Faites une copie du registre et demandez à nouveau au client.</translation>
    </message>
    <message>
        <source>Not enough memory to check the passphrase (%1 needed). Close other programs and try again.</source>
        <translation>Pas assez de mémoire pour vérifier la phrase secrète (il faut %1). Fermez d’autres programmes et réessayez.</translation>
    </message>
    <message>
        <source>This computer&apos;s keyring does not answer (%1). Use the passphrase or the recovery key.</source>
        <translation>Le trousseau de cet ordinateur ne répond pas (%1). Utilisez la phrase secrète ou la clé de secours.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range</comment>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>characters</source>
        <translation>caractères</translation>
    </message>
    <message>
        <source>bytes</source>
        <translation>octets</translation>
    </message>
</context>
<context>
    <name>Findings</name>
    <message>
        <source>for one instructor</source>
        <translation>pour un moniteur</translation>
    </message>
    <message>
        <source>even with an assistant</source>
        <translation>même avec un assistant</translation>
    </message>
    <message>
        <source>in this visibility</source>
        <translation>avec cette visibilité</translation>
    </message>
    <message>
        <source>in this current</source>
        <translation>avec ce courant</translation>
    </message>
    <message>
        <source>in these waves</source>
        <translation>avec ces vagues</translation>
    </message>
    <message>
        <source>with a child in the group</source>
        <translation>avec un enfant dans la palanquée</translation>
    </message>
    <message>
        <source>when a guest shares no language with the staff</source>
        <translation>si un client n’a aucune langue en commun avec les encadrants</translation>
    </message>
    <message>
        <source>with a nervous guest in the group</source>
        <translation>avec un client anxieux dans la palanquée</translation>
    </message>
    <message>
        <source>Planned to %1, deeper than the %2 allowed.</source>
        <translation>Prévu à %1, plus profond que les %2 autorisés.</translation>
    </message>
    <message>
        <source>Plan no deeper than %1.</source>
        <translation>Ne prévoyez pas plus profond que %1.</translation>
    </message>
    <message>
        <source>Planned to %1; %2 is usual for a first dive.</source>
        <translation>Prévu à %1&#x202f;; %2 est l’usage pour une première plongée.</translation>
    </message>
    <message>
        <source>Stay shallower unless the site asks for it.</source>
        <translation>Restez moins profond, sauf si le site l’impose.</translation>
    </message>
    <message>
        <source>The bottom lies at %1; no more than %2 is wanted below first-time guests.</source>
        <translation>Le fond est à %1&#x202f;; sous des débutants, %2 au plus sont souhaités.</translation>
    </message>
    <message>
        <source>Choose a shallower spot, or keep guests over a slope or a line.</source>
        <translation>Choisissez un endroit moins profond, ou gardez les clients au-dessus d’une pente ou près d’un bout.</translation>
    </message>
    <message>
        <source>The water has %1, colder than the %2 wanted.</source>
        <translation>L’eau est à %1, plus froide que les %2 souhaités.</translation>
    </message>
    <message>
        <source>Choose warmer water, a shorter dive or warmer suits.</source>
        <translation>Choisissez une eau plus chaude, une plongée plus courte ou des combinaisons plus chaudes.</translation>
    </message>
    <message>
        <source>Planned for %1; at most %2 while the water is below %3.</source>
        <translation>Prévu pour %1&#x202f;; %2 au plus tant que l’eau est sous %3.</translation>
    </message>
    <message>
        <source>Shorten the dive to %1.</source>
        <translation>Raccourcissez la plongée à %1.</translation>
    </message>
    <message>
        <source>Visibility is %1; at least %2 is wanted.</source>
        <translation>La visibilité est de %1&#x202f;; au moins %2 sont souhaités.</translation>
    </message>
    <message>
        <source>Take fewer guests within arm&apos;s reach, or do not dive.</source>
        <translation>Prenez moins de clients, à portée de main, ou ne plongez pas.</translation>
    </message>
    <message>
        <source>There is more current than first-time guests should meet.</source>
        <translation>Il y a plus de courant que des débutants ne devraient en rencontrer.</translation>
    </message>
    <message>
        <source>Wait for slack water or choose a sheltered spot.</source>
        <translation>Attendez l’étale ou choisissez un endroit abrité.</translation>
    </message>
    <message>
        <source>Waves reach %1; at most %2 is wanted.</source>
        <translation>Les vagues atteignent %1&#x202f;; %2 au plus sont souhaités.</translation>
    </message>
    <message>
        <source>Choose a sheltered entry or do not dive.</source>
        <translation>Choisissez une mise à l’eau abritée ou ne plongez pas.</translation>
    </message>
    <message>
        <source>Goes up at %1, faster than the %2 allowed.</source>
        <translation>Remonte à %1, plus vite que les %2 autorisés.</translation>
    </message>
    <message>
        <source>Give the way up more time.</source>
        <translation>Prévoyez plus de temps pour la remontée.</translation>
    </message>
    <message>
        <source>Goes down at %1, faster than the %2 wanted.</source>
        <translation>Descend à %1, plus vite que les %2 souhaités.</translation>
    </message>
    <message>
        <source>Give the way down more time: ears need it.</source>
        <translation>Prévoyez plus de temps pour la descente&#xa0;: les oreilles en ont besoin.</translation>
    </message>
    <message>
        <source>Clearing every %1 is too seldom: the tube to the ear can lock after %2.</source>
        <translation>Équilibrer tous les %1 est trop rare&#xa0;: la trompe peut se bloquer après %2.</translation>
    </message>
    <message>
        <source>Clear in smaller steps.</source>
        <translation>Équilibrez par plus petits pas.</translation>
    </message>
    <message>
        <source>No rules are chosen, so no limit of depth, age or ratio is checked.</source>
        <translation>Aucune règle n’est choisie&#xa0;: aucune limite de profondeur, d’âge ou d’effectif n’est vérifiée.</translation>
    </message>
    <message>
        <source>Tick the rules that apply on the Site tab.</source>
        <translation>Cochez les règles applicables dans l’onglet Site.</translation>
    </message>
    <message>
        <source>No emergency number is entered for the site.</source>
        <translation>Aucun numéro d’urgence n’est saisi pour le site.</translation>
    </message>
    <message>
        <source>Enter the number to call; it is printed on every card.</source>
        <translation>Saisissez le numéro à appeler&#x202f;; il est imprimé sur chaque fiche.</translation>
    </message>
    <message>
        <source>Is %1; the least age is %2.</source>
        <translation>Âge&#xa0;: %1&#xa0;ans&#x202f;; l’âge minimal est de %2&#xa0;ans.</translation>
    </message>
    <message>
        <source>Offer something else: no dive before %1.</source>
        <translation>Proposez autre chose&#xa0;: pas de plongée avant %1&#xa0;ans.</translation>
    </message>
    <message>
        <source>The birth date is missing, so no age limit can be checked.</source>
        <translation>La date de naissance manque&#xa0;: aucune limite d’âge ne peut être vérifiée.</translation>
    </message>
    <message>
        <source>Enter the birth date.</source>
        <translation>Saisissez la date de naissance.</translation>
    </message>
    <message>
        <source>Is %1 and no guardian&apos;s consent is on record.</source>
        <translation>Âge&#xa0;: %1&#xa0;ans&#x202f;; aucune autorisation du représentant légal n’est enregistrée.</translation>
    </message>
    <message>
        <source>Get a guardian&apos;s signed consent and tick it.</source>
        <translation>Faites signer l’autorisation par un représentant légal et cochez-la.</translation>
    </message>
    <message>
        <source>Is in no group.</source>
        <translation>N’est dans aucune palanquée.</translation>
    </message>
    <message>
        <source>Put the guest into a group.</source>
        <translation>Mettez le client dans une palanquée.</translation>
    </message>
    <message>
        <source>Reads %1, which nobody leading the group speaks.</source>
        <translation>Langue de lecture&#xa0;: %1&#x202f;; personne parmi les encadrants de la palanquée ne la parle.</translation>
    </message>
    <message>
        <source>Swap groups, find a translator, or brief with pictures and a small group.</source>
        <translation>Changez de palanquée, trouvez un interprète, ou faites le briefing avec des images et une petite palanquée.</translation>
    </message>
    <message>
        <source>Has no cylinder.</source>
        <translation>N’a pas de bouteille.</translation>
    </message>
    <message>
        <source>Hand one out and enter its pressure.</source>
        <translation>Donnez-en une et saisissez sa pression.</translation>
    </message>
    <message>
        <source>Still missing: %1.</source>
        <translation>Manque encore&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Fit it and enter the size or number.</source>
        <translation>Faites essayer, puis saisissez la taille ou le numéro.</translation>
    </message>
    <message>
        <source>Leads a group and has no cylinder entered.</source>
        <translation>Mène une palanquée et n’a pas de bouteille saisie.</translation>
    </message>
    <message>
        <source>Enter it, so that the air for bringing a guest up can be checked.</source>
        <translation>Saisissez-la, pour que l’air nécessaire pour remonter un client puisse être vérifié.</translation>
    </message>
    <message>
        <source>The health questions are still open.</source>
        <translation>Les questions de santé sont encore ouvertes.</translation>
    </message>
    <message>
        <source>Go through them with the guest, or take the centre&apos;s own form.</source>
        <translation>Passez-les en revue avec le client, ou prenez le formulaire du centre.</translation>
    </message>
    <message>
        <source>The health questions call for a physician.</source>
        <translation>Les questions de santé exigent un médecin.</translation>
    </message>
    <message>
        <source>Ask the guest for a physician&apos;s written release to dive, and tick it when you have read it.</source>
        <translation>Demandez au client l’accord écrit d’un médecin pour plonger, et cochez-le quand vous l’avez lu.</translation>
    </message>
    <message>
        <source>Does not dive, by the health questions.</source>
        <translation>Ne plonge pas, d’après les questions de santé.</translation>
    </message>
    <message>
        <source>Tell the guest in private, and offer something else. No release changes this.</source>
        <translation>Dites-le au client en privé et proposez autre chose. Aucun accord médical n’y change rien.</translation>
    </message>
    <message>
        <source>Not today, by the questions of the day.</source>
        <translation>Pas aujourd’hui, d’après les questions du jour.</translation>
    </message>
    <message>
        <source>Tell the guest in private, and offer another day.</source>
        <translation>Dites-le au client en privé et proposez un autre jour.</translation>
    </message>
    <message>
        <source>Dives with care, by the questions of the day.</source>
        <translation>Plonge avec précaution, d’après les questions du jour.</translation>
    </message>
    <message>
        <source>Talk it over with the guest, see that all were asked, and when in doubt do not dive today.</source>
        <translation>Parlez-en avec le client, vérifiez que tout a été demandé et, dans le doute, ne plongez pas aujourd’hui.</translation>
    </message>
    <message>
        <source>Today&apos;s questions are still open.</source>
        <translation>Les questions du jour sont encore ouvertes.</translation>
    </message>
    <message>
        <source>Ask them before kitting up.</source>
        <translation>Posez-les avant de s’équiper.</translation>
    </message>
    <message>
        <source>The day of the health check is not on record.</source>
        <translation>Le jour du contrôle santé n’est pas enregistré.</translation>
    </message>
    <message>
        <source>Go through the questions again with the guest.</source>
        <translation>Reprenez les questions avec le client.</translation>
    </message>
    <message>
        <source>The health check of %1 counts for %2 months and is out of date.</source>
        <translation>Le contrôle santé du %1 vaut %2 mois et il est périmé.</translation>
    </message>
    <message>
        <source>The health check or the physician&apos;s release has the date %1, after the session.</source>
        <translation>Le contrôle santé ou l’accord du médecin porte la date du %1, après la séance.</translation>
    </message>
    <message>
        <source>Correct the date, or go through the questions again.</source>
        <translation>Corrigez la date, ou reprenez les questions.</translation>
    </message>
    <message>
        <source>The day of the physician&apos;s release is not on record.</source>
        <translation>Le jour de l’accord du médecin n’est pas enregistré.</translation>
    </message>
    <message>
        <source>Read the release and enter its date; without one nobody can tell whether it still counts.</source>
        <translation>Lisez l’accord et saisissez sa date&#x202f;; sans date, nul ne sait s’il vaut encore.</translation>
    </message>
    <message>
        <source>The physician&apos;s release of %1 is out of date.</source>
        <translation>L’accord du médecin du %1 est périmé.</translation>
    </message>
    <message>
        <source>Ask the guest for a new one.</source>
        <translation>Demandez-en un nouveau au client.</translation>
    </message>
    <message>
        <source>The physician&apos;s release of %1 is older than the health check.</source>
        <translation>L’accord du médecin du %1 est plus ancien que le contrôle santé.</translation>
    </message>
    <message>
        <source>Make sure that the physician knew what the guest answered since; else ask for a new one.</source>
        <translation>Assurez-vous que le médecin savait ce que le client a répondu depuis&#x202f;; sinon, demandez un nouvel accord.</translation>
    </message>
    <message>
        <source>Nobody has signed the health check.</source>
        <translation>Personne n’a signé le contrôle santé.</translation>
    </message>
    <message>
        <source>Have the guest sign, and for a minor a guardian too.</source>
        <translation>Faites signer le client et, pour un mineur, aussi un représentant légal.</translation>
    </message>
    <message>
        <source>It is not on record which questions were asked.</source>
        <translation>Les questions posées ne sont pas enregistrées.</translation>
    </message>
    <message>
        <source>The questions were those of an earlier edition (%1).</source>
        <translation>Les questions étaient celles d’une édition antérieure (%1).</translation>
    </message>
    <message>
        <source>At the next check the present ones are asked.</source>
        <translation>Au prochain contrôle, les questions actuelles seront posées.</translation>
    </message>
    <message>
        <source>%1 places used, %2 allowed %3.</source>
        <translation>%1 places prises, %2 autorisées %3.</translation>
    </message>
    <message>
        <source>Move guests to another group, add an instructor, or dive in turns.</source>
        <translation>Déplacez des clients dans une autre palanquée, ajoutez un moniteur, ou plongez à tour de rôle.</translation>
    </message>
    <message>
        <source>Is counted on in %1 groups at once.</source>
        <translation>Figure dans %1 palanquées à la fois.</translation>
    </message>
    <message>
        <source>Give each group staff of its own, or let the groups dive one after the other in sessions of their own.</source>
        <translation>Donnez à chaque palanquée ses propres encadrants, ou faites plonger les palanquées l’une après l’autre, chacune dans sa séance.</translation>
    </message>
    <message>
        <source>Has no instructor.</source>
        <translation>N’a pas de moniteur.</translation>
    </message>
    <message>
        <source>Name an instructor for the group.</source>
        <translation>Désignez un moniteur pour la palanquée.</translation>
    </message>
    <message>
        <source>Has no guests.</source>
        <translation>N’a pas de clients.</translation>
    </message>
    <message>
        <source>Add guests or remove it.</source>
        <translation>Ajoutez des clients ou supprimez-la.</translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>Pas encore de clients.</translation>
    </message>
    <message>
        <source>Add the first one on the Roster tab.</source>
        <translation>Ajoutez le premier dans l’onglet Clients.</translation>
    </message>
    <message>
        <source>Would surface with %1; %2 must be left. The reserve is reached after %3.</source>
        <translation>Ferait surface avec %1&#x202f;; il doit rester %2. La réserve est atteinte après %3.</translation>
    </message>
    <message>
        <source>Shorten the dive, go shallower, or give a bigger or fuller cylinder.</source>
        <translation>Raccourcissez la plongée, restez moins profond, ou donnez une bouteille plus grande ou plus pleine.</translation>
    </message>
    <message>
        <source>Bringing two up from the deepest point takes %1, more than the reserve of %2.</source>
        <translation>Remonter à deux du point le plus profond demande %1, plus que la réserve de %2.</translation>
    </message>
    <message>
        <source>Have the guest signal at the higher pressure; the card says so.</source>
        <translation>Faites signaler le client à la pression la plus haute&#x202f;; la fiche le dit.</translation>
    </message>
    <message>
        <source>All last the planned dive in only %1 of 100 such dives.</source>
        <translation>L’air ne suffit à tous pour la plongée prévue que dans %1 plongées sur 100.</translation>
    </message>
    <message>
        <source>See what would buy more minutes on the Gas tab, or plan a shorter dive.</source>
        <translation>Voyez dans l’onglet Air ce qui donnerait des minutes de plus, ou prévoyez une plongée plus courte.</translation>
    </message>
    <message>
        <source>If a guest&apos;s air fails, this cylinder brings both up in only %1 of 100 cases.</source>
        <translation>En cas de panne d’air d’un client, cette bouteille ne remonte les deux que dans %1 cas sur 100.</translation>
    </message>
    <message>
        <source>Take a bigger or fuller cylinder, or stay less deep.</source>
        <translation>Prenez une bouteille plus grande ou plus pleine, ou restez moins profond.</translation>
    </message>
    <message>
        <source>Is planned to have %1 at the ascent; bringing a guest up takes %2.</source>
        <translation>Devrait avoir %1 à la remontée&#x202f;; remonter un client demande %2.</translation>
    </message>
    <message>
        <source>Take a bigger or fuller cylinder, or shorten the dive.</source>
        <translation>Prenez une bouteille plus grande ou plus pleine, ou raccourcissez la plongée.</translation>
    </message>
    <message>
        <source>Would make dive number %1 today; at most %2 are wanted.</source>
        <translation>Ferait la plongée n°&#xa0;%1 aujourd’hui&#x202f;; %2 au plus sont souhaitées.</translation>
    </message>
    <message>
        <source>Have somebody else lead this group, or dive on another day.</source>
        <translation>Faites mener cette palanquée par quelqu’un d’autre, ou plongez un autre jour.</translation>
    </message>
    <message>
        <source>Would come up %1 times today; at most %2 are wanted.</source>
        <translation>Remonterait %1 fois aujourd’hui&#x202f;; %2 au plus sont souhaitées.</translation>
    </message>
    <message>
        <source>Plan fewer training ascents, or share them with others.</source>
        <translation>Prévoyez moins de remontées d’exercice, ou partagez-les avec d’autres.</translation>
    </message>
    <message>
        <source>Dives on day %1 in a row; at most %2 are wanted.</source>
        <translation>Jour de plongée n°&#xa0;%1 de suite&#x202f;; %2 au plus sont souhaités.</translation>
    </message>
    <message>
        <source>Plan a day without diving.</source>
        <translation>Prévoyez un jour sans plongée.</translation>
    </message>
    <message>
        <source>Would be in the water for %1 with %2 left before a stop is needed: could not go straight up with a guest.</source>
        <translation>Serait dans l’eau pendant %1, alors qu’il reste %2 avant qu’un palier soit nécessaire&#xa0;: ne pourrait pas remonter directement avec un client.</translation>
    </message>
    <message>
        <source>Dive shallower or shorter, wait longer, or have somebody else lead.</source>
        <translation>Plongez moins profond ou moins longtemps, attendez plus, ou faites mener par quelqu’un d’autre.</translation>
    </message>
    <message>
        <source>May be cold after %1; %2 are planned.</source>
        <translation>Peut avoir froid après %1&#x202f;; %2 sont prévues.</translation>
    </message>
    <message>
        <source>Give a warmer suit or shorten the dive. Shivering ends it at once.</source>
        <translation>Donnez une combinaison plus chaude ou raccourcissez la plongée. Des frissons y mettent fin aussitôt.</translation>
    </message>
    <message>
        <source>With %1 of lead may be heavier at depth than the %2 the BCD is likely to lift.</source>
        <translation>Avec %1 de lest, peut être plus lourd au fond que les %2 que le gilet peut sans doute porter.</translation>
    </message>
    <message>
        <source>Take off lead, or give a BCD with more lift.</source>
        <translation>Retirez du lest, ou donnez un gilet qui porte plus.</translation>
    </message>
    <message>
        <source>With %1 of lead is likely to float up near the end, with little air left; %2 to %3 is expected.</source>
        <translation>Avec %1 de lest, remontera sans doute sans le vouloir vers la fin, avec peu d’air&#x202f;; %2 à %3 sont attendus.</translation>
    </message>
    <message>
        <source>Check at the surface, and take spare lead along.</source>
        <translation>Vérifiez en surface et emportez du lest de rechange.</translation>
    </message>
    <message>
        <source>Carries %1 of lead; %2 to %3 is expected.</source>
        <translation>Porte %1 de lest&#x202f;; %2 à %3 sont attendus.</translation>
    </message>
    <message>
        <source>Check at the surface before going down.</source>
        <translation>Vérifiez en surface avant de descendre.</translation>
    </message>
    <message>
        <source>Went to %1; %2 was planned.</source>
        <translation>Profondeur atteinte&#xa0;: %1&#x202f;; %2 étaient prévus.</translation>
    </message>
    <message>
        <source>Talk it over and hold the depth next time.</source>
        <translation>Parlez-en et tenez la profondeur la prochaine fois.</translation>
    </message>
    <message>
        <source>Went to %1, deeper than the %2 allowed.</source>
        <translation>Profondeur atteinte&#xa0;: %1, plus que les %2 autorisés.</translation>
    </message>
    <message>
        <source>Report it as the centre asks, and ask how the guest feels.</source>
        <translation>Signalez-le comme le centre le demande, et demandez au client comment il se sent.</translation>
    </message>
    <message>
        <source>Came back with %1; %2 should have been left.</source>
        <translation>Retour avec %1&#x202f;; il devait rester %2.</translation>
    </message>
    <message>
        <source>Use the guest&apos;s own breathing rate for the next plan.</source>
        <translation>Pour le prochain plan, prenez la consommation propre du client.</translation>
    </message>
    <message>
        <source>Was in the water for %1; %2 was planned.</source>
        <translation>Temps dans l’eau&#xa0;: %1&#x202f;; %2 étaient prévues.</translation>
    </message>
    <message>
        <source>Check the air and the cold for the longer time.</source>
        <translation>Vérifiez l’air et le froid pour la durée plus longue.</translation>
    </message>
    <message>
        <source>Has no entry in the log.</source>
        <translation>N’a rien dans le relevé.</translation>
    </message>
    <message>
        <source>Enter the pressures and the time.</source>
        <translation>Saisissez les pressions et le temps.</translation>
    </message>
    <message>
        <source>%1 went in, %2 counted back.</source>
        <translation>%1 mis à l’eau, %2 comptés au retour.</translation>
    </message>
    <message>
        <source>Count again, two people, by name. Nobody leaves before it agrees.</source>
        <translation>Recomptez, à deux, nom par nom. Personne ne part avant que le compte soit juste.</translation>
    </message>
    <message>
        <source>Group %1</source>
        <translation>Palanquée %1</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Séance</translation>
    </message>
</context>
<context>
    <name>GasTab</name>
    <message>
        <source>First of %1, likely %2</source>
        <translation>1er de %1, prob. %2</translation>
    </message>
    <message>
        <source>First, likely %1</source>
        <translation>1er, prob. %1</translation>
    </message>
    <message>
        <source>the instructor</source>
        <translation>le moniteur</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1: no instructor named yet, so nobody to share air with is known.</source>
        <translation>%1&#xa0;: pas encore de moniteur désigné&#x202f;; on ne sait donc pas avec qui partager l’air.</translation>
    </message>
    <message>
        <source>%1: no cylinder is known for %2, so sharing it is not reckoned.</source>
        <translation>%1&#xa0;: aucune bouteille connue pour %2&#x202f;; le partage d’air n’est donc pas calculé.</translation>
    </message>
    <message>
        <source>%1: if a guest&apos;s air fails at depth, both reach the surface on the cylinder of %2 in %3.</source>
        <translation>%1&#xa0;: en cas de panne d’air d’un client au fond, les chances que les deux atteignent la surface sur la bouteille de %2 sont de %3.</translation>
    </message>
    <message>
        <source>within the standard error of the runs</source>
        <translation>dans l’erreur type des tirages</translation>
    </message>
    <message>
        <source>within three standard errors of the runs</source>
        <translation>dans trois erreurs types des tirages</translation>
    </message>
    <message>
        <source>further apart than the runs explain: do not rely on it</source>
        <translation>plus éloigné que les tirages ne l’expliquent&#xa0;: ne pas s’y fier</translation>
    </message>
    <message>
        <source>%1, all last: %2 of 100 in closed form (first of several lognormals: David and Nagaraja, Order Statistics, 2003, from memory); %3 ± %4 of 100 in %5 runs, %6.</source>
        <translation>%1, l’air suffit à tous&#xa0;: %2 sur 100 en forme fermée (premier de plusieurs log-normales&#xa0;: David et Nagaraja, Order Statistics, 2003, de mémoire)&#x202f;; %3 ± %4 sur 100 en %5 tirages, %6.</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>plus de %1</translation>
    </message>
    <message>
        <source>%1 to over %2</source>
        <translation>%1 à plus de %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: nobody in this group yet.</source>
        <translation>%1&#xa0;: encore personne dans cette palanquée.</translation>
    </message>
    <message>
        <source>%1: too many guests in one group for a forecast. Form groups of at most 100.</source>
        <translation>%1&#xa0;: trop de clients dans une palanquée pour une prévision. Formez des palanquées de 100 au plus.</translation>
    </message>
    <message>
        <source>%1: no cylinder is known. Enter cylinder and pressure in the table.</source>
        <translation>%1&#xa0;: aucune bouteille connue. Saisissez bouteille et pression dans le tableau.</translation>
    </message>
    <message>
        <source>%1 is likely first at %2, after about %3.</source>
        <translation>%1 devrait atteindre %2 en premier, après %3 environ.</translation>
    </message>
    <message>
        <source>%1 is at %2 after about %3.</source>
        <translation>%1 est à %2 après %3 environ.</translation>
    </message>
    <message>
        <source>%1: the air does not last. %2 All last the planned %3 in %4 dives.</source>
        <translation>%1&#xa0;: l’air ne suffit pas. %2 Plongées où l’air suffit à tous pour les %3 prévues&#xa0;: %4.</translation>
    </message>
    <message>
        <source>All last the planned %1 in %2 dives.</source>
        <translation>Plongées où l’air suffit à tous pour les %1 prévues&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The air lasts the planned %1 in %2 dives.</source>
        <translation>Plongées où l’air suffit pour les %1 prévues&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1&#xa0;: %2 %3</translation>
    </message>
    <message>
        <source>%1: no instructor named yet.</source>
        <translation>%1&#xa0;: pas encore de moniteur désigné.</translation>
    </message>
    <message>
        <source>%1: no cylinder is known for %2, so the air for bringing a guest up is not checked.</source>
        <translation>%1&#xa0;: aucune bouteille connue pour %2&#x202f;; l’air pour remonter un client n’est donc pas vérifié.</translation>
    </message>
    <message>
        <source>%1: %2 needs %3 to bring a guest up, and is planned to have %4 at the ascent.</source>
        <translation>%1&#xa0;: %2 a besoin de %3 pour remonter un client, et devrait avoir %4 à la remontée.</translation>
    </message>
    <message>
        <source>In no group yet: %1. Put them into one on the Roster tab.</source>
        <translation>Encore sans palanquée&#xa0;: %1. Répartissez-les dans l’onglet Clients.</translation>
    </message>
    <message>
        <source>%1: all last the planned dive in %2 dives; in %3 when %4 starts with %5 less; in %6 when somebody&apos;s regulator blows off air for 10 to 60 s.</source>
        <translation>%1, plongées où l’air suffit à tous pour la durée prévue&#xa0;: %2&#x202f;; si %4 part avec %5 de moins&#xa0;: %3&#x202f;; si le détendeur de quelqu’un fuse de 10 à 60&#xa0;s&#xa0;: %6.</translation>
    </message>
    <message>
        <source>How one guest breathes is a spread, not a number: lognormal about the RMV in the table. Where nothing is known, of 100 guests the 10th and the 90th differ by a factor of two; sea and briefing move all of a group together. How wide, and how much is shared: common practice, no source.</source>
        <translation>La consommation d’un client est une dispersion, pas un nombre&#xa0;: log-normale autour du VRM du tableau. Quand rien n’est connu, sur 100 clients, le 10e et le 90e diffèrent d’un facteur deux&#x202f;; la mer et le briefing font varier ensemble toute une palanquée. L’ampleur et la part commune&#xa0;: usage courant, sans source.</translation>
    </message>
    <message>
        <source>The minutes hold for a group that stays at the depth from which the final ascent starts. In brackets: 10 of 100 such dives are there before the first figure, 10 after the second. Minutes and chances are rounded down.</source>
        <translation>Les minutes valent pour une palanquée qui reste à la profondeur d’où part la remontée finale. Entre parenthèses&#xa0;: 10 plongées sur 100 y arrivent avant le premier chiffre, 10 après le second. Minutes et chances sont arrondies vers le bas.</translation>
    </message>
    <message>
        <source>The same session always gives the same figures: the runs start from one fixed number, %1. They are estimates for planning: in the water the gauge and the guest&apos;s sign decide.</source>
        <translation>La même séance donne toujours les mêmes chiffres&#xa0;: les tirages partent d’un nombre fixe, %1. Ce sont des estimations pour préparer&#xa0;: dans l’eau, le manomètre et le signe du client décident.</translation>
    </message>
    <message>
        <source>Not changed: %1 is over the working pressure of %2&apos;s cylinder, %3. Read the gauge again; never use an overfilled cylinder.</source>
        <translation>Non modifié&#xa0;: %1 dépasse la pression de service de la bouteille de %2, %3. Relisez le manomètre&#x202f;; n’utilisez jamais une bouteille trop gonflée.</translation>
    </message>
    <message>
        <source>Not changed for %1. %2</source>
        <translation>Non modifié pour %1. %2</translation>
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
        <translation>le noyau se refroidit de %1 pendant la plongée prévue</translation>
    </message>
    <message>
        <source>the core does not cool over the planned dive</source>
        <translation>le noyau ne se refroidit pas pendant la plongée prévue</translation>
    </message>
    <message>
        <source>Suit %1 mm: %2 clo at the surface, squeezed to %3 clo at %4. Ten minutes after reaching depth the body loses %5 W; %6.</source>
        <translation>Combinaison %1&#xa0;mm&#xa0;: %2&#xa0;clo en surface, comprimée à %3&#xa0;clo à %4. Dix minutes après l’arrivée au fond, le corps perd %5&#xa0;W&#x202f;; %6.</translation>
    </message>
    <message>
        <source>with the %1 carried</source>
        <translation>avec les %1 portés</translation>
    </message>
    <message>
        <source>with the %1 to try first, as none is entered</source>
        <translation>avec les %1 à essayer d’abord, rien n’étant saisi</translation>
    </message>
    <message>
        <source>no BCD is entered</source>
        <translation>aucun gilet n’est saisi</translation>
    </message>
    <message>
        <source>the BCD is taken to lift %1</source>
        <translation>le gilet est supposé porter %1</translation>
    </message>
    <message>
        <source>Lead %1; %2, the guest %3 at depth with %4 left; %5.</source>
        <translation>Lest %1&#x202f;; %2, le client %3 au fond quand il reste %4&#x202f;; %5.</translation>
    </message>
    <message>
        <source>sinks %1</source>
        <translation>coule de %1</translation>
    </message>
    <message>
        <source>lifts %1</source>
        <translation>allège de %1</translation>
    </message>
    <message>
        <source>%1: empty %2, full %3</source>
        <translation>%1&#xa0;: vide %2, pleine %3</translation>
    </message>
    <message>
        <source>Cylinders in this water, by usual models (from memory; the maker&apos;s figures prevail). %1.</source>
        <translation>Bouteilles dans cette eau, par modèles courants (de mémoire&#x202f;; les chiffres du fabricant priment). %1.</translation>
    </message>
    <message>
        <source>Too cold: the core is at %1 (ISO 9886:2004, from memory) or the body has lost 3 kcal for each kg of its mass (Webb and others, Proposed thermal limits for divers, 1976, from memory), were the group to stay at the depth from which the final ascent starts. In brackets from a leaner guest who keeps stiller in a suit of poorer fit to a fatter one who moves in one of good fit. Rely on the first, the safe side. Rounded down.</source>
        <translation>Trop froid&#xa0;: le noyau est à %1 (ISO 9886:2004, de mémoire) ou le corps a perdu 3&#xa0;kcal par kg de sa masse (Webb et autres, Proposed thermal limits for divers, 1976, de mémoire), si la palanquée restait à la profondeur d’où part la remontée finale. Entre parenthèses, d’un client plus maigre qui bouge moins dans une combinaison mal ajustée à un client plus gros qui bouge dans une combinaison bien ajustée. Fiez-vous au premier chiffre, le côté sûr. Arrondi vers le bas.</translation>
    </message>
    <message>
        <source>Feels cold: a net loss of 40 Wh/m² of a standard body (ISO 11079:2007, from memory).</source>
        <translation>Ressent le froid&#xa0;: une perte nette de 40&#xa0;Wh/m² d’un corps type (ISO 11079:2007, de mémoire).</translation>
    </message>
    <message>
        <source>Warmth is a heat balance of core and shell, in the form of Gagge 1971 (from memory): body surface by DuBois and DuBois 1916, fat by Deurenberg and others 1991, oxygen uptake by Knafelc 1989 and Arieli and others 1997. The suit&apos;s gas cells are squeezed by Boyle&apos;s law and conduct by Maxwell&apos;s relation; 1 clo is 0.155 m²K/W. Shivering, which makes heat, is left out: the safe side. Nobody has measured novices or children on such dives.</source>
        <translation>La chaleur est un bilan thermique du noyau et de l’enveloppe, sous la forme de Gagge 1971 (de mémoire)&#xa0;: surface du corps par DuBois et DuBois 1916, graisse par Deurenberg et autres 1991, consommation d’oxygène par Knafelc 1989 et Arieli et autres 1997. Les cellules de gaz de la combinaison sont comprimées selon la loi de Boyle et conduisent selon la relation de Maxwell&#x202f;; 1&#xa0;clo vaut 0,155 m²K/W. Le frisson, qui produit de la chaleur, n’est pas compté&#xa0;: le côté sûr. Personne n’a mesuré de débutants ni d’enfants lors de telles plongées.</translation>
    </message>
    <message>
        <source>Lead by Archimedes, for being neutral at the surface at the end of the dive: cylinder at the reserve, lungs half full, BCD empty, and nothing more for comfort. Density of the body by Siri 1961, lungs by Quanjer and others 1993 (from memory; children: no source), foam of 150 to 250 kg/m³, lead 11 340 kg/m³. Regulator, BCD, fins and mask together pull down %1: common practice, no source. Spreads are added in squares (JCGM 100:2008).</source>
        <translation>Lest par Archimède, pour être neutre en surface à la fin de la plongée&#xa0;: bouteille à la réserve, poumons à moitié pleins, gilet vide, et rien de plus pour le confort. Densité du corps par Siri 1961, poumons par Quanjer et autres 1993 (de mémoire&#x202f;; enfants&#xa0;: sans source), mousse de 150 à 250&#xa0;kg/m³, plomb 11&#x202f;340&#xa0;kg/m³. Détendeur, gilet, palmes et masque tirent ensemble %1 vers le bas&#xa0;: usage courant, sans source. Les dispersions s’ajoutent au carré (JCGM 100:2008).</translation>
    </message>
    <message>
        <source>Try first is the middle in the pieces that are in stock, or in whole kilograms. Too heavy is the greater danger, but a guest too light floats up when the cylinder is nearly empty: at the surface with a full one, a guest should sink by what the air weighs. What the BCD lifts is taken from its size (S %1, M %2, L %3), the lower end of jackets as sold, from memory; the maker&apos;s figure prevails.</source>
        <translation>À essayer d’abord est le milieu, avec les plombs en stock ou en kilogrammes entiers. Trop lourd est le plus grand danger, mais un client trop léger remonte malgré lui quand la bouteille est presque vide&#xa0;: en surface, bouteille pleine, un client doit couler du poids de l’air. Ce que porte le gilet est tiré de sa taille (S %1, M %2, L %3), le bas de ce qui se vend, de mémoire&#x202f;; le chiffre du fabricant prime.</translation>
    </message>
    <message>
        <source>May be too cold before the end</source>
        <translation>Peut avoir trop froid avant la fin</translation>
    </message>
    <message>
        <source>The BCD may not hold this guest up</source>
        <translation>Le gilet peut ne pas porter ce client</translation>
    </message>
    <message>
        <source>May not stay down near the end</source>
        <translation>Peut ne pas tenir au fond vers la fin</translation>
    </message>
    <message>
        <source>Carries more lead than expected</source>
        <translation>Porte plus de lest qu’attendu</translation>
    </message>
    <message>
        <source>Carries less lead than expected</source>
        <translation>Porte moins de lest qu’attendu</translation>
    </message>
    <message>
        <source>Weight is missing: Roster, Kit</source>
        <translation>Le poids manque&#xa0;: Clients, Matériel</translation>
    </message>
    <message>
        <source>Height is missing: Roster, Kit</source>
        <translation>La taille manque&#xa0;: Clients, Matériel</translation>
    </message>
    <message>
        <source>Suit in mm is missing: Roster, Kit</source>
        <translation>La combinaison en mm manque&#xa0;: Clients, Matériel</translation>
    </message>
    <message>
        <source>Warmth: outside what the estimate holds for (check weight, height and age)</source>
        <translation>Chaleur&#xa0;: hors du domaine de l’estimation (vérifiez poids, taille et âge)</translation>
    </message>
    <message>
        <source>Cylinder is missing: Roster, Kit</source>
        <translation>La bouteille manque&#xa0;: Clients, Matériel</translation>
    </message>
    <message>
        <source>Lead: outside what the estimate holds for (check weight, height and age)</source>
        <translation>Lest&#xa0;: hors du domaine de l’estimation (vérifiez poids, taille et âge)</translation>
    </message>
    <message>
        <source>BCD is missing, so what it holds up is not checked: Roster, Kit</source>
        <translation>Le gilet manque, ce qu’il porte n’est donc pas vérifié&#xa0;: Clients, Matériel</translation>
    </message>
    <message>
        <source>Perhaps too cold before the end, too: %1.</source>
        <translation>Peut-être aussi trop froid avant la fin&#xa0;: %1.</translation>
    </message>
    <message>
        <source>likely after %1</source>
        <translation>sans doute après %1</translation>
    </message>
    <message>
        <source>likely not within %1, in a bad case after %2</source>
        <translation>sans doute pas avant %1, dans un mauvais cas après %2</translation>
    </message>
    <message>
        <source>Planned: %1.</source>
        <translation>Prévu&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Nobody is likely to get cold within %1. %2</source>
        <translation>Personne ne devrait avoir froid en %1. %2</translation>
    </message>
    <message>
        <source>Nobody is likely to get too cold within %1. First to feel cold: %2, after about %3. %4</source>
        <translation>Personne ne devrait avoir trop froid en %1. Froid en premier&#xa0;: %2, après %3 environ. %4</translation>
    </message>
    <message>
        <source>First to get too cold: %1, %2. %3</source>
        <translation>Trop froid en premier&#xa0;: %1, %2. %3</translation>
    </message>
    <message>
        <source>First to get too cold: %1, %2. Likely feels cold from %3 on. %4</source>
        <translation>Trop froid en premier&#xa0;: %1, %2. Aura sans doute froid à partir de %3. %4</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>In no group yet</source>
        <translation>Encore sans palanquée</translation>
    </message>
    <message>
        <source>%1: </source>
        <translation>%1&#xa0;: </translation>
    </message>
    <message>
        <source>%1 – %2: %3 %4</source>
        <translation>%1 – %2&#xa0;: %3 %4</translation>
    </message>
    <message>
        <source>%1 – too heavy for the BCD, perhaps, %2 more: see the table.</source>
        <translation>%1 – peut-être trop lourd pour le gilet, %2 de plus&#xa0;: voir le tableau.</translation>
    </message>
    <message>
        <source>May not stay down with a nearly empty cylinder: %1.</source>
        <translation>Peut ne pas tenir au fond, bouteille presque vide&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Lead: as far as there is an estimate, nobody is too heavy for the BCD or too light at the end.</source>
        <translation>Lest&#xa0;: là où une estimation existe, personne n’est trop lourd pour le gilet ni trop léger à la fin.</translation>
    </message>
    <message>
        <source>%1 (%2).</source>
        <translation>%1 (%2).</translation>
    </message>
    <message>
        <source>all guests</source>
        <translation>tous les clients</translation>
    </message>
    <message>
        <source>over %1 (from %2)</source>
        <translation>plus de %1 (dès %2)</translation>
    </message>
    <message>
        <source>neutral</source>
        <translation>neutre</translation>
    </message>
    <message>
        <source>floats %1</source>
        <translation>flotte de %1</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 à %3)</translation>
    </message>
    <message>
        <source>%1 (set aside)</source>
        <translation>%1 (écarté)</translation>
    </message>
    <message>
        <source>%1 Set aside: %2</source>
        <translation>%1 Écarté&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1&#xa0;: %2 %3</translation>
    </message>
</context>
<context>
    <name>GuestFile</name>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Naissance</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Téléphone</translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation>E-mail</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Poids</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Shoe size (EU)</source>
        <translation>Pointure (EU)</translation>
    </message>
    <message>
        <source>Air use measured</source>
        <translation>Consommation mesurée</translation>
    </message>
    <message>
        <source>Dives before</source>
        <translation>Plongées déjà faites</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>Combinaison</translation>
    </message>
    <message>
        <source>Jacket</source>
        <translation>Gilet</translation>
    </message>
    <message>
        <source>Fins</source>
        <translation>Palmes</translation>
    </message>
    <message>
        <source>Mask</source>
        <translation>Masque</translation>
    </message>
    <message>
        <source>Regulator</source>
        <translation>Détendeur</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Lest</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Bouteille</translation>
    </message>
    <message>
        <source>Filled to</source>
        <translation>Gonflée à</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>Questions de santé</translation>
    </message>
    <message>
        <source>Asked on</source>
        <translation>Posées le</translation>
    </message>
    <message>
        <source>Edition of the questions</source>
        <translation>Édition des questions</translation>
    </message>
    <message>
        <source>Asked by</source>
        <translation>Posées par</translation>
    </message>
    <message>
        <source>Physician&apos;s release seen</source>
        <translation>Accord du médecin vu</translation>
    </message>
    <message>
        <source>Date on the release</source>
        <translation>Date de l’accord</translation>
    </message>
    <message>
        <source>On the day</source>
        <translation>Le jour même</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Signature</translation>
    </message>
    <message>
        <source>Pressure at the start</source>
        <translation>Pression au début</translation>
    </message>
    <message>
        <source>Pressure at the end</source>
        <translation>Pression à la fin</translation>
    </message>
    <message>
        <source>Time in the water</source>
        <translation>Temps dans l’eau</translation>
    </message>
    <message>
        <source>Trouble with ears</source>
        <translation>Problème d’oreilles</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Depths</source>
        <translation>Profondeurs</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Ce qui s’est passé</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Palanquée</translation>
    </message>
    <message>
        <source>Breathing taken as</source>
        <translation>Consommation supposée</translation>
    </message>
    <message>
        <source>Certified</source>
        <translation>Certifié</translation>
    </message>
    <message>
        <source>Guardian&apos;s consent seen</source>
        <translation>Autorisation du représentant légal vue</translation>
    </message>
    <message>
        <source>Note of the staff</source>
        <translation>Note des encadrants</translation>
    </message>
    <message>
        <source>As known on the day</source>
        <translation>Tel que connu ce jour-là</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Matériel</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Contrôles</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Séance</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Dive at</source>
        <translation>Plongée à</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Site</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Eau</translation>
    </message>
    <message>
        <source>In the water</source>
        <translation>Dans l’eau</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>Gone ahead despite a finding</source>
        <translation>Poursuivi malgré un constat</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Sealed health records</source>
        <translation>Dossier santé scellé</translation>
    </message>
    <message>
        <source>Records on file: %1. Sealed: open the vault to include them.</source>
        <translation>Éléments enregistrés&#xa0;: %1. Scellés&#xa0;: ouvrez le coffre pour les inclure.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>What is kept of %1</source>
        <translation>Ce qui est conservé sur %1</translation>
    </message>
    <message>
        <source>Also on record as</source>
        <translation>Aussi enregistré comme</translation>
    </message>
    <message>
        <source>Written on %1. All that the centre&apos;s records hold of this person: nothing of other guests, nothing of staff but the name of who decided something. Notes on a whole dive are left out, as they may speak of others.</source>
        <translation>Écrit le %1. Tout ce que le registre du centre contient sur cette personne&#xa0;: rien sur d’autres clients, rien sur les encadrants sauf le nom de qui a décidé quelque chose. Les notes sur une plongée entière sont omises, car elles peuvent parler d’autres personnes.</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>No session is on record.</source>
        <translation>Aucune séance enregistrée.</translation>
    </message>
</context>
<context>
    <name>GuestGasModel</name>
    <message>
        <source>Guest</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Palanquée</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Bouteille</translation>
    </message>
    <message>
        <source>As read</source>
        <translation>Lu</translation>
    </message>
    <message>
        <source>Read at</source>
        <translation>Lu à</translation>
    </message>
    <message>
        <source>Breathing</source>
        <translation>Respiration</translation>
    </message>
    <message>
        <source>RMV</source>
        <translation>VRM</translation>
    </message>
    <message>
        <source>Read →
in the water</source>
        <translation>Lu →
dans l’eau</translation>
    </message>
    <message>
        <source>At the
end</source>
        <translation>À la
fin</translation>
    </message>
    <message>
        <source>Until
reserve</source>
        <translation>Jusqu’à
la réserve</translation>
    </message>
    <message>
        <source>10 to 90
of 100</source>
        <translation>10 à 90
sur 100</translation>
    </message>
    <message>
        <source>Ends
the dive</source>
        <translation>Met fin à
la plongée</translation>
    </message>
    <message>
        <source>Turn at</source>
        <translation>½ tour</translation>
    </message>
    <message>
        <source>Leave
bottom at</source>
        <translation>Quitter
le fond à</translation>
    </message>
    <message>
        <source>Minimum
for two</source>
        <translation>Minimum
à deux</translation>
    </message>
    <message>
        <source>Signal
at</source>
        <translation>Signe
à</translation>
    </message>
    <message>
        <source>Guests of the group; who is likely first at the reserve in bold.</source>
        <translation>Clients de la palanquée&#x202f;; en gras, qui sera sans doute le premier à la réserve.</translation>
    </message>
    <message>
        <source>The guest&apos;s group.</source>
        <translation>La palanquée du client.</translation>
    </message>
    <message>
        <source>Size and working pressure as the trade names them. What is stamped on the cylinder prevails.</source>
        <translation>Volume et pression de service selon l’usage du métier. Ce qui est poinçonné sur la bouteille prime.</translation>
    </message>
    <message>
        <source>Gauge reading when the cylinder was handed out. A gauge may read %1 wrong: 2.5 % of its scale (EN 837-1, from memory), common practice that diving gauges are of this class.</source>
        <translation>Lecture du manomètre à la remise de la bouteille. Un manomètre peut se tromper de %1&#xa0;: 2,5&#xa0;% de son échelle (EN 837-1, de mémoire)&#x202f;; usage courant que les manomètres de plongée soient de cette classe.</translation>
    </message>
    <message>
        <source>Temperature of the air in the cylinder when the gauge was read. Warm air reads high and loses pressure in the water.</source>
        <translation>Température de l’air de la bouteille à la lecture du manomètre. L’air chaud indique trop et perd de la pression dans l’eau.</translation>
    </message>
    <message>
        <source>How the guest is likely to breathe: calm %1, not known %2, nervous %3, child %4. Common practice, no source; errs to the high side.</source>
        <translation>Comment le client respirera sans doute&#xa0;: calme %1, inconnu %2, anxieux %3, enfant %4. Usage courant, sans source&#x202f;; par prudence, plutôt trop haut.</translation>
    </message>
    <message>
        <source>Respiratory minute volume: air breathed a minute at the pressure around the guest. By class, or measured on an own past dive; empty it to go back to the class.</source>
        <translation>Volume respiratoire par minute (VRM)&#xa0;: air respiré par minute à la pression autour du client. Par classe, ou mesuré lors d’une plongée passée&#x202f;; videz pour revenir à la classe.</translation>
    </message>
    <message>
        <source>What the reading becomes once the cylinder is as cold as the water: no air is lost, but pressure. Air as a real gas: Lemmon and others, J. Phys. Chem. Ref. Data 29 (2000). Rounded down.</source>
        <translation>Ce que devient la lecture quand la bouteille est aussi froide que l’eau&#xa0;: on ne perd pas d’air, mais de la pression. L’air comme gaz réel&#xa0;: Lemmon et autres, J. Phys. Chem. Ref. Data 29 (2000). Arrondi vers le bas.</translation>
    </message>
    <message>
        <source>Left at the end of the planned dive. RMV × pressure around the guest × time, with more for settling, the way down and skills (common practice); errs to the low side.</source>
        <translation>Reste à la fin de la plongée prévue. VRM × pression autour du client × temps, plus une part pour la mise en route, la descente et les exercices (usage courant)&#x202f;; par prudence, plutôt trop bas.</translation>
    </message>
    <message>
        <source>From the start until the guest is at the reserve in the middle one of all such dives, were the group to stay at the depth from which the final ascent starts. Rounded down.</source>
        <translation>Du départ jusqu’à ce que le client soit à la réserve, dans la plongée médiane de toutes, si la palanquée restait à la profondeur d’où part la remontée finale. Arrondi vers le bas.</translation>
    </message>
    <message>
        <source>Minutes until the reserve in the 10th and in the 90th of 100 such dives, fastest first: how much this guest&apos;s breathing may differ from what is planned with (lognormal; its width is common practice, no source). Rounded down.</source>
        <translation>Minutes jusqu’à la réserve dans la 10e et la 90e de 100 plongées, la plus rapide d’abord&#xa0;: de combien la respiration de ce client peut s’écarter de ce qui est prévu (log-normale&#x202f;; sa largeur est d’usage courant, sans source). Arrondi vers le bas.</translation>
    </message>
    <message>
        <source>How many of 100 such dives end because this guest is the first of the group at the reserve. Rounded down.</source>
        <translation>Sur 100 plongées, combien finissent parce que ce client est le premier de la palanquée à la réserve. Arrondi vers le bas.</translation>
    </message>
    <message>
        <source>Half of what the tour may use is gone: go back. Common practice, no source. Rounded up.</source>
        <translation>La moitié de ce que la balade peut utiliser est consommée&#xa0;: demi-tour. Usage courant, sans source. Arrondi vers le haut.</translation>
    </message>
    <message>
        <source>Start the ascent now to surface with the reserve, and never with less than the minimum for two and the %1 that a gauge may read too high. Rounded up.</source>
        <translation>Commencez alors la remontée pour faire surface avec la réserve, et jamais avec moins que le minimum à deux et les %1 qu’un manomètre peut lire en trop. Arrondi vers le haut.</translation>
    </message>
    <message>
        <source>Enough in this cylinder for guest and instructor, both stressed (%1 and %2, common practice): one minute at the deepest point, then up at the allowed rate, with a margin for the regulator (U.S. Navy Diving Manual, vol. 2, p. 8-3). Rounded up.</source>
        <translation>Assez dans cette bouteille pour le client et le moniteur, tous deux stressés (%1 et %2, usage courant)&#xa0;: une minute au point le plus profond, puis la remontée à la vitesse autorisée, avec une marge pour le détendeur (U.S. Navy Diving Manual, vol. 2, p. 8-3). Arrondi vers le haut.</translation>
    </message>
    <message>
        <source>What the card says: the reserve, or the minimum for two with the %1 that a gauge may read too high, the greater, rounded well up. At this reading the guest tells the instructor.</source>
        <translation>Ce que dit la fiche&#xa0;: la réserve, ou le minimum à deux avec les %1 qu’un manomètre peut lire en trop, le plus grand des deux, bien arrondi vers le haut. À cette lecture, le client prévient le moniteur.</translation>
    </message>
</context>
<context>
    <name>GuestNames</name>
    <message>
        <source>Guest removed</source>
        <translation>Client supprimé</translation>
    </message>
</context>
<context>
    <name>HealthQuestions</name>
    <message>
        <source>Lungs</source>
        <translation>Poumons</translation>
    </message>
    <message>
        <source>Do your lungs or your breathing ever give you trouble?</source>
        <translation>Vos poumons ou votre respiration vous posent-ils parfois problème&#x202f;?</translation>
    </message>
    <message>
        <source>Do you wheeze, have asthma, or carry an inhaler?</source>
        <translation>Avez-vous une respiration sifflante, de l’asthme, ou un inhalateur sur vous&#x202f;?</translation>
    </message>
    <message>
        <source>Has a lung ever collapsed, or has your chest been operated on?</source>
        <translation>Un de vos poumons s’est-il déjà affaissé, ou avez-vous été opéré de la poitrine&#x202f;?</translation>
    </message>
    <message>
        <source>Have you had pneumonia, or a cough that went on for weeks, in the past year?</source>
        <translation>Avez-vous eu, dans l’année passée, une pneumonie ou une toux pendant des semaines&#x202f;?</translation>
    </message>
    <message>
        <source>Has a doctor ever found anything else wrong with your lungs?</source>
        <translation>Un médecin a-t-il déjà trouvé autre chose à vos poumons&#x202f;?</translation>
    </message>
    <message>
        <source>Heart and blood</source>
        <translation>Cœur et sang</translation>
    </message>
    <message>
        <source>Has anything ever been found wrong with your heart, your blood pressure or your blood?</source>
        <translation>A-t-on déjà trouvé quelque chose d’anormal à votre cœur, votre tension ou votre sang&#x202f;?</translation>
    </message>
    <message>
        <source>Is your blood pressure high, or do you take something to lower it?</source>
        <translation>Votre tension est-elle élevée, ou prenez-vous quelque chose pour la baisser&#x202f;?</translation>
    </message>
    <message>
        <source>Have you had a heart attack, pain in the chest on effort, or heart failure?</source>
        <translation>Avez-vous eu un infarctus, des douleurs à la poitrine à l’effort, ou une insuffisance cardiaque&#x202f;?</translation>
    </message>
    <message>
        <source>Does your heart beat out of step, or do you have a pacemaker or a stent?</source>
        <translation>Votre cœur bat-il irrégulièrement, ou avez-vous un pacemaker ou un stent&#x202f;?</translation>
    </message>
    <message>
        <source>Were you born with a fault of the heart, or has a valve or a hole in it been found or mended?</source>
        <translation>Êtes-vous né avec une malformation du cœur, ou a-t-on trouvé ou réparé une valve ou un trou dans votre cœur&#x202f;?</translation>
    </message>
    <message>
        <source>Do you bleed or clot too easily, or has your blood been treated?</source>
        <translation>Saignez-vous trop facilement, votre sang coagule-t-il trop facilement, ou avez-vous été soigné pour le sang&#x202f;?</translation>
    </message>
    <message>
        <source>Has a doctor found or operated on anything else of your heart, your vessels or your blood?</source>
        <translation>Un médecin a-t-il trouvé ou opéré autre chose au cœur, aux vaisseaux ou au sang&#x202f;?</translation>
    </message>
    <message>
        <source>From 45 on</source>
        <translation>À partir de 45&#xa0;ans</translation>
    </message>
    <message>
        <source>Do you smoke or breathe in nicotine in any way?</source>
        <translation>Fumez-vous, ou inhalez-vous de la nicotine de quelque façon&#x202f;?</translation>
    </message>
    <message>
        <source>Have you been told that your cholesterol is high?</source>
        <translation>Vous a-t-on dit que votre cholestérol est élevé&#x202f;?</translation>
    </message>
    <message>
        <source>Did a parent, brother or sister have a heart attack or a stroke before turning 50?</source>
        <translation>Votre père, votre mère, un frère ou une sœur a-t-il eu un infarctus ou un AVC avant 50&#xa0;ans&#x202f;?</translation>
    </message>
    <message>
        <source>Has a doctor asked you to lose weight or to be more careful with your heart?</source>
        <translation>Un médecin vous a-t-il demandé de perdre du poids ou de ménager votre cœur&#x202f;?</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>Effort</translation>
    </message>
    <message>
        <source>Would a brisk walk for a quarter of an hour, or two lengths of a pool, leave you gasping or in pain?</source>
        <translation>Un quart d’heure de marche rapide, ou deux longueurs de piscine, vous laisseraient-ils à bout de souffle ou avec des douleurs&#x202f;?</translation>
    </message>
    <message>
        <source>Eyes, ears, sinuses</source>
        <translation>Yeux, oreilles, sinus</translation>
    </message>
    <message>
        <source>Have your eyes, ears, nose or sinuses been operated on, or do they keep giving you trouble?</source>
        <translation>Avez-vous été opéré des yeux, des oreilles, du nez ou des sinus, ou vous posent-ils sans cesse problème&#x202f;?</translation>
    </message>
    <message>
        <source>Have your sinuses been operated on in the past half year, or are they often inflamed?</source>
        <translation>Avez-vous été opéré des sinus dans les six derniers mois, ou sont-ils souvent enflammés&#x202f;?</translation>
    </message>
    <message>
        <source>Has an ear been operated on, or do you hear badly or lose your balance?</source>
        <translation>Avez-vous été opéré d’une oreille, entendez-vous mal ou perdez-vous l’équilibre&#x202f;?</translation>
    </message>
    <message>
        <source>Do your ears hurt or stay blocked in aeroplanes, or has an eardrum been torn?</source>
        <translation>Avez-vous mal aux oreilles ou restent-elles bouchées en avion, ou un tympan a-t-il été déchiré&#x202f;?</translation>
    </message>
    <message>
        <source>Has an eye been operated on in the past three months?</source>
        <translation>Avez-vous été opéré d’un œil dans les trois derniers mois&#x202f;?</translation>
    </message>
    <message>
        <source>Has a doctor found anything else wrong with your eyes, ears, nose or sinuses?</source>
        <translation>Un médecin a-t-il trouvé autre chose aux yeux, aux oreilles, au nez ou aux sinus&#x202f;?</translation>
    </message>
    <message>
        <source>Operation</source>
        <translation>Opération</translation>
    </message>
    <message>
        <source>Were you operated on in the past twelve months, or does an older operation still hold you back?</source>
        <translation>Avez-vous été opéré dans les douze derniers mois, ou une opération plus ancienne vous gêne-t-elle encore&#x202f;?</translation>
    </message>
    <message>
        <source>Head and nerves</source>
        <translation>Tête et nerfs</translation>
    </message>
    <message>
        <source>Have you ever passed out, had a fit, hurt your head badly, or had trouble with your nerves?</source>
        <translation>Avez-vous déjà perdu connaissance, fait une crise de convulsions, été gravement blessé à la tête, ou eu une maladie du système nerveux&#x202f;?</translation>
    </message>
    <message>
        <source>Did a blow to the head knock you out in the past five years?</source>
        <translation>Un coup à la tête vous a-t-il fait perdre connaissance dans les cinq dernières années&#x202f;?</translation>
    </message>
    <message>
        <source>Have you had a fit or epilepsy, or do you take something against it?</source>
        <translation>Avez-vous eu une crise de convulsions ou de l’épilepsie, ou prenez-vous quelque chose contre cela&#x202f;?</translation>
    </message>
    <message>
        <source>Did you faint or black out in the past five years?</source>
        <translation>Vous êtes-vous évanoui ou avez-vous perdu connaissance dans les cinq dernières années&#x202f;?</translation>
    </message>
    <message>
        <source>Do you get headaches that stop you, or take something every day to keep them away?</source>
        <translation>Avez-vous des maux de tête qui vous arrêtent, ou prenez-vous chaque jour quelque chose pour les éviter&#x202f;?</translation>
    </message>
    <message>
        <source>Have you had a stroke, numbness that stayed, or an illness of the nerves?</source>
        <translation>Avez-vous eu un AVC, un engourdissement qui est resté, ou une maladie du système nerveux&#x202f;?</translation>
    </message>
    <message>
        <source>Mind</source>
        <translation>Moral et psychisme</translation>
    </message>
    <message>
        <source>Have you been treated for your mood, for panic, for attention or for an addiction?</source>
        <translation>Avez-vous été soigné pour votre humeur, pour des paniques, pour l’attention ou pour une addiction&#x202f;?</translation>
    </message>
    <message>
        <source>Do you get attacks of panic, or are closed spaces or open water hard to bear?</source>
        <translation>Avez-vous des crises de panique, ou supportez-vous mal les espaces clos ou la pleine eau&#x202f;?</translation>
    </message>
    <message>
        <source>Are you in treatment now, or do you take something for your mood or attention?</source>
        <translation>Suivez-vous un traitement maintenant, ou prenez-vous quelque chose pour l’humeur ou l’attention&#x202f;?</translation>
    </message>
    <message>
        <source>Have you been in hospital for your mind, or thought of taking your life?</source>
        <translation>Avez-vous été hospitalisé pour raison psychique, ou pensé à mettre fin à vos jours&#x202f;?</translation>
    </message>
    <message>
        <source>In the past five years, have alcohol or drugs been a problem for you?</source>
        <translation>Dans les cinq dernières années, l’alcool ou les drogues ont-ils été un problème pour vous&#x202f;?</translation>
    </message>
    <message>
        <source>Back, hernia, ulcer, diabetes</source>
        <translation>Dos, hernie, ulcère, diabète</translation>
    </message>
    <message>
        <source>Do you have trouble with your back, a hernia, an ulcer or diabetes?</source>
        <translation>Avez-vous un problème de dos, une hernie, un ulcère ou du diabète&#x202f;?</translation>
    </message>
    <message>
        <source>Has your back kept you from what you do every day in the past half year?</source>
        <translation>Votre dos vous a-t-il empêché, dans les six derniers mois, de faire ce que vous faites chaque jour&#x202f;?</translation>
    </message>
    <message>
        <source>Has your back or spine been operated on?</source>
        <translation>Avez-vous été opéré du dos ou de la colonne vertébrale&#x202f;?</translation>
    </message>
    <message>
        <source>Do you have diabetes, or did you have it in pregnancy?</source>
        <translation>Avez-vous du diabète, ou en avez-vous eu pendant une grossesse&#x202f;?</translation>
    </message>
    <message>
        <source>Do you have a hernia that has not been mended and gets in your way?</source>
        <translation>Avez-vous une hernie non opérée qui vous gêne&#x202f;?</translation>
    </message>
    <message>
        <source>Do you have an ulcer, or have you had one treated in the past half year?</source>
        <translation>Avez-vous un ulcère, ou en a-t-on soigné un dans les six derniers mois&#x202f;?</translation>
    </message>
    <message>
        <source>Stomach and gut</source>
        <translation>Estomac et intestin</translation>
    </message>
    <message>
        <source>Do your stomach or your gut give you trouble?</source>
        <translation>Votre estomac ou votre intestin vous posent-ils problème&#x202f;?</translation>
    </message>
    <message>
        <source>Do you have an opening of the gut at the belly, or were you operated on to lose weight?</source>
        <translation>Avez-vous une poche intestinale au ventre (stomie), ou avez-vous été opéré pour perdre du poids&#x202f;?</translation>
    </message>
    <message>
        <source>Have you lost much fluid by vomiting or diarrhoea in the past week?</source>
        <translation>Avez-vous perdu beaucoup de liquide par vomissements ou diarrhée la semaine passée&#x202f;?</translation>
    </message>
    <message>
        <source>Do you have heartburn or food coming up most weeks?</source>
        <translation>Avez-vous des brûlures d’estomac ou des remontées presque chaque semaine&#x202f;?</translation>
    </message>
    <message>
        <source>Is your gut inflamed for long times, or does it bleed?</source>
        <translation>Votre intestin est-il enflammé pendant de longues périodes, ou saigne-t-il&#x202f;?</translation>
    </message>
    <message>
        <source>Medicine</source>
        <translation>Médicaments</translation>
    </message>
    <message>
        <source>Do you take medicine that a doctor prescribed, other than for birth control or against malaria?</source>
        <translation>Prenez-vous des médicaments prescrits par un médecin, autres que pour la contraception ou contre le paludisme&#x202f;?</translation>
    </message>
    <message>
        <source>Pregnancy</source>
        <translation>Grossesse</translation>
    </message>
    <message>
        <source>Are you pregnant, might you be, or are you trying to be?</source>
        <translation>Êtes-vous enceinte, pourriez-vous l’être, ou essayez-vous de l’être&#x202f;?</translation>
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
            <numerusform>%1 en tout, pour %n client</numerusform>
            <numerusform>%1 en tout, pour %n clients</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sets (%1)</source>
        <translation>
            <numerusform>%n équipement (%1)</numerusform>
            <numerusform>%n équipements (%1)</numerusform>
        </translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>Pas encore de clients.</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Matériel</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>Still missing.</source>
        <translation>Manque encore.</translation>
    </message>
    <message>
        <source>To pack in all</source>
        <translation>À emporter en tout</translation>
    </message>
    <message>
        <source>All groups</source>
        <translation>Toutes les palanquées</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>guest: items of kit</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Staff bring their own kit; their cylinders are counted. Check every set before it leaves.</source>
        <translation>Les encadrants apportent leur matériel&#x202f;; leurs bouteilles sont comptées. Contrôlez chaque équipement avant le départ.</translation>
    </message>
    <message>
        <source>–: still missing, write it in.</source>
        <translation>–&#xa0;: manque encore, à inscrire.</translation>
    </message>
</context>
<context>
    <name>LanguageMenu</name>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Langue</translation>
    </message>
    <message>
        <source>Kept. The language changes when Leadline is started again.</source>
        <translation>Retenu. La langue change au prochain démarrage de Leadline.</translation>
    </message>
    <message>
        <source>That of the &amp;computer</source>
        <translation>&amp;Celle de l’ordinateur</translation>
    </message>
    <message>
        <source>%1 (draft)</source>
        <comment>a language nobody has checked</comment>
        <translation>%1 (brouillon)</translation>
    </message>
</context>
<context>
    <name>Levers</name>
    <message>
        <source>over 99</source>
        <translation>plus de 99</translation>
    </message>
    <message>
        <source>fewer than 1</source>
        <translation>moins de 1</translation>
    </message>
    <message>
        <source>No deeper than %1</source>
        <translation>Pas plus profond que %1</translation>
    </message>
    <message>
        <source>%1 less for skills</source>
        <translation>%1 de moins pour les exercices</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 pour %2</translation>
    </message>
    <message>
        <source>Suit %1 for %2</source>
        <translation>Combinaison %1 pour %2</translation>
    </message>
    <message>
        <source>%1 and %2 change places</source>
        <translation>%1 et %2 échangent leurs places</translation>
    </message>
    <message>
        <source>Without %1</source>
        <translation>Sans %1</translation>
    </message>
    <message>
        <source>one is free by the stock list</source>
        <translation>une est libre d’après le stock</translation>
    </message>
    <message>
        <source>if one is free</source>
        <translation>si une est libre</translation>
    </message>
    <message>
        <source>Heavier to carry</source>
        <translation>Plus lourd à porter</translation>
    </message>
    <message>
        <source>About as heavy</source>
        <translation>À peu près aussi lourd</translation>
    </message>
    <message>
        <source>%1 more on land</source>
        <translation>%1 de plus à terre</translation>
    </message>
    <message>
        <source>%1 less on land</source>
        <translation>%1 de moins à terre</translation>
    </message>
    <message>
        <source>Ask first whether they came together. %1: %2 last the plan.</source>
        <translation>Demandez d’abord s’ils sont venus ensemble. %1, plongées où l’air suffit&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Less to see.</source>
        <translation>Moins à voir.</translation>
    </message>
    <message>
        <source>Less practice; the whole dive is %1 shorter.</source>
        <translation>Moins d’exercice&#x202f;; toute la plongée est plus courte de %1.</translation>
    </message>
    <message>
        <source>%1; %2. Read its gauge, check the lead.</source>
        <translation>%1&#x202f;; %2. Lisez son manomètre, vérifiez le lest.</translation>
    </message>
    <message>
        <source>Needs more lead, check at the surface; %1.</source>
        <translation>Demande plus de lest, à vérifier en surface&#x202f;; %1.</translation>
    </message>
    <message>
        <source>Needs another group or another time.</source>
        <translation>Demande une autre palanquée ou une autre heure.</translation>
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
        <translation>moins de %1</translation>
    </message>
    <message>
        <source>over +%1</source>
        <translation>plus de +%1</translation>
    </message>
    <message>
        <source>+%1</source>
        <translation>+%1</translation>
    </message>
    <message>
        <source>%1 until the first is at the reserve</source>
        <translation>%1 jusqu’à ce que le premier soit à la réserve</translation>
    </message>
    <message>
        <source>the first is at the reserve later than %1</source>
        <translation>le premier est à la réserve plus tard que %1</translation>
    </message>
    <message>
        <source>%1: %2. %3; all last the plan in %4, now %5. %6</source>
        <translation>%1&#xa0;: %2. %3&#x202f;; plongées où l’air suffit à tous&#xa0;: %4, actuellement %5. %6</translation>
    </message>
    <message>
        <source>%1 of 100</source>
        <translation>%1 sur 100</translation>
    </message>
    <message>
        <source>%1 of 100, as now</source>
        <translation>%1 sur 100, comme maintenant</translation>
    </message>
    <message>
        <source>%1 → %2 of 100</source>
        <translation>%1 → %2 sur 100</translation>
    </message>
    <message>
        <source>Group %1</source>
        <translation>Palanquée %1</translation>
    </message>
</context>
<context>
    <name>LogEdits</name>
    <message>
        <source>Open a log</source>
        <translation>Ouvrir un relevé</translation>
    </message>
    <message>
        <source>Use measured breathing</source>
        <translation>Prendre la consommation mesurée</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>&quot;leadline --help&quot; shows how to call it.</source>
        <translation>«&#xa0;leadline --help&#xa0;» montre comment l’appeler.</translation>
    </message>
    <message>
        <source>Session file to open.</source>
        <translation>Fichier de séance à ouvrir.</translation>
    </message>
    <message>
        <source>Write JSON; every key names its unit.</source>
        <translation>Écrire du JSON&#x202f;; chaque clé nomme son unité.</translation>
    </message>
    <message>
        <source>Feet, psi and degrees Fahrenheit.</source>
        <translation>Pieds, psi et degrés Fahrenheit.</translation>
    </message>
    <message>
        <source>Records file to use instead of the default.</source>
        <translation>Fichier de registre à utiliser au lieu de celui par défaut.</translation>
    </message>
    <message>
        <source>Write a picture of every tab to a folder and quit.</source>
        <translation>Écrire une image de chaque onglet dans un dossier et quitter.</translation>
    </message>
    <message>
        <source>Start with the dark look.</source>
        <translation>Démarrer avec l’aspect sombre.</translation>
    </message>
    <message>
        <source>One file at a time: &quot;%1&quot; is too much.</source>
        <translation>Un seul fichier à la fois&#xa0;: «&#xa0;%1&#xa0;» est de trop.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; needs a session file.</source>
        <translation>«&#xa0;%1&#xa0;» demande un fichier de séance.</translation>
    </message>
    <message>
        <source>No display was found, and no session file was named.</source>
        <translation>Aucun écran trouvé, et aucun fichier de séance indiqué.</translation>
    </message>
    <message>
        <source>Language of the window, for example &quot;en&quot;.</source>
        <translation>Langue de la fenêtre, par exemple «&#xa0;en&#xa0;».</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no language of the window. There are: %2.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une langue de la fenêtre. Il y a&#xa0;: %2.</translation>
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
        <translation>Prépare une première plongée encadrée, imprime une fiche pour chaque client et passe le relevé en revue.

  leadline [FICHIER]                        ouvrir la fenêtre
  leadline plan FICHIER [--json]            chiffres et constats
  leadline cards FICHIER --output OUT.pdf   une fiche par client
  leadline sheet FICHIER --kind TYPE --output OUT.pdf   une feuille pour l’encadrement
  leadline review FICHIER [--json]          prévu et réel comparés

Codes de sortie&#xa0;: 0 terminé&#x202f;; 1 un stop subsiste&#x202f;; 2 entrée incorrecte.
Une aide à la préparation&#xa0;: le droit local, le moniteur et un médecin passent avant.</translation>
    </message>
    <message>
        <source>Where the cards or the sheet go.</source>
        <translation>Où vont les fiches ou la feuille.</translation>
    </message>
    <message>
        <source>Which sheet: beach, skills, kit, emergency or pictures.</source>
        <translation>Quelle feuille&#xa0;: beach, skills, kit, emergency ou pictures.</translation>
    </message>
    <message>
        <source>Letter paper: cards of a quarter instead of A6.</source>
        <translation>Papier Letter&#xa0;: fiches d’un quart de page au lieu de A6.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; needs --output OUT.pdf.</source>
        <translation>«&#xa0;%1&#xa0;» demande --output OUT.pdf.</translation>
    </message>
    <message>
        <source>Cards: %1; a name with &quot;paper&quot; has one card on a sheet of that size.</source>
        <translation>Fiches&#xa0;: %1&#x202f;; un nom avec «&#xa0;paper&#xa0;» met une fiche par feuille de ce format.</translation>
    </message>
    <message>
        <source>The page of pictures: one language or two, for example &quot;de,ar&quot;; English if none is given. There are: %1.</source>
        <translation>La page d’images&#xa0;: une langue ou deux, par exemple «&#xa0;de,ar&#xa0;»&#x202f;; en anglais sans indication. Il y a&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>Names</name>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message>
        <source>Care</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>At the surface</source>
        <translation>En surface</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Descente</translation>
    </message>
    <message>
        <source>Skills</source>
        <translation>Exercices</translation>
    </message>
    <message>
        <source>Tour</source>
        <translation>Balade</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Remontée</translation>
    </message>
    <message>
        <source>Calm</source>
        <translation>Calme</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Inconnu</translation>
    </message>
    <message>
        <source>Nervous</source>
        <translation>Anxieux</translation>
    </message>
    <message>
        <source>Child, at ease</source>
        <translation>Enfant, à l’aise</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Aucun</translation>
    </message>
    <message>
        <source>Slight</source>
        <translation>Léger</translation>
    </message>
    <message>
        <source>Moderate</source>
        <translation>Modéré</translation>
    </message>
    <message>
        <source>Strong</source>
        <translation>Fort</translation>
    </message>
    <message>
        <source>From the shore</source>
        <translation>Du bord</translation>
    </message>
    <message>
        <source>From a boat</source>
        <translation>D’un bateau</translation>
    </message>
    <message>
        <source>Down steps</source>
        <translation>Par des marches</translation>
    </message>
    <message>
        <source>Instructor</source>
        <translation>Moniteur</translation>
    </message>
    <message>
        <source>Assistant</source>
        <translation>Assistant</translation>
    </message>
    <message>
        <source>Steel</source>
        <translation>Acier</translation>
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
        <translation>Non</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>Not answered</source>
        <translation>Sans réponse</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Rien à signaler</translation>
    </message>
    <message>
        <source>Physician first</source>
        <translation>Médecin d’abord</translation>
    </message>
    <message>
        <source>Does not dive</source>
        <translation>Ne plonge pas</translation>
    </message>
    <message>
        <source>read in the source</source>
        <translation>lu dans la source</translation>
    </message>
    <message>
        <source>from a summary of the source</source>
        <translation>d’un résumé de la source</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>de mémoire</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>usage courant, sans source</translation>
    </message>
    <message>
        <source>own depths</source>
        <translation>profondeurs propres</translation>
    </message>
    <message>
        <source>depths of the group</source>
        <translation>profondeurs de la palanquée</translation>
    </message>
    <message>
        <source>planned depths</source>
        <translation>profondeurs prévues</translation>
    </message>
    <message>
        <source>Not asked today</source>
        <translation>Pas demandé aujourd’hui</translation>
    </message>
    <message>
        <source>Clear today</source>
        <translation>Rien à signaler aujourd’hui</translation>
    </message>
    <message>
        <source>With care today</source>
        <translation>Avec précaution aujourd’hui</translation>
    </message>
    <message>
        <source>Not today</source>
        <translation>Pas aujourd’hui</translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation>Non signé</translation>
    </message>
    <message>
        <source>Signed on the screen</source>
        <translation>Signé à l’écran</translation>
    </message>
    <message>
        <source>Signed on paper</source>
        <translation>Signé sur papier</translation>
    </message>
    <message>
        <source>by the centre&apos;s own form</source>
        <translation>par le formulaire du centre</translation>
    </message>
    <message>
        <source>edition %1</source>
        <translation>édition %1</translation>
    </message>
    <message>
        <source>birth date</source>
        <translation>date de naissance</translation>
    </message>
    <message>
        <source>guardian&apos;s consent</source>
        <translation>autorisation du représentant légal</translation>
    </message>
    <message>
        <source>health questions</source>
        <translation>questions de santé</translation>
    </message>
    <message>
        <source>physician&apos;s release</source>
        <translation>accord du médecin</translation>
    </message>
    <message>
        <source>to be told: does not dive</source>
        <translation>à prévenir&#xa0;: ne plonge pas</translation>
    </message>
    <message>
        <source>health check anew</source>
        <translation>contrôle santé à refaire</translation>
    </message>
    <message>
        <source>date of the health check</source>
        <translation>date du contrôle santé</translation>
    </message>
    <message>
        <source>physician&apos;s release anew</source>
        <translation>accord du médecin à refaire</translation>
    </message>
    <message>
        <source>Cold or blocked ears</source>
        <translation>Rhume ou oreilles bouchées</translation>
    </message>
    <message>
        <source>Alcohol or drugs</source>
        <translation>Alcool ou drogues</translation>
    </message>
    <message>
        <source>New medicine</source>
        <translation>Nouveau médicament</translation>
    </message>
    <message>
        <source>Flight or mountain</source>
        <translation>Avion ou montagne</translation>
    </message>
    <message>
        <source>Unwilling or very afraid</source>
        <translation>Ne veut pas ou a très peur</translation>
    </message>
    <message>
        <source>Cannot swim</source>
        <translation>Ne sait pas nager</translation>
    </message>
    <message>
        <source>Do you feel ill or unwell today, or have a cold, or ears or a nose that will not clear?</source>
        <translation>Vous sentez-vous malade ou mal aujourd’hui, ou avez-vous un rhume, ou les oreilles ou le nez bouchés&#x202f;?</translation>
    </message>
    <message>
        <source>Have you had alcohol or any drug since last night?</source>
        <translation>Avez-vous pris de l’alcool ou une drogue depuis hier soir&#x202f;?</translation>
    </message>
    <message>
        <source>Have you taken any medicine today that you did not tell us about?</source>
        <translation>Avez-vous pris aujourd’hui un médicament dont vous ne nous avez pas parlé&#x202f;?</translation>
    </message>
    <message>
        <source>Will you fly or drive over a mountain within the next 24 hours?</source>
        <translation>Allez-vous prendre l’avion ou passer une montagne en voiture dans les prochaines 24&#xa0;heures&#x202f;?</translation>
    </message>
    <message>
        <source>Would you rather not dive, are you very afraid of it, or did somebody talk you into it?</source>
        <translation>Préférez-vous ne pas plonger, en avez-vous très peur, ou quelqu’un vous y a-t-il poussé&#x202f;?</translation>
    </message>
    <message>
        <source>Are you unable to swim or float by yourself?</source>
        <translation>Êtes-vous incapable de nager ou de flotter par vous-même&#x202f;?</translation>
    </message>
    <message>
        <source>suit</source>
        <translation>combinaison</translation>
    </message>
    <message>
        <source>BCD</source>
        <translation>gilet</translation>
    </message>
    <message>
        <source>fins</source>
        <translation>palmes</translation>
    </message>
    <message>
        <source>mask</source>
        <translation>masque</translation>
    </message>
    <message>
        <source>regulator</source>
        <translation>détendeur</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>lest</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a name, and what is said of it</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>PdfPath</name>
    <message>
        <source>Save as PDF</source>
        <translation>Enregistrer en PDF</translation>
    </message>
    <message>
        <source>A file %1 is there already. Replace it?</source>
        <translation>Un fichier %1 existe déjà. Le remplacer&#xa0;?</translation>
    </message>
    <message>
        <source>Replace</source>
        <translation>Remplacer</translation>
    </message>
    <message>
        <source>Another name…</source>
        <translation>Autre nom…</translation>
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
        <translation> Au plus %1 selon %2.</translation>
    </message>
    <message>
        <source>Pressure at the surface</source>
        <translation>Pression en surface</translation>
    </message>
    <message>
        <source>The barometer reading at the site.</source>
        <translation>Lecture du baromètre sur le site.</translation>
    </message>
    <message>
        <source>Standard atmosphere at %1 of altitude (ICAO Doc 7488, 1993); weather moves it by up to 5 %. A barometer reading at the site takes its place.</source>
        <translation>Atmosphère type à %1 d’altitude (OACI Doc 7488, 1993)&#x202f;; la météo la fait varier de 5&#xa0;% au plus. Une lecture du baromètre sur le site la remplace.</translation>
    </message>
    <message>
        <source>Pressure at %1</source>
        <translation>Pression à %1</translation>
    </message>
    <message>
        <source>Surface pressure + density × gravity × depth (hydrostatics); gravity %1 m/s² by the latitude (WGS 84).</source>
        <translation>Pression en surface + densité × pesanteur × profondeur (hydrostatique)&#x202f;; pesanteur %1&#xa0;m/s² selon la latitude (WGS 84).</translation>
    </message>
    <message>
        <source>Density of the water</source>
        <translation>Densité de l’eau</translation>
    </message>
    <message>
        <source>From salinity %1 and %2 (equation of state of sea water 1980: Fofonoff and Millard, UNESCO 44, 1983). The coldest water is the densest: the safe side.</source>
        <translation>De la salinité %1 et de %2 (équation d’état de l’eau de mer 1980&#xa0;: Fofonoff et Millard, UNESCO 44, 1983). L’eau la plus froide est la plus dense&#xa0;: le côté sûr.</translation>
    </message>
    <message>
        <source>Clear the ears</source>
        <translation>Équilibrer les oreilles</translation>
    </message>
    <message>
        <source>every %1, every %2</source>
        <translation>tous les %1, toutes les %2</translation>
    </message>
    <message>
        <source>The step of the rules, and the time it takes at the fastest planned descent, %1. Slower is always better.</source>
        <translation>Le pas des règles, et le temps qu’il prend à la descente la plus rapide prévue, %1. Plus lent est toujours mieux.</translation>
    </message>
    <message>
        <source>Largest step to clear in</source>
        <translation>Plus grand pas pour équilibrer</translation>
    </message>
    <message>
        <source>The water of this step weighs half of the %1 mmHg at which the tube locks, taken where a metre weighs most. Which share to use is common practice.</source>
        <translation>L’eau de ce pas pèse la moitié des %1&#xa0;mmHg auxquels la trompe se bloque, pris là où un mètre pèse le plus. La part à utiliser est d’usage courant.</translation>
    </message>
    <message>
        <source>On the eardrum before clearing</source>
        <translation>Sur le tympan avant d’équilibrer</translation>
    </message>
    <message>
        <source>at most %1 mmHg of %2</source>
        <translation>au plus %1&#xa0;mmHg sur %2</translation>
    </message>
    <message>
        <source>Density × gravity × step. From %1 mmHg on muscles can no longer open the tube to the ear (80 to 90 in the literature; the lower end is the safe side).</source>
        <translation>Densité × pesanteur × pas. À partir de %1&#xa0;mmHg, les muscles ne peuvent plus ouvrir la trompe (80 à 90 dans les publications&#x202f;; le bas est le côté sûr).</translation>
    </message>
    <message>
        <source>Never cleared, ears lock at</source>
        <translation>Sans équilibrer, blocage à</translation>
    </message>
    <message>
        <source>The depth whose water weighs %1 mmHg. Then: go up until it opens, never push.</source>
        <translation>La profondeur dont l’eau pèse %1&#xa0;mmHg. Alors&#xa0;: remonter jusqu’à ce que cela passe, ne jamais forcer.</translation>
    </message>
    <message>
        <source>A breath held from there grows</source>
        <translation>Souffle bloqué au fond&#xa0;: gonfle</translation>
    </message>
    <message>
        <source>Pressure at %1 / pressure at the surface (Boyle&apos;s law). The lung cannot follow: never hold the breath.</source>
        <translation>Pression à %1 / pression en surface (loi de Boyle). Le poumon ne peut pas suivre&#xa0;: ne jamais bloquer sa respiration.</translation>
    </message>
    <message>
        <source>Breath held: danger after</source>
        <translation>Souffle bloqué&#xa0;: danger après</translation>
    </message>
    <message>
        <source>%1 of way up</source>
        <translation>%1 de remontée</translation>
    </message>
    <message>
        <source>With full lungs: the height of water that weighs %1 mmHg, at which a lung can tear (Schaefer and others, 1958; Malhotra and Wright, 1961; from memory; the lower end of 70 to 80).</source>
        <translation>Poumons pleins&#xa0;: la hauteur d’eau qui pèse %1&#xa0;mmHg, à laquelle un poumon peut se déchirer (Schaefer et autres, 1958&#x202f;; Malhotra et Wright, 1961&#x202f;; de mémoire&#x202f;; le bas de 70 à 80).</translation>
    </message>
    <message>
        <source>Fastest way down</source>
        <translation>Descente la plus rapide</translation>
    </message>
    <message>
        <source>Depth / time of the steepest leg down.</source>
        <translation>Profondeur / temps du tronçon de descente le plus raide.</translation>
    </message>
    <message>
        <source>Fastest way up</source>
        <translation>Remontée la plus rapide</translation>
    </message>
    <message>
        <source>Depth / time of the steepest leg up.</source>
        <translation>Profondeur / temps du tronçon de remontée le plus raide.</translation>
    </message>
</context>
<context>
    <name>PlanText</name>
    <message>
        <source>over 240 min</source>
        <translation>plus de 240&#xa0;min</translation>
    </message>
    <message>
        <source>%1: %2 is likely first at %3, after %4 (10 to 90 of 100 dives: %5 to %6). All last the planned dive in %7 dives.</source>
        <translation>%1&#xa0;: %2 devrait atteindre %3 en premier, après %4 (10 à 90 plongées sur 100&#xa0;: %5 à %6). Plongées où l’air suffit à tous pour la durée prévue&#xa0;: %7.</translation>
    </message>
    <message>
        <source>    Would help most: %1
</source>
        <translation>    Aiderait le plus&#xa0;: %1
</translation>
    </message>
    <message>
        <source>%1: the instructor keeps at least %2.
</source>
        <translation>%1&#xa0;: le moniteur garde au moins %2.
</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>Too cold after</source>
        <translation>Trop froid après</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>Lead to try first</source>
        <translation>Lest à essayer d’abord</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>carried</source>
        <translation>porté</translation>
    </message>
    <message>
        <source>Staff</source>
        <translation>Encadrants</translation>
    </message>
    <message>
        <source>Dives today</source>
        <translation>Plongées du jour</translation>
    </message>
    <message>
        <source>Times up</source>
        <translation>Remontées</translation>
    </message>
    <message>
        <source>Days in a row</source>
        <translation>Jours de suite</translation>
    </message>
    <message>
        <source>No-stop time left</source>
        <translation>Sans palier, reste</translation>
    </message>
    <message>
        <source>Before flying</source>
        <translation>Avant l’avion</translation>
    </message>
    <message>
        <source>over 24 h</source>
        <translation>plus de 24&#xa0;h</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1&#xa0;h</translation>
    </message>
    <message>
        <source>    Set aside because: %1
</source>
        <translation>    Écarté parce que&#xa0;: %1
</translation>
    </message>
    <message>
        <source>Readiness: %1 stop, %2 care, %3 note, %4 set aside
</source>
        <translation>État&#xa0;: stop %1, attention %2, note %3, écarté %4
</translation>
    </message>
    <message>
        <source>Deepest %1, %2 there (surface %3); planned %4

</source>
        <translation>Au plus profond %1, là %2 (surface %3)&#x202f;; prévu %4

</translation>
    </message>
    <message>
        <source>RMV</source>
        <translation>VRM</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Début</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Demi-tour</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Quitter</translation>
    </message>
    <message>
        <source>Signal</source>
        <translation>Signe</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Reserve after</source>
        <translation>Réserve après</translation>
    </message>
    <message>
        <source>
Estimates for planning, on the side of more air used. The gauge, the guest&apos;s signal, shivering and the instructor decide. Lead: check at the surface. Staff: the diver&apos;s own computer and a physician prevail.
</source>
        <translation>
Estimations pour préparer, comptant plutôt trop d’air consommé. Le manomètre, le signe du client, le frisson et le moniteur décident. Lest&#xa0;: à vérifier en surface. Encadrants&#xa0;: l’ordinateur du plongeur et un médecin priment.
</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Temps</translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation>Prof. max.</translation>
    </message>
    <message>
        <source>Planned end</source>
        <translation>Fin prévue</translation>
    </message>
    <message>
        <source>RMV planned</source>
        <translation>VRM prévu</translation>
    </message>
    <message>
        <source>RMV actual</source>
        <translation>VRM réel</translation>
    </message>
</context>
<context>
    <name>ProfileRefusal</name>
    <message>
        <source>The dive</source>
        <translation>La plongée</translation>
    </message>
    <message>
        <source>The start</source>
        <translation>Le début</translation>
    </message>
    <message>
        <source>Corner %1</source>
        <translation>Point %1</translation>
    </message>
    <message>
        <source>Not changed: %1 would be at %2 min, not later than the corner before it at %3 min. Times must grow from corner to corner.</source>
        <translation>Non modifié&#xa0;: %1 serait à %2&#xa0;min, pas après le point précédent à %3&#xa0;min. Les temps doivent croître d’un point à l’autre.</translation>
    </message>
    <message>
        <source>Not changed: %1 would be at %2 min; a dive may last %3 min.</source>
        <translation>Non modifié&#xa0;: %1 serait à %2&#xa0;min&#x202f;; une plongée peut durer %3&#xa0;min.</translation>
    </message>
    <message>
        <source>Not changed: %1 would be at %2 m; possible is %3 m.</source>
        <translation>Non modifié&#xa0;: %1 serait à %2&#xa0;m&#x202f;; possible&#xa0;: %3&#xa0;m.</translation>
    </message>
    <message>
        <source>Not changed: a dive starts and ends at the surface.</source>
        <translation>Non modifié&#xa0;: une plongée commence et finit à la surface.</translation>
    </message>
    <message>
        <source>Not changed: a dive has %1 corners with its start.</source>
        <translation>Non modifié&#xa0;: une plongée a %1 points, début compris.</translation>
    </message>
    <message>
        <source>Not changed. %1</source>
        <translation>Non modifié. %1</translation>
    </message>
</context>
<context>
    <name>ProfileView</name>
    <message>
        <source>At most %1</source>
        <translation>%1 au plus</translation>
    </message>
    <message>
        <source>Usual %1</source>
        <translation>Habituel %1</translation>
    </message>
    <message>
        <source>Bottom %1</source>
        <translation>Fond %1</translation>
    </message>
    <message>
        <source>down</source>
        <translation>descente</translation>
    </message>
    <message>
        <source>up</source>
        <translation>remontée</translation>
    </message>
    <message>
        <source>too fast: at most %1</source>
        <translation>trop vite&#xa0;: %1 au plus</translation>
    </message>
    <message>
        <source>88.8 m</source>
        <translation>88.8&#xa0;m</translation>
    </message>
    <message>
        <source> (below this view)</source>
        <translation> (sous cette vue)</translation>
    </message>
    <message>
        <source>240 min</source>
        <translation>240&#xa0;min</translation>
    </message>
    <message>
        <source>Clear ears every %1</source>
        <translation>Équilibrer tous les %1</translation>
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
        <translation>%1&#xa0;ft %2&#xa0;in</translation>
    </message>
    <message>
        <source>ddd d MMMM yyyy</source>
        <translation>ddd d MMMM yyyy</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <comment>day, name of the month, year</comment>
        <translation>%1 %2 %3</translation>
    </message>
</context>
<context>
    <name>RecoverySheet</name>
    <message>
        <source>Recovery key of the health vault</source>
        <translation>Clé de secours du coffre santé</translation>
    </message>
    <message>
        <source>Made on %1</source>
        <translation>Faite le %1</translation>
    </message>
    <message>
        <source>Whoever has this paper and the records can read every guest&apos;s health answers. Keep it locked away, apart from the computer. Do not photograph it.</source>
        <translation>Qui a ce papier et le registre peut lire les réponses de santé de tous les clients. Gardez-le sous clé, loin de l’ordinateur. Ne le photographiez pas.</translation>
    </message>
    <message>
        <source>It opens the vault when the passphrase is forgotten or the computer&apos;s keyring is lost: choose &quot;Use the recovery key&quot; when unlocking. The nine groups hold no 0, 1, I or O. Small letters will do.</source>
        <translation>Elle ouvre le coffre quand la phrase secrète est oubliée ou le trousseau de l’ordinateur perdu&#xa0;: choisissez «&#xa0;Utiliser la clé de secours&#xa0;» à l’ouverture. Les neuf groupes ne contiennent ni 0, ni 1, ni I, ni O. Les minuscules conviennent aussi.</translation>
    </message>
    <message>
        <source>Without passphrase and without this paper nobody can open the vault any more, nor can the makers of Leadline.</source>
        <translation>Sans phrase secrète et sans ce papier, plus personne ne peut ouvrir le coffre, pas même les auteurs de Leadline.</translation>
    </message>
    <message>
        <source>Records: %1</source>
        <translation>Registre&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>Roster</name>
    <message>
        <source>(no name)</source>
        <translation>(sans nom)</translation>
    </message>
    <message>
        <source>Instructor, no name yet</source>
        <translation>Moniteur, encore sans nom</translation>
    </message>
    <message>
        <source>Assistant, no name yet</source>
        <translation>Assistant, encore sans nom</translation>
    </message>
    <message numerus="yes">
        <source>%n stops</source>
        <translation>
            <numerusform>%n stop</numerusform>
            <numerusform>%n stops</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n care</source>
        <translation>
            <numerusform>%n × attention</numerusform>
            <numerusform>%n × attention</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RuleSets</name>
    <message>
        <source>House rules of the centre</source>
        <translation>Règles maison du centre</translation>
    </message>
    <message>
        <source>Flying after diving workshop, 2002</source>
        <translation>Atelier sur le vol après la plongée, 2002</translation>
    </message>
    <message>
        <source>France, Code du sport</source>
        <translation>France, Code du sport</translation>
    </message>
    <message>
        <source>France, federation rules for children</source>
        <translation>France, règles fédérales pour les enfants</translation>
    </message>
    <message>
        <source>ISO 11121:2017</source>
        <translation>ISO 11121:2017</translation>
    </message>
    <message>
        <source>Maldives, regulation of 2003</source>
        <translation>Maldives, règlement de 2003</translation>
    </message>
    <message>
        <source>Queensland, recreational diving code</source>
        <translation>Queensland, code de la plongée de loisir</translation>
    </message>
    <message>
        <source>RSTC introductory scuba experience, 2001</source>
        <translation>RSTC, plongée de découverte, 2001</translation>
    </message>
    <message>
        <source>Spain, Royal Decree 550/2020</source>
        <translation>Espagne, décret royal 550/2020</translation>
    </message>
    <message>
        <source>Thailand, measures of 2025</source>
        <translation>Thaïlande, mesures de 2025</translation>
    </message>
    <message>
        <source>%1</source>
        <comment>a source in English: put it into quotation marks</comment>
        <translation>«&#xa0;%1&#xa0;»</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Suit</source>
        <translation>Combinaison</translation>
    </message>
    <message>
        <source>BCD</source>
        <translation>Gilet</translation>
    </message>
    <message>
        <source>Fins</source>
        <translation>Palmes</translation>
    </message>
    <message>
        <source>Mask</source>
        <translation>Masque</translation>
    </message>
    <message>
        <source>Regulator</source>
        <translation>Détendeur</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Lest</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Bouteille</translation>
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
        <translation>Une aide à la préparation&#xa0;: les chiffres peuvent être faux. Les manomètres, les règles locales et le moniteur sur place décident.</translation>
    </message>
    <message>
        <source>Metric units</source>
        <translation>Métrique</translation>
    </message>
    <message>
        <source>Imperial units</source>
        <translation>Impérial</translation>
    </message>
    <message>
        <source>%1 · %2 · meet %3 · in the water %4</source>
        <comment>site, day, times</comment>
        <translation>%1 · %2 · RDV %3 · à l’eau %4</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 sur %2</translation>
    </message>
</context>
<context>
    <name>SheetNames</name>
    <message>
        <source>A card for each guest to take along</source>
        <translation>Une fiche à emporter pour chaque client</translation>
    </message>
    <message>
        <source>A page for each group, for the instructor</source>
        <translation>Une page par palanquée, pour le moniteur</translation>
    </message>
    <message>
        <source>Who has practised what, to tick off</source>
        <translation>Qui a exercé quoi, à cocher</translation>
    </message>
    <message>
        <source>What to pack, for whom and how many</source>
        <translation>Ce qu’il faut emporter, pour qui et combien</translation>
    </message>
    <message>
        <source>A page for the wall at the site</source>
        <translation>Une page à afficher sur le site</translation>
    </message>
    <message>
        <source>Signals and air in pictures</source>
        <translation>Signes et air en images</translation>
    </message>
    <message>
        <source>Cards</source>
        <translation>Fiches</translation>
    </message>
    <message>
        <source>Beach sheet</source>
        <translation>Feuille de plage</translation>
    </message>
    <message>
        <source>Skills</source>
        <translation>Exercices</translation>
    </message>
    <message>
        <source>Kit list</source>
        <translation>Liste de matériel</translation>
    </message>
    <message>
        <source>Emergency plan</source>
        <translation>Plan d’urgence</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Images</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>session: sheet</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>ShortNames</name>
    <message>
        <source>(no name)</source>
        <translation>(sans nom)</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 et %n autre</numerusform>
            <numerusform>%1 et %n autres</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SkillsSheet</name>
    <message>
        <source>Skills</source>
        <translation>Exercices</translation>
    </message>
    <message>
        <source>No skills are chosen for this session.</source>
        <translation>Aucun exercice n’est choisi pour cette séance.</translation>
    </message>
    <message>
        <source>Nobody is in this group yet.</source>
        <translation>Encore personne dans cette palanquée.</translation>
    </message>
    <message>
        <source>What each is for</source>
        <translation>À quoi sert chacun</translation>
    </message>
    <message>
        <source>A list to work by: the instructor judges whether a skill is mastered.</source>
        <translation>Une liste de travail&#xa0;: le moniteur juge si un exercice est maîtrisé.</translation>
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
        <translation>Au plus %1 plongées par jour (%2&#xa0;: %3).</translation>
    </message>
    <message>
        <source>At most %1 times up a day (%2: %3).</source>
        <translation>Au plus %1 remontées par jour (%2&#xa0;: %3).</translation>
    </message>
    <message>
        <source>At most %1 days with a dive in a row (%2: %3).</source>
        <translation>Au plus %1 jours de suite avec plongée (%2&#xa0;: %3).</translation>
    </message>
    <message>
        <source>Limits: the chosen rule sets name none for staff.</source>
        <translation>Limites&#xa0;: les jeux de règles choisis n’en donnent aucune pour les encadrants.</translation>
    </message>
    <message>
        <source>Limits: %1</source>
        <translation>Limites&#xa0;: %1</translation>
    </message>
    <message>
        <source>at the worst moment of this dive</source>
        <translation>au pire moment de cette plongée</translation>
    </message>
    <message>
        <source>before this session</source>
        <translation>avant cette séance</translation>
    </message>
    <message>
        <source>%1: going straight up %2 would use %3 of what the house allows; nearest to its limit is tissue %4 of 16 (half-time %5 min).</source>
        <translation>%1&#xa0;: remonter directement %2 utiliserait %3 de ce que les règles maison autorisent&#x202f;; le plus près de sa limite est le tissu %4 sur 16 (période %5&#xa0;min).</translation>
    </message>
    <message>
        <source>%1: no load above that of the surface.</source>
        <translation>%1&#xa0;: aucune charge au-dessus de celle de la surface.</translation>
    </message>
    <message>
        <source>Before flying %1: %2.</source>
        <translation>Avant l’avion %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 Set aside: %2</source>
        <translation>%1 Écarté&#xa0;: %2</translation>
    </message>
    <message>
        <source>needs a stop</source>
        <translation>palier nécessaire</translation>
    </message>
    <message>
        <source>over a limit</source>
        <translation>limite dépassée</translation>
    </message>
    <message>
        <source>Over a limit, set aside</source>
        <translation>Limite dépassée, écarté</translation>
    </message>
    <message>
        <source>Does not dive now</source>
        <translation>Ne plonge pas maintenant</translation>
    </message>
    <message>
        <source>Within limits</source>
        <translation>Dans les limites</translation>
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
            <numerusform>%n jour</numerusform>
            <numerusform>%n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>No record</source>
        <translation>Rien de noté</translation>
    </message>
    <message>
        <source>over 24 h</source>
        <translation>plus de 24&#xa0;h</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>%1: %2 Set aside: %3</source>
        <translation>%1&#xa0;: %2 Écarté&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1 – %2: %3</source>
        <translation>%1 – %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Within the limits: %1.</source>
        <translation>Dans les limites&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Does not dive in this session: %1.</source>
        <translation>Ne plonge pas dans cette séance&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Taken as rested, as no earlier dive is on record: %1. Enter dives on the Roster tab, Groups and staff, with the button in the column Dives.</source>
        <translation>Comptés comme reposés, aucune plongée antérieure n’étant enregistrée&#xa0;: %1. Saisissez les plongées dans l’onglet Clients, Palanquées et encadrants, avec le bouton de la colonne Plongées.</translation>
    </message>
    <message>
        <source>Nitrogen in sixteen tissues by ZH-L16C (Bühlmann, Tauchmedizin, 1995; Bühlmann, Völlm and Nussberger, 2002; partly from memory), with gradient factors %1/%2 of the house: common practice, no source. With %2 at the surface no time without a stop is longer than in the DCIEM table of 1992 (to %3) or in the U.S. Navy&apos;s Revision 7 (to %4). What is left without a stop is at the deepest planned point before this session, rounded down.</source>
        <translation>Azote dans seize tissus par ZH-L16C (Bühlmann, Tauchmedizin, 1995&#x202f;; Bühlmann, Völlm et Nussberger, 2002&#x202f;; en partie de mémoire), avec les facteurs de gradient %1/%2 de la maison&#xa0;: usage courant, sans source. Avec %2 en surface, aucun temps sans palier n’est plus long que dans la table DCIEM de 1992 (jusqu’à %3) ou dans la révision 7 de l’U.S. Navy (jusqu’à %4). Ce qui reste sans palier vaut au point prévu le plus profond avant cette séance, arrondi vers le bas.</translation>
    </message>
    <message>
        <source>What is not known of an earlier dive is taken as what loads more: down at once at %1, at the deepest point for all of its time, up at %2; at an altitude as if just come from the sea. Expected ascents with a guest come on top of the planned time, and no gas lost on them is credited. Dives of the %3 days before this one count.</source>
        <translation>Ce qu’on ne sait pas d’une plongée antérieure est pris comme ce qui charge le plus&#xa0;: descente immédiate à %1, au point le plus profond pendant toute sa durée, remontée à %2&#x202f;; en altitude, comme si l’on arrivait de la mer. Les remontées attendues avec un client s’ajoutent au temps prévu, et aucun gaz éliminé pendant celles-ci n’est déduit. Les plongées des %3 jours précédents comptent.</translation>
    </message>
    <message>
        <source>Flying: %1 h after a single dive, %2 h after repeated dives, %3 h after a dive with stops: the longer of the DAN workshop of 2002 and the UHMS workshop of 1989.</source>
        <translation>Avion&#xa0;: %1&#xa0;h après une plongée unique, %2&#xa0;h après des plongées successives, %3&#xa0;h après une plongée avec paliers&#xa0;: le plus long entre l’atelier DAN de 2002 et l’atelier UHMS de 1989.</translation>
    </message>
    <message>
        <source>Outside the model: bubbles and what repeated ascents do to them, cold, work, dehydration and age. Each ascent carries its own risk.</source>
        <translation>Hors du modèle&#xa0;: les bulles et ce que leur font des remontées répétées, le froid, l’effort, la déshydratation et l’âge. Chaque remontée porte son propre risque.</translation>
    </message>
</context>
<context>
    <name>UnsavedQuestion</name>
    <message>
        <source>Not saved</source>
        <translation>Non enregistré</translation>
    </message>
    <message>
        <source>The last changes to this session are not saved.</source>
        <translation>Les derniers changements de cette séance ne sont pas enregistrés.</translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>&amp;Réessayer</translation>
    </message>
    <message>
        <source>&amp;Write to a file…</source>
        <translation>Écrire dans un &amp;fichier…</translation>
    </message>
    <message>
        <source>&amp;Lose them</source>
        <translation>&amp;Les perdre</translation>
    </message>
    <message>
        <source>&amp;Go back</source>
        <translation>R&amp;evenir</translation>
    </message>
</context>
<context>
    <name>VaultDialogs</name>
    <message>
        <source>Your name</source>
        <translation>Votre nom</translation>
    </message>
    <message>
        <source>Stands in the audit trail.</source>
        <translation>Figure dans le journal d’accès.</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>En cours</translation>
    </message>
</context>
<context>
    <name>VaultWords</name>
    <message>
        <source>Passphrase</source>
        <translation>Phrase secrète</translation>
    </message>
    <message>
        <source>Keyring</source>
        <translation>Trousseau</translation>
    </message>
    <message>
        <source>Recovery key</source>
        <translation>Clé de secours</translation>
    </message>
    <message>
        <source>Set the vault up</source>
        <translation>Coffre créé</translation>
    </message>
    <message>
        <source>Unlocked</source>
        <translation>Ouvert</translation>
    </message>
    <message>
        <source>Failed to unlock</source>
        <translation>Ouverture manquée</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Verrouillé</translation>
    </message>
    <message>
        <source>Changed the passphrase</source>
        <translation>Phrase secrète changée</translation>
    </message>
    <message>
        <source>Set a way to unlock</source>
        <translation>Moyen d’ouverture ajouté</translation>
    </message>
    <message>
        <source>Removed a way to unlock</source>
        <translation>Moyen d’ouverture retiré</translation>
    </message>
    <message>
        <source>Wrote a record</source>
        <translation>Élément écrit</translation>
    </message>
    <message>
        <source>Opened a record</source>
        <translation>Élément ouvert</translation>
    </message>
    <message>
        <source>Exported records</source>
        <translation>Éléments exportés</translation>
    </message>
    <message>
        <source>Erased a record</source>
        <translation>Élément effacé</translation>
    </message>
    <message>
        <source>Erased a record without the vault&apos;s key</source>
        <translation>Élément effacé sans la clé du coffre</translation>
    </message>
    <message>
        <source>Moved a record to this guest</source>
        <translation>Élément déplacé vers ce client</translation>
    </message>
    <message>
        <source>Found this list broken</source>
        <translation>Cette liste trouvée rompue</translation>
    </message>
    <message>
        <source>Screening answers</source>
        <translation>Réponses du contrôle santé</translation>
    </message>
    <message>
        <source>Physician&apos;s note</source>
        <translation>Note du médecin</translation>
    </message>
    <message>
        <source>Emergency contact</source>
        <translation>Personne à prévenir</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Signature</translation>
    </message>
    <message>
        <source>at entry %1</source>
        <translation>à l’entrée %1</translation>
    </message>
    <message>
        <source>Broken at entry %1: it was changed outside Leadline.</source>
        <translation>Rompue à l’entrée %1&#xa0;: elle a été modifiée hors de Leadline.</translation>
    </message>
    <message>
        <source>Broken at entry %1: it is missing.</source>
        <translation>Rompue à l’entrée %1&#xa0;: elle manque.</translation>
    </message>
    <message>
        <source>Broken at entry %1: it and what came after were cut off.</source>
        <translation>Rompue à l’entrée %1&#xa0;: elle et la suite ont été coupées.</translation>
    </message>
    <message>
        <source>Broken: entries up to %1 were written anew outside Leadline.</source>
        <translation>Rompue&#xa0;: les entrées jusqu’à %1 ont été réécrites hors de Leadline.</translation>
    </message>
    <message>
        <source>Broken at entry %1: the seal over the list is missing or false.</source>
        <translation>Rompue à l’entrée %1&#xa0;: le sceau de la liste manque ou est faux.</translation>
    </message>
    <message>
        <source>Broken at entry %1: it was not written by an open vault.</source>
        <translation>Rompue à l’entrée %1&#xa0;: elle n’a pas été écrite par un coffre ouvert.</translation>
    </message>
    <message>
        <source>This list was found broken before: see entry %1.</source>
        <translation>Cette liste a déjà été trouvée rompue&#xa0;: voir l’entrée %1.</translation>
    </message>
</context>
<context>
    <name>leadline::AirPage</name>
    <message>
        <source>Cylinder, reading, temperature, breathing and RMV can be changed in the table: choose a cell and type, or press F2.</source>
        <translation>Bouteille, lecture, température, respiration et VRM se modifient dans le tableau&#xa0;: choisissez une cellule et tapez, ou appuyez sur F2.</translation>
    </message>
    <message>
        <source>Estimates for planning, on the high side of use. In the water the gauge, the guest&apos;s signal and the instructor decide.</source>
        <translation>Estimations pour préparer, comptant plutôt trop d’air consommé. Dans l’eau, le manomètre, le signe du client et le moniteur décident.</translation>
    </message>
    <message>
        <source>Air of each guest</source>
        <translation>Air de chaque client</translation>
    </message>
</context>
<context>
    <name>leadline::AnswerChoice</name>
    <message>
        <source>not answered</source>
        <translation>sans réponse</translation>
    </message>
</context>
<context>
    <name>leadline::AuditDialog</name>
    <message numerus="yes">
        <source>%n entries, none changed or missing.</source>
        <translation>
            <numerusform>%n entrée, ni modifiée ni manquante.</numerusform>
            <numerusform>%n entrées, aucune modifiée ni manquante.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 Whether the end was cut off shows only when the vault is unlocked.</source>
        <translation>%1 Une coupure à la fin ne se voit que lorsque le coffre est ouvert.</translation>
    </message>
    <message>
        <source>Audit trail of the health vault</source>
        <translation>Journal d’accès du coffre santé</translation>
    </message>
    <message>
        <source>Audit trail, newest first</source>
        <translation>Journal d’accès, le plus récent d’abord</translation>
    </message>
    <message>
        <source>Check &amp;again</source>
        <translation>&amp;Revérifier</translation>
    </message>
    <message>
        <source>&quot;Who&quot; is the name given when unlocking; nobody checks it. A file put back to an older state as a whole is not noticed.</source>
        <translation>«&#xa0;Qui&#xa0;» est le nom donné à l’ouverture&#x202f;; personne ne le vérifie. Un fichier remis en entier à un état antérieur n’est pas remarqué.</translation>
    </message>
    <message>
        <source>%1 Records taken out of the file from outside: %2.</source>
        <translation>%1 Éléments retirés du fichier de l’extérieur&#xa0;: %2.</translation>
    </message>
</context>
<context>
    <name>leadline::AuditModel</name>
    <message>
        <source>no longer on record (%1)</source>
        <translation>plus enregistré (%1)</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N°</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>Of what</source>
        <translation>Sur quoi</translation>
    </message>
</context>
<context>
    <name>leadline::BackupsDialog</name>
    <message>
        <source>By itself</source>
        <translation>Automatique</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation>À la main</translation>
    </message>
    <message>
        <source>Before a copy was put back</source>
        <translation>Avant la restauration d’une copie</translation>
    </message>
    <message>
        <source>Damaged records, kept as they were</source>
        <translation>Registre endommagé, gardé tel quel</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Arrêter</translation>
    </message>
    <message>
        <source>Copies of the records</source>
        <translation>Copies du registre</translation>
    </message>
    <message>
        <source>Put back from a file</source>
        <translation>Restaurer d’un fichier</translation>
    </message>
    <message>
        <source>Copies and exports (*.sqlite *.json);;All files (*)</source>
        <translation>Copies et exports (*.sqlite *.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Write everything into a folder</source>
        <translation>Tout exporter dans un dossier</translation>
    </message>
    <message>
        <source>While Leadline is open it makes a copy a day of records that have changed: it keeps the last 7 days, then one a week for 8 weeks and one a month for 12 months. They lie in the folder %1. A copy on the same disk does not help when the disk is lost: now and then take one to another place.</source>
        <translation>Tant que Leadline est ouvert, il fait une copie par jour du registre s’il a changé&#xa0;: il garde les 7 derniers jours, puis une par semaine pendant 8 semaines et une par mois pendant 12 mois. Elles sont dans le dossier %1. Une copie sur le même disque n’aide pas si le disque est perdu&#xa0;: de temps en temps, emportez-en une ailleurs.</translation>
    </message>
    <message>
        <source>A copy still holds guests who were erased after it was made. To erase a guest for good, delete the copies from before as well. In a copy, too, only the vault is sealed.</source>
        <translation>Une copie contient encore les clients effacés après sa création. Pour effacer un client pour de bon, supprimez aussi les copies d’avant. Dans une copie aussi, seul le coffre est scellé.</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Avancement</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Faite</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Contrôle</translation>
    </message>
    <message>
        <source>&amp;Make a copy now</source>
        <translation>Faire &amp;une copie</translation>
    </message>
    <message>
        <source>&amp;Put back…</source>
        <translation>&amp;Restaurer…</translation>
    </message>
    <message>
        <source>Put back from a &amp;file…</source>
        <translation>Restaurer &amp;d’un fichier…</translation>
    </message>
    <message>
        <source>&amp;Delete…</source>
        <translation>&amp;Supprimer…</translation>
    </message>
    <message>
        <source>&amp;Write everything out…</source>
        <translation>&amp;Tout exporter…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>checking…</source>
        <translation>contrôle…</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>intacte</translation>
    </message>
    <message>
        <source>not whole</source>
        <translation>pas intacte</translation>
    </message>
    <message>
        <source>Making a copy…</source>
        <translation>Copie en cours…</translation>
    </message>
    <message>
        <source>Made and checked: %1</source>
        <translation>Faite et contrôlée&#xa0;: %1</translation>
    </message>
    <message>
        <source>made %1</source>
        <translation>faite le %1</translation>
    </message>
    <message>
        <source>Reading the copy…</source>
        <translation>Lecture de la copie…</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Rien n’a été modifié.</translation>
    </message>
    <message>
        <source>Nothing was changed, because the open session is not saved. %1</source>
        <translation>Rien n’a été modifié, car la séance ouverte n’est pas enregistrée. %1</translation>
    </message>
    <message>
        <source>Putting the copy back…</source>
        <translation>Restauration de la copie…</translation>
    </message>
    <message>
        <source>The copy %1 is in place. What stood there before is in the list.</source>
        <translation>La copie %1 est en place. Ce qu’il y avait avant est dans la liste.</translation>
    </message>
    <message>
        <source>Delete a copy</source>
        <translation>Supprimer une copie</translation>
    </message>
    <message>
        <source>Delete the copy made %1 for good? The records themselves stay.</source>
        <translation>Supprimer pour de bon la copie faite le %1&#x202f;? Le registre lui-même reste.</translation>
    </message>
    <message>
        <source>&amp;Delete it</source>
        <translation>Suppri&amp;mer</translation>
    </message>
    <message>
        <source>Deleted.</source>
        <translation>Supprimée.</translation>
    </message>
    <message>
        <source>Writing everything out…</source>
        <translation>Exportation en cours…</translation>
    </message>
    <message>
        <source>Written to %1. Names, phone numbers and outcomes stand open in it: keep it safe.</source>
        <translation>Exporté dans %1. Noms, téléphones et résultats y sont en clair&#xa0;: gardez-le en lieu sûr.</translation>
    </message>
    <message>
        <source>ddd d MMM yyyy  hh:mm</source>
        <comment>date and time; the letters stay</comment>
        <translation>ddd d MMM yyyy  hh:mm</translation>
    </message>
</context>
<context>
    <name>leadline::BirthDateLine</name>
    <message>
        <source>Day/month/year</source>
        <translation>Jour/mois/année</translation>
    </message>
    <message>
        <source>17/5/1990, 17 May 1990 or 1990-05-17</source>
        <translation>17/5/1990, 17 mai 1990 ou 1990-05-17</translation>
    </message>
</context>
<context>
    <name>leadline::BookingImportDialog</name>
    <message>
        <source>Choose…</source>
        <translation>Choisir…</translation>
    </message>
    <message>
        <source>Import a booking list</source>
        <translation>Importer une liste de réservations</translation>
    </message>
    <message>
        <source>Reading the list</source>
        <translation>Lecture de la liste</translation>
    </message>
    <message>
        <source>&amp;Dates are written as</source>
        <translation>&amp;Dates écrites en</translation>
    </message>
    <message>
        <source>&amp;Weights are in</source>
        <translation>&amp;Poids en</translation>
    </message>
    <message>
        <source>&amp;Heights are in</source>
        <translation>&amp;Tailles en</translation>
    </message>
    <message>
        <source>The booking list</source>
        <translation>La liste de réservations</translation>
    </message>
    <message>
        <source>&amp;Next message</source>
        <translation>&amp;Message suivant</translation>
    </message>
    <message>
        <source>The next cell with something to be looked at</source>
        <translation>La prochaine cellule à regarder</translation>
    </message>
    <message>
        <source>&amp;Leave out rows with errors</source>
        <translation>&amp;Omettre les lignes avec erreurs</translation>
    </message>
    <message>
        <source>Reading %1…</source>
        <translation>Lecture de %1…</translation>
    </message>
    <message>
        <source>%1: %2 rows.</source>
        <translation>%1&#xa0;: %2 lignes.</translation>
    </message>
    <message>
        <source>The file does not say how its letters are written; they were read as Windows-1252. Check names with accents.</source>
        <translation>Le fichier ne dit pas comment ses lettres sont codées&#x202f;; elles ont été lues en Windows-1252. Vérifiez les noms accentués.</translation>
    </message>
    <message>
        <source>No headings were found: choose what each column means.</source>
        <translation>Aucun en-tête trouvé&#xa0;: choisissez le sens de chaque colonne.</translation>
    </message>
    <message>
        <source>No column says the language: English is put.</source>
        <translation>Aucune colonne ne donne la langue&#xa0;: anglais par défaut.</translation>
    </message>
    <message>
        <source>as the list itself says</source>
        <translation>comme le dit la liste</translation>
    </message>
    <message>
        <source>The list is written in more than one way. Choose one; the cells that do not fit will be shown.</source>
        <translation>La liste est écrite de plusieurs façons. Choisissez-en une&#x202f;; les cellules qui ne conviennent pas seront montrées.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read in more than one way. Please choose.</source>
        <translation>«&#xa0;%1&#xa0;» peut se lire de plusieurs façons. Veuillez choisir.</translation>
    </message>
    <message>
        <source>A cell</source>
        <translation>Une cellule</translation>
    </message>
    <message numerus="yes">
        <source>&amp;Add %n guests</source>
        <translation>
            <numerusform>&amp;Ajouter %n client</numerusform>
            <numerusform>&amp;Ajouter %n clients</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows with errors</source>
        <translation>
            <numerusform>%n ligne avec erreurs</numerusform>
            <numerusform>%n lignes avec erreurs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n there already</source>
        <translation>
            <numerusform>%n déjà là</numerusform>
            <numerusform>%n déjà là</numerusform>
        </translation>
    </message>
    <message>
        <source>There is nothing else to be looked at.</source>
        <translation>Il n’y a rien d’autre à regarder.</translation>
    </message>
    <message>
        <source>A session holds %1 guests at most; there is room for %2 more. Untick some.</source>
        <translation>Une séance contient %1 clients au plus&#x202f;; il reste de la place pour %2. Décochez-en.</translation>
    </message>
    <message numerus="yes">
        <source>Add %n guests</source>
        <translation>
            <numerusform>Ajouter %n client</numerusform>
            <numerusform>Ajouter %n clients</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::BookingModel</name>
    <message>
        <source>Age %1 by the booking list</source>
        <translation>Âge %1&#xa0;ans d’après la liste de réservations</translation>
    </message>
    <message>
        <source>%1; will be added anyway. Untick to leave it out.</source>
        <translation>%1&#x202f;; sera ajouté quand même. Décochez pour l’omettre.</translation>
    </message>
    <message>
        <source>%1; will be left out. Tick to add it anyway.</source>
        <translation>%1&#x202f;; sera omis. Cochez pour l’ajouter quand même.</translation>
    </message>
    <message>
        <source>Add anyway</source>
        <translation>Ajouter quand même</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Omettre</translation>
    </message>
    <message>
        <source>Cannot be added</source>
        <translation>Ne peut pas être ajouté</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Ajouter</translation>
    </message>
    <message>
        <source>In the list: %1</source>
        <translation>Dans la liste&#xa0;: %1</translation>
    </message>
    <message>
        <source>To be added</source>
        <translation>À ajouter</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Colonne %1</translation>
    </message>
</context>
<context>
    <name>leadline::BriefingTab</name>
    <message>
        <source>Put &amp;it right</source>
        <translation>&amp;Corriger</translation>
    </message>
    <message>
        <source>&amp;Go ahead anyway…</source>
        <translation>&amp;Passer outre…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimer…</translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation>&amp;Enregistrer en PDF…</translation>
    </message>
    <message>
        <source>‹ Back</source>
        <translation>‹ Retour</translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation>Suite ›</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>A6, four to an A4 page</source>
        <translation>A6, quatre par page A4</translation>
    </message>
    <message>
        <source>Quarter Letter, four to a page</source>
        <translation>Quart de Letter, quatre par page</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Page précédente</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Page suivante</translation>
    </message>
    <message>
        <source>Cards &amp;for</source>
        <translation>Fic&amp;hes pour</translation>
    </message>
    <message>
        <source>&amp;All</source>
        <translation>&amp;Tous</translation>
    </message>
    <message>
        <source>N&amp;one</source>
        <translation>A&amp;ucun</translation>
    </message>
    <message>
        <source>Card si&amp;ze</source>
        <translation>For&amp;mat des fiches</translation>
    </message>
    <message>
        <source>Real size on s&amp;creen</source>
        <translation>Taille &amp;réelle à l’écran</translation>
    </message>
    <message>
        <source>No guests yet. Add them on the Roster tab.</source>
        <translation>Pas encore de clients. Ajoutez-les dans l’onglet Clients.</translation>
    </message>
    <message>
        <source>No card to show: every ticked guest has a stop, or none is ticked.</source>
        <translation>Aucune fiche à montrer&#xa0;: chaque client coché a un stop, ou aucun n’est coché.</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 sur %2</translation>
    </message>
    <message>
        <source>No pages</source>
        <translation>Aucune page</translation>
    </message>
    <message>
        <source>The printer did not start. Check that it is switched on and try again.</source>
        <translation>L’imprimante n’a pas démarré. Vérifiez qu’elle est allumée et réessayez.</translation>
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
        <translation>Aucune</translation>
    </message>
    <message>
        <source>Gro&amp;up</source>
        <translation>Palan&amp;quée</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Langue</translation>
    </message>
    <message>
        <source>Second lang&amp;uage</source>
        <translation>Deuxième la&amp;ngue</translation>
    </message>
    <message>
        <source>Guest scree&amp;n</source>
        <translation>&amp;Briefing à l’écran</translation>
    </message>
    <message>
        <source>The briefing for guests to look at (F9).</source>
        <translation>Le briefing à montrer aux clients (F9).</translation>
    </message>
    <message>
        <source>A6 paper, one each</source>
        <translation>Papier A6, une par feuille</translation>
    </message>
    <message>
        <source>A5, two to an A4 page</source>
        <translation>A5, deux par page A4</translation>
    </message>
    <message>
        <source>Half Letter, two to a page</source>
        <translation>Demi-Letter, deux par page</translation>
    </message>
    <message>
        <source>A5 paper, one each</source>
        <translation>Papier A5, une par feuille</translation>
    </message>
    <message>
        <source>A4, one each: large type</source>
        <translation>A4, une par feuille&#xa0;: gros caractères</translation>
    </message>
    <message>
        <source>Letter, one each: large type</source>
        <translation>Letter, une par feuille&#xa0;: gros caractères</translation>
    </message>
    <message>
        <source>One page for each group: guests, air, times, heads and the emergency plan. It tells ages and what health checks came to: keep it with the staff.</source>
        <translation>Une page par palanquée&#xa0;: clients, air, heures, comptage et plan d’urgence. Elle dit les âges et le résultat des contrôles santé&#xa0;: gardez-la entre encadrants.</translation>
    </message>
    <message>
        <source>Guests and skills, to tick off in the water.</source>
        <translation>Clients et exercices, à cocher dans l’eau.</translation>
    </message>
    <message>
        <source>Everybody&apos;s kit to tick while packing, and how many of each.</source>
        <translation>Le matériel de chacun à cocher en préparant, et combien de chaque.</translation>
    </message>
    <message>
        <source>For the wall at the site: the number and the plan as entered on the Site tab. No guest stands on it.</source>
        <translation>À afficher sur le site&#xa0;: le numéro et le plan saisis dans l’onglet Site. Aucun client n’y figure.</translation>
    </message>
    <message>
        <source>All signals, the numbers and what pressure does to air here, for guests with whom no language is shared.</source>
        <translation>Tous les signes, les chiffres et ce que la pression fait à l’air ici, pour les clients sans langue commune.</translation>
    </message>
    <message>
        <source>Paper si&amp;ze</source>
        <translation>For&amp;mat du papier</translation>
    </message>
    <message>
        <source>Card size</source>
        <translation>Format des fiches</translation>
    </message>
    <message>
        <source>Paper size</source>
        <translation>Format du papier</translation>
    </message>
    <message>
        <source>All groups</source>
        <translation>Toutes les palanquées</translation>
    </message>
    <message>
        <source>Choose s&amp;kills…</source>
        <translation>Quels e&amp;xercices…</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Enregistrer en PDF</translation>
    </message>
    <message>
        <source>No groups yet. Make them on the Roster tab.</source>
        <translation>Pas encore de palanquées. Formez-les dans l’onglet Clients.</translation>
    </message>
    <message numerus="yes">
        <source>%n cards</source>
        <translation>
            <numerusform>%n fiche</numerusform>
            <numerusform>%n fiches</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n refused: a stop stands</source>
        <translation>
            <numerusform>%n refusée&#xa0;: un stop subsiste</numerusform>
            <numerusform>%n refusées&#xa0;: un stop subsiste</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>guest, language</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>In English, as there is no translation yet: %1.</source>
        <translation>En anglais, faute de traduction&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Without the second language, for the same reason: %1.</source>
        <translation>Sans la deuxième langue, pour la même raison&#xa0;: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 et %n autre</numerusform>
            <numerusform>%1 et %n autres</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pages</source>
        <translation>
            <numerusform>%n page</numerusform>
            <numerusform>%n pages</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n guests are in no group and stand on no sheet.</source>
        <translation>
            <numerusform>%n client n’est dans aucune palanquée et ne figure sur aucune feuille.</numerusform>
            <numerusform>%n clients ne sont dans aucune palanquée et ne figurent sur aucune feuille.</numerusform>
        </translation>
    </message>
    <message>
        <source>No number is entered: the page leaves room to write it. Enter it on the Site tab.</source>
        <translation>Aucun numéro n’est saisi&#xa0;: la page laisse la place de l’écrire. Saisissez-le dans l’onglet Site.</translation>
    </message>
    <message>
        <source>No font here has the letters of: %1. They would print as empty boxes. Install a font for them.</source>
        <translation>Aucune police ici n’a les lettres de&#xa0;: %1. Elles s’imprimeraient comme des cases vides. Installez une police pour elles.</translation>
    </message>
    <message numerus="yes">
        <source>%n pages saved to %1</source>
        <translation>
            <numerusform>%n page enregistrée dans %1</numerusform>
            <numerusform>%n pages enregistrées dans %1</numerusform>
        </translation>
    </message>
    <message>
        <source>No printer is installed on this computer. Save the pages as a PDF instead, or install a printer.</source>
        <translation>Aucune imprimante n’est installée sur cet ordinateur. Enregistrez plutôt les pages en PDF, ou installez une imprimante.</translation>
    </message>
    <message numerus="yes">
        <source>The printer stopped after %n pages.</source>
        <translation>
            <numerusform>L’imprimante s’est arrêtée après %n page.</numerusform>
            <numerusform>L’imprimante s’est arrêtée après %n pages.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pages sent to the printer</source>
        <translation>
            <numerusform>%n page envoyée à l’imprimante</numerusform>
            <numerusform>%n pages envoyées à l’imprimante</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose skills</source>
        <translation>Choisir les exercices</translation>
    </message>
    <message>
        <source>Cut for want of room; shorten it or choose larger cards: %1</source>
        <translation>Coupé faute de place&#x202f;; raccourcissez ou prenez de plus grandes fiches&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n cards have no room for all their words: read them before you hand them out.</source>
        <translation>
            <numerusform>%n fiche n’a pas la place pour tous ses mots&#xa0;: relisez-la avant de la distribuer.</numerusform>
            <numerusform>%n fiches n’ont pas la place pour tous leurs mots&#xa0;: relisez-les avant de les distribuer.</numerusform>
        </translation>
    </message>
    <message>
        <source>The pages before are still being saved. Wait a moment, or stop that.</source>
        <translation>Les pages précédentes sont encore en cours d’enregistrement. Patientez un instant ou arrêtez-le.</translation>
    </message>
</context>
<context>
    <name>leadline::BulkPage</name>
    <message>
        <source>&amp;Put into this group</source>
        <translation>&amp;Mettre dans cette palanquée</translation>
    </message>
    <message>
        <source>Choose one</source>
        <translation>Choisir</translation>
    </message>
    <message>
        <source>&amp;Hand out to all of them</source>
        <translation>Donner à &amp;tous</translation>
    </message>
    <message>
        <source>Gro&amp;up</source>
        <translation>&amp;Palanquée</translation>
    </message>
    <message>
        <source>The same cylinder for each</source>
        <translation>La même bouteille pour chacun</translation>
    </message>
    <message>
        <source>C&amp;ylinder</source>
        <translation>&amp;Bouteille</translation>
    </message>
    <message>
        <source>Fi&amp;lled to</source>
        <translation>Go&amp;nflée à</translation>
    </message>
    <message>
        <source>Gas te&amp;mperature</source>
        <translation>Temp. d&amp;u gaz</translation>
    </message>
    <message numerus="yes">
        <source>%n guests selected</source>
        <translation>
            <numerusform>%n client choisi</numerusform>
            <numerusform>%n clients choisis</numerusform>
        </translation>
    </message>
    <message>
        <source>None</source>
        <translation>Aucune</translation>
    </message>
    <message numerus="yes">
        <source>Put %n guests into a group</source>
        <translation>
            <numerusform>Mettre %n client dans une palanquée</numerusform>
            <numerusform>Mettre %n clients dans une palanquée</numerusform>
        </translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Palanquée</translation>
    </message>
    <message numerus="yes">
        <source>Hand out %n cylinders</source>
        <translation>
            <numerusform>Donner %n bouteille</numerusform>
            <numerusform>Donner %n bouteilles</numerusform>
        </translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Bouteille</translation>
    </message>
</context>
<context>
    <name>leadline::CardEditor</name>
    <message>
        <source>%1 (draft)</source>
        <comment>a language</comment>
        <translation>%1 (brouillon)</translation>
    </message>
    <message>
        <source>%1 (no cards yet)</source>
        <comment>a language</comment>
        <translation>%1 (pas encore de fiches)</translation>
    </message>
    <message>
        <source>As this window</source>
        <translation>Comme cette fenêtre</translation>
    </message>
    <message>
        <source>Metric</source>
        <translation>Métriques</translation>
    </message>
    <message>
        <source>Imperial</source>
        <translation>Impériales</translation>
    </message>
    <message>
        <source>different</source>
        <translation>différent</translation>
    </message>
    <message>
        <source>Card &amp;language</source>
        <translation>&amp;Langue de la fiche</translation>
    </message>
    <message>
        <source>Second lang&amp;uage</source>
        <translation>Deuxième la&amp;ngue</translation>
    </message>
    <message>
        <source>Uni&amp;ts</source>
        <translation>Unité&amp;s</translation>
    </message>
    <message>
        <source>Change the card&apos;s language</source>
        <translation>Modifier la langue de la fiche</translation>
    </message>
    <message>
        <source>Change the card&apos;s second language</source>
        <translation>Modifier la deuxième langue de la fiche</translation>
    </message>
    <message>
        <source>Change the card&apos;s units</source>
        <translation>Modifier les unités de la fiche</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Aucune</translation>
    </message>
    <message>
        <source>Choose a guest to change the card.</source>
        <translation>Choisissez un client pour modifier sa fiche.</translation>
    </message>
    <message>
        <source>Card of %1</source>
        <translation>Fiche de %1</translation>
    </message>
    <message numerus="yes">
        <source>Cards of %n guests</source>
        <translation>
            <numerusform>Fiche de %n client</numerusform>
            <numerusform>Fiches de %n clients</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::CardList</name>
    <message>
        <source>Guests and their cards</source>
        <translation>Clients et leurs fiches</translation>
    </message>
    <message>
        <source>Stop: %1</source>
        <translation>Stop&#xa0;: %1</translation>
    </message>
    <message>
        <source>Ready · %1</source>
        <comment>language</comment>
        <translation>Prêt · %1</translation>
    </message>
</context>
<context>
    <name>leadline::CheckForm</name>
    <message>
        <source>Sign again</source>
        <translation>Signer à nouveau</translation>
    </message>
    <message>
        <source>For the record</source>
        <translation>Pour le dossier</translation>
    </message>
    <message>
        <source>Checked on</source>
        <translation>Contrôlé le</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Contrôlé par</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Choisir…</translation>
    </message>
    <message>
        <source>Own form</source>
        <translation>Formulaire du centre</translation>
    </message>
    <message>
        <source>Outcome by the centre&apos;s own form</source>
        <translation>Résultat du formulaire du centre</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>Outcome of the questions of the day</source>
        <translation>Résultat des questions du jour</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Signature</translation>
    </message>
    <message>
        <source>Emergency contact</source>
        <translation>Personne à prévenir</translation>
    </message>
    <message>
        <source>Name and phone</source>
        <translation>Nom et téléphone</translation>
    </message>
    <message>
        <source>What the physician wrote</source>
        <translation>Ce que le médecin a écrit</translation>
    </message>
    <message>
        <source>Physician&apos;s note</source>
        <translation>Note du médecin</translation>
    </message>
    <message>
        <source>What was answered yes</source>
        <translation>Ce qui a eu la réponse oui</translation>
    </message>
    <message>
        <source>All answers</source>
        <translation>Toutes les réponses</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Sceller</translation>
    </message>
    <message>
        <source>Which answers are sealed</source>
        <translation>Quelles réponses sont scellées</translation>
    </message>
    <message>
        <source>Note: holds 2000 characters; the rest was cut off.</source>
        <translation>Note&#xa0;: contient 2000 caractères&#x202f;; le reste a été coupé.</translation>
    </message>
    <message>
        <source>Nobody named</source>
        <translation>Personne n’est nommé</translation>
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
        <translation>D’après l’altitude</translation>
    </message>
    <message>
        <source>As read at the site itself, not reduced to sea level. Empty: standard atmosphere</source>
        <translation>Lue sur le site même, non ramenée au niveau de la mer. Vide&#xa0;: atmosphère type</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Inconnu</translation>
    </message>
    <message>
        <source>Water temperature</source>
        <translation>Température de l’eau</translation>
    </message>
    <message>
        <source>The coldest the guests will meet</source>
        <translation>La plus froide que les clients rencontreront</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>Température de l’air</translation>
    </message>
    <message>
        <source>Barometer</source>
        <translation>Baromètre</translation>
    </message>
    <message>
        <source>Visibility</source>
        <translation>Visibilité</translation>
    </message>
    <message>
        <source>&amp;Current</source>
        <translation>&amp;Courant</translation>
    </message>
    <message>
        <source>Waves</source>
        <translation>Vagues</translation>
    </message>
    <message>
        <source>Change the water temperature</source>
        <translation>Modifier la température de l’eau</translation>
    </message>
    <message>
        <source>Change the air temperature</source>
        <translation>Modifier la température de l’air</translation>
    </message>
    <message>
        <source>Change the barometer</source>
        <translation>Modifier le baromètre</translation>
    </message>
    <message>
        <source>Change the visibility</source>
        <translation>Modifier la visibilité</translation>
    </message>
    <message>
        <source>Change the waves</source>
        <translation>Modifier les vagues</translation>
    </message>
    <message>
        <source>Change the current</source>
        <translation>Modifier le courant</translation>
    </message>
</context>
<context>
    <name>leadline::CopyTimer</name>
    <message>
        <source>No copy of the records was made. %1</source>
        <translation>Aucune copie du registre n’a été faite. %1</translation>
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
        <translation>Bleu</translation>
    </message>
    <message>
        <source>White</source>
        <translation>Blanc</translation>
    </message>
    <message>
        <source>Green</source>
        <translation>Vert</translation>
    </message>
    <message>
        <source>Silver</source>
        <translation>Argent</translation>
    </message>
    <message>
        <source>Violet</source>
        <translation>Violet</translation>
    </message>
    <message>
        <source>Brown</source>
        <translation>Marron</translation>
    </message>
    <message>
        <source>&amp;Groups and staff</source>
        <translation>Palan&amp;quées et encadrants</translation>
    </message>
    <message>
        <source>Groups and staff</source>
        <translation>Palanquées et encadrants</translation>
    </message>
    <message>
        <source>Add a group</source>
        <translation>Ajouter une palanquée</translation>
    </message>
    <message>
        <source>Add staff</source>
        <translation>Ajouter un encadrant</translation>
    </message>
    <message numerus="yes">
        <source>%n groups</source>
        <translation>
            <numerusform>%n palanquée</numerusform>
            <numerusform>%n palanquées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n staff</source>
        <translation>
            <numerusform>%n encadrant</numerusform>
            <numerusform>%n encadrants</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stops</source>
        <translation>
            <numerusform>%n stop</numerusform>
            <numerusform>%n stops</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n care</source>
        <translation>
            <numerusform>%n × attention</numerusform>
            <numerusform>%n × attention</numerusform>
        </translation>
    </message>
    <message>
        <source>Add group</source>
        <translation>Ajouter une palanquée</translation>
    </message>
</context>
<context>
    <name>leadline::CylinderPicker</name>
    <message>
        <source>Cylinder</source>
        <translation>Bouteille</translation>
    </message>
    <message>
        <source>Gauge reading</source>
        <translation>Lecture du manomètre</translation>
    </message>
    <message>
        <source>Gas temperature when read</source>
        <translation>Température du gaz à la lecture</translation>
    </message>
    <message>
        <source>As the gauge shows it now.</source>
        <translation>Ce que montre le manomètre maintenant.</translation>
    </message>
    <message>
        <source>Of the gas when the gauge was read. Hot from filling or the sun, it holds less.</source>
        <translation>Du gaz à la lecture du manomètre. Chaud de gonflage ou de soleil, il y en a moins.</translation>
    </message>
</context>
<context>
    <name>leadline::DayEdit</name>
    <message>
        <source>d MMM yyyy</source>
        <comment>date; d, MMM and yyyy stay</comment>
        <translation>d MMM yyyy</translation>
    </message>
</context>
<context>
    <name>leadline::DebriefModel</name>
    <message>
        <source>%1 % more</source>
        <translation>%1&#xa0;% de plus</translation>
    </message>
    <message>
        <source>%1 % less</source>
        <translation>%1&#xa0;% de moins</translation>
    </message>
    <message>
        <source>as planned</source>
        <translation>comme prévu</translation>
    </message>
    <message>
        <source>%1, least</source>
        <translation>%1, le moins</translation>
    </message>
    <message>
        <source>not yet known</source>
        <translation>pas encore connu</translation>
    </message>
    <message>
        <source>Air used, over the pressure along the dive (%1). Planned: %2.</source>
        <translation>Air consommé, rapporté à la pression tout au long de la plongée (%1). Prévu&#xa0;: %2.</translation>
    </message>
    <message>
        <source>From %1.</source>
        <translation>De %1.</translation>
    </message>
    <message>
        <source>Trouble</source>
        <translation>Problème</translation>
    </message>
    <message>
        <source>Fine</source>
        <translation>Bien</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Début</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Temps</translation>
    </message>
    <message>
        <source>Ear
trouble</source>
        <translation>Problème
d’oreilles</translation>
    </message>
    <message>
        <source>Breathed,
plan → actual</source>
        <translation>Respiré,
prévu → réel</translation>
    </message>
    <message>
        <source>Than
planned</source>
        <translation>Écart
au prévu</translation>
    </message>
    <message>
        <source>Planned
end</source>
        <translation>Fin
prévue</translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation>Prof.
max.</translation>
    </message>
    <message>
        <source>Mean
depth</source>
        <translation>Prof.
moyenne</translation>
    </message>
    <message>
        <source>Air used,
plan → actual</source>
        <translation>Air consommé,
prévu → réel</translation>
    </message>
    <message>
        <source>Change the log</source>
        <translation>Modifier le relevé</translation>
    </message>
</context>
<context>
    <name>leadline::DebriefTab</name>
    <message>
        <source>Use this &amp;breathing rate</source>
        <translation>Pr&amp;endre cette consommation</translation>
    </message>
    <message>
        <source>Use it for &amp;all</source>
        <translation>&amp;Prendre pour tous</translation>
    </message>
    <message>
        <source>Open a log</source>
        <translation>Ouvrir un relevé</translation>
    </message>
    <message>
        <source>Sessions (*.json);;All files (*)</source>
        <translation>Séances (*.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>No log yet</source>
        <translation>Pas encore de relevé</translation>
    </message>
    <message>
        <source>After the dive, enter each guest&apos;s pressure and time, or open a file that holds the log. Planned and actual then stand side by side.</source>
        <translation>Après la plongée, saisissez la pression et le temps de chaque client, ou ouvrez un fichier qui contient le relevé. Prévu et réel sont alors côte à côte.</translation>
    </message>
    <message>
        <source>Start the &amp;log</source>
        <translation>&amp;Commencer le relevé</translation>
    </message>
    <message>
        <source>&amp;Open a log file…</source>
        <translation>Ouvrir &amp;un relevé…</translation>
    </message>
    <message>
        <source>What should be remembered</source>
        <translation>Ce dont il faut se souvenir</translation>
    </message>
    <message>
        <source>Remove the lo&amp;g</source>
        <translation>Suppri&amp;mer le relevé</translation>
    </message>
    <message>
        <source>&amp;In at</source>
        <translation>Mise à &amp;l’eau</translation>
    </message>
    <message>
        <source>o&amp;ut at</source>
        <translation>&amp;sortie</translation>
    </message>
    <message>
        <source>Hea&amp;ds in</source>
        <translation>Comp&amp;tés à l’eau</translation>
    </message>
    <message>
        <source>ba&amp;ck</source>
        <translation>au &amp;retour</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Note</translation>
    </message>
    <message>
        <source>What the log shows</source>
        <translation>Ce que montre le relevé</translation>
    </message>
    <message>
        <source>Planned and actual for each guest</source>
        <translation>Prévu et réel pour chaque client</translation>
    </message>
    <message>
        <source>Double-click or type to enter pressures and times.</source>
        <translation>Double-cliquez ou tapez pour saisir pressions et temps.</translation>
    </message>
    <message>
        <source>Change the log</source>
        <translation>Modifier le relevé</translation>
    </message>
    <message>
        <source>All back</source>
        <translation>Tous revenus</translation>
    </message>
    <message>
        <source>Stop: count again</source>
        <translation>Stop&#xa0;: recompter</translation>
    </message>
    <message>
        <source>%1: enter each guest&apos;s end pressure and minutes.</source>
        <translation>%1&#xa0;: saisissez la pression de fin et les minutes de chaque client.</translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air so far; still to enter: %3.</source>
        <translation>%1&#xa0;: jusqu’ici, %2 a le moins d’air au retour&#x202f;; encore à saisir&#xa0;: %3.</translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air.</source>
        <translation>%1&#xa0;: %2 a le moins d’air au retour.</translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air, as planned.</source>
        <translation>%1&#xa0;: %2 a le moins d’air au retour, comme prévu.</translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air; %3 was expected to.</source>
        <translation>%1&#xa0;: %2 a le moins d’air au retour&#x202f;; on attendait %3.</translation>
    </message>
    <message>
        <source>No limit was exceeded.</source>
        <translation>Aucune limite n’a été dépassée.</translation>
    </message>
    <message>
        <source>Start the log</source>
        <translation>Commencer le relevé</translation>
    </message>
    <message>
        <source>Remove the log</source>
        <translation>Supprimer le relevé</translation>
    </message>
    <message>
        <source>No rate could be taken over.</source>
        <translation>Aucune consommation n’a pu être reprise.</translation>
    </message>
    <message numerus="yes">
        <source>%n guests will be planned with the rate breathed here.</source>
        <translation>
            <numerusform>%n client sera prévu avec la consommation mesurée ici.</numerusform>
            <numerusform>%n clients seront prévus avec la consommation mesurée ici.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::DuplicatesDialog</name>
    <message>
        <source>Who may be on record twice</source>
        <translation>Qui est peut-être enregistré deux fois</translation>
    </message>
    <message>
        <source>Look before you merge: brothers and sisters share a phone number, twins a birth date. Measured air use of somebody else would mislead.</source>
        <translation>Regardez avant de fusionner&#xa0;: frères et sœurs partagent un téléphone, des jumeaux une date de naissance. La consommation mesurée de quelqu’un d’autre tromperait.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Naissance</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Téléphone</translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation>E-mail</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>Last session</source>
        <translation>Dernière séance</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Séances</translation>
    </message>
    <message>
        <source>One person: &amp;merge</source>
        <translation>&amp;Une personne&#xa0;: fusionner</translation>
    </message>
    <message>
        <source>&amp;Two persons</source>
        <translation>&amp;Deux personnes</translation>
    </message>
    <message>
        <source>&amp;Not now</source>
        <translation>&amp;Pas maintenant</translation>
    </message>
    <message>
        <source>Take &amp;back</source>
        <translation>&amp;Annuler la fusion</translation>
    </message>
    <message>
        <source>Nobody seems to be on record twice.</source>
        <translation>Personne ne semble enregistré deux fois.</translation>
    </message>
    <message>
        <source>That was the last pair.</source>
        <translation>C’était la dernière paire.</translation>
    </message>
    <message>
        <source>Pair %1 of %2</source>
        <translation>Paire %1 sur %2</translation>
    </message>
    <message>
        <source>same name</source>
        <translation>même nom</translation>
    </message>
    <message>
        <source>same name, turned round</source>
        <translation>même nom, inversé</translation>
    </message>
    <message>
        <source>names one letter apart</source>
        <translation>noms à une lettre près</translation>
    </message>
    <message>
        <source>same birth date</source>
        <translation>même date de naissance</translation>
    </message>
    <message>
        <source>same phone number</source>
        <translation>même téléphone</translation>
    </message>
    <message>
        <source>same e-mail</source>
        <translation>même e-mail</translation>
    </message>
    <message>
        <source>but the birth dates differ</source>
        <translation>mais les dates de naissance diffèrent</translation>
    </message>
    <message>
        <source>Signs: %1.</source>
        <translation>Signes&#xa0;: %1.</translation>
    </message>
    <message>
        <source>none; you chose these two</source>
        <translation>aucun&#x202f;; vous avez choisi ces deux-là</translation>
    </message>
    <message>
        <source>Keep %1</source>
        <translation>Garder %1</translation>
    </message>
    <message>
        <source>Merged. All their sessions stand with the one kept.</source>
        <translation>Fusionnés. Toutes leurs séances sont chez celui qui est gardé.</translation>
    </message>
    <message>
        <source>Kept apart. They are not offered again.</source>
        <translation>Gardés à part. Ils ne seront plus proposés.</translation>
    </message>
    <message>
        <source>Taken back: they are two persons again.</source>
        <translation>Annulé&#xa0;: ce sont de nouveau deux personnes.</translation>
    </message>
</context>
<context>
    <name>leadline::EarChart</name>
    <message>
        <source>Pressure on the eardrum on the way down</source>
        <translation>Pression sur le tympan à la descente</translation>
    </message>
    <message>
        <source>Needs opening
%1 to %2</source>
        <translation>À équilibrer
%1 à %2</translation>
    </message>
    <message>
        <source>Tube locks
from %1</source>
        <translation>Trompe bloquée
dès %1</translation>
    </message>
    <message>
        <source>A scarred drum
tore at %1</source>
        <translation>Tympan cicatrisé
déchiré à %1</translation>
    </message>
    <message>
        <source>A healthy drum
tore at %1</source>
        <translation>Tympan sain
déchiré à %1</translation>
    </message>
    <message>
        <source>Feet of water on the eardrum</source>
        <translation>Pieds d’eau sur le tympan</translation>
    </message>
    <message>
        <source>Metres of water on the eardrum</source>
        <translation>Mètres d’eau sur le tympan</translation>
    </message>
    <message>
        <source>Never cleared: locks at %1</source>
        <translation>Sans équilibrer&#xa0;: blocage à %1</translation>
    </message>
    <message>
        <source>Never cleared</source>
        <translation>Sans équilibrer</translation>
    </message>
    <message>
        <source>Cleared every %1</source>
        <translation>Équilibré tous les %1</translation>
    </message>
    <message>
        <source>any drum can tear</source>
        <translation>tout tympan peut se déchirer</translation>
    </message>
    <message>
        <source>a scarred drum can tear</source>
        <translation>un tympan cicatrisé peut se déchirer</translation>
    </message>
    <message>
        <source>tube locked</source>
        <translation>trompe bloquée</translation>
    </message>
    <message>
        <source>needs opening</source>
        <translation>à équilibrer</translation>
    </message>
    <message>
        <source>nothing felt yet</source>
        <translation>rien de ressenti encore</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1&#xa0;: %2, %3</translation>
    </message>
    <message>
        <source>%1 deep, water on the eardrum:</source>
        <translation>%1 de profondeur, eau sur le tympan&#xa0;:</translation>
    </message>
    <message>
        <source>Cleared</source>
        <translation>Équilibré</translation>
    </message>
    <message>
        <source>At %1: cleared %2, never cleared %3.
</source>
        <translation>À %1&#xa0;: en équilibrant %2, sans équilibrer %3.
</translation>
    </message>
    <message>
        <source>In the literature: the tube needs opening at %1 to %2 and locks at %3 (80 to 90; the lower end is the safe side). In the laboratory, scarred drums tore from %4, healthy ones from %5 (Jensen and Bonding, 1993). Pain comes far earlier.</source>
        <translation>Dans les publications&#xa0;: la trompe doit être ouverte entre %1 et %2 et se bloque à %3 (80 à 90&#x202f;; le bas est le côté sûr). En laboratoire, des tympans cicatrisés se sont déchirés dès %4, des sains dès %5 (Jensen et Bonding, 1993). La douleur vient bien plus tôt.</translation>
    </message>
    <message>
        <source>deep</source>
        <translation>prof.</translation>
    </message>
</context>
<context>
    <name>leadline::EarLungPanel</name>
    <message>
        <source>Ears on the way down</source>
        <translation>Oreilles à la descente</translation>
    </message>
    <message>
        <source>Lungs on the way up</source>
        <translation>Poumons à la remontée</translation>
    </message>
</context>
<context>
    <name>leadline::EarlierDivesDialog</name>
    <message>
        <source>Earlier dives</source>
        <translation>Plongées antérieures</translation>
    </message>
    <message>
        <source>Earlier dives of %1</source>
        <translation>Plongées antérieures de %1</translation>
    </message>
    <message>
        <source>Dives of the seven days before this one count. Times are those of this site&apos;s clock.</source>
        <translation>Les plongées des sept jours précédents comptent. Les heures sont celles de l’horloge de ce site.</translation>
    </message>
    <message>
        <source>No dives noted. Add the first one or take them from the records.</source>
        <translation>Aucune plongée notée. Ajoutez la première ou prenez-les du registre.</translation>
    </message>
    <message>
        <source>No dives noted. Add the first one.</source>
        <translation>Aucune plongée notée. Ajoutez la première.</translation>
    </message>
    <message>
        <source>&amp;Add a dive</source>
        <translation>&amp;Ajouter une plongée</translation>
    </message>
    <message>
        <source>Insert, in the table</source>
        <translation>Inser, dans le tableau</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Supprimer</translation>
    </message>
    <message>
        <source>Delete, in the table</source>
        <translation>Suppr, dans le tableau</translation>
    </message>
    <message>
        <source>Remove the chosen dives</source>
        <translation>Supprimer les plongées choisies</translation>
    </message>
    <message>
        <source>&amp;Take from the records</source>
        <translation>&amp;Prendre du registre</translation>
    </message>
    <message>
        <source>Dives with a log in the last seven days that %1 led or helped in.</source>
        <translation>Plongées des sept derniers jours avec relevé que %1 a menées ou aidé à encadrer.</translation>
    </message>
    <message>
        <source>No records are open.</source>
        <translation>Aucun registre n’est ouvert.</translation>
    </message>
    <message>
        <source>People are found by name: enter one first.</source>
        <translation>Les personnes sont trouvées par leur nom&#xa0;: saisissez-en un d’abord.</translation>
    </message>
    <message>
        <source>&amp;Expected ascents during this dive beside the last</source>
        <translation>&amp;Remontées attendues dans cette plongée, en plus de la dernière</translation>
    </message>
    <message>
        <source>Expected ascents during this dive beside the last</source>
        <translation>Remontées attendues dans cette plongée, en plus de la dernière</translation>
    </message>
    <message>
        <source>Going up with a guest or to train an ascent, and down again.</source>
        <translation>Remonter avec un client ou pour s’exercer, puis redescendre.</translation>
    </message>
    <message>
        <source>%1 dives are the most. Remove those that are long past.</source>
        <translation>%1 plongées au plus. Supprimez celles qui sont anciennes.</translation>
    </message>
    <message>
        <source>No dive of the last seven days is on record.</source>
        <translation>Aucune plongée des sept derniers jours n’est enregistrée.</translation>
    </message>
    <message>
        <source>Taken over: %1.</source>
        <translation>Reprises&#xa0;: %1.</translation>
    </message>
    <message>
        <source>In the table already: %1.</source>
        <translation>Déjà dans le tableau&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Dive of %1, %2</source>
        <translation>Plongée du %1, %2</translation>
    </message>
    <message>
        <source>Change earlier dives of %1</source>
        <translation>Modifier les plongées antérieures de %1</translation>
    </message>
</context>
<context>
    <name>leadline::EarlierDivesModel</name>
    <message>
        <source>Times at the surface, the last one included.</source>
        <translation>Passages en surface, le dernier compris.</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Début</translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation>Prof. max.</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutes</translation>
    </message>
    <message>
        <source>Ascents</source>
        <translation>Remontées</translation>
    </message>
</context>
<context>
    <name>leadline::EditDesk</name>
    <message>
        <source>Change %1</source>
        <translation>Modifier&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>leadline::FigurePanel</name>
    <message>
        <source>Why?</source>
        <translation>Pourquoi&#x202f;?</translation>
    </message>
</context>
<context>
    <name>leadline::FindingList</name>
    <message>
        <source>Overruled</source>
        <translation>Écarté</translation>
    </message>
    <message>
        <source>Reason: %1</source>
        <translation>Raison&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>leadline::FindingsPanel</name>
    <message>
        <source>set aside</source>
        <translation>écarté</translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>Montr&amp;er</translation>
    </message>
    <message>
        <source>Go ahead &amp;anyway…</source>
        <translation>Pa&amp;sser outre…</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>Nothing found</source>
        <translation>Rien à signaler</translation>
    </message>
    <message>
        <source>Findings (%1)</source>
        <translation>Constats (%1)</translation>
    </message>
    <message>
        <source>Choose one to see what to do.</source>
        <translation>Choisissez-en un pour voir que faire.</translation>
    </message>
    <message>
        <source>Set aside because: %1</source>
        <translation>Écarté parce que&#xa0;: %1</translation>
    </message>
    <message>
        <source>A check of the program itself.</source>
        <translation>Un contrôle du programme lui-même.</translation>
    </message>
    <message>
        <source>From: %1</source>
        <translation>Source&#xa0;: %1</translation>
    </message>
    <message>
        <source>&amp;Withdraw</source>
        <translation>&amp;Retirer</translation>
    </message>
</context>
<context>
    <name>leadline::GasTab</name>
    <message>
        <source>No guests yet. Add them on the Roster tab and hand out their cylinders; then this tab says how long their air lasts.</source>
        <translation>Pas encore de clients. Ajoutez-les dans l’onglet Clients et donnez-leur des bouteilles&#x202f;; cet onglet dit alors combien de temps dure leur air.</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Ce qu’il faut regarder</translation>
    </message>
    <message>
        <source>A&amp;ir</source>
        <translation>A&amp;ir</translation>
    </message>
    <message>
        <source>Warmth and &amp;lead</source>
        <translation>&amp;Chaleur et lest</translation>
    </message>
    <message>
        <source>S&amp;taff</source>
        <translation>Encadran&amp;ts</translation>
    </message>
    <message>
        <source>Air of the guests</source>
        <translation>Air des clients</translation>
    </message>
    <message>
        <source>&amp;Group</source>
        <translation>Palanq&amp;uée</translation>
    </message>
    <message>
        <source>If so&amp;mething goes wrong</source>
        <translation>En cas de problè&amp;me</translation>
    </message>
    <message>
        <source>Wh&amp;y?</source>
        <translation>&amp;Pourquoi&#x202f;?</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Toutes</translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation>(sans nom)</translation>
    </message>
</context>
<context>
    <name>leadline::GroupList</name>
    <message>
        <source>Group</source>
        <translation>Palanquée</translation>
    </message>
    <message>
        <source>Instructor</source>
        <translation>Moniteur</translation>
    </message>
    <message>
        <source>Assistant</source>
        <translation>Assistant</translation>
    </message>
    <message>
        <source>Guests</source>
        <translation>Clients</translation>
    </message>
    <message>
        <source>Remove group</source>
        <translation>Supprimer la palanquée</translation>
    </message>
    <message>
        <source>Change group</source>
        <translation>Modifier la palanquée</translation>
    </message>
    <message>
        <source>Nobody yet</source>
        <translation>Encore personne</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Aucun</translation>
    </message>
    <message>
        <source>Name of group %1</source>
        <translation>Nom de la palanquée %1</translation>
    </message>
    <message>
        <source>Instructor of group %1</source>
        <translation>Moniteur de la palanquée %1</translation>
    </message>
    <message>
        <source>Assistant of group %1</source>
        <translation>Assistant de la palanquée %1</translation>
    </message>
    <message>
        <source>Remove group %1</source>
        <translation>Supprimer la palanquée %1</translation>
    </message>
    <message numerus="yes">
        <source>%n guests</source>
        <translation>
            <numerusform>%n client</numerusform>
            <numerusform>%n clients</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::GuestBodyModel</name>
    <message>
        <source>Guest</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Palanquée</translation>
    </message>
    <message>
        <source>Feels cold
after</source>
        <translation>Froid
après</translation>
    </message>
    <message>
        <source>Too cold
after</source>
        <translation>Trop froid
après</translation>
    </message>
    <message>
        <source>Lead to try
first</source>
        <translation>Lest à
essayer</translation>
    </message>
    <message>
        <source>Lead
carried</source>
        <translation>Lest
porté</translation>
    </message>
    <message>
        <source>Surface,
full</source>
        <translation>Surface,
pleine</translation>
    </message>
    <message>
        <source>Surface,
at the end</source>
        <translation>Surface,
à la fin</translation>
    </message>
    <message>
        <source>At depth,
full</source>
        <translation>Au fond,
pleine</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>Combinaison</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>Guests; who is likely cold first of a group in bold.</source>
        <translation>Clients&#x202f;; en gras, qui aura sans doute froid le premier de sa palanquée.</translation>
    </message>
    <message>
        <source>The guest&apos;s group.</source>
        <translation>La palanquée du client.</translation>
    </message>
    <message>
        <source>The guest begins to feel cold, in the middle case. Rounded down.</source>
        <translation>Le client commence à avoir froid, cas médian. Arrondi vers le bas.</translation>
    </message>
    <message>
        <source>The body is as cold as it should get, in the middle case; in brackets from the worst to the best case. The first figure in brackets is the safe one. Rounded down.</source>
        <translation>Le corps atteint le froid à ne pas dépasser, cas médian&#x202f;; entre parenthèses, du pire au meilleur cas. Le premier chiffre entre parenthèses est le plus sûr. Arrondi vers le bas.</translation>
    </message>
    <message>
        <source>Start the check at the surface with this much; in brackets from the least to the most it is likely to be, in the pieces in stock. A guest who floats at the end cannot be held down: check near the end too.</source>
        <translation>Commencez le contrôle en surface avec ce lest&#x202f;; entre parenthèses, le moins et le plus qu’il faudra sans doute, avec les plombs en stock. Un client qui flotte à la fin ne peut pas être tenu en bas&#xa0;: vérifiez aussi vers la fin.</translation>
    </message>
    <message>
        <source>What the guest carries: Roster, Kit. The next columns are for this much, or for what to try first while it is open.</source>
        <translation>Ce que porte le client&#xa0;: Clients, Matériel. Les colonnes suivantes valent pour ce lest, ou pour celui à essayer d’abord tant qu’il n’est pas saisi.</translation>
    </message>
    <message>
        <source>With the full cylinder, BCD empty, lungs half full.</source>
        <translation>Bouteille pleine, gilet vide, poumons à moitié pleins.</translation>
    </message>
    <message>
        <source>With the cylinder at the reserve, BCD empty, lungs half full: should be neutral.</source>
        <translation>Bouteille à la réserve, gilet vide, poumons à moitié pleins&#xa0;: devrait être neutre.</translation>
    </message>
    <message>
        <source>At the deepest planned point, suit squeezed, cylinder full, BCD empty: what the BCD must hold.</source>
        <translation>Au point prévu le plus profond, combinaison comprimée, bouteille pleine, gilet vide&#xa0;: ce que le gilet doit porter.</translation>
    </message>
    <message>
        <source>Thickness of the foam, read from the suit&apos;s label.</source>
        <translation>Épaisseur de la mousse, lue sur l’étiquette de la combinaison.</translation>
    </message>
    <message>
        <source>What needs attention, and what is missing.</source>
        <translation>Ce qui demande attention, et ce qui manque.</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1&#xa0;mm</translation>
    </message>
    <message>
        <source>open</source>
        <translation>non saisi</translation>
    </message>
    <message>
        <source>%1 mm: %2 clo at the surface, %3 clo at depth</source>
        <translation>%1&#xa0;mm&#xa0;: %2&#xa0;clo en surface, %3&#xa0;clo au fond</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Rien</translation>
    </message>
    <message>
        <source>%1, likely cold first</source>
        <translation>%1, sans doute froid en premier</translation>
    </message>
</context>
<context>
    <name>leadline::GuestBodyPanel</name>
    <message>
        <source>Warmth and lead of each guest</source>
        <translation>Chaleur et lest de chaque client</translation>
    </message>
    <message>
        <source>No guests yet. Add them on the Roster tab with weight, height, suit and cylinder (page Kit); then this says who gets cold first and how much lead to try.</source>
        <translation>Pas encore de clients. Ajoutez-les dans l’onglet Clients avec poids, taille, combinaison et bouteille (page Matériel)&#x202f;; on voit alors ici qui aura froid le premier et quel lest essayer.</translation>
    </message>
    <message>
        <source>Estimates. Shivering or the sign “cold” ends the dive, whatever stands here. Lead is a starting value: check it at the surface before going down (common practice), and allow for the air that will be breathed: a guest light at the end floats up.</source>
        <translation>Estimations. Un frisson ou le signe «&#xa0;froid&#xa0;» met fin à la plongée, quoi qu’il soit écrit ici. Le lest est une valeur de départ&#xa0;: vérifiez-le en surface avant de descendre (usage courant), et tenez compte de l’air qui sera respiré&#xa0;: un client léger à la fin remonte malgré lui.</translation>
    </message>
    <message>
        <source>Why? Warmth and lead</source>
        <translation>Pourquoi&#x202f;? Chaleur et lest</translation>
    </message>
</context>
<context>
    <name>leadline::GuestEditor</name>
    <message>
        <source>&amp;Person</source>
        <translation>P&amp;ersonne</translation>
    </message>
    <message>
        <source>S&amp;creening</source>
        <translation>&amp;Santé</translation>
    </message>
    <message>
        <source>K&amp;it</source>
        <translation>Maté&amp;riel</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Screening</source>
        <translation>Santé</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Matériel</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Prêt</translation>
    </message>
    <message>
        <source>Not ready: %1</source>
        <translation>Pas prêt&#xa0;: %1</translation>
    </message>
    <message>
        <source>Not ready: the group or the session is not</source>
        <translation>Pas prêt&#xa0;: la palanquée ou la séance ne l’est pas</translation>
    </message>
    <message>
        <source>May dive, with care: %1</source>
        <translation>Peut plonger, avec précaution&#xa0;: %1</translation>
    </message>
    <message>
        <source> (%1 overruled)</source>
        <translation> (écartés&#xa0;: %1)</translation>
    </message>
    <message>
        <source>stops the dive</source>
        <translation>arrête la plongée</translation>
    </message>
    <message>
        <source>care</source>
        <translation>attention</translation>
    </message>
</context>
<context>
    <name>leadline::GuestGasDelegate</name>
    <message>
        <source>Cylinder of the guest</source>
        <translation>Bouteille du client</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Pas encore</translation>
    </message>
    <message>
        <source>How the guest breathes</source>
        <translation>Comment respire le client</translation>
    </message>
    <message>
        <source>Pressure as read</source>
        <translation>Pression lue</translation>
    </message>
    <message>
        <source>Temperature of the air when read</source>
        <translation>Température de l’air à la lecture</translation>
    </message>
    <message>
        <source>Measured RMV</source>
        <translation>VRM mesuré</translation>
    </message>
    <message>
        <source>By class</source>
        <translation>Par classe</translation>
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
        <translation>premier, %1</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Pas encore</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation>Non lu</translation>
    </message>
    <message>
        <source>%1, measured</source>
        <translation>%1, mesuré</translation>
    </message>
    <message>
        <source>%1, by class</source>
        <translation>%1, par classe</translation>
    </message>
    <message>
        <source>Change a guest&apos;s cylinder</source>
        <translation>Modifier la bouteille d’un client</translation>
    </message>
    <message>
        <source>Change a guest&apos;s pressure</source>
        <translation>Modifier la pression d’un client</translation>
    </message>
    <message>
        <source>Change the temperature of a guest&apos;s air</source>
        <translation>Modifier la température de l’air d’un client</translation>
    </message>
    <message>
        <source>Change how a guest breathes</source>
        <translation>Modifier la respiration d’un client</translation>
    </message>
    <message>
        <source>Change a guest&apos;s RMV</source>
        <translation>Modifier le VRM d’un client</translation>
    </message>
</context>
<context>
    <name>leadline::GuestModel</name>
    <message>
        <source>Group: stop</source>
        <translation>Palanquée&#xa0;: stop</translation>
    </message>
    <message>
        <source>Session: stop</source>
        <translation>Séance&#xa0;: stop</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Prêt</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Vue</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Manque</translation>
    </message>
    <message>
        <source>Complete</source>
        <translation>Complet</translation>
    </message>
    <message>
        <source>No %1</source>
        <translation>Pas de %1</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Pas encore</translation>
    </message>
    <message>
        <source>?</source>
        <translation>?</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Pas encore</translation>
    </message>
    <message>
        <source>Overruled</source>
        <translation>Écarté</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Âge</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Palanquée</translation>
    </message>
    <message>
        <source>Screening</source>
        <translation>Santé</translation>
    </message>
    <message>
        <source>Consent</source>
        <translation>Autorisation</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Matériel</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Bouteille</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
</context>
<context>
    <name>leadline::GuestScreen</name>
    <message>
        <source>Guest screen</source>
        <translation>Briefing à l’écran</translation>
    </message>
    <message>
        <source>For the instructor</source>
        <translation>Pour le moniteur</translation>
    </message>
    <message>
        <source>Briefing for</source>
        <translation>Briefing pour</translation>
    </message>
    <message>
        <source>Time of a page</source>
        <translation>Durée d’une page</translation>
    </message>
    <message>
        <source>Nothing glides</source>
        <translation>Sans animation</translation>
    </message>
    <message>
        <source>Language (L)</source>
        <translation>Langue (L)</translation>
    </message>
    <message>
        <source>Run or pause (R)</source>
        <translation>Lecture ou pause (R)</translation>
    </message>
    <message>
        <source>Blank (B)</source>
        <translation>Masquer (B)</translation>
    </message>
    <message>
        <source>Full screen (F11)</source>
        <translation>Plein écran (F11)</translation>
    </message>
    <message>
        <source>Close (Esc)</source>
        <translation>Fermer (Échap)</translation>
    </message>
    <message>
        <source>Everybody</source>
        <translation>Tous</translation>
    </message>
    <message numerus="yes">
        <source>%n seconds</source>
        <translation>
            <numerusform>%n seconde</numerusform>
            <numerusform>%n secondes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::GuestScreenControl</name>
    <message>
        <source>Note known signals</source>
        <translation>Noter les signes connus</translation>
    </message>
</context>
<context>
    <name>leadline::GuestTable</name>
    <message>
        <source>Guests</source>
        <translation>Clients</translation>
    </message>
</context>
<context>
    <name>leadline::KitPage</name>
    <message>
        <source>None yet</source>
        <translation>Pas encore</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Bouteille</translation>
    </message>
    <message>
        <source>C&amp;ylinder</source>
        <translation>&amp;Bouteille</translation>
    </message>
    <message>
        <source>Fi&amp;lled to</source>
        <translation>Gon&amp;flée à</translation>
    </message>
    <message>
        <source>Gas te&amp;mperature</source>
        <translation>Temp. du ga&amp;z</translation>
    </message>
    <message>
        <source>What others have</source>
        <translation>Ce qu’ont les autres</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Matériel</translation>
    </message>
    <message>
        <source>S&amp;uit</source>
        <translation>&amp;Combinaison</translation>
    </message>
    <message>
        <source>&amp;BCD</source>
        <translation>Gile&amp;t</translation>
    </message>
    <message>
        <source>Mas&amp;k</source>
        <translation>Masq&amp;ue</translation>
    </message>
    <message>
        <source>Fi&amp;ns</source>
        <translation>Pal&amp;mes</translation>
    </message>
    <message>
        <source>Regulat&amp;or no.</source>
        <translation>Détendeur &amp;n°</translation>
    </message>
    <message>
        <source>Lea&amp;d</source>
        <translation>&amp;Lest</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Lest</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation>Mensurations</translation>
    </message>
    <message>
        <source>Heigh&amp;t</source>
        <translation>Ta&amp;ille</translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation>&amp;Poids</translation>
    </message>
    <message>
        <source>Shoe si&amp;ze</source>
        <translation>C&amp;haussure</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Poids</translation>
    </message>
    <message>
        <source>Shoe size</source>
        <translation>Pointure</translation>
    </message>
    <message>
        <source>Read the gauge and enter what it shows.</source>
        <translation>Lisez le manomètre et saisissez ce qu’il montre.</translation>
    </message>
</context>
<context>
    <name>leadline::KnownGuestList</name>
    <message>
        <source>Persons on record</source>
        <translation>Personnes enregistrées</translation>
    </message>
    <message>
        <source>born %1</source>
        <translation>naissance %1</translation>
    </message>
    <message>
        <source>birth date not known</source>
        <translation>date de naissance inconnue</translation>
    </message>
    <message numerus="yes">
        <source>%n sessions</source>
        <translation>
            <numerusform>%n séance</numerusform>
            <numerusform>%n séances</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::LanguageButton</name>
    <message>
        <source>None yet</source>
        <translation>Pas encore</translation>
    </message>
</context>
<context>
    <name>leadline::LeverChart</name>
    <message>
        <source>What would &amp;buy more minutes</source>
        <translation>Ce &amp;qui donnerait des minutes de plus</translation>
    </message>
    <message>
        <source>all last the plan</source>
        <translation>l’air suffit à tous</translation>
    </message>
    <message>
        <source>A click or Enter makes the change; each judged alone.</source>
        <translation>Un clic ou Entrée fait le changement&#x202f;; chacun jugé seul.</translation>
    </message>
    <message>
        <source>What would buy more minutes</source>
        <translation>Ce qui donnerait des minutes de plus</translation>
    </message>
    <message>
        <source>Take &amp;it back</source>
        <translation>A&amp;nnuler</translation>
    </message>
    <message>
        <source>Nothing here would help: the air is not what limits this dive.</source>
        <translation>Rien ici n’aiderait&#xa0;: ce n’est pas l’air qui limite cette plongée.</translation>
    </message>
    <message>
        <source>Once a guest has a cylinder and its pressure, the changes that would help stand here.</source>
        <translation>Dès qu’un client a une bouteille et sa pression, les changements utiles figurent ici.</translation>
    </message>
    <message>
        <source>Done: %1.</source>
        <translation>Fait&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>leadline::LeverModel</name>
    <message>
        <source>Apply: %1</source>
        <translation>Appliquer&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>leadline::LogChart</name>
    <message>
        <source>up too fast: %1</source>
        <translation>remontée trop rapide&#xa0;: %1</translation>
    </message>
    <message>
        <source>too deep: %1</source>
        <translation>trop profond&#xa0;: %1</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>prévu</translation>
    </message>
    <message>
        <source>No depths were read for %1.</source>
        <translation>Aucune profondeur lue pour %1.</translation>
    </message>
    <message>
        <source>Depth over time, planned and logged</source>
        <translation>Profondeur au cours du temps, prévue et relevée</translation>
    </message>
</context>
<context>
    <name>leadline::LungChart</name>
    <message>
        <source>Held breath on the way up</source>
        <translation>Souffle bloqué à la remontée</translation>
    </message>
    <message>
        <source>The same breath at the surface</source>
        <translation>Le même souffle en surface</translation>
    </message>
    <message>
        <source>A full breath held here</source>
        <translation>Un souffle plein bloqué ici</translation>
    </message>
    <message>
        <source>%1 up: a lung can tear</source>
        <translation>%1 plus haut&#xa0;: un poumon peut se déchirer</translation>
    </message>
    <message>
        <source>%1 up:
a lung can tear</source>
        <translation>%1 plus haut&#xa0;:
un poumon peut se déchirer</translation>
    </message>
    <message>
        <source>From %1, full lungs:</source>
        <translation>De %1, poumons pleins&#xa0;:</translation>
    </message>
    <message>
        <source>at the surface %1</source>
        <translation>en surface %1</translation>
    </message>
    <message>
        <source>surface before the limit</source>
        <translation>surface avant la limite</translation>
    </message>
    <message>
        <source>can tear after %1</source>
        <translation>déchirure possible après %1</translation>
    </message>
    <message>
        <source>In the literature: lungs tore from %1 to 80 mmHg across them (Schaefer and others, 1958; Malhotra and Wright, 1961; from memory; the lower end is the safe side). Divers were hurt coming up from 1 m (Benton and others, 1996) and from 1 to 2 m (Harvey and others, 2024).</source>
        <translation>Dans les publications&#xa0;: des poumons se sont déchirés sous %1 à 80&#xa0;mmHg d’écart (Schaefer et autres, 1958&#x202f;; Malhotra et Wright, 1961&#x202f;; de mémoire&#x202f;; le bas est le côté sûr). Des plongeurs ont été blessés en remontant de 1&#xa0;m (Benton et autres, 1996) et de 1 à 2&#xa0;m (Harvey et autres, 2024).</translation>
    </message>
</context>
<context>
    <name>leadline::MainWindow</name>
    <message>
        <source>Open a session</source>
        <translation>Ouvrir une séance</translation>
    </message>
    <message>
        <source>Sessions (*.json);;All files (*)</source>
        <translation>Séances (*.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Write the session to a file</source>
        <translation>Écrire la séance dans un fichier</translation>
    </message>
    <message>
        <source>Sessions (*.json)</source>
        <translation>Séances (*.json)</translation>
    </message>
    <message>
        <source>Not saved. %1</source>
        <translation>Non enregistré. %1</translation>
    </message>
    <message>
        <source>The five questions</source>
        <translation>Les cinq questions</translation>
    </message>
    <message>
        <source>&amp;1 Roster</source>
        <translation>&amp;1 Clients</translation>
    </message>
    <message>
        <source>&amp;2 Site</source>
        <translation>&amp;2 Site</translation>
    </message>
    <message>
        <source>&amp;3 Gas</source>
        <translation>&amp;3 Air</translation>
    </message>
    <message>
        <source>&amp;4 Briefing Sheet</source>
        <translation>&amp;4 Fiche de briefing</translation>
    </message>
    <message>
        <source>&amp;5 Debrief</source>
        <translation>&amp;5 Débriefing</translation>
    </message>
    <message>
        <source>&amp;Keep in my records</source>
        <translation>Con&amp;fier à mon registre</translation>
    </message>
    <message>
        <source>Kept. Every change is saved from now on.</source>
        <translation>Séance gardée. Désormais, chaque changement est enregistré.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Close the message</source>
        <translation>Fermer le message</translation>
    </message>
    <message>
        <source>Written to %1. The file holds names and who may dive: keep it safe.</source>
        <translation>Écrit dans %1. Le fichier contient les noms et qui peut plonger&#xa0;: gardez-le en lieu sûr.</translation>
    </message>
    <message>
        <source>Opened from the file %1: changes are not kept.</source>
        <translation>Ouvert du fichier %1&#xa0;: les changements ne sont pas gardés.</translation>
    </message>
    <message>
        <source>The records could not be opened: changes are not kept.</source>
        <translation>Le registre n’a pas pu être ouvert&#xa0;: les changements ne sont pas gardés.</translation>
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
        <translation>Les flèches annoncent les valeurs à une profondeur.</translation>
    </message>
</context>
<context>
    <name>leadline::MeaningHeader</name>
    <message>
        <source>Meaning of the column %1</source>
        <translation>Sens de la colonne %1</translation>
    </message>
</context>
<context>
    <name>leadline::NoticeStrip</name>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Undo this step</source>
        <translation>Annuler cette étape</translation>
    </message>
</context>
<context>
    <name>leadline::OverruleDialog</name>
    <message>
        <source>Go ahead despite this finding</source>
        <translation>Passer outre à ce constat</translation>
    </message>
    <message>
        <source>The reason is kept with the session. Local law and your centre&apos;s standard come first: they cannot be set aside here.</source>
        <translation>La raison est gardée avec la séance. Le droit local et les standards de votre centre passent avant&#xa0;: ils ne peuvent pas être écartés ici.</translation>
    </message>
    <message>
        <source>Why is it right to go ahead?</source>
        <translation>Pourquoi est-il juste de continuer&#x202f;?</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Raison</translation>
    </message>
    <message>
        <source>&amp;Decided by</source>
        <translation>&amp;Décidé par</translation>
    </message>
    <message>
        <source>&amp;Go ahead</source>
        <translation>&amp;Passer outre</translation>
    </message>
    <message>
        <source>Set a finding aside</source>
        <translation>Écarter un constat</translation>
    </message>
    <message>
        <source>Withdraw a decision</source>
        <translation>Retirer une décision</translation>
    </message>
</context>
<context>
    <name>leadline::PagePreview</name>
    <message>
        <source>Preview of the pages</source>
        <translation>Aperçu des pages</translation>
    </message>
</context>
<context>
    <name>leadline::PeopleDialog</name>
    <message>
        <source>Guests on record</source>
        <translation>Clients enregistrés</translation>
    </message>
    <message>
        <source>Write all that is kept of this guest</source>
        <translation>Écrire tout ce qui est conservé sur ce client</translation>
    </message>
    <message>
        <source>Page to read (*.html);;Data (*.json)</source>
        <translation>Page à lire (*.html);;Données (*.json)</translation>
    </message>
    <message>
        <source>Find by name, phone or e-mail</source>
        <translation>Chercher par nom, téléphone ou e-mail</translation>
    </message>
    <message>
        <source>Find a guest by name, phone or e-mail</source>
        <translation>Chercher un client par nom, téléphone ou e-mail</translation>
    </message>
    <message>
        <source>&amp;Show them</source>
        <translation>&amp;Les montrer</translation>
    </message>
    <message>
        <source>In a &amp;month</source>
        <translation>&amp;Dans un mois</translation>
    </message>
    <message>
        <source>Last session</source>
        <translation>Dernière séance</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Séances</translation>
    </message>
    <message>
        <source>Who is here t&amp;wice…</source>
        <translation>&amp;Qui est ici deux fois…</translation>
    </message>
    <message>
        <source>Mer&amp;ge two…</source>
        <translation>&amp;Fusionner deux…</translation>
    </message>
    <message>
        <source>Select two guests who are one person</source>
        <translation>Choisissez deux clients qui sont une seule personne</translation>
    </message>
    <message>
        <source>Take a merge &amp;back</source>
        <translation>&amp;Annuler une fusion</translation>
    </message>
    <message>
        <source>Write to a &amp;file…</source>
        <translation>Écrire dans &amp;un fichier…</translation>
    </message>
    <message>
        <source>&amp;Remove…</source>
        <translation>&amp;Supprimer…</translation>
    </message>
    <message>
        <source>More than %L1 found</source>
        <translation>Plus de %L1 trouvés</translation>
    </message>
    <message numerus="yes">
        <source>%Ln guests</source>
        <translation>
            <numerusform>%Ln client</numerusform>
            <numerusform>%Ln clients</numerusform>
        </translation>
    </message>
    <message>
        <source>Nobody found</source>
        <translation>Aucun résultat</translation>
    </message>
    <message numerus="yes">
        <source>%Ln found</source>
        <translation>
            <numerusform>%Ln trouvé</numerusform>
            <numerusform>%Ln trouvés</numerusform>
        </translation>
    </message>
    <message>
        <source>health answers</source>
        <translation>réponses de santé</translation>
    </message>
    <message>
        <source>phone and e-mail</source>
        <translation>téléphone et e-mail</translation>
    </message>
    <message>
        <source>everything that tells who it was</source>
        <translation>tout ce qui dit qui c’était</translation>
    </message>
    <message>
        <source>Due for erasure: %1.</source>
        <translation>À effacer&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Select a guest to see what is known.</source>
        <translation>Choisissez un client pour voir ce qui est connu.</translation>
    </message>
    <message>
        <source>Two selected: merge them if they are one person.</source>
        <translation>Deux choisis&#xa0;: fusionnez-les s’ils sont une seule personne.</translation>
    </message>
    <message>
        <source>Several selected.</source>
        <translation>Plusieurs choisis.</translation>
    </message>
    <message>
        <source>shoe %1</source>
        <translation>pointure %1</translation>
    </message>
    <message>
        <source>air use %1</source>
        <translation>consommation %1</translation>
    </message>
    <message numerus="yes">
        <source>%n dives before</source>
        <translation>
            <numerusform>%n plongée déjà faite</numerusform>
            <numerusform>%n plongées déjà faites</numerusform>
        </translation>
    </message>
    <message>
        <source>Merged into this guest: %1</source>
        <translation>Fusionnés dans ce client&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>%Ln guests are due for erasure by the centre&apos;s periods. Nothing is erased by itself.</source>
        <translation>
            <numerusform>%Ln client est à effacer selon les délais du centre. Rien n’est effacé tout seul.</numerusform>
            <numerusform>%Ln clients sont à effacer selon les délais du centre. Rien n’est effacé tout seul.</numerusform>
        </translation>
    </message>
    <message>
        <source>%L1 due for erasure</source>
        <translation>%L1 à effacer</translation>
    </message>
    <message>
        <source>Looking for guests on record twice…</source>
        <translation>Recherche de clients enregistrés deux fois…</translation>
    </message>
    <message>
        <source>Taken back: %1 is a guest of their own again.</source>
        <translation>Annulé&#xa0;: %1 est de nouveau un client à part.</translation>
    </message>
    <message>
        <source>Written to %1. It holds personal data: hand it to nobody but the guest.</source>
        <translation>Écrit dans %1. Il contient des données personnelles&#xa0;: ne le remettez qu’au client.</translation>
    </message>
    <message>
        <source>Nobody is removed while the open session is not saved. %1</source>
        <translation>Personne n’est supprimé tant que la séance ouverte n’est pas enregistrée. %1</translation>
    </message>
    <message>
        <source>Removing the guest…</source>
        <translation>Suppression du client…</translation>
    </message>
    <message>
        <source>Removed. %1</source>
        <translation>Supprimé. %1</translation>
    </message>
    <message>
        <source>Removed.</source>
        <translation>Supprimé.</translation>
    </message>
    <message>
        <source>Removed. Another program reads the records: close it, and Leadline after it, so that nothing is left on the disk.</source>
        <translation>Supprimé. Un autre programme lit le registre&#xa0;: fermez-le, puis Leadline, pour que rien ne reste sur le disque.</translation>
    </message>
</context>
<context>
    <name>leadline::PeopleModel</name>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Naissance</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Téléphone</translation>
    </message>
    <message>
        <source>Last session</source>
        <translation>Dernière séance</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Séances</translation>
    </message>
</context>
<context>
    <name>leadline::PersonPage</name>
    <message>
        <source>as measured</source>
        <translation>valeur mesurée</translation>
    </message>
    <message>
        <source>from the choice above</source>
        <translation>d’après le choix ci-dessus</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>masse corporelle</translation>
    </message>
    <message>
        <source>a suit thin for this water</source>
        <translation>une combinaison fine pour cette eau</translation>
    </message>
    <message>
        <source>current</source>
        <translation>courant</translation>
    </message>
    <message>
        <source>Planned with %1, %2</source>
        <translation>Prévu avec %1, %2</translation>
    </message>
    <message>
        <source>Planned with %1, %2 and: %3</source>
        <translation>Prévu avec %1, %2 et&#xa0;: %3</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>&amp;Written consent seen</source>
        <translation>A&amp;utorisation écrite vue</translation>
    </message>
    <message>
        <source>Certified diver</source>
        <translation>Plongeur certifié</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Born</source>
        <translation>Naissan&amp;ce</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Langue</translation>
    </message>
    <message>
        <source>Gro&amp;up</source>
        <translation>&amp;Palanquée</translation>
    </message>
    <message>
        <source>Guardian</source>
        <translation>Représentant légal</translation>
    </message>
    <message>
        <source>Comes along, uses a place in the group and needs no teaching.</source>
        <translation>Accompagne, prend une place dans la palanquée et n’a pas besoin d’enseignement.</translation>
    </message>
    <message>
        <source>Companion</source>
        <translation>Accompagnant</translation>
    </message>
    <message>
        <source>In the guest&apos;s life, before this one. Empty: not asked.</source>
        <translation>Dans la vie du client, avant celle-ci. Vide&#xa0;: pas demandé.</translation>
    </message>
    <message>
        <source>Dives made before</source>
        <translation>Plongées faites avant</translation>
    </message>
    <message>
        <source>Guardian&apos;s written consent seen</source>
        <translation>Autorisation écrite du représentant légal vue</translation>
    </message>
    <message>
        <source>Companion, a certified diver</source>
        <translation>Accompagnant, plongeur certifié</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Palanquée</translation>
    </message>
    <message>
        <source>Consent</source>
        <translation>Autorisation</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Téléphone</translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation>E-mail</translation>
    </message>
    <message>
        <source>Name: a guest needs one. The last one is kept.</source>
        <translation>Nom&#xa0;: un client doit en avoir un. Le dernier est gardé.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation>Date de naissance</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a date. Write it as 17/5/1990, with four digits for the year.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» n’est pas une date. Écrivez-la ainsi&#xa0;: 17/5/1990, avec quatre chiffres pour l’année.</translation>
    </message>
    <message>
        <source>Breathing</source>
        <translation>Respiration</translation>
    </message>
    <message>
        <source>Brea&amp;thes</source>
        <translation>Resp&amp;iration</translation>
    </message>
    <message>
        <source>Air used a minute at the surface, from an own past dive.</source>
        <translation>Air consommé par minute en surface, d’une plongée passée.</translation>
    </message>
    <message>
        <source>&amp;Measured</source>
        <translation>&amp;Mesurée</translation>
    </message>
    <message>
        <source>Measured breathing</source>
        <translation>Respiration mesurée</translation>
    </message>
    <message>
        <source>For staff. Never printed. Not for health.</source>
        <translation>Pour les encadrants. Jamais imprimé. Pas pour la santé.</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>No&amp;te</translation>
    </message>
    <message>
        <source>Note: holds 2000 characters; the rest was cut off.</source>
        <translation>Note&#xa0;: contient 2000 caractères&#x202f;; le reste a été coupé.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Take over %1 from the records</source>
        <translation>Reprendre %1 du registre</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registre</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Pas encore</translation>
    </message>
    <message>
        <source>%1 years old on the day</source>
        <translation>%1&#xa0;ans ce jour-là</translation>
    </message>
    <message>
        <source>Age not known</source>
        <translation>Âge inconnu</translation>
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
        <translation>Aucune règle à laquelle comparer ce lieu n’est cochée.</translation>
    </message>
    <message>
        <source>Nothing about the place breaks a rule that is ticked.</source>
        <translation>Rien dans ce lieu n’enfreint une règle cochée.</translation>
    </message>
</context>
<context>
    <name>leadline::PlaceForm</name>
    <message>
        <source>Sea</source>
        <translation>Mer</translation>
    </message>
    <message>
        <source>Fresh water</source>
        <translation>Eau douce</translation>
    </message>
    <message>
        <source>Brackish</source>
        <translation>Saumâtre</translation>
    </message>
    <message>
        <source>Change the site&apos;s name</source>
        <translation>Modifier le nom du site</translation>
    </message>
    <message>
        <source>Name of the site</source>
        <translation>Nom du site</translation>
    </message>
    <message>
        <source>Known sites</source>
        <translation>Sites connus</translation>
    </message>
    <message>
        <source>Known sites from your records; choosing one fills in this form. Down opens the list.</source>
        <translation>Sites connus de votre registre&#x202f;; en choisir un remplit ce formulaire. La flèche bas ouvre la liste.</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>Change the entry</source>
        <translation>Modifier la mise à l’eau</translation>
    </message>
    <message>
        <source>Entr&amp;y</source>
        <translation>Mise à l’&amp;eau</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Inconnu</translation>
    </message>
    <message>
        <source>The deepest a guest could sink there</source>
        <translation>Le plus profond où un client pourrait couler là</translation>
    </message>
    <message>
        <source>Change the bottom depth</source>
        <translation>Modifier la profondeur du fond</translation>
    </message>
    <message>
        <source>&amp;Bottom depth</source>
        <translation>&amp;Profondeur du fond</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Autre</translation>
    </message>
    <message>
        <source>Salinity</source>
        <translation>Salinité</translation>
    </message>
    <message>
        <source>Practical salinity, a number without unit: 0 fresh water, 35 open sea</source>
        <translation>Salinité pratique, un nombre sans unité&#xa0;: 0 eau douce, 35 pleine mer</translation>
    </message>
    <message>
        <source>Change the salinity</source>
        <translation>Modifier la salinité</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Eau</translation>
    </message>
    <message>
        <source>Kind of water</source>
        <translation>Type d’eau</translation>
    </message>
    <message>
        <source>Of the water&apos;s surface above the sea</source>
        <translation>De la surface de l’eau au-dessus de la mer</translation>
    </message>
    <message>
        <source>Change the altitude</source>
        <translation>Modifier l’altitude</translation>
    </message>
    <message>
        <source>&amp;Altitude</source>
        <translation>Al&amp;titude</translation>
    </message>
    <message>
        <source>North positive, south negative; gravity follows from it</source>
        <translation>Nord positif, sud négatif&#x202f;; la pesanteur en découle</translation>
    </message>
    <message>
        <source>Change the latitude</source>
        <translation>Modifier la latitude</translation>
    </message>
    <message>
        <source>La&amp;titude</source>
        <translation>&amp;Latitude</translation>
    </message>
    <message>
        <source>Change the meeting place</source>
        <translation>Modifier le lieu de rendez-vous</translation>
    </message>
    <message>
        <source>Where guests come together</source>
        <translation>Où les clients se retrouvent</translation>
    </message>
    <message>
        <source>&amp;Meeting place</source>
        <translation>Rende&amp;z-vous</translation>
    </message>
    <message>
        <source>Change the emergency number</source>
        <translation>Modifier le numéro d’urgence</translation>
    </message>
    <message>
        <source>Printed on every card</source>
        <translation>Imprimé sur chaque fiche</translation>
    </message>
    <message>
        <source>Emergency n&amp;umber</source>
        <translation>Numéro d’&amp;urgence</translation>
    </message>
    <message>
        <source>Oxygen, phone or radio, nearest chamber, the way out, how to recall</source>
        <translation>Oxygène, téléphone ou radio, caisson le plus proche, chemin de sortie, signal de rappel</translation>
    </message>
    <message>
        <source>Emergency &amp;plan</source>
        <translation>Plan d’u&amp;rgence</translation>
    </message>
    <message>
        <source>Change the emergency plan</source>
        <translation>Modifier le plan d’urgence</translation>
    </message>
    <message>
        <source>Take the site %1</source>
        <translation>Prendre le site %1</translation>
    </message>
</context>
<context>
    <name>leadline::PlaceNumbers</name>
    <message>
        <source>Why?</source>
        <translation>Pourquoi&#x202f;?</translation>
    </message>
    <message>
        <source>Why? %1</source>
        <translation>Pourquoi&#x202f;? %1</translation>
    </message>
</context>
<context>
    <name>leadline::PressureChart</name>
    <message>
        <source>Pressure over time</source>
        <translation>Pression au cours du temps</translation>
    </message>
    <message>
        <source>%1, first</source>
        <translation>%1, premier</translation>
    </message>
    <message>
        <source>3000 psi</source>
        <translation>3000&#xa0;psi</translation>
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
            <numerusform>et %n autre dans le tableau</numerusform>
            <numerusform>et %n autres dans le tableau</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2 after %3, at %4</source>
        <translation>%1&#xa0;: %2 après %3, à %4</translation>
    </message>
    <message>
        <source>At %1 after, staying down (10 to 90 of 100 dives)</source>
        <translation>À %1 après, en restant au fond (10 à 90 plongées sur 100)</translation>
    </message>
    <message>
        <source>%1: at %2 after %3</source>
        <translation>%1&#xa0;: à %2 après %3</translation>
    </message>
    <message>
        <source>Reserve %1</source>
        <translation>Réserve %1</translation>
    </message>
    <message>
        <source>Planned end %1</source>
        <translation>Fin prévue %1</translation>
    </message>
</context>
<context>
    <name>leadline::ProfileDelegate</name>
    <message>
        <source>What is done on the way to the corner</source>
        <translation>Ce qu’on fait jusqu’au point</translation>
    </message>
    <message>
        <source>Time of the corner</source>
        <translation>Temps du point</translation>
    </message>
    <message>
        <source>Depth of the corner</source>
        <translation>Profondeur du point</translation>
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
        <translation>Début</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Temps</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profondeur</translation>
    </message>
    <message>
        <source>What on the way</source>
        <translation>En chemin</translation>
    </message>
    <message>
        <source>Minutes after the start</source>
        <translation>Minutes après le début</translation>
    </message>
    <message>
        <source>Depth of the group at that time</source>
        <translation>Profondeur de la palanquée à ce moment</translation>
    </message>
    <message>
        <source>What the group does on the way to this corner</source>
        <translation>Ce que fait la palanquée jusqu’à ce point</translation>
    </message>
    <message>
        <source>Change the time of a corner</source>
        <translation>Modifier le temps d’un point</translation>
    </message>
    <message>
        <source>Change the depth of a corner</source>
        <translation>Modifier la profondeur d’un point</translation>
    </message>
    <message>
        <source>Change what is done on a leg</source>
        <translation>Modifier ce qu’on fait sur un tronçon</translation>
    </message>
</context>
<context>
    <name>leadline::ProfilePanel</name>
    <message>
        <source>&amp;Deepest</source>
        <translation>Prof. &amp;max.</translation>
    </message>
    <message>
        <source>Depth of the tour</source>
        <translation>Profondeur de la balade</translation>
    </message>
    <message>
        <source>Skills at</source>
        <translation>Exercices à</translation>
    </message>
    <message>
        <source>Depth at which the first exercises are done</source>
        <translation>Profondeur des premiers exercices</translation>
    </message>
    <message>
        <source>Skills for</source>
        <translation>Exercices pendant</translation>
    </message>
    <message>
        <source>Minutes of exercises</source>
        <translation>Minutes d’exercices</translation>
    </message>
    <message>
        <source>Tour &amp;for</source>
        <translation>&amp;Balade de</translation>
    </message>
    <message>
        <source>Minutes of the tour</source>
        <translation>Minutes de balade</translation>
    </message>
    <message>
        <source>Dra&amp;w the plain dive</source>
        <translation>Tracer la plongée &amp;simple</translation>
    </message>
    <message>
        <source>Replaces the corners by: surface, down, skills, down, tour, up</source>
        <translation>Remplace les points par&#xa0;: surface, descente, exercices, descente, balade, remontée</translation>
    </message>
    <message>
        <source>Changed by hand.</source>
        <translation>Modifié à la main.</translation>
    </message>
    <message>
        <source>Corners of the profile</source>
        <translation>Points du profil</translation>
    </message>
    <message>
        <source>Add c&amp;orner</source>
        <translation>A&amp;jouter un point</translation>
    </message>
    <message>
        <source>Remove corner</source>
        <translation>Supprimer le point</translation>
    </message>
    <message>
        <source>&amp;Later corners move along</source>
        <translation>Décaler auss&amp;i les points suivants</translation>
    </message>
    <message>
        <source>When a corner moves in time, the legs after it keep their length and their speed</source>
        <translation>Quand le temps d’un point change, les tronçons suivants gardent leur durée et leur vitesse</translation>
    </message>
    <message>
        <source>Draw the plain dive</source>
        <translation>Tracer la plongée simple</translation>
    </message>
</context>
<context>
    <name>leadline::ProfileView</name>
    <message>
        <source>Dive profile</source>
        <translation>Profil de plongée</translation>
    </message>
    <message>
        <source>Drag this corner, with Shift in small steps. With the keyboard: Tab to the next corner, arrows, Insert, Delete.</source>
        <translation>Tirez ce point, avec Maj par petits pas. Au clavier&#xa0;: Tab pour le point suivant, flèches, Inser, Suppr.</translation>
    </message>
    <message>
        <source>%1 min   %2</source>
        <translation>%1 min   %2</translation>
    </message>
    <message>
        <source>   %1 absolute</source>
        <translation>   %1 absolu</translation>
    </message>
    <message>
        <source>%1, deepest %2. Tab goes from corner to corner; arrows move it, Insert adds one, Delete removes it. The table beside it holds the same numbers.</source>
        <translation>%1, au plus profond %2. Tab passe d’un point à l’autre&#x202f;; les flèches le déplacent, Inser en ajoute un, Suppr le supprime. Le tableau à côté contient les mêmes chiffres.</translation>
    </message>
    <message>
        <source>Corner %1 of %2, end of %3: %4</source>
        <translation>Point %1 sur %2, fin de %3&#xa0;: %4</translation>
    </message>
    <message>
        <source>Move a leg of the profile</source>
        <translation>Déplacer un tronçon du profil</translation>
    </message>
    <message>
        <source>Move a corner of the profile</source>
        <translation>Déplacer un point du profil</translation>
    </message>
    <message>
        <source>Add a corner to the profile</source>
        <translation>Ajouter un point au profil</translation>
    </message>
    <message>
        <source>Remove a corner of the profile</source>
        <translation>Supprimer un point du profil</translation>
    </message>
</context>
<context>
    <name>leadline::QuestionForm</name>
    <message>
        <source>%1: no to all that are open</source>
        <translation>%1&#xa0;: non à toutes celles qui sont ouvertes</translation>
    </message>
    <message>
        <source>Health, before the day</source>
        <translation>Santé, avant le jour de la plongée</translation>
    </message>
    <message>
        <source>Health</source>
        <translation>Santé</translation>
    </message>
    <message>
        <source>%1, more closely</source>
        <translation>%1, plus en détail</translation>
    </message>
    <message>
        <source>Today, before kitting up</source>
        <translation>Aujourd’hui, avant de s’équiper</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>All others no to&amp;day</source>
        <translation>Non aux autres &amp;ce jour</translation>
    </message>
    <message>
        <source>All no to&amp;day</source>
        <translation>Non à tout &amp;ce jour</translation>
    </message>
    <message>
        <source>All &amp;others no</source>
        <translation>&amp;Non aux autres</translation>
    </message>
    <message>
        <source>All n&amp;o</source>
        <translation>&amp;Non à tout</translation>
    </message>
    <message>
        <source>All others no</source>
        <translation>Non aux autres</translation>
    </message>
    <message>
        <source>All no</source>
        <translation>Non à tout</translation>
    </message>
</context>
<context>
    <name>leadline::RecoveryKeyDialog</name>
    <message>
        <source>New recovery key</source>
        <translation>Nouvelle clé de secours</translation>
    </message>
    <message>
        <source>&amp;Replace the old key</source>
        <translation>&amp;Remplacer l’ancienne clé</translation>
    </message>
</context>
<context>
    <name>leadline::RecoveryPage</name>
    <message>
        <source>Save the recovery key</source>
        <translation>Enregistrer la clé de secours</translation>
    </message>
    <message>
        <source>recovery-key.pdf</source>
        <translation>cle-de-secours.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimer…</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>&amp;Enregistrer en PDF…</translation>
    </message>
    <message>
        <source>This is the recovery key. It opens the vault when the passphrase is forgotten or this computer is lost. Put it on paper and lock it away; it is not shown again.</source>
        <translation>Voici la clé de secours. Elle ouvre le coffre quand la phrase secrète est oubliée ou cet ordinateur perdu. Mettez-la sur papier et sous clé&#x202f;; elle ne sera plus montrée.</translation>
    </message>
    <message>
        <source>Without passphrase and without this key nobody can open the vault any more.</source>
        <translation>Sans phrase secrète et sans cette clé, plus personne ne peut ouvrir le coffre.</translation>
    </message>
    <message>
        <source>Group %1: %2</source>
        <translation>Groupe %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>&amp;Type group %1 from your paper:</source>
        <translation>Tapez le groupe %1 de &amp;votre papier&#xa0;:</translation>
    </message>
    <message>
        <source>Recovery key</source>
        <translation>Clé de secours</translation>
    </message>
    <message>
        <source>Saved to %1. Print it, lock the paper away and delete the file.</source>
        <translation>Enregistré dans %1. Imprimez-le, mettez le papier sous clé et supprimez le fichier.</translation>
    </message>
    <message>
        <source>No printer is installed on this computer. Write the key down, or save it as a PDF on a stick.</source>
        <translation>Aucune imprimante n’est installée sur cet ordinateur. Notez la clé à la main, ou enregistrez-la en PDF sur une clé USB.</translation>
    </message>
    <message>
        <source>Sent to the printer. Check the paper before you go on.</source>
        <translation>Envoyé à l’imprimante. Vérifiez le papier avant de continuer.</translation>
    </message>
    <message>
        <source>The printer did not take it. Check that it is switched on, or write the key down.</source>
        <translation>L’imprimante n’a pas pris la page. Vérifiez qu’elle est allumée, ou notez la clé à la main.</translation>
    </message>
</context>
<context>
    <name>leadline::RedListDialog</name>
    <message>
        <source>Red list</source>
        <translation>Liste rouge</translation>
    </message>
    <message>
        <source>Save the list</source>
        <translation>Enregistrer la liste</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Who must still see a physician, bring consent, answer or renew, over all sessions on record from today on. Only outcomes are looked at; nothing is unlocked.</source>
        <translation>Qui doit encore voir un médecin, apporter une autorisation, répondre ou renouveler, dans toutes les séances enregistrées à partir d’aujourd’hui. Seuls les résultats sont lus&#x202f;; rien n’est déverrouillé.</translation>
    </message>
    <message>
        <source>Nobody is waiting for anything.</source>
        <translation>Plus rien n’est attendu de personne.</translation>
    </message>
    <message>
        <source>&amp;Open the session</source>
        <translation>&amp;Ouvrir la séance</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>&amp;Enregistrer en PDF…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>Saved to %1. It holds names and phone numbers: keep it safe.</source>
        <translation>Enregistré dans %1. Il contient des noms et des téléphones&#xa0;: gardez-le en lieu sûr.</translation>
    </message>
</context>
<context>
    <name>leadline::RedListModel</name>
    <message>
        <source>None on record</source>
        <translation>Rien d’enregistré</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Still waited for</source>
        <translation>Encore attendu</translation>
    </message>
    <message>
        <source>Meets</source>
        <translation>RDV</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Téléphone</translation>
    </message>
    <message>
        <source>Still needed</source>
        <translation>Encore nécessaire</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Séance</translation>
    </message>
</context>
<context>
    <name>leadline::RemovalDialog</name>
    <message>
        <source>&amp;Everything that tells who it was</source>
        <translation>&amp;Tout ce qui dit qui c’était</translation>
    </message>
    <message>
        <source>Only &amp;phone and e-mail</source>
        <translation>Seulement téléphone et e-&amp;mail</translation>
    </message>
    <message>
        <source>Only &amp;health answers</source>
        <translation>Seulement les &amp;réponses de santé</translation>
    </message>
    <message>
        <source>I know that this &amp;cannot be undone</source>
        <translation>&amp;Je sais que cela ne peut pas être annulé</translation>
    </message>
    <message>
        <source>Remove a guest</source>
        <translation>Supprimer un client</translation>
    </message>
    <message>
        <source>Goes</source>
        <translation>Supprimé</translation>
    </message>
    <message>
        <source>Stays</source>
        <translation>Conservé</translation>
    </message>
    <message>
        <source>Also delete older &amp;copies of the records (%1)</source>
        <translation>Supprimer &amp;aussi les anciennes copies du registre (%1)</translation>
    </message>
    <message>
        <source>They were made before an update and still hold this guest and all others.</source>
        <translation>Elles ont été faites avant une mise à jour et contiennent encore ce client et tous les autres.</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Supprimer</translation>
    </message>
    <message>
        <source>Care: the last session is less than %1 months ago, and records of it may have to be kept that long (%2; %3). Local law comes first: ask before you remove.</source>
        <translation>Attention&#xa0;: la dernière séance date de moins de %1 mois, et ses documents doivent peut-être être conservés aussi longtemps (%2&#x202f;; %3). Le droit local passe avant&#xa0;: renseignez-vous avant de supprimer.</translation>
    </message>
    <message numerus="yes">
        <source>%n copies in Records &gt; Copies of the records may still hold this guest. Delete them there, or they bring the guest back when one is restored.</source>
        <translation>
            <numerusform>%n copie dans Registre &gt; Copies du registre contient peut-être encore ce client. Supprimez-la là, sinon elle ramène le client si elle est restaurée.</numerusform>
            <numerusform>%n copies dans Registre &gt; Copies du registre contiennent peut-être encore ce client. Supprimez-les là, sinon elles ramènent le client si l’une est restaurée.</numerusform>
        </translation>
    </message>
    <message>
        <source>Files you wrote or printed, and copies kept elsewhere, are not touched: remove them yourself.</source>
        <translation>Les fichiers que vous avez écrits ou imprimés, et les copies gardées ailleurs, ne sont pas touchés&#xa0;: supprimez-les vous-même.</translation>
    </message>
    <message>
        <source>Health answers and sealed records: %1</source>
        <translation>Réponses de santé et éléments scellés&#xa0;: %1</translation>
    </message>
    <message>
        <source>Phone numbers and e-mail addresses: %1</source>
        <translation>Téléphones et adresses e-mail&#xa0;: %1</translation>
    </message>
    <message>
        <source>Sessions: %1, logged dives: %2</source>
        <translation>Séances&#xa0;: %1, plongées relevées&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1, with the guest&apos;s name and all else</source>
        <translation>%1, avec le nom du client et tout le reste</translation>
    </message>
    <message>
        <source>Name, birth date, language, sizes</source>
        <translation>Nom, date de naissance, langue, mensurations</translation>
    </message>
    <message>
        <source>Notes of staff: %1</source>
        <translation>Notes des encadrants&#xa0;: %1</translation>
    </message>
    <message>
        <source>The name in other texts of these sessions: %1</source>
        <translation>Le nom dans d’autres textes de ces séances&#xa0;: %1</translation>
    </message>
    <message>
        <source>Merged into this guest: %1</source>
        <translation>Fusionnés dans ce client&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1. In them stands &quot;%2&quot;, with lead, cylinder and what was logged.</source>
        <translation>%1. Il y reste «&#xa0;%2&#xa0;», avec le lest, la bouteille et ce qui a été relevé.</translation>
    </message>
</context>
<context>
    <name>leadline::RestoreDialog</name>
    <message>
        <source>Put back a copy</source>
        <translation>Restaurer une copie</translation>
    </message>
    <message>
        <source>Put back the copy %1?</source>
        <translation>Restaurer la copie %1&#x202f;?</translation>
    </message>
    <message>
        <source>What would change</source>
        <translation>Ce qui changerait</translation>
    </message>
    <message>
        <source>&amp;Sessions that change</source>
        <translation>&amp;Séances qui changent</translation>
    </message>
    <message>
        <source>&amp;All tables</source>
        <translation>&amp;Toutes les tables</translation>
    </message>
    <message>
        <source>The records as they are now are kept as a copy of their own, so that this can be taken back. Close Leadline on other screens first.</source>
        <translation>Le registre tel qu’il est maintenant est gardé comme copie, pour pouvoir revenir en arrière. Fermez d’abord Leadline sur les autres écrans.</translation>
    </message>
    <message>
        <source>&amp;Put this copy back</source>
        <translation>&amp;Restaurer cette copie</translation>
    </message>
    <message>
        <source>The records of now cannot be compared: %1</source>
        <translation>Le registre actuel ne peut pas être comparé&#xa0;: %1</translation>
    </message>
    <message>
        <source>The copy holds %1 sessions, %2 guests in the register and %3 logs.</source>
        <translation>La copie contient %1 séances, %2 clients enregistrés et %3 relevés.</translation>
    </message>
    <message>
        <source>%1: no change.</source>
        <translation>%1&#xa0;: aucun changement.</translation>
    </message>
    <message>
        <source>%1: %2 would be lost, %3 would come back, %4 would change back.</source>
        <translation>%1&#xa0;: pertes %2, retours %3, remises à l’ancien état %4.</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Séances</translation>
    </message>
    <message>
        <source>Guests in the register</source>
        <translation>Clients enregistrés</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>Relevés</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Séance</translation>
    </message>
    <message>
        <source>What would happen</source>
        <translation>Ce qui arriverait</translation>
    </message>
    <message>
        <source>Sessions that would change</source>
        <translation>Séances qui changeraient</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdue</translation>
    </message>
    <message>
        <source>comes back</source>
        <translation>revient</translation>
    </message>
    <message>
        <source>changes back</source>
        <translation>redevient comme avant</translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation>(sans nom)</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Table</translation>
    </message>
    <message>
        <source>Rows now</source>
        <translation>Lignes maintenant</translation>
    </message>
    <message>
        <source>In the copy</source>
        <translation>Dans la copie</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perdues</translation>
    </message>
    <message>
        <source>Come back</source>
        <translation>Reviennent</translation>
    </message>
    <message>
        <source>Change back</source>
        <translation>Comme avant</translation>
    </message>
    <message>
        <source>Rows of every table</source>
        <translation>Lignes de chaque table</translation>
    </message>
</context>
<context>
    <name>leadline::RosterTab</name>
    <message>
        <source>Add guest</source>
        <translation>Ajouter un client</translation>
    </message>
    <message>
        <source>Remove guest</source>
        <translation>Supprimer</translation>
    </message>
    <message>
        <source>Find guest</source>
        <translation>Chercher un client</translation>
    </message>
    <message>
        <source>&amp;Import a booking list…</source>
        <translation>&amp;Importer une liste de réservations…</translation>
    </message>
    <message>
        <source>&amp;Export the guests…</source>
        <translation>&amp;Exporter les clients…</translation>
    </message>
    <message>
        <source>Import a booking list</source>
        <translation>Importer une liste de réservations</translation>
    </message>
    <message>
        <source>Lists (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Listes (*.csv *.tsv *.txt);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Export the guests</source>
        <translation>Exporter les clients</translation>
    </message>
    <message>
        <source>Lists (*.csv)</source>
        <translation>Listes (*.csv)</translation>
    </message>
    <message>
        <source>Find a guest or a group</source>
        <translation>Chercher client ou palanquée</translation>
    </message>
    <message>
        <source>Find a guest or a group (Ctrl+F)</source>
        <translation>Chercher un client ou une palanquée (Ctrl+F)</translation>
    </message>
    <message>
        <source>Show all guests again</source>
        <translation>Montrer à nouveau tous les clients</translation>
    </message>
    <message>
        <source>&amp;Add guest</source>
        <translation>A&amp;jouter un client</translation>
    </message>
    <message>
        <source>Insert or Ctrl+Shift+N</source>
        <translation>Inser ou Ctrl+Maj+N</translation>
    </message>
    <message>
        <source>Delete, in the table. Can be undone.</source>
        <translation>Suppr, dans le tableau. Peut être annulé.</translation>
    </message>
    <message>
        <source>Kit in stock…</source>
        <translation>Stock…</translation>
    </message>
    <message>
        <source>Cylinders, suits and lead that there are to hand out.</source>
        <translation>Bouteilles, combinaisons et lest à distribuer.</translation>
    </message>
    <message>
        <source>Lists</source>
        <translation>Listes</translation>
    </message>
    <message>
        <source>Take guests from a booking list, or write them to one.</source>
        <translation>Prendre des clients d’une liste de réservations, ou les écrire dans une.</translation>
    </message>
    <message>
        <source>No guests yet. Add the first one (Ins) or open a session.</source>
        <translation>Pas encore de clients. Ajoutez le premier (Inser) ou ouvrez une séance.</translation>
    </message>
    <message>
        <source>Nobody is called &quot;%1&quot;. Esc shows all guests again.</source>
        <translation>Personne ne s’appelle «&#xa0;%1&#xa0;». Échap montre à nouveau tous les clients.</translation>
    </message>
    <message>
        <source>Choose a guest to see who it is, what the health questions came to and what was handed out.</source>
        <translation>Choisissez un client pour voir qui c’est, ce qu’ont donné les questions de santé et ce qui a été remis.</translation>
    </message>
    <message numerus="yes">
        <source>Remove %n guests</source>
        <translation>
            <numerusform>Supprimer %n client</numerusform>
            <numerusform>Supprimer %n clients</numerusform>
        </translation>
    </message>
    <message>
        <source>A session holds %1 guests at most. Open another for the rest.</source>
        <translation>Une séance contient %1 clients au plus. Ouvrez-en une autre pour le reste.</translation>
    </message>
    <message>
        <source>Guest %1</source>
        <translation>Client %1</translation>
    </message>
    <message numerus="yes">
        <source>%n guests</source>
        <translation>
            <numerusform>%n client</numerusform>
            <numerusform>%n clients</numerusform>
        </translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Supprimer %1</translation>
    </message>
    <message>
        <source>Removed %1</source>
        <translation>%1 supprimé</translation>
    </message>
    <message numerus="yes">
        <source>Added %n guests from the list</source>
        <translation>
            <numerusform>%n client de la liste ajouté</numerusform>
            <numerusform>%n clients de la liste ajoutés</numerusform>
        </translation>
    </message>
    <message>
        <source>Written to %1: names, birth dates, sizes, contacts and notes. Health answers and consent are not in it, unless a note speaks of them: read the notes before you pass it on.</source>
        <translation>Écrit dans %1&#xa0;: noms, dates de naissance, mensurations, coordonnées et notes. Les réponses de santé et l’autorisation n’y sont pas, sauf si une note en parle&#xa0;: lisez les notes avant de le transmettre.</translation>
    </message>
</context>
<context>
    <name>leadline::RuleSetList</name>
    <message>
        <source>Rule sets that apply</source>
        <translation>Jeux de règles applicables</translation>
    </message>
    <message>
        <source>Where several apply, the strictest value counts. Local law and your centre&apos;s standard come first.</source>
        <translation>Si plusieurs s’appliquent, la valeur la plus stricte compte. Le droit local et les standards de votre centre passent avant.</translation>
    </message>
    <message>
        <source>Care: no rule set is ticked. Depth, age and the number of guests are not checked.</source>
        <translation>Attention&#xa0;: aucun jeu de règles n’est coché. La profondeur, l’âge et le nombre de clients ne sont pas vérifiés.</translation>
    </message>
    <message>
        <source>Apply a rule set</source>
        <translation>Appliquer un jeu de règles</translation>
    </message>
    <message>
        <source>Leave a rule set out</source>
        <translation>Retirer un jeu de règles</translation>
    </message>
</context>
<context>
    <name>leadline::SavingRow</name>
    <message>
        <source>Stop saving</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Pages saved</source>
        <translation>Pages enregistrées</translation>
    </message>
</context>
<context>
    <name>leadline::ScreeningPage</name>
    <message>
        <source>The vault is locked: what was open here has been put away.</source>
        <translation>Le coffre est verrouillé&#xa0;: ce qui était ouvert ici a été refermé.</translation>
    </message>
    <message>
        <source>Sealed on %1.</source>
        <translation>Scellé le %1.</translation>
    </message>
    <message>
        <source>Sealed on %1 under the name %2: make sure that it is the same person.</source>
        <translation>Scellé le %1 sous le nom %2&#xa0;: assurez-vous que c’est la même personne.</translation>
    </message>
    <message>
        <source>The sealed answers of %1 are in a form this program does not know. Go through the questions again.</source>
        <translation>Les réponses scellées du %1 sont dans une forme que ce programme ne connaît pas. Reprenez les questions.</translation>
    </message>
    <message>
        <source>The sealed answers are those of another edition (%1); the questions are asked anew.</source>
        <translation>Les réponses scellées sont celles d’une autre édition (%1)&#x202f;; les questions sont reposées.</translation>
    </message>
    <message>
        <source>Nothing is signed yet. Sign on the strip, or choose another way.</source>
        <translation>Rien n’est encore signé. Signez sur la bande, ou choisissez un autre moyen.</translation>
    </message>
    <message>
        <source>Not recorded: the answers could not be sealed. %1 Try again after locking and opening the vault, or record the outcome alone.</source>
        <translation>Non enregistré&#xa0;: les réponses n’ont pas pu être scellées. %1 Réessayez après avoir verrouillé et rouvert le coffre, ou enregistrez le résultat seul.</translation>
    </message>
    <message>
        <source>Record the health check</source>
        <translation>Enregistrer le contrôle santé</translation>
    </message>
    <message>
        <source>Health check</source>
        <translation>Contrôle santé</translation>
    </message>
    <message>
        <source>Recorded.</source>
        <translation>Enregistré.</translation>
    </message>
    <message>
        <source>Take over the last health check</source>
        <translation>Reprendre le dernier contrôle santé</translation>
    </message>
    <message>
        <source>Physician&apos;s release</source>
        <translation>Accord du médecin</translation>
    </message>
    <message>
        <source>Physician&apos;s &amp;written release seen</source>
        <translation>Accord écrit du &amp;médecin vu</translation>
    </message>
    <message>
        <source>Date of the physician&apos;s release</source>
        <translation>Date de l’accord du médecin</translation>
    </message>
    <message>
        <source>dated</source>
        <translation>daté du</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date. Write it as 17/5/2026, with four digits for the year.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une date. Écrivez-la ainsi&#xa0;: 17/5/2026, avec quatre chiffres pour l’année.</translation>
    </message>
    <message>
        <source>Nothing changed: take it over</source>
        <translation>Rien de changé&#xa0;: reprendre</translation>
    </message>
    <message>
        <source>Check anew</source>
        <translation>Recontrôler</translation>
    </message>
    <message>
        <source>Open the &amp;questions</source>
        <translation>Ouvrir les ques&amp;tions</translation>
    </message>
    <message>
        <source>By the centre&apos;s own &amp;form</source>
        <translation>&amp;Par le formulaire du centre</translation>
    </message>
    <message>
        <source>The guest filled in a form of the centre: only its outcome is recorded here.</source>
        <translation>Le client a rempli un formulaire du centre&#xa0;: seul son résultat est enregistré ici.</translation>
    </message>
    <message>
        <source>Ctrl+Return</source>
        <translation>Ctrl+Return</translation>
    </message>
    <message>
        <source>Close without recording</source>
        <translation>Fermer sans enregistrer</translation>
    </message>
    <message>
        <source>Short questions for talking it over. They diagnose nobody: the centre&apos;s own form and the physician prevail.</source>
        <translation>De courtes questions pour en parler. Elles ne diagnostiquent personne&#xa0;: le formulaire du centre et le médecin priment.</translation>
    </message>
    <message>
        <source>Checked on %1</source>
        <translation>Contrôlé le %1</translation>
    </message>
    <message>
        <source>Checked, day not known</source>
        <translation>Contrôlé, jour inconnu</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>par %1</translation>
    </message>
    <message>
        <source>Checked on %1: %2. Has anything changed since?</source>
        <translation>Contrôlé le %1&#xa0;: %2. Quelque chose a-t-il changé depuis&#x202f;?</translation>
    </message>
    <message>
        <source>Only the outcome is recorded; the form stays with the centre.</source>
        <translation>Seul le résultat est enregistré&#x202f;; le formulaire reste au centre.</translation>
    </message>
    <message>
        <source>Answers, note, contact and a signature drawn here are sealed in the vault.</source>
        <translation>Réponses, note, contact et une signature tracée ici sont scellés dans le coffre.</translation>
    </message>
    <message>
        <source>This session is not in the records: only the outcome is kept, and the answers go when you record.</source>
        <translation>Cette séance n’est pas dans le registre&#xa0;: seul le résultat est gardé, et les réponses disparaissent quand vous enregistrez.</translation>
    </message>
    <message>
        <source>The vault is not open: only the outcome is kept, and the answers go when you record.</source>
        <translation>Le coffre n’est pas ouvert&#xa0;: seul le résultat est gardé, et les réponses disparaissent quand vous enregistrez.</translation>
    </message>
    <message>
        <source>Comes to: %1</source>
        <translation>Résultat&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n still open</source>
        <translation>
            <numerusform>%n encore ouverte</numerusform>
            <numerusform>%n encore ouvertes</numerusform>
        </translation>
    </message>
    <message>
        <source>Record the outcome alone</source>
        <translation>Enregistrer le résultat seul</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Enregistrer</translation>
    </message>
</context>
<context>
    <name>leadline::SessionLine</name>
    <message>
        <source>Name of the session</source>
        <translation>Nom de la séance</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Séance</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Meet</source>
        <translation>RDV</translation>
    </message>
    <message>
        <source>Dive</source>
        <translation>Plongée</translation>
    </message>
    <message>
        <source>Leads</source>
        <translation>Dirige</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Site</translation>
    </message>
    <message>
        <source>Rename session</source>
        <translation>Renommer la séance</translation>
    </message>
    <message>
        <source>Change date</source>
        <translation>Modifier la date</translation>
    </message>
    <message>
        <source>Change meeting time</source>
        <translation>Modifier l’heure de rendez-vous</translation>
    </message>
    <message>
        <source>Change dive time</source>
        <translation>Modifier l’heure de plongée</translation>
    </message>
    <message>
        <source>Change who leads</source>
        <translation>Modifier le responsable</translation>
    </message>
    <message>
        <source>Not named</source>
        <translation>Non nommé</translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation>(sans nom)</translation>
    </message>
    <message numerus="yes">
        <source>%n stops</source>
        <translation>
            <numerusform>%n stop</numerusform>
            <numerusform>%n stops</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n care</source>
        <translation>
            <numerusform>%n × attention</numerusform>
            <numerusform>%n × attention</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Ready · %n care</source>
        <translation>
            <numerusform>Prêt · %n × attention</numerusform>
            <numerusform>Prêt · %n × attention</numerusform>
        </translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Prêt</translation>
    </message>
    <message numerus="yes">
        <source>%n set aside</source>
        <translation>
            <numerusform>%n écarté</numerusform>
            <numerusform>%n écartés</numerusform>
        </translation>
    </message>
    <message>
        <source>Show the findings</source>
        <translation>Montrer les constats</translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <comment>date; ddd, d, MMM and yyyy stay</comment>
        <translation>ddd d MMM yyyy</translation>
    </message>
</context>
<context>
    <name>leadline::SessionsDialog</name>
    <message>
        <source>Sessions on record</source>
        <translation>Séances enregistrées</translation>
    </message>
    <message>
        <source>Kept in %1</source>
        <translation>Gardé dans %1</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>&amp;Ouvrir</translation>
    </message>
    <message>
        <source>&amp;Delete…</source>
        <translation>&amp;Supprimer…</translation>
    </message>
    <message>
        <source>Delete session</source>
        <translation>Supprimer la séance</translation>
    </message>
    <message>
        <source>Delete &quot;%1&quot; with its plan and log for good? The guests stay on record.</source>
        <translation>Supprimer «&#xa0;%1&#xa0;» avec son plan et son relevé pour de bon&#x202f;? Les clients restent enregistrés.</translation>
    </message>
</context>
<context>
    <name>leadline::SessionsModel</name>
    <message>
        <source>(no name)</source>
        <translation>(sans nom)</translation>
    </message>
    <message>
        <source>%1 (logged)</source>
        <translation>%1 (avec relevé)</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Dive</source>
        <translation>Plongée</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Séance</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Site</translation>
    </message>
    <message>
        <source>Guests</source>
        <translation>Clients</translation>
    </message>
</context>
<context>
    <name>leadline::SheetBar</name>
    <message>
        <source>What to print</source>
        <translation>Quoi imprimer</translation>
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
        <translation>Bande pour signer</translation>
    </message>
    <message>
        <source>Sign here</source>
        <translation>Signez ici</translation>
    </message>
</context>
<context>
    <name>leadline::SiteTab</name>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>What the sea does today</source>
        <translation>Ce que fait la mer aujourd’hui</translation>
    </message>
    <message>
        <source>Rules that apply</source>
        <translation>Règles applicables</translation>
    </message>
    <message>
        <source>Site and conditions</source>
        <translation>Site et conditions</translation>
    </message>
    <message>
        <source>Numbers of the place</source>
        <translation>Chiffres du lieu</translation>
    </message>
    <message>
        <source>Profile and numbers</source>
        <translation>Profil et chiffres</translation>
    </message>
    <message>
        <source>%1 deep, %2</source>
        <translation>%1 de profondeur, %2</translation>
    </message>
    <message>
        <source>%1 at %2.</source>
        <translation>%1 à %2.</translation>
    </message>
</context>
<context>
    <name>leadline::SkillsDialog</name>
    <message>
        <source>Skills of this session</source>
        <translation>Exercices de cette séance</translation>
    </message>
    <message>
        <source>Tick what the guests &amp;practise before the tour.</source>
        <translation>&amp;Cochez les exercices à faire avant la balade.</translation>
    </message>
</context>
<context>
    <name>leadline::StaffExposureModel</name>
    <message>
        <source>Staff</source>
        <translation>Encadrants</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>No-stop
time left</source>
        <translation>Sans palier,
reste</translation>
    </message>
    <message>
        <source>Planned
now</source>
        <translation>Prévu
maintenant</translation>
    </message>
    <message>
        <source>Share of
the limit</source>
        <translation>Part de
la limite</translation>
    </message>
    <message>
        <source>Dives
today</source>
        <translation>Plongées
du jour</translation>
    </message>
    <message>
        <source>Times up
today</source>
        <translation>Remontées
du jour</translation>
    </message>
    <message>
        <source>Days in
a row</source>
        <translation>Jours
de suite</translation>
    </message>
    <message>
        <source>Since the
last dive</source>
        <translation>Depuis la
dernière</translation>
    </message>
    <message>
        <source>Before
flying</source>
        <translation>Avant
l’avion</translation>
    </message>
    <message>
        <source>Instructors and assistants of this session.</source>
        <translation>Moniteurs et assistants de cette séance.</translation>
    </message>
    <message>
        <source>How this dive stands to the limits of the chosen rules, as far as earlier dives are on record.</source>
        <translation>Où se situe cette plongée par rapport aux limites des règles choisies, pour autant que les plongées antérieures sont enregistrées.</translation>
    </message>
    <message>
        <source>Minutes at the deepest planned point, %1, until going straight up would no longer be allowed, before this session. Rounded down.</source>
        <translation>Minutes au point prévu le plus profond, %1, avant que la remontée directe ne soit plus autorisée, avant cette séance. Arrondi vers le bas.</translation>
    </message>
    <message>
        <source>Time of this session&apos;s dive.</source>
        <translation>Durée de la plongée de cette séance.</translation>
    </message>
    <message>
        <source>Of the nitrogen that the house allows for going straight up, the most used at any moment of this dive; ashore, before this session. 100 % is the limit. Rounded up.</source>
        <translation>De l’azote que les règles maison autorisent pour remonter directement, la plus grande part utilisée à un moment de cette plongée&#x202f;; à terre, avant cette séance. 100&#xa0;% est la limite. Arrondi vers le haut.</translation>
    </message>
    <message>
        <source>Dives of this day, this one included.</source>
        <translation>Plongées de ce jour, celle-ci comprise.</translation>
    </message>
    <message>
        <source>Times at the surface this day, those expected in this session included.</source>
        <translation>Passages en surface ce jour, ceux attendus dans cette séance compris.</translation>
    </message>
    <message>
        <source>Days with a dive up to today.</source>
        <translation>Jours avec plongée jusqu’à aujourd’hui.</translation>
    </message>
    <message>
        <source>Surface interval up to this session&apos;s dive. Rounded down.</source>
        <translation>Intervalle de surface jusqu’à la plongée de cette séance. Arrondi vers le bas.</translation>
    </message>
    <message>
        <source>Hours to stay off aircraft and passes after the last dive, by published guidance.</source>
        <translation>Heures sans prendre l’avion ni passer de col après la dernière plongée, selon les recommandations publiées.</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 ou plus</translation>
    </message>
    <message>
        <source>%1, at most %2</source>
        <translation>%1, %2 au plus</translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation>(sans nom)</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1&#xa0;: %2 %3</translation>
    </message>
    <message>
        <source>%1 after the last dive: %2</source>
        <translation>%1 après la dernière plongée&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>leadline::StaffExposurePanel</name>
    <message>
        <source>What earlier dives leave to each member of staff</source>
        <translation>Ce que les plongées antérieures laissent à chaque encadrant</translation>
    </message>
    <message>
        <source>Nobody on the staff yet. Add them on the Roster tab under Groups and staff, and enter their dives of the last seven days there with the button in the column Dives; then this says who is free to lead this dive.</source>
        <translation>Encore aucun encadrant. Ajoutez-les dans l’onglet Clients sous Palanquées et encadrants, et saisissez-y leurs plongées des sept derniers jours avec le bouton de la colonne Plongées&#x202f;; on voit alors ici qui peut mener cette plongée.</translation>
    </message>
    <message>
        <source>An aid for planning. What the diver&apos;s own computer, a physician and the makers say prevails. Tissues by ZH-L16C with gradient factors %1/%2, common practice.</source>
        <translation>Une aide à la préparation. Ce que disent l’ordinateur du plongeur, un médecin et les fabricants prime. Tissus par ZH-L16C avec les facteurs de gradient %1/%2, usage courant.</translation>
    </message>
    <message>
        <source>Why? Staff</source>
        <translation>Pourquoi&#x202f;? Encadrants</translation>
    </message>
</context>
<context>
    <name>leadline::StaffList</name>
    <message>
        <source>Staff</source>
        <translation>Encadrants</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rôle</translation>
    </message>
    <message>
        <source>Speaks</source>
        <translation>Parle</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Bouteille</translation>
    </message>
    <message>
        <source>Filled to</source>
        <translation>Gonflée à</translation>
    </message>
    <message>
        <source>Gas at</source>
        <translation>Gaz à</translation>
    </message>
    <message>
        <source>Dives</source>
        <translation>Plongées</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Pas encore</translation>
    </message>
    <message>
        <source>Remove member of staff</source>
        <translation>Supprimer un encadrant</translation>
    </message>
    <message>
        <source>Change staff</source>
        <translation>Modifier les encadrants</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Name of %1</source>
        <translation>Nom de %1</translation>
    </message>
    <message>
        <source>Role of %1</source>
        <translation>Rôle de %1</translation>
    </message>
    <message>
        <source>Languages of %1</source>
        <translation>Langues de %1</translation>
    </message>
    <message>
        <source>Cylinder of %1</source>
        <translation>Bouteille de %1</translation>
    </message>
    <message>
        <source>Gauge reading of %1</source>
        <translation>Lecture du manomètre de %1</translation>
    </message>
    <message>
        <source>Gas temperature of %1</source>
        <translation>Température du gaz de %1</translation>
    </message>
    <message>
        <source>%1…</source>
        <translation>%1…</translation>
    </message>
    <message>
        <source>Earlier dives of %1</source>
        <translation>Plongées antérieures de %1</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Supprimer %1</translation>
    </message>
</context>
<context>
    <name>leadline::StockDialog</name>
    <message>
        <source>Kit in stock</source>
        <translation>Matériel en stock</translation>
    </message>
    <message>
        <source>What there is, kit handed out included. A part left empty is not recorded, and nothing in it counts as missing.</source>
        <translation>Ce qu’il y a, matériel distribué compris. Une partie laissée vide n’est pas enregistrée, et rien n’y compte comme manquant.</translation>
    </message>
    <message>
        <source>Cylinders</source>
        <translation>Bouteilles</translation>
    </message>
    <message>
        <source>In stock</source>
        <translation>En stock</translation>
    </message>
    <message>
        <source>%1, in stock</source>
        <translation>%1, en stock</translation>
    </message>
    <message numerus="yes">
        <source>%n handed out</source>
        <translation>
            <numerusform>%n distribuée</numerusform>
            <numerusform>%n distribuées</numerusform>
        </translation>
    </message>
    <message>
        <source>Suits</source>
        <translation>Combinaisons</translation>
    </message>
    <message>
        <source>Suits in stock</source>
        <translation>Combinaisons en stock</translation>
    </message>
    <message>
        <source>&amp;Add a suit</source>
        <translation>&amp;Ajouter une combinaison</translation>
    </message>
    <message>
        <source>Insert, in the table</source>
        <translation>Inser, dans le tableau</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Supprimer</translation>
    </message>
    <message>
        <source>Delete, in the table</source>
        <translation>Suppr, dans le tableau</translation>
    </message>
    <message>
        <source>Remove the chosen suits</source>
        <translation>Supprimer les combinaisons choisies</translation>
    </message>
    <message>
        <source>Add those &amp;handed out</source>
        <translation>Ajouter &amp;celles distribuées</translation>
    </message>
    <message>
        <source>&amp;Lead pieces, kg</source>
        <translation>&amp;Plombs, kg</translation>
    </message>
    <message>
        <source>&amp;Lead pieces, lb</source>
        <translation>&amp;Plombs, lb</translation>
    </message>
    <message>
        <source>Sizes of lead pieces in kilograms</source>
        <translation>Tailles des plombs en kilogrammes</translation>
    </message>
    <message>
        <source>Sizes of lead pieces in pounds</source>
        <translation>Tailles des plombs en livres</translation>
    </message>
    <message>
        <source>For example 0.5 1 2</source>
        <translation>Par exemple 0,5 1 2</translation>
    </message>
    <message>
        <source>For example 1 2 3</source>
        <translation>Par exemple 1 2 3</translation>
    </message>
    <message>
        <source>%1 labels are the most.</source>
        <translation>%1 étiquettes au plus.</translation>
    </message>
    <message>
        <source>Lead pieces: &quot;%1&quot; is not a list of sizes. Write numbers with spaces between: 0.5 1 2.</source>
        <translation>Plombs&#xa0;: «&#xa0;%1&#xa0;» n’est pas une liste de tailles. Écrivez des nombres séparés par des espaces&#xa0;: 0,5 1 2.</translation>
    </message>
    <message>
        <source>Lead pieces, kg</source>
        <translation>Plombs, kg</translation>
    </message>
    <message>
        <source>Not recorded: whole kilograms are assumed.</source>
        <translation>Non enregistré&#xa0;: on suppose des kilogrammes entiers.</translation>
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
        <translation>Modifier le matériel en stock</translation>
    </message>
</context>
<context>
    <name>leadline::SuitStockModel</name>
    <message>
        <source>Suit</source>
        <translation>Combinaison</translation>
    </message>
    <message>
        <source>In stock</source>
        <translation>En stock</translation>
    </message>
    <message>
        <source>Handed out</source>
        <translation>Distribué</translation>
    </message>
</context>
<context>
    <name>leadline::VaultActions</name>
    <message>
        <source>&amp;Health vault</source>
        <translation>&amp;Coffre santé</translation>
    </message>
    <message>
        <source>&amp;Unlock…</source>
        <translation>&amp;Ouvrir…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+L</source>
        <translation>Ctrl+Shift+L</translation>
    </message>
    <message>
        <source>&amp;Lock</source>
        <translation>&amp;Verrouiller</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>Lock when &amp;idle for</source>
        <translation>Verrouiller si inactif &amp;pendant</translation>
    </message>
    <message>
        <source>&amp;Change the passphrase…</source>
        <translation>Changer la phrase &amp;secrète…</translation>
    </message>
    <message>
        <source>The passphrase was changed.</source>
        <translation>La phrase secrète a été changée.</translation>
    </message>
    <message>
        <source>New &amp;recovery key…</source>
        <translation>&amp;Nouvelle clé de secours…</translation>
    </message>
    <message>
        <source>The new recovery key counts from now on. Destroy the old paper.</source>
        <translation>La nouvelle clé de secours vaut désormais. Détruisez l’ancien papier.</translation>
    </message>
    <message>
        <source>&amp;Audit trail…</source>
        <translation>&amp;Journal d’accès…</translation>
    </message>
    <message numerus="yes">
        <source>%n minutes</source>
        <translation>
            <numerusform>%n minute</numerusform>
            <numerusform>%n minutes</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Set up…</source>
        <translation>&amp;Créer…</translation>
    </message>
    <message>
        <source>&amp;Add a passphrase…</source>
        <translation>&amp;Ajouter une phrase secrète…</translation>
    </message>
    <message>
        <source>Health vault locked</source>
        <translation>Coffre santé verrouillé</translation>
    </message>
    <message>
        <source>Unlock it (Ctrl+Shift+L)</source>
        <translation>L’ouvrir (Ctrl+Maj+L)</translation>
    </message>
    <message>
        <source>No health vault: the records are not open</source>
        <translation>Pas de coffre santé&#xa0;: le registre n’est pas ouvert</translation>
    </message>
    <message>
        <source>Health vault not set up</source>
        <translation>Coffre santé pas encore créé</translation>
    </message>
    <message>
        <source>Set it up</source>
        <translation>Le créer</translation>
    </message>
    <message>
        <source>Health vault open: %1</source>
        <translation>Coffre santé ouvert&#xa0;: %1</translation>
    </message>
    <message>
        <source>Lock it (Ctrl+L)</source>
        <translation>Le verrouiller (Ctrl+L)</translation>
    </message>
    <message>
        <source>The health vault is set up and open. It locks by itself after %1 min without a key or a click.</source>
        <translation>Le coffre santé est créé et ouvert. Il se verrouille tout seul après %1&#xa0;min sans touche ni clic.</translation>
    </message>
    <message numerus="yes">
        <source>%n answers an older version kept open are sealed now.</source>
        <translation>
            <numerusform>%n réponse qu’une version antérieure gardait ouverte est maintenant scellée.</numerusform>
            <numerusform>%n réponses qu’une version antérieure gardait ouvertes sont maintenant scellées.</numerusform>
        </translation>
    </message>
    <message>
        <source>Copies made before still hold them: delete those in Records &gt; Copies of the records, and files named ...before-schema-*.</source>
        <translation>Les copies faites avant les contiennent encore&#xa0;: supprimez-les dans Registre &gt; Copies du registre, ainsi que les fichiers nommés ...before-schema-*.</translation>
    </message>
</context>
<context>
    <name>leadline::VaultPassphraseDialog</name>
    <message>
        <source>Change the passphrase</source>
        <translation>Changer la phrase secrète</translation>
    </message>
    <message>
        <source>Add a passphrase</source>
        <translation>Ajouter une phrase secrète</translation>
    </message>
    <message>
        <source>&amp;Old passphrase</source>
        <translation>Ancienne phrase &amp;secrète</translation>
    </message>
    <message>
        <source>&amp;New passphrase</source>
        <translation>&amp;Nouvelle phrase secrète</translation>
    </message>
    <message>
        <source>&amp;Again</source>
        <translation>&amp;Répéter</translation>
    </message>
    <message>
        <source>&amp;Change</source>
        <translation>&amp;Changer</translation>
    </message>
    <message>
        <source>A&amp;dd</source>
        <translation>&amp;Ajouter</translation>
    </message>
    <message>
        <source>At least %1 characters: a few words in a row are easy to keep.</source>
        <translation>Au moins %1 caractères&#xa0;: quelques mots à la suite se retiennent facilement.</translation>
    </message>
    <message>
        <source>%1 of at least %2 characters.</source>
        <translation>%1 caractères sur au moins %2.</translation>
    </message>
    <message>
        <source>The two are not the same yet.</source>
        <translation>Les deux ne sont pas encore identiques.</translation>
    </message>
    <message>
        <source>The old passphrase is not the right one. Nothing was changed.</source>
        <translation>L’ancienne phrase secrète n’est pas la bonne. Rien n’a été modifié.</translation>
    </message>
</context>
<context>
    <name>leadline::VaultSetUpDialog</name>
    <message>
        <source>Set up the health vault</source>
        <translation>Créer le coffre santé</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Suivant</translation>
    </message>
    <message>
        <source>A &amp;passphrase of the centre</source>
        <translation>&amp;Une phrase secrète du centre</translation>
    </message>
    <message>
        <source>This computer&apos;s &amp;keyring</source>
        <translation>&amp;Le trousseau de cet ordinateur</translation>
    </message>
    <message>
        <source>&amp;Who sets it up</source>
        <translation>&amp;Qui le crée</translation>
    </message>
    <message>
        <source>Pa&amp;ssphrase</source>
        <translation>&amp;Phrase secrète</translation>
    </message>
    <message>
        <source>&amp;Again</source>
        <translation>&amp;Répéter</translation>
    </message>
    <message>
        <source>Health answers, notes of physicians, emergency contacts and signatures are kept sealed in a vault. Choose how it is opened.</source>
        <translation>Réponses de santé, notes de médecins, personnes à prévenir et signatures sont gardées scellées dans un coffre. Choisissez comment il s’ouvre.</translation>
    </message>
    <message>
        <source>The keyring opens with the login to this computer: quick, and as safe as that login.</source>
        <translation>Le trousseau s’ouvre avec votre session sur cet ordinateur&#xa0;: rapide, et aussi sûr que l’accès à cette session.</translation>
    </message>
    <message>
        <source>At least %1 characters: a few words in a row are easy to keep.</source>
        <translation>Au moins %1 caractères&#xa0;: quelques mots à la suite se retiennent facilement.</translation>
    </message>
    <message>
        <source>%1 of at least %2 characters.</source>
        <translation>%1 caractères sur au moins %2.</translation>
    </message>
    <message>
        <source>The two are not the same yet.</source>
        <translation>Les deux ne sont pas encore identiques.</translation>
    </message>
    <message>
        <source>&amp;Finish</source>
        <translation>&amp;Terminer</translation>
    </message>
    <message>
        <source>This computer&apos;s keyring does not answer. Choose a passphrase.</source>
        <translation>Le trousseau de cet ordinateur ne répond pas. Choisissez une phrase secrète.</translation>
    </message>
</context>
<context>
    <name>leadline::VaultUnlockDialog</name>
    <message>
        <source>&amp;Passphrase</source>
        <translation>&amp;Phrase secrète</translation>
    </message>
    <message>
        <source>Recovery &amp;key</source>
        <translation>&amp;Clé de secours</translation>
    </message>
    <message>
        <source>Use the &amp;recovery key</source>
        <translation>&amp;Utiliser la clé de secours</translation>
    </message>
    <message>
        <source>Unlock the health vault</source>
        <translation>Ouvrir le coffre santé</translation>
    </message>
    <message>
        <source>Nine groups of four</source>
        <translation>Neuf groupes de quatre</translation>
    </message>
    <message>
        <source>&amp;Unlock</source>
        <translation>&amp;Ouvrir</translation>
    </message>
    <message>
        <source>Unlock by &amp;keyring</source>
        <translation>Ouvrir par le &amp;trousseau</translation>
    </message>
    <message>
        <source>&amp;Who is asking</source>
        <translation>&amp;Qui l’ouvre</translation>
    </message>
    <message>
        <source>Wait %1 s</source>
        <translation>Attendez %1&#xa0;s</translation>
    </message>
    <message>
        <source>This computer&apos;s keyring has no key of this vault. Use the recovery key.</source>
        <translation>Le trousseau de cet ordinateur n’a pas de clé de ce coffre. Utilisez la clé de secours.</translation>
    </message>
</context>
<context>
    <name>leadline::WindowActions</name>
    <message>
        <source>&amp;Session</source>
        <translation>Sé&amp;ance</translation>
    </message>
    <message>
        <source>&amp;New session</source>
        <translation>&amp;Nouvelle séance</translation>
    </message>
    <message>
        <source>&amp;Open a file…</source>
        <translation>&amp;Ouvrir un fichier…</translation>
    </message>
    <message>
        <source>Open a s&amp;ample</source>
        <translation>Ouvrir &amp;un exemple</translation>
    </message>
    <message>
        <source>&amp;Write to a file…</source>
        <translation>Écrire dans un &amp;fichier…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>&amp;Print cards</source>
        <translation>&amp;Imprimer les fiches</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>&amp;Records</source>
        <translation>Re&amp;gistre</translation>
    </message>
    <message>
        <source>&amp;Sessions on record…</source>
        <translation>&amp;Séances enregistrées…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+O</source>
        <translation>Ctrl+Shift+O</translation>
    </message>
    <message>
        <source>&amp;Guests on record…</source>
        <translation>Clients &amp;enregistrés…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+G</source>
        <translation>Ctrl+Shift+G</translation>
    </message>
    <message>
        <source>&amp;Red list…</source>
        <translation>&amp;Liste rouge…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+R</source>
        <translation>Ctrl+Shift+R</translation>
    </message>
    <message>
        <source>Who must still see a physician, bring consent, answer or renew.</source>
        <translation>Qui doit encore voir un médecin, apporter une autorisation, répondre ou renouveler.</translation>
    </message>
    <message>
        <source>&amp;Copies of the records…</source>
        <translation>Copies &amp;du registre…</translation>
    </message>
    <message>
        <source>No samples installed</source>
        <translation>Aucun exemple installé</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>Éditi&amp;on</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rétablir</translation>
    </message>
    <message>
        <source>Ctrl+Y</source>
        <translation>Ctrl+Y</translation>
    </message>
    <message>
        <source>&amp;Find a guest</source>
        <translation>&amp;Chercher un client</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Vue</translation>
    </message>
    <message>
        <source>Feet, psi and °F</source>
        <translation>Pieds, psi et °F</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Sombre</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>Ai&amp;de</translation>
    </message>
    <message>
        <source>&amp;About Leadline</source>
        <translation>À propos &amp;de Leadline</translation>
    </message>
    <message>
        <source>About Leadline</source>
        <translation>À propos de Leadline</translation>
    </message>
    <message>
        <source>&lt;p&gt;&lt;b&gt;Leadline %1&lt;/b&gt;&lt;/p&gt;&lt;p&gt;Plans a first, supervised scuba session, prints a card for every guest and reviews the log.&lt;/p&gt;&lt;p&gt;A planning aid: no dive computer, no medical device, no legal advice. Local law, your organisation&apos;s standard, the instructor and a physician come first. Numbers are estimates to be checked in the water.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later.&lt;/p&gt;</source>
        <translation>&lt;p&gt;&lt;b&gt;Leadline %1&lt;/b&gt;&lt;/p&gt;&lt;p&gt;Prépare une première plongée encadrée, imprime une fiche pour chaque client et passe le relevé en revue.&lt;/p&gt;&lt;p&gt;Une aide à la préparation&#xa0;: ni ordinateur de plongée, ni dispositif médical, ni conseil juridique. Le droit local, les standards de votre organisation, le moniteur et un médecin passent avant. Les chiffres sont des estimations à vérifier dans l’eau.&lt;/p&gt;&lt;p&gt;Logiciel libre sous la licence publique générale GNU, version 3 ou ultérieure.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>&amp;Guest screen</source>
        <translation>&amp;Briefing à l’écran</translation>
    </message>
    <message>
        <source>The briefing for guests to look at, on another monitor if there is one.</source>
        <translation>Le briefing à montrer aux clients, sur un autre écran s’il y en a un.</translation>
    </message>
</context>
</TS>
