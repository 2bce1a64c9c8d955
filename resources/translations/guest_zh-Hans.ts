<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="zh_Hans" sourcelanguage="en">
<context>
    <name>Guest</name>
    <message>
        <source>Meet</source>
        <extracomment>Card, before day and time: "Meet Sat 4 July, 09:30".</extracomment>
        <translation>集合</translation>
    </message>
    <message>
        <source>With</source>
        <extracomment>Card, before the instructor's name: "With Ana".
----------
label before the instructor’s name</extracomment>
        <translation>教练</translation>
    </message>
    <message>
        <source>Low on air</source>
        <extracomment>Card, above the pressure in large type; the name of a hand signal as well.</extracomment>
        <translation>空气不足</translation>
    </message>
    <message>
        <source>signal now</source>
        <extracomment>Card, below that pressure: show the hand signal at once. Two or three short words.</extracomment>
        <translation>马上打手势</translation>
    </message>
    <message>
        <source>Deepest</source>
        <extracomment>Card, above a depth in large type: the deepest point of the dive. One short word.</extracomment>
        <translation>最深</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>Card, above minutes in large type: how long the dive is. One short word.</extracomment>
        <translation>时间</translation>
    </message>
    <message>
        <source>Never hold your breath</source>
        <extracomment>Card, the largest words: the one rule. Keep it short.</extracomment>
        <translation>绝对不要憋气</translation>
    </message>
    <message>
        <source>Going up, held air swells: lungs can tear.</source>
        <extracomment>Card, below that rule. Beside it stands by how much the air swells: "×1.8".</extracomment>
        <translation>憋着气上升，气体会膨胀，可能把肺撑破。</translation>
    </message>
    <message>
        <source>Clear ears early, every %1. Pain? Stop, signal, go up %2.</source>
        <extracomment>Card. %1: a step of descent ("1 m"). %2: how far to go up ("1 m").</extracomment>
        <translation>尽早平衡耳压，每%1一次。疼就停下，打手势，上升%2。</translation>
    </message>
    <message>
        <source>Stay within reach. Lost? Look around 1 minute, go up slowly.</source>
        <extracomment>Card: so close to the instructor that an arm reaches. When apart: look around.</extracomment>
        <translation>与教练保持一臂以内的距离。走散了只环顾1分钟，然后慢慢上升。</translation>
    </message>
    <message>
        <source>Cold, scared, tired? Signal. Quitting is fine.</source>
        <extracomment>Card: whoever does not feel well gives a signal, and may end the dive.</extracomment>
        <translation>冷了、怕了、累了？打手势。不想潜了也没关系。</translation>
    </message>
    <message>
        <source>At the top: fill BCD, mask on.</source>
        <extracomment>Card: back at the surface.</extracomment>
        <translation>到了水面：给浮力背心充气，别摘面镜。</translation>
    </message>
    <message>
        <source>not “good”</source>
        <extracomment>Card, under the picture of a raised thumb, which means "go up": never "good".</extracomment>
        <translation>不是“好”</translation>
    </message>
    <message>
        <source>%1 h: no flights, no mountains.</source>
        <extracomment>Card, after the dive. %1: a number of hours.</extracomment>
        <translation>%1小时内：不乘飞机，不走山路。</translation>
    </message>
    <message>
        <source>48 h: numb, dizzy, very tired, joint pain, breathless?</source>
        <extracomment>Card, after the dive: whoever feels this within 48 hours calls the number beside it.</extracomment>
        <translation>48小时内：发麻、头晕、非常累、关节疼、气短？</translation>
    </message>
    <message>
        <source>Call</source>
        <extracomment>Card, before the emergency number; without a colon.</extracomment>
        <translation>请拨打</translation>
    </message>
    <message>
        <source>Understood</source>
        <extracomment>Card, beside a box that the guest ticks.</extracomment>
        <translation>我明白了</translation>
    </message>
    <message>
        <source>Planning aid. Your instructor decides.</source>
        <extracomment>Card, small: what the card is, and who decides.</extracomment>
        <translation>仅供计划参考，由教练决定。</translation>
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
        <translation>米</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>英尺</translation>
    </message>
    <message>
        <source>min</source>
        <translation>分钟</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>公斤</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>磅</translation>
    </message>
    <message>
        <source>L</source>
        <translation>升</translation>
    </message>
    <message>
        <source>ft³</source>
        <translation>立方英尺</translation>
    </message>
    <message>
        <source>Breathe under water</source>
        <translation>水下呼吸</translation>
    </message>
    <message>
        <source>Clear your mask</source>
        <translation>面镜排水</translation>
    </message>
    <message>
        <source>Clear the mouthpiece</source>
        <translation>呼吸器排水</translation>
    </message>
    <message>
        <source>Find the mouthpiece</source>
        <translation>找回呼吸器</translation>
    </message>
    <message>
        <source>Clear your ears</source>
        <translation>平衡耳压</translation>
    </message>
    <message>
        <source>Fill and empty the BCD</source>
        <translation>浮力背心充气和排气</translation>
    </message>
    <message>
        <source>Share air</source>
        <translation>共用空气</translation>
    </message>
    <message>
        <source>Float at the top</source>
        <translation>浮在水面</translation>
    </message>
    <message>
        <source>So that slow, steady breaths feel easy before you go down.</source>
        <translation>下潜前先习惯缓慢、平稳的呼吸。</translation>
    </message>
    <message>
        <source>So that water in the mask is no worry: you know how to blow it out.</source>
        <translation>面镜进水也不用慌：您知道怎样把水吹出去。</translation>
    </message>
    <message>
        <source>So that you can blow water out and breathe on.</source>
        <translation>能把水吹出去，继续呼吸。</translation>
    </message>
    <message>
        <source>So that you can get it back if it slips out.</source>
        <translation>万一从嘴里滑出，能找回来。</translation>
    </message>
    <message>
        <source>So that going down need not hurt.</source>
        <translation>为了下潜时耳朵不疼。</translation>
    </message>
    <message>
        <source>So that you can float, or sink, when you choose.</source>
        <translation>想浮就浮，想沉就沉。</translation>
    </message>
    <message>
        <source>So that you can breathe from the spare if yours runs low.</source>
        <translation>自己的空气不足时，能用备用呼吸器呼吸。</translation>
    </message>
    <message>
        <source>So that you can rest with your head above the water.</source>
        <translation>能把头露出水面休息。</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>潜水服</translation>
    </message>
    <message>
        <source>BCD</source>
        <translation>浮力背心</translation>
    </message>
    <message>
        <source>Fins</source>
        <translation>脚蹼</translation>
    </message>
    <message>
        <source>Mask</source>
        <translation>面镜</translation>
    </message>
    <message>
        <source>Mouthpiece</source>
        <translation>呼吸器</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>配重</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>气瓶</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>压力表</translation>
    </message>
    <message>
        <source>Keeps you warm.</source>
        <translation>帮您保暖。</translation>
    </message>
    <message>
        <source>The jacket that lets you float or sink.</source>
        <translation>让您上浮或下沉的背心。</translation>
    </message>
    <message>
        <source>Move you with slow kicks.</source>
        <translation>慢慢踢水就能前进。</translation>
    </message>
    <message>
        <source>Lets you see. Your nose is inside, so that you can blow into it.</source>
        <translation>让您看得清。鼻子也在里面，可以用鼻子往里呼气。</translation>
    </message>
    <message>
        <source>Gives you air when you breathe in.</source>
        <translation>吸气时给您供气。</translation>
    </message>
    <message>
        <source>Help you to sink. Your instructor shows how to drop them.</source>
        <translation>帮您下沉。怎么抛掉，由教练示范。</translation>
    </message>
    <message>
        <source>Holds your air.</source>
        <translation>装着您呼吸的空气。</translation>
    </message>
    <message>
        <source>Shows how much air is left. Look at it often.</source>
        <translation>显示还剩多少空气。要经常看。</translation>
    </message>
    <message>
        <source>Talk with your hands</source>
        <translation>用手说话</translation>
    </message>
    <message>
        <source>Thumb up means “go up”. It never means “good”. For “good”, make a ring.</source>
        <translation>拇指朝上表示“上升”。绝不表示“好”。要说“好”，请做圆圈手势。</translation>
    </message>
    <message>
        <source>Some people count in another way. Show each other your numbers first.</source>
        <translation>有些人用手表示数字的方法不同。请先互相做一遍数字手势。</translation>
    </message>
    <message>
        <source>One sign at a time: %1 means %2.</source>
        <translation>逐个比出：%1表示%2。</translation>
    </message>
    <message>
        <source>Fill a balloon at the top. Down it goes, and it shrinks.</source>
        <translation>在水面给气球充气。下潜时，它会缩小。</translation>
    </message>
    <message>
        <source>Fill it deep down. Up it goes, and it swells.</source>
        <translation>在深处给气球充气。上升时，它会膨胀。</translation>
    </message>
    <message>
        <source>So does the air in your lungs, if you hold it.</source>
        <translation>如果憋着气上升，肺里的空气也会这样膨胀。</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>a button: to the page before</extracomment>
        <translation>上一页</translation>
    </message>
    <message>
        <source>Next</source>
        <extracomment>a button: to the page after</extracomment>
        <translation>下一页</translation>
    </message>
    <message>
        <source>Run</source>
        <extracomment>a button: the pages turn by themselves from here on</extracomment>
        <translation>自动播放</translation>
    </message>
    <message>
        <source>Pause</source>
        <extracomment>a button: the pages no longer turn by themselves</extracomment>
        <translation>暂停</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>语言</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>第%1页，共%2页</translation>
    </message>
    <message>
        <source>Tap your name.</source>
        <extracomment>above the first names of the guests</extracomment>
        <translation>请点您的名字。</translation>
    </message>
    <message>
        <source>No speaker has checked this text yet. Ask if it is not clear.</source>
        <extracomment>stands on every page whose language is a draft</extracomment>
        <translation>这些文字还没有请说中文的人核对过。看不懂请提问。</translation>
    </message>
    <message>
        <source>A planning aid. Your instructor decides.</source>
        <translation>仅供计划参考，由教练决定。</translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>还没有客人。</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>欢迎</translation>
    </message>
    <message>
        <source>Today’s dive</source>
        <translation>今天的潜水</translation>
    </message>
    <message>
        <source>Where</source>
        <extracomment>label before a place</extracomment>
        <translation>地点</translation>
    </message>
    <message>
        <source>How deep</source>
        <extracomment>label before a depth</extracomment>
        <translation>多深</translation>
    </message>
    <message>
        <source>no deeper than %1</source>
        <extracomment>follows the label “How deep”</extracomment>
        <translation>不超过%1</translation>
    </message>
    <message>
        <source>How long</source>
        <extracomment>label before a time</extracomment>
        <translation>多久</translation>
    </message>
    <message>
        <source>about %1</source>
        <extracomment>follows the label “How long”</extracomment>
        <translation>大约%1</translation>
    </message>
    <message>
        <source>not set yet</source>
        <extracomment>in place of a name or a place</extracomment>
        <translation>待定</translation>
    </message>
    <message>
        <source>You may stop at any time. Just show it.</source>
        <translation>随时可以停止。打手势就行。</translation>
    </message>
    <message>
        <source>Ask about all that is not clear.</source>
        <translation>有不清楚的，请尽管问。</translation>
    </message>
    <message>
        <source>Your kit</source>
        <translation>您的装备</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <extracomment>in place of a size</extracomment>
        <translation>还没选</translation>
    </message>
    <message>
        <source>Try it all on. Does it pinch, leak or feel loose? Say so.</source>
        <translation>全部试穿一下。夹得疼、漏水漏气或太松？请告诉我们。</translation>
    </message>
    <message>
        <source>Breathe all the time</source>
        <translation>始终保持呼吸</translation>
    </message>
    <message>
        <source>Move the diver up and down.</source>
        <extracomment>the guest drags a picture with the finger</extracomment>
        <translation>上下拖动潜水员。</translation>
    </message>
    <message>
        <source>Depth</source>
        <extracomment>label before a number</extracomment>
        <translation>深度</translation>
    </message>
    <message>
        <source>Pressure</source>
        <extracomment>label before a number</extracomment>
        <translation>压力</translation>
    </message>
    <message>
        <source>%1 the pressure at the top</source>
        <extracomment>%1 is a factor, as in ×1.8</extracomment>
        <translation>水面压力%1</translation>
    </message>
    <message>
        <source>Balloon</source>
        <translation>气球</translation>
    </message>
    <message>
        <source>Filled at the top, it shrinks on the way down.</source>
        <extracomment>a balloon</extracomment>
        <translation>在水面充气的气球，下潜时会缩小。</translation>
    </message>
    <message>
        <source>Lungs</source>
        <translation>肺</translation>
    </message>
    <message>
        <source>Breathe, and they stay the same size.</source>
        <extracomment>the lungs</extracomment>
        <translation>保持呼吸，大小就不变。</translation>
    </message>
    <message>
        <source>A breath held at %1 swells to %2 at the top.</source>
        <extracomment>%2 is a factor, as in ×1.8</extracomment>
        <translation>在%1憋住的气，到水面会膨胀到%2。</translation>
    </message>
    <message>
        <source>It can tear a lung.</source>
        <extracomment>a held breath</extracomment>
        <translation>可能把肺撑破。</translation>
    </message>
    <message>
        <source>Even %1 up can be enough.</source>
        <extracomment>to go up by %1 with a held breath can be enough to tear a lung</extracomment>
        <translation>哪怕只上升%1也可能。</translation>
    </message>
    <message>
        <source>Ear drum</source>
        <translation>鼓膜</translation>
    </message>
    <message>
        <source>It bends in on the way down. Clear your ears.</source>
        <extracomment>the ear drum</extracomment>
        <translation>下潜时向内凹。请平衡耳压。</translation>
    </message>
    <message>
        <source>flat</source>
        <extracomment>the ear drum is not bent</extracomment>
        <translation>平整</translation>
    </message>
    <message>
        <source>bent in</source>
        <extracomment>the ear drum is bent in</extracomment>
        <translation>内凹</translation>
    </message>
    <message>
        <source>On the way down it pulls at your face. Breathe out a bit through your nose.</source>
        <extracomment>the mask</extracomment>
        <translation>下潜时会吸住脸。用鼻子呼出一点气。</translation>
    </message>
    <message>
        <source>sits well</source>
        <extracomment>the mask</extracomment>
        <translation>合适</translation>
    </message>
    <message>
        <source>pulls</source>
        <extracomment>the mask is sucked to the face</extracomment>
        <translation>吸住脸</translation>
    </message>
    <message>
        <source>Size: %1</source>
        <extracomment>%1 is a share, as in 55 %</extracomment>
        <translation>大小：%1</translation>
    </message>
    <message>
        <source>Top</source>
        <extracomment>the water’s surface, beside a scale of depth</extracomment>
        <translation>水面</translation>
    </message>
    <message>
        <source>Deepest today</source>
        <extracomment>beside a scale of depth</extracomment>
        <translation>今天最深</translation>
    </message>
    <message>
        <source>Diver</source>
        <extracomment>a person under water</extracomment>
        <translation>潜水员</translation>
    </message>
    <message>
        <source>Clear them every %1 on the way down, before they hurt.</source>
        <extracomment>your ears</extracomment>
        <translation>下潜时每%1平衡一次耳压，要在疼之前做。</translation>
    </message>
    <message>
        <source>Pinch your nose. Blow softly. Never blow hard.</source>
        <translation>捏住鼻子，轻轻鼓气。绝对不要用力鼓气。</translation>
    </message>
    <message>
        <source>Try it: go down. What if you do not clear?</source>
        <translation>试试看：下潜。不平衡耳压会怎样？</translation>
    </message>
    <message>
        <source>Down</source>
        <extracomment>a button: go a little deeper</extracomment>
        <translation>向下</translation>
    </message>
    <message>
        <source>Up</source>
        <extracomment>a button: go a little less deep</extracomment>
        <translation>向上</translation>
    </message>
    <message>
        <source>Clear my ears</source>
        <extracomment>a button</extracomment>
        <translation>平衡耳压</translation>
    </message>
    <message>
        <source>On the ear drum</source>
        <extracomment>label before a pressure</extracomment>
        <translation>鼓膜受压</translation>
    </message>
    <message>
        <source>Fine</source>
        <extracomment>state of the ears</extracomment>
        <translation>正常</translation>
    </message>
    <message>
        <source>Pressure: clear now</source>
        <extracomment>state of the ears: it feels full, it does not hurt yet</extracomment>
        <translation>发胀：马上平衡</translation>
    </message>
    <message>
        <source>Pain: stop and go up</source>
        <extracomment>state of the ears</extracomment>
        <translation>疼痛：停下并上升</translation>
    </message>
    <message>
        <source>Locked: only going up helps</source>
        <extracomment>state of the ears: the tube to the ear is shut tight and does not open</extracomment>
        <translation>平衡不了：只有上升才有用</translation>
    </message>
    <message>
        <source>Cleared. The drum is flat.</source>
        <extracomment>the ear drum</extracomment>
        <translation>平衡好了。鼓膜平整。</translation>
    </message>
    <message>
        <source>Do not force it. Go up a bit first.</source>
        <extracomment>to clear the ears</extracomment>
        <translation>不要硬来。先上升一点。</translation>
    </message>
    <message>
        <source>Ears hurt? Stop, show it, go up a bit. Then try once more.</source>
        <translation>耳朵疼？停下，打手势，上升一点。然后再试一次。</translation>
    </message>
    <message>
        <source>clear here</source>
        <extracomment>beside a mark on a scale of depth</extracomment>
        <translation>在此平衡耳压</translation>
    </message>
    <message>
        <source>Hand signals</source>
        <translation>手势</translation>
    </message>
    <message>
        <source>How much air do you have?</source>
        <translation>您还有多少空气？</translation>
    </message>
    <message>
        <source>Show each figure with one hand. This is %1:</source>
        <extracomment>the figures of a number, one after another</extracomment>
        <translation>用一只手逐个比出数字。这是%1：</translation>
    </message>
    <message>
        <source>Not the same</source>
        <extracomment>above two signals that are often mixed up</extracomment>
        <translation>不一样</translation>
    </message>
    <message>
        <source>Thumb up: we go up. It does not mean “good”.</source>
        <translation>拇指朝上：我们上升。不表示“好”。</translation>
    </message>
    <message>
        <source>All is well? Make the ring.</source>
        <extracomment>thumb and first finger make a ring</extracomment>
        <translation>一切正常？做圆圈手势。</translation>
    </message>
    <message>
        <source>Do you know them?</source>
        <extracomment>hand signals</extracomment>
        <translation>您都认识吗？</translation>
    </message>
    <message>
        <source>Start</source>
        <extracomment>a button</extracomment>
        <translation>开始</translation>
    </message>
    <message>
        <source>Start over</source>
        <extracomment>a button</extracomment>
        <translation>重新开始</translation>
    </message>
    <message>
        <source>What does this signal say?</source>
        <translation>这个手势是什么意思？</translation>
    </message>
    <message>
        <source>Yes, that is right.</source>
        <translation>对，答对了。</translation>
    </message>
    <message>
        <source>Not quite. It says: %1</source>
        <translation>不太对。意思是：%1</translation>
    </message>
    <message>
        <source>We will ask it once more.</source>
        <translation>我们稍后再问一次。</translation>
    </message>
    <message>
        <source>Known: %1 of %2</source>
        <translation>已掌握：%1/%2</translation>
    </message>
    <message>
        <source>You know them all. Well done!</source>
        <translation>您都认识了。真棒！</translation>
    </message>
    <message>
        <source>Your instructor has a note of it: %1</source>
        <extracomment>%1 is a date</extracomment>
        <translation>教练已有记录：%1</translation>
    </message>
    <message>
        <source>known</source>
        <extracomment>a hand signal that the guest knows</extracomment>
        <translation>已掌握</translation>
    </message>
    <message>
        <source>not yet</source>
        <extracomment>a hand signal that the guest does not know yet</extracomment>
        <translation>还没</translation>
    </message>
    <message>
        <source>What we try first</source>
        <extracomment>what is practised in shallow water</extracomment>
        <translation>先练什么</translation>
    </message>
    <message>
        <source>Your instructor shows it. Then you try. Take your time.</source>
        <translation>教练先示范，然后您来试。不着急。</translation>
    </message>
    <message>
        <source>Ask your instructor what we try today.</source>
        <translation>请向教练询问今天练什么。</translation>
    </message>
    <message>
        <source>When we go up</source>
        <translation>什么时候上升</translation>
    </message>
    <message>
        <source>One goes up, we all go up.</source>
        <translation>一人上升，全体上升。</translation>
    </message>
    <message>
        <source>Go up slowly and breathe all the time.</source>
        <translation>慢慢上升，始终保持呼吸。</translation>
    </message>
    <message>
        <source>Your gauge reads %1 or less. Show it now.</source>
        <translation>压力表显示%1或更低。马上打手势。</translation>
    </message>
    <message>
        <source>Your air is low. Ask which number to look for.</source>
        <extracomment>the number on the gauge</extracomment>
        <translation>空气不足。请问清教练要看哪个数字。</translation>
    </message>
    <message>
        <source>The time is up: %1.</source>
        <translation>时间到了：%1。</translation>
    </message>
    <message>
        <source>You want to go up. That is fine.</source>
        <translation>您想上升。没问题。</translation>
    </message>
    <message>
        <source>Your ears hurt or do not clear.</source>
        <translation>您耳朵疼，或者耳压平衡不了。</translation>
    </message>
    <message>
        <source>You are cold, tired or scared.</source>
        <translation>您冷了、累了或害怕。</translation>
    </message>
    <message>
        <source>Your instructor shows: go up.</source>
        <translation>教练示意：上升。</translation>
    </message>
    <message>
        <source>You see none of us. Look around for one minute, then go up slowly.</source>
        <translation>看不到任何人。只环顾1分钟，然后慢慢上升。</translation>
    </message>
    <message>
        <source>After the dive</source>
        <translation>潜水之后</translation>
    </message>
    <message>
        <source>No flights and no mountain roads for %1 h.</source>
        <translation>%1小时内不要乘飞机，不要走山路。</translation>
    </message>
    <message>
        <source>For 48 h, watch for this:</source>
        <extracomment>signs of illness</extracomment>
        <translation>48小时内，请留意：</translation>
    </message>
    <message>
        <source>numb or tingling skin</source>
        <translation>皮肤发麻或刺痛</translation>
    </message>
    <message>
        <source>weak arms or legs</source>
        <translation>手臂或腿无力</translation>
    </message>
    <message>
        <source>dizzy, or odd sight</source>
        <translation>头晕，或看东西不正常</translation>
    </message>
    <message>
        <source>very tired</source>
        <translation>非常累</translation>
    </message>
    <message>
        <source>sore joints</source>
        <translation>关节疼</translation>
    </message>
    <message>
        <source>short of breath, or chest pain</source>
        <translation>气短，或胸痛</translation>
    </message>
    <message>
        <source>Any of these? Call now: %1</source>
        <translation>有任何一项？马上拨打：%1</translation>
    </message>
    <message>
        <source>Any of these? Call for help now. Ask your instructor for the number.</source>
        <translation>有任何一项？马上打电话求助。请向教练要电话号码。</translation>
    </message>
    <message>
        <source>Say that you have been diving. Do not wait.</source>
        <translation>请告诉对方您潜过水。不要等。</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Problem</source>
        <translation>有问题</translation>
    </message>
    <message>
        <source>Ears</source>
        <translation>耳朵</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停</translation>
    </message>
    <message>
        <source>Go up</source>
        <translation>上升</translation>
    </message>
    <message>
        <source>Go down</source>
        <translation>下潜</translation>
    </message>
    <message>
        <source>No air</source>
        <translation>没有空气</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>看</translation>
    </message>
    <message>
        <source>Come here</source>
        <translation>过来</translation>
    </message>
    <message>
        <source>Stay close</source>
        <translation>待在一起</translation>
    </message>
    <message>
        <source>Hold hands</source>
        <translation>手拉手</translation>
    </message>
    <message>
        <source>This deep</source>
        <translation>保持深度</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>慢一点</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>冷</translation>
    </message>
    <message>
        <source>How much air?</source>
        <translation>剩多少气？</translation>
    </message>
    <message>
        <source>OK, at the top</source>
        <translation>水面OK</translation>
    </message>
    <message>
        <source>Help, at the top</source>
        <translation>水面求助</translation>
    </message>
    <message>
        <source>All is well. Is all well with you?</source>
        <translation>我一切正常。您正常吗？</translation>
    </message>
    <message>
        <source>Something is wrong.</source>
        <translation>有点不对劲。</translation>
    </message>
    <message>
        <source>My ears hurt, or do not clear.</source>
        <translation>我耳朵疼，或者耳压平衡不了。</translation>
    </message>
    <message>
        <source>Stop and stay where you are.</source>
        <translation>停下，留在原地。</translation>
    </message>
    <message>
        <source>Go up: the dive is over. It never means “good”.</source>
        <translation>上升：潜水结束。这个手势绝不表示“好”。</translation>
    </message>
    <message>
        <source>Go down.</source>
        <translation>下潜。</translation>
    </message>
    <message>
        <source>I am low on air.</source>
        <translation>我的空气不足。</translation>
    </message>
    <message>
        <source>I have no air. Give me yours now.</source>
        <translation>我没有空气了。马上给我空气。</translation>
    </message>
    <message>
        <source>Let me breathe from your spare mouthpiece.</source>
        <translation>让我用您的备用呼吸器呼吸。</translation>
    </message>
    <message>
        <source>Look, over there.</source>
        <translation>看那边。</translation>
    </message>
    <message>
        <source>Come to me.</source>
        <translation>到我这里来。</translation>
    </message>
    <message>
        <source>Stay close together.</source>
        <translation>待在一起，不要分开。</translation>
    </message>
    <message>
        <source>Let us hold hands.</source>
        <translation>我们手拉手。</translation>
    </message>
    <message>
        <source>Stay at this depth.</source>
        <translation>保持在这个深度。</translation>
    </message>
    <message>
        <source>Slow down.</source>
        <translation>放慢动作。</translation>
    </message>
    <message>
        <source>I am cold.</source>
        <translation>我冷。</translation>
    </message>
    <message>
        <source>All is well. Made at the surface.</source>
        <translation>一切正常。在水面使用。</translation>
    </message>
    <message>
        <source>Help me. Made at the surface.</source>
        <translation>帮帮我。在水面使用。</translation>
    </message>
    <message>
        <source>Thumb and first finger make a ring.</source>
        <translation>拇指和食指做成圆圈。</translation>
    </message>
    <message>
        <source>Rock a flat hand, then point at what is wrong.</source>
        <translation>手掌放平，左右晃动，再指向有问题的地方。</translation>
    </message>
    <message>
        <source>Point at your ear.</source>
        <translation>指自己的耳朵。</translation>
    </message>
    <message>
        <source>Hold up a flat hand.</source>
        <translation>竖起手掌。</translation>
    </message>
    <message>
        <source>Fist with the thumb up, moving up.</source>
        <translation>握拳，拇指朝上，向上移动。</translation>
    </message>
    <message>
        <source>Fist with the thumb down, moving down.</source>
        <translation>握拳，拇指朝下，向下移动。</translation>
    </message>
    <message>
        <source>Hold a fist at your chest.</source>
        <translation>把拳头放在胸前。</translation>
    </message>
    <message>
        <source>Cut across your throat with a flat hand.</source>
        <translation>平掌在喉咙前横划。</translation>
    </message>
    <message>
        <source>Move your fingers to your mouth and away.</source>
        <translation>手指靠近嘴再移开。</translation>
    </message>
    <message>
        <source>Two fingers from your eyes to the thing.</source>
        <translation>两指从眼睛指向目标。</translation>
    </message>
    <message>
        <source>Wave your hand towards you.</source>
        <translation>朝自己招手。</translation>
    </message>
    <message>
        <source>Put two first fingers side by side.</source>
        <translation>两根食指并在一起。</translation>
    </message>
    <message>
        <source>Clasp your hands.</source>
        <translation>双手相握。</translation>
    </message>
    <message>
        <source>Slide a flat hand from side to side.</source>
        <translation>平掌左右平移。</translation>
    </message>
    <message>
        <source>Press a flat hand down, twice.</source>
        <translation>平掌向下压两次。</translation>
    </message>
    <message>
        <source>Cross your arms and rub them.</source>
        <translation>双臂交叉并搓手臂。</translation>
    </message>
    <message>
        <source>Lay two fingers on your palm.</source>
        <translation>两指放在掌心。</translation>
    </message>
    <message>
        <source>Make a big ring over your head with both arms.</source>
        <translation>双臂在头顶做成大圆圈。</translation>
    </message>
    <message>
        <source>Wave one straight arm over your head, slowly.</source>
        <translation>一臂伸直，在头顶慢慢挥动。</translation>
    </message>
</context>
</TS>
