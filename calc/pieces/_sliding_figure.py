"""The drawing of a sliding-lid box: cut along its length, and beneath it cut across."""

from calc.declare import Values
from calc.drawing.figure import Figure
from calc.pieces._two_views import Place, box, plain, sheet

WIDE, TALL, BETWEEN = 340.0, 620.0, 92.0


def figure(v: Values) -> Figure:
    """Both sections to scale; a touch on a size finds its entry."""
    drawing = Figure(
        "Sliding-lid box",
        "Above, a section along the box: the back at the left with its groove, the lid running in it and out over the "
        "lower front, the bottom let into rabbets. Below, a section across it: both sides with their grooves, the "
        "lid's tongues in them, its raised field between their lips.",
        WIDE,
        TALL,
    )
    _along(drawing, v)
    low = sheet([(0, 0), (v["outside_long"], v["side_high"])], (v["outside_wide"], v["side_high"]), TALL, BETWEEN)
    _across(drawing, v, low.at)
    drawing.note(low.at(v["outside_wide"] / 2, 0), f"Across, {low.said}", dy=-64)
    return drawing


def _along(drawing: Figure, v: Values) -> None:
    long, high, wall, r = v["outside_long"], v["side_high"], v["wall_thickness"], v["rabbet"]
    low, floor, front = v["bottom_thickness"], v["front_high"], v["front_high"]
    roof, deep = floor + v["groove"], v["groove_deep"]
    drawing.outline(box(plain, 0, 0, long, high))
    back = [(0, 0), (wall - r, 0), (wall - r, low), (wall, low), (wall, floor), (wall - deep, floor),
            (wall - deep, roof), (wall, roof), (wall, high), (0, high)]  # fmt: skip
    drawing.outline(back)
    drawing.hatch(box(plain, 0, low, wall, floor))
    drawing.outline([(long, 0), (long - wall + r, 0), (long - wall + r, low), (long - wall, low), (long - wall, front),
                     (long, front)])  # fmt: skip
    drawing.hatch(box(plain, long - wall, low, long, front))
    gap = (long - v["bottom_long"]) / 2
    bottom = box(plain, gap, 0, long - gap, low)
    drawing.outline(bottom)
    drawing.grain(bottom)
    end, begin, top = long + v["overhang"], long + v["overhang"] - v["lid_long"], floor + v["lid_thickness"]
    step = floor + v["lid_tongue"]
    start = begin + v["lid_rabbet"]
    drawing.outline([(begin, floor), (end, floor), (end, top), (start, top), (start, step), (begin, step)])
    drawing.grain(box(plain, start, floor, end, top))
    notch = end - v["notch_in"]
    drawing.line((notch, top), (notch, top - v["notch_deep"]), "accent")
    drawing.line((notch, top - v["notch_deep"]), (notch + v["notch_in"] / 2, top), "accent")
    drawing.dimension((begin, top), (end, top), "lid_long", v["lid_long"], away=14)
    drawing.dimension((wall, 0), (long - wall, 0), "length", v["inside_long"], away=-14)
    drawing.dimension((0, 0), (long, 0), "outside_long", long, away=-38)
    drawing.dimension((0, 0), (0, high), "side_high", high, away=14)
    drawing.dimension((end, 0), (end, front), "front_high", front, away=-14)


def _across(drawing: Figure, v: Values, at: Place) -> None:
    wide, high, wall, r = v["outside_wide"], v["side_high"], v["wall_thickness"], v["rabbet"]
    low, floor, deep = v["bottom_thickness"], v["front_high"], v["groove_deep"]
    roof = floor + v["groove"]
    side = [(0, 0), (wall - r, 0), (wall - r, low), (wall, low), (wall, floor), (wall - deep, floor),
            (wall - deep, roof), (wall, roof), (wall, high), (0, high)]  # fmt: skip
    for turned in (side, [(wide - x, y) for x, y in side]):
        drawing.outline([at(x, y) for x, y in turned])
    for left in (0, wide - wall):
        drawing.hatch(box(at, left, low, left + wall, floor))
    gap = (wide - v["bottom_across"]) / 2
    bottom = box(at, gap, 0, wide - gap, low)
    drawing.outline(bottom)
    drawing.hatch(bottom)
    edge, top, step = (wide - v["lid_wide"]) / 2, floor + v["lid_thickness"], floor + v["lid_tongue"]
    inner = edge + v["lid_rabbet"]
    lid = [(edge, floor), (wide - edge, floor), (wide - edge, step), (wide - inner, step), (wide - inner, top),
           (inner, top), (inner, step), (edge, step)]  # fmt: skip
    drawing.outline([at(x, y) for x, y in lid])
    drawing.hatch(box(at, inner, floor, wide - inner, top))
    drawing.dimension(at(edge, high), at(wide - edge, high), "lid_wide", v["lid_wide"], away=14)
    drawing.dimension(at(wall, 0), at(wide - wall, 0), "width", v["inside_wide"], away=-14)
    drawing.dimension(at(0, 0), at(wide, 0), "outside_wide", wide, away=-38)
    drawing.dimension(at(0, low), at(0, floor), "height", v["inside_high"], away=14)
    drawing.dimension(at(wide, floor), at(wide, roof), "groove", v["groove"], away=-14, along=-22)
