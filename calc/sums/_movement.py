"""How far a board moves across the grain between two moisture contents, and which of two formulas said so."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from calc.declare import Values
from calc.errors import Refusal
from calc.sums import _emc, _species

NARROW = (6, 14)
"""Percent of moisture between which the dimensional change coefficients hold: Wood Handbook, chapter 13."""
SATURATED = 30
"""Percent of moisture at which shrinkage is taken to start: Wood Handbook, chapter 13."""
DAMP = 20
"""Percent of moisture above which a board is still to dry and warps as it does: common practice."""
WAYS = {"flat": "tangential", "quarter": "radial"}
HAIR = Fraction(3, 100000)
"""How far a printed coefficient may be from the one its shrinkage gives before the two are said to disagree."""
DISAGREE = "another figure disagrees, and this one moves further"


@dataclass(frozen=True)
class Known:
    """What the tables say of one wood, one way across the grain, and where each figure is from."""

    coefficient: Fraction | None
    shrinkage: Fraction
    coefficient_from: str
    shrinkage_from: str


def known(species: str, cut: str, own: Fraction | None) -> Known | None:
    """Coefficient and shrinkage; where two figures disagree, whichever moves further; None where the table has none."""
    if own is not None:
        return Known(None, own, "", "your own figure")
    c, s = (_species.figure(species, f"{kind}_{WAYS[cut]}") for kind in ("c", "shrink"))
    if c is None or s is None:
        return None
    if abs(c.value - by_shrinkage(s.value)) <= HAIR:
        return Known(c.value, s.value, c.said, s.said)
    if by_shrinkage(s.value) > c.value:
        return Known(None, s.value, "", f"{s.said}; {DISAGREE}")
    return Known(c.value, by_coefficient(c.value), *2 * (f"{c.said}; {DISAGREE}",))


def by_shrinkage(shrinkage: Fraction) -> Fraction:
    """The coefficient that goes with a shrinkage: both are lines from nothing at 30 %, C on the size at 10 %."""
    return shrinkage / (100 * SATURATED - 20 * shrinkage)


def by_coefficient(coefficient: Fraction) -> Fraction:
    """The shrinkage that goes with a coefficient."""
    return 100 * SATURATED * coefficient / (1 + 20 * coefficient)


def work(species: str, cut: str, width: Fraction, own: Fraction | None, **ends: Any) -> Values:
    """Both moisture contents, the figure of the wood, and what they make of the width."""
    now, then = (_moisture(ends, when) for when in ("now", "then"))
    wood = known(species, cut, own)
    if wood is None:
        raise _species.missing(species, f"shrinkage across the {cut}-sawn face", "own")
    coefficient = _narrow(wood, now, then)
    return {
        "moisture_now": now,
        "moisture_then": then,
        **_sizes(width, moved(wood, width, now, then)),
        "other": _other(species, cut, own, (width, now, then)),
        "coefficient": coefficient,
        "shrinkage": None if coefficient else wood.shrinkage,
        "form": _form(wood, bool(coefficient)),
        "figure_from": wood.coefficient_from if coefficient else wood.shrinkage_from,
    }


def _sizes(width: Fraction, change: float) -> Values:
    return {
        "change": change,
        "width_then": width + change,
        "percent": 100 * change / width,
        "gap": change if change >= 0 else None,
        "opens": -change if change < 0 else None,
        "each_side": abs(change) / 2,
    }


def _narrow(wood: Known, now: Any, then: Any) -> Fraction | None:
    """The coefficient where it may be used."""
    return wood.coefficient if all(NARROW[0] <= wet <= NARROW[1] for wet in (now, then)) else None


def moved(wood: Known, width: Fraction, now: Any, then: Any) -> float:
    """The change in size in millimetres, more when the wood swells, by the formula that holds."""
    if coefficient := _narrow(wood, now, then):
        return float(width * coefficient * (then - now))
    return float(width * (then - now) / (100 * SATURATED / wood.shrinkage - SATURATED + now))


def _form(wood: Known, narrow: bool) -> str:
    if narrow:
        return "the coefficient, which holds from 6 to 14% moisture"
    why = "a moisture content is outside 6 to 14%" if wood.coefficient else "no coefficient stands for this figure"
    return f"the shrinkage from green to ovendry: {why}"


def _other(species: str, cut: str, own: Fraction | None, size: tuple[Fraction, Any, Any]) -> float | None:
    """What the same width would move, cut the other way."""
    wood = known(species, "quarter" if cut == "flat" else "flat", None) if own is None else None
    return moved(wood, *size) if wood else None


def _moisture(ends: Values, when: str) -> Any:
    """The moisture content at one end of the way: as given, or that of a climate. Refusal for both, or neither."""
    wet, warm, damp = (ends[f"{name}_{when}"] for name in ("moisture", "temperature", "humidity"))
    if wet is not None and (warm, damp) == (None, None):
        return wet
    if wet is not None:
        raise Refusal("a climate is given as well", "clear this, or temperature and humidity", f"moisture_{when}")
    if warm is None and damp is None:
        raise Refusal("nothing says how dry the wood is", "type this, or temperature and humidity", f"moisture_{when}")
    if warm is None or damp is None:
        empty = f"{'temperature' if warm is None else 'humidity'}_{when}"
        raise Refusal("a climate wants its temperature and its humidity", "fill in both", empty)
    return _emc.moisture(warm, damp)
