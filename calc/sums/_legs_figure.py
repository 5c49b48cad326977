"""The drawing of legs: one leg from the front, from the side and square to its sight line; below, from above."""

import math

from calc.declare import Values
from calc.drawing.figure import Figure

SLIM = 0.08
"""How thick a leg is drawn whose thickness is not given, as a share of its height."""
TALL = 380.0
VIEWS = (("splay", "out", "front"), ("rake", "back", "side"), ("lean", "foot", "true view"))
"""The angle each view shows, how far off the foot stands there, and what the view is called."""


def figure(v: Values) -> Figure:
    """Three views in a row, to one scale, and under them the sight line from above."""
    drawing = Figure(
        "Leg that rakes and splays",
        "One leg under its seat, three times: from the front it leans by the splay, from the side by the rake, and "
        "square to the sight line by its whole lean. Below, from above, the way it leans.",
        tall=TALL,
    )
    high, wide = float(v["height"] + v["seat"]), _reach(v)
    left = 0.0
    for name, foot, caption in VIEWS:
        _view(drawing, v, name, foot, left)
        drawing.note((left, high), caption, dy=14)
        left += max(1.2 * float(v[foot]) + 0.36 * high, 2.6 * wide)
    _plan(drawing, v, left)
    return drawing


def _half(v: Values) -> float:
    """Half the thickness of the leg, as drawn."""
    return float(v["thick"] or SLIM * float(v["height"])) / 2


def _reach(v: Values) -> float:
    """How far the seat is drawn on each side of its hole."""
    return max(3.2 * _half(v), 0.14 * float(v["height"]))


def _view(drawing: Figure, v: Values, name: str, away: str, left: float) -> None:
    """The leg leaning to the right by the angle `name`, its seat on it."""
    height, turn = float(v["height"]), math.radians(float(v[name]))
    half, foot = _half(v) / math.cos(turn), left + height * math.tan(turn)
    drawing.outline([(left - half, height), (left + half, height), (foot + half, 0), (foot - half, 0)])
    _seat(drawing, v, left)
    drawing.line((left, height), (foot, 0), "hidden")
    drawing.line((left + half, height), (left + half, 0.4 * height), "thin")
    drawing.angle((left + half, height), 270, 270 + math.degrees(turn), name, v[name], reach=44, beside=True)
    if v[away]:
        drawing.dimension((left, 0), (foot, 0), away, v[away], away=-16)
    if name == "splay":
        drawing.dimension((left - half, 0), (left - half, height), "height", v["height"], away=18)
    if name == "lean":
        drawing.dimension((foot - half, 0), (left - half, height), "leg", v["leg"], away=12)


def _seat(drawing: Figure, v: Values, x: float) -> None:
    y, seat, reach = float(v["height"]), float(v["seat"]), _reach(v)
    corners = [(x - reach, y), (x + reach, y), (x + reach, y + seat), (x - reach, y + seat)]
    if not seat:
        drawing.line(corners[0], corners[1])
        return
    drawing.outline(corners)
    drawing.grain(corners)
    if not x:
        drawing.dimension(corners[0], corners[3], "seat", v["seat"], away=14)


def _plan(drawing: Figure, v: Values, wide: float) -> None:
    """From above: the line across, the line from front to back, and the sight line between them."""
    long = max(0.3 * float(v["height"] + v["seat"]), 0.16 * wide)
    x, y = 0.42 * wide, -1.1 * long - 0.16 * wide
    drawing.line((x, y), (x + long, y), "thin")
    drawing.line((x, y), (x, y + long), "thin")
    drawing.arc((x, y), _half(v), 0, 360, "thin")
    drawing.note((x, y), "line across", "end", dx=-8 - 2 * _half(v) / long)
    if v["sight"] is None:
        return
    turn = math.radians(float(v["sight"]))
    drawing.line((x, y), (x + 1.1 * long * math.cos(turn), y + 1.1 * long * math.sin(turn)), "accent")
    drawing.angle((x, y), 0, v["sight"], "sight", v["sight"], reach=34)
