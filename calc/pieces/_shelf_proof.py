"""What a wall shelf must satisfy, by another road than its formulas."""

import math

from calc.declare import Values
from calc.discover import find

SLICES = 256


def proof(v: Values) -> dict[str, float]:
    """By coordinates and by asking again, never by the formulas: the curves, the faces, the sag, the screws."""
    deep, high, radius = float(v["depth"]), float(v["end_high"]), float(v["radius"])
    low, up = (deep - radius, float(v["curve_low"])), (deep - radius, high - float(v["curve_up"]))
    row = 2 * float(v["screw_in"]) + (v["screws"] - 1) * float(v["screw_gap"])
    area = deep * high - sum(_taken(radius, float(v[name])) for name in ("curve_low", "curve_up"))
    return {
        "the lower curve ends on the foot": math.dist(low, (float(v["foot_deep"]), 0)) / radius - 1,
        "the upper curve ends on the top": math.dist(up, (float(v["top_deep"]), high)) / radius - 1,
        "slice by slice the ends have their area": area / float(v["end_area"]) - 1,
        "floor to floor of the housings is the shelf": (
            float(v["outside"]) - 2 * float(v["behind"]) - float(v["shelf_long"])
        )
        / deep,
        "below, shelf and above make up an end": float(v["rail_up"] + v["rail_wide"] + v["housing_wide"] + v["rise"])
        / high
        - 1,
        "the screws reach from end to end of the rail": row / float(v["inside_width"]) - 1,
        "at its least thickness it sags as far as allowed": _sag(v, shelf_thickness=v["shelf_least"]) - 1,
        "at its longest span it sags as far as allowed": _sag(v, inside_width=v["span_most"]) - 1,
    }


def _taken(radius: float, along: float) -> float:
    """What a curve takes off a corner, in slices between the front edge and the circle, by Simpson's rule."""
    whole = math.asin(along / radius)
    turns = [whole * n / SLICES for n in range(SLICES + 1)]
    slices = [(1 - math.cos(turn)) * math.cos(turn) for turn in turns]
    return (
        radius
        * radius
        * whole
        / SLICES
        / 3
        * (slices[0] + 4 * sum(slices[1::2]) + 2 * sum(slices[2:-1:2]) + slices[-1])
    )


def _sag(v: Values, **changed: float) -> float:
    """The sag over what is allowed, of another span or thickness, its load keeping to its length."""
    m = {**v, **changed}
    asked = {name: m[name] for name in ("species", "ratio", "creep")}
    load = float(v["load"]) * float(m["inside_width"]) / float(v["inside_width"])
    board = {"span": m["inside_width"], "width": m["shelf_deep"], "thickness": m["shelf_thickness"]}
    found = find("sag").of(**asked, **board, load=load, own=v["own_stiffness"])
    return float(found["sag_later"] / found["allowed"])
