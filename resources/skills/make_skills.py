#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Draws the pictures of what a guest practises before and under water.

Needs Python 3.8 or newer and nothing else. Run it from anywhere:

    python3 resources/skills/make_skills.py

It writes the SVG files next to itself, or into the folder named as its
argument. How it draws: see line_art.py.
"""
import os
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
OUT = sys.argv[1] if len(sys.argv) > 1 else HERE
sys.dont_write_bytecode = True
sys.path.insert(0, os.path.dirname(HERE))
from figures import (body, bubbles, head, hose, pinch_nose, side_head,   # noqa: E402
                     torso, water)
from line_art import F, Mat, Pic, T, flip, move, oval, rrect, turn          # noqa: E402


def shoulders(p):
    """Neck and chest under a side_head at 62, 40."""
    p.shape([F("M50 64 L78 64 L78 76 C86 80 92 86 92 97 L42 97 C42 88 46 80 52 76 Z")])


def second_stage(p, x, y, m=Mat()):
    """A mouthpiece from the side, in a mouth at x, y, facing left."""
    at = m * move(x, y)
    p.shape([F("M4 -5 L-3 -5 L-3 5 L4 5 Z")], at)
    p.shape([F("M-3 -9 L-10 -9 C-16 -8 -18 -2 -17 3 C-16 9 -12 12 -3 11 Z")], at)
    p.line("M-12 -3 L-12 5", at, w=3)


def breathe_from_mouthpiece():
    p = Pic("Breathe from the mouthpiece")
    shoulders(p)
    hose(p, "M30 63 C30 86 60 74 74 90")
    side_head(p, 62, 40, 28, mouth=False)
    second_stage(p, 42, 58)
    bubbles(p, (22, 36, 3), (14, 22, 4.5), (24, 8, 5.5))
    p.arrow(-9, 58, 21, 58, both=True, hl=11, hw=8)
    p.save(OUT, "breathe-from-mouthpiece")


def clear_mask():
    p = Pic("Clear the mask")
    p.shape([F("M60 64 L86 64 L86 76 C92 80 98 86 98 98 L54 98 C54 88 56 80 62 76 Z")])
    m = turn(14, 70, 44)
    side_head(p, 72, 40, 27, mouth=False, m=m)
    p.fill("M44 40 L59 40 L59 41 C59 44 57 44 55 44 L48 44 C45 44 44 43 44 40 Z", m)
    p.line("M50 62 L57 62", m, w=3)
    p.shape([T("M80 88 L12 90 L12 34", 10), T("M13 34 C15 18 28 14 44 13", 8), T("M14 34 L36 27", 5)])
    p.line("M6.5 44 L17.5 44")
    p.arrow(38, 54, 30, 76, hl=10, hw=7)
    bubbles(p, (48, 73, 2.5), (26, 52, 2))
    p.save(OUT, "clear-mask")


def find_mouthpiece():
    p = Pic("Find the mouthpiece")
    p.shape([body(70, 46, 24, 97, neck=8, waist=19), T("M52 62 L20 46", 10),
             F("M22 39 L16 35 L10 38 L8 44 L12 50 L18 53 Z"), T("M14 38 L15 27", 4.2),
             T("M10 40 L4 30", 4.2), T("M9 46 L2 42", 4.2), T("M18 38 L24 30", 4.5)])
    p.line("M25.5 43 L20 53")
    head(p, 70, 24, 18, mouth=False)
    p.line("M65 35.5 L75 35.5")
    hose(p, "M58 52 C44 50 36 64 34 78", 4)
    p.shape([F(oval(33, 85, 9, 9))])
    p.fill(oval(33, 85, 3, 3))
    p.arrow(14, 98, 7, 60, bend=-5)
    p.save(OUT, "find-mouthpiece")


def clear_mouthpiece():
    p = Pic("Clear the mouthpiece")
    shoulders(p)
    hose(p, "M30 63 C30 86 60 74 74 90")
    side_head(p, 62, 40, 28, mouth=False)
    second_stage(p, 42, 58)
    p.arrow(20, 58, -9, 58, hl=13, hw=10)
    bubbles(p, (16, 76, 3), (6, 84, 4.5), (-5, 76, 3), (22, 88, 4), (8, 40, 4.5), (19, 32, 3),
            (-2, 30, 3.5), (10, 20, 5))
    p.save(OUT, "clear-mouthpiece")


def clear_ears():
    p = Pic("Clear the ears")
    pinch_nose(p)
    for m in (Mat(), flip(50)):
        p.line("M7 30 C3 37 3 45 7 52 M-2 25 C-8 35 -8 47 -2 57", m)
    p.save(OUT, "clear-ears")


def fill_and_empty_bcd():
    p = Pic("Fill and empty the BCD")
    hose(p, "M48 6 L48 30", 13)
    for y in (10, 18):
        p.line("M42 %g L54 %g" % (y, y), w=3)
    p.shape([F(rrect(60, 33, 69, 44, 2)), F(rrect(43, 90, 53, 100, 2))])
    p.shape([F(rrect(34, 25, 62, 92, 7))])
    p.shape([F("M78 60 L94 58 L105 64 L105 98 L92 100 L80 90 Z"), T("M94 64 C92 50 84 40 75 39", 9)]
            + [T("M82 %g L46 %g" % (y + 4, y), 6.5) for y in (57, 68, 79)])
    p.arrow(14, 26, 14, 98, both=True)
    p.save(OUT, "fill-and-empty-bcd")


def float_at_surface():
    p = Pic("Float at the surface")
    torso(p, 50, 52, 34, 84, neck=9)
    for m in (Mat(), flip(50)):
        p.shape([F("M40 46 C28 46 22 56 22 66 L22 84 L44 84 L44 62 C44 56 42 52 44 48 Z")], m)
    head(p, 50, 30, 22, mouth=False)
    p.line("M43 43 Q50 49 57 43")
    water(p, 76)
    p.save(OUT, "float-at-surface")


def share_air():
    p = Pic("Share air")
    for m in (Mat(), flip(56)):
        p.shape([F("M82 52 L98 52 L98 62 C106 66 110 74 110 92 L76 92 C76 80 76 68 82 62 Z")], m)
        side_head(p, 90, 32, 19, mouth=False, m=m)
    p.shape([T("M103 60 L104 84", 8)])
    hose(p, "M69 50 C64 66 72 74 96 75", 3.5)
    hose(p, "M43 50 C44 84 66 88 96 85", 3.5)
    for m in (Mat(), flip(56)):
        p.shape([T("M78 46 L68 46", 9)], m)
        p.line("M67 44 L67 48", m, w=3)
    p.save(OUT, "share-air")


if __name__ == "__main__":
    for draw_one in (breathe_from_mouthpiece, clear_mask, find_mouthpiece, clear_mouthpiece,
                     clear_ears, fill_and_empty_bcd, float_at_surface, share_air):
        draw_one()
