"""Solids as they look from far off: isometric, and each face painted before those that hide it.

Isometric because all three axes are foreshortened alike: lengths along depth, width and height are all to one scale,
and can be compared by eye. The eye stands before the piece, to the right of it and above, on the line x = y = z.
"""

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property

from calc.drawing.solid import Face, Solid, Spot3
from calc.remembered import remembered

Spot = tuple[float, float]
Plane = tuple[Spot3, float]
COS30 = math.sqrt(3) / 2
NEAR = 1e-6
"""Millimetres that count as nothing."""


def seen(spot: Spot3) -> Spot:
    """Where a point falls on the paper, in millimetres: x runs down to the left, y down to the right, z up."""
    x, y, z = spot
    return (y - x) * COS30, z - (x + y) / 2


def toward(way: Spot3) -> float:
    """How far a way leads towards the eye."""
    return math.fsum(way)


def dot(one: Spot3, other: Spot3) -> float:
    """The product of two ways."""
    return one[0] * other[0] + one[1] * other[1] + one[2] * other[2]


@remembered(1024)  # the painter asks for it, then whoever draws the face's outline and its fibres
def normal(face: Face) -> Spot3:
    """The way a face looks, of length one; nought for a face that is none."""
    x = y = z = 0.0
    for (ax, ay, az), (bx, by, bz) in zip(face, (*face[1:], face[0]), strict=True):
        x, y, z = x + ay * bz - az * by, y + az * bx - ax * bz, z + ax * by - ay * bx
    long = math.hypot(x, y, z)
    return (x / long, y / long, z / long) if long > NEAR else (0.0, 0.0, 0.0)


@dataclass(frozen=True)
class Shape:
    """Something to paint: its corners, and planes that have all of it on their inner side."""

    corners: tuple[Spot3, ...]
    planes: tuple[Plane, ...]

    @cached_property
    def box(self) -> tuple[float, float, float, float]:
        """What it covers of the paper at most: left, low, right, high."""
        xs, ys = zip(*map(seen, self.corners), strict=True)
        return min(xs), min(ys), max(xs), max(ys)

    @cached_property
    def fronts(self) -> list[Plane]:
        """The planes whose outer side the eye is on, or is level with."""
        return [plane for plane in self.planes if toward(plane[0]) > -NEAR]

    @cached_property
    def backs(self) -> list[Plane]:
        """The planes whose outer side the eye is not on."""
        return [plane for plane in self.planes if toward(plane[0]) < NEAR]

    @cached_property
    def depth(self) -> float:
        """How near the eye its middle is; what differs by nothing is alike on every machine."""
        return round(math.fsum(map(toward, self.corners)) / len(self.corners), 6)


def of_solid(solid: Solid) -> Shape:
    """A solid between those of its faces that have all of it behind them."""
    corners = tuple(dict.fromkeys(corner for face in solid.faces for corner in face))
    planes = (_plane(face) for face in solid.faces)
    return Shape(corners, tuple(one for one in planes if all(dot(one[0], at) <= one[1] + NEAR for at in corners)))


def of_face(face: Face) -> Shape:
    """A face between its plane and the same plane from behind."""
    way, level = _plane(face)
    return Shape(face, ((way, level), ((-way[0], -way[1], -way[2]), -level)))


def _plane(face: Face) -> Plane:
    way = normal(face)
    return way, dot(way, face[0])


def painted(solids: Sequence[Solid]) -> list[tuple[int, Face]]:
    """Every face that looks towards the eye, with its solid's number; those that are hidden before those that hide."""
    found, shapes = [], [of_solid(solid) for solid in solids]
    for number in order(shapes):
        faces = [of_face(face) for face in solids[number].faces if toward(normal(face)) > NEAR]
        bulges = len(shapes[number].planes) == len(solids[number].faces)  # then none of its faces hides another
        found += [(number, faces[each].corners) for each in (_by_depth(faces) if bulges else order(faces))]
    return found


def _by_depth(shapes: Sequence[Shape]) -> list[int]:
    """The numbers of the shapes, that with its middle farthest off first."""
    return sorted(range(len(shapes)), key=lambda number: shapes[number].depth)


def order(shapes: Sequence[Shape]) -> Iterable[int]:
    """The numbers of the shapes, farthest first: none is painted before another that it hides."""
    under: list[set[int]] = [set() for _ in shapes]
    for one, first in enumerate(shapes):
        for other in range(one):
            if _meet(first.box, shapes[other].box):
                _rank(one, other, shapes, under)
    left = _by_depth(shapes)
    while left:
        ready = next((number for number in left if under[number].isdisjoint(left)), left[0])
        left.remove(ready)
        yield ready


def _rank(one: int, other: int, shapes: Sequence[Shape], under: list[set[int]]) -> None:
    a, b = shapes[one], shapes[other]
    hides, hidden = _before(a, b), _before(b, a)
    if hides == hidden and (hides or a.depth == b.depth):
        return
    nearer = hides if hides != hidden else a.depth > b.depth
    under[one if nearer else other].add(other if nearer else one)


def _before(one: Shape, other: Shape) -> bool:
    """Whether a plane parts them, `one` on the eye's side of it or at least on no other."""
    return any(_outside(one, plane) for plane in other.fronts) or any(_outside(other, plane) for plane in one.backs)


def _outside(shape: Shape, plane: Plane) -> bool:
    (x, y, z), least = plane[0], plane[1] - NEAR
    return all(x * a + y * b + z * c >= least for a, b, c in shape.corners)


def _meet(a: tuple[float, float, float, float], b: tuple[float, float, float, float]) -> bool:
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]
