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
from figures import (BLADE, arm_over, back_fist, blade, blade_thumb, body, cuff, front_hand, head,     # noqa: E402
                     number_hand, point_hand, side_head, torso, water)
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
    torso(p, 50, 62, 18, 86)
    head(p, 50, 45, 16, hose=False)
    for m in (Mat(), flip(50)):
        p.shape([T("M33 84 L30 72 L9 46 L27 18", 10)], m)
        p.shape([T("M27 18 C32 10 38 7.5 47 8.5", 7), T("M29 20 L38 19", 5)], m)
        p.line("M27 18 L33 12", m, w=7, colour="#fff")
        cuff(p, 9, 46, 24, 22.5, 12, m)
    water(p, 80)
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
    draw = arm_over(p, body(32, 66, 27, 93, neck=9), "M52 80 L76 91", "M76 91 L85 62", 12)
    head(p, 29, 34, 22, hose=False)
    p.shape([F("M50 26 C56 20 63 25 62 33 C61 39 57 41 55 46 C53 49 49 48 49 44 Z")])
    p.line("M53.5 31 C56 29 58 31 57 34")
    draw()
    point_hand(p, move(70, 34) * scale(.76))
    p.save(OUT, "ears")


def cold():
    p = Pic("Cold")
    torso(p, 50, 38, 27, 92, waist=22)
    head(p, 50, 19, 15, hose=False)
    for m in (Mat(), flip(50)):
        p.shape([T("M28 54 L17 82", 12)], m)
    for m in (flip(50), Mat()):
        p.shape([T("M18 82 L67 68", 11)], m)
        p.shape([F("M60 58 L78 56 L80 74 L64 76 Z"), T("M63 62 L62 54", 4.5)], m)
        p.shape([T("M74 %g L83 %g" % (y, y - 1), 3.2) for y in (57.5, 64.5, 71.5)], m)
    for m in (Mat(), flip(50)):
        p.line("M21 8 L15 15 L21 22 L15 29 L21 36", m)
        p.line("M10 15 L4.5 22 L10 29 L4.5 36", m)
    p.save(OUT, "cold")


def look():
    p = Pic("Look")
    torso(p, 36, 70, 32, 93, neck=9, slope=3)
    head(p, 36, 30, 24, mouth=False)
    p.shape([
        F("M27 66 L50 66 L53 75 C52 84 49 86 49 93 L29 93 C29 86 26 82 26 74 Z"),
        T("M30.5 70 L28 38", 7), T("M41 68 L45.5 38", 7)])
    p.shape([T("M%g 66 L%g 73" % (x, x), 4.5) for x in (40.5, 49)])
    p.shape([T("M28 78 L42 74", 5.5)])
    p.arrow(67, 27, 98, 27)
    p.save(OUT, "look")


def low_on_air():
    p = Pic("Low on air")
    draw = arm_over(p, body(52, 40, 34, 93, neck=8, waist=22), "M25 60 L12 84", "M12 84 L44 76", 12)
    head(p, 52, 20, 17, hose=False)
    draw()
    cuff(p, 12, 84, 36, 78, 12)
    back_fist(p, move(56, 70) * scale(1.05))
    p.save(OUT, "low-on-air")


def out_of_air():
    p = Pic("Out of air")
    p.shape([body(48, 62, 32, 93, neck=9, waist=24), T("M24 78 L9 80", 11)])
    head(p, 48, 22, 18, hose=False)
    m = move(17, 53) * turn(-3) * scale(.92, .84)
    p.shape([T("M9 80 L16 54", 11), F(put(m, BLADE))])
    p.line("M24 78 L9 80", w=11, colour="#fff")
    cuff(p, 9, 80, 14, 62, 13)
    p.line("M46 51.5 L60 51", w=3)
    p.arrow(73, 50, 98, 50)
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
    p.shape([F("M71 40 L89 40 L89 50 C95 54 96 68 96 93 L66 93 C66 70 65 58 72 52 Z")])
    side_head(p, 79, 23, 16)
    p.shape([T("M82 60 L66 80 L40 75", 11)])
    p.shape([T("M26 72 C12 74 4 66 6 50", 5.5)])
    p.shape([T("M28 74 C16 76 10 68 13 46", 5.5)])
    p.shape([F("M44 68 L34 66 L22 72 L24 82 L44 83 Z"), T("M28 76 C20 76 18 66 20 50", 5.5),
             T("M38 72 L32 58", 5.5)])
    p.arrow(10, 32, 58, 54, bend=-14)
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
        p.shape([body(22, 42, 16, 92, neck=5, slope=4, waist=13)], m)
    p.shape([T("M10 60 L7 84", 8), T("M90 60 L93 84", 8)])
    for m in (Mat(), flip(50)):
        head(p, 22, 24, 15, hose=False, m=m)
    p.shape([T("M34 60 L46 78 L56 80", 8)])
    p.shape([T("M66 60 L55 78", 8), T("M54 78 L46 75", 4)])
    p.shape([T("M54 84 L47 82", 4)])
    p.line("M66 60 L55 78", w=8, colour="#fff")
    for m in (Mat(), flip(50)):
        p.line("M30 56 L34 60", m, w=8, colour="#fff")
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
