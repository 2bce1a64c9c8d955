#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Draws the pictures of what pressure does to the body, and the whole diver.

Needs Python 3.8 or newer and nothing else. Run it from anywhere:

    python3 resources/body/make_body.py

It writes the SVG files next to itself, or into the folder named as its
argument. How it draws: see line_art.py.
"""
import os
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
OUT = sys.argv[1] if len(sys.argv) > 1 else HERE
sys.dont_write_bytecode = True
sys.path.insert(0, os.path.dirname(HERE))
from figures import bubbles, head, pinch_nose, side_head      # noqa: E402
from line_art import F, Mat, Pic, T, flip, move, oval, rrect, scale, turn  # noqa: E402


def ear_section(p, drum, tube_open=True):
    """Cut through the ear: outer ear and canal at the left, drum, middle ear,
    inner ear, tube to the throat. Air is white, tissue is hatched."""
    x0, y0, x1, y1 = 24, 5, 96, 97
    p.shape([F(rrect(x0, y0, x1, y1, 9))])
    hatch = ""
    for c in range(x0 + y0 + 12, x1 + y1 - 8, 9):       # the lines x + y = c
        ax, bx = max(x0 + 2, c - y1 + 2), min(x1 - 2, c - y0 - 2)
        hatch += "M%g %g L%g %g " % (ax, c - ax, bx, c - bx)
    p.line(hatch, w=1.6)
    if tube_open:
        p.shape([F("M62 30 C76 24 82 32 80 46 C79 52 80 56 83 62 L90 85 L90 97 L76 97 L68 64 "
                   "C66 62 64 61 60 60 Z")])
    else:
        p.line("M76 56 C79 66 84 78 87 94", w=9, colour="#fff")
        p.line("M76 56 C79 66 84 78 87 95")
        p.shape([F("M62 30 C76 24 82 32 80 46 C79 58 76 62 60 60 Z")])
    p.shape([F(oval(87, 22, 6.5, 6.5))])
    p.line("M87 27 C84 25 84 20 87 20 C89 20 90 22 88 23", w=2.5)
    # The outer ear, with the canal in one piece.
    p.shape([F("M26 34 C32 24 26 10 16 8 C6 6 1 18 4 32 C6 40 10 42 10 50 C8 62 12 76 20 73 "
               "C26 70 26 66 25 58 L58 60 L58 32 Z")])
    p.line("M12 18 C18 20 18 28 13 34", w=3)
    p.line(drum, w=6.5)


def ear():
    p = Pic("Ear", (0, 2, 98, 100))
    ear_section(p, "M60 32 L60 60")
    p.save(OUT, "ear")


def ear_squeezed():
    p = Pic("Ear under pressure", (0, 2, 98, 100))
    ear_section(p, "M59 33 C74 38 74 54 59 59", tube_open=False)
    p.fill("M55 36 L62 38 C68 42 68 50 62 54 L55 56 Z", colour="#fff")
    p.arrow(24, 46, 64, 46, hl=12, hw=8)
    p.save(OUT, "ear-squeezed")


def ear_cleared():
    p = Pic("Ear cleared", (0, 2, 98, 100))
    ear_section(p, "M60 32 L60 60")
    # As much from within as from outside: the drum lies straight.
    p.arrow(24, 46, 55, 46, hl=12, hw=8)
    p.arrow(83, 90, 69, 40, bend=2.5, hl=12, hw=7)
    p.save(OUT, "ear-cleared")


def lungs():
    p = Pic("Lungs")
    for m in (Mat(), flip(50)):
        p.shape([F("M38 26 C28 22 10 48 6 76 C4 90 8 96 16 94 C28 91 37 88 41 78 C43 70 43 60 43 44 "
                   "C43 34 42 28 38 26 Z")], m)
    p.shape([T("M50 6 L50 40 L30 58", 6), T("M50 40 L70 58", 6)])
    p.line("M46 14 L54 14 M46 23 L54 23 M46 32 L54 32", w=2.5)
    for m in (Mat(), flip(50)):
        p.line("M28 60 L22 70 M29 60 L31 72", m, w=3)
    p.save(OUT, "lungs")


def balloon():
    p = Pic("Balloon")
    p.shape([F("M50 78 L58 92 L42 92 Z")])
    p.shape([F("M50 6 C72 6 84 24 84 42 C84 62 66 78 50 80 C34 78 16 62 16 42 C16 24 28 6 50 6 Z")])
    p.line("M30 40 C30 30 35 23 42 20")
    p.save(OUT, "balloon")


def head_pinch_nose():
    p = Pic("Pinch the nose")
    pinch_nose(p)
    p.save(OUT, "head-pinch-nose")


def mask_squeeze():
    p = Pic("Mask squeeze")
    p.shape([F("M60 66 L90 66 L90 82 C96 86 98 90 98 96 L56 96 C56 90 58 86 62 84 Z")])
    side_head(p, 74, 42, 32, mouth=False)
    p.fill(rrect(40, 28, 58, 44, 3), colour="#fff")
    p.line("M44 30 L53 35.5 L44 41", w=3.5)
    p.line("M52 69 L59 68")
    for y in (18, 36, 54):
        p.arrow(3, y + (36 - y) * -.15, 31, y + (36 - y) * .2)
    p.save(OUT, "mask-squeeze")


def fin(p, m):
    """A fin seen from the side, foot at 0, blade to the right."""
    p.shape([F("M-3 -5 L8 -5 L30 -9 L30 3 L8 5 L-3 5 Z")], m)


def diver():
    p = Pic("Diver")
    m = turn(-4, 50, 50)
    p.shape([T("M62 54 L78 60", 8)], m)
    fin(p, m * move(80, 62) * turn(22) * scale(.78))
    p.shape([T("M60 52 L78 50", 9)], m)
    fin(p, m * move(79, 50) * turn(-8) * scale(.78))
    p.shape([F(rrect(31, 24, 60, 38, 6.5)), F(rrect(26, 28, 32, 34, 1))], m)
    p.shape([F("M30 44 C32 38 40 37 48 38 L64 44 C68 48 68 56 62 59 L40 60 C32 58 28 52 30 44 Z")], m)
    p.line("M50 39 L49 60", m)
    side_head(p, 20, 46, 13, m=m)
    p.shape([T("M43 51 L37 67 L22 71", 7.5)], m)
    p.line("M43 50 L42 54", m, w=7.5, colour="#fff")
    bubbles(p, (3, 31, 2.5), (9, 20, 3.5), (4, 8, 4))
    p.save(OUT, "diver")


def diver_hovering():
    p = Pic("Diver hovering")
    p.shape([F(rrect(37, 22, 63, 52, 8))])
    for m in (Mat(), flip(50)):
        p.shape([F("M45 84 L37 84 L32 103 L47 103 Z")], m)
        p.shape([T("M45 54 L41 70 L41 84", 7.5)], m)
        p.shape([T("M37 34 L23 48 L27 60", 7)], m)
    p.shape([F("M38 28 L62 28 C66 32 66 38 65 44 L63 57 L37 57 L35 44 C34 38 34 32 38 28 Z")])
    p.line("M50 32 L50 57 M38 46 L62 46")
    head(p, 50, 13, 14, hose=False)
    bubbles(p, (73, 20, 2.5), (79, 11, 3.5), (74, 1, 4))
    p.save(OUT, "diver-hovering")


if __name__ == "__main__":
    for draw_one in (ear, ear_squeezed, ear_cleared, lungs, balloon, head_pinch_nose, mask_squeeze,
                     diver, diver_hovering):
        draw_one()
