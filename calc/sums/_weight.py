"""Mass of wood from its specific gravity and moisture, by the Wood Handbook's equations 4-13 and 4-14."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from calc.declare import Values
from calc.errors import Refusal
from calc.sums import _species
from calc.trig import Number
from calc.units import factor

TAKES = "density at 12 percent with its unit, as 700 kg/m³"
"""What is typed of a wood whose specific gravity is in no table."""
SATURATED = 30
"""Percent of moisture above which wood swells no more."""
SHRINKS = Fraction("0.265")
"""Volume lost from green to ovendry for each unit of specific gravity, equation 4-12: 26.5 percent."""
SOLID = Fraction("1.54")
"""Specific gravity of the wood substance itself, equation 4-3."""
DRIED = 12
"""Percent of moisture at which woods are compared, and sellers weigh them."""


@dataclass(frozen=True)
class Gravity:
    """Specific gravity of a wood: basic (on its green volume), what it came from at 12 %, and where that is from."""

    basic: Fraction
    at_12: Fraction | None
    said: str


def gravity(species: str, own: Fraction | None) -> Gravity | None:
    """The specific gravity of a wood or of the maker's own density at 12 %; None where the table has none."""
    if own is not None:
        at_12 = own / 1000 / (1 + Fraction(DRIED, 100))
        return Gravity(to_basic(at_12), at_12, "your own density")
    green, dry = (_species.figure(species, f"gravity_{when}") for when in ("green", "12"))
    if green and not (green.remembered and dry and not dry.remembered):
        return Gravity(green.value, None, green.said)
    return Gravity(to_basic(dry.value), dry.value, dry.said) if dry else None


def to_basic(at_12: Fraction) -> Fraction:
    """Basic specific gravity from that at 12 %, equation 4-13 turned round."""
    return at_12 / (1 + SHRINKS * at_12 * (1 - Fraction(DRIED, SATURATED)))


def at(basic: Fraction, moisture: Number) -> Number:
    """Specific gravity on the volume at a moisture content, equation 4-13."""
    return basic / (1 - SHRINKS * basic * (1 - Fraction(min(moisture, SATURATED)) / SATURATED))


def density(basic: Fraction, moisture: Number) -> Number:
    """Kilograms to the cubic metre, water included, equation 4-14."""
    return 1000 * at(basic, moisture) * (1 + Fraction(moisture) / 100)


def most(basic: Fraction) -> Fraction:
    """The most moisture a wood can hold, percent, all its pores full: equation 4-3."""
    return 100 * (SOLID - basic) / (SOLID * basic)


def work(species: str, moisture: Fraction, boards: Sequence[dict[str, Any]], own: Fraction | None) -> Values:
    """The density of this wood, this damp; then each row's mass and the whole."""
    wood = gravity(species, own)
    if wood is None:
        raise _species.missing(species, "specific gravity", "own", TAKES)
    if moisture > most(wood.basic):
        raise _sodden(most(wood.basic))
    dense = float(density(wood.basic, moisture))
    rows = [_row(row, dense) for row in boards]
    volume = sum(row["volume"] for row in rows)
    mass = dense * float(volume * factor("mm**3", "cubic_metre"))
    return {
        "mass": mass,
        "dry": mass / (1 + float(moisture) / 100),
        "water": mass * float(moisture) / (100 + float(moisture)),
        "density": dense,
        "volume": volume,
        "gravity_12": wood.at_12,
        "gravity_green": None if wood.at_12 else wood.basic,
        "gravity": float(wood.basic),
        "gravity_now": float(at(wood.basic, moisture)),
        "most": float(most(wood.basic)),
        "figure_from": wood.said,
        "rows": rows,
    }


def _row(row: dict[str, Any], dense: float) -> dict[str, Any]:
    one = row["thickness"] * row["width"] * row["length"]
    each = dense * float(one * factor("mm**3", "cubic_metre"))
    return {**row, "volume": row["count"] * one, "each": each, "all": row["count"] * each}


def _sodden(limit: Fraction) -> Refusal:
    return Refusal(f"with its pores full this wood holds {int(limit)}%", "type no more than that", "moisture")
