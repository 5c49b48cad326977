"""The nail in the two pieces, cut through along the nail, to scale."""

import math
from typing import Any

from calc.declare import Values
from calc.figure import Figure

THIN = 1.5
"""Millimetres: how thick a nail is drawn whose thickness is not known."""


def figure(v: Values) -> Figure:
    """The held piece above, the second below, the nail through them; a deep second piece is drawn only in part."""
    drawing = Figure("Nail through two pieces", _words(v))
    held, deep = float(v["held"]), _shown(v)
    wide = 0.45 * (held + deep) + float(v["length"]) * math.sin(math.radians(v["lean"])) / 2
    top, bottom = _box(-wide, wide, 0, held), _box(-wide, wide, -deep, 0)
    for piece in (top, bottom):
        drawing.outline(piece)
        drawing.grain(piece)
    _nail(drawing, v)
    _dimensions(drawing, v, wide, deep)
    return drawing


def _words(v: Values) -> str:
    end = "stops inside the second" if v["out"] is None else "comes through the second and is turned over"
    return f"A section: the nail goes through the piece held and {end}."


def _shown(v: Values) -> float:
    """How deep the second piece is drawn, in millimetres."""
    if v["out"] is not None:
        return float(v["second"])
    return min(
        float(v["second"]),
        1.35 * _down(v, v["into"]),
    )


def _down(v: Values, along: Any) -> float:
    return float(along) * math.cos(math.radians(v["lean"]))


def _box(left: float, right: float, low: float, high: float) -> list[tuple[float, float]]:
    return [(left, low), (right, low), (right, high), (left, high)]


def _nail(drawing: Figure, v: Values) -> None:
    """Head, shank, point; clinched, the end lies along the far face."""
    half = float(v["diameter"] or THIN) / 2
    turn, long = math.radians(v["lean"]), float(v["length"] if v["out"] is None else v["length"] - v["out"])
    start = (-long * math.sin(turn) / 2, float(v["held"]))

    def at(along: float, aside: float) -> tuple[float, float]:
        return (
            start[0] + along * math.sin(turn) + aside * math.cos(turn),
            start[1] - along * math.cos(turn) + aside * math.sin(turn),
        )

    tip = [at(long, 0)] if v["out"] is None else []
    end = long - 3 * half if tip else long
    drawing.outline([at(0, -half), at(0, half), at(end, half), *tip, at(end, -half)], "accent")
    drawing.line(at(0, -2.2 * half), at(0, 2.2 * half), "accent")
    if not tip:
        x, y = at(long, 0)
        drawing.line((x, y), (x + float(v["out"]), y), "accent")


def _dimensions(drawing: Figure, v: Values, wide: float, deep: float) -> None:
    held, second = float(v["held"]), float(v["second"])
    drawing.dimension((-wide, held), (-wide, 0), "held", v["held"], away=-22)
    if deep == second:
        drawing.dimension((-wide, 0), (-wide, -deep), "second", v["second"], away=-44)
    else:
        drawing.note((0, -deep), "the second piece goes on", dy=-10, name="second")
    point = held - _down(v, v["length"] if v["out"] is None else v["length"] - v["out"])
    drawing.dimension((wide, 0), (wide, point), "", v["into"], away=22)
    drawing.dimension((wide, held), (wide, point), "", v["length"], away=44)
