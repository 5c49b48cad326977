"""What a piece weighs: the wood that is in it, as `wood_volume`, by the weight sum's density for this wood, this damp.

A piece adds WEIGHS to its givens, WEIGHED to its answers, and a size `wood_volume` of its own in cubic millimetres.
"""

from dataclasses import replace
from typing import Any

from calc.declare import Caution, Values
from calc.discover import find
from calc.errors import Refusal
from calc.pieces._asks import theirs
from calc.pieces._size import sizes_by
from calc.remembered import remembered
from calc.tables import CHECK

ONE = ({"count": 1, "thickness": 1, "width": 1, "length": 1},)
FIELDS = {"species": "species", "moisture": "moisture", "own": "own_density"}
WEIGHS = (
    theirs("weight", "species", optional=True),
    theirs("weight", "moisture"),
    theirs("weight", "own", name="own_density"),
)
"""The wood, how damp it is, and a density of the maker's own; with no wood chosen nothing is said of the weight."""


def density(species: str | None, moisture: Any, own_density: Any) -> Any:
    """Kilograms to the cubic metre, water included, by weight; None where no wood is chosen."""
    if species is None:
        return None
    try:
        return _asked(species, moisture, own_density)["density"]
    except Refusal as refusal:
        raise replace(refusal, field=FIELDS.get(refusal.field, "species")) from None


@remembered(64)
def _asked(species: str, moisture: Any, own: Any) -> Values:
    return find("weight").of(species=species, moisture=moisture, own=own, boards=ONE)


def _remembered(v: Values) -> bool:
    """True when the weight rests on a figure that no source bears out."""
    return v["density"] is not None and CHECK in _asked(v["species"], v["moisture"], v["own_density"])["figure_from"]


REMEMBERED = Caution(
    "The figure for this wood's weight is from memory and not from a source: weigh a board.", _remembered
)


def weight(wood_volume: Any, density: Any) -> Any:
    """Kilograms, from cubic millimetres; None where no wood is chosen."""
    return None if density is None else density * wood_volume / 10**9


size = sizes_by({})
WEIGHED = (
    size("weight", "Weight", "Of the wood, without hardware and finish.", weight, kind="mass"),
    size("density", "Density of the wood", "Water included.", density, kind="density"),
)
