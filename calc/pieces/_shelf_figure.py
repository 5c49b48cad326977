"""The drawing of a wall shelf: the section from wall to front, and beneath it the front at a part of that scale."""

import math

from calc.declare import Values
from calc.drawing.figure import Figure
from calc.pieces._shelf_solids import curve
from calc.pieces._two_views import Sheet, Spot, box, plain, sheet

WIDE, TALL, BETWEEN = 340.0, 560.0, 96.0


def figure(v: Values) -> Figure:
    """Section above, front below, both to scale; a touch on a size finds its entry."""
    drawing = Figure(
        "Wall shelf",
        "Above, a section from the wall at the left to the front: an end with its two front corners rounded, the shelf "
        "housed in it, and the rail under the shelf at the wall. Below, the front: the shelf between its two ends, and "
        "the rail behind with its screws.",
        WIDE,
        TALL,
    )
    end = profile(v)
    _section(drawing, v, end)
    _sizes(drawing, v)
    lower = sheet(end, (v["outside"], v["end_high"]), TALL, BETWEEN)
    _front(drawing, v, lower)
    _front_sizes(drawing, v, lower)
    return drawing


def profile(v: Values) -> list[Spot]:
    """The outline of an end, from the wall at its foot round to the wall at its top."""
    low, up = curve(v, "curve_low"), curve(v, "curve_up")
    deep, high = float(v["depth"]), float(v["end_high"])
    front = [(deep - back, along) for back, along in low] + [(deep - back, high - along) for back, along in up[::-1]]
    return [(0.0, 0.0), *front, (0.0, high)]


def _section(drawing: Figure, v: Values, end: list[Spot]) -> None:
    drawing.outline(end)
    drawing.grain(end, 90)
    shelf = box(plain, 0, v["drop"], v["depth"], v["drop"] + v["shelf_thickness"])
    rail = box(plain, 0, v["rail_up"], v["rail_thickness"], v["drop"])
    for cut in (shelf, rail):
        drawing.outline(cut)
        drawing.hatch(cut)
    over = float(v["end_high"]) / 12
    drawing.line((0, -over), (0, float(v["end_high"]) + over), "thin")
    drawing.line((0, v["screw_up"]), (v["rail_thickness"], v["screw_up"]), "accent")


def _sizes(drawing: Figure, v: Values) -> None:
    shelf, high, deep = v["drop"] + v["shelf_thickness"], v["end_high"], v["depth"]
    drawing.dimension((0, 0), (0, v["drop"]), "drop", v["drop"], away=16)
    drawing.dimension((0, shelf), (0, high), "rise", v["rise"], away=16)
    drawing.dimension((0, 0), (0, high), "end_high", v["end_high"], away=40)
    drawing.dimension((deep, v["drop"]), (deep, shelf), "shelf_thickness", v["shelf_thickness"], away=-16)
    drawing.dimension((0, 0), (v["foot_deep"], 0), "foot_deep", v["foot_deep"], away=-18)
    drawing.dimension((0, 0), (deep, 0), "depth", v["depth"], away=-42)
    if v["curve_up"]:
        turn = math.asin(float(v["curve_up"] / v["radius"])) / 2
        radius, reach = float(v["radius"]), float(min(v["radius"], deep / 2))
        at = float(deep) - radius, float(high - v["curve_up"])
        touch, inner = ((at[0] + r * math.cos(turn), at[1] + r * math.sin(turn)) for r in (radius, radius - reach))
        drawing.dimension(inner, touch, "radius", v["radius"], away=0, label="radius")


def _front(drawing: Figure, v: Values, lower: Sheet) -> None:
    at, thick, wide = lower.at, v["end_thickness"], v["outside"]
    rail = box(at, thick, v["rail_up"], wide - thick, v["drop"])
    drawing.outline(rail)
    drawing.grain(rail)
    for left in (0, wide - thick):
        board = box(at, left, 0, left + thick, v["end_high"])
        drawing.outline(board)
        drawing.grain(board, 90)
    top = v["drop"] + v["shelf_thickness"]
    shelf = box(at, thick - v["housing_deep"], v["drop"], wide - thick + v["housing_deep"], top)
    drawing.outline(shelf)
    drawing.grain(shelf)
    for number in range(v["screws"]):
        across = thick + v["screw_in"] + number * v["screw_gap"]
        drawing.arc(
            at(across, v["screw_up"]), max(2 * lower.pixel, float(v["head"]) / 2 / lower.part), 0, 360, "accent"
        )


def _front_sizes(drawing: Figure, v: Values, lower: Sheet) -> None:
    at, thick, wide = lower.at, v["end_thickness"], v["outside"]
    drawing.dimension(at(0, v["rail_up"]), at(0, v["drop"]), "rail_wide", v["rail_wide"], away=18)
    drawing.dimension(at(thick, 0), at(wide - thick, 0), "inside_width", v["inside_width"], away=-14)
    drawing.dimension(at(0, 0), at(wide, 0), "outside", v["outside"], away=-38)
    drawing.note(at(wide / 2, 0), f"The front, {lower.said}", dy=-66)
