"""Spacing: equal items in an opening with equal gaps, as running marks from one end."""

from calc.declare import Answer, AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Choice, Count, Length, Limit, Option
from calc.sums._spacing import MOST, proof, work
from calc.sums._spacing_figure import figure

HEAD = (89, 230)
"""Millimetres between which a child's head may be caught: from memory of playground standards."""

SUM = Sum(
    id="spacing",
    title="Equal spacing",
    moment="sketch",
    question="Where do I mark so many things equally apart?",
    asks=(
        "space slats evenly in an opening",
        "equal gaps between shelves",
        "where to mark coat hooks evenly",
        "how many slats for a gap of 2 in",
        "gap between balusters",
        "hole centres equally spaced along a board",
        "running marks from one end",
        "divide a board into equal spaces",
        "half a gap at each end",
    ),
    purpose=(
        "From an opening and a number of equal items, or a gap wanted, the exact gap, and every edge and centre as a "
        "running mark from one end, so that rounding never adds up."
    ),
    givens=(
        Length(
            name="opening",
            label="Opening",
            help="What is to be filled, from end to end.",
            limit=Limit("0 in", "20 m", above=True),
        ),
        Count(name="count", label="Items", help="How many slats, pegs, hooks or holes.", limit=Limit("1", str(MOST))),
        Length(
            name="near_gap",
            label="Gap wanted, about",
            help="Instead of a number: the number that comes nearest to this gap is found.",
            limit=Limit("0 in", "5 m", above=True),
        ),
        Length(
            name="width",
            label="Width of an item",
            help="Across one item, along the opening; nothing for hooks and holes marked by their centres.",
            default="0 in",
            default_why="centres alone are marked",
            limit=Limit("0 in", "5 m"),
        ),
        Choice(
            name="ends",
            label="At each end",
            help="What is left between the end of the opening and the item next to it?",
            default="full",
            options=(
                Option("full", "A whole gap"),
                Option("half", "Half a gap"),
                Option("none", "No gap, an item at the end"),
            ),
        ),
        Length(
            name="start",
            label="Opening begins at",
            help="If your tape is hooked over the end of a board: how far in the opening begins.",
            default="0 in",
            default_why="marks run from the end of the opening itself",
            limit=Limit("0 in", "10 m"),
        ),
    ),
    any_of=AnyOf(1, ("count", "near_gap")),
    answers=(
        Answer(name="gap", label="Gap", kind="length"),
        Answer(name="count", label="Items", kind="count", help="The number whose gap comes nearest to the one wanted."),
        Answer(name="pitch", label="From one to the next", kind="length", help="Centre to centre, or edge to edge."),
        Answer(name="end_gap", label="Gap at each end", kind="length"),
        Answer(
            name="marks",
            label="Running marks",
            kind="rows",
            help="All from one end, each rounded from its exact place; the last must fall on the far end.",
            columns=(
                Answer(name="item", label="Item", kind="text"),
                Answer(name="near", label="Near edge", kind="length"),
                Answer(name="centre", label="Centre", kind="length"),
                Answer(name="far", label="Far edge", kind="length"),
            ),
        ),
        Answer(name="gap_fewer", label="Gap with one item fewer", kind="length"),
        Answer(name="gap_more", label="Gap with one item more", kind="length"),
        Answer(
            name="end_share",
            label="Gaps at each end",
            kind="number",
            help="One, a half or none, as you chose.",
        ),
        Answer(name="spaces", label="Gaps in all", kind="number", help="Halves at the ends make one."),
    ),
    work=work,
    formulas=(
        Formula("spaces", "count - 1 + 2 * end_share"),
        Formula("gap", "(opening - count * width) / spaces"),
        Formula("end_gap", "end_share * gap"),
        Formula("pitch", "gap + width"),
        Formula("gap_fewer", "(opening - (count - 1) * width) / (spaces - 1)"),
        Formula("gap_more", "(opening - (count + 1) * width) / (spaces + 1)"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("Running marks from one end, so that no error is handed on", basis="common practice"),
        Source("Size of gap in which a child's head is caught", basis="memory"),
    ),
    limits_of=f"1 to {MOST} items, all alike, in a straight opening; one item alone needs a gap at the ends.",
    cautions=(
        Caution(
            "A gap of about 89 to 230 mm can catch a child's head: for rails, cots and stairs follow your local code.",
            when=lambda v: v["width"] > 0 and any(HEAD[0] <= v[gap] <= HEAD[1] for gap in ("gap", "end_gap")),
            source="from memory, check",
        ),
    ),
    example=Example(
        {"opening": "26 1/2 in", "count": "7", "width": "1 3/4 in"},
        "Seven ash slats, 1 3/4 in wide, in the back of the bench under the reading room's comment-card box.",
    ),
    carry_on=(
        Carry("stepping", {"line": "opening"}, "Step a line off with dividers"),
        Carry("tally", {}, "Add or take away lengths"),
        Carry("convert", {"length": "gap"}, "See the gap on every rule"),
    ),
)
