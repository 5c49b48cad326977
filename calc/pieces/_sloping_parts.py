"""The parts of a sloping-lid box: sizes along and across the grain, angles, what each joins."""

from typing import Any

from calc.pieces._part import Part, glued
from calc.pieces._sloping_lid_parts import SIDEWAYS, batten_part, lid_part, moving_part, strip_part

UPRIGHT = "upright"


def side_part(
    back_height: Any, depth: Any, side_thickness: Any, angle: Any, front_height: Any, stock_width: Any, joint: Any
) -> Part:
    """The two sides."""
    part = Part(
        part="Side",
        count=2,
        length=back_height,
        width=depth,
        thickness=side_thickness,
        grain=UPRIGHT,
        bevel=angle,
        cut="top end to the slope",
        short=front_height,
        joins="back, front, bottom, strip",
    )
    return glued(part, stock_width, joint)


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
    part = Part(
        part="Front",
        count=1,
        length=front_long,
        width=front_inner,
        thickness=front_thickness,
        grain=SIDEWAYS,
        bevel=angle,
        cut="top edge bevelled, lower outside; ends rabbeted inside",
        short=front_outer,
        joins="sides, bottom",
    )
    return glued(part, stock_width, joint)


def bottom_part(bottom_wide: Any, bottom_deep: Any, bottom_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The bottom."""
    part = Part(
        part="Bottom",
        count=1,
        length=bottom_wide,
        width=bottom_deep,
        thickness=bottom_thickness,
        grain=SIDEWAYS,
        joins="between sides, front and back",
    )
    return glued(part, stock_width, joint)


def back_part(back_high: Any, back_wide: Any, back_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The back."""
    part = Part(
        part="Back",
        count=1,
        length=back_high,
        width=back_wide,
        thickness=back_thickness,
        grain=UPRIGHT,
        joins="back edges of the sides, bottom, strip; the wall",
    )
    return glued(part, stock_width, joint)


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
