"""The drawing of tenon: the rail's end from its face, in its stile, and beside it the same end on."""

from calc.declare import Values
from calc.drawing.figure import Figure


def figure(v: Values) -> Figure:
    """The rail from its face with tenon and haunch, the stile dashed about them; the rail's end at the right."""
    drawing = Figure(
        "Tenon",
        "The end of a rail from its face, its tenon reaching to the left into a stile; at the right the same end on.",
    )
    _face(drawing, v)
    _end(drawing, v)
    return drawing


def _body(v: Values) -> float:
    """How much of the rail is drawn."""
    return max(0.5 * float(v["width"]), 0.5 * float(v["length"]))


def _face(drawing: Figure, v: Values) -> None:
    width, into, long = float(v["width"]), float(v["into"]), float(v["length"])
    low, high, haunch = float(v["inner"]), float(v["width"] - v["mortise_from"]), float(v["haunch_long"] or 0)
    beyond = 0.25 * width
    top = width if haunch else width + beyond
    drawing.outline([(-into, -beyond), (0, -beyond), (0, top), (-into, top)], "ghost")
    body = [(0, 0), (_body(v), 0), (_body(v), width), (0, width)]
    drawing.outline([(-long, low), (0, low), *body, (-haunch, width), (-haunch, high), (-long, high)])
    drawing.grain(body)
    drawing.grain([(-long, low), (0, low), (0, high), (-long, high)])
    drawing.line((0, 0), (0, width))
    drawing.dimension((-long, -beyond), (0, -beyond), "share", v["length"], away=-18)
    drawing.dimension((-into, -beyond), (0, -beyond), "into", v["into"], away=-44)
    left = -max(into, long)
    drawing.dimension((left, low), (left, high), "width", v["tenon_width"], away=18)
    if haunch:
        drawing.dimension((-haunch, width), (0, width), "place", v["haunch_long"], away=16)
        drawing.dimension((left, high), (left, width), "place", v["haunch_width"], away=44)


def _end(drawing: Figure, v: Values) -> None:
    left, width, thick = 1.9 * _body(v), float(v["width"]), float(v["thickness"])
    low, high, near = float(v["inner"]), float(v["width"] - v["mortise_from"]), float(v["shoulder"])
    drawing.outline([(left, 0), (left + thick, 0), (left + thick, width), (left, width)])
    tenon = [(left + near, low), (left + thick - near, low), (left + thick - near, high), (left + near, high)]
    if v["haunch_long"]:
        drawing.outline([tenon[3], tenon[2], (tenon[2][0], width), (tenon[3][0], width)])
    drawing.outline(tenon)
    drawing.hatch(tenon)
    drawing.dimension((left, 0), (left + thick, 0), "thickness", v["thickness"], away=-44)
    drawing.dimension((left + near, 0), (left + thick - near, 0), "chisel", v["tenon"], away=-18)
    drawing.dimension((left + thick, 0), (left + thick, width), "width", v["width"], away=-18)
