"""The shape of a wall shelf: what follows from its givens by geometry alone, one small function to a size.

Seen from the side, x runs from the wall to the front and z up from the foot of the ends. An end is a board with both
front corners rounded: a circle of the radius touches the front edge, and its arc runs from there to the end's foot, or
to its top. Where the round thing is larger than there is room for, the arc stops at the foot or the top before it has
come round to it, and meets it at an angle.
"""

import math
from fractions import Fraction
from typing import Any

from calc import trig
from calc.errors import Refusal
from calc.pieces._asked import up

ALIKE = Fraction(1, 2)
"""Millimetres that the two ends may differ by: common practice, less than the eye sees across a shelf."""


def drop(depth: Any) -> Any:
    """Two thirds of the depth, unless it is given."""
    return Fraction(2, 3) * depth


def housing_deep(end_thickness: Any) -> Any:
    """A third of the end's thickness, unless it is given."""
    return end_thickness / 3


def behind(end_thickness: Any, housing_deep: Any) -> Any:
    """What is left of an end behind its housing; Refusal where the housing goes through."""
    if housing_deep >= end_thickness:
        say = "the housing is as deep as the end is thick"
        raise Refusal(say, f"give less than {up(end_thickness)}", "housing_deep")
    return end_thickness - housing_deep


def curve_low(radius: Any, drop: Any, land: Any) -> Any:
    """How far up the front edge the lower curve begins."""
    return max(0, min(radius, drop - land))


def curve_up(radius: Any, rise: Any, land: Any) -> Any:
    """How far down the front edge from the top the upper curve begins."""
    return max(0, min(radius, rise - land))


def foot_deep(depth: Any, radius: Any, curve_low: Any, rail_thickness: Any) -> Any:
    """What the lower curve leaves of the depth; Refusal where that is less than the rail's thickness."""
    return _left(depth, radius, curve_low, rail_thickness)


def top_deep(depth: Any, radius: Any, curve_up: Any, rail_thickness: Any) -> Any:
    """What the upper curve leaves of the depth; Refusal where that is less than the rail's thickness."""
    return _left(depth, radius, curve_up, rail_thickness)


def _left(depth: Any, radius: Any, along: Any, least: Any) -> Any:
    left = depth - radius + trig.sqrt(radius * radius - along * along)
    if left < least:
        say = f"the curve would leave less than {up(least)} of the end at the wall"
        raise Refusal(say, "draw it round a smaller thing, or make the shelf deeper", "radius")
    return left


def end_area(end_high: Any, depth: Any, radius: Any, curve_low: Any, curve_up: Any) -> Any:
    """The face of an end: the board less what each curve takes off a corner, square millimetres."""
    return end_high * depth - _off(radius, curve_low) - _off(radius, curve_up)


def _off(radius: Any, along: Any) -> Any:
    """A strip the radius wide and as long as the curve, less the triangle and the sector of the circle in it."""
    triangle = along * trig.sqrt(radius * radius - along * along) / 2
    return radius * along - triangle - math.pi * radius * radius * trig.asin(along / radius) / 360


def rail_up(drop: Any, rail_wide: Any) -> Any:
    """The rail's lower edge above the foot; Refusal where the rail is wider than the ends go down."""
    if drop < rail_wide:
        say = "the rail is wider than the ends reach below the shelf"
        raise Refusal(say, f"give {up(rail_wide)} or more below the shelf, or a narrower rail", "drop")
    return drop - rail_wide


def screws(inside_width: Any, screw_in: Any, screw_apart: Any) -> int:
    """Screws through the rail, two at least; Refusal where the first two cross."""
    if inside_width <= 2 * screw_in:
        say = "the screws have no room side by side"
        raise Refusal(say, f"give less than {up(inside_width / 2)}", "screw_in")
    gaps: int = math.ceil((inside_width - 2 * screw_in) / screw_apart)
    return gaps + 1


def end_of_wood(end_area: Any, end_thickness: Any, housing_deep: Any, housing_wide: Any, depth: Any) -> Any:
    """The wood of one end, its housing cut, in cubic millimetres."""
    return end_area * end_thickness - housing_deep * housing_wide * depth
