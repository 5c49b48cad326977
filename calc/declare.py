"""What a sum is: frozen values from which the form, the command line, the help, the page and the tests are all made."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, Any

from calc.answer_kinds import KINDS as KINDS
from calc.answer_kinds import Answer as Answer
from calc.answer_kinds import as_answer
from calc.bench import Bench
from calc.kinds import Given
from calc.sources import BASES as BASES
from calc.sources import Caution as Caution
from calc.sources import Source as Source

if TYPE_CHECKING:
    from calc.drawing.figure import Figure

MOMENTS = ("sketch", "mark-out", "stock", "cut", "join", "fit", "finish", "piece")

Values = Mapping[str, Any]
"""Every given and answer by name, as numbers: lengths in millimetres, angles in degrees."""


@dataclass(frozen=True)
class AnyOf:
    """Exactly `count` of the givens `names` are wanted; the rest are answered."""

    count: int
    names: tuple[str, ...]


@dataclass(frozen=True)
class Formula:
    """One line of working: `name` equals `text`, in the small notation of `calc.formula`.

    It holds whichever givens were chosen; of several lines for one name the page shows the first whose parts are known.
    `note` is a few words on why. `within` is how far `work` may differ, in the value's own unit
    (for answers put on a mark).
    """

    name: str
    text: str
    note: str = ""
    within: float = 1e-9


@dataclass(frozen=True)
class Example:
    """Typed entries of the worked example, and the story they belong to."""

    givens: Mapping[str, str]
    story: str


@dataclass(frozen=True)
class Carry:
    """A sum that usually follows, and which value goes into which of its givens."""

    to: str
    give: Mapping[str, str]
    why: str = ""


@dataclass(frozen=True, kw_only=True, repr=False)
class Sum:
    """One sum. `work` takes every given by name and returns every answer by name; Refusal where no answer exists.

    `proof` returns a dict from a sentence to how far that identity misses (0 is proved); it repeats no formula.
    `limits_of` explains in words where the sum stops being true.
    """

    id: str
    title: str
    moment: str
    question: str
    asks: tuple[str, ...]
    purpose: str
    givens: tuple[Given, ...]
    answers: tuple[Answer, ...]
    work: Callable[..., Values]
    formulas: tuple[Formula, ...]
    proof: Callable[[Values], Mapping[str, float]]
    figure: "Callable[[Values], Figure]"
    sources: tuple[Source, ...]
    example: Example
    limits_of: str
    any_of: AnyOf | None = None
    cautions: tuple[Caution, ...] = ()
    carry_on: tuple[Carry, ...] = ()

    def __post_init__(self) -> None:
        names = [given.name for given in self.givens]
        chosen = self.any_of.names if self.any_of else ()
        unknown = (set(self.example.givens) | set(chosen)) - set(names)
        if self.moment not in MOMENTS or len(set(names)) != len(names) or unknown:
            raise ValueError(f"sum {self.id!r} is not whole: moment {self.moment!r}, names {names}, unknown {unknown}")
        if not (self.purpose and self.asks and self.sources and self.formulas and self.limits_of):
            raise ValueError(f"sum {self.id!r} lacks its purpose, questions, formulas, sources or limits")

    def __repr__(self) -> str:
        asks = ", ".join(given.name for given in self.givens)
        return f"<Sum {self.id}: {asks} -> {', '.join(answer.name for answer in self.answers)}>"

    @property
    def named(self) -> tuple[Given | Answer, ...]:
        """Everything that has a name and a label: the givens, then the answers."""
        return (*self.givens, *self.answers)

    @cached_property
    def labels(self) -> dict[str, str]:
        """Each name's label as it stands inside a sentence or a formula: no capital, no comma."""
        return {one.name: (one.label[0].lower() + one.label[1:]).replace(",", "") for one in self.named}

    @cached_property
    def kinds(self) -> dict[str, Answer]:
        """How each given and answer prints, by name."""
        givens = (as_answer(one) for one in self.givens if one.kind != "rows")
        return {one.name: one for one in (*givens, *self.answers)}

    def given(self, name: str) -> Given:
        """The given called `name`; KeyError when there is none."""
        return {given.name: given for given in self.givens}[name]

    @cached_property
    def _plain(self) -> dict[str, Any]:
        """What every given is when nothing is given."""
        return {one.name: one.parse(one.default, Bench()).value if one.default else None for one in self.givens}

    def of(self, **numbers: Any) -> Values:
        """Every given and answer from numbers (millimetres, degrees), each default taken; how a piece asks a sum."""
        given = self._plain | numbers
        return {**given, **self.work(**given)}
