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
    """The greatest scale at which everything fits into wide x tall pixels; next to nothing where no scale does.

    From above: how wide the whole is grows with the scale along straight lines that only get steeper (each the distance
    of two points), so that following the line downwards never steps past the greatest scale that fits, and soon ends.
    """
    along = [(one.x, one.left, one.right) for one in rooms]
    upward = [(one.y, one.below, one.above) for one in rooms]
    size = max(_across(along), _across(upward), 1e-6)
    found, before = max(wide, tall) / size, math.inf
    while found < before:
        found, before = min(_held(along, found, wide), _held(upward, found, tall)), found
    return found


Stretch = list[tuple[float, float, float]]
"""Points along one way, each with the clear pixels that it needs before and behind it."""
LEAST = 1e-9


def _held(points: Stretch, scale: float, most: float) -> float:
    """A scale that brings those two that reach farthest to `most` pixels; `scale` where they are no farther apart."""
    low, before = min(((at, before) for at, before, _ in points), key=lambda one: one[0] * scale - one[1])
    high, behind = max(((at, behind) for at, _, behind in points), key=lambda one: one[0] * scale + one[1])
    if (high - low) * scale + before + behind <= most:
        return scale
    return max(LEAST, min(scale, (most - before - behind) / (high - low))) if high > low else LEAST


def _across(points: Stretch) -> float:
    values = [at for at, _, _ in points]
    return max(values) - min(values)
