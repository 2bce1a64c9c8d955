<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Guest</name>
    <message>
        <source>Meet</source>
        <extracomment>Card, before day and time: "Meet Sat 4 July, 09:30".</extracomment>
        <translation>Encuentro</translation>
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
        <translation>Poco aire</translation>
    </message>
    <message>
        <source>signal now</source>
        <extracomment>Card, below that pressure: show the hand signal at once. Two or three short words.</extracomment>
        <translation>avisa ya</translation>
    </message>
    <message>
        <source>Deepest</source>
        <extracomment>Card, above a depth in large type: the deepest point of the dive. One short word.</extracomment>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>Card, above minutes in large type: how long the dive is. One short word.</extracomment>
        <translation>Duración</translation>
    </message>
    <message>
        <source>Never hold your breath</source>
        <extracomment>Card, the largest words: the one rule. Keep it short.</extracomment>
        <translation>Nunca aguantes la respiración</translation>
    </message>
    <message>
        <source>Going up, held air swells: lungs can tear.</source>
        <extracomment>Card, below that rule. Beside it stands by how much the air swells: "×1.8".</extracomment>
        <translation>Al subir, el aire retenido crece: puede romper pulmones.</translation>
    </message>
    <message>
        <source>Clear ears early, every %1. Pain? Stop, signal, go up %2.</source>
        <extracomment>Card. %1: a step of descent ("1 m"). %2: how far to go up ("1 m").</extracomment>
        <translation>Oídos: compensa pronto, cada %1. ¿Dolor? Para, avisa, sube %2.</translation>
    </message>
    <message>
        <source>Stay within reach. Lost? Look around 1 minute, go up slowly.</source>
        <extracomment>Card: so close to the instructor that an arm reaches. When apart: look around.</extracomment>
        <translation>Mantente al alcance del brazo. ¿Separados? Observa 1 minuto, sube despacio.</translation>
    </message>
    <message>
        <source>Cold, scared, tired? Signal. Quitting is fine.</source>
        <extracomment>Card: whoever does not feel well gives a signal, and may end the dive.</extracomment>
        <translation>¿Frío, miedo, cansancio? Avisa. Puedes parar.</translation>
    </message>
    <message>
        <source>At the top: fill BCD, mask on.</source>
        <extracomment>Card: back at the surface.</extracomment>
        <translation>Arriba: chaleco inflado, máscara puesta.</translation>
    </message>
    <message>
        <source>not “good”</source>
        <extracomment>Card, under the picture of a raised thumb, which means "go up": never "good".</extracomment>
        <translation>no «bien»</translation>
    </message>
    <message>
        <source>%1 h: no flights, no mountains.</source>
        <extracomment>Card, after the dive. %1: a number of hours.</extracomment>
        <translation>%1 h: sin vuelos ni carreteras montañosas.</translation>
    </message>
    <message>
        <source>48 h: numb, dizzy, very tired, joint pain, breathless?</source>
        <extracomment>Card, after the dive: whoever feels this within 48 hours calls the number beside it.</extracomment>
        <translation>48 h: ¿piel dormida, mareo, mucho cansancio, dolor articular, falta de aire?</translation>
    </message>
    <message>
        <source>Call</source>
        <extracomment>Card, before the emergency number; without a colon.</extracomment>
        <translation>Llama</translation>
    </message>
    <message>
        <source>Understood</source>
        <extracomment>Card, beside a box that the guest ticks.</extracomment>
        <translation>Entendido</translation>
    </message>
    <message>
        <source>Planning aid. Your instructor decides.</source>
        <extracomment>Card, small: what the card is, and who decides.</extracomment>
        <translation>Ayuda para planificar. Tu instructor decide.</translation>
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
        <translation>Respirar bajo el agua</translation>
    </message>
    <message>
        <source>Clear your mask</source>
        <translation>Vaciar la máscara</translation>
    </message>
    <message>
        <source>Clear the mouthpiece</source>
        <translation>Vaciar el regulador</translation>
    </message>
    <message>
        <source>Find the mouthpiece</source>
        <translation>Recuperar el regulador</translation>
    </message>
    <message>
        <source>Clear your ears</source>
        <translation>Compensar los oídos</translation>
    </message>
    <message>
        <source>Fill and empty the BCD</source>
        <translation>Inflar y vaciar el chaleco</translation>
    </message>
    <message>
        <source>Share air</source>
        <translation>Compartir aire</translation>
    </message>
    <message>
        <source>Float at the top</source>
        <translation>Flotar en la superficie</translation>
    </message>
    <message>
        <source>So that slow, steady breaths feel easy before you go down.</source>
        <translation>Para que respirar lento y regular te resulte fácil antes de bajar.</translation>
    </message>
    <message>
        <source>So that water in the mask is no worry: you know how to blow it out.</source>
        <translation>Para que el agua en la máscara no te preocupe: sabes sacarla soplando.</translation>
    </message>
    <message>
        <source>So that you can blow water out and breathe on.</source>
        <translation>Para sacar el agua soplando y seguir respirando.</translation>
    </message>
    <message>
        <source>So that you can get it back if it slips out.</source>
        <translation>Para recuperarlo si se te sale de la boca.</translation>
    </message>
    <message>
        <source>So that going down need not hurt.</source>
        <translation>Para que bajar no tenga que doler.</translation>
    </message>
    <message>
        <source>So that you can float, or sink, when you choose.</source>
        <translation>Para flotar o bajar cuando tú quieras.</translation>
    </message>
    <message>
        <source>So that you can breathe from the spare if yours runs low.</source>
        <translation>Para respirar del regulador de reserva si te queda poco aire.</translation>
    </message>
    <message>
        <source>So that you can rest with your head above the water.</source>
        <translation>Para descansar con la cabeza fuera del agua.</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>Traje</translation>
    </message>
    <message>
        <source>BCD</source>
        <translation>Chaleco</translation>
    </message>
    <message>
        <source>Fins</source>
        <translation>Aletas</translation>
    </message>
    <message>
        <source>Mask</source>
        <translation>Máscara</translation>
    </message>
    <message>
        <source>Mouthpiece</source>
        <translation>Regulador</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Plomos</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Botella</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Manómetro</translation>
    </message>
    <message>
        <source>Keeps you warm.</source>
        <translation>Te protege del frío.</translation>
    </message>
    <message>
        <source>The jacket that lets you float or sink.</source>
        <translation>El chaleco con el que flotas o bajas.</translation>
    </message>
    <message>
        <source>Move you with slow kicks.</source>
        <translation>Te hacen avanzar con patadas lentas.</translation>
    </message>
    <message>
        <source>Lets you see. Your nose is inside, so that you can blow into it.</source>
        <translation>Te deja ver. La nariz queda dentro para que puedas soplar por ella.</translation>
    </message>
    <message>
        <source>Gives you air when you breathe in.</source>
        <translation>Te da aire cuando inspiras.</translation>
    </message>
    <message>
        <source>Help you to sink. Your instructor shows how to drop them.</source>
        <translation>Te ayudan a bajar. Tu instructor te enseña a soltarlos.</translation>
    </message>
    <message>
        <source>Holds your air.</source>
        <translation>Lleva tu aire.</translation>
    </message>
    <message>
        <source>Shows how much air is left. Look at it often.</source>
        <translation>Indica cuánto aire queda. Míralo a menudo.</translation>
    </message>
    <message>
        <source>Talk with your hands</source>
        <translation>Habla con las manos</translation>
    </message>
    <message>
        <source>Thumb up means “go up”. It never means “good”. For “good”, make a ring.</source>
        <translation>Pulgar arriba significa «subir». Nunca significa «bien». Para «bien», haz un anillo.</translation>
    </message>
    <message>
        <source>Some people count in another way. Show each other your numbers first.</source>
        <translation>Hay quien cuenta de otra forma. Antes, muestra tus números y mira los de los demás.</translation>
    </message>
    <message>
        <source>One sign at a time: %1 means %2.</source>
        <translation>Una señal tras otra: %1 significa %2.</translation>
    </message>
    <message>
        <source>Fill a balloon at the top. Down it goes, and it shrinks.</source>
        <translation>Infla un globo en superficie. Al bajar, encoge.</translation>
    </message>
    <message>
        <source>Fill it deep down. Up it goes, and it swells.</source>
        <translation>Ínflalo en el fondo. Al subir, se hincha.</translation>
    </message>
    <message>
        <source>So does the air in your lungs, if you hold it.</source>
        <translation>Igual que el aire en tus pulmones si lo retienes.</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>a button: to the page before</extracomment>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Next</source>
        <extracomment>a button: to the page after</extracomment>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Run</source>
        <extracomment>a button: the pages turn by themselves from here on</extracomment>
        <translation>Reproducir</translation>
    </message>
    <message>
        <source>Pause</source>
        <extracomment>a button: the pages no longer turn by themselves</extracomment>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>Tap your name.</source>
        <extracomment>above the first names of the guests</extracomment>
        <translation>Toca tu nombre.</translation>
    </message>
    <message>
        <source>No speaker has checked this text yet. Ask if it is not clear.</source>
        <extracomment>stands on every page whose language is a draft</extracomment>
        <translation>Nadie que hable español ha revisado aún este texto. Si no está claro, pregunta.</translation>
    </message>
    <message>
        <source>A planning aid. Your instructor decides.</source>
        <translation>Es una ayuda para planificar. Tu instructor decide.</translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>Aún no hay participantes.</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>¡Hola!</translation>
    </message>
    <message>
        <source>Today’s dive</source>
        <translation>La inmersión de hoy</translation>
    </message>
    <message>
        <source>Where</source>
        <extracomment>label before a place</extracomment>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>How deep</source>
        <extracomment>label before a depth</extracomment>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>no deeper than %1</source>
        <extracomment>follows the label “How deep”</extracomment>
        <translation>no más de %1</translation>
    </message>
    <message>
        <source>How long</source>
        <extracomment>label before a time</extracomment>
        <translation>Duración</translation>
    </message>
    <message>
        <source>about %1</source>
        <extracomment>follows the label “How long”</extracomment>
        <translation>unos %1</translation>
    </message>
    <message>
        <source>not set yet</source>
        <extracomment>in place of a name or a place</extracomment>
        <translation>por decidir</translation>
    </message>
    <message>
        <source>You may stop at any time. Just show it.</source>
        <translation>Puedes parar en cualquier momento. Basta una señal.</translation>
    </message>
    <message>
        <source>Ask about all that is not clear.</source>
        <translation>Pregunta todo lo que no esté claro.</translation>
    </message>
    <message>
        <source>Your kit</source>
        <translation>Tu equipo</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <extracomment>in place of a size</extracomment>
        <translation>por elegir</translation>
    </message>
    <message>
        <source>Try it all on. Does it pinch, leak or feel loose? Say so.</source>
        <translation>Pruébatelo todo. ¿Algo aprieta, deja entrar agua o queda flojo? Dilo.</translation>
    </message>
    <message>
        <source>Breathe all the time</source>
        <translation>Respira todo el tiempo</translation>
    </message>
    <message>
        <source>Move the diver up and down.</source>
        <extracomment>the guest drags a picture with the finger</extracomment>
        <translation>Mueve al buceador arriba y abajo.</translation>
    </message>
    <message>
        <source>Depth</source>
        <extracomment>label before a number</extracomment>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>Pressure</source>
        <extracomment>label before a number</extracomment>
        <translation>Presión</translation>
    </message>
    <message>
        <source>%1 the pressure at the top</source>
        <extracomment>%1 is a factor, as in ×1.8</extracomment>
        <translation>%1 la presión en superficie</translation>
    </message>
    <message>
        <source>Balloon</source>
        <translation>Globo</translation>
    </message>
    <message>
        <source>Filled at the top, it shrinks on the way down.</source>
        <extracomment>a balloon</extracomment>
        <translation>Inflado en superficie, encoge al bajar.</translation>
    </message>
    <message>
        <source>Lungs</source>
        <translation>Pulmones</translation>
    </message>
    <message>
        <source>Breathe, and they stay the same size.</source>
        <extracomment>the lungs</extracomment>
        <translation>Si respiras, no cambian de tamaño.</translation>
    </message>
    <message>
        <source>A breath held at %1 swells to %2 at the top.</source>
        <extracomment>%2 is a factor, as in ×1.8</extracomment>
        <translation>El aire retenido a %1 se expande al subir: %2 en superficie.</translation>
    </message>
    <message>
        <source>It can tear a lung.</source>
        <extracomment>a held breath</extracomment>
        <translation>Puede romper un pulmón.</translation>
    </message>
    <message>
        <source>Even %1 up can be enough.</source>
        <extracomment>to go up by %1 with a held breath can be enough to tear a lung</extracomment>
        <translation>Subir solo %1 puede bastar.</translation>
    </message>
    <message>
        <source>Ear drum</source>
        <translation>Tímpano</translation>
    </message>
    <message>
        <source>It bends in on the way down. Clear your ears.</source>
        <extracomment>the ear drum</extracomment>
        <translation>Al bajar se hunde hacia dentro. Compensa los oídos.</translation>
    </message>
    <message>
        <source>flat</source>
        <extracomment>the ear drum is not bent</extracomment>
        <translation>plano</translation>
    </message>
    <message>
        <source>bent in</source>
        <extracomment>the ear drum is bent in</extracomment>
        <translation>hundido</translation>
    </message>
    <message>
        <source>On the way down it pulls at your face. Breathe out a bit through your nose.</source>
        <extracomment>the mask</extracomment>
        <translation>Al bajar tira de la cara. Suelta un poco de aire por la nariz.</translation>
    </message>
    <message>
        <source>sits well</source>
        <extracomment>the mask</extracomment>
        <translation>queda bien</translation>
    </message>
    <message>
        <source>pulls</source>
        <extracomment>the mask is sucked to the face</extracomment>
        <translation>tira</translation>
    </message>
    <message>
        <source>Size: %1</source>
        <extracomment>%1 is a share, as in 55 %</extracomment>
        <translation>Tamaño: %1</translation>
    </message>
    <message>
        <source>Top</source>
        <extracomment>the water’s surface, beside a scale of depth</extracomment>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Deepest today</source>
        <extracomment>beside a scale of depth</extracomment>
        <translation>Máximo de hoy</translation>
    </message>
    <message>
        <source>Diver</source>
        <extracomment>a person under water</extracomment>
        <translation>Buceador</translation>
    </message>
    <message>
        <source>Clear them every %1 on the way down, before they hurt.</source>
        <extracomment>your ears</extracomment>
        <translation>Al bajar, compénsalos cada %1, antes de que duelan.</translation>
    </message>
    <message>
        <source>Pinch your nose. Blow softly. Never blow hard.</source>
        <translation>Pínzate la nariz. Sopla suave. Nunca soples fuerte.</translation>
    </message>
    <message>
        <source>Try it: go down. What if you do not clear?</source>
        <translation>Prueba aquí: baja. ¿Y si no compensas?</translation>
    </message>
    <message>
        <source>Down</source>
        <extracomment>a button: go a little deeper</extracomment>
        <translation>Bajar</translation>
    </message>
    <message>
        <source>Up</source>
        <extracomment>a button: go a little less deep</extracomment>
        <translation>Subir</translation>
    </message>
    <message>
        <source>Clear my ears</source>
        <extracomment>a button</extracomment>
        <translation>Compensar</translation>
    </message>
    <message>
        <source>On the ear drum</source>
        <extracomment>label before a pressure</extracomment>
        <translation>En el tímpano</translation>
    </message>
    <message>
        <source>Fine</source>
        <extracomment>state of the ears</extracomment>
        <translation>Bien</translation>
    </message>
    <message>
        <source>Pressure: clear now</source>
        <extracomment>state of the ears: it feels full, it does not hurt yet</extracomment>
        <translation>Presión: compensa ya</translation>
    </message>
    <message>
        <source>Pain: stop and go up</source>
        <extracomment>state of the ears</extracomment>
        <translation>Dolor: para y sube</translation>
    </message>
    <message>
        <source>Locked: only going up helps</source>
        <extracomment>state of the ears: the tube to the ear is shut tight and does not open</extracomment>
        <translation>Bloqueado: solo ayuda subir</translation>
    </message>
    <message>
        <source>Cleared. The drum is flat.</source>
        <extracomment>the ear drum</extracomment>
        <translation>Compensado. El tímpano está plano.</translation>
    </message>
    <message>
        <source>Do not force it. Go up a bit first.</source>
        <extracomment>to clear the ears</extracomment>
        <translation>No lo fuerces. Primero sube un poco.</translation>
    </message>
    <message>
        <source>Ears hurt? Stop, show it, go up a bit. Then try once more.</source>
        <translation>¿Te duelen los oídos? Para, señálalo, sube un poco. Luego prueba otra vez.</translation>
    </message>
    <message>
        <source>clear here</source>
        <extracomment>beside a mark on a scale of depth</extracomment>
        <translation>compensa aquí</translation>
    </message>
    <message>
        <source>Hand signals</source>
        <translation>Señales de mano</translation>
    </message>
    <message>
        <source>How much air do you have?</source>
        <translation>¿Cuánto aire tienes?</translation>
    </message>
    <message>
        <source>Show each figure with one hand. This is %1:</source>
        <extracomment>the figures of a number, one after another</extracomment>
        <translation>Muestra cada cifra con una mano. Esto es %1:</translation>
    </message>
    <message>
        <source>Not the same</source>
        <extracomment>above two signals that are often mixed up</extracomment>
        <translation>No es lo mismo</translation>
    </message>
    <message>
        <source>Thumb up: we go up. It does not mean “good”.</source>
        <translation>Pulgar arriba: subimos. No significa «bien».</translation>
    </message>
    <message>
        <source>All is well? Make the ring.</source>
        <extracomment>thumb and first finger make a ring</extracomment>
        <translation>¿Todo bien? Haz el anillo.</translation>
    </message>
    <message>
        <source>Do you know them?</source>
        <extracomment>hand signals</extracomment>
        <translation>¿Conoces las señales?</translation>
    </message>
    <message>
        <source>Start</source>
        <extracomment>a button</extracomment>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>Start over</source>
        <extracomment>a button</extracomment>
        <translation>Empezar de nuevo</translation>
    </message>
    <message>
        <source>What does this signal say?</source>
        <translation>¿Qué dice esta señal?</translation>
    </message>
    <message>
        <source>Yes, that is right.</source>
        <translation>Sí, es correcto.</translation>
    </message>
    <message>
        <source>Not quite. It says: %1</source>
        <translation>No del todo. Dice: %1</translation>
    </message>
    <message>
        <source>We will ask it once more.</source>
        <translation>La preguntaremos otra vez.</translation>
    </message>
    <message>
        <source>Known: %1 of %2</source>
        <translation>Conocidas: %1 de %2</translation>
    </message>
    <message>
        <source>You know them all. Well done!</source>
        <translation>Las conoces todas. ¡Muy bien!</translation>
    </message>
    <message>
        <source>Your instructor has a note of it: %1</source>
        <extracomment>%1 is a date</extracomment>
        <translation>Anotado para tu instructor: %1</translation>
    </message>
    <message>
        <source>known</source>
        <extracomment>a hand signal that the guest knows</extracomment>
        <translation>conocida</translation>
    </message>
    <message>
        <source>not yet</source>
        <extracomment>a hand signal that the guest does not know yet</extracomment>
        <translation>aún no</translation>
    </message>
    <message>
        <source>What we try first</source>
        <extracomment>what is practised in shallow water</extracomment>
        <translation>Primero practicamos</translation>
    </message>
    <message>
        <source>Your instructor shows it. Then you try. Take your time.</source>
        <translation>Tu instructor lo muestra. Luego pruebas tú. Sin prisa.</translation>
    </message>
    <message>
        <source>Ask your instructor what we try today.</source>
        <translation>Pregunta a tu instructor qué practicamos hoy.</translation>
    </message>
    <message>
        <source>When we go up</source>
        <translation>Cuándo subimos</translation>
    </message>
    <message>
        <source>One goes up, we all go up.</source>
        <translation>Si uno sube, subimos todos.</translation>
    </message>
    <message>
        <source>Go up slowly and breathe all the time.</source>
        <translation>Sube despacio y respira todo el tiempo.</translation>
    </message>
    <message>
        <source>Your gauge reads %1 or less. Show it now.</source>
        <translation>Tu manómetro marca %1 o menos. Avisa ya.</translation>
    </message>
    <message>
        <source>Your air is low. Ask which number to look for.</source>
        <extracomment>the number on the gauge</extracomment>
        <translation>Te queda poco aire. Pregunta qué número vigilar.</translation>
    </message>
    <message>
        <source>The time is up: %1.</source>
        <translation>Se acabó el tiempo: %1.</translation>
    </message>
    <message>
        <source>You want to go up. That is fine.</source>
        <translation>Quieres subir. Está bien.</translation>
    </message>
    <message>
        <source>Your ears hurt or do not clear.</source>
        <translation>Te duelen los oídos o siguen tapados.</translation>
    </message>
    <message>
        <source>You are cold, tired or scared.</source>
        <translation>Tienes frío, cansancio o miedo.</translation>
    </message>
    <message>
        <source>Your instructor shows: go up.</source>
        <translation>Tu instructor señala: subir.</translation>
    </message>
    <message>
        <source>You see none of us. Look around for one minute, then go up slowly.</source>
        <translation>No ves a nadie del grupo. Mira alrededor un minuto y luego sube despacio.</translation>
    </message>
    <message>
        <source>After the dive</source>
        <translation>Después de la inmersión</translation>
    </message>
    <message>
        <source>No flights and no mountain roads for %1 h.</source>
        <translation>Nada de vuelos ni carreteras de montaña durante %1 h.</translation>
    </message>
    <message>
        <source>For 48 h, watch for this:</source>
        <extracomment>signs of illness</extracomment>
        <translation>Durante 48 h, vigila esto:</translation>
    </message>
    <message>
        <source>numb or tingling skin</source>
        <translation>piel dormida u hormigueo</translation>
    </message>
    <message>
        <source>weak arms or legs</source>
        <translation>brazos o piernas débiles</translation>
    </message>
    <message>
        <source>dizzy, or odd sight</source>
        <translation>mareo o visión rara</translation>
    </message>
    <message>
        <source>very tired</source>
        <translation>mucho cansancio</translation>
    </message>
    <message>
        <source>sore joints</source>
        <translation>dolor en las articulaciones</translation>
    </message>
    <message>
        <source>short of breath, or chest pain</source>
        <translation>falta de aire o dolor de pecho</translation>
    </message>
    <message>
        <source>Any of these? Call now: %1</source>
        <translation>¿Notas algo de esto? Llama ya: %1</translation>
    </message>
    <message>
        <source>Any of these? Call for help now. Ask your instructor for the number.</source>
        <translation>¿Notas algo de esto? Llama ya a emergencias. Pide el número a tu instructor.</translation>
    </message>
    <message>
        <source>Say that you have been diving. Do not wait.</source>
        <translation>Di que has buceado. No esperes.</translation>
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
        <translation>Oídos</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>¡Para!</translation>
    </message>
    <message>
        <source>Go up</source>
        <translation>Sube</translation>
    </message>
    <message>
        <source>Go down</source>
        <translation>Baja</translation>
    </message>
    <message>
        <source>No air</source>
        <translation>Sin aire</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Mira</translation>
    </message>
    <message>
        <source>Come here</source>
        <translation>Ven aquí</translation>
    </message>
    <message>
        <source>Stay close</source>
        <translation>Quédate cerca</translation>
    </message>
    <message>
        <source>Hold hands</source>
        <translation>De la mano</translation>
    </message>
    <message>
        <source>This deep</source>
        <translation>Esta profundidad</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>Despacio</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>Frío</translation>
    </message>
    <message>
        <source>How much air?</source>
        <translation>¿Cuánto aire?</translation>
    </message>
    <message>
        <source>OK, at the top</source>
        <translation>Superficie: OK</translation>
    </message>
    <message>
        <source>Help, at the top</source>
        <translation>Superficie: ayuda</translation>
    </message>
    <message>
        <source>All is well. Is all well with you?</source>
        <translation>Todo bien. ¿Y tú?</translation>
    </message>
    <message>
        <source>Something is wrong.</source>
        <translation>Algo va mal.</translation>
    </message>
    <message>
        <source>My ears hurt, or do not clear.</source>
        <translation>Me duelen los oídos o siguen tapados.</translation>
    </message>
    <message>
        <source>Stop and stay where you are.</source>
        <translation>Para y quédate donde estás.</translation>
    </message>
    <message>
        <source>Go up: the dive is over. It never means “good”.</source>
        <translation>Sube: la inmersión ha terminado. Nunca significa «bien».</translation>
    </message>
    <message>
        <source>Go down.</source>
        <translation>Baja.</translation>
    </message>
    <message>
        <source>I am low on air.</source>
        <translation>Me queda poco aire.</translation>
    </message>
    <message>
        <source>I have no air. Give me yours now.</source>
        <translation>No tengo aire. Dame del tuyo ya.</translation>
    </message>
    <message>
        <source>Let me breathe from your spare mouthpiece.</source>
        <translation>Déjame respirar de tu regulador de reserva.</translation>
    </message>
    <message>
        <source>Look, over there.</source>
        <translation>Mira, allí.</translation>
    </message>
    <message>
        <source>Come to me.</source>
        <translation>Ven hacia mí.</translation>
    </message>
    <message>
        <source>Stay close together.</source>
        <translation>Sigamos muy cerca.</translation>
    </message>
    <message>
        <source>Let us hold hands.</source>
        <translation>Vamos de la mano.</translation>
    </message>
    <message>
        <source>Stay at this depth.</source>
        <translation>Quédate a esta profundidad.</translation>
    </message>
    <message>
        <source>Slow down.</source>
        <translation>Más despacio.</translation>
    </message>
    <message>
        <source>I am cold.</source>
        <translation>Tengo frío.</translation>
    </message>
    <message>
        <source>All is well. Made at the surface.</source>
        <translation>Todo bien. Se hace en la superficie.</translation>
    </message>
    <message>
        <source>Help me. Made at the surface.</source>
        <translation>Ayúdame. Se hace en la superficie.</translation>
    </message>
    <message>
        <source>Thumb and first finger make a ring.</source>
        <translation>El pulgar y el índice forman un anillo.</translation>
    </message>
    <message>
        <source>Rock a flat hand, then point at what is wrong.</source>
        <translation>Balancea la mano plana, luego señala el problema.</translation>
    </message>
    <message>
        <source>Point at your ear.</source>
        <translation>Señálate el oído.</translation>
    </message>
    <message>
        <source>Hold up a flat hand.</source>
        <translation>Levanta la mano plana.</translation>
    </message>
    <message>
        <source>Fist with the thumb up, moving up.</source>
        <translation>Puño con el pulgar arriba, subiendo.</translation>
    </message>
    <message>
        <source>Fist with the thumb down, moving down.</source>
        <translation>Puño con el pulgar abajo, bajando.</translation>
    </message>
    <message>
        <source>Hold a fist at your chest.</source>
        <translation>Pon el puño en el pecho.</translation>
    </message>
    <message>
        <source>Cut across your throat with a flat hand.</source>
        <translation>Pasa la mano plana ante el cuello, como cortando.</translation>
    </message>
    <message>
        <source>Move your fingers to your mouth and away.</source>
        <translation>Acerca los dedos a la boca y aléjalos.</translation>
    </message>
    <message>
        <source>Two fingers from your eyes to the thing.</source>
        <translation>Dos dedos, de tus ojos a lo que hay que ver.</translation>
    </message>
    <message>
        <source>Wave your hand towards you.</source>
        <translation>Mueve la mano hacia ti.</translation>
    </message>
    <message>
        <source>Put two first fingers side by side.</source>
        <translation>Pon los dos índices uno junto al otro.</translation>
    </message>
    <message>
        <source>Clasp your hands.</source>
        <translation>Agárrate las manos.</translation>
    </message>
    <message>
        <source>Slide a flat hand from side to side.</source>
        <translation>Mueve la mano plana de lado a lado.</translation>
    </message>
    <message>
        <source>Press a flat hand down, twice.</source>
        <translation>Baja la mano plana dos veces.</translation>
    </message>
    <message>
        <source>Cross your arms and rub them.</source>
        <translation>Cruza los brazos y frótalos.</translation>
    </message>
    <message>
        <source>Lay two fingers on your palm.</source>
        <translation>Pon dos dedos sobre la palma.</translation>
    </message>
    <message>
        <source>Make a big ring over your head with both arms.</source>
        <translation>Forma un gran círculo sobre la cabeza con ambos brazos.</translation>
    </message>
    <message>
        <source>Wave one straight arm over your head, slowly.</source>
        <translation>Agita despacio un brazo estirado sobre la cabeza.</translation>
    </message>
</context>
</TS>
