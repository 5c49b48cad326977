"""The sizes of a piece: each worked out from others by a small function whose parameters name what it depends on."""

import inspect
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from typing import Any

from calc import formula
from calc.building.yielding import Yield as Yield
from calc.declare import Answer, Formula, Values
from calc.given import Given, Limit
from calc.kinds import Angle, Length
from calc.show import NOISE
from calc.trig import Number

CUT_KINDS = {"length": Length, "fine": Length, "angle": Angle}
ANY = Limit()
READ = Fraction(1, 20)
"""Degrees: half of the tenth to which an angle is told, so that one cut as it was told fits."""
SAID = Yield()
"""Nothing gives way, and what is too large or too small is said."""


def parameters(work: Callable[..., Any]) -> tuple[str, ...]:
    """The names a function asks for; ValueError where it takes any number of them.

    >>> parameters(lambda depth, overhang: depth + overhang)
    ('depth', 'overhang')
    """
    found = inspect.signature(work).parameters.values()
    if any(one.kind not in (one.POSITIONAL_OR_KEYWORD, one.KEYWORD_ONLY) for one in found):
        raise ValueError("a size is worked out from what its function names, one parameter each")
    return tuple(one.name for one in found)


@dataclass(frozen=True, kw_only=True)
class Step:
    """Something worked out on the way and not shown, such as another sum's answers. `work` may return anything."""

    name: str
    work: Callable[..., Any]

    @cached_property
    def needs(self) -> tuple[str, ...]:
        """The givens and sizes that `work` asks for."""
        return parameters(self.work)


@dataclass(frozen=True, kw_only=True)
class Size(Answer):
    """One size of a piece. `help` says in a sentence what it is; `work` gives it from the sizes its parameters name.

    `work` is handed Fractions, or floats once a given has yielded to a curved relation; None for what is left out.
    part: the part it is measured on, as a sentence names it ("lid"); only a length or an angle of a part can be
    recorded as cut. formula: the same relation in `calc.formula`'s notation, shown with its numbers and held against
    `work` by the tests. A size may bear the name of a given that may be left out: it is worked out when that is empty.
    """

    work: Callable[..., Any]
    kind: str = "length"
    part: str = ""
    limit: Limit = ANY
    formula: str = ""
    note: str = ""
    within: float = 1e-9
    yields: Yield = SAID

    def __post_init__(self) -> None:
        super().__post_init__()
        if self.kind == "rows" or not self.help.endswith("."):
            raise ValueError(f"size {self.name!r} needs a sentence that says what it is, and a kind that is no table")
        if extra := self.limit.text() and self.kind not in CUT_KINDS:
            raise ValueError(f"size {self.name!r} is no length or angle and cannot be held to {extra}")

    @cached_property
    def needs(self) -> tuple[str, ...]:
        """The givens and sizes that `work` asks for."""
        return parameters(self.work)

    @property
    def can_be_cut(self) -> bool:
        """True for what is measured on a part."""
        return bool(self.part) and self.kind in CUT_KINDS

    @cached_property
    def entry(self) -> Given:
        """How it is asked for when it is recorded as cut: read, and held to its limit, like any given."""
        return CUT_KINDS[self.kind](name=self.name, label=self.label, help=self.help, limit=self.limit)

    def harms(self, more: Number, values: Values) -> bool:
        """Whether it does harm that it came out so much `more` than worked out: past its play, where that matters."""
        says = self.yields.over if more > 0 else self.yields.under
        play = max(values.get(self.yields.play) or 0, READ if self.kind == "angle" else 0)
        return bool(says) and abs(float(more)) > float(play) + NOISE

    def outside(self, value: Any) -> str:
        """How a value breaks its limit, "is too small" and why; "" when it does not."""
        return self.entry.outside(value) if self.limit.text() else ""

    @property
    def line(self) -> Formula | None:
        """The formula as a line of working."""
        return Formula(self.name, self.formula, self.note, self.within) if self.formula else None

    def formula_names(self) -> frozenset[str]:
        """Everything its formula speaks of."""
        return formula.names(self.formula) if self.formula else frozenset()


@dataclass(frozen=True, kw_only=True)
class Table(Answer):
    """A table made from the sizes, such as the parts or the order of work; it brings no new size.

    `work` is handed every size by name. A table that looks up a size not decided yet is left out.
    """

    work: Callable[[Values], Sequence[Values]]
    kind: str = "rows"


@dataclass(frozen=True, kw_only=True)
class Match:
    """Sizes that must be alike. `within` gives how nearly, in millimetres; its parameters name what that depends on.

    why: the end of a sentence: "so that the lid sits on both sides within the thickness of a card".
    """

    names: tuple[str, ...]
    within: Callable[..., Any]
    why: str

    @cached_property
    def needs(self) -> tuple[str, ...]:
        """The givens and sizes that `within` asks for."""
        return parameters(self.within)

    def needs_known(self, values: Values) -> bool:
        """True when `within` can be said."""
        return all(name in values for name in self.needs)
