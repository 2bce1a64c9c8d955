# SPDX-License-Identifier: GPL-3.0-or-later
"""People, hands and water, as the pictures of several folders show them."""
from line_art import F, Mat, S, T, arc, dot, move, on_oval, rrect


def head(p, cx, cy, r, mouth=True, hose=True, m=Mat()):
    """Head from the front with mask and mouthpiece; hose: to which side it
    leaves (-1, 1), or its path."""
    at = m * move(cx, cy)
    k = r / 17
    # The ears are the ends of one tube behind the head.
    p.shape([T("M%g %g L%g %g" % (-.93 * r, .02 * r, .93 * r, .02 * r), 7 * k),
             T("M0 %g L0 %g" % (-.14 * r, .14 * r), 1.84 * r)], at)
    hair = -.14 * r, .92 * r + 1
    p.fill("M" + on_oval(0, hair[0], hair[1], hair[1], 191)
           + arc(0, hair[0], hair[1], hair[1], 191, 349)
           + "Q%g %g 0 %g Q%g %g %s Z" % (.7 * r, -.75 * r, -.72 * r, -.7 * r, -.75 * r,
                                           on_oval(0, hair[0], hair[1], hair[1], 191)), at)
    my = -0.14 * r
    hw, hh = max(0.58 * r, 6.5), max(0.27 * r, 3.6)
    p.line("M%g %g L%g %g" % (-r * 0.92 - 1, my - 1, r * 0.92 + 1, my - 1), at)
    p.shape([T("M%g %g L%g %g" % (-hw + hh, my, hw - hh, my), 2 * hh),
             T("M0 %g L0 %g" % (my + hh - .03 * r, my + hh + .03 * r), .28 * r)], at)
    p.line(dot(-hw * .48, my) + dot(hw * .48, my), at, w=2 * max(1.9, r * 0.11))
    if mouth:
        ry, rw, rh = .64 * r, max(5.4, .34 * r), max(3.6, .22 * r)
        if hose:
            h = r + 3
            sg = -1 if hose is True else hose
            p.line(hose if isinstance(hose, str) else "M%g %g C%g %g %g %g %g %g" % (
                0, ry, sg * .9 * h, ry, sg * 1.5 * h, ry - .1 * h, sg * 1.3 * h, ry + .9 * h), at)
        p.line("M%g %g L%g %g" % (-rw + rh, ry, rw - rh, ry), at, w=2 * rh)
        p.line("M%g %g L%g %g" % (-.45 * rw, ry, .45 * rw, ry), at, w=1.8, colour="#fff")


def side_head(p, cx, cy, r, mouth=True, m=Mat()):
    """Head from the side, looking left."""
    at = m * move(cx, cy)
    p.shape([T("M0 %g L0 %g" % (-.08 * r, .08 * r), 1.96 * r),
             T(dot(-.98 * r, .28 * r), .32 * r)], at)
    rx, ry = .98 * r + 1, 1.06 * r + 1
    p.fill("M" + on_oval(0, 0, rx, ry, 232) + arc(0, 0, rx, ry, 232, 415)
           + "C%g %g %g %g %s Z" % (.45 * r, .2 * r, .5 * r, -.6 * r, on_oval(0, 0, rx, ry, 232)), at)
    p.line("M%g %g L%g %g" % (-.4 * r, -.2 * r, r * 0.6, -.24 * r), at)
    p.shape([F(rrect(-1.15 * r, -.5 * r, -.38 * r, .1 * r, .2 * r))], at)
    p.line(dot(-.78 * r, -.2 * r), at, w=2 * max(1.9, r * 0.1))
    p.line("M%g %g Q%g %g %g %g" % (.12 * r, .02 * r, .42 * r, .1 * r, .1 * r, .34 * r), at)
    if mouth:
        p.line("M%g %g L%g %g" % (-1.12 * r, .58 * r, -.88 * r, .68 * r), at, w=.4 * r)


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


def cuff(p, x0, y0, x1, y1, w, m=Mat()):
    """Edge of the sleeve across an arm that runs from 0 to 1; it stands at 1."""
    n = ((x1 - x0) ** 2 + (y1 - y0) ** 2) ** .5
    ux, uy = (y0 - y1) / n * w / 2, (x1 - x0) / n * w / 2
    p.line("M%g %g L%g %g" % (x1 - ux, y1 - uy, x1 + ux, y1 + uy), m)


# Flat hand seen edge on, 54 long, wrist at 0, fingers to the right.
BLADE = "M-3 -6 L16 -8.5 C30 -9 46 -6 53 -2.5 C56 0 54.5 3.5 51 3.5 L34 4.5 C24 7 14 7.5 -3 6 Z"


def blade(p, m, thumb=True):
    """A flat hand edge on; its thumb lies along the palm."""
    p.shape([F(BLADE)], m)
    if thumb:
        blade_thumb(p, m)


def blade_thumb(p, m):
    p.shape([T("M17 3 L33 6.5", 5)], m)
    p.line("M10 -1.5 L17 3", m, w=7, colour="#fff")


def back_fist(p, m):
    """Fist from its back, about 32 wide and 30 high, knuckles to the right,
    thumb on top."""
    p.shape([F("M-14 -8 C-8 -13 0 -14 8 -13 C15 -12 17 -8 16 -4 C18 0 17 4 15 6 "
               "C16 11 12 15 4 14 L-14 9 Z"),
             T("M-4 -13 L6 -16", 6)], m)
    p.line("M8 -5 L15 -4.6 M8 1.5 L15.5 1.5 M7 8 L13.5 7.6", m)


def point_hand(p, m):
    """Index finger out to the left, in line with the arm; finger tip at 0,
    wrist at 48."""
    p.shape([T("M4 0 L26 0", 8),
             F("M22 -5 L38 -6 L48 -2 L48 12 L40 20 L26 20 C22 13 22 4 22 -5 Z")], m)
    p.shape([T("M%g %g L%g %g" % (x, y, x + 7, y), 5) for x, y in ((20, 9.5), (22, 18))], m)


def number_hand(p, up, m=Mat(), thumb=False, spread=0.0, folded=True):
    """Hand upright, palm to the viewer, index finger at the right. up: which
    of little, ring, middle, index finger stand; thumb: out, or across the palm."""
    at = [(18, 31), (33, 19), (48, 14), (63, 20)]
    parts = [F("M12.5 54 L68.5 54 L69 72 C66 80 61 84 60 91 L60 102 L27 102 L27 91 C25 84 12.5 78 12.5 60 Z")]
    for i, (x, y) in enumerate(at):
        lean = (i - 1.5) * spread
        parts.append(T("M%g 60 L%g %g" % (x, x + (lean if up[i] else 0), y if up[i] else 52), 11))
    if thumb:
        parts.append(F("M62 84 C74 80 86 66 91 51 C93 44 83 41 80.5 47 C78 54 74 59 66 62 Z"))
    p.shape(parts, m)
    p.line("M27 91 L60 91", m)
    for i, (x, y) in enumerate(at):
        if i < 3 and up[i] and up[i + 1] and not spread:
            p.line("M%g 46 L%g 56" % (x + 7.5, x + 7.5), m)
    p.shape([T("M%g 53 L%g 65" % (x, x), 10) for i, (x, y) in enumerate(at) if not up[i]], m)
    if not thumb:
        p.shape([T("M65 81 L%g 71" % (50 if up[2] else 40), 9.5)], m)


def front_hand(p, m=Mat()):
    """A flat hand, palm down, its fingers towards the viewer; about 74 wide and
    78 high, knuckles at 0, thumb left. Nails tell the back of the hand."""
    p.shape([F("M-12 -44 L12 -44 L13 -26 C17 -20 26 -14 28 -4 L28 5 L-28 5 L-28 -4 "
               "C-26 -14 -17 -20 -13 -26 Z"),
             T("M-21.5 0 L-23.5 19", 12), T("M-7.3 0 L-8 27", 12), T("M7.3 0 L8 27", 12),
             T("M21.5 0 L23.5 18", 12),
             F("M-14 -24 C-26 -22 -41 -12 -43 2 C-43 10 -34 11 -32 5 C-31 -1 -26 -5 -22 -8 Z")], m)
    p.line("M-14.5 8 L-15.3 17 M0 8 L0 20 M14.5 8 L15.3 17 M-13 -29 L13 -29", m)
    p.line("".join("M%g %g L%g %g L%g %g L%g %g" % (
        x - 2.3, y + 3, x - 2.3, y - 2, x + 2.3, y - 2, x + 2.3, y + 3)
        for x, y in ((-23.3, 20), (-8, 28), (8, 28), (23.3, 19))), m, w=2)


def bubbles(p, *at):
    """Air bubbles: (x, y, radius) each."""
    p.shape([T(dot(x, y), 2 * r) for x, y, r in at], line=3)


def hose(p, d, w=5, m=Mat()):
    """A hose along d, w wide inside."""
    p.line(d, m, w=w + 2 * S)
    p.line(d, m, w=w, colour="#fff")


def pinch_nose(p):
    """Head from the front; thumb and index finger pinch the nose."""
    p.shape([body(50, 78, 40, 98, neck=13, slope=0)])
    head(p, 50, 40, 34, mouth=False)
    p.shape([F("M34 74 L64 70 L72 80 C72 88 76 92 82 98 L54 98 C46 96 36 92 34 82 Z"),
             T("M39 76 C36 66 38 56 43 51", 7.5), T("M66 76 C68 64 64 56 57 51", 7.5)])
    p.shape([T("M%g %g L%g %g" % (x, y, x + 1, y + 9), 4) for x, y in ((43, 76), (51, 77), (59, 76))])


def water(p, y):
    """Wavy surface across the picture; hides what is under it."""
    def wave(y0):
        d, x = "M6 %g" % y0, 6
        for _ in range(4):
            d += " Q%g %g %g %g Q%g %g %g %g" % (
                x + 5.5, y0 - 8, x + 11, y0, x + 16.5, y0 + 8, x + 22, y0)
            x += 22
        return d
    p.fill(wave(y) + " L94 %g L6 %g Z" % (y + 17, y + 17), colour="#fff")
    p.line(wave(y))
    p.line(wave(y + 13))
