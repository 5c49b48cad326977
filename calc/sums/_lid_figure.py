"""The drawing of lid: its section from the back at the left to the overhang, to scale, on the box it covers."""

from calc.declare import Values
from calc.drawing.figure import Figure
from calc.sums._lid import corners


def figure(v: Values) -> Figure:
    """Back, lid and the front of the box; the upper face measured above, the under face below."""
    drawing = Figure(
        "Section through the lid",
        "The back stands at the left, the lid slopes down from it to the right and hangs over the front of the box.",
    )
    spots = corners(v)
    thick, deep = float(v["thickness"]), float(v["depth"])
    low = spots[3][1] - 0.4 * deep
    back = [(-thick, low), (0.0, low), (0.0, spots[1][1] + thick), (-thick, spots[1][1] + thick)]
    drawing.outline(back)
    drawing.grain(back, 90)
    top = spots[3][1] * deep / spots[3][0]
    drawing.line((0, low), (deep, low), "thin")
    drawing.line((deep, low), (deep, top))
    drawing.outline(spots)
    drawing.hatch(spots)
    drawing.dimension(spots[1], spots[2], "thickness", v["upper"], away=18)
    drawing.dimension(spots[0], spots[3], "angle", v["under"], away=-18)
    drawing.dimension((0, low), (deep, low), "depth", v["depth"], away=-14)
    if v["front"]:
        drawing.dimension((deep, low), (spots[3][0], low), "front", v["front"], away=-14, along=30)
    drawing.dimension(spots[2], spots[3], "thickness", v["thickness"], away=16)
    if v["angle"]:
        drawing.line(spots[0], (0.8 * deep, 0), "hidden")
        drawing.angle(spots[0], -v["angle"], 0, "angle", v["angle"], reach=90)
    return drawing
