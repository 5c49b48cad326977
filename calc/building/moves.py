"""How far givens move: one alone, or several together so that none of the cuts settled before is upset."""

from collections.abc import Sequence
from fractions import Fraction

from calc.building.elimination import Misses, Point, settle_together
from calc.building.trials import TOLERANCE, still
from calc.given import Given
from calc.roots import reach
from calc.trig import Number, is_exact

HAIR = Fraction(1, 1000)
"""How far inside an end that is itself outside the limit, in millimetres or degrees."""
FAR = 10**5
Room = tuple[Fraction, Fraction]
Moved = tuple[Number, ...]


def room(given: Given, now: Number) -> Room:
    """From where to where a given may move: its limit, or a long way where it has none."""
    low, high = given.ends
    least = Fraction(now) - FAR if low is None else Fraction(low) + HAIR * given.limit.above
    return least, Fraction(now) + FAR if high is None else Fraction(high) - HAIR * given.limit.below


def moved(misses: Misses, givens: Sequence[tuple[Given, Number]]) -> Moved | None:
    """Where givens go, from where they stand, so that as many cuts fit; None where that does not help."""
    start = tuple(Fraction(now) for _, now in givens)
    rooms = [room(given, now) for given, now in givens]
    return alone(misses, start, rooms) if len(givens) == 1 else together(misses, start, rooms)


def alone(misses: Misses, start: Point, rooms: Sequence[Room]) -> Moved | None:
    """One given moved until its cut fits, or as far as that helps and its limit lets it; None where it does not help.

    A value that no rounding has touched stays a Fraction, any other becomes a float.
    """

    def miss(value: Fraction) -> Number | None:
        found = misses((value,))
        return None if found is None else found[0]

    found, before = reach(miss, start[0], *rooms[0]), miss(start[0])
    if found is None or before is None or abs(float(found.left)) + TOLERANCE > abs(float(before)):
        return None
    return (found.value if found.exact or found.value in rooms[0] else float(found.value),)


def together(misses: Misses, start: Point, rooms: Sequence[Room]) -> Moved | None:
    """As many givens as cuts, moved so that the first cut fits and the others miss by no more than they did.

    Straight relations go as far as all limits let them; curved ones all the way or not at all. None: not at all.
    """
    before = misses(start)
    if before is None:
        return None
    wanted = [Fraction(0), *before[1:]]

    def off(point: Point) -> list[Number] | None:
        here = misses(point)
        return here and [one - goal for one, goal in zip(here, wanted, strict=True)]

    if (settled := settle_together(off, start)) is None:
        return None
    end, straight = settled
    part = min(_part(was, to, one) for was, to, one in zip(start, end, rooms, strict=True))
    point = tuple(was + part * (to - was) for was, to in zip(start, end, strict=True))
    left = off(point)
    if left is None or (part < 1 and not straight) or not all(still(one) for one in left[1:]):
        return None
    if abs(float(left[0])) + TOLERANCE > abs(float(before[0])):
        return None
    exact = straight and all(is_exact(one) for one in left)
    return point if exact else tuple(float(one) for one in point)


def _part(was: Fraction, to: Fraction, within: Room) -> Fraction:
    """How much of the way to go before a limit stands in it."""
    stop = min(max(to, within[0]), within[1])
    return Fraction(1) if to == stop else max(Fraction(0), (stop - was) / (to - was))
