"""The drawing of batten: the lid from beneath with its batten, and beside its length a section, to one scale."""

from calc.declare import Values
from calc.drawing.figure import Figure


def figure(v: Values) -> Figure:
    """The lid's under face cut short at its sides; the batten across it with its nails; the edge of both below."""
    drawing = Figure(
        "Batten across a lid",
        "Above, the lid from beneath, hinge end at the left: a batten lies across its grain, with its nails, those in "
        "oval holes lengthened. Below, lid and batten from the side, to the same scale.",
        tall=330,
    )
    _plan(drawing, v)
    _side(drawing, v)
    return drawing


def _high(v: Values) -> float:
    """How much of the lid is drawn along its grain."""
    return max(2.2 * float(v["batten_width"]), float(v["width"]) / 3)


def _plan(drawing: Figure, v: Values) -> None:
    wide, high, near, long = float(v["width"]), _high(v), float(v["near"]), float(v["long"])
    face = [(0.0, 0.0), (wide, 0.0), (wide, high), (0.0, high)]
    drawing.outline(face)
    drawing.grain(face, 90)
    half = float(v["batten_width"]) / 2
    low, top = high / 2 - half, high / 2 + half
    batten = [(near, low), (near + long, low), (near + long, top), (near, top)]
    drawing.outline(batten)
    drawing.grain(batten)
    for row in v["holes"]:
        _hole(drawing, near + float(row["mark"]), high / 2, float(v["shank"] or 2), float(row["oval"] or 0))
    if v["front"] is not None:
        drawing.line((v["front"], 0), (v["front"], high), "hidden")
    drawing.dimension((0, high), (wide, high), "width", v["width"], away=36)
    drawing.dimension((near, high), (near + long, high), "near", v["long"], away=12)
    drawing.dimension((near + long, low), (near + long, top), "batten_width", v["batten_width"], away=-40)


def _hole(drawing: Figure, x: float, y: float, wide: float, long: float) -> None:
    """A round hole, or two half rounds with straight sides."""
    apart = max(0.0, long - wide) / 2
    drawing.arc((x - apart, y), wide / 2, 90, 270, "accent")
    drawing.arc((x + apart, y), wide / 2, -90, 90, "accent")
    for side in (-1, 1):
        drawing.line((x - apart, y + side * wide / 2), (x + apart, y + side * wide / 2), "accent")


def _side(drawing: Figure, v: Values) -> None:
    wide, near, long = float(v["width"]), float(v["near"]), float(v["long"])
    thick, own = float(v["thickness"]), float(v["batten_thickness"])
    top = -0.18 * wide
    for left, right, high, low in ((0.0, wide, top, top - thick), (near, near + long, top - thick, top - thick - own)):
        piece = [(left, low), (right, low), (right, high), (left, high)]
        drawing.outline(piece)
        (drawing.hatch if left == 0 and right == wide and high == top else drawing.grain)(piece)
    if v["nail_length"] is not None:
        for row in v["holes"]:
            x, head = near + float(row["mark"]), top - thick - own
            drawing.line((x, head), (x, head + float(v["nail_length"])), "accent")
    drawing.dimension((wide, top), (wide, top - thick), "thickness", v["thickness"], away=14)
    first = near + float(v["holes"][0]["mark"])
    low = top - thick - own
    drawing.dimension((near, low), (near, top - thick), "batten_thickness", v["batten_thickness"], away=16)
    drawing.dimension((near, low), (first, low), "end", v["end"], away=-38)
    drawing.dimension((0, low), (near, low), "near", v["near"], away=-14)
    drawing.dimension((first, low), (first + float(v["spacing"]), low), "count", v["spacing"], away=-62)
