"""The parts of a sliding-lid box: sizes along and across the grain, what each joins."""

from typing import Any

from calc.pieces._part import Part, sawn

ACROSS, ALONG = "side to side", "back to front"


def side_part(side_long: Any, side_high: Any, wall_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The two sides."""
    size, stock = (side_long, side_high, wall_thickness), (stock_width, joint)
    cut = "ends and lower edge rabbeted, groove for the lid, inside"
    return sawn("Side", 2, size, ALONG, "front, back, bottom; the lid slides in it", stock, cut=cut)


def front_part(front_long: Any, front_high: Any, wall_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The front, lower than the sides."""
    size, stock = (front_long, front_high, wall_thickness), (stock_width, joint)
    cut = "lower edge rabbeted inside"
    return sawn("Front", 1, size, ACROSS, "sides, bottom; the lid passes over it", stock, cut=cut)


def back_part(back_long: Any, back_high: Any, wall_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The back."""
    size, stock = (back_long, back_high, wall_thickness), (stock_width, joint)
    return sawn("Back", 1, size, ACROSS, "sides, bottom", stock, cut="lower edge rabbeted, groove for the lid, inside")


def bottom_part(bottom_long: Any, bottom_across: Any, bottom_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The bottom."""
    size, stock = (bottom_long, bottom_across, bottom_thickness), (stock_width, joint)
    return sawn("Bottom", 1, size, ALONG, "in the rabbets of all four walls", stock)


def lid_part(lid_long: Any, lid_wide: Any, lid_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The lid."""
    size, stock = (lid_long, lid_wide, lid_thickness), (stock_width, joint)
    cut = "rabbeted on top along both sides and the back; thumb notch"
    return sawn("Lid", 1, size, ALONG, "slides in sides and back", stock, cut=cut)


def listed(side_part: Part, front_part: Part, back_part: Part, bottom_part: Part, lid_part: Part) -> list[Part]:
    """Every part, in the order of assembly."""
    return [side_part, front_part, back_part, bottom_part, lid_part]


PARTS = (side_part, front_part, back_part, bottom_part, lid_part)
