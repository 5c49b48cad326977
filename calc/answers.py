"""An answered question: typed values, how each prints, the working, the cautions; for people or machines."""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from calc import show
from calc.bench import Bench
from calc.declare import Answer, Carry, Caution, Sum, Values
from calc.reading import Reading
from calc.show import Shown
from calc.trig import is_exact
from calc.units import MM_PER_INCH, factor


@dataclass(frozen=True)
class Given:
    """An entry as it was understood. `typed` is "" where the default was taken."""

    name: str
    label: str
    typed: str
    read: str
    unit: str


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


def printed(answer: Answer, value: Any, bench: Bench) -> Shown:
    """One answer of any kind but rows, printed."""
    match answer.kind:
        case "length":
            return show.length(value, bench)
        case "fine":
            return show.fine(value, bench)
        case "angle":
            return show.angle(value, bench)
        case "money":
            return show.money(value, bench)
        case "percent":
            return Shown(f"{show.plain(value, answer.places)}%")
        case "volume":
            return Shown(
                f"{show.decimal(value / factor('cubic_metre', 'mm**3'), 4)} m³",
                also=f"{show.decimal(value / factor('litre', 'mm**3'), 1)} litres",
            )
        case "board-feet":
            return Shown(f"{show.plain(value, answer.places)} board feet")
        case "number":
            return Shown(show.plain(value, answer.places))
    return Shown(str(value))


@dataclass(frozen=True)
class Result:
    """One question answered. `values` holds the numbers themselves: millimetres, degrees, plain numbers."""

    sum: Sum
    bench: Bench
    readings: Mapping[str, Reading]
    givens: tuple[Given, ...]
    values: Values
    working: tuple[Line, ...]
    cautions: tuple[Caution, ...]

    def __getitem__(self, name: str) -> Any:
        return self.values[name]

    @property
    def answers(self) -> tuple[Answer, ...]:
        """The answers that were not given and have something to say, in the order declared."""
        typed = {given.name for given in self.givens}
        return tuple(one for one in self.sum.answers if one.name not in typed and self.values.get(one.name) is not None)

    @cached_property
    def text(self) -> str:
        """The answers a line each, then the cautions."""
        lines = [line for one in self.answers for line in self._lines(one)]
        return "\n".join(lines + [f"Take care: {caution.say}" for caution in self.cautions])

    def _lines(self, answer: Answer) -> list[str]:
        if answer.kind != "rows":
            return [f"{answer.label}: {printed(answer, self.values[answer.name], self.bench)}"]
        rows = [[str(cell["text"]) for cell in row] for row in self._rows(answer)]
        widths = [max(map(len, column)) for column in zip([c.label for c in answer.columns], *rows, strict=True)]
        table = [[column.label for column in answer.columns], *rows]
        return [f"{answer.label}:"] + [
            "  " + "  ".join(cell.ljust(width) for cell, width in zip(row, widths, strict=True)).rstrip()
            for row in table
        ]

    def _rows(self, answer: Answer) -> list[list[dict[str, Any]]]:
        return [
            [_cell(column, row.get(column.name), self.bench) for column in answer.columns]
            for row in self.values[answer.name]
        ]

    def to_dict(self) -> dict[str, Any]:
        """The whole answer as plain JSON values; the figure included."""
        return {
            "sum": self.sum.id,
            "givens": {one.name: {"typed": one.typed, "read": one.read, "unit": one.unit} for one in self.givens},
            "answers": [self._answer(one) for one in self.answers],
            "working": [
                {"label": w.label, "letters": w.letters, "numbers": w.numbers, "result": w.result, "note": w.note}
                for w in self.working
            ],
            "cautions": [{"say": one.say, "source": one.source} for one in self.cautions],
            "carry_on": [{"to": one.to, "why": one.why, "givens": self._carried(one)} for one in self.sum.carry_on],
            "figure": self.sum.figure(self.values).drawn(self.bench),
        }

    def _carried(self, carry: Carry) -> dict[str, str]:
        kinds = {one.name: one.kind for one in self.sum.named}
        known = {into: name for into, name in carry.give.items() if self.values.get(name) is not None}
        return {into: entry(kinds[name], self.values[name]) for into, name in known.items()}

    def _answer(self, answer: Answer) -> dict[str, Any]:
        head = {"name": answer.name, "label": answer.label, "kind": answer.kind, "help": answer.help}
        if answer.kind == "rows":
            columns = [{"name": c.name, "label": c.label, "kind": c.kind} for c in answer.columns]
            return {**head, "columns": columns, "rows": self._rows(answer)}
        return {**head, **_cell(answer, self.values[answer.name], self.bench)}


def entry(kind: str, value: Any) -> str:
    """A value as it would be typed into the next sum: exact where a rule can show it, else to six places."""
    if kind in ("length", "fine"):
        inches = value / MM_PER_INCH
        return (
            f"{show.fraction(inches)} in"
            if is_exact(value) and 64 % inches.denominator == 0
            else f"{show.plain(value, 6)} mm"
        )
    return show.plain(value, 6) if not isinstance(value, str) else value


UNIT_OF = {"length": "mm", "fine": "mm", "angle": "degree", "volume": "mm³", "board-feet": "board foot", "percent": "%"}


def _cell(answer: Answer, value: Any, bench: Bench) -> dict[str, Any]:
    if value is None:
        return {"text": "", "left": "", "also": "", "value": None, "unit": "", "exact": True}
    shown = printed(answer, value, bench)
    exact = isinstance(value, str) or is_exact(value)
    number = value if isinstance(value, str | int) else float(value)
    return {
        "text": shown.text,
        "left": shown.left,
        "also": shown.also,
        "value": number,
        "unit": UNIT_OF.get(answer.kind, ""),
        "exact": exact,
        **({"fraction": str(value)} if exact and not isinstance(value, str) else {}),
    }
