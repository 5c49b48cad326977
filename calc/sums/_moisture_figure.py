"""The moisture wood comes to at one temperature, drawn against the humidity of the air."""

from itertools import pairwise

from calc import show
from calc.declare import Values
from calc.drawing.figure import Figure
from calc.sums._emc import DAMPEST, DRIEST, moisture

TALL = 2.6
"""How many times taller a percent of moisture is drawn than a percent of humidity."""
STEP = 5
ASIDE = 14.0
"""Room left of the upright axis for its figure, in percents of humidity."""


def figure(v: Values) -> Figure:
    """The curve at this temperature, with the humidity and the moisture content that belong together marked on it."""
    warm = show.plain(v["temperature"], 1)
    told = (
        f"A curve at {warm} °C: moisture content of wood upwards, relative humidity to the right; a point marked on it."
    )
    drawing = Figure("Moisture of wood and air", told)
    top = max(20.0, 5 * (moisture(v["temperature"], DAMPEST) // 5 + 1))
    _point(drawing, float(v["humidity"]), float(v["emc"]))
    _axes(drawing, top)
    spots = [(air, TALL * moisture(v["temperature"], air)) for air in range(DRIEST, DAMPEST + 1, STEP)]
    for start, end in pairwise(spots):
        drawing.line(start, end, "accent")
    drawing.note((50, TALL * top), f"wood at {warm} °C", dy=8, name="temperature")
    return drawing


def _axes(drawing: Figure, top: float) -> None:
    """The two axes with a figure at every fifth or twenty-fifth percent."""
    drawing.line((0, 0), (100, 0))
    drawing.line((0, 0), (0, TALL * top))
    for level in range(5, int(top) + 1, 5):
        drawing.line((0, TALL * level), (100, TALL * level), "thin")
        drawing.note((0, TALL * level), f"{level}%", "start", dx=4, dy=9)
    for air in (25, 50, 75):
        drawing.note((air, 0), f"{air}%", dy=-10)
    drawing.note((50, 0), "humidity of the air", dy=-42)


def _point(drawing: Figure, air: float, wet: float) -> None:
    """Down from the point to the humidity, across to the moisture content."""
    at = (air, TALL * wet)
    drawing.points.append((-ASIDE, at[1]))
    drawing.line(at, (air, 0), "hidden")
    drawing.line(at, (0, at[1]), "hidden")
    drawing.note((air, 0), f"{show.plain(air, 1)}%", dy=-26, name="humidity")
    drawing.note((0, at[1]), f"{show.plain(wet, 1)}%", "end", dx=-6, name="emc")
