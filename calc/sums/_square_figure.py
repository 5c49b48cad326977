"""The drawing of diagonal: the frame as it stands, its diagonals, the corners to bring in, or the largest 3-4-5."""

import math

from calc.declare import Values
from calc.drawing.figure import Figure
from calc.sums._square_up import corners

NEARLY = 0.9
"""Share of the diagonal from which a 3-4-5 would lie too close to it to be drawn."""


def figure(v: Values) -> Figure:
    """The rectangle with its diagonal and a 3-4-5, or the frame as measured with the longer diagonal in hand."""
    drawing = Figure("Diagonals of a frame", "A frame from above, near side below, with its diagonals.")
    near, right, far, left = spots = corners(v)
    drawing.outline(spots)
    drawing.dimension(near, right, "length", v["length"], away=-22)
    drawing.dimension(near, left, "width", v["width"])
    if v["first"] is None:
        drawing.dimension(near, far, "diagonal", v["diagonal"], away=0.1)
        _triangle(drawing, v)
    else:
        _diagonals(drawing, v, spots)
    return drawing


Spot = tuple[float, float]


def _diagonals(drawing: Figure, v: Values, spots: list[Spot]) -> None:
    """Both as measured, their words clear of each other, and arrows in the corners to bring in."""
    near, right, far, left = spots
    drawing.line(near, far, "accent" if v["first"] > v["second"] else "thin")
    drawing.line(left, right, "accent" if v["second"] > v["first"] else "thin")
    along = _scale(v) * float(v["diagonal"]) / 5
    drawing.dimension(near, far, "first", v["first"], away=0.1, along=along)
    drawing.dimension(left, right, "second", v["second"], away=0.1, along=along if v["width"] > v["length"] else -along)
    for spot, other in _pulled(v, spots):
        _arrow(drawing, spot, other)


def _scale(v: Values) -> float:
    """About how many pixels a millimetre comes to."""
    return min(270 / float(v["length"]), 200 / float(v["width"]))


def _triangle(drawing: Figure, v: Values) -> None:
    """The largest 3-4-5 in the near right corner, four along the longer side, where it is not the diagonal itself."""
    if v["three"] is None or v["five"] > NEARLY * v["diagonal"]:
        return
    along, up = (v["four"], v["three"]) if v["length"] >= v["width"] else (v["three"], v["four"])
    foot, head = (float(v["length"] - along), 0.0), (float(v["length"]), float(up))
    drawing.line(foot, head, "hidden")
    drawing.dimension(foot, head, "five", v["five"], away=-12)


def _pulled(v: Values, spots: list[Spot]) -> list[tuple[Spot, Spot]]:
    """The two corners to bring in, each with the other; none where the frame is square."""
    near, right, far, left = spots
    if v["first"] == v["second"]:
        return []
    one, other = (near, far) if v["first"] > v["second"] else (right, left)
    return [(one, other), (other, one)]


def _arrow(drawing: Figure, at: Spot, towards: Spot) -> None:
    """A mark in the corner, pointing the way it is brought in."""
    long = 0.06 * math.dist(at, towards)
    turn = math.atan2(towards[1] - at[1], towards[0] - at[0])
    tip = at[0] + 2 * long * math.cos(turn), at[1] + 2 * long * math.sin(turn)
    for way in (-0.4, 0.4):
        wing = tip[0] - long * math.cos(turn + way), tip[1] - long * math.sin(turn + way)
        drawing.line(tip, wing, "accent")
