"""The drawing of capacity: one layer of the stack, looked at the way it rises, to scale."""

import math
from itertools import islice

from calc.declare import Values
from calc.drawing.figure import Figure
from calc.sums._capacity import SAID, bricked, sides

MOST = 240
"""Things drawn at most; of more, only the first rows."""


def figure(v: Values) -> Figure:
    """The inside of the box with one layer in it; what is too many to draw is left out at the far side."""
    names = sides(v)
    long, wide = (float(v[name]) for name in names[:2])
    drawing = Figure("One layer of the stack", f"The inside of the box with {v['a_layer']} in a layer, {v['lie']}.")
    drawing.outline([(0, 0), (long, 0), (long, wide), (0, wide)])
    spots = _round(v) if v["diameter"] else _flat(v)
    for x, y in spots[:MOST]:
        if v["diameter"]:
            drawing.arc((x, y), float(v["diameter"]) / 2, 0, 360, "accent")
        else:
            a, b = float(v["folded_length"]), float(v["folded_width"])
            drawing.outline([(x, y), (x + a, y), (x + a, y + b), (x, y + b)], "thin")
    drawing.dimension((0, 0), (long, 0), names[0], v[names[0]], away=-16)
    drawing.dimension((long, 0), (long, wide), names[1], v[names[1]], away=-16)
    told = f"{v['a_layer']} in a layer, {v['high']} high along the {SAID[names[2]]}"
    drawing.note((long / 2, 0), told, dy=-46, name=names[2])
    return drawing


def _flat(v: Values) -> list[tuple[float, float]]:
    a, b = v["folded_length"], v["folded_width"]
    names = sides(v)
    columns, rows = math.floor(v[names[0]] / a), math.floor(v[names[1]] / b)
    shown = min(columns, MOST)
    return [(float(a * i), float(b * j)) for j in range(min(rows, MOST)) for i in range(shown)][:MOST]


def _round(v: Values) -> list[tuple[float, float]]:
    names, across = sides(v), v["diameter"]
    if "staggered" in v["lie"]:
        return list(islice(bricked(v[names[0]], v[names[1]], across), MOST))
    columns, rows = (math.floor(v[name] / across) for name in names[:2])
    return [
        (float(across) * (i + 0.5), float(across) * (j + 0.5))
        for j in range(min(rows, MOST))
        for i in range(min(columns, MOST))
    ][:MOST]
