"""A few equations in as many unknowns, straight ones solved exactly by elimination over Fractions."""

from collections.abc import Callable, Sequence
from fractions import Fraction

from calc.building.trials import fine, still
from calc.trig import Number

Point = tuple[Fraction, ...]
Misses = Callable[[Point], list[Number] | None]
TURNS = 12


def solve(rows: Sequence[Sequence[Number]], right: Sequence[Number]) -> list[Number] | None:
    """The unknowns of a square set of straight equations, exact where all of it is; None where they are not settled.

    >>> solve([[Fraction(1), Fraction(1)], [Fraction(1), Fraction(-1)]], [Fraction(3), Fraction(1)])
    [Fraction(2, 1), Fraction(1, 1)]
    """
    table = [[*row, wanted] for row, wanted in zip(rows, right, strict=True)]
    for at in range(len(table)):
        pivot = max(range(at, len(table)), key=lambda row: abs(float(table[row][at])))
        if still(table[pivot][at]):
            return None
        table[at], table[pivot] = table[pivot], table[at]
        table[at] = [one / table[at][at] for one in table[at]]
        for row in (one for one in range(len(table)) if one != at):
            table[row] = [mine - table[row][at] * its for mine, its in zip(table[row], table[at], strict=True)]
    return [row[-1] for row in table]


def settle_together(misses: Misses, start: Point) -> tuple[Point, bool] | None:
    """Where all misses are nothing, by Newton's method from `start`, and whether one step was enough.

    One step does it, exactly, where every relation is straight; curved ones take a few. None where it does not arrive.
    """
    point = start
    for turn in range(TURNS):
        here = misses(point)
        if here is None:
            return None
        if all(still(one) for one in here):
            return point, turn <= 1
        step = _step(misses, point, here)
        if step is None:
            return None
        point = tuple(was + Fraction(by) for was, by in zip(point, step, strict=True))
        point = point if not turn else tuple(fine(one) for one in point)
    return None


def _step(misses: Misses, point: Point, here: Sequence[Number]) -> list[Number] | None:
    columns = []
    for at in range(len(point)):
        beside = misses((*point[:at], point[at] + Fraction(1, 64), *point[at + 1 :]))
        if beside is None:
            return None
        columns.append([(one - was) * 64 for one, was in zip(beside, here, strict=True)])
    return solve(list(zip(*columns, strict=True)), [-one for one in here])
