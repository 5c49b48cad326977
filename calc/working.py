"""The working: each formula in words, with the numbers put in, and what comes out."""

from dataclasses import dataclass
from typing import Any

from calc import formula, show
from calc.bench import Bench
from calc.cells import printed, volume
from calc.declare import Answer, Sum, Values
from calc.trig import is_exact
from calc.units import MM_PER_INCH

SURE = 6
"""Figures of a volume inside a line of working, so that the line comes to its own answer."""


@dataclass(frozen=True)
class Line:
    """One line of working: what is worked out, the formula in words, the numbers put in, the result."""

    label: str
    letters: str
    numbers: str
    result: str
    note: str = ""

    def __str__(self) -> str:
        return f"{self.label} = {self.letters} = {self.numbers} = {self.result}" + (
            f" ({self.note})" if self.note else ""
        )


def working(one: Sum, values: Values, known: frozenset[str], bench: Bench) -> tuple[Line, ...]:
    """The lines of working that lead from what was given: for each name the first formula whose parts are all known.

    An answer that has no formula, counted off a list or read from a table, is known from the start.
    """
    lines: list[Line] = []
    found, labels, kinds = {*known, *_looked_up(one, values)}, one.labels, one.kinds
    for line in one.formulas:
        if line.name in found or values.get(line.name) is None or not formula.names(line.text) <= found:
            continue
        found.add(line.name)
        letters = formula.letters(line.text, labels)
        numbers = formula.show(line.text, lambda name, unit: said(kinds[name], values[name], bench, unit))
        result = printed(kinds[line.name], values[line.name], bench).on_rule
        lines.append(Line(labels[line.name][0].upper() + labels[line.name][1:], letters, numbers, result, line.note))
    return tuple(lines)


def _looked_up(one: Sum, values: Values) -> set[str]:
    worked = {line.name for line in one.formulas}
    return {one.name for one in one.answers if one.name not in worked and values.get(one.name) is not None}


def said(answer: Answer, value: Any, bench: Bench, unit: str = "") -> str:
    """A value as it stands inside a line of working: short, in the maker's unit, exact where that is short too."""
    if unit:
        return short(value / formula.UNITS[unit])
    if answer.kind == "length":
        inches = bench.system == "in"
        return f"{short(value / MM_PER_INCH, 64)} in" if inches else f"{short(value)} mm"
    if answer.kind == "angle":
        return f"{show.telling(value, 2)}°"
    if answer.kind == "number":
        return show.telling(value, max(3, answer.places))
    if answer.kind == "volume":
        return volume(value, SURE).text
    return (
        short(value)
        if answer.kind in ("count", "percent", "money", "board-feet")
        else printed(answer, value, bench).text
    )


def short(value: Any, finest: int = 1) -> str:
    """A fraction where a rule has it, else a decimal to three places."""
    if finest > 1 and is_exact(value) and finest % value.denominator == 0:
        return show.fraction(value)
    return show.telling(value, 3)
