"""A reckoning over lengths as a tree: what each part is, what it comes to exactly, and how it is said with its units.

A part is a length, a plain number, or bare: a number without a unit, whose place decides. Added to a length or taken
from one it takes the maker's unit; multiplying or dividing a length it stays a number; where nothing has a unit the
first is the length.
"""

from dataclasses import dataclass, field
from fractions import Fraction

from calc.errors import Refusal
from calc.show import MINUS
from calc.typed.reader import said
from calc.units import factor

LENGTH, NUMBER, BARE = "a length", "a number", "bare"
SHOWN = {"+": "+", "-": MINUS, "x": "×", "÷": "÷"}
SIGN = {"+": 1, "-": -1}


@dataclass(frozen=True)
class Leaf:
    """One length, or one bare number."""

    amount: Fraction
    read: str
    kind: str

    def value(self, want: str, unit: str) -> Fraction:
        """What it comes to when it is to be `want`."""
        return self.amount * factor(unit, "mm") if (self.kind, want) == (BARE, LENGTH) else self.amount

    def said(self, want: str, unit: str) -> str:
        """How it is read when it is to be `want`."""
        if self.kind == LENGTH:
            return self.read
        return f"{said(self.amount, unit)} {unit}" if want == LENGTH else said(self.amount)


@dataclass(frozen=True)
class Shut:
    """A part in brackets, or after a minus sign of its own."""

    inner: "Part"
    before: str = "("
    kind: str = field(init=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "kind", self.inner.kind)

    def value(self, want: str, unit: str) -> Fraction:
        """What it comes to."""
        return self.inner.value(want, unit) * (-1 if self.before == MINUS else 1)

    def said(self, want: str, unit: str) -> str:
        """How it is read."""
        return f"{self.before}{self.inner.said(want, unit)}{')' if self.before == '(' else ''}"


@dataclass(frozen=True)
class Total:
    """Terms added and taken away: lengths all, or numbers all; bare ones become what the others are."""

    parts: tuple[tuple[str, "Part"], ...]
    kind: str = field(init=False)

    def __post_init__(self) -> None:
        kinds = {part.kind for _, part in self.parts}
        if {LENGTH, NUMBER} <= kinds:
            raise Refusal("a length and a plain number are added together", "add lengths to lengths")
        object.__setattr__(self, "kind", next((kind for kind in (LENGTH, NUMBER) if kind in kinds), BARE))

    def _want(self, want: str) -> str:
        return want if self.kind == BARE else self.kind

    def value(self, want: str, unit: str) -> Fraction:
        """What it comes to."""
        return sum((SIGN[sign] * one.value(self._want(want), unit) for sign, one in self.parts), Fraction(0))

    def said(self, want: str, unit: str) -> str:
        """How it is read."""
        return _joined([(sign, one.said(self._want(want), unit)) for sign, one in self.parts])


@dataclass(frozen=True)
class Product:
    """Factors multiplied and divided, from the left: at most one length at any time, for areas are not lengths."""

    parts: tuple[tuple[str, "Part"], ...]
    kind: str = field(init=False)

    def __post_init__(self) -> None:
        kinds = [part.kind for _, part in self.parts]
        kind = self._measure() if LENGTH in kinds else NUMBER if NUMBER in kinds else BARE
        object.__setattr__(self, "kind", kind)

    def _measure(self) -> str:
        lengths = 0
        for sign, part in self.parts:
            lengths += (part.kind == LENGTH) * (-1 if sign == "÷" else 1)
            if lengths > 1:
                raise Refusal("a length times a length is an area, not a length", "multiply a length by a plain number")
            if lengths < 0:
                raise Refusal("a plain number is divided by a length", "put a unit to the first, as in 12 in ÷ 3 in")
        return LENGTH if lengths else NUMBER

    def _wants(self, want: str) -> list[str]:
        """What each factor is to be: where none has a unit, the first is what is wanted and the rest are numbers."""
        first = want if self.kind == BARE else NUMBER
        return [first if at == 0 and part.kind == BARE else NUMBER for at, (_, part) in enumerate(self.parts)]

    def value(self, want: str, unit: str) -> Fraction:
        """What it comes to; a Refusal where something is divided by nothing."""
        found = Fraction(1)
        for (sign, part), wanted in zip(self.parts, self._wants(want), strict=True):
            one = part.value(wanted, unit)
            if sign == "÷" and not one:
                raise Refusal(f"{part.said(wanted, unit)} is nothing, and nothing divides", "divide by something else")
            found = found / one if sign == "÷" else found * one
        return found

    def said(self, want: str, unit: str) -> str:
        """How it is read."""
        wants = zip(self.parts, self._wants(want), strict=True)
        return _joined([(sign, one.said(wanted, unit)) for (sign, one), wanted in wants])


def _joined(words: list[tuple[str, str]]) -> str:
    return " ".join([words[0][1], *(f"{SHOWN[sign]} {word}" for sign, word in words[1:])])


Part = Leaf | Shut | Total | Product
