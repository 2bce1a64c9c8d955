# SPDX-License-Identifier: GPL-3.0-or-later
"""The pen that all pictures of Leadline are drawn with.

Needs Python 3.8 or newer and nothing else. The scripts make_*.py in the
folders beside this file use it.

How it draws: a picture is a stack of shapes. A shape is one or more parts
(a finger is a "tube", a palm is a filled outline). All parts of a shape are
first painted black and a bit too big, then painted white at their true size.
What stays visible of the black is an outline of even width around the union
of the parts. Later shapes hide what lies under them.

What is written: paths only, with plain attributes; neighbours of one look are
joined into one path and coordinates carry one decimal at most, because a card
draws ten pictures and a whole boat is printed at once.
"""
import math
import os
import re

S = 4.0          # width of every line, in a picture of 100 by 100


def num(v):
    t = ("%.1f" % v).rstrip("0").rstrip(".")
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


def read_path(d, m):
    """Path data (absolute M, L, C, Q, Z) as a list of (letter, points)."""
    out = []
    pending = None
    for tok in re.findall(r"[A-Za-z]|-?\d*\.?\d+(?:e-?\d+)?", d):
        if tok.isalpha():
            assert tok in "MLCQZ", tok
            out.append((tok, []))
        elif pending is None:
            pending = float(tok)
        else:
            out[-1][1].append(m(pending, float(tok)))
            pending = None
    return out


def write_path(segments):
    """Path data in the fewest letters: "M1 2L3 4" and so on."""
    return "".join(c + " ".join("%s %s" % (num(x), num(y)) for x, y in pts) for c, pts in segments)


def clockwise(segments):
    """The same closed outline, always turning the same way, so that outlines
    joined into one path never cut holes into each other."""
    pts = [p for _, ps in segments for p in ps]
    area = sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(pts, pts[1:] + pts[:1]))
    if area >= 0 or sum(c == "M" for c, _ in segments) != 1:
        return segments
    out, back = [], [ps for c, ps in segments if c != "Z"]
    letters = [c for c, _ in segments if c != "Z"]
    out.append(("M", [back[-1][-1]]))
    for i in range(len(back) - 1, 0, -1):
        step = {"L": 1, "C": 3, "Q": 2}[letters[i]]
        ps = back[i]
        start = back[i - 1][-1]
        for j in range(len(ps) - step, -1, -step):
            before = ps[j - 1] if j else start
            out.append((letters[i], ps[j:j + step - 1][::-1] + [before]))
    return out + [("Z", [])]


def put(m, d):
    """Path data moved by m."""
    return write_path(read_path(d, m))


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


def oval(cx, cy, rx, ry=None):
    ry = rx if ry is None else ry
    k = 0.5523
    return ("M%g %g C%g %g %g %g %g %g C%g %g %g %g %g %g "
            "C%g %g %g %g %g %g C%g %g %g %g %g %g Z" % (
                cx + rx, cy, cx + rx, cy + k * ry, cx + k * rx, cy + ry, cx, cy + ry,
                cx - k * rx, cy + ry, cx - rx, cy + k * ry, cx - rx, cy,
                cx - rx, cy - k * ry, cx - k * rx, cy - ry, cx, cy - ry,
                cx + k * rx, cy - ry, cx + rx, cy - k * ry, cx + rx, cy))


def arc(cx, cy, rx, ry, a0, a1):
    """Part of an oval as path data after an M or L to its start: from a0 to a1
    degrees, clockwise from the right as seen."""
    n = max(1, math.ceil(abs(a1 - a0) / 90))
    step = math.radians(a1 - a0) / n
    k = 4 / 3 * math.tan(step / 4)
    out = ""
    for i in range(n):
        a, b = math.radians(a0) + i * step, math.radians(a0) + (i + 1) * step
        out += "C%.2f %.2f %.2f %.2f %.2f %.2f " % (
            cx + rx * (math.cos(a) - k * math.sin(a)), cy + ry * (math.sin(a) + k * math.cos(a)),
            cx + rx * (math.cos(b) + k * math.sin(b)), cy + ry * (math.sin(b) - k * math.cos(b)),
            cx + rx * math.cos(b), cy + ry * math.sin(b))
    return out


def on_oval(cx, cy, rx, ry, a):
    """The point at which an arc of this oval starts at a degrees."""
    return "%.2f %.2f " % (cx + rx * math.cos(math.radians(a)), cy + ry * math.sin(math.radians(a)))


def spread(d):
    """Points along path data, close enough to tell how far it reaches."""
    last, out = None, []
    for letter, pts in read_path(d, Mat()):
        step = {"M": 1, "L": 1, "C": 3, "Q": 2, "Z": 1}[letter]
        for i in range(0, len(pts), step):
            curve = pts[i:i + step]
            if step == 1:
                out += curve
            else:
                ps = [last] + curve
                for t in (.125, .25, .375, .5, .625, .75, .875, 1):
                    n = ps
                    while len(n) > 1:
                        n = [((1 - t) * p[0] + t * q[0], (1 - t) * p[1] + t * q[1])
                             for p, q in zip(n, n[1:])]
                    out += n
            last = curve[-1]
    return out


def remembered(draw):
    """A way of drawing that is noted down and done when the picture is saved,
    because only then is known how large the whole is."""
    def note(self, *args, **named):
        self.strokes.append((draw, args, named))
    note.__doc__ = draw.__doc__
    return note


def dot(x, y):
    """A line so short that a round pen makes a disc of it."""
    return "M%g %g L%g %g" % (x - .1, y, x + .1, y)


class Pic:
    """A picture of 100 by 100. What is drawn is shrunk or enlarged until it
    fills the square but for a margin of 2, while lines stay S wide."""

    def __init__(self, title, box=None):
        """box: the part (left, top, right, bottom) that fills the square, for
        pictures that must be of one scale."""
        self.title = title
        self.box = box
        self.strokes = []
        self.marks = []              # [fill, stroke, width, path data]
        self.base = Mat()

    def fit(self):
        """Draws everything, moved and scaled so that it fills the square."""
        if self.box:
            x0, y0, x1, y1 = self.box
            k = 92 / max(x1 - x0, y1 - y0)
            self.base = move(50, 50) * scale(k) * move(-(x0 + x1) / 2, -(y0 + y1) / 2)
        for _ in range(1 if self.box else 6):
            self.marks = []
            for draw, args, named in self.strokes:
                draw(self, *args, **named)
            if self.box:
                return
            xs, ys = [], []
            for _, _, width, data in self.marks:
                for x, y in spread(data):
                    xs += [x - width / 2, x + width / 2]
                    ys += [y - width / 2, y + width / 2]
            k = (96 - S) / (max(max(xs) - min(xs), max(ys) - min(ys)) - S)
            self.base = (move(50, 50) * scale(k)
                         * move(-(min(xs) + max(xs)) / 2, -(min(ys) + max(ys)) / 2) * self.base)

    def mark(self, fill, stroke, width, data):
        last = self.marks[-1] if self.marks else None
        if last and last[:3] == [fill, stroke, width]:
            last[3] += data
        else:
            self.marks.append([fill, stroke, width, data])

    @remembered
    def shape(self, parts, m=Mat(), line=S):
        m = self.base * m
        outlines, tubes = "", {}
        for kind, d, w in parts:
            segments = read_path(d, m)
            if kind == "F":
                outlines += write_path(clockwise(segments))
            else:
                width = round(w * m.size, 1)
                tubes[width] = tubes.get(width, "") + write_path(segments)
        for colour, extra in (("#000", 2 * line), ("#fff", 0)):
            if outlines and extra:
                self.mark("none", colour, extra, outlines)
            elif outlines:
                self.mark(colour, "none", 0, outlines)
            for width, data in tubes.items():
                self.mark("none", colour, width + extra, data)

    @remembered
    def line(self, d, m=Mat(), w=None, colour="#000"):
        width = S if w is None else round(w * self.base.size, 1)
        self.mark("none", colour, width, write_path(read_path(d, self.base * m)))

    @remembered
    def fill(self, d, m=Mat(), colour="#000"):
        self.mark(colour, "none", 0, write_path(clockwise(read_path(d, self.base * m))))

    @remembered
    def arrow(self, x0, y0, x1, y1, bend=0.0, both=False, clear=False, hl=11.5, hw=8.0):
        """Arrow from 0 to 1; bend moves the middle sideways; clear cuts it
        free from what lies under it. hl, hw: length, half width of the head."""
        dx, dy = x1 - x0, y1 - y0
        n = math.hypot(dx, dy)
        cx = (x0 + x1) / 2 - dy / n * bend * 2
        cy = (y0 + y1) / 2 + dx / n * bend * 2

        def head(px, py, qx, qy):
            a = math.atan2(py - qy, px - qx)
            ux, uy = math.cos(a), math.sin(a)
            bx, by = px - ux * hl, py - uy * hl
            return ("M%.2f %.2f L%.2f %.2f L%.2f %.2f Z" % (
                px, py, bx - uy * hw, by + ux * hw, bx + uy * hw, by - ux * hw),
                px - ux * (hl - 2), py - uy * (hl - 2))

        heads, ex, ey = head(x1, y1, cx, cy)
        sx, sy = x0, y0
        if both:
            second, sx, sy = head(x0, y0, cx, cy)
            heads += " " + second
        # Aim the shorter shaft at the middle of the full curve.
        mx, my = (x0 + 2 * cx + x1) / 4, (y0 + 2 * cy + y1) / 4
        kx, ky = 2 * mx - (sx + ex) / 2, 2 * my - (sy + ey) / 2
        shaft = ("M%.2f %.2f Q%.2f %.2f %.2f %.2f" % (sx, sy, kx, ky, ex, ey) if bend
                 else "M%.2f %.2f L%.2f %.2f" % (sx, sy, ex, ey))
        pen = [(shaft, S + 1)]
        if clear:
            pen = [(shaft, S + 6), (heads, 6)] + pen
        for i, (d, w) in enumerate(pen):
            self.mark("none", "#000" if i == len(pen) - 1 else "#fff", w,
                      write_path(read_path(d, self.base)))
        self.mark("#000", "none", 0, write_path(read_path(heads, self.base)))

    def save(self, folder, name):
        self.fit()
        text = ['<?xml version="1.0" encoding="UTF-8"?>',
                '<!-- SPDX-License-Identifier: GPL-3.0-or-later -->',
                '<svg xmlns="http://www.w3.org/2000/svg" version="1.1"'
                ' width="100" height="100" viewBox="0 0 100 100">',
                "<title>%s</title>" % self.title,
                '<g stroke-linecap="round" stroke-linejoin="round">']
        for fill, stroke, width, data in self.marks:
            if stroke == "none":
                text.append('<path fill="%s" d="%s"/>' % (fill, data))
            else:
                text.append('<path fill="none" stroke="%s" stroke-width="%s" d="%s"/>'
                            % (stroke, num(width), data))
        text += ["</g>", "</svg>", ""]
        with open(os.path.join(folder, name + ".svg"), "w", encoding="utf-8") as f:
            f.write("\n".join(text))
