"""The shape of a sloping-lid box: what follows from its givens by geometry alone.

Seen from the side, x runs from the back's face to the front and y up from the bottom of the sides. A side stands from
x = 0 to x = depth; its top runs from (0, back height) to (depth, front height), and the under face of the lid lies on
that line and goes on along it. The front's rabbet is cut from its inner face, so its outer face stands at
x = depth + front thickness - rabbet, and its inner face, between the sides, at x = depth - rabbet.

Where this says more than the catalogue of pieces: the front's bevelled top is highest at its inner face, which stands
behind the plane of the sides, so the blank must be front height + rabbet tan a high and not front height only. The
overhang is measured level at the lid's under face; the upper arris of a square front end stands lid thickness times
sin a further out.
"""

import math
from typing import Any

from calc import trig
from calc.declare import Values
from calc.errors import Refusal
from calc.show import plain
from calc.sums._lid import faces

THICKNESSES = tuple(f"{part}_thickness" for part in ("side", "front", "lid", "back", "bottom", "batten"))


def shape(g: Values) -> dict[str, Any]:
    """Every size that geometry gives, in millimetres, from givens in millimetres and degrees; raises Refusal."""
    made = {**g, **_defaults(g)}
    made |= _slope(made)
    made |= _front(made)
    made |= _lid(made) | _back_and_bottom(made)
    return made


def up(size: Any) -> str:
    """A size to type, in millimetres, never less than is needed."""
    return f"{plain(math.ceil(size * 10) / 10, 1)} mm"


def _defaults(g: Values) -> dict[str, Any]:
    own = {name: g["stock_thickness"] if g[name] is None else g[name] for name in THICKNESSES}
    rabbet = own["front_thickness"] / 2 if g["rabbet"] is None else g["rabbet"]
    if rabbet >= own["front_thickness"]:
        raise Refusal(
            "the rabbet is as deep as the front is thick", f"give less than {up(own['front_thickness'])}", "rabbet"
        )
    return {**own, "rabbet": rabbet}


def _slope(m: Values) -> dict[str, Any]:
    """Both heights, the slope and its tangent, exact where it came from the heights."""
    back, front, angle, depth = m["back_height"], m["front_height"], m["angle"], m["depth"]
    if angle is None:
        tangent = (back - front) / depth
    else:
        tangent = trig.tan(angle)
        back, front = (front + depth * tangent, front) if back is None else (back, back - depth * tangent)
    found = {"back_height": back, "front_height": front, "tangent": tangent}
    _refuse_slope(m, found)
    return {
        **found,
        "angle": trig.atan(tangent) if angle is None else angle,
        "secant": trig.sqrt(1 + tangent * tangent),
    }


def _refuse_slope(m: Values, found: Values) -> None:
    back, front = found["back_height"], found["front_height"]
    if front <= 0:
        least = up(m["depth"] * found["tangent"])
        raise Refusal(
            "a lid this steep leaves the front no height", f"give more than {least}, or a flatter slope", "back_height"
        )
    if not LEAST <= found["tangent"] <= STEEPEST:
        low, high = (m["depth"] * limit for limit in (LEAST, STEEPEST))
        say = f"the lid would {'hardly slope' if back - front < low else 'be steeper than 60°'}"
        told = f"make the back {up(low)} to {plain(math.floor(high), 0)} mm higher than the front"
        raise Refusal(say, told, "front_height")


LEAST, STEEPEST = math.tan(math.radians(1)) * (1 - 1e-9), math.sqrt(3) * (1 + 1e-9)
"""The tangents between which the lid counts as sloping: 1 and 60 degrees."""


def _front(m: Values) -> dict[str, Any]:
    proud = m["front_thickness"] - m["rabbet"]
    outer, inner = m["front_height"] - proud * m["tangent"], m["front_height"] + m["rabbet"] * m["tangent"]
    short = max(m["bottom_thickness"] - inner, -outer, -m["front_height"])
    if short >= 0:
        told = f"give the front edge more than {up(m['front_height'] + short)}"
        raise Refusal("nothing would be left of the front above the bottom, or at its outer face", told, "front_height")
    return {
        "proud": proud,
        "front_outer": outer,
        "front_inner": inner,
        "outside": m["inside_width"] + 2 * m["side_thickness"],
    }


def _lid(m: Values) -> dict[str, Any]:
    depth = m["depth"] + m["proud"] + m["front_overhang"]
    bevel, under, upper = faces(depth, m["lid_thickness"], m["tangent"], m["secant"])
    return {
        "lid_bevel": bevel,
        "lid_under": under,
        "lid_long": upper,
        "lid_wide": m["outside"] + 2 * m["side_overhang"],
    }


def _back_and_bottom(m: Values) -> dict[str, Any]:
    deep, wide = m["depth"] - m["rabbet"] - m["allowance"], m["inside_width"] - m["allowance"]
    if deep <= 0:
        raise Refusal("nothing is left for the bottom", f"give more than {up(m['depth'] - deep)}", "depth")
    if wide <= 0:
        raise Refusal("nothing is left for the bottom", f"give more than {up(m['allowance'])}", "inside_width")
    back, front = m["back_height"] - m["bottom_thickness"], m["front_inner"] - m["bottom_thickness"]
    return {
        "bottom_deep": deep,
        "bottom_wide": wide,
        "back_high": m["tail"] + m["back_height"] + m["lid_thickness"] * m["secant"] + m["crest"],
        "volume": (back + front) / 2 * (m["depth"] - m["rabbet"]) * m["inside_width"],
    }
