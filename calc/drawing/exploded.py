"""A piece taken apart: every part drawn to scale, moved off along the way it goes together, and named.

The answer of a piece that has solids bears it as "exploded", beside "figure" and in the same shape.
"""

import math
from collections.abc import Sequence

from calc.building.piece import Piece
from calc.declare import Sum, Values
from calc.drawing import ink
from calc.drawing.figure import Figure
from calc.drawing.lettering import lettered
from calc.drawing.painting import dot, normal, painted, seen, toward
from calc.drawing.solid import STILL, Face, Solid, Spot3, moved
from calc.errors import listed

Edge = tuple[Spot3, Spot3]
WIDE, TALL = 340.0, 440.0
APART = 0.4
"""How far the parts stand off, as a share of the mean of the whole's depth, width and height."""
SMOOTH = math.cos(math.radians(20))
"""Flats that turn less than this from one to the next are a curve: no line is drawn between them."""


def drawings(one: Sum, values: Values) -> dict[str, Figure]:
    """Every drawing of an answer by its name there: "figure", and of a piece that has solids "exploded"."""
    whole = {"figure": one.figure(values)}
    if isinstance(one, Piece) and one.solids:
        whole["exploded"] = exploded(one.title, one.solids(values))
    return whole


def exploded(title: str, solids: Sequence[Solid]) -> Figure:
    """The parts apart, isometric, nearer ones hiding those behind; grain along its way, end grain hatched."""
    parts = list(dict.fromkeys(solid.part.lower() for solid in solids))
    drawing = Figure(
        f"{title}, taken apart",
        f"Each part to one scale, moved off the way it goes in: {listed(parts)}; seen from before, to the right and "
        "above. Fine lines run along the grain, and end grain is hatched.",
        WIDE,
        TALL,
    )
    laid = parted(solids)
    faces = painted(laid)
    ways, grains = [_looks(solid) for solid in laid], [_grain(solid) for solid in laid]
    for number, face in faces:
        _outline(drawing, face, ways[number])
        _fibres(drawing, face, grains[number])
    lettered(drawing, laid, [(number, [seen(corner) for corner in face]) for number, face in faces])
    return drawing


def parted(solids: Sequence[Solid]) -> list[Solid]:
    """The solids moved apart, none farther than the rest."""
    measures = zip(*(corner for solid in solids for face in solid.faces for corner in face), strict=True)
    far = APART * math.fsum(max(one) - min(one) for one in measures) / 3
    return [moved(solid, [far * way / max(1.0, math.hypot(*solid.apart)) for way in solid.apart]) for solid in solids]


def _grain(solid: Solid) -> Spot3:
    """The way the grain runs, of length one: as declared, else along the longest edge."""
    x, y, z = solid.grain if any(solid.grain) else _longest(solid)
    long = math.hypot(x, y, z) or 1.0
    return x / long, y / long, z / long


def _longest(solid: Solid) -> Spot3:
    a, b = max((edge for face in solid.faces for edge in _edges(face)), key=lambda edge: round(math.dist(*edge), 6))
    return b[0] - a[0], b[1] - a[1], b[2] - a[2]


def _looks(solid: Solid) -> dict[Edge, Spot3]:
    """The way each face looks, by its edges."""
    return {edge: way for face in solid.faces if (way := normal(face)) for edge in _edges(face)}


def _edges(face: Face) -> list[Edge]:
    return list(zip(face, (*face[1:], face[0]), strict=True))


def _outline(drawing: Figure, face: Face, ways: dict[Edge, Spot3]) -> None:
    """A face with a line round it, but none where it goes over into the next as a curve does."""
    flat, way = [seen(corner) for corner in face], normal(face)
    beyond = {(a, b): ways.get((b, a), STILL) for a, b in _edges(face)}
    sharp = [edge for edge, other in beyond.items() if dot(way, other) < SMOOTH or toward(other) <= 0]
    if len(sharp) == len(beyond):
        return drawing.outline(flat)
    drawing.strokes.append(lambda board, _: _filled(ink.polygon(board, flat, "wood")))
    drawing.points += flat
    for a, b in sharp:
        drawing.line(seen(a), seen(b))


def _filled(node: ink.Node) -> ink.Node:
    node[1]["stroke"] = "none"
    return node


def _fibres(drawing: Figure, face: Face, grain: Spot3) -> None:
    flat = [seen(corner) for corner in face]
    if abs(dot(normal(face), grain)) > 0.7:
        return drawing.hatch(flat)
    across, up = seen(grain)
    return drawing.grain(flat, math.degrees(math.atan2(up, across)))
