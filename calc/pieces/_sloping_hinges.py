"""The hinges of a sloping-lid box: where they stand on the lid, how they are screwed on, and what of them to buy."""

import math
from collections.abc import Sequence
from fractions import Fraction
from typing import Any

from calc.declare import Values
from calc.errors import Refusal
from calc.pieces._asked import ask
from calc.pieces._joints import SCREWED, Row
from calc.pieces._tables import table
from calc.show import plain
from calc.sums._screw import by_number

OURS = {"size": "hinge_size", "count": "hinges", "plate": "hinge_plate", "number": "hinge_screw"}
MOST = Fraction(40)
"""Millimetres of a hinge along its pin, unless it is given: common practice, a small butt."""


def hinge_size(inside_width: Any) -> Any:
    """A fifth of the inside width and 40 mm at most, unless it is given."""
    return min(MOST, inside_width / 5)


def hinge_in(hinge_size: Any, batten_in: Any, hinges: int, lid_wide: Any) -> Any:
    """From either end of the lid to the first hinge: its own length, and clear of the sides' nails.

    Refusal where so many have no room.
    """
    most = min(lid_wide / (hinges + 2), (lid_wide - 2 * batten_in) / hinges)
    if hinge_size > most:
        told = f"give {plain(math.floor(most), 0)} mm or less, or fewer hinges"
        raise Refusal("the hinges have no room side by side between the sides", told, "hinge_size")
    return max(hinge_size, batten_in)


def butts(
    hinge_size: Any,
    hinge_in: Any,
    leaf: Any,
    gain: Any,
    lid_wide: Any,
    lid_thickness: Any,
    hinges: int,
    hinge_plate: Any,
    hinge_screw: int,
) -> Values:
    """Marks, gain and screws, by hinge."""
    sizes = {"size": hinge_size, "leaf": leaf, "knuckle": 2 * gain, "length": lid_wide, "thickness": lid_thickness}
    more = {"count": hinges, "inset": hinge_in, "plate": hinge_plate, "number": hinge_screw}
    return ask("hinge", "hinge_size", OURS, **sizes, **more)


def hinges_to_lid(butts: Values, hinges: int, hinge_holes: int, hinge_plate: Any, hinge_screw: int, wood: str) -> Row:
    """Through both leaves of every hinge into strip and moving lid; blanks where no screw stays inside."""
    long = butts["screw_length"]
    name = "none of this number stays inside" if long is None else f"No. {hinge_screw} countersunk screw"
    hole = butts[{"light": "pilot_soft", "dense": "pilot_hard"}[wood]]
    told = {"joint": "Hinges to strip and moving lid", "by": SCREWED, "held": hinge_plate, "glue": "none", "from": ""}
    sizes = {"nail": name, "length": long, "diameter": by_number(hinge_screw), "hole": hole}
    return told | sizes | {"count": 2 * hinges * hinge_holes}


def bought(v: Values) -> Sequence[Values]:
    """The hinges to buy."""
    return [{"along": v["hinge_size"], "open": 2 * v["leaf"], "knuckle": v["knuckle"], "count": v["hinges"]}]


HINGES = table(
    "hinge_list",
    "Hinges to buy",
    {
        "along": ("Butt, along its pin", "length"),
        "open": ("Open", "length"),
        "knuckle": ("Knuckle", "fine"),
        "count": ("Count", "count"),
    },
    bought,
)
MARKS = table(
    "hinge_marks",
    "Marks for the hinges",
    {"hinge": ("Hinge", "count"), "start": ("Gain begins", "length"), "end": ("Gain ends", "length")},
    lambda v: v["butts"]["marks"],
    "Along the saw cut, all from one end of the lid.",
)
