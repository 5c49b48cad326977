"""What a wall shelf bears: its sag by the sag sum, the thickness that would do, and the pull on what fixes it."""

from collections.abc import Sequence
from fractions import Fraction
from typing import Any

from calc.building.sizing import CANNOT
from calc.declare import Values
from calc.errors import Refusal
from calc.pieces._asked import ask, down, up
from calc.pieces._shelf_asks import GIVENS

ASKED = {one.name: one for one in GIVENS}
SAG = {"span": "inside_width", "own": "own_stiffness", "species": "species"}
MOST_EASED = 40
"""Halvings that are enough for any board and load that may be typed."""
WEIGH = {"species": "species", "moisture": "moisture", "own": "own_density"}


def laden(
    species: str,
    inside_width: Any,
    shelf_deep: Any,
    shelf_thickness: Any,
    load: Any,
    ratio: Any,
    creep: Any,
    own_stiffness: Any,
) -> Values:
    """The board as the sum of sag asks for it, evenly loaded and resting on its two ends: no rail behind it."""
    board = {"span": inside_width, "width": shelf_deep, "thickness": shelf_thickness, "load": load}
    return {"board": board, "more": {"species": species, "ratio": ratio, "creep": creep, "own": own_stiffness}}


def nearer(laden: Values) -> Values:
    """The sag of the board; where it would bend further than that sum reckons with, of half the span and half the load.

    Or of half of that: the longest span is the same of all of them, since the load keeps to its length.
    """
    return _eased(laden, ("span", "load"), Fraction(1, 2))


def sturdier(laden: Values) -> Values:
    """The same; where it would bend further than the sum reckons with, of a board twice as thick, or twice that."""
    return _eased(laden, ("thickness",), Fraction(2))


def _eased(laden: Values, eases: Sequence[str], times: Fraction) -> Values:
    """The board that the sum answers for and its answers: these of its sizes changed so many times until it does."""
    board: Values = laden["board"]
    for _ in range(MOST_EASED):
        try:
            return {**board, **ask("sag", "load", SAG, **laden["more"], **board)}
        except Refusal as refusal:
            if refusal.field != SAG["span"]:
                raise
        board = {**board, **{name: board[name] * times for name in eases}}
    raise CANNOT


def sagged(nearer: Values, inside_width: Any, span_most: Any, shelf_least: Any) -> Values:
    """The sag of the board as it is; Refusal where it cannot carry its load, with what could."""
    if nearer["span"] == inside_width:
        return nearer
    say = "this shelf cannot carry its load, and would bend more than a tenth of its span"
    raise Refusal(say, _instead(span_most, shelf_least), "inside_width")


def _instead(span_most: Any, shelf_least: Any) -> str:
    """What could carry it, of what may be asked for."""
    found = {
        "shelf_thickness": (shelf_least, f"make the shelf {up(shelf_least)} thick or more"),
        "inside_width": (span_most, f"bring its ends {down(span_most)} or less apart, with as much less on it"),
    }
    told = [say for name, (size, say) in found.items() if not ASKED[name].outside(size)]
    return ", or ".join(told) or "put less on it"


def verdict(nearer: Values, inside_width: Any) -> str:
    """The sag in the long run against the limit, in words; also where the board cannot carry its load."""
    told: str = nearer["verdict"]
    return told if nearer["span"] == inside_width else "cannot carry it: it would bend more than a tenth of its span"


def shelf_least(sturdier: Values) -> float:
    """The thickness at which the board sags as far as allowed, in millimetres.

    Its stiffness goes with the cube of the thickness, its own weight with the thickness itself, the load stays: of the
    sag that the sum found, each part is taken to that thickness, and the one is halved down to that is just enough.
    """
    thick, share = float(sturdier["thickness"]), float(sturdier["own_force"] / sturdier["spread"])
    now = float(sturdier["sag_later"] / sturdier["allowed"])

    def too_thin(least: float) -> bool:
        times = thick / least
        return now * ((1 - share) * times**3 + share * times**2) > 1

    low, high = thick / 64, thick
    while too_thin(high):
        low, high = high, 2 * high
    while (middle := (low + high) / 2) not in (low, high):
        low, high = (middle, high) if too_thin(middle) else (low, middle)
    return high


def screwed(screw: int, rail_thickness: Any) -> Values:
    """The clearance hole and countersink of the screws through the rail, by screw."""
    return ask("screw", "screw", {"number": "screw", "held": "rail_thickness"}, number=screw, held=rail_thickness)


def hung(weight: Any, load: Any, depth: Any, screw_up: Any, screws: int) -> Values:
    """The weight and the pull on each screw, by hang: it bears on the wall at the foot of its ends."""
    return ask("hang", "drop", {}, mass=weight, contents=load, projection=depth, lever=screw_up, top=screws)
