<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ar" sourcelanguage="en">
<context>
    <name>Guest</name>
    <message>
        <source>Meet</source>
        <extracomment>Card, before day and time: "Meet Sat 4 July, 09:30".</extracomment>
        <translation>الموعد</translation>
    </message>
    <message>
        <source>With</source>
        <extracomment>Card, before the instructor's name: "With Ana".
----------
label before the instructor’s name</extracomment>
        <translation>مع</translation>
    </message>
    <message>
        <source>Low on air</source>
        <extracomment>Card, above the pressure in large type; the name of a hand signal as well.</extracomment>
        <translation>الهواء قليل</translation>
    </message>
    <message>
        <source>signal now</source>
        <extracomment>Card, below that pressure: show the hand signal at once. Two or three short words.</extracomment>
        <translation>أشيروا فورًا</translation>
    </message>
    <message>
        <source>Deepest</source>
        <extracomment>Card, above a depth in large type: the deepest point of the dive. One short word.</extracomment>
        <translation>أقصى عمق</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>Card, above minutes in large type: how long the dive is. One short word.</extracomment>
        <translation>المدة</translation>
    </message>
    <message>
        <source>Never hold your breath</source>
        <extracomment>Card, the largest words: the one rule. Keep it short.</extracomment>
        <translation>لا تحبسوا أنفاسكم أبدًا</translation>
    </message>
    <message>
        <source>Going up, held air swells: lungs can tear.</source>
        <extracomment>Card, below that rule. Beside it stands by how much the air swells: "×1.8".</extracomment>
        <translation>عند الصعود يتمدّد الهواء المحبوس: قد تتمزّق الرئة.</translation>
    </message>
    <message>
        <source>Clear ears early, every %1. Pain? Stop, signal, go up %2.</source>
        <extracomment>Card. %1: a step of descent ("1 m"). %2: how far to go up ("1 m").</extracomment>
        <translation>عادلوا الأذنين مبكّرًا، كل %1. ألم؟ توقّفوا، أشيروا، اصعدوا %2.</translation>
    </message>
    <message>
        <source>Stay within reach. Lost? Look around 1 minute, go up slowly.</source>
        <extracomment>Card: so close to the instructor that an arm reaches. When apart: look around.</extracomment>
        <translation>ابقوا بمتناول يد المدرّب. ضعتم؟ انظروا حولكم دقيقة، اصعدوا ببطء.</translation>
    </message>
    <message>
        <source>Cold, scared, tired? Signal. Quitting is fine.</source>
        <extracomment>Card: whoever does not feel well gives a signal, and may end the dive.</extracomment>
        <translation>برد، خوف، تعب؟ أشيروا. لا بأس بالتوقّف.</translation>
    </message>
    <message>
        <source>At the top: fill BCD, mask on.</source>
        <extracomment>Card: back at the surface.</extracomment>
        <translation>على السطح: انفخوا السترة ولا تنزعوا القناع.</translation>
    </message>
    <message>
        <source>not “good”</source>
        <extracomment>Card, under the picture of a raised thumb, which means "go up": never "good".</extracomment>
        <translation>ليست «جيّد»</translation>
    </message>
    <message>
        <source>%1 h: no flights, no mountains.</source>
        <extracomment>Card, after the dive. %1: a number of hours.</extracomment>
        <translation>%1 ساعة: لا طيران ولا طرق جبلية.</translation>
    </message>
    <message>
        <source>48 h: numb, dizzy, very tired, joint pain, breathless?</source>
        <extracomment>Card, after the dive: whoever feels this within 48 hours calls the number beside it.</extracomment>
        <translation>48 ساعة: خدر، دوار، تعب شديد، ألم مفاصل، ضيق نفَس؟</translation>
    </message>
    <message>
        <source>Call</source>
        <extracomment>Card, before the emergency number; without a colon.</extracomment>
        <translation>اتصلوا بالرقم</translation>
    </message>
    <message>
        <source>Understood</source>
        <extracomment>Card, beside a box that the guest ticks.</extracomment>
        <translation>فهمت</translation>
    </message>
    <message>
        <source>Planning aid. Your instructor decides.</source>
        <extracomment>Card, small: what the card is, and who decides.</extracomment>
        <translation>أداة للتخطيط. القرار للمدرّب.</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>بار</translation>
    </message>
    <message>
        <source>psi</source>
        <translation>psi</translation>
    </message>
    <message>
        <source>m</source>
        <translation>م</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>قدم</translation>
    </message>
    <message>
        <source>min</source>
        <translation>دقيقة</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>كغ</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>رطل</translation>
    </message>
    <message>
        <source>L</source>
        <translation>لتر</translation>
    </message>
    <message>
        <source>ft³</source>
        <translation>قدم³</translation>
    </message>
    <message>
        <source>Breathe under water</source>
        <translation>التنفّس تحت الماء</translation>
    </message>
    <message>
        <source>Clear your mask</source>
        <translation>إخراج الماء من القناع</translation>
    </message>
    <message>
        <source>Clear the mouthpiece</source>
        <translation>إخراج الماء من منظّم التنفّس</translation>
    </message>
    <message>
        <source>Find the mouthpiece</source>
        <translation>استعادة منظّم التنفّس</translation>
    </message>
    <message>
        <source>Clear your ears</source>
        <translation>معادلة ضغط الأذنين</translation>
    </message>
    <message>
        <source>Fill and empty the BCD</source>
        <translation>ملء السترة وإفراغها</translation>
    </message>
    <message>
        <source>Share air</source>
        <translation>تقاسم الهواء</translation>
    </message>
    <message>
        <source>Float at the top</source>
        <translation>الطفو على السطح</translation>
    </message>
    <message>
        <source>So that slow, steady breaths feel easy before you go down.</source>
        <translation>كي يصبح التنفّس البطيء المنتظم سهلًا قبل النزول.</translation>
    </message>
    <message>
        <source>So that water in the mask is no worry: you know how to blow it out.</source>
        <translation>كي لا يقلقكم الماء في القناع: تعرفون كيف تُخرجونه بالنفخ.</translation>
    </message>
    <message>
        <source>So that you can blow water out and breathe on.</source>
        <translation>كي تُخرجوا الماء بالنفخ وتواصلوا التنفّس.</translation>
    </message>
    <message>
        <source>So that you can get it back if it slips out.</source>
        <translation>كي تستعيدوه إن خرج من الفم.</translation>
    </message>
    <message>
        <source>So that going down need not hurt.</source>
        <translation>كي لا يكون النزول مؤلمًا.</translation>
    </message>
    <message>
        <source>So that you can float, or sink, when you choose.</source>
        <translation>كي تطفوا أو تنزلوا متى شئتم.</translation>
    </message>
    <message>
        <source>So that you can breathe from the spare if yours runs low.</source>
        <translation>كي تتنفّسوا من المنظّم الاحتياطي إن قلّ هواؤكم.</translation>
    </message>
    <message>
        <source>So that you can rest with your head above the water.</source>
        <translation>كي تستريحوا ورؤوسكم فوق الماء.</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>البدلة</translation>
    </message>
    <message>
        <source>BCD</source>
        <translation>سترة الطفو</translation>
    </message>
    <message>
        <source>Fins</source>
        <translation>الزعانف</translation>
    </message>
    <message>
        <source>Mask</source>
        <translation>القناع</translation>
    </message>
    <message>
        <source>Mouthpiece</source>
        <translation>منظّم التنفّس</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>الأثقال</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>الأسطوانة</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>مقياس الهواء</translation>
    </message>
    <message>
        <source>Keeps you warm.</source>
        <translation>تُدفئكم.</translation>
    </message>
    <message>
        <source>The jacket that lets you float or sink.</source>
        <translation>سترة تتيح لكم الطفو أو النزول.</translation>
    </message>
    <message>
        <source>Move you with slow kicks.</source>
        <translation>تدفعكم بحركات بطيئة من الساقين.</translation>
    </message>
    <message>
        <source>Lets you see. Your nose is inside, so that you can blow into it.</source>
        <translation>يتيح لكم الرؤية. الأنف داخله كي تنفخوا فيه.</translation>
    </message>
    <message>
        <source>Gives you air when you breathe in.</source>
        <translation>يعطيكم الهواء عند الشهيق.</translation>
    </message>
    <message>
        <source>Help you to sink. Your instructor shows how to drop them.</source>
        <translation>تساعدكم على النزول. ويريكم المدرّب كيف تسقطونها.</translation>
    </message>
    <message>
        <source>Holds your air.</source>
        <translation>فيها هواؤكم.</translation>
    </message>
    <message>
        <source>Shows how much air is left. Look at it often.</source>
        <translation>يبيّن كم بقي من الهواء. انظروا إليه كثيرًا.</translation>
    </message>
    <message>
        <source>Talk with your hands</source>
        <translation>تحدّثوا بأيديكم</translation>
    </message>
    <message>
        <source>Thumb up means “go up”. It never means “good”. For “good”, make a ring.</source>
        <translation>الإبهام إلى أعلى يعني «اصعدوا». ولا يعني «جيّد» أبدًا. لقول «جيّد» اصنعوا حلقة.</translation>
    </message>
    <message>
        <source>Some people count in another way. Show each other your numbers first.</source>
        <translation>بعض الناس يعدّون بطريقة أخرى. أروا بعضكم بعضًا أرقامكم أولًا.</translation>
    </message>
    <message>
        <source>One sign at a time: %1 means %2.</source>
        <translation>إشارة بعد إشارة: %1 تعني %2.</translation>
    </message>
    <message>
        <source>Fill a balloon at the top. Down it goes, and it shrinks.</source>
        <translation>انفخوا بالونًا على السطح. ينزل فيصغر.</translation>
    </message>
    <message>
        <source>Fill it deep down. Up it goes, and it swells.</source>
        <translation>انفخوه في العمق. يصعد فيكبر.</translation>
    </message>
    <message>
        <source>So does the air in your lungs, if you hold it.</source>
        <translation>وكذلك الهواء في رئتيكم إذا حبستم أنفاسكم.</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>a button: to the page before</extracomment>
        <translation>السابق</translation>
    </message>
    <message>
        <source>Next</source>
        <extracomment>a button: to the page after</extracomment>
        <translation>التالي</translation>
    </message>
    <message>
        <source>Run</source>
        <extracomment>a button: the pages turn by themselves from here on</extracomment>
        <translation>تشغيل</translation>
    </message>
    <message>
        <source>Pause</source>
        <extracomment>a button: the pages no longer turn by themselves</extracomment>
        <translation>إيقاف مؤقت</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>اللغة</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>صفحة %1 من %2</translation>
    </message>
    <message>
        <source>Tap your name.</source>
        <extracomment>above the first names of the guests</extracomment>
        <translation>المسوا اسمكم.</translation>
    </message>
    <message>
        <source>No speaker has checked this text yet. Ask if it is not clear.</source>
        <extracomment>stands on every page whose language is a draft</extracomment>
        <translation>لم يراجع هذا النص متحدّث بالعربية بعد. اسألوا إن لم يكن واضحًا.</translation>
    </message>
    <message>
        <source>A planning aid. Your instructor decides.</source>
        <translation>أداة مساعدة للتخطيط. القرار للمدرّب.</translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>لا ضيوف بعد.</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>أهلًا بكم</translation>
    </message>
    <message>
        <source>Today’s dive</source>
        <translation>غوصة اليوم</translation>
    </message>
    <message>
        <source>Where</source>
        <extracomment>label before a place</extracomment>
        <translation>أين</translation>
    </message>
    <message>
        <source>How deep</source>
        <extracomment>label before a depth</extracomment>
        <translation>العمق</translation>
    </message>
    <message>
        <source>no deeper than %1</source>
        <extracomment>follows the label “How deep”</extracomment>
        <translation>لا أعمق من %1</translation>
    </message>
    <message>
        <source>How long</source>
        <extracomment>label before a time</extracomment>
        <translation>المدة</translation>
    </message>
    <message>
        <source>about %1</source>
        <extracomment>follows the label “How long”</extracomment>
        <translation>نحو %1</translation>
    </message>
    <message>
        <source>not set yet</source>
        <extracomment>in place of a name or a place</extracomment>
        <translation>لم يُحدَّد بعد</translation>
    </message>
    <message>
        <source>You may stop at any time. Just show it.</source>
        <translation>يمكنكم التوقّف في أي وقت. تكفي إشارة.</translation>
    </message>
    <message>
        <source>Ask about all that is not clear.</source>
        <translation>اسألوا عن كل ما ليس واضحًا.</translation>
    </message>
    <message>
        <source>Your kit</source>
        <translation>معدّاتكم</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <extracomment>in place of a size</extracomment>
        <translation>لم يُختَر بعد</translation>
    </message>
    <message>
        <source>Try it all on. Does it pinch, leak or feel loose? Say so.</source>
        <translation>جرّبوا كل شيء. هل يضغط شيء أو يتسرّب أو يبدو واسعًا؟ أخبرونا.</translation>
    </message>
    <message>
        <source>Breathe all the time</source>
        <translation>تنفّسوا طوال الوقت</translation>
    </message>
    <message>
        <source>Move the diver up and down.</source>
        <extracomment>the guest drags a picture with the finger</extracomment>
        <translation>حرّكوا الغوّاص إلى أعلى وأسفل.</translation>
    </message>
    <message>
        <source>Depth</source>
        <extracomment>label before a number</extracomment>
        <translation>العمق</translation>
    </message>
    <message>
        <source>Pressure</source>
        <extracomment>label before a number</extracomment>
        <translation>الضغط</translation>
    </message>
    <message>
        <source>%1 the pressure at the top</source>
        <extracomment>%1 is a factor, as in ×1.8</extracomment>
        <translation>%1 مقارنةً بضغط السطح</translation>
    </message>
    <message>
        <source>Balloon</source>
        <translation>بالون</translation>
    </message>
    <message>
        <source>Filled at the top, it shrinks on the way down.</source>
        <extracomment>a balloon</extracomment>
        <translation>منفوخ على السطح، ويصغر عند النزول.</translation>
    </message>
    <message>
        <source>Lungs</source>
        <translation>الرئتان</translation>
    </message>
    <message>
        <source>Breathe, and they stay the same size.</source>
        <extracomment>the lungs</extracomment>
        <translation>تنفّسوا فيبقى حجمهما كما هو.</translation>
    </message>
    <message>
        <source>A breath held at %1 swells to %2 at the top.</source>
        <extracomment>%2 is a factor, as in ×1.8</extracomment>
        <translation>النَّفَس المحبوس على عمق %1 يتمدّد إلى %2 على السطح.</translation>
    </message>
    <message>
        <source>It can tear a lung.</source>
        <extracomment>a held breath</extracomment>
        <translation>قد يمزّق الرئة.</translation>
    </message>
    <message>
        <source>Even %1 up can be enough.</source>
        <extracomment>to go up by %1 with a held breath can be enough to tear a lung</extracomment>
        <translation>حتى الصعود %1 قد يكفي لذلك.</translation>
    </message>
    <message>
        <source>Ear drum</source>
        <translation>طبلة الأذن</translation>
    </message>
    <message>
        <source>It bends in on the way down. Clear your ears.</source>
        <extracomment>the ear drum</extracomment>
        <translation>تنثني إلى الداخل عند النزول. عادلوا ضغط الأذنين.</translation>
    </message>
    <message>
        <source>flat</source>
        <extracomment>the ear drum is not bent</extracomment>
        <translation>مستوية</translation>
    </message>
    <message>
        <source>bent in</source>
        <extracomment>the ear drum is bent in</extracomment>
        <translation>منثنية إلى الداخل</translation>
    </message>
    <message>
        <source>On the way down it pulls at your face. Breathe out a bit through your nose.</source>
        <extracomment>the mask</extracomment>
        <translation>عند النزول يشدّ القناع على الوجه. أخرجوا قليلًا من الهواء من الأنف.</translation>
    </message>
    <message>
        <source>sits well</source>
        <extracomment>the mask</extracomment>
        <translation>مريح</translation>
    </message>
    <message>
        <source>pulls</source>
        <extracomment>the mask is sucked to the face</extracomment>
        <translation>يشدّ</translation>
    </message>
    <message>
        <source>Size: %1</source>
        <extracomment>%1 is a share, as in 55 %</extracomment>
        <translation>الحجم: %1</translation>
    </message>
    <message>
        <source>Top</source>
        <extracomment>the water’s surface, beside a scale of depth</extracomment>
        <translation>السطح</translation>
    </message>
    <message>
        <source>Deepest today</source>
        <extracomment>beside a scale of depth</extracomment>
        <translation>أقصى عمق اليوم</translation>
    </message>
    <message>
        <source>Diver</source>
        <extracomment>a person under water</extracomment>
        <translation>غوّاص</translation>
    </message>
    <message>
        <source>Clear them every %1 on the way down, before they hurt.</source>
        <extracomment>your ears</extracomment>
        <translation>عادلوا ضغطهما كل %1 عند النزول، قبل أن تؤلماكم.</translation>
    </message>
    <message>
        <source>Pinch your nose. Blow softly. Never blow hard.</source>
        <translation>أغلقوا الأنف بالأصابع. انفخوا برفق. لا تنفخوا بقوة أبدًا.</translation>
    </message>
    <message>
        <source>Try it: go down. What if you do not clear?</source>
        <translation>جرّبوا: انزلوا. ماذا لو لم تعادلوا الضغط؟</translation>
    </message>
    <message>
        <source>Down</source>
        <extracomment>a button: go a little deeper</extracomment>
        <translation>إلى أسفل</translation>
    </message>
    <message>
        <source>Up</source>
        <extracomment>a button: go a little less deep</extracomment>
        <translation>إلى أعلى</translation>
    </message>
    <message>
        <source>Clear my ears</source>
        <extracomment>a button</extracomment>
        <translation>معادلة ضغط الأذنين</translation>
    </message>
    <message>
        <source>On the ear drum</source>
        <extracomment>label before a pressure</extracomment>
        <translation>على طبلة الأذن</translation>
    </message>
    <message>
        <source>Fine</source>
        <extracomment>state of the ears</extracomment>
        <translation>جيّد</translation>
    </message>
    <message>
        <source>Pressure: clear now</source>
        <extracomment>state of the ears: it feels full, it does not hurt yet</extracomment>
        <translation>ضغط: عادلوا الآن</translation>
    </message>
    <message>
        <source>Pain: stop and go up</source>
        <extracomment>state of the ears</extracomment>
        <translation>ألم: توقّفوا واصعدوا</translation>
    </message>
    <message>
        <source>Locked: only going up helps</source>
        <extracomment>state of the ears: the tube to the ear is shut tight and does not open</extracomment>
        <translation>انغلاق: لا ينفع إلا الصعود</translation>
    </message>
    <message>
        <source>Cleared. The drum is flat.</source>
        <extracomment>the ear drum</extracomment>
        <translation>تعادل الضغط. الطبلة مستوية.</translation>
    </message>
    <message>
        <source>Do not force it. Go up a bit first.</source>
        <extracomment>to clear the ears</extracomment>
        <translation>لا تعادلوا بالقوة. اصعدوا قليلًا أولًا.</translation>
    </message>
    <message>
        <source>Ears hurt? Stop, show it, go up a bit. Then try once more.</source>
        <translation>ألم في الأذن؟ توقّفوا، أعطوا إشارة، اصعدوا قليلًا. ثم حاولوا مرة أخرى.</translation>
    </message>
    <message>
        <source>clear here</source>
        <extracomment>beside a mark on a scale of depth</extracomment>
        <translation>عادلوا هنا</translation>
    </message>
    <message>
        <source>Hand signals</source>
        <translation>إشارات اليد</translation>
    </message>
    <message>
        <source>How much air do you have?</source>
        <translation>كم لديكم من الهواء؟</translation>
    </message>
    <message>
        <source>Show each figure with one hand. This is %1:</source>
        <extracomment>the figures of a number, one after another</extracomment>
        <translation>أظهروا كل رقم بيد واحدة. هذا هو %1:</translation>
    </message>
    <message>
        <source>Not the same</source>
        <extracomment>above two signals that are often mixed up</extracomment>
        <translation>إشارتان مختلفتان</translation>
    </message>
    <message>
        <source>Thumb up: we go up. It does not mean “good”.</source>
        <translation>الإبهام إلى أعلى: نصعد. ولا يعني «جيّد».</translation>
    </message>
    <message>
        <source>All is well? Make the ring.</source>
        <extracomment>thumb and first finger make a ring</extracomment>
        <translation>كل شيء بخير؟ اصنعوا الحلقة.</translation>
    </message>
    <message>
        <source>Do you know them?</source>
        <extracomment>hand signals</extracomment>
        <translation>هل تعرفون الإشارات؟</translation>
    </message>
    <message>
        <source>Start</source>
        <extracomment>a button</extracomment>
        <translation>ابدؤوا</translation>
    </message>
    <message>
        <source>Start over</source>
        <extracomment>a button</extracomment>
        <translation>من جديد</translation>
    </message>
    <message>
        <source>What does this signal say?</source>
        <translation>ماذا تعني هذه الإشارة؟</translation>
    </message>
    <message>
        <source>Yes, that is right.</source>
        <translation>نعم، هذا صحيح.</translation>
    </message>
    <message>
        <source>Not quite. It says: %1</source>
        <translation>ليس تمامًا. معناها: %1</translation>
    </message>
    <message>
        <source>We will ask it once more.</source>
        <translation>سنسأل عنها مرة أخرى.</translation>
    </message>
    <message>
        <source>Known: %1 of %2</source>
        <translation>المعروفة: %1 من %2</translation>
    </message>
    <message>
        <source>You know them all. Well done!</source>
        <translation>تعرفونها كلها. أحسنتم!</translation>
    </message>
    <message>
        <source>Your instructor has a note of it: %1</source>
        <extracomment>%1 is a date</extracomment>
        <translation>سجّل المدرّب ذلك: %1</translation>
    </message>
    <message>
        <source>known</source>
        <extracomment>a hand signal that the guest knows</extracomment>
        <translation>معروفة</translation>
    </message>
    <message>
        <source>not yet</source>
        <extracomment>a hand signal that the guest does not know yet</extracomment>
        <translation>ليس بعد</translation>
    </message>
    <message>
        <source>What we try first</source>
        <extracomment>what is practised in shallow water</extracomment>
        <translation>ما نجرّبه أولًا</translation>
    </message>
    <message>
        <source>Your instructor shows it. Then you try. Take your time.</source>
        <translation>يعرضه المدرّب، ثم تجرّبونه. على مهل.</translation>
    </message>
    <message>
        <source>Ask your instructor what we try today.</source>
        <translation>اسألوا المدرّب عمّا سنجرّبه اليوم.</translation>
    </message>
    <message>
        <source>When we go up</source>
        <translation>متى نصعد</translation>
    </message>
    <message>
        <source>One goes up, we all go up.</source>
        <translation>إذا صعد واحد، صعدنا جميعًا.</translation>
    </message>
    <message>
        <source>Go up slowly and breathe all the time.</source>
        <translation>اصعدوا ببطء وتنفّسوا طوال الوقت.</translation>
    </message>
    <message>
        <source>Your gauge reads %1 or less. Show it now.</source>
        <translation>مقياسكم عند %1 أو أقل. أعطوا الإشارة فورًا.</translation>
    </message>
    <message>
        <source>Your air is low. Ask which number to look for.</source>
        <extracomment>the number on the gauge</extracomment>
        <translation>هواؤكم قليل. اسألوا أي رقم تراقبون.</translation>
    </message>
    <message>
        <source>The time is up: %1.</source>
        <translation>انتهى الوقت: %1.</translation>
    </message>
    <message>
        <source>You want to go up. That is fine.</source>
        <translation>تريدون الصعود. لا بأس بذلك.</translation>
    </message>
    <message>
        <source>Your ears hurt or do not clear.</source>
        <translation>أذناكم تؤلمانكم أو لا يتعادل ضغطهما.</translation>
    </message>
    <message>
        <source>You are cold, tired or scared.</source>
        <translation>تشعرون بالبرد أو التعب أو الخوف.</translation>
    </message>
    <message>
        <source>Your instructor shows: go up.</source>
        <translation>يعطي المدرّب إشارة: اصعدوا.</translation>
    </message>
    <message>
        <source>You see none of us. Look around for one minute, then go up slowly.</source>
        <translation>لا ترون أحدًا منّا. انظروا حولكم دقيقة واحدة، ثم اصعدوا ببطء.</translation>
    </message>
    <message>
        <source>After the dive</source>
        <translation>بعد الغوصة</translation>
    </message>
    <message>
        <source>No flights and no mountain roads for %1 h.</source>
        <translation>لا طيران ولا طرق جبلية لمدة %1 ساعة.</translation>
    </message>
    <message>
        <source>For 48 h, watch for this:</source>
        <extracomment>signs of illness</extracomment>
        <translation>خلال 48 ساعة، انتبهوا لما يلي:</translation>
    </message>
    <message>
        <source>numb or tingling skin</source>
        <translation>خدر أو وخز في الجلد</translation>
    </message>
    <message>
        <source>weak arms or legs</source>
        <translation>ضعف في الذراعين أو الساقين</translation>
    </message>
    <message>
        <source>dizzy, or odd sight</source>
        <translation>دوار أو اضطراب في الرؤية</translation>
    </message>
    <message>
        <source>very tired</source>
        <translation>تعب شديد</translation>
    </message>
    <message>
        <source>sore joints</source>
        <translation>ألم في المفاصل</translation>
    </message>
    <message>
        <source>short of breath, or chest pain</source>
        <translation>ضيق نفَس أو ألم في الصدر</translation>
    </message>
    <message>
        <source>Any of these? Call now: %1</source>
        <translation>أيّ من هذه الأعراض؟ اتصلوا فورًا: %1</translation>
    </message>
    <message>
        <source>Any of these? Call for help now. Ask your instructor for the number.</source>
        <translation>أيّ من هذه الأعراض؟ اطلبوا النجدة فورًا. اسألوا المدرّب عن الرقم.</translation>
    </message>
    <message>
        <source>Say that you have been diving. Do not wait.</source>
        <translation>قولوا إنكم كنتم تغوصون. لا تنتظروا.</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>بخير</translation>
    </message>
    <message>
        <source>Problem</source>
        <translation>مشكلة</translation>
    </message>
    <message>
        <source>Ears</source>
        <translation>الأذنان</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>توقّف</translation>
    </message>
    <message>
        <source>Go up</source>
        <translation>اصعدوا</translation>
    </message>
    <message>
        <source>Go down</source>
        <translation>انزلوا</translation>
    </message>
    <message>
        <source>No air</source>
        <translation>لا هواء</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>انظروا</translation>
    </message>
    <message>
        <source>Come here</source>
        <translation>تعالوا</translation>
    </message>
    <message>
        <source>Stay close</source>
        <translation>ابقوا قريبين</translation>
    </message>
    <message>
        <source>Hold hands</source>
        <translation>أمسكوا الأيدي</translation>
    </message>
    <message>
        <source>This deep</source>
        <translation>هذا العمق</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>ببطء</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>برد</translation>
    </message>
    <message>
        <source>How much air?</source>
        <translation>كم بقي من هواء؟</translation>
    </message>
    <message>
        <source>OK, at the top</source>
        <translation>بخير، على السطح</translation>
    </message>
    <message>
        <source>Help, at the top</source>
        <translation>نجدة، على السطح</translation>
    </message>
    <message>
        <source>All is well. Is all well with you?</source>
        <translation>أنا بخير. هل أنتم بخير؟</translation>
    </message>
    <message>
        <source>Something is wrong.</source>
        <translation>هناك مشكلة.</translation>
    </message>
    <message>
        <source>My ears hurt, or do not clear.</source>
        <translation>أذناي تؤلمانني أو لا يتعادل ضغطهما.</translation>
    </message>
    <message>
        <source>Stop and stay where you are.</source>
        <translation>توقّفوا وابقوا مكانكم.</translation>
    </message>
    <message>
        <source>Go up: the dive is over. It never means “good”.</source>
        <translation>اصعدوا: انتهت الغوصة. لا تعني هذه الإشارة «جيّد» أبدًا.</translation>
    </message>
    <message>
        <source>Go down.</source>
        <translation>انزلوا.</translation>
    </message>
    <message>
        <source>I am low on air.</source>
        <translation>هوائي قليل.</translation>
    </message>
    <message>
        <source>I have no air. Give me yours now.</source>
        <translation>ليس لديّ هواء. أعطوني من هوائكم الآن.</translation>
    </message>
    <message>
        <source>Let me breathe from your spare mouthpiece.</source>
        <translation>دعوني أتنفّس من منظّمكم الاحتياطي.</translation>
    </message>
    <message>
        <source>Look, over there.</source>
        <translation>انظروا، هناك.</translation>
    </message>
    <message>
        <source>Come to me.</source>
        <translation>تعالوا إليّ.</translation>
    </message>
    <message>
        <source>Stay close together.</source>
        <translation>ابقوا معًا متقاربين.</translation>
    </message>
    <message>
        <source>Let us hold hands.</source>
        <translation>لنمسك بالأيدي.</translation>
    </message>
    <message>
        <source>Stay at this depth.</source>
        <translation>ابقوا على هذا العمق.</translation>
    </message>
    <message>
        <source>Slow down.</source>
        <translation>أبطئوا.</translation>
    </message>
    <message>
        <source>I am cold.</source>
        <translation>أشعر بالبرد.</translation>
    </message>
    <message>
        <source>All is well. Made at the surface.</source>
        <translation>كل شيء بخير. تُعطى على سطح الماء.</translation>
    </message>
    <message>
        <source>Help me. Made at the surface.</source>
        <translation>ساعدوني. تُعطى على سطح الماء.</translation>
    </message>
    <message>
        <source>Thumb and first finger make a ring.</source>
        <translation>الإبهام والسبّابة يصنعان حلقة.</translation>
    </message>
    <message>
        <source>Rock a flat hand, then point at what is wrong.</source>
        <translation>هزّوا الكفّ مبسوطة، ثم أشيروا إلى موضع المشكلة.</translation>
    </message>
    <message>
        <source>Point at your ear.</source>
        <translation>أشيروا إلى الأذن.</translation>
    </message>
    <message>
        <source>Hold up a flat hand.</source>
        <translation>ارفعوا الكفّ مبسوطة.</translation>
    </message>
    <message>
        <source>Fist with the thumb up, moving up.</source>
        <translation>قبضة إبهامها إلى أعلى، تتحرّك إلى أعلى.</translation>
    </message>
    <message>
        <source>Fist with the thumb down, moving down.</source>
        <translation>قبضة إبهامها إلى أسفل، تتحرّك إلى أسفل.</translation>
    </message>
    <message>
        <source>Hold a fist at your chest.</source>
        <translation>ضعوا القبضة على الصدر.</translation>
    </message>
    <message>
        <source>Cut across your throat with a flat hand.</source>
        <translation>مرّروا الكفّ مبسوطة أمام الحلق كأنها تقطع.</translation>
    </message>
    <message>
        <source>Move your fingers to your mouth and away.</source>
        <translation>حرّكوا الأصابع نحو الفم ثم بعيدًا عنه.</translation>
    </message>
    <message>
        <source>Two fingers from your eyes to the thing.</source>
        <translation>إصبعان من العينين نحو الشيء.</translation>
    </message>
    <message>
        <source>Wave your hand towards you.</source>
        <translation>لوّحوا باليد نحوكم.</translation>
    </message>
    <message>
        <source>Put two first fingers side by side.</source>
        <translation>ضعوا السبّابتين جنبًا إلى جنب.</translation>
    </message>
    <message>
        <source>Clasp your hands.</source>
        <translation>اشبكوا اليدين.</translation>
    </message>
    <message>
        <source>Slide a flat hand from side to side.</source>
        <translation>حرّكوا الكفّ مبسوطة يمينًا ويسارًا.</translation>
    </message>
    <message>
        <source>Press a flat hand down, twice.</source>
        <translation>اخفضوا الكفّ مبسوطة مرّتين.</translation>
    </message>
    <message>
        <source>Cross your arms and rub them.</source>
        <translation>صالبوا الذراعين وافركوهما.</translation>
    </message>
    <message>
        <source>Lay two fingers on your palm.</source>
        <translation>ضعوا إصبعين على راحة اليد.</translation>
    </message>
    <message>
        <source>Make a big ring over your head with both arms.</source>
        <translation>اصنعوا حلقة كبيرة فوق الرأس بالذراعين.</translation>
    </message>
    <message>
        <source>Wave one straight arm over your head, slowly.</source>
        <translation>لوّحوا بذراع ممدودة فوق الرأس، ببطء.</translation>
    </message>
</context>
</TS>
