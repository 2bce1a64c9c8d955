#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Draws the hand signal pictures of this folder.

Needs Python 3.8 or newer and nothing else. Run it from anywhere:

    python3 resources/signals/make_signals.py

It writes the SVG files next to itself, or into the folder named as its
argument. How it draws: see line_art.py.
"""
import os
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
OUT = sys.argv[1] if len(sys.argv) > 1 else HERE
sys.dont_write_bytecode = True
sys.path.insert(0, os.path.dirname(HERE))
from figures import (BLADE, arm_over, back_fist, blade, blade_thumb, body, cuff,     # noqa: E402
                     front_hand, head, number_hand, point_hand, side_head, torso, water)
from line_art import (F, Mat, Pic, T, arc, flip, move, on_oval, oval, put, scale, turn)   # noqa: E402


# --- the signals ----------------------------------------------------------

def ok():
    p = Pic("OK")
    p.shape([
        F("M17 58 C18 52 22 48 30 48 L50 48 C54 54 55 62 55 68 L58 82 C55 86 51 86 49 91 L49 103 "
          "L22 103 L22 91 C24 84 18 76 17 58 Z"),
        T("M22 60 L12.5 28", 9),
        T("M33 56 L30 16", 9.5),
        T("M45 54 L51 12.8", 9.5),
        T("M52 62 C52 48 60 39 71.5 39 C82.5 39 91 47 91 58", 9.5),
        T("M48 84 C58 82 64 79 71.5 77 C82.5 77 91 69 91 58", 9.5),
        T(oval(71.5, 58, 19.5, 19), 9.5),
        F("M52 66 L60 72 L62 78 L52 84 Z"),
    ])
    p.line("M22 91 L49 91")
    p.line("M86 62 L96 66")
    p.line("M38.7 46 L38.4 50")
    p.save(OUT, "ok")


def thumb_fist(p, m):
    p.shape([
        F("M26 50 L34 48 L58 46 C66 48 70 56 76 57 L92 58 L92 81 L76 82 C68 84 64 91 56 91 L28 91 Z"),
        F("M35 52 C37 42 37 28 36 15 C35.5 6 47 5.5 48.5 14 C50 26 54 36 62 48 L60 60 L38 60 Z"),
    ], m)
    p.shape([T("M%g %g L%g %g" % (x0, y, x1, y), 8.2)
             for x0, x1, y in ((20, 48, 51), (18, 50, 63.2), (19, 48, 75.4), (23, 45, 87.6))], m)
    p.line("M82 59 L82 80", m)


def up():
    p = Pic("Up")
    thumb_fist(p, Mat())
    p.arrow(16, 40, 16, 5)
    p.save(OUT, "up")


def down():
    p = Pic("Down")
    thumb_fist(p, turn(180, 50, 50))
    p.arrow(84, 60, 84, 95)
    p.save(OUT, "down")


def stop():
    p = Pic("Stop")
    number_hand(p, (1, 1, 1, 1), thumb=True)
    p.save(OUT, "stop")


def flat_arm(p, y):
    """Forearm and flat hand, palm down, edge on, pointing left."""
    m = move(62, y) * flip(0) * scale(1.08)
    p.shape([F("M60 %g L103 %g L103 %g L60 %g Z" % (y - 8, y - 9, y + 9, y + 7))])
    blade(p, m)
    p.fill("M71 %g L57 %g L57 %g L71 %g Z" % (y - 7.5, y - 7.5, y + 7, y + 7), colour="#fff")
    p.line("M80 %g L80 %g" % (y - 8, y + 8))


def level_off():
    p = Pic("Level off")
    front_hand(p, move(53, 36) * scale(1.02, .72))
    p.arrow(0, 76, 100, 76, both=True)
    p.save(OUT, "level-off")


def slow_down():
    p = Pic("Slow down")
    flat_arm(p, 24)
    p.arrow(32, 46, 32, 90)
    p.arrow(66, 46, 66, 90)
    p.save(OUT, "slow-down")


def something_wrong():
    p = Pic("Something is wrong")
    front_hand(p, move(50, 66) * turn(-22) * scale(1.1, .72))
    p.arrow(2, 30, 92, 20, bend=-13, both=True)
    p.save(OUT, "something-wrong")


def ok_at_surface():
    p = Pic("OK at the surface")
    torso(p, 50, 66, 24, 90, neck=8)
    head(p, 50, 46, 20, mouth=False)
    p.line("M43 57 Q50 64 57 57")
    p.shape([T(put(m, "M28 80 C8 70 0 50 10 34 C16 24 25 16 34 14"), 11) for m in (Mat(), flip(50))]
            + [T("M34 14.5 L45 19.5 M66 14.5 L55 19.5", 9.5)])
    for m in (Mat(), flip(50)):
        cuff(p, 20, 20, 29, 15.5, 11, m)
    p.line("M50 14 L50 25")
    water(p, 84)
    p.save(OUT, "ok-at-surface")


def help_at_surface():
    p = Pic("Help at the surface")
    torso(p, 39, 66, 22, 86, neck=6, slope=5)
    head(p, 38, 47, 15.5)
    m = move(75, 41) * turn(10)
    p.shape([
        T("M-6 6 L-18 -5", 4.5), T("M-6 -6 L-11.5 -22", 4.2), T("M-2 -8 L-2.6 -27", 4.2),
        T("M4 -8 L6.2 -26.5", 4.2), T("M8 -4 L14.5 -20", 4.2), F("M-8 -10 L8 -10 L10 0 L6 8 L5 12 L-4.2 46 L-16.4 44 L-6 8 Z")], m)
    p.line("M-6.5 13 L4 14.5", m)
    water(p, 80)
    p.arrow(5, 27, 57, 13, bend=-9, both=True)
    p.save(OUT, "help-at-surface")


def ears():
    p = Pic("Ears")
    draw = arm_over(p, body(40, 72, 33, 112, neck=10), "M64 96 L114 108", "M114 108 L104 87", 13)
    p.shape([F("M60 32 C64 20 81 22 80 35 C79 43 73 46 71 53 C68 58 62 56 61 51 Z")])
    head(p, 40, 38, 26, hose=False)
    p.line("M68 37 C69 31 75 33 73.5 38 L71 43")
    draw()
    point_hand(p, move(83, 46) * turn(58))
    p.line("M86 28 L92 19 M92 37 L102 32")
    p.save(OUT, "ears")


def cold():
    p = Pic("Cold")
    torso(p, 50, 38, 31, 92, slope=6, waist=24)
    head(p, 50, 19, 16, hose=False)
    for m in (flip(50), Mat()):
        p.shape([T("M20 84 L66 71", 12)], m)
        p.shape([F("M62 64 L72 57 L80 57 L84 74 L66 78 Z")]
                + [T("M74 %g L85 %g" % (y + 2, y - 1), 4.4) for y in (57, 64.5, 72)], m)
        p.line("M68 66 L74 64 M70 72 L74 71", m, w=6, colour="#fff")
    for m in (Mat(), flip(50)):
        p.line("M5 42 L-1 50 L5 58 L-1 66 L5 74", m)
    p.save(OUT, "cold")


def look():
    p = Pic("Look")
    p.shape([F("M14 54 L38 54 L38 66 C46 70 50 78 50 99 L2 99 C2 80 6 70 14 66 Z")])
    side_head(p, 26, 32, 24, m=flip(26))
    p.shape([T("M68 100 L87 77", 12)])
    p.shape([T("M92 58 L70 18", 7.5), T("M82 60 L63 36", 7.5),
             F("M78 56 L93 53 C101 58 103 67 98 77 L89 85 L79 76 C75 69 75 62 78 56 Z")])
    p.shape([T("M94 72 L85 66", 6)])
    p.arrow(60, 5, 105, 5)
    p.save(OUT, "look")


def low_on_air():
    p = Pic("Low on air")
    draw = arm_over(p, body(52, 41, 36, 100, neck=8, waist=24), "M25 62 L6 91", "M6 91 L36 81", 12)
    p.line("M77 68 L77 98")
    head(p, 52, 20, 17, hose=False)
    draw()
    cuff(p, 6, 91, 31, 82.5, 12)
    back_fist(p, move(46, 76) * turn(-12) * scale(1.05))
    p.line("M61 53 L65 48 M67 62 L73 59", w=3.5)
    p.save(OUT, "low-on-air")


def out_of_air():
    p = Pic("Out of air")
    p.shape([body(52, 76, 34, 103, neck=10, waist=24), T("M26 91 L8 91", 11),
             F("M42 36 L62 36 L62 74 L42 74 Z")])
    head(p, 52, 20, 18, hose=False)
    m = move(15, 52) * scale(.97, .8)
    p.shape([T("M8 91 L14 54", 11), F(put(m, BLADE))])
    p.line("M26 91 L8 91", w=11, colour="#fff")
    cuff(p, 8, 91, 12.5, 66, 13)
    p.line("M45 50.5 L59 50", w=3)
    p.arrow(25, 67, 87, 67, both=True)
    p.save(OUT, "out-of-air")


def share_air():
    p = Pic("Share air")
    p.shape([F("M66 48 L88 48 L88 62 C94 66 94 78 94 92 L62 92 C62 78 62 70 68 64 Z")])
    side_head(p, 76, 28, 21)
    m = move(20, 66) * turn(-44) * scale(.68, .9)
    p.shape([T("M82 72 L52 88 L20 68", 11), F(put(m, BLADE))])
    blade_thumb(p, m)
    cuff(p, 52, 88, 28, 73, 12)
    p.arrow(4, 20, 46, 20, both=True)
    p.save(OUT, "share-air")


def come_here():
    p = Pic("Come here")
    p.shape([F("M74 36 L92 36 L92 46 C99 50 100 64 100 97 L66 97 C66 72 68 54 76 48 Z")])
    side_head(p, 82, 22, 17)
    p.shape([T("M85 66 L74 89 L34 82", 12)])
    p.shape([F("M40 75 L28 73 C24 72 22 69 20 63 L13 46 C10 40 2 43 4 50 L10 72 C12 82 18 88 28 88 L38 89 Z"),
             T("M32 78 L37 65", 6)])
    p.arrow(6, 34, 66, 62, bend=-16)
    p.save(OUT, "come-here")


def stay_together():
    p = Pic("Stay together")
    for m in (Mat(), flip(50)):
        number_hand(p, (0, 0, 0, 1), m * move(-1.6, 6) * scale(.7, 1))
        p.arrow(*((4, 27, 30, 27) if m.v[0] > 0 else (96, 27, 70, 27)))
    p.save(OUT, "stay-together")


def hold_hands():
    p = Pic("Hold hands")
    for m in (Mat(), flip(50)):
        p.shape([body(16, 40, 18, 98, neck=6, slope=4, waist=14)], m)
        head(p, 16, 21, 16, hose=False, m=m)
    p.shape([T("M27 56 L46 78", 11)])
    p.shape([T("M73 56 L56 76", 11), F("M52 70 L62 76 L60 86 L54 92 L46 90 L42 78 Z")])
    p.shape([T("M56 %g L44 %g" % (y, y), 4) for y in (76, 82.5, 89)])
    p.shape([T("M44 72 L51 66", 5)])
    p.save(OUT, "hold-hands")


def how_much_air():
    p = Pic("How much air")
    number_hand(p, (1, 1, 1, 1), move(-6, 0) * scale(.86, 1), thumb=True)
    p.shape([F("M64 58 C72 54 80 56 84 58 L98 58 L98 82 L82 82 C74 84 66 80 64 74 Z"),
             T("M70 62 L28 62", 6.5), T("M70 71 L24 71", 6.5)])
    p.line("M91 60 L91 81")
    p.save(OUT, "how-much-air")


def numbers():
    fingers = {1: (0, 0, 0, 1), 2: (0, 0, 1, 1), 3: (0, 1, 1, 1), 4: (1, 1, 1, 1)}
    for n in range(1, 10):
        p = Pic("Number %d" % n, (0, 5, 100, 105) if n <= 5 else (-5, 0, 95, 100))
        if n == 5:
            number_hand(p, fingers[4], thumb=True, spread=5)
        elif n < 5:
            number_hand(p, fingers[n], move(9, 0), spread=3.5)
        else:
            number_hand(p, fingers[n - 5], turn(90, 50, 50) * move(9, 0), spread=3.5)
        p.save(OUT, "number-%d" % n)
    p = Pic("Number 0")
    for dx in (30, 20, 10):
        p.shape([T("M" + on_oval(34 + dx, 40, 21, 24, 215) + arc(34 + dx, 40, 21, 24, 215, 380), 12)])
    p.shape([F("M52 50 C64 54 78 54 90 46 C92 62 90 70 86 76 L86 97 L52 97 C54 84 48 76 40 70 Z"),
             T(oval(34, 44, 20, 24), 12)])
    p.line("M53 89 L85 89")
    p.fill(oval(34, 44, 10, 14), colour="#fff")
    p.line("M8 54 L15 52")
    p.save(OUT, "number-0")


if __name__ == "__main__":
    for draw_one in (ok, ok_at_surface, help_at_surface, something_wrong, ears, up, down, stop,
                     level_off, slow_down, cold, look, low_on_air, out_of_air, share_air,
                     come_here, stay_together, hold_hands, how_much_air, numbers):
        draw_one()
