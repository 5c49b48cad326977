"""How far the wood of a piece moves across its grain in the climates it will meet, by other sums.

A piece adds SEASONS to its givens, the step `seasons`, and MOVED to its answers.
"""

from fractions import Fraction
from typing import Any

from calc.declare import Values
from calc.errors import Refusal
from calc.pieces._asked import answered, ask
from calc.pieces._asks import theirs
from calc.pieces._size import sizes_by

HUNDRED = Fraction(100)
FIELDS = {"own": "shrinkage", "moisture_now": "moisture"}
SEASONS = (
    theirs("movement", "cut"),
    theirs("groove", "humidity_damp"),
    theirs("groove", "humidity_dry"),
    theirs("groove", "temperature"),
    theirs("movement", "own", name="shrinkage"),
)
"""The cut of the boards and the climates; the wood and its moisture are asked for the weight already."""


def seasons(
    species: str, cut: str, shrinkage: Any, moisture: Any, temperature: Any, humidity_damp: Any, humidity_dry: Any
) -> Values:
    """What this wood gains across its grain by the dampest and by the driest weeks, in percent of its width now."""
    if humidity_dry > humidity_damp:
        raise Refusal("the driest air is damper than the dampest", "give the lower humidity here", "humidity_dry")
    wood = {"species": species, "cut": cut, "own": shrinkage, "width": HUNDRED, "moisture_now": moisture}
    air = {"damp": humidity_damp, "dry": humidity_dry}
    wet = {name: answered("moisture", temperature=temperature, humidity=one)["emc"] for name, one in air.items()}
    found = {name: ask("movement", "species", FIELDS, **wood, moisture_then=then) for name, then in wet.items()}
    return {**{name: one["percent"] for name, one in found.items()}, "from": found["damp"]["figure_from"]}


def widest(part: Any, swells: Any, shrinks: Any) -> Any:
    """A width across the grain at its widest; it may be so already."""
    return part * (1 + max(0, swells, shrinks) / 100)


def narrowest(part: Any, swells: Any, shrinks: Any) -> Any:
    """A width across the grain at its narrowest."""
    return part * (1 + min(0, swells, shrinks) / 100)


size = sizes_by({})
MOVED = (
    size(
        "swells", "Change to the dampest", "Across the grain, by the sum of wood movement.",
        lambda seasons: seasons["damp"], kind="percent",
    ),
    size(
        "shrinks", "Change to the driest", "Across the grain, by the sum of wood movement.",
        lambda seasons: seasons["dry"], kind="percent",
    ),
    size(
        "figure_from", "The figure of movement is from", "A source, or from memory.",
        lambda seasons: seasons["from"], kind="text",
    ),
)  # fmt: skip
