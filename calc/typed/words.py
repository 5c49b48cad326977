"""What was typed, cut into words once and read from the left: signs, numbers, fractions, units.

Every word is taken once and none is given back, so reading is linear in the length of what was typed.
"""

import re
from collections import deque
from dataclasses import dataclass
from fractions import Fraction
from math import gcd

from calc.errors import Refusal
from calc.show import fraction
from calc.typed import glyphs
from calc.typed.glyphs import quoted

_WORD = re.compile(
    r""" ?(?:(?P<fraction>\d+ ?/ ?\d+)|(?P<number>[.,]?\d[\d.,]*)|(?P<unit>[a-z]+\.?|['"°%:])|(?P<sign>[-+]))"""
)
RULE = (2, 4, 8, 16, 32, 64)


@dataclass(frozen=True)
class Word:
    """One piece of what was typed; `spaced` when a space stands before it, `clear` when one stands after it."""

    kind: str
    text: str
    spaced: bool
    clear: bool


class Words:
    """The words still to be read of one entry; `like` is what to type instead when they cannot be.

    >>> Words("5-3/8 in", "").value()
    Fraction(43, 8)
    """

    def __init__(self, text: str, like: str) -> None:
        self.typed, self.like = glyphs.tidy(text), like
        if not self.typed:
            raise Refusal("nothing is typed here", like)
        self.rest = deque(self._cut(self.typed.lower()))

    def _cut(self, text: str) -> list[Word]:
        found: list[Word] = []
        at = 0
        while at < len(text):
            if not (match := _WORD.match(text, at)):
                raise Refusal(f"{quoted(text[at:].strip())} is not understood here", self.like)
            spaced, at = text[at] == " ", match.end()
            found.append(Word(match.lastgroup or "", match.group().strip(), spaced, text[at : at + 1] == " "))
        return found

    def refusal(self, say: str, instead: str = "") -> Refusal:
        """A Refusal that names what was typed: `say` follows the quotation."""
        return Refusal(f"{quoted(self.typed)} {say}", instead or self.like)

    def next(self, kind: str, *texts: str) -> bool:
        """True when a word of this kind, and one of these texts, stands next."""
        return bool(self.rest) and self.rest[0].kind == kind and (not texts or self.rest[0].text in texts)

    def unit(self) -> str:
        """The unit standing next, taken; "" when none does."""
        return self.rest.popleft().text.rstrip(".") if self.next("unit") else ""

    def joined(self) -> bool:
        """True when a hyphen stands next, with no space on either side."""
        return self.next("sign", "-") and not (self.rest[0].spaced or self.rest[0].clear)

    def sign(self) -> int:
        """-1 when a minus stands next, taken; else 1."""
        return -1 if self.next("sign") and self.rest.popleft().text == "-" else 1

    def value(self) -> Fraction:
        """A decimal, a fraction, or a whole number with a fraction after a space or a hyphen."""
        if not self.rest:
            raise self.refusal("is not finished")
        first = self.rest.popleft()
        if first.kind == "fraction":
            return self._alone(first.text)
        if first.kind != "number":
            raise Refusal(f"{quoted(first.text)} stands where a number should", self.like)
        whole = glyphs.number(first.text)
        if self.joined() and len(self.rest) > 1 and self.rest[1].kind == "fraction":
            self.rest.popleft()
        return self._mixed(whole, first.text) if self.next("fraction") else whole

    def _mixed(self, whole: Fraction, text: str) -> Fraction:
        top, bottom = self._sides(self.rest.popleft().text)
        if not text.isdecimal():
            raise self.refusal("has a decimal and a fraction together", "type one or the other, like 5.375 or 5 3/8")
        if top >= bottom:
            meant = fraction(whole + Fraction(top, bottom))
            raise self.refusal("has a fraction of one or more", f"type {meant} if that is meant")
        return whole + Fraction(top, bottom)

    def _alone(self, text: str) -> Fraction:
        """A fraction by itself. 43/8 may be 4 3/8 with its space left out, so the maker is asked which."""
        top, bottom = self._sides(text)
        value = Fraction(top, bottom)
        if value > 1 and bottom in RULE and (meant := _spaced(str(top), bottom)):
            raise self.refusal(f"could mean {' or '.join([fraction(value), *meant])}", "type the one that is meant")
        return value

    def _sides(self, text: str) -> tuple[int, int]:
        top, bottom = (int(side) for side in text.split("/"))
        if not bottom:
            raise Refusal(f"{quoted(text)} divides by nothing", "type a fraction like 3/8")
        return top, bottom


def _spaced(top: str, bottom: int) -> list[str]:
    """The mixed numbers that `top` over `bottom` would be with a space put in: 43 over 8 gives 4 3/8."""
    cuts = [(top[:-places], top[-places:]) for places in (2, 1) if len(top) > places]
    return [
        f"{whole} {part}/{bottom}"
        for whole, part in cuts
        if part[0] != "0" and int(part) < bottom and gcd(int(part), bottom) == 1
    ]
