"""The working of facets: flats that touch a quarter of an ellipse, the ridges they leave; proof and drawing.

The ellipse is a circle evenly stretched, and stretching keeps tangents: flats at even steps of the circle touch the
ellipse at the stretched places. `psi` is the turn on that circle, from the face down to the edge, in degrees.
"""

import math
from fractions import Fraction
from itertools import pairwise
from typing import Any

from calc import trig
from calc.declare import Values
from calc.drawing.figure import Figure
from calc.errors import Refusal

MOST = 24
SLIMMEST = 20
"""How many times wider than deep, or deeper than wide, a rounding may be."""
Spot = tuple[Any, Any]


def work(width: Any, depth: Any, flats: int | None, allowed: Any) -> Values:
    """The number of flats first, then the lines, the table, and the ridges."""
    if max(width, depth) > SLIMMEST * min(width, depth):
        say = f"one of the two is more than {SLIMMEST} times the other: that is a bevel"
        raise Refusal(say, "give sizes nearer to each other, or use slope", "depth")
    count = flats or _fewest(width, depth, allowed)
    step = Fraction(90, count + 1)
    heights = ridges(width, depth, count)
    return {
        "flats": count,
        "step": step,
        "face_line": width * (1 - trig.tan(step / 2)),
        "edge_line": depth * (1 - trig.tan(step / 2)),
        "ridge": max(heights),
        "least_ridge": min(heights),
        **_chamfer(width, depth, count),
        "rows": tuple(_flat(width, depth, count, one) for one in range(1, count + 1)),
    }


def _fewest(width: Any, depth: Any, allowed: Any) -> int:
    """The fewest flats whose tallest ridge is no taller than is allowed."""
    for count in range(1, MOST + 1):
        if max(ridges(width, depth, count)) <= allowed:
            return count
    raise Refusal(f"that wants more than {MOST} flats", "allow a taller ridge, and scrape or sand it round", "allowed")


def _chamfer(width: Any, depth: Any, count: int) -> Values:
    """The flat in the middle, which is planed first; None when there is none."""
    if count % 2 == 0:
        return dict.fromkeys(("chamfer", "chamfer_face", "chamfer_edge"))
    middle = _flat(width, depth, count, (count + 1) // 2)
    return {"chamfer": middle["angle"], "chamfer_face": middle["on_face"], "chamfer_edge": middle["on_edge"]}


def arrises(width: Any, depth: Any, count: int) -> list[Spot]:
    """Where neighbouring flats meet, from the face to the edge: how far from the ellipse's middle, along and up."""
    step = Fraction(90, count + 1)
    turns = [step * one + step / 2 for one in range(count + 1)]
    out = trig.cos(step / 2)
    return [(width * trig.sin(psi) / out, depth * trig.cos(psi) / out) for psi in turns]


def _flat(width: Any, depth: Any, count: int, one: int) -> Values:
    psi = Fraction(90, count + 1) * one
    spots = arrises(width, depth, count)
    (x, y), end = spots[one - 1], spots[one]
    return {
        "flat": one,
        "angle": trig.atan(depth * trig.tan(psi) / width),
        "on_face": width * (1 - trig.tan(psi / 2)),
        "on_edge": depth * (1 - trig.tan(45 - psi / 2)),
        "starts_in": width - x,
        "starts_down": depth - y,
        "wide": trig.sqrt((end[0] - x) ** 2 + (end[1] - y) ** 2),
    }


def ridges(width: Any, depth: Any, count: int) -> list[float]:
    """How far each arris stands off the ellipse, square to it."""
    return [off(float(width), float(depth), float(x), float(y)) for x, y in arrises(width, depth, count)]


def off(a: float, b: float, x: float, y: float) -> float:
    """How far a point outside an ellipse of half axes a and b is from it.

    The nearest point is (a² x / (t + a²), b² y / (t + b²)) for the one t above nothing that puts it on the curve;
    Newton's way comes to it from below without ever passing it, since the curve bends one way only.
    """
    t, last = 0.0, -1.0
    while t > last:
        u, v = (a * x / (t + a * a)) ** 2, (b * y / (t + b * b)) ** 2
        last, t = t, t + (u + v - 1) / (2 * u / (t + a * a) + 2 * v / (t + b * b))
    return t * math.hypot(x / (t + a * a), y / (t + b * b))


def proof(v: Values) -> dict[str, float]:
    """A line touches an ellipse when its distances from both foci multiply to the short half axis squared."""
    a, b, rows = float(v["width"]), float(v["depth"]), v["rows"]
    slants = [(float(row["wide"]), math.radians(row["angle"])) for row in rows]
    return {
        "every flat touches the quarter of the ellipse": max(abs(_touches(a, b, row)) for row in rows),
        "along the face the flats reach from line to edge": sum(wide * math.cos(turn) for wide, turn in slants)
        / float(v["face_line"])
        - 1,
        "down the edge the flats reach from face to line": sum(wide * math.sin(turn) for wide, turn in slants)
        / float(v["edge_line"])
        - 1,
    }


def _touches(a: float, b: float, row: Values) -> float:
    turn, focus = math.radians(row["angle"]), math.sqrt(abs(a * a - b * b))
    x, y = a - float(row["starts_in"]), b - float(row["starts_down"])
    away = x * math.sin(turn) + y * math.cos(turn)
    beside = focus * (math.sin(turn) if a > b else math.cos(turn))
    return (away - beside) * (away + beside) / min(a, b) ** 2 - 1


def figure(v: Values) -> Figure:
    """The corner in section, its flats, and the curve they touch; what was there before dashed."""
    a, b = float(v["width"]), float(v["depth"])
    drawing = Figure("Edge rounded by flats", "The corner of a board in section, cut to flats that touch a curve.")
    spots = [(float(x), float(y)) for x, y in arrises(v["width"], v["depth"], v["flats"])]
    room = 0.3 * max(a, b)
    block = [(-room, b), *spots, (a, -room), (-room, -room)]
    drawing.outline(block)
    drawing.hatch(block)
    for start, end in pairwise((spots[0], (a, b), spots[-1])):
        drawing.line(start, end, "ghost")
    turns = [math.radians(3 * one) for one in range(31)]
    drawing.curve([(a * math.sin(turn), b * math.cos(turn)) for turn in turns], "accent")
    drawing.dimension((0, b), (a, b), "width", v["width"], away=40)
    drawing.dimension(spots[0], (a, b), "face_line", v["face_line"], away=14)
    drawing.dimension((a, b), (a, 0), "depth", v["depth"], away=40)
    drawing.dimension((a, b), spots[-1], "edge_line", v["edge_line"], away=14)
    return drawing
