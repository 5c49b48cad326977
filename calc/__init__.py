"""Tenpenny's sums: pure Python, no browser, no network, no clock.

>>> import calc
>>> calc.answer("slope", rise="3 in", run="1 ft")["angle"]
14.036243467926479
"""

from fractions import Fraction

from calc.answers import Result
from calc.bench import Bench
from calc.declare import Sum
from calc.discover import everything, find
from calc.engine import reckon
from calc.errors import Refusal, Refused
from calc.show import fraction

VERSION = "0.1.0"
__all__ = ["Bench", "Refusal", "Refused", "Result", "Sum", "answer", "pieces", "sums"]


def answer(sum_id: str, bench: Bench | None = None, /, **givens: object) -> Result:
    """Answer one sum or piece from what would be typed into it: text, a whole number or Fraction in the bench's unit.

    Raises Refused with a sentence for each entry that cannot be used, and Refusal for an unknown sum.
    """
    texts = {name: _typed(value) for name, value in givens.items() if value is not None}
    return reckon(find(sum_id), texts, bench or Bench())


def _typed(value: object) -> str:
    return fraction(value) if isinstance(value, Fraction) else str(value)


def sums() -> tuple[Sum, ...]:
    """Every sum, in the order of the work."""
    return tuple(one for one in everything() if one.moment != "piece")


def pieces() -> tuple[Sum, ...]:
    """Every piece."""
    return tuple(one for one in everything() if one.moment == "piece")
