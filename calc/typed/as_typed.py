"""A number as it would be typed into a given."""

from fractions import Fraction

from calc import show
from calc.bench import Bench
from calc.cells import entry
from calc.errors import Refusal
from calc.given import Given

LONGEST = 24


def as_typed(given: Given, value: Fraction, exact: bool, bench: Bench) -> str:
    """The text that is read back as `value`: exactly, where it is exact and that is short; else to six places.

    >>> from calc.kinds import Length
    >>> as_typed(Length(name="rise", label="Rise", help="Measured."), Fraction(100, 3), True, Bench(mark="mm"))
    '33 1/3 mm'
    """
    if given.kind == "count":
        return str(value)
    plain = entry(given.kind, value, bench)
    full = show.fraction(value) + {"length": " mm", "angle": "°"}.get(given.kind, "")
    tried = [plain, full] if exact and len(full) <= LONGEST else [plain]
    return next((text for text in tried if _reads(given, text, value, bench)), plain)


def _reads(given: Given, text: str, value: Fraction, bench: Bench) -> bool:
    try:
        return bool(given.parse(text, bench).value == value)
    except Refusal:
        return False
