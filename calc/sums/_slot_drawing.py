"""The slot from above with its holes, and below it what goes in, both to one scale."""

from calc.declare import Values
from calc.drawing.figure import Figure
from calc.drawing.ink import arc_points

ACROSS, HIGH, SIDE = 270.0, 100.0, 44.0
"""Pixels: how wide the lid is drawn, how high lid and thing together, and what the slot's width needs beside it."""


def figure(v: Values) -> Figure:
    """The slot in the lid, or in a piece of it, the holes bored in it, and the folded thing beneath."""
    drawing = Figure(
        "Slot from above",
        "A long narrow slot with round ends, started by a row of holes; beneath it the thing that goes in.",
    )
    wide = float(v["slot_width"])
    pixel = max(_wide_pixel(v), (wide + _tall(v)) / HIGH)
    border = max(26 * pixel, wide / 2)
    left, right = _lid_ends(v, pixel)
    lid = [(left, -border), (right, -border), (right, wide + border), (left, wide + border)]
    drawing.outline(lid)
    drawing.grain(lid)
    _slot(drawing, v)
    _sizes(drawing, v, (left, right), border / pixel, pixel)
    _battens(drawing, v, (-border, wide + border))
    _item(drawing, v, -border - 20 * pixel)
    return drawing


def _whole(v: Values) -> bool:
    """True where the whole lid is drawn: its length is known, and the slot would not be lost in it."""
    return v["begins"] is not None and v["lid"] is not None and v["lid"] <= 5 * v["slot_length"]


def _wide_pixel(v: Values) -> float:
    """Millimetres a pixel comes to, as the width allows."""
    return float(v["lid"]) / ACROSS if _whole(v) else float(v["slot_length"]) / (ACROSS - 2 * SIDE)


def _lid_ends(v: Values, pixel: float) -> tuple[float, float]:
    """Both ends of the lid, or of a piece of it, from the near end of the slot."""
    if _whole(v):
        return -float(v["begins"]), float(v["lid"] - v["begins"])
    return -SIDE * pixel, float(v["slot_length"]) + SIDE * pixel


def _tall(v: Values) -> float:
    """How tall the folded thing is drawn, in millimetres: whole, or its leading part."""
    return min(float(v["deep"]), 0.5 * float(v["side"]))


def _slot(drawing: Figure, v: Values) -> None:
    long, r = float(v["slot_length"]), float(v["slot_width"]) / 2
    drawing.outline([*arc_points((r, r), r, 90, 270), *arc_points((long - r, r), r, -90, 90)], "accent")
    for at in range(v["holes"]):
        drawing.arc((r + at * float(v["pitch"]), r), r, 0, 360, "thin")
    gap, half = (long - float(v["side"])) / 2, float(v["thick"]) / 2
    drawing.outline([(gap, r - half), (long - gap, r - half), (long - gap, r + half), (gap, r + half)], "ghost")


def _sizes(drawing: Figure, v: Values, lid: tuple[float, float], border: float, pixel: float) -> None:
    """Length, width and where the slot begins; `border` is in pixels."""
    long, wide = float(v["slot_length"]), float(v["slot_width"])
    drawing.dimension((0, wide), (long, wide), "", v["slot_length"], away=border + 18)
    beside = (lid[1] - long) / pixel
    drawing.dimension((long, 0), (long, wide), "", v["slot_width"], away=-18 if beside > 40 else -18 - beside)
    if _whole(v) and v["begins"]:
        drawing.dimension((lid[0], wide), (0, wide), "start", v["begins"], away=border + 42)


def _battens(drawing: Figure, v: Values, across: tuple[float, float]) -> None:
    """The battens' near faces, hidden under the lid."""
    for name in ("clear_from", "clear_to"):
        if _whole(v) and v[name] is not None and v[name] <= v["lid"]:
            x = float(v[name] - v["begins"])
            drawing.line((x, across[0]), (x, across[1]), "hidden")


def _item(drawing: Figure, v: Values, head: float) -> None:
    """The face of the folded thing, its far end left off when it is tall."""
    side, gap, foot = float(v["side"]), (float(v["slot_length"]) - float(v["side"])) / 2, head - _tall(v)
    drawing.outline([(gap, foot), (gap + side, foot), (gap + side, head), (gap, head)], "ghost")
    layers = f"{v['layers']} layers," if v["layers"] > 1 else "one layer,"
    drawing.dimension((gap + side, foot), (gap, foot), "what", v["side"], away=20, label=layers)
