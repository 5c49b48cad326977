"""The section drawn for hinge-strip: back, fixed strip, hinge and the near end of the moving lid, to scale."""

import math
from collections.abc import Callable

from calc.declare import Values
from calc.drawing.figure import Figure

Spot = tuple[float, float]
Place = Callable[[float, float], Spot]


def section(v: Values) -> Figure:
    """Section seen from the side, the slope falling to the right; a long moving lid is drawn broken off."""
    drawing = Figure(
        "Section through the hinge strip",
        "The back stands at the left. From it a fixed strip slopes down to a saw cut, then the moving lid. "
        "A hinge lies over the cut, its leaves let into the upper faces; a nail goes through the strip.",
    )
    at = _place(math.radians(float(v["angle"])))
    end = _end(v)
    _wood(drawing, v, at, end)
    _hinge(drawing, v, at)
    _sizes(drawing, v, at, end)
    return drawing


def _place(turn: float) -> Place:
    """Where a point falls that lies `along` the upper face from the back and `deep` square below it."""
    c, s = math.cos(turn), math.sin(turn)
    return lambda along, deep: (along * c - deep * s, -along * s - deep * c)


def _end(v: Values) -> float:
    """How far down the slope the moving lid is drawn."""
    strip, kerf, moving = float(v["strip"]), float(v["kerf"]), float(v["moving"])
    return strip + kerf + min(moving, max(1.3 * float(v["leaf"]), 0.9 * strip, 1.7 * float(v["thickness"])))


def _wood(drawing: Figure, v: Values, at: Place, end: float) -> None:
    thick, strip, kerf, bevel = (float(v[name]) for name in ("thickness", "strip", "kerf", "bevel"))
    high, low = 0.6 * thick, at(bevel, thick)[1]
    back = [(0.0, high), (0.0, low), (-thick, low), (-thick, high)]
    drawing.outline(back)
    drawing.grain(back, 90)
    torn = thick / 12 if strip + kerf + float(v["moving"]) > end * 1.001 else 0.0
    front = [at(end + way * torn, thick * part) for part, way in ((0, 0), (0.4, 1), (0.6, -1), (1, 0))]
    moving = [at(strip + kerf, 0), *front, at(strip + kerf, thick)]
    for piece in ([at(0, 0), at(strip, 0), at(strip, thick), at(bevel, thick)], moving):
        drawing.outline(piece)
        drawing.hatch(piece)


def _hinge(drawing: Figure, v: Values, at: Place) -> None:
    strip, kerf, gain, leaf = (float(v[name]) for name in ("strip", "kerf", "gain", "leaf"))
    middle, line = strip + kerf / 2, float(v["nail_line"])
    for way in (-1, 1):
        drawing.line(at(middle, gain), at(middle + way * leaf, gain), "accent")
        drawing.line(at(middle + way * leaf, gain), at(middle + way * leaf, 0), "edge")
    drawing.arc(at(middle, 0), gain, 0, 360, "accent")
    drawing.line(at(line, 0), at(line, 1.15 * float(v["thickness"])), "hidden")


def _sizes(drawing: Figure, v: Values, at: Place, end: float) -> None:
    strip, kerf, thick, bevel = (float(v[name]) for name in ("strip", "kerf", "thickness", "bevel"))
    middle = strip + kerf / 2
    drawing.dimension(at(0, 0), at(strip, 0), "strip", v["strip"], away=48)
    drawing.dimension(at(strip + kerf, 0), at(end, 0), "moving", v["moving"], away=48)
    drawing.dimension(at(0, 0), at(float(v["nail_line"]), 0), "nail_line", v["nail_line"], away=18)
    drawing.dimension(at(middle, 0), at(middle + float(v["leaf"]), 0), "leaf", v["leaf"], away=18)
    drawing.dimension(at(bevel, thick), at(strip, thick), "strip_under", v["strip_under"], away=-16)
    drawing.dimension(at(end, 0), at(end, thick), "thickness", v["thickness"], away=14)
    if (slope := float(v["angle"])) > 0:
        drawing.angle(at(end, thick), 180 - slope, 180, "angle", v["angle"], reach=max(26, min(76, 720 / slope)))
