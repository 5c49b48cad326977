"""The names of parts in columns down either side of a drawing, each with a line to its part."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from calc.drawing import ink
from calc.drawing.figure import Figure
from calc.drawing.room import Room
from calc.drawing.solid import Solid

Spot = tuple[float, float]
LETTER, LINE, EDGE = 7.6, 17.0, 3.0
"""Pixels: a letter of the names with some to spare, from name to name, and from the paper's edge."""


@dataclass(frozen=True)
class Name:
    """A part's name and where on the paper (millimetres) the line from it ends: on what is seen of the part."""

    text: str
    at: Spot


def lettered(drawing: Figure, solids: Sequence[Solid], faces: list[tuple[int, list[Spot]]]) -> None:
    """A column of names down either side, each with a line to its part; what is hidden has none."""
    spots = {number: _spot(number, faces) for number in range(len(solids))}
    names = [Name(solids[number].part, spot) for number, spot in spots.items() if spot]
    xs, ys = zip(*(spot for _, face in faces for spot in face), strict=True)
    middle = (min(xs) + max(xs)) / 2
    columns = {side: [one for one in names if (one.at[0] < middle) == (side == "start")] for side in ("start", "end")}
    room = {side: max([len(one.text) for one in some], default=0) * LETTER + 12 for side, some in columns.items()}
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
    """A place on the wood of a part that nothing hides: the middle of a face, largest first, or towards its corners."""
    last = max((at for at, (one, _) in enumerate(faces) if one == number), default=-1)
    own = sorted((face for one, face in faces if one == number), key=lambda face: round(_area(face), 6), reverse=True)
    over = [face for _, face in faces[last + 1 :]]
    tried = (spot for face in own for spot in _places(face) if _inside(spot, face))
    return next((spot for spot in tried if not any(_inside(spot, face) for face in over)), None)


def _places(face: list[Spot]) -> list[Spot]:
    x, y = (math.fsum(one) / len(face) for one in zip(*face, strict=True))
    return [(x, y), *((x + (u - x) * share, y + (v - y) * share) for share in (0.5, 0.85) for u, v in face)]


def _area(face: list[Spot]) -> float:
    return abs(math.fsum(u * vv - uu * v for (u, v), (uu, vv) in zip(face, face[1:] + face[:1], strict=True)))


def _inside(spot: Spot, face: list[Spot]) -> bool:
    x, y = spot
    inside = False
    for (u, v), (uu, vv) in zip(face, face[1:] + face[:1], strict=True):
        if (v > y) != (vv > y) and x < u + (y - v) * (uu - u) / (vv - v):
            inside = not inside
    return inside
