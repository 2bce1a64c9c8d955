<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Guest</name>
    <message>
        <source>Meet</source>
        <extracomment>Card, before day and time: "Meet Sat 4 July, 09:30".</extracomment>
        <translation>Treffen</translation>
    </message>
    <message>
        <source>With</source>
        <extracomment>Card, before the instructor's name: "With Ana".
----------
label before the instructor’s name</extracomment>
        <translation>Mit</translation>
    </message>
    <message>
        <source>Low on air</source>
        <extracomment>Card, above the pressure in large type; the name of a hand signal as well.</extracomment>
        <translation>Wenig Luft</translation>
    </message>
    <message>
        <source>signal now</source>
        <extracomment>Card, below that pressure: show the hand signal at once. Two or three short words.</extracomment>
        <translation>sofort zeigen</translation>
    </message>
    <message>
        <source>Deepest</source>
        <extracomment>Card, above a depth in large type: the deepest point of the dive. One short word.</extracomment>
        <translation>Max. Tiefe</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>Card, above minutes in large type: how long the dive is. One short word.</extracomment>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>Never hold your breath</source>
        <extracomment>Card, the largest words: the one rule. Keep it short.</extracomment>
        <translation>Nie die Luft anhalten</translation>
    </message>
    <message>
        <source>Going up, held air swells: lungs can tear.</source>
        <extracomment>Card, below that rule. Beside it stands by how much the air swells: "×1.8".</extracomment>
        <translation>Aufwärts dehnt sich angehaltene Luft aus: Lungen können reißen.</translation>
    </message>
    <message>
        <source>Clear ears early, every %1. Pain? Stop, signal, go up %2.</source>
        <extracomment>Card. %1: a step of descent ("1 m"). %2: how far to go up ("1 m").</extracomment>
        <translation>Ohrendruck früh ausgleichen, alle %1. Schmerz? Stopp, zeigen, %2 höher.</translation>
    </message>
    <message>
        <source>Stay within reach. Lost? Look around 1 minute, go up slowly.</source>
        <extracomment>Card: so close to the instructor that an arm reaches. When apart: look around.</extracomment>
        <translation>Auf Armlänge bleiben. Getrennt? 1 Minute umsehen, dann langsam auftauchen.</translation>
    </message>
    <message>
        <source>Cold, scared, tired? Signal. Quitting is fine.</source>
        <extracomment>Card: whoever does not feel well gives a signal, and may end the dive.</extracomment>
        <translation>Kalt, Angst, müde? Zeichen geben. Aufhören ist in Ordnung.</translation>
    </message>
    <message>
        <source>At the top: fill BCD, mask on.</source>
        <extracomment>Card: back at the surface.</extracomment>
        <translation>Oben: Jacket aufblasen, Maske aufbehalten.</translation>
    </message>
    <message>
        <source>not “good”</source>
        <extracomment>Card, under the picture of a raised thumb, which means "go up": never "good".</extracomment>
        <translation>nicht „gut“</translation>
    </message>
    <message>
        <source>%1 h: no flights, no mountains.</source>
        <extracomment>Card, after the dive. %1: a number of hours.</extracomment>
        <translation>%1 h: nicht fliegen, keine Bergstraßen.</translation>
    </message>
    <message>
        <source>48 h: numb, dizzy, very tired, joint pain, breathless?</source>
        <extracomment>Card, after the dive: whoever feels this within 48 hours calls the number beside it.</extracomment>
        <translation>48 h: taube Haut, Schwindel, sehr müde, Gelenkschmerz, Atemnot?</translation>
    </message>
    <message>
        <source>Call</source>
        <extracomment>Card, before the emergency number; without a colon.</extracomment>
        <translation>Anrufen</translation>
    </message>
    <message>
        <source>Understood</source>
        <extracomment>Card, beside a box that the guest ticks.</extracomment>
        <translation>Verstanden</translation>
    </message>
    <message>
        <source>Planning aid. Your instructor decides.</source>
        <extracomment>Card, small: what the card is, and who decides.</extracomment>
        <translation>Planungshilfe. Ihr Tauchlehrer entscheidet.</translation>
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
        <translation>Unter Wasser atmen</translation>
    </message>
    <message>
        <source>Clear your mask</source>
        <translation>Maske ausblasen</translation>
    </message>
    <message>
        <source>Clear the mouthpiece</source>
        <translation>Atemregler ausblasen</translation>
    </message>
    <message>
        <source>Find the mouthpiece</source>
        <translation>Atemregler wiederfinden</translation>
    </message>
    <message>
        <source>Clear your ears</source>
        <translation>Ohrendruck ausgleichen</translation>
    </message>
    <message>
        <source>Fill and empty the BCD</source>
        <translation>Jacket aufblasen und leeren</translation>
    </message>
    <message>
        <source>Share air</source>
        <translation>Luft teilen</translation>
    </message>
    <message>
        <source>Float at the top</source>
        <translation>An der Oberfläche treiben</translation>
    </message>
    <message>
        <source>So that slow, steady breaths feel easy before you go down.</source>
        <translation>Damit ruhiges, gleichmäßiges Atmen leichtfällt, bevor Sie abtauchen.</translation>
    </message>
    <message>
        <source>So that water in the mask is no worry: you know how to blow it out.</source>
        <translation>Damit Wasser in der Maske Sie nicht beunruhigt: Sie wissen, wie man es ausbläst.</translation>
    </message>
    <message>
        <source>So that you can blow water out and breathe on.</source>
        <translation>Damit Sie Wasser ausblasen und weiteratmen können.</translation>
    </message>
    <message>
        <source>So that you can get it back if it slips out.</source>
        <translation>Damit Sie ihn zurückholen können, wenn er herausrutscht.</translation>
    </message>
    <message>
        <source>So that going down need not hurt.</source>
        <translation>Damit das Abtauchen nicht wehtun muss.</translation>
    </message>
    <message>
        <source>So that you can float, or sink, when you choose.</source>
        <translation>Damit Sie treiben oder sinken können, wie Sie wollen.</translation>
    </message>
    <message>
        <source>So that you can breathe from the spare if yours runs low.</source>
        <translation>Damit Sie aus dem Reserveregler atmen können, wenn Ihre Luft knapp wird.</translation>
    </message>
    <message>
        <source>So that you can rest with your head above the water.</source>
        <translation>Damit Sie ausruhen können, mit dem Kopf über Wasser.</translation>
    </message>
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
        <source>Mouthpiece</source>
        <translation>Atemregler</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Blei</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Manometer</translation>
    </message>
    <message>
        <source>Keeps you warm.</source>
        <translation>Hält Sie warm.</translation>
    </message>
    <message>
        <source>The jacket that lets you float or sink.</source>
        <translation>Die Weste, mit der Sie treiben oder sinken.</translation>
    </message>
    <message>
        <source>Move you with slow kicks.</source>
        <translation>Bringen Sie mit ruhigen Schlägen voran.</translation>
    </message>
    <message>
        <source>Lets you see. Your nose is inside, so that you can blow into it.</source>
        <translation>Lässt Sie gut sehen. Die Nase ist innen, damit Sie hineinblasen können.</translation>
    </message>
    <message>
        <source>Gives you air when you breathe in.</source>
        <translation>Gibt Ihnen Luft, wenn Sie einatmen.</translation>
    </message>
    <message>
        <source>Help you to sink. Your instructor shows how to drop them.</source>
        <translation>Hilft beim Sinken. Ihr Tauchlehrer zeigt, wie man es abwirft.</translation>
    </message>
    <message>
        <source>Holds your air.</source>
        <translation>Enthält Ihre Luft.</translation>
    </message>
    <message>
        <source>Shows how much air is left. Look at it often.</source>
        <translation>Zeigt, wie viel Luft noch da ist. Oft draufschauen.</translation>
    </message>
    <message>
        <source>Talk with your hands</source>
        <translation>Mit den Händen sprechen</translation>
    </message>
    <message>
        <source>Thumb up means “go up”. It never means “good”. For “good”, make a ring.</source>
        <translation>Daumen hoch heißt „auftauchen“. Nie heißt es „gut“. Für „gut“ einen Ring zeigen.</translation>
    </message>
    <message>
        <source>Some people count in another way. Show each other your numbers first.</source>
        <translation>Manche zählen anders. Zeigen Sie einander vorher Ihre Zahlen.</translation>
    </message>
    <message>
        <source>One sign at a time: %1 means %2.</source>
        <translation>Ein Zeichen nach dem anderen: %1 heißt %2.</translation>
    </message>
    <message>
        <source>Fill a balloon at the top. Down it goes, and it shrinks.</source>
        <translation>Blasen Sie oben einen Ballon auf. Auf dem Weg hinab schrumpft er.</translation>
    </message>
    <message>
        <source>Fill it deep down. Up it goes, and it swells.</source>
        <translation>Blasen Sie ihn in der Tiefe auf. Auf dem Weg hinauf wird er größer.</translation>
    </message>
    <message>
        <source>So does the air in your lungs, if you hold it.</source>
        <translation>Ebenso die Luft in Ihrer Lunge, wenn Sie sie anhalten.</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>a button: to the page before</extracomment>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Next</source>
        <extracomment>a button: to the page after</extracomment>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Run</source>
        <extracomment>a button: the pages turn by themselves from here on</extracomment>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>Pause</source>
        <extracomment>a button: the pages no longer turn by themselves</extracomment>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Tap your name.</source>
        <extracomment>above the first names of the guests</extracomment>
        <translation>Tippen Sie auf Ihren Namen.</translation>
    </message>
    <message>
        <source>No speaker has checked this text yet. Ask if it is not clear.</source>
        <extracomment>stands on every page whose language is a draft</extracomment>
        <translation>Diesen Text hat noch kein Muttersprachler geprüft. Fragen Sie, wenn etwas unklar ist.</translation>
    </message>
    <message>
        <source>A planning aid. Your instructor decides.</source>
        <translation>Eine Planungshilfe. Ihr Tauchlehrer entscheidet.</translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>Noch keine Gäste.</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Willkommen</translation>
    </message>
    <message>
        <source>Today’s dive</source>
        <translation>Der Tauchgang heute</translation>
    </message>
    <message>
        <source>Where</source>
        <extracomment>label before a place</extracomment>
        <translation>Wo</translation>
    </message>
    <message>
        <source>How deep</source>
        <extracomment>label before a depth</extracomment>
        <translation>Wie tief</translation>
    </message>
    <message>
        <source>no deeper than %1</source>
        <extracomment>follows the label “How deep”</extracomment>
        <translation>nicht tiefer als %1</translation>
    </message>
    <message>
        <source>How long</source>
        <extracomment>label before a time</extracomment>
        <translation>Wie lange</translation>
    </message>
    <message>
        <source>about %1</source>
        <extracomment>follows the label “How long”</extracomment>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>not set yet</source>
        <extracomment>in place of a name or a place</extracomment>
        <translation>noch offen</translation>
    </message>
    <message>
        <source>You may stop at any time. Just show it.</source>
        <translation>Sie dürfen jederzeit aufhören. Ein Zeichen genügt.</translation>
    </message>
    <message>
        <source>Ask about all that is not clear.</source>
        <translation>Fragen Sie, wenn etwas unklar ist.</translation>
    </message>
    <message>
        <source>Your kit</source>
        <translation>Ihre Ausrüstung</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <extracomment>in place of a size</extracomment>
        <translation>noch nicht gewählt</translation>
    </message>
    <message>
        <source>Try it all on. Does it pinch, leak or feel loose? Say so.</source>
        <translation>Alles anprobieren. Drückt etwas, ist es undicht oder zu locker? Sagen Sie es.</translation>
    </message>
    <message>
        <source>Breathe all the time</source>
        <translation>Immer weiteratmen</translation>
    </message>
    <message>
        <source>Move the diver up and down.</source>
        <extracomment>the guest drags a picture with the finger</extracomment>
        <translation>Bewegen Sie den Taucher auf und ab.</translation>
    </message>
    <message>
        <source>Depth</source>
        <extracomment>label before a number</extracomment>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Pressure</source>
        <extracomment>label before a number</extracomment>
        <translation>Druck</translation>
    </message>
    <message>
        <source>%1 the pressure at the top</source>
        <extracomment>%1 is a factor, as in ×1.8</extracomment>
        <translation>%1 so viel wie oben</translation>
    </message>
    <message>
        <source>Balloon</source>
        <translation>Ballon</translation>
    </message>
    <message>
        <source>Filled at the top, it shrinks on the way down.</source>
        <extracomment>a balloon</extracomment>
        <translation>Oben aufgeblasen, schrumpft er auf dem Weg nach unten.</translation>
    </message>
    <message>
        <source>Lungs</source>
        <translation>Lunge</translation>
    </message>
    <message>
        <source>Breathe, and they stay the same size.</source>
        <extracomment>the lungs</extracomment>
        <translation>Atmen Sie, und sie bleibt gleich groß.</translation>
    </message>
    <message>
        <source>A breath held at %1 swells to %2 at the top.</source>
        <extracomment>%2 is a factor, as in ×1.8</extracomment>
        <translation>In %1 angehaltene Luft dehnt sich bis oben aus: %2.</translation>
    </message>
    <message>
        <source>It can tear a lung.</source>
        <extracomment>a held breath</extracomment>
        <translation>Die Lunge kann reißen.</translation>
    </message>
    <message>
        <source>Even %1 up can be enough.</source>
        <extracomment>to go up by %1 with a held breath can be enough to tear a lung</extracomment>
        <translation>Schon %1 Aufstieg kann reichen.</translation>
    </message>
    <message>
        <source>Ear drum</source>
        <translation>Trommelfell</translation>
    </message>
    <message>
        <source>It bends in on the way down. Clear your ears.</source>
        <extracomment>the ear drum</extracomment>
        <translation>Beim Abtauchen wird es eingedrückt. Druck ausgleichen.</translation>
    </message>
    <message>
        <source>flat</source>
        <extracomment>the ear drum is not bent</extracomment>
        <translation>flach</translation>
    </message>
    <message>
        <source>bent in</source>
        <extracomment>the ear drum is bent in</extracomment>
        <translation>eingedrückt</translation>
    </message>
    <message>
        <source>On the way down it pulls at your face. Breathe out a bit through your nose.</source>
        <extracomment>the mask</extracomment>
        <translation>Beim Abtauchen saugt sie sich ans Gesicht. Etwas durch die Nase ausatmen.</translation>
    </message>
    <message>
        <source>sits well</source>
        <extracomment>the mask</extracomment>
        <translation>sitzt gut</translation>
    </message>
    <message>
        <source>pulls</source>
        <extracomment>the mask is sucked to the face</extracomment>
        <translation>saugt</translation>
    </message>
    <message>
        <source>Size: %1</source>
        <extracomment>%1 is a share, as in 55 %</extracomment>
        <translation>Größe: %1</translation>
    </message>
    <message>
        <source>Top</source>
        <extracomment>the water’s surface, beside a scale of depth</extracomment>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>Deepest today</source>
        <extracomment>beside a scale of depth</extracomment>
        <translation>Heute maximal</translation>
    </message>
    <message>
        <source>Diver</source>
        <extracomment>a person under water</extracomment>
        <translation>Taucher</translation>
    </message>
    <message>
        <source>Clear them every %1 on the way down, before they hurt.</source>
        <extracomment>your ears</extracomment>
        <translation>Beim Abtauchen alle %1 ausgleichen, bevor es wehtut.</translation>
    </message>
    <message>
        <source>Pinch your nose. Blow softly. Never blow hard.</source>
        <translation>Nase zuhalten. Sanft hineinblasen. Nie fest blasen.</translation>
    </message>
    <message>
        <source>Try it: go down. What if you do not clear?</source>
        <translation>Probieren Sie es hier: abtauchen. Und ohne Ausgleich?</translation>
    </message>
    <message>
        <source>Down</source>
        <extracomment>a button: go a little deeper</extracomment>
        <translation>Tiefer</translation>
    </message>
    <message>
        <source>Up</source>
        <extracomment>a button: go a little less deep</extracomment>
        <translation>Höher</translation>
    </message>
    <message>
        <source>Clear my ears</source>
        <extracomment>a button</extracomment>
        <translation>Druck ausgleichen</translation>
    </message>
    <message>
        <source>On the ear drum</source>
        <extracomment>label before a pressure</extracomment>
        <translation>Am Trommelfell</translation>
    </message>
    <message>
        <source>Fine</source>
        <extracomment>state of the ears</extracomment>
        <translation>In Ordnung</translation>
    </message>
    <message>
        <source>Pressure: clear now</source>
        <extracomment>state of the ears: it feels full, it does not hurt yet</extracomment>
        <translation>Druck: jetzt ausgleichen</translation>
    </message>
    <message>
        <source>Pain: stop and go up</source>
        <extracomment>state of the ears</extracomment>
        <translation>Schmerz: Stopp, höher gehen</translation>
    </message>
    <message>
        <source>Locked: only going up helps</source>
        <extracomment>state of the ears: the tube to the ear is shut tight and does not open</extracomment>
        <translation>Blockiert: Nur Höhergehen hilft</translation>
    </message>
    <message>
        <source>Cleared. The drum is flat.</source>
        <extracomment>the ear drum</extracomment>
        <translation>Ausgeglichen. Trommelfell ist flach.</translation>
    </message>
    <message>
        <source>Do not force it. Go up a bit first.</source>
        <extracomment>to clear the ears</extracomment>
        <translation>Nicht mit Gewalt. Erst etwas höher gehen.</translation>
    </message>
    <message>
        <source>Ears hurt? Stop, show it, go up a bit. Then try once more.</source>
        <translation>Ohren tun weh? Stopp, zeigen, etwas höher gehen. Dann neu versuchen.</translation>
    </message>
    <message>
        <source>clear here</source>
        <extracomment>beside a mark on a scale of depth</extracomment>
        <translation>hier ausgleichen</translation>
    </message>
    <message>
        <source>Hand signals</source>
        <translation>Handzeichen</translation>
    </message>
    <message>
        <source>How much air do you have?</source>
        <translation>Wie viel Luft haben Sie?</translation>
    </message>
    <message>
        <source>Show each figure with one hand. This is %1:</source>
        <extracomment>the figures of a number, one after another</extracomment>
        <translation>Zeigen Sie jede Ziffer mit einer Hand. Das ist %1:</translation>
    </message>
    <message>
        <source>Not the same</source>
        <extracomment>above two signals that are often mixed up</extracomment>
        <translation>Nicht dasselbe</translation>
    </message>
    <message>
        <source>Thumb up: we go up. It does not mean “good”.</source>
        <translation>Daumen hoch: Wir tauchen auf. Es heißt nicht „gut“.</translation>
    </message>
    <message>
        <source>All is well? Make the ring.</source>
        <extracomment>thumb and first finger make a ring</extracomment>
        <translation>Alles in Ordnung? Ring zeigen.</translation>
    </message>
    <message>
        <source>Do you know them?</source>
        <extracomment>hand signals</extracomment>
        <translation>Kennen Sie die Zeichen?</translation>
    </message>
    <message>
        <source>Start</source>
        <extracomment>a button</extracomment>
        <translation>Start</translation>
    </message>
    <message>
        <source>Start over</source>
        <extracomment>a button</extracomment>
        <translation>Von vorn</translation>
    </message>
    <message>
        <source>What does this signal say?</source>
        <translation>Was sagt dieses Zeichen?</translation>
    </message>
    <message>
        <source>Yes, that is right.</source>
        <translation>Ja, das stimmt.</translation>
    </message>
    <message>
        <source>Not quite. It says: %1</source>
        <translation>Nicht ganz. Es heißt: %1</translation>
    </message>
    <message>
        <source>We will ask it once more.</source>
        <translation>Wir fragen es noch einmal.</translation>
    </message>
    <message>
        <source>Known: %1 of %2</source>
        <translation>Bekannt: %1 von %2</translation>
    </message>
    <message>
        <source>You know them all. Well done!</source>
        <translation>Sie kennen alle. Gut gemacht!</translation>
    </message>
    <message>
        <source>Your instructor has a note of it: %1</source>
        <extracomment>%1 is a date</extracomment>
        <translation>Für Ihren Tauchlehrer notiert: %1</translation>
    </message>
    <message>
        <source>known</source>
        <extracomment>a hand signal that the guest knows</extracomment>
        <translation>bekannt</translation>
    </message>
    <message>
        <source>not yet</source>
        <extracomment>a hand signal that the guest does not know yet</extracomment>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>What we try first</source>
        <extracomment>what is practised in shallow water</extracomment>
        <translation>Was wir zuerst üben</translation>
    </message>
    <message>
        <source>Your instructor shows it. Then you try. Take your time.</source>
        <translation>Ihr Tauchlehrer zeigt es. Dann sind Sie dran. Lassen Sie sich Zeit.</translation>
    </message>
    <message>
        <source>Ask your instructor what we try today.</source>
        <translation>Fragen Sie Ihren Tauchlehrer, was wir heute üben.</translation>
    </message>
    <message>
        <source>When we go up</source>
        <translation>Wann wir auftauchen</translation>
    </message>
    <message>
        <source>One goes up, we all go up.</source>
        <translation>Taucht einer auf, tauchen alle auf.</translation>
    </message>
    <message>
        <source>Go up slowly and breathe all the time.</source>
        <translation>Langsam auftauchen und immer weiteratmen.</translation>
    </message>
    <message>
        <source>Your gauge reads %1 or less. Show it now.</source>
        <translation>Ihr Manometer zeigt %1 oder weniger. Sofort Zeichen geben.</translation>
    </message>
    <message>
        <source>Your air is low. Ask which number to look for.</source>
        <extracomment>the number on the gauge</extracomment>
        <translation>Ihre Luft ist knapp. Fragen Sie, ab welcher Zahl das gilt.</translation>
    </message>
    <message>
        <source>The time is up: %1.</source>
        <translation>Die Zeit ist um: %1.</translation>
    </message>
    <message>
        <source>You want to go up. That is fine.</source>
        <translation>Sie möchten auftauchen. Das ist in Ordnung.</translation>
    </message>
    <message>
        <source>Your ears hurt or do not clear.</source>
        <translation>Ihre Ohren schmerzen oder bleiben zu.</translation>
    </message>
    <message>
        <source>You are cold, tired or scared.</source>
        <translation>Sie frieren, sind müde oder haben Angst.</translation>
    </message>
    <message>
        <source>Your instructor shows: go up.</source>
        <translation>Ihr Tauchlehrer zeigt: auftauchen.</translation>
    </message>
    <message>
        <source>You see none of us. Look around for one minute, then go up slowly.</source>
        <translation>Sie sehen niemanden von uns. Eine Minute umsehen, dann langsam auftauchen.</translation>
    </message>
    <message>
        <source>After the dive</source>
        <translation>Nach dem Tauchgang</translation>
    </message>
    <message>
        <source>No flights and no mountain roads for %1 h.</source>
        <translation>%1 h lang nicht fliegen und keine Bergstraßen fahren.</translation>
    </message>
    <message>
        <source>For 48 h, watch for this:</source>
        <extracomment>signs of illness</extracomment>
        <translation>Achten Sie 48 h lang auf:</translation>
    </message>
    <message>
        <source>numb or tingling skin</source>
        <translation>taube oder kribbelnde Haut</translation>
    </message>
    <message>
        <source>weak arms or legs</source>
        <translation>schwache Arme oder Beine</translation>
    </message>
    <message>
        <source>dizzy, or odd sight</source>
        <translation>Schwindel, Sehstörungen</translation>
    </message>
    <message>
        <source>very tired</source>
        <translation>große Müdigkeit</translation>
    </message>
    <message>
        <source>sore joints</source>
        <translation>Gelenkschmerzen</translation>
    </message>
    <message>
        <source>short of breath, or chest pain</source>
        <translation>Atemnot oder Brustschmerzen</translation>
    </message>
    <message>
        <source>Any of these? Call now: %1</source>
        <translation>Etwas davon? Sofort anrufen: %1</translation>
    </message>
    <message>
        <source>Any of these? Call for help now. Ask your instructor for the number.</source>
        <translation>Etwas davon? Sofort Hilfe rufen. Fragen Sie Ihren Tauchlehrer nach der Nummer.</translation>
    </message>
    <message>
        <source>Say that you have been diving. Do not wait.</source>
        <translation>Sagen Sie, dass Sie getaucht sind. Warten Sie nicht.</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Problem</source>
        <translation>Problem</translation>
    </message>
    <message>
        <source>Ears</source>
        <translation>Ohren</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Go up</source>
        <translation>Auftauchen</translation>
    </message>
    <message>
        <source>Go down</source>
        <translation>Abtauchen</translation>
    </message>
    <message>
        <source>No air</source>
        <translation>Keine Luft</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Schauen</translation>
    </message>
    <message>
        <source>Come here</source>
        <translation>Herkommen</translation>
    </message>
    <message>
        <source>Stay close</source>
        <translation>Nah bleiben</translation>
    </message>
    <message>
        <source>Hold hands</source>
        <translation>Hand halten</translation>
    </message>
    <message>
        <source>This deep</source>
        <translation>Diese Tiefe</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>Langsam</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>Kalt</translation>
    </message>
    <message>
        <source>How much air?</source>
        <translation>Wie viel Luft?</translation>
    </message>
    <message>
        <source>OK, at the top</source>
        <translation>Oben: OK</translation>
    </message>
    <message>
        <source>Help, at the top</source>
        <translation>Oben: Hilfe</translation>
    </message>
    <message>
        <source>All is well. Is all well with you?</source>
        <translation>Alles in Ordnung. Bei Ihnen auch?</translation>
    </message>
    <message>
        <source>Something is wrong.</source>
        <translation>Etwas stimmt nicht.</translation>
    </message>
    <message>
        <source>My ears hurt, or do not clear.</source>
        <translation>Meine Ohren schmerzen oder bleiben zu.</translation>
    </message>
    <message>
        <source>Stop and stay where you are.</source>
        <translation>Stopp. Bleiben Sie, wo Sie sind.</translation>
    </message>
    <message>
        <source>Go up: the dive is over. It never means “good”.</source>
        <translation>Auftauchen: Der Tauchgang ist vorbei. Es heißt nie „gut“.</translation>
    </message>
    <message>
        <source>Go down.</source>
        <translation>Tauchen Sie ab.</translation>
    </message>
    <message>
        <source>I am low on air.</source>
        <translation>Ich habe wenig Luft.</translation>
    </message>
    <message>
        <source>I have no air. Give me yours now.</source>
        <translation>Ich habe keine Luft. Geben Sie mir sofort Ihre.</translation>
    </message>
    <message>
        <source>Let me breathe from your spare mouthpiece.</source>
        <translation>Lassen Sie mich aus Ihrem Reserveregler atmen.</translation>
    </message>
    <message>
        <source>Look, over there.</source>
        <translation>Schauen Sie, dort.</translation>
    </message>
    <message>
        <source>Come to me.</source>
        <translation>Kommen Sie zu mir.</translation>
    </message>
    <message>
        <source>Stay close together.</source>
        <translation>Bleiben Sie nah beieinander.</translation>
    </message>
    <message>
        <source>Let us hold hands.</source>
        <translation>Halten wir uns an der Hand.</translation>
    </message>
    <message>
        <source>Stay at this depth.</source>
        <translation>Bleiben Sie in dieser Tiefe.</translation>
    </message>
    <message>
        <source>Slow down.</source>
        <translation>Langsamer.</translation>
    </message>
    <message>
        <source>I am cold.</source>
        <translation>Mir ist kalt.</translation>
    </message>
    <message>
        <source>All is well. Made at the surface.</source>
        <translation>Alles in Ordnung. Zeichen für die Oberfläche.</translation>
    </message>
    <message>
        <source>Help me. Made at the surface.</source>
        <translation>Helfen Sie mir. Zeichen für die Oberfläche.</translation>
    </message>
    <message>
        <source>Thumb and first finger make a ring.</source>
        <translation>Daumen und Zeigefinger bilden einen Ring.</translation>
    </message>
    <message>
        <source>Rock a flat hand, then point at what is wrong.</source>
        <translation>Mit flacher Hand wackeln, dann aufs Problem zeigen.</translation>
    </message>
    <message>
        <source>Point at your ear.</source>
        <translation>Auf das Ohr zeigen.</translation>
    </message>
    <message>
        <source>Hold up a flat hand.</source>
        <translation>Flache Hand hochhalten.</translation>
    </message>
    <message>
        <source>Fist with the thumb up, moving up.</source>
        <translation>Faust, Daumen nach oben, aufwärts bewegen.</translation>
    </message>
    <message>
        <source>Fist with the thumb down, moving down.</source>
        <translation>Faust, Daumen nach unten, abwärts bewegen.</translation>
    </message>
    <message>
        <source>Hold a fist at your chest.</source>
        <translation>Faust vor die Brust halten.</translation>
    </message>
    <message>
        <source>Cut across your throat with a flat hand.</source>
        <translation>Flache Hand quer vor der Kehle entlangziehen.</translation>
    </message>
    <message>
        <source>Move your fingers to your mouth and away.</source>
        <translation>Finger zum Mund und wieder weg bewegen.</translation>
    </message>
    <message>
        <source>Two fingers from your eyes to the thing.</source>
        <translation>Mit zwei Fingern auf die Augen zeigen, dann auf die Sache.</translation>
    </message>
    <message>
        <source>Wave your hand towards you.</source>
        <translation>Mit der Hand zu sich winken.</translation>
    </message>
    <message>
        <source>Put two first fingers side by side.</source>
        <translation>Beide Zeigefinger nebeneinanderlegen.</translation>
    </message>
    <message>
        <source>Clasp your hands.</source>
        <translation>Hände ineinanderlegen.</translation>
    </message>
    <message>
        <source>Slide a flat hand from side to side.</source>
        <translation>Flache Hand waagerecht hin und her bewegen.</translation>
    </message>
    <message>
        <source>Press a flat hand down, twice.</source>
        <translation>Flache Hand zweimal nach unten drücken.</translation>
    </message>
    <message>
        <source>Cross your arms and rub them.</source>
        <translation>Arme kreuzen und reiben.</translation>
    </message>
    <message>
        <source>Lay two fingers on your palm.</source>
        <translation>Zwei Finger auf die Handfläche legen.</translation>
    </message>
    <message>
        <source>Make a big ring over your head with both arms.</source>
        <translation>Mit beiden Armen einen großen Ring über dem Kopf bilden.</translation>
    </message>
    <message>
        <source>Wave one straight arm over your head, slowly.</source>
        <translation>Einen gestreckten Arm langsam über dem Kopf schwenken.</translation>
    </message>
</context>
</TS>
