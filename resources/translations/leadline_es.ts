<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>BackgroundJob</name>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Deteniendo…</translation>
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
        <translation>%1 Se sigue adelante porque: %2</translation>
    </message>
    <message>
        <source>%1 Goes ahead because: %2 (%3)</source>
        <translation>%1 Se sigue adelante porque: %2 (%3)</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>sin preguntar</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>signals known</comment>
        <translation>%1 de %2</translation>
    </message>
    <message numerus="yes">
        <source>%n years</source>
        <translation>
            <numerusform>%n año</numerusform>
            <numerusform>%n años</numerusform>
        </translation>
    </message>
    <message>
        <source>age not known</source>
        <translation>edad desconocida</translation>
    </message>
    <message>
        <source>health clear</source>
        <translation>salud sin reparos</translation>
    </message>
    <message>
        <source>health: %1, %2</source>
        <comment>before the day, today</comment>
        <translation>salud: %1, %2</translation>
    </message>
    <message>
        <source>signals %1</source>
        <translation>señales %1</translation>
    </message>
    <message>
        <source>Signals not yet known: %1.</source>
        <translation>Señales aún no conocidas: %1.</translation>
    </message>
    <message>
        <source>&gt;%1</source>
        <comment>more minutes than</comment>
        <translation>&gt;%1</translation>
    </message>
    <message>
        <source>Instructor: %1 at least, to bring one guest up.</source>
        <translation>Instructor: al menos %1, para subir a un cliente.</translation>
    </message>
    <message>
        <source>In %1, up by %2 (%3): the air ends it before the plan does.</source>
        <translation>Entrada %1, arriba a más tardar %2 (%3): el aire la termina antes que el plan.</translation>
    </message>
    <message>
        <source>In %1, back by %2 (%3).</source>
        <translation>Entrada %1, de vuelta a más tardar %2 (%3).</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>role, name</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 · meet %2 · in the water %3</source>
        <translation>%1 · encuentro %2 · en el agua %3</translation>
    </message>
    <message>
        <source>In an emergency call</source>
        <translation>En una emergencia, llame a</translation>
    </message>
    <message>
        <source>not entered: write it here</source>
        <translation>no consta: escríbalo aquí</translation>
    </message>
    <message>
        <source>No emergency plan is entered: write it here (oxygen, phone, chamber, way out)</source>
        <translation>No hay ningún plan de emergencia: escríbalo aquí (oxígeno, teléfono, cámara, salida)</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>what to know, kit</source>
        <translation>qué saber, equipo</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>of low</source>
        <translation>de aire</translation>
    </message>
    <message>
        <source>Signal at</source>
        <translation>Señal a</translation>
    </message>
    <message>
        <source>Turn at</source>
        <translation>Regreso</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Mín.</translation>
    </message>
    <message>
        <source>Lasts</source>
        <translation>Dura</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>RMV</source>
        <translation>VMR</translation>
    </message>
    <message>
        <source>Nobody is in this group yet.</source>
        <translation>Todavía nadie en este grupo.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>guest, flag</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Signals of need</source>
        <translation>Señales de auxilio</translation>
    </message>
    <message>
        <source>Heads, air, log</source>
        <translation>Personas, aire, bitácora</translation>
    </message>
    <message>
        <source>write %1, %2</source>
        <translation>en %1, %2</translation>
    </message>
    <message>
        <source>In</source>
        <translation>Entra</translation>
    </message>
    <message>
        <source>2 tick</source>
        <translation>2 marcan</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation>Máxima</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Sale</translation>
    </message>
    <message>
        <source>Heads in</source>
        <translation>Entran</translation>
    </message>
    <message>
        <source>Heads out</source>
        <translation>Salen</translation>
    </message>
    <message>
        <source>of %1</source>
        <comment>heads of the whole group</comment>
        <translation>de %1</translation>
    </message>
    <message>
        <source>at</source>
        <comment>a time of day</comment>
        <translation>a</translation>
    </message>
    <message>
        <source>by</source>
        <comment>who counted</comment>
        <translation>por</translation>
    </message>
    <message>
        <source>Open.</source>
        <translation>Abierto.</translation>
    </message>
    <message>
        <source>Decided.</source>
        <translation>Decidido.</translation>
    </message>
    <message>
        <source>No stop and no caution of the group is open.</source>
        <translation>No queda abierto ningún alto ni ninguna precaución del grupo.</translation>
    </message>
    <message>
        <source>over %1 min</source>
        <translation>más de %1 min</translation>
    </message>
    <message>
        <source>Somebody is low on air after about %2 (in 10 of 100 dives before %3), most likely first: %1.</source>
        <translation>Alguien tiene poco aire tras unos %2 (en 10 de 100 inmersiones antes de %3); lo más probable, primero: %1.</translation>
    </message>
    <message>
        <source>The table gives each guest’s own forecast; in brackets: sooner in 10 of 100 dives.</source>
        <translation>La tabla da la previsión propia de cada cliente; entre paréntesis: antes en 10 de 100 inmersiones.</translation>
    </message>
    <message>
        <source>No forecast: the table gives the planned minutes. About half of all dives are low on air sooner.</source>
        <translation>Sin previsión: la tabla da los minutos planificados. En cerca de la mitad de las inmersiones queda poco aire antes.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n more under “Open”.</source>
        <comment>severity, flags of a guest</comment>
        <translation>
            <numerusform>%1: %n más en «Abierto».</numerusform>
            <numerusform>%1: %n más en «Abierto».</numerusform>
        </translation>
    </message>
    <message>
        <source>Photo</source>
        <comment>room for one, in the table of guests</comment>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Low after</source>
        <translation>Poco tras</translation>
    </message>
    <message>
        <source>min (early)</source>
        <comment>column of a table</comment>
        <translation>min (pronto)</translation>
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
        <translation>El plan completo está en la página %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n more on page %1.</source>
        <comment>findings, flags of guests and decisions</comment>
        <translation>
            <numerusform>%n más en la página %1.</numerusform>
            <numerusform>%n más en la página %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Kit.</source>
        <translation>Equipo.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>guest, kit</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Continued: what to know</source>
        <translation>Continuación: lo que hay que saber</translation>
    </message>
</context>
<context>
    <name>Bookings</name>
    <message>
        <source>Not used</source>
        <translation>No se usa</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>First name</source>
        <translation>Nombre de pila</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Apellidos</translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation>Fecha de nacimiento</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Edad</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Estatura</translation>
    </message>
    <message>
        <source>Shoe size</source>
        <translation>Talla de calzado</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation>Correo</translation>
    </message>
    <message>
        <source>Dives before</source>
        <translation>Inmersiones previas</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>day, month, year (31/12/1990)</source>
        <translation>día, mes, año (31/12/1990)</translation>
    </message>
    <message>
        <source>month, day, year (12/31/1990)</source>
        <translation>mes, día, año (12/31/1990)</translation>
    </message>
    <message>
        <source>year, month, day (1990/12/31)</source>
        <translation>año, mes, día (1990/12/31)</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>kilogramos</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>libras</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>centímetros</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>metros</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pulgadas</translation>
    </message>
    <message>
        <source>feet and inches (5&apos;9&quot;)</source>
        <translation>pies y pulgadas (5&apos;9&quot;)</translation>
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
        <translation>No hay nombre. Elija la columna de los nombres o desmarque la fila.</translation>
    </message>
    <message>
        <source>%1 characters; at most %2 can be kept. Shorten it in the list.</source>
        <translation>%1 caracteres; se pueden guardar %2 como máximo. Acórtelo en la lista.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date in this order. Check it, or choose the order of dates above.</source>
        <translation>«%1» no es una fecha en este orden. Compruébela o elija arriba el orden de las fechas.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is after the session on %2. Check the year.</source>
        <translation>«%1» es posterior a la sesión del %2. Compruebe el año.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a weight. Wanted: a number, with kg or lb behind it if you like.</source>
        <translation>«%1» no es un peso. Se espera un número, si quiere con kg o lb detrás.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a height. Wanted: 175, 1.75 m or 5&apos;9&quot;.</source>
        <translation>«%1» no es una estatura. Se espera: 175, 1,75 m o 5&apos;9&quot;.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is outside 15 to 250 kg. Check the number and the unit above.</source>
        <translation>«%1» está fuera de 15 a 250 kg. Compruebe el número y la unidad de arriba.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is outside 80 to 250 cm. Check the number and the unit above.</source>
        <translation>«%1» está fuera de 80 a 250 cm. Compruebe el número y la unidad de arriba.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read in more than one way. Answer the question above.</source>
        <translation>«%1» se puede leer de varias maneras. Conteste a la pregunta de arriba.</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: the year was taken for %2. Check it with the guest.</source>
        <translation>«%1»: se tomó el año por %2. Compruébelo con el cliente.</translation>
    </message>
    <message>
        <source>%1 years old on the day. Check the birth date.</source>
        <translation>%1 años ese día. Compruebe la fecha de nacimiento.</translation>
    </message>
    <message>
        <source>Age %1 goes into the note. Ask for the birth date: without it the rules on age cannot be checked.</source>
        <translation>La edad, %1, pasa a la nota. Pida la fecha de nacimiento: sin ella no se pueden comprobar las reglas de edad.</translation>
    </message>
    <message>
        <source>The list says %1 years, the birth date %2. One of them is wrong; ask the guest.</source>
        <translation>La lista dice %1 años; la fecha de nacimiento, %2. Una de las dos está mal; pregunte al cliente.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an age. Left out.</source>
        <translation>«%1» no es una edad. Se omite.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no language known here. English is put; choose another in the Roster.</source>
        <translation>«%1» no es un idioma conocido aquí. Se pone inglés; elija otro en Clientes.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no European shoe size (20 to 55). Left empty.</source>
        <translation>«%1» no es una talla de calzado europea (20 a 55). Se deja vacía.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number of dives. Left empty.</source>
        <translation>«%1» no es un número de inmersiones. Se deja vacío.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not look like an e-mail address. Taken over as it is.</source>
        <translation>«%1» no parece una dirección de correo. Se toma tal cual.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not look like a phone number. Taken over as it is.</source>
        <translation>«%1» no parece un número de teléfono. Se toma tal cual.</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: some letters could not be read. Correct them in the Roster.</source>
        <translation>«%1»: algunas letras no se pudieron leer. Corríjalas en Clientes.</translation>
    </message>
    <message>
        <source>Same phone or e-mail as %1 in the roster: family, perhaps.</source>
        <translation>El mismo teléfono o correo que %1 en Clientes: quizá sean familia.</translation>
    </message>
    <message>
        <source>Same phone or e-mail as %1 in row %2: family, perhaps.</source>
        <translation>El mismo teléfono o correo que %1 en la fila %2: quizá sean familia.</translation>
    </message>
    <message>
        <source>Same as %1 in the roster</source>
        <translation>La misma persona que %1 en Clientes</translation>
    </message>
    <message>
        <source>Same as %1 in row %2</source>
        <translation>La misma persona que %1 en la fila %2</translation>
    </message>
</context>
<context>
    <name>CardLanguage</name>
    <message>
        <source>language not entered</source>
        <translation>idioma sin indicar</translation>
    </message>
    <message>
        <source>Language not entered: the card is in English</source>
        <translation>Idioma sin indicar: la tarjeta está en inglés</translation>
    </message>
    <message>
        <source>No %1 yet: the card is in English</source>
        <translation>Aún sin %1: la tarjeta está en inglés</translation>
    </message>
    <message>
        <source>%1: a draft, not checked by a speaker</source>
        <translation>Borrador en %1, sin revisar por un hablante</translation>
    </message>
    <message>
        <source>%1: checked by a speaker</source>
        <translation>Revisado en %1 por un hablante</translation>
    </message>
    <message>
        <source>%1: checked by %2</source>
        <translation>Revisado en %1 por %2</translation>
    </message>
    <message>
        <source>%1 (draft)</source>
        <comment>a language</comment>
        <translation>%1 (borrador)</translation>
    </message>
    <message>
        <source>English, no %1 yet</source>
        <comment>a language</comment>
        <translation>inglés, aún sin %1</translation>
    </message>
    <message>
        <source>%1, no %2 yet</source>
        <comment>two languages</comment>
        <translation>%1, aún sin %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>two languages</comment>
        <translation>%1 + %2</translation>
    </message>
    <message>
        <source>Cards in %1: drafted, not checked by a speaker.</source>
        <translation>Tarjetas en %1: borrador, sin revisar por un hablante.</translation>
    </message>
    <message>
        <source>No cards in %1: in English instead.</source>
        <translation>No hay tarjetas en %1: van en inglés.</translation>
    </message>
</context>
<context>
    <name>Commands</name>
    <message>
        <source>No card for %1: a stop stands. &quot;leadline plan&quot; says which.</source>
        <translation>Sin tarjeta para %1: hay un alto. «leadline plan» dice cuál.</translation>
    </message>
    <message>
        <source>No cards were written.</source>
        <translation>No se escribió ninguna tarjeta.</translation>
    </message>
    <message>
        <source>Cards: %1. Pages: %2. Written to %3</source>
        <translation>Tarjetas: %1. Páginas: %2. Escritas en %3</translation>
    </message>
    <message>
        <source>No display was found: showing the plan here and writing the cards.</source>
        <translation>No se encontró pantalla: el plan se muestra aquí y las tarjetas se escriben.</translation>
    </message>
    <message>
        <source>%1 cannot be made.</source>
        <translation>No se puede crear %1.</translation>
    </message>
    <message>
        <source>%1 cannot be written.</source>
        <translation>No se puede escribir %1.</translation>
    </message>
    <message>
        <source>No font here has the letters %1 of &quot;%2&quot;: write them by hand, or install a font that has them.</source>
        <translation>Ninguna fuente de aquí tiene los caracteres %1 de «%2»: escríbalos a mano o instale una fuente que los tenga.</translation>
    </message>
    <message>
        <source>The card of %1 lacks the second language: there is none in %2.</source>
        <translation>A la tarjeta de %1 le falta el segundo idioma: no la hay en %2.</translation>
    </message>
    <message>
        <source>The card of %1 is in English: there is none in %2.</source>
        <translation>La tarjeta de %1 está en inglés: no la hay en %2.</translation>
    </message>
    <message>
        <source>--kind is one of %1.</source>
        <translation>--kind es uno de: %1.</translation>
    </message>
    <message>
        <source>Nothing was written: there is no group. Make one on the Roster.</source>
        <translation>No se ha escrito nada: no hay ningún grupo. Cree uno en la pestaña Clientes.</translation>
    </message>
    <message>
        <source>Pages: %1. Written to %2</source>
        <translation>Páginas: %1. Escritas en %2</translation>
    </message>
    <message>
        <source>Cut on a card for want of room: &quot;%1&quot;. Shorten it.</source>
        <translation>Cortado en una tarjeta por falta de sitio: «%1». Acórtelo.</translation>
    </message>
    <message numerus="yes">
        <source>%n cards have no room for all their words: read them before you hand them out.</source>
        <translation>
            <numerusform>%n tarjeta no tiene sitio para todas sus palabras: léala antes de entregarla.</numerusform>
            <numerusform>%n tarjetas no tienen sitio para todas sus palabras: léalas antes de entregarlas.</numerusform>
        </translation>
    </message>
    <message>
        <source>--size is one of %1.</source>
        <translation>--size es uno de %1.</translation>
    </message>
    <message>
        <source>--guest-language is one or two of %1, with a comma between.</source>
        <translation>--guest-language es uno o dos de %1, con una coma entre ellos.</translation>
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
        <translation>1 m</translation>
    </message>
    <message>
        <source>less than a second</source>
        <translation>menos de un segundo</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1 mmHg</source>
        <translation>%1 mmHg</translation>
    </message>
    <message>
        <source>Clear before %1: this dive is shallower than one step. The tube locks after %2 without clearing.</source>
        <translation>Compense antes de %1: esta inmersión es menos profunda que un paso. Sin compensar, la trompa de Eustaquio se bloquea a partir de %2.</translation>
    </message>
    <message>
        <source>once on the way down</source>
        <translation>una vez al bajar</translation>
    </message>
    <message>
        <source>%1 times on the way down, every %2 at the planned speed</source>
        <translation>%1 veces al bajar, cada %2 a la velocidad prevista</translation>
    </message>
    <message>
        <source>Clear at least every %1: %2. The tube locks after %3 without clearing.</source>
        <translation>Compense al menos cada %1: %2. Sin compensar, la trompa de Eustaquio se bloquea a partir de %3.</translation>
    </message>
    <message>
        <source>Largest step for half of that: %1. The step of the rules is longer.</source>
        <translation>Paso máximo para la mitad de eso: %1. El paso de las reglas es mayor.</translation>
    </message>
    <message>
        <source>Largest step for half of that: %1.</source>
        <translation>Paso máximo para la mitad de eso: %1.</translation>
    </message>
    <message>
        <source>Pain is the limit, not a figure: stop, go up %1, clear, go on. Never force. Ears that will not clear end the dive; ears that still hurt afterwards need a physician.</source>
        <translation>El límite es el dolor, no una cifra: pare, suba %1, compense y siga. Nunca fuerce. Si los oídos no compensan, la inmersión termina; si siguen doliendo después, hace falta un médico.</translation>
    </message>
    <message>
        <source>People were hurt from %1.</source>
        <translation>Ha habido personas heridas desde %1.</translation>
    </message>
    <message>
        <source>On so shallow a dive the surface comes before the published limit, which is no promise. %1</source>
        <translation>En una inmersión tan poco profunda, la superficie llega antes que el límite publicado; eso no garantiza nada. %1</translation>
    </message>
    <message>
        <source>From anywhere on this dive, about %1 of ascent with held breath and full lungs can tear a lung. %2</source>
        <translation>Desde cualquier punto de esta inmersión, unos %1 de ascenso con la respiración contenida y los pulmones llenos pueden desgarrar un pulmón. %2</translation>
    </message>
    <message>
        <source>Breathe all the time, most of all on the way up. Pain in the chest, trouble breathing or anything odd after a dive: oxygen, the emergency line, a physician.</source>
        <translation>Respire siempre, sobre todo al subir. Dolor en el pecho, dificultad para respirar o cualquier cosa rara después de bucear: oxígeno, teléfono de emergencias, médico.</translation>
    </message>
</context>
<context>
    <name>EmergencySheet</name>
    <message>
        <source>In an emergency: the plan goes on</source>
        <translation>En una emergencia: continúa el plan</translation>
    </message>
    <message>
        <source>In an emergency call</source>
        <translation>En una emergencia, llame a</translation>
    </message>
    <message>
        <source>not entered: write it here</source>
        <translation>no consta: escríbalo aquí</translation>
    </message>
    <message>
        <source>Where to come to</source>
        <translation>Adónde venir</translation>
    </message>
    <message>
        <source>Where to come to:</source>
        <translation>Adónde venir:</translation>
    </message>
    <message>
        <source>Site without a name</source>
        <translation>Lugar sin nombre</translation>
    </message>
    <message>
        <source>The water lies %1 above sea level: tell the physician.</source>
        <translation>El agua está a %1 sobre el nivel del mar: dígaselo al médico.</translation>
    </message>
    <message>
        <source>The water lies %1 below sea level: tell the physician.</source>
        <translation>El agua está a %1 bajo el nivel del mar: dígaselo al médico.</translation>
    </message>
    <message>
        <source>Guests are taken to %1; the bottom lies at %2.</source>
        <translation>Se lleva a los clientes hasta %1; el fondo está a %2.</translation>
    </message>
    <message>
        <source>Guests are taken to %1.</source>
        <translation>Se lleva a los clientes hasta %1.</translation>
    </message>
    <message>
        <source>Oxygen is at</source>
        <translation>El oxígeno está en</translation>
    </message>
    <message>
        <source>First aid kit is at</source>
        <translation>El botiquín está en</translation>
    </message>
    <message>
        <source>Phone or radio</source>
        <translation>Teléfono o radio</translation>
    </message>
    <message>
        <source>Nearest chamber, how far</source>
        <translation>Cámara más cercana, a qué distancia</translation>
    </message>
    <message>
        <source>Way out for the ambulance</source>
        <translation>Salida para la ambulancia</translation>
    </message>
    <message>
        <source>Who gives first aid</source>
        <translation>Quién da primeros auxilios</translation>
    </message>
    <message>
        <source>Position for rescuers</source>
        <translation>Posición para los rescatadores</translation>
    </message>
    <message>
        <source>Who gives first aid today</source>
        <translation>Quién da hoy primeros auxilios</translation>
    </message>
    <message>
        <source>Local rules, the centre&apos;s own plan and the rescue service come first. Put right by hand what has changed.</source>
        <translation>Las normas locales, el plan propio del centro y el servicio de rescate van primero. Corrija a mano lo que haya cambiado.</translation>
    </message>
</context>
<context>
    <name>Errors</name>
    <message>
        <source>%1 cannot be read (%2). Check the name and the permissions.</source>
        <translation>No se puede leer %1 (%2). Compruebe el nombre y los permisos.</translation>
    </message>
    <message>
        <source>%1 cannot be written (%2). Choose another folder or free some space.</source>
        <translation>No se puede escribir %1 (%2). Elija otra carpeta o libere espacio.</translation>
    </message>
    <message>
        <source>%1 is too large (%2 bytes; at most %3). Choose another file.</source>
        <translation>%1 es demasiado grande (%2 bytes; %3 como máximo). Elija otro archivo.</translation>
    </message>
    <message>
        <source>Not valid JSON at %1: %2. Correct the text there.</source>
        <translation>JSON no válido en %1: %2. Corrija allí el texto.</translation>
    </message>
    <message>
        <source>Nested too deep at %1 (at most %2 levels). This is not a session file.</source>
        <translation>Demasiados niveles anidados en %1 (%2 como máximo). No es un archivo de sesión.</translation>
    </message>
    <message>
        <source>The file has version %1; this program reads up to %2. Update Leadline.</source>
        <translation>El archivo tiene la versión %1; este programa lee hasta la %2. Actualice Leadline.</translation>
    </message>
    <message>
        <source>%1 %2 was not found. It may have been removed meanwhile.</source>
        <translation>No se encontró: %1 %2. Puede que se haya eliminado entretanto.</translation>
    </message>
    <message>
        <source>The records in %1 cannot be used (%2). Check the disk and the permissions, or choose another file with --database.</source>
        <translation>No se pueden usar los registros de %1 (%2). Compruebe el disco y los permisos o elija otro archivo con --database.</translation>
    </message>
    <message>
        <source>The records in %1 were written by a newer Leadline (schema %2; this one knows %3). Update Leadline; nothing was changed.</source>
        <translation>Los registros de %1 los escribió un Leadline más nuevo (esquema %2; este conoce el %3). Actualice Leadline; no se cambió nada.</translation>
    </message>
    <message>
        <source>The records in %1 are in use by another program. Close it and try again.</source>
        <translation>Otro programa está usando los registros de %1. Ciérrelo e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The list has %1 rows; at most %2 can be read. Split it.</source>
        <translation>La lista tiene %1 filas; se pueden leer %2 como máximo. Divídala.</translation>
    </message>
    <message>
        <source>The list has %1 columns; at most %2 can be read. Take out those that are not needed.</source>
        <translation>La lista tiene %1 columnas; se pueden leer %2 como máximo. Quite las que no hagan falta.</translation>
    </message>
    <message>
        <source>A quotation mark is opened in %1 of the list and never closed. Close it, or save the list anew as CSV.</source>
        <translation>Una comilla se abre en %1 de la lista y no se cierra. Ciérrela o guarde la lista de nuevo como CSV.</translation>
    </message>
    <message>
        <source>There are no rows to be read. Save the list as CSV (comma-separated values) and choose that file.</source>
        <translation>No hay filas que leer. Guarde la lista como CSV (valores separados por comas) y elija ese archivo.</translation>
    </message>
    <message>
        <source>%1 is damaged or holds no records (%2). Put back a copy: Records, Copies of the records. The damaged file is kept.</source>
        <translation>%1 está dañado o no contiene registros (%2). Restaure una copia: Registros, Copias de los registros. El archivo dañado se conserva.</translation>
    </message>
    <message>
        <source>The records file %1 is not there, or another one took its place. Bring the folder or disk back and try again; until then nothing can be saved.</source>
        <translation>El archivo de registros %1 no está, u otro ocupó su lugar. Recupere la carpeta o el disco e inténtelo de nuevo; hasta entonces no se puede guardar nada.</translation>
    </message>
    <message>
        <source>The records in %1 may not be written (%2). Change the permissions of the file and its folder, then try again.</source>
        <translation>No se permite escribir en los registros de %1 (%2). Cambie los permisos del archivo y de su carpeta e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>There is no room on the disk for %1 (%2). Free some space and try again; what was saved before stands.</source>
        <translation>No hay sitio en el disco para %1 (%2). Libere espacio e inténtelo de nuevo; lo guardado antes se mantiene.</translation>
    </message>
    <message>
        <source>%1 holds no records of Leadline (%2). Choose another file; nothing was changed.</source>
        <translation>%1 no contiene registros de Leadline (%2). Elija otro archivo; no se cambió nada.</translation>
    </message>
    <message>
        <source>Stopped; nothing was changed (%1).</source>
        <translation>Detenido; no se cambió nada (%1).</translation>
    </message>
    <message>
        <source>%1: %2 is not %3. Correct it.</source>
        <translation>%1: %2 no es %3. Corríjalo.</translation>
    </message>
    <message>
        <source>%1: there is no field &quot;%2&quot;. Remove it or use one of: %3.</source>
        <translation>%1: no existe el campo «%2». Quítelo o use uno de estos: %3.</translation>
    </message>
    <message>
        <source>%1: the field &quot;%2&quot; is missing. Add it.</source>
        <translation>%1: falta el campo «%2». Añádalo.</translation>
    </message>
    <message>
        <source>%1: %2 is outside %3. Enter a value in that range.</source>
        <translation>%1: %2 está fuera de %3. Escriba un valor dentro de ese margen.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a choice. Use one of: %3.</source>
        <translation>%1: «%2» no es una opción. Use una de estas: %3.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; does not fit. Wanted: %3.</source>
        <translation>%1: «%2» no encaja. Se espera: %3.</translation>
    </message>
    <message>
        <source>%1: has %2 entries, wanted %3.</source>
        <translation>%1: tiene %2 entradas; se esperan %3.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a date. Write it as 2026-07-31.</source>
        <translation>%1: «%2» no es una fecha. Escríbala así: 2026-07-31.</translation>
    </message>
    <message>
        <source>%1: born on %2, after the session on %3. Correct the date.</source>
        <translation>%1: nacimiento el %2, después de la sesión del %3. Corrija la fecha.</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is there twice. Give each its own.</source>
        <translation>%1: «%2» está dos veces. Dé a cada uno el suyo.</translation>
    </message>
    <message>
        <source>%1: nothing is called &quot;%2&quot;. Correct the name or add what it names.</source>
        <translation>%1: nada se llama «%2». Corrija el nombre o añada lo que nombra.</translation>
    </message>
    <message>
        <source>%1: %2 bar is over the working pressure of %3 bar. Read the gauge again; never use an overfilled cylinder.</source>
        <translation>%1: %2 bar supera la presión de trabajo de %3 bar. Lea otra vez el manómetro; no use nunca una botella sobrecargada.</translation>
    </message>
    <message>
        <source>%1: %2 min is not later than the point before (%3 min). Times must grow.</source>
        <translation>%1: %2 min no es posterior al punto anterior (%3 min). Los tiempos deben ir en aumento.</translation>
    </message>
    <message>
        <source>%1: starts at %2, while another lasts until %3. Correct the times.</source>
        <translation>%1: empieza a las %2, mientras otra dura hasta las %3. Corrija las horas.</translation>
    </message>
    <message>
        <source>%1: ends at %2, before it starts at %3. Correct the times.</source>
        <translation>%1: termina a las %2, antes de empezar a las %3. Corrija las horas.</translation>
    </message>
    <message>
        <source>%1: %2 m; the dive must start and end at the surface (0 m).</source>
        <translation>%1: %2 m; la inmersión debe empezar y terminar en la superficie (0 m).</translation>
    </message>
    <message>
        <source>%1: the log is of %2; here it is %3. Open this session&apos;s own log, or enter it by hand.</source>
        <translation>%1: la bitácora es de %2; aquí es %3. Abra la bitácora de esta sesión o introdúzcala a mano.</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>nadie</translation>
    </message>
    <message>
        <source>%1: %2 bar is more than the %3 bar at the start. Read the gauge again.</source>
        <translation>%1: %2 bar es más que los %3 bar del principio. Lea otra vez el manómetro.</translation>
    </message>
    <message>
        <source>The health vault is not set up yet. Set it up in the menu Health vault.</source>
        <translation>La caja fuerte de salud aún no está preparada. Prepárela en el menú Caja fuerte.</translation>
    </message>
    <message>
        <source>These records have a health vault already. Unlock it instead.</source>
        <translation>Estos registros ya tienen una caja fuerte de salud. Ábrala.</translation>
    </message>
    <message>
        <source>The health vault is locked. Unlock it first.</source>
        <translation>La caja fuerte de salud está cerrada. Ábrala primero.</translation>
    </message>
    <message>
        <source>The key in this computer&apos;s keyring does not open the vault. Use another way.</source>
        <translation>La clave del llavero de este ordenador no abre la caja fuerte. Use otra vía.</translation>
    </message>
    <message>
        <source>This recovery key does not open the vault. Perhaps a newer one was made.</source>
        <translation>Esta clave de recuperación no abre la caja fuerte. Quizá se creó otra más nueva.</translation>
    </message>
    <message>
        <source>This passphrase does not open the vault.</source>
        <translation>Esta frase de paso no abre la caja fuerte.</translation>
    </message>
    <message>
        <source>After wrong tries the vault waits. Try again in %1 s.</source>
        <translation>Tras intentos fallidos, la caja fuerte espera. Inténtelo de nuevo en %1 s.</translation>
    </message>
    <message>
        <source>This is the last way into the vault. Add another one first.</source>
        <translation>Es la última vía para abrir la caja fuerte. Añada otra primero.</translation>
    </message>
    <message>
        <source>The passphrase has %1 characters; it needs %2. A few words in a row are easy to keep.</source>
        <translation>La frase de paso tiene %1 caracteres; necesita %2. Unas cuantas palabras seguidas se recuerdan bien.</translation>
    </message>
    <message>
        <source>This is no recovery key: a sign is missing or mistyped. Compare it with the paper.</source>
        <translation>Esto no es una clave de recuperación: falta un signo o hay uno mal escrito. Compárela con el papel.</translation>
    </message>
    <message>
        <source>%1 %2 cannot be opened: it is damaged, or was changed outside Leadline. Nothing was removed. Take a backup, and ask the guest again.</source>
        <translation>No se puede abrir %1 %2: está dañado o se cambió fuera de Leadline. No se eliminó nada. Recurra a una copia y pregunte otra vez al cliente.</translation>
    </message>
    <message>
        <source>Not enough memory to check the passphrase (%1 needed). Close other programs and try again.</source>
        <translation>No hay memoria suficiente para comprobar la frase de paso (hacen falta %1). Cierre otros programas e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>This computer&apos;s keyring does not answer (%1). Use the passphrase or the recovery key.</source>
        <translation>El llavero de este ordenador no responde (%1). Use la frase de paso o la clave de recuperación.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>characters</source>
        <translation>caracteres</translation>
    </message>
    <message>
        <source>bytes</source>
        <translation>bytes</translation>
    </message>
</context>
<context>
    <name>Findings</name>
    <message>
        <source>for one instructor</source>
        <translation>con un solo instructor</translation>
    </message>
    <message>
        <source>even with an assistant</source>
        <translation>incluso con un asistente</translation>
    </message>
    <message>
        <source>in this visibility</source>
        <translation>con esta visibilidad</translation>
    </message>
    <message>
        <source>in this current</source>
        <translation>con esta corriente</translation>
    </message>
    <message>
        <source>in these waves</source>
        <translation>con estas olas</translation>
    </message>
    <message>
        <source>with a child in the group</source>
        <translation>con un menor en el grupo</translation>
    </message>
    <message>
        <source>when a guest shares no language with the staff</source>
        <translation>cuando un cliente no comparte idioma con el personal</translation>
    </message>
    <message>
        <source>with a nervous guest in the group</source>
        <translation>con un cliente nervioso en el grupo</translation>
    </message>
    <message>
        <source>Planned to %1, deeper than the %2 allowed.</source>
        <translation>Previsto a %1, a más profundidad que los %2 permitidos.</translation>
    </message>
    <message>
        <source>Plan no deeper than %1.</source>
        <translation>No planifique a más de %1.</translation>
    </message>
    <message>
        <source>Planned to %1; %2 is usual for a first dive.</source>
        <translation>Previsto a %1; lo habitual en una primera inmersión son %2.</translation>
    </message>
    <message>
        <source>Stay shallower unless the site asks for it.</source>
        <translation>Quédese a menos profundidad, salvo que el lugar lo exija.</translation>
    </message>
    <message>
        <source>The bottom lies at %1; no more than %2 is wanted below first-time guests.</source>
        <translation>El fondo está a %1; bajo clientes sin experiencia no debería haber más de %2.</translation>
    </message>
    <message>
        <source>Choose a shallower spot, or keep guests over a slope or a line.</source>
        <translation>Elija un punto menos profundo o mantenga a los clientes sobre una pendiente o junto a un cabo.</translation>
    </message>
    <message>
        <source>The water has %1, colder than the %2 wanted.</source>
        <translation>El agua está a %1, más fría que los %2 que se piden.</translation>
    </message>
    <message>
        <source>Choose warmer water, a shorter dive or warmer suits.</source>
        <translation>Elija agua más cálida, una inmersión más corta o trajes más cálidos.</translation>
    </message>
    <message>
        <source>Planned for %1; at most %2 while the water is below %3.</source>
        <translation>Previsto para %1; como máximo %2 con el agua por debajo de %3.</translation>
    </message>
    <message>
        <source>Shorten the dive to %1.</source>
        <translation>Acorte la inmersión a %1.</translation>
    </message>
    <message>
        <source>Visibility is %1; at least %2 is wanted.</source>
        <translation>La visibilidad es de %1; se piden al menos %2.</translation>
    </message>
    <message>
        <source>Take fewer guests within arm&apos;s reach, or do not dive.</source>
        <translation>Lleve menos clientes al alcance de la mano o suspenda la inmersión.</translation>
    </message>
    <message>
        <source>There is more current than first-time guests should meet.</source>
        <translation>Hay más corriente de la que deben encontrar clientes sin experiencia.</translation>
    </message>
    <message>
        <source>Wait for slack water or choose a sheltered spot.</source>
        <translation>Espere a la estoa o elija un lugar abrigado.</translation>
    </message>
    <message>
        <source>Waves reach %1; at most %2 is wanted.</source>
        <translation>Las olas llegan a %1; se admiten como máximo %2.</translation>
    </message>
    <message>
        <source>Choose a sheltered entry or do not dive.</source>
        <translation>Elija una entrada abrigada o suspenda la inmersión.</translation>
    </message>
    <message>
        <source>Goes up at %1, faster than the %2 allowed.</source>
        <translation>Sube a %1, más rápido que los %2 permitidos.</translation>
    </message>
    <message>
        <source>Give the way up more time.</source>
        <translation>Dé más tiempo a la subida.</translation>
    </message>
    <message>
        <source>Goes down at %1, faster than the %2 wanted.</source>
        <translation>Baja a %1, más rápido que los %2 que se admiten.</translation>
    </message>
    <message>
        <source>Give the way down more time: ears need it.</source>
        <translation>Dé más tiempo a la bajada: los oídos lo necesitan.</translation>
    </message>
    <message>
        <source>Clearing every %1 is too seldom: the tube to the ear can lock after %2.</source>
        <translation>Compensar cada %1 es demasiado poco: la trompa de Eustaquio puede bloquearse a partir de %2.</translation>
    </message>
    <message>
        <source>Clear in smaller steps.</source>
        <translation>Compense en pasos más pequeños.</translation>
    </message>
    <message>
        <source>No rules are chosen, so no limit of depth, age or ratio is checked.</source>
        <translation>No hay reglas elegidas, así que no se comprueba ningún límite de profundidad, edad ni proporción.</translation>
    </message>
    <message>
        <source>Tick the rules that apply on the Site tab.</source>
        <translation>En la pestaña Lugar, marque las reglas que se aplican.</translation>
    </message>
    <message>
        <source>No emergency number is entered for the site.</source>
        <translation>No hay ningún número de emergencia para el lugar.</translation>
    </message>
    <message>
        <source>Enter the number to call; it is printed on every card.</source>
        <translation>Escriba el número al que llamar; se imprime en cada tarjeta.</translation>
    </message>
    <message>
        <source>Is %1; the least age is %2.</source>
        <translation>Tiene %1 años; la edad mínima es %2.</translation>
    </message>
    <message>
        <source>Offer something else: no dive before %1.</source>
        <translation>Ofrezca otra cosa: nada de bucear antes de los %1.</translation>
    </message>
    <message>
        <source>The birth date is missing, so no age limit can be checked.</source>
        <translation>Falta la fecha de nacimiento, así que no se puede comprobar ningún límite de edad.</translation>
    </message>
    <message>
        <source>Enter the birth date.</source>
        <translation>Introduzca la fecha de nacimiento.</translation>
    </message>
    <message>
        <source>Is %1 and no guardian&apos;s consent is on record.</source>
        <translation>Tiene %1 años y no consta el consentimiento de un representante legal.</translation>
    </message>
    <message>
        <source>Get a guardian&apos;s signed consent and tick it.</source>
        <translation>Consiga el consentimiento firmado de un representante legal y márquelo.</translation>
    </message>
    <message>
        <source>Is in no group.</source>
        <translation>No está en ningún grupo.</translation>
    </message>
    <message>
        <source>Put the guest into a group.</source>
        <translation>Ponga al cliente en un grupo.</translation>
    </message>
    <message>
        <source>Reads %1, which nobody leading the group speaks.</source>
        <translation>Lee %1, idioma que no habla nadie de quienes llevan el grupo.</translation>
    </message>
    <message>
        <source>Swap groups, find a translator, or brief with pictures and a small group.</source>
        <translation>Cambie los grupos, busque a alguien que traduzca o explique con imágenes y en un grupo pequeño.</translation>
    </message>
    <message>
        <source>Has no cylinder.</source>
        <translation>No tiene botella.</translation>
    </message>
    <message>
        <source>Hand one out and enter its pressure.</source>
        <translation>Entregue una y anote su presión.</translation>
    </message>
    <message>
        <source>Still missing: %1.</source>
        <translation>Todavía falta: %1.</translation>
    </message>
    <message>
        <source>Fit it and enter the size or number.</source>
        <translation>Ajústelo y anote la talla o el número.</translation>
    </message>
    <message>
        <source>Leads a group and has no cylinder entered.</source>
        <translation>Lleva un grupo y no tiene ninguna botella anotada.</translation>
    </message>
    <message>
        <source>Enter it, so that the air for bringing a guest up can be checked.</source>
        <translation>Anótela, para poder comprobar el aire con el que subir a un cliente.</translation>
    </message>
    <message>
        <source>The health questions are still open.</source>
        <translation>Las preguntas de salud siguen sin contestar.</translation>
    </message>
    <message>
        <source>Go through them with the guest, or take the centre&apos;s own form.</source>
        <translation>Repáselas con el cliente o use el formulario propio del centro.</translation>
    </message>
    <message>
        <source>The health questions call for a physician.</source>
        <translation>Las preguntas de salud exigen un médico.</translation>
    </message>
    <message>
        <source>Ask the guest for a physician&apos;s written release to dive, and tick it when you have read it.</source>
        <translation>Pida al cliente una autorización médica escrita para bucear y márquela cuando la haya leído.</translation>
    </message>
    <message>
        <source>Does not dive, by the health questions.</source>
        <translation>No bucea, según las preguntas de salud.</translation>
    </message>
    <message>
        <source>Tell the guest in private, and offer something else. No release changes this.</source>
        <translation>Dígaselo al cliente en privado y ofrézcale otra cosa. Ninguna autorización cambia esto.</translation>
    </message>
    <message>
        <source>Not today, by the questions of the day.</source>
        <translation>Hoy no, según las preguntas del día.</translation>
    </message>
    <message>
        <source>Tell the guest in private, and offer another day.</source>
        <translation>Dígaselo al cliente en privado y ofrézcale otro día.</translation>
    </message>
    <message>
        <source>Dives with care, by the questions of the day.</source>
        <translation>Bucea con precaución, según las preguntas del día.</translation>
    </message>
    <message>
        <source>Talk it over with the guest, see that all were asked, and when in doubt do not dive today.</source>
        <translation>Háblelo con el cliente, asegúrese de que se hicieron todas las preguntas y, ante la duda, que no bucee hoy.</translation>
    </message>
    <message>
        <source>Today&apos;s questions are still open.</source>
        <translation>Las preguntas de hoy siguen sin contestar.</translation>
    </message>
    <message>
        <source>Ask them before kitting up.</source>
        <translation>Hágalas antes de equiparse.</translation>
    </message>
    <message>
        <source>The day of the health check is not on record.</source>
        <translation>No consta el día del control de salud.</translation>
    </message>
    <message>
        <source>Go through the questions again with the guest.</source>
        <translation>Repase otra vez las preguntas con el cliente.</translation>
    </message>
    <message>
        <source>The health check of %1 counts for %2 months and is out of date.</source>
        <translation>El control de salud del %1 vale %2 meses y ha caducado.</translation>
    </message>
    <message>
        <source>The health check or the physician&apos;s release has the date %1, after the session.</source>
        <translation>El control de salud o la autorización médica tiene la fecha %1, posterior a la sesión.</translation>
    </message>
    <message>
        <source>Correct the date, or go through the questions again.</source>
        <translation>Corrija la fecha o repase otra vez las preguntas.</translation>
    </message>
    <message>
        <source>The day of the physician&apos;s release is not on record.</source>
        <translation>No consta el día de la autorización médica.</translation>
    </message>
    <message>
        <source>Read the release and enter its date; without one nobody can tell whether it still counts.</source>
        <translation>Lea la autorización y anote su fecha; sin ella nadie puede saber si sigue valiendo.</translation>
    </message>
    <message>
        <source>The physician&apos;s release of %1 is out of date.</source>
        <translation>La autorización médica del %1 ha caducado.</translation>
    </message>
    <message>
        <source>Ask the guest for a new one.</source>
        <translation>Pida al cliente una nueva.</translation>
    </message>
    <message>
        <source>The physician&apos;s release of %1 is older than the health check.</source>
        <translation>La autorización médica del %1 es anterior al control de salud.</translation>
    </message>
    <message>
        <source>Make sure that the physician knew what the guest answered since; else ask for a new one.</source>
        <translation>Asegúrese de que el médico conocía lo que el cliente contestó después; si no, pida una nueva.</translation>
    </message>
    <message>
        <source>Nobody has signed the health check.</source>
        <translation>Nadie ha firmado el control de salud.</translation>
    </message>
    <message>
        <source>Have the guest sign, and for a minor a guardian too.</source>
        <translation>Haga firmar al cliente y, si es menor, también a un representante legal.</translation>
    </message>
    <message>
        <source>It is not on record which questions were asked.</source>
        <translation>No consta qué preguntas se hicieron.</translation>
    </message>
    <message>
        <source>The questions were those of an earlier edition (%1).</source>
        <translation>Las preguntas eran de una edición anterior (%1).</translation>
    </message>
    <message>
        <source>At the next check the present ones are asked.</source>
        <translation>En el próximo control se harán las actuales.</translation>
    </message>
    <message>
        <source>%1 places used, %2 allowed %3.</source>
        <translation>%1 plazas ocupadas, %2 permitidas %3.</translation>
    </message>
    <message>
        <source>Move guests to another group, add an instructor, or dive in turns.</source>
        <translation>Pase clientes a otro grupo, añada un instructor o haga turnos para bucear.</translation>
    </message>
    <message>
        <source>Is counted on in %1 groups at once.</source>
        <translation>Se cuenta con esta persona en %1 grupos a la vez.</translation>
    </message>
    <message>
        <source>Give each group staff of its own, or let the groups dive one after the other in sessions of their own.</source>
        <translation>Dé a cada grupo su propio personal o haga que los grupos buceen uno tras otro en sesiones propias.</translation>
    </message>
    <message>
        <source>Has no instructor.</source>
        <translation>No tiene instructor.</translation>
    </message>
    <message>
        <source>Name an instructor for the group.</source>
        <translation>Nombre un instructor para el grupo.</translation>
    </message>
    <message>
        <source>Has no guests.</source>
        <translation>No tiene clientes.</translation>
    </message>
    <message>
        <source>Add guests or remove it.</source>
        <translation>Añada clientes o elimínelo.</translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>Aún no hay clientes.</translation>
    </message>
    <message>
        <source>Add the first one on the Roster tab.</source>
        <translation>Añada el primero en la pestaña Clientes.</translation>
    </message>
    <message>
        <source>Would surface with %1; %2 must be left. The reserve is reached after %3.</source>
        <translation>Saldría con %1; deben quedar %2. La reserva se alcanza después de %3.</translation>
    </message>
    <message>
        <source>Shorten the dive, go shallower, or give a bigger or fuller cylinder.</source>
        <translation>Acorte la inmersión, vaya a menos profundidad o dé una botella mayor o más llena.</translation>
    </message>
    <message>
        <source>Bringing two up from the deepest point takes %1, more than the reserve of %2.</source>
        <translation>Subir a dos desde el punto más profundo requiere %1, más que la reserva de %2.</translation>
    </message>
    <message>
        <source>Have the guest signal at the higher pressure; the card says so.</source>
        <translation>Haga que el cliente avise con la presión más alta; la tarjeta lo dice.</translation>
    </message>
    <message>
        <source>All last the planned dive in only %1 of 100 such dives.</source>
        <translation>A todos les dura el aire toda la inmersión prevista solo en %1 de 100 inmersiones así.</translation>
    </message>
    <message>
        <source>See what would buy more minutes on the Gas tab, or plan a shorter dive.</source>
        <translation>Mire en la pestaña Gas qué daría más minutos o planifique una inmersión más corta.</translation>
    </message>
    <message>
        <source>If a guest&apos;s air fails, this cylinder brings both up in only %1 of 100 cases.</source>
        <translation>Si a un cliente le falla el aire, esta botella sube a los dos solo en %1 de 100 casos.</translation>
    </message>
    <message>
        <source>Take a bigger or fuller cylinder, or stay less deep.</source>
        <translation>Tome una botella mayor o más llena o quédese a menos profundidad.</translation>
    </message>
    <message>
        <source>Is planned to have %1 at the ascent; bringing a guest up takes %2.</source>
        <translation>Según el plan tiene %1 al empezar el ascenso; subir a un cliente requiere %2.</translation>
    </message>
    <message>
        <source>Take a bigger or fuller cylinder, or shorten the dive.</source>
        <translation>Tome una botella mayor o más llena o acorte la inmersión.</translation>
    </message>
    <message>
        <source>Would make dive number %1 today; at most %2 are wanted.</source>
        <translation>Haría hoy la inmersión número %1; se admiten como máximo %2.</translation>
    </message>
    <message>
        <source>Have somebody else lead this group, or dive on another day.</source>
        <translation>Que otra persona lleve este grupo, o deje la inmersión para otro día.</translation>
    </message>
    <message>
        <source>Would come up %1 times today; at most %2 are wanted.</source>
        <translation>Subiría hoy %1 veces; se admiten como máximo %2.</translation>
    </message>
    <message>
        <source>Plan fewer training ascents, or share them with others.</source>
        <translation>Planifique menos ascensos de práctica o repártalos con otros.</translation>
    </message>
    <message>
        <source>Dives on day %1 in a row; at most %2 are wanted.</source>
        <translation>Bucearía %1 días seguidos; se admiten como máximo %2.</translation>
    </message>
    <message>
        <source>Plan a day without diving.</source>
        <translation>Planifique un día sin bucear.</translation>
    </message>
    <message>
        <source>Would be in the water for %1 with %2 left before a stop is needed: could not go straight up with a guest.</source>
        <translation>Estaría en el agua %1 y le quedarían %2 hasta necesitar una parada: no podría subir directamente con un cliente.</translation>
    </message>
    <message>
        <source>Dive shallower or shorter, wait longer, or have somebody else lead.</source>
        <translation>Bucee a menos profundidad o menos tiempo, espere más o que lleve el grupo otra persona.</translation>
    </message>
    <message>
        <source>May be cold after %1; %2 are planned.</source>
        <translation>Puede tener frío después de %1; están previstos %2.</translation>
    </message>
    <message>
        <source>Give a warmer suit or shorten the dive. Shivering ends it at once.</source>
        <translation>Dé un traje más cálido o acorte la inmersión. Si alguien tirita, la inmersión termina de inmediato.</translation>
    </message>
    <message>
        <source>With %1 of lead may be heavier at depth than the %2 the BCD is likely to lift.</source>
        <translation>Con %1 de plomo, en el fondo puede pesar más que los %2 que probablemente sostiene el chaleco.</translation>
    </message>
    <message>
        <source>Take off lead, or give a BCD with more lift.</source>
        <translation>Quite plomo o dé un chaleco con más empuje.</translation>
    </message>
    <message>
        <source>With %1 of lead is likely to float up near the end, with little air left; %2 to %3 is expected.</source>
        <translation>Con %1 de plomo es probable que flote hacia arriba cerca del final, con poco aire en la botella; se esperan de %2 a %3.</translation>
    </message>
    <message>
        <source>Check at the surface, and take spare lead along.</source>
        <translation>Compruébelo en la superficie y lleve plomo de repuesto.</translation>
    </message>
    <message>
        <source>Carries %1 of lead; %2 to %3 is expected.</source>
        <translation>Lleva %1 de plomo; se esperan de %2 a %3.</translation>
    </message>
    <message>
        <source>Check at the surface before going down.</source>
        <translation>Compruébelo en la superficie antes de bajar.</translation>
    </message>
    <message>
        <source>Went to %1; %2 was planned.</source>
        <translation>Bajó a %1; estaban previstos %2.</translation>
    </message>
    <message>
        <source>Talk it over and hold the depth next time.</source>
        <translation>Coméntelo y mantenga la profundidad la próxima vez.</translation>
    </message>
    <message>
        <source>Went to %1, deeper than the %2 allowed.</source>
        <translation>Bajó a %1, a más profundidad que los %2 permitidos.</translation>
    </message>
    <message>
        <source>Report it as the centre asks, and ask how the guest feels.</source>
        <translation>Comuníquelo como pide el centro y pregunte al cliente cómo se siente.</translation>
    </message>
    <message>
        <source>Came back with %1; %2 should have been left.</source>
        <translation>Volvió con %1; deberían haber quedado %2.</translation>
    </message>
    <message>
        <source>Use the guest&apos;s own breathing rate for the next plan.</source>
        <translation>Use el consumo propio del cliente para el próximo plan.</translation>
    </message>
    <message>
        <source>Was in the water for %1; %2 was planned.</source>
        <translation>Estuvo en el agua %1; estaban previstos %2.</translation>
    </message>
    <message>
        <source>Check the air and the cold for the longer time.</source>
        <translation>Compruebe el aire y el frío para el tiempo más largo.</translation>
    </message>
    <message>
        <source>Has no entry in the log.</source>
        <translation>No tiene entrada en la bitácora.</translation>
    </message>
    <message>
        <source>Enter the pressures and the time.</source>
        <translation>Anote las presiones y el tiempo.</translation>
    </message>
    <message>
        <source>%1 went in, %2 counted back.</source>
        <translation>Entraron %1, se contaron %2 de vuelta.</translation>
    </message>
    <message>
        <source>Count again, two people, by name. Nobody leaves before it agrees.</source>
        <translation>Cuenten otra vez, dos personas, por nombre. Nadie se va antes de que cuadre.</translation>
    </message>
    <message>
        <source>Group %1</source>
        <translation>Grupo %1</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Sesión</translation>
    </message>
</context>
<context>
    <name>GasTab</name>
    <message>
        <source>First of %1, likely %2</source>
        <translation>Primero de %1, prob. %2</translation>
    </message>
    <message>
        <source>First, likely %1</source>
        <translation>Primero, prob. %1</translation>
    </message>
    <message>
        <source>the instructor</source>
        <translation>el instructor</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1: no instructor named yet, so nobody to share air with is known.</source>
        <translation>%1: aún no hay instructor, así que no se sabe con quién compartir aire.</translation>
    </message>
    <message>
        <source>%1: no cylinder is known for %2, so sharing it is not reckoned.</source>
        <translation>%1: no se conoce la botella de %2, así que no se calcula compartirla.</translation>
    </message>
    <message>
        <source>%1: if a guest&apos;s air fails at depth, both reach the surface on the cylinder of %2 in %3.</source>
        <translation>%1: si a un cliente le falla el aire en el fondo, los dos llegan a la superficie con la botella de %2 en %3.</translation>
    </message>
    <message>
        <source>within the standard error of the runs</source>
        <translation>dentro del error estándar de las simulaciones</translation>
    </message>
    <message>
        <source>within three standard errors of the runs</source>
        <translation>dentro de tres errores estándar de las simulaciones</translation>
    </message>
    <message>
        <source>further apart than the runs explain: do not rely on it</source>
        <translation>más separadas de lo que explican las simulaciones: no se fíe</translation>
    </message>
    <message>
        <source>%1, all last: %2 of 100 in closed form (first of several lognormals: David and Nagaraja, Order Statistics, 2003, from memory); %3 ± %4 of 100 in %5 runs, %6.</source>
        <translation>%1, a todos les dura el aire: %2 de 100 en forma cerrada (el primero de varias lognormales: David y Nagaraja, Order Statistics, 2003, de memoria); %3 ± %4 de 100 en %5 simulaciones, %6.</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>más de %1</translation>
    </message>
    <message>
        <source>%1 to over %2</source>
        <translation>de %1 a más de %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: nobody in this group yet.</source>
        <translation>%1: todavía nadie en este grupo.</translation>
    </message>
    <message>
        <source>%1: too many guests in one group for a forecast. Form groups of at most 100.</source>
        <translation>%1: demasiados clientes en un grupo para una previsión. Forme grupos de 100 como máximo.</translation>
    </message>
    <message>
        <source>%1: no cylinder is known. Enter cylinder and pressure in the table.</source>
        <translation>%1: no se conoce ninguna botella. Anote la botella y la presión en la tabla.</translation>
    </message>
    <message>
        <source>%1 is likely first at %2, after about %3.</source>
        <translation>Probablemente %1 llega primero a %2, tras unos %3.</translation>
    </message>
    <message>
        <source>%1 is at %2 after about %3.</source>
        <translation>%1 llega a %2 tras unos %3.</translation>
    </message>
    <message>
        <source>%1: the air does not last. %2 All last the planned %3 in %4 dives.</source>
        <translation>%1: el aire no dura. %2 A todos les dura el aire lo previsto, %3, en %4 inmersiones.</translation>
    </message>
    <message>
        <source>All last the planned %1 in %2 dives.</source>
        <translation>A todos les dura el aire lo previsto, %1, en %2 inmersiones.</translation>
    </message>
    <message>
        <source>The air lasts the planned %1 in %2 dives.</source>
        <translation>El aire dura lo previsto, %1, en %2 inmersiones.</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>%1: no instructor named yet.</source>
        <translation>%1: aún no hay instructor.</translation>
    </message>
    <message>
        <source>%1: no cylinder is known for %2, so the air for bringing a guest up is not checked.</source>
        <translation>%1: no se conoce la botella de %2, así que no se comprueba el aire para subir a un cliente.</translation>
    </message>
    <message>
        <source>%1: %2 needs %3 to bring a guest up, and is planned to have %4 at the ascent.</source>
        <translation>%1: %2 necesita %3 para subir a un cliente y según el plan tendrá %4 al empezar el ascenso.</translation>
    </message>
    <message>
        <source>In no group yet: %1. Put them into one on the Roster tab.</source>
        <translation>Aún sin grupo: %1. Póngalos en uno en la pestaña Clientes.</translation>
    </message>
    <message>
        <source>%1: all last the planned dive in %2 dives; in %3 when %4 starts with %5 less; in %6 when somebody&apos;s regulator blows off air for 10 to 60 s.</source>
        <translation>%1: a todos les dura el aire toda la inmersión prevista en %2 inmersiones; en %3 si %4 empieza con %5 menos; en %6 si el regulador de alguien pierde aire en flujo continuo de 10 a 60 s.</translation>
    </message>
    <message>
        <source>How one guest breathes is a spread, not a number: lognormal about the RMV in the table. Where nothing is known, of 100 guests the 10th and the 90th differ by a factor of two; sea and briefing move all of a group together. How wide, and how much is shared: common practice, no source.</source>
        <translation>Cómo respira un cliente es un margen, no un número: lognormal en torno al VMR de la tabla. Cuando no se sabe nada, entre 100 clientes el 10.º y el 90.º difieren en un factor de dos; el mar y el briefing mueven a todo el grupo a la vez. Cuánto varía y cuánto es común: práctica común, sin fuente.</translation>
    </message>
    <message>
        <source>The minutes hold for a group that stays at the depth from which the final ascent starts. In brackets: 10 of 100 such dives are there before the first figure, 10 after the second. Minutes and chances are rounded down.</source>
        <translation>Los minutos valen para un grupo que se queda a la profundidad desde la que empieza el ascenso final. Entre paréntesis: 10 de 100 inmersiones así llegan ahí antes de la primera cifra y 10 después de la segunda. Minutos y probabilidades se redondean hacia abajo.</translation>
    </message>
    <message>
        <source>The same session always gives the same figures: the runs start from one fixed number, %1. They are estimates for planning: in the water the gauge and the guest&apos;s sign decide.</source>
        <translation>La misma sesión da siempre las mismas cifras: las simulaciones parten de un número fijo, %1. Son estimaciones para planificar: en el agua deciden el manómetro y la señal del cliente.</translation>
    </message>
    <message>
        <source>Not changed: %1 is over the working pressure of %2&apos;s cylinder, %3. Read the gauge again; never use an overfilled cylinder.</source>
        <translation>Sin cambios: %1 supera la presión de trabajo de la botella de %2, %3. Lea otra vez el manómetro; no use nunca una botella sobrecargada.</translation>
    </message>
    <message>
        <source>Not changed for %1. %2</source>
        <translation>Sin cambios para %1. %2</translation>
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
        <translation>el núcleo del cuerpo se enfría %1 durante la inmersión prevista</translation>
    </message>
    <message>
        <source>the core does not cool over the planned dive</source>
        <translation>el núcleo del cuerpo no se enfría durante la inmersión prevista</translation>
    </message>
    <message>
        <source>Suit %1 mm: %2 clo at the surface, squeezed to %3 clo at %4. Ten minutes after reaching depth the body loses %5 W; %6.</source>
        <translation>Traje de %1 mm: %2 clo en la superficie, comprimido a %3 clo a %4. Diez minutos después de llegar al fondo el cuerpo pierde %5 W; %6.</translation>
    </message>
    <message>
        <source>with the %1 carried</source>
        <translation>con los %1 que lleva</translation>
    </message>
    <message>
        <source>with the %1 to try first, as none is entered</source>
        <translation>con los %1 para probar, ya que no hay ninguno anotado</translation>
    </message>
    <message>
        <source>no BCD is entered</source>
        <translation>no hay ningún chaleco anotado</translation>
    </message>
    <message>
        <source>the BCD is taken to lift %1</source>
        <translation>se supone que el chaleco sostiene %1</translation>
    </message>
    <message>
        <source>Lead %1; %2, the guest %3 at depth with %4 left; %5.</source>
        <translation>Plomo %1; %2, el cliente %3 en el fondo con %4 en la botella; %5.</translation>
    </message>
    <message>
        <source>sinks %1</source>
        <translation>se hunde con %1</translation>
    </message>
    <message>
        <source>lifts %1</source>
        <translation>flota con %1</translation>
    </message>
    <message>
        <source>%1: empty %2, full %3</source>
        <translation>%1: vacía %2, llena %3</translation>
    </message>
    <message>
        <source>Cylinders in this water, by usual models (from memory; the maker&apos;s figures prevail). %1.</source>
        <translation>Botellas en esta agua, según modelos habituales (de memoria; prevalecen los datos del fabricante). %1.</translation>
    </message>
    <message>
        <source>Too cold: the core is at %1 (ISO 9886:2004, from memory) or the body has lost 3 kcal for each kg of its mass (Webb and others, Proposed thermal limits for divers, 1976, from memory), were the group to stay at the depth from which the final ascent starts. In brackets from a leaner guest who keeps stiller in a suit of poorer fit to a fatter one who moves in one of good fit. Rely on the first, the safe side. Rounded down.</source>
        <translation>Demasiado frío: el núcleo del cuerpo está a %1 (ISO 9886:2004, de memoria) o el cuerpo ha perdido 3 kcal por cada kg de su masa (Webb y otros, Proposed thermal limits for divers, 1976, de memoria), si el grupo se quedara a la profundidad desde la que empieza el ascenso final. Entre paréntesis, desde un cliente más delgado que se mueve menos con un traje peor ajustado hasta uno más grueso que se mueve con uno bien ajustado. Fíese de la primera cifra, el lado seguro. Redondeado hacia abajo.</translation>
    </message>
    <message>
        <source>Feels cold: a net loss of 40 Wh/m² of a standard body (ISO 11079:2007, from memory).</source>
        <translation>Siente frío: una pérdida neta de 40 Wh/m² de un cuerpo estándar (ISO 11079:2007, de memoria).</translation>
    </message>
    <message>
        <source>Warmth is a heat balance of core and shell, in the form of Gagge 1971 (from memory): body surface by DuBois and DuBois 1916, fat by Deurenberg and others 1991, oxygen uptake by Knafelc 1989 and Arieli and others 1997. The suit&apos;s gas cells are squeezed by Boyle&apos;s law and conduct by Maxwell&apos;s relation; 1 clo is 0.155 m²K/W. Shivering, which makes heat, is left out: the safe side. Nobody has measured novices or children on such dives.</source>
        <translation>El calor es un balance térmico de núcleo y capa externa, en la forma de Gagge 1971 (de memoria): superficie corporal según DuBois y DuBois 1916, grasa según Deurenberg y otros 1991, consumo de oxígeno según Knafelc 1989 y Arieli y otros 1997. Las celdas de gas del traje se comprimen según la ley de Boyle y conducen según la relación de Maxwell; 1 clo es 0,155 m²K/W. Se omite el temblor por frío, que produce calor: el lado seguro. Nadie ha medido a principiantes ni a niños en inmersiones así.</translation>
    </message>
    <message>
        <source>Lead by Archimedes, for being neutral at the surface at the end of the dive: cylinder at the reserve, lungs half full, BCD empty, and nothing more for comfort. Density of the body by Siri 1961, lungs by Quanjer and others 1993 (from memory; children: no source), foam of 150 to 250 kg/m³, lead 11 340 kg/m³. Regulator, BCD, fins and mask together pull down %1: common practice, no source. Spreads are added in squares (JCGM 100:2008).</source>
        <translation>Plomo por Arquímedes, para estar neutro en la superficie al final de la inmersión: botella en la reserva, pulmones medio llenos, chaleco vacío y nada más por comodidad. Densidad del cuerpo según Siri 1961, pulmones según Quanjer y otros 1993 (de memoria; niños: sin fuente), espuma de 150 a 250 kg/m³, plomo 11 340 kg/m³. Regulador, chaleco, aletas y máscara juntos tiran hacia abajo %1: práctica común, sin fuente. Los márgenes se suman en cuadrados (JCGM 100:2008).</translation>
    </message>
    <message>
        <source>Try first is the middle in the pieces that are in stock, or in whole kilograms. Too heavy is the greater danger, but a guest too light floats up when the cylinder is nearly empty: at the surface with a full one, a guest should sink by what the air weighs. What the BCD lifts is taken from its size (S %1, M %2, L %3), the lower end of jackets as sold, from memory; the maker&apos;s figure prevails.</source>
        <translation>El plomo para probar es el valor medio, en las piezas que hay en existencias o en kilogramos enteros. Pesar demasiado es el peligro mayor, pero un cliente demasiado ligero flota hacia arriba cuando la botella está casi vacía: en la superficie, con una llena, debería hundirse lo que pesa el aire. Lo que sostiene el chaleco se toma de su talla (S %1, M %2, L %3), el extremo bajo de los chalecos que se venden, de memoria; prevalece el dato del fabricante.</translation>
    </message>
    <message>
        <source>May be too cold before the end</source>
        <translation>Puede pasar demasiado frío antes del final</translation>
    </message>
    <message>
        <source>The BCD may not hold this guest up</source>
        <translation>El chaleco quizá no sostenga a este cliente</translation>
    </message>
    <message>
        <source>May not stay down near the end</source>
        <translation>Quizá no se mantenga abajo cerca del final</translation>
    </message>
    <message>
        <source>Carries more lead than expected</source>
        <translation>Lleva más plomo de lo esperado</translation>
    </message>
    <message>
        <source>Carries less lead than expected</source>
        <translation>Lleva menos plomo de lo esperado</translation>
    </message>
    <message>
        <source>Weight is missing: Roster, Kit</source>
        <translation>Falta el peso: Clientes, Equipo</translation>
    </message>
    <message>
        <source>Height is missing: Roster, Kit</source>
        <translation>Falta la estatura: Clientes, Equipo</translation>
    </message>
    <message>
        <source>Suit in mm is missing: Roster, Kit</source>
        <translation>Falta el traje en mm: Clientes, Equipo</translation>
    </message>
    <message>
        <source>Warmth: outside what the estimate holds for (check weight, height and age)</source>
        <translation>Calor: fuera de lo que abarca la estimación (compruebe peso, estatura y edad)</translation>
    </message>
    <message>
        <source>Cylinder is missing: Roster, Kit</source>
        <translation>Falta la botella: Clientes, Equipo</translation>
    </message>
    <message>
        <source>Lead: outside what the estimate holds for (check weight, height and age)</source>
        <translation>Plomo: fuera de lo que abarca la estimación (compruebe peso, estatura y edad)</translation>
    </message>
    <message>
        <source>BCD is missing, so what it holds up is not checked: Roster, Kit</source>
        <translation>Falta el chaleco, así que no se comprueba lo que sostiene: Clientes, Equipo</translation>
    </message>
    <message>
        <source>Perhaps too cold before the end, too: %1.</source>
        <translation>También pueden pasar demasiado frío antes del final: %1.</translation>
    </message>
    <message>
        <source>likely after %1</source>
        <translation>probablemente después de %1</translation>
    </message>
    <message>
        <source>likely not within %1, in a bad case after %2</source>
        <translation>probablemente no antes de %1, en un mal caso después de %2</translation>
    </message>
    <message>
        <source>Planned: %1.</source>
        <translation>Previsto: %1.</translation>
    </message>
    <message>
        <source>Nobody is likely to get cold within %1. %2</source>
        <translation>Probablemente nadie tiene frío antes de %1. %2</translation>
    </message>
    <message>
        <source>Nobody is likely to get too cold within %1. First to feel cold: %2, after about %3. %4</source>
        <translation>Probablemente nadie pasa demasiado frío antes de %1. Primero en sentir frío: %2, tras unos %3. %4</translation>
    </message>
    <message>
        <source>First to get too cold: %1, %2. %3</source>
        <translation>Primero en pasar demasiado frío: %1, %2. %3</translation>
    </message>
    <message>
        <source>First to get too cold: %1, %2. Likely feels cold from %3 on. %4</source>
        <translation>Primero en pasar demasiado frío: %1, %2. Probablemente siente frío desde %3. %4</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>In no group yet</source>
        <translation>Aún sin grupo</translation>
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
        <translation>%1 – quizá pese demasiado para el chaleco, %2 más: vea la tabla.</translation>
    </message>
    <message>
        <source>May not stay down with a nearly empty cylinder: %1.</source>
        <translation>Quizá no se mantenga abajo con la botella casi vacía: %1.</translation>
    </message>
    <message>
        <source>Lead: as far as there is an estimate, nobody is too heavy for the BCD or too light at the end.</source>
        <translation>Plomo: hasta donde hay estimación, nadie pesa demasiado para el chaleco ni es demasiado ligero al final.</translation>
    </message>
    <message>
        <source>%1 (%2).</source>
        <translation>%1 (%2).</translation>
    </message>
    <message>
        <source>all guests</source>
        <translation>todos los clientes</translation>
    </message>
    <message>
        <source>over %1 (from %2)</source>
        <translation>más de %1 (desde %2)</translation>
    </message>
    <message>
        <source>neutral</source>
        <translation>neutro</translation>
    </message>
    <message>
        <source>floats %1</source>
        <translation>flota con %1</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (de %2 a %3)</translation>
    </message>
    <message>
        <source>%1 (set aside)</source>
        <translation>%1 (desestimado)</translation>
    </message>
    <message>
        <source>%1 Set aside: %2</source>
        <translation>%1 Desestimado: %2</translation>
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
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Nacimiento</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation>Correo</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Estatura</translation>
    </message>
    <message>
        <source>Shoe size (EU)</source>
        <translation>Talla de calzado (EU)</translation>
    </message>
    <message>
        <source>Air use measured</source>
        <translation>Consumo medido</translation>
    </message>
    <message>
        <source>Dives before</source>
        <translation>Inmersiones previas</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>Traje</translation>
    </message>
    <message>
        <source>Jacket</source>
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
        <source>Regulator</source>
        <translation>Regulador</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Plomo</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Botella</translation>
    </message>
    <message>
        <source>Filled to</source>
        <translation>Cargada a</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>Preguntas de salud</translation>
    </message>
    <message>
        <source>Asked on</source>
        <translation>Preguntado el</translation>
    </message>
    <message>
        <source>Edition of the questions</source>
        <translation>Edición de las preguntas</translation>
    </message>
    <message>
        <source>Asked by</source>
        <translation>Preguntado por</translation>
    </message>
    <message>
        <source>Physician&apos;s release seen</source>
        <translation>Autorización médica vista</translation>
    </message>
    <message>
        <source>Date on the release</source>
        <translation>Fecha de la autorización</translation>
    </message>
    <message>
        <source>On the day</source>
        <translation>En el día</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Pressure at the start</source>
        <translation>Presión al empezar</translation>
    </message>
    <message>
        <source>Pressure at the end</source>
        <translation>Presión al terminar</translation>
    </message>
    <message>
        <source>Time in the water</source>
        <translation>Tiempo en el agua</translation>
    </message>
    <message>
        <source>Trouble with ears</source>
        <translation>Problemas de oídos</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Depths</source>
        <translation>Profundidades</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Qué pasó</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Breathing taken as</source>
        <translation>Respiración supuesta</translation>
    </message>
    <message>
        <source>Certified</source>
        <translation>Certificado</translation>
    </message>
    <message>
        <source>Guardian&apos;s consent seen</source>
        <translation>Consentimiento del representante visto</translation>
    </message>
    <message>
        <source>Note of the staff</source>
        <translation>Nota del personal</translation>
    </message>
    <message>
        <source>As known on the day</source>
        <translation>Según lo sabido ese día</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Controles</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Sesión</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Dive at</source>
        <translation>Inmersión a las</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>In the water</source>
        <translation>En el agua</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>Gone ahead despite a finding</source>
        <translation>Se siguió adelante pese a un aviso</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Sealed health records</source>
        <translation>Registros de salud sellados</translation>
    </message>
    <message>
        <source>Records on file: %1. Sealed: open the vault to include them.</source>
        <translation>Registros archivados: %1. Sellados: abra la caja fuerte para incluirlos.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>What is kept of %1</source>
        <translation>Lo que se guarda de %1</translation>
    </message>
    <message>
        <source>Also on record as</source>
        <translation>También registrado como</translation>
    </message>
    <message>
        <source>Written on %1. All that the centre&apos;s records hold of this person: nothing of other guests, nothing of staff but the name of who decided something. Notes on a whole dive are left out, as they may speak of others.</source>
        <translation>Escrito el %1. Todo lo que los registros del centro guardan de esta persona: nada de otros clientes y nada del personal salvo el nombre de quien decidió algo. Se omiten las notas sobre una inmersión entera, porque pueden hablar de otros.</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>No session is on record.</source>
        <translation>No hay ninguna sesión registrada.</translation>
    </message>
</context>
<context>
    <name>GuestGasModel</name>
    <message>
        <source>Guest</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Botella</translation>
    </message>
    <message>
        <source>As read</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Read at</source>
        <translation>Leída a</translation>
    </message>
    <message>
        <source>Breathing</source>
        <translation>Respiración</translation>
    </message>
    <message>
        <source>RMV</source>
        <translation>VMR</translation>
    </message>
    <message>
        <source>Read →
in the water</source>
        <translation>Lectura →
en el agua</translation>
    </message>
    <message>
        <source>At the
end</source>
        <translation>Al
final</translation>
    </message>
    <message>
        <source>Until
reserve</source>
        <translation>Hasta la
reserva</translation>
    </message>
    <message>
        <source>10 to 90
of 100</source>
        <translation>10 a 90
de 100</translation>
    </message>
    <message>
        <source>Ends
the dive</source>
        <translation>Termina la
inmersión</translation>
    </message>
    <message>
        <source>Turn at</source>
        <translation>Regreso a</translation>
    </message>
    <message>
        <source>Leave
bottom at</source>
        <translation>Dejar el
fondo a</translation>
    </message>
    <message>
        <source>Minimum
for two</source>
        <translation>Mínimo
para dos</translation>
    </message>
    <message>
        <source>Signal
at</source>
        <translation>Señal
a</translation>
    </message>
    <message>
        <source>Guests of the group; who is likely first at the reserve in bold.</source>
        <translation>Clientes del grupo; en negrita quien probablemente llega primero a la reserva.</translation>
    </message>
    <message>
        <source>The guest&apos;s group.</source>
        <translation>El grupo del cliente.</translation>
    </message>
    <message>
        <source>Size and working pressure as the trade names them. What is stamped on the cylinder prevails.</source>
        <translation>Capacidad y presión de trabajo como se nombran en el comercio. Prevalece lo grabado en la botella.</translation>
    </message>
    <message>
        <source>Gauge reading when the cylinder was handed out. A gauge may read %1 wrong: 2.5 % of its scale (EN 837-1, from memory), common practice that diving gauges are of this class.</source>
        <translation>Lectura del manómetro al entregar la botella. Un manómetro puede marcar mal en %1: el 2,5&#xa0;% de su escala (EN 837-1, de memoria); que los manómetros de buceo sean de esta clase es práctica común.</translation>
    </message>
    <message>
        <source>Temperature of the air in the cylinder when the gauge was read. Warm air reads high and loses pressure in the water.</source>
        <translation>Temperatura del aire de la botella al leer el manómetro. El aire caliente marca de más y pierde presión en el agua.</translation>
    </message>
    <message>
        <source>How the guest is likely to breathe: calm %1, not known %2, nervous %3, child %4. Common practice, no source; errs to the high side.</source>
        <translation>Cómo respirará probablemente el cliente: tranquilo %1, no se sabe %2, nervioso %3, niño %4. Práctica común, sin fuente; yerra hacia el lado alto.</translation>
    </message>
    <message>
        <source>Respiratory minute volume: air breathed a minute at the pressure around the guest. By class, or measured on an own past dive; empty it to go back to the class.</source>
        <translation>Volumen minuto respiratorio: aire respirado por minuto a la presión que rodea al cliente. Por clase o medido en una inmersión propia anterior; vacíelo para volver a la clase.</translation>
    </message>
    <message>
        <source>What the reading becomes once the cylinder is as cold as the water: no air is lost, but pressure. Air as a real gas: Lemmon and others, J. Phys. Chem. Ref. Data 29 (2000). Rounded down.</source>
        <translation>En qué queda la lectura cuando la botella está tan fría como el agua: no se pierde aire, pero sí presión. Aire como gas real: Lemmon y otros, J. Phys. Chem. Ref. Data 29 (2000). Redondeado hacia abajo.</translation>
    </message>
    <message>
        <source>Left at the end of the planned dive. RMV × pressure around the guest × time, with more for settling, the way down and skills (common practice); errs to the low side.</source>
        <translation>Lo que queda al final de la inmersión prevista. VMR × presión que rodea al cliente × tiempo, con más para calmarse, bajar y los ejercicios (práctica común); yerra hacia el lado bajo.</translation>
    </message>
    <message>
        <source>From the start until the guest is at the reserve in the middle one of all such dives, were the group to stay at the depth from which the final ascent starts. Rounded down.</source>
        <translation>Desde el comienzo hasta que el cliente llega a la reserva en la inmersión media de todas ellas, si el grupo se quedara a la profundidad desde la que empieza el ascenso final. Redondeado hacia abajo.</translation>
    </message>
    <message>
        <source>Minutes until the reserve in the 10th and in the 90th of 100 such dives, fastest first: how much this guest&apos;s breathing may differ from what is planned with (lognormal; its width is common practice, no source). Rounded down.</source>
        <translation>Minutos hasta la reserva en la 10.ª y en la 90.ª de 100 inmersiones así, la más rápida primero: cuánto puede diferir la respiración de este cliente de la prevista (lognormal; su anchura es práctica común, sin fuente). Redondeado hacia abajo.</translation>
    </message>
    <message>
        <source>How many of 100 such dives end because this guest is the first of the group at the reserve. Rounded down.</source>
        <translation>Cuántas de 100 inmersiones así terminan porque este cliente es el primero del grupo en llegar a la reserva. Redondeado hacia abajo.</translation>
    </message>
    <message>
        <source>Half of what the tour may use is gone: go back. Common practice, no source. Rounded up.</source>
        <translation>Se ha gastado la mitad de lo que puede usar el recorrido: regrese. Práctica común, sin fuente. Redondeado hacia arriba.</translation>
    </message>
    <message>
        <source>Start the ascent now to surface with the reserve, and never with less than the minimum for two and the %1 that a gauge may read too high. Rounded up.</source>
        <translation>Empiece ahora el ascenso para salir con la reserva, y nunca con menos que el mínimo para dos y los %1 que un manómetro puede marcar de más. Redondeado hacia arriba.</translation>
    </message>
    <message>
        <source>Enough in this cylinder for guest and instructor, both stressed (%1 and %2, common practice): one minute at the deepest point, then up at the allowed rate, with a margin for the regulator (U.S. Navy Diving Manual, vol. 2, p. 8-3). Rounded up.</source>
        <translation>Suficiente en esta botella para cliente e instructor, ambos alterados (%1 y %2, práctica común): un minuto en el punto más profundo y luego subir a la velocidad permitida, con un margen para el regulador (U.S. Navy Diving Manual, vol. 2, p. 8-3). Redondeado hacia arriba.</translation>
    </message>
    <message>
        <source>What the card says: the reserve, or the minimum for two with the %1 that a gauge may read too high, the greater, rounded well up. At this reading the guest tells the instructor.</source>
        <translation>Lo que dice la tarjeta: la reserva, o el mínimo para dos con los %1 que un manómetro puede marcar de más, lo que sea mayor, bien redondeado hacia arriba. Con esta lectura el cliente avisa al instructor.</translation>
    </message>
</context>
<context>
    <name>GuestNames</name>
    <message>
        <source>Guest removed</source>
        <translation>Cliente eliminado</translation>
    </message>
</context>
<context>
    <name>HealthQuestions</name>
    <message>
        <source>Lungs</source>
        <translation>Pulmones</translation>
    </message>
    <message>
        <source>Do your lungs or your breathing ever give you trouble?</source>
        <translation>¿Le dan alguna vez problemas los pulmones o la respiración?</translation>
    </message>
    <message>
        <source>Do you wheeze, have asthma, or carry an inhaler?</source>
        <translation>¿Tiene pitidos al respirar o asma, o lleva un inhalador?</translation>
    </message>
    <message>
        <source>Has a lung ever collapsed, or has your chest been operated on?</source>
        <translation>¿Se le ha colapsado alguna vez un pulmón o le han operado del pecho?</translation>
    </message>
    <message>
        <source>Have you had pneumonia, or a cough that went on for weeks, in the past year?</source>
        <translation>¿Ha tenido en el último año una neumonía o una tos que duró semanas?</translation>
    </message>
    <message>
        <source>Has a doctor ever found anything else wrong with your lungs?</source>
        <translation>¿Le ha encontrado alguna vez un médico algo más en los pulmones?</translation>
    </message>
    <message>
        <source>Heart and blood</source>
        <translation>Corazón y sangre</translation>
    </message>
    <message>
        <source>Has anything ever been found wrong with your heart, your blood pressure or your blood?</source>
        <translation>¿Le han encontrado alguna vez algo en el corazón, la tensión arterial o la sangre?</translation>
    </message>
    <message>
        <source>Is your blood pressure high, or do you take something to lower it?</source>
        <translation>¿Tiene la tensión alta o toma algo para bajarla?</translation>
    </message>
    <message>
        <source>Have you had a heart attack, pain in the chest on effort, or heart failure?</source>
        <translation>¿Ha tenido un infarto, dolor en el pecho al esforzarse o insuficiencia cardíaca?</translation>
    </message>
    <message>
        <source>Does your heart beat out of step, or do you have a pacemaker or a stent?</source>
        <translation>¿Le late el corazón sin ritmo regular, o lleva un marcapasos o un stent?</translation>
    </message>
    <message>
        <source>Were you born with a fault of the heart, or has a valve or a hole in it been found or mended?</source>
        <translation>¿Nació con un defecto del corazón, o le han encontrado o corregido un problema de válvula o un orificio en él?</translation>
    </message>
    <message>
        <source>Do you bleed or clot too easily, or has your blood been treated?</source>
        <translation>¿Sangra o forma coágulos con demasiada facilidad, o le han tratado la sangre?</translation>
    </message>
    <message>
        <source>Has a doctor found or operated on anything else of your heart, your vessels or your blood?</source>
        <translation>¿Le ha encontrado u operado un médico algo más del corazón, los vasos o la sangre?</translation>
    </message>
    <message>
        <source>From 45 on</source>
        <translation>Desde los 45</translation>
    </message>
    <message>
        <source>Do you smoke or breathe in nicotine in any way?</source>
        <translation>¿Fuma o inhala nicotina de alguna forma?</translation>
    </message>
    <message>
        <source>Have you been told that your cholesterol is high?</source>
        <translation>¿Le han dicho que tiene el colesterol alto?</translation>
    </message>
    <message>
        <source>Did a parent, brother or sister have a heart attack or a stroke before turning 50?</source>
        <translation>¿Tuvo su padre, su madre o un hermano o hermana un infarto o un ictus antes de cumplir los 50?</translation>
    </message>
    <message>
        <source>Has a doctor asked you to lose weight or to be more careful with your heart?</source>
        <translation>¿Le ha pedido un médico que adelgace o que cuide más el corazón?</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>Esfuerzo</translation>
    </message>
    <message>
        <source>Would a brisk walk for a quarter of an hour, or two lengths of a pool, leave you gasping or in pain?</source>
        <translation>¿Caminar deprisa un cuarto de hora, o nadar dos largos de piscina, le dejaría sin aliento o con dolor?</translation>
    </message>
    <message>
        <source>Eyes, ears, sinuses</source>
        <translation>Ojos, oídos, senos paranasales</translation>
    </message>
    <message>
        <source>Have your eyes, ears, nose or sinuses been operated on, or do they keep giving you trouble?</source>
        <translation>¿Le han operado de los ojos, los oídos, la nariz o los senos paranasales, o le dan problemas una y otra vez?</translation>
    </message>
    <message>
        <source>Have your sinuses been operated on in the past half year, or are they often inflamed?</source>
        <translation>¿Le han operado de los senos paranasales en el último medio año, o se le inflaman a menudo?</translation>
    </message>
    <message>
        <source>Has an ear been operated on, or do you hear badly or lose your balance?</source>
        <translation>¿Le han operado de un oído, u oye mal o pierde el equilibrio?</translation>
    </message>
    <message>
        <source>Do your ears hurt or stay blocked in aeroplanes, or has an eardrum been torn?</source>
        <translation>¿Le duelen los oídos o se le quedan tapados en los aviones, o se le ha roto un tímpano?</translation>
    </message>
    <message>
        <source>Has an eye been operated on in the past three months?</source>
        <translation>¿Le han operado de un ojo en los últimos tres meses?</translation>
    </message>
    <message>
        <source>Has a doctor found anything else wrong with your eyes, ears, nose or sinuses?</source>
        <translation>¿Le ha encontrado un médico algo más en los ojos, los oídos, la nariz o los senos paranasales?</translation>
    </message>
    <message>
        <source>Operation</source>
        <translation>Operación</translation>
    </message>
    <message>
        <source>Were you operated on in the past twelve months, or does an older operation still hold you back?</source>
        <translation>¿Le han operado en los últimos doce meses, o le limita todavía una operación anterior?</translation>
    </message>
    <message>
        <source>Head and nerves</source>
        <translation>Cabeza y sistema nervioso</translation>
    </message>
    <message>
        <source>Have you ever passed out, had a fit, hurt your head badly, or had trouble with your nerves?</source>
        <translation>¿Alguna vez ha perdido el conocimiento, ha tenido una convulsión, se ha dado un golpe fuerte en la cabeza o ha tenido problemas del sistema nervioso?</translation>
    </message>
    <message>
        <source>Did a blow to the head knock you out in the past five years?</source>
        <translation>¿Perdió el conocimiento por un golpe en la cabeza en los últimos cinco años?</translation>
    </message>
    <message>
        <source>Have you had a fit or epilepsy, or do you take something against it?</source>
        <translation>¿Ha tenido una convulsión o epilepsia, o toma algo contra ella?</translation>
    </message>
    <message>
        <source>Did you faint or black out in the past five years?</source>
        <translation>¿Se desmayó o perdió el conocimiento en los últimos cinco años?</translation>
    </message>
    <message>
        <source>Do you get headaches that stop you, or take something every day to keep them away?</source>
        <translation>¿Tiene dolores de cabeza que le impiden seguir, o toma algo a diario para evitarlos?</translation>
    </message>
    <message>
        <source>Have you had a stroke, numbness that stayed, or an illness of the nerves?</source>
        <translation>¿Ha tenido un ictus, un entumecimiento que no se fue o una enfermedad del sistema nervioso?</translation>
    </message>
    <message>
        <source>Mind</source>
        <translation>Salud mental</translation>
    </message>
    <message>
        <source>Have you been treated for your mood, for panic, for attention or for an addiction?</source>
        <translation>¿Ha recibido tratamiento por su estado de ánimo, por pánico, por problemas de atención o por una adicción?</translation>
    </message>
    <message>
        <source>Do you get attacks of panic, or are closed spaces or open water hard to bear?</source>
        <translation>¿Tiene ataques de pánico, o le cuesta soportar los espacios cerrados o las aguas abiertas?</translation>
    </message>
    <message>
        <source>Are you in treatment now, or do you take something for your mood or attention?</source>
        <translation>¿Está ahora en tratamiento, o toma algo para el estado de ánimo o la atención?</translation>
    </message>
    <message>
        <source>Have you been in hospital for your mind, or thought of taking your life?</source>
        <translation>¿Ha estado en un hospital por su salud mental, o ha pensado en quitarse la vida?</translation>
    </message>
    <message>
        <source>In the past five years, have alcohol or drugs been a problem for you?</source>
        <translation>En los últimos cinco años, ¿han sido el alcohol o las drogas un problema para usted?</translation>
    </message>
    <message>
        <source>Back, hernia, ulcer, diabetes</source>
        <translation>Espalda, hernia, úlcera, diabetes</translation>
    </message>
    <message>
        <source>Do you have trouble with your back, a hernia, an ulcer or diabetes?</source>
        <translation>¿Tiene problemas de espalda, una hernia, una úlcera o diabetes?</translation>
    </message>
    <message>
        <source>Has your back kept you from what you do every day in the past half year?</source>
        <translation>¿Le ha impedido la espalda hacer lo de cada día en el último medio año?</translation>
    </message>
    <message>
        <source>Has your back or spine been operated on?</source>
        <translation>¿Le han operado de la espalda o de la columna?</translation>
    </message>
    <message>
        <source>Do you have diabetes, or did you have it in pregnancy?</source>
        <translation>¿Tiene diabetes, o la tuvo en un embarazo?</translation>
    </message>
    <message>
        <source>Do you have a hernia that has not been mended and gets in your way?</source>
        <translation>¿Tiene una hernia sin operar que le causa molestias?</translation>
    </message>
    <message>
        <source>Do you have an ulcer, or have you had one treated in the past half year?</source>
        <translation>¿Tiene una úlcera, o le han tratado una en el último medio año?</translation>
    </message>
    <message>
        <source>Stomach and gut</source>
        <translation>Estómago e intestino</translation>
    </message>
    <message>
        <source>Do your stomach or your gut give you trouble?</source>
        <translation>¿Le dan problemas el estómago o el intestino?</translation>
    </message>
    <message>
        <source>Do you have an opening of the gut at the belly, or were you operated on to lose weight?</source>
        <translation>¿Tiene una abertura del intestino en el vientre, o le operaron para adelgazar?</translation>
    </message>
    <message>
        <source>Have you lost much fluid by vomiting or diarrhoea in the past week?</source>
        <translation>¿Ha perdido mucho líquido por vómitos o diarrea en la última semana?</translation>
    </message>
    <message>
        <source>Do you have heartburn or food coming up most weeks?</source>
        <translation>¿Tiene ardor de estómago o le vuelve la comida a la boca casi todas las semanas?</translation>
    </message>
    <message>
        <source>Is your gut inflamed for long times, or does it bleed?</source>
        <translation>¿Tiene el intestino inflamado durante largos periodos, o le sangra?</translation>
    </message>
    <message>
        <source>Medicine</source>
        <translation>Medicamentos</translation>
    </message>
    <message>
        <source>Do you take medicine that a doctor prescribed, other than for birth control or against malaria?</source>
        <translation>¿Toma medicamentos recetados por un médico, aparte de los anticonceptivos o los indicados contra la malaria?</translation>
    </message>
    <message>
        <source>Pregnancy</source>
        <translation>Embarazo</translation>
    </message>
    <message>
        <source>Are you pregnant, might you be, or are you trying to be?</source>
        <translation>¿Está embarazada, podría estarlo o intenta quedarse embarazada?</translation>
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
            <numerusform>%1 en total, para %n cliente</numerusform>
            <numerusform>%1 en total, para %n clientes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sets (%1)</source>
        <translation>
            <numerusform>%n equipo (%1)</numerusform>
            <numerusform>%n equipos (%1)</numerusform>
        </translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>Aún no hay clientes.</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Still missing.</source>
        <translation>Todavía falta.</translation>
    </message>
    <message>
        <source>To pack in all</source>
        <translation>Para llevar en total</translation>
    </message>
    <message>
        <source>All groups</source>
        <translation>Todos los grupos</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>guest: items of kit</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Staff bring their own kit; their cylinders are counted. Check every set before it leaves.</source>
        <translation>El personal trae su propio equipo; sus botellas se incluyen en la cuenta. Compruebe cada equipo antes de que salga.</translation>
    </message>
    <message>
        <source>–: still missing, write it in.</source>
        <translation>–: falta, anótelo.</translation>
    </message>
</context>
<context>
    <name>LanguageMenu</name>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>Kept. The language changes when Leadline is started again.</source>
        <translation>Guardado. El idioma cambia cuando Leadline se inicia de nuevo.</translation>
    </message>
    <message>
        <source>That of the &amp;computer</source>
        <translation>El del &amp;ordenador</translation>
    </message>
    <message>
        <source>%1 (draft)</source>
        <comment>a language nobody has checked</comment>
        <translation>%1 (borrador)</translation>
    </message>
</context>
<context>
    <name>Levers</name>
    <message>
        <source>over 99</source>
        <translation>más de 99</translation>
    </message>
    <message>
        <source>fewer than 1</source>
        <translation>menos de 1</translation>
    </message>
    <message>
        <source>No deeper than %1</source>
        <translation>No pasar de %1</translation>
    </message>
    <message>
        <source>%1 less for skills</source>
        <translation>%1 menos de ejercicios</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 para %2</translation>
    </message>
    <message>
        <source>Suit %1 for %2</source>
        <translation>Traje %1 para %2</translation>
    </message>
    <message>
        <source>%1 and %2 change places</source>
        <translation>%1 y %2 cambian de sitio</translation>
    </message>
    <message>
        <source>Without %1</source>
        <translation>Sin %1</translation>
    </message>
    <message>
        <source>one is free by the stock list</source>
        <translation>hay una libre según las existencias</translation>
    </message>
    <message>
        <source>if one is free</source>
        <translation>si hay una libre</translation>
    </message>
    <message>
        <source>Heavier to carry</source>
        <translation>Pesa más al cargarla</translation>
    </message>
    <message>
        <source>About as heavy</source>
        <translation>Pesa casi igual</translation>
    </message>
    <message>
        <source>%1 more on land</source>
        <translation>%1 más en tierra</translation>
    </message>
    <message>
        <source>%1 less on land</source>
        <translation>%1 menos en tierra</translation>
    </message>
    <message>
        <source>Ask first whether they came together. %1: %2 last the plan.</source>
        <translation>Pregunte primero si vinieron juntos. %1: a todos les dura el aire en %2.</translation>
    </message>
    <message>
        <source>Less to see.</source>
        <translation>Menos que ver.</translation>
    </message>
    <message>
        <source>Less practice; the whole dive is %1 shorter.</source>
        <translation>Menos práctica; toda la inmersión es %1 más corta.</translation>
    </message>
    <message>
        <source>%1; %2. Read its gauge, check the lead.</source>
        <translation>%1; %2. Lea su manómetro, compruebe el plomo.</translation>
    </message>
    <message>
        <source>Needs more lead, check at the surface; %1.</source>
        <translation>Necesita más plomo, compruébelo en la superficie; %1.</translation>
    </message>
    <message>
        <source>Needs another group or another time.</source>
        <translation>Necesita otro grupo u otra hora.</translation>
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
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>over +%1</source>
        <translation>más de +%1</translation>
    </message>
    <message>
        <source>+%1</source>
        <translation>+%1</translation>
    </message>
    <message>
        <source>%1 until the first is at the reserve</source>
        <translation>%1 hasta que el primero llega a la reserva</translation>
    </message>
    <message>
        <source>the first is at the reserve later than %1</source>
        <translation>el primero llega a la reserva después de %1</translation>
    </message>
    <message>
        <source>%1: %2. %3; all last the plan in %4, now %5. %6</source>
        <translation>%1: %2. %3; a todos les dura el aire en %4, ahora en %5. %6</translation>
    </message>
    <message>
        <source>%1 of 100</source>
        <translation>%1 de 100</translation>
    </message>
    <message>
        <source>%1 of 100, as now</source>
        <translation>%1 de 100, como ahora</translation>
    </message>
    <message>
        <source>%1 → %2 of 100</source>
        <translation>%1 → %2 de 100</translation>
    </message>
    <message>
        <source>Group %1</source>
        <translation>Grupo %1</translation>
    </message>
</context>
<context>
    <name>LogEdits</name>
    <message>
        <source>Open a log</source>
        <translation>Abrir una bitácora</translation>
    </message>
    <message>
        <source>Use measured breathing</source>
        <translation>Usar el consumo medido</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>&quot;leadline --help&quot; shows how to call it.</source>
        <translation>«leadline --help» muestra cómo llamarlo.</translation>
    </message>
    <message>
        <source>Session file to open.</source>
        <translation>Archivo de sesión que abrir.</translation>
    </message>
    <message>
        <source>Write JSON; every key names its unit.</source>
        <translation>Escribir JSON; cada clave nombra su unidad.</translation>
    </message>
    <message>
        <source>Feet, psi and degrees Fahrenheit.</source>
        <translation>Pies, psi y grados Fahrenheit.</translation>
    </message>
    <message>
        <source>Records file to use instead of the default.</source>
        <translation>Archivo de registros que usar en vez del habitual.</translation>
    </message>
    <message>
        <source>Write a picture of every tab to a folder and quit.</source>
        <translation>Escribir una imagen de cada pestaña en una carpeta y salir.</translation>
    </message>
    <message>
        <source>Start with the dark look.</source>
        <translation>Empezar con el aspecto oscuro.</translation>
    </message>
    <message>
        <source>One file at a time: &quot;%1&quot; is too much.</source>
        <translation>Un archivo cada vez: «%1» sobra.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; needs a session file.</source>
        <translation>«%1» necesita un archivo de sesión.</translation>
    </message>
    <message>
        <source>No display was found, and no session file was named.</source>
        <translation>No se encontró pantalla y no se indicó ningún archivo de sesión.</translation>
    </message>
    <message>
        <source>Language of the window, for example &quot;en&quot;.</source>
        <translation>Idioma de la ventana, por ejemplo «en».</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no language of the window. There are: %2.</source>
        <translation>«%1» no es un idioma de la ventana. Hay: %2.</translation>
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
        <translation>Planifica una primera sesión de buceo supervisada, imprime una tarjeta para cada cliente y revisa la bitácora.

  leadline [FILE]                        abrir la ventana
  leadline plan FILE [--json]            cifras y avisos
  leadline cards FILE --output OUT.pdf   una tarjeta para cada cliente
  leadline sheet FILE --kind KIND --output OUT.pdf   una hoja para el personal
  leadline review FILE [--json]          lo previsto frente a lo real

Códigos de salida: 0 hecho; 1 hay un alto; 2 entrada incorrecta.
Una ayuda para planificar: la ley local, el instructor y un médico van primero.</translation>
    </message>
    <message>
        <source>Where the cards or the sheet go.</source>
        <translation>Adónde van las tarjetas o la hoja.</translation>
    </message>
    <message>
        <source>Which sheet: beach, skills, kit, emergency or pictures.</source>
        <translation>Qué hoja: beach, skills, kit, emergency o pictures.</translation>
    </message>
    <message>
        <source>Letter paper: cards of a quarter instead of A6.</source>
        <translation>Papel Letter: tarjetas de un cuarto en vez de A6.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; needs --output OUT.pdf.</source>
        <translation>«%1» necesita --output OUT.pdf.</translation>
    </message>
    <message>
        <source>Cards: %1; a name with &quot;paper&quot; has one card on a sheet of that size.</source>
        <translation>Tarjetas: %1; los nombres con «paper» llevan una tarjeta por hoja de ese tamaño.</translation>
    </message>
    <message>
        <source>The page of pictures: one language or two, for example &quot;de,ar&quot;; English if none is given. There are: %1.</source>
        <translation>La página de imágenes: un idioma o dos, por ejemplo «de,ar»; en inglés si no se indica. Hay: %1.</translation>
    </message>
</context>
<context>
    <name>Names</name>
    <message>
        <source>Stop</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Care</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>At the surface</source>
        <translation>En la superficie</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Bajada</translation>
    </message>
    <message>
        <source>Skills</source>
        <translation>Ejercicios</translation>
    </message>
    <message>
        <source>Tour</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Subida</translation>
    </message>
    <message>
        <source>Calm</source>
        <translation>Tranquilo</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>No se sabe</translation>
    </message>
    <message>
        <source>Nervous</source>
        <translation>Nervioso</translation>
    </message>
    <message>
        <source>Child, at ease</source>
        <translation>Niño, a gusto</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguna</translation>
    </message>
    <message>
        <source>Slight</source>
        <translation>Ligera</translation>
    </message>
    <message>
        <source>Moderate</source>
        <translation>Moderada</translation>
    </message>
    <message>
        <source>Strong</source>
        <translation>Fuerte</translation>
    </message>
    <message>
        <source>From the shore</source>
        <translation>Desde la orilla</translation>
    </message>
    <message>
        <source>From a boat</source>
        <translation>Desde un barco</translation>
    </message>
    <message>
        <source>Down steps</source>
        <translation>Por escalones</translation>
    </message>
    <message>
        <source>Instructor</source>
        <translation>Instructor</translation>
    </message>
    <message>
        <source>Assistant</source>
        <translation>Asistente</translation>
    </message>
    <message>
        <source>Steel</source>
        <translation>Acero</translation>
    </message>
    <message>
        <source>Aluminium</source>
        <translation>Aluminio</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>Not answered</source>
        <translation>Sin contestar</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Sin reparos</translation>
    </message>
    <message>
        <source>Physician first</source>
        <translation>Antes, el médico</translation>
    </message>
    <message>
        <source>Does not dive</source>
        <translation>No bucea</translation>
    </message>
    <message>
        <source>read in the source</source>
        <translation>leído en la fuente</translation>
    </message>
    <message>
        <source>from a summary of the source</source>
        <translation>de un resumen de la fuente</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>de memoria</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>own depths</source>
        <translation>profundidades propias</translation>
    </message>
    <message>
        <source>depths of the group</source>
        <translation>profundidades del grupo</translation>
    </message>
    <message>
        <source>planned depths</source>
        <translation>profundidades previstas</translation>
    </message>
    <message>
        <source>Not asked today</source>
        <translation>Hoy no se preguntó</translation>
    </message>
    <message>
        <source>Clear today</source>
        <translation>Hoy, sin reparos</translation>
    </message>
    <message>
        <source>With care today</source>
        <translation>Hoy, con precaución</translation>
    </message>
    <message>
        <source>Not today</source>
        <translation>Hoy no</translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation>Sin firmar</translation>
    </message>
    <message>
        <source>Signed on the screen</source>
        <translation>Firmado en la pantalla</translation>
    </message>
    <message>
        <source>Signed on paper</source>
        <translation>Firmado en papel</translation>
    </message>
    <message>
        <source>by the centre&apos;s own form</source>
        <translation>según el formulario del centro</translation>
    </message>
    <message>
        <source>edition %1</source>
        <translation>edición %1</translation>
    </message>
    <message>
        <source>birth date</source>
        <translation>fecha de nacimiento</translation>
    </message>
    <message>
        <source>guardian&apos;s consent</source>
        <translation>consentimiento del representante</translation>
    </message>
    <message>
        <source>health questions</source>
        <translation>preguntas de salud</translation>
    </message>
    <message>
        <source>physician&apos;s release</source>
        <translation>autorización médica</translation>
    </message>
    <message>
        <source>to be told: does not dive</source>
        <translation>por comunicar: no bucea</translation>
    </message>
    <message>
        <source>health check anew</source>
        <translation>nuevo control de salud</translation>
    </message>
    <message>
        <source>date of the health check</source>
        <translation>fecha del control de salud</translation>
    </message>
    <message>
        <source>physician&apos;s release anew</source>
        <translation>nueva autorización médica</translation>
    </message>
    <message>
        <source>Cold or blocked ears</source>
        <translation>Resfriado u oídos tapados</translation>
    </message>
    <message>
        <source>Alcohol or drugs</source>
        <translation>Alcohol o drogas</translation>
    </message>
    <message>
        <source>New medicine</source>
        <translation>Medicamento nuevo</translation>
    </message>
    <message>
        <source>Flight or mountain</source>
        <translation>Vuelo o montaña</translation>
    </message>
    <message>
        <source>Unwilling or very afraid</source>
        <translation>No quiere o tiene mucho miedo</translation>
    </message>
    <message>
        <source>Cannot swim</source>
        <translation>No sabe nadar</translation>
    </message>
    <message>
        <source>Do you feel ill or unwell today, or have a cold, or ears or a nose that will not clear?</source>
        <translation>¿Se siente hoy enfermo o mal, está resfriado o tiene los oídos o la nariz tapados y no puede compensar?</translation>
    </message>
    <message>
        <source>Have you had alcohol or any drug since last night?</source>
        <translation>¿Ha tomado alcohol o alguna droga desde anoche?</translation>
    </message>
    <message>
        <source>Have you taken any medicine today that you did not tell us about?</source>
        <translation>¿Ha tomado hoy algún medicamento del que no nos ha hablado?</translation>
    </message>
    <message>
        <source>Will you fly or drive over a mountain within the next 24 hours?</source>
        <translation>¿Va a volar o a cruzar una montaña en coche en las próximas 24 horas?</translation>
    </message>
    <message>
        <source>Would you rather not dive, are you very afraid of it, or did somebody talk you into it?</source>
        <translation>¿Preferiría no bucear, le da mucho miedo o alguien le convenció para hacerlo?</translation>
    </message>
    <message>
        <source>Are you unable to swim or float by yourself?</source>
        <translation>¿Es incapaz de nadar o de flotar sin ayuda?</translation>
    </message>
    <message>
        <source>suit</source>
        <translation>traje</translation>
    </message>
    <message>
        <source>BCD</source>
        <translation>chaleco</translation>
    </message>
    <message>
        <source>fins</source>
        <translation>aletas</translation>
    </message>
    <message>
        <source>mask</source>
        <translation>máscara</translation>
    </message>
    <message>
        <source>regulator</source>
        <translation>regulador</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>plomo</translation>
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
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>A file %1 is there already. Replace it?</source>
        <translation>Ya existe un archivo %1. ¿Reemplazarlo?</translation>
    </message>
    <message>
        <source>Replace</source>
        <translation>Reemplazar</translation>
    </message>
    <message>
        <source>Another name…</source>
        <translation>Otro nombre…</translation>
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
        <translation> Como máximo %1 según %2.</translation>
    </message>
    <message>
        <source>Pressure at the surface</source>
        <translation>Presión en la superficie</translation>
    </message>
    <message>
        <source>The barometer reading at the site.</source>
        <translation>La lectura del barómetro en el lugar.</translation>
    </message>
    <message>
        <source>Standard atmosphere at %1 of altitude (ICAO Doc 7488, 1993); weather moves it by up to 5 %. A barometer reading at the site takes its place.</source>
        <translation>Atmósfera estándar a %1 de altitud (ICAO Doc 7488, 1993); la meteorología la hace variar hasta un 5&#xa0;%. Una lectura del barómetro en el lugar la sustituye.</translation>
    </message>
    <message>
        <source>Pressure at %1</source>
        <translation>Presión a %1</translation>
    </message>
    <message>
        <source>Surface pressure + density × gravity × depth (hydrostatics); gravity %1 m/s² by the latitude (WGS 84).</source>
        <translation>Presión en la superficie + densidad × gravedad × profundidad (hidrostática); gravedad %1 m/s² según la latitud (WGS 84).</translation>
    </message>
    <message>
        <source>Density of the water</source>
        <translation>Densidad del agua</translation>
    </message>
    <message>
        <source>From salinity %1 and %2 (equation of state of sea water 1980: Fofonoff and Millard, UNESCO 44, 1983). The coldest water is the densest: the safe side.</source>
        <translation>A partir de la salinidad %1 y de %2 (ecuación de estado del agua de mar 1980: Fofonoff y Millard, UNESCO 44, 1983). El agua más fría es la más densa: el lado seguro.</translation>
    </message>
    <message>
        <source>Clear the ears</source>
        <translation>Compensar los oídos</translation>
    </message>
    <message>
        <source>every %1, every %2</source>
        <translation>cada %1, cada %2</translation>
    </message>
    <message>
        <source>The step of the rules, and the time it takes at the fastest planned descent, %1. Slower is always better.</source>
        <translation>El paso de las reglas y el tiempo que lleva a la bajada prevista más rápida, %1. Más despacio siempre es mejor.</translation>
    </message>
    <message>
        <source>Largest step to clear in</source>
        <translation>Paso máximo para compensar</translation>
    </message>
    <message>
        <source>The water of this step weighs half of the %1 mmHg at which the tube locks, taken where a metre weighs most. Which share to use is common practice.</source>
        <translation>El agua de este paso pesa la mitad de los %1 mmHg a los que se bloquea la trompa de Eustaquio, tomado donde más pesa un metro. Qué parte usar es práctica común.</translation>
    </message>
    <message>
        <source>On the eardrum before clearing</source>
        <translation>Sobre el tímpano antes de compensar</translation>
    </message>
    <message>
        <source>at most %1 mmHg of %2</source>
        <translation>como máximo %1 mmHg de %2</translation>
    </message>
    <message>
        <source>Density × gravity × step. From %1 mmHg on muscles can no longer open the tube to the ear (80 to 90 in the literature; the lower end is the safe side).</source>
        <translation>Densidad × gravedad × paso. Desde %1 mmHg los músculos ya no pueden abrir la trompa de Eustaquio (80 a 90 en la bibliografía; el extremo bajo es el lado seguro).</translation>
    </message>
    <message>
        <source>Never cleared, ears lock at</source>
        <translation>Sin compensar, oídos bloqueados a</translation>
    </message>
    <message>
        <source>The depth whose water weighs %1 mmHg. Then: go up until it opens, never push.</source>
        <translation>La profundidad cuya agua pesa %1 mmHg. Entonces: suba hasta que se abra, nunca fuerce.</translation>
    </message>
    <message>
        <source>A breath held from there grows</source>
        <translation>Una respiración contenida desde allí crece</translation>
    </message>
    <message>
        <source>Pressure at %1 / pressure at the surface (Boyle&apos;s law). The lung cannot follow: never hold the breath.</source>
        <translation>Presión a %1 / presión en la superficie (ley de Boyle). El pulmón no puede seguir: no contenga nunca la respiración.</translation>
    </message>
    <message>
        <source>Breath held: danger after</source>
        <translation>Respiración contenida: peligro tras</translation>
    </message>
    <message>
        <source>%1 of way up</source>
        <translation>%1 de subida</translation>
    </message>
    <message>
        <source>With full lungs: the height of water that weighs %1 mmHg, at which a lung can tear (Schaefer and others, 1958; Malhotra and Wright, 1961; from memory; the lower end of 70 to 80).</source>
        <translation>Con los pulmones llenos: la altura de agua que pesa %1 mmHg, con la que un pulmón puede desgarrarse (Schaefer y otros, 1958; Malhotra y Wright, 1961; de memoria; el extremo bajo de 70 a 80).</translation>
    </message>
    <message>
        <source>Fastest way down</source>
        <translation>Bajada más rápida</translation>
    </message>
    <message>
        <source>Depth / time of the steepest leg down.</source>
        <translation>Profundidad / tiempo del tramo de bajada más empinado.</translation>
    </message>
    <message>
        <source>Fastest way up</source>
        <translation>Subida más rápida</translation>
    </message>
    <message>
        <source>Depth / time of the steepest leg up.</source>
        <translation>Profundidad / tiempo del tramo de subida más empinado.</translation>
    </message>
</context>
<context>
    <name>PlanText</name>
    <message>
        <source>over 240 min</source>
        <translation>más de 240 min</translation>
    </message>
    <message>
        <source>%1: %2 is likely first at %3, after %4 (10 to 90 of 100 dives: %5 to %6). All last the planned dive in %7 dives.</source>
        <translation>%1: %2 probablemente llega primero a %3, después de %4 (10 a 90 de 100 inmersiones: de %5 a %6). A todos les dura el aire toda la inmersión prevista en %7 inmersiones.</translation>
    </message>
    <message>
        <source>    Would help most: %1
</source>
        <translation>    Lo que más ayudaría: %1
</translation>
    </message>
    <message>
        <source>%1: the instructor keeps at least %2.
</source>
        <translation>%1: el instructor conserva al menos %2.
</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Too cold after</source>
        <translation>Demasiado frío tras</translation>
    </message>
    <message>
        <source>from</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>Lead to try first</source>
        <translation>Plomo para probar</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>carried</source>
        <translation>lleva</translation>
    </message>
    <message>
        <source>Staff</source>
        <translation>Personal</translation>
    </message>
    <message>
        <source>Dives today</source>
        <translation>Inmersiones hoy</translation>
    </message>
    <message>
        <source>Times up</source>
        <translation>Subidas</translation>
    </message>
    <message>
        <source>Days in a row</source>
        <translation>Días seguidos</translation>
    </message>
    <message>
        <source>No-stop time left</source>
        <translation>Tiempo sin parada restante</translation>
    </message>
    <message>
        <source>Before flying</source>
        <translation>Antes de volar</translation>
    </message>
    <message>
        <source>over 24 h</source>
        <translation>más de 24 h</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>    Set aside because: %1
</source>
        <translation>    Desestimado porque: %1
</translation>
    </message>
    <message>
        <source>Readiness: %1 stop, %2 care, %3 note, %4 set aside
</source>
        <translation>Estado: altos %1, precauciones %2, notas %3, desestimados %4
</translation>
    </message>
    <message>
        <source>Deepest %1, %2 there (surface %3); planned %4

</source>
        <translation>Punto más profundo %1, allí %2 (superficie %3); previsto %4

</translation>
    </message>
    <message>
        <source>RMV</source>
        <translation>VMR</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Regreso</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Ascenso</translation>
    </message>
    <message>
        <source>Signal</source>
        <translation>Señal</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Reserve after</source>
        <translation>Reserva tras</translation>
    </message>
    <message>
        <source>
Estimates for planning, on the side of more air used. The gauge, the guest&apos;s signal, shivering and the instructor decide. Lead: check at the surface. Staff: the diver&apos;s own computer and a physician prevail.
</source>
        <translation>
Estimaciones para planificar, del lado de más aire gastado. Deciden el manómetro, la señal del cliente, el temblor por frío y el instructor. Plomo: compruébelo en la superficie. Personal: prevalecen el ordenador de buceo propio y un médico.
</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation>Máxima</translation>
    </message>
    <message>
        <source>Planned end</source>
        <translation>Fin previsto</translation>
    </message>
    <message>
        <source>RMV planned</source>
        <translation>VMR previsto</translation>
    </message>
    <message>
        <source>RMV actual</source>
        <translation>VMR real</translation>
    </message>
</context>
<context>
    <name>ProfileRefusal</name>
    <message>
        <source>The dive</source>
        <translation>la inmersión</translation>
    </message>
    <message>
        <source>The start</source>
        <translation>el inicio</translation>
    </message>
    <message>
        <source>Corner %1</source>
        <translation>el punto %1</translation>
    </message>
    <message>
        <source>Not changed: %1 would be at %2 min, not later than the corner before it at %3 min. Times must grow from corner to corner.</source>
        <translation>Sin cambios: %1 quedaría en %2 min, no después del punto anterior, en %3 min. Los tiempos deben aumentar de punto a punto.</translation>
    </message>
    <message>
        <source>Not changed: %1 would be at %2 min; a dive may last %3 min.</source>
        <translation>Sin cambios: %1 quedaría en %2 min; una inmersión puede durar %3 min.</translation>
    </message>
    <message>
        <source>Not changed: %1 would be at %2 m; possible is %3 m.</source>
        <translation>Sin cambios: %1 quedaría a %2 m; se admite %3 m.</translation>
    </message>
    <message>
        <source>Not changed: a dive starts and ends at the surface.</source>
        <translation>Sin cambios: una inmersión empieza y termina en la superficie.</translation>
    </message>
    <message>
        <source>Not changed: a dive has %1 corners with its start.</source>
        <translation>Sin cambios: una inmersión tiene %1 puntos, incluido el del inicio.</translation>
    </message>
    <message>
        <source>Not changed. %1</source>
        <translation>Sin cambios. %1</translation>
    </message>
</context>
<context>
    <name>ProfileView</name>
    <message>
        <source>At most %1</source>
        <translation>Máximo %1</translation>
    </message>
    <message>
        <source>Usual %1</source>
        <translation>Habitual %1</translation>
    </message>
    <message>
        <source>Bottom %1</source>
        <translation>Fondo %1</translation>
    </message>
    <message>
        <source>down</source>
        <translation>bajada</translation>
    </message>
    <message>
        <source>up</source>
        <translation>subida</translation>
    </message>
    <message>
        <source>too fast: at most %1</source>
        <translation>demasiado rápido: máximo %1</translation>
    </message>
    <message>
        <source>88.8 m</source>
        <translation>88,8 m</translation>
    </message>
    <message>
        <source> (below this view)</source>
        <translation> (más abajo)</translation>
    </message>
    <message>
        <source>240 min</source>
        <translation>240 min</translation>
    </message>
    <message>
        <source>Clear ears every %1</source>
        <translation>Compensar cada %1</translation>
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
        <translation>ddd d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <comment>day, name of the month, year</comment>
        <translation>%1 de %2 de %3</translation>
    </message>
</context>
<context>
    <name>RecoverySheet</name>
    <message>
        <source>Recovery key of the health vault</source>
        <translation>Clave de recuperación de la caja fuerte de salud</translation>
    </message>
    <message>
        <source>Made on %1</source>
        <translation>Creada el %1</translation>
    </message>
    <message>
        <source>Whoever has this paper and the records can read every guest&apos;s health answers. Keep it locked away, apart from the computer. Do not photograph it.</source>
        <translation>Quien tenga este papel y los registros puede leer las respuestas de salud de todos los clientes. Guárdelo bajo llave, lejos del ordenador. No lo fotografíe.</translation>
    </message>
    <message>
        <source>It opens the vault when the passphrase is forgotten or the computer&apos;s keyring is lost: choose &quot;Use the recovery key&quot; when unlocking. The nine groups hold no 0, 1, I or O. Small letters will do.</source>
        <translation>Abre la caja fuerte cuando se olvida la frase de paso o se pierde el llavero del ordenador: al abrirla, elija «Usar la clave de recuperación». Los nueve grupos no contienen 0, 1, I ni O. Valen las minúsculas.</translation>
    </message>
    <message>
        <source>Without passphrase and without this paper nobody can open the vault any more, nor can the makers of Leadline.</source>
        <translation>Sin la frase de paso y sin este papel nadie puede abrir ya la caja fuerte, ni siquiera los autores de Leadline.</translation>
    </message>
    <message>
        <source>Records: %1</source>
        <translation>Registros: %1</translation>
    </message>
</context>
<context>
    <name>Roster</name>
    <message>
        <source>(no name)</source>
        <translation>(sin nombre)</translation>
    </message>
    <message>
        <source>Instructor, no name yet</source>
        <translation>Instructor, aún sin nombre</translation>
    </message>
    <message>
        <source>Assistant, no name yet</source>
        <translation>Asistente, aún sin nombre</translation>
    </message>
    <message numerus="yes">
        <source>%n stops</source>
        <translation>
            <numerusform>%n alto</numerusform>
            <numerusform>%n altos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n care</source>
        <translation>
            <numerusform>%n precaución</numerusform>
            <numerusform>%n precauciones</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RuleSets</name>
    <message>
        <source>House rules of the centre</source>
        <translation>Normas propias del centro</translation>
    </message>
    <message>
        <source>Flying after diving workshop, 2002</source>
        <translation>Taller sobre volar después de bucear, 2002</translation>
    </message>
    <message>
        <source>France, Code du sport</source>
        <translation>Francia, «Code du sport»</translation>
    </message>
    <message>
        <source>France, federation rules for children</source>
        <translation>Francia, normas de la federación para niños</translation>
    </message>
    <message>
        <source>ISO 11121:2017</source>
        <translation>ISO 11121:2017</translation>
    </message>
    <message>
        <source>Maldives, regulation of 2003</source>
        <translation>Maldivas, reglamento de 2003</translation>
    </message>
    <message>
        <source>Queensland, recreational diving code</source>
        <translation>Queensland, código de buceo recreativo</translation>
    </message>
    <message>
        <source>RSTC introductory scuba experience, 2001</source>
        <translation>RSTC, inmersión de iniciación, 2001</translation>
    </message>
    <message>
        <source>Spain, Royal Decree 550/2020</source>
        <translation>España, Real Decreto 550/2020</translation>
    </message>
    <message>
        <source>Thailand, measures of 2025</source>
        <translation>Tailandia, medidas de 2025</translation>
    </message>
    <message>
        <source>%1</source>
        <comment>a source in English: put it into quotation marks</comment>
        <translation>«%1»</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
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
        <source>Regulator</source>
        <translation>Regulador</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Plomo</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Botella</translation>
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
        <translation>Una ayuda para planificar: las cifras pueden ser erróneas. Deciden los manómetros, las normas locales y el instructor en el lugar.</translation>
    </message>
    <message>
        <source>Metric units</source>
        <translation>Unidades métricas</translation>
    </message>
    <message>
        <source>Imperial units</source>
        <translation>Unidades imperiales</translation>
    </message>
    <message>
        <source>%1 · %2 · meet %3 · in the water %4</source>
        <comment>site, day, times</comment>
        <translation>%1 · %2 · encuentro %3 · en el agua %4</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
</context>
<context>
    <name>SheetNames</name>
    <message>
        <source>A card for each guest to take along</source>
        <translation>Una tarjeta para que cada cliente se la lleve</translation>
    </message>
    <message>
        <source>A page for each group, for the instructor</source>
        <translation>Una página por grupo, para el instructor</translation>
    </message>
    <message>
        <source>Who has practised what, to tick off</source>
        <translation>Quién ha practicado qué, para marcar</translation>
    </message>
    <message>
        <source>What to pack, for whom and how many</source>
        <translation>Qué llevar, para quién y cuánto</translation>
    </message>
    <message>
        <source>A page for the wall at the site</source>
        <translation>Una página para la pared del lugar</translation>
    </message>
    <message>
        <source>Signals and air in pictures</source>
        <translation>Señales y aire en imágenes</translation>
    </message>
    <message>
        <source>Cards</source>
        <translation>Tarjetas</translation>
    </message>
    <message>
        <source>Beach sheet</source>
        <translation>Hoja de playa</translation>
    </message>
    <message>
        <source>Skills</source>
        <translation>Ejercicios</translation>
    </message>
    <message>
        <source>Kit list</source>
        <translation>Lista de equipo</translation>
    </message>
    <message>
        <source>Emergency plan</source>
        <translation>Plan de emergencia</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Imágenes</translation>
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
        <translation>(sin nombre)</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 y %n más</numerusform>
            <numerusform>%1 y %n más</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SkillsSheet</name>
    <message>
        <source>Skills</source>
        <translation>Ejercicios</translation>
    </message>
    <message>
        <source>No skills are chosen for this session.</source>
        <translation>No hay ejercicios elegidos para esta sesión.</translation>
    </message>
    <message>
        <source>Nobody is in this group yet.</source>
        <translation>Todavía nadie en este grupo.</translation>
    </message>
    <message>
        <source>What each is for</source>
        <translation>Para qué sirve cada uno</translation>
    </message>
    <message>
        <source>A list to work by: the instructor judges whether a skill is mastered.</source>
        <translation>Una lista para trabajar: el instructor juzga si un ejercicio está dominado.</translation>
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
        <translation>Como máximo %1 inmersiones al día (%2: %3).</translation>
    </message>
    <message>
        <source>At most %1 times up a day (%2: %3).</source>
        <translation>Como máximo %1 subidas al día (%2: %3).</translation>
    </message>
    <message>
        <source>At most %1 days with a dive in a row (%2: %3).</source>
        <translation>Como máximo %1 días seguidos con inmersión (%2: %3).</translation>
    </message>
    <message>
        <source>Limits: the chosen rule sets name none for staff.</source>
        <translation>Límites: los conjuntos de reglas elegidos no indican ninguno para el personal.</translation>
    </message>
    <message>
        <source>Limits: %1</source>
        <translation>Límites: %1</translation>
    </message>
    <message>
        <source>at the worst moment of this dive</source>
        <translation>en el peor momento de esta inmersión</translation>
    </message>
    <message>
        <source>before this session</source>
        <translation>antes de esta sesión</translation>
    </message>
    <message>
        <source>%1: going straight up %2 would use %3 of what the house allows; nearest to its limit is tissue %4 of 16 (half-time %5 min).</source>
        <translation>%1: subir directamente %2 gastaría %3 de lo que permiten las normas del centro; el más cercano a su límite es el tejido %4 de 16 (semiperiodo %5 min).</translation>
    </message>
    <message>
        <source>%1: no load above that of the surface.</source>
        <translation>%1: sin carga por encima de la de la superficie.</translation>
    </message>
    <message>
        <source>Before flying %1: %2.</source>
        <translation>Antes de volar %1: %2.</translation>
    </message>
    <message>
        <source>%1 Set aside: %2</source>
        <translation>%1 Desestimado: %2</translation>
    </message>
    <message>
        <source>needs a stop</source>
        <translation>necesita una parada</translation>
    </message>
    <message>
        <source>over a limit</source>
        <translation>por encima de un límite</translation>
    </message>
    <message>
        <source>Over a limit, set aside</source>
        <translation>Por encima de un límite, desestimado</translation>
    </message>
    <message>
        <source>Does not dive now</source>
        <translation>No bucea ahora</translation>
    </message>
    <message>
        <source>Within limits</source>
        <translation>Dentro de los límites</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
    <message>
        <source>No record</source>
        <translation>Sin registro</translation>
    </message>
    <message>
        <source>over 24 h</source>
        <translation>más de 24 h</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>%1: %2 Set aside: %3</source>
        <translation>%1: %2 Desestimado: %3</translation>
    </message>
    <message>
        <source>%1 – %2: %3</source>
        <translation>%1 – %2: %3</translation>
    </message>
    <message>
        <source>Within the limits: %1.</source>
        <translation>Dentro de los límites: %1.</translation>
    </message>
    <message>
        <source>Does not dive in this session: %1.</source>
        <translation>No bucea en esta sesión: %1.</translation>
    </message>
    <message>
        <source>Taken as rested, as no earlier dive is on record: %1. Enter dives on the Roster tab, Groups and staff, with the button in the column Dives.</source>
        <translation>Se supone descanso previo, porque no consta ninguna inmersión anterior: %1. Anote las inmersiones en la pestaña Clientes, Grupos y personal, con el botón de la columna Inmersiones.</translation>
    </message>
    <message>
        <source>Nitrogen in sixteen tissues by ZH-L16C (Bühlmann, Tauchmedizin, 1995; Bühlmann, Völlm and Nussberger, 2002; partly from memory), with gradient factors %1/%2 of the house: common practice, no source. With %2 at the surface no time without a stop is longer than in the DCIEM table of 1992 (to %3) or in the U.S. Navy&apos;s Revision 7 (to %4). What is left without a stop is at the deepest planned point before this session, rounded down.</source>
        <translation>Nitrógeno en dieciséis tejidos según ZH-L16C (Bühlmann, Tauchmedizin, 1995; Bühlmann, Völlm y Nussberger, 2002; en parte de memoria), con los factores de gradiente %1/%2 del centro: práctica común, sin fuente. Con %2 en la superficie, ningún tiempo sin parada es más largo que en la tabla DCIEM de 1992 (hasta %3) o en la Revisión 7 de la U.S. Navy (hasta %4). Lo que queda sin parada vale en el punto previsto más profundo antes de esta sesión, redondeado hacia abajo.</translation>
    </message>
    <message>
        <source>What is not known of an earlier dive is taken as what loads more: down at once at %1, at the deepest point for all of its time, up at %2; at an altitude as if just come from the sea. Expected ascents with a guest come on top of the planned time, and no gas lost on them is credited. Dives of the %3 days before this one count.</source>
        <translation>Lo que no se sabe de una inmersión anterior se toma como lo que más carga: bajada inmediata a %1, todo su tiempo en el punto más profundo, subida a %2; en altitud, como si se acabara de llegar del mar. Los ascensos previstos con un cliente se suman al tiempo planificado y no se descuenta el gas perdido en ellos. Cuentan las inmersiones de los %3 días anteriores.</translation>
    </message>
    <message>
        <source>Flying: %1 h after a single dive, %2 h after repeated dives, %3 h after a dive with stops: the longer of the DAN workshop of 2002 and the UHMS workshop of 1989.</source>
        <translation>Vuelos: %1 h tras una sola inmersión, %2 h tras inmersiones repetidas, %3 h tras una inmersión con paradas: lo más largo del taller de DAN de 2002 y del taller de la UHMS de 1989.</translation>
    </message>
    <message>
        <source>Outside the model: bubbles and what repeated ascents do to them, cold, work, dehydration and age. Each ascent carries its own risk.</source>
        <translation>Fuera del modelo: las burbujas y lo que les hacen los ascensos repetidos, el frío, el trabajo, la deshidratación y la edad. Cada ascenso lleva su propio riesgo.</translation>
    </message>
</context>
<context>
    <name>UnsavedQuestion</name>
    <message>
        <source>Not saved</source>
        <translation>Sin guardar</translation>
    </message>
    <message>
        <source>The last changes to this session are not saved.</source>
        <translation>Los últimos cambios de esta sesión no están guardados.</translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>&amp;Reintentar</translation>
    </message>
    <message>
        <source>&amp;Write to a file…</source>
        <translation>&amp;Escribir en un archivo…</translation>
    </message>
    <message>
        <source>&amp;Lose them</source>
        <translation>&amp;Descartarlos</translation>
    </message>
    <message>
        <source>&amp;Go back</source>
        <translation>&amp;Volver</translation>
    </message>
</context>
<context>
    <name>VaultDialogs</name>
    <message>
        <source>Your name</source>
        <translation>Su nombre</translation>
    </message>
    <message>
        <source>Stands in the audit trail.</source>
        <translation>Figura en el registro de accesos.</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>En curso</translation>
    </message>
</context>
<context>
    <name>VaultWords</name>
    <message>
        <source>Passphrase</source>
        <translation>Frase de paso</translation>
    </message>
    <message>
        <source>Keyring</source>
        <translation>Llavero</translation>
    </message>
    <message>
        <source>Recovery key</source>
        <translation>Clave de recuperación</translation>
    </message>
    <message>
        <source>Set the vault up</source>
        <translation>Preparó la caja fuerte</translation>
    </message>
    <message>
        <source>Unlocked</source>
        <translation>Abrió la caja fuerte</translation>
    </message>
    <message>
        <source>Failed to unlock</source>
        <translation>No logró abrirla</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Cerró la caja fuerte</translation>
    </message>
    <message>
        <source>Changed the passphrase</source>
        <translation>Cambió la frase de paso</translation>
    </message>
    <message>
        <source>Set a way to unlock</source>
        <translation>Añadió una vía de apertura</translation>
    </message>
    <message>
        <source>Removed a way to unlock</source>
        <translation>Eliminó una vía de apertura</translation>
    </message>
    <message>
        <source>Wrote a record</source>
        <translation>Escribió un registro</translation>
    </message>
    <message>
        <source>Opened a record</source>
        <translation>Abrió un registro</translation>
    </message>
    <message>
        <source>Exported records</source>
        <translation>Exportó registros</translation>
    </message>
    <message>
        <source>Erased a record</source>
        <translation>Borró un registro</translation>
    </message>
    <message>
        <source>Erased a record without the vault&apos;s key</source>
        <translation>Borró un registro sin la clave de la caja fuerte</translation>
    </message>
    <message>
        <source>Moved a record to this guest</source>
        <translation>Pasó un registro a este cliente</translation>
    </message>
    <message>
        <source>Found this list broken</source>
        <translation>Encontró dañada esta lista</translation>
    </message>
    <message>
        <source>Screening answers</source>
        <translation>Respuestas de salud</translation>
    </message>
    <message>
        <source>Physician&apos;s note</source>
        <translation>Nota del médico</translation>
    </message>
    <message>
        <source>Emergency contact</source>
        <translation>Contacto de emergencia</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>at entry %1</source>
        <translation>en la entrada %1</translation>
    </message>
    <message>
        <source>Broken at entry %1: it was changed outside Leadline.</source>
        <translation>Dañada en la entrada %1: se cambió fuera de Leadline.</translation>
    </message>
    <message>
        <source>Broken at entry %1: it is missing.</source>
        <translation>Dañada en la entrada %1: falta.</translation>
    </message>
    <message>
        <source>Broken at entry %1: it and what came after were cut off.</source>
        <translation>Dañada en la entrada %1: se cortó desde ahí, con todo lo que seguía.</translation>
    </message>
    <message>
        <source>Broken: entries up to %1 were written anew outside Leadline.</source>
        <translation>Dañada: las entradas hasta la %1 se escribieron de nuevo fuera de Leadline.</translation>
    </message>
    <message>
        <source>Broken at entry %1: the seal over the list is missing or false.</source>
        <translation>Dañada en la entrada %1: el sello de la lista falta o es falso.</translation>
    </message>
    <message>
        <source>Broken at entry %1: it was not written by an open vault.</source>
        <translation>Dañada en la entrada %1: no la escribió una caja fuerte abierta.</translation>
    </message>
    <message>
        <source>This list was found broken before: see entry %1.</source>
        <translation>Esta lista ya se encontró dañada antes: vea la entrada %1.</translation>
    </message>
</context>
<context>
    <name>leadline::AirPage</name>
    <message>
        <source>Cylinder, reading, temperature, breathing and RMV can be changed in the table: choose a cell and type, or press F2.</source>
        <translation>Botella, lectura, temperatura, respiración y VMR se pueden cambiar en la tabla: elija una celda y escriba, o pulse F2.</translation>
    </message>
    <message>
        <source>Estimates for planning, on the high side of use. In the water the gauge, the guest&apos;s signal and the instructor decide.</source>
        <translation>Estimaciones para planificar, del lado de más gasto. En el agua deciden el manómetro, la señal del cliente y el instructor.</translation>
    </message>
    <message>
        <source>Air of each guest</source>
        <translation>Aire de cada cliente</translation>
    </message>
</context>
<context>
    <name>leadline::AnswerChoice</name>
    <message>
        <source>not answered</source>
        <translation>sin contestar</translation>
    </message>
</context>
<context>
    <name>leadline::AuditDialog</name>
    <message numerus="yes">
        <source>%n entries, none changed or missing.</source>
        <translation>
            <numerusform>%n entrada, ni cambiada ni ausente.</numerusform>
            <numerusform>%n entradas, ninguna cambiada ni ausente.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 Whether the end was cut off shows only when the vault is unlocked.</source>
        <translation>%1 Si se cortó el final solo se ve con la caja fuerte abierta.</translation>
    </message>
    <message>
        <source>Audit trail of the health vault</source>
        <translation>Registro de accesos de la caja fuerte de salud</translation>
    </message>
    <message>
        <source>Audit trail, newest first</source>
        <translation>Registro de accesos, lo más nuevo primero</translation>
    </message>
    <message>
        <source>Check &amp;again</source>
        <translation>Comprobar de &amp;nuevo</translation>
    </message>
    <message>
        <source>&quot;Who&quot; is the name given when unlocking; nobody checks it. A file put back to an older state as a whole is not noticed.</source>
        <translation>«Quién» es el nombre dado al abrir; nadie lo comprueba. No se nota si un archivo entero se devuelve a un estado anterior.</translation>
    </message>
    <message>
        <source>%1 Records taken out of the file from outside: %2.</source>
        <translation>%1 Registros quitados del archivo desde fuera: %2.</translation>
    </message>
</context>
<context>
    <name>leadline::AuditModel</name>
    <message>
        <source>no longer on record (%1)</source>
        <translation>ya no consta (%1)</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N.º</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Of what</source>
        <translation>De qué</translation>
    </message>
</context>
<context>
    <name>leadline::BackupsDialog</name>
    <message>
        <source>By itself</source>
        <translation>Automática</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation>A mano</translation>
    </message>
    <message>
        <source>Before a copy was put back</source>
        <translation>Antes de restaurar una copia</translation>
    </message>
    <message>
        <source>Damaged records, kept as they were</source>
        <translation>Registros dañados, conservados como estaban</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Detener</translation>
    </message>
    <message>
        <source>Copies of the records</source>
        <translation>Copias de los registros</translation>
    </message>
    <message>
        <source>Put back from a file</source>
        <translation>Restaurar desde un archivo</translation>
    </message>
    <message>
        <source>Copies and exports (*.sqlite *.json);;All files (*)</source>
        <translation>Copias y exportaciones (*.sqlite *.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Write everything into a folder</source>
        <translation>Escribir todo en una carpeta</translation>
    </message>
    <message>
        <source>While Leadline is open it makes a copy a day of records that have changed: it keeps the last 7 days, then one a week for 8 weeks and one a month for 12 months. They lie in the folder %1. A copy on the same disk does not help when the disk is lost: now and then take one to another place.</source>
        <translation>Mientras está abierto, Leadline hace una copia al día de los registros que han cambiado: conserva las de los últimos 7 días, después una por semana durante 8 semanas y una por mes durante 12 meses. Están en la carpeta %1. Una copia en el mismo disco no sirve si se pierde el disco: de vez en cuando lleve una a otro lugar.</translation>
    </message>
    <message>
        <source>A copy still holds guests who were erased after it was made. To erase a guest for good, delete the copies from before as well. In a copy, too, only the vault is sealed.</source>
        <translation>Una copia contiene todavía a los clientes borrados después de hacerla. Para borrar a un cliente del todo, elimine también las copias anteriores. También en una copia solo está sellada la caja fuerte.</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Progreso</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Hecha</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Comprobada</translation>
    </message>
    <message>
        <source>&amp;Make a copy now</source>
        <translation>&amp;Hacer una copia ahora</translation>
    </message>
    <message>
        <source>&amp;Put back…</source>
        <translation>&amp;Restaurar…</translation>
    </message>
    <message>
        <source>Put back from a &amp;file…</source>
        <translation>Restaurar de un &amp;archivo…</translation>
    </message>
    <message>
        <source>&amp;Delete…</source>
        <translation>E&amp;liminar…</translation>
    </message>
    <message>
        <source>&amp;Write everything out…</source>
        <translation>Escribir &amp;todo fuera…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>checking…</source>
        <translation>comprobando…</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>íntegra</translation>
    </message>
    <message>
        <source>not whole</source>
        <translation>no íntegra</translation>
    </message>
    <message>
        <source>Making a copy…</source>
        <translation>Haciendo una copia…</translation>
    </message>
    <message>
        <source>Made and checked: %1</source>
        <translation>Hecha y comprobada: %1</translation>
    </message>
    <message>
        <source>made %1</source>
        <translation>hecha el %1</translation>
    </message>
    <message>
        <source>Reading the copy…</source>
        <translation>Leyendo la copia…</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>No se cambió nada.</translation>
    </message>
    <message>
        <source>Nothing was changed, because the open session is not saved. %1</source>
        <translation>No se cambió nada, porque la sesión abierta no está guardada. %1</translation>
    </message>
    <message>
        <source>Putting the copy back…</source>
        <translation>Restaurando la copia…</translation>
    </message>
    <message>
        <source>The copy %1 is in place. What stood there before is in the list.</source>
        <translation>La copia %1 está en su sitio. Lo que había antes está en la lista.</translation>
    </message>
    <message>
        <source>Delete a copy</source>
        <translation>Eliminar una copia</translation>
    </message>
    <message>
        <source>Delete the copy made %1 for good? The records themselves stay.</source>
        <translation>¿Eliminar para siempre la copia hecha el %1? Los registros mismos se quedan.</translation>
    </message>
    <message>
        <source>&amp;Delete it</source>
        <translation>E&amp;liminarla</translation>
    </message>
    <message>
        <source>Deleted.</source>
        <translation>Eliminada.</translation>
    </message>
    <message>
        <source>Writing everything out…</source>
        <translation>Escribiendo todo fuera…</translation>
    </message>
    <message>
        <source>Written to %1. Names, phone numbers and outcomes stand open in it: keep it safe.</source>
        <translation>Escrito en %1. Contiene a la vista nombres, teléfonos y resultados: guárdelo bien.</translation>
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
        <translation>Día/mes/año</translation>
    </message>
    <message>
        <source>17/5/1990, 17 May 1990 or 1990-05-17</source>
        <translation>17/5/1990, 17 de mayo de 1990 o 1990-05-17</translation>
    </message>
</context>
<context>
    <name>leadline::BookingImportDialog</name>
    <message>
        <source>Choose…</source>
        <translation>Elegir…</translation>
    </message>
    <message>
        <source>Import a booking list</source>
        <translation>Importar reservas</translation>
    </message>
    <message>
        <source>Reading the list</source>
        <translation>Leyendo la lista</translation>
    </message>
    <message>
        <source>&amp;Dates are written as</source>
        <translation>&amp;Fechas escritas como</translation>
    </message>
    <message>
        <source>&amp;Weights are in</source>
        <translation>&amp;Pesos en</translation>
    </message>
    <message>
        <source>&amp;Heights are in</source>
        <translation>E&amp;staturas en</translation>
    </message>
    <message>
        <source>The booking list</source>
        <translation>La lista de reservas</translation>
    </message>
    <message>
        <source>&amp;Next message</source>
        <translation>Mensaje si&amp;guiente</translation>
    </message>
    <message>
        <source>The next cell with something to be looked at</source>
        <translation>La celda siguiente que hay que mirar</translation>
    </message>
    <message>
        <source>&amp;Leave out rows with errors</source>
        <translation>&amp;Omitir filas con errores</translation>
    </message>
    <message>
        <source>Reading %1…</source>
        <translation>Leyendo %1…</translation>
    </message>
    <message>
        <source>%1: %2 rows.</source>
        <translation>%1: %2 filas.</translation>
    </message>
    <message>
        <source>The file does not say how its letters are written; they were read as Windows-1252. Check names with accents.</source>
        <translation>El archivo no dice cómo están escritas sus letras; se leyeron como Windows-1252. Compruebe los nombres con acentos.</translation>
    </message>
    <message>
        <source>No headings were found: choose what each column means.</source>
        <translation>No se encontraron encabezados: elija qué significa cada columna.</translation>
    </message>
    <message>
        <source>No column says the language: English is put.</source>
        <translation>Ninguna columna dice el idioma: se pone inglés.</translation>
    </message>
    <message>
        <source>as the list itself says</source>
        <translation>como dice la propia lista</translation>
    </message>
    <message>
        <source>The list is written in more than one way. Choose one; the cells that do not fit will be shown.</source>
        <translation>La lista está escrita de más de una manera. Elija una; se mostrarán las celdas que no encajen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read in more than one way. Please choose.</source>
        <translation>«%1» se puede leer de más de una manera. Elija, por favor.</translation>
    </message>
    <message>
        <source>A cell</source>
        <translation>Una celda</translation>
    </message>
    <message numerus="yes">
        <source>&amp;Add %n guests</source>
        <translation>
            <numerusform>&amp;Añadir %n cliente</numerusform>
            <numerusform>&amp;Añadir %n clientes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows with errors</source>
        <translation>
            <numerusform>%n fila con errores</numerusform>
            <numerusform>%n filas con errores</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n there already</source>
        <translation>
            <numerusform>%n ya estaba</numerusform>
            <numerusform>%n ya estaban</numerusform>
        </translation>
    </message>
    <message>
        <source>There is nothing else to be looked at.</source>
        <translation>No hay nada más que mirar.</translation>
    </message>
    <message>
        <source>A session holds %1 guests at most; there is room for %2 more. Untick some.</source>
        <translation>Una sesión admite %1 clientes como máximo; caben %2 más. Desmarque algunos.</translation>
    </message>
    <message numerus="yes">
        <source>Add %n guests</source>
        <translation>
            <numerusform>Añadir %n cliente</numerusform>
            <numerusform>Añadir %n clientes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::BookingModel</name>
    <message>
        <source>Age %1 by the booking list</source>
        <translation>Edad %1 según la lista de reservas</translation>
    </message>
    <message>
        <source>%1; will be added anyway. Untick to leave it out.</source>
        <translation>%1; se añadirá de todos modos. Desmárquelo para omitirlo.</translation>
    </message>
    <message>
        <source>%1; will be left out. Tick to add it anyway.</source>
        <translation>%1; se omitirá. Márquelo para añadirlo de todos modos.</translation>
    </message>
    <message>
        <source>Add anyway</source>
        <translation>Añadir igualmente</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Omitir</translation>
    </message>
    <message>
        <source>Cannot be added</source>
        <translation>No se puede añadir</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>In the list: %1</source>
        <translation>En la lista: %1</translation>
    </message>
    <message>
        <source>To be added</source>
        <translation>Se añadirá</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Columna %1</translation>
    </message>
</context>
<context>
    <name>leadline::BriefingTab</name>
    <message>
        <source>Put &amp;it right</source>
        <translation>&amp;Corregir</translation>
    </message>
    <message>
        <source>&amp;Go ahead anyway…</source>
        <translation>Seguir de &amp;todos modos…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>I&amp;mprimir…</translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation>Guardar como P&amp;DF…</translation>
    </message>
    <message>
        <source>‹ Back</source>
        <translation>‹ Atrás</translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation>Siguiente ›</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>A6, four to an A4 page</source>
        <translation>A6, cuatro por página A4</translation>
    </message>
    <message>
        <source>Quarter Letter, four to a page</source>
        <translation>Cuarto de Letter, cuatro por página</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Página anterior</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Página siguiente</translation>
    </message>
    <message>
        <source>Cards &amp;for</source>
        <translation>Tarjetas &amp;para</translation>
    </message>
    <message>
        <source>&amp;All</source>
        <translation>T&amp;odos</translation>
    </message>
    <message>
        <source>N&amp;one</source>
        <translation>N&amp;inguno</translation>
    </message>
    <message>
        <source>Card si&amp;ze</source>
        <translation>Tama&amp;ño de tarjeta</translation>
    </message>
    <message>
        <source>Real size on s&amp;creen</source>
        <translation>Tamaño rea&amp;l</translation>
    </message>
    <message>
        <source>No guests yet. Add them on the Roster tab.</source>
        <translation>Aún no hay clientes. Añádalos en la pestaña Clientes.</translation>
    </message>
    <message>
        <source>No card to show: every ticked guest has a stop, or none is ticked.</source>
        <translation>No hay tarjeta que mostrar: todos los clientes marcados tienen un alto, o no hay ninguno marcado.</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>No pages</source>
        <translation>Sin páginas</translation>
    </message>
    <message>
        <source>The printer did not start. Check that it is switched on and try again.</source>
        <translation>La impresora no arrancó. Compruebe que está encendida e inténtelo de nuevo.</translation>
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
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>Gro&amp;up</source>
        <translation>Gr&amp;upo</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>Second lang&amp;uage</source>
        <translation>Seg&amp;undo idioma</translation>
    </message>
    <message>
        <source>Guest scree&amp;n</source>
        <translation>P&amp;antalla de clientes</translation>
    </message>
    <message>
        <source>The briefing for guests to look at (F9).</source>
        <translation>El briefing para que lo vean los clientes (F9).</translation>
    </message>
    <message>
        <source>A6 paper, one each</source>
        <translation>Papel A6, una por hoja</translation>
    </message>
    <message>
        <source>A5, two to an A4 page</source>
        <translation>A5, dos por página A4</translation>
    </message>
    <message>
        <source>Half Letter, two to a page</source>
        <translation>Media Letter, dos por página</translation>
    </message>
    <message>
        <source>A5 paper, one each</source>
        <translation>Papel A5, una por hoja</translation>
    </message>
    <message>
        <source>A4, one each: large type</source>
        <translation>A4, una por hoja: letra grande</translation>
    </message>
    <message>
        <source>Letter, one each: large type</source>
        <translation>Letter, una por hoja: letra grande</translation>
    </message>
    <message>
        <source>One page for each group: guests, air, times, heads and the emergency plan. It tells ages and what health checks came to: keep it with the staff.</source>
        <translation>Una página por grupo: clientes, aire, horas, personas y el plan de emergencia. Dice edades y qué dieron los controles de salud: que quede en manos del personal.</translation>
    </message>
    <message>
        <source>Guests and skills, to tick off in the water.</source>
        <translation>Clientes y ejercicios, para marcar en el agua.</translation>
    </message>
    <message>
        <source>Everybody&apos;s kit to tick while packing, and how many of each.</source>
        <translation>El equipo de todos para marcar al prepararlo, y cuánto de cada cosa.</translation>
    </message>
    <message>
        <source>For the wall at the site: the number and the plan as entered on the Site tab. No guest stands on it.</source>
        <translation>Para la pared del lugar: el número y el plan como constan en la pestaña Lugar. No figura ningún cliente.</translation>
    </message>
    <message>
        <source>All signals, the numbers and what pressure does to air here, for guests with whom no language is shared.</source>
        <translation>Todas las señales, los números y lo que la presión hace aquí con el aire, para clientes con los que no se comparte idioma.</translation>
    </message>
    <message>
        <source>Paper si&amp;ze</source>
        <translation>Tama&amp;ño de papel</translation>
    </message>
    <message>
        <source>Card size</source>
        <translation>Tamaño de tarjeta</translation>
    </message>
    <message>
        <source>Paper size</source>
        <translation>Tamaño de papel</translation>
    </message>
    <message>
        <source>All groups</source>
        <translation>Todos los grupos</translation>
    </message>
    <message>
        <source>Choose s&amp;kills…</source>
        <translation>Elegir e&amp;jercicios…</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>No groups yet. Make them on the Roster tab.</source>
        <translation>Aún no hay grupos. Fórmelos en la pestaña Clientes.</translation>
    </message>
    <message numerus="yes">
        <source>%n cards</source>
        <translation>
            <numerusform>%n tarjeta</numerusform>
            <numerusform>%n tarjetas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n refused: a stop stands</source>
        <translation>
            <numerusform>%n denegada: hay un alto</numerusform>
            <numerusform>%n denegadas: hay un alto</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>guest, language</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>In English, as there is no translation yet: %1.</source>
        <translation>En inglés, porque aún no hay traducción: %1.</translation>
    </message>
    <message>
        <source>Without the second language, for the same reason: %1.</source>
        <translation>Sin el segundo idioma, por el mismo motivo: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 y %n más</numerusform>
            <numerusform>%1 y %n más</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pages</source>
        <translation>
            <numerusform>%n página</numerusform>
            <numerusform>%n páginas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n guests are in no group and stand on no sheet.</source>
        <translation>
            <numerusform>%n cliente no está en ningún grupo y no figura en ninguna hoja.</numerusform>
            <numerusform>%n clientes no están en ningún grupo y no figuran en ninguna hoja.</numerusform>
        </translation>
    </message>
    <message>
        <source>No number is entered: the page leaves room to write it. Enter it on the Site tab.</source>
        <translation>No hay ningún número: la página deja sitio para escribirlo. Introdúzcalo en la pestaña Lugar.</translation>
    </message>
    <message>
        <source>No font here has the letters of: %1. They would print as empty boxes. Install a font for them.</source>
        <translation>Ninguna fuente de aquí tiene las letras de: %1. Se imprimirían como cuadros vacíos. Instale una fuente para ellas.</translation>
    </message>
    <message numerus="yes">
        <source>%n pages saved to %1</source>
        <translation>
            <numerusform>%n página guardada en %1</numerusform>
            <numerusform>%n páginas guardadas en %1</numerusform>
        </translation>
    </message>
    <message>
        <source>No printer is installed on this computer. Save the pages as a PDF instead, or install a printer.</source>
        <translation>No hay ninguna impresora instalada en este ordenador. Guarde las páginas como PDF o instale una impresora.</translation>
    </message>
    <message numerus="yes">
        <source>The printer stopped after %n pages.</source>
        <translation>
            <numerusform>La impresora se detuvo tras %n página.</numerusform>
            <numerusform>La impresora se detuvo tras %n páginas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pages sent to the printer</source>
        <translation>
            <numerusform>%n página enviada a la impresora</numerusform>
            <numerusform>%n páginas enviadas a la impresora</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose skills</source>
        <translation>Elegir ejercicios</translation>
    </message>
    <message>
        <source>Cut for want of room; shorten it or choose larger cards: %1</source>
        <translation>Cortado por falta de sitio; acórtelo o elija tarjetas más grandes: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n cards have no room for all their words: read them before you hand them out.</source>
        <translation>
            <numerusform>%n tarjeta no tiene sitio para todas sus palabras: léala antes de entregarla.</numerusform>
            <numerusform>%n tarjetas no tienen sitio para todas sus palabras: léalas antes de entregarlas.</numerusform>
        </translation>
    </message>
    <message>
        <source>The pages before are still being saved. Wait a moment, or stop that.</source>
        <translation>Las páginas anteriores aún se están guardando. Espere un momento o deténgalo.</translation>
    </message>
</context>
<context>
    <name>leadline::BulkPage</name>
    <message>
        <source>&amp;Put into this group</source>
        <translation>&amp;Poner en este grupo</translation>
    </message>
    <message>
        <source>Choose one</source>
        <translation>Elija uno</translation>
    </message>
    <message>
        <source>&amp;Hand out to all of them</source>
        <translation>En&amp;tregar a todos</translation>
    </message>
    <message>
        <source>Gro&amp;up</source>
        <translation>Grup&amp;o</translation>
    </message>
    <message>
        <source>The same cylinder for each</source>
        <translation>La misma botella para cada uno</translation>
    </message>
    <message>
        <source>C&amp;ylinder</source>
        <translation>&amp;Botella</translation>
    </message>
    <message>
        <source>Fi&amp;lled to</source>
        <translation>Car&amp;gada a</translation>
    </message>
    <message>
        <source>Gas te&amp;mperature</source>
        <translation>Te&amp;mperatura del gas</translation>
    </message>
    <message numerus="yes">
        <source>%n guests selected</source>
        <translation>
            <numerusform>%n cliente seleccionado</numerusform>
            <numerusform>%n clientes seleccionados</numerusform>
        </translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguna</translation>
    </message>
    <message numerus="yes">
        <source>Put %n guests into a group</source>
        <translation>
            <numerusform>Poner %n cliente en un grupo</numerusform>
            <numerusform>Poner %n clientes en un grupo</numerusform>
        </translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message numerus="yes">
        <source>Hand out %n cylinders</source>
        <translation>
            <numerusform>Entregar %n botella</numerusform>
            <numerusform>Entregar %n botellas</numerusform>
        </translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Botella</translation>
    </message>
</context>
<context>
    <name>leadline::CardEditor</name>
    <message>
        <source>%1 (draft)</source>
        <comment>a language</comment>
        <translation>%1 (borrador)</translation>
    </message>
    <message>
        <source>%1 (no cards yet)</source>
        <comment>a language</comment>
        <translation>%1 (aún sin tarjetas)</translation>
    </message>
    <message>
        <source>As this window</source>
        <translation>Como esta ventana</translation>
    </message>
    <message>
        <source>Metric</source>
        <translation>Métricas</translation>
    </message>
    <message>
        <source>Imperial</source>
        <translation>Imperiales</translation>
    </message>
    <message>
        <source>different</source>
        <translation>distintos</translation>
    </message>
    <message>
        <source>Card &amp;language</source>
        <translation>Idioma de tar&amp;jeta</translation>
    </message>
    <message>
        <source>Second lang&amp;uage</source>
        <translation>Seg&amp;undo idioma</translation>
    </message>
    <message>
        <source>Uni&amp;ts</source>
        <translation>U&amp;nidades</translation>
    </message>
    <message>
        <source>Change the card&apos;s language</source>
        <translation>Cambiar el idioma de la tarjeta</translation>
    </message>
    <message>
        <source>Change the card&apos;s second language</source>
        <translation>Cambiar el segundo idioma de la tarjeta</translation>
    </message>
    <message>
        <source>Change the card&apos;s units</source>
        <translation>Cambiar las unidades de la tarjeta</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>Choose a guest to change the card.</source>
        <translation>Elija un cliente para cambiar la tarjeta.</translation>
    </message>
    <message>
        <source>Card of %1</source>
        <translation>Tarjeta de %1</translation>
    </message>
    <message numerus="yes">
        <source>Cards of %n guests</source>
        <translation>
            <numerusform>Tarjetas de %n cliente</numerusform>
            <numerusform>Tarjetas de %n clientes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::CardList</name>
    <message>
        <source>Guests and their cards</source>
        <translation>Clientes y sus tarjetas</translation>
    </message>
    <message>
        <source>Stop: %1</source>
        <translation>Alto: %1</translation>
    </message>
    <message>
        <source>Ready · %1</source>
        <comment>language</comment>
        <translation>Listo · %1</translation>
    </message>
</context>
<context>
    <name>leadline::CheckForm</name>
    <message>
        <source>Sign again</source>
        <translation>Firmar de nuevo</translation>
    </message>
    <message>
        <source>For the record</source>
        <translation>Para el registro</translation>
    </message>
    <message>
        <source>Checked on</source>
        <translation>Controlado el</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Controlado por</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Elegir…</translation>
    </message>
    <message>
        <source>Own form</source>
        <translation>Formulario propio</translation>
    </message>
    <message>
        <source>Outcome by the centre&apos;s own form</source>
        <translation>Resultado según el formulario del centro</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Outcome of the questions of the day</source>
        <translation>Resultado de las preguntas del día</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Emergency contact</source>
        <translation>Contacto de emergencia</translation>
    </message>
    <message>
        <source>Name and phone</source>
        <translation>Nombre y teléfono</translation>
    </message>
    <message>
        <source>What the physician wrote</source>
        <translation>Lo que escribió el médico</translation>
    </message>
    <message>
        <source>Physician&apos;s note</source>
        <translation>Nota del médico</translation>
    </message>
    <message>
        <source>What was answered yes</source>
        <translation>A qué se contestó sí</translation>
    </message>
    <message>
        <source>All answers</source>
        <translation>Todas las respuestas</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Sellar</translation>
    </message>
    <message>
        <source>Which answers are sealed</source>
        <translation>Qué respuestas se sellan</translation>
    </message>
    <message>
        <source>Note: holds 2000 characters; the rest was cut off.</source>
        <translation>Nota: caben 2000 caracteres; el resto se cortó.</translation>
    </message>
    <message>
        <source>Nobody named</source>
        <translation>No se nombró a nadie</translation>
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
        <translation>De la altitud</translation>
    </message>
    <message>
        <source>As read at the site itself, not reduced to sea level. Empty: standard atmosphere</source>
        <translation>Tal como se lee en el propio lugar, sin reducir al nivel del mar. Vacío: atmósfera estándar</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>No se sabe</translation>
    </message>
    <message>
        <source>Water temperature</source>
        <translation>Temperatura del agua</translation>
    </message>
    <message>
        <source>The coldest the guests will meet</source>
        <translation>La más fría que encontrarán los clientes</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>Temperatura del aire</translation>
    </message>
    <message>
        <source>Barometer</source>
        <translation>Barómetro</translation>
    </message>
    <message>
        <source>Visibility</source>
        <translation>Visibilidad</translation>
    </message>
    <message>
        <source>&amp;Current</source>
        <translation>Corr&amp;iente</translation>
    </message>
    <message>
        <source>Waves</source>
        <translation>Olas</translation>
    </message>
    <message>
        <source>Change the water temperature</source>
        <translation>Cambiar la temperatura del agua</translation>
    </message>
    <message>
        <source>Change the air temperature</source>
        <translation>Cambiar la temperatura del aire</translation>
    </message>
    <message>
        <source>Change the barometer</source>
        <translation>Cambiar el barómetro</translation>
    </message>
    <message>
        <source>Change the visibility</source>
        <translation>Cambiar la visibilidad</translation>
    </message>
    <message>
        <source>Change the waves</source>
        <translation>Cambiar las olas</translation>
    </message>
    <message>
        <source>Change the current</source>
        <translation>Cambiar la corriente</translation>
    </message>
</context>
<context>
    <name>leadline::CopyTimer</name>
    <message>
        <source>No copy of the records was made. %1</source>
        <translation>No se hizo ninguna copia de los registros. %1</translation>
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
        <translation>Azul</translation>
    </message>
    <message>
        <source>White</source>
        <translation>Blanco</translation>
    </message>
    <message>
        <source>Green</source>
        <translation>Verde</translation>
    </message>
    <message>
        <source>Silver</source>
        <translation>Plata</translation>
    </message>
    <message>
        <source>Violet</source>
        <translation>Violeta</translation>
    </message>
    <message>
        <source>Brown</source>
        <translation>Marrón</translation>
    </message>
    <message>
        <source>&amp;Groups and staff</source>
        <translation>Grupos y person&amp;al</translation>
    </message>
    <message>
        <source>Groups and staff</source>
        <translation>Grupos y personal</translation>
    </message>
    <message>
        <source>Add a group</source>
        <translation>Añadir un grupo</translation>
    </message>
    <message>
        <source>Add staff</source>
        <translation>Añadir personal</translation>
    </message>
    <message numerus="yes">
        <source>%n groups</source>
        <translation>
            <numerusform>%n grupo</numerusform>
            <numerusform>%n grupos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n staff</source>
        <translation>
            <numerusform>%n del personal</numerusform>
            <numerusform>%n del personal</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stops</source>
        <translation>
            <numerusform>%n alto</numerusform>
            <numerusform>%n altos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n care</source>
        <translation>
            <numerusform>%n precaución</numerusform>
            <numerusform>%n precauciones</numerusform>
        </translation>
    </message>
    <message>
        <source>Add group</source>
        <translation>Añadir grupo</translation>
    </message>
</context>
<context>
    <name>leadline::CylinderPicker</name>
    <message>
        <source>Cylinder</source>
        <translation>Botella</translation>
    </message>
    <message>
        <source>Gauge reading</source>
        <translation>Lectura del manómetro</translation>
    </message>
    <message>
        <source>Gas temperature when read</source>
        <translation>Temperatura del gas al leer</translation>
    </message>
    <message>
        <source>As the gauge shows it now.</source>
        <translation>Lo que marca ahora el manómetro.</translation>
    </message>
    <message>
        <source>Of the gas when the gauge was read. Hot from filling or the sun, it holds less.</source>
        <translation>Del gas al leer el manómetro. Caliente por la carga o el sol, la botella contiene menos.</translation>
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
        <translation>%1&#xa0;% más</translation>
    </message>
    <message>
        <source>%1 % less</source>
        <translation>%1&#xa0;% menos</translation>
    </message>
    <message>
        <source>as planned</source>
        <translation>según el plan</translation>
    </message>
    <message>
        <source>%1, least</source>
        <translation>%1, mínimo</translation>
    </message>
    <message>
        <source>not yet known</source>
        <translation>aún no se sabe</translation>
    </message>
    <message>
        <source>Air used, over the pressure along the dive (%1). Planned: %2.</source>
        <translation>Aire gastado, respecto a la presión a lo largo de la inmersión (%1). Previsto: %2.</translation>
    </message>
    <message>
        <source>From %1.</source>
        <translation>De %1.</translation>
    </message>
    <message>
        <source>Trouble</source>
        <translation>Problema</translation>
    </message>
    <message>
        <source>Fine</source>
        <translation>Bien</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Ear
trouble</source>
        <translation>Oídos</translation>
    </message>
    <message>
        <source>Breathed,
plan → actual</source>
        <translation>Respirado,
plan → real</translation>
    </message>
    <message>
        <source>Than
planned</source>
        <translation>Frente
al plan</translation>
    </message>
    <message>
        <source>Planned
end</source>
        <translation>Fin
previsto</translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation>Prof.
máx.</translation>
    </message>
    <message>
        <source>Mean
depth</source>
        <translation>Prof.
media</translation>
    </message>
    <message>
        <source>Air used,
plan → actual</source>
        <translation>Aire gastado,
plan → real</translation>
    </message>
    <message>
        <source>Change the log</source>
        <translation>Cambiar la bitácora</translation>
    </message>
</context>
<context>
    <name>leadline::DebriefTab</name>
    <message>
        <source>Use this &amp;breathing rate</source>
        <translation>Usar este &amp;consumo</translation>
    </message>
    <message>
        <source>Use it for &amp;all</source>
        <translation>Usarlo para to&amp;dos</translation>
    </message>
    <message>
        <source>Open a log</source>
        <translation>Abrir una bitácora</translation>
    </message>
    <message>
        <source>Sessions (*.json);;All files (*)</source>
        <translation>Sesiones (*.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>No log yet</source>
        <translation>Aún sin bitácora</translation>
    </message>
    <message>
        <source>After the dive, enter each guest&apos;s pressure and time, or open a file that holds the log. Planned and actual then stand side by side.</source>
        <translation>Después de la inmersión, anote la presión y el tiempo de cada cliente o abra un archivo que contenga la bitácora. Entonces lo previsto y lo real quedan uno junto a otro.</translation>
    </message>
    <message>
        <source>Start the &amp;log</source>
        <translation>&amp;Iniciar la bitácora</translation>
    </message>
    <message>
        <source>&amp;Open a log file…</source>
        <translation>A&amp;brir una bitácora…</translation>
    </message>
    <message>
        <source>What should be remembered</source>
        <translation>Lo que conviene recordar</translation>
    </message>
    <message>
        <source>Remove the lo&amp;g</source>
        <translation>&amp;Quitar la bitácora</translation>
    </message>
    <message>
        <source>&amp;In at</source>
        <translation>E&amp;ntrada a las</translation>
    </message>
    <message>
        <source>o&amp;ut at</source>
        <translation>sa&amp;lida a las</translation>
    </message>
    <message>
        <source>Hea&amp;ds in</source>
        <translation>Entr&amp;an</translation>
    </message>
    <message>
        <source>ba&amp;ck</source>
        <translation>v&amp;uelven</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>No&amp;ta</translation>
    </message>
    <message>
        <source>What the log shows</source>
        <translation>Lo que muestra la bitácora</translation>
    </message>
    <message>
        <source>Planned and actual for each guest</source>
        <translation>Previsto y real de cada cliente</translation>
    </message>
    <message>
        <source>Double-click or type to enter pressures and times.</source>
        <translation>Haga doble clic o escriba para anotar presiones y tiempos.</translation>
    </message>
    <message>
        <source>Change the log</source>
        <translation>Cambiar la bitácora</translation>
    </message>
    <message>
        <source>All back</source>
        <translation>Todos de vuelta</translation>
    </message>
    <message>
        <source>Stop: count again</source>
        <translation>Alto: cuenten otra vez</translation>
    </message>
    <message>
        <source>%1: enter each guest&apos;s end pressure and minutes.</source>
        <translation>%1: anote la presión final y los minutos de cada cliente.</translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air so far; still to enter: %3.</source>
        <translation>%1: %2 volvió con menos aire hasta ahora; falta anotar: %3.</translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air.</source>
        <translation>%1: %2 volvió con menos aire.</translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air, as planned.</source>
        <translation>%1: %2 volvió con menos aire, como estaba previsto.</translation>
    </message>
    <message>
        <source>%1: %2 came back with the least air; %3 was expected to.</source>
        <translation>%1: %2 volvió con menos aire; se esperaba que fuera %3.</translation>
    </message>
    <message>
        <source>No limit was exceeded.</source>
        <translation>No se superó ningún límite.</translation>
    </message>
    <message>
        <source>Start the log</source>
        <translation>Iniciar la bitácora</translation>
    </message>
    <message>
        <source>Remove the log</source>
        <translation>Quitar la bitácora</translation>
    </message>
    <message>
        <source>No rate could be taken over.</source>
        <translation>No se pudo tomar ningún consumo.</translation>
    </message>
    <message numerus="yes">
        <source>%n guests will be planned with the rate breathed here.</source>
        <translation>
            <numerusform>%n cliente se planificará con el consumo respirado aquí.</numerusform>
            <numerusform>%n clientes se planificarán con el consumo respirado aquí.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::DuplicatesDialog</name>
    <message>
        <source>Who may be on record twice</source>
        <translation>Quién puede estar registrado dos veces</translation>
    </message>
    <message>
        <source>Look before you merge: brothers and sisters share a phone number, twins a birth date. Measured air use of somebody else would mislead.</source>
        <translation>Mire antes de unir: los hermanos comparten teléfono; los gemelos, fecha de nacimiento. El consumo medido de otra persona llevaría a error.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Conservar</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Nacimiento</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation>Correo</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Last session</source>
        <translation>Última sesión</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sesiones</translation>
    </message>
    <message>
        <source>One person: &amp;merge</source>
        <translation>Una persona: &amp;unir</translation>
    </message>
    <message>
        <source>&amp;Two persons</source>
        <translation>&amp;Dos personas</translation>
    </message>
    <message>
        <source>&amp;Not now</source>
        <translation>A&amp;hora no</translation>
    </message>
    <message>
        <source>Take &amp;back</source>
        <translation>Deshac&amp;er</translation>
    </message>
    <message>
        <source>Nobody seems to be on record twice.</source>
        <translation>Nadie parece estar registrado dos veces.</translation>
    </message>
    <message>
        <source>That was the last pair.</source>
        <translation>Era la última pareja.</translation>
    </message>
    <message>
        <source>Pair %1 of %2</source>
        <translation>Pareja %1 de %2</translation>
    </message>
    <message>
        <source>same name</source>
        <translation>mismo nombre</translation>
    </message>
    <message>
        <source>same name, turned round</source>
        <translation>mismo nombre, con el orden cambiado</translation>
    </message>
    <message>
        <source>names one letter apart</source>
        <translation>nombres que difieren en una letra</translation>
    </message>
    <message>
        <source>same birth date</source>
        <translation>misma fecha de nacimiento</translation>
    </message>
    <message>
        <source>same phone number</source>
        <translation>mismo teléfono</translation>
    </message>
    <message>
        <source>same e-mail</source>
        <translation>mismo correo</translation>
    </message>
    <message>
        <source>but the birth dates differ</source>
        <translation>pero las fechas de nacimiento difieren</translation>
    </message>
    <message>
        <source>Signs: %1.</source>
        <translation>Indicios: %1.</translation>
    </message>
    <message>
        <source>none; you chose these two</source>
        <translation>ninguno; usted eligió a estos dos</translation>
    </message>
    <message>
        <source>Keep %1</source>
        <translation>Conservar %1</translation>
    </message>
    <message>
        <source>Merged. All their sessions stand with the one kept.</source>
        <translation>Unidos. Todas sus sesiones quedan con el conservado.</translation>
    </message>
    <message>
        <source>Kept apart. They are not offered again.</source>
        <translation>Siguen separados. No se proponen otra vez.</translation>
    </message>
    <message>
        <source>Taken back: they are two persons again.</source>
        <translation>Deshecho: vuelven a ser dos personas.</translation>
    </message>
</context>
<context>
    <name>leadline::EarChart</name>
    <message>
        <source>Pressure on the eardrum on the way down</source>
        <translation>Presión sobre el tímpano al bajar</translation>
    </message>
    <message>
        <source>Needs opening
%1 to %2</source>
        <translation>Hay que abrir
de %1 a %2</translation>
    </message>
    <message>
        <source>Tube locks
from %1</source>
        <translation>Trompa bloqueada
desde %1</translation>
    </message>
    <message>
        <source>A scarred drum
tore at %1</source>
        <translation>Un tímpano con cicatriz
se rompió a %1</translation>
    </message>
    <message>
        <source>A healthy drum
tore at %1</source>
        <translation>Un tímpano sano
se rompió a %1</translation>
    </message>
    <message>
        <source>Feet of water on the eardrum</source>
        <translation>Pies de agua sobre el tímpano</translation>
    </message>
    <message>
        <source>Metres of water on the eardrum</source>
        <translation>Metros de agua sobre el tímpano</translation>
    </message>
    <message>
        <source>Never cleared: locks at %1</source>
        <translation>Sin compensar: se bloquea a %1</translation>
    </message>
    <message>
        <source>Never cleared</source>
        <translation>Sin compensar</translation>
    </message>
    <message>
        <source>Cleared every %1</source>
        <translation>Compensando cada %1</translation>
    </message>
    <message>
        <source>any drum can tear</source>
        <translation>cualquier tímpano puede romperse</translation>
    </message>
    <message>
        <source>a scarred drum can tear</source>
        <translation>un tímpano con cicatriz puede romperse</translation>
    </message>
    <message>
        <source>tube locked</source>
        <translation>trompa bloqueada</translation>
    </message>
    <message>
        <source>needs opening</source>
        <translation>hay que abrir</translation>
    </message>
    <message>
        <source>nothing felt yet</source>
        <translation>aún no se nota nada</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>%1 deep, water on the eardrum:</source>
        <translation>%1 de profundidad, agua sobre el tímpano:</translation>
    </message>
    <message>
        <source>Cleared</source>
        <translation>Compensando</translation>
    </message>
    <message>
        <source>At %1: cleared %2, never cleared %3.
</source>
        <translation>A %1: compensando %2, sin compensar %3.
</translation>
    </message>
    <message>
        <source>In the literature: the tube needs opening at %1 to %2 and locks at %3 (80 to 90; the lower end is the safe side). In the laboratory, scarred drums tore from %4, healthy ones from %5 (Jensen and Bonding, 1993). Pain comes far earlier.</source>
        <translation>En la bibliografía: la trompa necesita abrirse de %1 a %2 y se bloquea a %3 (80 a 90; el extremo bajo es el lado seguro). En el laboratorio, los tímpanos con cicatriz se rompieron desde %4 y los sanos desde %5 (Jensen y Bonding, 1993). El dolor llega mucho antes.</translation>
    </message>
    <message>
        <source>deep</source>
        <translation>de profundidad</translation>
    </message>
</context>
<context>
    <name>leadline::EarLungPanel</name>
    <message>
        <source>Ears on the way down</source>
        <translation>Oídos al bajar</translation>
    </message>
    <message>
        <source>Lungs on the way up</source>
        <translation>Pulmones al subir</translation>
    </message>
</context>
<context>
    <name>leadline::EarlierDivesDialog</name>
    <message>
        <source>Earlier dives</source>
        <translation>Inmersiones anteriores</translation>
    </message>
    <message>
        <source>Earlier dives of %1</source>
        <translation>Inmersiones anteriores de %1</translation>
    </message>
    <message>
        <source>Dives of the seven days before this one count. Times are those of this site&apos;s clock.</source>
        <translation>Cuentan las inmersiones de los siete días anteriores a esta. Las horas son las del reloj de este lugar.</translation>
    </message>
    <message>
        <source>No dives noted. Add the first one or take them from the records.</source>
        <translation>No hay inmersiones anotadas. Añada la primera o tómelas de los registros.</translation>
    </message>
    <message>
        <source>No dives noted. Add the first one.</source>
        <translation>No hay inmersiones anotadas. Añada la primera.</translation>
    </message>
    <message>
        <source>&amp;Add a dive</source>
        <translation>&amp;Añadir inmersión</translation>
    </message>
    <message>
        <source>Insert, in the table</source>
        <translation>Ins, en la tabla</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>Delete, in the table</source>
        <translation>Supr, en la tabla</translation>
    </message>
    <message>
        <source>Remove the chosen dives</source>
        <translation>Quitar las inmersiones elegidas</translation>
    </message>
    <message>
        <source>&amp;Take from the records</source>
        <translation>&amp;Tomar de los registros</translation>
    </message>
    <message>
        <source>Dives with a log in the last seven days that %1 led or helped in.</source>
        <translation>Inmersiones con bitácora de los últimos siete días que %1 llevó o en las que ayudó.</translation>
    </message>
    <message>
        <source>No records are open.</source>
        <translation>No hay registros abiertos.</translation>
    </message>
    <message>
        <source>People are found by name: enter one first.</source>
        <translation>Las personas se buscan por nombre: escriba uno primero.</translation>
    </message>
    <message>
        <source>&amp;Expected ascents during this dive beside the last</source>
        <translation>Asc&amp;ensos previstos en esta inmersión además del último</translation>
    </message>
    <message>
        <source>Expected ascents during this dive beside the last</source>
        <translation>Ascensos previstos en esta inmersión además del último</translation>
    </message>
    <message>
        <source>Going up with a guest or to train an ascent, and down again.</source>
        <translation>Subir con un cliente o para practicar un ascenso, y volver a bajar.</translation>
    </message>
    <message>
        <source>%1 dives are the most. Remove those that are long past.</source>
        <translation>%1 inmersiones es el máximo. Quite las que pasaron hace mucho.</translation>
    </message>
    <message>
        <source>No dive of the last seven days is on record.</source>
        <translation>No consta ninguna inmersión de los últimos siete días.</translation>
    </message>
    <message>
        <source>Taken over: %1.</source>
        <translation>Tomadas: %1.</translation>
    </message>
    <message>
        <source>In the table already: %1.</source>
        <translation>Ya en la tabla: %1.</translation>
    </message>
    <message>
        <source>Dive of %1, %2</source>
        <translation>Inmersión del %1, %2</translation>
    </message>
    <message>
        <source>Change earlier dives of %1</source>
        <translation>Cambiar inmersiones anteriores de %1</translation>
    </message>
</context>
<context>
    <name>leadline::EarlierDivesModel</name>
    <message>
        <source>Times at the surface, the last one included.</source>
        <translation>Llegadas a la superficie, incluida la última.</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation>Máxima</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutos</translation>
    </message>
    <message>
        <source>Ascents</source>
        <translation>Ascensos</translation>
    </message>
</context>
<context>
    <name>leadline::EditDesk</name>
    <message>
        <source>Change %1</source>
        <translation>Cambiar %1</translation>
    </message>
</context>
<context>
    <name>leadline::FigurePanel</name>
    <message>
        <source>Why?</source>
        <translation>¿Por qué?</translation>
    </message>
</context>
<context>
    <name>leadline::FindingList</name>
    <message>
        <source>Overruled</source>
        <translation>Desestimado</translation>
    </message>
    <message>
        <source>Reason: %1</source>
        <translation>Motivo: %1</translation>
    </message>
</context>
<context>
    <name>leadline::FindingsPanel</name>
    <message>
        <source>set aside</source>
        <translation>desestimado</translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>&amp;Mostrar</translation>
    </message>
    <message>
        <source>Go ahead &amp;anyway…</source>
        <translation>Seguir de &amp;todos modos…</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Avisos</translation>
    </message>
    <message>
        <source>Nothing found</source>
        <translation>Sin avisos</translation>
    </message>
    <message>
        <source>Findings (%1)</source>
        <translation>Avisos (%1)</translation>
    </message>
    <message>
        <source>Choose one to see what to do.</source>
        <translation>Elija uno para ver qué hacer.</translation>
    </message>
    <message>
        <source>Set aside because: %1</source>
        <translation>Desestimado porque: %1</translation>
    </message>
    <message>
        <source>A check of the program itself.</source>
        <translation>Un control del propio programa.</translation>
    </message>
    <message>
        <source>From: %1</source>
        <translation>De: %1</translation>
    </message>
    <message>
        <source>&amp;Withdraw</source>
        <translation>Retir&amp;ar</translation>
    </message>
</context>
<context>
    <name>leadline::GasTab</name>
    <message>
        <source>No guests yet. Add them on the Roster tab and hand out their cylinders; then this tab says how long their air lasts.</source>
        <translation>Aún no hay clientes. Añádalos en la pestaña Clientes y entregue sus botellas; entonces esta pestaña dice cuánto les dura el aire.</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Qué mirar</translation>
    </message>
    <message>
        <source>A&amp;ir</source>
        <translation>A&amp;ire</translation>
    </message>
    <message>
        <source>Warmth and &amp;lead</source>
        <translation>Ca&amp;lor y plomo</translation>
    </message>
    <message>
        <source>S&amp;taff</source>
        <translation>&amp;Personal</translation>
    </message>
    <message>
        <source>Air of the guests</source>
        <translation>Aire de los clientes</translation>
    </message>
    <message>
        <source>&amp;Group</source>
        <translation>Grup&amp;o</translation>
    </message>
    <message>
        <source>If so&amp;mething goes wrong</source>
        <translation>Si algo sale &amp;mal</translation>
    </message>
    <message>
        <source>Wh&amp;y?</source>
        <translation>¿Por &amp;qué?</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todos</translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation>(sin nombre)</translation>
    </message>
</context>
<context>
    <name>leadline::GroupList</name>
    <message>
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Instructor</source>
        <translation>Instructor</translation>
    </message>
    <message>
        <source>Assistant</source>
        <translation>Asistente</translation>
    </message>
    <message>
        <source>Guests</source>
        <translation>Clientes</translation>
    </message>
    <message>
        <source>Remove group</source>
        <translation>Quitar grupo</translation>
    </message>
    <message>
        <source>Change group</source>
        <translation>Cambiar grupo</translation>
    </message>
    <message>
        <source>Nobody yet</source>
        <translation>Nadie todavía</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>Name of group %1</source>
        <translation>Nombre del grupo %1</translation>
    </message>
    <message>
        <source>Instructor of group %1</source>
        <translation>Instructor del grupo %1</translation>
    </message>
    <message>
        <source>Assistant of group %1</source>
        <translation>Asistente del grupo %1</translation>
    </message>
    <message>
        <source>Remove group %1</source>
        <translation>Quitar el grupo %1</translation>
    </message>
    <message numerus="yes">
        <source>%n guests</source>
        <translation>
            <numerusform>%n cliente</numerusform>
            <numerusform>%n clientes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::GuestBodyModel</name>
    <message>
        <source>Guest</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Feels cold
after</source>
        <translation>Siente frío
tras</translation>
    </message>
    <message>
        <source>Too cold
after</source>
        <translation>Demasiado
frío tras</translation>
    </message>
    <message>
        <source>Lead to try
first</source>
        <translation>Plomo para
probar</translation>
    </message>
    <message>
        <source>Lead
carried</source>
        <translation>Plomo
que lleva</translation>
    </message>
    <message>
        <source>Surface,
full</source>
        <translation>Superficie,
llena</translation>
    </message>
    <message>
        <source>Surface,
at the end</source>
        <translation>Superficie,
al final</translation>
    </message>
    <message>
        <source>At depth,
full</source>
        <translation>En el fondo,
llena</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>Traje</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Cuidado con</translation>
    </message>
    <message>
        <source>Guests; who is likely cold first of a group in bold.</source>
        <translation>Clientes; en negrita quien probablemente tiene frío primero de un grupo.</translation>
    </message>
    <message>
        <source>The guest&apos;s group.</source>
        <translation>El grupo del cliente.</translation>
    </message>
    <message>
        <source>The guest begins to feel cold, in the middle case. Rounded down.</source>
        <translation>El cliente empieza a sentir frío, en el caso medio. Redondeado hacia abajo.</translation>
    </message>
    <message>
        <source>The body is as cold as it should get, in the middle case; in brackets from the worst to the best case. The first figure in brackets is the safe one. Rounded down.</source>
        <translation>El cuerpo está tan frío como se admite como máximo, en el caso medio; entre paréntesis, del peor caso al mejor. La primera cifra entre paréntesis es la segura. Redondeado hacia abajo.</translation>
    </message>
    <message>
        <source>Start the check at the surface with this much; in brackets from the least to the most it is likely to be, in the pieces in stock. A guest who floats at the end cannot be held down: check near the end too.</source>
        <translation>Empiece la prueba en la superficie con esta cantidad; entre paréntesis, de lo mínimo a lo máximo probable, en las piezas que hay en existencias. A un cliente que flota al final no se le puede retener abajo: compruébelo también cerca del final.</translation>
    </message>
    <message>
        <source>What the guest carries: Roster, Kit. The next columns are for this much, or for what to try first while it is open.</source>
        <translation>Lo que lleva el cliente: Clientes, Equipo. Las columnas siguientes valen para esta cantidad o, mientras no conste, para la de «Plomo para probar».</translation>
    </message>
    <message>
        <source>With the full cylinder, BCD empty, lungs half full.</source>
        <translation>Con la botella llena, el chaleco vacío y los pulmones medio llenos.</translation>
    </message>
    <message>
        <source>With the cylinder at the reserve, BCD empty, lungs half full: should be neutral.</source>
        <translation>Con la botella en la reserva, el chaleco vacío y los pulmones medio llenos: debería estar neutro.</translation>
    </message>
    <message>
        <source>At the deepest planned point, suit squeezed, cylinder full, BCD empty: what the BCD must hold.</source>
        <translation>En el punto previsto más profundo, traje comprimido, botella llena, chaleco vacío: lo que debe sostener el chaleco.</translation>
    </message>
    <message>
        <source>Thickness of the foam, read from the suit&apos;s label.</source>
        <translation>Grosor de la espuma, leído en la etiqueta del traje.</translation>
    </message>
    <message>
        <source>What needs attention, and what is missing.</source>
        <translation>Lo que requiere atención y lo que falta.</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>open</source>
        <translation>no consta</translation>
    </message>
    <message>
        <source>%1 mm: %2 clo at the surface, %3 clo at depth</source>
        <translation>%1 mm: %2 clo en la superficie, %3 clo en el fondo</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nada</translation>
    </message>
    <message>
        <source>%1, likely cold first</source>
        <translation>%1, probablemente el primero con frío</translation>
    </message>
</context>
<context>
    <name>leadline::GuestBodyPanel</name>
    <message>
        <source>Warmth and lead of each guest</source>
        <translation>Calor y plomo de cada cliente</translation>
    </message>
    <message>
        <source>No guests yet. Add them on the Roster tab with weight, height, suit and cylinder (page Kit); then this says who gets cold first and how much lead to try.</source>
        <translation>Aún no hay clientes. Añádalos en la pestaña Clientes con peso, estatura, traje y botella (página Equipo); entonces aquí se dice quién tiene frío primero y cuánto plomo probar.</translation>
    </message>
    <message>
        <source>Estimates. Shivering or the sign “cold” ends the dive, whatever stands here. Lead is a starting value: check it at the surface before going down (common practice), and allow for the air that will be breathed: a guest light at the end floats up.</source>
        <translation>Estimaciones. Tiritar o la señal «frío» termina la inmersión, diga lo que diga aquí. El plomo es un valor de partida: compruébelo en la superficie antes de bajar (práctica común) y cuente con el aire que se gastará: un cliente ligero al final flota hacia arriba.</translation>
    </message>
    <message>
        <source>Why? Warmth and lead</source>
        <translation>¿Por qué? Calor y plomo</translation>
    </message>
</context>
<context>
    <name>leadline::GuestEditor</name>
    <message>
        <source>&amp;Person</source>
        <translation>Perso&amp;na</translation>
    </message>
    <message>
        <source>S&amp;creening</source>
        <translation>Sal&amp;ud</translation>
    </message>
    <message>
        <source>K&amp;it</source>
        <translation>E&amp;quipo</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Screening</source>
        <translation>Salud</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Not ready: %1</source>
        <translation>No está listo: %1</translation>
    </message>
    <message>
        <source>Not ready: the group or the session is not</source>
        <translation>No está listo: el grupo o la sesión no lo está</translation>
    </message>
    <message>
        <source>May dive, with care: %1</source>
        <translation>Puede bucear, con precaución: %1</translation>
    </message>
    <message>
        <source> (%1 overruled)</source>
        <translation> (desestimados: %1)</translation>
    </message>
    <message>
        <source>stops the dive</source>
        <translation>impide bucear</translation>
    </message>
    <message>
        <source>care</source>
        <translation>precaución</translation>
    </message>
</context>
<context>
    <name>leadline::GuestGasDelegate</name>
    <message>
        <source>Cylinder of the guest</source>
        <translation>Botella del cliente</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Ninguna aún</translation>
    </message>
    <message>
        <source>How the guest breathes</source>
        <translation>Cómo respira el cliente</translation>
    </message>
    <message>
        <source>Pressure as read</source>
        <translation>Presión leída</translation>
    </message>
    <message>
        <source>Temperature of the air when read</source>
        <translation>Temperatura del aire al leer</translation>
    </message>
    <message>
        <source>Measured RMV</source>
        <translation>VMR medido</translation>
    </message>
    <message>
        <source>By class</source>
        <translation>Por clase</translation>
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
        <translation>primero, %1</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Ninguna aún</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation>Sin leer</translation>
    </message>
    <message>
        <source>%1, measured</source>
        <translation>%1, medido</translation>
    </message>
    <message>
        <source>%1, by class</source>
        <translation>%1, por clase</translation>
    </message>
    <message>
        <source>Change a guest&apos;s cylinder</source>
        <translation>Cambiar la botella de un cliente</translation>
    </message>
    <message>
        <source>Change a guest&apos;s pressure</source>
        <translation>Cambiar la presión de un cliente</translation>
    </message>
    <message>
        <source>Change the temperature of a guest&apos;s air</source>
        <translation>Cambiar la temperatura del aire de un cliente</translation>
    </message>
    <message>
        <source>Change how a guest breathes</source>
        <translation>Cambiar cómo respira un cliente</translation>
    </message>
    <message>
        <source>Change a guest&apos;s RMV</source>
        <translation>Cambiar el VMR de un cliente</translation>
    </message>
</context>
<context>
    <name>leadline::GuestModel</name>
    <message>
        <source>Group: stop</source>
        <translation>Grupo: alto</translation>
    </message>
    <message>
        <source>Session: stop</source>
        <translation>Sesión: alto</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Falta</translation>
    </message>
    <message>
        <source>Complete</source>
        <translation>Completo</translation>
    </message>
    <message>
        <source>No %1</source>
        <translation>Falta: %1</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Aún no</translation>
    </message>
    <message>
        <source>?</source>
        <translation>?</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Ninguna aún</translation>
    </message>
    <message>
        <source>Overruled</source>
        <translation>Desestimado</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Edad</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Screening</source>
        <translation>Salud</translation>
    </message>
    <message>
        <source>Consent</source>
        <translation>Consentimiento</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Botella</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
</context>
<context>
    <name>leadline::GuestScreen</name>
    <message>
        <source>Guest screen</source>
        <translation>Pantalla de clientes</translation>
    </message>
    <message>
        <source>For the instructor</source>
        <translation>Para el instructor</translation>
    </message>
    <message>
        <source>Briefing for</source>
        <translation>Briefing para</translation>
    </message>
    <message>
        <source>Time of a page</source>
        <translation>Tiempo por página</translation>
    </message>
    <message>
        <source>Nothing glides</source>
        <translation>Sin movimiento</translation>
    </message>
    <message>
        <source>Language (L)</source>
        <translation>Idioma (L)</translation>
    </message>
    <message>
        <source>Run or pause (R)</source>
        <translation>Reproducir o pausar (R)</translation>
    </message>
    <message>
        <source>Blank (B)</source>
        <translation>En blanco (B)</translation>
    </message>
    <message>
        <source>Full screen (F11)</source>
        <translation>Pantalla completa (F11)</translation>
    </message>
    <message>
        <source>Close (Esc)</source>
        <translation>Cerrar (Esc)</translation>
    </message>
    <message>
        <source>Everybody</source>
        <translation>Todos</translation>
    </message>
    <message numerus="yes">
        <source>%n seconds</source>
        <translation>
            <numerusform>%n segundo</numerusform>
            <numerusform>%n segundos</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::GuestScreenControl</name>
    <message>
        <source>Note known signals</source>
        <translation>Anotar señales conocidas</translation>
    </message>
</context>
<context>
    <name>leadline::GuestTable</name>
    <message>
        <source>Guests</source>
        <translation>Clientes</translation>
    </message>
</context>
<context>
    <name>leadline::KitPage</name>
    <message>
        <source>None yet</source>
        <translation>Ninguna aún</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Botella</translation>
    </message>
    <message>
        <source>C&amp;ylinder</source>
        <translation>&amp;Botella</translation>
    </message>
    <message>
        <source>Fi&amp;lled to</source>
        <translation>Car&amp;gada a</translation>
    </message>
    <message>
        <source>Gas te&amp;mperature</source>
        <translation>Te&amp;mperatura del gas</translation>
    </message>
    <message>
        <source>What others have</source>
        <translation>Lo que tienen otros</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>S&amp;uit</source>
        <translation>Tra&amp;je</translation>
    </message>
    <message>
        <source>&amp;BCD</source>
        <translation>C&amp;haleco</translation>
    </message>
    <message>
        <source>Mas&amp;k</source>
        <translation>Más&amp;cara</translation>
    </message>
    <message>
        <source>Fi&amp;ns</source>
        <translation>A&amp;letas</translation>
    </message>
    <message>
        <source>Regulat&amp;or no.</source>
        <translation>Regula&amp;dor n.º</translation>
    </message>
    <message>
        <source>Lea&amp;d</source>
        <translation>&amp;Plomo</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Plomo</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation>Tallas</translation>
    </message>
    <message>
        <source>Heigh&amp;t</source>
        <translation>Esta&amp;tura</translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation>Pes&amp;o</translation>
    </message>
    <message>
        <source>Shoe si&amp;ze</source>
        <translation>Cal&amp;zado</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Estatura</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Shoe size</source>
        <translation>Talla de calzado</translation>
    </message>
    <message>
        <source>Read the gauge and enter what it shows.</source>
        <translation>Lea el manómetro y anote lo que marca.</translation>
    </message>
</context>
<context>
    <name>leadline::KnownGuestList</name>
    <message>
        <source>Persons on record</source>
        <translation>Personas registradas</translation>
    </message>
    <message>
        <source>born %1</source>
        <translation>nacimiento %1</translation>
    </message>
    <message>
        <source>birth date not known</source>
        <translation>fecha de nacimiento desconocida</translation>
    </message>
    <message numerus="yes">
        <source>%n sessions</source>
        <translation>
            <numerusform>%n sesión</numerusform>
            <numerusform>%n sesiones</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>leadline::LanguageButton</name>
    <message>
        <source>None yet</source>
        <translation>Ninguno aún</translation>
    </message>
</context>
<context>
    <name>leadline::LeverChart</name>
    <message>
        <source>What would &amp;buy more minutes</source>
        <translation>Qué daría más mi&amp;nutos</translation>
    </message>
    <message>
        <source>all last the plan</source>
        <translation>a todos les dura el aire</translation>
    </message>
    <message>
        <source>A click or Enter makes the change; each judged alone.</source>
        <translation>Un clic o Intro hace el cambio; cada uno se juzga por separado.</translation>
    </message>
    <message>
        <source>What would buy more minutes</source>
        <translation>Qué daría más minutos</translation>
    </message>
    <message>
        <source>Take &amp;it back</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>Nothing here would help: the air is not what limits this dive.</source>
        <translation>Nada de aquí ayudaría: no es el aire lo que limita esta inmersión.</translation>
    </message>
    <message>
        <source>Once a guest has a cylinder and its pressure, the changes that would help stand here.</source>
        <translation>En cuanto un cliente tenga botella y presión, aquí aparecen los cambios que ayudarían.</translation>
    </message>
    <message>
        <source>Done: %1.</source>
        <translation>Hecho: %1.</translation>
    </message>
</context>
<context>
    <name>leadline::LeverModel</name>
    <message>
        <source>Apply: %1</source>
        <translation>Aplicar: %1</translation>
    </message>
</context>
<context>
    <name>leadline::LogChart</name>
    <message>
        <source>up too fast: %1</source>
        <translation>sube demasiado rápido: %1</translation>
    </message>
    <message>
        <source>too deep: %1</source>
        <translation>demasiado profundo: %1</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>previsto</translation>
    </message>
    <message>
        <source>No depths were read for %1.</source>
        <translation>No se leyeron profundidades de %1.</translation>
    </message>
    <message>
        <source>Depth over time, planned and logged</source>
        <translation>Profundidad en el tiempo, prevista y registrada</translation>
    </message>
</context>
<context>
    <name>leadline::LungChart</name>
    <message>
        <source>Held breath on the way up</source>
        <translation>Respiración contenida al subir</translation>
    </message>
    <message>
        <source>The same breath at the surface</source>
        <translation>La misma respiración en la superficie</translation>
    </message>
    <message>
        <source>A full breath held here</source>
        <translation>Respiración completa contenida aquí</translation>
    </message>
    <message>
        <source>%1 up: a lung can tear</source>
        <translation>%1 de subida: un pulmón puede desgarrarse</translation>
    </message>
    <message>
        <source>%1 up:
a lung can tear</source>
        <translation>%1 de subida:
un pulmón puede desgarrarse</translation>
    </message>
    <message>
        <source>From %1, full lungs:</source>
        <translation>Desde %1, pulmones llenos:</translation>
    </message>
    <message>
        <source>at the surface %1</source>
        <translation>en la superficie %1</translation>
    </message>
    <message>
        <source>surface before the limit</source>
        <translation>superficie antes del límite</translation>
    </message>
    <message>
        <source>can tear after %1</source>
        <translation>puede desgarrarse tras %1</translation>
    </message>
    <message>
        <source>In the literature: lungs tore from %1 to 80 mmHg across them (Schaefer and others, 1958; Malhotra and Wright, 1961; from memory; the lower end is the safe side). Divers were hurt coming up from 1 m (Benton and others, 1996) and from 1 to 2 m (Harvey and others, 2024).</source>
        <translation>En la bibliografía: los pulmones se desgarraron con %1 a 80 mmHg de diferencia (Schaefer y otros, 1958; Malhotra y Wright, 1961; de memoria; el extremo bajo es el lado seguro). Hubo buceadores heridos al subir desde 1 m (Benton y otros, 1996) y desde 1 a 2 m (Harvey y otros, 2024).</translation>
    </message>
</context>
<context>
    <name>leadline::MainWindow</name>
    <message>
        <source>Open a session</source>
        <translation>Abrir una sesión</translation>
    </message>
    <message>
        <source>Sessions (*.json);;All files (*)</source>
        <translation>Sesiones (*.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Write the session to a file</source>
        <translation>Escribir la sesión en un archivo</translation>
    </message>
    <message>
        <source>Sessions (*.json)</source>
        <translation>Sesiones (*.json)</translation>
    </message>
    <message>
        <source>Not saved. %1</source>
        <translation>Sin guardar. %1</translation>
    </message>
    <message>
        <source>The five questions</source>
        <translation>Las cinco preguntas</translation>
    </message>
    <message>
        <source>&amp;1 Roster</source>
        <translation>&amp;1 Clientes</translation>
    </message>
    <message>
        <source>&amp;2 Site</source>
        <translation>&amp;2 Lugar</translation>
    </message>
    <message>
        <source>&amp;3 Gas</source>
        <translation>&amp;3 Gas</translation>
    </message>
    <message>
        <source>&amp;4 Briefing Sheet</source>
        <translation>&amp;4 Hoja de briefing</translation>
    </message>
    <message>
        <source>&amp;5 Debrief</source>
        <translation>&amp;5 Debriefing</translation>
    </message>
    <message>
        <source>&amp;Keep in my records</source>
        <translation>&amp;Guardar en mis registros</translation>
    </message>
    <message>
        <source>Kept. Every change is saved from now on.</source>
        <translation>Guardado. Desde ahora se guarda cada cambio.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Close the message</source>
        <translation>Cerrar el mensaje</translation>
    </message>
    <message>
        <source>Written to %1. The file holds names and who may dive: keep it safe.</source>
        <translation>Escrito en %1. El archivo contiene nombres y quién puede bucear: guárdelo bien.</translation>
    </message>
    <message>
        <source>Opened from the file %1: changes are not kept.</source>
        <translation>Abierto desde el archivo %1: los cambios no se guardan.</translation>
    </message>
    <message>
        <source>The records could not be opened: changes are not kept.</source>
        <translation>No se pudieron abrir los registros: los cambios no se guardan.</translation>
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
        <translation>Las teclas de flecha leen lo que vale a cada profundidad.</translation>
    </message>
</context>
<context>
    <name>leadline::MeaningHeader</name>
    <message>
        <source>Meaning of the column %1</source>
        <translation>Significado de la columna %1</translation>
    </message>
</context>
<context>
    <name>leadline::NoticeStrip</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Undo this step</source>
        <translation>Deshacer este paso</translation>
    </message>
</context>
<context>
    <name>leadline::OverruleDialog</name>
    <message>
        <source>Go ahead despite this finding</source>
        <translation>Seguir adelante pese a este aviso</translation>
    </message>
    <message>
        <source>The reason is kept with the session. Local law and your centre&apos;s standard come first: they cannot be set aside here.</source>
        <translation>El motivo se guarda con la sesión. La ley local y las normas de su centro van primero: aquí no se pueden desestimar.</translation>
    </message>
    <message>
        <source>Why is it right to go ahead?</source>
        <translation>¿Por qué es correcto seguir adelante?</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Motivo</translation>
    </message>
    <message>
        <source>&amp;Decided by</source>
        <translation>&amp;Decidido por</translation>
    </message>
    <message>
        <source>&amp;Go ahead</source>
        <translation>&amp;Seguir</translation>
    </message>
    <message>
        <source>Set a finding aside</source>
        <translation>Desestimar un aviso</translation>
    </message>
    <message>
        <source>Withdraw a decision</source>
        <translation>Retirar una decisión</translation>
    </message>
</context>
<context>
    <name>leadline::PagePreview</name>
    <message>
        <source>Preview of the pages</source>
        <translation>Vista previa de las páginas</translation>
    </message>
</context>
<context>
    <name>leadline::PeopleDialog</name>
    <message>
        <source>Guests on record</source>
        <translation>Clientes registrados</translation>
    </message>
    <message>
        <source>Write all that is kept of this guest</source>
        <translation>Escribir todo lo que se guarda de este cliente</translation>
    </message>
    <message>
        <source>Page to read (*.html);;Data (*.json)</source>
        <translation>Página para leer (*.html);;Datos (*.json)</translation>
    </message>
    <message>
        <source>Find by name, phone or e-mail</source>
        <translation>Buscar por nombre, teléfono o correo</translation>
    </message>
    <message>
        <source>Find a guest by name, phone or e-mail</source>
        <translation>Buscar un cliente por nombre, teléfono o correo</translation>
    </message>
    <message>
        <source>&amp;Show them</source>
        <translation>&amp;Mostrarlos</translation>
    </message>
    <message>
        <source>In a &amp;month</source>
        <translation>Dentro de un me&amp;s</translation>
    </message>
    <message>
        <source>Last session</source>
        <translation>Última sesión</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sesiones</translation>
    </message>
    <message>
        <source>Who is here t&amp;wice…</source>
        <translation>&amp;Quién está dos veces…</translation>
    </message>
    <message>
        <source>Mer&amp;ge two…</source>
        <translation>&amp;Unir dos…</translation>
    </message>
    <message>
        <source>Select two guests who are one person</source>
        <translation>Seleccione dos clientes que sean una sola persona</translation>
    </message>
    <message>
        <source>Take a merge &amp;back</source>
        <translation>Des&amp;hacer una unión</translation>
    </message>
    <message>
        <source>Write to a &amp;file…</source>
        <translation>Escribir en un &amp;archivo…</translation>
    </message>
    <message>
        <source>&amp;Remove…</source>
        <translation>E&amp;liminar…</translation>
    </message>
    <message>
        <source>More than %L1 found</source>
        <translation>Se encontraron más de %L1</translation>
    </message>
    <message numerus="yes">
        <source>%Ln guests</source>
        <translation>
            <numerusform>%Ln cliente</numerusform>
            <numerusform>%Ln clientes</numerusform>
        </translation>
    </message>
    <message>
        <source>Nobody found</source>
        <translation>No se encontró a nadie</translation>
    </message>
    <message numerus="yes">
        <source>%Ln found</source>
        <translation>
            <numerusform>%Ln encontrado</numerusform>
            <numerusform>%Ln encontrados</numerusform>
        </translation>
    </message>
    <message>
        <source>health answers</source>
        <translation>respuestas de salud</translation>
    </message>
    <message>
        <source>phone and e-mail</source>
        <translation>teléfono y correo</translation>
    </message>
    <message>
        <source>everything that tells who it was</source>
        <translation>todo lo que diga quién era</translation>
    </message>
    <message>
        <source>Due for erasure: %1.</source>
        <translation>Pendiente de borrar: %1.</translation>
    </message>
    <message>
        <source>Select a guest to see what is known.</source>
        <translation>Seleccione un cliente para ver lo que se sabe.</translation>
    </message>
    <message>
        <source>Two selected: merge them if they are one person.</source>
        <translation>Dos seleccionados: únalos si son una sola persona.</translation>
    </message>
    <message>
        <source>Several selected.</source>
        <translation>Varios seleccionados.</translation>
    </message>
    <message>
        <source>shoe %1</source>
        <translation>calzado %1</translation>
    </message>
    <message>
        <source>air use %1</source>
        <translation>consumo %1</translation>
    </message>
    <message numerus="yes">
        <source>%n dives before</source>
        <translation>
            <numerusform>%n inmersión previa</numerusform>
            <numerusform>%n inmersiones previas</numerusform>
        </translation>
    </message>
    <message>
        <source>Merged into this guest: %1</source>
        <translation>Unidos a este cliente: %1</translation>
    </message>
    <message numerus="yes">
        <source>%Ln guests are due for erasure by the centre&apos;s periods. Nothing is erased by itself.</source>
        <translation>
            <numerusform>%Ln cliente está pendiente de borrar según los plazos del centro. Nada se borra por sí solo.</numerusform>
            <numerusform>%Ln clientes están pendientes de borrar según los plazos del centro. Nada se borra por sí solo.</numerusform>
        </translation>
    </message>
    <message>
        <source>%L1 due for erasure</source>
        <translation>%L1 pendientes de borrar</translation>
    </message>
    <message>
        <source>Looking for guests on record twice…</source>
        <translation>Buscando clientes registrados dos veces…</translation>
    </message>
    <message>
        <source>Taken back: %1 is a guest of their own again.</source>
        <translation>Deshecho: %1 vuelve a ser un cliente aparte.</translation>
    </message>
    <message>
        <source>Written to %1. It holds personal data: hand it to nobody but the guest.</source>
        <translation>Escrito en %1. Contiene datos personales: no lo entregue a nadie más que al cliente.</translation>
    </message>
    <message>
        <source>Nobody is removed while the open session is not saved. %1</source>
        <translation>No se elimina a nadie mientras la sesión abierta no esté guardada. %1</translation>
    </message>
    <message>
        <source>Removing the guest…</source>
        <translation>Eliminando al cliente…</translation>
    </message>
    <message>
        <source>Removed. %1</source>
        <translation>Eliminado. %1</translation>
    </message>
    <message>
        <source>Removed.</source>
        <translation>Eliminado.</translation>
    </message>
    <message>
        <source>Removed. Another program reads the records: close it, and Leadline after it, so that nothing is left on the disk.</source>
        <translation>Eliminado. Otro programa está leyendo los registros: ciérrelo, y después Leadline, para que no quede nada en el disco.</translation>
    </message>
</context>
<context>
    <name>leadline::PeopleModel</name>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Nacimiento</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>Last session</source>
        <translation>Última sesión</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sesiones</translation>
    </message>
</context>
<context>
    <name>leadline::PersonPage</name>
    <message>
        <source>as measured</source>
        <translation>según lo medido</translation>
    </message>
    <message>
        <source>from the choice above</source>
        <translation>según la elección de arriba</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>masa corporal</translation>
    </message>
    <message>
        <source>a suit thin for this water</source>
        <translation>un traje fino para esta agua</translation>
    </message>
    <message>
        <source>current</source>
        <translation>corriente</translation>
    </message>
    <message>
        <source>Planned with %1, %2</source>
        <translation>Planificado con %1, %2</translation>
    </message>
    <message>
        <source>Planned with %1, %2 and: %3</source>
        <translation>Planificado con %1, %2, más: %3</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>&amp;Written consent seen</source>
        <translation>&amp;Consentimiento escrito visto</translation>
    </message>
    <message>
        <source>Certified diver</source>
        <translation>Buceador certificado</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>Nom&amp;bre</translation>
    </message>
    <message>
        <source>&amp;Born</source>
        <translation>Naci&amp;miento</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>Gro&amp;up</source>
        <translation>Grup&amp;o</translation>
    </message>
    <message>
        <source>Guardian</source>
        <translation>Representante</translation>
    </message>
    <message>
        <source>Comes along, uses a place in the group and needs no teaching.</source>
        <translation>Acompaña, ocupa una plaza en el grupo y no necesita instrucción.</translation>
    </message>
    <message>
        <source>Companion</source>
        <translation>Acompañante</translation>
    </message>
    <message>
        <source>In the guest&apos;s life, before this one. Empty: not asked.</source>
        <translation>En la vida del cliente, antes de esta. Vacío: no se preguntó.</translation>
    </message>
    <message>
        <source>Dives made before</source>
        <translation>Inmersiones previas</translation>
    </message>
    <message>
        <source>Guardian&apos;s written consent seen</source>
        <translation>Consentimiento escrito del representante legal visto</translation>
    </message>
    <message>
        <source>Companion, a certified diver</source>
        <translation>Acompañante, buceador certificado</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Consent</source>
        <translation>Consentimiento</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation>Correo</translation>
    </message>
    <message>
        <source>Name: a guest needs one. The last one is kept.</source>
        <translation>Nombre: un cliente necesita uno. Se conserva el último.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation>Fecha de nacimiento</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; is not a date. Write it as 17/5/1990, with four digits for the year.</source>
        <translation>%1: «%2» no es una fecha. Escríbala así: 17/5/1990, con el año de cuatro cifras.</translation>
    </message>
    <message>
        <source>Breathing</source>
        <translation>Respiración</translation>
    </message>
    <message>
        <source>Brea&amp;thes</source>
        <translation>Res&amp;pira</translation>
    </message>
    <message>
        <source>Air used a minute at the surface, from an own past dive.</source>
        <translation>Aire gastado por minuto en la superficie, de una inmersión propia anterior.</translation>
    </message>
    <message>
        <source>&amp;Measured</source>
        <translation>Me&amp;dido</translation>
    </message>
    <message>
        <source>Measured breathing</source>
        <translation>Respiración medida</translation>
    </message>
    <message>
        <source>For staff. Never printed. Not for health.</source>
        <translation>Para el personal. Nunca se imprime. No es para datos de salud.</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>No&amp;ta</translation>
    </message>
    <message>
        <source>Note: holds 2000 characters; the rest was cut off.</source>
        <translation>Nota: caben 2000 caracteres; el resto se cortó.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Take over %1 from the records</source>
        <translation>Tomar %1 de los registros</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Aún no</translation>
    </message>
    <message>
        <source>%1 years old on the day</source>
        <translation>%1 años ese día</translation>
    </message>
    <message>
        <source>Age not known</source>
        <translation>Edad desconocida</translation>
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
        <translation>No hay reglas marcadas con las que comparar este lugar.</translation>
    </message>
    <message>
        <source>Nothing about the place breaks a rule that is ticked.</source>
        <translation>Nada del lugar incumple una regla marcada.</translation>
    </message>
</context>
<context>
    <name>leadline::PlaceForm</name>
    <message>
        <source>Sea</source>
        <translation>Mar</translation>
    </message>
    <message>
        <source>Fresh water</source>
        <translation>Agua dulce</translation>
    </message>
    <message>
        <source>Brackish</source>
        <translation>Salobre</translation>
    </message>
    <message>
        <source>Change the site&apos;s name</source>
        <translation>Cambiar el nombre del lugar</translation>
    </message>
    <message>
        <source>Name of the site</source>
        <translation>Nombre del lugar</translation>
    </message>
    <message>
        <source>Known sites</source>
        <translation>Lugares conocidos</translation>
    </message>
    <message>
        <source>Known sites from your records; choosing one fills in this form. Down opens the list.</source>
        <translation>Lugares conocidos de sus registros; al elegir uno se rellena este formulario. La flecha abajo abre la lista.</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>N&amp;ombre</translation>
    </message>
    <message>
        <source>Change the entry</source>
        <translation>Cambiar la entrada</translation>
    </message>
    <message>
        <source>Entr&amp;y</source>
        <translation>En&amp;trada</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>No se sabe</translation>
    </message>
    <message>
        <source>The deepest a guest could sink there</source>
        <translation>Lo más hondo que un cliente podría hundirse allí</translation>
    </message>
    <message>
        <source>Change the bottom depth</source>
        <translation>Cambiar la profundidad del fondo</translation>
    </message>
    <message>
        <source>&amp;Bottom depth</source>
        <translation>&amp;Prof. del fondo</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Otra</translation>
    </message>
    <message>
        <source>Salinity</source>
        <translation>Salinidad</translation>
    </message>
    <message>
        <source>Practical salinity, a number without unit: 0 fresh water, 35 open sea</source>
        <translation>Salinidad práctica, un número sin unidad: 0 agua dulce, 35 mar abierto</translation>
    </message>
    <message>
        <source>Change the salinity</source>
        <translation>Cambiar la salinidad</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Kind of water</source>
        <translation>Tipo de agua</translation>
    </message>
    <message>
        <source>Of the water&apos;s surface above the sea</source>
        <translation>De la superficie del agua sobre el mar</translation>
    </message>
    <message>
        <source>Change the altitude</source>
        <translation>Cambiar la altitud</translation>
    </message>
    <message>
        <source>&amp;Altitude</source>
        <translation>&amp;Altitud</translation>
    </message>
    <message>
        <source>North positive, south negative; gravity follows from it</source>
        <translation>Norte positivo, sur negativo; de ella sale la gravedad</translation>
    </message>
    <message>
        <source>Change the latitude</source>
        <translation>Cambiar la latitud</translation>
    </message>
    <message>
        <source>La&amp;titude</source>
        <translation>&amp;Latitud</translation>
    </message>
    <message>
        <source>Change the meeting place</source>
        <translation>Cambiar el punto de encuentro</translation>
    </message>
    <message>
        <source>Where guests come together</source>
        <translation>Dónde se reúnen los clientes</translation>
    </message>
    <message>
        <source>&amp;Meeting place</source>
        <translation>P&amp;unto de encuentro</translation>
    </message>
    <message>
        <source>Change the emergency number</source>
        <translation>Cambiar el número de emergencia</translation>
    </message>
    <message>
        <source>Printed on every card</source>
        <translation>Se imprime en cada tarjeta</translation>
    </message>
    <message>
        <source>Emergency n&amp;umber</source>
        <translation>&amp;N.º de emergencia</translation>
    </message>
    <message>
        <source>Oxygen, phone or radio, nearest chamber, the way out, how to recall</source>
        <translation>Oxígeno, teléfono o radio, cámara más cercana, salida, cómo avisar para volver</translation>
    </message>
    <message>
        <source>Emergency &amp;plan</source>
        <translation>Plan de e&amp;mergencia</translation>
    </message>
    <message>
        <source>Change the emergency plan</source>
        <translation>Cambiar el plan de emergencia</translation>
    </message>
    <message>
        <source>Take the site %1</source>
        <translation>Tomar el lugar %1</translation>
    </message>
</context>
<context>
    <name>leadline::PlaceNumbers</name>
    <message>
        <source>Why?</source>
        <translation>¿Por qué?</translation>
    </message>
    <message>
        <source>Why? %1</source>
        <translation>¿Por qué? %1</translation>
    </message>
</context>
<context>
    <name>leadline::PressureChart</name>
    <message>
        <source>Pressure over time</source>
        <translation>Presión en el tiempo</translation>
    </message>
    <message>
        <source>%1, first</source>
        <translation>%1, primero</translation>
    </message>
    <message>
        <source>3000 psi</source>
        <translation>3000 psi</translation>
    </message>
    <message>
        <source>240 min</source>
        <translation>240 min</translation>
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
            <numerusform>y %n más en la tabla</numerusform>
            <numerusform>y %n más en la tabla</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2 after %3, at %4</source>
        <translation>%1: %2 tras %3, a %4</translation>
    </message>
    <message>
        <source>At %1 after, staying down (10 to 90 of 100 dives)</source>
        <translation>A %1 tras, si se quedan abajo (10 a 90 de 100 inmersiones)</translation>
    </message>
    <message>
        <source>%1: at %2 after %3</source>
        <translation>%1: a %2 tras %3</translation>
    </message>
    <message>
        <source>Reserve %1</source>
        <translation>Reserva %1</translation>
    </message>
    <message>
        <source>Planned end %1</source>
        <translation>Fin previsto %1</translation>
    </message>
</context>
<context>
    <name>leadline::ProfileDelegate</name>
    <message>
        <source>What is done on the way to the corner</source>
        <translation>Lo que se hace camino del punto</translation>
    </message>
    <message>
        <source>Time of the corner</source>
        <translation>Tiempo del punto</translation>
    </message>
    <message>
        <source>Depth of the corner</source>
        <translation>Profundidad del punto</translation>
    </message>
</context>
<context>
    <name>leadline::ProfileModel</name>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>What on the way</source>
        <translation>Qué se hace</translation>
    </message>
    <message>
        <source>Minutes after the start</source>
        <translation>Minutos desde el inicio</translation>
    </message>
    <message>
        <source>Depth of the group at that time</source>
        <translation>Profundidad del grupo en ese momento</translation>
    </message>
    <message>
        <source>What the group does on the way to this corner</source>
        <translation>Lo que hace el grupo camino de este punto</translation>
    </message>
    <message>
        <source>Change the time of a corner</source>
        <translation>Cambiar el tiempo de un punto</translation>
    </message>
    <message>
        <source>Change the depth of a corner</source>
        <translation>Cambiar la profundidad de un punto</translation>
    </message>
    <message>
        <source>Change what is done on a leg</source>
        <translation>Cambiar lo que se hace en un tramo</translation>
    </message>
</context>
<context>
    <name>leadline::ProfilePanel</name>
    <message>
        <source>&amp;Deepest</source>
        <translation>Má&amp;xima</translation>
    </message>
    <message>
        <source>Depth of the tour</source>
        <translation>Profundidad del recorrido</translation>
    </message>
    <message>
        <source>Skills at</source>
        <translation>Ejercicios a</translation>
    </message>
    <message>
        <source>Depth at which the first exercises are done</source>
        <translation>Profundidad a la que se hacen los primeros ejercicios</translation>
    </message>
    <message>
        <source>Skills for</source>
        <translation>Ejercicios</translation>
    </message>
    <message>
        <source>Minutes of exercises</source>
        <translation>Minutos de ejercicios</translation>
    </message>
    <message>
        <source>Tour &amp;for</source>
        <translation>Re&amp;corrido</translation>
    </message>
    <message>
        <source>Minutes of the tour</source>
        <translation>Minutos del recorrido</translation>
    </message>
    <message>
        <source>Dra&amp;w the plain dive</source>
        <translation>Tra&amp;zar inmersión simple</translation>
    </message>
    <message>
        <source>Replaces the corners by: surface, down, skills, down, tour, up</source>
        <translation>Sustituye los puntos por: superficie, bajada, ejercicios, bajada, recorrido, subida</translation>
    </message>
    <message>
        <source>Changed by hand.</source>
        <translation>Cambiado a mano.</translation>
    </message>
    <message>
        <source>Corners of the profile</source>
        <translation>Puntos del perfil</translation>
    </message>
    <message>
        <source>Add c&amp;orner</source>
        <translation>Aña&amp;dir punto</translation>
    </message>
    <message>
        <source>Remove corner</source>
        <translation>Quitar punto</translation>
    </message>
    <message>
        <source>&amp;Later corners move along</source>
        <translation>Mover tam&amp;bién los siguientes</translation>
    </message>
    <message>
        <source>When a corner moves in time, the legs after it keep their length and their speed</source>
        <translation>Cuando un punto se mueve en el tiempo, los tramos siguientes conservan su duración y su velocidad</translation>
    </message>
    <message>
        <source>Draw the plain dive</source>
        <translation>Trazar la inmersión simple</translation>
    </message>
</context>
<context>
    <name>leadline::ProfileView</name>
    <message>
        <source>Dive profile</source>
        <translation>Perfil de la inmersión</translation>
    </message>
    <message>
        <source>Drag this corner, with Shift in small steps. With the keyboard: Tab to the next corner, arrows, Insert, Delete.</source>
        <translation>Arrastre este punto, con Mayús a pasos pequeños. Con el teclado: Tab al punto siguiente, flechas, Ins, Supr.</translation>
    </message>
    <message>
        <source>%1 min   %2</source>
        <translation>%1 min   %2</translation>
    </message>
    <message>
        <source>   %1 absolute</source>
        <translation>   %1 absoluta</translation>
    </message>
    <message>
        <source>%1, deepest %2. Tab goes from corner to corner; arrows move it, Insert adds one, Delete removes it. The table beside it holds the same numbers.</source>
        <translation>%1, máxima %2. Tab pasa de punto a punto; las flechas lo mueven, Ins añade uno, Supr lo quita. La tabla de al lado contiene los mismos números.</translation>
    </message>
    <message>
        <source>Corner %1 of %2, end of %3: %4</source>
        <translation>Punto %1 de %2, final de %3: %4</translation>
    </message>
    <message>
        <source>Move a leg of the profile</source>
        <translation>Mover un tramo del perfil</translation>
    </message>
    <message>
        <source>Move a corner of the profile</source>
        <translation>Mover un punto del perfil</translation>
    </message>
    <message>
        <source>Add a corner to the profile</source>
        <translation>Añadir un punto al perfil</translation>
    </message>
    <message>
        <source>Remove a corner of the profile</source>
        <translation>Quitar un punto del perfil</translation>
    </message>
</context>
<context>
    <name>leadline::QuestionForm</name>
    <message>
        <source>%1: no to all that are open</source>
        <translation>%1: no a todas las pendientes</translation>
    </message>
    <message>
        <source>Health, before the day</source>
        <translation>Salud, antes del día</translation>
    </message>
    <message>
        <source>Health</source>
        <translation>Salud</translation>
    </message>
    <message>
        <source>%1, more closely</source>
        <translation>%1, con más detalle</translation>
    </message>
    <message>
        <source>Today, before kitting up</source>
        <translation>Hoy, antes de equiparse</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>All others no to&amp;day</source>
        <translation>Hoy, no a to&amp;do lo demás</translation>
    </message>
    <message>
        <source>All no to&amp;day</source>
        <translation>Hoy, no a to&amp;do</translation>
    </message>
    <message>
        <source>All &amp;others no</source>
        <translation>No a &amp;todo lo demás</translation>
    </message>
    <message>
        <source>All n&amp;o</source>
        <translation>No a &amp;todo</translation>
    </message>
    <message>
        <source>All others no</source>
        <translation>No a todo lo demás</translation>
    </message>
    <message>
        <source>All no</source>
        <translation>No a todo</translation>
    </message>
</context>
<context>
    <name>leadline::RecoveryKeyDialog</name>
    <message>
        <source>New recovery key</source>
        <translation>Nueva clave de recuperación</translation>
    </message>
    <message>
        <source>&amp;Replace the old key</source>
        <translation>&amp;Sustituir la clave anterior</translation>
    </message>
</context>
<context>
    <name>leadline::RecoveryPage</name>
    <message>
        <source>Save the recovery key</source>
        <translation>Guardar la clave de recuperación</translation>
    </message>
    <message>
        <source>recovery-key.pdf</source>
        <translation>clave-de-recuperacion.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>I&amp;mprimir…</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>&amp;Guardar como PDF…</translation>
    </message>
    <message>
        <source>This is the recovery key. It opens the vault when the passphrase is forgotten or this computer is lost. Put it on paper and lock it away; it is not shown again.</source>
        <translation>Esta es la clave de recuperación. Abre la caja fuerte cuando se olvida la frase de paso o se pierde este ordenador. Pásela a papel y guárdela bajo llave; no se muestra otra vez.</translation>
    </message>
    <message>
        <source>Without passphrase and without this key nobody can open the vault any more.</source>
        <translation>Sin la frase de paso y sin esta clave nadie puede abrir ya la caja fuerte.</translation>
    </message>
    <message>
        <source>Group %1: %2</source>
        <translation>Grupo %1: %2</translation>
    </message>
    <message>
        <source>&amp;Type group %1 from your paper:</source>
        <translation>Escri&amp;ba el grupo %1 de su papel:</translation>
    </message>
    <message>
        <source>Recovery key</source>
        <translation>Clave de recuperación</translation>
    </message>
    <message>
        <source>Saved to %1. Print it, lock the paper away and delete the file.</source>
        <translation>Guardada en %1. Imprímala, guarde el papel bajo llave y elimine el archivo.</translation>
    </message>
    <message>
        <source>No printer is installed on this computer. Write the key down, or save it as a PDF on a stick.</source>
        <translation>No hay ninguna impresora instalada en este ordenador. Escriba la clave a mano o guárdela como PDF en una memoria USB.</translation>
    </message>
    <message>
        <source>Sent to the printer. Check the paper before you go on.</source>
        <translation>Enviada a la impresora. Compruebe el papel antes de seguir.</translation>
    </message>
    <message>
        <source>The printer did not take it. Check that it is switched on, or write the key down.</source>
        <translation>La impresora no la aceptó. Compruebe que está encendida o escriba la clave a mano.</translation>
    </message>
</context>
<context>
    <name>leadline::RedListDialog</name>
    <message>
        <source>Red list</source>
        <translation>Lista roja</translation>
    </message>
    <message>
        <source>Save the list</source>
        <translation>Guardar la lista</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Who must still see a physician, bring consent, answer or renew, over all sessions on record from today on. Only outcomes are looked at; nothing is unlocked.</source>
        <translation>Quién debe aún ver a un médico, traer un consentimiento, contestar o renovar, en todas las sesiones registradas desde hoy. Solo se miran los resultados; no se abre la caja fuerte.</translation>
    </message>
    <message>
        <source>Nobody is waiting for anything.</source>
        <translation>Nadie tiene nada pendiente.</translation>
    </message>
    <message>
        <source>&amp;Open the session</source>
        <translation>&amp;Abrir la sesión</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>&amp;Guardar como PDF…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>Saved to %1. It holds names and phone numbers: keep it safe.</source>
        <translation>Guardada en %1. Contiene nombres y teléfonos: guárdela bien.</translation>
    </message>
</context>
<context>
    <name>leadline::RedListModel</name>
    <message>
        <source>None on record</source>
        <translation>No consta</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Still waited for</source>
        <translation>Aún pendiente</translation>
    </message>
    <message>
        <source>Meets</source>
        <translation>Encuentro</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>Still needed</source>
        <translation>Aún falta</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Sesión</translation>
    </message>
</context>
<context>
    <name>leadline::RemovalDialog</name>
    <message>
        <source>&amp;Everything that tells who it was</source>
        <translation>&amp;Todo lo que diga quién era</translation>
    </message>
    <message>
        <source>Only &amp;phone and e-mail</source>
        <translation>Solo teléfono y c&amp;orreo</translation>
    </message>
    <message>
        <source>Only &amp;health answers</source>
        <translation>Solo respuestas de &amp;salud</translation>
    </message>
    <message>
        <source>I know that this &amp;cannot be undone</source>
        <translation>Sé que esto &amp;no se puede deshacer</translation>
    </message>
    <message>
        <source>Remove a guest</source>
        <translation>Eliminar a un cliente</translation>
    </message>
    <message>
        <source>Goes</source>
        <translation>Se va</translation>
    </message>
    <message>
        <source>Stays</source>
        <translation>Se queda</translation>
    </message>
    <message>
        <source>Also delete older &amp;copies of the records (%1)</source>
        <translation>Eliminar también &amp;copias antiguas de los registros (%1)</translation>
    </message>
    <message>
        <source>They were made before an update and still hold this guest and all others.</source>
        <translation>Se hicieron antes de una actualización y contienen todavía a este cliente y a todos los demás.</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Eliminar</translation>
    </message>
    <message>
        <source>Care: the last session is less than %1 months ago, and records of it may have to be kept that long (%2; %3). Local law comes first: ask before you remove.</source>
        <translation>Precaución: la última sesión fue hace menos de %1 meses, y puede que haya que conservar sus registros ese tiempo (%2; %3). La ley local va primero: pregunte antes de eliminar.</translation>
    </message>
    <message numerus="yes">
        <source>%n copies in Records &gt; Copies of the records may still hold this guest. Delete them there, or they bring the guest back when one is restored.</source>
        <translation>
            <numerusform>%n copia de Registros &gt; Copias de los registros puede contener todavía a este cliente. Elimínela allí o traerá de vuelta al cliente cuando se restaure.</numerusform>
            <numerusform>%n copias de Registros &gt; Copias de los registros pueden contener todavía a este cliente. Elimínelas allí o traerán de vuelta al cliente cuando se restaure alguna.</numerusform>
        </translation>
    </message>
    <message>
        <source>Files you wrote or printed, and copies kept elsewhere, are not touched: remove them yourself.</source>
        <translation>Los archivos que escribió o imprimió y las copias guardadas en otro sitio no se tocan: elimínelos usted.</translation>
    </message>
    <message>
        <source>Health answers and sealed records: %1</source>
        <translation>Respuestas de salud y registros sellados: %1</translation>
    </message>
    <message>
        <source>Phone numbers and e-mail addresses: %1</source>
        <translation>Números de teléfono y direcciones de correo: %1</translation>
    </message>
    <message>
        <source>Sessions: %1, logged dives: %2</source>
        <translation>Sesiones: %1, inmersiones con bitácora: %2</translation>
    </message>
    <message>
        <source>%1, with the guest&apos;s name and all else</source>
        <translation>%1, con el nombre del cliente y todo lo demás</translation>
    </message>
    <message>
        <source>Name, birth date, language, sizes</source>
        <translation>Nombre, fecha de nacimiento, idioma, tallas</translation>
    </message>
    <message>
        <source>Notes of staff: %1</source>
        <translation>Notas del personal: %1</translation>
    </message>
    <message>
        <source>The name in other texts of these sessions: %1</source>
        <translation>El nombre en otros textos de estas sesiones: %1</translation>
    </message>
    <message>
        <source>Merged into this guest: %1</source>
        <translation>Unidos a este cliente: %1</translation>
    </message>
    <message>
        <source>%1. In them stands &quot;%2&quot;, with lead, cylinder and what was logged.</source>
        <translation>%1. En ellas figura «%2» en vez del nombre, con el plomo, la botella y lo anotado en la bitácora.</translation>
    </message>
</context>
<context>
    <name>leadline::RestoreDialog</name>
    <message>
        <source>Put back a copy</source>
        <translation>Restaurar una copia</translation>
    </message>
    <message>
        <source>Put back the copy %1?</source>
        <translation>¿Restaurar la copia %1?</translation>
    </message>
    <message>
        <source>What would change</source>
        <translation>Qué cambiaría</translation>
    </message>
    <message>
        <source>&amp;Sessions that change</source>
        <translation>&amp;Sesiones que cambian</translation>
    </message>
    <message>
        <source>&amp;All tables</source>
        <translation>&amp;Todas las tablas</translation>
    </message>
    <message>
        <source>The records as they are now are kept as a copy of their own, so that this can be taken back. Close Leadline on other screens first.</source>
        <translation>Los registros tal como están ahora se conservan como una copia aparte, para poder deshacer esto. Cierre antes Leadline en otras pantallas.</translation>
    </message>
    <message>
        <source>&amp;Put this copy back</source>
        <translation>&amp;Restaurar esta copia</translation>
    </message>
    <message>
        <source>The records of now cannot be compared: %1</source>
        <translation>No se pueden comparar los registros actuales: %1</translation>
    </message>
    <message>
        <source>The copy holds %1 sessions, %2 guests in the register and %3 logs.</source>
        <translation>La copia contiene %1 sesiones, %2 clientes en el fichero y %3 bitácoras.</translation>
    </message>
    <message>
        <source>%1: no change.</source>
        <translation>%1: sin cambios.</translation>
    </message>
    <message>
        <source>%1: %2 would be lost, %3 would come back, %4 would change back.</source>
        <translation>%1: se perderían %2, volverían %3, cambiarían a lo anterior %4.</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sesiones</translation>
    </message>
    <message>
        <source>Guests in the register</source>
        <translation>Clientes en el fichero</translation>
    </message>
    <message>
        <source>Logs</source>
        <translation>Bitácoras</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Sesión</translation>
    </message>
    <message>
        <source>What would happen</source>
        <translation>Qué pasaría</translation>
    </message>
    <message>
        <source>Sessions that would change</source>
        <translation>Sesiones que cambiarían</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>se pierde</translation>
    </message>
    <message>
        <source>comes back</source>
        <translation>vuelve</translation>
    </message>
    <message>
        <source>changes back</source>
        <translation>cambia a lo anterior</translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation>(sin nombre)</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabla</translation>
    </message>
    <message>
        <source>Rows now</source>
        <translation>Filas ahora</translation>
    </message>
    <message>
        <source>In the copy</source>
        <translation>En la copia</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Se pierden</translation>
    </message>
    <message>
        <source>Come back</source>
        <translation>Vuelven</translation>
    </message>
    <message>
        <source>Change back</source>
        <translation>Cambian</translation>
    </message>
    <message>
        <source>Rows of every table</source>
        <translation>Filas de cada tabla</translation>
    </message>
</context>
<context>
    <name>leadline::RosterTab</name>
    <message>
        <source>Add guest</source>
        <translation>Añadir cliente</translation>
    </message>
    <message>
        <source>Remove guest</source>
        <translation>Quitar cliente</translation>
    </message>
    <message>
        <source>Find guest</source>
        <translation>Buscar cliente</translation>
    </message>
    <message>
        <source>&amp;Import a booking list…</source>
        <translation>&amp;Importar reservas…</translation>
    </message>
    <message>
        <source>&amp;Export the guests…</source>
        <translation>&amp;Exportar los clientes…</translation>
    </message>
    <message>
        <source>Import a booking list</source>
        <translation>Importar reservas</translation>
    </message>
    <message>
        <source>Lists (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Listas (*.csv *.tsv *.txt);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Export the guests</source>
        <translation>Exportar los clientes</translation>
    </message>
    <message>
        <source>Lists (*.csv)</source>
        <translation>Listas (*.csv)</translation>
    </message>
    <message>
        <source>Find a guest or a group</source>
        <translation>Buscar un cliente o un grupo</translation>
    </message>
    <message>
        <source>Find a guest or a group (Ctrl+F)</source>
        <translation>Buscar un cliente o un grupo (Ctrl+F)</translation>
    </message>
    <message>
        <source>Show all guests again</source>
        <translation>Mostrar otra vez a todos los clientes</translation>
    </message>
    <message>
        <source>&amp;Add guest</source>
        <translation>A&amp;ñadir cliente</translation>
    </message>
    <message>
        <source>Insert or Ctrl+Shift+N</source>
        <translation>Ins o Ctrl+Mayús+N</translation>
    </message>
    <message>
        <source>Delete, in the table. Can be undone.</source>
        <translation>Supr, en la tabla. Se puede deshacer.</translation>
    </message>
    <message>
        <source>Kit in stock…</source>
        <translation>Existencias…</translation>
    </message>
    <message>
        <source>Cylinders, suits and lead that there are to hand out.</source>
        <translation>Botellas, trajes y plomo que hay para entregar.</translation>
    </message>
    <message>
        <source>Lists</source>
        <translation>Listas</translation>
    </message>
    <message>
        <source>Take guests from a booking list, or write them to one.</source>
        <translation>Tomar clientes de una lista de reservas o escribirlos en una.</translation>
    </message>
    <message>
        <source>No guests yet. Add the first one (Ins) or open a session.</source>
        <translation>Aún no hay clientes. Añada el primero (Ins) o abra una sesión.</translation>
    </message>
    <message>
        <source>Nobody is called &quot;%1&quot;. Esc shows all guests again.</source>
        <translation>Nadie se llama «%1». Esc muestra otra vez a todos los clientes.</translation>
    </message>
    <message>
        <source>Choose a guest to see who it is, what the health questions came to and what was handed out.</source>
        <translation>Elija un cliente para ver quién es, qué dieron las preguntas de salud y qué se le entregó.</translation>
    </message>
    <message numerus="yes">
        <source>Remove %n guests</source>
        <translation>
            <numerusform>Quitar %n cliente</numerusform>
            <numerusform>Quitar %n clientes</numerusform>
        </translation>
    </message>
    <message>
        <source>A session holds %1 guests at most. Open another for the rest.</source>
        <translation>Una sesión admite %1 clientes como máximo. Abra otra para los demás.</translation>
    </message>
    <message>
        <source>Guest %1</source>
        <translation>Cliente %1</translation>
    </message>
    <message numerus="yes">
        <source>%n guests</source>
        <translation>
            <numerusform>%n cliente</numerusform>
            <numerusform>%n clientes</numerusform>
        </translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>Removed %1</source>
        <translation>Quitado: %1</translation>
    </message>
    <message numerus="yes">
        <source>Added %n guests from the list</source>
        <translation>
            <numerusform>Se añadió %n cliente de la lista</numerusform>
            <numerusform>Se añadieron %n clientes de la lista</numerusform>
        </translation>
    </message>
    <message>
        <source>Written to %1: names, birth dates, sizes, contacts and notes. Health answers and consent are not in it, unless a note speaks of them: read the notes before you pass it on.</source>
        <translation>Escrito en %1: nombres, fechas de nacimiento, tallas, contactos y notas. Las respuestas de salud y el consentimiento no están, salvo que una nota hable de ellos: lea las notas antes de pasarlo a otros.</translation>
    </message>
</context>
<context>
    <name>leadline::RuleSetList</name>
    <message>
        <source>Rule sets that apply</source>
        <translation>Conjuntos de reglas que se aplican</translation>
    </message>
    <message>
        <source>Where several apply, the strictest value counts. Local law and your centre&apos;s standard come first.</source>
        <translation>Donde se aplican varios, cuenta el valor más estricto. La ley local y las normas de su centro van primero.</translation>
    </message>
    <message>
        <source>Care: no rule set is ticked. Depth, age and the number of guests are not checked.</source>
        <translation>Precaución: no hay ningún conjunto de reglas marcado. No se comprueban la profundidad, la edad ni el número de clientes.</translation>
    </message>
    <message>
        <source>Apply a rule set</source>
        <translation>Aplicar un conjunto de reglas</translation>
    </message>
    <message>
        <source>Leave a rule set out</source>
        <translation>Dejar fuera un conjunto de reglas</translation>
    </message>
</context>
<context>
    <name>leadline::SavingRow</name>
    <message>
        <source>Stop saving</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Pages saved</source>
        <translation>Páginas guardadas</translation>
    </message>
</context>
<context>
    <name>leadline::ScreeningPage</name>
    <message>
        <source>The vault is locked: what was open here has been put away.</source>
        <translation>La caja fuerte está cerrada: lo que aquí estaba abierto se ha guardado.</translation>
    </message>
    <message>
        <source>Sealed on %1.</source>
        <translation>Sellado el %1.</translation>
    </message>
    <message>
        <source>Sealed on %1 under the name %2: make sure that it is the same person.</source>
        <translation>Sellado el %1 con el nombre %2: asegúrese de que es la misma persona.</translation>
    </message>
    <message>
        <source>The sealed answers of %1 are in a form this program does not know. Go through the questions again.</source>
        <translation>Las respuestas selladas del %1 tienen una forma que este programa no conoce. Repase otra vez las preguntas.</translation>
    </message>
    <message>
        <source>The sealed answers are those of another edition (%1); the questions are asked anew.</source>
        <translation>Las respuestas selladas son de otra edición (%1); las preguntas se hacen de nuevo.</translation>
    </message>
    <message>
        <source>Nothing is signed yet. Sign on the strip, or choose another way.</source>
        <translation>Aún no hay nada firmado. Firme en la franja o elija otra forma.</translation>
    </message>
    <message>
        <source>Not recorded: the answers could not be sealed. %1 Try again after locking and opening the vault, or record the outcome alone.</source>
        <translation>No registrado: las respuestas no se pudieron sellar. %1 Inténtelo de nuevo después de cerrar y abrir la caja fuerte, o registre solo el resultado.</translation>
    </message>
    <message>
        <source>Record the health check</source>
        <translation>Registrar el control de salud</translation>
    </message>
    <message>
        <source>Health check</source>
        <translation>Control de salud</translation>
    </message>
    <message>
        <source>Recorded.</source>
        <translation>Registrado.</translation>
    </message>
    <message>
        <source>Take over the last health check</source>
        <translation>Tomar el último control de salud</translation>
    </message>
    <message>
        <source>Physician&apos;s release</source>
        <translation>Autorización médica</translation>
    </message>
    <message>
        <source>Physician&apos;s &amp;written release seen</source>
        <translation>Autorización &amp;médica escrita vista</translation>
    </message>
    <message>
        <source>Date of the physician&apos;s release</source>
        <translation>Fecha de la autorización médica</translation>
    </message>
    <message>
        <source>dated</source>
        <translation>con fecha</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date. Write it as 17/5/2026, with four digits for the year.</source>
        <translation>«%1» no es una fecha. Escríbala así: 17/5/2026, con el año de cuatro cifras.</translation>
    </message>
    <message>
        <source>Nothing changed: take it over</source>
        <translation>Nada ha cambiado: tomarlo</translation>
    </message>
    <message>
        <source>Check anew</source>
        <translation>Controlar de nuevo</translation>
    </message>
    <message>
        <source>Open the &amp;questions</source>
        <translation>Abrir las &amp;preguntas</translation>
    </message>
    <message>
        <source>By the centre&apos;s own &amp;form</source>
        <translation>Con el f&amp;ormulario del centro</translation>
    </message>
    <message>
        <source>The guest filled in a form of the centre: only its outcome is recorded here.</source>
        <translation>El cliente rellenó un formulario del centro: aquí solo se registra su resultado.</translation>
    </message>
    <message>
        <source>Ctrl+Return</source>
        <translation>Ctrl+Return</translation>
    </message>
    <message>
        <source>Close without recording</source>
        <translation>Cerrar sin registrar</translation>
    </message>
    <message>
        <source>Short questions for talking it over. They diagnose nobody: the centre&apos;s own form and the physician prevail.</source>
        <translation>Preguntas breves para hablarlo. No diagnostican a nadie: prevalecen el formulario del centro y el médico.</translation>
    </message>
    <message>
        <source>Checked on %1</source>
        <translation>Controlado el %1</translation>
    </message>
    <message>
        <source>Checked, day not known</source>
        <translation>Controlado, día desconocido</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>por %1</translation>
    </message>
    <message>
        <source>Checked on %1: %2. Has anything changed since?</source>
        <translation>Controlado el %1: %2. ¿Ha cambiado algo desde entonces?</translation>
    </message>
    <message>
        <source>Only the outcome is recorded; the form stays with the centre.</source>
        <translation>Solo se registra el resultado; el formulario se queda en el centro.</translation>
    </message>
    <message>
        <source>Answers, note, contact and a signature drawn here are sealed in the vault.</source>
        <translation>Las respuestas, la nota, el contacto y una firma dibujada aquí se sellan en la caja fuerte.</translation>
    </message>
    <message>
        <source>This session is not in the records: only the outcome is kept, and the answers go when you record.</source>
        <translation>Esta sesión no está en los registros: solo se guarda el resultado, y las respuestas desaparecen al registrar.</translation>
    </message>
    <message>
        <source>The vault is not open: only the outcome is kept, and the answers go when you record.</source>
        <translation>La caja fuerte no está abierta: solo se guarda el resultado, y las respuestas desaparecen al registrar.</translation>
    </message>
    <message>
        <source>Comes to: %1</source>
        <translation>Resultado: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n still open</source>
        <translation>
            <numerusform>%n aún pendiente</numerusform>
            <numerusform>%n aún pendientes</numerusform>
        </translation>
    </message>
    <message>
        <source>Record the outcome alone</source>
        <translation>Registrar solo el resultado</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registrar</translation>
    </message>
</context>
<context>
    <name>leadline::SessionLine</name>
    <message>
        <source>Name of the session</source>
        <translation>Nombre de la sesión</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Sesión</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Meet</source>
        <translation>Encuentro</translation>
    </message>
    <message>
        <source>Dive</source>
        <translation>Inmersión</translation>
    </message>
    <message>
        <source>Leads</source>
        <translation>Dirige</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Rename session</source>
        <translation>Renombrar la sesión</translation>
    </message>
    <message>
        <source>Change date</source>
        <translation>Cambiar la fecha</translation>
    </message>
    <message>
        <source>Change meeting time</source>
        <translation>Cambiar la hora de encuentro</translation>
    </message>
    <message>
        <source>Change dive time</source>
        <translation>Cambiar la hora de la inmersión</translation>
    </message>
    <message>
        <source>Change who leads</source>
        <translation>Cambiar quién dirige</translation>
    </message>
    <message>
        <source>Not named</source>
        <translation>Sin nombrar</translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation>(sin nombre)</translation>
    </message>
    <message numerus="yes">
        <source>%n stops</source>
        <translation>
            <numerusform>%n alto</numerusform>
            <numerusform>%n altos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n care</source>
        <translation>
            <numerusform>%n precaución</numerusform>
            <numerusform>%n precauciones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Ready · %n care</source>
        <translation>
            <numerusform>Listo · %n precaución</numerusform>
            <numerusform>Listo · %n precauciones</numerusform>
        </translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Listo</translation>
    </message>
    <message numerus="yes">
        <source>%n set aside</source>
        <translation>
            <numerusform>%n desestimado</numerusform>
            <numerusform>%n desestimados</numerusform>
        </translation>
    </message>
    <message>
        <source>Show the findings</source>
        <translation>Mostrar los avisos</translation>
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
        <translation>Sesiones registradas</translation>
    </message>
    <message>
        <source>Kept in %1</source>
        <translation>Guardadas en %1</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>&amp;Abrir</translation>
    </message>
    <message>
        <source>&amp;Delete…</source>
        <translation>E&amp;liminar…</translation>
    </message>
    <message>
        <source>Delete session</source>
        <translation>Eliminar la sesión</translation>
    </message>
    <message>
        <source>Delete &quot;%1&quot; with its plan and log for good? The guests stay on record.</source>
        <translation>¿Eliminar para siempre «%1» con su plan y su bitácora? Los clientes siguen registrados.</translation>
    </message>
</context>
<context>
    <name>leadline::SessionsModel</name>
    <message>
        <source>(no name)</source>
        <translation>(sin nombre)</translation>
    </message>
    <message>
        <source>%1 (logged)</source>
        <translation>%1 (con bitácora)</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Dive</source>
        <translation>Inmersión</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Sesión</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Guests</source>
        <translation>Clientes</translation>
    </message>
</context>
<context>
    <name>leadline::SheetBar</name>
    <message>
        <source>What to print</source>
        <translation>Qué imprimir</translation>
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
        <translation>Franja para firmar</translation>
    </message>
    <message>
        <source>Sign here</source>
        <translation>Firme aquí</translation>
    </message>
</context>
<context>
    <name>leadline::SiteTab</name>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>What the sea does today</source>
        <translation>Cómo está hoy el mar</translation>
    </message>
    <message>
        <source>Rules that apply</source>
        <translation>Reglas que se aplican</translation>
    </message>
    <message>
        <source>Site and conditions</source>
        <translation>Lugar y condiciones</translation>
    </message>
    <message>
        <source>Numbers of the place</source>
        <translation>Cifras del lugar</translation>
    </message>
    <message>
        <source>Profile and numbers</source>
        <translation>Perfil y cifras</translation>
    </message>
    <message>
        <source>%1 deep, %2</source>
        <translation>%1 de profundidad, %2</translation>
    </message>
    <message>
        <source>%1 at %2.</source>
        <translation>%1 en %2.</translation>
    </message>
</context>
<context>
    <name>leadline::SkillsDialog</name>
    <message>
        <source>Skills of this session</source>
        <translation>Ejercicios de esta sesión</translation>
    </message>
    <message>
        <source>Tick what the guests &amp;practise before the tour.</source>
        <translation>Marque lo que los clientes &amp;practican antes del recorrido.</translation>
    </message>
</context>
<context>
    <name>leadline::StaffExposureModel</name>
    <message>
        <source>Staff</source>
        <translation>Personal</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>No-stop
time left</source>
        <translation>Sin parada,
restante</translation>
    </message>
    <message>
        <source>Planned
now</source>
        <translation>Previsto
ahora</translation>
    </message>
    <message>
        <source>Share of
the limit</source>
        <translation>Parte del
límite</translation>
    </message>
    <message>
        <source>Dives
today</source>
        <translation>Inmersiones
hoy</translation>
    </message>
    <message>
        <source>Times up
today</source>
        <translation>Subidas
hoy</translation>
    </message>
    <message>
        <source>Days in
a row</source>
        <translation>Días
seguidos</translation>
    </message>
    <message>
        <source>Since the
last dive</source>
        <translation>Desde la
última</translation>
    </message>
    <message>
        <source>Before
flying</source>
        <translation>Antes de
volar</translation>
    </message>
    <message>
        <source>Instructors and assistants of this session.</source>
        <translation>Instructores y asistentes de esta sesión.</translation>
    </message>
    <message>
        <source>How this dive stands to the limits of the chosen rules, as far as earlier dives are on record.</source>
        <translation>Cómo está esta inmersión respecto a los límites de las reglas elegidas, hasta donde constan inmersiones anteriores.</translation>
    </message>
    <message>
        <source>Minutes at the deepest planned point, %1, until going straight up would no longer be allowed, before this session. Rounded down.</source>
        <translation>Minutos en el punto previsto más profundo, %1, hasta que ya no se permitiría subir directamente, antes de esta sesión. Redondeado hacia abajo.</translation>
    </message>
    <message>
        <source>Time of this session&apos;s dive.</source>
        <translation>Tiempo de la inmersión de esta sesión.</translation>
    </message>
    <message>
        <source>Of the nitrogen that the house allows for going straight up, the most used at any moment of this dive; ashore, before this session. 100 % is the limit. Rounded up.</source>
        <translation>Del nitrógeno que permiten las normas del centro para subir directamente, lo máximo usado en cualquier momento de esta inmersión; en tierra, antes de esta sesión. 100&#xa0;% es el límite. Redondeado hacia arriba.</translation>
    </message>
    <message>
        <source>Dives of this day, this one included.</source>
        <translation>Inmersiones de este día, incluida esta.</translation>
    </message>
    <message>
        <source>Times at the surface this day, those expected in this session included.</source>
        <translation>Llegadas a la superficie este día, incluidas las previstas en esta sesión.</translation>
    </message>
    <message>
        <source>Days with a dive up to today.</source>
        <translation>Días con inmersión hasta hoy.</translation>
    </message>
    <message>
        <source>Surface interval up to this session&apos;s dive. Rounded down.</source>
        <translation>Intervalo en superficie hasta la inmersión de esta sesión. Redondeado hacia abajo.</translation>
    </message>
    <message>
        <source>Hours to stay off aircraft and passes after the last dive, by published guidance.</source>
        <translation>Horas sin aviones ni puertos de montaña tras la última inmersión, según recomendaciones publicadas.</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 o más</translation>
    </message>
    <message>
        <source>%1, at most %2</source>
        <translation>%1, máximo %2</translation>
    </message>
    <message>
        <source>(no name)</source>
        <translation>(sin nombre)</translation>
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
        <translation>%1 tras la última inmersión: %2</translation>
    </message>
</context>
<context>
    <name>leadline::StaffExposurePanel</name>
    <message>
        <source>What earlier dives leave to each member of staff</source>
        <translation>Lo que las inmersiones anteriores dejan a cada miembro del personal</translation>
    </message>
    <message>
        <source>Nobody on the staff yet. Add them on the Roster tab under Groups and staff, and enter their dives of the last seven days there with the button in the column Dives; then this says who is free to lead this dive.</source>
        <translation>Aún no hay nadie en el personal. Añada al personal en la pestaña Clientes, en Grupos y personal, y anote allí sus inmersiones de los últimos siete días con el botón de la columna Inmersiones; entonces aquí se dice quién puede llevar esta inmersión.</translation>
    </message>
    <message>
        <source>An aid for planning. What the diver&apos;s own computer, a physician and the makers say prevails. Tissues by ZH-L16C with gradient factors %1/%2, common practice.</source>
        <translation>Una ayuda para planificar. Prevalece lo que digan el ordenador de buceo propio, un médico y los fabricantes. Tejidos según ZH-L16C con factores de gradiente %1/%2, práctica común.</translation>
    </message>
    <message>
        <source>Why? Staff</source>
        <translation>¿Por qué? Personal</translation>
    </message>
</context>
<context>
    <name>leadline::StaffList</name>
    <message>
        <source>Staff</source>
        <translation>Personal</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Función</translation>
    </message>
    <message>
        <source>Speaks</source>
        <translation>Habla</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Botella</translation>
    </message>
    <message>
        <source>Filled to</source>
        <translation>Cargada a</translation>
    </message>
    <message>
        <source>Gas at</source>
        <translation>Gas a</translation>
    </message>
    <message>
        <source>Dives</source>
        <translation>Inmersiones</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Ninguna aún</translation>
    </message>
    <message>
        <source>Remove member of staff</source>
        <translation>Quitar a alguien del personal</translation>
    </message>
    <message>
        <source>Change staff</source>
        <translation>Cambiar el personal</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Name of %1</source>
        <translation>Nombre de %1</translation>
    </message>
    <message>
        <source>Role of %1</source>
        <translation>Función de %1</translation>
    </message>
    <message>
        <source>Languages of %1</source>
        <translation>Idiomas de %1</translation>
    </message>
    <message>
        <source>Cylinder of %1</source>
        <translation>Botella de %1</translation>
    </message>
    <message>
        <source>Gauge reading of %1</source>
        <translation>Lectura del manómetro de %1</translation>
    </message>
    <message>
        <source>Gas temperature of %1</source>
        <translation>Temperatura del gas de %1</translation>
    </message>
    <message>
        <source>%1…</source>
        <translation>%1…</translation>
    </message>
    <message>
        <source>Earlier dives of %1</source>
        <translation>Inmersiones anteriores de %1</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Quitar %1</translation>
    </message>
</context>
<context>
    <name>leadline::StockDialog</name>
    <message>
        <source>Kit in stock</source>
        <translation>Existencias de equipo</translation>
    </message>
    <message>
        <source>What there is, kit handed out included. A part left empty is not recorded, and nothing in it counts as missing.</source>
        <translation>Lo que hay, incluido el equipo entregado. Una parte vacía no se registra y nada de ella se da por faltante.</translation>
    </message>
    <message>
        <source>Cylinders</source>
        <translation>Botellas</translation>
    </message>
    <message>
        <source>In stock</source>
        <translation>Existencias</translation>
    </message>
    <message>
        <source>%1, in stock</source>
        <translation>%1, existencias</translation>
    </message>
    <message numerus="yes">
        <source>%n handed out</source>
        <translation>
            <numerusform>%n entregada</numerusform>
            <numerusform>%n entregadas</numerusform>
        </translation>
    </message>
    <message>
        <source>Suits</source>
        <translation>Trajes</translation>
    </message>
    <message>
        <source>Suits in stock</source>
        <translation>Trajes en existencias</translation>
    </message>
    <message>
        <source>&amp;Add a suit</source>
        <translation>&amp;Añadir traje</translation>
    </message>
    <message>
        <source>Insert, in the table</source>
        <translation>Ins, en la tabla</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>Delete, in the table</source>
        <translation>Supr, en la tabla</translation>
    </message>
    <message>
        <source>Remove the chosen suits</source>
        <translation>Quitar los trajes elegidos</translation>
    </message>
    <message>
        <source>Add those &amp;handed out</source>
        <translation>Añadir los &amp;entregados</translation>
    </message>
    <message>
        <source>&amp;Lead pieces, kg</source>
        <translation>&amp;Plomos, kg</translation>
    </message>
    <message>
        <source>&amp;Lead pieces, lb</source>
        <translation>P&amp;lomos, lb</translation>
    </message>
    <message>
        <source>Sizes of lead pieces in kilograms</source>
        <translation>Tamaños de los plomos en kilogramos</translation>
    </message>
    <message>
        <source>Sizes of lead pieces in pounds</source>
        <translation>Tamaños de los plomos en libras</translation>
    </message>
    <message>
        <source>For example 0.5 1 2</source>
        <translation>Por ejemplo 0,5 1 2</translation>
    </message>
    <message>
        <source>For example 1 2 3</source>
        <translation>Por ejemplo 1 2 3</translation>
    </message>
    <message>
        <source>%1 labels are the most.</source>
        <translation>%1 etiquetas es el máximo.</translation>
    </message>
    <message>
        <source>Lead pieces: &quot;%1&quot; is not a list of sizes. Write numbers with spaces between: 0.5 1 2.</source>
        <translation>Plomos: «%1» no es una lista de tamaños. Escriba números separados por espacios: 0,5 1 2.</translation>
    </message>
    <message>
        <source>Lead pieces, kg</source>
        <translation>Plomos, kg</translation>
    </message>
    <message>
        <source>Not recorded: whole kilograms are assumed.</source>
        <translation>Sin registrar: se suponen kilogramos enteros.</translation>
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
        <translation>Cambiar las existencias de equipo</translation>
    </message>
</context>
<context>
    <name>leadline::SuitStockModel</name>
    <message>
        <source>Suit</source>
        <translation>Traje</translation>
    </message>
    <message>
        <source>In stock</source>
        <translation>Existencias</translation>
    </message>
    <message>
        <source>Handed out</source>
        <translation>Entregados</translation>
    </message>
</context>
<context>
    <name>leadline::VaultActions</name>
    <message>
        <source>&amp;Health vault</source>
        <translation>Caja &amp;fuerte</translation>
    </message>
    <message>
        <source>&amp;Unlock…</source>
        <translation>&amp;Abrir…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+L</source>
        <translation>Ctrl+Shift+L</translation>
    </message>
    <message>
        <source>&amp;Lock</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>Lock when &amp;idle for</source>
        <translation>Cerrar sin &amp;uso tras</translation>
    </message>
    <message>
        <source>&amp;Change the passphrase…</source>
        <translation>Cambiar la &amp;frase de paso…</translation>
    </message>
    <message>
        <source>The passphrase was changed.</source>
        <translation>La frase de paso se cambió.</translation>
    </message>
    <message>
        <source>New &amp;recovery key…</source>
        <translation>Nueva clave de &amp;recuperación…</translation>
    </message>
    <message>
        <source>The new recovery key counts from now on. Destroy the old paper.</source>
        <translation>La nueva clave de recuperación vale desde ahora. Destruya el papel anterior.</translation>
    </message>
    <message>
        <source>&amp;Audit trail…</source>
        <translation>Registr&amp;o de accesos…</translation>
    </message>
    <message numerus="yes">
        <source>%n minutes</source>
        <translation>
            <numerusform>%n minuto</numerusform>
            <numerusform>%n minutos</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Set up…</source>
        <translation>&amp;Preparar…</translation>
    </message>
    <message>
        <source>&amp;Add a passphrase…</source>
        <translation>Aña&amp;dir frase de paso…</translation>
    </message>
    <message>
        <source>Health vault locked</source>
        <translation>Caja fuerte de salud cerrada</translation>
    </message>
    <message>
        <source>Unlock it (Ctrl+Shift+L)</source>
        <translation>Ábrala (Ctrl+Mayús+L)</translation>
    </message>
    <message>
        <source>No health vault: the records are not open</source>
        <translation>Sin caja fuerte de salud: los registros no están abiertos</translation>
    </message>
    <message>
        <source>Health vault not set up</source>
        <translation>Caja fuerte de salud sin preparar</translation>
    </message>
    <message>
        <source>Set it up</source>
        <translation>Prepárela</translation>
    </message>
    <message>
        <source>Health vault open: %1</source>
        <translation>Caja fuerte de salud abierta: %1</translation>
    </message>
    <message>
        <source>Lock it (Ctrl+L)</source>
        <translation>Ciérrela (Ctrl+L)</translation>
    </message>
    <message>
        <source>The health vault is set up and open. It locks by itself after %1 min without a key or a click.</source>
        <translation>La caja fuerte de salud está preparada y abierta. Se cierra sola tras %1 min sin teclas ni clics.</translation>
    </message>
    <message numerus="yes">
        <source>%n answers an older version kept open are sealed now.</source>
        <translation>
            <numerusform>%n respuesta que una versión anterior guardaba abierta está ahora sellada.</numerusform>
            <numerusform>%n respuestas que una versión anterior guardaba abiertas están ahora selladas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Copies made before still hold them: delete those in Records &gt; Copies of the records, and files named ...before-schema-*.</source>
        <translation>Las copias hechas antes todavía las contienen: elimine las de Registros &gt; Copias de los registros y los archivos llamados ...before-schema-*.</translation>
    </message>
</context>
<context>
    <name>leadline::VaultPassphraseDialog</name>
    <message>
        <source>Change the passphrase</source>
        <translation>Cambiar la frase de paso</translation>
    </message>
    <message>
        <source>Add a passphrase</source>
        <translation>Añadir una frase de paso</translation>
    </message>
    <message>
        <source>&amp;Old passphrase</source>
        <translation>Frase de paso &amp;actual</translation>
    </message>
    <message>
        <source>&amp;New passphrase</source>
        <translation>Frase de paso &amp;nueva</translation>
    </message>
    <message>
        <source>&amp;Again</source>
        <translation>&amp;Repetir</translation>
    </message>
    <message>
        <source>&amp;Change</source>
        <translation>Ca&amp;mbiar</translation>
    </message>
    <message>
        <source>A&amp;dd</source>
        <translation>Aña&amp;dir</translation>
    </message>
    <message>
        <source>At least %1 characters: a few words in a row are easy to keep.</source>
        <translation>Al menos %1 caracteres: unas cuantas palabras seguidas se recuerdan bien.</translation>
    </message>
    <message>
        <source>%1 of at least %2 characters.</source>
        <translation>%1 de al menos %2 caracteres.</translation>
    </message>
    <message>
        <source>The two are not the same yet.</source>
        <translation>Las dos aún no son iguales.</translation>
    </message>
    <message>
        <source>The old passphrase is not the right one. Nothing was changed.</source>
        <translation>La frase de paso actual no es la correcta. No se cambió nada.</translation>
    </message>
</context>
<context>
    <name>leadline::VaultSetUpDialog</name>
    <message>
        <source>Set up the health vault</source>
        <translation>Preparar la caja fuerte de salud</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Siguiente</translation>
    </message>
    <message>
        <source>A &amp;passphrase of the centre</source>
        <translation>Una &amp;frase de paso del centro</translation>
    </message>
    <message>
        <source>This computer&apos;s &amp;keyring</source>
        <translation>El &amp;llavero de este ordenador</translation>
    </message>
    <message>
        <source>&amp;Who sets it up</source>
        <translation>&amp;Quién la prepara</translation>
    </message>
    <message>
        <source>Pa&amp;ssphrase</source>
        <translation>Frase de &amp;paso</translation>
    </message>
    <message>
        <source>&amp;Again</source>
        <translation>&amp;Repetir</translation>
    </message>
    <message>
        <source>Health answers, notes of physicians, emergency contacts and signatures are kept sealed in a vault. Choose how it is opened.</source>
        <translation>Las respuestas de salud, las notas de los médicos, los contactos de emergencia y las firmas se guardan sellados en una caja fuerte. Elija cómo se abre.</translation>
    </message>
    <message>
        <source>The keyring opens with the login to this computer: quick, and as safe as that login.</source>
        <translation>El llavero se abre al iniciar sesión en este ordenador: rápido, y tan seguro como ese inicio de sesión.</translation>
    </message>
    <message>
        <source>At least %1 characters: a few words in a row are easy to keep.</source>
        <translation>Al menos %1 caracteres: unas cuantas palabras seguidas se recuerdan bien.</translation>
    </message>
    <message>
        <source>%1 of at least %2 characters.</source>
        <translation>%1 de al menos %2 caracteres.</translation>
    </message>
    <message>
        <source>The two are not the same yet.</source>
        <translation>Las dos aún no son iguales.</translation>
    </message>
    <message>
        <source>&amp;Finish</source>
        <translation>&amp;Terminar</translation>
    </message>
    <message>
        <source>This computer&apos;s keyring does not answer. Choose a passphrase.</source>
        <translation>El llavero de este ordenador no responde. Elija una frase de paso.</translation>
    </message>
</context>
<context>
    <name>leadline::VaultUnlockDialog</name>
    <message>
        <source>&amp;Passphrase</source>
        <translation>Frase de &amp;paso</translation>
    </message>
    <message>
        <source>Recovery &amp;key</source>
        <translation>C&amp;lave de recuperación</translation>
    </message>
    <message>
        <source>Use the &amp;recovery key</source>
        <translation>&amp;Usar la clave de recuperación</translation>
    </message>
    <message>
        <source>Unlock the health vault</source>
        <translation>Abrir la caja fuerte de salud</translation>
    </message>
    <message>
        <source>Nine groups of four</source>
        <translation>Nueve grupos de cuatro</translation>
    </message>
    <message>
        <source>&amp;Unlock</source>
        <translation>&amp;Abrir</translation>
    </message>
    <message>
        <source>Unlock by &amp;keyring</source>
        <translation>Abrir con el lla&amp;vero</translation>
    </message>
    <message>
        <source>&amp;Who is asking</source>
        <translation>&amp;Quién pregunta</translation>
    </message>
    <message>
        <source>Wait %1 s</source>
        <translation>Espere %1 s</translation>
    </message>
    <message>
        <source>This computer&apos;s keyring has no key of this vault. Use the recovery key.</source>
        <translation>El llavero de este ordenador no tiene ninguna clave de esta caja fuerte. Use la clave de recuperación.</translation>
    </message>
</context>
<context>
    <name>leadline::WindowActions</name>
    <message>
        <source>&amp;Session</source>
        <translation>&amp;Sesión</translation>
    </message>
    <message>
        <source>&amp;New session</source>
        <translation>&amp;Nueva sesión</translation>
    </message>
    <message>
        <source>&amp;Open a file…</source>
        <translation>&amp;Abrir un archivo…</translation>
    </message>
    <message>
        <source>Open a s&amp;ample</source>
        <translation>Abrir un e&amp;jemplo</translation>
    </message>
    <message>
        <source>&amp;Write to a file…</source>
        <translation>&amp;Escribir en un archivo…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>&amp;Print cards</source>
        <translation>&amp;Imprimir tarjetas</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>&amp;Records</source>
        <translation>&amp;Registros</translation>
    </message>
    <message>
        <source>&amp;Sessions on record…</source>
        <translation>&amp;Sesiones registradas…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+O</source>
        <translation>Ctrl+Shift+O</translation>
    </message>
    <message>
        <source>&amp;Guests on record…</source>
        <translation>&amp;Clientes registrados…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+G</source>
        <translation>Ctrl+Shift+G</translation>
    </message>
    <message>
        <source>&amp;Red list…</source>
        <translation>&amp;Lista roja…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+R</source>
        <translation>Ctrl+Shift+R</translation>
    </message>
    <message>
        <source>Who must still see a physician, bring consent, answer or renew.</source>
        <translation>Quién debe aún ver a un médico, traer un consentimiento, contestar o renovar.</translation>
    </message>
    <message>
        <source>&amp;Copies of the records…</source>
        <translation>Co&amp;pias de los registros…</translation>
    </message>
    <message>
        <source>No samples installed</source>
        <translation>No hay ejemplos instalados</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Ctrl+Y</source>
        <translation>Ctrl+Y</translation>
    </message>
    <message>
        <source>&amp;Find a guest</source>
        <translation>&amp;Buscar un cliente</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>Feet, psi and °F</source>
        <translation>Pies, psi y °F</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Oscuro</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>&amp;About Leadline</source>
        <translation>&amp;Acerca de Leadline</translation>
    </message>
    <message>
        <source>About Leadline</source>
        <translation>Acerca de Leadline</translation>
    </message>
    <message>
        <source>&lt;p&gt;&lt;b&gt;Leadline %1&lt;/b&gt;&lt;/p&gt;&lt;p&gt;Plans a first, supervised scuba session, prints a card for every guest and reviews the log.&lt;/p&gt;&lt;p&gt;A planning aid: no dive computer, no medical device, no legal advice. Local law, your organisation&apos;s standard, the instructor and a physician come first. Numbers are estimates to be checked in the water.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later.&lt;/p&gt;</source>
        <translation>&lt;p&gt;&lt;b&gt;Leadline %1&lt;/b&gt;&lt;/p&gt;&lt;p&gt;Planifica una primera sesión de buceo supervisada, imprime una tarjeta para cada cliente y revisa la bitácora.&lt;/p&gt;&lt;p&gt;Una ayuda para planificar: no es un ordenador de buceo, ni un dispositivo médico, ni asesoramiento legal. La ley local, las normas de su organización, el instructor y un médico van primero. Las cifras son estimaciones que hay que comprobar en el agua.&lt;/p&gt;&lt;p&gt;Software libre bajo la GNU General Public License, versión 3 o posterior.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>&amp;Guest screen</source>
        <translation>&amp;Pantalla de clientes</translation>
    </message>
    <message>
        <source>The briefing for guests to look at, on another monitor if there is one.</source>
        <translation>El briefing para que lo vean los clientes, en otro monitor si lo hay.</translation>
    </message>
</context>
</TS>
