"""A board with square cuts taken out of it, as a solid: rabbets and grooves, wherever they run."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise, product
from typing import Any

from calc.drawing.solid import Solid, Spot3

Box = tuple[Spot3, Spot3]
Cell = tuple[int, int, int]
Node = tuple[int, int]
WAYS: list[Cell] = [(-1, 0, 0), (1, 0, 0), (0, -1, 0), (0, 1, 0), (0, 0, -1), (0, 0, 1)]
HAIR = 1e-9
"""Millimetres under which two planes are one."""


def carved(
    part: str, low: Sequence[Any], high: Sequence[Any], cuts: Iterable[Any], apart: Spot3, grain: Spot3
) -> Solid:
    """A board from its lowest corner to its highest, less the boxes in `cuts`, each from lowest corner to highest.

    It is cut into cells along every plane of every cut; where wood meets air there is a face, and cells in one plane
    are one face where they go together without a hole.
    """
    board, taken = _box(low, high), [_box(*cut) for cut in cuts]
    lines = [_lines(axis, board, taken) for axis in range(3)]
    along, across, up = (range(len(at) - 1) for at in lines)
    cells = {cell for cell in product(along, across, up) if _wood(cell, lines, taken)}
    outlines = list(_outlines(cells))
    corners = {spot for outline in outlines for spot in _turns(outline)}
    faces = [tuple(_spot(spot, lines) for spot in outline if spot in corners) for outline in outlines]
    return Solid(part, tuple(faces), apart, grain)


def _box(low: Sequence[Any], high: Sequence[Any]) -> Box:
    (x, y, z), (xx, yy, zz) = low, high
    return (float(x), float(y), float(z)), (float(xx), float(yy), float(zz))


def _lines(axis: int, board: Box, taken: list[Box]) -> list[float]:
    """Where the board is parted along an axis."""
    low, high = board[0][axis], board[1][axis]
    inside = sorted(end[axis] for cut in taken for end in cut if low + HAIR < end[axis] < high - HAIR)
    kept = [one for before, one in pairwise([low, *inside]) if one - before > HAIR]
    return [low, *kept, high]


def _wood(cell: Cell, lines: list[list[float]], taken: list[Box]) -> bool:
    middle = [(lines[axis][at] + lines[axis][at + 1]) / 2 for axis, at in enumerate(cell)]
    return not any(all(a < m < b for a, m, b in zip(*cut[:1], middle, *cut[1:], strict=True)) for cut in taken)


def _spot(spot: Cell, lines: list[list[float]]) -> Spot3:
    x, y, z = (lines[axis][at] for axis, at in enumerate(spot))
    return x, y, z


def _outlines(cells: set[Cell]) -> Iterator[list[Cell]]:
    """The outline of every face, counter-clockwise from outside, through every corner of its cells."""
    planes: dict[tuple[int, int, int], set[Node]] = defaultdict(set)
    for cell, way in product(sorted(cells), WAYS):
        if (cell[0] + way[0], cell[1] + way[1], cell[2] + way[2]) not in cells:
            axis = next(at for at in range(3) if way[at])
            u, v = (axis + 1) % 3, (axis + 2) % 3
            planes[axis, way[axis], cell[axis] + (way[axis] > 0)].add((cell[u], cell[v]))
    for (axis, side, level), patch in planes.items():
        for outline in _patches(patch):
            placed = [_placed(axis, level, node) for node in outline]
            yield placed if side > 0 else placed[::-1]


def _placed(axis: int, level: int, node: Node) -> Cell:
    at = [0, 0, 0]
    at[axis], at[(axis + 1) % 3], at[(axis + 2) % 3] = level, *node
    return at[0], at[1], at[2]


def _patches(patch: set[Node]) -> Iterator[list[Node]]:
    """Outlines of cells that go together; a row is left for later where it would close a ring round a hole."""
    while patch:
        together: set[Node] = set()
        waiting = [min(patch)]
        while waiting:
            cell = waiting.pop()
            if cell in patch and cell not in together and _simple({*together, cell}):
                together.add(cell)
                waiting += [
                    (cell[0] + 1, cell[1]),
                    (cell[0] - 1, cell[1]),
                    (cell[0], cell[1] + 1),
                    (cell[0], cell[1] - 1),
                ]
        patch = patch - together
        yield _loops(together)[0]


def _simple(cells: set[Node]) -> bool:
    """True where the cells have one outline that touches itself nowhere."""
    found = _loops(cells)
    return len(found) == 1 and len(set(found[0])) == len(found[0])


def _loops(cells: set[Node]) -> list[list[Node]]:
    """The outlines of cells, counter-clockwise, hole outlines the other way."""
    edges: dict[Node, list[Node]] = defaultdict(list)
    for u, v in sorted(cells):  # in the same order on every machine
        ring = [(u, v), (u + 1, v), (u + 1, v + 1), (u, v + 1), (u, v)]
        beside = [(u, v - 1), (u + 1, v), (u, v + 1), (u - 1, v)]
        for (a, b), other in zip(pairwise(ring), beside, strict=True):
            if other not in cells:
                edges[a].append(b)
    found = []
    while edges:
        loop = [next(iter(edges))]
        while ahead := edges.get(loop[-1]):
            loop.append(ahead.pop())
            if not ahead:
                del edges[loop[-2]]
            if loop[-1] == loop[0]:
                break
        found.append(loop[:-1])
    return found


def _turns(outline: list[Cell]) -> list[Cell]:
    """The corners of an outline where it turns."""
    around = zip([outline[-1], *outline[:-1]], outline, [*outline[1:], outline[0]], strict=True)
    return [here for before, here, after in around if _way(before, here) != _way(here, after)]


def _way(one: Cell, other: Cell) -> Cell:
    return other[0] - one[0], other[1] - one[1], other[2] - one[2]
