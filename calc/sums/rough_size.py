"""Rough size: what to saw out of the plank, so that the finished part is still inside it."""

from calc.declare import Carry, Caution, Example, Formula, Source, Sum
from calc.sums._rough_size import proof, work
from calc.sums._rough_size_figure import figure
from calc.sums._rough_size_form import ANSWERS, GIVENS
from calc.units import MM_PER_INCH

SHORT = 12 * MM_PER_INCH
"""Length under which a part is too short for a planing machine: common practice."""

SUM = Sum(
    id="rough-size",
    title="Rough size",
    moment="stock",
    question="How big to saw it out before it is planed?",
    asks=(
        "how big to cut rough",
        "rough size of a part",
        "allowance for planing",
        "how much longer to cut a board",
        "what thickness to buy for a finished thickness",
        "length of board for six parts",
        "add for kerf and trimming",
        "rough out parts from a plank",
        "how much to leave for squaring the ends",
    ),
    purpose=(
        "From the finished part and what each face, edge and end wants taken off: the size to saw out, what all of "
        "them take from one board, and the thickness to buy."
    ),
    givens=GIVENS,
    answers=ANSWERS,
    work=work,
    formulas=(
        Formula("rough_length", "length + 2 * end"),
        Formula("rough_width", "width + 2 * edge"),
        Formula("rough_thickness", "thickness + 2 * face"),
        Formula("end_to_end", "count * rough_length + (count - 1) * kerf", "one cut fewer than parts"),
        Formula("side_by_side", "count * rough_width + (count - 1) * kerf", "one cut fewer than parts"),
        Formula("finished_volume", "count * length * width * thickness"),
        Formula("rough_volume", "count * rough_length * rough_width * rough_thickness"),
        Formula("kept", "100 * finished_volume / rough_volume"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("Allowances: 1/16 in a face, 1/8 in an edge, 1/2 in an end", "", "common practice"),
        Source("National Hardwood Lumber Association, rules, thickness in quarters", "", "memory", "Check."),
    ),
    cautions=(
        Caution(
            "Look at the board itself first: cup, twist and checks may want more than any allowance.",
        ),
        Caution(
            "Parts shorter than 12 in are dangerous in a planing machine: plane them in one length and cut them after, "
            "or plane them by hand.",
            lambda v: v["rough_length"] < SHORT,
            source="common practice",
        ),
        Caution(
            "No thickness of the hardwood list is thick enough: glue it up of as many layers as is told.",
            lambda v: v["quarters"] is None,
        ),
    ),
    carry_on=(
        Carry("board-measure", {"boards": "boards"}, "What the rough parts come to, and cost"),
        Carry("flatten", {}, "What a cupped board leaves"),
        Carry("dressed", {"finished": "thickness"}, "The board that dresses to this thickness"),
    ),
    limits_of=(
        "Square-edged parts alike, from stock that is straight enough. Where knots and the grain let you cut is for "
        "your own eye."
    ),
    example=Example(
        {"length": "260 mm", "width": "180 mm", "thickness": "16 mm", "count": "2"},
        "The two sides of the comment-card box, 16 mm ash, are sawn out of a rough plank.",
    ),
)
