"""A sloping-lid box as solids: every part where it lies in the finished box, from the sizes it is cut to.

x runs from the back's inner face to the front, y from the outer face of the left side, z up from the bottom of the
sides. Left out: the slot, the holes, nails and hinges, and the gains for the hinges. The bottom lies midway in its
fitting allowance; the kerf between strip and moving lid stays open.
"""

import math

from calc.declare import Values
from calc.drawing.solid import Meeting, Solid, Spot3, block, prism
from calc.pieces._sloping_section import section

ACROSS: Spot3 = (0.0, 1.0, 0.0)
UP: Spot3 = (0.0, 0.0, 1.0)
FORTH: Spot3 = (1.0, 0.0, 0.0)

MEETINGS = (
    *(Meeting("Side", other) for other in ("Back", "Front", "Fixed strip", "Moving lid")),
    Meeting("Back", "Fixed strip"),
    Meeting("Front", "Moving lid"),
    Meeting("Moving lid", "Batten"),
    Meeting("Fixed strip", "Moving lid", lambda v: v["kerf"]),
    Meeting("Side", "Batten", lambda v: v["clearance"]),
    *(Meeting("Bottom", other, lambda v: v["allowance"] / 2) for other in ("Side", "Front", "Back")),
)


def solids(v: Values) -> list[Solid]:
    """Two sides, front, bottom, back, fixed strip, moving lid and two battens."""
    return [*_sides(v), _front(v), _bottom(v), _back(v), *_lid(v)]


def _sides(v: Values) -> list[Solid]:
    wide, thick = float(v["outside"]), float(v["side_thickness"])
    first = [(0, 0), (v["depth"], 0), (v["depth"], v["front_height"]), (0, v["back_height"])]
    deep = v["second_deep"]
    second = [(0, 0), (deep, 0), (deep, v["second_front"]), (0, v["second_back"])]
    return [
        prism("Side", first, "y", 0, thick, (0.0, -1.0, 0.0), UP),
        prism("Side", second, "y", wide - thick, wide, ACROSS, UP),
    ]


def _front(v: Values) -> Solid:
    """As it is cut: its ends rabbeted from the inner face as wide as the sides are thick, its top planed to a slope."""
    low, high = _midway(v, "front_long")
    inner, face, thick = float(v["depth"] - v["rabbet"]), float(v["depth"] + v["proud"]), float(v["side_thickness"])
    shoulder, fall = float(v["depth"]), float(v["front_inner"] - v["front_outer"]) / (face - inner)
    plan = [
        *((face, low), (face, high), (shoulder, high), (shoulder, high - thick)),
        *((inner, high - thick), (inner, low + thick), (shoulder, low + thick), (shoulder, low)),
    ]
    top = float(v["front_outer"])
    return prism("Front", plan, "z", 0, lambda x, y: top + (face - x) * fall, FORTH, ACROSS)


def _bottom(v: Values) -> Solid:
    low, high = _midway(v, "bottom_wide")
    begin = float(v["allowance"]) / 2
    end = begin + float(v["bottom_deep"])
    return block("Bottom", (begin, low, 0), (end, high, v["bottom_thickness"]), (0.0, 0.0, -1.0), ACROSS)


def _back(v: Values) -> Solid:
    low, high = _midway(v, "back_wide")
    foot, thick = -float(v["tail"]), float(v["back_thickness"])
    return block("Back", (-thick, low, foot), (0, high, foot + float(v["back_high"])), (-1.0, 0.0, 0.0), UP)


def _lid(v: Values) -> list[Solid]:
    """Strip and moving lid side by side, a batten towards each end; grain as in the list of parts."""
    shapes, turn = section(v), math.radians(float(v["angle"]))
    low, high = _midway(v, "lid_wide")
    slope: Spot3 = (math.cos(turn), 0.0, -math.sin(turn))
    inset, wide = float(v["batten_in"]), float(v["batten_width"])
    battens = (low + inset, low + inset + wide), (high - inset - wide, high - inset)
    return [
        prism("Fixed strip", shapes["strip"], "y", low, high, UP, ACROSS),
        prism("Moving lid", shapes["moving"], "y", low, high, (0.4, 0.0, 1.0), ACROSS),
        *(prism("Batten", shapes["batten"], "y", *ends, (0.2, 0.0, 0.5), slope) for ends in battens),
    ]


def _midway(v: Values, size: str) -> tuple[float, float]:
    """Where a part so wide begins and ends across the box, its middle on the box's own."""
    middle, half = float(v["outside"]) / 2, float(v[size]) / 2
    return middle - half, middle + half
