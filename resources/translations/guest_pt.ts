<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pt" sourcelanguage="en">
<context>
    <name>Guest</name>
    <message>
        <source>Meet</source>
        <extracomment>Card, before day and time: "Meet Sat 4 July, 09:30".</extracomment>
        <translation>Encontro</translation>
    </message>
    <message>
        <source>With</source>
        <extracomment>Card, before the instructor's name: "With Ana".
----------
label before the instructor’s name</extracomment>
        <translation>Com</translation>
    </message>
    <message>
        <source>Low on air</source>
        <extracomment>Card, above the pressure in large type; the name of a hand signal as well.</extracomment>
        <translation>Pouco ar</translation>
    </message>
    <message>
        <source>signal now</source>
        <extracomment>Card, below that pressure: show the hand signal at once. Two or three short words.</extracomment>
        <translation>sinalize já</translation>
    </message>
    <message>
        <source>Deepest</source>
        <extracomment>Card, above a depth in large type: the deepest point of the dive. One short word.</extracomment>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>Card, above minutes in large type: how long the dive is. One short word.</extracomment>
        <translation>Duração</translation>
    </message>
    <message>
        <source>Never hold your breath</source>
        <extracomment>Card, the largest words: the one rule. Keep it short.</extracomment>
        <translation>Nunca prenda a respiração</translation>
    </message>
    <message>
        <source>Going up, held air swells: lungs can tear.</source>
        <extracomment>Card, below that rule. Beside it stands by how much the air swells: "×1.8".</extracomment>
        <translation>Ao subir, o ar preso expande‑se: pode rasgar pulmões.</translation>
    </message>
    <message>
        <source>Clear ears early, every %1. Pain? Stop, signal, go up %2.</source>
        <extracomment>Card. %1: a step of descent ("1 m"). %2: how far to go up ("1 m").</extracomment>
        <translation>Ouvidos: compense cedo, a cada %1. Dor? Pare, sinalize, suba %2.</translation>
    </message>
    <message>
        <source>Stay within reach. Lost? Look around 1 minute, go up slowly.</source>
        <extracomment>Card: so close to the instructor that an arm reaches. When apart: look around.</extracomment>
        <translation>Fique ao alcance do braço. Separados? Observe 1 minuto, suba devagar.</translation>
    </message>
    <message>
        <source>Cold, scared, tired? Signal. Quitting is fine.</source>
        <extracomment>Card: whoever does not feel well gives a signal, and may end the dive.</extracomment>
        <translation>Frio, medo, cansaço? Sinalize. Pode parar.</translation>
    </message>
    <message>
        <source>At the top: fill BCD, mask on.</source>
        <extracomment>Card: back at the surface.</extracomment>
        <translation>Superfície: colete cheio, máscara posta.</translation>
    </message>
    <message>
        <source>not “good”</source>
        <extracomment>Card, under the picture of a raised thumb, which means "go up": never "good".</extracomment>
        <translation>não “bem”</translation>
    </message>
    <message>
        <source>%1 h: no flights, no mountains.</source>
        <extracomment>Card, after the dive. %1: a number of hours.</extracomment>
        <translation>%1 h: sem voos nem estradas montanhosas.</translation>
    </message>
    <message>
        <source>48 h: numb, dizzy, very tired, joint pain, breathless?</source>
        <extracomment>Card, after the dive: whoever feels this within 48 hours calls the number beside it.</extracomment>
        <translation>48 h: dormência, tonturas, muito cansaço, dores articulares, falta de ar?</translation>
    </message>
    <message>
        <source>Call</source>
        <extracomment>Card, before the emergency number; without a colon.</extracomment>
        <translation>Ligue</translation>
    </message>
    <message>
        <source>Understood</source>
        <extracomment>Card, beside a box that the guest ticks.</extracomment>
        <translation>Entendido</translation>
    </message>
    <message>
        <source>Planning aid. Your instructor decides.</source>
        <extracomment>Card, small: what the card is, and who decides.</extracomment>
        <translation>Ajuda ao planeamento. O instrutor decide.</translation>
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
        <translation>Respirar debaixo de água</translation>
    </message>
    <message>
        <source>Clear your mask</source>
        <translation>Esvaziar a máscara</translation>
    </message>
    <message>
        <source>Clear the mouthpiece</source>
        <translation>Esvaziar o regulador</translation>
    </message>
    <message>
        <source>Find the mouthpiece</source>
        <translation>Recuperar o regulador</translation>
    </message>
    <message>
        <source>Clear your ears</source>
        <translation>Compensar os ouvidos</translation>
    </message>
    <message>
        <source>Fill and empty the BCD</source>
        <translation>Encher e esvaziar o colete</translation>
    </message>
    <message>
        <source>Share air</source>
        <translation>Partilhar ar</translation>
    </message>
    <message>
        <source>Float at the top</source>
        <translation>Flutuar na superfície</translation>
    </message>
    <message>
        <source>So that slow, steady breaths feel easy before you go down.</source>
        <translation>Para que respirar devagar e com calma seja fácil antes de descer.</translation>
    </message>
    <message>
        <source>So that water in the mask is no worry: you know how to blow it out.</source>
        <translation>Para que a água na máscara não seja um problema: sabe soprá-la para fora.</translation>
    </message>
    <message>
        <source>So that you can blow water out and breathe on.</source>
        <translation>Para soprar a água para fora e continuar a respirar.</translation>
    </message>
    <message>
        <source>So that you can get it back if it slips out.</source>
        <translation>Para o recuperar se sair da boca.</translation>
    </message>
    <message>
        <source>So that going down need not hurt.</source>
        <translation>Para que descer não tenha de doer.</translation>
    </message>
    <message>
        <source>So that you can float, or sink, when you choose.</source>
        <translation>Para flutuar ou descer quando quiser.</translation>
    </message>
    <message>
        <source>So that you can breathe from the spare if yours runs low.</source>
        <translation>Para respirar do regulador de reserva se o seu ar estiver a acabar.</translation>
    </message>
    <message>
        <source>So that you can rest with your head above the water.</source>
        <translation>Para descansar com a cabeça fora da água.</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>Fato de mergulho</translation>
    </message>
    <message>
        <source>BCD</source>
        <translation>Colete</translation>
    </message>
    <message>
        <source>Fins</source>
        <translation>Barbatanas</translation>
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
        <translation>Pesos</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Garrafa</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Manómetro</translation>
    </message>
    <message>
        <source>Keeps you warm.</source>
        <translation>Protege do frio.</translation>
    </message>
    <message>
        <source>The jacket that lets you float or sink.</source>
        <translation>O colete com que flutua ou desce.</translation>
    </message>
    <message>
        <source>Move you with slow kicks.</source>
        <translation>Servem para avançar com pernadas lentas.</translation>
    </message>
    <message>
        <source>Lets you see. Your nose is inside, so that you can blow into it.</source>
        <translation>Permite ver. O nariz fica lá dentro, para soprar por ele.</translation>
    </message>
    <message>
        <source>Gives you air when you breathe in.</source>
        <translation>Dá ar quando inspira.</translation>
    </message>
    <message>
        <source>Help you to sink. Your instructor shows how to drop them.</source>
        <translation>Ajudam a descer. O instrutor mostra como os largar.</translation>
    </message>
    <message>
        <source>Holds your air.</source>
        <translation>Contém o seu ar.</translation>
    </message>
    <message>
        <source>Shows how much air is left. Look at it often.</source>
        <translation>Mostra quanto ar resta. Olhe para ele muitas vezes.</translation>
    </message>
    <message>
        <source>Talk with your hands</source>
        <translation>Fale com as mãos</translation>
    </message>
    <message>
        <source>Thumb up means “go up”. It never means “good”. For “good”, make a ring.</source>
        <translation>Polegar para cima quer dizer “subir”. Nunca quer dizer “bem”. Para “bem”, faça um anel.</translation>
    </message>
    <message>
        <source>Some people count in another way. Show each other your numbers first.</source>
        <translation>Nem todos contam igual. Mostrem primeiro os números um ao outro.</translation>
    </message>
    <message>
        <source>One sign at a time: %1 means %2.</source>
        <translation>Um sinal de cada vez: %1 quer dizer %2.</translation>
    </message>
    <message>
        <source>Fill a balloon at the top. Down it goes, and it shrinks.</source>
        <translation>Encha um balão em cima. Ao descer, encolhe.</translation>
    </message>
    <message>
        <source>Fill it deep down. Up it goes, and it swells.</source>
        <translation>Encha-o lá em baixo. Ao subir, incha.</translation>
    </message>
    <message>
        <source>So does the air in your lungs, if you hold it.</source>
        <translation>Tal como o ar nos seus pulmões, se o prender.</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>a button: to the page before</extracomment>
        <translation>Anterior</translation>
    </message>
    <message>
        <source>Next</source>
        <extracomment>a button: to the page after</extracomment>
        <translation>Seguinte</translation>
    </message>
    <message>
        <source>Run</source>
        <extracomment>a button: the pages turn by themselves from here on</extracomment>
        <translation>Reproduzir</translation>
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
        <translation>Toque no seu nome.</translation>
    </message>
    <message>
        <source>No speaker has checked this text yet. Ask if it is not clear.</source>
        <extracomment>stands on every page whose language is a draft</extracomment>
        <translation>Ninguém que fale português reviu ainda este texto. Se não estiver claro, pergunte.</translation>
    </message>
    <message>
        <source>A planning aid. Your instructor decides.</source>
        <translation>Uma ajuda ao planeamento. O seu instrutor decide.</translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>Ainda sem participantes.</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Boas-vindas</translation>
    </message>
    <message>
        <source>Today’s dive</source>
        <translation>O mergulho de hoje</translation>
    </message>
    <message>
        <source>Where</source>
        <extracomment>label before a place</extracomment>
        <translation>Onde</translation>
    </message>
    <message>
        <source>How deep</source>
        <extracomment>label before a depth</extracomment>
        <translation>Profundidade</translation>
    </message>
    <message>
        <source>no deeper than %1</source>
        <extracomment>follows the label “How deep”</extracomment>
        <translation>no máximo %1</translation>
    </message>
    <message>
        <source>How long</source>
        <extracomment>label before a time</extracomment>
        <translation>Duração</translation>
    </message>
    <message>
        <source>about %1</source>
        <extracomment>follows the label “How long”</extracomment>
        <translation>cerca de %1</translation>
    </message>
    <message>
        <source>not set yet</source>
        <extracomment>in place of a name or a place</extracomment>
        <translation>a definir</translation>
    </message>
    <message>
        <source>You may stop at any time. Just show it.</source>
        <translation>Pode parar a qualquer momento. Basta um sinal.</translation>
    </message>
    <message>
        <source>Ask about all that is not clear.</source>
        <translation>Pergunte tudo o que não estiver claro.</translation>
    </message>
    <message>
        <source>Your kit</source>
        <translation>O seu equipamento</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <extracomment>in place of a size</extracomment>
        <translation>a escolher</translation>
    </message>
    <message>
        <source>Try it all on. Does it pinch, leak or feel loose? Say so.</source>
        <translation>Experimente tudo. Algo aperta, deixa entrar água ou está largo? Diga.</translation>
    </message>
    <message>
        <source>Breathe all the time</source>
        <translation>Respire sempre</translation>
    </message>
    <message>
        <source>Move the diver up and down.</source>
        <extracomment>the guest drags a picture with the finger</extracomment>
        <translation>Mova o mergulhador para cima e para baixo.</translation>
    </message>
    <message>
        <source>Depth</source>
        <extracomment>label before a number</extracomment>
        <translation>Profundidade</translation>
    </message>
    <message>
        <source>Pressure</source>
        <extracomment>label before a number</extracomment>
        <translation>Pressão</translation>
    </message>
    <message>
        <source>%1 the pressure at the top</source>
        <extracomment>%1 is a factor, as in ×1.8</extracomment>
        <translation>%1 a pressão na superfície</translation>
    </message>
    <message>
        <source>Balloon</source>
        <translation>Balão</translation>
    </message>
    <message>
        <source>Filled at the top, it shrinks on the way down.</source>
        <extracomment>a balloon</extracomment>
        <translation>Cheio na superfície, encolhe ao descer.</translation>
    </message>
    <message>
        <source>Lungs</source>
        <translation>Pulmões</translation>
    </message>
    <message>
        <source>Breathe, and they stay the same size.</source>
        <extracomment>the lungs</extracomment>
        <translation>Respire, e ficam do mesmo tamanho.</translation>
    </message>
    <message>
        <source>A breath held at %1 swells to %2 at the top.</source>
        <extracomment>%2 is a factor, as in ×1.8</extracomment>
        <translation>O ar preso a %1 expande-se ao subir: %2 na superfície.</translation>
    </message>
    <message>
        <source>It can tear a lung.</source>
        <extracomment>a held breath</extracomment>
        <translation>Pode rasgar um pulmão.</translation>
    </message>
    <message>
        <source>Even %1 up can be enough.</source>
        <extracomment>to go up by %1 with a held breath can be enough to tear a lung</extracomment>
        <translation>Mesmo subir só %1 pode bastar.</translation>
    </message>
    <message>
        <source>Ear drum</source>
        <translation>Tímpano</translation>
    </message>
    <message>
        <source>It bends in on the way down. Clear your ears.</source>
        <extracomment>the ear drum</extracomment>
        <translation>Ao descer, curva-se para dentro. Compense os ouvidos.</translation>
    </message>
    <message>
        <source>flat</source>
        <extracomment>the ear drum is not bent</extracomment>
        <translation>plano</translation>
    </message>
    <message>
        <source>bent in</source>
        <extracomment>the ear drum is bent in</extracomment>
        <translation>curvado</translation>
    </message>
    <message>
        <source>On the way down it pulls at your face. Breathe out a bit through your nose.</source>
        <extracomment>the mask</extracomment>
        <translation>Ao descer, puxa o rosto. Solte um pouco de ar pelo nariz.</translation>
    </message>
    <message>
        <source>sits well</source>
        <extracomment>the mask</extracomment>
        <translation>assenta bem</translation>
    </message>
    <message>
        <source>pulls</source>
        <extracomment>the mask is sucked to the face</extracomment>
        <translation>puxa</translation>
    </message>
    <message>
        <source>Size: %1</source>
        <extracomment>%1 is a share, as in 55 %</extracomment>
        <translation>Tamanho: %1</translation>
    </message>
    <message>
        <source>Top</source>
        <extracomment>the water’s surface, beside a scale of depth</extracomment>
        <translation>Superfície</translation>
    </message>
    <message>
        <source>Deepest today</source>
        <extracomment>beside a scale of depth</extracomment>
        <translation>Máximo de hoje</translation>
    </message>
    <message>
        <source>Diver</source>
        <extracomment>a person under water</extracomment>
        <translation>Mergulhador</translation>
    </message>
    <message>
        <source>Clear them every %1 on the way down, before they hurt.</source>
        <extracomment>your ears</extracomment>
        <translation>Ao descer, compense-os a cada %1, antes de doerem.</translation>
    </message>
    <message>
        <source>Pinch your nose. Blow softly. Never blow hard.</source>
        <translation>Aperte o nariz. Sopre de leve. Nunca sopre com força.</translation>
    </message>
    <message>
        <source>Try it: go down. What if you do not clear?</source>
        <translation>Experimente aqui: desça. E se não compensar?</translation>
    </message>
    <message>
        <source>Down</source>
        <extracomment>a button: go a little deeper</extracomment>
        <translation>Descer</translation>
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
        <translation>No tímpano</translation>
    </message>
    <message>
        <source>Fine</source>
        <extracomment>state of the ears</extracomment>
        <translation>Tudo bem</translation>
    </message>
    <message>
        <source>Pressure: clear now</source>
        <extracomment>state of the ears: it feels full, it does not hurt yet</extracomment>
        <translation>Pressão: compense já</translation>
    </message>
    <message>
        <source>Pain: stop and go up</source>
        <extracomment>state of the ears</extracomment>
        <translation>Dor: pare e suba</translation>
    </message>
    <message>
        <source>Locked: only going up helps</source>
        <extracomment>state of the ears: the tube to the ear is shut tight and does not open</extracomment>
        <translation>Bloqueado: só subir ajuda</translation>
    </message>
    <message>
        <source>Cleared. The drum is flat.</source>
        <extracomment>the ear drum</extracomment>
        <translation>Compensado. O tímpano está plano.</translation>
    </message>
    <message>
        <source>Do not force it. Go up a bit first.</source>
        <extracomment>to clear the ears</extracomment>
        <translation>Não force. Primeiro suba um pouco.</translation>
    </message>
    <message>
        <source>Ears hurt? Stop, show it, go up a bit. Then try once more.</source>
        <translation>Dor de ouvidos? Pare, mostre, suba um pouco. Depois tente outra vez.</translation>
    </message>
    <message>
        <source>clear here</source>
        <extracomment>beside a mark on a scale of depth</extracomment>
        <translation>compense aqui</translation>
    </message>
    <message>
        <source>Hand signals</source>
        <translation>Sinais com a mão</translation>
    </message>
    <message>
        <source>How much air do you have?</source>
        <translation>Quanto ar tem?</translation>
    </message>
    <message>
        <source>Show each figure with one hand. This is %1:</source>
        <extracomment>the figures of a number, one after another</extracomment>
        <translation>Mostre cada algarismo com uma mão. Isto é %1:</translation>
    </message>
    <message>
        <source>Not the same</source>
        <extracomment>above two signals that are often mixed up</extracomment>
        <translation>Não é o mesmo</translation>
    </message>
    <message>
        <source>Thumb up: we go up. It does not mean “good”.</source>
        <translation>Polegar para cima: subimos. Não quer dizer “bem”.</translation>
    </message>
    <message>
        <source>All is well? Make the ring.</source>
        <extracomment>thumb and first finger make a ring</extracomment>
        <translation>Está tudo bem? Faça o anel.</translation>
    </message>
    <message>
        <source>Do you know them?</source>
        <extracomment>hand signals</extracomment>
        <translation>Conhece os sinais?</translation>
    </message>
    <message>
        <source>Start</source>
        <extracomment>a button</extracomment>
        <translation>Começar</translation>
    </message>
    <message>
        <source>Start over</source>
        <extracomment>a button</extracomment>
        <translation>Recomeçar</translation>
    </message>
    <message>
        <source>What does this signal say?</source>
        <translation>O que diz este sinal?</translation>
    </message>
    <message>
        <source>Yes, that is right.</source>
        <translation>Sim, está certo.</translation>
    </message>
    <message>
        <source>Not quite. It says: %1</source>
        <translation>Não é bem isso. Diz: %1</translation>
    </message>
    <message>
        <source>We will ask it once more.</source>
        <translation>Vamos perguntar outra vez.</translation>
    </message>
    <message>
        <source>Known: %1 of %2</source>
        <translation>Conhecidos: %1 de %2</translation>
    </message>
    <message>
        <source>You know them all. Well done!</source>
        <translation>Conhece-os todos. Muito bem!</translation>
    </message>
    <message>
        <source>Your instructor has a note of it: %1</source>
        <extracomment>%1 is a date</extracomment>
        <translation>Anotado para o seu instrutor: %1</translation>
    </message>
    <message>
        <source>known</source>
        <extracomment>a hand signal that the guest knows</extracomment>
        <translation>conhecido</translation>
    </message>
    <message>
        <source>not yet</source>
        <extracomment>a hand signal that the guest does not know yet</extracomment>
        <translation>ainda não</translation>
    </message>
    <message>
        <source>What we try first</source>
        <extracomment>what is practised in shallow water</extracomment>
        <translation>Primeiro praticamos</translation>
    </message>
    <message>
        <source>Your instructor shows it. Then you try. Take your time.</source>
        <translation>O instrutor mostra. Depois é a sua vez. Sem pressa.</translation>
    </message>
    <message>
        <source>Ask your instructor what we try today.</source>
        <translation>Pergunte ao instrutor o que praticamos hoje.</translation>
    </message>
    <message>
        <source>When we go up</source>
        <translation>Quando subimos</translation>
    </message>
    <message>
        <source>One goes up, we all go up.</source>
        <translation>Se um sobe, subimos todos.</translation>
    </message>
    <message>
        <source>Go up slowly and breathe all the time.</source>
        <translation>Suba devagar e respire sempre.</translation>
    </message>
    <message>
        <source>Your gauge reads %1 or less. Show it now.</source>
        <translation>O manómetro marca %1 ou menos. Sinalize já.</translation>
    </message>
    <message>
        <source>Your air is low. Ask which number to look for.</source>
        <extracomment>the number on the gauge</extracomment>
        <translation>Tem pouco ar. Pergunte que número deve vigiar.</translation>
    </message>
    <message>
        <source>The time is up: %1.</source>
        <translation>O tempo acabou: %1.</translation>
    </message>
    <message>
        <source>You want to go up. That is fine.</source>
        <translation>Quer subir. Não há problema.</translation>
    </message>
    <message>
        <source>Your ears hurt or do not clear.</source>
        <translation>Os seus ouvidos doem ou continuam tapados.</translation>
    </message>
    <message>
        <source>You are cold, tired or scared.</source>
        <translation>Sente frio, cansaço ou medo.</translation>
    </message>
    <message>
        <source>Your instructor shows: go up.</source>
        <translation>O instrutor faz o sinal: subir.</translation>
    </message>
    <message>
        <source>You see none of us. Look around for one minute, then go up slowly.</source>
        <translation>Não vê nenhum de nós. Olhe à sua volta um minuto, depois suba devagar.</translation>
    </message>
    <message>
        <source>After the dive</source>
        <translation>Depois do mergulho</translation>
    </message>
    <message>
        <source>No flights and no mountain roads for %1 h.</source>
        <translation>Nada de voos nem estradas de montanha durante %1 h.</translation>
    </message>
    <message>
        <source>For 48 h, watch for this:</source>
        <extracomment>signs of illness</extracomment>
        <translation>Durante 48 h, vigie estes sintomas:</translation>
    </message>
    <message>
        <source>numb or tingling skin</source>
        <translation>pele dormente ou formigueiro</translation>
    </message>
    <message>
        <source>weak arms or legs</source>
        <translation>braços ou pernas fracos</translation>
    </message>
    <message>
        <source>dizzy, or odd sight</source>
        <translation>tonturas ou visão estranha</translation>
    </message>
    <message>
        <source>very tired</source>
        <translation>muito cansaço</translation>
    </message>
    <message>
        <source>sore joints</source>
        <translation>dor nas articulações</translation>
    </message>
    <message>
        <source>short of breath, or chest pain</source>
        <translation>falta de ar ou dor no peito</translation>
    </message>
    <message>
        <source>Any of these? Call now: %1</source>
        <translation>Algum destes sintomas? Ligue já: %1</translation>
    </message>
    <message>
        <source>Any of these? Call for help now. Ask your instructor for the number.</source>
        <translation>Algum destes sintomas? Ligue já para pedir ajuda. Peça o número ao instrutor.</translation>
    </message>
    <message>
        <source>Say that you have been diving. Do not wait.</source>
        <translation>Diga que mergulhou. Não espere.</translation>
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
        <translation>Ouvidos</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Pare</translation>
    </message>
    <message>
        <source>Go up</source>
        <translation>Suba</translation>
    </message>
    <message>
        <source>Go down</source>
        <translation>Desça</translation>
    </message>
    <message>
        <source>No air</source>
        <translation>Sem ar</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Olhe</translation>
    </message>
    <message>
        <source>Come here</source>
        <translation>Venha cá</translation>
    </message>
    <message>
        <source>Stay close</source>
        <translation>Fique perto</translation>
    </message>
    <message>
        <source>Hold hands</source>
        <translation>De mãos dadas</translation>
    </message>
    <message>
        <source>This deep</source>
        <translation>Esta profundidade</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>Devagar</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>Frio</translation>
    </message>
    <message>
        <source>How much air?</source>
        <translation>Quanto ar?</translation>
    </message>
    <message>
        <source>OK, at the top</source>
        <translation>Superfície: OK</translation>
    </message>
    <message>
        <source>Help, at the top</source>
        <translation>Superfície: ajuda</translation>
    </message>
    <message>
        <source>All is well. Is all well with you?</source>
        <translation>Está tudo bem. E do seu lado?</translation>
    </message>
    <message>
        <source>Something is wrong.</source>
        <translation>Algo não está bem.</translation>
    </message>
    <message>
        <source>My ears hurt, or do not clear.</source>
        <translation>Os meus ouvidos doem ou continuam tapados.</translation>
    </message>
    <message>
        <source>Stop and stay where you are.</source>
        <translation>Pare e fique onde está.</translation>
    </message>
    <message>
        <source>Go up: the dive is over. It never means “good”.</source>
        <translation>Suba: o mergulho acabou. Nunca quer dizer “bem”.</translation>
    </message>
    <message>
        <source>Go down.</source>
        <translation>Desça.</translation>
    </message>
    <message>
        <source>I am low on air.</source>
        <translation>Tenho pouco ar.</translation>
    </message>
    <message>
        <source>I have no air. Give me yours now.</source>
        <translation>Estou sem ar. Dê-me já do seu.</translation>
    </message>
    <message>
        <source>Let me breathe from your spare mouthpiece.</source>
        <translation>Deixe-me respirar do seu regulador de reserva.</translation>
    </message>
    <message>
        <source>Look, over there.</source>
        <translation>Olhe, ali.</translation>
    </message>
    <message>
        <source>Come to me.</source>
        <translation>Venha até mim.</translation>
    </message>
    <message>
        <source>Stay close together.</source>
        <translation>Fiquem bem juntos.</translation>
    </message>
    <message>
        <source>Let us hold hands.</source>
        <translation>Vamos dar as mãos.</translation>
    </message>
    <message>
        <source>Stay at this depth.</source>
        <translation>Mantenha esta profundidade.</translation>
    </message>
    <message>
        <source>Slow down.</source>
        <translation>Mais devagar.</translation>
    </message>
    <message>
        <source>I am cold.</source>
        <translation>Estou com frio.</translation>
    </message>
    <message>
        <source>All is well. Made at the surface.</source>
        <translation>Está tudo bem. Faz-se na superfície.</translation>
    </message>
    <message>
        <source>Help me. Made at the surface.</source>
        <translation>Ajude-me. Faz-se na superfície.</translation>
    </message>
    <message>
        <source>Thumb and first finger make a ring.</source>
        <translation>O polegar e o indicador formam um anel.</translation>
    </message>
    <message>
        <source>Rock a flat hand, then point at what is wrong.</source>
        <translation>Balance a mão espalmada, depois aponte o problema.</translation>
    </message>
    <message>
        <source>Point at your ear.</source>
        <translation>Aponte para o ouvido.</translation>
    </message>
    <message>
        <source>Hold up a flat hand.</source>
        <translation>Levante a mão espalmada.</translation>
    </message>
    <message>
        <source>Fist with the thumb up, moving up.</source>
        <translation>Punho com o polegar para cima, a subir.</translation>
    </message>
    <message>
        <source>Fist with the thumb down, moving down.</source>
        <translation>Punho com o polegar para baixo, a descer.</translation>
    </message>
    <message>
        <source>Hold a fist at your chest.</source>
        <translation>Ponha o punho junto ao peito.</translation>
    </message>
    <message>
        <source>Cut across your throat with a flat hand.</source>
        <translation>Passe a mão espalmada de lado a lado do pescoço.</translation>
    </message>
    <message>
        <source>Move your fingers to your mouth and away.</source>
        <translation>Leve os dedos à boca e afaste-os.</translation>
    </message>
    <message>
        <source>Two fingers from your eyes to the thing.</source>
        <translation>Dois dedos, dos olhos para o que quer mostrar.</translation>
    </message>
    <message>
        <source>Wave your hand towards you.</source>
        <translation>Acene com a mão para si.</translation>
    </message>
    <message>
        <source>Put two first fingers side by side.</source>
        <translation>Ponha os dois indicadores lado a lado.</translation>
    </message>
    <message>
        <source>Clasp your hands.</source>
        <translation>Aperte uma mão na outra.</translation>
    </message>
    <message>
        <source>Slide a flat hand from side to side.</source>
        <translation>Deslize a mão espalmada de lado a lado.</translation>
    </message>
    <message>
        <source>Press a flat hand down, twice.</source>
        <translation>Baixe a mão espalmada duas vezes.</translation>
    </message>
    <message>
        <source>Cross your arms and rub them.</source>
        <translation>Cruze os braços e esfregue-os.</translation>
    </message>
    <message>
        <source>Lay two fingers on your palm.</source>
        <translation>Ponha dois dedos na palma da mão.</translation>
    </message>
    <message>
        <source>Make a big ring over your head with both arms.</source>
        <translation>Faça um grande anel sobre a cabeça com os dois braços.</translation>
    </message>
    <message>
        <source>Wave one straight arm over your head, slowly.</source>
        <translation>Acene devagar com um braço esticado sobre a cabeça.</translation>
    </message>
</context>
</TS>
