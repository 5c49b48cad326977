"""Entries made of several: a list of boards, and a reckoning over lengths."""

import re
from dataclasses import dataclass
from typing import ClassVar

from calc.bench import Bench
from calc.errors import Refusal
from calc.kinds import Choice, Given, Text
from calc.typed import arithmetic
from calc.typed.glyphs import CROSSES
from calc.typed.reading import Reading

LONGEST_LIST = 100
CROSS = f"[{CROSSES}]"


@dataclass(frozen=True, kw_only=True)
class Rows(Given):
    """A list of like things. As text: rows apart by `;` or a new line, cells by `x`, in the order of `columns`.

    `work` is handed a tuple of dicts from column name to value: for boards "2 x 1 in x 6 in x 8 ft" is
    ({"count": 2, "thickness": ..., "width": ..., "length": ...},). Free text stands in the first column only: whatever
    is left of the other cells is its own, an x as well.
    """

    kind: ClassVar[str] = "rows"
    columns: tuple[Given, ...]

    def __post_init__(self) -> None:
        super().__post_init__()
        keys = [
            word for one in self.columns if isinstance(one, Choice) for o in one.options for word in (o.key, o.label)
        ]
        if any("x" in key.lower() for key in keys):
            raise ValueError(f"rows {self.name!r}: an x parts the cells, so no choice in {keys} may hold one")
        if any(isinstance(one, Text) for one in self.columns[1:]):
            raise ValueError(f"rows {self.name!r}: an x parts the cells, so free text may stand in the first only")

    def parse(self, text: str, bench: Bench) -> Reading:
        """The rows as a tuple of dicts."""
        lines = [line for line in map(str.strip, text.replace("；", "\n").replace(";", "\n").split("\n")) if line]
        if not lines or len(lines) > LONGEST_LIST:
            raise Refusal(f"{len(lines)} rows are listed", f"list 1 to {LONGEST_LIST}, one a line")
        found = [self._row(at, line, bench) for at, line in enumerate(lines, 1)]
        return Reading(
            tuple({name: one.value for name, one in row.items()} for row in found),
            "",
            "; ".join(" x ".join(one.read for one in row.values()) for row in found),
        )

    def _row(self, at: int, line: str, bench: Bench) -> dict[str, Reading]:
        cells = self._cells(line)
        if len(cells) != len(self.columns):
            wanted = " x ".join(column.label.lower() for column in self.columns)
            parts = f"{len(cells)} part{'s' if len(cells) > 1 else ''}"
            raise Refusal(f"row {at} has {parts}, not {len(self.columns)}", f"type {wanted}")
        return {column.name: _cell(at, column, cell, bench) for column, cell in zip(self.columns, cells, strict=True)}

    def _cells(self, line: str) -> list[str]:
        """The cells of a row; where the first is free text, every x but the last few belongs to it."""
        if not isinstance(self.columns[0], Text):
            return [cell.strip() for cell in re.split(CROSS, line)]
        backwards = re.split(CROSS, line[::-1], maxsplit=len(self.columns) - 1) if self.columns[1:] else [line[::-1]]
        return [cell[::-1].strip() for cell in reversed(backwards)]

    def check(self, found: Reading) -> None:
        """Rows hold each cell to its own column's limit while reading."""


@dataclass(frozen=True, kw_only=True)
class Reckoning(Given):
    """A sum typed out over lengths, such as 9 3/4 + 2 x 16 mm; `work` is handed a `calc.typed.arithmetic.Reckoned`."""

    kind: ClassVar[str] = "reckoning"
    noun: ClassVar[str] = "a reckoning"

    def parse(self, text: str, bench: Bench) -> Reading:
        """The reckoning worked out, and how it was read; bare numbers in the bench's unit."""
        found, read = arithmetic.reckon(text, bench.unit)
        return Reading(found, bench.unit, read)


def _cell(at: int, column: Given, text: str, bench: Bench) -> Reading:
    try:
        return column.read(text or column.default, bench)
    except Refusal as refusal:
        raise Refusal(f"row {at}, {column.label.lower()}: {refusal.say}", refusal.instead) from None
