"""What people write, read as an exact number, or refused with what to type instead.

One pass cuts the text into words (numbers, fractions, unit names, signs); a few rules then say which rows of words mean
one length and one only. Nothing here is ever handed to float(), Fraction() or pint as it was typed.
"""

import re
from collections import deque
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from calc import glyphs
from calc.errors import Refusal
from calc.show import MINUS, fraction, plain
from calc.units import factor

NAMES = {
    "in": ("in", "inch", "inches", "ins", '"'),
    "ft": ("ft", "foot", "feet", "'"),
    "yd": ("yd", "yard", "yards"),
    "mm": ("mm", "millimetre", "millimetres", "millimeter", "millimeters"),
    "cm": ("cm", "centimetre", "centimetres", "centimeter", "centimeters"),
    "m": ("m", "metre", "metres", "meter", "meters"),
}
UNIT = {name: unit for unit, names in NAMES.items() for name in names}
SMALLER = {"yd": ("ft", "in"), "ft": ("in",), "m": ("cm", "mm"), "cm": ("mm",), "in": (), "mm": ()}
LONGEST = glyphs.LONGEST
LIKE = "type it like 5 3/8, 5.375 in, 5' 3 1/2\" or 136 mm"

_WORD = re.compile(
    r"""\s*(?:(?P<fraction>\d+\s?/\s?\d+)|(?P<number>\d[\d.,]*|[.,]\d[\d.,]*)|(?P<unit>[a-z]+\.?|'|")|(?P<sign>-|\+))"""
)


@dataclass(frozen=True)
class Length:
    """One length as read: millimetres, the unit it was typed in, and how it was understood."""

    mm: Fraction
    unit: str
    read: str


@dataclass(frozen=True)
class Word:
    """One piece of what was typed; `spaced` when a space stands before it, `clear` when one stands after it."""

    kind: str
    text: str
    spaced: bool
    clear: bool


def words(text: str) -> deque[Word]:
    """The words of a tidied text, left to right; a Refusal at the first sign that belongs to none."""
    found, at, lower = deque[Word](), 0, text.lower()
    while at < len(lower):
        match = _WORD.match(lower, at)
        if not match or match.end() == at:
            raise Refusal(f"“{text[at : at + 20].strip()}” is not part of a length", LIKE)
        body = match.group().strip()
        found.append(Word(match.lastgroup or "", body, lower[at] == " ", lower[match.end() : match.end() + 1] == " "))
        at = match.end()
    return found


def length(text: str, unit: str = "in") -> Length:
    """Read one length; a bare number takes `unit`. Returns millimetres exactly. Raises Refusal.

    >>> length("5' 3 1/2\\"").read
    '5 ft 3 1/2 in'
    """
    typed = glyphs.tidy(text)
    if not typed:
        raise Refusal("nothing is typed here", LIKE)
    found = words(typed)
    sign = _sign(found)
    parts = _parts(found, typed, unit)
    total = sum((value * factor(part, "mm") for value, part in parts), Fraction(0))
    read = " ".join(f"{said(value, part)} {part}" for value, part in parts)
    return Length(sign * total, parts[-1][1], f"{MINUS if sign < 0 else ''}{read}")


def said(value: Fraction, unit: str = "in") -> str:
    """A number as it was understood: a fraction for inches and feet, a decimal for metric, neither ever shortened."""
    places = _places(value.denominator)
    metric = unit in ("mm", "cm", "m")
    return plain(value, places) if places and (metric or value.denominator > 64) else fraction(value)


def _places(denominator: int) -> int:
    """Decimal places that write 1/denominator out in full; 0 when none do."""
    for places in range(LONGEST + 1):
        if not 10**places % denominator:
            return places
    return 0


def _sign(found: deque[Word]) -> int:
    if found and found[0].kind == "sign":
        return -1 if found.popleft().text == "-" else 1
    return 1


def _parts(found: deque[Word], typed: str, unit: str) -> list[tuple[Fraction, str]]:
    """Rows of number and unit, each unit smaller than the one before, only the last with a fraction."""
    parts: list[tuple[Fraction, str]] = []
    while found or not parts:
        if parts and found[0].kind == "sign" and found[0].text == "-" and not found[0].clear:
            found.popleft()
        value = _value(found, typed)
        parts.append((value, _unit(found, parts, unit)))
    for (value, big), (_, small) in pairwise(parts):
        if small not in SMALLER[big] or value.denominator != 1:
            raise Refusal(
                f"“{typed}” could mean two things", "type one number and its unit, or feet and inches like 5' 3 1/2\""
            )
    return parts


def _unit(found: deque[Word], parts: list[tuple[Fraction, str]], bare: str) -> str:
    if found and found[0].kind == "unit":
        name = found.popleft().text.rstrip(".")
        if name not in UNIT:
            raise Refusal(f"“{name}” is not a unit this knows", "use in, ft, yd, mm, cm or m")
        return UNIT[name]
    if parts and parts[-1][1] != "ft":
        raise Refusal("the last number has no unit", "put in, ft, mm, cm or m after it")
    if found and not parts:
        raise Refusal("this could mean two things", f"{LIKE}; to add or take away, use the sum called tally")
    return "in" if parts else bare


def _value(found: deque[Word], typed: str) -> Fraction:
    """A decimal, a fraction, or a whole number with a fraction after a space or a hyphen."""
    if not found:
        raise Refusal(f"“{typed}” is not finished", LIKE)
    first = found.popleft()
    if first.kind == "fraction":
        return _fraction(first.text)
    if first.kind != "number":
        raise Refusal(f"“{first.text}” stands where a number should", LIKE)
    value = glyphs.number(first.text)
    joined = bool(found) and found[0].text == "-" and not (found[0].spaced or found[0].clear)
    if joined and len(found) > 1 and found[1].kind == "fraction":
        found.popleft()
    elif not (found and found[0].kind == "fraction"):
        return value
    return _mixed(value, _fraction(found.popleft().text), typed, first.text)


def _mixed(whole: Fraction, part: Fraction, typed: str, first: str) -> Fraction:
    if not first.isdecimal():
        raise Refusal(f"“{typed}” has a decimal and a fraction together", "type one or the other, like 5.375 or 5 3/8")
    if part >= 1:
        raise Refusal(f"the fraction in “{typed}” is one or more", f"type {fraction(whole + part)} if that is meant")
    return whole + part


def _fraction(text: str) -> Fraction:
    top, bottom = (int(side) for side in text.replace(" ", "").split("/"))
    if not bottom:
        raise Refusal(f"“{text}” divides by nothing", "type a fraction like 3/8")
    return Fraction(top, bottom)
