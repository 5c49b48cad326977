"""The one printer: the nearest mark on the maker's rule with what is left over, and every other kind of figure.

Ties go to the even mark (ASME A112.18.1-2018/CSA B125.1-18, annex A, rounds half to even); what is left over is never
hidden, so nothing printed is further off than it says.
"""

import math
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from calc.bench import Bench
from calc.remembered import remembered
from calc.trig import Number, is_exact
from calc.units import MM_PER_INCH

MINUS = "−"
NOISE = Fraction(1, 10**6)  # millimetres: what float arithmetic may leave behind where nothing should be
IDLE = 1e-9  # of a plain number: the same
FINE = 3
"""Figures printed of a measured quantity, which is never known better."""


@dataclass(frozen=True)
class Shown:
    """A figure as printed: on the rule, what is left over there, and the same in the other unit."""

    text: str
    left: str = ""
    also: str = ""

    @property
    def on_rule(self) -> str:
        """The figure as it is set on the rule, with what is over or short of the mark."""
        return f"{self.text}, {self.left}" if self.left else self.text

    def __str__(self) -> str:
        also = f" ({self.also})" if self.also else ""
        return f"{self.on_rule}{also}"


def decimal(value: Number, places: int) -> str:
    """Decimal text to `places`, ties to even, of the number itself (a float's too, to its last bit); never −0.

    >>> decimal(Fraction(13, 8), 2)
    '1.62'
    """
    scaled = round(Fraction(value) * 10**places)
    whole, part = divmod(abs(scaled), 10**places)
    sign = MINUS if scaled < 0 else ""
    return f"{sign}{whole}.{part:0{places}d}" if places else f"{sign}{whole}"


def plain(value: Number, places: int = 4) -> str:
    """Decimal text without idle noughts: 2.5, 12, 0.3333."""
    text = decimal(value, places)
    return text.rstrip("0").rstrip(".") if "." in text else text


def figures(value: Number, count: int = FINE) -> str:
    """A number to so many figures, none dropped before the point: 0.0123, 1.23, 123, 12346."""
    size = math.floor(math.log10(abs(float(value)))) if value else 0
    return plain(value, max(0, count - 1 - size))


def telling(value: Number, places: int) -> str:
    """Decimal text to `places`, or in two figures where that would print 0 of something that is not nothing.

    >>> telling(Fraction(1, 3), 2), telling(Fraction(17, 10000), 2)
    ('0.33', '0.0017')
    """
    nothing = not value or (abs(float(value)) < IDLE and not is_exact(value))
    text = plain(value, places)
    return figures(value, 2) if text == "0" and not nothing else text


def fraction(value: Fraction) -> str:
    """A mixed number as a rule is read: 5 3/8, 3/4, 6; never 16/16."""
    whole, part = divmod(abs(value), 1)
    sign = MINUS if value < 0 else ""
    if not part:
        return f"{sign}{whole}"
    return f"{sign}{whole} {part}" if whole else f"{sign}{part}"


def marks(value: Number, step: Fraction) -> Fraction:
    """The mark nearest to `value` on a rule divided into `step`; a tie goes to the even mark."""
    return round(Fraction(value) / step) * step


@remembered(2048)  # one entry to a piece leaves most of its sizes as they were
def length(mm: Number, bench: Bench) -> Shown:
    """A length in millimetres, as the maker's rule shows it. What is left over belongs to the size, whatever its sign.

    >>> print(length(Fraction(137), Bench(mark="1/16")))
    5 3/8 in, strong by 0.48 mm (137 mm)
    """
    inches = bench.system == "in"
    one = MM_PER_INCH if inches else Fraction(1)
    mark = marks(mm / one, bench.step)
    rest: Number = (mm - mark * one) * (-1 if mark < 0 else 1)
    text = f"{fraction(mark)} in" if inches else f"{plain(mark)} mm"
    return Shown(text, left_over(rest), _other(mm, inches))


def fine(mm: Number, bench: Bench) -> Shown:
    """A length too small for a rule, in hundredths of a millimetre and thousandths of an inch.

    >>> print(fine(Fraction(287, 100), Bench(mark="mm")))
    2.87 mm (0.113 in)
    """
    metric, inch = f"{plain(mm, 2)} mm", f"{decimal(mm / MM_PER_INCH, 3)} in"
    return Shown(inch, also=metric) if bench.system == "in" else Shown(metric, also=inch)


def _other(mm: Number, inches: bool) -> str:
    return f"{plain(mm, 1)} mm" if inches else f"{plain(mm / MM_PER_INCH, 3)} in"


def left_over(mm: Any) -> str:
    """What a mark leaves unsaid, in the trade's words: strong (beyond the mark) or scant (short of it)."""
    if not mm or (abs(mm) < NOISE and not is_exact(mm)):
        return ""
    word = "strong" if mm > 0 else "scant"
    amount = decimal(abs(mm), 2)
    return f"{word} by under 0.01 mm" if amount == "0.00" else f"{word} by {amount} mm"


def angle(degrees: Number, bench: Bench) -> Shown:
    """An angle in degrees to a tenth, or in degrees and minutes when the maker asks for them."""
    if bench.angles == "tenths":
        tidy = is_exact(degrees) and degrees * 10 % 1 == 0
        return Shown(f"{decimal(degrees, 1)}°", also="" if tidy else minutes(degrees))
    return Shown(minutes(degrees), also=f"{decimal(degrees, 2)}°")


def minutes(degrees: Number) -> str:
    """Degrees and whole arcminutes: 14° 2′."""
    total = round(Fraction(degrees) * 60)
    whole, part = divmod(abs(total), 60)
    return f"{MINUS if total < 0 else ''}{whole}° {part}′"


def money(value: Number, bench: Bench) -> Shown:
    """Money to two places in the maker's own label; nothing is assumed of the currency."""
    text = decimal(value, 2)
    return Shown(f"{bench.currency} {text}" if bench.currency else text)
