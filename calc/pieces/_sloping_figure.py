"""The drawing of a sloping-lid box: the section through it, and beneath it the front at half that scale."""

import math
from collections.abc import Sequence

from calc.declare import Values
from calc.drawing.figure import Figure
from calc.pieces._sloping_section import Place, Spot, on_lid, section

WIDE, TALL = 340.0, 620.0
HALF = 0.5
BETWEEN = 106.0
"""Pixels between section and front, for the dimensions of both."""


def figure(v: Values) -> Figure:
    """Section above, front below, both to scale; a touch on a size finds its entry."""
    drawing = Figure(
        "Sloping-lid box",
        "Above, a section from back to front: the back at the left, rising above the lid and hanging below; a side "
        "with its sloping top; the bottom; the front with its bevelled top edge, standing proud of the side; the lid "
        "in two parts, a fixed strip bevelled against the back and a moving lid with a batten under it. Below, the "
        "front at half that scale, with the slot in the lid.",
        WIDE,
        TALL,
    )
    shapes = section(v)
    spots = [spot for shape in shapes.values() for spot in shape]
    _cut(drawing, v, shapes)
    _sizes(drawing, v)
    _lid_sizes(drawing, v, on_lid(v), _pixel(v, spots))
    _front(drawing, v, _placed(v, spots))
    return drawing


def _cut(drawing: Figure, v: Values, shapes: dict[str, list[Spot]]) -> None:
    for name in ("side", "batten", "back"):
        drawing.outline(shapes[name])
        drawing.grain(shapes[name], 90 if name != "batten" else -float(v["angle"]))
    for name in ("bottom", "front", "strip", "moving"):
        drawing.outline(shapes[name])
        drawing.hatch(shapes[name])
    drawing.line((v["depth"], 0), (v["depth"], v["front_height"]), "hidden")
    at, start = on_lid(v), float(v["strip"] + v["kerf"])
    drawing.arc(at(start - float(v["kerf"]) / 2, 0), v["gain"], 0, 360, "accent")
    for way in (-1, 1):
        down = start + float(v["slot_down"]) + way * float(v["slot_width"]) / 2
        drawing.line(at(down, 0), at(down, float(v["lid_thickness"])), "accent")


def _sizes(drawing: Figure, v: Values) -> None:
    depth, face, back, low = v["depth"], v["depth"] + v["proud"], -v["back_thickness"], -v["tail"]
    crown, top = v["back_high"] - v["tail"] - v["crest"], v["back_high"] - v["tail"]
    drawing.dimension((back, 0), (back, v["back_height"]), "back_height", away=16)
    if v["tail"]:
        drawing.dimension((back, low), (back, 0), "tail", away=16)
    if v["crest"]:
        drawing.dimension((back, crown), (back, top), "crest", away=16)
    drawing.dimension((back, low), (0, low), "stock_thickness", v["back_thickness"], away=-12)
    drawing.dimension((depth, low), (face, low), "rabbet", v["proud"], away=-12, label="proud", along=24)
    drawing.dimension((0, low), (depth, low), "depth", away=-36)
    drawing.dimension((depth, 0), (depth, v["front_height"]), "front_height", away=34)


def _lid_sizes(drawing: Figure, v: Values, at: Place, pixel: float) -> None:
    strip, begins, ends = float(v["strip"]), float(v["strip"] + v["kerf"]), float(v["lid_long"])
    thick, face = float(v["lid_thickness"]), float(v["depth"] + v["proud"])
    toe = at(ends, thick)
    drawing.dimension(at(begins, 0), at(ends, 0), "moving", v["moving"], away=14)
    drawing.dimension(at(0, 0), at(strip, 0), "strip", v["strip"], away=36, along=max(0, 28 - strip / pixel / 2))
    drawing.dimension(at(0, 0), at(ends, 0), "lid_long", v["lid_long"], away=60)
    drawing.dimension(toe, at(ends, 0), "lid_thickness", v["lid_thickness"], away=-14, along=24)
    if v["front_overhang"]:
        away = -10 if v["angle"] < 30 else -58
        drawing.dimension((face, toe[1]), toe, "front_overhang", v["front_overhang"], away=away, along=24)
    drawing.line(toe, (toe[0] + 50 * pixel, toe[1]), "thin")
    on = at(ends + 50 * pixel, thick)
    drawing.line(toe, on, "thin")
    drawing.angle(toe, -v["angle"], 0, "angle", v["angle"], reach=46)


def _pixel(v: Values, spots: Sequence[Spot]) -> float:
    """Millimetres to the pixel, near enough to leave room between section and front."""
    xs, ys = [x for x, _ in spots], [y for _, y in spots]
    wide, high = max(xs) - min(xs), max(ys) - min(ys) + HALF * float(v["back_high"])
    return max(max(wide, HALF * float(v["lid_wide"])) / 230, high / (TALL - 2 * BETWEEN))


def _placed(v: Values, spots: Sequence[Spot]) -> Place:
    """Where a point of the front falls on the paper: at half scale, in the middle beneath the section."""
    xs, ys = [x for x, _ in spots], [y for _, y in spots]
    left = (min(xs) + max(xs) - HALF * float(v["outside"])) / 2
    low = min(ys) - BETWEEN * _pixel(v, spots) - HALF * float(v["back_high"] - v["tail"])
    return lambda x, y: (left + HALF * x, low + HALF * y)


def _front(drawing: Figure, v: Values, at: Place) -> None:
    wide, over, inside = float(v["outside"]), float(v["side_overhang"]), float(v["side_thickness"])
    low, top = -float(v["tail"]), float(v["back_high"] - v["tail"])
    board = _box(at, 0, low, wide, top)
    drawing.outline(board)
    drawing.grain(board, 90)
    front = _box(at, 0, 0, wide, float(v["front_outer"]))
    drawing.outline(front)
    drawing.grain(front)
    for side in (inside, wide - inside):
        drawing.line(at(side, 0), at(side, float(v["front_outer"])), "hidden")
    _lid(drawing, v, at)
    drawing.dimension(at(inside, low), at(wide - inside, low), "inside_width", v["inside_width"], away=-14)
    drawing.dimension(at(0, low), at(wide, low), "outside", v["outside"], away=-38)
    drawing.dimension(at(-over, top), at(wide + over, top), "lid_wide", v["lid_wide"], away=14)
    drawing.note(at(wide / 2, low), "The front, at half the scale", dy=-66)


def _lid(drawing: Figure, v: Values, at: Place) -> None:
    """The lid as the eye before it sees it: its front edge, and the upper face going up behind."""
    turn, over = math.radians(float(v["angle"])), float(v["side_overhang"])
    crown, wide = float(v["back_high"] - v["tail"] - v["crest"]), float(v["outside"])
    seen = [crown - float(down) * math.sin(turn) for down in (v["strip"], v["strip"] + v["kerf"], v["lid_long"])]
    toe = seen[2] - float(v["lid_thickness"]) * math.cos(turn)
    face = _box(at, -over, toe, wide + over, crown)
    drawing.outline(face)
    drawing.grain(face)
    for level in seen:
        drawing.line(at(-over, level), at(wide + over, level))
    middle = seen[1] - float(v["slot_down"]) * math.sin(turn)
    half = float(v["slot_width"]) / 2 * math.sin(turn)
    begins = float(v["slot_begins"]) - over
    drawing.outline(_box(at, begins, middle - half, begins + float(v["slot_length"]), middle + half), "accent")
    if over:
        drawing.dimension(at(wide, toe), at(wide + over, toe), "side_overhang", v["side_overhang"], away=-8, along=28)


def _box(at: Place, left: float, low: float, right: float, high: float) -> list[Spot]:
    return [at(left, low), at(right, low), at(right, high), at(left, high)]
