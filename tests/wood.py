"""Solids handed to libraries that know nothing of wood: manifold3d for their volumes, shapely for their faces."""

from itertools import product

import manifold3d
import numpy as np
from numpy.typing import NDArray
from shapely import Polygon, intersection

from calc.drawing.solid import Face, Solid, Spot3

Vector = NDArray[np.float64]
GRID = 1e-6
"""Millimetres: to what shapely rounds corners before it looks at what two faces share."""


def normal(face: Face) -> Vector:
    """The way a face looks, of length one: Newell's sum over its edges."""
    here, there = np.array(face), np.roll(np.array(face), -1, axis=0)
    found: Vector = np.cross(here, there).sum(axis=0)
    return found / np.linalg.norm(found)


def laid_flat(face: Face, way: Vector) -> Vector:
    """The corners of a face in a plane square to `way`, areas kept; counter-clockwise as seen against it."""
    first = np.cross(way, np.eye(3)[np.argmin(np.abs(way))])
    first /= np.linalg.norm(first)
    found: Vector = np.array(face) @ np.array([first, np.cross(way, first)]).T
    return found


def body(solid: Solid) -> manifold3d.Manifold:
    """The solid as a closed mesh; what is not closed is refused by manifold3d itself."""
    corners = sorted({corner for face in solid.faces for corner in face})
    place = {corner: number for number, corner in enumerate(corners)}
    triangles = [
        [place[face[n]] for n in each]
        for face in solid.faces
        for each in manifold3d.triangulate([laid_flat(face, normal(face))])
    ]
    found = manifold3d.Manifold(manifold3d.Mesh64(np.array(corners), np.array(triangles, dtype=np.uint64)))
    assert found.status() == manifold3d.Error.NoError, (solid.part, found.status())
    return found


def bent(face: Face) -> float:
    """How far the corners of a face lie from one plane, in millimetres."""
    levels = np.array(face) @ normal(face)
    return float(levels.max() - levels.min())


def shared(one: Solid, other: Solid, room: float) -> float:
    """How much face, in square millimetres, two solids turn to each other at just this distance."""
    return sum(_facing(a, b, room) for a, b in product(one.faces, other.faces))


def _facing(a: Face, b: Face, room: float) -> float:
    way = normal(a)
    if np.dot(way, normal(b)) > -1 + 1e-9 or abs(np.dot(way, np.subtract(b[0], a[0])) - room) > 1e-6:
        return 0.0
    one, other = (Polygon(laid_flat(face, way)) for face in (a, b))
    return float(intersection(one, other, grid_size=GRID).area)  # edges apart by their last bits lose no wood


def sizes(solid: Solid) -> list[tuple[float, float, float]]:
    """Its extents along the grain, across it and through each pair of faces the grain lies in, in millimetres."""
    grain = along(solid)
    thick = [way for face in solid.faces if abs(np.dot(way := normal(face), grain)) < 1e-9]
    return [(reach(solid, grain), reach(solid, np.cross(grain, way)), reach(solid, way)) for way in thick]


def along(solid: Solid) -> Vector:
    """The way its grain runs, of length one: as declared, else along its longest edge."""
    edges = [np.subtract(b, a) for face in solid.faces for a, b in zip(face, (*face[1:], face[0]), strict=True)]
    found = np.array(solid.grain) if any(solid.grain) else max(edges, key=lambda edge: float(np.linalg.norm(edge)))
    return found / np.linalg.norm(found)


def reach(solid: Solid, way: Vector | Spot3) -> float:
    """How far a solid reaches from end to end along a way."""
    levels = [float(np.dot(corner, way)) for face in solid.faces for corner in face]
    return max(levels) - min(levels)
