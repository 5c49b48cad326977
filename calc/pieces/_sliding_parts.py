"""The parts of a sliding-lid box: sizes along and across the grain, what each joins."""

from typing import Any

from calc.pieces._part import Part, glued

ACROSS, ALONG = "side to side", "back to front"


def side_part(side_long: Any, side_high: Any, wall_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The two sides."""
    part = Part(
        part="Side",
        count=2,
        length=side_long,
        width=side_high,
        thickness=wall_thickness,
        grain=ALONG,
        cut="ends and lower edge rabbeted, groove for the lid, inside",
        joins="front, back, bottom; the lid slides in it",
    )
    return glued(part, stock_width, joint)


def front_part(front_long: Any, front_high: Any, wall_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The front, lower than the sides."""
    part = Part(
        part="Front",
        count=1,
        length=front_long,
        width=front_high,
        thickness=wall_thickness,
        grain=ACROSS,
        cut="lower edge rabbeted inside",
        joins="sides, bottom; the lid passes over it",
    )
    return glued(part, stock_width, joint)


def back_part(back_long: Any, back_high: Any, wall_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The back."""
    part = Part(
        part="Back",
        count=1,
        length=back_long,
        width=back_high,
        thickness=wall_thickness,
        grain=ACROSS,
        cut="lower edge rabbeted, groove for the lid, inside",
        joins="sides, bottom",
    )
    return glued(part, stock_width, joint)


def bottom_part(bottom_long: Any, bottom_across: Any, bottom_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The bottom."""
    part = Part(
        part="Bottom",
        count=1,
        length=bottom_long,
        width=bottom_across,
        thickness=bottom_thickness,
        grain=ALONG,
        joins="in the rabbets of all four walls",
    )
    return glued(part, stock_width, joint)


def lid_part(lid_long: Any, lid_wide: Any, lid_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The lid."""
    part = Part(
        part="Lid",
        count=1,
        length=lid_long,
        width=lid_wide,
        thickness=lid_thickness,
        grain=ALONG,
        cut="rabbeted on top along both sides and the back; thumb notch",
        joins="slides in sides and back",
    )
    return glued(part, stock_width, joint)


def listed(side_part: Part, front_part: Part, back_part: Part, bottom_part: Part, lid_part: Part) -> list[Part]:
    """Every part, in the order of assembly."""
    return [side_part, front_part, back_part, bottom_part, lid_part]


PARTS = (side_part, front_part, back_part, bottom_part, lid_part)
