"""A sliding-lid box as solids: every part where it lies in the shut box, from the sizes it is cut to.

x runs from the back's outer face to the front's, y from the left side's outer face, z up from the table. The lid lies
on the lower edges of its grooves, midway between them. Left out: nails and thumb notch.
"""

from calc.declare import Values
from calc.drawing.solid import Meeting, Solid, Spot3, block
from calc.pieces._carved import carved

FORTH: Spot3 = (1.0, 0.0, 0.0)
BACK: Spot3 = (-1.0, 0.0, 0.0)
ACROSS: Spot3 = (0.0, 1.0, 0.0)
LEFT: Spot3 = (0.0, -1.0, 0.0)
DOWN: Spot3 = (0.0, 0.0, -1.0)
OUT: Spot3 = (0.5, 0.0, 1.0)
MEETINGS = (
    *(Meeting(one, "Side") for one in ("Front", "Back", "Bottom", "Lid")),
    *(Meeting("Bottom", other) for other in ("Front", "Back")),
    *(Meeting("Lid", other) for other in ("Front", "Back")),
)


def solids(v: Values) -> list[Solid]:
    """Two sides, front, back, bottom and lid."""
    return [*_sides(v), *_ends(v), _bottom(v), _lid(v)]


def _sides(v: Values) -> list[Solid]:
    wall, r, low, deep = v["wall_thickness"], v["rabbet"], v["bottom_thickness"], v["groove_deep"]
    far, found = v["outside_wide"] - wall, []
    for left, long, high, lip in (
        (True, v["side_long"], v["side_high"], v["lip"]),
        (False, v["second_long"], v["second_high"], v["second_lip"]),
    ):
        floor = high - lip - v["groove"]
        taken = (
            (0, wall, 0, high, r),
            (long - wall, long, 0, v["front_high"], r),
            (0, long, 0, low, r),
            (0, long, floor, floor + v["groove"], deep),
        )
        at = 0 if left else far
        spans = [(x, xx, z, zz, *((wall - into, wall) if left else (far, far + into))) for x, xx, z, zz, into in taken]
        cuts = [((x, y, z), (xx, yy, zz)) for x, xx, z, zz, y, yy in spans]
        found.append(carved("Side", (0, at, 0), (long, at + wall, high), cuts, LEFT if left else ACROSS, FORTH))
    return found


def _ends(v: Values) -> list[Solid]:
    wall, r, low, long = v["wall_thickness"], v["rabbet"], v["bottom_thickness"], v["outside_long"]
    left, right = _midway(v, "front_long")
    front = [((long - wall, left, 0), (long - wall + r, right, low))]
    made = carved("Front", (long - wall, left, 0), (long, right, v["front_high"]), front, FORTH, ACROSS)
    left, right = _midway(v, "back_long")
    floor = v["back_high"] - v["back_lip"] - v["groove"]
    back = [
        ((wall - r, left, 0), (wall, right, low)),
        ((wall - v["groove_deep"], left, floor), (wall, right, floor + v["groove"])),
    ]
    return [made, carved("Back", (0, left, 0), (wall, right, v["back_high"]), back, BACK, ACROSS)]


def _bottom(v: Values) -> Solid:
    x, (y, yy) = (v["outside_long"] - v["bottom_long"]) / 2, _midway(v, "bottom_across")
    return block("Bottom", (x, y, 0), (v["outside_long"] - x, yy, v["bottom_thickness"]), DOWN, FORTH)


def _lid(v: Values) -> Solid:
    x = v["outside_long"] + v["overhang"] - v["lid_long"]
    end, (y, yy) = v["outside_long"] + v["overhang"], _midway(v, "lid_wide")
    low, top, wide = v["front_high"], v["front_high"] + v["lid_thickness"], v["lid_rabbet"]
    step = low + v["lid_tongue"]
    cuts = [
        ((x, y, step), (end, y + wide, top)),
        ((x, yy - wide, step), (end, yy, top)),
        ((x, y, step), (x + wide, yy, top)),
    ]
    return carved("Lid", (x, y, low), (end, yy, top), cuts, OUT, FORTH)


def _midway(v: Values, size: str) -> tuple[float, float]:
    """Where a part so wide begins and ends across the box."""
    middle, half = float(v["outside_wide"]) / 2, float(v[size]) / 2
    return middle - half, middle + half
