"""How a sloping-lid box goes together: each joint, the nail for it, how many, and whether glue helps."""

import math
from typing import Any

from calc import trig
from calc.declare import Values
from calc.discover import find
from calc.errors import Refusal

CROSS, END, LONG = "none: cross grain", "none: end grain holds no glue", "yes: long grain to long grain"
NONE_FITS: Values = {
    "nail": "none of this kind fits",
    "along_held": None,
    "length": None,
    "diameter": None,
    "hole": None,
    "thickness_from": "",
}
Row = dict[str, Any]


def nail(m: Values, held: Any, second: Any, lean: Any = 0) -> Values:
    """The nail for a thickness held and the wood behind it, by the nail sum; blanks where no nail of the kind fits."""
    try:
        return find("nail").of(held=held, second=second, lean=lean, kind=m["nails"], wood=m["wood"])
    except Refusal:
        return NONE_FITS


def under_strip(m: Values) -> Any:
    """How deep a nail through the strip may go, square to the slope: it runs towards the back, and must not come out
    behind even where it starts at the back's face."""
    return min(m["front_height"], m["back_thickness"] / trig.sin(m["angle"]))


def strip_nail(m: Values) -> Any:
    """The diameter of the nail through the fixed strip into the tops of the sides, or None where no table has it."""
    return nail(m, m["lid_thickness"], under_strip(m))["diameter"]


def count(long: Any, spacing: Any) -> int:
    """Nails along a joint: one to every spacing or part of one, and two at least. Common practice.

    >>> count(200, 60)
    4
    """
    wanted: int = math.ceil(long / spacing)
    return max(2, wanted)


def joints(m: Values) -> list[Row]:
    """Every nailed joint: the nail, its hole, how many, and whether glue helps.

    A level nail from the back would run out through the strip's upper face, so those are driven down the slope.
    """
    between, lid, angle = m["bottom_deep"], m["lid_thickness"], m["angle"]
    along = m["strip_under"] * trig.cos(angle)
    return [
        _joint(m, "Front to sides", m["proud"], m["depth"], (m["front_height"],) * 2, CROSS),
        _joint(m, "Sides to bottom", m["side_thickness"], m["bottom_wide"], (between,) * 2, END),
        _joint(m, "Front to bottom", m["front_thickness"], between, (m["bottom_wide"],), LONG),
        _joint(m, "Back to sides", m["back_thickness"], m["depth"], (m["back_height"],) * 2, LONG),
        _joint(m, "Back to bottom", m["back_thickness"], between, (m["bottom_wide"],), CROSS),
        _joint(m, "Strip to sides", lid, under_strip(m), (0, 0), END),
        _joint(m, "Back to strip, down the slope", m["back_thickness"], along, (m["outside"],), CROSS, angle),
        _joint(m, "Battens to moving lid", m["batten_thickness"], lid, (m["batten_long"],) * 2, CROSS),
    ]


def _joint(m: Values, name: str, held: Any, second: Any, lines: tuple[Any, ...], glue: str, lean: Any = 0) -> Row:
    found = nail(m, held, second, lean)
    nails = sum(count(long, m["spacing"]) for long in lines)
    sizes = {key: found[key] for key in ("nail", "length", "diameter", "hole")}
    return {
        "joint": name,
        "held": found["along_held"],
        "count": nails,
        "glue": glue,
        "from": found["thickness_from"],
        **sizes,
    }


def shopping(found: list[Row]) -> list[Row]:
    """The nails to buy, sizes together, shortest first."""
    sizes = {row["nail"]: row["length"] for row in found if row["length"] is not None}
    return [
        {"nail": name, "length": sizes[name], "count": sum(row["count"] for row in found if row["nail"] == name)}
        for name in sorted(sizes, key=lambda name: sizes[name])
    ]
