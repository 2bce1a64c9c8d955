<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ja" sourcelanguage="en">
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
        <translation>担当</translation>
    </message>
    <message>
        <source>Low on air</source>
        <extracomment>Card, above the pressure in large type; the name of a hand signal as well.</extracomment>
        <translation>空気が少ない</translation>
    </message>
    <message>
        <source>signal now</source>
        <extracomment>Card, below that pressure: show the hand signal at once. Two or three short words.</extracomment>
        <translation>すぐ合図</translation>
    </message>
    <message>
        <source>Deepest</source>
        <extracomment>Card, above a depth in large type: the deepest point of the dive. One short word.</extracomment>
        <translation>最大水深</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>Card, above minutes in large type: how long the dive is. One short word.</extracomment>
        <translation>時間</translation>
    </message>
    <message>
        <source>Never hold your breath</source>
        <extracomment>Card, the largest words: the one rule. Keep it short.</extracomment>
        <translation>絶対に息を止めない</translation>
    </message>
    <message>
        <source>Going up, held air swells: lungs can tear.</source>
        <extracomment>Card, below that rule. Beside it stands by how much the air swells: "×1.8".</extracomment>
        <translation>息を止めて浮上すると、空気がふくらみ、肺が破れることがあります。</translation>
    </message>
    <message>
        <source>Clear ears early, every %1. Pain? Stop, signal, go up %2.</source>
        <extracomment>Card. %1: a step of descent ("1 m"). %2: how far to go up ("1 m").</extracomment>
        <translation>耳抜きは早めに、%1ごとに。痛いときは止まって合図し、%2浮上してください。</translation>
    </message>
    <message>
        <source>Stay within reach. Lost? Look around 1 minute, go up slowly.</source>
        <extracomment>Card: so close to the instructor that an arm reaches. When apart: look around.</extracomment>
        <translation>インストラクターの手の届く所に。はぐれたら周りを見るのは1分だけ、ゆっくり浮上してください。</translation>
    </message>
    <message>
        <source>Cold, scared, tired? Signal. Quitting is fine.</source>
        <extracomment>Card: whoever does not feel well gives a signal, and may end the dive.</extracomment>
        <translation>寒さ、怖さ、疲れを感じたら合図を。やめても大丈夫です。</translation>
    </message>
    <message>
        <source>At the top: fill BCD, mask on.</source>
        <extracomment>Card: back at the surface.</extracomment>
        <translation>水面では：BCDに空気を入れ、マスクは着けたまま。</translation>
    </message>
    <message>
        <source>not “good”</source>
        <extracomment>Card, under the picture of a raised thumb, which means "go up": never "good".</extracomment>
        <translation>「いいね」ではない</translation>
    </message>
    <message>
        <source>%1 h: no flights, no mountains.</source>
        <extracomment>Card, after the dive. %1: a number of hours.</extracomment>
        <translation>%1時間：飛行機も山道も禁止。</translation>
    </message>
    <message>
        <source>48 h: numb, dizzy, very tired, joint pain, breathless?</source>
        <extracomment>Card, after the dive: whoever feels this within 48 hours calls the number beside it.</extracomment>
        <translation>48時間以内：しびれ、めまい、ひどい疲れ、関節の痛み、息苦しさ？</translation>
    </message>
    <message>
        <source>Call</source>
        <extracomment>Card, before the emergency number; without a colon.</extracomment>
        <translation>電話</translation>
    </message>
    <message>
        <source>Understood</source>
        <extracomment>Card, beside a box that the guest ticks.</extracomment>
        <translation>わかりました</translation>
    </message>
    <message>
        <source>Planning aid. Your instructor decides.</source>
        <extracomment>Card, small: what the card is, and who decides.</extracomment>
        <translation>計画の参考です。判断はインストラクターがします。</translation>
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
        <translation>分</translation>
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
        <translation>水中で呼吸する</translation>
    </message>
    <message>
        <source>Clear your mask</source>
        <translation>マスクの水を出す</translation>
    </message>
    <message>
        <source>Clear the mouthpiece</source>
        <translation>レギュレーターの水を出す</translation>
    </message>
    <message>
        <source>Find the mouthpiece</source>
        <translation>レギュレーターを取り戻す</translation>
    </message>
    <message>
        <source>Clear your ears</source>
        <translation>耳抜き</translation>
    </message>
    <message>
        <source>Fill and empty the BCD</source>
        <translation>BCDの空気の出し入れ</translation>
    </message>
    <message>
        <source>Share air</source>
        <translation>空気を分け合う</translation>
    </message>
    <message>
        <source>Float at the top</source>
        <translation>水面に浮く</translation>
    </message>
    <message>
        <source>So that slow, steady breaths feel easy before you go down.</source>
        <translation>潜る前に、ゆっくり落ち着いた呼吸に慣れるためです。</translation>
    </message>
    <message>
        <source>So that water in the mask is no worry: you know how to blow it out.</source>
        <translation>マスクに水が入っても、慌てずに息で水を出せるようになるためです。</translation>
    </message>
    <message>
        <source>So that you can blow water out and breathe on.</source>
        <translation>息で水を出して、呼吸を続けられるようになるためです。</translation>
    </message>
    <message>
        <source>So that you can get it back if it slips out.</source>
        <translation>口から外れても、取り戻せるようになるためです。</translation>
    </message>
    <message>
        <source>So that going down need not hurt.</source>
        <translation>潜るときに耳が痛くならないようにするためです。</translation>
    </message>
    <message>
        <source>So that you can float, or sink, when you choose.</source>
        <translation>浮くことも沈むことも、思いどおりにできるようになるためです。</translation>
    </message>
    <message>
        <source>So that you can breathe from the spare if yours runs low.</source>
        <translation>自分の空気が少なくなったら、予備から吸えるようになるためです。</translation>
    </message>
    <message>
        <source>So that you can rest with your head above the water.</source>
        <translation>頭を水の上に出して休めるようになるためです。</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>スーツ</translation>
    </message>
    <message>
        <source>BCD</source>
        <translation>BCD</translation>
    </message>
    <message>
        <source>Fins</source>
        <translation>フィン</translation>
    </message>
    <message>
        <source>Mask</source>
        <translation>マスク</translation>
    </message>
    <message>
        <source>Mouthpiece</source>
        <translation>レギュレーター</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>ウエイト</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>タンク</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>残圧計</translation>
    </message>
    <message>
        <source>Keeps you warm.</source>
        <translation>体を温かく保ちます。</translation>
    </message>
    <message>
        <source>The jacket that lets you float or sink.</source>
        <translation>浮き沈みを助けるジャケットです。</translation>
    </message>
    <message>
        <source>Move you with slow kicks.</source>
        <translation>ゆっくり蹴って進みます。</translation>
    </message>
    <message>
        <source>Lets you see. Your nose is inside, so that you can blow into it.</source>
        <translation>よく見えます。鼻も中に入るので、鼻から息を吹き込めます。</translation>
    </message>
    <message>
        <source>Gives you air when you breathe in.</source>
        <translation>吸うと空気が出てきます。</translation>
    </message>
    <message>
        <source>Help you to sink. Your instructor shows how to drop them.</source>
        <translation>沈むためのおもりです。外し方はインストラクターが教えます。</translation>
    </message>
    <message>
        <source>Holds your air.</source>
        <translation>吸う空気が入っています。</translation>
    </message>
    <message>
        <source>Shows how much air is left. Look at it often.</source>
        <translation>残りの空気がわかります。こまめに見てください。</translation>
    </message>
    <message>
        <source>Talk with your hands</source>
        <translation>手で話しましょう</translation>
    </message>
    <message>
        <source>Thumb up means “go up”. It never means “good”. For “good”, make a ring.</source>
        <translation>親指を上に向けると「浮上」です。絶対に「いいね」ではありません。「いいね」なら、指で輪を作ります。</translation>
    </message>
    <message>
        <source>Some people count in another way. Show each other your numbers first.</source>
        <translation>指での数え方は人によって違います。先にお互いの数字を見せ合ってください。</translation>
    </message>
    <message>
        <source>One sign at a time: %1 means %2.</source>
        <translation>1つずつ示します：%1は%2です。</translation>
    </message>
    <message>
        <source>Fill a balloon at the top. Down it goes, and it shrinks.</source>
        <translation>水面で風船に空気を入れます。潜ると縮みます。</translation>
    </message>
    <message>
        <source>Fill it deep down. Up it goes, and it swells.</source>
        <translation>深い所で風船に空気を入れます。上がるとふくらみます。</translation>
    </message>
    <message>
        <source>So does the air in your lungs, if you hold it.</source>
        <translation>息を止めて浮上すると、肺の空気も同じようにふくらみます。</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>a button: to the page before</extracomment>
        <translation>戻る</translation>
    </message>
    <message>
        <source>Next</source>
        <extracomment>a button: to the page after</extracomment>
        <translation>次へ</translation>
    </message>
    <message>
        <source>Run</source>
        <extracomment>a button: the pages turn by themselves from here on</extracomment>
        <translation>自動再生</translation>
    </message>
    <message>
        <source>Pause</source>
        <extracomment>a button: the pages no longer turn by themselves</extracomment>
        <translation>一時停止</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>言語</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>%1／%2ページ</translation>
    </message>
    <message>
        <source>Tap your name.</source>
        <extracomment>above the first names of the guests</extracomment>
        <translation>お名前をタップしてください。</translation>
    </message>
    <message>
        <source>No speaker has checked this text yet. Ask if it is not clear.</source>
        <extracomment>stands on every page whose language is a draft</extracomment>
        <translation>この文章は、日本語を話す人がまだ確認していません。わからないときは聞いてください。</translation>
    </message>
    <message>
        <source>A planning aid. Your instructor decides.</source>
        <translation>計画の参考です。判断はインストラクターがします。</translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>まだお客様がいません。</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>ようこそ</translation>
    </message>
    <message>
        <source>Today’s dive</source>
        <translation>今日のダイビング</translation>
    </message>
    <message>
        <source>Where</source>
        <extracomment>label before a place</extracomment>
        <translation>場所</translation>
    </message>
    <message>
        <source>How deep</source>
        <extracomment>label before a depth</extracomment>
        <translation>深さ</translation>
    </message>
    <message>
        <source>no deeper than %1</source>
        <extracomment>follows the label “How deep”</extracomment>
        <translation>%1より深く潜りません</translation>
    </message>
    <message>
        <source>How long</source>
        <extracomment>label before a time</extracomment>
        <translation>時間</translation>
    </message>
    <message>
        <source>about %1</source>
        <extracomment>follows the label “How long”</extracomment>
        <translation>約%1</translation>
    </message>
    <message>
        <source>not set yet</source>
        <extracomment>in place of a name or a place</extracomment>
        <translation>未定</translation>
    </message>
    <message>
        <source>You may stop at any time. Just show it.</source>
        <translation>いつでもやめられます。合図するだけです。</translation>
    </message>
    <message>
        <source>Ask about all that is not clear.</source>
        <translation>わからないことは何でも聞いてください。</translation>
    </message>
    <message>
        <source>Your kit</source>
        <translation>あなたの器材</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <extracomment>in place of a size</extracomment>
        <translation>まだ選んでいません</translation>
    </message>
    <message>
        <source>Try it all on. Does it pinch, leak or feel loose? Say so.</source>
        <translation>全部着けてみてください。きつい、漏れる、ゆるいときは教えてください。</translation>
    </message>
    <message>
        <source>Breathe all the time</source>
        <translation>呼吸をずっと続ける</translation>
    </message>
    <message>
        <source>Move the diver up and down.</source>
        <extracomment>the guest drags a picture with the finger</extracomment>
        <translation>ダイバーを上下に動かしてください。</translation>
    </message>
    <message>
        <source>Depth</source>
        <extracomment>label before a number</extracomment>
        <translation>水深</translation>
    </message>
    <message>
        <source>Pressure</source>
        <extracomment>label before a number</extracomment>
        <translation>圧力</translation>
    </message>
    <message>
        <source>%1 the pressure at the top</source>
        <extracomment>%1 is a factor, as in ×1.8</extracomment>
        <translation>水面の圧力%1</translation>
    </message>
    <message>
        <source>Balloon</source>
        <translation>風船</translation>
    </message>
    <message>
        <source>Filled at the top, it shrinks on the way down.</source>
        <extracomment>a balloon</extracomment>
        <translation>水面で空気を入れた風船は、潜ると縮みます。</translation>
    </message>
    <message>
        <source>Lungs</source>
        <translation>肺</translation>
    </message>
    <message>
        <source>Breathe, and they stay the same size.</source>
        <extracomment>the lungs</extracomment>
        <translation>呼吸していれば、大きさは変わりません。</translation>
    </message>
    <message>
        <source>A breath held at %1 swells to %2 at the top.</source>
        <extracomment>%2 is a factor, as in ×1.8</extracomment>
        <translation>%1で止めた息は、水面では%2にふくらみます。</translation>
    </message>
    <message>
        <source>It can tear a lung.</source>
        <extracomment>a held breath</extracomment>
        <translation>肺が破れることがあります。</translation>
    </message>
    <message>
        <source>Even %1 up can be enough.</source>
        <extracomment>to go up by %1 with a held breath can be enough to tear a lung</extracomment>
        <translation>%1浮上するだけで破れることもあります。</translation>
    </message>
    <message>
        <source>Ear drum</source>
        <translation>鼓膜</translation>
    </message>
    <message>
        <source>It bends in on the way down. Clear your ears.</source>
        <extracomment>the ear drum</extracomment>
        <translation>潜ると内側にへこみます。耳抜きをしてください。</translation>
    </message>
    <message>
        <source>flat</source>
        <extracomment>the ear drum is not bent</extracomment>
        <translation>平ら</translation>
    </message>
    <message>
        <source>bent in</source>
        <extracomment>the ear drum is bent in</extracomment>
        <translation>へこんでいる</translation>
    </message>
    <message>
        <source>On the way down it pulls at your face. Breathe out a bit through your nose.</source>
        <extracomment>the mask</extracomment>
        <translation>潜ると顔に吸いつきます。鼻から少し息を出してください。</translation>
    </message>
    <message>
        <source>sits well</source>
        <extracomment>the mask</extracomment>
        <translation>ちょうどよい</translation>
    </message>
    <message>
        <source>pulls</source>
        <extracomment>the mask is sucked to the face</extracomment>
        <translation>吸いついている</translation>
    </message>
    <message>
        <source>Size: %1</source>
        <extracomment>%1 is a share, as in 55 %</extracomment>
        <translation>大きさ：%1</translation>
    </message>
    <message>
        <source>Top</source>
        <extracomment>the water’s surface, beside a scale of depth</extracomment>
        <translation>水面</translation>
    </message>
    <message>
        <source>Deepest today</source>
        <extracomment>beside a scale of depth</extracomment>
        <translation>今日の最大水深</translation>
    </message>
    <message>
        <source>Diver</source>
        <extracomment>a person under water</extracomment>
        <translation>ダイバー</translation>
    </message>
    <message>
        <source>Clear them every %1 on the way down, before they hurt.</source>
        <extracomment>your ears</extracomment>
        <translation>潜るときは%1ごとに、痛くなる前に耳抜きをしてください。</translation>
    </message>
    <message>
        <source>Pinch your nose. Blow softly. Never blow hard.</source>
        <translation>鼻をつまみ、鼻にそっと息を送ります。絶対に強く送らないでください。</translation>
    </message>
    <message>
        <source>Try it: go down. What if you do not clear?</source>
        <translation>試してみましょう：下へ潜ります。耳抜きをしないと、どうなるでしょう？</translation>
    </message>
    <message>
        <source>Down</source>
        <extracomment>a button: go a little deeper</extracomment>
        <translation>下へ</translation>
    </message>
    <message>
        <source>Up</source>
        <extracomment>a button: go a little less deep</extracomment>
        <translation>上へ</translation>
    </message>
    <message>
        <source>Clear my ears</source>
        <extracomment>a button</extracomment>
        <translation>耳抜きする</translation>
    </message>
    <message>
        <source>On the ear drum</source>
        <extracomment>label before a pressure</extracomment>
        <translation>鼓膜にかかる圧力</translation>
    </message>
    <message>
        <source>Fine</source>
        <extracomment>state of the ears</extracomment>
        <translation>正常</translation>
    </message>
    <message>
        <source>Pressure: clear now</source>
        <extracomment>state of the ears: it feels full, it does not hurt yet</extracomment>
        <translation>圧迫感：今すぐ耳抜き</translation>
    </message>
    <message>
        <source>Pain: stop and go up</source>
        <extracomment>state of the ears</extracomment>
        <translation>痛い：止まって浮上</translation>
    </message>
    <message>
        <source>Locked: only going up helps</source>
        <extracomment>state of the ears: the tube to the ear is shut tight and does not open</extracomment>
        <translation>耳抜きできない：浮上するしかない</translation>
    </message>
    <message>
        <source>Cleared. The drum is flat.</source>
        <extracomment>the ear drum</extracomment>
        <translation>耳が抜けました。鼓膜は平らです。</translation>
    </message>
    <message>
        <source>Do not force it. Go up a bit first.</source>
        <extracomment>to clear the ears</extracomment>
        <translation>無理にしないでください。先に少し浮上してください。</translation>
    </message>
    <message>
        <source>Ears hurt? Stop, show it, go up a bit. Then try once more.</source>
        <translation>耳が痛いときは、止まり、合図し、少し浮上してください。それからもう一度試してください。</translation>
    </message>
    <message>
        <source>clear here</source>
        <extracomment>beside a mark on a scale of depth</extracomment>
        <translation>ここで耳抜き</translation>
    </message>
    <message>
        <source>Hand signals</source>
        <translation>手の合図</translation>
    </message>
    <message>
        <source>How much air do you have?</source>
        <translation>空気はどれくらい残っていますか？</translation>
    </message>
    <message>
        <source>Show each figure with one hand. This is %1:</source>
        <extracomment>the figures of a number, one after another</extracomment>
        <translation>数字を1つずつ片手で示します。これは%1です：</translation>
    </message>
    <message>
        <source>Not the same</source>
        <extracomment>above two signals that are often mixed up</extracomment>
        <translation>同じではありません</translation>
    </message>
    <message>
        <source>Thumb up: we go up. It does not mean “good”.</source>
        <translation>親指を上：浮上します。「いいね」ではありません。</translation>
    </message>
    <message>
        <source>All is well? Make the ring.</source>
        <extracomment>thumb and first finger make a ring</extracomment>
        <translation>大丈夫なときは、指で輪を作ります。</translation>
    </message>
    <message>
        <source>Do you know them?</source>
        <extracomment>hand signals</extracomment>
        <translation>覚えましたか？</translation>
    </message>
    <message>
        <source>Start</source>
        <extracomment>a button</extracomment>
        <translation>始める</translation>
    </message>
    <message>
        <source>Start over</source>
        <extracomment>a button</extracomment>
        <translation>最初から</translation>
    </message>
    <message>
        <source>What does this signal say?</source>
        <translation>この合図の意味は？</translation>
    </message>
    <message>
        <source>Yes, that is right.</source>
        <translation>はい、正解です。</translation>
    </message>
    <message>
        <source>Not quite. It says: %1</source>
        <translation>残念、違います。正しくは：%1</translation>
    </message>
    <message>
        <source>We will ask it once more.</source>
        <translation>あとでもう一度聞きます。</translation>
    </message>
    <message>
        <source>Known: %1 of %2</source>
        <translation>覚えた数：%1／%2</translation>
    </message>
    <message>
        <source>You know them all. Well done!</source>
        <translation>全部覚えましたね。よくできました！</translation>
    </message>
    <message>
        <source>Your instructor has a note of it: %1</source>
        <extracomment>%1 is a date</extracomment>
        <translation>インストラクターの記録：%1</translation>
    </message>
    <message>
        <source>known</source>
        <extracomment>a hand signal that the guest knows</extracomment>
        <translation>覚えた</translation>
    </message>
    <message>
        <source>not yet</source>
        <extracomment>a hand signal that the guest does not know yet</extracomment>
        <translation>まだ</translation>
    </message>
    <message>
        <source>What we try first</source>
        <extracomment>what is practised in shallow water</extracomment>
        <translation>はじめに試すこと</translation>
    </message>
    <message>
        <source>Your instructor shows it. Then you try. Take your time.</source>
        <translation>インストラクターが手本を見せます。次はあなたの番です。急がなくて大丈夫です。</translation>
    </message>
    <message>
        <source>Ask your instructor what we try today.</source>
        <translation>今日何を試すか、インストラクターに聞いてください。</translation>
    </message>
    <message>
        <source>When we go up</source>
        <translation>こんなときは浮上します</translation>
    </message>
    <message>
        <source>One goes up, we all go up.</source>
        <translation>1人が浮上したら、全員で浮上します。</translation>
    </message>
    <message>
        <source>Go up slowly and breathe all the time.</source>
        <translation>ゆっくり浮上し、呼吸を続けてください。</translation>
    </message>
    <message>
        <source>Your gauge reads %1 or less. Show it now.</source>
        <translation>残圧計が%1以下になった。すぐに合図してください。</translation>
    </message>
    <message>
        <source>Your air is low. Ask which number to look for.</source>
        <extracomment>the number on the gauge</extracomment>
        <translation>空気が少ない。どの数字で知らせるか聞いてください。</translation>
    </message>
    <message>
        <source>The time is up: %1.</source>
        <translation>時間になった：%1。</translation>
    </message>
    <message>
        <source>You want to go up. That is fine.</source>
        <translation>浮上したくなった。それで大丈夫です。</translation>
    </message>
    <message>
        <source>Your ears hurt or do not clear.</source>
        <translation>耳が痛い、または耳抜きができない。</translation>
    </message>
    <message>
        <source>You are cold, tired or scared.</source>
        <translation>寒い、疲れた、怖い。</translation>
    </message>
    <message>
        <source>Your instructor shows: go up.</source>
        <translation>インストラクターが浮上の合図をした。</translation>
    </message>
    <message>
        <source>You see none of us. Look around for one minute, then go up slowly.</source>
        <translation>誰も見えない。周りを見るのは1分だけ、それからゆっくり浮上してください。</translation>
    </message>
    <message>
        <source>After the dive</source>
        <translation>ダイビングの後</translation>
    </message>
    <message>
        <source>No flights and no mountain roads for %1 h.</source>
        <translation>%1時間は飛行機も山道も禁止です。</translation>
    </message>
    <message>
        <source>For 48 h, watch for this:</source>
        <extracomment>signs of illness</extracomment>
        <translation>48時間は次の症状に注意：</translation>
    </message>
    <message>
        <source>numb or tingling skin</source>
        <translation>皮膚のしびれ、ピリピリ感</translation>
    </message>
    <message>
        <source>weak arms or legs</source>
        <translation>手足に力が入らない</translation>
    </message>
    <message>
        <source>dizzy, or odd sight</source>
        <translation>めまい、見え方がおかしい</translation>
    </message>
    <message>
        <source>very tired</source>
        <translation>ひどい疲れ</translation>
    </message>
    <message>
        <source>sore joints</source>
        <translation>関節の痛み</translation>
    </message>
    <message>
        <source>short of breath, or chest pain</source>
        <translation>息苦しさ、胸の痛み</translation>
    </message>
    <message>
        <source>Any of these? Call now: %1</source>
        <translation>1つでもあれば、すぐに電話：%1</translation>
    </message>
    <message>
        <source>Any of these? Call for help now. Ask your instructor for the number.</source>
        <translation>1つでもあれば、すぐに電話で助けを呼んでください。番号はインストラクターに聞いてください。</translation>
    </message>
    <message>
        <source>Say that you have been diving. Do not wait.</source>
        <translation>ダイビングをしたと伝えてください。様子を見て待たないでください。</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Problem</source>
        <translation>トラブル</translation>
    </message>
    <message>
        <source>Ears</source>
        <translation>耳</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>止まれ</translation>
    </message>
    <message>
        <source>Go up</source>
        <translation>浮上</translation>
    </message>
    <message>
        <source>Go down</source>
        <translation>潜る</translation>
    </message>
    <message>
        <source>No air</source>
        <translation>空気がない</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>見て</translation>
    </message>
    <message>
        <source>Come here</source>
        <translation>来て</translation>
    </message>
    <message>
        <source>Stay close</source>
        <translation>離れない</translation>
    </message>
    <message>
        <source>Hold hands</source>
        <translation>手をつなぐ</translation>
    </message>
    <message>
        <source>This deep</source>
        <translation>この深さ</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>ゆっくり</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>寒い</translation>
    </message>
    <message>
        <source>How much air?</source>
        <translation>残りの空気は？</translation>
    </message>
    <message>
        <source>OK, at the top</source>
        <translation>水面でOK</translation>
    </message>
    <message>
        <source>Help, at the top</source>
        <translation>水面で助けて</translation>
    </message>
    <message>
        <source>All is well. Is all well with you?</source>
        <translation>大丈夫です。そちらは大丈夫ですか？</translation>
    </message>
    <message>
        <source>Something is wrong.</source>
        <translation>何かおかしいです。</translation>
    </message>
    <message>
        <source>My ears hurt, or do not clear.</source>
        <translation>耳が痛い、または耳抜きができません。</translation>
    </message>
    <message>
        <source>Stop and stay where you are.</source>
        <translation>止まって、その場にいてください。</translation>
    </message>
    <message>
        <source>Go up: the dive is over. It never means “good”.</source>
        <translation>浮上します。ダイビングは終わりです。絶対に「いいね」ではありません。</translation>
    </message>
    <message>
        <source>Go down.</source>
        <translation>潜ってください。</translation>
    </message>
    <message>
        <source>I am low on air.</source>
        <translation>空気が少なくなりました。</translation>
    </message>
    <message>
        <source>I have no air. Give me yours now.</source>
        <translation>空気がありません。今すぐ空気をください。</translation>
    </message>
    <message>
        <source>Let me breathe from your spare mouthpiece.</source>
        <translation>予備のレギュレーターから吸わせてください。</translation>
    </message>
    <message>
        <source>Look, over there.</source>
        <translation>あちらを見てください。</translation>
    </message>
    <message>
        <source>Come to me.</source>
        <translation>こちらに来てください。</translation>
    </message>
    <message>
        <source>Stay close together.</source>
        <translation>離れずに一緒にいてください。</translation>
    </message>
    <message>
        <source>Let us hold hands.</source>
        <translation>手をつなぎましょう。</translation>
    </message>
    <message>
        <source>Stay at this depth.</source>
        <translation>この深さにいてください。</translation>
    </message>
    <message>
        <source>Slow down.</source>
        <translation>もっとゆっくり動いてください。</translation>
    </message>
    <message>
        <source>I am cold.</source>
        <translation>寒いです。</translation>
    </message>
    <message>
        <source>All is well. Made at the surface.</source>
        <translation>大丈夫です。水面で使います。</translation>
    </message>
    <message>
        <source>Help me. Made at the surface.</source>
        <translation>助けてください。水面で使います。</translation>
    </message>
    <message>
        <source>Thumb and first finger make a ring.</source>
        <translation>親指と人さし指で輪を作ります。</translation>
    </message>
    <message>
        <source>Rock a flat hand, then point at what is wrong.</source>
        <translation>開いた手を左右に傾けて揺らし、おかしい所を指さします。</translation>
    </message>
    <message>
        <source>Point at your ear.</source>
        <translation>自分の耳を指さします。</translation>
    </message>
    <message>
        <source>Hold up a flat hand.</source>
        <translation>手のひらを相手に向けて立てます。</translation>
    </message>
    <message>
        <source>Fist with the thumb up, moving up.</source>
        <translation>握りこぶしの親指を上に向け、上に動かします。</translation>
    </message>
    <message>
        <source>Fist with the thumb down, moving down.</source>
        <translation>握りこぶしの親指を下に向け、下に動かします。</translation>
    </message>
    <message>
        <source>Hold a fist at your chest.</source>
        <translation>握りこぶしを胸に当てます。</translation>
    </message>
    <message>
        <source>Cut across your throat with a flat hand.</source>
        <translation>開いた手で、のどを横に切るように動かします。</translation>
    </message>
    <message>
        <source>Move your fingers to your mouth and away.</source>
        <translation>指先を口に近づけたり離したりします。</translation>
    </message>
    <message>
        <source>Two fingers from your eyes to the thing.</source>
        <translation>2本の指で、目から見てほしい物へ。</translation>
    </message>
    <message>
        <source>Wave your hand towards you.</source>
        <translation>自分のほうへ手招きします。</translation>
    </message>
    <message>
        <source>Put two first fingers side by side.</source>
        <translation>両手の人さし指を並べます。</translation>
    </message>
    <message>
        <source>Clasp your hands.</source>
        <translation>両手を握り合わせます。</translation>
    </message>
    <message>
        <source>Slide a flat hand from side to side.</source>
        <translation>開いた手を水平に左右へ動かします。</translation>
    </message>
    <message>
        <source>Press a flat hand down, twice.</source>
        <translation>開いた手を2回、下に押します。</translation>
    </message>
    <message>
        <source>Cross your arms and rub them.</source>
        <translation>両腕を交差させて、腕をさすります。</translation>
    </message>
    <message>
        <source>Lay two fingers on your palm.</source>
        <translation>2本の指を手のひらに当てます。</translation>
    </message>
    <message>
        <source>Make a big ring over your head with both arms.</source>
        <translation>両腕で頭の上に大きな輪を作ります。</translation>
    </message>
    <message>
        <source>Wave one straight arm over your head, slowly.</source>
        <translation>伸ばした片腕を頭の上でゆっくり振ります。</translation>
    </message>
</context>
</TS>
