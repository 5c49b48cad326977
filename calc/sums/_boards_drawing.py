"""The boards as they lie in the stack, face up, all to one scale."""

from typing import Any

from calc.declare import Values
from calc.drawing.figure import Figure

MOST = 3
APART = 60.0
"""Pixels between one board and the next, where its sizes stand."""
WORDS = 130.0
"""Pixels the words under a board take; the width of a shorter board stands clear of them."""


def figure(v: Values) -> Figure:
    """One board of each of the first few rows, with its length, its width and how many there are of it."""
    rows = v["rows"][:MOST]
    drawing = Figure(
        "Boards", f"{len(rows)} of the boards seen on the face, to one scale, with length and width.", tall=300
    )
    scale = _scale(rows)
    apart = APART / scale
    foot = 0.0
    for row in rows:
        long, wide = float(row["length"]), float(row["width"])
        face = [(0.0, foot - wide), (long, foot - wide), (long, foot), (0.0, foot)]
        drawing.outline(face)
        drawing.grain(face)
        drawing.dimension(
            (long, foot - wide), (0.0, foot - wide), "boards", row["length"], away=16, label=f"{row['count']} off,"
        )
        drawing.dimension(
            (long, foot - wide), (long, foot), "boards", row["width"], away=-16 - max(0.0, WORDS - long * scale) / 2
        )
        foot -= wide + apart
    if len(v["rows"]) > MOST:
        drawing.note((0, foot + apart), f"and {len(v['rows']) - MOST} more", "start", dy=-48)
    return drawing


def _scale(rows: list[dict[str, Any]]) -> float:
    """About how many pixels a millimetre comes to."""
    longest, across = max(float(row["length"]) for row in rows), sum(float(row["width"]) for row in rows)
    return min(270 / longest, (280 - APART * len(rows)) / across)
