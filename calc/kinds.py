"""The kinds of entry a sum can ask for. A kind owns reading, limits and refusals; the engine adds the field's name."""

from dataclasses import dataclass
from functools import cache
from typing import ClassVar

from calc import reader, reading
from calc.bench import Bench
from calc.errors import Refusal
from calc.reading import Reading


@dataclass(frozen=True)
class Limit:
    """The range a given may take, in the given's own words; `above` leaves the low end itself out."""

    low: str = ""
    high: str = ""
    above: bool = False
    below: bool = False
    why: str = ""

    def text(self) -> str:
        """The range in words, as printed on the page and in a refusal."""
        low = f"{'more than' if self.above else 'from'} {self.low}" if self.low else ""
        high = f"{'less than' if self.below else 'up to'} {self.high}" if self.high else ""
        return " ".join(part for part in (low, "and" if low and high and self.above else "", high) if part)


@dataclass(frozen=True, kw_only=True)
class Given:
    """One thing a sum asks for.

    name: what `work` calls it. label: what the page and refusals call it. help: a sentence, how it is got at the bench.
    default: what an empty field means, as text ("" when it must be given). optional: `work` is handed None when empty.
    """

    kind: ClassVar[str] = ""
    name: str
    label: str
    help: str
    default: str = ""
    default_why: str = ""
    optional: bool = False
    limit: Limit = Limit()

    def __post_init__(self) -> None:
        if not (self.name.isidentifier() and self.label and self.help.endswith((".", "?"))):
            raise ValueError(f"given {self.name!r} needs a name, a label and a help sentence")

    def read(self, text: str, bench: Bench) -> Reading:
        """The entry read and held to its limit; raises Refusal."""
        found = self.parse(text, bench)
        self.check(found)
        return found

    def parse(self, text: str, bench: Bench) -> Reading:
        """The entry read, before its limit."""
        raise NotImplementedError

    def check(self, found: Reading) -> None:
        """Raise a Refusal when the value is outside the limit."""
        low, high = _ends(self)
        value = found.value
        under = low is not None and (value < low or (self.limit.above and value == low))  # type: ignore[operator]
        over = high is not None and (value > high or (self.limit.below and value == high))  # type: ignore[operator]
        if under or over:
            why = f": {self.limit.why}" if self.limit.why else ""
            raise Refusal(f"{found.read} is too {'small' if under else 'large'}{why}", f"type {self.limit.text()}")


@cache
def _ends(given: Given) -> tuple[object, object]:
    low, high = given.limit.low, given.limit.high
    plain = Bench()
    return (given.parse(low, plain).value if low else None, given.parse(high, plain).value if high else None)


@dataclass(frozen=True, kw_only=True)
class Length(Given):
    """A length; `work` is handed millimetres as a Fraction."""

    kind: ClassVar[str] = "length"

    def parse(self, text: str, bench: Bench) -> Reading:
        """The length in millimetres."""
        found = reader.length(text, bench.unit)
        return Reading(found.mm, found.unit, found.read)


@dataclass(frozen=True, kw_only=True)
class Angle(Given):
    """An angle; `work` is handed degrees, a Fraction, or a float when it was given as a slope."""

    kind: ClassVar[str] = "angle"

    def parse(self, text: str, bench: Bench) -> Reading:
        """The angle in degrees."""
        return reading.angle(text)


@dataclass(frozen=True, kw_only=True)
class Number(Given):
    """A plain number; `work` is handed a Fraction. `unit` is a word printed behind it, such as %."""

    kind: ClassVar[str] = "number"
    unit: str = ""

    def parse(self, text: str, bench: Bench) -> Reading:
        """The number."""
        return reading.number(text)


@dataclass(frozen=True, kw_only=True)
class Money(Number):
    """An amount in the maker's own money; `work` is handed a Fraction."""

    kind: ClassVar[str] = "money"


@dataclass(frozen=True, kw_only=True)
class Count(Given):
    """A whole number; `work` is handed an int."""

    kind: ClassVar[str] = "count"

    def parse(self, text: str, bench: Bench) -> Reading:
        """The whole number."""
        return reading.count(text)


@dataclass(frozen=True)
class Option:
    """One thing to choose; `key` for the command line and `work`, `label` for people."""

    key: str
    label: str


@dataclass(frozen=True, kw_only=True)
class Choice(Given):
    """One of a few; `work` is handed the key."""

    kind: ClassVar[str] = "choice"
    options: tuple[Option, ...]

    def parse(self, text: str, bench: Bench) -> Reading:
        """The key of the choice, found by its key or its label."""
        wanted = " ".join(text.split()).casefold()
        for option in self.options:
            if wanted in (option.key.casefold(), option.label.casefold()):
                return Reading(option.key, "", option.label)
        raise Refusal(
            f"“{text.strip()[:40]}” is not one of the choices", f"choose {', '.join(o.key for o in self.options)}"
        )
