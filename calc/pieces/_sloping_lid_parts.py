"""The lid of a sloping-lid box before its strip is sawn off, what becomes of it, and its battens."""

from dataclasses import replace
from typing import Any

from calc.pieces._part import Part, battens, sawn

SIDEWAYS, DOWN = "side to side", "down the slope"


def lid_part(
    lid_wide: Any, lid_long: Any, lid_under: Any, lid_thickness: Any, angle: Any, stock_width: Any, joint: Any
) -> Part:
    """The lid before its strip is sawn off."""
    size, stock = (lid_wide, lid_long, lid_thickness), (stock_width, joint)
    cut = "back edge bevelled to stand plumb"
    return sawn("Lid, whole", 1, size, SIDEWAYS, "sawn into the next two", stock, bevel=angle, cut=cut, short=lid_under)


def strip_part(lid_part: Part, strip: Any, strip_under: Any) -> Part:
    """The fixed strip, sawn off the lid as it is glued up."""
    own = replace(lid_part, part="Fixed strip", width=strip, short=strip_under, joins="sides, back")
    return replace(own, blank=False, strips=None)


def moving_part(strip_part: Part, moving: Any) -> Part:
    """The moving lid, the rest of it."""
    own = replace(strip_part, part="Moving lid", width=moving, short=None, joins="strip, by hinges")
    return replace(own, bevel=None, cut="square")


def batten_part(batten_long: Any, batten_width: Any, batten_thickness: Any, stock_width: Any, joint: Any) -> Part:
    """The two battens; Refusal where the stock is narrower than they are."""
    size, stock = (batten_long, batten_width, batten_thickness), (stock_width, joint)
    return battens(size, DOWN, "under the moving lid, across its grain", stock)
