"""The drawing of spacing: the opening between its ends, the items in it, and the first gap."""

from calc.declare import Values
from calc.drawing.figure import Figure

HIGH = 0.16
"""How high items are drawn, as a share of the opening."""
MANY = 40
"""Items up to which each is drawn in its width; of more, the centre lines alone."""


def figure(v: Values) -> Figure:
    """The items from the left, where the marks run from."""
    drawing = Figure("Equal spaces", f"An opening with {v['count']} equal items in it, equally spaced, seen square on.")
    long, high = float(v["opening"]), HIGH * float(v["opening"])
    _ends(drawing, long, high)
    for row in v["marks"][:-1]:
        _item(drawing, float(row["centre"] - v["start"]), float(v["width"]) * (v["count"] <= MANY), high)
    drawing.dimension((0, 0), (long, 0), "opening", v["opening"], away=-44)
    _sizes(drawing, v, high)
    return drawing


def _ends(drawing: Figure, long: float, high: float) -> None:
    """The wood at both ends of the opening, and the edge between."""
    post = high / 4
    for left in (-post, long):
        shape = [(left, -post), (left + post, -post), (left + post, high + post), (left, high + post)]
        drawing.outline(shape)
        drawing.hatch(shape)
    drawing.line((0, 0), (long, 0), "thin")
    drawing.line((0, high), (long, high), "thin")


def _item(drawing: Figure, centre: float, width: float, high: float) -> None:
    if width > 0:
        left, right = centre - width / 2, centre + width / 2
        drawing.outline([(left, 0), (right, 0), (right, high), (left, high)])
    drawing.line((centre, -high / 8), (centre, high * 1.125), "thin")


def _sizes(drawing: Figure, v: Values, high: float) -> None:
    """The first gap between items below, the pitch above it; a single item's end gap; the width of the last item."""
    first, width, gap = float(v["marks"][0]["centre"] - v["start"]), float(v["width"]), float(v["gap"])
    if v["count"] > 1:
        drawing.dimension((first + width / 2, 0), (first + width / 2 + gap, 0), "gap", v["gap"], away=-18)
        if width:
            drawing.dimension((first, high), (first + width + gap, high), "pitch", v["pitch"])
    else:
        drawing.dimension((0, 0), (first - width / 2, 0), "gap", v["end_gap"], away=-18)
    if width:
        last = float(v["marks"][-2]["near"] - v["start"])
        drawing.dimension((last, high), (last + width, high), "width", v["width"], away=44 if v["count"] == 2 else 22)
