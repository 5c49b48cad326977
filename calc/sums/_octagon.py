"""The working of octagon: eight sides on a square, sixteen on those, and how far the old rules miss."""

import cmath
import math
from fractions import Fraction
from typing import Any

from calc import trig
from calc.declare import Values
from calc.drawing.figure import Figure, Point

HALF, QUARTER = Fraction(45, 2), Fraction(45, 4)
"""Half of what one side turns, in degrees, of eight sides and of sixteen."""
RULES = (("5 : 7 : 5", 5, 7), ("7 : 10 : 7", 7, 10), ("12 : 17 : 12", 12, 17))


def work(width: Any, side: Any, corners: Any, small: Any) -> Values:
    """The width first, from whichever size is given; every gauge line is a share of it."""
    if width is None:
        width = corners * trig.cos(HALF) if side is None else side / trig.tan(HALF)
    edge = width * trig.tan(HALF) if side is None else side
    gauge = (width - edge) / 2
    return {
        "width": width,
        "side": edge,
        "corners": width / trig.cos(HALF) if corners is None else corners,
        "gauge": gauge,
        "off_arris": gauge * trig.sin(45),
        "gauge_small": None if small is None else gauge * small / width,
        **_sixteen(width, edge),
        "rules": tuple(_rule(width, gauge, *rule) for rule in RULES),
    }


def _sixteen(width: Any, side: Any) -> Values:
    edge = width * trig.tan(QUARTER)
    gauge = (side - edge) / 2
    return {
        "gauge_sixteen": gauge,
        "side_sixteen": edge,
        "off_eight": gauge * trig.sin(HALF),
        "proud": width / trig.cos(QUARTER) / 2 - width / 2,
    }


def _rule(width: Any, gauge: Any, parts: str, outer: int, inner: int) -> Values:
    """The gauge line by whole parts of the width; how far it is off; how much wider the four old sides stay."""
    told = width * Fraction(outer, 2 * outer + inner)
    return {"parts": parts, "by_rule": told, "off": told - gauge, "uneven": width - (2 + math.sqrt(2)) * told}


def proof(v: Values) -> dict[str, float]:
    """The corner turned by an eighth falls on the next; both shapes have the area of their sides times half a width."""
    width, side, gauge, small = (float(v[name]) for name in ("width", "side", "gauge", "gauge_sixteen"))
    first, after = complex(width, side) / 2, complex(side, width) / 2
    eight, sixteen = 2 * width * side, 4 * width * float(v["side_sixteen"])
    return {
        "an eighth of a turn takes each corner to the next": abs(first * cmath.rect(1, math.pi / 4) - after) / width,
        "opposite corners are twice as far apart as one is from the middle": 2 * abs(first) / float(v["corners"]) - 1,
        "the square less four corners is the octagon": (width**2 - 2 * gauge**2) / eight - 1,
        "the octagon less eight corners is the shape of sixteen": (eight - 2 * math.sqrt(2) * small**2) / sixteen - 1,
    }


def figure(v: Values) -> Figure:
    """The end of the stick: the square it was, the eight sides, the sixteen within them, and two gauge lines."""
    half, side, gauge = float(v["width"]) / 2, float(v["side"]) / 2, float(v["gauge"])
    drawing = Figure(
        "Octagon on the end of a square stick",
        "A square with its four corners marked off by gauge lines, leaving eight equal sides; sixteen drawn within.",
    )
    drawing.outline([(-half, -half), (half, -half), (half, half), (-half, half)], "ghost")
    eight = _shape(half, side, 8)
    drawing.outline(eight)
    drawing.hatch(eight)
    drawing.outline(_shape(half, float(v["side_sixteen"]) / 2, 16), "hidden")
    for x in (-side, side):
        drawing.line((x, -half), (x, half), "thin")
    drawing.dimension((-half, -half), (half, -half), "width", v["width"], away=-20)
    drawing.dimension((-half, half), (-half + gauge, half), "gauge", v["gauge"], away=14)
    drawing.dimension((half, -side), (half, side), "side", v["side"], away=-18)
    drawing.dimension(eight[7], eight[3], "corners", v["corners"], away=0.1)
    return drawing


def _shape(half: float, side: float, count: int) -> list[Point]:
    """The corners anticlockwise, from the lower end of the side at the right."""
    turns = [cmath.rect(1, 2 * math.pi * one / count) for one in range(count)]
    return [((complex(half, side) * turn).real, (complex(half, side) * turn).imag) for turn in turns]
