"""What a sliding-lid box asks for: six entries from the bench, and what is taken for the rest unless it is given."""

from calc.kinds import Given, Limit
from calc.pieces._asks import length, thick
from calc.pieces._box_asks import LAST, LONG, MEASURED, RABBET, STOCK

GIVENS: tuple[Given, ...] = (
    length("length", "Length", "The way the lid slides, from back to front.", limit=LONG),
    length("width", "Width", "From side to side.", limit=LONG),
    length("height", "Height", "Inside to the lid's under face, outside to the top of the sides.", limit=LONG),
    MEASURED,
    *STOCK,
    thick("wall_thickness", "Thickness of the walls", "If they are not of the same stock."),
    thick("bottom_thickness", "Thickness of the bottom", "If it is not of the same stock."),
    thick("lid_thickness", "Thickness of the lid", "If it is not of the same stock."),
    RABBET,
    length(
        "groove", "Width of the grooves", "The plough's iron.", "6 mm", "common practice: the quarter-inch iron",
        limit=Limit("1.5 mm", "25 mm"),
    ),
    length(
        "groove_deep", "Depth of the grooves", "In both sides and the back.",
        why="as deep as the rabbets, so that nothing shows at the ends", optional=True, limit=Limit("1 mm", "40 mm"),
    ),
    length(
        "play", "Play of the tongue", "How much thinner than its groove the lid's edge is.", "0.5 mm",
        "common practice: it runs freely and does not rattle", limit=Limit("0 mm", "3 mm"),
    ),
    length(
        "spare", "Room left at the dampest", "Across the lid, both grooves together.", "0.5 mm",
        "common practice: dust, and a board that moves more than its kind", limit=Limit("0 mm", "4 mm"),
    ),
    length(
        "end_clearance", "Clearance at the back", "From the lid's end to the bottom of its groove.", "1 mm",
        "common practice: the lid comes flush before it strikes", limit=Limit("0 mm", "4 mm"),
    ),
    length(
        "clearance", "Clearance of the raised field", "How much wider than its groove is deep the lid's edge is cut.",
        "0.5 mm", "common practice: the field never rubs", limit=Limit("0 mm", "10 mm"),
    ),
    length(
        "overhang", "Lid past the front", "How far it stands out.", "0 mm", "common practice: flush",
        limit=Limit("0 mm", "25 mm"),
    ),
    length(
        "sunk", "Lid below the top of the sides", "How far its upper face lies down.", "0 mm",
        "common practice: flush", limit=Limit("0 mm", "25 mm"),
    ),
    length(
        "notch_wide", "Width of the thumb notch", "Across the lid, near its front end.", "20 mm",
        "common practice: the width of a thumb", limit=Limit("5 mm", "60 mm"),
    ),
    length(
        "notch_in", "Thumb notch in from the front", "From the lid's front end to the stop cut.", "25 mm",
        "common practice: a thumb's first joint", limit=Limit("5 mm", "100 mm"),
    ),
    *LAST,
)  # fmt: skip
