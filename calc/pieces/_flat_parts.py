"""The parts of a flat-lid box: sizes along and across the grain, what each joins."""

from typing import Any

from calc.pieces._part import Part, battens, sawn

SIDEWAYS, DEEP = "side to side", "front to back"


def front_part(front_long: Any, front_high: Any, wall_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The front."""
    return _end("Front", front_long, front_high, wall_thickness, stock_width, joint)


def back_part(back_long: Any, back_high: Any, wall_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The back."""
    return _end("Back", back_long, back_high, wall_thickness, stock_width, joint)


def _end(name: str, long: Any, high: Any, thick: Any, stock_width: Any, joint: Any) -> Part:
    cut = "ends and lower edge rabbeted inside"
    size, stock = (long, high, thick), (stock_width, joint)
    return sawn(name, 1, size, SIDEWAYS, "sides, bottom", stock, cut=cut)


def side_part(side_long: Any, side_high: Any, wall_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The two sides."""
    size, stock = (side_long, side_high, wall_thickness), (stock_width, joint)
    return sawn("Side", 2, size, DEEP, "front, back, bottom", stock, cut="lower edge rabbeted inside")


def bottom_part(bottom_long: Any, bottom_across: Any, bottom_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The bottom."""
    size, stock = (bottom_long, bottom_across, bottom_thickness), (stock_width, joint)
    return sawn("Bottom", 1, size, SIDEWAYS, "in the rabbets of all four walls", stock)


def lid_part(lid_long: Any, lid_wide: Any, lid_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The lid."""
    size, stock = (lid_long, lid_wide, lid_thickness), (stock_width, joint)
    return sawn("Lid", 1, size, SIDEWAYS, "lies on the walls; battens", stock)


def batten_part(batten_long: Any, batten_width: Any, batten_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The two battens; Refusal where the stock is narrower than they are."""
    size, stock = (batten_long, batten_width, batten_thickness), (stock_width, joint)
    return battens(size, DEEP, "under the lid, across its grain", stock)


def listed(
    front_part: Part, back_part: Part, side_part: Part, bottom_part: Part, lid_part: Part, batten_part: Part
) -> list[Part]:
    """Every part, in the order of assembly."""
    return [front_part, back_part, side_part, bottom_part, lid_part, batten_part]


PARTS = (front_part, back_part, side_part, bottom_part, lid_part, batten_part)
