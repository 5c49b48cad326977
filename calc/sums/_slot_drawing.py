"""The slot from above with its holes, and below it what goes in, both to one scale."""

from calc.declare import Values
from calc.figure import Figure
from calc.ink import arc_points


def figure(v: Values) -> Figure:
    """The slot in its piece of lid, the holes bored in it, and the leading edge of what is posted, drawn beneath."""
    drawing = Figure(
        "Slot from above",
        "A long narrow slot with round ends, started by a row of holes; beneath it the folded thing, edge on.",
    )
    long, wide = float(v["slot_length"]), float(v["slot_width"])
    border = max(0.09 * long, wide)
    lid = [(-border, -border), (long + border, -border), (long + border, wide + border), (-border, wide + border)]
    drawing.outline(lid)
    drawing.grain(lid)
    _slot(drawing, v, long, wide)
    drawing.dimension((0, wide), (long, wide), "", v["slot_length"], away=border_px(border, long) + 18)
    drawing.dimension((long, 0), (long, wide), "", v["slot_width"], away=-(border_px(border, long) + 18))
    _item(drawing, v, long, -border)
    return drawing


def border_px(border: float, long: float) -> float:
    """How many pixels the border takes in a drawing about 300 pixels wide."""
    return 270 * border / (long + 2 * border)


def _slot(drawing: Figure, v: Values, long: float, wide: float) -> None:
    r = wide / 2
    left, right = arc_points((r, r), r, 90, 270), arc_points((long - r, r), r, -90, 90)
    drawing.outline([*left, *right], "accent")
    for row in v["centres"]:
        x = float(row["mark"] - (v["begins"] or 0))
        drawing.arc((x, r), r, 0, 360, "thin")
    thick, gap = float(v["thick"]), (long - float(v["side"])) / 2
    low, high = r - thick / 2, r + thick / 2
    drawing.outline([(gap, low), (long - gap, low), (long - gap, high), (gap, high)], "ghost")


def _item(drawing: Figure, v: Values, long: float, top: float) -> None:
    """The face of the folded thing, its far end left off when it is tall."""
    side, deep = float(v["side"]), float(v["deep"])
    gap = (long - side) / 2
    head = top - 0.12 * long
    foot = head - min(deep, 0.5 * side)
    drawing.outline([(gap, foot), (long - gap, foot), (long - gap, head), (gap, head)], "ghost")
    drawing.dimension((gap, foot), (long - gap, foot), "what", v["side"], away=-20)
    drawing.note(
        (long / 2, (head + foot) / 2), f"{v['layers']} layers" if v["layers"] > 1 else "one layer", name="halved"
    )
