"""The screw in its two holes, cut through, to scale."""

from calc import show
from calc.declare import Values
from calc.drawing.figure import Figure

THREADS = 9
"""Teeth that the thread is drawn with, whatever its pitch."""


def figure(v: Values) -> Figure:
    """The piece held above with its clearance hole, the second below with its pilot; the screw in both."""
    drawing = Figure(
        "Screw in its holes", "A section: a countersunk screw goes through the upper piece into the lower."
    )
    held, into, half = float(v["held"]), float(v["into"]), float(v["diameter"]) / 2
    below = into + max(float(v["margin"]), 0.25 * into) if v["left"] is None else into + float(v["left"])
    below, wide = min(below, 1.5 * into), max(0.45 * (held + into), 6 * half)
    for foot, top in ((-below, 0.0), (0.0, held)):
        piece = [(-wide, foot), (wide, foot), (wide, top), (-wide, top)]
        drawing.outline(piece)
        drawing.grain(piece)
    clear, pilot = float(v["clear_size"]) / 2, float(v["soft_size"]) / 2
    for way in (-1, 1):
        drawing.line((way * clear, 0), (way * clear, held - half), "hidden")
        drawing.line((way * pilot, 0), (way * pilot, -into), "hidden")
    drawing.outline(_profile(v, held, half), "accent")
    _sizes(drawing, v, (held, into, wide), below)
    return drawing


def _profile(v: Values, held: float, half: float) -> list[tuple[float, float]]:
    """Head, plain part and thread down to the point, the right side; then the same up the left."""
    long, root = float(v["length"]), float(v["root"]) / 2
    start, step = long - float(v["thread"]), float(v["thread"]) / (THREADS + 1)
    sunk = min(half, start)
    side = [(2 * half, held), (half, held - sunk), (half, held - start)]
    for tooth in range(THREADS):
        down = held - start - tooth * step
        side += [(root, down - step * 0.5), (half if tooth < THREADS - 1 else root, down - step)]
    return [*side, (0.0, held - long), *((-x, y) for x, y in reversed(side))]


def _sizes(drawing: Figure, v: Values, size: tuple[float, float, float], below: float) -> None:
    held, into, wide = size
    drawing.dimension((wide, 0), (wide, held), "held", v["held"], away=-22)
    drawing.dimension((wide, -into), (wide, 0), "", v["into"], away=-22)
    drawing.dimension((-wide, -into), (-wide, held), "", v["length"], away=22)
    named = f"No. {v['number']}, " if v["number"] is not None else ""
    drawing.note((0, -below), f"{named}{show.plain(v['diameter'], 2)} mm thick", dy=-20, name="number")
