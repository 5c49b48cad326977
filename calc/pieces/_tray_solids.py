"""A splayed tray as solids: each part is what lies between six planes, and its corners are where three of them meet.

x runs from back to front, y from left to right, both from the middle of the tray; z up from what it stands on. Hand
holes are bored square through the ends. Left out: the nails.
"""

import math
from itertools import product

from calc.declare import Values
from calc.drawing.solid import Face, Meeting, Solid, Spot3, volume
from calc.pieces._bored import bored

Plane = tuple[Spot3, float]
Pair = tuple[Plane, Plane]
MEETINGS = (Meeting("Long side", "End"), Meeting("Long side", "Bottom"), Meeting("End", "Bottom"))


def solids(v: Values) -> list[Solid]:
    """Two long sides, two ends and the bottom."""
    walls = {(0, way): _board(v, 0, way) for way in (-1, 1)} | {(1, way): _board(v, 1, way) for way in (-1, 1)}
    found = []
    for (axis, way), (faces, edges) in walls.items():
        name, apart = ("Long side", "End")[axis], (float(way), 0.0, 0.0) if axis == 0 else (0.0, float(way), 0.0)
        grain = (0.0, 1.0, 0.0) if axis == 0 else (1.0, 0.0, 0.0)
        ends = tuple(_end(v, axis, way, other, walls[1 - axis, other][0]) for other in (-1, 1))
        board = between(name, faces, edges, (ends[0], ends[1]), apart, grain)
        found.append(_handled(v, way, board) if axis == 1 and v["handles"] == "holes" else board)
    under = float(v["floor_up"] - v["bottom_thickness"])
    inner = {key: faces[0] for key, (faces, _) in walls.items()}
    level = ((0.0, 0.0, 1.0), under), ((0.0, 0.0, 1.0), float(v["floor_up"]))
    fore, side = (inner[0, -1], inner[0, 1]), (inner[1, -1], inner[1, 1])
    return [*found, between("Bottom", fore, level, side, (0.0, 0.0, 1.0), (0.0, 1.0, 0.0))]


def _board(v: Values, axis: int, way: int) -> tuple[Pair, Pair]:
    """The faces of a side, inner and outer, and its edges, lower and upper."""
    lean, low, high = math.radians(float(v["lean"])), float(v["low"]), float(v["height"])
    c, s, foot = math.cos(lean), math.sin(lean), float(v[("foot_wide", "foot_long")[axis]]) / 2
    out: Spot3 = (way * c, 0.0, -s) if axis == 0 else (0.0, way * c, -s)
    up: Spot3 = (way * s, 0.0, c) if axis == 0 else (0.0, way * s, c)
    faces = (out, foot * c), (out, foot * c + float(v["side_thickness"]))
    if v["edges"] == "level":
        return faces, (((0.0, 0.0, 1.0), 0.0), ((0.0, 0.0, 1.0), high))
    rises = [s * (foot + level * s / c) + level * c for level in (low, high)]
    return faces, ((up, rises[0]), (up, rises[1]))


def _end(v: Values, axis: int, way: int, other: int, faces: Pair) -> Plane:
    """What a side is sawn along: the outer or inner face of its neighbour, or upright through the corner."""
    if v["corners"] == "butt":
        return faces[1 if axis == 0 else 0]
    x, y = (way, other) if axis == 0 else (other, way)
    return (float(x), -float(y), 0.0), float(v["foot_wide"] - v["foot_long"]) / 2


def _handled(v: Values, way: int, board: Solid) -> Solid:
    """An end with its hand hole, whose middle is marked down the inner face from the rim."""
    lean, down, thick = math.radians(float(v["lean"])), float(v["hand_middle"]), float(v["side_thickness"])
    c, s, high = math.cos(lean), math.sin(lean), float(v["height"])
    y, z = float(v["foot_long"]) / 2 + high * s / c - down * s, high - down * c
    middles: tuple[Spot3, Spot3] = ((0.0, way * y, z), (0.0, way * (y + thick * c), z - thick * s))
    size = float(v["hand_long"]), float(v["hand_wide"])
    return bored(board, middles, (1.0, 0.0, 0.0), (0.0, way * s, c), size)


def between(part: str, faces: Pair, edges: Pair, ends: Pair, apart: Spot3, grain: Spot3) -> Solid:
    """The solid between three pairs of planes that shut it in."""
    spot = {
        at: meet(*(pair[n] for pair, n in zip((faces, edges, ends), at, strict=True)))
        for at in product((0, 1), repeat=3)
    }
    around = ((0, 0), (0, 1), (1, 1), (1, 0))
    found: list[Face] = []
    for axis, side in product(range(3), (0, 1)):
        corners = [[a, b] for a, b in (around if side else around[::-1])]
        for corner in corners:
            corner.insert(axis, side)
        turned = corners if axis != 1 else corners[::-1]
        found.append(tuple(spot[a, b, c] for a, b, c in turned))
    solid = Solid(part, tuple(found), apart, grain)
    return solid if volume(solid) > 0 else Solid(part, tuple(face[::-1] for face in found), apart, grain)


def meet(one: Plane, other: Plane, third: Plane) -> Spot3:
    """The point that lies on three planes."""
    (a, d), (b, e), (c, f) = one, other, third
    bc, ca, ab = _cross(b, c), _cross(c, a), _cross(a, b)
    size = sum(x * y for x, y in zip(a, bc, strict=True))
    x, y, z = ((d * p + e * q + f * r) / size for p, q, r in zip(bc, ca, ab, strict=True))
    return x, y, z


def _cross(a: Spot3, b: Spot3) -> Spot3:
    return a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
