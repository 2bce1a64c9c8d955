#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Draws the hand signal pictures of this folder.

Needs Python 3.8 or newer and nothing else. Run it from anywhere:

    python3 resources/signals/make_signals.py

It writes the SVG files next to itself. How it draws: see line_art.py.
"""
import os
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
sys.dont_write_bytecode = True
sys.path.insert(0, os.path.dirname(HERE))
from figures import *       # noqa: E402,F403
from line_art import Pic    # noqa: E402


# --- the signals ----------------------------------------------------------

def ok():
    p = Pic("OK")
    p.shape([
        F("M19 58 C20 52 24 48 32 48 L52 48 C56 54 57 62 57 68 L60 80 C57 85 52 88 51 92 "
          "L26 92 C26 84 20 76 19 58 Z"),
        T("M24 60 L12.5 28", 9),
        T("M35 56 L30 16", 9.5),
        T("M47 54 L51 12.8", 9.5),
        T("M54 62 C54 50 62 43 71.5 43 C80.5 43 87.5 50 87.5 59", 9.5),
        T("M50 80 C58 78 64 76 71.5 75 C80.5 75 87.5 68 87.5 59", 9.5),
        T(oval(71.5, 59, 16, 16), 9.5),
        F("M54 66 L60 70 L64 76 L54 80 Z"),
    ])
    p.line("M82 64 L92 69")
    p.line("M40.7 46 L40.4 50")
    p.save(HERE, "ok")


def thumb_fist(p, m):
    p.shape([
        F("M24 50 L32 48 L56 46 C64 48 66 52 70 53 L92 53 L92 82 L70 82 C64 84 62 90 54 90 L26 90 Z"),
        F("M33 52 C35 42 35 28 34 15 C33.5 6 45 5.5 46.5 14 C48 26 52 36 60 48 L58 60 L36 60 Z"),
    ], m)
    for x0, x1, y in ((18, 48, 51), (16, 49, 63.2), (17, 48, 75.4), (21, 45, 87.6)):
        p.shape([T("M%g %g L%g %g" % (x0, y, x1, y), 8.2)], m)


def up():
    p = Pic("Up")
    thumb_fist(p, Mat())
    p.arrow(79, 43, 79, 5)
    p.save(HERE, "up")


def down():
    p = Pic("Down")
    thumb_fist(p, turn(180, 50, 50))
    p.arrow(21, 57, 21, 95)
    p.save(HERE, "down")


def stop():
    p = Pic("Stop")
    p.shape([
        F("M12.5 52 L68.5 52 L69 72 C66 80 62 84 60 92 L26 92 C24 84 12.5 78 12.5 60 Z"),
        T("M18 58 L18 30", 11),
        T("M33 58 L33 18", 11),
        T("M48 58 L48 13.5", 11),
        T("M63 58 L63 19", 11),
        F("M62 84 C74 80 86 66 91 51 C93 44 83 41 80.5 47 C78 54 74 59 66 62 Z"),
    ])
    for x in (25.5, 40.5, 55.5):
        p.line("M%g 46 L%g 55" % (x, x))
    p.save(HERE, "stop")


def flat_hand(p, m=Mat()):
    """Flat hand, palm down, pointing left, seen a little from above."""
    p.shape([F("M84 44 L78 52 C68 60 56 66 42 66.5 C34 66 34 57 42 56.5 L66 48 Z")], m)
    p.shape([
        T("M60 16 L29 16", 7), T("M60 27 L16 27", 7),
        T("M60 38 L11 38.5", 7), T("M60 49 L18 50", 7),
        F("M54 12.5 L64 12.5 C71 14 75 18 80 19 L92 19 L92 47 L80 47 C74 48 68 50.5 60 52.5 L54 52.5 Z")], m)
    for y in (21.5, 32.5, 43.7):
        p.line("M40 %g L54 %g" % (y, y), m)
    p.fill("M68 40 L80 40 L81 47.5 L77 52.5 L68 57.5 Z", m, colour="#fff")
    p.line("M56 54.5 L67 52.6", m)


def level_off():
    p = Pic("Level off")
    flat_hand(p)
    p.arrow(5, 84, 95, 84, both=True)
    p.save(HERE, "level-off")


def something_wrong():
    p = Pic("Something is wrong")
    p.shape([
        F("M64 31 L70 31 C78 33 82 37 92 37 L92 64 C84 64 80 68 72 70.5 L64 70.5 Z"),
        T("M66 35 L43 22", 7.4),
        T("M66 45.8 L29 36.5", 7.4),
        T("M66 56.5 L27 54", 7.4),
        T("M66 67 L34 72", 7.4),
        T("M81 64 C73 77 68 81 58 85", 8.5)])
    for y in (39.6, 50.9, 61.9):
        p.line("M59 %g L63.5 %g" % (y - (50.9 - y) * .06, y))
    p.arrow(21, 6, 21, 94, bend=14.5, both=True)
    p.save(HERE, "something-wrong")


def ok_at_surface():
    p = Pic("OK at the surface", (2, 4, 98, 97))
    torso(p, 50, 62, 18, 86)
    head(p, 50, 44, 16)
    for m in (Mat(), flip(50)):
        p.shape([T("M31 86 C22 70 8 56 12 36 C16 20 30 13 43.5 13", 10)], m)
    water(p, 78)
    p.save(HERE, "ok-at-surface")


def help_at_surface():
    p = Pic("Help at the surface", (3.5, 1, 99, 99))
    torso(p, 39, 66, 22, 86, neck=6, slope=5)
    head(p, 38, 47, 15.5)
    m = move(75, 41) * turn(10)
    p.shape([
        T("M-6 6 L-18 -5", 4.5), T("M-6 -6 L-11.5 -22", 4.2), T("M-2 -8 L-2.6 -27", 4.2),
        T("M4 -8 L6.2 -26.5", 4.2), T("M8 -4 L14.5 -20", 4.2), F("M-8 -10 L8 -10 L10 0 L6 8 L5 12 L-4.2 46 L-16.4 44 L-6 8 Z")], m)
    water(p, 80)
    p.arrow(5, 27, 57, 13, bend=-9, both=True)
    p.save(HERE, "help-at-surface")


def small_fist(p, m, first=0):
    """Fist with the fingers to the right, about 30 wide."""
    p.shape([F("M-16 -10 L0 -14 L8 -14 L8 15 L-2 16 L-16 11 Z")], m)
    for i, (x0, x1) in enumerate(((-2, 12), (-2, 14), (-2, 13), (-1, 10))):
        y = -13 + i * 8.7
        if i >= first:
            p.shape([T("M%g %g L%g %g" % (x0, y, x1, y), 4.7)], m)


def ears():
    p = Pic("Ears", (4, 1.5, 96, 96))
    m = flip(50)
    draw = arm_over(p, body(67, 66, 25, 92, neck=9, waist=20), "M52 80 L14 85", "M14 85 L14 60", 11, m)
    p.shape([F(oval(47, 36, 7, 9))], m)
    head(p, 31, 31, 24, hose="M31 46 C18 47 4 52 10 72")
    draw()
    p.shape([F("M8 40 L14 34 L24 33 L24 62 L20 68 L8 68 Z"), T("M16 36 L33 36", 6.5)], m)
    for y, x in ((46.5, 25), (55, 25), (63.5, 23)):
        p.shape([T("M17 %g L%g %g" % (y, x, y), 4.5)], m)
    p.save(HERE, "ears")


def cold():
    p = Pic("Cold", (2.5, 0, 97.5, 96))
    torso(p, 50, 38, 24, 92)
    head(p, 50, 19, 14, hose=False)
    for m in (Mat(), flip(50)):
        p.shape([T("M27 54 L20 80", 11)], m)
    p.shape([T("M80 80 L36 64", 11)])
    for y in (51, 58, 65, 72):
        p.shape([T("M32 %g L20 %g" % (y, y), 3.5)])
    p.shape([T("M20 80 L64 64", 11)])
    for y in (51, 58, 65, 72):
        p.shape([T("M68 %g L80 %g" % (y, y), 3.5)])
    for m in (Mat(), flip(50)):
        p.line("M21 10 L15 17 L21 24 L15 31 L21 38", m)
        p.line("M10 17 L4.5 24 L10 31 L4.5 38", m)
    p.save(HERE, "cold")


def look():
    p = Pic("Look", (10, 0, 90, 96))
    torso(p, 50, 72, 36, 92, neck=11, slope=0)
    head(p, 50, 34, 28, mouth=False)
    p.shape([
        F("M37 64 L66 64 L70 74 C68 84 62 86 62 92 L38 92 C38 84 34 80 34 72 Z"),
        T("M41 68 L37 41", 7.5), T("M53 66 L62 41", 7.5),
        T("M36 80 L27 66", 6), T("M62 72 L66.5 63", 6.5), T("M64 80 L72 72", 6)])
    p.save(HERE, "look")


def low_on_air():
    p = Pic("Low on air", (5, 0, 95, 96))
    draw = arm_over(p, body(53, 40, 38, 92, neck=8), "M27 62 L15 81", "M15 81 L46 75", 12)
    head(p, 53, 20, 15)
    draw()
    p.line("M35 56 L28 69")
    small_fist(p, move(58, 70) * scale(1.08))
    p.save(HERE, "low-on-air")


def out_of_air():
    p = Pic("Out of air", (4.5, 0.5, 96, 96))
    draw = arm_over(p, body(58, 64, 34, 92, neck=10), "M40 80 L14 82", "M14 82 L28 58", 11)
    head(p, 58, 22, 16.5, hose=False)
    draw()
    p.line("M36 66 L26 75")
    p.shape([F("M26 52 L42 46.5 L46 60 L34 66 L22 62 Z"), T("M40 50 L66 48.7", 5), T("M40 57.8 L74 57", 5)])
    p.line("M43 53.9 L48 53.7")
    p.arrow(85, 80, 36, 80, both=True)
    p.save(HERE, "out-of-air")


def share_air():
    p = Pic("Share air", (4.5, 0.5, 98.75, 96))
    p.shape([F("M60 50 L86 50 L86 62 C92 66 92 78 92 92 L56 92 C56 78 58 70 64 66 Z")])
    side_head(p, 72, 29, 23)
    p.shape([T("M78 80 L18 86 L14 78", 11)])
    m = move(18, 72) * turn(-44)
    p.shape([F("M-4 -9 L14 -14 L14 14 L-2 9 Z"), T("M12 -12 L27 -9.5", 4), T("M12 -4 L33 -3.6", 4),
             T("M12 4 L33 4.2", 4), T("M12 12 L27 12", 4)], m)
    for y in (-8, 0, 8):
        p.line("M13 %g L17 %g" % (y, y * .95), m)
    p.arrow(41, 15, 5, 15, both=True)
    p.save(HERE, "share-air")


def come_here():
    p = Pic("Come here", (3, 0, 99.75, 96.5))
    p.shape([F("M67 46 L90 46 L90 56 C95 60 95 74 95 92 L60 92 C60 74 62 64 70 60 Z")])
    side_head(p, 78, 25, 18)
    p.shape([T("M82 72 L64 87 L28 80", 11)])
    p.shape([F("M7.5 62 L36.5 62 L38 72 L36 86 L20 86 C12 84 7.5 76 7.5 62 Z"),
             T("M10 64 C9 52 10 46 16 40", 5),
             T("M18.4 64 C17.6 48 19 41 26 34", 4.6),
             T("M26.6 64 C26 50 28 44 35 37.5", 4.6),
             T("M34.4 66 C34.6 56 37 52 43 47.5", 4.6),
             T("M33 80 C40 78 44 74 48 67", 5)])
    for x in (14.2, 22.4, 30.5):
        p.line("M%g 57 L%g 63" % (x, x))
    p.arrow(6, 26, 50, 12, bend=-8)
    p.save(HERE, "come-here")


def stay_together():
    p = Pic("Stay together")
    for m in (Mat(), flip(50)):
        p.shape([
            F("M7.5 64 L48 64 L48 74 C46 82 42 84 41 92 L19 92 C19 84 7.5 80 7.5 64 Z"),
            T("M43.75 64 L43.75 12.5", 8.5),
            T("M32.1 66 L32.1 52", 6.8),
            T("M21.5 66 L21.5 54", 6.8),
            T("M10.9 66 L10.9 58", 6.8),
        ], m)
        for x in (16.2, 26.8, 37.5):
            p.line("M%g 60 L%g 67" % (x, x), m)
    p.save(HERE, "stay-together")


if __name__ == "__main__":
    for f in (ok, ok_at_surface, help_at_surface, something_wrong, ears, up, down,
              stop, level_off, cold, look, low_on_air, out_of_air, share_air,
              come_here, stay_together):
        f()
