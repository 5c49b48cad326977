"""Beams: how far each kind of load bends each kind of support, the shape it bends to, and its bending moments.

A beam bends by coefficient x load x span³ / (stiffness x second moment of area): Wood Handbook, table 9-1.
"""

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from itertools import pairwise

from calc import tables
from calc.kinds import Option

Curve = Callable[[float], float]
QUARTERS = (0.0, 0.25, 0.5, 0.75, 1.0)


@dataclass(frozen=True)
class Case:
    """One way to hold and load a shelf.

    shape: how far it has bent at a share of the span, 1 where it bends most. moment: the bending moment there, for a
    load and a span of one. loads: where along the span it is loaded, none when evenly.
    """

    label: str
    own: str
    shape: Curve
    moment: Curve
    loads: tuple[float, ...] = ()

    @property
    def support(self) -> str:
        """How the ends are held: simple, clamped or cantilever."""
        return self.own.partition("-")[2]

    @property
    def lowest(self) -> float:
        """Where along the span it bends most."""
        return 1.0 if self.support == "cantilever" else 0.5


def _half(s: float) -> float:
    return min(s, 1 - s)


def _quarters(s: float) -> float:
    u = _half(s)
    return (u / 12 * (9 / 16 - u * u) if u <= 0.25 else (3 * u - 3 * u * u - 1 / 16) / 48) * 768 / 11


CASES = {
    "uniform-simple": Case(
        "Load spread evenly, ends resting",
        "uniform-simple",
        lambda s: 16 / 5 * (s - 2 * s**3 + s**4),
        lambda s: s / 2 - s * s / 2,
    ),
    "uniform-clamped": Case(
        "Load spread evenly, ends held fast",
        "uniform-clamped",
        lambda s: 16 * s * s * (1 - s) ** 2,
        lambda s: s / 2 - s * s / 2 - 1 / 12,
    ),
    "centre-simple": Case(
        "Load at the middle, ends resting",
        "uniform-simple",
        lambda s: 3 * _half(s) - 4 * _half(s) ** 3,
        lambda s: _half(s) / 2,
        (0.5,),
    ),
    "centre-clamped": Case(
        "Load at the middle, ends held fast",
        "uniform-clamped",
        lambda s: 4 * _half(s) ** 2 * (3 - 4 * _half(s)),
        lambda s: _half(s) / 2 - 1 / 8,
        (0.5,),
    ),
    "quarters-simple": Case(
        "Two loads at the quarter points, ends resting",
        "uniform-simple",
        _quarters,
        lambda s: min(_half(s), 0.25) / 2,
        (0.25, 0.75),
    ),
    "uniform-cantilever": Case(
        "Load spread evenly, one end held fast, the other free",
        "uniform-cantilever",
        lambda s: (6 * s * s - 4 * s**3 + s**4) / 3,
        lambda s: (1 - s) ** 2 / 2,
    ),
    "end-cantilever": Case(
        "Load at the free end, the other held fast",
        "uniform-cantilever",
        lambda s: (3 * s * s - s**3) / 2,
        lambda s: 1 - s,
        (1.0,),
    ),
}
OPTIONS = tuple(Option(key, case.label) for key, case in CASES.items())


@cache
def coefficient(case: str) -> Fraction:
    """Table 9-1's coefficient of a case, for the place that bends most."""
    return tables.figure(next(row for row in tables.rows("beams") if row["case"] == case)).value


def by_moments(case: str) -> float:
    """The same coefficient from the bending moments alone, by the unit load of Maxwell and Mohr.

    The integral of the moment times that of a unit load at the place asked for; Simpson's rule, which is exact for
    these, a quarter of the span at a time. For ends held fast the unit load may rest simply.
    """
    beam = CASES[case]
    unit = (lambda s: 1 - s) if beam.support == "cantilever" else (lambda s: _half(s) / 2)
    parts = [(low, (low + high) / 2, high) for low, high in pairwise(QUARTERS)]
    weights = (1, 4, 1)
    return sum(w * beam.moment(s) * unit(s) for spots in parts for w, s in zip(weights, spots, strict=True)) / 24
