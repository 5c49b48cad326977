"""The nail in the two pieces, cut through along the nail, to scale."""

import math
from collections.abc import Callable
from typing import Any

from calc.declare import Values
from calc.drawing.figure import Figure

Spot = tuple[float, float]
THIN = 1.5
"""Millimetres: how thick a nail is drawn whose thickness is not known."""


def figure(v: Values) -> Figure:
    """The held piece above, the second below, the nail through them; a deep second piece is drawn broken off."""
    drawing = Figure("Nail through two pieces", _words(v))
    held, deep = float(v["held"]), _shown(v)
    wide = 0.45 * (held + deep) + _aside(v, v["length"]) / 2
    torn = 0.03 * held if deep < float(v["second"]) else 0.0
    foot = [(wide * at, -deep + way * torn) for at, way in ((-1, 1), (-0.3, -1), (0.3, 1), (1, -1))]
    for piece in ([(-wide, 0), (wide, 0), (wide, held), (-wide, held)], [*foot, (wide, 0), (-wide, 0)]):
        drawing.outline(piece)
        drawing.grain(piece)
    _nail(drawing, v)
    _thicknesses(drawing, v, wide, deep)
    return drawing


def _words(v: Values) -> str:
    end = "stops inside the second" if v["out"] is None else "comes through the second and is turned over"
    return f"A section: the nail goes through the piece held and {end}."


def _shown(v: Values) -> float:
    """How deep the second piece is drawn, in millimetres."""
    whole = float(v["second"])
    return whole if v["out"] is not None else min(whole, 1.35 * _down(v, v["into"]))


def _down(v: Values, along: Any) -> float:
    return float(along) * math.cos(math.radians(v["lean"]))


def _aside(v: Values, along: Any) -> float:
    return float(along) * math.sin(math.radians(v["lean"]))


def _nail(drawing: Figure, v: Values) -> None:
    """Head, shank and point; clinched, the end lies along the far face."""
    half = float(v["diameter"] or THIN) / 2
    long, tip = float(v["length"] - (v["out"] or 0)), 0.0 if v["out"] else 3 * half
    at = _along(v, (_aside(v, long) / 2, float(v["held"])))
    drawing.outline([at(0, -half), at(0, half), at(long - tip, half), at(long, 0), at(long - tip, -half)], "accent")
    drawing.line(at(0, -2.2 * half), at(0, 2.2 * half), "accent")
    if v["out"]:
        _clinched(drawing, v, at(long, 0), half)
    else:
        _lengths(drawing, v, at, half)


def _along(v: Values, start: Spot) -> Callable[[float, float], Spot]:
    """Where a point falls that lies so far down the nail, which leans to the left, and so far to its left."""
    turn = math.radians(v["lean"])
    c, s = math.cos(turn), math.sin(turn)
    return lambda along, aside: (start[0] - along * s - aside * c, start[1] - along * c + aside * s)


def _clinched(drawing: Figure, v: Values, bend: Spot, half: float) -> None:
    (x, y), out = bend, float(v["out"])
    drawing.outline(
        [(x + half, y), (x - out, y), (x - out + 2 * half, y - 2 * half), (x + half, y - 2 * half)], "accent"
    )
    drawing.dimension((x, y - 2 * half), (x - out, y - 2 * half), "turn", v["out"], away=20)


def _lengths(drawing: Figure, v: Values, at: Callable[[float, float], Spot], half: float) -> None:
    """The nail's length, and how much of it is in the second piece, along the nail; its lean on the other side."""
    through, long = float(v["along_held"]), float(v["length"])
    drawing.dimension(at(through, half), at(long, half), "", v["into"], away=-20)
    drawing.dimension(at(0, half), at(long, half), "", v["length"], away=-46)
    if v["lean"]:
        drawing.line(at(0, 0), (at(0, 0)[0], at(long, 0)[1]), "hidden")
        drawing.angle(at(0, 0), -90 - v["lean"], -90, "lean", v["lean"], reach=54)


def _thicknesses(drawing: Figure, v: Values, wide: float, deep: float) -> None:
    drawing.dimension((wide, float(v["held"])), (wide, 0), "held", v["held"], away=22)
    if deep == float(v["second"]):
        drawing.dimension((wide, 0), (wide, -deep), "second", v["second"], away=44)
    else:
        drawing.note((0, -deep), "the second piece goes on", dy=-14, name="second")
