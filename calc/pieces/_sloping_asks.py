"""What a sloping-lid box asks for: six entries from the bench, and what is taken for the rest unless it is given."""

from calc.kinds import Angle, Count, Given, Limit
from calc.pieces._asks import COMMON, JOINT, THICK, length, theirs, thick
from calc.pieces._weight import WEIGHS

BENCH = (
    length(
        "stock_width", "Width of the stock", "Measured across the board, edges trued.", limit=Limit("20 mm", "600 mm")
    ),
    length("stock_thickness", "Thickness of the stock", "Measured, planed as you will use it.", limit=THICK),
    length("inside_width", "Inside width", "Between the two sides.", limit=Limit("40 mm", "1.2 m")),
    length("depth", "Depth of the sides", "From back edge to front edge, level.", limit=Limit("40 mm", "800 mm")),
    length(
        "back_height",
        "Height of the back edge",
        "Of the sides, where they meet the back.",
        limit=Limit("20 mm", "1.2 m"),
    ),
    length(
        "front_height",
        "Height of the front edge",
        "Of the sides, where they meet the front.",
        limit=Limit("15 mm", "1.2 m"),
    ),
    Angle(
        name="angle",
        label="Slope of the lid",
        help="Instead of one of the heights: in degrees, or as rise in run like 3 in 8.",
        limit=Limit("1", "60"),
    ),
)
PARTS = (
    thick("side_thickness", "Thickness of the sides", "If they are not of the same stock."),
    thick("front_thickness", "Thickness of the front", "If it is not of the same stock."),
    thick("lid_thickness", "Thickness of the lid", "If it is not of the same stock."),
    thick("back_thickness", "Thickness of the back", "If it is not of the same stock."),
    thick("bottom_thickness", "Thickness of the bottom", "If it is not of the same stock."),
    thick("batten_thickness", "Thickness of the battens", "If they are not of the same stock."),
    length(
        "batten_width", "Width of the battens", "The two that keep the moving lid flat.", "30 mm",
        "common practice: near twice their thickness", limit=Limit("10 mm", "150 mm"),
    ),
    length(
        "rabbet", "Depth of the front's rabbet", "How deep the sides go into the front at its ends.",
        why="half the front's thickness", optional=True, limit=Limit("1 mm", "50 mm"),
    ),
    length(
        "front_overhang", "Overhang at the front", "Of the lid's under face past the front, level.", "12 mm",
        "common practice: a finger's hold",
    ),
    length(
        "side_overhang", "Overhang at each side", "Of the lid past the outside of the box.", "6 mm",
        "common practice: room to clean off the ends",
    ),
    length(
        "crest", "Back rises above the lid", "Above the lid's upper face, where lid meets back.", "40 mm",
        "common practice: room for a screw to the wall, wood all round it", limit=Limit("0 mm", "500 mm"),
    ),
    length(
        "tail", "Back hangs below", "Below the bottom of the sides.", "40 mm",
        "common practice: as above the lid", limit=Limit("0 mm", "500 mm"),
    ),
)  # fmt: skip
FITS = (
    length(
        "allowance", "Fitting allowance of the bottom", "How much smaller than its place, each way, in all.", "1 mm",
        "common practice: it drops in without force", limit=Limit("0 mm", "10 mm"),
    ),
    length(
        "clearance", "Clearance of the battens", "From the sides, from the strip, and past the front as the lid opens.",
        "3 mm", "common practice: free in damp weather too", limit=Limit("0.5 mm", "20 mm"),
    ),
    JOINT,
    theirs("hinge-strip", "leaf", default="14 mm", default_why="a small butt, 28 mm open; measure yours"),
    theirs("hinge-strip", "knuckle", default="5 mm", default_why="a small butt; measure yours"),
    theirs("hinge-strip", "kerf"),
)  # fmt: skip
HINGES = (
    theirs("hinge", "count", name="hinges"),
    theirs("hinge", "size", name="hinge_size", optional=True,
           default_why="a fifth of the inside width, 40 mm at most; measure yours"),
    theirs("hinge", "plate", name="hinge_plate"),
    theirs("hinge", "number", name="hinge_screw", optional=False, default="4",
           default_why="common practice: fits a small butt; see its countersinks"),
    Count(name="hinge_holes", label="Screw holes in a leaf", help="In each leaf of a hinge.", default="3",
          default_why="a small butt; count yours", limit=Limit("1", "8")),
)  # fmt: skip
BUYS = (
    theirs("slot", "what", name="note", default="index-card-3-x-5-in", default_why="a card that fits the hand"),
    theirs("slot", "length", name="note_length"),
    theirs("slot", "width", name="note_width"),
    theirs("slot", "halved", default="1", default_why="folded once, end to end"),
    theirs("slot", "narrowed"),
    *COMMON,
    *WEIGHS,
)  # fmt: skip
GIVENS: tuple[Given, ...] = (*BENCH, *PARTS, *FITS, *HINGES, *BUYS)
