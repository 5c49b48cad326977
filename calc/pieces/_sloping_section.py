"""A sloping-lid box cut through from back to front, each part as the corners of its section, in millimetres.

x runs from the back's face to the front, y up from the bottom of the sides; the side is seen beyond the cut.
"""

import math
from collections.abc import Callable
from numbers import Real

from calc.declare import Values

Spot = tuple[float, float]
Shape = list[Spot]
Place = Callable[[float, float], Spot]


def section(v: Values) -> dict[str, Shape]:
    """The corners of each part: side, batten, bottom, front, back, strip, moving."""
    m = {name: float(value) for name, value in v.items() if isinstance(value, Real)}
    return {
        "side": [(0.0, 0.0), (m["depth"], 0.0), (m["depth"], m["front_height"]), (0.0, m["back_height"])],
        "batten": _batten(m, on_lid(v)),
        "bottom": _bottom(m),
        "front": _front(m),
        "back": _back(m),
        **_lid(m, on_lid(v)),
    }


def on_lid(v: Values) -> Place:
    """Where a point falls that lies so far down the upper face from the back, and so far square below it."""
    turn = math.radians(float(v["angle"]))
    c, s = math.cos(turn), math.sin(turn)
    top = float(v["back_height"]) + float(v["lid_thickness"]) / c
    return lambda down, deep: (down * c - deep * s, top - down * s - deep * c)


def _bottom(m: dict[str, float]) -> Shape:
    slack = m["allowance"] / 2
    return [
        (slack, 0.0),
        (slack + m["bottom_deep"], 0.0),
        (slack + m["bottom_deep"], m["bottom_thickness"]),
        (slack, m["bottom_thickness"]),
    ]


def _front(m: dict[str, float]) -> Shape:
    inner, outer = m["depth"] - m["rabbet"], m["depth"] + m["proud"]
    return [(inner, 0.0), (outer, 0.0), (outer, m["front_outer"]), (inner, m["front_inner"])]


def _back(m: dict[str, float]) -> Shape:
    low, high = -m["tail"], m["back_high"] - m["tail"]
    return [(-m["back_thickness"], low), (0.0, low), (0.0, high), (-m["back_thickness"], high)]


def _lid(m: dict[str, float], at: Place) -> dict[str, Shape]:
    cut, begins, ends, thick = m["strip"], m["strip"] + m["kerf"], m["lid_long"], m["lid_thickness"]
    return {
        "strip": [at(0, 0), at(cut, 0), at(cut, thick), at(m["lid_bevel"], thick)],
        "moving": [at(begins, 0), at(ends, 0), at(ends, thick), at(begins, thick)],
    }


def _batten(m: dict[str, float], at: Place) -> Shape:
    begins = m["strip"] + m["kerf"] + m["clearance"]
    ends, high, low = begins + m["batten_long"], m["lid_thickness"], m["lid_thickness"] + m["batten_thickness"]
    return [at(begins, high), at(ends, high), at(ends, low), at(begins, low)]
