"""Proportion: partners for one size in whole numbers, root two and the golden section; or the nearest one of a pair."""

from calc.declare import Answer, Carry, Example, Formula, Source, Sum
from calc.kinds import Choice, Length, Limit
from calc.sums._proportion import figure, proof, work
from calc.sums._ratios import MOST, OPTIONS

SIZE = Limit("0 in", "20 m", above=True)
LONGER = Answer(name="longer", label="Longer side", kind="length")
SHORTER = Answer(name="shorter", label="Shorter side", kind="length")
NAME = Answer(name="ratio", label="Proportion", kind="text")

SUM = Sum(
    id="proportion",
    title="Proportion",
    moment="sketch",
    question="What size goes well with this one?",
    asks=(
        "what size goes well with 12 in",
        "golden section of a length",
        "golden rectangle",
        "how wide should it be for its height",
        "5 to 8 proportion",
        "what ratio is 9 by 14",
        "root two rectangle",
        "is my door a golden rectangle",
        "nearest whole number ratio of two sizes",
    ),
    purpose=(
        "From one size, its longer and its shorter partner in whole-number proportions, root two and the golden "
        "section; from two sizes, the nearest of these and how far off they are."
    ),
    givens=(
        Length(name="size", label="Size", help="The one you know: the height of a front, say.", limit=SIZE),
        Length(
            name="other",
            label="Other size",
            help="Fill it in to learn which proportion the two come nearest to.",
            optional=True,
            limit=SIZE,
        ),
        Choice(
            name="ratio",
            label="Proportion",
            help="For one size alone, shorter to longer; of two sizes the nearest is found.",
            default="5:8",
            default_why="common practice: whole numbers for dividers, and near the golden section",
            options=OPTIONS,
        ),
    ),
    answers=(
        Answer(name="nearest", label="Nearest proportion", kind="text", help="Shorter side to longer."),
        Answer(name="over", label="Excess of the longer side", kind="fine", help="Below nothing it is too short."),
        Answer(name="true_longer", label="Longer side that would be true", kind="length", help="The shorter kept."),
        Answer(name="true_shorter", label="Shorter side that would be true", kind="length", help="The longer kept."),
        Answer(name="longer", label="Longer partner", kind="length", help="Yours is then the shorter side."),
        Answer(name="shorter", label="Shorter partner", kind="length", help="Yours is then the longer side."),
        Answer(name="how", label="With dividers and square", kind="text"),
        Answer(name="step_longer", label="Dividers for the longer", kind="length", help="One part of your size."),
        Answer(name="step_shorter", label="Dividers for the shorter", kind="length", help="One part of your size."),
        Answer(name="off", label="Excess in percent", kind="percent"),
        Answer(
            name="in_whole",
            label=f"Nearest in whole numbers to {MOST}",
            kind="text",
            help="All pairs of them are tried.",
        ),
        Answer(
            name="whole_over",
            label="Excess over whole numbers",
            kind="fine",
            help="The longer side, less that many times the shorter.",
        ),
        Answer(name="pair_times", label="Longer over shorter", kind="number", places=4),
        Answer(
            name="times",
            label="Proportion as a number",
            kind="number",
            places=4,
            help="How many times the shorter side the longer is: of the proportion chosen, or of the nearest.",
        ),
        Answer(name="few", label="Parts in the shorter", kind="count", help="As the proportion says."),
        Answer(name="many", label="Parts in the longer", kind="count", help="As the proportion says."),
        Answer(
            name="partners",
            label="Every proportion",
            kind="rows",
            help="Your size once as the shorter side, once as the longer.",
            columns=(NAME, LONGER, SHORTER),
        ),
        Answer(
            name="against",
            label="Every proportion",
            kind="rows",
            help="What it makes of each of your sizes, the other kept, and how far over your longer side is.",
            columns=(NAME, LONGER, SHORTER, Answer(name="off", label="Over by", kind="percent")),
        ),
    ),
    work=work,
    formulas=(
        Formula("longer", "size * times"),
        Formula("shorter", "size / times"),
        Formula("step_longer", "size / few"),
        Formula("step_shorter", "size / many"),
        Formula("pair_times", "max(size, other) / min(size, other)"),
        Formula("true_longer", "min(size, other) * times"),
        Formula("true_shorter", "max(size, other) / times"),
        Formula("over", "max(size, other) - true_longer"),
        Formula("off", "100 * (pair_times / times - 1)"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("Euclid, Elements", "book VI, proposition 30; book II, proposition 11", "identity", "Golden section."),
        Source("Euclid, Elements", "book I, proposition 47", "identity", "The diagonal of a square is root two."),
        Source("Whole-number proportions, 5 to 8 before all", basis="common practice"),
    ),
    limits_of="Two sides of a rectangle, from nothing to 20 m. What looks right is for the eye to say.",
    example=Example(
        {"size": "7 1/2 in"},
        "The front of the comment-card box is to be 7 1/2 in high: how wide would look well beside the bookshelf?",
    ),
    carry_on=(
        Carry("inside-out", {}, "Make a box of it"),
        Carry("diagonal", {"length": "longer", "width": "size"}, "Set it out square"),
        Carry("stepping", {"line": "longer", "count": "many"}, "Step the longer side off"),
    ),
)
