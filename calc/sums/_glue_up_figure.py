"""The panel on its clamps, seen from above: strips side by side, clamps across them."""

from calc.declare import Values
from calc.drawing.figure import Figure


def figure(v: Values) -> Figure:
    """The panel face up with its joints; clamps above it drawn through, those below it dashed."""
    long, wide = float(v["panel_length"]), float(v["rough"])
    drawing = Figure("Panel in its clamps", _words(v))
    face = [(0, 0), (long, 0), (long, wide), (0, wide)]
    drawing.outline(face)
    drawing.grain(face)
    for joint in range(v["joints"]):
        at = float(v["outer"] + joint * v["each"])
        drawing.line((0, at), (long, at))
    over = max(wide / 8, long / 40)
    for row in v["marks"] or ():
        at = float(row["mark"])
        drawing.line((at, -over), (at, wide + over), "accent" if row["side"] == "above" else "hidden")
    _sizes(drawing, v, (long, wide), over if v["marks"] else 0.0)
    return drawing


def _words(v: Values) -> str:
    if not v["joints"]:
        return "One board that is wide enough by itself, seen on the face."
    held = f"{v['clamps']} clamps across them, every other one below"
    return f"A panel of {v['strips']} strips seen on the face, {held}."


def _sizes(drawing: Figure, v: Values, size: tuple[float, float], over: float) -> None:
    long, wide = size
    drawing.dimension((0, -over), (long, -over), "panel_length", v["panel_length"], away=-22)
    drawing.dimension((0, 0), (0, wide), "rough", v["rough"], away=46)
    if not v["joints"]:
        return
    drawing.dimension((0, wide - float(v["outer"])), (0, wide), "outer", v["outer"], away=20)
    first, second = (float(row["mark"]) for row in v["marks"][:2])
    drawing.dimension((first, wide + over), (second, wide + over), "spacing", v["spacing"], away=20)
