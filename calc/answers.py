"""An answered question: typed values, how each prints, the working, the cautions; for people or machines."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from calc.bench import Bench
from calc.cells import cell, entry, printed
from calc.declare import Answer, Carry, Caution, Sum, Values
from calc.drawing.exploded import drawings
from calc.trig import is_exact
from calc.typed.reading import Reading
from calc.working import Line, working


@dataclass(frozen=True)
class Given:
    """An entry as it was understood. `typed` is "" where the default was taken."""

    name: str
    label: str
    typed: str
    read: str
    unit: str

    def to_dict(self) -> dict[str, str]:
        """As plain JSON values."""
        return {"typed": self.typed, "read": self.read, "unit": self.unit}


def table(answer: Answer, rows: Sequence[Values], bench: Bench) -> list[str]:
    """A table as lines of text: its label, its columns' labels, its rows."""
    cells = [[cell(column, row.get(column.name), bench) for column in answer.columns] for row in rows]
    told = [[", ".join(filter(None, (one["text"], one["left"]))) for one in row] for row in cells]
    return [f"{answer.label}:", *(f"  {line}" for line in in_columns([[c.label for c in answer.columns], *told]))]


def in_columns(rows: Sequence[Sequence[str]]) -> list[str]:
    """Rows of words as lines, each column as wide as its longest word.

    >>> in_columns([["lid", "184 mm"], ["bottom", "9 mm"]])
    ['lid     184 mm', 'bottom  9 mm']
    """
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    return ["  ".join(word.ljust(wide) for word, wide in zip(row, widths, strict=True)).rstrip() for row in rows]


@dataclass(frozen=True)
class Result:
    """One question answered. `values` holds the numbers themselves: millimetres, degrees, plain numbers.

    `known` names those that were given, or cut, and so have no line of working.
    """

    sum: Sum
    bench: Bench
    readings: Mapping[str, Reading]
    givens: tuple[Given, ...]
    values: Values
    known: frozenset[str]
    cautions: tuple[Caution, ...]

    def __getitem__(self, name: str) -> Any:
        return self.values[name]

    @cached_property
    def rounded(self) -> bool:
        """True when an entry came from a rounded answer."""
        return any(reading.rounded for reading in self.readings.values())

    @cached_property
    def working(self) -> tuple[Line, ...]:
        """The lines that lead from what is known to the answers."""
        return working(self.sum, self.values, self.known, self.bench)

    @property
    def answers(self) -> tuple[Answer, ...]:
        """The answers that were not given and have something to say, in the order declared."""
        typed = {given.name for given in self.givens}
        told = (one for one in self.sum.answers if one.shown and one.name not in typed)
        return tuple(one for one in told if self.values.get(one.name) is not None)

    @cached_property
    def text(self) -> str:
        """The answers a line each, then the cautions."""
        lines = [line for one in self.answers for line in self._lines(one)]
        return "\n".join(lines + [f"Take care: {caution.say}" for caution in self.cautions])

    def _lines(self, answer: Answer) -> list[str]:
        if answer.kind != "rows":
            return [f"{answer.label}: {printed(answer, self.values[answer.name], self.bench)}"]
        return table(answer, self.values[answer.name], self.bench)

    def _rows(self, answer: Answer) -> list[list[dict[str, Any]]]:
        return [
            [cell(column, row.get(column.name), self.bench, self.rounded) for column in answer.columns]
            for row in self.values[answer.name]
        ]

    def to_dict(self) -> dict[str, Any]:
        """The whole answer as plain JSON values; its drawings included."""
        return {**self.to_read(), **self.to_study()}

    def to_read(self) -> dict[str, Any]:
        """What is read first, and takes least time to tell: the answers themselves."""
        return {
            "sum": self.sum.id,
            "givens": {one.name: one.to_dict() for one in self.givens},
            "answers": [self._answer(one) for one in self.answers],
            "cautions": [{"say": one.say, "source": one.source} for one in self.cautions],
        }

    def to_study(self) -> dict[str, Any]:
        """The rest: what comes next, the working, line by line, and every drawing."""
        drawn = {name: one.drawn(self.bench) for name, one in drawings(self.sum, self.values).items()}
        return {**self._followed(), **drawn}

    def undrawn(self) -> dict[str, Any]:
        """All but the drawings, which are ink for a page and of no use to a reader of numbers."""
        return {**self.to_read(), **self._followed()}

    def _followed(self) -> dict[str, Any]:
        return {
            "carry_on": [{"to": one.to, "why": one.why, "givens": self._carried(one)} for one in self.sum.carry_on],
            "working": [dict(vars(line)) for line in self.working],
        }

    def _carried(self, carry: Carry) -> dict[str, str]:
        kinds = {one.name: one.kind for one in self.sum.named}
        known = {into: name for into, name in carry.give.items() if self.values.get(name) is not None}
        return {into: self._entry(kinds[name], self.values[name]) for into, name in known.items()}

    def _entry(self, kind: str, value: Any) -> str:
        """A value to be typed into the next sum; a rounded one says so, since it must not enter as exact."""
        about = not isinstance(value, str) and (self.rounded or not is_exact(value))
        return f"{'≈ ' if about else ''}{entry(kind, value, self.bench)}"

    def _answer(self, answer: Answer) -> dict[str, Any]:
        head = {"name": answer.name, "label": answer.label, "kind": answer.kind, "help": answer.help}
        if answer.kind == "rows":
            columns = [{"name": c.name, "label": c.label, "kind": c.kind} for c in answer.columns]
            return {**head, "columns": columns, "rows": self._rows(answer)}
        return {**head, **cell(answer, self.values[answer.name], self.bench, self.rounded)}
