"""What people write, read as one exact length, or refused with what to type instead.

`calc.typed.words` cuts the text; a few rules here say which rows of words mean one length and one only. Nothing typed
is ever handed to float(), Fraction() or pint as it stands.
"""

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from calc.remembered import remembered
from calc.show import MINUS, fraction, plain
from calc.typed.words import Words
from calc.units import factor

NAMES = {
    "in": ("in", "inch", "inches", "ins", '"'),
    "ft": ("ft", "foot", "feet", "'"),
    "yd": ("yd", "yds", "yard", "yards"),
    "mm": ("mm", "millimetre", "millimetres", "millimeter", "millimeters"),
    "cm": ("cm", "centimetre", "centimetres", "centimeter", "centimeters"),
    "m": ("m", "metre", "metres", "meter", "meters"),
}
UNIT = {name: unit for unit, names in NAMES.items() for name in names}
SMALLER = {"yd": ("ft", "in"), "ft": ("in",), "m": ("cm", "mm"), "cm": ("mm",), "in": (), "mm": ()}
LIKE = "type it like 5 3/8, 5.375 in, 5' 3 1/2\" or 136 mm"
TALLY = "to add or take away, use the sum called tally"


@dataclass(frozen=True)
class Length:
    """One length as read: millimetres, the unit it was typed in, and how it was understood."""

    mm: Fraction
    unit: str
    read: str


@remembered(256)  # every field is read at every keystroke, and all but one is as it was
def length(text: str, unit: str = "in") -> Length:
    """Read one length; a bare number takes `unit`. Returns millimetres exactly. Raises Refusal.

    >>> length("5' 3 1/2\\"").read
    '5 ft 3 1/2 in'
    """
    words = Words(text, LIKE)
    sign = words.sign()
    parts = _parts(words, unit)
    total = sum((value * factor(part, "mm") for value, part in parts), Fraction(0))
    read = " ".join(f"{said(value, part)} {part}" for value, part in parts)
    return Length(sign * total, parts[-1][1], f"{MINUS if sign * total < 0 else ''}{read}")


def _parts(words: Words, unit: str) -> list[tuple[Fraction, str]]:
    """Rows of number and unit, each unit smaller than the one before, only the last with a fraction."""
    parts = [_part(words, unit)]
    while words.rest:
        if words.joined():
            words.sign()
        if words.next("sign"):
            raise words.refusal("could mean two things", f"{LIKE}; {TALLY}")
        parts.append(_part(words, "in" if parts[-1][1] == "ft" else ""))
    for (value, big), (_, small) in pairwise(parts):
        if small not in SMALLER[big] or value.denominator != 1:
            raise words.refusal("is not one length", f"type one number and its unit, or feet and inches; {TALLY}")
    return parts


def _part(words: Words, bare: str) -> tuple[Fraction, str]:
    """One number and its unit; without a unit it takes `bare`, and must then be the last."""
    value, name = words.value(), words.unit()
    if name and name not in UNIT:
        raise words.refusal(f"has “{name}” for a unit", "use in, ft, yd, mm, cm or m")
    if not name and words.rest:
        raise words.refusal("could mean two things", f"{LIKE}; {TALLY}")
    if not name and not bare:
        raise words.refusal("has no unit at its end", "put in, ft, mm, cm or m after the last number")
    return value, UNIT[name] if name else bare


def said(value: Fraction, unit: str = "in") -> str:
    """A number as it was understood: inches and feet in a rule's fractions, all else in decimals, never shortened."""
    rule = unit in ("in", "ft", "yd") and value.denominator in (1, 2, 4, 8, 16, 32, 64)
    places = 0 if rule else _places(value.denominator)
    return plain(value, places) if places else fraction(value)


def _places(denominator: int) -> int:
    """Decimal places that write 1/denominator out in full; 0 when none do."""
    twos = fives = 0
    while denominator % 2 == 0:
        denominator, twos = denominator // 2, twos + 1
    while denominator % 5 == 0:
        denominator, fives = denominator // 5, fives + 1
    return max(twos, fives) if denominator == 1 else 0
