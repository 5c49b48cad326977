"""The drawing of groove: one side of the frame cut through, the panel in it, broken off."""

from calc.declare import Values
from calc.drawing.figure import Figure


def figure(v: Values) -> Figure:
    """The frame at the left with its groove, the panel from the right as it is cut; widest and narrowest marked."""
    depth, thick = float(v["depth"]), float(v["frame"] or 2.4 * v["depth"])
    low, high = thick / 3, 2 * thick / 3
    back, broken = -max(2.4 * depth, 0.8 * thick), max(2.6 * depth, thick)
    drawing = Figure(
        "Panel in its groove",
        "One side of a frame in section, with a groove in which the edge of a panel stands clear of the bottom.",
    )
    notch = [(-depth, low), (-depth, high)]
    drawing.outline([(back, 0), (0, 0), (0, low), *notch, (0, high), (0, thick), (back, thick)])
    drawing.hatch([(back, 0), (-depth, 0), (-depth, thick), (back, thick)])
    drawing.hatch([(-depth, 0), (0, 0), (0, low), (-depth, low)])
    drawing.hatch([(-depth, high), (0, high), (0, thick), (-depth, thick)])
    _panel(drawing, v, (low, high), broken)
    drawing.dimension((-depth, 0), (0, 0), "depth", v["depth"], away=-20)
    drawing.dimension((0, 0), (broken, 0), "opening", v["opening"], away=-20)
    drawing.dimension((-depth, thick), (float(v["gap"]) - depth, thick), "gap", v["gap"], away=16)
    drawing.dimension((float(v["gap"]) - depth, thick), (broken, thick), "panel", v["panel"], away=44)
    return drawing


def _panel(drawing: Figure, v: Values, levels: tuple[float, float], broken: float) -> None:
    (low, high), depth = levels, float(v["depth"])
    edge, torn = float(v["gap"]) - depth, broken / 24
    middle = (low + high) / 2
    front = [(broken, low), (broken + torn, (low + middle) / 2), (broken - torn, (middle + high) / 2), (broken, high)]
    board = [(edge, low), *front, (edge, high)]
    drawing.outline(board)
    drawing.hatch([(edge, low), (broken - torn, low), (broken - torn, high), (edge, high)], 135)
    drawing.line((float(v["spare"]) / 2 - depth, low), (float(v["spare"]) / 2 - depth, high), "hidden")
    drawing.line((-float(v["hold"]), low), (-float(v["hold"]), high), "hidden")
