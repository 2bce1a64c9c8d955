<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ko" sourcelanguage="en">
<context>
    <name>Guest</name>
    <message>
        <source>Meet</source>
        <extracomment>Card, before day and time: "Meet Sat 4 July, 09:30".</extracomment>
        <translation>집합</translation>
    </message>
    <message>
        <source>With</source>
        <extracomment>Card, before the instructor's name: "With Ana".
----------
label before the instructor’s name</extracomment>
        <translation>강사</translation>
    </message>
    <message>
        <source>Low on air</source>
        <extracomment>Card, above the pressure in large type; the name of a hand signal as well.</extracomment>
        <translation>공기 부족</translation>
    </message>
    <message>
        <source>signal now</source>
        <extracomment>Card, below that pressure: show the hand signal at once. Two or three short words.</extracomment>
        <translation>바로 신호</translation>
    </message>
    <message>
        <source>Deepest</source>
        <extracomment>Card, above a depth in large type: the deepest point of the dive. One short word.</extracomment>
        <translation>최대 수심</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>Card, above minutes in large type: how long the dive is. One short word.</extracomment>
        <translation>시간</translation>
    </message>
    <message>
        <source>Never hold your breath</source>
        <extracomment>Card, the largest words: the one rule. Keep it short.</extracomment>
        <translation>절대 숨을 참지 마세요</translation>
    </message>
    <message>
        <source>Going up, held air swells: lungs can tear.</source>
        <extracomment>Card, below that rule. Beside it stands by how much the air swells: "×1.8".</extracomment>
        <translation>숨을 참고 올라가면 폐가 부풀어 찢어질 수 있어요.</translation>
    </message>
    <message>
        <source>Clear ears early, every %1. Pain? Stop, signal, go up %2.</source>
        <extracomment>Card. %1: a step of descent ("1 m"). %2: how far to go up ("1 m").</extracomment>
        <translation>귀 압력은 일찍부터 %1마다 맞추세요. 아프면 멈추고, 신호하고, %2 올라가세요.</translation>
    </message>
    <message>
        <source>Stay within reach. Lost? Look around 1 minute, go up slowly.</source>
        <extracomment>Card: so close to the instructor that an arm reaches. When apart: look around.</extracomment>
        <translation>강사에게 팔이 닿는 거리에 계세요. 놓치면 1분만 둘러보고 천천히 올라가세요.</translation>
    </message>
    <message>
        <source>Cold, scared, tired? Signal. Quitting is fine.</source>
        <extracomment>Card: whoever does not feel well gives a signal, and may end the dive.</extracomment>
        <translation>춥거나 무섭거나 지쳤나요? 신호하세요. 그만해도 괜찮아요.</translation>
    </message>
    <message>
        <source>At the top: fill BCD, mask on.</source>
        <extracomment>Card: back at the surface.</extracomment>
        <translation>수면에서: BCD에 공기를 넣고 마스크는 그대로.</translation>
    </message>
    <message>
        <source>not “good”</source>
        <extracomment>Card, under the picture of a raised thumb, which means "go up": never "good".</extracomment>
        <translation>‘좋아요’ 아님</translation>
    </message>
    <message>
        <source>%1 h: no flights, no mountains.</source>
        <extracomment>Card, after the dive. %1: a number of hours.</extracomment>
        <translation>%1시간 동안: 비행기와 산악 도로 금지.</translation>
    </message>
    <message>
        <source>48 h: numb, dizzy, very tired, joint pain, breathless?</source>
        <extracomment>Card, after the dive: whoever feels this within 48 hours calls the number beside it.</extracomment>
        <translation>48시간 안에: 저림, 어지러움, 심한 피로, 관절통, 숨 가쁨?</translation>
    </message>
    <message>
        <source>Call</source>
        <extracomment>Card, before the emergency number; without a colon.</extracomment>
        <translation>전화</translation>
    </message>
    <message>
        <source>Understood</source>
        <extracomment>Card, beside a box that the guest ticks.</extracomment>
        <translation>이해했어요</translation>
    </message>
    <message>
        <source>Planning aid. Your instructor decides.</source>
        <extracomment>Card, small: what the card is, and who decides.</extracomment>
        <translation>계획용 자료예요. 강사가 결정해요.</translation>
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
        <translation>분</translation>
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
        <translation>물속에서 숨쉬기</translation>
    </message>
    <message>
        <source>Clear your mask</source>
        <translation>마스크 물 빼기</translation>
    </message>
    <message>
        <source>Clear the mouthpiece</source>
        <translation>호흡기 물 빼기</translation>
    </message>
    <message>
        <source>Find the mouthpiece</source>
        <translation>호흡기 찾기</translation>
    </message>
    <message>
        <source>Clear your ears</source>
        <translation>귀 압력 맞추기</translation>
    </message>
    <message>
        <source>Fill and empty the BCD</source>
        <translation>BCD 공기 넣고 빼기</translation>
    </message>
    <message>
        <source>Share air</source>
        <translation>공기 나누기</translation>
    </message>
    <message>
        <source>Float at the top</source>
        <translation>수면에 떠 있기</translation>
    </message>
    <message>
        <source>So that slow, steady breaths feel easy before you go down.</source>
        <translation>내려가기 전에 느리고 고른 호흡이 편해지게 연습해요.</translation>
    </message>
    <message>
        <source>So that water in the mask is no worry: you know how to blow it out.</source>
        <translation>마스크에 물이 들어와도 걱정 없이 불어서 뺄 수 있게 연습해요.</translation>
    </message>
    <message>
        <source>So that you can blow water out and breathe on.</source>
        <translation>물을 불어 내고 계속 숨 쉴 수 있게 연습해요.</translation>
    </message>
    <message>
        <source>So that you can get it back if it slips out.</source>
        <translation>입에서 빠져도 다시 찾을 수 있게 연습해요.</translation>
    </message>
    <message>
        <source>So that going down need not hurt.</source>
        <translation>내려갈 때 귀가 아프지 않게 하려는 거예요.</translation>
    </message>
    <message>
        <source>So that you can float, or sink, when you choose.</source>
        <translation>원할 때 뜨거나 가라앉을 수 있게 연습해요.</translation>
    </message>
    <message>
        <source>So that you can breathe from the spare if yours runs low.</source>
        <translation>내 공기가 부족하면 예비 호흡기로 숨 쉴 수 있게 연습해요.</translation>
    </message>
    <message>
        <source>So that you can rest with your head above the water.</source>
        <translation>머리를 물 밖에 두고 쉴 수 있게 연습해요.</translation>
    </message>
    <message>
        <source>Suit</source>
        <translation>슈트</translation>
    </message>
    <message>
        <source>BCD</source>
        <translation>BCD</translation>
    </message>
    <message>
        <source>Fins</source>
        <translation>오리발</translation>
    </message>
    <message>
        <source>Mask</source>
        <translation>마스크</translation>
    </message>
    <message>
        <source>Mouthpiece</source>
        <translation>호흡기</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>웨이트</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>공기통</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>잔압계</translation>
    </message>
    <message>
        <source>Keeps you warm.</source>
        <translation>몸을 따뜻하게 해요.</translation>
    </message>
    <message>
        <source>The jacket that lets you float or sink.</source>
        <translation>뜨거나 가라앉게 해 주는 조끼예요.</translation>
    </message>
    <message>
        <source>Move you with slow kicks.</source>
        <translation>천천히 차면 앞으로 가요.</translation>
    </message>
    <message>
        <source>Lets you see. Your nose is inside, so that you can blow into it.</source>
        <translation>앞이 잘 보여요. 코도 안에 있어 코로 공기를 불어 넣을 수 있어요.</translation>
    </message>
    <message>
        <source>Gives you air when you breathe in.</source>
        <translation>들이쉬면 공기가 나와요.</translation>
    </message>
    <message>
        <source>Help you to sink. Your instructor shows how to drop them.</source>
        <translation>가라앉게 도와줘요. 떼어 내는 법은 강사가 알려줘요.</translation>
    </message>
    <message>
        <source>Holds your air.</source>
        <translation>숨 쉴 공기가 들어 있어요.</translation>
    </message>
    <message>
        <source>Shows how much air is left. Look at it often.</source>
        <translation>남은 공기를 보여 줘요. 자주 보세요.</translation>
    </message>
    <message>
        <source>Talk with your hands</source>
        <translation>손으로 말해요</translation>
    </message>
    <message>
        <source>Thumb up means “go up”. It never means “good”. For “good”, make a ring.</source>
        <translation>엄지를 위로 하면 ‘올라가요’라는 뜻이에요. ‘좋아요’라는 뜻은 절대 아니에요. ‘좋아요’는 동그라미를 만드세요.</translation>
    </message>
    <message>
        <source>Some people count in another way. Show each other your numbers first.</source>
        <translation>손으로 숫자를 다르게 세는 사람도 있어요. 먼저 서로 숫자를 보여 주세요.</translation>
    </message>
    <message>
        <source>One sign at a time: %1 means %2.</source>
        <translation>한 번에 하나씩 보여 주세요: %1 = %2.</translation>
    </message>
    <message>
        <source>Fill a balloon at the top. Down it goes, and it shrinks.</source>
        <translation>수면에서 풍선을 불어요. 내려가면 줄어들어요.</translation>
    </message>
    <message>
        <source>Fill it deep down. Up it goes, and it swells.</source>
        <translation>깊은 곳에서 풍선을 불어요. 올라가면 부풀어요.</translation>
    </message>
    <message>
        <source>So does the air in your lungs, if you hold it.</source>
        <translation>숨을 참고 올라가면 폐 속 공기도 똑같이 부풀어요.</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>a button: to the page before</extracomment>
        <translation>이전</translation>
    </message>
    <message>
        <source>Next</source>
        <extracomment>a button: to the page after</extracomment>
        <translation>다음</translation>
    </message>
    <message>
        <source>Run</source>
        <extracomment>a button: the pages turn by themselves from here on</extracomment>
        <translation>자동 넘김</translation>
    </message>
    <message>
        <source>Pause</source>
        <extracomment>a button: the pages no longer turn by themselves</extracomment>
        <translation>일시정지</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>언어</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>%2쪽 중 %1쪽</translation>
    </message>
    <message>
        <source>Tap your name.</source>
        <extracomment>above the first names of the guests</extracomment>
        <translation>이름을 누르세요.</translation>
    </message>
    <message>
        <source>No speaker has checked this text yet. Ask if it is not clear.</source>
        <extracomment>stands on every page whose language is a draft</extracomment>
        <translation>한국어를 쓰는 사람이 아직 확인하지 않은 글이에요. 잘 모르겠으면 물어보세요.</translation>
    </message>
    <message>
        <source>A planning aid. Your instructor decides.</source>
        <translation>계획용 자료예요. 강사가 결정해요.</translation>
    </message>
    <message>
        <source>No guests yet.</source>
        <translation>아직 손님이 없어요.</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>어서 오세요</translation>
    </message>
    <message>
        <source>Today’s dive</source>
        <translation>오늘의 다이빙</translation>
    </message>
    <message>
        <source>Where</source>
        <extracomment>label before a place</extracomment>
        <translation>장소</translation>
    </message>
    <message>
        <source>How deep</source>
        <extracomment>label before a depth</extracomment>
        <translation>깊이</translation>
    </message>
    <message>
        <source>no deeper than %1</source>
        <extracomment>follows the label “How deep”</extracomment>
        <translation>%1보다 깊이 가지 않아요</translation>
    </message>
    <message>
        <source>How long</source>
        <extracomment>label before a time</extracomment>
        <translation>시간</translation>
    </message>
    <message>
        <source>about %1</source>
        <extracomment>follows the label “How long”</extracomment>
        <translation>약 %1</translation>
    </message>
    <message>
        <source>not set yet</source>
        <extracomment>in place of a name or a place</extracomment>
        <translation>미정</translation>
    </message>
    <message>
        <source>You may stop at any time. Just show it.</source>
        <translation>언제든 그만둘 수 있어요. 신호만 하면 돼요.</translation>
    </message>
    <message>
        <source>Ask about all that is not clear.</source>
        <translation>잘 모르는 것은 모두 물어보세요.</translation>
    </message>
    <message>
        <source>Your kit</source>
        <translation>내 장비</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <extracomment>in place of a size</extracomment>
        <translation>아직 안 골랐어요</translation>
    </message>
    <message>
        <source>Try it all on. Does it pinch, leak or feel loose? Say so.</source>
        <translation>모두 착용해 보세요. 조이거나 새거나 헐거우면 말해 주세요.</translation>
    </message>
    <message>
        <source>Breathe all the time</source>
        <translation>계속 숨 쉬세요</translation>
    </message>
    <message>
        <source>Move the diver up and down.</source>
        <extracomment>the guest drags a picture with the finger</extracomment>
        <translation>다이버를 위아래로 움직여 보세요.</translation>
    </message>
    <message>
        <source>Depth</source>
        <extracomment>label before a number</extracomment>
        <translation>수심</translation>
    </message>
    <message>
        <source>Pressure</source>
        <extracomment>label before a number</extracomment>
        <translation>압력</translation>
    </message>
    <message>
        <source>%1 the pressure at the top</source>
        <extracomment>%1 is a factor, as in ×1.8</extracomment>
        <translation>수면 압력 %1</translation>
    </message>
    <message>
        <source>Balloon</source>
        <translation>풍선</translation>
    </message>
    <message>
        <source>Filled at the top, it shrinks on the way down.</source>
        <extracomment>a balloon</extracomment>
        <translation>수면에서 분 풍선은 내려가면 줄어들어요.</translation>
    </message>
    <message>
        <source>Lungs</source>
        <translation>폐</translation>
    </message>
    <message>
        <source>Breathe, and they stay the same size.</source>
        <extracomment>the lungs</extracomment>
        <translation>계속 숨을 쉬면 크기가 그대로예요.</translation>
    </message>
    <message>
        <source>A breath held at %1 swells to %2 at the top.</source>
        <extracomment>%2 is a factor, as in ×1.8</extracomment>
        <translation>%1에서 참은 숨은 수면에서 %2 크기로 부풀어요.</translation>
    </message>
    <message>
        <source>It can tear a lung.</source>
        <extracomment>a held breath</extracomment>
        <translation>폐가 찢어질 수 있어요.</translation>
    </message>
    <message>
        <source>Even %1 up can be enough.</source>
        <extracomment>to go up by %1 with a held breath can be enough to tear a lung</extracomment>
        <translation>%1만 올라가도 그럴 수 있어요.</translation>
    </message>
    <message>
        <source>Ear drum</source>
        <translation>고막</translation>
    </message>
    <message>
        <source>It bends in on the way down. Clear your ears.</source>
        <extracomment>the ear drum</extracomment>
        <translation>내려가면 안으로 휘어요. 귀 압력을 맞추세요.</translation>
    </message>
    <message>
        <source>flat</source>
        <extracomment>the ear drum is not bent</extracomment>
        <translation>평평함</translation>
    </message>
    <message>
        <source>bent in</source>
        <extracomment>the ear drum is bent in</extracomment>
        <translation>안으로 휨</translation>
    </message>
    <message>
        <source>On the way down it pulls at your face. Breathe out a bit through your nose.</source>
        <extracomment>the mask</extracomment>
        <translation>내려가면 얼굴에 달라붙어요. 코로 숨을 조금 내쉬세요.</translation>
    </message>
    <message>
        <source>sits well</source>
        <extracomment>the mask</extracomment>
        <translation>잘 맞음</translation>
    </message>
    <message>
        <source>pulls</source>
        <extracomment>the mask is sucked to the face</extracomment>
        <translation>달라붙음</translation>
    </message>
    <message>
        <source>Size: %1</source>
        <extracomment>%1 is a share, as in 55 %</extracomment>
        <translation>크기: %1</translation>
    </message>
    <message>
        <source>Top</source>
        <extracomment>the water’s surface, beside a scale of depth</extracomment>
        <translation>수면</translation>
    </message>
    <message>
        <source>Deepest today</source>
        <extracomment>beside a scale of depth</extracomment>
        <translation>오늘 최대 수심</translation>
    </message>
    <message>
        <source>Diver</source>
        <extracomment>a person under water</extracomment>
        <translation>다이버</translation>
    </message>
    <message>
        <source>Clear them every %1 on the way down, before they hurt.</source>
        <extracomment>your ears</extracomment>
        <translation>내려가면서 %1마다, 아프기 전에 귀 압력을 맞추세요.</translation>
    </message>
    <message>
        <source>Pinch your nose. Blow softly. Never blow hard.</source>
        <translation>코를 잡고 살살 부세요. 절대 세게 불지 마세요.</translation>
    </message>
    <message>
        <source>Try it: go down. What if you do not clear?</source>
        <translation>해 보세요: 내려가 보세요. 귀 압력을 안 맞추면 어떻게 될까요?</translation>
    </message>
    <message>
        <source>Down</source>
        <extracomment>a button: go a little deeper</extracomment>
        <translation>아래로</translation>
    </message>
    <message>
        <source>Up</source>
        <extracomment>a button: go a little less deep</extracomment>
        <translation>위로</translation>
    </message>
    <message>
        <source>Clear my ears</source>
        <extracomment>a button</extracomment>
        <translation>귀 압력 맞추기</translation>
    </message>
    <message>
        <source>On the ear drum</source>
        <extracomment>label before a pressure</extracomment>
        <translation>고막에 걸린 압력</translation>
    </message>
    <message>
        <source>Fine</source>
        <extracomment>state of the ears</extracomment>
        <translation>괜찮음</translation>
    </message>
    <message>
        <source>Pressure: clear now</source>
        <extracomment>state of the ears: it feels full, it does not hurt yet</extracomment>
        <translation>먹먹함: 지금 압력 맞추기</translation>
    </message>
    <message>
        <source>Pain: stop and go up</source>
        <extracomment>state of the ears</extracomment>
        <translation>통증: 멈추고 올라가기</translation>
    </message>
    <message>
        <source>Locked: only going up helps</source>
        <extracomment>state of the ears: the tube to the ear is shut tight and does not open</extracomment>
        <translation>막힘: 올라가야만 풀림</translation>
    </message>
    <message>
        <source>Cleared. The drum is flat.</source>
        <extracomment>the ear drum</extracomment>
        <translation>맞췄어요. 고막이 평평해요.</translation>
    </message>
    <message>
        <source>Do not force it. Go up a bit first.</source>
        <extracomment>to clear the ears</extracomment>
        <translation>억지로 하지 마세요. 먼저 조금 올라가세요.</translation>
    </message>
    <message>
        <source>Ears hurt? Stop, show it, go up a bit. Then try once more.</source>
        <translation>귀가 아픈가요? 멈추고, 신호하고, 조금 올라가세요. 그리고 한 번 더 해 보세요.</translation>
    </message>
    <message>
        <source>clear here</source>
        <extracomment>beside a mark on a scale of depth</extracomment>
        <translation>여기서 맞추기</translation>
    </message>
    <message>
        <source>Hand signals</source>
        <translation>수신호</translation>
    </message>
    <message>
        <source>How much air do you have?</source>
        <translation>공기가 얼마나 남았나요?</translation>
    </message>
    <message>
        <source>Show each figure with one hand. This is %1:</source>
        <extracomment>the figures of a number, one after another</extracomment>
        <translation>숫자를 하나씩 한 손으로 보여 주세요. 이것은 %1예요:</translation>
    </message>
    <message>
        <source>Not the same</source>
        <extracomment>above two signals that are often mixed up</extracomment>
        <translation>서로 달라요</translation>
    </message>
    <message>
        <source>Thumb up: we go up. It does not mean “good”.</source>
        <translation>엄지 위로: 올라가요. ‘좋아요’라는 뜻이 아니에요.</translation>
    </message>
    <message>
        <source>All is well? Make the ring.</source>
        <extracomment>thumb and first finger make a ring</extracomment>
        <translation>괜찮으면 동그라미를 만드세요.</translation>
    </message>
    <message>
        <source>Do you know them?</source>
        <extracomment>hand signals</extracomment>
        <translation>수신호를 아나요?</translation>
    </message>
    <message>
        <source>Start</source>
        <extracomment>a button</extracomment>
        <translation>시작</translation>
    </message>
    <message>
        <source>Start over</source>
        <extracomment>a button</extracomment>
        <translation>다시 시작</translation>
    </message>
    <message>
        <source>What does this signal say?</source>
        <translation>이 신호는 무슨 뜻일까요?</translation>
    </message>
    <message>
        <source>Yes, that is right.</source>
        <translation>네, 맞아요.</translation>
    </message>
    <message>
        <source>Not quite. It says: %1</source>
        <translation>조금 달라요. 이 뜻이에요: %1</translation>
    </message>
    <message>
        <source>We will ask it once more.</source>
        <translation>한 번 더 물어볼게요.</translation>
    </message>
    <message>
        <source>Known: %1 of %2</source>
        <translation>아는 신호: %2개 중 %1개</translation>
    </message>
    <message>
        <source>You know them all. Well done!</source>
        <translation>모두 알고 있네요. 잘했어요!</translation>
    </message>
    <message>
        <source>Your instructor has a note of it: %1</source>
        <extracomment>%1 is a date</extracomment>
        <translation>강사가 적어 두었어요: %1</translation>
    </message>
    <message>
        <source>known</source>
        <extracomment>a hand signal that the guest knows</extracomment>
        <translation>알아요</translation>
    </message>
    <message>
        <source>not yet</source>
        <extracomment>a hand signal that the guest does not know yet</extracomment>
        <translation>아직</translation>
    </message>
    <message>
        <source>What we try first</source>
        <extracomment>what is practised in shallow water</extracomment>
        <translation>먼저 해 볼 것</translation>
    </message>
    <message>
        <source>Your instructor shows it. Then you try. Take your time.</source>
        <translation>강사가 먼저 보여 줘요. 그다음 따라 해 보세요. 천천히 해도 괜찮아요.</translation>
    </message>
    <message>
        <source>Ask your instructor what we try today.</source>
        <translation>오늘 무엇을 해 볼지 강사에게 물어보세요.</translation>
    </message>
    <message>
        <source>When we go up</source>
        <translation>이럴 때 올라가요</translation>
    </message>
    <message>
        <source>One goes up, we all go up.</source>
        <translation>한 사람이 올라가면 모두 올라가요.</translation>
    </message>
    <message>
        <source>Go up slowly and breathe all the time.</source>
        <translation>천천히 올라가면서 계속 숨 쉬세요.</translation>
    </message>
    <message>
        <source>Your gauge reads %1 or less. Show it now.</source>
        <translation>잔압계가 %1 이하예요. 바로 신호하세요.</translation>
    </message>
    <message>
        <source>Your air is low. Ask which number to look for.</source>
        <extracomment>the number on the gauge</extracomment>
        <translation>공기가 부족해요. 어떤 숫자를 봐야 하는지 물어보세요.</translation>
    </message>
    <message>
        <source>The time is up: %1.</source>
        <translation>시간이 다 됐어요: %1.</translation>
    </message>
    <message>
        <source>You want to go up. That is fine.</source>
        <translation>올라가고 싶어요. 그래도 괜찮아요.</translation>
    </message>
    <message>
        <source>Your ears hurt or do not clear.</source>
        <translation>귀가 아프거나 압력이 안 맞춰져요.</translation>
    </message>
    <message>
        <source>You are cold, tired or scared.</source>
        <translation>춥거나 지쳤거나 무서워요.</translation>
    </message>
    <message>
        <source>Your instructor shows: go up.</source>
        <translation>강사가 올라가라고 신호해요.</translation>
    </message>
    <message>
        <source>You see none of us. Look around for one minute, then go up slowly.</source>
        <translation>아무도 안 보여요. 1분만 둘러보고 천천히 올라가세요.</translation>
    </message>
    <message>
        <source>After the dive</source>
        <translation>다이빙 후</translation>
    </message>
    <message>
        <source>No flights and no mountain roads for %1 h.</source>
        <translation>%1시간 동안 비행기와 산악 도로는 안 돼요.</translation>
    </message>
    <message>
        <source>For 48 h, watch for this:</source>
        <extracomment>signs of illness</extracomment>
        <translation>48시간 동안 이런 증상이 있는지 살피세요:</translation>
    </message>
    <message>
        <source>numb or tingling skin</source>
        <translation>피부가 저리거나 감각이 둔하거나 찌릿함</translation>
    </message>
    <message>
        <source>weak arms or legs</source>
        <translation>팔이나 다리에 힘이 없음</translation>
    </message>
    <message>
        <source>dizzy, or odd sight</source>
        <translation>어지럽거나 눈이 이상하게 보임</translation>
    </message>
    <message>
        <source>very tired</source>
        <translation>심한 피로</translation>
    </message>
    <message>
        <source>sore joints</source>
        <translation>관절 통증</translation>
    </message>
    <message>
        <source>short of breath, or chest pain</source>
        <translation>숨이 차거나 가슴이 아픔</translation>
    </message>
    <message>
        <source>Any of these? Call now: %1</source>
        <translation>하나라도 있으면 바로 전화하세요: %1</translation>
    </message>
    <message>
        <source>Any of these? Call for help now. Ask your instructor for the number.</source>
        <translation>하나라도 있으면 바로 전화로 도움을 요청하세요. 번호는 강사에게 물어보세요.</translation>
    </message>
    <message>
        <source>Say that you have been diving. Do not wait.</source>
        <translation>다이빙을 했다고 말하세요. 기다리지 마세요.</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Problem</source>
        <translation>문제 있음</translation>
    </message>
    <message>
        <source>Ears</source>
        <translation>귀</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>멈춤</translation>
    </message>
    <message>
        <source>Go up</source>
        <translation>올라가기</translation>
    </message>
    <message>
        <source>Go down</source>
        <translation>내려가기</translation>
    </message>
    <message>
        <source>No air</source>
        <translation>공기 없음</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>보세요</translation>
    </message>
    <message>
        <source>Come here</source>
        <translation>오세요</translation>
    </message>
    <message>
        <source>Stay close</source>
        <translation>함께 있기</translation>
    </message>
    <message>
        <source>Hold hands</source>
        <translation>손잡기</translation>
    </message>
    <message>
        <source>This deep</source>
        <translation>이 깊이 유지</translation>
    </message>
    <message>
        <source>Slow</source>
        <translation>천천히</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>추워요</translation>
    </message>
    <message>
        <source>How much air?</source>
        <translation>공기 얼마나?</translation>
    </message>
    <message>
        <source>OK, at the top</source>
        <translation>수면에서 OK</translation>
    </message>
    <message>
        <source>Help, at the top</source>
        <translation>수면에서 도와줘요</translation>
    </message>
    <message>
        <source>All is well. Is all well with you?</source>
        <translation>괜찮아요. 괜찮으세요?</translation>
    </message>
    <message>
        <source>Something is wrong.</source>
        <translation>문제가 있어요.</translation>
    </message>
    <message>
        <source>My ears hurt, or do not clear.</source>
        <translation>귀가 아프거나 압력이 안 맞춰져요.</translation>
    </message>
    <message>
        <source>Stop and stay where you are.</source>
        <translation>멈추고 그 자리에 계세요.</translation>
    </message>
    <message>
        <source>Go up: the dive is over. It never means “good”.</source>
        <translation>올라가세요. 다이빙이 끝났어요. ‘좋아요’라는 뜻은 절대 아니에요.</translation>
    </message>
    <message>
        <source>Go down.</source>
        <translation>내려가세요.</translation>
    </message>
    <message>
        <source>I am low on air.</source>
        <translation>공기가 부족해요.</translation>
    </message>
    <message>
        <source>I have no air. Give me yours now.</source>
        <translation>공기가 없어요. 지금 바로 공기를 주세요.</translation>
    </message>
    <message>
        <source>Let me breathe from your spare mouthpiece.</source>
        <translation>예비 호흡기로 숨 쉬게 해 주세요.</translation>
    </message>
    <message>
        <source>Look, over there.</source>
        <translation>저기를 보세요.</translation>
    </message>
    <message>
        <source>Come to me.</source>
        <translation>저에게 오세요.</translation>
    </message>
    <message>
        <source>Stay close together.</source>
        <translation>서로 가까이 계세요.</translation>
    </message>
    <message>
        <source>Let us hold hands.</source>
        <translation>손을 잡아요.</translation>
    </message>
    <message>
        <source>Stay at this depth.</source>
        <translation>이 깊이에 계세요.</translation>
    </message>
    <message>
        <source>Slow down.</source>
        <translation>속도를 줄이세요.</translation>
    </message>
    <message>
        <source>I am cold.</source>
        <translation>추워요.</translation>
    </message>
    <message>
        <source>All is well. Made at the surface.</source>
        <translation>괜찮아요. 수면에서 쓰는 신호예요.</translation>
    </message>
    <message>
        <source>Help me. Made at the surface.</source>
        <translation>도와주세요. 수면에서 쓰는 신호예요.</translation>
    </message>
    <message>
        <source>Thumb and first finger make a ring.</source>
        <translation>엄지와 검지로 동그라미를 만드세요.</translation>
    </message>
    <message>
        <source>Rock a flat hand, then point at what is wrong.</source>
        <translation>편 손을 좌우로 기울여 흔든 뒤 문제 있는 곳을 가리키세요.</translation>
    </message>
    <message>
        <source>Point at your ear.</source>
        <translation>귀를 가리키세요.</translation>
    </message>
    <message>
        <source>Hold up a flat hand.</source>
        <translation>손을 펴서 세우세요.</translation>
    </message>
    <message>
        <source>Fist with the thumb up, moving up.</source>
        <translation>주먹을 쥐고 엄지를 위로 세워 위로 움직이세요.</translation>
    </message>
    <message>
        <source>Fist with the thumb down, moving down.</source>
        <translation>주먹을 쥐고 엄지를 아래로 내려 아래로 움직이세요.</translation>
    </message>
    <message>
        <source>Hold a fist at your chest.</source>
        <translation>주먹을 가슴에 대세요.</translation>
    </message>
    <message>
        <source>Cut across your throat with a flat hand.</source>
        <translation>편 손으로 목을 베듯이 옆으로 그으세요.</translation>
    </message>
    <message>
        <source>Move your fingers to your mouth and away.</source>
        <translation>손가락을 입에 댔다 뗐다 하세요.</translation>
    </message>
    <message>
        <source>Two fingers from your eyes to the thing.</source>
        <translation>두 손가락으로 눈을 가리킨 뒤 볼 것을 가리키세요.</translation>
    </message>
    <message>
        <source>Wave your hand towards you.</source>
        <translation>손을 자기 쪽으로 흔드세요.</translation>
    </message>
    <message>
        <source>Put two first fingers side by side.</source>
        <translation>두 검지를 나란히 붙이세요.</translation>
    </message>
    <message>
        <source>Clasp your hands.</source>
        <translation>두 손을 맞잡으세요.</translation>
    </message>
    <message>
        <source>Slide a flat hand from side to side.</source>
        <translation>편 손을 눕혀 좌우로 움직이세요.</translation>
    </message>
    <message>
        <source>Press a flat hand down, twice.</source>
        <translation>편 손을 아래로 두 번 누르세요.</translation>
    </message>
    <message>
        <source>Cross your arms and rub them.</source>
        <translation>두 팔을 엇갈려 팔을 문지르세요.</translation>
    </message>
    <message>
        <source>Lay two fingers on your palm.</source>
        <translation>두 손가락을 손바닥에 대세요.</translation>
    </message>
    <message>
        <source>Make a big ring over your head with both arms.</source>
        <translation>두 팔로 머리 위에 큰 원을 만드세요.</translation>
    </message>
    <message>
        <source>Wave one straight arm over your head, slowly.</source>
        <translation>한 팔을 곧게 펴고 머리 위로 천천히 흔드세요.</translation>
    </message>
</context>
</TS>
