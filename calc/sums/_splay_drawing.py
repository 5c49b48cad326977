"""The drawing of splay: the inner face of one side, and beside it the same side cut through."""

import math

from calc.declare import Values
from calc.drawing.figure import Figure


def figure(v: Values) -> Figure:
    """One side seen square to its face, on the left; on the right its section, inside to the left."""
    drawing = Figure(
        "Splayed side",
        "The inner face of one side, wider at the top, with its cut off square; and the side cut through, leaning out.",
    )
    _face(drawing, v)
    _section(drawing, v, float(v["size"] + v["top_size"]) / 2 + 0.5 * float(v["top_size"] + v["slant"]))
    return drawing


def _face(drawing: Figure, v: Values) -> None:
    size, slant, over = float(v["size"]), float(v["slant"]), float(v["top_size"] - v["size"]) / 2
    corners = [(0, 0), (size, 0), (size + over, slant), (-over, slant)]
    drawing.outline(corners)
    drawing.grain(corners)
    drawing.dimension((0, 0), (size, 0), "size", v["size"], away=-22)
    drawing.dimension((-over, slant), (size + over, slant), "top_size", v["top_size"])
    drawing.dimension((-over, 0), (-over, slant), "slant", v["slant"])
    drawing.line((size + over, 0), (size + over, slant), "thin")
    drawing.angle(
        (size + over, slant), 270 - float(v["face_cut"]), 270, "face_cut", v["face_cut"], reach=30, beside=True
    )


def _section(drawing: Figure, v: Values, left: float) -> None:
    wall, spread, height = float(v["wall"]), float(v["spread"]), float(v["height"])
    corners = [(left, 0), (left + wall, 0), (left + wall + spread, height), (left + spread, height)]
    drawing.outline(corners)
    drawing.hatch(corners, 135)
    top = left + wall + spread
    drawing.line((top, 0), (top, height), "thin")
    drawing.angle((top, height), 270 - float(v["lean"]), 270, "lean", v["lean"], reach=30, beside=True)
    drawing.dimension((left, 0), (left, height), "height", v["height"])
    lean, thick = math.radians(v["lean"]), float(v["thickness"])
    square = (left + spread + thick * math.cos(lean), height - thick * math.sin(lean))
    drawing.dimension((left + spread, height), square, "thickness", v["thickness"], away=14)
