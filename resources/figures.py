# SPDX-License-Identifier: GPL-3.0-or-later
"""People, hands and water, as the pictures of several folders show them."""
from line_art import F, Mat, S, T, flip, move, oval, rrect, scale, turn


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


