"""The working of dressed: what is left of a size when it is planed, or what to buy for a size wanted; its figure."""

from fractions import Fraction

from calc.declare import Values
from calc.drawing.figure import Figure
from calc.errors import Refusal
from calc.sums._in_both import in_both
from calc.sums._lumber import SAID, Lumber, least, sizes, thicknesses
from calc.units import MM_PER_INCH

SHOWN = 5
"""How many thicknesses wide a board of no settled width is drawn."""


def work(size: str | None, finished: Fraction | None, trade: str) -> Values:
    """The size chosen, or the thinnest whose dressed thickness is enough."""
    found = sizes()[size or ""] if finished is None else _enough(finished, trade)
    (nominal, nominal_width), (thickness, width) = found.called, found.dressed
    return {
        "name": found.name,
        "nominal": nominal,
        "nominal_width": nominal_width,
        "thickness": thickness,
        "width": width,
        "lost": nominal - thickness,
        "left": 100 * thickness / nominal,
        **_section(nominal * (nominal_width or 0), thickness * (width or 0), nominal_width, width),
        "spare": None if finished is None else thickness - finished,
        "system": SAID[found.system],
        "figure_from": found.said,
    }


def _section(called: Fraction, left: Fraction, wide: Fraction | None, kept: Fraction | None) -> Values:
    """What depends on a width: None for hardwood, which comes in any."""
    if wide is None or kept is None:
        return {"lost_width": None, "share": None, "a_foot": None}
    return {"lost_width": wide - kept, "share": 100 * left / called, "a_foot": called / (12 * MM_PER_INCH**2)}


def _enough(finished: Fraction, trade: str) -> Lumber:
    found = least(trade, 1, finished)
    if found is None:
        thickest = thicknesses(trade)[-1].dressed[0]
        raise Refusal(f"the thickest in the table dresses to {in_both(thickest)}", "glue it up of two", "finished")
    return found


def proof(v: Values) -> dict[str, float]:
    """What is lost and what is left make the size called; no thinner size of the list would do."""
    found = {
        "lost and left make the size called": float((v["lost"] + v["thickness"]) / v["nominal"] - 1),
        "planing makes nothing thicker": max(0.0, float(v["thickness"] - v["nominal"])),
    }
    if v["width"] is not None:
        gone = (1 - v["lost"] / v["nominal"]) * (1 - v["lost_width"] / v["nominal_width"])
        found["what is left of the section is what is left both ways"] = float(v["share"] / 100 - gone)
    if v["finished"] is not None:
        thinner = [one.dressed[0] for one in thicknesses(v["trade"]) if one.called[0] < v["nominal"]]
        found["no thinner one would do"] = max(0.0, float(max(thinner, default=Fraction(0)) >= v["finished"]))
        found["it is thick enough"] = max(0.0, -float(v["spare"]))
    return found


def figure(v: Values) -> Figure:
    """The end of the board: as it is called, dashed, and as it is dressed inside that."""
    sawn = v["width"] is not None
    drawing = Figure("Called and dressed", "The end of a board: what it is called, dashed, and what is left of it.")
    tall, thick = float(v["nominal"]), float(v["thickness"])
    wide = float(v["nominal_width"]) if sawn else SHOWN * tall
    kept = float(v["width"]) if sawn else wide
    drawing.outline([(0, 0), (wide, 0), (wide, tall), (0, tall)], "ghost")
    left, foot = (wide - kept) / 2, (tall - thick) / 2
    end = [(left, foot), (left + kept, foot), (left + kept, foot + thick), (left, foot + thick)]
    drawing.outline(end)
    drawing.hatch(end)
    drawing.dimension((wide, foot), (wide, foot + thick), "finished", v["thickness"], away=-22)
    drawing.dimension((0, 0), (0, tall), "size", v["nominal"], away=22)
    if sawn:
        drawing.dimension((left, 0), (left + kept, 0), "size", v["width"], away=-22)
        drawing.dimension((0, tall), (wide, tall), "size", v["nominal_width"], away=22)
    return drawing
