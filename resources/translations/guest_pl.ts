<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pl" sourcelanguage="en">
<context>
    <name>Guest</name>
    <message>
        <source>Meet</source>
        <extracomment>Card, before day and time: "Meet Sat 4 July, 09:30".</extracomment>
        <translation>Spotkanie</translation>
    </message>
    <message>
        <source>With</source>
        <extracomment>Card, before the instructor's name: "With Ana".
----------
label before the instructor’s name</extracomment>
        <translation>Prowadzi</translation>
    </message>
    <message>
        <source>Low on air</source>
        <extracomment>Card, above the pressure in large type; the name of a hand signal as well.</extracomment>
        <translation>Mało powietrza</translation>
    </message>
    <message>
        <source>signal now</source>
        <extracomment>Card, below that pressure: show the hand signal at once. Two or three short words.</extracomment>
        <translation>daj znak teraz</translation>
    </message>
    <message>
        <source>Deepest</source>
        <extracomment>Card, above a depth in large type: the deepest point of the dive. One short word.</extracomment>
        <translation>Najgłębiej</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>Card, above minutes in large type: how long the dive is. One short word.</extracomment>
        <translation>Czas</translation>
    </message>
    <message>
        <source>Never hold your breath</source>
        <extracomment>Card, the largest words: the one rule. Keep it short.</extracomment>
        <translation>Nigdy nie wstrzymuj oddechu</translation>
    </message>
    <message>
        <source>Going up, held air swells: lungs can tear.</source>
        <extracomment>Card, below that rule. Beside it stands by how much the air swells: "×1.8".</extracomment>
        <translation>Przy wynurzaniu zatrzymane powietrze rozszerza się: płuca mogą pęknąć.</translation>
    </message>
    <message>
        <source>Clear ears early, every %1. Pain? Stop, signal, go up %2.</source>
        <extracomment>Card. %1: a step of descent ("1 m"). %2: how far to go up ("1 m").</extracomment>
        <translation>Przedmuchuj uszy wcześnie, co %1. Boli? Stop, znak, %2 wyżej.</translation>
    </message>
    <message>
        <source>Stay within reach. Lost? Look around 1 minute, go up slowly.</source>
        <extracomment>Card: so close to the instructor that an arm reaches. When apart: look around.</extracomment>
        <translation>Bądź w zasięgu ręki. Rozdzieleni? Rozglądaj się 1 minutę, powoli wypłyń.</translation>
    </message>
    <message>
        <source>Cold, scared, tired? Signal. Quitting is fine.</source>
        <extracomment>Card: whoever does not feel well gives a signal, and may end the dive.</extracomment>
        <translation>Zimno, strach, zmęczenie? Daj znak. Możesz przerwać.</translation>
    </message>
    <message>
        <source>At the top: fill BCD, mask on.</source>
        <extracomment>Card: back at the surface.</extracomment>
        <translation>Powierzchnia: napełnij jacket, nie zdejmuj maski.</translation>
    </message>
    <message>
        <source>not “good”</source>
        <extracomment>Card, under the picture of a raised thumb, which means "go up": never "good".</extracomment>
        <translation>nie „dobrze”</translation>
    </message>
    <message>
        <source>%1 h: no flights, no mountains.</source>
        <extracomment>Card, after the dive. %1: a number of hours.</extracomment>
        <translation>%1 godz.: nie lataj, omijaj góry.</translation>
    </message>
    <message>
        <source>48 h: numb, dizzy, very tired, joint pain, breathless?</source>
        <extracomment>Card, after the dive: whoever feels this within 48 hours calls the number beside it.</extracomment>
        <translation>48 godz.: drętwienie, zawroty głowy, duże zmęczenie, ból stawów, duszność?</translation>
    </message>
    <message>
        <source>Call</source>
        <extracomment>Card, before the emergency number; without a colon.</extracomment>
        <translation>Zadzwoń</translation>
    </message>
    <message>
        <source>Understood</source>
        <extracomment>Card, beside a box that the guest ticks.</extracomment>
        <translation>Rozumiem</translation>
    </message>
    <message>
        <source>Planning aid. Your instructor decides.</source>
        <extracomment>Card, small: what the card is, and who decides.</extracomment>
        <translation>Pomoc w planowaniu. Decyduje instruktor.</translation>
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
        <translation>l</translation>
    </message>
    <message>
        <source>ft³</source>
        <translation>ft³</translation>
    </message>
    <message>
        <source>Breathe under water</source>
        <translation>Oddychanie pod wodą</translation>
    </message>
    <message>
        <source>Clear your mask</source>
        <translation>Przedmuchiwanie maski</translation>
    </message>
    <message>
        <source>Clear the mouthpiece</source>
        <translation>Przedmuchiwanie automatu</translation>
    </message>
    <message>
        <source>Find the mouthpiece</source>
        <translation>Odnajdywanie automatu</translation>
    </message>
    <message>
        <source>Clear your ears</source>
        <translation>Przedmuchiwanie uszu</translation>
    </message>
    <message>
        <source>Fill and empty the BCD</source>
        <translation>Napełnianie i opróżnianie jacketu</translation>
    </message>
    <message>
        <source>Share air</source>
        <translation>Wspólne powietrze</translation>
    </message>
    <message>
        <source>Float at the top</source>
        <translation>Unoszenie się na powierzchni</translation>
    </message>
    <message>
        <source>So that slow, steady breaths feel easy before you go down.</source>
        <translation>Żeby spokojny, równy oddech był łatwy, zanim zejdziesz pod wodę.</translation>
    </message>
    <message>
        <source>So that water in the mask is no worry: you know how to blow it out.</source>
        <translation>Żeby woda w masce cię nie martwiła: wiesz, jak ją wydmuchać.</translation>
    </message>
    <message>
        <source>So that you can blow water out and breathe on.</source>
        <translation>Żeby wydmuchać wodę i oddychać dalej.</translation>
    </message>
    <message>
        <source>So that you can get it back if it slips out.</source>
        <translation>Żeby go odzyskać, gdy wypadnie z ust.</translation>
    </message>
    <message>
        <source>So that going down need not hurt.</source>
        <translation>Żeby droga w dół nie musiała boleć.</translation>
    </message>
    <message>
        <source>So that you can float, or sink, when you choose.</source>
        <translation>Żeby unosić się lub opadać, kiedy zechcesz.</translation>
    </message>
    <message>
        <source>So that you can breathe from the spare if yours runs low.</source>
        <translation>Żeby oddychać z zapasowego automatu, gdy masz mało powietrza.</translation>
    </message>
    <message>
        <source>So that you can rest with your head above the water.</source>
        <translation>Żeby odpocząć z głową nad wodą.</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>Pianka</translation>
    </message>
    <message>
        <source>BCD</source>
        <translation>Jacket</translation>
    </message>
    <message>
        <source>Fins</source>
        <translation>Płetwy</translation>
    </message>
    <message>
        <source>Mask</source>
        <translation>Maska</translation>
    </message>
    <message>
        <source>Mouthpiece</source>
        <translation>Automat</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Balast</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Butla</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Manometr</translation>
    </message>
    <message>
        <source>Keeps you warm.</source>
        <translation>Grzeje cię.</translation>
    </message>
    <message>
        <source>The jacket that lets you float or sink.</source>
        <translation>Kamizelka, dzięki której unosisz się lub opadasz.</translation>
    </message>
    <message>
        <source>Move you with slow kicks.</source>
        <translation>Powolne ruchy nóg i płyniesz.</translation>
    </message>
    <message>
        <source>Lets you see. Your nose is inside, so that you can blow into it.</source>
        <translation>Dzięki niej widzisz. Nos jest w środku, więc możesz w nią dmuchać.</translation>
    </message>
    <message>
        <source>Gives you air when you breathe in.</source>
        <translation>Daje powietrze, gdy robisz wdech.</translation>
    </message>
    <message>
        <source>Help you to sink. Your instructor shows how to drop them.</source>
        <translation>Pomaga zejść pod wodę. Instruktor pokaże, jak go zrzucić.</translation>
    </message>
    <message>
        <source>Holds your air.</source>
        <translation>W niej jest powietrze.</translation>
    </message>
    <message>
        <source>Shows how much air is left. Look at it often.</source>
        <translation>Pokazuje, ile powietrza zostało. Patrz na niego często.</translation>
    </message>
    <message>
        <source>Talk with your hands</source>
        <translation>Mów rękami</translation>
    </message>
    <message>
        <source>Thumb up means “go up”. It never means “good”. For “good”, make a ring.</source>
        <translation>Kciuk w górę znaczy „płyń w górę”. Nigdy nie znaczy „dobrze”. Gdy jest dobrze, zrób kółko.</translation>
    </message>
    <message>
        <source>Some people count in another way. Show each other your numbers first.</source>
        <translation>Niektórzy liczą inaczej. Najpierw pokażcie sobie, jak liczycie.</translation>
    </message>
    <message>
        <source>One sign at a time: %1 means %2.</source>
        <translation>Po jednym znaku: %1 znaczy %2.</translation>
    </message>
    <message>
        <source>Fill a balloon at the top. Down it goes, and it shrinks.</source>
        <translation>Nadmuchaj balon na powierzchni. W drodze w dół się kurczy.</translation>
    </message>
    <message>
        <source>Fill it deep down. Up it goes, and it swells.</source>
        <translation>Nadmuchaj go głęboko pod wodą. W drodze w górę rośnie.</translation>
    </message>
    <message>
        <source>So does the air in your lungs, if you hold it.</source>
        <translation>Tak samo powietrze w płucach, gdy wstrzymasz oddech.</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>a button: to the page before</extracomment>
        <translation>Wstecz</translation>
    </message>
    <message>
        <source>Next</source>
        <extracomment>a button: to the page after</extracomment>
        <translation>Dalej</translation>
    </message>
    <message>
        <source>Run</source>
        <extracomment>a button: the pages turn by themselves from here on</extracomment>
        <translation>Odtwórz</translation>
    </message>
    <message>
        <source>Pause</source>
        <extracomment>a button: the pages no longer turn by themselves</extracomment>
        <translation>Pauza</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Język</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Strona %1 z %2</translation>
    </message>
    <message>
        <source>Tap your name.</source>
        <extracomment>above the first names of the guests</extracomment>
        <translation>Dotknij swojego imienia.</translation>
    </message>
    <message>
        <source>No speaker has checked this text yet. Ask if it is not clear.</source>
        <extracomment>stands on every page whose language is a draft</extracomment>
        <translation>Tego tekstu nie sprawdził jeszcze nikt, kto mówi po polsku. Coś niejasne? Pytaj.</translation>
    </message>
    <message>
        <source>A planning aid. Your instructor decides.</source>
        <translation>Pomoc w planowaniu. Decyduje instruktor.</translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>Nie ma jeszcze gości.</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Witamy</translation>
    </message>
    <message>
        <source>Today’s dive</source>
        <translation>Dzisiejsze nurkowanie</translation>
    </message>
    <message>
        <source>Where</source>
        <extracomment>label before a place</extracomment>
        <translation>Gdzie</translation>
    </message>
    <message>
        <source>How deep</source>
        <extracomment>label before a depth</extracomment>
        <translation>Jak głęboko</translation>
    </message>
    <message>
        <source>no deeper than %1</source>
        <extracomment>follows the label “How deep”</extracomment>
        <translation>nie głębiej niż %1</translation>
    </message>
    <message>
        <source>How long</source>
        <extracomment>label before a time</extracomment>
        <translation>Jak długo</translation>
    </message>
    <message>
        <source>about %1</source>
        <extracomment>follows the label “How long”</extracomment>
        <translation>około %1</translation>
    </message>
    <message>
        <source>not set yet</source>
        <extracomment>in place of a name or a place</extracomment>
        <translation>jeszcze nie ustalono</translation>
    </message>
    <message>
        <source>You may stop at any time. Just show it.</source>
        <translation>Możesz przerwać w każdej chwili. Wystarczy znak.</translation>
    </message>
    <message>
        <source>Ask about all that is not clear.</source>
        <translation>Pytaj o wszystko, co niejasne.</translation>
    </message>
    <message>
        <source>Your kit</source>
        <translation>Twój sprzęt</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <extracomment>in place of a size</extracomment>
        <translation>jeszcze nie wybrano</translation>
    </message>
    <message>
        <source>Try it all on. Does it pinch, leak or feel loose? Say so.</source>
        <translation>Przymierz wszystko. Coś uciska, przecieka albo jest luźne? Powiedz o tym.</translation>
    </message>
    <message>
        <source>Breathe all the time</source>
        <translation>Oddychaj cały czas</translation>
    </message>
    <message>
        <source>Move the diver up and down.</source>
        <extracomment>the guest drags a picture with the finger</extracomment>
        <translation>Przesuwaj nurka w górę i w dół.</translation>
    </message>
    <message>
        <source>Depth</source>
        <extracomment>label before a number</extracomment>
        <translation>Głębokość</translation>
    </message>
    <message>
        <source>Pressure</source>
        <extracomment>label before a number</extracomment>
        <translation>Ciśnienie</translation>
    </message>
    <message>
        <source>%1 the pressure at the top</source>
        <extracomment>%1 is a factor, as in ×1.8</extracomment>
        <translation>%1 ciśnienia na powierzchni</translation>
    </message>
    <message>
        <source>Balloon</source>
        <translation>Balon</translation>
    </message>
    <message>
        <source>Filled at the top, it shrinks on the way down.</source>
        <extracomment>a balloon</extracomment>
        <translation>Nadmuchany na powierzchni, kurczy się w drodze w dół.</translation>
    </message>
    <message>
        <source>Lungs</source>
        <translation>Płuca</translation>
    </message>
    <message>
        <source>Breathe, and they stay the same size.</source>
        <extracomment>the lungs</extracomment>
        <translation>Oddychaj, a ich wielkość się nie zmieni.</translation>
    </message>
    <message>
        <source>A breath held at %1 swells to %2 at the top.</source>
        <extracomment>%2 is a factor, as in ×1.8</extracomment>
        <translation>Powietrze zatrzymane na głębokości %1 rozszerza się na powierzchni do %2.</translation>
    </message>
    <message>
        <source>It can tear a lung.</source>
        <extracomment>a held breath</extracomment>
        <translation>Może rozerwać płuco.</translation>
    </message>
    <message>
        <source>Even %1 up can be enough.</source>
        <extracomment>to go up by %1 with a held breath can be enough to tear a lung</extracomment>
        <translation>Nawet %1 w górę może wystarczyć.</translation>
    </message>
    <message>
        <source>Ear drum</source>
        <translation>Błona bębenkowa</translation>
    </message>
    <message>
        <source>It bends in on the way down. Clear your ears.</source>
        <extracomment>the ear drum</extracomment>
        <translation>W drodze w dół wgina się. Przedmuchuj uszy.</translation>
    </message>
    <message>
        <source>flat</source>
        <extracomment>the ear drum is not bent</extracomment>
        <translation>płaska</translation>
    </message>
    <message>
        <source>bent in</source>
        <extracomment>the ear drum is bent in</extracomment>
        <translation>wgięta</translation>
    </message>
    <message>
        <source>On the way down it pulls at your face. Breathe out a bit through your nose.</source>
        <extracomment>the mask</extracomment>
        <translation>W drodze w dół przysysa się do twarzy. Wypuść trochę powietrza nosem.</translation>
    </message>
    <message>
        <source>sits well</source>
        <extracomment>the mask</extracomment>
        <translation>leży dobrze</translation>
    </message>
    <message>
        <source>pulls</source>
        <extracomment>the mask is sucked to the face</extracomment>
        <translation>przysysa się</translation>
    </message>
    <message>
        <source>Size: %1</source>
        <extracomment>%1 is a share, as in 55 %</extracomment>
        <translation>Wielkość: %1</translation>
    </message>
    <message>
        <source>Top</source>
        <extracomment>the water’s surface, beside a scale of depth</extracomment>
        <translation>Powierzchnia</translation>
    </message>
    <message>
        <source>Deepest today</source>
        <extracomment>beside a scale of depth</extracomment>
        <translation>Dziś najgłębiej</translation>
    </message>
    <message>
        <source>Diver</source>
        <extracomment>a person under water</extracomment>
        <translation>Nurek</translation>
    </message>
    <message>
        <source>Clear them every %1 on the way down, before they hurt.</source>
        <extracomment>your ears</extracomment>
        <translation>Przedmuchuj je w drodze w dół co %1, zanim zabolą.</translation>
    </message>
    <message>
        <source>Pinch your nose. Blow softly. Never blow hard.</source>
        <translation>Zaciśnij nos palcami. Dmuchaj lekko. Nigdy nie dmuchaj mocno.</translation>
    </message>
    <message>
        <source>Try it: go down. What if you do not clear?</source>
        <translation>Spróbuj: płyń w dół. Co będzie, jeśli nie przedmuchasz uszu?</translation>
    </message>
    <message>
        <source>Down</source>
        <extracomment>a button: go a little deeper</extracomment>
        <translation>W dół</translation>
    </message>
    <message>
        <source>Up</source>
        <extracomment>a button: go a little less deep</extracomment>
        <translation>W górę</translation>
    </message>
    <message>
        <source>Clear my ears</source>
        <extracomment>a button</extracomment>
        <translation>Przedmuchaj uszy</translation>
    </message>
    <message>
        <source>On the ear drum</source>
        <extracomment>label before a pressure</extracomment>
        <translation>Na błonę bębenkową</translation>
    </message>
    <message>
        <source>Fine</source>
        <extracomment>state of the ears</extracomment>
        <translation>W porządku</translation>
    </message>
    <message>
        <source>Pressure: clear now</source>
        <extracomment>state of the ears: it feels full, it does not hurt yet</extracomment>
        <translation>Ucisk: przedmuchaj teraz</translation>
    </message>
    <message>
        <source>Pain: stop and go up</source>
        <extracomment>state of the ears</extracomment>
        <translation>Ból: stop i w górę</translation>
    </message>
    <message>
        <source>Locked: only going up helps</source>
        <extracomment>state of the ears: the tube to the ear is shut tight and does not open</extracomment>
        <translation>Zablokowane: tylko w górę</translation>
    </message>
    <message>
        <source>Cleared. The drum is flat.</source>
        <extracomment>the ear drum</extracomment>
        <translation>Udało się. Błona jest płaska.</translation>
    </message>
    <message>
        <source>Do not force it. Go up a bit first.</source>
        <extracomment>to clear the ears</extracomment>
        <translation>Nic na siłę. Najpierw trochę w górę.</translation>
    </message>
    <message>
        <source>Ears hurt? Stop, show it, go up a bit. Then try once more.</source>
        <translation>Bolą uszy? Stop, daj znak, trochę w górę. Potem spróbuj jeszcze raz.</translation>
    </message>
    <message>
        <source>clear here</source>
        <extracomment>beside a mark on a scale of depth</extracomment>
        <translation>tu przedmuchaj</translation>
    </message>
    <message>
        <source>Hand signals</source>
        <translation>Znaki rękami</translation>
    </message>
    <message>
        <source>How much air do you have?</source>
        <translation>Ile masz powietrza?</translation>
    </message>
    <message>
        <source>Show each figure with one hand. This is %1:</source>
        <extracomment>the figures of a number, one after another</extracomment>
        <translation>Pokaż każdą cyfrę jedną ręką. To jest %1:</translation>
    </message>
    <message>
        <source>Not the same</source>
        <extracomment>above two signals that are often mixed up</extracomment>
        <translation>To nie to samo</translation>
    </message>
    <message>
        <source>Thumb up: we go up. It does not mean “good”.</source>
        <translation>Kciuk w górę: płyniemy w górę. To nie znaczy „dobrze”.</translation>
    </message>
    <message>
        <source>All is well? Make the ring.</source>
        <extracomment>thumb and first finger make a ring</extracomment>
        <translation>Wszystko dobrze? Zrób kółko.</translation>
    </message>
    <message>
        <source>Do you know them?</source>
        <extracomment>hand signals</extracomment>
        <translation>Znasz te znaki?</translation>
    </message>
    <message>
        <source>Start</source>
        <extracomment>a button</extracomment>
        <translation>Zacznij</translation>
    </message>
    <message>
        <source>Start over</source>
        <extracomment>a button</extracomment>
        <translation>Od nowa</translation>
    </message>
    <message>
        <source>What does this signal say?</source>
        <translation>Co mówi ten znak?</translation>
    </message>
    <message>
        <source>Yes, that is right.</source>
        <translation>Tak, zgadza się.</translation>
    </message>
    <message>
        <source>Not quite. It says: %1</source>
        <translation>Nie całkiem. To znaczy: %1</translation>
    </message>
    <message>
        <source>We will ask it once more.</source>
        <translation>Zapytamy o to jeszcze raz.</translation>
    </message>
    <message>
        <source>Known: %1 of %2</source>
        <translation>Znasz: %1 z %2</translation>
    </message>
    <message>
        <source>You know them all. Well done!</source>
        <translation>Znasz wszystkie. Brawo!</translation>
    </message>
    <message>
        <source>Your instructor has a note of it: %1</source>
        <extracomment>%1 is a date</extracomment>
        <translation>Instruktor ma to zapisane: %1</translation>
    </message>
    <message>
        <source>known</source>
        <extracomment>a hand signal that the guest knows</extracomment>
        <translation>znasz</translation>
    </message>
    <message>
        <source>not yet</source>
        <extracomment>a hand signal that the guest does not know yet</extracomment>
        <translation>jeszcze nie</translation>
    </message>
    <message>
        <source>What we try first</source>
        <extracomment>what is practised in shallow water</extracomment>
        <translation>Co najpierw ćwiczymy</translation>
    </message>
    <message>
        <source>Your instructor shows it. Then you try. Take your time.</source>
        <translation>Instruktor pokazuje. Potem próbujesz ty. Bez pośpiechu.</translation>
    </message>
    <message>
        <source>Ask your instructor what we try today.</source>
        <translation>Zapytaj instruktora, co dziś ćwiczymy.</translation>
    </message>
    <message>
        <source>When we go up</source>
        <translation>Kiedy płyniemy w górę</translation>
    </message>
    <message>
        <source>One goes up, we all go up.</source>
        <translation>Jedna osoba w górę, wszyscy w górę.</translation>
    </message>
    <message>
        <source>Go up slowly and breathe all the time.</source>
        <translation>Płyń w górę powoli i cały czas oddychaj.</translation>
    </message>
    <message>
        <source>Your gauge reads %1 or less. Show it now.</source>
        <translation>Twój manometr wskazuje %1 lub mniej. Od razu daj znak.</translation>
    </message>
    <message>
        <source>Your air is low. Ask which number to look for.</source>
        <extracomment>the number on the gauge</extracomment>
        <translation>Masz mało powietrza. Zapytaj, na jaką liczbę patrzeć.</translation>
    </message>
    <message>
        <source>The time is up: %1.</source>
        <translation>Czas minął: %1.</translation>
    </message>
    <message>
        <source>You want to go up. That is fine.</source>
        <translation>Chcesz płynąć w górę. To w porządku.</translation>
    </message>
    <message>
        <source>Your ears hurt or do not clear.</source>
        <translation>Bolą cię uszy albo nie możesz ich przedmuchać.</translation>
    </message>
    <message>
        <source>You are cold, tired or scared.</source>
        <translation>Czujesz zimno, zmęczenie lub strach.</translation>
    </message>
    <message>
        <source>Your instructor shows: go up.</source>
        <translation>Instruktor pokazuje: w górę.</translation>
    </message>
    <message>
        <source>You see none of us. Look around for one minute, then go up slowly.</source>
        <translation>Nikogo z nas nie widzisz. Rozglądaj się przez minutę, potem powoli w górę.</translation>
    </message>
    <message>
        <source>After the dive</source>
        <translation>Po nurkowaniu</translation>
    </message>
    <message>
        <source>No flights and no mountain roads for %1 h.</source>
        <translation>Przez %1 godz. żadnych lotów ani górskich dróg.</translation>
    </message>
    <message>
        <source>For 48 h, watch for this:</source>
        <extracomment>signs of illness</extracomment>
        <translation>Przez 48 godz. uważaj na te objawy:</translation>
    </message>
    <message>
        <source>numb or tingling skin</source>
        <translation>drętwienie lub mrowienie skóry</translation>
    </message>
    <message>
        <source>weak arms or legs</source>
        <translation>osłabienie rąk lub nóg</translation>
    </message>
    <message>
        <source>dizzy, or odd sight</source>
        <translation>zawroty głowy lub kłopoty ze wzrokiem</translation>
    </message>
    <message>
        <source>very tired</source>
        <translation>duże zmęczenie</translation>
    </message>
    <message>
        <source>sore joints</source>
        <translation>ból stawów</translation>
    </message>
    <message>
        <source>short of breath, or chest pain</source>
        <translation>duszność lub ból w klatce piersiowej</translation>
    </message>
    <message>
        <source>Any of these? Call now: %1</source>
        <translation>Masz coś z tego? Dzwoń od razu: %1</translation>
    </message>
    <message>
        <source>Any of these? Call for help now. Ask your instructor for the number.</source>
        <translation>Masz coś z tego? Od razu wezwij pomoc. Zapytaj instruktora o numer.</translation>
    </message>
    <message>
        <source>Say that you have been diving. Do not wait.</source>
        <translation>Powiedz, że to po nurkowaniu. Nie czekaj.</translation>
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
        <translation>Uszy</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message>
        <source>Go up</source>
        <translation>W górę</translation>
    </message>
    <message>
        <source>Go down</source>
        <translation>W dół</translation>
    </message>
    <message>
        <source>No air</source>
        <translation>Brak powietrza</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Patrz</translation>
    </message>
    <message>
        <source>Come here</source>
        <translation>Do mnie</translation>
    </message>
    <message>
        <source>Stay close</source>
        <translation>Bądź blisko</translation>
    </message>
    <message>
        <source>Hold hands</source>
        <translation>Za ręce</translation>
    </message>
    <message>
        <source>This deep</source>
        <translation>Ta głębokość</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>Wolniej</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>Zimno</translation>
    </message>
    <message>
        <source>How much air?</source>
        <translation>Ile powietrza?</translation>
    </message>
    <message>
        <source>OK, at the top</source>
        <translation>Na wodzie: OK</translation>
    </message>
    <message>
        <source>Help, at the top</source>
        <translation>Na wodzie: pomocy</translation>
    </message>
    <message>
        <source>All is well. Is all well with you?</source>
        <translation>Wszystko dobrze. A u ciebie?</translation>
    </message>
    <message>
        <source>Something is wrong.</source>
        <translation>Coś jest nie tak.</translation>
    </message>
    <message>
        <source>My ears hurt, or do not clear.</source>
        <translation>Bolą mnie uszy albo nie mogę ich przedmuchać.</translation>
    </message>
    <message>
        <source>Stop and stay where you are.</source>
        <translation>Zatrzymaj się i zostań na miejscu.</translation>
    </message>
    <message>
        <source>Go up: the dive is over. It never means “good”.</source>
        <translation>Płyń w górę: koniec nurkowania. To nigdy nie znaczy „dobrze”.</translation>
    </message>
    <message>
        <source>Go down.</source>
        <translation>Płyń w dół.</translation>
    </message>
    <message>
        <source>I am low on air.</source>
        <translation>Mam mało powietrza.</translation>
    </message>
    <message>
        <source>I have no air. Give me yours now.</source>
        <translation>Nie mam powietrza. Daj mi od razu swoje.</translation>
    </message>
    <message>
        <source>Let me breathe from your spare mouthpiece.</source>
        <translation>Daj mi oddychać z twojego zapasowego automatu.</translation>
    </message>
    <message>
        <source>Look, over there.</source>
        <translation>Popatrz tam.</translation>
    </message>
    <message>
        <source>Come to me.</source>
        <translation>Podpłyń do mnie.</translation>
    </message>
    <message>
        <source>Stay close together.</source>
        <translation>Trzymajcie się razem.</translation>
    </message>
    <message>
        <source>Let us hold hands.</source>
        <translation>Złapmy się za ręce.</translation>
    </message>
    <message>
        <source>Stay at this depth.</source>
        <translation>Zostań na tej głębokości.</translation>
    </message>
    <message>
        <source>Slow down.</source>
        <translation>Zwolnij.</translation>
    </message>
    <message>
        <source>I am cold.</source>
        <translation>Zimno mi.</translation>
    </message>
    <message>
        <source>All is well. Made at the surface.</source>
        <translation>Wszystko dobrze. Znak na powierzchni.</translation>
    </message>
    <message>
        <source>Help me. Made at the surface.</source>
        <translation>Pomóż mi. Znak na powierzchni.</translation>
    </message>
    <message>
        <source>Thumb and first finger make a ring.</source>
        <translation>Kciuk i palec wskazujący tworzą kółko.</translation>
    </message>
    <message>
        <source>Rock a flat hand, then point at what is wrong.</source>
        <translation>Zakołysz płaską dłonią, potem wskaż, co jest nie tak.</translation>
    </message>
    <message>
        <source>Point at your ear.</source>
        <translation>Wskaż ucho.</translation>
    </message>
    <message>
        <source>Hold up a flat hand.</source>
        <translation>Unieś płaską dłoń.</translation>
    </message>
    <message>
        <source>Fist with the thumb up, moving up.</source>
        <translation>Pięść z kciukiem w górę, ruch w górę.</translation>
    </message>
    <message>
        <source>Fist with the thumb down, moving down.</source>
        <translation>Pięść z kciukiem w dół, ruch w dół.</translation>
    </message>
    <message>
        <source>Hold a fist at your chest.</source>
        <translation>Trzymaj pięść przy piersi.</translation>
    </message>
    <message>
        <source>Cut across your throat with a flat hand.</source>
        <translation>Przesuń płaską dłonią w poprzek gardła.</translation>
    </message>
    <message>
        <source>Move your fingers to your mouth and away.</source>
        <translation>Zbliżaj palce do ust i oddalaj.</translation>
    </message>
    <message>
        <source>Two fingers from your eyes to the thing.</source>
        <translation>Dwa palce od oczu w stronę tej rzeczy.</translation>
    </message>
    <message>
        <source>Wave your hand towards you.</source>
        <translation>Machnij ręką do siebie.</translation>
    </message>
    <message>
        <source>Put two first fingers side by side.</source>
        <translation>Połóż obok siebie dwa palce wskazujące.</translation>
    </message>
    <message>
        <source>Clasp your hands.</source>
        <translation>Spleć dłonie.</translation>
    </message>
    <message>
        <source>Slide a flat hand from side to side.</source>
        <translation>Przesuwaj płaską dłoń na boki.</translation>
    </message>
    <message>
        <source>Press a flat hand down, twice.</source>
        <translation>Dwa razy opuść płaską dłoń.</translation>
    </message>
    <message>
        <source>Cross your arms and rub them.</source>
        <translation>Skrzyżuj ramiona i pocieraj je.</translation>
    </message>
    <message>
        <source>Lay two fingers on your palm.</source>
        <translation>Połóż dwa palce na dłoni.</translation>
    </message>
    <message>
        <source>Make a big ring over your head with both arms.</source>
        <translation>Obiema rękami zrób nad głową duże koło.</translation>
    </message>
    <message>
        <source>Wave one straight arm over your head, slowly.</source>
        <translation>Powoli machaj wyprostowaną ręką nad głową.</translation>
    </message>
</context>
</TS>
