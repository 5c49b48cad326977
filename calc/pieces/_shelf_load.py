"""What a wall shelf bears: its sag by the sag sum, the thickness that would do, and the pull on what fixes it."""

from typing import Any

from calc.declare import Values
from calc.pieces._asked import ask

SAG = {"span": "inside_width", "own": "own_stiffness", "species": "species"}
WEIGH = {"species": "species", "moisture": "moisture", "own": "own_density"}


def sagged(
    species: str,
    inside_width: Any,
    shelf_deep: Any,
    shelf_thickness: Any,
    load: Any,
    ratio: Any,
    creep: Any,
    own_stiffness: Any,
) -> Values:
    """The sag of the board, evenly loaded and resting on its two ends, by sag: the rail behind it is not counted."""
    board = {"span": inside_width, "width": shelf_deep, "thickness": shelf_thickness}
    limits = {"ratio": ratio, "creep": creep}
    return ask("sag", "inside_width", SAG, species=species, load=load, own=own_stiffness, **board, **limits)


def shelf_least(sagged: Values, shelf_thickness: Any) -> float:
    """The thickness at which the board sags as far as allowed, in millimetres.

    Its stiffness goes with the cube of the thickness, its own weight with the thickness itself, the load stays: of the
    sag that the sum found, each part is taken to that thickness, and the one is halved down to that is just enough.
    """
    thick, share = float(shelf_thickness), float(sagged["own_force"] / sagged["spread"])
    now = float(sagged["sag_later"] / sagged["allowed"])

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
