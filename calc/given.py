"""What every kind of entry has: its name and words, its default, its limit."""

from dataclasses import dataclass, replace
from functools import cache
from typing import Any, ClassVar

from calc.bench import Bench
from calc.errors import Refusal
from calc.typed.glyphs import clipped
from calc.typed.reading import Reading


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
        if not (self.low or self.high):
            return ""
        low = f"{'more than' if self.above else 'from'} {self.low}" if self.low else ""
        closed = "to" if low and not self.above else "up to"
        high = f"{'less than' if self.below else closed} {self.high}" if self.high else f"{'' if self.above else 'up'}"
        return (f"{low}, {high}" if low and self.high and (self.above or self.below) else f"{low} {high}").strip()


@dataclass(frozen=True, kw_only=True)
class Given:
    """One thing a sum asks for. `noun` is what its kind is called in a sentence.

    name: what `work` calls it. label: what the page and refusals call it. help: a sentence, how it is got at the bench.
    default: what an empty field means, as text ("" when it must be given). optional: `work` is handed None when empty.
    beside: another given, without which this one counts for nothing, and its default is not told.
    """

    kind: ClassVar[str] = ""
    noun: ClassVar[str] = "a number"
    name: str
    label: str
    help: str
    default: str = ""
    default_why: str = ""
    optional: bool = False
    beside: str = ""
    limit: Limit = Limit()

    def __post_init__(self) -> None:
        if not (self.name.isidentifier() and self.label and self.help.endswith((".", "?"))):
            raise ValueError(f"given {self.name!r} needs a name, a label and a help sentence")

    def read(self, text: str, bench: Bench) -> Reading:
        """The entry read and held to its limit; raises Refusal. ≈ or ~ in front says that it was rounded before."""
        about = text.lstrip().startswith(("≈", "~"))
        found = self.parse(text.lstrip()[1:] if about else text, bench)
        self.check(found)
        return replace(found, read=f"≈ {found.read}", rounded=True) if about else found

    def parse(self, text: str, bench: Bench) -> Reading:
        """The entry read, before its limit."""
        raise NotImplementedError

    def check(self, found: Reading) -> None:
        """Raise a Refusal when the value is outside the limit."""
        if outside := self.outside(found.value):
            raise Refusal(f"{clipped(found.read)} {outside}", f"type {self.noun} {self.limit.text()}")

    def outside(self, value: Any) -> str:
        """How a value breaks the limit, "is too small" and why; "" when it does not."""
        low, high = self.ends
        under = low is not None and (value < low or (self.limit.above and value == low))
        over = high is not None and (value > high or (self.limit.below and value == high))
        why = f": {self.limit.why}" if self.limit.why else ""
        return f"is too {'small' if under else 'large'}{why}" if under or over else ""

    @property
    def ends(self) -> tuple[Any, Any]:
        """The least and the greatest value its limit names; None where it names none."""
        return _ends(self)


@cache
def _ends(given: Given) -> tuple[Any, Any]:
    low, high = given.limit.low, given.limit.high
    plain = Bench()
    return (given.parse(low, plain).value if low else None, given.parse(high, plain).value if high else None)
