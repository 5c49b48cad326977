"""Where a function of one size comes to nothing between two limits: exactly where it is straight, else by a bracket.

Straightness is never assumed: the place foretold from two points is tried, and counts only if the function is nothing
there, to the last Fraction. Else the line is searched outward for a change of sign, which is then closed in on.
"""

from fractions import Fraction

from calc.building.trials import Miss, Reached, Trials, crossing, fine, least, still
from calc.trig import Number, is_exact

STEPS = 8
"""How many paces out from where it stands to a limit, each four times the one before."""


def reach(miss: Miss, now: Fraction, low: Fraction, high: Fraction) -> Reached | None:
    """The value nearest to `now`, as the search meets them, where `miss` is nothing; else where it is least.

    None when no trial between the limits could be made.

    >>> reach(lambda size: 3 * size - 1, Fraction(0), Fraction(0), Fraction(9)).value
    Fraction(1, 3)
    """
    trials = Trials(miss, low, high)
    return foretold(trials, now) or outward(trials, now) or nearest(trials)


def foretold(trials: Trials, now: Fraction) -> Reached | None:
    """Where two points foretell it, while each foretelling at least halves the miss; None when one does not.

    Beyond a limit it is that limit, if the function is as foretold there.
    """
    last, point = now, now + 1 if now + 1 <= trials.high else (now + trials.low) / 2
    while not (found := trials.found(last)):
        here, there = trials.at(last), trials.at(point)
        if here is None or there is None or here == there:
            return None
        slope = (there - here) / (point - last)
        target = last - Fraction(here / slope)
        if not trials.low <= target <= trials.high:
            end = trials.low if target < trials.low else trials.high
            return _end(trials, end, here + slope * (end - last))
        last, point = target if trials.found(target) else fine(target), last
        if not trials.size(last) * 2 <= trials.size(point):
            return None
    return trials.shortest(found, *crossing(trials, last, point))


def _end(trials: Trials, end: Fraction, foretold: Number) -> Reached | None:
    left = trials.at(end)
    if left is None or not (left == foretold if is_exact(left) else still(left - foretold)):
        return None
    return Reached(end, left)


def outward(trials: Trials, now: Fraction) -> Reached | None:
    """The first passage through nothing on either side, in paces that grow up to the limits, or up to a hole."""
    sides = {trials.low: now, trials.high: now}
    for power in range(STEPS, -1, -1):
        for end in list(sides):
            before, far = sides.pop(end), now + (end - now) / 4**power
            after = _short_of_a_hole(trials, before, far)
            if found := _between(trials, *sorted((before, after))):
                return found
            if after == far:
                sides[end] = far
    return None


def _between(trials: Trials, low: Fraction, high: Fraction) -> Reached | None:
    if trials.changes(low, high):
        return trials.closed_in(low, high)
    return trials.found(low) or trials.found(high)


def _short_of_a_hole(trials: Trials, good: Fraction, far: Fraction) -> Fraction:
    """`far`; or, where no trial can be made there, the farthest that can, to a thousandth of the way."""
    if trials.at(far) is not None or trials.at(good) is None:
        return far
    for _ in range(10):
        middle = (good + far) / 2
        good, far = (good, middle) if trials.at(middle) is None else (middle, far)
    return good


def nearest(trials: Trials) -> Reached | None:
    """The trial that misses least, refined between its neighbours."""
    made = sorted(value for value, left in trials.made.items() if left is not None)
    if not made:
        return None
    at = made.index(min(made, key=trials.size))
    if len({trials.at(value) for value in made}) == 1:
        return _as_made(trials, next(iter(trials.made)))
    low, high = made[max(at - 1, 0)], made[min(at + 1, len(made) - 1)]
    if made[at] in (low, high) and trials.size(made[at] + (low + high - 2 * made[at]) / 1000) > trials.size(made[at]):
        return _as_made(trials, made[at])  # it only grows from here
    best = min(made[at], *least(trials, low, high), key=trials.size)
    return _as_made(trials, best)


def _as_made(trials: Trials, value: Fraction) -> Reached | None:
    left = trials.at(value)
    return None if left is None else Reached(value, left)
