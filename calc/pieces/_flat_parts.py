"""The parts of a flat-lid box: sizes along and across the grain, what each joins."""

from typing import Any

from calc.pieces._part import Part, glued, narrow

SIDEWAYS, DEEP = "side to side", "front to back"


def front_part(front_long: Any, front_high: Any, wall_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The front."""
    return _end("Front", front_long, front_high, wall_thickness, stock_width, joint)


def back_part(back_long: Any, back_high: Any, wall_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The back."""
    return _end("Back", back_long, back_high, wall_thickness, stock_width, joint)


def _end(name: str, long: Any, high: Any, thick: Any, stock_width: Any, joint: Any) -> Part:
    cut = "ends and lower edge rabbeted inside"
    part = Part(
        part=name, count=1, length=long, width=high, thickness=thick, grain=SIDEWAYS, cut=cut, joins="sides, bottom"
    )
    return glued(part, stock_width, joint)


def side_part(side_long: Any, side_high: Any, wall_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The two sides."""
    part = Part(
        part="Side",
        count=2,
        length=side_long,
        width=side_high,
        thickness=wall_thickness,
        grain=DEEP,
        cut="lower edge rabbeted inside",
        joins="front, back, bottom",
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
        grain=SIDEWAYS,
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
        grain=SIDEWAYS,
        joins="lies on the walls; battens",
    )
    return glued(part, stock_width, joint)


def batten_part(batten_long: Any, batten_width: Any, batten_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The two battens; Refusal where the stock is narrower than they are."""
    if batten_width > stock_width:
        raise narrow()
    part = Part(
        part="Batten",
        count=2,
        length=batten_long,
        width=batten_width,
        thickness=batten_thickness,
        grain=DEEP,
        joins="under the lid, across its grain",
    )
    return glued(part, stock_width, joint)


def listed(
    front_part: Part, back_part: Part, side_part: Part, bottom_part: Part, lid_part: Part, batten_part: Part
) -> list[Part]:
    """Every part, in the order of assembly."""
    return [front_part, back_part, side_part, bottom_part, lid_part, batten_part]


PARTS = (front_part, back_part, side_part, bottom_part, lid_part, batten_part)
