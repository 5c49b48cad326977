"""The drawing of arc: the curve on its span, its centre where there is room for it, and the thing that traces it."""

import math

from calc.declare import Values
from calc.drawing.figure import Figure

ENOUGH = 24
"""Steps from an end to the crown that look smooth."""
NEAR = 1.2
"""Spans from the crown within which the centre is drawn."""


def figure(v: Values) -> Figure:
    """The piece under the curve, with its span, its rise and its radius; a traced curve is dotted."""
    span, rise, radius = (float(v[name]) for name in ("span", "rise", "radius"))
    desc = "A curve rises from both ends of a level span to its crown in the middle."
    drawing = Figure("Arc", desc, tall=300)
    curve = _curve(span, rise, radius)
    drawing.outline([*curve, (-span / 2, 0), (span / 2, 0)])
    drawing.grain(curve)
    for side in (-1, 1):
        drawing.line((side * span / 2, 0), (side * span / 2, rise), "witness")
        drawing.line((0, rise), (side * span / 2, rise), "hidden")
    drawing.dimension((-span / 2, rise), (span / 2, rise), "span", v["span"])
    drawing.dimension((span / 2, 0), (span / 2, rise), "rise", v["rise"], away=-22)
    _centre(drawing, v, span, rise, radius)
    if v["nearest"] is not None:
        drawing.curve(_curve(span, float(v["nearest_rise"]), float(v["nearest_diameter"]) / 2), "accent")
    return drawing


def _curve(span: float, rise: float, radius: float) -> list[tuple[float, float]]:
    """Points from the right end over the crown to the left, as many for a flat curve as for a round one."""
    half = 2 * math.atan(2 * rise / span)
    turns = [half * (at / ENOUGH - 1) for at in range(2 * ENOUGH + 1)]
    return [(-radius * math.sin(turn), rise - 2 * radius * math.sin(turn / 2) ** 2) for turn in turns]


def _centre(drawing: Figure, v: Values, span: float, rise: float, radius: float) -> None:
    """Both radii and the angle between them; of a flat curve the direction of its centre only."""
    foot = (0.0, rise - radius)
    if radius > NEAR * span:
        drawing.line((0, rise), (0, -span / 2), "hidden")
        drawing.dimension((0, -0.1 * span), (0, -span / 2), "radius", v["radius"], away=12, label="radius")
        return
    turn = math.degrees(2 * math.atan(2 * rise / span))
    drawing.line(foot, (span / 2, 0), "thin")
    drawing.dimension(foot, (-span / 2, 0), "radius", v["radius"], away=14)
    drawing.angle(foot, 90 - turn, 90 + turn, "", v["angle"], reach=22)
