"""The board with its row of nails, seen on the face: the part kept clear of nails shaded at its ends and side."""

from calc.declare import Values
from calc.drawing.figure import Figure

SHOWN = 0.3
"""How much of the board's other way is drawn, as a share of the line."""


def figure(v: Values) -> Figure:
    """The row from the left, where the marks run from; the least distances as broken lines."""
    way = "along" if v["run"] == "along" else "across"
    drawing = Figure("Line of nails", f"A board seen on the face, with a row of {v['nails']} nails {way} its grain.")
    long, beside = float(v["line"]), float(v["beside"])
    deep = max(SHOWN * long, 2.2 * beside, 1.6 * float(v["beside_least"]))
    face = [(0, -deep), (long, -deep), (long, 0), (0, 0)]
    drawing.outline(face)
    drawing.grain(face, 0 if v["run"] == "along" else 90)
    _least(drawing, v, long, deep)
    for row in v["marks"]:
        _head(drawing, float(row["mark"]), -beside, float(v["thick"]))
    _sizes(drawing, v, long, deep)
    return drawing


def _least(drawing: Figure, v: Values, long: float, deep: float) -> None:
    """Nearer to ends and side than this the wood is likely to split."""
    end, side = float(v["end_least"]), float(v["beside_least"])
    if 2 * end < long:
        drawing.line((end, 0), (end, -deep), "hidden")
        drawing.line((long - end, 0), (long - end, -deep), "hidden")
    drawing.line((0, -side), (long, -side), "hidden")


def _head(drawing: Figure, x: float, y: float, thick: float) -> None:
    """A nail's head, twice as wide as its shank."""
    drawing.arc((x, y), thick, 0, 360, "accent")
    drawing.arc((x, y), thick / 2, 0, 360, "accent")


def _sizes(drawing: Figure, v: Values, long: float, deep: float) -> None:
    """The line below, the spacing above, the first nail from its end, the row from its side."""
    drawing.dimension((0, -deep), (long, -deep), "line", v["line"], away=-22)
    first, beside = float(v["marks"][0]["mark"]), float(v["beside"])
    drawing.dimension((0, 0), (first, 0), "from_end", v["marks"][0]["mark"], away=46)
    if v["apart"]:
        drawing.dimension((first, 0), (first + float(v["apart"]), 0), "wanted", v["apart"], away=20)
    drawing.dimension((long, -beside), (long, 0), "row_in", v["beside"], away=-22)
