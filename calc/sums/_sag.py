"""How far a shelf bends under its load and its own weight, at once and after years, and how far it may span."""

from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property

from calc.declare import Values
from calc.errors import Refusal
from calc.sums import _beams, _species, _weight
from calc.trig import Number

GRAVITY = Fraction("9.80665")
"""Newtons that a kilogram weighs, exactly, by the standard of weights (NIST SP 811, appendix B)."""
DEEPEST = 10
"""A beam bent further than a tenth of its span is bent too far for any of this."""
LEFT_OUT = "not in the table, so the shelf's own weight is left out"


@dataclass(frozen=True)
class Shelf:
    """What bends: stiffness in newtons to the square millimetre, section in millimetres, weight in newtons a mm."""

    case: str
    stiffness: float
    width: Fraction
    thickness: Fraction
    own: float

    def bends(self, load: float, span: Number) -> float:
        """Millimetres it bends under a load in newtons, and its own weight, over a span in millimetres."""
        own = _beams.coefficient(_beams.CASES[self.case].own)
        pull = float(_beams.coefficient(self.case)) * load + float(own) * self.own * float(span)
        return 12 * pull * float(span) ** 3 / self.resists

    @cached_property
    def resists(self) -> float:
        """Twelve times stiffness by second moment of area, in newtons by square millimetres."""
        return self.stiffness * float(self.width * self.thickness**3)


def stiffness(species: str, own: Fraction | None) -> tuple[Fraction, str]:
    """Modulus of elasticity in megapascals, and where it is from. Refusal where there is none."""
    if own is not None:
        return own, "your own figure"
    found = _species.figure(species, "stiffness")
    if found is None:
        raise _species.missing(species, "stiffness", "own")
    return found.value, found.said


def work(
    species: str,
    width: Fraction,
    thickness: Fraction,
    span: Fraction,
    load: Fraction,
    case: str,
    ratio: Fraction,
    creep: Fraction,
    own: Fraction | None,
) -> Values:
    """Load and own weight in newtons, then the sag now and later, then the span that would do."""
    stiff, said = stiffness(species, own)
    gravity = _weight.gravity(species, None)
    dense = float(_weight.density(gravity.basic, _weight.DRIED)) if gravity else 0.0
    shelf = Shelf(case, float(stiff), width, thickness, dense * float(width * thickness * GRAVITY) / 1e9)
    force, heavy = float(load * GRAVITY), shelf.own * float(span)
    sag = shelf.bends(force, span)
    if sag * creep > span / DEEPEST:
        raise Refusal("this would bend more than a tenth of its span", "make it thicker, or the span shorter", "span")
    even = not _beams.CASES[case].loads
    return {
        "sag": sag,
        "sag_later": sag * float(creep),
        "allowed": span / ratio,
        "verdict": _verdict(sag * float(creep), span / ratio),
        "span_most": _furthest(shelf, (force, span, even), float(creep * ratio)),
        "load_force": force,
        "own_force": heavy,
        "own_mass": heavy / float(GRAVITY) if gravity else None,
        "spread": force + heavy if even else None,
        "coefficient": _beams.coefficient(case),
        "own_coefficient": _beams.coefficient(_beams.CASES[case].own),
        "stiffness": stiff,
        "figure_from": said,
        "gravity_from": gravity.said if gravity else LEFT_OUT,
    }


def _verdict(later: float, allowed: Fraction) -> str:
    share = later / float(allowed)
    if share <= 1:
        return "stays within the limit"
    return f"in time it sags {share:.1f} times the limit" if share >= 1.05 else "in time it sags just past the limit"


def _furthest(shelf: Shelf, loaded: tuple[float, Fraction, bool], times: float) -> float:
    """The span at which the sag, so many times, is the span itself: an even load keeps its load to the length."""
    force, span, even = loaded
    low, high = 0.0, 1.0

    def over(reach: float) -> bool:
        return times * shelf.bends(force * reach / float(span) if even else force, reach) > reach

    while not over(high):
        low, high = high, 2 * high
    while (middle := (low + high) / 2) not in (low, high):
        low, high = (low, middle) if over(middle) else (middle, high)
    return low
