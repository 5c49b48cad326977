"""The parts of a splayed tray: sizes along and across the grain, what each joins, how they are nailed together."""

from typing import Any

from calc.declare import Values
from calc.pieces._joints import END, Row, joint, nail
from calc.pieces._part import Part, Sized, Stock, sawn

FREE = "none: the bottom moves across its grain"
MITRED = "ends sawn to a compound mitre"
BUTTED = "ends sawn to a compound bevel"


def _side(name: str, edges: Values, size: Sized, corners: str, face_cut: Any, stock: Stock) -> Part:
    joins = "ends, bottom" if name == "Long side" else "long sides, bottom"
    cut = MITRED if corners == "mitre" else BUTTED
    return sawn(name, 2, size, "lengthways", joins, stock, bevel=face_cut, cut=cut, short=min(edges.values()))


def long_part(
    long_edges: Values,
    long_side: Any,
    blank_wide: Any,
    side_thickness: Any,
    corners: str,
    face_cut: Any,
    stock_width: Any,
    joint: Any,
) -> Part:
    """The two long sides, along their longest edge."""
    size = (long_side, blank_wide, side_thickness)
    return _side("Long side", long_edges, size, corners, face_cut, (stock_width, joint))


def end_part(
    end_edges: Values,
    end_side: Any,
    blank_wide: Any,
    side_thickness: Any,
    corners: str,
    face_cut: Any,
    stock_width: Any,
    joint: Any,
) -> Part:
    """The two ends, along their longest edge."""
    size = (end_side, blank_wide, side_thickness)
    return _side("End", end_edges, size, corners, face_cut, (stock_width, joint))


def bottom_part(
    bottom_long: Any,
    bottom_wide: Any,
    bottom_thickness: Any,
    lean: Any,
    bottom_under: Any,
    stock_width: Any,
    joint: Any,
) -> Part:
    """The bottom, at its upper face."""
    size, stock = (bottom_long, bottom_wide, bottom_thickness), (stock_width, joint)
    joins, cut = "let in between all four sides", "all four edges bevelled, smaller below"
    return sawn("Bottom", 1, size, "lengthways", joins, stock, bevel=lean, cut=cut, short=bottom_under)


def listed(long_part: Part, end_part: Part, bottom_part: Part) -> list[Part]:
    """Every part."""
    return [long_part, end_part, bottom_part]


def corner_joint(nails: str, wood: str, spacing: Any, side_thickness: Any, end_side: Any, side_wide: Any) -> Row:
    """Through the long sides into the ends of the ends."""
    return joint("Corners", nail(nails, wood, side_thickness, end_side), (side_wide,) * 4, spacing, END)


def long_to_bottom(nails: str, wood: str, spacing: Any, side_thickness: Any, bottom_wide: Any, bottom_long: Any) -> Row:
    """Through the long sides into the bottom's long edges."""
    return joint(
        "Long sides to bottom", nail(nails, wood, side_thickness, bottom_wide), (bottom_long,) * 2, spacing, FREE
    )


def end_to_bottom(nails: str, wood: str, spacing: Any, side_thickness: Any, bottom_long: Any, bottom_wide: Any) -> Row:
    """Through the ends into the end grain of the bottom, whose width must be free to move."""
    return joint("Ends to bottom", nail(nails, wood, side_thickness, bottom_long), (bottom_wide,) * 2, spacing, FREE)


def jointed(corner_joint: Row, end_to_bottom: Row, long_to_bottom: Row) -> list[Row]:
    """Every nailed joint, in the order of assembly."""
    return [corner_joint, end_to_bottom, long_to_bottom]


PARTS = (long_part, end_part, bottom_part)
JOINTS = (corner_joint, long_to_bottom, end_to_bottom)
