"""A hole with round ends, bored square through a board."""

import math

from calc.drawing.solid import Face, Solid, Spot3
from calc.pieces._flats import FLATS, flats

Spot = tuple[float, float]
Ring = list[Spot3]


def bored(solid: Solid, middles: tuple[Spot3, Spot3], along: Spot3, up: Spot3, size: tuple[float, float]) -> Solid:
    """The board with a hole so long and so wide from its first face to its second, both of four corners.

    `middles` are the hole's on either face; `along` is the way of its length and `up` square to that, in the faces.
    Each of the two faces is parted in two, from the hole's ends to the upper corners.
    """
    rings = [[_at(middle, along, up, spot) for spot in _rim(*size)] for middle in middles]
    halves = [_halves(face, ring, along, up) for face, ring in zip(solid.faces, rings, strict=False)]
    one, other = rings if _forward(solid.faces[0], along, up) else rings[::-1]
    around = zip(one, [*one[1:], one[0]], [*other[1:], other[0]], other, strict=True)
    return Solid(solid.part, (*halves[0], *halves[1], *solid.faces[2:], *around), solid.apart, solid.grain)


def _rim(long: float, wide: float) -> list[Spot]:
    """The hole from its middle, counter-clockwise from below its right end; as much area as the round ends have."""
    radius, half = wide / 2, (long - wide) / 2
    turned = [(t - math.pi / 2, radius * share) for t, share in reversed(flats(math.pi))]
    between = [(half + r * math.cos(t), r * math.sin(t)) for t, r in turned[1:-1]]
    right = [(half, -radius), *between, (half, radius)]
    left = [(-a, -b) for a, b in right]
    return [*right, *(left if half else left[1:-1])]


def _halves(face: Face, ring: Ring, along: Spot3, up: Spot3) -> tuple[Face, Face]:
    """The face above the hole and the face beside and below it."""
    (bl, br), (tl, tr) = _corners(face, along, up)
    right, left = FLATS // 2, FLATS // 2 + len(ring) // 2
    above, below = ring[right : left + 1], [*ring[left:], *ring[: right + 1]]
    upper, lower = (tr, tl, *reversed(above)), (bl, br, tr, *reversed(below), tl)
    return (upper, lower) if _forward(face, along, up) else (upper[::-1], lower[::-1])


def _corners(face: Face, along: Spot3, up: Spot3) -> tuple[list[Spot3], list[Spot3]]:
    """The lower corners and the upper ones, each from left to right."""
    rising = sorted(face, key=lambda spot: _dot(spot, up))
    low, high = (sorted(pair, key=lambda spot: _dot(spot, along)) for pair in (rising[:2], rising[2:]))
    return low, high


def _forward(face: Face, along: Spot3, up: Spot3) -> bool:
    """Whether the face runs counter-clockwise as seen with `along` to the right and `up` upwards."""
    _, (left, right) = _corners(face, along, up)
    return face[(face.index(right) + 1) % len(face)] == left


def _at(middle: Spot3, along: Spot3, up: Spot3, spot: Spot) -> Spot3:
    x, y, z = (m + spot[0] * a + spot[1] * u for m, a, u in zip(middle, along, up, strict=True))
    return x, y, z


def _dot(one: Spot3, other: Spot3) -> float:
    return sum(a * b for a, b in zip(one, other, strict=True))
