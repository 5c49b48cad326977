"""Drills on the rack: fractions of an inch, numbers, millimetres; the nearest that is not too big, or not too small."""

from bisect import bisect_left, bisect_right
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from operator import attrgetter

from calc import show, tables
from calc.errors import Refusal
from calc.units import MM_PER_INCH

Size = Fraction | float
THICK = attrgetter("diameter")


@dataclass(frozen=True)
class Drill:
    """One drill: what is written on it, and its diameter in millimetres."""

    name: str
    diameter: Fraction


@cache
def inch() -> tuple[Drill, ...]:
    """Fractional drills: by 1/64 in to 1/2 in, then by 1/16 in to 1 1/2 in (common practice)."""
    sizes = [Fraction(n, 64) for n in range(1, 33)] + [Fraction(n, 16) for n in range(9, 25)]
    return tuple(Drill(f"{show.fraction(size)} in", size * MM_PER_INCH) for size in sizes)


@cache
def metric() -> tuple[Drill, ...]:
    """Metric drills: by 0.1 mm from 0.5 mm to 10 mm (common practice)."""
    return tuple(Drill(f"{show.plain(Fraction(n, 10))} mm", Fraction(n, 10)) for n in range(5, 101))


@cache
def halves() -> tuple[Drill, ...]:
    """Metric drills as sets are sold: by 0.5 mm from 1 mm to 13 mm, by 1 mm to 40 mm (common practice)."""
    return tuple(Drill(f"{show.plain(Fraction(n, 2))} mm", Fraction(n, 2)) for n in [*range(2, 27), *range(28, 82, 2)])


@cache
def numbered() -> tuple[Drill, ...]:
    """Number drills that the table lists, thinnest first."""
    found = [
        (row["drill_number"], tables.figure(row, "diameter_in", MM_PER_INCH))
        for row in tables.rows("number_drill_sizes")
    ]
    return tuple(sorted((Drill(f"No. {name}", size.value) for name, size in found), key=lambda drill: drill.diameter))


def at_most(size: Size, rack: tuple[Drill, ...]) -> Drill | None:
    """The thickest drill of the rack, thinnest first, no thicker than `size`; None when all are."""
    beyond = bisect_right(rack, size, key=THICK)
    return rack[beyond - 1] if beyond else None


def under(hole: Size) -> tuple[str, Fraction]:
    """The drills nearest to a hole of those no thicker: metric, fraction, and number where that is nearer; the best."""
    near_mm, near_inch, near_number = (at_most(hole, rack()) for rack in (metric, inch, numbered))
    near = [
        drill
        for drill in (near_inch, near_number)
        if drill and (drill is near_inch or not near_inch or drill.diameter > near_inch.diameter)
    ]
    return _told(near_mm, near), max(drill.diameter for drill in (near_mm, *near) if drill)


def over(hole: Size, field: str) -> tuple[str, Fraction]:
    """The drills nearest to a hole of those no thinner, metric and fraction, and the best of them."""
    both = at_least(hole, metric(), field), at_least(hole, inch(), field)
    return _told(both[0], [both[1]]), min(drill.diameter for drill in both)


def _told(first: Drill | None, more: list[Drill]) -> str:
    names = [first.name] if first else []
    return ", or ".join(names + [f"{drill.name} ({show.plain(drill.diameter, 2)} mm)" for drill in more])


def at_least(size: Size, rack: tuple[Drill, ...], field: str) -> Drill:
    """The thinnest drill of the rack, thinnest first, no thinner than `size`; a Refusal about `field` when none is."""
    if (at := bisect_left(rack, size, key=THICK)) == len(rack):
        raise Refusal(f"no drill here is {show.plain(size, 1)} mm or thicker", "make it smaller", field)
    return rack[at]
