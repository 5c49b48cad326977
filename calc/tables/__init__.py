"""Published figures: CSV files, each row with its source and its basis, read once and never typed into a sum.

basis says how a figure is known: `read` in the source named, `computed` from a formula, or `memory`, which no source
bears out; a sum that uses one of those must say so beside the answer.
"""

import csv
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from importlib import resources

from calc.typed.reading import number

CHECK = "from memory, check before you trust it"


@dataclass(frozen=True)
class Figure:
    """One published figure: its exact value as printed, and where it is from."""

    value: Fraction
    source: str = ""
    basis: str = "read"
    note: str = ""

    @property
    def remembered(self) -> bool:
        """True when no source bears the figure out."""
        return self.basis == "memory"

    @property
    def said(self) -> str:
        """Where the figure is from, in words."""
        if self.remembered:
            return CHECK
        ours = "" if self.basis == "read" else self.note
        return "; ".join(part for part in (work(self.source), ours) if part)


@cache
def rows(name: str) -> tuple[Mapping[str, str], ...]:
    """Every row of a table by column name, as text; FileNotFoundError when there is no such table."""
    text = resources.files(__name__).joinpath(f"{name}.csv").read_text("utf-8")
    columns, *lines = csv.reader(text.splitlines())
    return tuple(dict(zip(columns, line, strict=True)) for line in lines)


def figure(row: Mapping[str, str], column: str = "value", scale: Fraction | int = 1) -> Figure:
    """One cell of a row as an exact figure times `scale`, with its source and basis.

    >>> figure({"value": "2-1/2", "source": "S10", "basis": "read"}).value
    Fraction(5, 2)
    """
    told = number(row[column]).value
    assert isinstance(told, Fraction)
    return Figure(told * scale, row["source"], row["basis"], row.get("note", ""))


def work(source: str) -> str:
    """The work a source id stands for; KeyError when it is not listed."""
    return {row["id"]: row["work"] for row in rows("sources")}[source]
