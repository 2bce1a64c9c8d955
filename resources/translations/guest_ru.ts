<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ru" sourcelanguage="en">
<context>
    <name>Guest</name>
    <message>
        <source>Meet</source>
        <extracomment>Card, before day and time: "Meet Sat 4 July, 09:30".</extracomment>
        <translation>Встреча</translation>
    </message>
    <message>
        <source>With</source>
        <extracomment>Card, before the instructor's name: "With Ana".
----------
label before the instructor’s name</extracomment>
        <translation>Ведёт</translation>
    </message>
    <message>
        <source>Low on air</source>
        <extracomment>Card, above the pressure in large type; the name of a hand signal as well.</extracomment>
        <translation>Мало воздуха</translation>
    </message>
    <message>
        <source>signal now</source>
        <extracomment>Card, below that pressure: show the hand signal at once. Two or three short words.</extracomment>
        <translation>сразу дайте знак</translation>
    </message>
    <message>
        <source>Deepest</source>
        <extracomment>Card, above a depth in large type: the deepest point of the dive. One short word.</extracomment>
        <translation>Не глубже</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>Card, above minutes in large type: how long the dive is. One short word.</extracomment>
        <translation>Время</translation>
    </message>
    <message>
        <source>Never hold your breath</source>
        <extracomment>Card, the largest words: the one rule. Keep it short.</extracomment>
        <translation>Никогда не задерживайте дыхание</translation>
    </message>
    <message>
        <source>Going up, held air swells: lungs can tear.</source>
        <extracomment>Card, below that rule. Beside it stands by how much the air swells: "×1.8".</extracomment>
        <translation>При всплытии задержанный воздух расширяется: лёгкие могут порваться.</translation>
    </message>
    <message>
        <source>Clear ears early, every %1. Pain? Stop, signal, go up %2.</source>
        <extracomment>Card. %1: a step of descent ("1 m"). %2: how far to go up ("1 m").</extracomment>
        <translation>Продувайте уши заранее, раз в %1. Больно? Стоп, знак, %2 вверх.</translation>
    </message>
    <message>
        <source>Stay within reach. Lost? Look around 1 minute, go up slowly.</source>
        <extracomment>Card: so close to the instructor that an arm reaches. When apart: look around.</extracomment>
        <translation>Не дальше вытянутой руки. Потерялись? Осматривайтесь 1 минуту, медленно вверх.</translation>
    </message>
    <message>
        <source>Cold, scared, tired? Signal. Quitting is fine.</source>
        <extracomment>Card: whoever does not feel well gives a signal, and may end the dive.</extracomment>
        <translation>Холодно, страшно, устали? Дайте знак. Можно закончить.</translation>
    </message>
    <message>
        <source>At the top: fill BCD, mask on.</source>
        <extracomment>Card: back at the surface.</extracomment>
        <translation>На поверхности: надуйте жилет, маску не снимайте.</translation>
    </message>
    <message>
        <source>not “good”</source>
        <extracomment>Card, under the picture of a raised thumb, which means "go up": never "good".</extracomment>
        <translation>не «хорошо»</translation>
    </message>
    <message>
        <source>%1 h: no flights, no mountains.</source>
        <extracomment>Card, after the dive. %1: a number of hours.</extracomment>
        <translation>%1 ч: никаких полётов и горных дорог.</translation>
    </message>
    <message>
        <source>48 h: numb, dizzy, very tired, joint pain, breathless?</source>
        <extracomment>Card, after the dive: whoever feels this within 48 hours calls the number beside it.</extracomment>
        <translation>48 ч: онемение, головокружение, сильная усталость, боль в суставах, одышка?</translation>
    </message>
    <message>
        <source>Call</source>
        <extracomment>Card, before the emergency number; without a colon.</extracomment>
        <translation>Звоните</translation>
    </message>
    <message>
        <source>Understood</source>
        <extracomment>Card, beside a box that the guest ticks.</extracomment>
        <translation>Понятно</translation>
    </message>
    <message>
        <source>Planning aid. Your instructor decides.</source>
        <extracomment>Card, small: what the card is, and who decides.</extracomment>
        <translation>Помощь в планировании. Решает инструктор.</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>бар</translation>
    </message>
    <message>
        <source>psi</source>
        <translation>psi</translation>
    </message>
    <message>
        <source>m</source>
        <translation>м</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>фт</translation>
    </message>
    <message>
        <source>min</source>
        <translation>мин</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>кг</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>фунт.</translation>
    </message>
    <message>
        <source>L</source>
        <translation>л</translation>
    </message>
    <message>
        <source>ft³</source>
        <translation>фт³</translation>
    </message>
    <message>
        <source>Breathe under water</source>
        <translation>Дышать под водой</translation>
    </message>
    <message>
        <source>Clear your mask</source>
        <translation>Продуть маску</translation>
    </message>
    <message>
        <source>Clear the mouthpiece</source>
        <translation>Продуть регулятор</translation>
    </message>
    <message>
        <source>Find the mouthpiece</source>
        <translation>Найти регулятор</translation>
    </message>
    <message>
        <source>Clear your ears</source>
        <translation>Продуть уши</translation>
    </message>
    <message>
        <source>Fill and empty the BCD</source>
        <translation>Надуть и сдуть жилет</translation>
    </message>
    <message>
        <source>Share air</source>
        <translation>Делим воздух</translation>
    </message>
    <message>
        <source>Float at the top</source>
        <translation>Держаться на поверхности</translation>
    </message>
    <message>
        <source>So that slow, steady breaths feel easy before you go down.</source>
        <translation>Чтобы медленно и ровно дышать было легко ещё до погружения.</translation>
    </message>
    <message>
        <source>So that water in the mask is no worry: you know how to blow it out.</source>
        <translation>Чтобы вода в маске не пугала: вы умеете её выдуть.</translation>
    </message>
    <message>
        <source>So that you can blow water out and breathe on.</source>
        <translation>Чтобы выдуть воду и дышать дальше.</translation>
    </message>
    <message>
        <source>So that you can get it back if it slips out.</source>
        <translation>Чтобы вернуть его, если он выскользнет изо рта.</translation>
    </message>
    <message>
        <source>So that going down need not hurt.</source>
        <translation>Чтобы при погружении не было больно.</translation>
    </message>
    <message>
        <source>So that you can float, or sink, when you choose.</source>
        <translation>Чтобы держаться на воде или опускаться, когда захотите.</translation>
    </message>
    <message>
        <source>So that you can breathe from the spare if yours runs low.</source>
        <translation>Чтобы дышать из запасного регулятора, если у вас мало воздуха.</translation>
    </message>
    <message>
        <source>So that you can rest with your head above the water.</source>
        <translation>Чтобы отдохнуть, держа голову над водой.</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>Костюм</translation>
    </message>
    <message>
        <source>BCD</source>
        <translation>Жилет</translation>
    </message>
    <message>
        <source>Fins</source>
        <translation>Ласты</translation>
    </message>
    <message>
        <source>Mask</source>
        <translation>Маска</translation>
    </message>
    <message>
        <source>Mouthpiece</source>
        <translation>Регулятор</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Грузы</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Баллон</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Манометр</translation>
    </message>
    <message>
        <source>Keeps you warm.</source>
        <translation>Согревает вас.</translation>
    </message>
    <message>
        <source>The jacket that lets you float or sink.</source>
        <translation>Жилет, который держит вас на воде или даёт опуститься.</translation>
    </message>
    <message>
        <source>Move you with slow kicks.</source>
        <translation>Двигают вас вперёд медленными взмахами.</translation>
    </message>
    <message>
        <source>Lets you see. Your nose is inside, so that you can blow into it.</source>
        <translation>Помогает видеть. Нос внутри, чтобы вы могли дуть в неё.</translation>
    </message>
    <message>
        <source>Gives you air when you breathe in.</source>
        <translation>Даёт воздух, когда вы вдыхаете.</translation>
    </message>
    <message>
        <source>Help you to sink. Your instructor shows how to drop them.</source>
        <translation>Помогают опуститься. Инструктор покажет, как их сбросить.</translation>
    </message>
    <message>
        <source>Holds your air.</source>
        <translation>В нём ваш воздух.</translation>
    </message>
    <message>
        <source>Shows how much air is left. Look at it often.</source>
        <translation>Показывает, сколько воздуха осталось. Смотрите на него часто.</translation>
    </message>
    <message>
        <source>Talk with your hands</source>
        <translation>Говорите руками</translation>
    </message>
    <message>
        <source>Thumb up means “go up”. It never means “good”. For “good”, make a ring.</source>
        <translation>Большой палец вверх — это «всплывайте». Он никогда не значит «хорошо». «Хорошо» — это кольцо.</translation>
    </message>
    <message>
        <source>Some people count in another way. Show each other your numbers first.</source>
        <translation>Некоторые показывают числа по-другому. Сначала покажите друг другу свои.</translation>
    </message>
    <message>
        <source>One sign at a time: %1 means %2.</source>
        <translation>По одному знаку: %1 значит %2.</translation>
    </message>
    <message>
        <source>Fill a balloon at the top. Down it goes, and it shrinks.</source>
        <translation>Надуйте шарик на поверхности. По пути вниз он сжимается.</translation>
    </message>
    <message>
        <source>Fill it deep down. Up it goes, and it swells.</source>
        <translation>Надуйте его на глубине. По пути вверх он раздувается.</translation>
    </message>
    <message>
        <source>So does the air in your lungs, if you hold it.</source>
        <translation>Так же и воздух в лёгких, если задержать дыхание.</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>a button: to the page before</extracomment>
        <translation>Назад</translation>
    </message>
    <message>
        <source>Next</source>
        <extracomment>a button: to the page after</extracomment>
        <translation>Далее</translation>
    </message>
    <message>
        <source>Run</source>
        <extracomment>a button: the pages turn by themselves from here on</extracomment>
        <translation>Запустить</translation>
    </message>
    <message>
        <source>Pause</source>
        <extracomment>a button: the pages no longer turn by themselves</extracomment>
        <translation>Пауза</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Язык</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Страница %1 из %2</translation>
    </message>
    <message>
        <source>Tap your name.</source>
        <extracomment>above the first names of the guests</extracomment>
        <translation>Коснитесь своего имени.</translation>
    </message>
    <message>
        <source>No speaker has checked this text yet. Ask if it is not clear.</source>
        <extracomment>stands on every page whose language is a draft</extracomment>
        <translation>Этот текст ещё не проверил носитель языка. Если что-то неясно, спросите.</translation>
    </message>
    <message>
        <source>A planning aid. Your instructor decides.</source>
        <translation>Помощь в планировании. Решает инструктор.</translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>Гостей пока нет.</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Добро пожаловать</translation>
    </message>
    <message>
        <source>Today’s dive</source>
        <translation>Сегодняшнее погружение</translation>
    </message>
    <message>
        <source>Where</source>
        <extracomment>label before a place</extracomment>
        <translation>Где</translation>
    </message>
    <message>
        <source>How deep</source>
        <extracomment>label before a depth</extracomment>
        <translation>Глубина</translation>
    </message>
    <message>
        <source>no deeper than %1</source>
        <extracomment>follows the label “How deep”</extracomment>
        <translation>не глубже %1</translation>
    </message>
    <message>
        <source>How long</source>
        <extracomment>label before a time</extracomment>
        <translation>Как долго</translation>
    </message>
    <message>
        <source>about %1</source>
        <extracomment>follows the label “How long”</extracomment>
        <translation>примерно %1</translation>
    </message>
    <message>
        <source>not set yet</source>
        <extracomment>in place of a name or a place</extracomment>
        <translation>пока не указано</translation>
    </message>
    <message>
        <source>You may stop at any time. Just show it.</source>
        <translation>Прекратить можно в любой момент. Просто дайте знак.</translation>
    </message>
    <message>
        <source>Ask about all that is not clear.</source>
        <translation>Спрашивайте обо всём, что неясно.</translation>
    </message>
    <message>
        <source>Your kit</source>
        <translation>Ваше снаряжение</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <extracomment>in place of a size</extracomment>
        <translation>ещё не выбрано</translation>
    </message>
    <message>
        <source>Try it all on. Does it pinch, leak or feel loose? Say so.</source>
        <translation>Примерьте всё. Жмёт, протекает, болтается? Скажите нам.</translation>
    </message>
    <message>
        <source>Breathe all the time</source>
        <translation>Дышите всё время</translation>
    </message>
    <message>
        <source>Move the diver up and down.</source>
        <extracomment>the guest drags a picture with the finger</extracomment>
        <translation>Двигайте дайвера вверх и вниз.</translation>
    </message>
    <message>
        <source>Depth</source>
        <extracomment>label before a number</extracomment>
        <translation>Глубина</translation>
    </message>
    <message>
        <source>Pressure</source>
        <extracomment>label before a number</extracomment>
        <translation>Давление</translation>
    </message>
    <message>
        <source>%1 the pressure at the top</source>
        <extracomment>%1 is a factor, as in ×1.8</extracomment>
        <translation>%1 от давления на поверхности</translation>
    </message>
    <message>
        <source>Balloon</source>
        <translation>Шарик</translation>
    </message>
    <message>
        <source>Filled at the top, it shrinks on the way down.</source>
        <extracomment>a balloon</extracomment>
        <translation>Надут на поверхности, по пути вниз сжимается.</translation>
    </message>
    <message>
        <source>Lungs</source>
        <translation>Лёгкие</translation>
    </message>
    <message>
        <source>Breathe, and they stay the same size.</source>
        <extracomment>the lungs</extracomment>
        <translation>Дышите, и их размер не изменится.</translation>
    </message>
    <message>
        <source>A breath held at %1 swells to %2 at the top.</source>
        <extracomment>%2 is a factor, as in ×1.8</extracomment>
        <translation>Воздух, задержанный на глубине %1, на поверхности расширяется до %2.</translation>
    </message>
    <message>
        <source>It can tear a lung.</source>
        <extracomment>a held breath</extracomment>
        <translation>Он может разорвать лёгкое.</translation>
    </message>
    <message>
        <source>Even %1 up can be enough.</source>
        <extracomment>to go up by %1 with a held breath can be enough to tear a lung</extracomment>
        <translation>Может хватить даже подъёма на %1.</translation>
    </message>
    <message>
        <source>Ear drum</source>
        <translation>Барабанная перепонка</translation>
    </message>
    <message>
        <source>It bends in on the way down. Clear your ears.</source>
        <extracomment>the ear drum</extracomment>
        <translation>При погружении она прогибается внутрь. Продувайте уши.</translation>
    </message>
    <message>
        <source>flat</source>
        <extracomment>the ear drum is not bent</extracomment>
        <translation>ровная</translation>
    </message>
    <message>
        <source>bent in</source>
        <extracomment>the ear drum is bent in</extracomment>
        <translation>прогнута внутрь</translation>
    </message>
    <message>
        <source>On the way down it pulls at your face. Breathe out a bit through your nose.</source>
        <extracomment>the mask</extracomment>
        <translation>При погружении она присасывается к лицу. Немного выдохните носом.</translation>
    </message>
    <message>
        <source>sits well</source>
        <extracomment>the mask</extracomment>
        <translation>сидит хорошо</translation>
    </message>
    <message>
        <source>pulls</source>
        <extracomment>the mask is sucked to the face</extracomment>
        <translation>присасывается</translation>
    </message>
    <message>
        <source>Size: %1</source>
        <extracomment>%1 is a share, as in 55 %</extracomment>
        <translation>Размер: %1</translation>
    </message>
    <message>
        <source>Top</source>
        <extracomment>the water’s surface, beside a scale of depth</extracomment>
        <translation>Поверхность</translation>
    </message>
    <message>
        <source>Deepest today</source>
        <extracomment>beside a scale of depth</extracomment>
        <translation>Сегодня не глубже</translation>
    </message>
    <message>
        <source>Diver</source>
        <extracomment>a person under water</extracomment>
        <translation>Дайвер</translation>
    </message>
    <message>
        <source>Clear them every %1 on the way down, before they hurt.</source>
        <extracomment>your ears</extracomment>
        <translation>По пути вниз продувайте их раз в %1, пока не заболели.</translation>
    </message>
    <message>
        <source>Pinch your nose. Blow softly. Never blow hard.</source>
        <translation>Зажмите нос. Дуйте мягко. Никогда не дуйте сильно.</translation>
    </message>
    <message>
        <source>Try it: go down. What if you do not clear?</source>
        <translation>Попробуйте: погружайтесь. Что будет, если не продувать?</translation>
    </message>
    <message>
        <source>Down</source>
        <extracomment>a button: go a little deeper</extracomment>
        <translation>Вниз</translation>
    </message>
    <message>
        <source>Up</source>
        <extracomment>a button: go a little less deep</extracomment>
        <translation>Вверх</translation>
    </message>
    <message>
        <source>Clear my ears</source>
        <extracomment>a button</extracomment>
        <translation>Продуть уши</translation>
    </message>
    <message>
        <source>On the ear drum</source>
        <extracomment>label before a pressure</extracomment>
        <translation>На перепонку</translation>
    </message>
    <message>
        <source>Fine</source>
        <extracomment>state of the ears</extracomment>
        <translation>Всё в порядке</translation>
    </message>
    <message>
        <source>Pressure: clear now</source>
        <extracomment>state of the ears: it feels full, it does not hurt yet</extracomment>
        <translation>Давит: продуйте сейчас</translation>
    </message>
    <message>
        <source>Pain: stop and go up</source>
        <extracomment>state of the ears</extracomment>
        <translation>Боль: стоп и вверх</translation>
    </message>
    <message>
        <source>Locked: only going up helps</source>
        <extracomment>state of the ears: the tube to the ear is shut tight and does not open</extracomment>
        <translation>Заложило: поможет только подъём</translation>
    </message>
    <message>
        <source>Cleared. The drum is flat.</source>
        <extracomment>the ear drum</extracomment>
        <translation>Продуто. Перепонка ровная.</translation>
    </message>
    <message>
        <source>Do not force it. Go up a bit first.</source>
        <extracomment>to clear the ears</extracomment>
        <translation>Не дуйте через силу. Сначала немного поднимитесь.</translation>
    </message>
    <message>
        <source>Ears hurt? Stop, show it, go up a bit. Then try once more.</source>
        <translation>Болят уши? Стоп, дайте знак, немного поднимитесь. Потом попробуйте ещё раз.</translation>
    </message>
    <message>
        <source>clear here</source>
        <extracomment>beside a mark on a scale of depth</extracomment>
        <translation>продуть здесь</translation>
    </message>
    <message>
        <source>Hand signals</source>
        <translation>Знаки руками</translation>
    </message>
    <message>
        <source>How much air do you have?</source>
        <translation>Сколько у вас воздуха?</translation>
    </message>
    <message>
        <source>Show each figure with one hand. This is %1:</source>
        <extracomment>the figures of a number, one after another</extracomment>
        <translation>Показывайте каждую цифру одной рукой. Это %1:</translation>
    </message>
    <message>
        <source>Not the same</source>
        <extracomment>above two signals that are often mixed up</extracomment>
        <translation>Не одно и то же</translation>
    </message>
    <message>
        <source>Thumb up: we go up. It does not mean “good”.</source>
        <translation>Большой палец вверх: всплываем. Это не значит «хорошо».</translation>
    </message>
    <message>
        <source>All is well? Make the ring.</source>
        <extracomment>thumb and first finger make a ring</extracomment>
        <translation>Всё хорошо? Покажите кольцо.</translation>
    </message>
    <message>
        <source>Do you know them?</source>
        <extracomment>hand signals</extracomment>
        <translation>Вы знаете эти знаки?</translation>
    </message>
    <message>
        <source>Start</source>
        <extracomment>a button</extracomment>
        <translation>Начать</translation>
    </message>
    <message>
        <source>Start over</source>
        <extracomment>a button</extracomment>
        <translation>Начать заново</translation>
    </message>
    <message>
        <source>What does this signal say?</source>
        <translation>Что значит этот знак?</translation>
    </message>
    <message>
        <source>Yes, that is right.</source>
        <translation>Да, верно.</translation>
    </message>
    <message>
        <source>Not quite. It says: %1</source>
        <translation>Не совсем. Это значит: %1</translation>
    </message>
    <message>
        <source>We will ask it once more.</source>
        <translation>Мы спросим ещё раз.</translation>
    </message>
    <message>
        <source>Known: %1 of %2</source>
        <translation>Знаете: %1 из %2</translation>
    </message>
    <message>
        <source>You know them all. Well done!</source>
        <translation>Вы знаете все. Отлично!</translation>
    </message>
    <message>
        <source>Your instructor has a note of it: %1</source>
        <extracomment>%1 is a date</extracomment>
        <translation>У инструктора это записано: %1</translation>
    </message>
    <message>
        <source>known</source>
        <extracomment>a hand signal that the guest knows</extracomment>
        <translation>знаете</translation>
    </message>
    <message>
        <source>not yet</source>
        <extracomment>a hand signal that the guest does not know yet</extracomment>
        <translation>ещё нет</translation>
    </message>
    <message>
        <source>What we try first</source>
        <extracomment>what is practised in shallow water</extracomment>
        <translation>Что пробуем сначала</translation>
    </message>
    <message>
        <source>Your instructor shows it. Then you try. Take your time.</source>
        <translation>Инструктор показывает. Потом пробуете вы. Не спешите.</translation>
    </message>
    <message>
        <source>Ask your instructor what we try today.</source>
        <translation>Спросите инструктора, что мы сегодня пробуем.</translation>
    </message>
    <message>
        <source>When we go up</source>
        <translation>Когда мы всплываем</translation>
    </message>
    <message>
        <source>One goes up, we all go up.</source>
        <translation>Один всплывает — всплываем все.</translation>
    </message>
    <message>
        <source>Go up slowly and breathe all the time.</source>
        <translation>Всплывайте медленно и всё время дышите.</translation>
    </message>
    <message>
        <source>Your gauge reads %1 or less. Show it now.</source>
        <translation>На манометре %1 или меньше. Сразу дайте знак.</translation>
    </message>
    <message>
        <source>Your air is low. Ask which number to look for.</source>
        <extracomment>the number on the gauge</extracomment>
        <translation>У вас мало воздуха. Спросите, за каким числом следить.</translation>
    </message>
    <message>
        <source>The time is up: %1.</source>
        <translation>Время вышло: %1.</translation>
    </message>
    <message>
        <source>You want to go up. That is fine.</source>
        <translation>Вы хотите наверх. Это нормально.</translation>
    </message>
    <message>
        <source>Your ears hurt or do not clear.</source>
        <translation>У вас болят уши или они не продуваются.</translation>
    </message>
    <message>
        <source>You are cold, tired or scared.</source>
        <translation>Вам холодно, страшно или вы устали.</translation>
    </message>
    <message>
        <source>Your instructor shows: go up.</source>
        <translation>Инструктор показывает: наверх.</translation>
    </message>
    <message>
        <source>You see none of us. Look around for one minute, then go up slowly.</source>
        <translation>Вы никого из нас не видите. Осматривайтесь одну минуту, потом медленно всплывайте.</translation>
    </message>
    <message>
        <source>After the dive</source>
        <translation>После погружения</translation>
    </message>
    <message>
        <source>No flights and no mountain roads for %1 h.</source>
        <translation>%1 ч никаких полётов и горных дорог.</translation>
    </message>
    <message>
        <source>For 48 h, watch for this:</source>
        <extracomment>signs of illness</extracomment>
        <translation>48 ч следите, не появится ли это:</translation>
    </message>
    <message>
        <source>numb or tingling skin</source>
        <translation>онемение или покалывание кожи</translation>
    </message>
    <message>
        <source>weak arms or legs</source>
        <translation>слабость в руках или ногах</translation>
    </message>
    <message>
        <source>dizzy, or odd sight</source>
        <translation>головокружение или проблемы со зрением</translation>
    </message>
    <message>
        <source>very tired</source>
        <translation>сильная усталость</translation>
    </message>
    <message>
        <source>sore joints</source>
        <translation>боль в суставах</translation>
    </message>
    <message>
        <source>short of breath, or chest pain</source>
        <translation>одышка или боль в груди</translation>
    </message>
    <message>
        <source>Any of these? Call now: %1</source>
        <translation>Есть что-то из этого? Звоните сразу: %1</translation>
    </message>
    <message>
        <source>Any of these? Call for help now. Ask your instructor for the number.</source>
        <translation>Есть что-то из этого? Сразу зовите на помощь. Номер спросите у инструктора.</translation>
    </message>
    <message>
        <source>Say that you have been diving. Do not wait.</source>
        <translation>Скажите, что занимались дайвингом. Не ждите.</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>ОК</translation>
    </message>
    <message>
        <source>Problem</source>
        <translation>Проблема</translation>
    </message>
    <message>
        <source>Ears</source>
        <translation>Уши</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Стоп</translation>
    </message>
    <message>
        <source>Go up</source>
        <translation>Наверх</translation>
    </message>
    <message>
        <source>Go down</source>
        <translation>Вниз</translation>
    </message>
    <message>
        <source>No air</source>
        <translation>Нет воздуха</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Смотрите</translation>
    </message>
    <message>
        <source>Come here</source>
        <translation>Ко мне</translation>
    </message>
    <message>
        <source>Stay close</source>
        <translation>Держитесь рядом</translation>
    </message>
    <message>
        <source>Hold hands</source>
        <translation>За руки</translation>
    </message>
    <message>
        <source>This deep</source>
        <translation>Эта глубина</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>Медленнее</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>Холодно</translation>
    </message>
    <message>
        <source>How much air?</source>
        <translation>Сколько воздуха?</translation>
    </message>
    <message>
        <source>OK, at the top</source>
        <translation>На воде: ОК</translation>
    </message>
    <message>
        <source>Help, at the top</source>
        <translation>На воде: помощь</translation>
    </message>
    <message>
        <source>All is well. Is all well with you?</source>
        <translation>Всё хорошо. А у вас?</translation>
    </message>
    <message>
        <source>Something is wrong.</source>
        <translation>Что-то не так.</translation>
    </message>
    <message>
        <source>My ears hurt, or do not clear.</source>
        <translation>У меня болят уши или они не продуваются.</translation>
    </message>
    <message>
        <source>Stop and stay where you are.</source>
        <translation>Остановитесь и оставайтесь на месте.</translation>
    </message>
    <message>
        <source>Go up: the dive is over. It never means “good”.</source>
        <translation>Всплывайте: погружение окончено. Это никогда не значит «хорошо».</translation>
    </message>
    <message>
        <source>Go down.</source>
        <translation>Погружайтесь.</translation>
    </message>
    <message>
        <source>I am low on air.</source>
        <translation>У меня мало воздуха.</translation>
    </message>
    <message>
        <source>I have no air. Give me yours now.</source>
        <translation>У меня нет воздуха. Сейчас же дайте мне ваш.</translation>
    </message>
    <message>
        <source>Let me breathe from your spare mouthpiece.</source>
        <translation>Дайте мне дышать из вашего запасного регулятора.</translation>
    </message>
    <message>
        <source>Look, over there.</source>
        <translation>Смотрите, вон там.</translation>
    </message>
    <message>
        <source>Come to me.</source>
        <translation>Плывите ко мне.</translation>
    </message>
    <message>
        <source>Stay close together.</source>
        <translation>Держитесь вместе.</translation>
    </message>
    <message>
        <source>Let us hold hands.</source>
        <translation>Возьмёмся за руки.</translation>
    </message>
    <message>
        <source>Stay at this depth.</source>
        <translation>Оставайтесь на этой глубине.</translation>
    </message>
    <message>
        <source>Slow down.</source>
        <translation>Помедленнее.</translation>
    </message>
    <message>
        <source>I am cold.</source>
        <translation>Мне холодно.</translation>
    </message>
    <message>
        <source>All is well. Made at the surface.</source>
        <translation>Всё хорошо. Подаётся на поверхности.</translation>
    </message>
    <message>
        <source>Help me. Made at the surface.</source>
        <translation>Помогите мне. Подаётся на поверхности.</translation>
    </message>
    <message>
        <source>Thumb and first finger make a ring.</source>
        <translation>Большой и указательный пальцы — кольцом.</translation>
    </message>
    <message>
        <source>Rock a flat hand, then point at what is wrong.</source>
        <translation>Покачайте плоской ладонью, потом покажите, что не так.</translation>
    </message>
    <message>
        <source>Point at your ear.</source>
        <translation>Покажите на ухо.</translation>
    </message>
    <message>
        <source>Hold up a flat hand.</source>
        <translation>Поднимите плоскую ладонь.</translation>
    </message>
    <message>
        <source>Fist with the thumb up, moving up.</source>
        <translation>Кулак, большой палец вверх, движение вверх.</translation>
    </message>
    <message>
        <source>Fist with the thumb down, moving down.</source>
        <translation>Кулак, большой палец вниз, движение вниз.</translation>
    </message>
    <message>
        <source>Hold a fist at your chest.</source>
        <translation>Держите кулак у груди.</translation>
    </message>
    <message>
        <source>Cut across your throat with a flat hand.</source>
        <translation>Плоской ладонью проведите поперёк горла.</translation>
    </message>
    <message>
        <source>Move your fingers to your mouth and away.</source>
        <translation>Подносите пальцы ко рту и отводите.</translation>
    </message>
    <message>
        <source>Two fingers from your eyes to the thing.</source>
        <translation>Два пальца от глаз — к предмету.</translation>
    </message>
    <message>
        <source>Wave your hand towards you.</source>
        <translation>Махните рукой к себе.</translation>
    </message>
    <message>
        <source>Put two first fingers side by side.</source>
        <translation>Сложите рядом два указательных пальца.</translation>
    </message>
    <message>
        <source>Clasp your hands.</source>
        <translation>Сцепите руки.</translation>
    </message>
    <message>
        <source>Slide a flat hand from side to side.</source>
        <translation>Водите плоской ладонью из стороны в сторону.</translation>
    </message>
    <message>
        <source>Press a flat hand down, twice.</source>
        <translation>Дважды опустите плоскую ладонь.</translation>
    </message>
    <message>
        <source>Cross your arms and rub them.</source>
        <translation>Скрестите руки и потрите плечи.</translation>
    </message>
    <message>
        <source>Lay two fingers on your palm.</source>
        <translation>Положите два пальца на ладонь.</translation>
    </message>
    <message>
        <source>Make a big ring over your head with both arms.</source>
        <translation>Сделайте большое кольцо над головой обеими руками.</translation>
    </message>
    <message>
        <source>Wave one straight arm over your head, slowly.</source>
        <translation>Медленно машите прямой рукой над головой.</translation>
    </message>
</context>
</TS>
