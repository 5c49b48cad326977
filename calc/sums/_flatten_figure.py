"""One piece of a warped board seen on its end, and the flat board that is inside it."""

import math
from collections.abc import Iterable
from typing import Any

from calc.declare import Values
from calc.drawing.figure import Figure

Spot = tuple[float, float]
STEPS = 24


def figure(v: Values) -> Figure:
    """The near end as marked out, the far end a ghost when it is twisted, the flat and trued board inside hatched."""
    wide, trued, thick = float(v["width"]) / v["strips"], float(v["strip_width"]), float(v["thickness"])
    drawing = Figure("Flat board in a warped one", _words(v))
    tilt = math.degrees(math.atan(float(v["twist_each"]) / 2 / wide))
    if tilt:
        drawing.outline(_end(v, wide, thick, -tilt), "ghost")
    drawing.outline(_end(v, wide, thick, tilt))
    low, high = _planes(v, thick)
    if high > low:
        flat = [(-trued / 2, low), (trued / 2, low), (trued / 2, high), (-trued / 2, high)]
        drawing.outline(flat, "accent")
        drawing.hatch(flat)
        drawing.dimension((wide / 2, low), (wide / 2, high), "left", high - low, away=-26)
    _sizes(drawing, v, wide, thick)
    return drawing


def _words(v: Values) -> str:
    piece = "The board" if v["strips"] * v["lengths"] == 1 else f"One of {v['strips'] * v['lengths']} pieces"
    return f"{piece} seen on its end, warped, and hatched inside it the flat board that two planed faces leave."


def _sizes(drawing: Figure, v: Values, wide: float, thick: float) -> None:
    foot = min(y for _, y in drawing.points)
    name, trued = "width" if v["strips"] == 1 else "strip_width", float(v["strip_width"])
    drawing.dimension((-trued / 2, foot), (trued / 2, foot), name, v["strip_width"], away=-24)
    drawing.dimension((-wide / 2, foot), (-wide / 2, foot + thick), "thickness", v["thickness"], away=26)


def _end(v: Values, wide: float, thick: float, tilt: float) -> list[Spot]:
    """The end of one piece, hollow side up, turned about its middle by half of the twist."""
    top, bottom = (_face(v, wide, level) for level in (thick, 0.0))
    return [_turned(spot, thick / 2, tilt) for spot in (*bottom, *reversed(list(top)))]


def _face(v: Values, wide: float, level: float) -> Iterable[Spot]:
    """One face from left to right; a cup lifts both edges."""
    if not v["cup"]:
        return [(-wide / 2, level), (wide / 2, level)]
    radius = float(v["radius"]) + float(v["thickness"]) - level
    half = math.radians(v["half_angle"]) / v["strips"]
    turns = [half * (2 * n / STEPS - 1) for n in range(STEPS + 1)]
    return [(radius * math.sin(turn), level + radius * (1 - math.cos(turn))) for turn in turns]


def _turned(spot: Spot, middle: float, degrees: float) -> Spot:
    c, s = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    x, y = spot[0], spot[1] - middle
    return c * x - s * y, middle + s * x + c * y


def _planes(v: Values, thick: float) -> tuple[float, float]:
    """The heights of the two planed faces, the shavings that clean them up taken off."""
    cup, twist, clean = (float(v[name]) for name in ("cup_each", "twist_each", "clean"))
    dip = lowest(cup, twist)
    return cup + twist / 4 + clean, thick + dip - clean


def lowest(cup: Any, twist: Any) -> Any:
    """How far the end's lowest place lies under its middle: between middle and the low edge, or at that edge."""
    return -(twist * twist) / (64 * cup) if twist <= 8 * cup else cup - twist / 4
