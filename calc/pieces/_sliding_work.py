"""How a sliding-lid box goes together: each joint, its nail, how many, whether glue helps; and in what order."""

from typing import Any

from calc.declare import Values
from calc.pieces._joints import CROSS, END, LONG, Row, drill, joint, nail
from calc.pieces._order import Step, glued_first, step


def corners(nails: str, wood: str, spacing: Any, tongue: Any, front_long: Any, front_high: Any, back_high: Any) -> Row:
    """Through the tongues of the sides into the ends of front and back."""
    lines = (front_high, front_high, back_high, back_high)
    return joint("Sides to front and back", nail(nails, wood, tongue, front_long), lines, spacing, END)


def bottom_side(nails: str, wood: str, spacing: Any, bottom_thickness: Any, inside_high: Any, bottom_long: Any) -> Row:
    """Up through the bottom into one side only, so that its other edge may move; the point stays below the groove."""
    found = nail(nails, wood, bottom_thickness, inside_high)
    return joint("Bottom to one side", found, (bottom_long,), spacing, LONG)


def bottom_ends(
    nails: str, wood: str, spacing: Any, bottom_thickness: Any, inside_high: Any, bottom_across: Any
) -> Row:
    """Up through the bottom into front and back, across its grain: slim nails give with it."""
    found = nail(nails, wood, bottom_thickness, inside_high)
    return joint("Bottom to front and back", found, (bottom_across,) * 2, spacing, CROSS)


JOINTS = (corners, bottom_side, bottom_ends)


def jointed(corners: Row, bottom_side: Row, bottom_ends: Row) -> list[Row]:
    """Every joint, in the order of assembly."""
    return [corners, bottom_side, bottom_ends]


def order(m: Values) -> list[Step]:
    """Glue up; everything across the grain before anything along it; then nail, and fit the lid last."""
    return glued_first(m, _across(m), _along(m), _together(m))


def _across(m: Values) -> list[Step]:
    return [
        step("Saw the sides to length, together", "crosscut saw", m["side_long"], m["second_long"]),
        step("Saw front and back to length, together: front, back", "crosscut saw", m["front_long"], m["back_long"]),
        step("Saw bottom and lid to length", "crosscut saw", m["bottom_long"], m["lid_long"]),
        step("Rabbet the sides' back ends, knifed first: fence, depth", "rabbet plane", m["wall_thickness"],
             m["rabbet"]),
        step("Saw and pare the sides' front rabbets as wide and deep, only up from the lower edge so far",
             "tenon saw, chisel", m["front_high"], m["rabbet"]),
        step("Rabbet the lid's back end on its upper face: fence, depth", "rabbet plane", m["lid_rabbet"],
             m["lid_step"]),
    ]  # fmt: skip


def _along(m: Values) -> list[Step]:
    return [
        step("Sides and back to width, to one gauge setting; front lower: sides, front", "rip saw, plane",
             m["side_high"], m["front_high"]),
        step("Plough sides and back, from the upper edge: fence, depth; the iron is the groove's width",
             "plough plane", m["lip"], m["groove_deep"]),
        step("Rabbet the lower edges of all four: fence, depth", "rabbet plane", m["bottom_thickness"], m["rabbet"]),
        step("Lid to width", "rip saw, plane", m["lid_wide"]),
        step("Rabbet the lid's long edges on its upper face: fence, depth", "rabbet plane", m["lid_rabbet"],
             m["lid_step"]),
    ]  # fmt: skip


def _together(m: Values) -> list[Step]:
    past = m["overhang"]
    end = "past the box by its overhang" if past else "flush with the box"
    return [
        step("Bore and nail the sides to front and back, clear of the grooves; check for square by the diagonals",
             drill(m.get("corners"), "hammer", "punch")),
        step("Plane the bottom to width; try it in, tight to one side; glue and nail it there, nail the ends only",
             "plane, hammer", m["bottom_across"]),
        step("Slide the lid in; ease its tongue until it runs, and wax it", "shoulder plane"),
        step("Cut the thumb notch: stop cut in from the front, wide; slope down to it", "chisel, gouge",
             m["notch_in"], m["notch_wide"]),
        step(f"Plane the lid's front end square, {end}", "block plane", past or None),
    ]  # fmt: skip
