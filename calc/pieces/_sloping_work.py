"""How a sloping-lid box goes together: each joint, the nail for it, how many, and whether glue helps."""

from typing import Any

from calc import trig
from calc.pieces._joints import CROSS, END, LONG, Row, joint, nail
from calc.pieces._sloping_hinges import hinges_to_lid


def under_strip(front_height: Any, back_thickness: Any, angle: Any) -> Any:
    """How deep a nail through the strip may go, square to the slope: it runs towards the back, and must not come out
    behind even where it starts at the back's face."""
    return min(front_height, back_thickness / trig.sin(angle))


def strip_nail(nails: str, wood: str, lid_thickness: Any, under_strip: Any) -> Any:
    """The diameter of the nail through the fixed strip into the tops of the sides, or None where no table has it."""
    return nail(nails, wood, lid_thickness, under_strip)["diameter"]


def front_to_sides(nails: str, wood: str, spacing: Any, proud: Any, depth: Any, front_height: Any) -> Row:
    """Through the front's tongues into the sides' front edges."""
    return joint("Front to sides", nail(nails, wood, proud, depth), (front_height,) * 2, spacing, CROSS)


def sides_to_bottom(
    nails: str, wood: str, spacing: Any, side_thickness: Any, bottom_wide: Any, bottom_deep: Any
) -> Row:
    """Through the sides into the ends of the bottom."""
    return joint("Sides to bottom", nail(nails, wood, side_thickness, bottom_wide), (bottom_deep,) * 2, spacing, END)


def front_to_bottom(
    nails: str, wood: str, spacing: Any, front_thickness: Any, bottom_deep: Any, bottom_wide: Any
) -> Row:
    """Through the front into the edge of the bottom."""
    return joint("Front to bottom", nail(nails, wood, front_thickness, bottom_deep), (bottom_wide,), spacing, LONG)


def back_to_sides(nails: str, wood: str, spacing: Any, back_thickness: Any, depth: Any, back_height: Any) -> Row:
    """Through the back into the sides' back edges."""
    return joint("Back to sides", nail(nails, wood, back_thickness, depth), (back_height,) * 2, spacing, LONG)


def back_to_bottom(nails: str, wood: str, spacing: Any, back_thickness: Any, bottom_deep: Any, bottom_wide: Any) -> Row:
    """Through the back into the edge of the bottom."""
    return joint("Back to bottom", nail(nails, wood, back_thickness, bottom_deep), (bottom_wide,), spacing, CROSS)


def strip_to_sides(nails: str, wood: str, spacing: Any, lid_thickness: Any, under_strip: Any) -> Row:
    """Through the fixed strip into the tops of the sides: one nail to each, since all stand on one line."""
    return joint("Strip to sides", nail(nails, wood, lid_thickness, under_strip), (0,), spacing, END)


def back_to_strip(
    nails: str, wood: str, spacing: Any, back_thickness: Any, strip_under: Any, angle: Any, outside: Any
) -> Row:
    """From the back into the strip; a level nail would run out through its upper face, so down the slope."""
    found = nail(nails, wood, back_thickness, strip_under * trig.cos(angle), angle)
    return joint("Back to strip, down the slope", found, (outside,), spacing, CROSS)


def battens_to_lid(
    nails: str, wood: str, spacing: Any, batten_thickness: Any, lid_thickness: Any, batten_long: Any
) -> Row:
    """Through the battens into the moving lid's under face."""
    found = nail(nails, wood, batten_thickness, lid_thickness)
    return joint("Battens to moving lid", found, (batten_long,) * 2, spacing, CROSS)


JOINTS = (
    front_to_sides,
    sides_to_bottom,
    front_to_bottom,
    back_to_sides,
    back_to_bottom,
    strip_to_sides,
    back_to_strip,
    battens_to_lid,
    hinges_to_lid,
)
"""Every joint, in the order of assembly."""


def jointed(
    front_to_sides: Row,
    sides_to_bottom: Row,
    front_to_bottom: Row,
    back_to_sides: Row,
    back_to_bottom: Row,
    strip_to_sides: Row,
    back_to_strip: Row,
    battens_to_lid: Row,
    hinges_to_lid: Row,
) -> list[Row]:
    """Every joint: its nail or screw, the hole for it, how many, and whether glue helps."""
    first = [front_to_sides, sides_to_bottom, front_to_bottom, back_to_sides, back_to_bottom]
    return [*first, strip_to_sides, back_to_strip, battens_to_lid, hinges_to_lid]
