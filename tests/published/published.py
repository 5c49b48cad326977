"""A published figure as a check: what is given to a sum, what was printed, how near that must come, and who printed it.

Checks come from two places in this folder, and a new file of either sort is found by itself:
`*.toml`, one a source or subject, and `from_*.py`, whose `checks()` makes them from a table in `data/`.
"""

import csv
import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from importlib import import_module
from pathlib import Path
from typing import Any

import calc

HERE = Path(__file__).parent
MM = {"mm": 1, "cm": 10, "m": 1000, "in": Fraction("25.4"), "ft": Fraction("304.8")}
"""Millimetres in each unit a check may be printed in: the inch of 1959, 25.4 mm exactly."""


@dataclass(frozen=True, kw_only=True)
class Check:
    """One published figure, or one row of them.

    expect: what was printed, by answer name, in the answer's own unit or in `unit`. Decimals are best written as text,
    "26.5651": then `within` is half a unit of the last digit printed unless it says otherwise. A name such as
    "rows.0.width" looks into a table.
    misprint: the print is wrong; `exact` holds the right figures, and the answer must equal those and not the print.
    """

    sum: str
    given: Mapping[str, str]
    expect: Mapping[str, Any]
    source: str
    basis: str
    within: Mapping[str, float] = field(default_factory=dict)
    unit: Mapping[str, str] = field(default_factory=dict)
    bench: Mapping[str, str] = field(default_factory=dict)
    printed: Any = ""
    page: Any = ""
    note: str = ""
    misprint: bool = False
    exact: Mapping[str, Any] = field(default_factory=dict)

    def __str__(self) -> str:
        return f"{self.sum} {' '.join(f'{name}={text}' for name, text in self.given.items())}"

    def answered(self) -> calc.Result:
        """The sum's answer to what is given."""
        return calc.answer(self.sum, calc.Bench(**self.bench), **self.given)

    def misses(self, wanted: Mapping[str, Any]) -> dict[str, tuple[Any, Any]]:
        """Every answer further from `wanted` than it may be: name -> (answer, wanted)."""
        result = self.answered()
        found = {name: self.found(result, name) for name in wanted}
        return {name: (found[name], want) for name, want in wanted.items() if not self._near(name, found[name], want)}

    def found(self, result: calc.Result, name: str) -> Any:
        """The answer that a name such as "rows.0.width" means, in the unit it was printed in."""
        value: Any = result.values
        for step in name.split("."):
            value = value[int(step)] if step.isdecimal() else value[step]
        return value / MM[self.unit[name]] if name in self.unit else value

    def _near(self, name: str, found: Any, want: Any) -> bool:
        if isinstance(found, str):
            return found == want
        within = self.within.get(name, half_unit(str(want)))
        return abs(float(found) - float(want)) <= within * (1 + 1e-9)


def half_unit(printed: str) -> float:
    """Half a unit of the last decimal printed, "26.57" -> 0.005; a whole number is taken as exact."""
    places = len(printed.partition(".")[2])
    return 0.5 / 10**places if places else 1e-12 * max(1.0, abs(float(printed)))


def table(name: str) -> list[dict[str, str]]:
    """The rows of a table in `data/`, by column name."""
    with (HERE / "data" / name).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def everything() -> list[Check]:
    """Every check of every file here."""
    made = [check for path in sorted(HERE.glob("from_*.py")) for check in import_module(path.stem).checks()]
    return [check for path in sorted(HERE.glob("*.toml")) for check in _typed(path)] + made


def _typed(path: Path) -> Iterator[Check]:
    told = tomllib.loads(path.read_text("utf-8"))
    for check in told.pop("check"):
        yield Check(**(told | check))
