"""A board seen on its end before and after it moved, one above the other and to one scale."""

import math
from collections.abc import Iterator
from itertools import pairwise

from calc.declare import Values
from calc.drawing.figure import Figure

Spot = tuple[float, float]
THIN = 7
"""The board is drawn a seventh as thick as it is wide: its thickness is not asked for."""
RINGS = 9
STEPS = 60


def figure(v: Values) -> Figure:
    """The board now above, later below, lined up on the left, the growth rings as its cut has them."""
    now, then = float(v["width"]), float(v["width_then"])
    thick = max(now, then) / THIN
    drawing = Figure("A board that moves", _words(v))
    for wide, top in ((now, 3.4 * thick), (then, thick)):
        drawing.outline([(0, top - thick), (wide, top - thick), (wide, top), (0, top)])
        for start, end in _rings(wide, top - thick, thick, v["cut"]):
            drawing.line(start, end, "hatch")
    drawing.dimension((0, 3.4 * thick), (now, 3.4 * thick), "width", v["width"], label="now")
    drawing.dimension((0, 0), (then, 0), "width_then", v["width_then"], away=-22, label="then")
    _difference(drawing, v, min(now, then), max(now, then), thick)
    return drawing


def _words(v: Values) -> str:
    cut = "flat-sawn" if v["cut"] == "flat" else "quarter-sawn"
    word = "wider" if v["change"] > 0 else "narrower" if v["change"] < 0 else "as wide"
    return f"The end of a {cut} board, now above and later below to one scale; later it is {word}."


def _difference(drawing: Figure, v: Values, short: float, long: float, thick: float) -> None:
    """Where the two right edges stand, and how far apart."""
    for edge in dict.fromkeys((short, long)):  # a set has an order of its own on every run
        drawing.line((edge, 0), (edge, 3.4 * thick), "hidden")
    drawing.dimension((long, 1.7 * thick), (short, 1.7 * thick), "change", abs(v["change"]), away=0)


def _rings(wide: float, foot: float, thick: float, cut: str) -> Iterator[tuple[Spot, Spot]]:
    """Growth rings inside the end of a board, as short straight lines."""
    if cut == "quarter":
        for at in (wide * (n + 0.5) / (2 * RINGS) for n in range(2 * RINGS)):
            yield (at, foot), (at, foot + thick)
        return
    centre = foot - 1.2 * wide / 2
    for radius in (wide * (0.62 + 0.08 * n) for n in range(RINGS)):
        yield from _arc((wide / 2, centre), radius, (wide, foot, foot + thick))


def _arc(centre: Spot, radius: float, box: tuple[float, float, float]) -> Iterator[tuple[Spot, Spot]]:
    """The parts of a ring that lie between the two faces and the two edges."""
    wide, low, high = box
    spots = [_on(centre, radius, wide * n / STEPS) for n in range(STEPS + 1)]
    for start, end in pairwise(spots):
        if start and end and low <= start[1] <= high and low <= end[1] <= high:
            yield start, end


def _on(centre: Spot, radius: float, x: float) -> Spot | None:
    rest = radius**2 - (x - centre[0]) ** 2
    return (x, centre[1] + math.sqrt(rest)) if rest >= 0 else None
