"""Sloping-lid boxes by chance, and their sections by coordinates: from two points of the slope, and no angle."""

import math
from fractions import Fraction
from typing import Any

from examples import Example
from hypothesis import strategies as st
from randomly import sized
from shapely.geometry import Polygon, box

from calc.declare import Values

BOX = Example("sloping-lid-box")
Shapes = dict[str, Polygon]
THICK = sized(6, 30)
BOXES = st.fixed_dictionaries(
    {
        "stock_width": sized(90, 300),
        "stock_thickness": THICK,
        "inside_width": sized(180, 600),
        "depth": sized(110, 350),
        "front_height": sized(60, 300),
        "angle": st.integers(1, 60).map(Fraction),
        "rabbet": st.none() | sized(1, 5),
        "front_overhang": sized(0, 30),
        "side_overhang": sized(0, 30),
        "crest": sized(0, 80),
        "tail": sized(0, 80),
        "allowance": sized(0, 3),
        "kerf": sized(0, 3),
        "clearance": sized(1, 5),
        "leaf": sized(6, 20),
        "knuckle": sized(2, 6),
        "halved": st.integers(0, 2),
    },
    optional={f"{part}_thickness": THICK for part in ("side", "front", "lid", "back", "bottom", "batten")},
)


def built(givens: dict[str, Any]) -> dict[str, float]:
    """Every size as a float, the tables left out; a box that cannot be built is set aside."""
    v = values(givens)
    return {name: float(size) for name, size in v.items() if not isinstance(size, str | list) and size is not None}


def values(givens: dict[str, Any]) -> Values:
    """The piece's values; a box that cannot be built is set aside."""
    return BOX.of(back_height=None, **givens)


def lid(m: dict[str, float]) -> tuple[Polygon, Any]:
    """The whole lid, from two points of the slope and no angle; where a point lies along and below its upper face."""
    fall = m["back_height"] - m["front_height"]
    long = math.hypot(m["depth"], fall)
    down, square = (m["depth"] / long, -fall / long), (fall / long, m["depth"] / long)
    crown = m["back_height"] + m["lid_thickness"] * long / m["depth"]
    end = m["depth"] + m["front_thickness"] - m["rabbet"] + m["front_overhang"]
    toe = end, m["back_height"] - end * fall / m["depth"]
    nose = toe[0] + m["lid_thickness"] * square[0], toe[1] + m["lid_thickness"] * square[1]

    def at(along: float, deep: float) -> tuple[float, float]:
        return along * down[0] - deep * square[0], crown + along * down[1] - deep * square[1]

    return Polygon([(0, m["back_height"]), toe, nose, (0, crown)]), at


def lids(m: dict[str, float]) -> Shapes:
    """The lid sawn in two: what lies before the kerf and what lies behind it, and the kerf itself."""
    whole, at = lid(m)
    far = 3 * m["lid_long"]

    def piece(begin: float, end: float) -> Polygon:
        return whole.intersection(Polygon([at(begin, -far), at(end, -far), at(end, far), at(begin, far)]))

    cut = m["strip"] + m["kerf"]
    return {"strip": piece(-far, m["strip"]), "kerf": piece(m["strip"], cut), "moving": piece(cut, far)}


def back(m: dict[str, float]) -> Polygon:
    """The back, as high as it is cut, hung by its tail."""
    return box(-m["back_thickness"], -m["tail"], 0, m["back_high"] - m["tail"])


def front(m: dict[str, float], inner: float) -> Polygon:
    """The front from a plane of it outwards, its top edge planed from the inner height to the outer."""
    face, tongue = m["depth"] + m["front_thickness"] - m["rabbet"], m["depth"] - m["rabbet"]
    slant = Polygon([(tongue, 0), (face, 0), (face, m["front_outer"]), (tongue, m["front_inner"])])
    return slant.intersection(box(inner, -1, face + 1, m["front_inner"] + 1))


def at_the_side(m: dict[str, float]) -> Shapes:
    """The box cut through one of its sides, where the front is rabbeted."""
    side = Polygon([(0, 0), (m["depth"], 0), (m["depth"], m["front_height"]), (0, m["back_height"])])
    return {"side": side, "front": front(m, m["depth"]), "back": back(m), **lids(m)}


def in_the_middle(m: dict[str, float]) -> Shapes:
    """The box cut through its middle, the bottom pushed back as far as it goes."""
    bottom = box(0, 0, m["bottom_deep"] + m["allowance"], m["bottom_thickness"])
    return {"bottom": bottom, "front": front(m, 0), "back": back(m), **lids(m)}
