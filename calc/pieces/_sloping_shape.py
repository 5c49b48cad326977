"""The shape of a sloping-lid box: what follows from its givens by geometry alone, one small function to a size.

Seen from the side, x runs from the back's face to the front and y up from the bottom of the sides. A side stands from
x = 0 to x = depth; its top runs from (0, back height) to (depth, front height), and the under face of the lid lies on
that line and goes on along it. The front's rabbet is cut from its inner face, so its outer face stands at
x = depth + front thickness - rabbet, and its inner face, between the sides, at x = depth - rabbet.

Where this says more than the catalogue of pieces: the front's bevelled top is highest at its inner face, which stands
behind the plane of the sides, so the blank must be front height + rabbet tan a high and not front height only. The
overhang is measured level at the lid's under face; the upper arris of a square front end stands lid thickness times
sin a further out.
"""

import math
from typing import Any

from calc import trig
from calc.errors import Refusal
from calc.pieces._asked import up
from calc.pieces._counted import CARD
from calc.show import plain

LEAST, STEEPEST = math.tan(math.radians(1)) * (1 - 1e-9), math.sqrt(3) * (1 + 1e-9)
"""The tangents between which the lid counts as sloping: 1 and 60 degrees."""


def rabbet(front_thickness: Any) -> Any:
    """Half the front's thickness, unless it is given."""
    return front_thickness / 2


def angle(back_height: Any, front_height: Any, depth: Any) -> Any:
    """The slope of the lid, in degrees."""
    return trig.atan((back_height - front_height) / depth)


def back_height(front_height: Any, angle: Any, depth: Any) -> Any:
    """The back edge of the sides, from the front edge and the slope."""
    return front_height + depth * trig.tan(angle)


def front_height(back_height: Any, angle: Any, depth: Any) -> Any:
    """The front edge of the sides, from the back edge and the slope; Refusal where nothing is left of it."""
    tangent = trig.tan(angle)
    if back_height <= depth * tangent:
        told = f"give more than {up(depth * tangent)}, or a flatter slope"
        raise Refusal("a lid this steep leaves the front no height", told, "back_height")
    return back_height - depth * tangent


def tangent(back_height: Any, front_height: Any, depth: Any) -> Any:
    """The slope as rise over run, exact where it came from the heights; Refusal outside 1 to 60 degrees."""
    found = (back_height - front_height) / depth
    if not LEAST <= found <= STEEPEST:
        say = f"the lid would {'hardly slope' if found < LEAST else 'be steeper than 60°'}"
        told = f"make the back {up(depth * LEAST)} to {plain(math.floor(depth * STEEPEST), 0)} mm higher than the front"
        raise Refusal(say, told, "front_height")
    return found


def secant(tangent: Any) -> Any:
    """Down the slope over level."""
    return trig.sqrt(1 + tangent * tangent)


def proud(front_thickness: Any, rabbet: Any) -> Any:
    """How far the front's outer face stands before the sides; Refusal where the rabbet goes through."""
    if rabbet >= front_thickness:
        say = "the rabbet is as deep as the front is thick"
        raise Refusal(say, f"give less than {up(front_thickness)}", "rabbet")
    return front_thickness - rabbet


def front_inner(front_height: Any, rabbet: Any, tangent: Any, bottom_thickness: Any) -> Any:
    """The front at its inner face; Refusal where that is no higher than the bottom."""
    inner = front_height + rabbet * tangent
    return _left(inner, bottom_thickness - inner, front_height)


def front_outer(front_height: Any, proud: Any, tangent: Any) -> Any:
    """The front at its outer face; Refusal where nothing is left of it."""
    outer = front_height - proud * tangent
    return _left(outer, -outer, front_height)


def _left(height: Any, short: Any, front_height: Any) -> Any:
    if short >= 0:
        told = f"give the front edge more than {up(front_height + short)}"
        raise Refusal("nothing would be left of the front above the bottom, or at its outer face", told, "front_height")
    return height


def lid_under(depth: Any, proud: Any, front_overhang: Any, secant: Any) -> Any:
    """The lid down the slope on its under face, from the back to past the front."""
    return (depth + proud + front_overhang) * secant


def back_high(tail: Any, back_height: Any, lid_thickness: Any, secant: Any, crest: Any) -> Any:
    """The back from its lower end to its upper; the lid is met plumb."""
    return tail + back_height + lid_thickness * secant + crest


def bottom_deep(depth: Any, rabbet: Any, allowance: Any) -> Any:
    """The bottom from back to front; Refusal where there is none."""
    deep = depth - rabbet - allowance
    if deep <= 0:
        raise Refusal("nothing is left for the bottom", f"give more than {up(depth - deep)}", "depth")
    return deep


def bottom_wide(inside_width: Any, allowance: Any) -> Any:
    """The bottom from side to side; Refusal where there is none."""
    if inside_width <= allowance:
        raise Refusal("nothing is left for the bottom", f"give more than {up(allowance)}", "inside_width")
    return inside_width - allowance


def volume(
    back_height: Any, front_inner: Any, bottom_thickness: Any, depth: Any, rabbet: Any, inside_width: Any
) -> Any:
    """The room inside, up to the lid."""
    back, front = back_height - bottom_thickness, front_inner - bottom_thickness
    return (back + front) / 2 * (depth - rabbet) * inside_width


def sides_alike(secant: Any) -> Any:
    """How much the sides may differ at either edge for the lid to sit on both within the thickness of a card.

    The lid is flat and rests on three of the four corners. Of the two differences, at the back edges and at the front
    edges, the fourth corner feels the difference: twice one of them where they are opposite. That is measured plumb;
    square to the lid it is as much times cos a.
    """
    return CARD * secant / 2
