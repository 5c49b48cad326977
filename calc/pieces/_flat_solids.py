"""A flat-lid box as solids: every part where it lies in the closed box, from the sizes it is cut to.

x runs from the back's outer face to the front's, y from the left side's outer face, z up from the table. Left out:
holes, slots and screws. The bottom lies midway in its rabbets.
"""

from calc.declare import Values
from calc.drawing.solid import Meeting, Solid, Spot3, block
from calc.pieces._carved import carved

FORTH: Spot3 = (1.0, 0.0, 0.0)
BACK: Spot3 = (-1.0, 0.0, 0.0)
ACROSS: Spot3 = (0.0, 1.0, 0.0)
LEFT: Spot3 = (0.0, -1.0, 0.0)
UP: Spot3 = (0.0, 0.0, 1.0)
DOWN: Spot3 = (0.0, 0.0, -1.0)
MEETINGS = (
    Meeting("Front", "Side"),
    Meeting("Back", "Side"),
    Meeting("Bottom", "Front"),
    Meeting("Bottom", "Side"),
    *(Meeting("Lid", other) for other in ("Front", "Back", "Side", "Batten")),
    Meeting("Side", "Batten", lambda v: v["side_clearance"]),
    *(Meeting(other, "Batten", lambda v: v["clearance"]) for other in ("Front", "Back")),
)


def solids(v: Values) -> list[Solid]:
    """Front, back, two sides, bottom, lid and two battens."""
    return [*_walls(v), _bottom(v), *_lid(v)]


def _walls(v: Values) -> list[Solid]:
    wall, r, low = v["wall_thickness"], v["rabbet"], v["bottom_thickness"]
    deep, wide = v["outside_deep"], v["outside_wide"]
    found = []
    for part, at, inner, long, high, way in (
        ("Back", 0, v["tongue"], v["back_long"], v["back_high"], BACK),
        ("Front", deep - wall, deep - wall, v["front_long"], v["front_high"], FORTH),
    ):
        left, right = (wide - long) / 2, (wide + long) / 2
        taken = [(left, left + wall, 0, high), (right - wall, right, 0, high), (left, right, 0, low)]
        cuts = [((inner, y, z), (inner + r, yy, zz)) for y, yy, z, zz in taken]
        found.append(carved(part, (at, left, 0), (at + wall, right, high), cuts, way, ACROSS))
    for at, inner, long, high, way in (
        (0, v["tongue"], v["side_long"], v["side_high"], LEFT),
        (wide - wall, wide - wall, v["second_long"], v["second_high"], ACROSS),
    ):
        start, end = (deep - long) / 2, (deep + long) / 2
        cuts = [((start, inner, 0), (end, inner + r, low))]
        found.append(carved("Side", (start, at, 0), (end, at + wall, high), cuts, way, FORTH))
    return found


def _bottom(v: Values) -> Solid:
    deep, wide = (v["outside_deep"] - v["bottom_across"]) / 2, (v["outside_wide"] - v["bottom_long"]) / 2
    end = v["outside_deep"] - deep, v["outside_wide"] - wide, v["bottom_thickness"]
    return block("Bottom", (deep, wide, 0), end, DOWN, ACROSS)


def _lid(v: Values) -> list[Solid]:
    x, y = (v["outside_deep"] - v["lid_wide"]) / 2, (v["outside_wide"] - v["lid_long"]) / 2
    high, top = v["front_high"], v["front_high"] + v["lid_thickness"]
    lid = block("Lid", (x, y, high), (x + v["lid_wide"], y + v["lid_long"], top), UP, ACROSS)
    start, low = x + v["batten_down"], high - v["batten_thickness"]
    lefts = (y + v["batten_in"], y + v["lid_long"] - v["batten_in"] - v["batten_width"])
    battens = [
        block("Batten", (start, at, low), (start + v["batten_long"], at + v["batten_width"], high), (0, 0, 0.5), FORTH)
        for at in lefts
    ]
    return [lid, *battens]
