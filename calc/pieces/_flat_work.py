"""How a flat-lid box goes together: each joint, its nail or screw, how many, whether glue helps; and in what order."""

from typing import Any

from calc.declare import Values
from calc.pieces._joints import CROSS, END, LONG, SCREWED, Row, drill, joint, nail
from calc.pieces._order import Step, glued_first, step


def corners(nails: str, wood: str, spacing: Any, tongue: Any, side_long: Any, front_high: Any, back_high: Any) -> Row:
    """Through the tongues of front and back into the ends of the sides."""
    lines = (front_high, front_high, back_high, back_high)
    return joint("Front and back to sides", nail(nails, wood, tongue, side_long), lines, spacing, END)


def bottom_front(nails: str, wood: str, spacing: Any, bottom_thickness: Any, inside_high: Any, bottom_long: Any) -> Row:
    """Up through the bottom into the front only, so that its back edge may move."""
    found = nail(nails, wood, bottom_thickness, inside_high)
    return joint("Bottom to front", found, (bottom_long,), spacing, LONG)


def bottom_sides(
    nails: str, wood: str, spacing: Any, bottom_thickness: Any, inside_high: Any, bottom_across: Any
) -> Row:
    """Up through the bottom into the sides, across its grain: slim nails give with it."""
    found = nail(nails, wood, bottom_thickness, inside_high)
    return joint("Bottom to sides", found, (bottom_across,) * 2, spacing, CROSS)


def battens(screw: int, screwed: Values, batten_thickness: Any) -> Row:
    """Three screws to a batten from below: the middle one fast, the end ones in slots."""
    none = screwed["length"] is None
    name = "none of this number stays inside" if none else f"No. {screw} round-head screw, washer"
    sizes = {"nail": name, "length": screwed["length"], "diameter": screwed["diameter"], "hole": screwed["hole"]}
    told = {"joint": "Battens to lid", "by": SCREWED, "held": batten_thickness, "count": 6, "glue": CROSS, "from": ""}
    return told | sizes


JOINTS = (corners, bottom_front, bottom_sides, battens)


def jointed(corners: Row, bottom_front: Row, bottom_sides: Row, battens: Row) -> list[Row]:
    """Every joint, in the order of assembly."""
    return [corners, bottom_front, bottom_sides, battens]


def order(m: Values) -> list[Step]:
    """Glue up; everything across the grain before anything along it; then nail, and fit the lid last."""
    return glued_first(m, _across(m), _along(m), _together(m), _battens(m))


def _across(m: Values) -> list[Step]:
    return [
        step("Saw front and back to length, together: front, back", "crosscut saw", m["front_long"], m["back_long"]),
        step("Saw the sides to length, together", "crosscut saw", m["side_long"], m["second_long"]),
        step("Saw bottom and lid to length", "crosscut saw", m["bottom_long"], m["lid_long"]),
        step("Saw the battens to length", "crosscut saw", m["batten_long"]),
        step("Rabbet the ends of front and back, knifed first: fence, depth", "rabbet plane", m["wall_thickness"],
             m["rabbet"]),
    ]  # fmt: skip


def _along(m: Values) -> list[Step]:
    return [
        step("Walls to width, all to one gauge setting: front, sides", "rip saw, plane", m["front_high"],
             m["side_high"]),
        step("Rabbet the lower edges of all four: fence, depth", "rabbet plane", m["bottom_thickness"], m["rabbet"]),
        step("Lid and battens to width", "rip saw, plane", m["lid_wide"], m["batten_width"]),
    ]  # fmt: skip


def _together(m: Values) -> list[Step]:
    return [
        step("Bore and nail front and back to the sides; check for square by the diagonals",
             drill(m.get("corners"), "hammer", "punch")),
        step("Plane the bottom to width; try it in, tight to the front; glue and nail it there, nail the sides only",
             "plane, hammer", m["bottom_across"]),
        step("Plane the walls' top edges level; try the lid on", "plane"),
    ]  # fmt: skip


def _battens(m: Values) -> list[Step]:
    place = step("Mark the battens on the lid: in from its ends, in from its edges", "gauge", m["batten_in"],
                 m["batten_down"])  # fmt: skip
    if m["screwed"]["length"] is None:
        return [place, step("No screw sold stays inside this lid: settle how the battens are held", "")]
    return [
        step("Bore the battens to clear their screws: the end holes in from the ends, filed to slots so long over all",
             f"drill {m['clear_drill']}; file", m["screw_in"], m["slot_long"]),
        place,
        step("Bore the lid and screw the battens on, no glue: middle tight, ends just snug in their slots; try the lid "
             "both ways", drill(m.get("battens"), "screwdriver")),
    ]  # fmt: skip
