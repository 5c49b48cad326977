"""The working of nail-hold: what draws a smooth nail, by three forms that are never mixed."""

from fractions import Fraction

from calc import tables
from calc.declare import Values
from calc.errors import Refusal
from calc.show import plain
from calc.sums import _species, _weight
from calc.sums._nails import named, thickness_of
from calc.units import MM_PER_INCH

POUND = Fraction("4.4482216152605")
"""Newtons to the pound of force, exactly: 0.45359237 kg at 9.80665 m/s²."""
SHALLOW = 8
"""Diameters that a smooth nail must go in to count at all: Eurocode 5, from a worked example."""


def rule(name: str) -> Fraction:
    """A constant of withdrawal from the table of nail rules."""
    return tables.figure(next(row for row in tables.rows("nail_rules") if row["id"] == name)).value


def work(species: str, nail: str | None, own: Fraction | None, into: Fraction, density: Fraction | None) -> Values:
    """Both specific gravities of the wood, then each form on its own."""
    wood = _weight.gravity(species, density)
    if wood is None:
        raise _species.missing(species, "specific gravity", "density", _weight.TAKES)
    thick, said = _held(nail, own, into)
    at_12 = wood.at_12 or _weight.at(wood.basic, _weight.DRIED)
    ovendry = _weight.at(wood.basic, Fraction(0))
    wide, deep = float(thick / MM_PER_INCH), float(into / MM_PER_INCH)
    older, allowed = (
        float(rule(name)) * float(ovendry) ** 2.5 * wide
        for name in ("nail_withdrawal_1931_1965", "nds_nail_withdrawal")
    )
    return {
        "ultimate": float(rule("nail_withdrawal_smooth_SI")) * float(at_12) ** 2.5 * float(thick * into),
        "older_inch": older,
        "older": older * deep * float(POUND),
        "allowable_inch": allowed,
        "allowable": allowed * deep * float(POUND),
        "thick": thick,
        "depths": into / thick,
        "gravity": float(wood.basic),
        "gravity_12": float(at_12),
        "gravity_0": float(ovendry),
        "figure_from": wood.said,
        "thick_from": said,
    }


def _held(nail: str | None, own: Fraction | None, into: Fraction) -> tuple[Fraction, str]:
    """The nail's thickness; a Refusal when more of it is said to be in the wood than there is of it."""
    if nail is not None and own is None and into > (long := named()[nail].length.value):
        raise Refusal(f"the whole nail is {plain(long, 1)} mm long", "give less in the second piece", "into")
    return thickness_of(nail, own)


def proof(v: Values) -> dict[str, float]:
    """Squared there is no root left; the allowable is a fifth of the older; both gravities shrink from one wood."""
    shrinks, dry, air = 0.265 * v["gravity"], v["gravity_0"], v["gravity_12"]
    squared = 54.12**2 * air**5 * float(v["thick"] * v["into"]) ** 2
    return {
        "the ultimate squared has no root": v["ultimate"] ** 2 / squared - 1,
        "the older form is five times the allowable": v["older"] / v["allowable"] / 5 - 1,
        "ovendry wood, swollen again, has the basic gravity": dry * (1 - shrinks) / v["gravity"] - 1,
        "wood at 12 percent has three fifths of the shrinkage behind it": air * (1 - 0.6 * shrinks) / v["gravity"] - 1,
        "depth in diameters times the diameter is the depth": float(v["depths"] * v["thick"] / v["into"]) - 1,
    }
