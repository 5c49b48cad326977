"""The drawing of stepping: a line or a circle with its true steps, and one of them the setting of the dividers."""

import math
from itertools import pairwise

from calc.declare import Values
from calc.drawing.figure import Figure

MANY = 60
"""Steps up to which each chord is drawn."""


def figure(v: Values) -> Figure:
    """What is parted, every point on it, and the first step in hand."""
    return _line(v) if v["line"] is not None else _circle(v)


def _line(v: Values) -> Figure:
    long, step = float(v["line"]), float(v["setting"])
    drawing = Figure("A line in equal steps", f"A line parted into {v['count']} equal steps, dividers over the first.")
    tall = long / 60
    drawing.line((0, 0), (long, 0))
    for at in range(v["count"] + 1):
        drawing.line((at * step, -tall), (at * step, tall), "thin")
    _dividers(drawing, (0, 0), (step, 0), max(step, long / 6))
    drawing.dimension((0, 0), (long, 0), "line", v["line"], away=-34)
    drawing.dimension((0, 0), (step, 0), "setting", v["setting"], away=-16, along=max(0.0, 30 - 135 * step / long))
    return drawing


def _circle(v: Values) -> Figure:
    radius, count = float(v["radius"]), v["count"]
    drawing = Figure(
        "A circle in equal steps", f"A circle parted into {count} equal steps, the first of them at the top.", tall=300
    )
    spots = [(radius * math.cos(turn), radius * math.sin(turn)) for turn in _turns(count)]
    drawing.arc((0, 0), radius, 0, 360)
    for one, other in pairwise(spots):
        drawing.line(one, other, "thin" if count <= MANY else "ghost")
    drawing.line((0, 0), spots[0], "thin")
    drawing.line((0, 0), spots[1], "thin")
    drawing.line(spots[0], spots[1], "accent")
    drawing.dimension(spots[1], spots[0], "setting", v["setting"], away=18)
    drawing.dimension((-radius, -radius), (radius, -radius), "diameter", v["diameter"], away=-16)
    if count > 2:
        drawing.angle((0, 0), 90 - 180 / count, 90 + 180 / count, "", v["turn"], reach=34)
    return drawing


def _turns(count: int) -> list[float]:
    """The first step lies over the top, the others go on to the left and come round."""
    return [math.pi / 2 + math.pi * (2 * at - 1) / count for at in range(count + 1)]


def _dividers(drawing: Figure, start: tuple[float, float], end: tuple[float, float], high: float) -> None:
    joint = ((start[0] + end[0]) / 2, high)
    drawing.line(start, joint, "accent")
    drawing.line(joint, end, "accent")
