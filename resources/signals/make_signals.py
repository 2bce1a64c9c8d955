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
    def __init__(self, title, box=None):
        """box: what the drawing covers; it is then shrunk to a margin of 4."""
        self.title = title
        self.out = []
        self.box = box
        self.k = 92 / max(box[2] - box[0], box[3] - box[1]) if box else 1
        self.s = S / self.k      # so that lines end up S wide all the same

    def shape(self, parts, m=Mat()):
        k = m.size
        for colour, extra in (("#000", 2 * self.s), ("#fff", 0)):
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

    def line(self, d, m=Mat(), w=None, colour="#000"):
        w = self.s if w is None else w
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

        def head(px, py, qx, qy):
            a = math.atan2(py - qy, px - qx)
            ux, uy = math.cos(a), math.sin(a)
            bx, by = px - ux * hl, py - uy * hl
            return ("M%.2f %.2f L%.2f %.2f L%.2f %.2f Z" % (
                px, py, bx - uy * hw, by + ux * hw, bx + uy * hw, by - ux * hw),
                px - ux * (hl - 2), py - uy * (hl - 2))

        heads = []
        h, ex, ey = head(x1, y1, cx, cy)
        heads.append(h)
        sx, sy = x0, y0
        if both:
            h, sx, sy = head(x0, y0, cx, cy)
            heads.append(h)
        # Aim the shorter shaft at the middle of the full curve.
        mx, my = (x0 + 2 * cx + x1) / 4, (y0 + 2 * cy + y1) / 4
        kx, ky = 2 * mx - (sx + ex) / 2, 2 * my - (sy + ey) / 2
        shaft = "M%.2f %.2f Q%.2f %.2f %.2f %.2f" % (sx, sy, kx, ky, ex, ey)
        if clear:
            self.line(shaft, w=self.s + 5, colour="#fff")
            for h in heads:
                self.line(h, w=5, colour="#fff")
        self.line(shaft, w=self.s + 1)
        for h in heads:
            self.out.append('<path fill="#000" stroke="#000" stroke-width="1"'
                            ' stroke-linejoin="round" d="%s"/>' % h)

    def save(self, name):
        text = ['<?xml version="1.0" encoding="UTF-8"?>',
                '<!-- SPDX-License-Identifier: GPL-3.0-or-later -->',
                '<svg xmlns="http://www.w3.org/2000/svg" version="1.1"'
                ' width="100" height="100" viewBox="0 0 100 100">',
                "<title>%s</title>" % self.title]
        if self.box:
            x0, y0, x1, y1 = self.box
            text.append('<g transform="matrix(%.4f 0 0 %.4f %.3f %.3f)">' % (
                self.k, self.k, 50 - self.k * (x0 + x1) / 2, 50 - self.k * (y0 + y1) / 2))
        text += self.out + (["</g>"] if self.box else []) + ["</svg>", ""]
        with open(os.path.join(HERE, name + ".svg"), "w", encoding="utf-8") as f:
            f.write("\n".join(text))


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
        ry = cy + 0.62 * r
        rr = max(5.4, 0.30 * r)
        if hose:
            h = r + 3
            p.line(hose if isinstance(hose, str) else "M%g %g C%g %g %g %g %g %g" % (
                cx, ry, cx - .8 * h, ry + .1 * h, cx - 1.75 * h, ry - .5 * h,
                cx - 1.3 * h, ry + .8 * h), w=S + .5)
        p.line("M%g %g L%g %g" % (cx - 1.25 * rr, ry + .95 * rr, cx + 1.25 * rr, ry + .95 * rr),
               w=.75 * rr)
        p.fill(oval(cx, ry, rr, rr))
        k = .42 * rr
        p.fill(oval(cx, ry - .1 * rr, k, k), colour="#fff")


def side_head(p, cx, cy, r):
    """Head from the side, looking left."""
    p.shape([F(oval(cx, cy, r * 0.98, r * 1.06))])
    p.line("M%g %g L%g %g" % (cx - .4 * r, cy - .22 * r, cx + r * 0.98 + 1, cy - .3 * r))
    p.shape([F(rrect(cx - 1.15 * r, cy - .52 * r, cx - .38 * r, cy + .1 * r, .2 * r))])
    er = max(1.9, r * 0.1)
    p.fill(oval(cx - .78 * r, cy - .2 * r, er, er))
    p.fill(rrect(cx - 1.25 * r, cy + .4 * r, cx - .7 * r, cy + .92 * r, .16 * r))


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


def arm_over(p, torso_part, upper, fore, w=11, m=Mat()):
    """Body with one arm: upper arm grows out of it, forearm lies on top."""
    p.shape([torso_part, T(upper, w)], m)
    return lambda: (p.shape([T(fore, w)], m), p.line(upper, m, w=w, colour="#fff"))


def water(p, y):
    """Wavy surface across the picture; hides what is under it."""
    def wave(y0):
        d, x = "M6 %g" % y0, 6
        for _ in range(4):
            d += " Q%g %g %g %g Q%g %g %g %g" % (
                x + 5.5, y0 - 8, x + 11, y0, x + 16.5, y0 + 8, x + 22, y0)
            x += 22
        return d
    p.fill(wave(y) + " L94 102 L6 102 Z", colour="#fff")
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
        T(oval(71.5, 59, 16, 16), 9.5),
        F("M54 66 L60 70 L64 76 L54 80 Z"),
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
    p.save("level-off")


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
    p.save("something-wrong")


def ok_at_surface():
    p = Pic("OK at the surface", (2, 4, 98, 97))
    torso(p, 50, 62, 18, 86)
    head(p, 50, 44, 16)
    for m in (Mat(), flip(50)):
        p.shape([T("M31 86 C22 70 8 56 12 36 C16 20 30 13 43.5 13", 10)], m)
    water(p, 78)
    p.save("ok-at-surface")


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
    p.save("help-at-surface")


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
    p.save("ears")


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
    p.save("cold")


def look():
    p = Pic("Look", (10, 0, 90, 96))
    torso(p, 50, 72, 36, 92, neck=11, slope=0)
    head(p, 50, 34, 28, mouth=False)
    p.shape([
        F("M37 64 L66 64 L70 74 C68 84 62 86 62 92 L38 92 C38 84 34 80 34 72 Z"),
        T("M41 68 L37 41", 7.5), T("M53 66 L62 41", 7.5),
        T("M36 80 L27 66", 6), T("M62 72 L66.5 63", 6.5), T("M64 80 L72 72", 6)])
    p.save("look")


def low_on_air():
    p = Pic("Low on air", (5, 0, 95, 96))
    draw = arm_over(p, body(53, 40, 38, 92, neck=8), "M27 62 L15 81", "M15 81 L46 75", 12)
    head(p, 53, 20, 15)
    draw()
    p.line("M35 56 L28 69")
    small_fist(p, move(58, 70) * scale(1.08))
    p.save("low-on-air")


def out_of_air():
    p = Pic("Out of air", (4.5, 0.5, 96, 96))
    draw = arm_over(p, body(58, 64, 34, 92, neck=10), "M40 80 L14 82", "M14 82 L28 58", 11)
    head(p, 58, 22, 16.5, hose=False)
    draw()
    p.line("M36 66 L26 75")
    p.shape([F("M26 52 L42 46.5 L46 60 L34 66 L22 62 Z"), T("M40 50 L66 48.7", 5), T("M40 57.8 L74 57", 5)])
    p.line("M43 53.9 L48 53.7")
    p.arrow(85, 80, 36, 80, both=True)
    p.save("out-of-air")


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
    p.save("share-air")


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
