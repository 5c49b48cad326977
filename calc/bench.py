"""How this maker measures: the unit of a bare number, the finest mark on the rule, how angles are said."""

from dataclasses import dataclass
from fractions import Fraction

from calc.errors import Refusal, listed

MARKS = {
    "1/8": ("in", Fraction(1, 8)),
    "1/16": ("in", Fraction(1, 16)),
    "1/32": ("in", Fraction(1, 32)),
    "1/64": ("in", Fraction(1, 64)),
    "mm": ("mm", Fraction(1)),
    "half mm": ("mm", Fraction(1, 2)),
}
UNITS = ("in", "ft", "mm", "cm", "m")
ANGLES = ("tenths", "minutes")


@dataclass(frozen=True)
class Bench:
    """A maker's settings. `mark` also says in which unit lengths are answered.

    >>> Bench(unit="mm", mark="half mm").step
    Fraction(1, 2)
    """

    unit: str = "in"
    mark: str = "1/16"
    angles: str = "tenths"
    currency: str = ""

    def __post_init__(self) -> None:
        for field, known in (("unit", UNITS), ("mark", tuple(MARKS)), ("angles", ANGLES)):
            if getattr(self, field) not in known:
                say = f"“{str(getattr(self, field))[:40]}” is not one of them"
                raise Refusal(say, f"choose {listed(known, 'or')}", field, field.capitalize())
        if not (isinstance(self.currency, str) and len(self.currency) <= 8 and self.currency.isprintable()):
            raise Refusal("this is no label for money", "use at most 8 letters or signs", "currency", "Currency")

    @property
    def system(self) -> str:
        """ "in" or "mm": the unit lengths are answered in."""
        return MARKS[self.mark][0]

    @property
    def step(self) -> Fraction:
        """The finest mark, in that unit."""
        return MARKS[self.mark][1]
