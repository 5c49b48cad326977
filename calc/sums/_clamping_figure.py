"""The joint from the side: clamps above, and their pressure fanning out at 45° to the glue."""

from calc.declare import Values
from calc.drawing.figure import Figure

MANY = 24
"""Clamps up to which each one's fan is drawn."""


def figure(v: Values) -> Figure:
    """The wood over the glue with its clamps; as much again below."""
    drawing = Figure("Joint in its clamps", f"A glued joint from the side, {_count(v)} pressing on it from above.")
    long, deep = float(v["length"]), float(v["through"])
    for foot, top in ((-deep, 0.0), (0.0, deep)):
        piece = [(0, foot), (long, foot), (long, top), (0, top)]
        drawing.outline(piece)
        drawing.grain(piece)
    drawing.line((0, 0), (long, 0), "accent")
    tall = max(0.25 * deep, 0.04 * long)
    for row in v["marks"]:
        _clamp(drawing, float(row["mark"]), (long, deep), tall, len(v["marks"]) <= MANY)
    _sizes(drawing, v, (long, deep), tall)
    return drawing


def _count(v: Values) -> str:
    return f"{v['clamps']} clamp{'s' if v['clamps'] > 1 else ''}"


def _clamp(drawing: Figure, at: float, size: tuple[float, float], tall: float, fanned: bool) -> None:
    """An arrow pressing down, and the fan under it as far as the glue or the ends of the wood."""
    long, deep = size
    drawing.line((at, deep), (at, deep + tall), "accent")
    for side in (-1, 1):
        drawing.line((at, deep), (at + side * tall / 4, deep + tall / 3), "accent")
        end = min(max(at + side * deep, 0.0), long)
        if fanned:
            drawing.line((at, deep), (end, deep - abs(end - at)), "hidden")


def _sizes(drawing: Figure, v: Values, size: tuple[float, float], tall: float) -> None:
    long, deep = size
    drawing.dimension((0, -deep), (long, -deep), "length", v["length"], away=-22)
    drawing.dimension((long, 0), (long, deep), "through", v["through"], away=-22)
    first = float(v["first"])
    drawing.dimension((0, deep + tall), (first, deep + tall), "first", v["first"], away=46)
    if v["clamps"] > 1:
        there = first + float(v["spacing"])
        drawing.dimension((first, deep + tall), (there, deep + tall), "spacing", v["spacing"], away=20)
