#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Draws the hand signal pictures of this folder.

Needs Python 3.8 or newer and nothing else. Run it from anywhere:

    python3 resources/signals/make_signals.py

It writes the SVG files next to itself.

How it draws: a picture is a stack of shapes. A shape is one or more parts
(a finger is a "tube", a palm is a filled outline). All parts of a shape are
first painted black and a bit too big, then painted white at their true size.
What stays visible of the black is an outline of even width around the union
of the parts. Later shapes hide what lies under them.
"""
import math
import os
import re

S = 4.0          # width of every line, in a picture of 100 by 100
HERE = os.path.dirname(os.path.abspath(__file__))


def num(v):
    t = "%.2f" % v
    t = t.rstrip("0").rstrip(".")
    return "0" if t in ("-0", "") else t


class Mat:
    """Affine map; moves path data, so that line widths stay the same."""

    def __init__(self, a=1, b=0, c=0, d=1, e=0, f=0):
        self.v = (a, b, c, d, e, f)

    def __call__(self, x, y):
        a, b, c, d, e, f = self.v
        return a * x + c * y + e, b * x + d * y + f

    def __mul__(self, o):
        a, b, c, d, e, f = self.v
        g, h, i, j, k, l = o.v
        return Mat(a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j,
                   a * k + c * l + e, b * k + d * l + f)

    @property
    def size(self):
        a, b, c, d, _, _ = self.v
        return math.sqrt(abs(a * d - b * c))

    def path(self, d):
        out, pend = [], None
        for tok in re.findall(r"[A-Za-z]|-?\d*\.?\d+", d):
            if tok.isalpha():
                assert tok in "MLCQZ", tok
                out.append(tok)
            elif pend is None:
                pend = float(tok)
            else:
                x, y = self(pend, float(tok))
                out.append("%s %s" % (num(x), num(y)))
                pend = None
        return " ".join(out)


def move(x, y):
    return Mat(e=x, f=y)


def scale(x, y=None):
    return Mat(a=x, d=x if y is None else y)


def turn(deg, cx=0, cy=0):
    r = math.radians(deg)
    m = Mat(math.cos(r), math.sin(r), -math.sin(r), math.cos(r))
    return move(cx, cy) * m * move(-cx, -cy)


def flip(cx=50):
    return Mat(a=-1, e=2 * cx)


def T(d, w):
    """A tube: the line d, w wide inside, round at both ends."""
    return ("T", d, w)


def F(d):
    """A filled outline."""
    return ("F", d, 0)


def rrect(x0, y0, x1, y1, r):
    k = r * 0.45
    return ("M%g %g L%g %g C%g %g %g %g %g %g L%g %g C%g %g %g %g %g %g "
            "L%g %g C%g %g %g %g %g %g L%g %g C%g %g %g %g %g %g Z" % (
                x0 + r, y0, x1 - r, y0, x1 - k, y0, x1, y0 + k, x1, y0 + r,
                x1, y1 - r, x1, y1 - k, x1 - k, y1, x1 - r, y1,
                x0 + r, y1, x0 + k, y1, x0, y1 - k, x0, y1 - r,
                x0, y0 + r, x0, y0 + k, x0 + k, y0, x0 + r, y0))


def oval(cx, cy, rx, ry):
    k = 0.5523
    return ("M%g %g C%g %g %g %g %g %g C%g %g %g %g %g %g "
            "C%g %g %g %g %g %g C%g %g %g %g %g %g Z" % (
                cx + rx, cy, cx + rx, cy + k * ry, cx + k * rx, cy + ry, cx, cy + ry,
                cx - k * rx, cy + ry, cx - rx, cy + k * ry, cx - rx, cy,
                cx - rx, cy - k * ry, cx - k * rx, cy - ry, cx, cy - ry,
                cx + k * rx, cy - ry, cx + rx, cy - k * ry, cx + rx, cy))


class Pic:
    def __init__(self, title):
        self.title = title
        self.out = []

    def shape(self, parts, m=Mat()):
        k = m.size
        for colour, extra in (("#000", 2 * S), ("#fff", 0)):
            self.out.append('<g fill="%s" stroke="%s" stroke-linecap="round"'
                            ' stroke-linejoin="round">' % (colour, colour))
            for kind, d, w in parts:
                d = m.path(d)
                if kind == "T":
                    self.out.append('<path fill="none" stroke-width="%s" d="%s"/>'
                                    % (num(w * k + extra), d))
                elif extra:
                    self.out.append('<path stroke-width="%s" d="%s"/>' % (num(extra), d))
                else:
                    self.out.append('<path stroke="none" d="%s"/>' % d)
            self.out.append("</g>")

    def line(self, d, m=Mat(), w=S, colour="#000"):
        self.out.append('<path fill="none" stroke="%s" stroke-width="%s"'
                        ' stroke-linecap="round" stroke-linejoin="round" d="%s"/>'
                        % (colour, num(w), m.path(d)))

    def fill(self, d, m=Mat(), colour="#000"):
        self.out.append('<path fill="%s" stroke="none" d="%s"/>' % (colour, m.path(d)))

    def arrow(self, x0, y0, x1, y1, bend=0.0, both=False, clear=False):
        """Arrow from 0 to 1; bend moves the middle sideways."""
        dx, dy = x1 - x0, y1 - y0
        n = math.hypot(dx, dy)
        cx = (x0 + x1) / 2 - dy / n * bend * 2
        cy = (y0 + y1) / 2 + dx / n * bend * 2
        hl, hw = 11.5, 8.0

        def head(p, cx, cy, r, mouth=True, hose=True):
    """Head from the front with mask and mouthpiece."""
    p.shape([F(oval(cx, cy, r * 0.92, r * 1.06))])
    my = cy - 0.2 * r
    hw, hh = max(0.60 * r, 6.5), max(0.30 * r, 3.6)
    p.line("M%g %g L%g %g" % (cx - r * 0.92 - 1, my - 1, cx + r * 0.92 + 1, my - 1))
    p.shape([F(rrect(cx - hw, my - hh, cx + hw, my + hh, hh * 0.75))])
    er = max(1.9, r * 0.1)
    for sgn in (-1, 1):
        p.fill(oval(cx + sgn * hw * 0.5, my, er, er))
    if mouth:
        ry = cy + 0.68 * r
        rr = max(5.2, 0.27 * r)
        if hose:
            h = r + 3
            p.line("M%g %g C%g %g %g %g %g %g" % (
                cx, ry, cx - .8 * h, ry + .1 * h, cx - 1.75 * h, ry - .5 * h,
                cx - 1.3 * h, ry + .8 * h), w=S + .5)
        p.fill(oval(cx, ry, rr * 1.3, rr))
        if rr > 5.5:
            p.fill(oval(cx, ry, rr * 1.3 - 3.6, rr - 3.6), colour="#fff")


# --- the diver ------------------------------------------------------------

def head(p, cx, cy, r, mouth=True, hose=True):
    """Head from the front with mask and mouthpiece."""
    p.shape([F(oval(cx, cy, r * 0.92, r * 1.06))])
    my = cy - 0.2 * r
    hw, hh = max(0.60 * r, 6.5), max(0.30 * r, 3.6)
    p.line("M%g %g L%g %g" % (cx - r * 0.92 - 1, my - 1, cx + r * 0.92 + 1, my - 1))
    p.shape([F(rrect(cx - hw, my - hh, cx + hw, my + hh, hh * 0.75))])
    er = max(1.9, r * 0.1)
    for sgn in (-1, 1):
        p.fill(oval(cx + sgn * hw * 0.5, my, er, er))
    if mouth:
        ry = cy + 0.68 * r
        rr = max(5.2, 0.27 * r)
        if hose:
            p.line("M%g %g C%g %g %g %g %g %g" % (
                cx, ry, cx - .9 * r, ry - .1 * r, cx - 1.35 * r, ry + .2 * r,
                cx - 1.2 * r, ry + 1.05 * r), w=S + .5)
        p.fill(oval(cx, ry, rr * 1.25, rr))
        if rr > 5.5:
            p.fill(oval(cx, ry, rr * 1.25 - 3.6, rr - 3.6), colour="#fff")


def side_head(p, cx, cy, r):
    """Head from the side, looking left."""
    p.shape([F(oval(cx, cy, r * 0.98, r * 1.06))])
    p.line("M%g %g L%g %g" % (cx - .4 * r, cy - .22 * r, cx + r * 0.98 + 1, cy - .3 * r))
    p.shape([F(rrect(cx - 1.15 * r, cy - .52 * r, cx - .38 * r, cy + .1 * r, .2 * r))])
    er = max(1.9, r * 0.1)
    p.fill(oval(cx - .78 * r, cy - .2 * r, er, er))
    p.fill(rrect(cx - 1.25 * r, cy + .4 * r, cx - .7 * r, cy + .92 * r, .16 * r))
    p.line("M%g %g C%g %g %g %g %g %g" % (
        cx - .95 * r, cy + .7 * r, cx - .7 * r, cy + 1.3 * r, cx - .1 * r, cy + .8 * r,
        cx + .25 * r, cy + 1.1 * r), w=S + .5)


def body(cx, top, half, bottom, neck=7, slope=7, waist=None):
    """Neck, shoulders and chest, as one part."""
    w = half if waist is None else waist
    return F(
        "M%g %g L%g %g C%g %g %g %g %g %g C%g %g %g %g %g %g L%g %g "
        "C%g %g %g %g %g %g C%g %g %g %g %g %g L%g %g Z" % (
            cx - neck, top - 8, cx - neck, top,
            cx - neck - 4, top + slope - 1, cx - half, top + slope - 3, cx - half, top + slope + 10,
            cx - half, top + slope + 14, cx - w, top + slope + 14, cx - w, bottom,
            cx + half, bottom,
            cx + half, bottom, cx + half, top + slope + 14, cx + half, top + slope + 10,
            cx + half, top + slope - 3, cx + neck + 4, top + slope - 1, cx + neck, top,
            cx + neck, top - 8))


def torso(p, *a, **k):
    p.shape([body(*a, **k)])


def arm_over(p, torso_part, upper, fore, w=11):
    """Body with one arm: upper arm grows out of it, forearm lies on top."""
    p.shape([torso_part, T(upper, w)])
    return lambda: (p.shape([T(fore, w)]), p.line(upper, w=w, colour="#fff"))


def water(p, y):
    """Wavy surface across the picture; hides what is under it."""
    def wave(y0):
        d, x = "M6 %g" % y0, 6
        for _ in range(4):
            d += " Q%g %g %g %g Q%g %g %g %g" % (
                x + 5.5, y0 - 8, x + 11, y0, x + 16.5, y0 + 8, x + 22, y0)
            x += 22
        return d
    p.fill(wave(y) + " L94 100 L6 100 Z", colour="#fff")
    p.line(wave(y))
    p.line(wave(y + 13))


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
        F("M56 62 L59 62 C60 66 62 69 65 70 L60 80 L54 76 Z"),
    ])
    p.line("M82 64 L92 69")
    p.line("M40.7 46 L40.4 50")
    p.save("ok")


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
    p.save("up")


def down():
    p = Pic("Down")
    thumb_fist(p, turn(180, 50, 50))
    p.arrow(21, 57, 21, 95)
    p.save("down")


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
    p.save("stop")


def flat_hand(p, m=Mat()):
    """Flat hand, palm down, pointing left, seen a little from above."""
    p.shape([T("M68 54 C60 61 52 65 40 63", 9),
             F("M60 46 L80 46 L76 56 L66 62 L58 64 Z")], m)
    p.shape([
        T("M60 16 L29 16", 7), T("M60 27 L16 27", 7),
        T("M60 38 L11 38.5", 7), T("M60 49 L18 50", 7),
        F("M54 12.5 L64 12.5 C71 14 75 18 80 19 L92 19 L92 47 L80 47 C74 48 70 52.5 62 52.5 L54 52.5 Z")], m)
    for y in (21.5, 32.5, 43.7):
        p.line("M40 %g L54 %g" % (y, y), m)
    p.fill("M64 50 L79 45 L79 48 L66 56 Z", m, colour="#fff")


def level_off():
    p = Pic("Level off")
    flat_hand(p)
    p.arrow(5, 84, 95, 84, both=True)
    p.save("level-off")


def something_wrong():
    p = Pic("Something is wrong")
    m = turn(-12, 50, 64) * move(3, 31) * scale(0.93, 0.62)
    p.shape([
        F("M30 50 L68 50 L70 70 C67 78 64 82 63 98 L37 98 C36 84 29 74 28 60 Z"),
        T("M33 58 L14 30", 12),
        T("M43 56 L34 14", 12),
        T("M54 56 L56 12", 12),
        T("M64 58 L77 20", 12),
        T("M64 80 C76 76 84 70 92 58", 12),
    ], m)
    p.arrow(6, 40, 94, 40, bend=-30, both=True)
    p.save("something-wrong")


def ok_at_surface():
    p = Pic("OK at the surface")
    torso(p, 50, 62, 18, 96)
    head(p, 50, 44, 16)
    for m in (Mat(), flip(50)):
        p.shape([T("M34 92 C24 72 8 56 12 36 C16 20 30 13 43.5 13", 10)], m)
    water(p, 80)
    p.save("ok-at-surface")


def help_at_surface():
    p = Pic("Help at the surface")
    torso(p, 42, 66, 20, 96)
    head(p, 40, 48, 17)
    m = move(77, 40) * turn(12)
    p.shape([
        T("M-6 2 L-13.5 -12", 5), T("M-3.5 -6 L-5.5 -25", 5), T("M4 -6 L4.5 -26", 5),
        T("M8 -4 L14 -20", 5), F("M-8 -10 L8 -10 L10 0 L6 8 L5 12 L-10 64 L-24 60 L-6 8 Z")], m)
    water(p, 80)
    p.arrow(5, 26, 59, 10, bend=-8, both=True)
    p.save("help-at-surface")


def small_fist(p, m, first=0):
    """Fist with the fingers to the right, about 30 wide."""
    p.shape([F("M-16 -10 L0 -14 L8 -14 L8 15 L-2 16 L-16 11 Z")], m)
    for i, (x0, x1) in enumerate(((-2, 12), (-2, 14), (-2, 13), (-1, 10))):
        y = -13 + i * 8.7
        if i >= first:
            p.shape([T("M%g %g L%g %g" % (x0, y, x1, y), 4.7)], m)


def ears():
    p = Pic("Ears")
    draw = arm_over(p, body(67, 66, 26, 92, neck=9, waist=20), "M52 82 L14 86", "M14 86 L14 60", 10)
    p.shape([F(oval(47, 36, 7, 9))])
    head(p, 69, 31, 24)
    draw()
    p.shape([F("M8 40 L14 34 L24 33 L24 62 L20 68 L8 68 Z"), T("M16 36 L33 36", 6.5)])
    for y, x in ((46.5, 25), (55, 25), (63.5, 22)):
        p.shape([T("M17 %g L%g %g" % (y, x, y), 4.5)])
    p.save("ears")


def cold():
    p = Pic("Cold")
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
    p.save("cold")


def look():
    p = Pic("Look")
    torso(p, 50, 76, 36, 92, neck=10, slope=4)
    head(p, 50, 34, 28, mouth=False)
    p.shape([
        F("M37 64 L66 64 L70 74 C68 84 62 86 62 92 L38 92 C38 84 34 80 34 72 Z"),
        T("M41 68 L37 41", 7.5), T("M53 66 L62 41", 7.5),
        T("M36 80 L27 66", 6), T("M62 70 L66 64", 7)])
    p.save("look")


def low_on_air():
    p = Pic("Low on air")
    draw = arm_over(p, body(52, 38, 32, 92, neck=8, waist=20), "M30 58 L14 84", "M14 84 L42 73")
    p.line("M72 66 L72 92")
    head(p, 52, 20, 15)
    draw()
    small_fist(p, move(54, 70))
    p.save("low-on-air")


def out_of_air():
    p = Pic("Out of air")
    draw = arm_over(p, body(58, 60, 34, 92, neck=10, waist=26), "M38 76 L12 74", "M12 74 L28 55", 10)
    head(p, 58, 20, 16, hose=False)
    draw()
    p.shape([F("M26 48 L44 45 L44 57 L32 62 L24 58 Z"), T("M40 47.2 L66 45.7", 5), T("M40 55 L73 54", 5)])
    p.arrow(92, 80, 40, 80, both=True, clear=True)
    p.save("out-of-air")


def share_air():
    p = Pic("Share air")
    p.shape([F("M60 50 L86 50 L86 62 C92 66 92 78 92 92 L56 92 C56 78 58 70 64 66 Z")])
    side_head(p, 72, 29, 23)
    p.shape([T("M78 80 L22 86 L14 62", 11)])
    p.shape([T("M22 60 L32 55", 4)])
    for d in ("M18 46 L32 41", "M16 52 L36 47"):
        p.shape([T(d, 4.5)])
    p.arrow(40, 18, 5, 18, both=True)
    p.save("share-air")


def come_here():
    p = Pic("Come here")
    p.shape([F("M64 46 L88 46 L88 58 C94 62 94 74 94 92 L58 92 C58 74 60 66 68 62 Z")])
    side_head(p, 75, 26, 20)
    p.shape([T("M80 72 L58 87 L36 82", 11)])
    for dx, dy in ((15, -5), (10, -3), (5, -1.5), (0, 0)):
        p.shape([T("M22 76 C8 72 8 52 20 50", 5)], move(dx, dy))
    p.arrow(8, 30, 46, 26, bend=-8)
    p.save("come-here")


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
    p.save("stay-together")


if __name__ == "__main__":
    for f in (ok, ok_at_surface, help_at_surface, something_wrong, ears, up, down,
              stop, level_off, cold, look, low_on_air, out_of_air, share_air,
              come_here, stay_together):
        f()
