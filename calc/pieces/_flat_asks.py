"""What a flat-lid box asks for: six entries from the bench, and what is taken for the rest unless it is given."""

from dataclasses import replace

from calc.kinds import Given, Limit
from calc.pieces._asks import length, theirs, thick
from calc.pieces._box_asks import LAST, LONG, MEASURED, RABBET, STOCK

GIVENS: tuple[Given, ...] = (
    length("width", "Width", "From side to side.", limit=LONG),
    length("depth", "Depth", "From front to back.", limit=LONG),
    length("height", "Height", "Inside to the lid's under face, outside to its upper face.", limit=LONG),
    MEASURED,
    *STOCK,
    thick("wall_thickness", "Thickness of the walls", "If they are not of the same stock."),
    thick("bottom_thickness", "Thickness of the bottom", "If it is not of the same stock."),
    thick("lid_thickness", "Thickness of the lid", "If it is not of the same stock."),
    thick("batten_thickness", "Thickness of the battens", "If they are not of the same stock."),
    length(
        "batten_width", "Width of the battens", "The two under the lid.", "30 mm",
        "common practice: near twice their thickness", limit=Limit("10 mm", "150 mm"),
    ),
    replace(RABBET, limit=Limit("1 mm", "50 mm")),
    length(
        "edge_overhang", "Overhang at front and back", "Of the lid past the walls.", "6 mm",
        "common practice: a finger's hold, even all round",
    ),
    length(
        "end_overhang", "Overhang at each end", "Of the lid past the sides.", "6 mm",
        "common practice: a finger's hold, even all round",
    ),
    length(
        "clearance", "Clearance at the battens' ends", "From the front and from the back.", "2 mm",
        "common practice: the lid drops on without looking", limit=Limit("0.5 mm", "20 mm"),
    ),
    length(
        "side_clearance", "Clearance beside the battens", "From each side.", "2 mm",
        "common practice: the lid drops on without looking", limit=Limit("0.5 mm", "20 mm"),
    ),
    theirs("screw", "number", name="screw", default="6", default_why="common practice: stout enough for a small lid"),
    *LAST,
)  # fmt: skip
