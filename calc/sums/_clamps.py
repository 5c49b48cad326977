"""Clamps on a glued joint: how many reach all of it, how many press hard enough, and where they stand."""

import math
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from calc.errors import Refusal

PRESSURES = {"light": Fraction("0.7"), "dense": Fraction("1.7")}
"""Megapascals that close a joint in the lightest and the densest woods: Wood Handbook, from memory."""
MOST = 200
"""Clamps that no bench has."""
TOLD = ("clamps", "spacing", "first", "apart", "pressure", "force", "each_force", "by_reach", "by_force", "marks")
"""What is told of a pressed joint."""


@dataclass(frozen=True)
class Joint:
    """A joint in millimetres: its length, its width, and the wood between it and the clamp, through which the pressure
    fans out at 45°; the fewest clamps it is held with, and which entry to change, and how, where it takes too many."""

    length: Fraction
    width: Fraction
    through: Fraction
    fewest: int
    wider: tuple[str, str]


def pressed(joint: Joint, pressure: Fraction, clamp: Fraction | None) -> dict[str, Any]:
    """Clamps, their spacing and marks, the force of all and of each; `clamp` is what one gives, in newtons."""
    apart = 2 * joint.through
    force = pressure * joint.length * joint.width
    by_force = math.ceil(force / clamp) if clamp else None
    by_reach = max(joint.fewest, math.ceil(joint.length / apart))
    count = max(by_reach, by_force or 0)
    if count > MOST:
        strong = (by_force or 0) <= MOST
        raise Refusal(f"this takes {count} clamps", *(joint.wider if strong else ("say a stronger clamp", "clamp")))
    spacing = joint.length / count
    return {
        "clamps": count,
        "spacing": spacing,
        "first": spacing / 2,
        "apart": apart,
        "pressure": pressure,
        "force": force,
        "each_force": force / count,
        "by_reach": by_reach,
        "by_force": by_force,
        "marks": [{"clamp": n + 1, "mark": spacing * (2 * n + 1) / 2, "side": _side(n)} for n in range(count)],
    }


def _side(n: int) -> str:
    return "above" if n % 2 else "below"
