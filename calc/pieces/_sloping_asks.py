"""What a sloping-lid box asks for: six entries from the bench, and what is taken for the rest unless it is given."""

from dataclasses import replace
from typing import Any

from calc import rule
from calc.discover import find
from calc.kinds import Angle, Given, Length, Limit, Number

THICK = Limit("3 mm", "60 mm")
SMALL = Limit("0 mm", "150 mm")
STOCK = "the stock's own thickness"


def _length(name: str, label: str, help: str, default: str = "", why: str = "", **more: Any) -> Length:
    return Length(name=name, label=label, help=help, default=default, default_why=why, **({"limit": SMALL} | more))


def _thick(name: str, label: str, help: str) -> Length:
    return _length(name, label, help, why=STOCK, optional=True, limit=THICK)


def _theirs(sum_id: str, theirs: str, **ours: Any) -> Given:
    """Another sum's own entry, under our name."""
    return replace(find(sum_id).given(theirs), **ours)


BENCH = (
    _length(
        "stock_width", "Width of the stock", "Measured across the board, edges trued.", limit=Limit("20 mm", "600 mm")
    ),
    _length("stock_thickness", "Thickness of the stock", "Measured, planed as you will use it.", limit=THICK),
    _length("inside_width", "Inside width", "Between the two sides.", limit=Limit("40 mm", "1.2 m")),
    _length("depth", "Depth of the sides", "From back edge to front edge, level.", limit=Limit("40 mm", "800 mm")),
    _length(
        "back_height",
        "Height of the back edge",
        "Of the sides, where they meet the back.",
        limit=Limit("20 mm", "1.2 m"),
    ),
    _length(
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
    _thick("side_thickness", "Thickness of the sides", "If they are not of the same stock."),
    _thick("front_thickness", "Thickness of the front", "If it is not of the same stock."),
    _thick("lid_thickness", "Thickness of the lid", "If it is not of the same stock."),
    _thick("back_thickness", "Thickness of the back", "If it is not of the same stock."),
    _thick("bottom_thickness", "Thickness of the bottom", "If it is not of the same stock."),
    _thick("batten_thickness", "Thickness of the battens", "If they are not of the same stock."),
    _length(
        "batten_width", "Width of the battens", "The two that keep the moving lid flat.", "30 mm",
        "common practice: near twice their thickness", limit=Limit("10 mm", "150 mm"),
    ),
    _length(
        "rabbet", "Depth of the front's rabbet", "How deep the sides go into the front at its ends.",
        why="half the front's thickness", optional=True, limit=Limit("1 mm", "50 mm"),
    ),
    _length(
        "front_overhang", "Overhang at the front", "Of the lid's under face past the front, level.", "12 mm",
        "common practice: a finger's hold",
    ),
    _length(
        "side_overhang", "Overhang at each side", "Of the lid past the outside of the box.", "6 mm",
        "common practice: room to clean off the ends",
    ),
    _length(
        "crest", "Back rises above the lid", "Above the lid's upper face, where lid meets back.", "40 mm",
        "common practice: room for a screw to the wall, wood all round it", limit=Limit("0 mm", "500 mm"),
    ),
    _length(
        "tail", "Back hangs below", "Below the bottom of the sides.", "40 mm",
        "common practice: as above the lid", limit=Limit("0 mm", "500 mm"),
    ),
)  # fmt: skip
FITS = (
    _length(
        "allowance", "Fitting allowance of the bottom", "How much smaller than its place, each way, in all.", "1 mm",
        "common practice: it drops in without force", limit=Limit("0 mm", "10 mm"),
    ),
    _length(
        "clearance", "Clearance of the battens", "From the sides, from the strip, and past the front as the lid opens.",
        "3 mm", "common practice: free in damp weather too", limit=Limit("0.5 mm", "20 mm"),
    ),
    _length(
        "joint", "Lost at each glue joint", "What planing both its edges true takes.", "2 mm", "common practice",
        limit=Limit("0 mm", "10 mm"),
    ),
    _theirs("hinge-strip", "leaf", default="14 mm", default_why="a small butt, 28 mm open; measure yours"),
    _theirs("hinge-strip", "knuckle", default="5 mm", default_why="a small butt; measure yours"),
    _theirs("hinge-strip", "kerf"),
)  # fmt: skip
BUYS = (
    _theirs("slot", "what", name="note", default="index-card-3-x-5-in", default_why="a card that fits the hand"),
    _theirs("slot", "length", name="note_length"),
    _theirs("slot", "width", name="note_width"),
    _theirs("slot", "halved", default="1", default_why="folded once, end to end"),
    _theirs("slot", "narrowed"),
    _theirs("nail", "kind", name="nails"),
    _theirs("nail", "wood"),
    _length(
        "spacing", "Nails apart", "About how far from nail to nail along a joint.", "50 mm", "common practice",
        limit=Limit("15 mm", "300 mm"),
    ),
    rule.Mark(name="mark", label="Finest mark", help="The finest mark on the rule you work with.",
              default_why="the rule you always use"),
    _theirs("board-measure", "rule", name="counts"),
    Number(
        name="waste", label="Added for waste", help="Knots, ends and mistakes, in percent of the board that is cut.",
        unit="%", default="25", default_why="a quarter, as Noyes (1910) adds for small pieces", limit=Limit("0", "200"),
    ),
    _theirs("board-measure", "price"),
)  # fmt: skip
GIVENS: tuple[Given, ...] = (*BENCH, *PARTS, *FITS, *BUYS)
