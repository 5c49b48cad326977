"""The parts of a splayed tray: sizes along and across the grain, what each joins, how they are nailed together."""

from typing import Any

from calc import trig
from calc.declare import Values
from calc.pieces._joints import END, Row, joint, nail
from calc.pieces._part import Part, Stock, sawn
from calc.pieces._tray_shape import longest

FREE = "none: the bottom moves across its grain"
MITRED = "ends sawn to a compound mitre"
BUTTED = "ends sawn to a compound bevel"


def _side(name: str, edges: Values, sized: Values, corners: str, face_cut: Any, stock: Stock) -> Part:
    joins = "ends, bottom" if name == "Long side" else "long sides, bottom"
    cut = MITRED if corners == "mitre" else BUTTED
    long = sized["outer"] + longest(edges) - edges["outside_top"]
    size, more = (long, sized["wide"], sized["thick"]), {"short": min(edges.values()), "blank_long": sized["blank"]}
    return sawn(name, 2, size, "lengthways", joins, stock, bevel=face_cut, cut=cut, **more)


def long_part(
    long_edges: Values,
    long_side: Any,
    long_blank: Any,
    blank_wide: Any,
    side_thickness: Any,
    corners: str,
    face_cut: Any,
    stock_width: Any,
    joint: Any,
) -> Part:
    """The two long sides, along their longest edge."""
    sized = {"outer": long_side, "blank": long_blank, "wide": blank_wide, "thick": side_thickness}
    return _side("Long side", long_edges, sized, corners, face_cut, (stock_width, joint))


def end_part(
    end_edges: Values,
    end_side: Any,
    end_blank: Any,
    blank_wide: Any,
    side_thickness: Any,
    corners: str,
    face_cut: Any,
    stock_width: Any,
    joint: Any,
) -> Part:
    """The two ends, along their longest edge."""
    sized = {"outer": end_side, "blank": end_blank, "wide": blank_wide, "thick": side_thickness}
    return _side("End", end_edges, sized, corners, face_cut, (stock_width, joint))


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


def level_nail(nails: str, wood: str, side_thickness: Any, into: Any, lean: Any) -> Values:
    """The nail driven level through a leaning side into wood that goes on so far level behind it.

    Square to the side it would rise by sin(lean) of what is in the wood behind, and come out through the floor of the
    tray, or through the face of an end.
    """
    return nail(nails, wood, side_thickness, into * trig.cos(lean), lean)


def corner_joint(
    nails: str, wood: str, spacing: Any, side_thickness: Any, end_side: Any, side_wide: Any, lean: Any
) -> Row:
    """Through the long sides into the ends of the ends, along their length."""
    return joint("Corners", level_nail(nails, wood, side_thickness, end_side, lean), (side_wide,) * 4, spacing, END)


def long_to_bottom(
    nails: str,
    wood: str,
    spacing: Any,
    side_thickness: Any,
    bottom_wide: Any,
    bottom_long: Any,
    bottom_thickness: Any,
    lean: Any,
) -> Row:
    """Through the long sides into the bottom's long edges."""
    into = bottom_wide - bottom_thickness * trig.tan(lean)
    found = level_nail(nails, wood, side_thickness, into, lean)
    return joint("Long sides to bottom", found, (bottom_long,) * 2, spacing, FREE)


def end_to_bottom(
    nails: str,
    wood: str,
    spacing: Any,
    side_thickness: Any,
    bottom_long: Any,
    bottom_wide: Any,
    bottom_thickness: Any,
    lean: Any,
) -> Row:
    """Through the ends into the end grain of the bottom, whose width must be free to move."""
    into = bottom_long - bottom_thickness * trig.tan(lean)
    found = level_nail(nails, wood, side_thickness, into, lean)
    return joint("Ends to bottom", found, (bottom_wide,) * 2, spacing, FREE)


def jointed(corner_joint: Row, end_to_bottom: Row, long_to_bottom: Row) -> list[Row]:
    """Every nailed joint, in the order of assembly."""
    return [corner_joint, end_to_bottom, long_to_bottom]


PARTS = (long_part, end_part, bottom_part)
JOINTS = (corner_joint, long_to_bottom, end_to_bottom)
