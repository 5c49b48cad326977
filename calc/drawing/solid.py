"""Pieces of wood as solids: where each part lies in the finished piece, by the plane faces round it.

x runs from the back, or the wall, to the front; y across, from left to right as seen from the front; z up. Millimetres.
Example: `block("Bottom", (0, 0, 0), (100, 200, 12), apart=(0, 0, -1), grain=(0, 1, 0))`.
"""

import math
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Any

Spot3 = tuple[float, float, float]
Face = tuple[Spot3, ...]
End = float | Callable[[float, float], float]
"""Where a prism ends along its axis: at a number, or at a plane over the two measures of its outline."""
STILL: Spot3 = (0.0, 0.0, 0.0)
AXES: dict[str, Callable[[float, float, float], Spot3]] = {
    "x": lambda y, z, along: (along, y, z),
    "y": lambda x, z, along: (x, along, z),
    "z": lambda x, y, along: (x, y, along),
}


@dataclass(frozen=True)
class Solid:
    """One piece of wood. `part` is its name in the list of parts; two that are alike share it.

    faces: plane polygons, corners in millimetres, counter-clockwise as seen from outside, closed all round.
    apart: which way it goes when the piece is shown taken apart, of length one or so.
    grain: which way its grain runs; nought for along its longest edge.
    """

    part: str
    faces: tuple[Face, ...]
    apart: Spot3
    grain: Spot3 = STILL


@dataclass(frozen=True)
class Meeting:
    """Two parts that lie face to face. `room` gives the clearance left between them, in millimetres; mostly none."""

    one: str
    other: str
    room: Callable[[Mapping[str, Any]], Any] = lambda values: 0


def prism(
    part: str, outline: Sequence[Sequence[Any]], axis: str, low: Any, high: Any, apart: Spot3, grain: Spot3 = STILL
) -> Solid:
    """A plane outline pushed along an axis; its corners are (y, z) for axis "x", (x, z) for "y", (x, y) for "z".

    The outline may run round either way, and need not be convex. `low` and `high` are numbers, or functions of the
    outline's two measures where an end is sawn to a slope (a plane): `lambda x, y: top - x * tangent`.
    """
    flat = [(float(u), float(v)) for u, v in outline]
    if (_area(flat) > 0) == (axis == "y"):  # x, z and y make a left-handed frame
        flat.reverse()
    first, last = ([AXES[axis](u, v, _at(end, u, v)) for u, v in flat] for end in (low, high))
    around = zip(first, [*first[1:], first[0]], [*last[1:], last[0]], last, strict=True)
    return Solid(part, (tuple(reversed(first)), tuple(last), *around), apart, grain)


def block(part: str, low: Sequence[Any], high: Sequence[Any], apart: Spot3, grain: Spot3 = STILL) -> Solid:
    """A piece square all round, from its lowest corner (x, y, z) to its highest."""
    (x, y, z), (xx, yy, zz) = low, high
    return prism(part, [(x, y), (xx, y), (xx, yy), (x, yy)], "z", z, zz, apart, grain)


def volume(solid: Solid) -> float:
    """Cubic millimetres of wood, by the pyramids from one corner over every face; minus where it is inside out.

    >>> volume(block("Rail", (0, 0, 0), (10, 20, 300), (0, 0, 1)))
    60000.0
    """
    start = solid.faces[0][0]
    return math.fsum(_pyramid(start, a, b, c) for face in solid.faces for a, b, c in _fan(face)) / 6


def moved(solid: Solid, by: Sequence[float]) -> Solid:
    """The same piece of wood so many millimetres on: (x, y, z)."""
    dx, dy, dz = by
    return replace(solid, faces=tuple(tuple((x + dx, y + dy, z + dz) for x, y, z in face) for face in solid.faces))


def _at(end: Any, u: float, v: float) -> float:
    return float(end(u, v) if callable(end) else end)


def _area(flat: Sequence[tuple[float, float]]) -> float:
    """Twice the area, minus where the outline runs clockwise."""
    return math.fsum(u * vv - uu * v for (u, v), (uu, vv) in zip(flat, [*flat[1:], flat[0]], strict=True))


def _fan(face: Face) -> Iterable[tuple[Spot3, Spot3, Spot3]]:
    return ((face[0], b, c) for b, c in pairwise(face[1:]))


def _pyramid(top: Spot3, *foot: Spot3) -> float:
    """Six times the volume over a triangle."""
    (ax, ay, az), (bx, by, bz), (cx, cy, cz) = ((x - top[0], y - top[1], z - top[2]) for x, y, z in foot)
    return ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)
