"""The drawing of hinge: the lid's edge from above with its hinges, and a section through one, drawn larger."""

from calc.bench import Bench
from calc.declare import Values
from calc.drawing.figure import Figure
from calc.show import fine

METRIC = Bench(unit="mm", mark="mm")
TIMES = (1, 2, 5, 10, 20, 50, 100)


def figure(v: Values) -> Figure:
    """Above, the lid with its hinges along the edge; below, gain, knuckle and screw through one of them."""
    long, thick, leaf = float(v["length"]), float(v["thickness"]), float(v["leaf"])
    times = max((n for n in TIMES if n * max(thick, leaf) <= long / 2.2), default=1)
    drawing = Figure(
        "Hinges on a lid",
        f"Above, the lid's face at the hinge line with {v['count']} hinges. Below, a section through one, {times} "
        "times the size: the leaf let into the face by half the knuckle, a screw through it.",
        tall=330,
    )
    _plan(drawing, v)
    _section(drawing, v, times)
    return drawing


def _plan(drawing: Figure, v: Values) -> None:
    long, leaf = float(v["length"]), float(v["leaf"])
    deep = max(1.6 * leaf, long / 8)
    face = [(0.0, 0.0), (long, 0.0), (long, deep), (0.0, deep)]
    drawing.outline(face)
    drawing.grain(face)
    half = float(v["knuckle"]) / 2
    for row in v["marks"]:
        low, high = float(row["start"]), float(row["end"])
        drawing.outline([(low, -half), (high, -half), (high, leaf), (low, leaf)], "accent")
        drawing.line((low, half), (high, half), "accent")
    first = v["marks"][0]
    drawing.dimension((0, deep), (float(first["start"]), deep), "inset", v["inset"], away=14)
    drawing.dimension((first["start"], deep), (first["end"], deep), "size", v["size"], away=38)
    drawing.dimension((0, deep), (long, deep), "length", v["length"], away=62)


def _section(drawing: Figure, v: Values, times: int) -> None:
    """Wood, leaf, knuckle and screw across the hinge line, below the plan."""
    size = {
        name: times * float(v[name] or 0) for name in ("thickness", "leaf", "knuckle", "gain", "plate", "screw_into")
    }
    wide, top = 1.5 * size["leaf"], -0.25 * float(v["length"])
    left = (float(v["length"]) - wide) / 2
    low = top - size["thickness"]
    wood = [(left, low), (left + wide, low), (left + wide, top), (left, top)]
    drawing.outline(wood)
    drawing.hatch(wood)
    bed = top - size["gain"]
    leaf = [
        (left, bed),
        (left + size["leaf"], bed),
        (left + size["leaf"], bed + size["plate"]),
        (left, bed + size["plate"]),
    ]
    drawing.outline(leaf, "accent")
    drawing.arc((left, top), size["knuckle"] / 2, 0, 360, "accent")
    if v["screw_into"] is not None:
        at = left + 0.6 * size["leaf"]
        drawing.line((at, bed + size["plate"]), (at, bed - size["screw_into"]), "accent")
        drawing.dimension((at, bed), (at, bed - size["screw_into"]), "number", v["screw_into"], away=16)
    drawing.dimension((left, low), (left, top), "thickness", v["thickness"], away=22)
    told = fine(v["gain"], METRIC)
    drawing.note((left + wide, (bed + top) / 2), f"gain {told.text}", "start", dx=10, name="knuckle")
    drawing.line((left + size["leaf"], bed), (left + wide, bed), "hidden")
    drawing.dimension((left, low), (left + size["leaf"], low), "leaf", v["leaf"], away=-14)
    if times > 1:
        drawing.note((left + wide / 2, low), f"section, {times} times the size", dy=-46)
