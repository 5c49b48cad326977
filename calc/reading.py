"""Reading the entries that are not lengths: numbers, counts, angles. One meaning or a refusal, as in `calc.reader`."""

import re
from dataclasses import dataclass
from fractions import Fraction

from calc import glyphs
from calc.errors import Refusal
from calc.reader import said
from calc.show import MINUS, fraction, plain
from calc.trig import Number, atan

ANGLE_LIKE = "type degrees like 14, 14.5 or 14° 30', or a slope like 1 in 7"
_FRACTION = re.compile(r"(?:(\d+)[ -])?(\d+) ?/ ?(\d+)")
_DEGREES = re.compile(
    r"([\d.,]+) ?(?:°|deg\.?|degrees?)?(?: ?([\d.,]+) ?(?:'|min\.?|minutes?)(?: ?([\d.,]+) ?(?:\"|sec\.?|seconds?))?)?"
)
_ONE_IN = re.compile(r"(.+?) (?:in|to) (.+)|(.+?) ?: ?(.+)")


@dataclass(frozen=True)
class Reading:
    """One entry as read: its value (millimetres, degrees or a plain number), its unit as typed, how understood."""

    value: Number | str | tuple[object, ...]
    unit: str
    read: str


def number(text: str) -> Reading:
    """A plain number, at most one fraction: 7, 2.5, 1 1/2. Raises Refusal."""
    value = _number(glyphs.tidy(text))
    return Reading(value, "", said(value))


def _number(typed: str) -> Fraction:
    if not typed:
        raise Refusal("nothing is typed here", "type a number like 12 or 2.5")
    sign = -1 if typed[0] == "-" else 1
    body = typed.lstrip("+-") if typed[0] in "+-" and typed[1:2] not in ("+", "-") else typed
    match = _FRACTION.fullmatch(body)
    if not match:
        return sign * glyphs.number(body)
    whole, top, bottom = (int(part or 0) for part in match.groups())
    if not bottom or (match[1] and top >= bottom):
        raise Refusal(f"“{typed}” is not a fraction this can read", "type it like 3/8 or 1 1/2")
    return sign * (whole + Fraction(top, bottom))


def count(text: str) -> Reading:
    """A whole number. Raises Refusal for anything with a part left over."""
    value = _number(glyphs.tidy(text))
    if value.denominator != 1:
        raise Refusal(f"“{text.strip()}” is not a whole number", f"type {round(value)} or another whole number")
    return Reading(int(value), "", fraction(value))


def angle(text: str) -> Reading:
    """An angle in degrees: 14.5, 14° 30′, or a slope (1 in 7, 3:12, 25%), which gives a rounded angle. Raises Refusal.

    >>> angle("14° 30'").value
    Fraction(29, 2)
    """
    typed = glyphs.tidy(text).lower()
    sign, body = (-1, typed[1:].strip()) if typed[:1] == "-" else (1, typed)
    if match := _DEGREES.fullmatch(body):
        return _degrees(sign, match)
    ratio = sign * _ratio(body)
    return Reading(atan(ratio), "ratio", f"{MINUS if sign < 0 else ''}{body}, {plain(atan(ratio), 2)}°")


def _degrees(sign: int, match: re.Match[str]) -> Reading:
    parts = [glyphs.number(part) if part else Fraction(0) for part in match.groups()]
    if any(part >= 60 for part in parts[1:]) or (match[2] and parts[0] % 1):
        raise Refusal(f"“{match[0]}” is not an angle this can read", ANGLE_LIKE)
    value = sign * (parts[0] + parts[1] / 60 + parts[2] / 3600)
    return Reading(value, "deg", f"{plain(value, 4)}°")


def _ratio(typed: str) -> Fraction:
    match = _ONE_IN.fullmatch(typed)
    if not match and not typed.endswith("%"):
        raise Refusal(f"“{typed}” is not an angle this can read" if typed else "nothing is typed here", ANGLE_LIKE)
    rise, run = (match[1] or match[3], match[2] or match[4]) if match else (typed[:-1].strip(), "100")
    if not (below := _number(run)):
        raise Refusal("a slope cannot run over nothing", ANGLE_LIKE)
    return _number(rise) / below
