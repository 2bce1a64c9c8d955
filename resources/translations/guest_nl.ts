<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="nl" sourcelanguage="en">
<context>
    <name>Guest</name>
    <message>
        <source>Meet</source>
        <extracomment>Card, before day and time: "Meet Sat 4 July, 09:30".</extracomment>
        <translation>Verzamelen</translation>
    </message>
    <message>
        <source>With</source>
        <extracomment>Card, before the instructor's name: "With Ana".
----------
label before the instructor’s name</extracomment>
        <translation>Met</translation>
    </message>
    <message>
        <source>Low on air</source>
        <extracomment>Card, above the pressure in large type; the name of a hand signal as well.</extracomment>
        <translation>Weinig lucht</translation>
    </message>
    <message>
        <source>signal now</source>
        <extracomment>Card, below that pressure: show the hand signal at once. Two or three short words.</extracomment>
        <translation>meteen teken geven</translation>
    </message>
    <message>
        <source>Deepest</source>
        <extracomment>Card, above a depth in large type: the deepest point of the dive. One short word.</extracomment>
        <translation>Max. diepte</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>Card, above minutes in large type: how long the dive is. One short word.</extracomment>
        <translation>Duur</translation>
    </message>
    <message>
        <source>Never hold your breath</source>
        <extracomment>Card, the largest words: the one rule. Keep it short.</extracomment>
        <translation>Houd nooit je adem in</translation>
    </message>
    <message>
        <source>Going up, held air swells: lungs can tear.</source>
        <extracomment>Card, below that rule. Beside it stands by how much the air swells: "×1.8".</extracomment>
        <translation>Onderweg omhoog zwelt ingehouden lucht: longen kunnen scheuren.</translation>
    </message>
    <message>
        <source>Clear ears early, every %1. Pain? Stop, signal, go up %2.</source>
        <extracomment>Card. %1: a step of descent ("1 m"). %2: how far to go up ("1 m").</extracomment>
        <translation>Klaar je oren vroeg, elke %1. Pijn? Stop, geef een teken, %2 omhoog.</translation>
    </message>
    <message>
        <source>Stay within reach. Lost? Look around 1 minute, go up slowly.</source>
        <extracomment>Card: so close to the instructor that an arm reaches. When apart: look around.</extracomment>
        <translation>Blijf binnen handbereik. Elkaar kwijt? Kijk 1 minuut rond, langzaam omhoog.</translation>
    </message>
    <message>
        <source>Cold, scared, tired? Signal. Quitting is fine.</source>
        <extracomment>Card: whoever does not feel well gives a signal, and may end the dive.</extracomment>
        <translation>Koud, bang, moe? Geef een teken. Stoppen mag altijd.</translation>
    </message>
    <message>
        <source>At the top: fill BCD, mask on.</source>
        <extracomment>Card: back at the surface.</extracomment>
        <translation>Boven: trimvest vullen, duikbril ophouden.</translation>
    </message>
    <message>
        <source>not “good”</source>
        <extracomment>Card, under the picture of a raised thumb, which means "go up": never "good".</extracomment>
        <translation>niet ‘goed’</translation>
    </message>
    <message>
        <source>%1 h: no flights, no mountains.</source>
        <extracomment>Card, after the dive. %1: a number of hours.</extracomment>
        <translation>%1 uur: niet vliegen, geen bergwegen.</translation>
    </message>
    <message>
        <source>48 h: numb, dizzy, very tired, joint pain, breathless?</source>
        <extracomment>Card, after the dive: whoever feels this within 48 hours calls the number beside it.</extracomment>
        <translation>48 uur: gevoelloos, duizelig, erg moe, gewrichtspijn, kortademig?</translation>
    </message>
    <message>
        <source>Call</source>
        <extracomment>Card, before the emergency number; without a colon.</extracomment>
        <translation>Bel</translation>
    </message>
    <message>
        <source>Understood</source>
        <extracomment>Card, beside a box that the guest ticks.</extracomment>
        <translation>Begrepen</translation>
    </message>
    <message>
        <source>Planning aid. Your instructor decides.</source>
        <extracomment>Card, small: what the card is, and who decides.</extracomment>
        <translation>Planningshulp. Je instructeur beslist.</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>bar</translation>
    </message>
    <message>
        <source>psi</source>
        <translation>psi</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
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
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>ft³</source>
        <translation>ft³</translation>
    </message>
    <message>
        <source>Breathe under water</source>
        <translation>Onder water ademen</translation>
    </message>
    <message>
        <source>Clear your mask</source>
        <translation>Duikbril leegblazen</translation>
    </message>
    <message>
        <source>Clear the mouthpiece</source>
        <translation>Ademautomaat leegblazen</translation>
    </message>
    <message>
        <source>Find the mouthpiece</source>
        <translation>Ademautomaat terugvinden</translation>
    </message>
    <message>
        <source>Clear your ears</source>
        <translation>Oren klaren</translation>
    </message>
    <message>
        <source>Fill and empty the BCD</source>
        <translation>Trimvest vullen en legen</translation>
    </message>
    <message>
        <source>Share air</source>
        <translation>Lucht delen</translation>
    </message>
    <message>
        <source>Float at the top</source>
        <translation>Boven blijven drijven</translation>
    </message>
    <message>
        <source>So that slow, steady breaths feel easy before you go down.</source>
        <translation>Zodat rustig en gelijkmatig ademen makkelijk gaat, voordat je omlaag gaat.</translation>
    </message>
    <message>
        <source>So that water in the mask is no worry: you know how to blow it out.</source>
        <translation>Zodat je niet schrikt van water in je duikbril: je weet hoe je het eruit blaast.</translation>
    </message>
    <message>
        <source>So that you can blow water out and breathe on.</source>
        <translation>Zodat je water eruit kunt blazen en verder kunt ademen.</translation>
    </message>
    <message>
        <source>So that you can get it back if it slips out.</source>
        <translation>Zodat je hem kunt terugpakken als hij uit je mond glipt.</translation>
    </message>
    <message>
        <source>So that going down need not hurt.</source>
        <translation>Zodat omlaag gaan geen pijn hoeft te doen.</translation>
    </message>
    <message>
        <source>So that you can float, or sink, when you choose.</source>
        <translation>Zodat je kunt drijven of zinken wanneer je wilt.</translation>
    </message>
    <message>
        <source>So that you can breathe from the spare if yours runs low.</source>
        <translation>Zodat je uit de reserveautomaat kunt ademen als je weinig lucht hebt.</translation>
    </message>
    <message>
        <source>So that you can rest with your head above the water.</source>
        <translation>Zodat je kunt uitrusten met je hoofd boven water.</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>Duikpak</translation>
    </message>
    <message>
        <source>BCD</source>
        <translation>Trimvest</translation>
    </message>
    <message>
        <source>Fins</source>
        <translation>Vinnen</translation>
    </message>
    <message>
        <source>Mask</source>
        <translation>Duikbril</translation>
    </message>
    <message>
        <source>Mouthpiece</source>
        <translation>Ademautomaat</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Lood</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Duikfles</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Manometer</translation>
    </message>
    <message>
        <source>Keeps you warm.</source>
        <translation>Houdt je warm.</translation>
    </message>
    <message>
        <source>The jacket that lets you float or sink.</source>
        <translation>Het vest waarmee je drijft of zinkt.</translation>
    </message>
    <message>
        <source>Move you with slow kicks.</source>
        <translation>Duwen je vooruit met rustige slagen.</translation>
    </message>
    <message>
        <source>Lets you see. Your nose is inside, so that you can blow into it.</source>
        <translation>Hiermee zie je goed. Je neus zit erin, zodat je erin kunt blazen.</translation>
    </message>
    <message>
        <source>Gives you air when you breathe in.</source>
        <translation>Geeft je lucht als je inademt.</translation>
    </message>
    <message>
        <source>Help you to sink. Your instructor shows how to drop them.</source>
        <translation>Helpt je zinken. Je instructeur laat zien hoe je het afwerpt.</translation>
    </message>
    <message>
        <source>Holds your air.</source>
        <translation>Hier zit je lucht in.</translation>
    </message>
    <message>
        <source>Shows how much air is left. Look at it often.</source>
        <translation>Toont hoeveel lucht er over is. Kijk er vaak op.</translation>
    </message>
    <message>
        <source>Talk with your hands</source>
        <translation>Praat met je handen</translation>
    </message>
    <message>
        <source>Thumb up means “go up”. It never means “good”. For “good”, make a ring.</source>
        <translation>Duim omhoog betekent ‘ga omhoog’. Nooit ‘goed’. Voor ‘goed’ maak je een ring.</translation>
    </message>
    <message>
        <source>Some people count in another way. Show each other your numbers first.</source>
        <translation>Sommige mensen tellen anders. Laat elkaar eerst zien hoe jullie tellen.</translation>
    </message>
    <message>
        <source>One sign at a time: %1 means %2.</source>
        <translation>Eén teken tegelijk: %1 betekent %2.</translation>
    </message>
    <message>
        <source>Fill a balloon at the top. Down it goes, and it shrinks.</source>
        <translation>Vul boven een ballon. Gaat hij omlaag, dan krimpt hij.</translation>
    </message>
    <message>
        <source>Fill it deep down. Up it goes, and it swells.</source>
        <translation>Vul hem diep onder water. Gaat hij omhoog, dan zwelt hij op.</translation>
    </message>
    <message>
        <source>So does the air in your lungs, if you hold it.</source>
        <translation>Ook de lucht in je longen, als je je adem inhoudt.</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>a button: to the page before</extracomment>
        <translation>Vorige</translation>
    </message>
    <message>
        <source>Next</source>
        <extracomment>a button: to the page after</extracomment>
        <translation>Volgende</translation>
    </message>
    <message>
        <source>Run</source>
        <extracomment>a button: the pages turn by themselves from here on</extracomment>
        <translation>Afspelen</translation>
    </message>
    <message>
        <source>Pause</source>
        <extracomment>a button: the pages no longer turn by themselves</extracomment>
        <translation>Pauze</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Taal</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Pagina %1 van %2</translation>
    </message>
    <message>
        <source>Tap your name.</source>
        <extracomment>above the first names of the guests</extracomment>
        <translation>Tik op je naam.</translation>
    </message>
    <message>
        <source>No speaker has checked this text yet. Ask if it is not clear.</source>
        <extracomment>stands on every page whose language is a draft</extracomment>
        <translation>Nog niet nagekeken door iemand die Nederlands spreekt. Niet duidelijk? Vraag het.</translation>
    </message>
    <message>
        <source>A planning aid. Your instructor decides.</source>
        <translation>Een hulp bij het plannen. Je instructeur beslist.</translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>Nog geen gasten.</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Welkom</translation>
    </message>
    <message>
        <source>Today’s dive</source>
        <translation>De duik van vandaag</translation>
    </message>
    <message>
        <source>Where</source>
        <extracomment>label before a place</extracomment>
        <translation>Waar</translation>
    </message>
    <message>
        <source>How deep</source>
        <extracomment>label before a depth</extracomment>
        <translation>Hoe diep</translation>
    </message>
    <message>
        <source>no deeper than %1</source>
        <extracomment>follows the label “How deep”</extracomment>
        <translation>niet dieper dan %1</translation>
    </message>
    <message>
        <source>How long</source>
        <extracomment>label before a time</extracomment>
        <translation>Hoe lang</translation>
    </message>
    <message>
        <source>about %1</source>
        <extracomment>follows the label “How long”</extracomment>
        <translation>ongeveer %1</translation>
    </message>
    <message>
        <source>not set yet</source>
        <extracomment>in place of a name or a place</extracomment>
        <translation>nog niet bekend</translation>
    </message>
    <message>
        <source>You may stop at any time. Just show it.</source>
        <translation>Je mag altijd stoppen. Geef gewoon een teken.</translation>
    </message>
    <message>
        <source>Ask about all that is not clear.</source>
        <translation>Vraag alles wat niet duidelijk is.</translation>
    </message>
    <message>
        <source>Your kit</source>
        <translation>Je uitrusting</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <extracomment>in place of a size</extracomment>
        <translation>nog niet gekozen</translation>
    </message>
    <message>
        <source>Try it all on. Does it pinch, leak or feel loose? Say so.</source>
        <translation>Pas alles. Knelt, lekt of zit er iets los? Zeg het.</translation>
    </message>
    <message>
        <source>Breathe all the time</source>
        <translation>Adem steeds door</translation>
    </message>
    <message>
        <source>Move the diver up and down.</source>
        <extracomment>the guest drags a picture with the finger</extracomment>
        <translation>Beweeg de duiker op en neer.</translation>
    </message>
    <message>
        <source>Depth</source>
        <extracomment>label before a number</extracomment>
        <translation>Diepte</translation>
    </message>
    <message>
        <source>Pressure</source>
        <extracomment>label before a number</extracomment>
        <translation>Druk</translation>
    </message>
    <message>
        <source>%1 the pressure at the top</source>
        <extracomment>%1 is a factor, as in ×1.8</extracomment>
        <translation>%1 de druk aan de oppervlakte</translation>
    </message>
    <message>
        <source>Balloon</source>
        <translation>Ballon</translation>
    </message>
    <message>
        <source>Filled at the top, it shrinks on the way down.</source>
        <extracomment>a balloon</extracomment>
        <translation>Boven gevuld krimpt hij op weg naar beneden.</translation>
    </message>
    <message>
        <source>Lungs</source>
        <translation>Longen</translation>
    </message>
    <message>
        <source>Breathe, and they stay the same size.</source>
        <extracomment>the lungs</extracomment>
        <translation>Blijf ademen, dan blijven ze even groot.</translation>
    </message>
    <message>
        <source>A breath held at %1 swells to %2 at the top.</source>
        <extracomment>%2 is a factor, as in ×1.8</extracomment>
        <translation>Lucht die je op %1 inhoudt, zet boven uit tot %2.</translation>
    </message>
    <message>
        <source>It can tear a lung.</source>
        <extracomment>a held breath</extracomment>
        <translation>Daardoor kan een long scheuren.</translation>
    </message>
    <message>
        <source>Even %1 up can be enough.</source>
        <extracomment>to go up by %1 with a held breath can be enough to tear a lung</extracomment>
        <translation>Zelfs %1 omhoog kan genoeg zijn.</translation>
    </message>
    <message>
        <source>Ear drum</source>
        <translation>Trommelvlies</translation>
    </message>
    <message>
        <source>It bends in on the way down. Clear your ears.</source>
        <extracomment>the ear drum</extracomment>
        <translation>Op weg naar beneden wordt het ingedrukt. Klaar je oren.</translation>
    </message>
    <message>
        <source>flat</source>
        <extracomment>the ear drum is not bent</extracomment>
        <translation>vlak</translation>
    </message>
    <message>
        <source>bent in</source>
        <extracomment>the ear drum is bent in</extracomment>
        <translation>ingedrukt</translation>
    </message>
    <message>
        <source>On the way down it pulls at your face. Breathe out a bit through your nose.</source>
        <extracomment>the mask</extracomment>
        <translation>Op weg naar beneden zuigt hij aan je gezicht. Adem een beetje uit door je neus.</translation>
    </message>
    <message>
        <source>sits well</source>
        <extracomment>the mask</extracomment>
        <translation>zit goed</translation>
    </message>
    <message>
        <source>pulls</source>
        <extracomment>the mask is sucked to the face</extracomment>
        <translation>zuigt</translation>
    </message>
    <message>
        <source>Size: %1</source>
        <extracomment>%1 is a share, as in 55 %</extracomment>
        <translation>Grootte: %1</translation>
    </message>
    <message>
        <source>Top</source>
        <extracomment>the water’s surface, beside a scale of depth</extracomment>
        <translation>Oppervlakte</translation>
    </message>
    <message>
        <source>Deepest today</source>
        <extracomment>beside a scale of depth</extracomment>
        <translation>Diepst vandaag</translation>
    </message>
    <message>
        <source>Diver</source>
        <extracomment>a person under water</extracomment>
        <translation>Duiker</translation>
    </message>
    <message>
        <source>Clear them every %1 on the way down, before they hurt.</source>
        <extracomment>your ears</extracomment>
        <translation>Klaar ze op weg naar beneden elke %1, voordat ze pijn doen.</translation>
    </message>
    <message>
        <source>Pinch your nose. Blow softly. Never blow hard.</source>
        <translation>Knijp je neus dicht. Blaas zacht. Blaas nooit hard.</translation>
    </message>
    <message>
        <source>Try it: go down. What if you do not clear?</source>
        <translation>Probeer het: ga omlaag. En als je niet klaart?</translation>
    </message>
    <message>
        <source>Down</source>
        <extracomment>a button: go a little deeper</extracomment>
        <translation>Omlaag</translation>
    </message>
    <message>
        <source>Up</source>
        <extracomment>a button: go a little less deep</extracomment>
        <translation>Omhoog</translation>
    </message>
    <message>
        <source>Clear my ears</source>
        <extracomment>a button</extracomment>
        <translation>Oren klaren</translation>
    </message>
    <message>
        <source>On the ear drum</source>
        <extracomment>label before a pressure</extracomment>
        <translation>Op het trommelvlies</translation>
    </message>
    <message>
        <source>Fine</source>
        <extracomment>state of the ears</extracomment>
        <translation>Goed</translation>
    </message>
    <message>
        <source>Pressure: clear now</source>
        <extracomment>state of the ears: it feels full, it does not hurt yet</extracomment>
        <translation>Druk: nu klaren</translation>
    </message>
    <message>
        <source>Pain: stop and go up</source>
        <extracomment>state of the ears</extracomment>
        <translation>Pijn: stop en ga omhoog</translation>
    </message>
    <message>
        <source>Locked: only going up helps</source>
        <extracomment>state of the ears: the tube to the ear is shut tight and does not open</extracomment>
        <translation>Dicht: alleen omhoog gaan helpt</translation>
    </message>
    <message>
        <source>Cleared. The drum is flat.</source>
        <extracomment>the ear drum</extracomment>
        <translation>Geklaard. Het trommelvlies is vlak.</translation>
    </message>
    <message>
        <source>Do not force it. Go up a bit first.</source>
        <extracomment>to clear the ears</extracomment>
        <translation>Forceer niets. Ga eerst wat omhoog.</translation>
    </message>
    <message>
        <source>Ears hurt? Stop, show it, go up a bit. Then try once more.</source>
        <translation>Pijn aan je oren? Stop, geef een teken, ga wat omhoog. Probeer het dan nog een keer.</translation>
    </message>
    <message>
        <source>clear here</source>
        <extracomment>beside a mark on a scale of depth</extracomment>
        <translation>hier klaren</translation>
    </message>
    <message>
        <source>Hand signals</source>
        <translation>Duiktekens</translation>
    </message>
    <message>
        <source>How much air do you have?</source>
        <translation>Hoeveel lucht heb je?</translation>
    </message>
    <message>
        <source>Show each figure with one hand. This is %1:</source>
        <extracomment>the figures of a number, one after another</extracomment>
        <translation>Toon elk cijfer met één hand. Dit is %1:</translation>
    </message>
    <message>
        <source>Not the same</source>
        <extracomment>above two signals that are often mixed up</extracomment>
        <translation>Niet hetzelfde</translation>
    </message>
    <message>
        <source>Thumb up: we go up. It does not mean “good”.</source>
        <translation>Duim omhoog: we gaan omhoog. Het betekent niet ‘goed’.</translation>
    </message>
    <message>
        <source>All is well? Make the ring.</source>
        <extracomment>thumb and first finger make a ring</extracomment>
        <translation>Alles goed? Maak de ring.</translation>
    </message>
    <message>
        <source>Do you know them?</source>
        <extracomment>hand signals</extracomment>
        <translation>Ken je de tekens?</translation>
    </message>
    <message>
        <source>Start</source>
        <extracomment>a button</extracomment>
        <translation>Start</translation>
    </message>
    <message>
        <source>Start over</source>
        <extracomment>a button</extracomment>
        <translation>Opnieuw</translation>
    </message>
    <message>
        <source>What does this signal say?</source>
        <translation>Wat zegt dit teken?</translation>
    </message>
    <message>
        <source>Yes, that is right.</source>
        <translation>Ja, dat klopt.</translation>
    </message>
    <message>
        <source>Not quite. It says: %1</source>
        <translation>Niet helemaal. Dat was: %1</translation>
    </message>
    <message>
        <source>We will ask it once more.</source>
        <translation>We vragen het nog een keer.</translation>
    </message>
    <message>
        <source>Known: %1 of %2</source>
        <translation>Bekend: %1 van %2</translation>
    </message>
    <message>
        <source>You know them all. Well done!</source>
        <translation>Je kent ze allemaal. Goed gedaan!</translation>
    </message>
    <message>
        <source>Your instructor has a note of it: %1</source>
        <extracomment>%1 is a date</extracomment>
        <translation>Genoteerd voor je instructeur: %1</translation>
    </message>
    <message>
        <source>known</source>
        <extracomment>a hand signal that the guest knows</extracomment>
        <translation>bekend</translation>
    </message>
    <message>
        <source>not yet</source>
        <extracomment>a hand signal that the guest does not know yet</extracomment>
        <translation>nog niet</translation>
    </message>
    <message>
        <source>What we try first</source>
        <extracomment>what is practised in shallow water</extracomment>
        <translation>Wat we eerst oefenen</translation>
    </message>
    <message>
        <source>Your instructor shows it. Then you try. Take your time.</source>
        <translation>Je instructeur doet het voor. Dan probeer jij het. Neem de tijd.</translation>
    </message>
    <message>
        <source>Ask your instructor what we try today.</source>
        <translation>Vraag je instructeur wat we vandaag oefenen.</translation>
    </message>
    <message>
        <source>When we go up</source>
        <translation>Wanneer we omhoog gaan</translation>
    </message>
    <message>
        <source>One goes up, we all go up.</source>
        <translation>Gaat er één omhoog, dan gaan we allemaal omhoog.</translation>
    </message>
    <message>
        <source>Go up slowly and breathe all the time.</source>
        <translation>Ga langzaam omhoog en adem steeds door.</translation>
    </message>
    <message>
        <source>Your gauge reads %1 or less. Show it now.</source>
        <translation>Je manometer staat op %1 of lager. Geef meteen een teken.</translation>
    </message>
    <message>
        <source>Your air is low. Ask which number to look for.</source>
        <extracomment>the number on the gauge</extracomment>
        <translation>Je hebt weinig lucht. Vraag op welk getal je moet letten.</translation>
    </message>
    <message>
        <source>The time is up: %1.</source>
        <translation>De tijd is om: %1.</translation>
    </message>
    <message>
        <source>You want to go up. That is fine.</source>
        <translation>Je wilt omhoog. Dat is prima.</translation>
    </message>
    <message>
        <source>Your ears hurt or do not clear.</source>
        <translation>Je oren doen pijn of je kunt ze niet klaren.</translation>
    </message>
    <message>
        <source>You are cold, tired or scared.</source>
        <translation>Je hebt het koud, bent moe of bang.</translation>
    </message>
    <message>
        <source>Your instructor shows: go up.</source>
        <translation>Je instructeur geeft het teken: omhoog.</translation>
    </message>
    <message>
        <source>You see none of us. Look around for one minute, then go up slowly.</source>
        <translation>Je ziet niemand van ons. Kijk één minuut rond en ga dan langzaam omhoog.</translation>
    </message>
    <message>
        <source>After the dive</source>
        <translation>Na de duik</translation>
    </message>
    <message>
        <source>No flights and no mountain roads for %1 h.</source>
        <translation>%1 uur lang niet vliegen en niet over bergwegen rijden.</translation>
    </message>
    <message>
        <source>For 48 h, watch for this:</source>
        <extracomment>signs of illness</extracomment>
        <translation>Let 48 uur lang hierop:</translation>
    </message>
    <message>
        <source>numb or tingling skin</source>
        <translation>gevoelloze of tintelende huid</translation>
    </message>
    <message>
        <source>weak arms or legs</source>
        <translation>zwakke armen of benen</translation>
    </message>
    <message>
        <source>dizzy, or odd sight</source>
        <translation>duizelig of niet goed zien</translation>
    </message>
    <message>
        <source>very tired</source>
        <translation>erg moe</translation>
    </message>
    <message>
        <source>sore joints</source>
        <translation>pijnlijke gewrichten</translation>
    </message>
    <message>
        <source>short of breath, or chest pain</source>
        <translation>kortademig of pijn op de borst</translation>
    </message>
    <message>
        <source>Any of these? Call now: %1</source>
        <translation>Een van deze klachten? Bel meteen: %1</translation>
    </message>
    <message>
        <source>Any of these? Call for help now. Ask your instructor for the number.</source>
        <translation>Een van deze klachten? Bel meteen om hulp. Vraag je instructeur om het nummer.</translation>
    </message>
    <message>
        <source>Say that you have been diving. Do not wait.</source>
        <translation>Zeg dat je hebt gedoken. Wacht niet.</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Problem</source>
        <translation>Probleem</translation>
    </message>
    <message>
        <source>Ears</source>
        <translation>Oren</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message>
        <source>Go up</source>
        <translation>Omhoog</translation>
    </message>
    <message>
        <source>Go down</source>
        <translation>Omlaag</translation>
    </message>
    <message>
        <source>No air</source>
        <translation>Geen lucht</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Kijk</translation>
    </message>
    <message>
        <source>Come here</source>
        <translation>Kom hier</translation>
    </message>
    <message>
        <source>Stay close</source>
        <translation>Blijf dichtbij</translation>
    </message>
    <message>
        <source>Hold hands</source>
        <translation>Handen vast</translation>
    </message>
    <message>
        <source>This deep</source>
        <translation>Deze diepte</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>Langzaam</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>Koud</translation>
    </message>
    <message>
        <source>How much air?</source>
        <translation>Hoeveel lucht?</translation>
    </message>
    <message>
        <source>OK, at the top</source>
        <translation>Boven: OK</translation>
    </message>
    <message>
        <source>Help, at the top</source>
        <translation>Boven: help</translation>
    </message>
    <message>
        <source>All is well. Is all well with you?</source>
        <translation>Alles goed. Met jou ook?</translation>
    </message>
    <message>
        <source>Something is wrong.</source>
        <translation>Er is iets mis.</translation>
    </message>
    <message>
        <source>My ears hurt, or do not clear.</source>
        <translation>Mijn oren doen pijn of ik kan ze niet klaren.</translation>
    </message>
    <message>
        <source>Stop and stay where you are.</source>
        <translation>Stop en blijf waar je bent.</translation>
    </message>
    <message>
        <source>Go up: the dive is over. It never means “good”.</source>
        <translation>Ga omhoog: de duik is voorbij. Het betekent nooit ‘goed’.</translation>
    </message>
    <message>
        <source>Go down.</source>
        <translation>Ga omlaag.</translation>
    </message>
    <message>
        <source>I am low on air.</source>
        <translation>Ik heb weinig lucht.</translation>
    </message>
    <message>
        <source>I have no air. Give me yours now.</source>
        <translation>Ik heb geen lucht. Geef me nu die van jou.</translation>
    </message>
    <message>
        <source>Let me breathe from your spare mouthpiece.</source>
        <translation>Laat me uit je reserveautomaat ademen.</translation>
    </message>
    <message>
        <source>Look, over there.</source>
        <translation>Kijk, daar.</translation>
    </message>
    <message>
        <source>Come to me.</source>
        <translation>Kom naar mij toe.</translation>
    </message>
    <message>
        <source>Stay close together.</source>
        <translation>Blijf dicht bij elkaar.</translation>
    </message>
    <message>
        <source>Let us hold hands.</source>
        <translation>Laten we elkaars hand pakken.</translation>
    </message>
    <message>
        <source>Stay at this depth.</source>
        <translation>Blijf op deze diepte.</translation>
    </message>
    <message>
        <source>Slow down.</source>
        <translation>Langzamer.</translation>
    </message>
    <message>
        <source>I am cold.</source>
        <translation>Ik heb het koud.</translation>
    </message>
    <message>
        <source>All is well. Made at the surface.</source>
        <translation>Alles goed. Teken voor aan de oppervlakte.</translation>
    </message>
    <message>
        <source>Help me. Made at the surface.</source>
        <translation>Help me. Teken voor aan de oppervlakte.</translation>
    </message>
    <message>
        <source>Thumb and first finger make a ring.</source>
        <translation>Duim en wijsvinger vormen een ring.</translation>
    </message>
    <message>
        <source>Rock a flat hand, then point at what is wrong.</source>
        <translation>Wiebel met je vlakke hand en wijs dan aan wat er mis is.</translation>
    </message>
    <message>
        <source>Point at your ear.</source>
        <translation>Wijs naar je oor.</translation>
    </message>
    <message>
        <source>Hold up a flat hand.</source>
        <translation>Steek je vlakke hand op.</translation>
    </message>
    <message>
        <source>Fist with the thumb up, moving up.</source>
        <translation>Vuist met de duim omhoog, die omhoog gaat.</translation>
    </message>
    <message>
        <source>Fist with the thumb down, moving down.</source>
        <translation>Vuist met de duim omlaag, die omlaag gaat.</translation>
    </message>
    <message>
        <source>Hold a fist at your chest.</source>
        <translation>Houd een vuist tegen je borst.</translation>
    </message>
    <message>
        <source>Cut across your throat with a flat hand.</source>
        <translation>Snij met je vlakke hand langs je keel.</translation>
    </message>
    <message>
        <source>Move your fingers to your mouth and away.</source>
        <translation>Beweeg je vingers naar je mond en weer weg.</translation>
    </message>
    <message>
        <source>Two fingers from your eyes to the thing.</source>
        <translation>Twee vingers, van je ogen naar wat je ziet.</translation>
    </message>
    <message>
        <source>Wave your hand towards you.</source>
        <translation>Wenk met je hand naar je toe.</translation>
    </message>
    <message>
        <source>Put two first fingers side by side.</source>
        <translation>Leg je twee wijsvingers naast elkaar.</translation>
    </message>
    <message>
        <source>Clasp your hands.</source>
        <translation>Sla je handen ineen.</translation>
    </message>
    <message>
        <source>Slide a flat hand from side to side.</source>
        <translation>Schuif je vlakke hand heen en weer.</translation>
    </message>
    <message>
        <source>Press a flat hand down, twice.</source>
        <translation>Duw je vlakke hand twee keer omlaag.</translation>
    </message>
    <message>
        <source>Cross your arms and rub them.</source>
        <translation>Kruis je armen en wrijf erover.</translation>
    </message>
    <message>
        <source>Lay two fingers on your palm.</source>
        <translation>Leg twee vingers op je handpalm.</translation>
    </message>
    <message>
        <source>Make a big ring over your head with both arms.</source>
        <translation>Maak met beide armen een grote ring boven je hoofd.</translation>
    </message>
    <message>
        <source>Wave one straight arm over your head, slowly.</source>
        <translation>Zwaai langzaam met een gestrekte arm boven je hoofd.</translation>
    </message>
</context>
</TS>
