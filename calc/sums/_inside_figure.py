"""The drawing of inside-out: the box cut through from the front, and under it the box from above, to one scale."""

from calc.declare import Values
from calc.drawing.figure import Figure
from calc.sums._inside_out import inner, outer

APART = 74.0
"""Pixels between the two views, where the sizes stand."""
TALL = 330.0


def figure(v: Values) -> Figure:
    """Walls hatched where they are cut, the contents dashed within."""
    drawing = Figure(
        "Box inside and out", "A box cut through, seen from the front; below it the same box from above.", tall=TALL
    )
    (long, wide, high), (length, width, height) = outer(v), inner(v)
    gap = APART / _scale(long, wide + high)
    thick, low = float(v["thickness"]), float(v["under"])
    _walls(drawing, (0.0, 0.0, long, high), (thick, low, length, height), top=v["over"] > 0)
    _walls(drawing, (0.0, -gap - wide, long, wide), (thick, thick - gap - wide, length, width), top=True)
    _contents(drawing, v, (thick, low), (thick, thick - gap - wide), (length, width))
    _sizes(drawing, v, (long, wide, high), (length, width, height), gap)
    return drawing


def _scale(long: float, tall: float) -> float:
    """About how many pixels a millimetre comes to."""
    return min(230 / long, (TALL - APART - 64) / tall)


Box = tuple[float, float, float, float]


def _walls(drawing: Figure, out: Box, inside: Box, top: bool) -> None:
    """The four walls about an inside, or three where the top is open; each box is left, foot, width, height."""
    left, foot, wide, high = out
    x, y, across, up = inside
    head = y + up
    walls = [(left, foot, x - left, high), (x + across, foot, wide - x - across + left, high)]
    walls += [(x, foot, across, y - foot)] if y > foot else []
    walls += [(x, head, across, foot + high - head)] if top and foot + high > head else []
    for a, b, w, h in walls:
        shape = [(a, b), (a + w, b), (a + w, b + h), (a, b + h)]
        drawing.outline(shape)
        drawing.hatch(shape)


def _contents(
    drawing: Figure, v: Values, front: tuple[float, float], above: tuple[float, float], inside: tuple[float, float]
) -> None:
    air, top = float(v["clearance"]), float(v["headroom"])
    high = float(inner(v)[2]) - top
    long, wide = inside[0] - 2 * air, inside[1] - 2 * air
    if min(long, wide, high) <= 0:
        return
    for (x, y), tall in ((front, high), ((above[0], above[1] + air), wide)):
        drawing.outline([(x + air, y), (x + air + long, y), (x + air + long, y + tall), (x + air, y + tall)], "ghost")


def _sizes(
    drawing: Figure,
    v: Values,
    out: tuple[float, float, float],
    inside: tuple[float, float, float],
    gap: float,
) -> None:
    """Outside sizes above and at the left, inside sizes between the views and at the right."""
    (long, wide, high), (length, width, height), thick = out, inside, float(v["thickness"])
    base, low = -gap - wide, float(v["under"])
    drawing.dimension((0, high), (long, high), _name(v, "outside", "length"), long)
    drawing.dimension((0, 0), (0, high), _name(v, "outside", "height"), high)
    drawing.dimension((0, base), (0, base + wide), _name(v, "outside", "width"), wide)
    drawing.dimension((thick, 0), (thick + length, 0), _name(v, "inside", "length"), length, away=-20)
    drawing.dimension((long, low), (long, low + height), _name(v, "inside", "height"), height, away=-20)
    drawing.dimension((long, base + thick), (long, base + thick + width), _name(v, "inside", "width"), width, away=-20)
    drawing.dimension((0, base), (thick, base), "thickness", v["thickness"], away=-18)


def _name(v: Values, what: str, side: str) -> str:
    return side if v["known"] == what else f"{what}_{side}"
