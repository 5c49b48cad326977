"""The drawing of a splayed tray: the section across it, and beneath it a long side from the front."""

import math

from calc.declare import Values
from calc.drawing.figure import Figure
from calc.pieces._two_views import Sheet, Spot, sheet

WIDE, TALL, BETWEEN = 340.0, 470.0, 78.0


def figure(v: Values) -> Figure:
    """Section above, front below, both to scale; a touch on a size finds its entry."""
    drawing = Figure(
        "Splayed tray",
        "Above, a section across the tray: the two long sides leaning out, cut through; the bottom let in between "
        "them, its edges planed to the lean; behind it an end, with its hand hole. Below, the front: a long side, "
        "wider at the top.",
        WIDE,
        TALL,
    )
    sides = [_side(v, way) for way in (-1, 1)]
    _section(drawing, v, sides)
    _sizes(drawing, v, sides[1])
    spots = [spot for side in sides for spot in side]
    lower = sheet(spots, (v["outside_long"], v["height"]), TALL, BETWEEN)
    _front(drawing, v, lower)
    return drawing


def _inner(v: Values, level: float) -> float:
    """Half the inside width at a level."""
    return float(v["foot_wide"]) / 2 + level * math.tan(math.radians(float(v["lean"])))


def _side(v: Values, way: int) -> list[Spot]:
    """A long side cut through: inner arrises low and high, then outer high and low."""
    wall, low, high = (
        float(v["side_thickness"]) / math.cos(math.radians(float(v["lean"]))),
        float(v["low"]),
        float(v["height"]),
    )
    inner = [(_inner(v, level), level) for level in (low, high)]
    outer = [(_inner(v, level) + wall, level) for level in (high - low, 0.0)]
    return [(way * x, z) for x, z in (*inner, *outer)]


def _section(drawing: Figure, v: Values, sides: list[list[Spot]]) -> None:
    low, high, floor = float(v["low"]), float(v["height"]), float(v["floor_up"])
    under = floor - float(v["bottom_thickness"])
    end = [(way * _inner(v, level), level) for level, way in ((low, -1), (low, 1), (high, 1), (high, -1))]
    drawing.outline(end)
    drawing.grain(end)
    for cut in (*sides, [(way * _inner(v, z), z) for z, way in ((under, -1), (under, 1), (floor, 1), (floor, -1))]):
        drawing.outline(cut)
        drawing.hatch(cut)
    if v["handles"] == "holes":
        drawing.outline(hand(v), "accent")


def hand(v: Values) -> list[Spot]:
    """The hand hole as the eye before it sees it: its height shortened by the lean."""
    short = math.cos(math.radians(float(v["lean"])))
    radius, half = float(v["hand_wide"]) / 2, float(v["hand_long"] - v["hand_wide"]) / 2
    middle = float(v["height"]) - float(v["hand_middle"]) * short
    turns = [math.radians(90 - 12 * n) for n in range(16)]
    right = [(half + radius * math.cos(t), middle + radius * short * math.sin(t)) for t in turns]
    return [*right, *((-x, 2 * middle - z) for x, z in right)]


def _sizes(drawing: Figure, v: Values, side: list[Spot]) -> None:
    high, floor = float(v["height"]), float(v["floor_up"])
    inner, outer, foot = side[1], side[2], side[3]
    far = -outer[0]
    drawing.line((far, 0), (-foot[0], 0), "thin")
    drawing.dimension((far, 0), (far, high), "height", v["height"], away=16)
    drawing.dimension((-_inner(v, floor), 0), (_inner(v, floor), 0), "wide", v["wide"], away=-16)
    drawing.dimension((-inner[0], high), (inner[0], high), "top_wide", v["top_wide"], away=14)
    drawing.dimension((far, high), (outer[0], high), "outside_wide", v["outside_wide"], away=38)
    drawing.line(foot, (foot[0], high / 2), "thin")
    drawing.angle(foot, 90 - float(v["lean"]), 90, "lean", v["lean"], reach=34, beside=False)


def _front(drawing: Figure, v: Values, lower: Sheet) -> None:
    at, top, level = lower.at, float(v["outside_long"]), float(v["height"] - v["low"])
    fall = level * math.tan(math.radians(float(v["lean"])))
    face = [at(fall, 0), at(top - fall, 0), at(top, level), at(0, level)]
    drawing.outline(face)
    drawing.grain(face)
    wall = float(v["side_thickness"]) / math.cos(math.radians(float(v["lean"])))
    inside = [
        float(v["outside_long"] - v["long"]) / 2,
        float(v["outside_long"] + v["long"]) / 2,
    ]
    floor = float(v["floor_up"])
    drawing.line(at(inside[0], floor), at(inside[1], floor), "hidden")
    for left, run in ((fall + wall, -fall), (top - fall - wall, fall)):
        drawing.line(at(left, 0), at(left + run, level), "hidden")
    drawing.dimension(at(inside[0], 0), at(inside[1], 0), "long", v["long"], away=-14)
    drawing.dimension(at(0, level), at(top, level), "outside_long", v["outside_long"], away=14)
    drawing.note(at(top / 2, 0), f"A long side, {lower.said}", dy=-48)
