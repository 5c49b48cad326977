"""The room in a splayed tray, the wood of it, and its hand holes."""

import math
from typing import Any

from calc import trig
from calc.declare import Values
from calc.errors import Refusal
from calc.pieces._asked import up
from calc.pieces._tray_shape import mean

BESIDE, OVER = 15, 5
"""Millimetres of wood beside a hand hole, and of room over the floor beneath it, at least: common practice."""


def hand_in(
    handles: str,
    end_edges: Values,
    inside_deep: Any,
    hand_long: Any,
    hand_wide: Any,
    hand_down: Any,
    lean: Any,
    hand_foot: Any,
    hand_clear: Any,
) -> Any:
    """Where a hand hole begins, along the top edge of the outer face; None without; Refusal where it has no room."""
    if handles == "none":
        return None
    if hand_long < hand_wide:
        raise Refusal("a hand hole would be wider than it is long", f"give {up(hand_wide)} or more", "hand_long")
    if inside_deep < (hand_down + hand_wide + OVER) * trig.cos(lean) or hand_foot < OVER * trig.cos(lean):
        raise Refusal("the ends are too low for hand holes", "give more height, or choose no handles", "height")
    if hand_clear < hand_long + 2 * BESIDE:
        least = up(max(20, hand_clear - 2 * BESIDE))
        raise Refusal("the ends are too short for this hand hole", f"give {least} or less, or no handles", "hand_long")
    return (end_edges["outside_top"] - hand_long) / 2


def hand_foot(height: Any, hand_down: Any, hand_wide: Any, side_thickness: Any, lean: Any) -> Any:
    """The level at which a hand hole, bored square through the end, comes out at its lowest: in the outer face."""
    return height - (hand_down + hand_wide) * trig.cos(lean) - side_thickness * trig.sin(lean)


def hand_clear(
    end_edges: Values, hand_foot: Any, hand_down: Any, hand_wide: Any, height: Any, low: Any, lean: Any
) -> Any:
    """How wide an end is beside the foot of its hand hole, in the inner face or the outer, whichever is less."""
    inner = end_edges["inside_top"] - 2 * (hand_down + hand_wide) * trig.cos(lean) * trig.tan(lean)
    foot, top = end_edges["outside_bottom"], end_edges["outside_top"]
    return min(inner, foot + (top - foot) * hand_foot / (height - low))


def volume(long: Any, wide: Any, inside_deep: Any, lean: Any) -> Any:
    """The room inside up to the rim: floor, rim and four times the level midway, by the prismoid's sixth."""
    out = inside_deep * trig.tan(lean)
    middle, rim = (long + out) * (wide + out), (long + 2 * out) * (wide + 2 * out)
    return inside_deep * (long * wide + 4 * middle + rim) / 6


def bored_out(handles: str, hand_long: Any, hand_wide: Any, side_thickness: Any) -> Any:
    """The wood of both hand holes, cubic millimetres: a strip and two half circles, bored square through the ends."""
    if handles == "none":
        return 0
    return 2 * side_thickness * ((hand_long - hand_wide) * hand_wide + math.pi * hand_wide * hand_wide / 4)


def bottom_wood(long: Any, wide: Any, bottom_thickness: Any, lean: Any) -> Any:
    """The wood of a bottom whose under face is smaller by its bevels, cubic millimetres."""
    out = 2 * bottom_thickness * trig.tan(lean)
    return volume(long - out, wide - out, bottom_thickness, lean)


def wood_volume(
    long_edges: Values,
    end_edges: Values,
    side_wide: Any,
    side_thickness: Any,
    bottom_long: Any,
    bottom_wide: Any,
    bottom_thickness: Any,
    lean: Any,
    bored_out: Any,
) -> Any:
    """All the wood: each side its section times its length midway, the bottom; less the hand holes."""
    sides = 2 * side_wide * side_thickness * (mean(long_edges) + mean(end_edges))
    return sides + bottom_wood(bottom_long, bottom_wide, bottom_thickness, lean) - bored_out
