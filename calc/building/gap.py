"""What does not fit, or may not be meant, as it is said at the bench: in a sentence, with what can be done about it."""

from dataclasses import dataclass
from fractions import Fraction

from calc import show
from calc.bench import Bench
from calc.building.settle import Settled
from calc.cells import printed
from calc.show import Shown
from calc.trig import Number
from calc.units import MM_PER_INCH

TENTH = Fraction(1, 10)


@dataclass(frozen=True)
class Choice:
    """One thing to do about it: record `name` as cut to `text`; "" where there is nothing to record."""

    say: str
    name: str = ""
    text: str = ""


LEAVE = Choice("Leave it as it is")


@dataclass(frozen=True)
class Gap:
    """The cut `name` on a part is so much (millimetres or degrees) more, or less, than it should be."""

    name: str
    part: str
    amount: Number
    say: str
    choices: tuple[Choice, ...]


def on_rule(settled: Settled, name: str, value: Number) -> str:
    """A size as it is set on the maker's rule, with what is over or short of the mark."""
    return printed(settled.piece.kinds[name], value, settled.bench).on_rule


def nearest_mark(kind: str, value: Number, bench: Bench) -> Number:
    """The nearest size that can be set: a mark of the maker's rule, or a tenth of a degree.

    >>> nearest_mark("length", Fraction(1655, 10), Bench(unit="mm", mark="mm"))
    Fraction(166, 1)
    """
    return show.marks(value, TENTH if kind == "angle" else _step(bench)) if kind in ("angle", "length") else value


def _step(bench: Bench) -> Fraction:
    """The finest mark, in millimetres."""
    return bench.step * (MM_PER_INCH if bench.system == "in" else 1)


def measured(kind: str, amount: Number, bench: Bench) -> str:
    """An amount as it is seen at the bench: to the mark, and to a hundredth of a millimetre.

    >>> measured("length", Fraction(127, 160), Bench(mark="1/32"))
    '1/32 in (0.79 mm)'
    >>> measured("length", Fraction(231, 100), Bench(mark="1/16"))
    'a strong 1/16 in (2.31 mm)'
    """
    if kind == "angle":
        return show.angle(amount, bench).text
    step = _step(bench)
    mm = f"{show.decimal(amount, 2)} mm" if amount >= Fraction(1, 200) else "under 0.01 mm"
    if amount * 2 < step:
        return f"{mm} (less than half a mark)"
    return f"{_near(show.length(amount, bench))} ({mm})" if bench.system == "in" else mm


def _near(shown: Shown) -> str:
    """A mark, said to be strong or scant where the amount is not on it: "a scant 1/8 in"."""
    return f"a {shown.left.split()[0]} {shown.text}" if shown.left else shown.text
