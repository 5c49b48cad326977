"""Trials of a function of one size, kept so that none is made twice, and closing in on where it comes to nothing.

Closing in is the Illinois form of false position (M. Dowell and P. Jarratt, A modified regula falsi method for
computing the root of an equation, BIT 11, 1971; cited from memory), with a halving wherever that is slow.
"""

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from calc.trig import Number, is_exact
from calc.units import MM_PER_INCH

Miss = Callable[[Fraction], Number | None]
"""How far a trial misses; None where it cannot be made."""

TOLERANCE = 1e-9
"""How near counts as there, in millimetres, degrees or the function's own unit."""
NEAR = 1e-3
"""How far from a value that was closed in on a better one may lie, where the function is flat."""
_GRID = 2**34


@dataclass(frozen=True)
class Reached:
    """A value that brings a function to nothing, or as near as it comes; `left` is what the function is there."""

    value: Fraction
    left: Number
    exact: bool = False

    @property
    def there(self) -> bool:
        """True when nothing is left."""
        return still(self.left)


def still(miss: Number) -> bool:
    """True for what is nothing, or no more than floats leave behind."""
    return abs(float(miss)) <= TOLERANCE


class Trials:
    """Every trial of `miss` between `low` and `high`."""

    def __init__(self, miss: Miss, low: Fraction, high: Fraction) -> None:
        self.miss, self.low, self.high = miss, low, high
        self.made: dict[Fraction, Number | None] = {}

    def at(self, value: Fraction) -> Number | None:
        """What the function is there."""
        if value not in self.made:
            self.made[value] = self.miss(value)
        return self.made[value]

    def found(self, value: Fraction, wide: float = TOLERANCE) -> Reached | None:
        """The value as reached when the function is nothing there, to within `wide`."""
        left = self.at(value)
        if left is None or abs(float(left)) > wide:
            return None
        return Reached(value, left, is_exact(left) and left == 0)

    def weight(self, value: Fraction) -> float:
        """The miss as a float; NaN where no trial can be made."""
        left = self.at(value)
        return float("nan") if left is None else float(left)

    def size(self, value: Fraction) -> float:
        """How large the miss is, endless where no trial can be made."""
        left = self.at(value)
        return float("inf") if left is None else abs(float(left))

    def changes(self, low: Fraction, high: Fraction) -> bool:
        """True where the miss has one sign at one value and the other at the other."""
        return self.weight(low) * self.weight(high) < 0

    def closed_in(self, low: Fraction, high: Fraction) -> Reached | None:
        """Where the function passes through nothing between two values of unlike sign; None where it leaps past it."""
        wide = 1e-6 * max(1.0, self.size(low), self.size(high))
        low, high = close_in(self, low, high)
        best = self.found(min(low, high, key=self.size), wide)
        return self.shortest(best, *crossing(self, low, high)) if best else None

    def shortest(self, found: Reached, *others: Fraction) -> Reached:
        """What was found, or whatever beside it is better: above all a short number that is exactly it."""
        inches = (found.value / MM_PER_INCH).limit_denominator(64) * MM_PER_INCH
        tried = () if found.exact else (inches, found.value.limit_denominator(1000), *others)
        near = [one for one in tried if abs(one - found.value) < NEAR and self.low <= one <= self.high]
        better = [one for value in near if (one := self.found(value))]
        return min([*better, found], key=lambda one: (not one.exact, abs(float(one.left))))


def fine(value: Fraction) -> Fraction:
    """A value on a grid so fine that nobody measures it, which keeps Fractions short."""
    return Fraction(round(value * _GRID * 1024), _GRID * 1024)


def close_in(trials: Trials, low: Fraction, high: Fraction) -> tuple[Fraction, Fraction]:
    """The two ends of a change of sign brought together, to within `TOLERANCE` or until one is there."""
    lower, upper, last = trials.weight(low), trials.weight(high), 0
    for turn in range(2, 200):
        if high - low <= TOLERANCE:
            break
        point = _inside(low, high, lower / (lower - upper) if turn % 3 else 0.5)
        here = trials.weight(point)
        if not abs(here) > TOLERANCE:  # it is there, or no trial can be made
            return point, min(low, high, key=lambda end: abs(end - point))
        if (here > 0) == (lower > 0):
            low, lower, upper, last = point, here, upper / 2 if last < 0 else upper, -1
        else:
            high, upper, lower, last = point, here, lower / 2 if last > 0 else lower, 1
    return low, high


def _inside(low: Fraction, high: Fraction, part: float) -> Fraction:
    """A point so far on the way from low to high, strictly between them, on a fine grid that keeps Fractions short."""
    wide = int((high - low) * _GRID)
    return low + Fraction(max(1, min(round(wide * part), wide - 1)), _GRID)


def crossing(trials: Trials, one: Fraction, other: Fraction) -> list[Fraction]:
    """Where a straight line through two trials is nothing; none where it never is or cannot be drawn."""
    a, b = trials.at(one), trials.at(other)
    return [] if a is None or b is None or a == b else [one + (other - one) * Fraction(a / (a - b))]


def least(trials: Trials, low: Fraction, high: Fraction) -> list[Fraction]:
    """The ends between which the miss is least, by the golden section, as far as it has one dip there."""
    part = Fraction(618_033_988_749_895, 10**15)
    left, right = fine(high - (high - low) * part), fine(low + (high - low) * part)
    for _ in range(24):
        if trials.size(left) <= trials.size(right):
            high, right, left = right, left, low + right - left
        else:
            low, left, right = left, right, high - right + left
    return [left, right]
