"""The drawing of a flat-lid box: the section from back to front, and beneath it the front."""

from calc.declare import Values
from calc.drawing.figure import Figure
from calc.pieces._two_views import Place, box, plain, sheet

WIDE, TALL, BETWEEN = 340.0, 620.0, 92.0


def figure(v: Values) -> Figure:
    """Section above, front below, both to scale; a touch on a size finds its entry."""
    drawing = Figure(
        "Flat-lid box",
        "Above, a section from back to front: back and front with rabbets along their lower edges, the bottom lying in "
        "them, the lid on top with its overhang, a batten under it inside the box. Below, the front: the lid's "
        "overhang at both ends, the sides behind the front's ends, the battens dashed.",
        WIDE,
        TALL,
    )
    _section(drawing, v)
    low = sheet([(-v["edge_overhang"], 0), (v["lid_wide"], v["outside_high"])], (v["lid_long"], v["outside_high"]),
                TALL, BETWEEN)  # fmt: skip
    _front(drawing, v, low.at)
    drawing.note(low.at(v["lid_long"] / 2, 0), f"The front, {low.said}", dy=-64)
    return drawing


def _section(drawing: Figure, v: Values) -> None:
    deep, high, wall = v["outside_deep"], v["front_high"], v["wall_thickness"]
    over, low, tongue = (v["lid_wide"] - deep) / 2, v["bottom_thickness"], v["tongue"]
    drawing.outline(box(plain, wall, low, deep - wall, high))
    gap = (deep - v["bottom_across"]) / 2
    back = [(0, 0), (tongue, 0), (tongue, low), (wall, low), (wall, high), (0, high)]
    batten = box(plain, v["batten_down"] - over, high - v["batten_thickness"], deep + over - v["batten_down"], high)
    drawing.outline(batten)
    drawing.grain(batten)
    for shape in (back, [(deep - x, y) for x, y in back]):
        drawing.outline(shape)
    for upper in (box(plain, 0, low, wall, high), box(plain, deep - wall, low, deep, high)):
        drawing.hatch(upper)
    for shape in (box(plain, gap, 0, deep - gap, low), box(plain, -over, high, deep + over, v["outside_high"])):
        drawing.outline(shape)
        drawing.hatch(shape)
    drawing.dimension((-over, v["outside_high"]), (deep + over, v["outside_high"]), "lid_wide", v["lid_wide"], away=14)
    drawing.dimension((wall, 0), (deep - wall, 0), "depth", v["inside_deep"], away=-14)
    drawing.dimension((tongue, 0), (deep - tongue, 0), "side_long", v["side_long"], away=-38)
    drawing.dimension((0, 0), (0, high), "front_high", high, away=14)
    drawing.dimension((deep, low), (deep, high), "height", v["inside_high"], away=-14)
    drawing.dimension((deep + over, high), (deep + over, v["outside_high"]), "lid_thickness", v["lid_thickness"],
                      away=-16, along=24)  # fmt: skip


def _front(drawing: Figure, v: Values, at: Place) -> None:
    long, wide, high, wall = v["lid_long"], v["outside_wide"], v["front_high"], v["wall_thickness"]
    over = (long - wide) / 2
    for shape in (box(at, over, 0, over + wide, high), box(at, 0, high, long, v["outside_high"])):
        drawing.outline(shape)
        drawing.grain(shape)
    for x in (over + wall, over + wide - wall):
        drawing.line(at(x, 0), at(x, high), "hidden")
    for x in (v["batten_in"], long - v["batten_in"] - v["batten_width"]):
        drawing.outline(box(at, x, high - v["batten_thickness"], x + v["batten_width"], high), "hidden")
    drawing.dimension(at(0, v["outside_high"]), at(long, v["outside_high"]), "lid_long", long, away=14)
    drawing.dimension(at(over + wall, 0), at(over + wide - wall, 0), "width", v["inside_wide"], away=-14)
    drawing.dimension(at(over, 0), at(over + wide, 0), "outside_wide", wide, away=-38)
