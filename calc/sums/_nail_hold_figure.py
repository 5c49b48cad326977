"""A nail in the wood that holds it, cut through, with the pull on its head."""

from calc import show
from calc.declare import Values
from calc.drawing.figure import Figure


def figure(v: Values) -> Figure:
    """The second piece with the nail in it to scale; the piece held drawn as a ghost."""
    deep, half = float(v["into"]), float(v["thick"]) / 2
    drawing = Figure(
        "Nail drawn out", "A section: a nail stands in the wood that holds it, and is pulled straight out."
    )
    wide, held = max(0.5 * deep, 8 * half), 0.4 * deep
    foot = -1.35 * deep
    piece = [(-wide, foot), (wide, foot), (wide, 0), (-wide, 0)]
    drawing.outline(piece)
    drawing.grain(piece)
    drawing.outline([(-wide, 0), (wide, 0), (wide, held), (-wide, held)], "ghost")
    tip = min(3 * half, deep / 3)
    drawing.outline([(-half, held), (half, held), (half, tip - deep), (0, -deep), (-half, tip - deep)], "accent")
    drawing.line((-2.2 * half, held), (2.2 * half, held), "accent")
    _pull(drawing, held, deep)
    drawing.dimension((wide, -deep), (wide, 0), "into", v["into"], away=-24)
    drawing.note((0, foot), f"{show.plain(v['thick'], 2)} mm thick", dy=-20, name="own")
    return drawing


def _pull(drawing: Figure, held: float, deep: float) -> None:
    """An arrow up from the head."""
    low, top, barb = held + 0.08 * deep, held + 0.45 * deep, 0.07 * deep
    drawing.line((0, low), (0, top), "accent")
    drawing.line((0, top), (-barb, top - barb), "accent")
    drawing.line((0, top), (barb, top - barb), "accent")
