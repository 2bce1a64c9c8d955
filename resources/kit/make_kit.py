#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Draws the pictures of the equipment a guest is given.

Needs Python 3.8 or newer and nothing else. Run it from anywhere:

    python3 resources/kit/make_kit.py

It writes the SVG files next to itself, or into the folder named as its
argument. How it draws: see line_art.py.
"""
import os
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
OUT = sys.argv[1] if len(sys.argv) > 1 else HERE
sys.dont_write_bytecode = True
sys.path.insert(0, os.path.dirname(HERE))
from line_art import F, Mat, Pic, arc, flip, move, on_oval, oval, rrect, turn  # noqa: E402


def mask():
    p = Pic("Mask")
    for m in (Mat(), flip(50)):
        p.shape([F("M14 34 L4 30 L2 58 L14 54 Z")], m)
    p.shape([F("M22 22 L78 22 C88 22 92 30 92 44 C92 58 86 66 76 66 C66 66 64 62 62 66 "
               "C66 74 62 80 50 80 C38 80 34 74 38 66 C36 62 34 66 24 66 C14 66 8 58 8 44 "
               "C8 30 12 22 22 22 Z")])
    for m in (Mat(), flip(50)):
        p.shape([F("M25 31 L40 31 C44 31 45 34 44 38 L41 50 C40 55 36 57 30 57 C21 57 17 51 17 43 "
                   "C17 35 20 31 25 31 Z")], m)
    p.line("M24 46 L32 38 M58 46 L66 38", w=3)
    p.line("M45 72 L55 72", w=3)
    p.save(OUT, "mask")


def mouthpiece():
    p = Pic("Mouthpiece")
    hose = "M58 40 C86 36 92 52 92 66 L92 88"
    p.line(hose, w=13)
    p.line(hose, w=5, colour="#fff")
    p.shape([F(rrect(62, 30, 76, 50, 3))])
    p.shape([F("M20 56 L60 56 L74 76 C74 84 62 82 56 76 L24 76 C18 82 6 84 6 76 Z")])
    p.shape([F(oval(40, 42, 28, 27))])
    p.shape([F(oval(40, 42, 14, 13.5))])
    p.line("M35 42 L45 42", w=3)
    p.save(OUT, "mouthpiece")


def bcd():
    p = Pic("BCD")
    p.shape([F(rrect(38, 3, 62, 40, 8))])
    p.shape([F("M26 16 C20 16 18 22 20 32 C22 42 20 46 12 54 L12 86 C12 94 20 96 28 96 L72 96 "
               "C80 96 88 94 88 86 L88 54 C80 46 78 42 80 32 C82 22 80 16 74 16 L64 16 "
               "C62 26 58 38 50 38 C42 38 38 26 36 16 Z")])
    p.line("M50 38 L50 96")
    for m in (Mat(), flip(50)):
        p.shape([F(rrect(20, 66, 40, 86, 4))], m)
        p.line("M20 73 L40 73", m, w=3)
    p.shape([F(rrect(40, 48, 60, 57, 3))])
    hose = "M73 16 C84 20 92 36 90 56"
    p.line(hose, w=13)
    p.line(hose, w=5, colour="#fff")
    p.shape([F(rrect(83, 54, 97, 72, 4))])
    p.fill(oval(90, 63, 3, 3))
    p.save(OUT, "bcd")


def cylinder():
    p = Pic("Cylinder")
    p.shape([F(rrect(45, 6, 55, 26, 2)), F(rrect(40, 6, 60, 16, 3))])
    p.shape([F(rrect(61, 4, 74, 18, 4))])
    p.shape([F("M45 22 L55 22 C66 24 72 30 72 40 L72 92 L28 92 L28 40 C28 30 34 24 45 22 Z")])
    p.shape([F("M28 80 L72 80 L74 96 L26 96 Z")])
    p.line("M28 48 L72 48")
    p.line("M38 57 L38 70", w=3)
    p.save(OUT, "cylinder")


def gauge():
    p = Pic("Pressure gauge")
    p.shape([F(rrect(43, 72, 57, 98, 3))])
    p.shape([F(oval(50, 42, 37, 37))])
    p.line("M" + on_oval(50, 42, 27, 27, 150) + arc(50, 42, 27, 27, 150, 390), w=3)
    p.line("M" + on_oval(50, 42, 24.5, 24.5, 150) + arc(50, 42, 24.5, 24.5, 150, 196), w=8)
    for a in (210, 240, 270, 300, 330, 360, 390):
        p.line("M" + on_oval(50, 42, 27, 27, a) + "L" + on_oval(50, 42, 21, 21, a), w=3)
    p.line("M50 42 L64 28")
    p.fill(oval(50, 42, 5, 5))
    p.line("M43 84 L57 84", w=3)
    p.save(OUT, "gauge")


def fins():
    p = Pic("Fins")
    for m in (turn(6, 27, 50), flip(50) * turn(6, 27, 50)):
        p.shape([F("M16 42 L12 88 C12 94 16 96 22 94 L32 94 C38 96 42 94 42 88 L38 42 Z")], m)
        p.line("M22 52 L21 86 M32 52 L33 86", m, w=3)
        p.shape([F("M18 22 C18 6 36 6 36 22 L39 44 C34 50 20 50 15 44 Z")], m)
        p.shape([F("M22 24 C22 12 32 12 32 24 C32 28 22 28 22 24 Z")], m, line=3)
    p.save(OUT, "fins")


def suit():
    p = Pic("Suit")
    p.shape([F("M38 5 L62 5 L64 11 C72 13 76 17 78 24 L90 54 L80 58 L68 38 L67 54 L72 95 L57 95 "
               "L50 62 L43 95 L28 95 L33 54 L32 38 L20 58 L10 54 L22 24 C24 17 28 13 36 11 Z")])
    p.line("M40 12 C44 17 56 17 60 12")
    p.line("M50 17 L50 40", w=3)
    p.line("M12.5 48 L23 52 M87.5 48 L77 52 M29 87 L44 87 M71 87 L56 87", w=3)
    p.save(OUT, "suit")


def weights():
    p = Pic("Weights")
    p.shape([F("M8 40 C30 46 70 46 92 40 L92 60 C70 66 30 66 8 60 Z")])
    p.shape([F("M8 40 C-2 30 20 24 50 24 C80 24 102 30 92 40 C70 32 30 32 8 40 Z")])
    for x in (5, 77):
        p.shape([F(rrect(x, 32, x + 18, 72, 5))])
        p.line("M%g 44 L%g 44" % (x + 6, x + 12), w=3)
    p.shape([F(rrect(40, 38, 60, 68, 3))])
    p.line("M50 47 L50 59")
    p.save(OUT, "weights")


def boots():
    p = Pic("Boots")
    for m in (move(16, -8), move(-4, 8)):
        p.shape([F("M28 12 L54 12 L55 46 C60 54 84 54 86 70 L86 80 L24 80 L24 66 C28 50 27 30 28 12 Z")], m)
        p.line("M24 70 L86 70", m)
        p.line("M41 22 L41 48", m, w=3)
    p.save(OUT, "boots")


if __name__ == "__main__":
    for draw_one in (mask, mouthpiece, bcd, cylinder, gauge, fins, suit, weights, boots):
        draw_one()
