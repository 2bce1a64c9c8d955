<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="it" sourcelanguage="en">
<context>
    <name>Guest</name>
    <message>
        <source>Meet</source>
        <extracomment>Card, before day and time: "Meet Sat 4 July, 09:30".</extracomment>
        <translation>Ritrovo</translation>
    </message>
    <message>
        <source>With</source>
        <extracomment>Card, before the instructor's name: "With Ana".
----------
label before the instructor’s name</extracomment>
        <translation>Con</translation>
    </message>
    <message>
        <source>Low on air</source>
        <extracomment>Card, above the pressure in large type; the name of a hand signal as well.</extracomment>
        <translation>Poca aria</translation>
    </message>
    <message>
        <source>signal now</source>
        <extracomment>Card, below that pressure: show the hand signal at once. Two or three short words.</extracomment>
        <translation>segnala subito</translation>
    </message>
    <message>
        <source>Deepest</source>
        <extracomment>Card, above a depth in large type: the deepest point of the dive. One short word.</extracomment>
        <translation>Massimo</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>Card, above minutes in large type: how long the dive is. One short word.</extracomment>
        <translation>Durata</translation>
    </message>
    <message>
        <source>Never hold your breath</source>
        <extracomment>Card, the largest words: the one rule. Keep it short.</extracomment>
        <translation>Non trattenere mai il respiro</translation>
    </message>
    <message>
        <source>Going up, held air swells: lungs can tear.</source>
        <extracomment>Card, below that rule. Beside it stands by how much the air swells: "×1.8".</extracomment>
        <translation>Salendo, l’aria trattenuta si espande: può lacerare i polmoni.</translation>
    </message>
    <message>
        <source>Clear ears early, every %1. Pain? Stop, signal, go up %2.</source>
        <extracomment>Card. %1: a step of descent ("1 m"). %2: how far to go up ("1 m").</extracomment>
        <translation>Orecchie: compensa presto, ogni %1. Dolore? Fermati, segnala, risali di %2.</translation>
    </message>
    <message>
        <source>Stay within reach. Lost? Look around 1 minute, go up slowly.</source>
        <extracomment>Card: so close to the instructor that an arm reaches. When apart: look around.</extracomment>
        <translation>Resta a portata di braccio. Separati? Guardati intorno 1 minuto, risali lentamente.</translation>
    </message>
    <message>
        <source>Cold, scared, tired? Signal. Quitting is fine.</source>
        <extracomment>Card: whoever does not feel well gives a signal, and may end the dive.</extracomment>
        <translation>Freddo, paura, stanchezza? Segnala. Puoi smettere.</translation>
    </message>
    <message>
        <source>At the top: fill BCD, mask on.</source>
        <extracomment>Card: back at the surface.</extracomment>
        <translation>Superficie: GAV gonfio, maschera indossata.</translation>
    </message>
    <message>
        <source>not “good”</source>
        <extracomment>Card, under the picture of a raised thumb, which means "go up": never "good".</extracomment>
        <translation>non «bene»</translation>
    </message>
    <message>
        <source>%1 h: no flights, no mountains.</source>
        <extracomment>Card, after the dive. %1: a number of hours.</extracomment>
        <translation>%1 h: niente voli, niente strade di montagna.</translation>
    </message>
    <message>
        <source>48 h: numb, dizzy, very tired, joint pain, breathless?</source>
        <extracomment>Card, after the dive: whoever feels this within 48 hours calls the number beside it.</extracomment>
        <translation>48 h: intorpidimento, vertigini, molta stanchezza, dolori articolari, fiato corto?</translation>
    </message>
    <message>
        <source>Call</source>
        <extracomment>Card, before the emergency number; without a colon.</extracomment>
        <translation>Chiama</translation>
    </message>
    <message>
        <source>Understood</source>
        <extracomment>Card, beside a box that the guest ticks.</extracomment>
        <translation>Capito</translation>
    </message>
    <message>
        <source>Planning aid. Your instructor decides.</source>
        <extracomment>Card, small: what the card is, and who decides.</extracomment>
        <translation>Aiuto per pianificare. Decide l’istruttore.</translation>
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
        <translation>Respirare sott’acqua</translation>
    </message>
    <message>
        <source>Clear your mask</source>
        <translation>Svuotare la maschera</translation>
    </message>
    <message>
        <source>Clear the mouthpiece</source>
        <translation>Svuotare l’erogatore</translation>
    </message>
    <message>
        <source>Find the mouthpiece</source>
        <translation>Ritrovare l’erogatore</translation>
    </message>
    <message>
        <source>Clear your ears</source>
        <translation>Compensare le orecchie</translation>
    </message>
    <message>
        <source>Fill and empty the BCD</source>
        <translation>Gonfiare e sgonfiare il GAV</translation>
    </message>
    <message>
        <source>Share air</source>
        <translation>Condividere l’aria</translation>
    </message>
    <message>
        <source>Float at the top</source>
        <translation>Galleggiare in superficie</translation>
    </message>
    <message>
        <source>So that slow, steady breaths feel easy before you go down.</source>
        <translation>Per respirare con calma e regolarità, senza fatica, prima di scendere.</translation>
    </message>
    <message>
        <source>So that water in the mask is no worry: you know how to blow it out.</source>
        <translation>Perché l’acqua nella maschera non ti preoccupi: sai come soffiarla fuori.</translation>
    </message>
    <message>
        <source>So that you can blow water out and breathe on.</source>
        <translation>Per soffiare fuori l’acqua e continuare a respirare.</translation>
    </message>
    <message>
        <source>So that you can get it back if it slips out.</source>
        <translation>Per riprenderlo se ti esce di bocca.</translation>
    </message>
    <message>
        <source>So that going down need not hurt.</source>
        <translation>Perché scendere non debba fare male.</translation>
    </message>
    <message>
        <source>So that you can float, or sink, when you choose.</source>
        <translation>Per galleggiare o scendere quando vuoi tu.</translation>
    </message>
    <message>
        <source>So that you can breathe from the spare if yours runs low.</source>
        <translation>Per respirare dall’erogatore di riserva se la tua aria sta finendo.</translation>
    </message>
    <message>
        <source>So that you can rest with your head above the water.</source>
        <translation>Per riposare con la testa fuori dall’acqua.</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>Muta</translation>
    </message>
    <message>
        <source>BCD</source>
        <translation>GAV</translation>
    </message>
    <message>
        <source>Fins</source>
        <translation>Pinne</translation>
    </message>
    <message>
        <source>Mask</source>
        <translation>Maschera</translation>
    </message>
    <message>
        <source>Mouthpiece</source>
        <translation>Erogatore</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Piombi</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Bombola</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Manometro</translation>
    </message>
    <message>
        <source>Keeps you warm.</source>
        <translation>Ti tiene caldo.</translation>
    </message>
    <message>
        <source>The jacket that lets you float or sink.</source>
        <translation>Il giubbotto per galleggiare o scendere.</translation>
    </message>
    <message>
        <source>Move you with slow kicks.</source>
        <translation>Ti spingono con battute lente.</translation>
    </message>
    <message>
        <source>Lets you see. Your nose is inside, so that you can blow into it.</source>
        <translation>Ti permette di vedere. Il naso sta dentro, così puoi soffiarci aria.</translation>
    </message>
    <message>
        <source>Gives you air when you breathe in.</source>
        <translation>Ti dà aria quando inspiri.</translation>
    </message>
    <message>
        <source>Help you to sink. Your instructor shows how to drop them.</source>
        <translation>Ti aiutano a scendere. L’istruttore mostra come sganciarli.</translation>
    </message>
    <message>
        <source>Holds your air.</source>
        <translation>Contiene la tua aria.</translation>
    </message>
    <message>
        <source>Shows how much air is left. Look at it often.</source>
        <translation>Mostra quanta aria resta. Guardalo spesso.</translation>
    </message>
    <message>
        <source>Talk with your hands</source>
        <translation>Parla con le mani</translation>
    </message>
    <message>
        <source>Thumb up means “go up”. It never means “good”. For “good”, make a ring.</source>
        <translation>Pollice in su vuol dire «risali». Mai «bene». Per «bene», fai un anello.</translation>
    </message>
    <message>
        <source>Some people count in another way. Show each other your numbers first.</source>
        <translation>C’è chi conta in un altro modo. Mostratevi prima i vostri numeri.</translation>
    </message>
    <message>
        <source>One sign at a time: %1 means %2.</source>
        <translation>Un segnale alla volta: %1 vuol dire %2.</translation>
    </message>
    <message>
        <source>Fill a balloon at the top. Down it goes, and it shrinks.</source>
        <translation>Gonfia un palloncino in superficie. Scendendo, si restringe.</translation>
    </message>
    <message>
        <source>Fill it deep down. Up it goes, and it swells.</source>
        <translation>Gonfialo sul fondo. Salendo, cresce.</translation>
    </message>
    <message>
        <source>So does the air in your lungs, if you hold it.</source>
        <translation>Così fa l’aria nei tuoi polmoni, se la trattieni.</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>a button: to the page before</extracomment>
        <translation>Indietro</translation>
    </message>
    <message>
        <source>Next</source>
        <extracomment>a button: to the page after</extracomment>
        <translation>Avanti</translation>
    </message>
    <message>
        <source>Run</source>
        <extracomment>a button: the pages turn by themselves from here on</extracomment>
        <translation>Riproduci</translation>
    </message>
    <message>
        <source>Pause</source>
        <extracomment>a button: the pages no longer turn by themselves</extracomment>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Lingua</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Pagina %1 di %2</translation>
    </message>
    <message>
        <source>Tap your name.</source>
        <extracomment>above the first names of the guests</extracomment>
        <translation>Tocca il tuo nome.</translation>
    </message>
    <message>
        <source>No speaker has checked this text yet. Ask if it is not clear.</source>
        <extracomment>stands on every page whose language is a draft</extracomment>
        <translation>Testo non ancora controllato da un madrelingua. Se non è chiaro, chiedi.</translation>
    </message>
    <message>
        <source>A planning aid. Your instructor decides.</source>
        <translation>Un aiuto per pianificare. Decide il tuo istruttore.</translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>Ancora nessun partecipante.</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Ciao!</translation>
    </message>
    <message>
        <source>Today’s dive</source>
        <translation>L’immersione di oggi</translation>
    </message>
    <message>
        <source>Where</source>
        <extracomment>label before a place</extracomment>
        <translation>Dove</translation>
    </message>
    <message>
        <source>How deep</source>
        <extracomment>label before a depth</extracomment>
        <translation>Profondità</translation>
    </message>
    <message>
        <source>no deeper than %1</source>
        <extracomment>follows the label “How deep”</extracomment>
        <translation>non oltre %1</translation>
    </message>
    <message>
        <source>How long</source>
        <extracomment>label before a time</extracomment>
        <translation>Durata</translation>
    </message>
    <message>
        <source>about %1</source>
        <extracomment>follows the label “How long”</extracomment>
        <translation>circa %1</translation>
    </message>
    <message>
        <source>not set yet</source>
        <extracomment>in place of a name or a place</extracomment>
        <translation>da decidere</translation>
    </message>
    <message>
        <source>You may stop at any time. Just show it.</source>
        <translation>Puoi smettere in ogni momento. Basta un segnale.</translation>
    </message>
    <message>
        <source>Ask about all that is not clear.</source>
        <translation>Chiedi tutto ciò che non è chiaro.</translation>
    </message>
    <message>
        <source>Your kit</source>
        <translation>La tua attrezzatura</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <extracomment>in place of a size</extracomment>
        <translation>da scegliere</translation>
    </message>
    <message>
        <source>Try it all on. Does it pinch, leak or feel loose? Say so.</source>
        <translation>Prova tutto. Qualcosa stringe, fa entrare acqua o sta largo? Dillo.</translation>
    </message>
    <message>
        <source>Breathe all the time</source>
        <translation>Respira sempre</translation>
    </message>
    <message>
        <source>Move the diver up and down.</source>
        <extracomment>the guest drags a picture with the finger</extracomment>
        <translation>Muovi il sub su e giù.</translation>
    </message>
    <message>
        <source>Depth</source>
        <extracomment>label before a number</extracomment>
        <translation>Profondità</translation>
    </message>
    <message>
        <source>Pressure</source>
        <extracomment>label before a number</extracomment>
        <translation>Pressione</translation>
    </message>
    <message>
        <source>%1 the pressure at the top</source>
        <extracomment>%1 is a factor, as in ×1.8</extracomment>
        <translation>%1 la pressione in superficie</translation>
    </message>
    <message>
        <source>Balloon</source>
        <translation>Palloncino</translation>
    </message>
    <message>
        <source>Filled at the top, it shrinks on the way down.</source>
        <extracomment>a balloon</extracomment>
        <translation>Gonfiato in superficie, si restringe scendendo.</translation>
    </message>
    <message>
        <source>Lungs</source>
        <translation>Polmoni</translation>
    </message>
    <message>
        <source>Breathe, and they stay the same size.</source>
        <extracomment>the lungs</extracomment>
        <translation>Respira, e restano della stessa grandezza.</translation>
    </message>
    <message>
        <source>A breath held at %1 swells to %2 at the top.</source>
        <extracomment>%2 is a factor, as in ×1.8</extracomment>
        <translation>L’aria trattenuta a %1 si espande risalendo: %2 in superficie.</translation>
    </message>
    <message>
        <source>It can tear a lung.</source>
        <extracomment>a held breath</extracomment>
        <translation>Può lacerare un polmone.</translation>
    </message>
    <message>
        <source>Even %1 up can be enough.</source>
        <extracomment>to go up by %1 with a held breath can be enough to tear a lung</extracomment>
        <translation>Anche risalire di %1 può bastare.</translation>
    </message>
    <message>
        <source>Ear drum</source>
        <translation>Timpano</translation>
    </message>
    <message>
        <source>It bends in on the way down. Clear your ears.</source>
        <extracomment>the ear drum</extracomment>
        <translation>Scendendo si incurva verso l’interno. Compensa le orecchie.</translation>
    </message>
    <message>
        <source>flat</source>
        <extracomment>the ear drum is not bent</extracomment>
        <translation>piatto</translation>
    </message>
    <message>
        <source>bent in</source>
        <extracomment>the ear drum is bent in</extracomment>
        <translation>incurvato</translation>
    </message>
    <message>
        <source>On the way down it pulls at your face. Breathe out a bit through your nose.</source>
        <extracomment>the mask</extracomment>
        <translation>Scendendo tira sul viso. Soffia un po’ d’aria dal naso.</translation>
    </message>
    <message>
        <source>sits well</source>
        <extracomment>the mask</extracomment>
        <translation>sta bene</translation>
    </message>
    <message>
        <source>pulls</source>
        <extracomment>the mask is sucked to the face</extracomment>
        <translation>tira</translation>
    </message>
    <message>
        <source>Size: %1</source>
        <extracomment>%1 is a share, as in 55 %</extracomment>
        <translation>Grandezza: %1</translation>
    </message>
    <message>
        <source>Top</source>
        <extracomment>the water’s surface, beside a scale of depth</extracomment>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Deepest today</source>
        <extracomment>beside a scale of depth</extracomment>
        <translation>Massimo di oggi</translation>
    </message>
    <message>
        <source>Diver</source>
        <extracomment>a person under water</extracomment>
        <translation>Sub</translation>
    </message>
    <message>
        <source>Clear them every %1 on the way down, before they hurt.</source>
        <extracomment>your ears</extracomment>
        <translation>Scendendo, compensale ogni %1, prima che facciano male.</translation>
    </message>
    <message>
        <source>Pinch your nose. Blow softly. Never blow hard.</source>
        <translation>Tappati il naso. Soffia piano. Non soffiare mai forte.</translation>
    </message>
    <message>
        <source>Try it: go down. What if you do not clear?</source>
        <translation>Prova qui: scendi. E se non compensi?</translation>
    </message>
    <message>
        <source>Down</source>
        <extracomment>a button: go a little deeper</extracomment>
        <translation>Giù</translation>
    </message>
    <message>
        <source>Up</source>
        <extracomment>a button: go a little less deep</extracomment>
        <translation>Su</translation>
    </message>
    <message>
        <source>Clear my ears</source>
        <extracomment>a button</extracomment>
        <translation>Compensa</translation>
    </message>
    <message>
        <source>On the ear drum</source>
        <extracomment>label before a pressure</extracomment>
        <translation>Sul timpano</translation>
    </message>
    <message>
        <source>Fine</source>
        <extracomment>state of the ears</extracomment>
        <translation>Tutto bene</translation>
    </message>
    <message>
        <source>Pressure: clear now</source>
        <extracomment>state of the ears: it feels full, it does not hurt yet</extracomment>
        <translation>Pressione: compensa ora</translation>
    </message>
    <message>
        <source>Pain: stop and go up</source>
        <extracomment>state of the ears</extracomment>
        <translation>Dolore: fermati e risali</translation>
    </message>
    <message>
        <source>Locked: only going up helps</source>
        <extracomment>state of the ears: the tube to the ear is shut tight and does not open</extracomment>
        <translation>Bloccato: solo risalire aiuta</translation>
    </message>
    <message>
        <source>Cleared. The drum is flat.</source>
        <extracomment>the ear drum</extracomment>
        <translation>Compensato. Il timpano è piatto.</translation>
    </message>
    <message>
        <source>Do not force it. Go up a bit first.</source>
        <extracomment>to clear the ears</extracomment>
        <translation>Non forzare. Prima risali un po’.</translation>
    </message>
    <message>
        <source>Ears hurt? Stop, show it, go up a bit. Then try once more.</source>
        <translation>Male alle orecchie? Fermati, segnalalo, risali un po’. Poi riprova.</translation>
    </message>
    <message>
        <source>clear here</source>
        <extracomment>beside a mark on a scale of depth</extracomment>
        <translation>compensa qui</translation>
    </message>
    <message>
        <source>Hand signals</source>
        <translation>Segnali con la mano</translation>
    </message>
    <message>
        <source>How much air do you have?</source>
        <translation>Quanta aria hai?</translation>
    </message>
    <message>
        <source>Show each figure with one hand. This is %1:</source>
        <extracomment>the figures of a number, one after another</extracomment>
        <translation>Mostra ogni cifra con una mano. Questo è %1:</translation>
    </message>
    <message>
        <source>Not the same</source>
        <extracomment>above two signals that are often mixed up</extracomment>
        <translation>Non è lo stesso</translation>
    </message>
    <message>
        <source>Thumb up: we go up. It does not mean “good”.</source>
        <translation>Pollice in su: si risale. Non vuol dire «bene».</translation>
    </message>
    <message>
        <source>All is well? Make the ring.</source>
        <extracomment>thumb and first finger make a ring</extracomment>
        <translation>Tutto bene? Fai l’anello.</translation>
    </message>
    <message>
        <source>Do you know them?</source>
        <extracomment>hand signals</extracomment>
        <translation>Conosci i segnali?</translation>
    </message>
    <message>
        <source>Start</source>
        <extracomment>a button</extracomment>
        <translation>Inizia</translation>
    </message>
    <message>
        <source>Start over</source>
        <extracomment>a button</extracomment>
        <translation>Ricomincia</translation>
    </message>
    <message>
        <source>What does this signal say?</source>
        <translation>Che cosa dice questo segnale?</translation>
    </message>
    <message>
        <source>Yes, that is right.</source>
        <translation>Sì, è giusto.</translation>
    </message>
    <message>
        <source>Not quite. It says: %1</source>
        <translation>Non proprio. Dice: %1</translation>
    </message>
    <message>
        <source>We will ask it once more.</source>
        <translation>Lo chiederemo ancora.</translation>
    </message>
    <message>
        <source>Known: %1 of %2</source>
        <translation>Conosciuti: %1 su %2</translation>
    </message>
    <message>
        <source>You know them all. Well done!</source>
        <translation>Li conosci tutti. Ottimo!</translation>
    </message>
    <message>
        <source>Your instructor has a note of it: %1</source>
        <extracomment>%1 is a date</extracomment>
        <translation>Annotato per il tuo istruttore: %1</translation>
    </message>
    <message>
        <source>known</source>
        <extracomment>a hand signal that the guest knows</extracomment>
        <translation>conosciuto</translation>
    </message>
    <message>
        <source>not yet</source>
        <extracomment>a hand signal that the guest does not know yet</extracomment>
        <translation>non ancora</translation>
    </message>
    <message>
        <source>What we try first</source>
        <extracomment>what is practised in shallow water</extracomment>
        <translation>Da cosa cominciamo</translation>
    </message>
    <message>
        <source>Your instructor shows it. Then you try. Take your time.</source>
        <translation>L’istruttore lo mostra. Poi provi tu, con calma.</translation>
    </message>
    <message>
        <source>Ask your instructor what we try today.</source>
        <translation>Chiedi all’istruttore che cosa proviamo oggi.</translation>
    </message>
    <message>
        <source>When we go up</source>
        <translation>Quando risaliamo</translation>
    </message>
    <message>
        <source>One goes up, we all go up.</source>
        <translation>Se risale uno, risaliamo tutti.</translation>
    </message>
    <message>
        <source>Go up slowly and breathe all the time.</source>
        <translation>Risali lentamente e respira sempre.</translation>
    </message>
    <message>
        <source>Your gauge reads %1 or less. Show it now.</source>
        <translation>Il manometro segna %1 o meno. Segnalalo subito.</translation>
    </message>
    <message>
        <source>Your air is low. Ask which number to look for.</source>
        <extracomment>the number on the gauge</extracomment>
        <translation>Hai poca aria. Chiedi a quale numero fare attenzione.</translation>
    </message>
    <message>
        <source>The time is up: %1.</source>
        <translation>Il tempo è finito: %1.</translation>
    </message>
    <message>
        <source>You want to go up. That is fine.</source>
        <translation>Vuoi risalire. Va bene.</translation>
    </message>
    <message>
        <source>Your ears hurt or do not clear.</source>
        <translation>Hai male alle orecchie o restano tappate.</translation>
    </message>
    <message>
        <source>You are cold, tired or scared.</source>
        <translation>Senti freddo, stanchezza o paura.</translation>
    </message>
    <message>
        <source>Your instructor shows: go up.</source>
        <translation>L’istruttore segnala: risalire.</translation>
    </message>
    <message>
        <source>You see none of us. Look around for one minute, then go up slowly.</source>
        <translation>Non vedi più nessuno di noi. Guardati intorno per un minuto, poi risali lentamente.</translation>
    </message>
    <message>
        <source>After the dive</source>
        <translation>Dopo l’immersione</translation>
    </message>
    <message>
        <source>No flights and no mountain roads for %1 h.</source>
        <translation>Niente voli e niente strade di montagna per %1 h.</translation>
    </message>
    <message>
        <source>For 48 h, watch for this:</source>
        <extracomment>signs of illness</extracomment>
        <translation>Per 48 h, fai attenzione a:</translation>
    </message>
    <message>
        <source>numb or tingling skin</source>
        <translation>pelle intorpidita o formicolio</translation>
    </message>
    <message>
        <source>weak arms or legs</source>
        <translation>braccia o gambe deboli</translation>
    </message>
    <message>
        <source>dizzy, or odd sight</source>
        <translation>vertigini o vista strana</translation>
    </message>
    <message>
        <source>very tired</source>
        <translation>molta stanchezza</translation>
    </message>
    <message>
        <source>sore joints</source>
        <translation>dolori articolari</translation>
    </message>
    <message>
        <source>short of breath, or chest pain</source>
        <translation>fiato corto o dolore al petto</translation>
    </message>
    <message>
        <source>Any of these? Call now: %1</source>
        <translation>Uno di questi segni? Chiama subito: %1</translation>
    </message>
    <message>
        <source>Any of these? Call for help now. Ask your instructor for the number.</source>
        <translation>Uno di questi segni? Chiama subito i soccorsi. Chiedi il numero all’istruttore.</translation>
    </message>
    <message>
        <source>Say that you have been diving. Do not wait.</source>
        <translation>Di’ che hai fatto un’immersione. Non aspettare.</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Problem</source>
        <translation>Problema</translation>
    </message>
    <message>
        <source>Ears</source>
        <translation>Orecchie</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message>
        <source>Go up</source>
        <translation>Risali</translation>
    </message>
    <message>
        <source>Go down</source>
        <translation>Scendi</translation>
    </message>
    <message>
        <source>No air</source>
        <translation>Aria finita</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Guarda</translation>
    </message>
    <message>
        <source>Come here</source>
        <translation>Vieni qui</translation>
    </message>
    <message>
        <source>Stay close</source>
        <translation>Stai vicino</translation>
    </message>
    <message>
        <source>Hold hands</source>
        <translation>Per mano</translation>
    </message>
    <message>
        <source>This deep</source>
        <translation>Questa profondità</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>Piano</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>Freddo</translation>
    </message>
    <message>
        <source>How much air?</source>
        <translation>Quanta aria?</translation>
    </message>
    <message>
        <source>OK, at the top</source>
        <translation>Superficie: OK</translation>
    </message>
    <message>
        <source>Help, at the top</source>
        <translation>Superficie: aiuto</translation>
    </message>
    <message>
        <source>All is well. Is all well with you?</source>
        <translation>Tutto bene. E tu?</translation>
    </message>
    <message>
        <source>Something is wrong.</source>
        <translation>Qualcosa non va.</translation>
    </message>
    <message>
        <source>My ears hurt, or do not clear.</source>
        <translation>Ho male alle orecchie o restano tappate.</translation>
    </message>
    <message>
        <source>Stop and stay where you are.</source>
        <translation>Fermati e resta dove sei.</translation>
    </message>
    <message>
        <source>Go up: the dive is over. It never means “good”.</source>
        <translation>Risali: l’immersione è finita. Non vuol mai dire «bene».</translation>
    </message>
    <message>
        <source>Go down.</source>
        <translation>Scendi.</translation>
    </message>
    <message>
        <source>I am low on air.</source>
        <translation>Mi resta poca aria.</translation>
    </message>
    <message>
        <source>I have no air. Give me yours now.</source>
        <translation>Sono senza aria. Dammi subito la tua.</translation>
    </message>
    <message>
        <source>Let me breathe from your spare mouthpiece.</source>
        <translation>Fammi respirare dal tuo erogatore di riserva.</translation>
    </message>
    <message>
        <source>Look, over there.</source>
        <translation>Guarda là.</translation>
    </message>
    <message>
        <source>Come to me.</source>
        <translation>Vieni da me.</translation>
    </message>
    <message>
        <source>Stay close together.</source>
        <translation>Restiamo vicini.</translation>
    </message>
    <message>
        <source>Let us hold hands.</source>
        <translation>Teniamoci per mano.</translation>
    </message>
    <message>
        <source>Stay at this depth.</source>
        <translation>Resta a questa profondità.</translation>
    </message>
    <message>
        <source>Slow down.</source>
        <translation>Più piano.</translation>
    </message>
    <message>
        <source>I am cold.</source>
        <translation>Ho freddo.</translation>
    </message>
    <message>
        <source>All is well. Made at the surface.</source>
        <translation>Tutto bene. Si fa in superficie.</translation>
    </message>
    <message>
        <source>Help me. Made at the surface.</source>
        <translation>Aiutami. Si fa in superficie.</translation>
    </message>
    <message>
        <source>Thumb and first finger make a ring.</source>
        <translation>Pollice e indice formano un anello.</translation>
    </message>
    <message>
        <source>Rock a flat hand, then point at what is wrong.</source>
        <translation>Fai oscillare la mano piatta, poi indica il problema.</translation>
    </message>
    <message>
        <source>Point at your ear.</source>
        <translation>Indica l’orecchio.</translation>
    </message>
    <message>
        <source>Hold up a flat hand.</source>
        <translation>Alza la mano piatta.</translation>
    </message>
    <message>
        <source>Fist with the thumb up, moving up.</source>
        <translation>Pugno con il pollice in su, che sale.</translation>
    </message>
    <message>
        <source>Fist with the thumb down, moving down.</source>
        <translation>Pugno con il pollice in giù, che scende.</translation>
    </message>
    <message>
        <source>Hold a fist at your chest.</source>
        <translation>Tieni il pugno sul petto.</translation>
    </message>
    <message>
        <source>Cut across your throat with a flat hand.</source>
        <translation>Passa la mano piatta di traverso sulla gola.</translation>
    </message>
    <message>
        <source>Move your fingers to your mouth and away.</source>
        <translation>Porta le dita alla bocca e allontanale.</translation>
    </message>
    <message>
        <source>Two fingers from your eyes to the thing.</source>
        <translation>Due dita, dagli occhi verso la cosa da vedere.</translation>
    </message>
    <message>
        <source>Wave your hand towards you.</source>
        <translation>Muovi la mano verso di te.</translation>
    </message>
    <message>
        <source>Put two first fingers side by side.</source>
        <translation>Metti i due indici uno accanto all’altro.</translation>
    </message>
    <message>
        <source>Clasp your hands.</source>
        <translation>Stringi una mano nell’altra.</translation>
    </message>
    <message>
        <source>Slide a flat hand from side to side.</source>
        <translation>Muovi la mano piatta da un lato all’altro.</translation>
    </message>
    <message>
        <source>Press a flat hand down, twice.</source>
        <translation>Abbassa due volte la mano piatta.</translation>
    </message>
    <message>
        <source>Cross your arms and rub them.</source>
        <translation>Incrocia le braccia e strofinale.</translation>
    </message>
    <message>
        <source>Lay two fingers on your palm.</source>
        <translation>Appoggia due dita sul palmo.</translation>
    </message>
    <message>
        <source>Make a big ring over your head with both arms.</source>
        <translation>Fai un grande cerchio sopra la testa con le braccia.</translation>
    </message>
    <message>
        <source>Wave one straight arm over your head, slowly.</source>
        <translation>Agita piano un braccio teso sopra la testa.</translation>
    </message>
</context>
</TS>
