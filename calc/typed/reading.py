"""The entries that are not lengths: numbers, counts, angles. One meaning or a refusal, as in `calc.typed.reader`."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from calc.remembered import remembered
from calc.show import MINUS, decimal, plain
from calc.trig import atan
from calc.typed.glyphs import tidy
from calc.typed.reader import said
from calc.typed.words import Words

NUMBER_LIKE = "type a number like 12, 2.5 or 1 1/2"
ANGLE_LIKE = "type degrees like 14, 14.5 or 14° 30', or a slope like 1 in 7"
DEGREES = ("°", "deg", "degs", "degree", "degrees")
MINUTES = ("'", "min", "mins", "minute", "minutes")
SECONDS = ('"', "sec", "secs", "second", "seconds")
SLOPES = ("in", "to", ":", "%")
CURRENCIES = ("£", "$", "€", "¥")


@dataclass(frozen=True)
class Reading:
    """One entry as read: its value (millimetres, degrees, a number, a key, rows), its unit as typed, how understood.

    `rounded` when it came from a rounded answer, so that nothing worked out from it passes for exact.
    """

    value: Any
    unit: str
    read: str
    rounded: bool = False


@remembered(256)  # as lengths are kept, and for the same reason
def number(text: str, unit: str = "") -> Reading:
    """A plain number, at most one fraction: 7, 2.5, 1 1/2; its own `unit` may stand behind it. Raises Refusal."""
    value = _number(text, unit)
    return Reading(value, "", said(value, unit))


def _number(text: str, unit: str = "") -> Fraction:
    words = Words(tidy(text).removesuffix(tidy(unit)), NUMBER_LIKE)
    value = words.sign() * words.value()
    if words.rest:
        raise words.refusal("is more than a number")
    return value


def money(text: str, label: str = "") -> Reading:
    """An amount, with or without a currency sign or the maker's own label. Raises Refusal.

    >>> money("£3.20").read
    '3.20'
    """
    typed = tidy(text)
    for sign in (tidy(label), *CURRENCIES):
        typed = typed.removeprefix(sign).removesuffix(sign).strip()
    value = _number(typed)
    return Reading(value, "", decimal(value, 2) if 100 % value.denominator == 0 else said(value, ""))


def count(text: str) -> Reading:
    """A whole number. Raises Refusal for anything with a part left over."""
    value = _number(text)
    if value.denominator != 1:
        raise Words(text, f"type {round(value)} or another whole number").refusal("is not a whole number")
    return Reading(int(value), "", said(value))


@remembered(256)
def angle(text: str) -> Reading:
    """An angle in degrees: 14.5, 14° 30′, or a slope (1 in 7, 3:12, 25%), which gives a rounded angle. Raises Refusal.

    >>> angle("14° 30'").value
    Fraction(29, 2)
    """
    words = Words(text, ANGLE_LIKE)
    sign, lone = words.sign(), words.next("fraction")
    value = words.value()
    if words.next("unit", *SLOPES):
        return _slope(words, sign * value)
    if lone and not words.rest:
        raise words.refusal("could mean degrees or a slope", "put ° after it, or write the slope like 3 in 12")
    return _degrees(words, sign, value)


def _slope(words: Words, rise: Fraction) -> Reading:
    run = Fraction(100) if words.unit() == "%" else words.value()
    if words.rest or not run:
        raise words.refusal("is not a slope this can read")
    degrees = atan(rise / run)
    return Reading(degrees, "ratio", f"{words.typed.replace('-', MINUS)}, {plain(degrees, 2)}°")


def _degrees(words: Words, sign: int, value: Fraction) -> Reading:
    """The rest of an angle: its degree sign, then minutes, then seconds, each whole but the last."""
    if words.rest and not words.next("number") and words.unit() not in DEGREES:
        raise words.refusal("is not an angle this can read")
    parts = [value]
    for units in (MINUTES, SECONDS):
        if words.rest:
            parts.append(words.value())
            if words.unit() not in units:
                raise words.refusal("is not an angle this can read")
    if words.rest or any(part.denominator > 1 for part in parts[:-1]) or any(part >= 60 for part in parts[1:]):
        raise words.refusal("is not an angle this can read")
    degrees = sign * sum((part / 60**place for place, part in enumerate(parts)), Fraction(0))
    return Reading(degrees, "deg", f"{plain(degrees, 4)}°")
