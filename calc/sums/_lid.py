"""The lid of a box, level or sloping: its faces from the back to the front overhang, its bevel, its strips."""

import math
from fractions import Fraction
from typing import Any

from calc import trig
from calc.declare import Values
from calc.errors import Refusal
from calc.show import plain


def strips_of(width: Any, stock: Any, joint: Any) -> int:
    """How many widths of stock make up a width, when each glue joint costs `joint`.

    >>> strips_of(200, 100, 2)
    3
    """
    strips: int = math.ceil((width - joint) / (stock - joint))
    return max(1, strips)


def faces(depth: Any, thickness: Any, tangent: Any, secant: Any) -> tuple[Any, Any, Any]:
    """What the back bevel takes, the under face and the upper face, for a level depth from the back to the overhang."""
    bevel, under = thickness * tangent, depth * secant
    return bevel, under, under + bevel


def work(
    depth: Fraction,
    angle: Any,
    thickness: Fraction,
    width: Fraction,
    front: Fraction,
    side: Fraction,
    back: str,
    stock: Fraction | None,
    joint: Fraction,
    trim: Fraction,
) -> Values:
    """Both faces down the slope, then across, then the strips where the stock is given."""
    tangent = trig.tan(angle) if back == "bevelled" else 0
    bevel, under, upper = faces(depth + front, thickness, tangent, 1 / trig.cos(angle))
    wide = width + 2 * side
    return {
        **{
            "upper": upper,
            "under": under,
            "bevel": bevel if back == "bevelled" else None,
            "wide": wide,
            "bevel_angle": angle if bevel else None,
        },
        **{"drop": (depth + front) * trig.tan(angle), "nose": thickness * trig.sin(angle) or None},
        "gap": thickness * trig.sin(angle) if back == "square" and angle else None,
        **_strips(upper + trim, stock, joint),
    }


def _strips(rough: Any, stock: Fraction | None, joint: Fraction) -> Values:
    if stock is None:
        return dict.fromkeys(("rough", "strips", "each", "spare"))
    if stock <= joint:
        raise Refusal(
            "nothing is left of a strip when its edges are trued", f"give more than {plain(joint)} mm", "stock"
        )
    count = strips_of(rough, stock, joint)
    spare = count * stock - (count - 1) * joint - rough
    return {"rough": rough, "strips": count, "each": (rough + (count - 1) * joint) / count, "spare": spare}


def corners(v: Values) -> list[tuple[float, float]]:
    """The section: back end below and above, front end above and below; the back's face is x = 0."""
    c, s = float(trig.cos(v["angle"])), float(trig.sin(v["angle"]))
    upper, under, thick = (float(v[name]) for name in ("upper", "under", "thickness"))
    toe = (under * c, -under * s)
    nose = (toe[0] + thick * s, toe[1] + thick * c)
    return [(0.0, 0.0), (nose[0] - upper * c, nose[1] + upper * s), nose, toe]


def proof(v: Values) -> dict[str, float]:
    """By coordinates: a bevelled end stands plumb, the section has its area, the under face spans the depth."""
    spots = corners(v)
    pairs = zip(spots, [*spots[1:], spots[0]], strict=True)
    area = abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in pairs)) / 2
    mean = float(v["upper"] + v["under"]) / 2 * float(v["thickness"])
    told = {
        "the section's area is its mean length by its thickness": area / mean - 1,
        "the under face spans depth and overhang": spots[3][0] / float(v["depth"] + v["front"]) - 1,
    }
    stands_off = float(v["gap"] or 0)
    told["its upper arris meets the back, or stands off by the gap"] = (spots[1][0] - stands_off) / float(v["under"])
    if v["strips"]:
        trued = v["strips"] * v["stock"] - (v["strips"] - 1) * v["joint"]
        told["strips, less joints and spare, make the lid"] = float((trued - v["spare"]) / v["rough"]) - 1
        told["no strip is wider than the stock"] = max(0.0, float(v["each"] / v["stock"]) - 1)
    return told
