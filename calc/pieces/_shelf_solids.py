"""A wall shelf as solids: two housed and rounded ends, the shelf in its housings, the rail under it at the wall.

x runs from the wall to the front, y from the outer face of the left end, z up from the foot of the ends. Left out:
screws, nails and their holes. A curve is cut up into flats that leave just the wood the curve would.
"""

import math
from itertools import pairwise

from calc.declare import Values
from calc.drawing.solid import Face, Meeting, Solid, Spot3, block
from calc.pieces._flats import flats

UP: Spot3 = (0.0, 0.0, 1.0)
MEETINGS = (Meeting("End", "Shelf"), Meeting("End", "Rail"), Meeting("Shelf", "Rail"))
Spot = tuple[float, float]


def curve(v: Values, name: str) -> list[Spot]:
    """A rounded corner as points (back from the front edge, along it from the corner), from foot or top to the edge."""
    radius, along = float(v["radius"]), float(v[name])
    if not along:
        return [(0.0, 0.0)]
    turned = flats(math.asin(min(1.0, along / radius)))
    return [(radius * (1 - r * math.cos(t)), along - radius * r * math.sin(t)) for t, r in turned]


def solids(v: Values) -> list[Solid]:
    """Two ends, shelf and rail."""
    thick, wide = float(v["end_thickness"]), float(v["outside"])
    low, high = (wide - float(v["shelf_long"])) / 2, (wide + float(v["shelf_long"])) / 2
    begin, end = (wide - float(v["rail_long"])) / 2, (wide + float(v["rail_long"])) / 2
    drop, top = v["drop"], v["drop"] + v["shelf_thickness"]
    return [
        _end(v, 0.0, thick),
        _end(v, wide, wide - thick),
        block("Shelf", (0, low, drop), (v["shelf_deep"], high, top), UP, (0.0, 1.0, 0.0)),
        block("Rail", (0, begin, v["rail_up"]), (v["rail_thickness"], end, drop), (-1.0, 0.0, 0.0), (0.0, 1.0, 0.0)),
    ]


def _end(v: Values, outer: float, inner: float) -> Solid:
    """One end between its outer and its inner face, its housing cut across the inner."""
    deep, high = float(v["depth"]), float(v["end_high"])
    bottom, top = float(v["drop"]), float(v["drop"] + v["housing_wide"])
    floor = inner + (1 if outer > inner else -1) * float(v["housing_deep"])
    low = [(deep - back, along) for back, along in curve(v, "curve_low")]
    up = [(deep - back, high - along) for back, along in reversed(curve(v, "curve_up"))]
    low[-1], up[0] = (deep, low[-1][1]), (deep, up[0][1])
    whole = [(0.0, 0.0), *low, *up, (0.0, high)]
    under, over = [(0.0, 0.0), *low, (deep, bottom), (0.0, bottom)], [(0.0, top), (deep, top), *up, (0.0, high)]
    edges = [*pairwise([(0.0, 0.0), *low]), *pairwise([*up, (0.0, high)])]
    faces = [
        _at(outer, whole),
        *(_at(inner, part)[::-1] for part in (under, over)),
        _at(floor, [(0.0, bottom), (deep, bottom), (deep, top), (0.0, top)])[::-1],
        *(((x, inner, z), (xx, inner, zz), (xx, outer, zz), (x, outer, z)) for (x, z), (xx, zz) in edges),
        *(_across(0.0, deep, z, *ys) for z, ys in ((bottom, (inner, floor)), (top, (floor, inner)))),
        _notched(deep, (outer, inner, floor), (low[-1][1], bottom, top, up[0][1])),
        _notched(0.0, (outer, inner, floor), (0.0, bottom, top, high))[::-1],
    ]
    apart = (0.0, -1.0 if outer < inner else 1.0, 0.0)
    return Solid("End", tuple(faces if outer < inner else (face[::-1] for face in faces)), apart, UP)


def _at(y: float, outline: list[Spot]) -> Face:
    return tuple((x, y, z) for x, z in outline)


def _across(x: float, xx: float, z: float, y: float, yy: float) -> Face:
    """A wall of the housing."""
    return ((x, y, z), (x, yy, z), (xx, yy, z), (xx, y, z))


def _notched(x: float, ys: tuple[float, float, float], zs: tuple[float, float, float, float]) -> Face:
    """A front or back edge, notched by the housing: seen from the front, up the inner side and down the outer."""
    outer, inner, floor = ys
    low, bottom, top, high = zs
    turns = ((outer, low), (inner, low), (inner, bottom), (floor, bottom), (floor, top), (inner, top))
    return tuple((x, y, z) for y, z in (*turns, (inner, high), (outer, high)))
