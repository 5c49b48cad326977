"""What an answer should be, read as its own kind is typed."""

from collections.abc import Callable
from typing import Any

from calc.bench import Bench
from calc.declare import Answer
from calc.errors import Refusal
from calc.typed import reader, reading
from calc.typed.measures import temperature
from calc.typed.scales import SCALES

WAYS: dict[str, Callable[[str, Bench], Any]] = {
    "length": lambda text, bench: reader.length(text, bench.unit).mm,
    "fine": lambda text, bench: reader.length(text, bench.unit).mm,
    "angle": lambda text, bench: reading.angle(text).value,
    "money": lambda text, bench: reading.money(text, bench.currency).value,
    "percent": lambda text, bench: reading.number(text, "%").value,
    "count": lambda text, bench: reading.count(text).value,
    "volume": lambda text, bench: SCALES["liquid"].read(text).value,
    "temperature": lambda text, bench: temperature(text).value,
}


def read_wanted(answer: Answer, text: str, bench: Bench) -> Any:
    """An answer's number from its text: millimetres, degrees, the base unit of its kind. Raises Refusal.

    >>> read_wanted(Answer(name="volume", label="Volume", kind="volume"), "2 litres", Bench())
    Fraction(2000000, 1)
    """
    try:
        if answer.kind in SCALES:
            return SCALES[answer.kind].read(text).value
        return WAYS.get(answer.kind, _number)(text, bench)
    except Refusal as refusal:
        raise refusal.about("wanted", answer.label) from None


def _number(text: str, bench: Bench) -> Any:
    return reading.number(text).value
