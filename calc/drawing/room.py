"""The room a drawing needs about its wood: how many pixels of words and dimension lines stand off from each point."""

import math
from dataclasses import dataclass
from typing import Any

LETTER = 5.8
"""Pixels a letter of the drawing's words is wide, with some to spare."""
FIGURE = 11
"""Letters in a printed size, such as 13 15/16 in."""
HALF_LINE = 7.0


@dataclass(frozen=True)
class Room:
    """A point of the wood (millimetres, y up) and the clear pixels it needs on each side of it."""

    x: float
    y: float
    left: float = 0.0
    right: float = 0.0
    below: float = 0.0
    above: float = 0.0


def about(spot: tuple[float, float], dx: float, dy: float, wide: float = 5.0, tall: float = 5.0) -> Room:
    """Room for something `wide` and `tall` pixels to each side, moved by dx, dy pixels right and up from a point."""
    return Room(spot[0], spot[1], wide - dx, wide + dx, tall - dy, tall + dy)


def of_words(spot: tuple[float, float], text: str, anchor: str, dx: float, dy: float) -> Room:
    """Room for words set at a point by their start, middle or end."""
    half = len(text) * LETTER / 2
    return about(spot, dx + {"start": half, "end": -half}.get(anchor, 0.0), dy, half, HALF_LINE)


def of_dimension(
    a: tuple[float, float], b: tuple[float, float], away: float, label: str, along: float = 0
) -> list[Room]:
    """Room for a dimension line and for the words along it, as `calc.drawing.ink.dimension` sets them."""
    long = math.hypot(b[0] - a[0], b[1] - a[1]) or 1.0
    ux, uy = (b[0] - a[0]) / long, (b[1] - a[1]) / long
    side, half = (1 if away >= 0 else -1), (FIGURE + len(label)) * LETTER / 2
    tip, out = away + 4 * side, away + 9 * side
    wide, tall = (half * abs(one) + HALF_LINE * abs(other) for one, other in ((ux, uy), (uy, ux)))
    middle = ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)
    words = about(middle, ux * along - uy * out, uy * along + ux * out, wide, tall)
    return [*(about(end, -uy * tip, ux * tip) for end in (a, b)), words]


def of_angle(corner: tuple[float, float], start: Any, end: Any, reach: float, label: str, beside: bool = False) -> Room:
    """Room for the figure of an angle, as `calc.drawing.ink.angle` sets it."""
    dx, dy, anchor = by_angle(float(start), float(end), reach, beside)
    return of_words(corner, f"{label} 88° 88′".strip(), anchor, dx, dy)


def by_angle(start: float, end: float, reach: float, beside: bool) -> tuple[float, float, str]:
    """Where an angle's figure stands from its corner (pixels right, up) and its anchor: beyond the arc, or, when asked
    or where the angle is too slim to hold words, outside its second leg."""
    out = reach + 12
    if beside or out * math.radians(abs(end - start)) < 2.3 * HALF_LINE:
        along, across = math.cos(math.radians(end)), math.sin(math.radians(end))
        gap = HALF_LINE if abs(across) > 0.7 else 2 * HALF_LINE
        return out * along - gap * across, out * across + gap * along, _anchor(-across, 0.7)
    middle = math.radians((start + end) / 2)
    return out * math.cos(middle), out * math.sin(middle), _anchor(math.cos(middle), 0.3)


def _anchor(way: float, least: float) -> str:
    """Which end of the words stands at their point, when they go to the right (above nothing) or left of it."""
    return "start" if way > least else "end" if way < -least else "middle"


def spread(rooms: list[Room], scale: float) -> tuple[float, float, float, float]:
    """How far a drawing of `scale` pixels to the millimetre reaches: left, right, down, up, in pixels from nought."""
    return (
        min(one.x * scale - one.left for one in rooms),
        max(one.x * scale + one.right for one in rooms),
        min(one.y * scale - one.below for one in rooms),
        max(one.y * scale + one.above for one in rooms),
    )


def scale(rooms: list[Room], wide: float, tall: float) -> float:
    """The greatest scale at which everything fits into wide x tall pixels; next to nothing where no scale does."""
    size = max(_across([one.x for one in rooms]), _across([one.y for one in rooms]), 1e-6)
    low, high = 1e-9, max(wide, tall) / size
    for _ in range(30):
        middle = (low + high) / 2
        left, right, down, up = spread(rooms, middle)
        low, high = (middle, high) if right - left <= wide and up - down <= tall else (low, middle)
    return low


def _across(values: list[float]) -> float:
    return max(values) - min(values)
