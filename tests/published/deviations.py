"""How far each sum stands from what others have printed: how many figures it is held against, and the worst of them."""

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from published import MM, Check, everything, half_unit
from works import works

from calc import discover
from calc.cells import UNIT_OF
from calc.declare import Answer
from calc.given import Given

KINDS = {"read": "printed", "memory": "from memory"}
"""What is told of a figure by its basis; any other was worked out here, by another way than the sum's."""


@dataclass(frozen=True)
class Cell:
    """One printed figure beside the answer.

    off: how far the answer is from the print, in `unit`. digits: the same in units of the last printed digit or mark;
    a word that agrees is off by nothing. note: what the check says of its figure.
    """

    answer: str
    works: tuple[str, ...]
    basis: str
    off: float
    unit: str
    digits: float
    misprint: bool
    note: str


@dataclass(frozen=True)
class Tally:
    """All the figures one sum is checked against. Those known to be misprinted count, and are never the worst."""

    cells: tuple[Cell, ...]

    @property
    def misprints(self) -> int:
        """How many of the printed figures are proved wrong."""
        return sum(cell.misprint for cell in self.cells)

    @property
    def kinds(self) -> dict[str, int]:
        """How many were printed by others, worked out from a printed rule, or are only remembered."""
        return dict(Counter(KINDS.get(cell.basis, "worked out") for cell in self.cells).most_common())

    @property
    def works(self) -> dict[str, int]:
        """Each work that printed some -> how many."""
        return dict(Counter(work for cell in self.cells for work in cell.works).most_common())

    @cached_property
    def worst(self) -> Cell | None:
        """The figure missed by most of its last digit; None where there is none to miss."""
        return max((cell for cell in self.cells if not cell.misprint), key=lambda cell: cell.digits, default=None)

    @property
    def by_answer(self) -> dict[str, "Tally"]:
        """The same for each answer by its label, in the order they were first met."""
        labels = dict.fromkeys(cell.answer for cell in self.cells)
        return {label: Tally(tuple(cell for cell in self.cells if cell.answer == label)) for label in labels}


def tallies() -> dict[str, Tally]:
    """Every sum's own tally by its id; an empty one where nobody has printed a figure."""
    found: dict[str, list[Cell]] = {one.id: [] for one in discover.everything()}
    for check in everything():
        found[check.sum] += cells(check)
    return {name: Tally(tuple(each)) for name, each in found.items()}


def cells(check: Check) -> Iterator[Cell]:
    """Each printed figure of a check beside its answer."""
    result = check.answered()
    for name, want in check.expect.items():
        off = miss(check.found(result, name), want)
        label, kind = asked(check, name)
        yield Cell(
            answer=label,
            works=tuple(works(check)),
            basis=check.basis,
            off=off * float(MM[check.unit[name]] if name in check.unit else 1),
            unit=UNIT_OF.get(kind, "").replace("degree", "°"),
            digits=off / digit(check, name, want),
            misprint=name in check.exact,
            note=check.note,
        )


def asked(check: Check, name: str) -> tuple[str, str]:
    """Label and kind of the answer a check names; of "rows.0.width" those of its column, the table's label first."""
    first, *rest = name.split(".")
    one: Answer | Given = {each.name: each for each in discover.find(check.sum).named}[first]
    if not (rest and isinstance(one, Answer)):
        return one.label, one.kind
    column = {each.name: each for each in one.columns}[rest[-1]]
    return f"{one.label}: {column.label.lower()}", column.kind


def miss(found: Any, want: Any) -> float:
    """How far an answer is from the print, in the print's unit."""
    return float(found != want) if isinstance(found, str) else abs(float(found) - float(want))


def digit(check: Check, name: str, want: Any) -> float:
    """One unit of the last printed digit; where the print is no decimal, the mark it was printed on, or 1."""
    if isinstance(want, str) and "." in want:
        return 2 * half_unit(want)
    return 2 * check.within.get(name, 0) or 1
