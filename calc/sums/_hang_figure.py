"""The drawing of hang: a thing on its wall from the side, its forces as arrows to one scale."""

from typing import Any

from calc.bench import Bench
from calc.declare import Values
from calc.drawing.figure import Figure
from calc.typed.scales import SCALES

METRIC = Bench(unit="mm", mark="mm")


def figure(v: Values) -> Figure:
    """The wall hatched at the left, the thing beside it; pull at the top, weight down, the push back at the bottom."""
    drawing = Figure(
        "Hung on a wall",
        "A section. The thing stands out to the right of the wall, held by its top fixings; arrows show its weight, "
        "the pull on the top fixings and the push of its bottom edge on the wall.",
    )
    out, lever = float(v["projection"]), float(v["lever"])
    high, deep = 1.15 * lever, 0.12 * max(out, lever)
    wall = [(-deep, -0.15 * lever), (0, -0.15 * lever), (0, 1.3 * lever), (-deep, 1.3 * lever)]
    drawing.outline(wall, "thin")
    drawing.hatch(wall)
    drawing.outline([(0, 0), (out, 0), (out, high), (0, high)])
    _forces(drawing, v, 0.45 * max(out, lever))
    drawing.dimension((0, 0), (out, 0), "projection", v["projection"], away=-40)
    drawing.dimension((0, 0), (float(v["centre"]), 0), "centre", v["centre"], away=-16)
    drawing.dimension((-deep, 0), (-deep, lever), "lever", v["lever"], away=30)
    return drawing


def _forces(drawing: Figure, v: Values, longest: float) -> None:
    """Arrows as long as their forces, the greatest as long as there is room for."""
    greatest = max(float(v[name]) for name in ("weight", "pull_all", "pull"))
    size = {name: longest * float(v[name]) / greatest for name in ("weight", "pull_all", "pull")}
    lever, centre, head = float(v["lever"]), float(v["centre"]), longest / 14
    _arrow(drawing, (0, lever), (size["pull_all"], lever), head)
    _told(drawing, (0, 1.15 * lever), "pull_all", v["pull_all"], "start", 4, 10)
    _arrow(drawing, (size["pull_all"], 0), (0, 0), head)
    middle = 0.55 * lever
    _arrow(drawing, (centre, middle), (centre, middle - size["weight"]), head)
    _told(drawing, (centre, middle), "mass", v["weight"], "middle", 0, 10)
    if v["pull"]:
        top = 1.15 * lever + size["pull"]
        _arrow(drawing, (float(v["reach"]), top), (float(v["reach"]), 1.15 * lever), head)
        _told(drawing, (float(v["reach"]), top), "pull", v["pull"], "middle", 0, 10)
    if v["lower"]:
        drawing.line((-head, v["lower_height"]), (head, v["lower_height"]), "accent")


def _told(drawing: Figure, at: Any, name: str, force: Any, anchor: str, dx: float, dy: float = 0) -> None:
    drawing.note(at, SCALES["force"].shown(force, METRIC).text, anchor, dx, dy, name)


def _arrow(drawing: Figure, start: tuple[float, float], end: tuple[float, float], head: float) -> None:
    """A line with a head at its end, level or plumb."""
    drawing.line(start, end, "accent")
    level = start[1] == end[1]
    way = 1 if (end[0] - start[0] if level else end[1] - start[1]) < 0 else -1
    for side in (-1, 1):
        tip = (way * head, side * head / 2) if level else (side * head / 2, way * head)
        drawing.line(end, (end[0] + tip[0], end[1] + tip[1]), "accent")
