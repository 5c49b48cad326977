"""The parts of a sloping-lid box: sizes along and across the grain, angles, what each joins."""

from typing import Any

from calc.pieces._part import Part, sawn
from calc.pieces._sloping_lid_parts import SIDEWAYS, batten_part, lid_part, moving_part, strip_part

UPRIGHT = "upright"


def side_part(
    back_height: Any, depth: Any, side_thickness: Any, angle: Any, front_height: Any, stock_width: Any, joint: Any
) -> Part:
    """The two sides."""
    size, stock = (back_height, depth, side_thickness), (stock_width, joint)
    cut = "top end to the slope"
    return sawn("Side", 2, size, UPRIGHT, "back, front, bottom, strip", stock, bevel=angle, cut=cut, short=front_height)


def front_part(
    front_long: Any,
    front_inner: Any,
    front_thickness: Any,
    angle: Any,
    front_outer: Any,
    stock_width: Any,
    joint: Any,
) -> Part:
    """The front, before its bevel and rabbets."""
    size, stock = (front_long, front_inner, front_thickness), (stock_width, joint)
    cut = "top edge bevelled, lower outside; ends rabbeted inside"
    return sawn("Front", 1, size, SIDEWAYS, "sides, bottom", stock, bevel=angle, cut=cut, short=front_outer)


def bottom_part(bottom_wide: Any, bottom_deep: Any, bottom_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The bottom."""
    size, stock = (bottom_wide, bottom_deep, bottom_thickness), (stock_width, joint)
    return sawn("Bottom", 1, size, SIDEWAYS, "between sides, front and back", stock)


def back_part(back_high: Any, back_wide: Any, back_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The back."""
    size, stock = (back_high, back_wide, back_thickness), (stock_width, joint)
    return sawn("Back", 1, size, UPRIGHT, "back edges of the sides, bottom, strip; the wall", stock)


def listed(
    side_part: Part,
    front_part: Part,
    bottom_part: Part,
    back_part: Part,
    lid_part: Part,
    strip_part: Part,
    moving_part: Part,
    batten_part: Part,
) -> list[Part]:
    """Every part, in the order of assembly; the lid before its strip is sawn off, then what becomes of it."""
    first = [side_part, front_part, bottom_part, back_part]
    return [*first, lid_part, strip_part, moving_part, batten_part]


PARTS = (side_part, front_part, bottom_part, back_part, lid_part, strip_part, moving_part, batten_part)
"""What each part is worked out by, in the order of assembly."""
