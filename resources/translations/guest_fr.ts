<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>Guest</name>
    <message>
        <source>Meet</source>
        <extracomment>Card, before day and time: "Meet Sat 4 July, 09:30".</extracomment>
        <translation>Rendez-vous</translation>
    </message>
    <message>
        <source>With</source>
        <extracomment>Card, before the instructor's name: "With Ana".
----------
label before the instructor’s name</extracomment>
        <translation>Avec</translation>
    </message>
    <message>
        <source>Low on air</source>
        <extracomment>Card, above the pressure in large type; the name of a hand signal as well.</extracomment>
        <translation>Peu d’air</translation>
    </message>
    <message>
        <source>signal now</source>
        <extracomment>Card, below that pressure: show the hand signal at once. Two or three short words.</extracomment>
        <translation>signalez‑le aussitôt</translation>
    </message>
    <message>
        <source>Deepest</source>
        <extracomment>Card, above a depth in large type: the deepest point of the dive. One short word.</extracomment>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>Card, above minutes in large type: how long the dive is. One short word.</extracomment>
        <translation>Durée</translation>
    </message>
    <message>
        <source>Never hold your breath</source>
        <extracomment>Card, the largest words: the one rule. Keep it short.</extracomment>
        <translation>Ne retenez jamais votre souffle</translation>
    </message>
    <message>
        <source>Going up, held air swells: lungs can tear.</source>
        <extracomment>Card, below that rule. Beside it stands by how much the air swells: "×1.8".</extracomment>
        <translation>En remontant, l’air retenu gonfle et peut déchirer un poumon.</translation>
    </message>
    <message>
        <source>Clear ears early, every %1. Pain? Stop, signal, go up %2.</source>
        <extracomment>Card. %1: a step of descent ("1 m"). %2: how far to go up ("1 m").</extracomment>
        <translation>Oreilles : équilibrez tôt, tous les %1. Douleur ? Stop, signe, remontez de %2.</translation>
    </message>
    <message>
        <source>Stay within reach. Lost? Look around 1 minute, go up slowly.</source>
        <extracomment>Card: so close to the instructor that an arm reaches. When apart: look around.</extracomment>
        <translation>Restez à portée. Séparés ? Observez 1 minute, remontez lentement.</translation>
    </message>
    <message>
        <source>Cold, scared, tired? Signal. Quitting is fine.</source>
        <extracomment>Card: whoever does not feel well gives a signal, and may end the dive.</extracomment>
        <translation>Froid, peur, fatigue ? Signalez‑le. Arrêter, c’est permis.</translation>
    </message>
    <message>
        <source>At the top: fill BCD, mask on.</source>
        <extracomment>Card: back at the surface.</extracomment>
        <translation>Surface : gilet gonflé, masque en place.</translation>
    </message>
    <message>
        <source>not “good”</source>
        <extracomment>Card, under the picture of a raised thumb, which means "go up": never "good".</extracomment>
        <translation>pas « bien »</translation>
    </message>
    <message>
        <source>%1 h: no flights, no mountains.</source>
        <extracomment>Card, after the dive. %1: a number of hours.</extracomment>
        <translation>%1 h : ni avion ni route montagneuse.</translation>
    </message>
    <message>
        <source>48 h: numb, dizzy, very tired, joint pain, breathless?</source>
        <extracomment>Card, after the dive: whoever feels this within 48 hours calls the number beside it.</extracomment>
        <translation>48 h : engourdissement, vertige, grande fatigue, douleur articulaire, essoufflement ?</translation>
    </message>
    <message>
        <source>Call</source>
        <extracomment>Card, before the emergency number; without a colon.</extracomment>
        <translation>Appelez</translation>
    </message>
    <message>
        <source>Understood</source>
        <extracomment>Card, beside a box that the guest ticks.</extracomment>
        <translation>Compris</translation>
    </message>
    <message>
        <source>Planning aid. Your instructor decides.</source>
        <extracomment>Card, small: what the card is, and who decides.</extracomment>
        <translation>Aide à l’organisation. Votre moniteur décide.</translation>
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
        <translation>Respirer sous l’eau</translation>
    </message>
    <message>
        <source>Clear your mask</source>
        <translation>Vider le masque</translation>
    </message>
    <message>
        <source>Clear the mouthpiece</source>
        <translation>Vider le détendeur</translation>
    </message>
    <message>
        <source>Find the mouthpiece</source>
        <translation>Retrouver le détendeur</translation>
    </message>
    <message>
        <source>Clear your ears</source>
        <translation>Équilibrer les oreilles</translation>
    </message>
    <message>
        <source>Fill and empty the BCD</source>
        <translation>Gonfler et vider le gilet</translation>
    </message>
    <message>
        <source>Share air</source>
        <translation>Partager l’air</translation>
    </message>
    <message>
        <source>Float at the top</source>
        <translation>Flotter en surface</translation>
    </message>
    <message>
        <source>So that slow, steady breaths feel easy before you go down.</source>
        <translation>Pour respirer à l’aise, lentement et régulièrement, avant de descendre.</translation>
    </message>
    <message>
        <source>So that water in the mask is no worry: you know how to blow it out.</source>
        <translation>Pour que l’eau dans le masque ne vous inquiète pas : vous savez la chasser.</translation>
    </message>
    <message>
        <source>So that you can blow water out and breathe on.</source>
        <translation>Pour chasser l’eau en soufflant et continuer à respirer.</translation>
    </message>
    <message>
        <source>So that you can get it back if it slips out.</source>
        <translation>Pour le reprendre s’il quitte votre bouche.</translation>
    </message>
    <message>
        <source>So that going down need not hurt.</source>
        <translation>Car descendre ne doit pas faire mal.</translation>
    </message>
    <message>
        <source>So that you can float, or sink, when you choose.</source>
        <translation>Pour flotter ou descendre quand vous le voulez.</translation>
    </message>
    <message>
        <source>So that you can breathe from the spare if yours runs low.</source>
        <translation>Pour respirer sur le détendeur de secours s’il vous reste peu d’air.</translation>
    </message>
    <message>
        <source>So that you can rest with your head above the water.</source>
        <translation>Pour vous reposer, la tête hors de l’eau.</translation>
    </message>
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
        <source>Mouthpiece</source>
        <translation>Détendeur</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Plombs</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Bouteille</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Manomètre</translation>
    </message>
    <message>
        <source>Keeps you warm.</source>
        <translation>Vous tient chaud.</translation>
    </message>
    <message>
        <source>The jacket that lets you float or sink.</source>
        <translation>Le gilet qui vous fait flotter ou descendre.</translation>
    </message>
    <message>
        <source>Move you with slow kicks.</source>
        <translation>Vous font avancer, à battements lents.</translation>
    </message>
    <message>
        <source>Lets you see. Your nose is inside, so that you can blow into it.</source>
        <translation>Permet de voir. Le nez est à l’intérieur pour pouvoir y souffler.</translation>
    </message>
    <message>
        <source>Gives you air when you breathe in.</source>
        <translation>Vous donne de l’air quand vous inspirez.</translation>
    </message>
    <message>
        <source>Help you to sink. Your instructor shows how to drop them.</source>
        <translation>Vous aident à descendre. Votre moniteur montre comment les larguer.</translation>
    </message>
    <message>
        <source>Holds your air.</source>
        <translation>Contient votre air.</translation>
    </message>
    <message>
        <source>Shows how much air is left. Look at it often.</source>
        <translation>Montre l’air qu’il vous reste. Regardez-le souvent.</translation>
    </message>
    <message>
        <source>Talk with your hands</source>
        <translation>Parlez avec les mains</translation>
    </message>
    <message>
        <source>Thumb up means “go up”. It never means “good”. For “good”, make a ring.</source>
        <translation>Pouce en haut veut dire « remontez ». Jamais « bien ». Pour « bien », faites un rond.</translation>
    </message>
    <message>
        <source>Some people count in another way. Show each other your numbers first.</source>
        <translation>Certains comptent autrement. Montrez-vous d’abord vos chiffres.</translation>
    </message>
    <message>
        <source>One sign at a time: %1 means %2.</source>
        <translation>Un signe après l’autre : %1 veut dire %2.</translation>
    </message>
    <message>
        <source>Fill a balloon at the top. Down it goes, and it shrinks.</source>
        <translation>Gonflez un ballon en surface. En descendant, il rétrécit.</translation>
    </message>
    <message>
        <source>Fill it deep down. Up it goes, and it swells.</source>
        <translation>Gonflez-le au fond. En montant, il grossit.</translation>
    </message>
    <message>
        <source>So does the air in your lungs, if you hold it.</source>
        <translation>Comme l’air dans vos poumons, si vous le retenez.</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>a button: to the page before</extracomment>
        <translation>Précédent</translation>
    </message>
    <message>
        <source>Next</source>
        <extracomment>a button: to the page after</extracomment>
        <translation>Suivant</translation>
    </message>
    <message>
        <source>Run</source>
        <extracomment>a button: the pages turn by themselves from here on</extracomment>
        <translation>Lecture</translation>
    </message>
    <message>
        <source>Pause</source>
        <extracomment>a button: the pages no longer turn by themselves</extracomment>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 sur %2</translation>
    </message>
    <message>
        <source>Tap your name.</source>
        <extracomment>above the first names of the guests</extracomment>
        <translation>Touchez votre nom.</translation>
    </message>
    <message>
        <source>No speaker has checked this text yet. Ask if it is not clear.</source>
        <extracomment>stands on every page whose language is a draft</extracomment>
        <translation>Aucun francophone n’a encore relu ce texte. Demandez si ce n’est pas clair.</translation>
    </message>
    <message>
        <source>A planning aid. Your instructor decides.</source>
        <translation>Une aide à l’organisation. Votre moniteur décide.</translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>Pas encore de participants.</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Bienvenue</translation>
    </message>
    <message>
        <source>Today’s dive</source>
        <translation>La plongée du jour</translation>
    </message>
    <message>
        <source>Where</source>
        <extracomment>label before a place</extracomment>
        <translation>Où</translation>
    </message>
    <message>
        <source>How deep</source>
        <extracomment>label before a depth</extracomment>
        <translation>Profondeur</translation>
    </message>
    <message>
        <source>no deeper than %1</source>
        <extracomment>follows the label “How deep”</extracomment>
        <translation>pas plus de %1</translation>
    </message>
    <message>
        <source>How long</source>
        <extracomment>label before a time</extracomment>
        <translation>Durée</translation>
    </message>
    <message>
        <source>about %1</source>
        <extracomment>follows the label “How long”</extracomment>
        <translation>environ %1</translation>
    </message>
    <message>
        <source>not set yet</source>
        <extracomment>in place of a name or a place</extracomment>
        <translation>à préciser</translation>
    </message>
    <message>
        <source>You may stop at any time. Just show it.</source>
        <translation>Vous pouvez arrêter à tout moment. Un signe suffit.</translation>
    </message>
    <message>
        <source>Ask about all that is not clear.</source>
        <translation>Demandez tout ce qui n’est pas clair.</translation>
    </message>
    <message>
        <source>Your kit</source>
        <translation>Votre équipement</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <extracomment>in place of a size</extracomment>
        <translation>à choisir</translation>
    </message>
    <message>
        <source>Try it all on. Does it pinch, leak or feel loose? Say so.</source>
        <translation>Essayez tout. Ça serre, ça fuit, c’est trop large ? Dites-le.</translation>
    </message>
    <message>
        <source>Breathe all the time</source>
        <translation>Respirez tout le temps</translation>
    </message>
    <message>
        <source>Move the diver up and down.</source>
        <extracomment>the guest drags a picture with the finger</extracomment>
        <translation>Faites monter et descendre le plongeur.</translation>
    </message>
    <message>
        <source>Depth</source>
        <extracomment>label before a number</extracomment>
        <translation>Profondeur</translation>
    </message>
    <message>
        <source>Pressure</source>
        <extracomment>label before a number</extracomment>
        <translation>Pression</translation>
    </message>
    <message>
        <source>%1 the pressure at the top</source>
        <extracomment>%1 is a factor, as in ×1.8</extracomment>
        <translation>%1 la pression en surface</translation>
    </message>
    <message>
        <source>Balloon</source>
        <translation>Ballon</translation>
    </message>
    <message>
        <source>Filled at the top, it shrinks on the way down.</source>
        <extracomment>a balloon</extracomment>
        <translation>Gonflé en surface, il rétrécit en descendant.</translation>
    </message>
    <message>
        <source>Lungs</source>
        <translation>Poumons</translation>
    </message>
    <message>
        <source>Breathe, and they stay the same size.</source>
        <extracomment>the lungs</extracomment>
        <translation>Respirez, et ils gardent la même taille.</translation>
    </message>
    <message>
        <source>A breath held at %1 swells to %2 at the top.</source>
        <extracomment>%2 is a factor, as in ×1.8</extracomment>
        <translation>L’air retenu à %1 gonfle en remontant : %2 en surface.</translation>
    </message>
    <message>
        <source>It can tear a lung.</source>
        <extracomment>a held breath</extracomment>
        <translation>Cela peut déchirer un poumon.</translation>
    </message>
    <message>
        <source>Even %1 up can be enough.</source>
        <extracomment>to go up by %1 with a held breath can be enough to tear a lung</extracomment>
        <translation>Même remonter de %1 peut suffire.</translation>
    </message>
    <message>
        <source>Ear drum</source>
        <translation>Tympan</translation>
    </message>
    <message>
        <source>It bends in on the way down. Clear your ears.</source>
        <extracomment>the ear drum</extracomment>
        <translation>Il se creuse en descendant. Équilibrez vos oreilles.</translation>
    </message>
    <message>
        <source>flat</source>
        <extracomment>the ear drum is not bent</extracomment>
        <translation>plat</translation>
    </message>
    <message>
        <source>bent in</source>
        <extracomment>the ear drum is bent in</extracomment>
        <translation>creusé</translation>
    </message>
    <message>
        <source>On the way down it pulls at your face. Breathe out a bit through your nose.</source>
        <extracomment>the mask</extracomment>
        <translation>En descendant, il tire sur le visage. Soufflez un peu par le nez.</translation>
    </message>
    <message>
        <source>sits well</source>
        <extracomment>the mask</extracomment>
        <translation>bien en place</translation>
    </message>
    <message>
        <source>pulls</source>
        <extracomment>the mask is sucked to the face</extracomment>
        <translation>tire</translation>
    </message>
    <message>
        <source>Size: %1</source>
        <extracomment>%1 is a share, as in 55 %</extracomment>
        <translation>Taille : %1</translation>
    </message>
    <message>
        <source>Top</source>
        <extracomment>the water’s surface, beside a scale of depth</extracomment>
        <translation>Surface</translation>
    </message>
    <message>
        <source>Deepest today</source>
        <extracomment>beside a scale of depth</extracomment>
        <translation>Maximum du jour</translation>
    </message>
    <message>
        <source>Diver</source>
        <extracomment>a person under water</extracomment>
        <translation>Plongeur</translation>
    </message>
    <message>
        <source>Clear them every %1 on the way down, before they hurt.</source>
        <extracomment>your ears</extracomment>
        <translation>En descendant, équilibrez-les tous les %1, avant d’avoir mal.</translation>
    </message>
    <message>
        <source>Pinch your nose. Blow softly. Never blow hard.</source>
        <translation>Pincez-vous le nez. Soufflez doucement, jamais fort.</translation>
    </message>
    <message>
        <source>Try it: go down. What if you do not clear?</source>
        <translation>Essayez ici : descendez. Et si vous n’équilibrez pas ?</translation>
    </message>
    <message>
        <source>Down</source>
        <extracomment>a button: go a little deeper</extracomment>
        <translation>Descendre</translation>
    </message>
    <message>
        <source>Up</source>
        <extracomment>a button: go a little less deep</extracomment>
        <translation>Remonter</translation>
    </message>
    <message>
        <source>Clear my ears</source>
        <extracomment>a button</extracomment>
        <translation>Équilibrer</translation>
    </message>
    <message>
        <source>On the ear drum</source>
        <extracomment>label before a pressure</extracomment>
        <translation>Sur le tympan</translation>
    </message>
    <message>
        <source>Fine</source>
        <extracomment>state of the ears</extracomment>
        <translation>Ça va</translation>
    </message>
    <message>
        <source>Pressure: clear now</source>
        <extracomment>state of the ears: it feels full, it does not hurt yet</extracomment>
        <translation>Pression : équilibrez maintenant</translation>
    </message>
    <message>
        <source>Pain: stop and go up</source>
        <extracomment>state of the ears</extracomment>
        <translation>Douleur : stop, remontez</translation>
    </message>
    <message>
        <source>Locked: only going up helps</source>
        <extracomment>state of the ears: the tube to the ear is shut tight and does not open</extracomment>
        <translation>Bloqué : seule la remontée aide</translation>
    </message>
    <message>
        <source>Cleared. The drum is flat.</source>
        <extracomment>the ear drum</extracomment>
        <translation>Équilibré. Le tympan est plat.</translation>
    </message>
    <message>
        <source>Do not force it. Go up a bit first.</source>
        <extracomment>to clear the ears</extracomment>
        <translation>Ne forcez pas. Remontez d’abord un peu.</translation>
    </message>
    <message>
        <source>Ears hurt? Stop, show it, go up a bit. Then try once more.</source>
        <translation>Mal aux oreilles ? Stop, montrez-le, remontez un peu. Puis réessayez.</translation>
    </message>
    <message>
        <source>clear here</source>
        <extracomment>beside a mark on a scale of depth</extracomment>
        <translation>équilibrez ici</translation>
    </message>
    <message>
        <source>Hand signals</source>
        <translation>Signes de la main</translation>
    </message>
    <message>
        <source>How much air do you have?</source>
        <translation>Combien d’air avez-vous ?</translation>
    </message>
    <message>
        <source>Show each figure with one hand. This is %1:</source>
        <extracomment>the figures of a number, one after another</extracomment>
        <translation>Montrez chaque chiffre d’une main. Voici %1 :</translation>
    </message>
    <message>
        <source>Not the same</source>
        <extracomment>above two signals that are often mixed up</extracomment>
        <translation>À ne pas confondre</translation>
    </message>
    <message>
        <source>Thumb up: we go up. It does not mean “good”.</source>
        <translation>Pouce en haut : on remonte. Cela ne veut pas dire « bien ».</translation>
    </message>
    <message>
        <source>All is well? Make the ring.</source>
        <extracomment>thumb and first finger make a ring</extracomment>
        <translation>Tout va bien ? Faites le rond.</translation>
    </message>
    <message>
        <source>Do you know them?</source>
        <extracomment>hand signals</extracomment>
        <translation>Connaissez-vous les signes ?</translation>
    </message>
    <message>
        <source>Start</source>
        <extracomment>a button</extracomment>
        <translation>Commencer</translation>
    </message>
    <message>
        <source>Start over</source>
        <extracomment>a button</extracomment>
        <translation>Recommencer</translation>
    </message>
    <message>
        <source>What does this signal say?</source>
        <translation>Que dit ce signe ?</translation>
    </message>
    <message>
        <source>Yes, that is right.</source>
        <translation>Oui, c’est juste.</translation>
    </message>
    <message>
        <source>Not quite. It says: %1</source>
        <translation>Pas tout à fait. Il dit : %1</translation>
    </message>
    <message>
        <source>We will ask it once more.</source>
        <translation>Nous le redemanderons.</translation>
    </message>
    <message>
        <source>Known: %1 of %2</source>
        <translation>Connus : %1 sur %2</translation>
    </message>
    <message>
        <source>You know them all. Well done!</source>
        <translation>Vous les connaissez tous. Bravo !</translation>
    </message>
    <message>
        <source>Your instructor has a note of it: %1</source>
        <extracomment>%1 is a date</extracomment>
        <translation>Noté pour votre moniteur : %1</translation>
    </message>
    <message>
        <source>known</source>
        <extracomment>a hand signal that the guest knows</extracomment>
        <translation>connu</translation>
    </message>
    <message>
        <source>not yet</source>
        <extracomment>a hand signal that the guest does not know yet</extracomment>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>What we try first</source>
        <extracomment>what is practised in shallow water</extracomment>
        <translation>Ce qu’on essaie d’abord</translation>
    </message>
    <message>
        <source>Your instructor shows it. Then you try. Take your time.</source>
        <translation>Votre moniteur montre. Puis c’est à vous. Prenez votre temps.</translation>
    </message>
    <message>
        <source>Ask your instructor what we try today.</source>
        <translation>Demandez à votre moniteur ce qu’on essaie aujourd’hui.</translation>
    </message>
    <message>
        <source>When we go up</source>
        <translation>Quand nous remontons</translation>
    </message>
    <message>
        <source>One goes up, we all go up.</source>
        <translation>L’un remonte, tous remontent.</translation>
    </message>
    <message>
        <source>Go up slowly and breathe all the time.</source>
        <translation>Remontez lentement, respirez tout le temps.</translation>
    </message>
    <message>
        <source>Your gauge reads %1 or less. Show it now.</source>
        <translation>Votre manomètre indique %1 ou moins. Signalez-le aussitôt.</translation>
    </message>
    <message>
        <source>Your air is low. Ask which number to look for.</source>
        <extracomment>the number on the gauge</extracomment>
        <translation>Il vous reste peu d’air. Demandez quel chiffre surveiller.</translation>
    </message>
    <message>
        <source>The time is up: %1.</source>
        <translation>Le temps est écoulé : %1.</translation>
    </message>
    <message>
        <source>You want to go up. That is fine.</source>
        <translation>Vous voulez remonter. C’est permis.</translation>
    </message>
    <message>
        <source>Your ears hurt or do not clear.</source>
        <translation>Oreilles douloureuses ou bouchées.</translation>
    </message>
    <message>
        <source>You are cold, tired or scared.</source>
        <translation>Vous ressentez froid, fatigue ou peur.</translation>
    </message>
    <message>
        <source>Your instructor shows: go up.</source>
        <translation>Votre moniteur fait le signe : remontez.</translation>
    </message>
    <message>
        <source>You see none of us. Look around for one minute, then go up slowly.</source>
        <translation>Vous ne voyez plus personne du groupe. Regardez autour de vous une minute, puis remontez lentement.</translation>
    </message>
    <message>
        <source>After the dive</source>
        <translation>Après la plongée</translation>
    </message>
    <message>
        <source>No flights and no mountain roads for %1 h.</source>
        <translation>Ni avion ni route de montagne pendant %1 h.</translation>
    </message>
    <message>
        <source>For 48 h, watch for this:</source>
        <extracomment>signs of illness</extracomment>
        <translation>Pendant 48 h, surveillez ceci :</translation>
    </message>
    <message>
        <source>numb or tingling skin</source>
        <translation>peau engourdie ou picotements</translation>
    </message>
    <message>
        <source>weak arms or legs</source>
        <translation>bras ou jambes faibles</translation>
    </message>
    <message>
        <source>dizzy, or odd sight</source>
        <translation>vertige ou vue troublée</translation>
    </message>
    <message>
        <source>very tired</source>
        <translation>grande fatigue</translation>
    </message>
    <message>
        <source>sore joints</source>
        <translation>douleurs articulaires</translation>
    </message>
    <message>
        <source>short of breath, or chest pain</source>
        <translation>souffle court ou douleur à la poitrine</translation>
    </message>
    <message>
        <source>Any of these? Call now: %1</source>
        <translation>Un de ces signes ? Appelez aussitôt : %1</translation>
    </message>
    <message>
        <source>Any of these? Call for help now. Ask your instructor for the number.</source>
        <translation>Un de ces signes ? Appelez aussitôt les secours. Demandez le numéro à votre moniteur.</translation>
    </message>
    <message>
        <source>Say that you have been diving. Do not wait.</source>
        <translation>Dites que vous avez plongé. N’attendez pas.</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Problem</source>
        <translation>Problème</translation>
    </message>
    <message>
        <source>Ears</source>
        <translation>Oreilles</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message>
        <source>Go up</source>
        <translation>Remontez</translation>
    </message>
    <message>
        <source>Go down</source>
        <translation>Descendez</translation>
    </message>
    <message>
        <source>No air</source>
        <translation>Panne d’air</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Regardez</translation>
    </message>
    <message>
        <source>Come here</source>
        <translation>Venez ici</translation>
    </message>
    <message>
        <source>Stay close</source>
        <translation>Restez près</translation>
    </message>
    <message>
        <source>Hold hands</source>
        <translation>Main dans la main</translation>
    </message>
    <message>
        <source>This deep</source>
        <translation>Cette profondeur</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>Doucement</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>Froid</translation>
    </message>
    <message>
        <source>How much air?</source>
        <translation>Combien d’air ?</translation>
    </message>
    <message>
        <source>OK, at the top</source>
        <translation>Surface : OK</translation>
    </message>
    <message>
        <source>Help, at the top</source>
        <translation>Surface : à l’aide</translation>
    </message>
    <message>
        <source>All is well. Is all well with you?</source>
        <translation>Tout va bien. Et vous ?</translation>
    </message>
    <message>
        <source>Something is wrong.</source>
        <translation>Quelque chose ne va pas.</translation>
    </message>
    <message>
        <source>My ears hurt, or do not clear.</source>
        <translation>J’ai mal aux oreilles ou elles restent bouchées.</translation>
    </message>
    <message>
        <source>Stop and stay where you are.</source>
        <translation>Arrêtez-vous et restez sur place.</translation>
    </message>
    <message>
        <source>Go up: the dive is over. It never means “good”.</source>
        <translation>Remontez : la plongée est finie. Ce n’est jamais « bien ».</translation>
    </message>
    <message>
        <source>Go down.</source>
        <translation>Descendez.</translation>
    </message>
    <message>
        <source>I am low on air.</source>
        <translation>Il me reste peu d’air.</translation>
    </message>
    <message>
        <source>I have no air. Give me yours now.</source>
        <translation>Je n’ai plus d’air. Donnez-m’en tout de suite.</translation>
    </message>
    <message>
        <source>Let me breathe from your spare mouthpiece.</source>
        <translation>Laissez-moi respirer sur votre détendeur de secours.</translation>
    </message>
    <message>
        <source>Look, over there.</source>
        <translation>Regardez, là-bas.</translation>
    </message>
    <message>
        <source>Come to me.</source>
        <translation>Venez vers moi.</translation>
    </message>
    <message>
        <source>Stay close together.</source>
        <translation>Restez bien ensemble.</translation>
    </message>
    <message>
        <source>Let us hold hands.</source>
        <translation>Tenons-nous par la main.</translation>
    </message>
    <message>
        <source>Stay at this depth.</source>
        <translation>Restez à cette profondeur.</translation>
    </message>
    <message>
        <source>Slow down.</source>
        <translation>Moins vite.</translation>
    </message>
    <message>
        <source>I am cold.</source>
        <translation>J’ai froid.</translation>
    </message>
    <message>
        <source>All is well. Made at the surface.</source>
        <translation>Tout va bien. Se fait en surface.</translation>
    </message>
    <message>
        <source>Help me. Made at the surface.</source>
        <translation>Aidez-moi. Se fait en surface.</translation>
    </message>
    <message>
        <source>Thumb and first finger make a ring.</source>
        <translation>Le pouce et l’index forment un rond.</translation>
    </message>
    <message>
        <source>Rock a flat hand, then point at what is wrong.</source>
        <translation>Balancez la main à plat, puis montrez le problème.</translation>
    </message>
    <message>
        <source>Point at your ear.</source>
        <translation>Montrez votre oreille.</translation>
    </message>
    <message>
        <source>Hold up a flat hand.</source>
        <translation>Levez la main à plat.</translation>
    </message>
    <message>
        <source>Fist with the thumb up, moving up.</source>
        <translation>Poing, pouce vers le haut, qui monte.</translation>
    </message>
    <message>
        <source>Fist with the thumb down, moving down.</source>
        <translation>Poing, pouce vers le bas, qui descend.</translation>
    </message>
    <message>
        <source>Hold a fist at your chest.</source>
        <translation>Tenez le poing contre la poitrine.</translation>
    </message>
    <message>
        <source>Cut across your throat with a flat hand.</source>
        <translation>Passez la main à plat en travers de la gorge.</translation>
    </message>
    <message>
        <source>Move your fingers to your mouth and away.</source>
        <translation>Approchez les doigts de la bouche, puis éloignez-les.</translation>
    </message>
    <message>
        <source>Two fingers from your eyes to the thing.</source>
        <translation>Deux doigts, de vos yeux vers la chose à voir.</translation>
    </message>
    <message>
        <source>Wave your hand towards you.</source>
        <translation>Faites signe de la main vers vous.</translation>
    </message>
    <message>
        <source>Put two first fingers side by side.</source>
        <translation>Mettez les deux index côte à côte.</translation>
    </message>
    <message>
        <source>Clasp your hands.</source>
        <translation>Serrez vos mains l’une dans l’autre.</translation>
    </message>
    <message>
        <source>Slide a flat hand from side to side.</source>
        <translation>Bougez la main à plat d’un côté à l’autre.</translation>
    </message>
    <message>
        <source>Press a flat hand down, twice.</source>
        <translation>Abaissez deux fois la main à plat.</translation>
    </message>
    <message>
        <source>Cross your arms and rub them.</source>
        <translation>Croisez les bras et frottez-les.</translation>
    </message>
    <message>
        <source>Lay two fingers on your palm.</source>
        <translation>Posez deux doigts sur la paume.</translation>
    </message>
    <message>
        <source>Make a big ring over your head with both arms.</source>
        <translation>Formez un grand rond au-dessus de la tête avec les bras.</translation>
    </message>
    <message>
        <source>Wave one straight arm over your head, slowly.</source>
        <translation>Agitez lentement un bras tendu au-dessus de la tête.</translation>
    </message>
</context>
</TS>
