"""Proportions makers use: small whole numbers, the diagonal of a square, the golden section."""

from dataclasses import dataclass
from fractions import Fraction

from calc import trig
from calc.kinds import Option
from calc.trig import Number

MOST = 12
"""The largest whole number tried for a pair that is none of the proportions listed."""
GOLDEN = (1 + trig.sqrt(5)) / 2
DIAGONAL = trig.sqrt(2)
TIMES = {"root two": DIAGONAL, "golden": GOLDEN}
HOW = {
    "root two": "The longer side is the diagonal of a square on the shorter.",
    "golden": (
        "Draw a square on the shorter side. From the middle of its base swing a far corner down to the base: so far "
        "the longer side reaches."
    ),
}


@dataclass(frozen=True)
class Ratio:
    """One proportion: how it is called, its parts where it is in whole numbers, and how to draw it."""

    key: str
    parts: tuple[int, int] | None = None

    @property
    def label(self) -> str:
        """As it is printed."""
        return f"{self.parts[0]} : {self.parts[1]}" if self.parts else {"root two": "1 : √2"}.get(self.key, self.key)

    @property
    def times(self) -> Number:
        """How many times the shorter side the longer is."""
        return Fraction(self.parts[1], self.parts[0]) if self.parts else TIMES[self.key]

    @property
    def how(self) -> str:
        """How it is drawn with dividers and square."""
        if not self.parts:
            return HOW[self.key]
        few, many = self.parts
        if few == many:
            return "Both sides are alike."
        part = f"Part the shorter side into {few} with dividers: {many}" if few > 1 else f"{many} of the shorter side"
        return f"{part} {'of the same ' if few > 1 else ''}make the longer."


RATIOS = (
    *(Ratio(f"{few}:{many}", (few, many)) for few, many in ((1, 1), (5, 6), (4, 5), (3, 4))),
    Ratio("root two"),
    *(Ratio(f"{few}:{many}", (few, many)) for few, many in ((2, 3), (5, 8))),
    Ratio("golden"),
    *(Ratio(f"{few}:{many}", (few, many)) for few, many in ((3, 5), (1, 2))),
)
OPTIONS = tuple(Option(one.key, one.label) for one in RATIOS)


def named(key: str) -> Ratio:
    """The proportion chosen."""
    return next(one for one in RATIOS if one.key == key)


def apart(one: Number, other: Number) -> Number:
    """How many times one proportion is the other, the larger over the smaller: 1 where they are alike."""
    return max(one / other, other / one)


def nearest(times: Number) -> Ratio:
    """The proportion of the list that comes nearest, by ratio."""
    return min(RATIOS, key=lambda one: apart(one.times, times))


def whole(times: Number) -> Ratio:
    """The nearest of all pairs of whole numbers up to MOST; of pairs as near, the smallest."""
    pairs = [(few, many) for many in range(1, MOST + 1) for few in range(1, many + 1)]
    few, many = min(pairs, key=lambda pair: apart(Fraction(pair[1], pair[0]), times))
    return Ratio(f"{few}:{many}", (few, many))
