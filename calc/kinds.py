"""The kinds of entry a sum can ask for. A kind owns reading, limits and refusals; the engine adds the field's name."""

from dataclasses import dataclass
from typing import ClassVar

from calc.bench import Bench
from calc.errors import Refusal
from calc.given import Given, Limit
from calc.typed import reader, reading
from calc.typed.glyphs import quoted
from calc.typed.reading import Reading

__all__ = ["Angle", "Choice", "Count", "Given", "Length", "Limit", "Money", "Number", "Option", "Text"]


@dataclass(frozen=True, kw_only=True)
class Length(Given):
    """A length; `work` is handed millimetres as a Fraction."""

    kind: ClassVar[str] = "length"
    noun: ClassVar[str] = "a length"

    def parse(self, text: str, bench: Bench) -> Reading:
        """The length in millimetres."""
        found = reader.length(text, bench.unit)
        return Reading(found.mm, found.unit, found.read)


@dataclass(frozen=True, kw_only=True)
class Angle(Given):
    """An angle; `work` is handed degrees, a Fraction, or a float when it was given as a slope."""

    kind: ClassVar[str] = "angle"
    noun: ClassVar[str] = "an angle"

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
        return reading.number(text, self.unit)


@dataclass(frozen=True, kw_only=True)
class Money(Number):
    """An amount in the maker's own money, its sign before or behind it; `work` is handed a Fraction."""

    kind: ClassVar[str] = "money"
    noun: ClassVar[str] = "an amount"

    def parse(self, text: str, bench: Bench) -> Reading:
        """The amount."""
        return reading.money(text, bench.currency)


@dataclass(frozen=True, kw_only=True)
class Count(Given):
    """A whole number; `work` is handed an int."""

    kind: ClassVar[str] = "count"
    noun: ClassVar[str] = "a whole number"

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
        raise Refusal(f"{quoted(text.strip())} is not a choice", f"choose {', '.join(o.key for o in self.options)}")


@dataclass(frozen=True, kw_only=True)
class Text(Given):
    """A few words of the maker's own, such as the name of a thing; `work` is handed them as typed, spaces tidied."""

    kind: ClassVar[str] = "text"
    noun: ClassVar[str] = "a few words"
    longest: int = 40

    def parse(self, text: str, bench: Bench) -> Reading:
        """The words; a Refusal when there are too many, or signs that cannot be printed."""
        words = " ".join(text.split())
        if len(words) > self.longest:
            raise Refusal(f"this is {len(words)} characters long", f"type at most {self.longest}")
        if not words.isprintable():
            raise Refusal("this holds a sign that cannot be printed", "type letters, digits and plain signs")
        return Reading(words, "", words)
