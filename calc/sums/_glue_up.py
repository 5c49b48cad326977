"""Strips for a glued panel, the clamps that close its joints, and the glue."""

import math
from fractions import Fraction

from calc.declare import Values
from calc.errors import Refusal
from calc.sums._clamps import PRESSURES, TOLD, Joint, pressed

FEWEST = 2
"""Clamps under which no panel is held flat: common practice."""
WIDER = ("choose wider strips, or cauls", "strip_width")
"""What to change where a panel takes too many."""


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
    each = min(rough / strips, strip_width - lost * min(Fraction(1), Fraction(joints, 2)))
    outer = (rough - (strips - 2) * each) / 2
    joint = Joint(panel_length, thickness, outer + caul, FEWEST, WIDER)
    faces = 1 if sides == "one" else 2
    return {
        "strips": strips,
        "joints": joints,
        "rough": rough,
        "each": each,
        "outer": outer if joints else None,
        "spare": strips * strip_width - joints * lost - rough,
        "area": area,
        "faces": faces if joints else None,
        "liquid": area * faces / coverage if coverage and joints else None,
        "mass": area * faces * spread / 10**9 if spread and joints else None,
        **(pressed(joint, own or PRESSURES[wood], clamp) if joints else dict.fromkeys(TOLD)),
    }
