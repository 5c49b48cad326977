"""Strips for a glued panel, the clamps that close its joints, and the glue."""

import math
from fractions import Fraction
from typing import Any

from calc.declare import Values
from calc.errors import Refusal

PRESSURES = {"light": Fraction("0.7"), "dense": Fraction("1.7")}
"""Megapascals that close a joint in the lightest and the densest woods: Wood Handbook, from memory."""
FEWEST = 2
"""Clamps under which no panel is held flat: common practice."""
MOST = 200
"""Clamps that no bench has."""


def work(
    panel_width: Fraction,
    panel_length: Fraction,
    thickness: Fraction,
    strip_width: Fraction,
    lost: Fraction,
    trim: Fraction,
    caul: Fraction,
    wood: str,
    own: Fraction | None,
    clamp: Fraction | None,
    sides: str,
    coverage: Fraction | None,
    spread: Fraction | None,
) -> Values:
    """How many strips make the width, then what presses on their joints, then what wets them."""
    if strip_width <= lost:
        raise Refusal("nothing is left of a strip when its edges are trued", "choose wider strips", "strip_width")
    rough = panel_width + trim
    strips = max(1, math.ceil((rough - lost) / (strip_width - lost)))
    joints = strips - 1
    area = joints * panel_length * thickness
    press = _pressed((panel_length, thickness, rough / strips + caul), own or PRESSURES[wood], clamp)
    faces = 1 if sides == "one" else 2
    return {
        "strips": strips,
        "joints": joints,
        "rough": rough,
        "each": rough / strips,
        "spare": strips * strip_width - joints * lost - rough,
        "area": area,
        "faces": faces,
        "liquid": area * faces / coverage if coverage and joints else None,
        "mass": area * faces * spread / 10**9 if spread and joints else None,
        **(press if joints else dict.fromkeys(press)),
    }


def _pressed(joint: tuple[Fraction, Fraction, Fraction], pressure: Fraction, clamp: Fraction | None) -> dict[str, Any]:
    """Clamps for a joint so long and thick, the pressure spreading at 45° through so much wood to reach it."""
    length, thickness, through = joint
    apart = 2 * through
    force = pressure * length * thickness
    by_force = math.ceil(force / clamp) if clamp else None
    by_reach = max(FEWEST, math.ceil(length / apart))
    count = max(by_reach, by_force or 0)
    if count > MOST:
        more = "say a stronger clamp" if (by_force or 0) > MOST else "choose wider strips, or cauls"
        raise Refusal(f"this takes {count} clamps", more, "clamp" if (by_force or 0) > MOST else "strip_width")
    spacing = length / count
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
