"""Choosing the nail: by the length it should have and the wood there is to hold it; then its hole."""

from collections.abc import Mapping
from fractions import Fraction
from functools import cache
from typing import Any

from calc import show, tables
from calc.declare import Values
from calc.errors import Refusal
from calc.sums import _drills
from calc.sums._nails import Nail, stock
from calc.trig import Number
from calc.units import MM_PER_INCH

MEASURE = "not in the table; measure yours and enter it"
ANOTHER = "choose another kind of nail"
YOURS = "measured by you"


@cache
def rule(name: str) -> Fraction:
    """A rule of the trade from the table of nail rules, as a plain number."""
    return tables.figure(next(row for row in tables.rows("nail_rules") if row["id"] == name)).value


def choose(kind: str, wanted: Number, low: Number, high: Number | None) -> Nail:
    """The shortest nail longer than `low`, not longer than `high`, of at least `wanted`; else the longest there is."""
    fits = [nail for nail in stock(kind) if nail.length.value > low and (high is None or nail.length.value <= high)]
    if not fits:
        raise _none(kind, low, high)
    longest = fits[-1].length.value
    return next(nail for nail in fits if nail.length.value >= min(wanted, longest))


def _none(kind: str, low: Number, high: Number | None) -> Refusal:
    """Why no nail of this kind will do: too short a list, or too little wood behind."""
    shortest, longest = stock(kind)[0].length.value, stock(kind)[-1].length.value
    if longest <= low:
        return Refusal(f"the longest of this kind is {_size(longest)}, and the wood is {_size(low)}", ANOTHER, "kind")
    if high is not None and high <= low:
        return Refusal("this leaves no wood for the point to stand in", "leave less beyond the point", "margin")
    none = f"none of this kind is longer than {_size(low)} and shorter than {_size(high or longest)}"
    return Refusal(f"{none}; the shortest is {_size(shortest)}", f"{ANOTHER}, or let it be clinched", "kind")


def _size(mm: Number) -> str:
    return f"{show.plain(mm, 1)} mm ({show.plain(mm / MM_PER_INCH, 2)} in)"


def stands(nail: Nail, through: Number, behind: Number, clinched: bool) -> Values:
    """Where the nail is: in the second piece, short of its far side, or out beyond it; None for what does not apply."""
    long = nail.length.value
    into = min(long - through, behind)
    return {
        "nail": nail.name,
        "length": long,
        "into": into,
        "share": 100 * into / long,
        "left": None if clinched else through + behind - long,
        "out": long - through - behind if clinched else None,
        "length_from": nail.length.said,
    }


def bore(nail: Nail, wood: str, measured: Fraction | None) -> Values:
    """Thickness, gauge and where they are from; the widest hole to bore, and the drill for it."""
    ratio = 100 * rule(f"nail_prebore_{wood}")
    if measured is not None:
        return {
            "diameter": measured,
            "gauge": None,
            "thickness_from": YOURS,
            "ratio": ratio,
            **_hole(measured * ratio / 100),
        }
    known = {"ratio": ratio, "gauge": nail.gauge or None}
    if nail.diameter is None:
        return {**known, "diameter": None, "thickness_from": MEASURE, "hole": None, "drill": None, "drill_size": None}
    return {
        **known,
        "diameter": nail.diameter.value,
        "thickness_from": nail.diameter.said,
        **_hole(nail.diameter.value * ratio / 100),
    }


@cache
def _hole(hole: Fraction) -> Mapping[str, Any]:
    """The hole and the drills nearest to it of those no thicker."""
    drill, size = _drills.under(hole)
    return {"hole": hole, "drill": drill, "drill_size": size}


def near(kind: str, nail: Nail, wanted: Number, path: tuple[Number, Number, Number | None]) -> list[dict[str, Any]]:
    """The chosen nail and up to two either side of it in the list, and how each would stand."""
    shop = stock(kind)
    at = shop.index(nail)
    return [_stood(one, wanted, path) for one in shop[max(0, at - 2) : at + 3]]


def _stood(nail: Nail, wanted: Number, path: tuple[Number, Number, Number | None]) -> dict[str, Any]:
    long, (through, behind, room) = nail.length.value, path
    into = max(min(long - through, behind), Fraction(0))
    word = "long enough" if long >= wanted else "short"
    if long > through + behind:
        word = "comes through"
    elif room is not None and long > room:
        word = "too near the far face"
    return {"nail": nail.name, "length": long, "into": into, "share": 100 * into / long, "word": word}
