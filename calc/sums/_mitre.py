"""The working of mitre: a regular frame from one of its sizes, its proof and its drawing."""

import cmath
import math
from fractions import Fraction
from typing import Any

from calc import trig
from calc.declare import Values
from calc.drawing.figure import Figure, Point
from calc.errors import Refusal
from calc.sums._in_both import in_both

GRAIN_UP_TO = 8
"""Sides up to which the drawing has room for the grain of each."""


def work(sides: int, side: Any, across_flats: Any, across_corners: Any, width: Any, kerf: Fraction) -> Values:
    """The outside from whichever size is given, then the inside and the stock where its width is known."""
    cut = Fraction(180, sides)
    if side is None:
        side = across_corners * trig.sin(cut) if across_flats is None else across_flats * trig.tan(cut)
    flats = side / trig.tan(cut) if across_flats is None else across_flats
    corners = side / trig.sin(cut) if across_corners is None else across_corners
    saw = (sides + 1) * kerf / trig.cos(cut)
    return {
        "cut_angle": cut,
        "corner_angle": 180 - 2 * cut,
        "side": side,
        "across_flats": flats,
        "across_corners": corners,
        "corner_to_side": (flats + corners) / 2 if sides % 2 else None,
        "stock_alike": sides * side + saw,
        **_inside(sides, side, flats, width, cut, saw),
    }


def _inside(sides: int, side: Any, flats: Any, width: Any, cut: Fraction, saw: Any) -> Values:
    if width is None:
        return {"short_edge": None, "inside_flats": None, "stock_turned": None}
    if 2 * width >= flats:
        half = in_both(flats / 2)
        raise Refusal("stock this wide meets in the middle and leaves no frame", f"use less than {half}", "width")
    slant = width * trig.tan(cut)
    return {
        "short_edge": side - 2 * slant,
        "inside_flats": flats - 2 * width,
        "stock_turned": sides * (side - slant) + slant + saw,
    }


def proof(v: Values) -> dict[str, float]:
    """Corners on a circle a side apart; angles, Pythagoras and, with a width, similar frames and areas agree."""
    side, flats, corners, n = float(v["side"]), float(v["across_flats"]), float(v["across_corners"]), v["sides"]
    turned = cmath.rect(corners / 2, math.radians(360 / n)) - corners / 2
    found = {
        "neighbouring corners on the outer circle are a side apart": abs(turned) / side - 1,
        "the angles between sides add up to 180° for each side but two": float(
            n * v["corner_angle"] / (180 * (n - 2)) - 1
        ),
        "across corners² is across flats² + side²": (flats**2 + side**2) / corners**2 - 1,
    }
    return found if v["width"] is None else found | _proof_inside(v, side, flats)


def _proof_inside(v: Values, side: float, flats: float) -> dict[str, float]:
    short, inside, n = float(v["short_edge"]), float(v["inside_flats"]), v["sides"]
    saws = (n + 1) * float(v["kerf"]) / math.cos(math.pi / n)
    pieces = n * (side + short) / 2 + (side - short) / 2
    return {
        "the inside is the outside made smaller": (short * flats - side * inside) / (side * flats),
        "pieces, two end corners and saw cuts cover the stock": (pieces + saws) / float(v["stock_turned"]) - 1,
    }


def figure(v: Values) -> Figure:
    """The frame lying with one side along the bottom, its joints, and the cut off square at an upper corner."""
    across, flats, n, cut = v["across_corners"], v["across_flats"], v["sides"], v["cut_angle"]
    drawing = Figure("Mitred frame", f"A regular frame of {n} sides, one along the bottom, mitred at every corner.")
    outer = _corners(n, across / 2)
    inner = _corners(n, across / 2 * (1 - 2 * (v["width"] or 0) / flats))
    for one in range(n):
        _piece(drawing, [outer[one - 1], outer[one], inner[one], inner[one - 1]], one * 360 / n, n, v["width"])
    drawing.dimension(outer[-1], outer[0], "side", v["side"], away=-22)
    drawing.dimension((-across / 2, -flats / 2), (-across / 2, flats / 2), "across_flats", flats)
    drawing.dimension(*_across(n, across), "across_corners", across, away=-48 if n % 2 else 0.1)
    if v["width"] is not None:
        bottom = (across / 2, -flats / 2)
        drawing.dimension(bottom, (across / 2, v["width"] - flats / 2), "width", v["width"], away=-22)
    for size in (flats, across) if n % 2 else ():
        drawing.arc((0, 0), size / 2, 0, 360, "hidden")
    _cut(drawing, outer, float(cut), float(across) / 6)
    return drawing


def _cut(drawing: Figure, outer: list[Point], cut: float, long: float) -> None:
    """The joint drawn on beyond an upper corner, against the line square to the side there."""
    at = math.ceil((135 - cut) / (2 * cut) - 1e-9)
    turn = 270 + cut * (1 + 2 * at)
    for way in (math.radians(turn), math.radians(turn + cut)):
        drawing.line(outer[at], (outer[at][0] + long * math.cos(way), outer[at][1] + long * math.sin(way)), "thin")
    drawing.angle(outer[at], turn, turn + cut, "sides", cut, reach=26)


def _corners(sides: int, radius: Any) -> list[Point]:
    """The corners anticlockwise, the first at the right end of the bottom side, the last at its left end."""
    turns = [math.radians(270 + 180 / sides + 360 * one / sides) for one in range(sides)]
    return [(float(radius) * math.cos(turn), float(radius) * math.sin(turn)) for turn in turns]


def _across(sides: int, across: Any) -> tuple[Point, Point]:
    """Opposite corners, or, where corners have sides opposite, the height of the circle about them."""
    if sides % 2:
        return (across / 2, -across / 2), (across / 2, across / 2)
    corners = _corners(sides, across / 2)
    return corners[sides // 2 - 1], corners[-1]


def _piece(drawing: Figure, shape: list[Point], turn: float, sides: int, width: Any) -> None:
    if width is None:
        drawing.line(shape[0], shape[1])
        return
    drawing.outline(shape)
    if sides <= GRAIN_UP_TO:
        drawing.grain(shape, turn)
