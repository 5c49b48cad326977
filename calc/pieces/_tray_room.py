"""The room in a splayed tray, the wood of it, and its hand holes."""

from typing import Any

from calc import trig
from calc.declare import Values
from calc.errors import Refusal
from calc.pieces._asked import up
from calc.pieces._tray_shape import mean

BESIDE, OVER = 15, 5
"""Millimetres of wood beside a hand hole, and of room over the floor beneath it, at least: common practice."""


def hand_in(
    handles: str, end_edges: Values, inside_deep: Any, hand_long: Any, hand_wide: Any, hand_down: Any, lean: Any
) -> Any:
    """Where a hand hole begins, along the top edge of the outer face; None without; Refusal where it has no room."""
    if handles == "none":
        return None
    if hand_long < hand_wide:
        raise Refusal("a hand hole would be wider than it is long", f"give {up(hand_wide)} or more", "hand_long")
    down = hand_down + hand_wide
    if inside_deep < (down + OVER) * trig.cos(lean):
        raise Refusal("the ends are too low for hand holes", "give more height, or choose no handles", "height")
    inner = end_edges["inside_top"] - 2 * down * trig.cos(lean) * trig.tan(lean)
    if inner < hand_long + 2 * BESIDE:
        least = up(max(20, inner - 2 * BESIDE))
        raise Refusal("the ends are too short for this hand hole", f"give {least} or less, or no handles", "hand_long")
    return (end_edges["outside_top"] - hand_long) / 2


def volume(long: Any, wide: Any, inside_deep: Any, lean: Any) -> Any:
    """The room inside up to the rim: floor, rim and four times the level midway, by the prismoid's sixth."""
    out = inside_deep * trig.tan(lean)
    middle, rim = (long + out) * (wide + out), (long + 2 * out) * (wide + 2 * out)
    return inside_deep * (long * wide + 4 * middle + rim) / 6


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
) -> Any:
    """All the wood: each side its section times its length midway, the bottom; hand holes not taken out."""
    sides = 2 * side_wide * side_thickness * (mean(long_edges) + mean(end_edges))
    return sides + bottom_wood(bottom_long, bottom_wide, bottom_thickness, lean)
