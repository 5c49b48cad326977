"""A piece taken apart: every part drawn to scale, moved off along the way it goes together, and named.

The answer of a piece that has solids bears it as "exploded", beside "figure" and in the same shape.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from calc import ink
from calc.declare import Sum, Values
from calc.errors import listed
from calc.figure import Figure
from calc.painting import dot, normal, painted, seen
from calc.piece import Piece
from calc.room import Room
from calc.solid import Face, Solid, Spot3, moved

Spot = tuple[float, float]
DRAWN = ("figure", "exploded")
"""What `drawings` may give: ink for a page, no use to a reader of numbers."""
WIDE, TALL = 340.0, 440.0
APART = 0.4
"""How far the parts stand off, as a share of the mean of the whole's depth, width and height."""
LETTER, LINE, EDGE = 7.2, 17.0, 3.0
"""Pixels: a letter of the names with some to spare, from name to name, and from the paper's edge."""


@dataclass(frozen=True)
class Name:
    """A part's name and where on the paper (millimetres) the line from it ends: on what is seen of the part."""

    text: str
    at: Spot


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
    for number, face in faces:
        _paint(drawing, face, _grain(laid[number]))
    _name(drawing, laid, [(number, [seen(corner) for corner in face]) for number, face in faces])
    return drawing


def parted(solids: Sequence[Solid]) -> list[Solid]:
    """The solids moved apart, none farther than the rest."""
    measures = zip(*(corner for solid in solids for face in solid.faces for corner in face), strict=True)
    far = APART * sum(max(one) - min(one) for one in measures) / 3
    return [moved(solid, [far * way / max(1.0, math.hypot(*solid.apart)) for way in solid.apart]) for solid in solids]


def _grain(solid: Solid) -> Spot3:
    """The way the grain runs, of length one: as declared, else along the longest edge."""
    edges = [(a, b) for face in solid.faces for a, b in zip(face, (*face[1:], face[0]), strict=True)]
    a, b = max(edges, key=lambda edge: math.dist(*edge))
    x, y, z = solid.grain if any(solid.grain) else (b[0] - a[0], b[1] - a[1], b[2] - a[2])
    long = math.hypot(x, y, z) or 1.0
    return x / long, y / long, z / long


def _paint(drawing: Figure, face: Face, grain: Spot3) -> None:
    flat = [seen(corner) for corner in face]
    drawing.outline(flat)
    if abs(dot(normal(face), grain)) > 0.7:
        return drawing.hatch(flat)
    across, up = seen(grain)
    return drawing.grain(flat, math.degrees(math.atan2(up, across)))


def _name(drawing: Figure, solids: Sequence[Solid], faces: list[tuple[int, list[Spot]]]) -> None:
    """A column of names down either side, each with a line to its part; what is hidden has none."""
    spots = {number: _spot(number, faces) for number in range(len(solids))}
    names = [Name(solids[number].part, spot) for number, spot in spots.items() if spot]
    xs, ys = zip(*(spot for _, face in faces for spot in face), strict=True)
    middle = (min(xs) + max(xs)) / 2
    columns = {side: [one for one in names if (one.at[0] < middle) == (side == "start")] for side in ("start", "end")}
    room = {side: max([len(one.text) for one in some], default=0) * LETTER + 10 for side, some in columns.items()}
    least = LINE * max(map(len, columns.values())) / 2
    drawing.rooms += [
        Room(min(xs), (min(ys) + max(ys)) / 2, left=room["start"], above=least, below=least),
        Room(max(xs), (min(ys) + max(ys)) / 2, right=room["end"]),
    ]
    for side, some in columns.items():
        drawing.strokes.append(lambda board, _, side=side, some=some: _column(board, side, some))  # type: ignore[misc]


def _column(board: ink.Board, side: str, names: list[Name]) -> list[object]:
    laid = sorted((board.at(one.at)[1], board.at(one.at)[0], one.text) for one in names)
    levels = _spaced([y for y, _, _ in laid], LINE / 2, board.height - LINE / 2)
    nodes: list[object] = ["g", {"class": "plain"}]
    for level, (y, x, text) in zip(levels, laid, strict=True):
        long = EDGE + len(text) * LETTER
        edge, end = (EDGE, long) if side == "start" else (board.width - EDGE, board.width - long)
        nodes += [ink.stroke((end, level), (x, y), "thin"), ink.label((edge, level), text, side)]
    return nodes


def _spaced(levels: list[float], low: float, high: float) -> list[float]:
    """Levels from top to bottom moved apart to a line each, as little as need be, and kept on the paper."""
    found: list[float] = []
    for level in levels:
        found.append(max(level, found[-1] + LINE if found else low))
    for number in range(len(found) - 1, -1, -1):
        found[number] = min(found[number], high - LINE * (len(found) - 1 - number))
    return found


def _spot(number: int, faces: list[tuple[int, list[Spot]]]) -> Spot | None:
    """A place on a part that nothing hides: the middle of a face, largest first, or towards its corners."""
    last = max((at for at, (one, _) in enumerate(faces) if one == number), default=-1)
    own = sorted((face for one, face in faces if one == number), key=_area, reverse=True)
    over = [face for _, face in faces[last + 1 :]]
    tried = [spot for face in own for spot in _places(face)]
    return next((spot for spot in tried if not any(_inside(spot, face) for face in over)), None)


def _places(face: list[Spot]) -> list[Spot]:
    x, y = (sum(one) / len(face) for one in zip(*face, strict=True))
    return [(x, y), *((x + (u - x) * share, y + (v - y) * share) for share in (0.5, 0.85) for u, v in face)]


def _area(face: list[Spot]) -> float:
    return abs(sum(u * vv - uu * v for (u, v), (uu, vv) in zip(face, face[1:] + face[:1], strict=True)))


def _inside(spot: Spot, face: list[Spot]) -> bool:
    x, y = spot
    inside = False
    for (u, v), (uu, vv) in zip(face, face[1:] + face[:1], strict=True):
        if (v > y) != (vv > y) and x < u + (y - v) * (uu - u) / (vv - v):
            inside = not inside
    return inside
