"""Diagonal: a frame's true diagonal, what two measured ones say of its corners, and the 3-4-5 that fits it."""

from calc import rule
from calc.declare import Answer, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Length, Limit
from calc.sums._square_figure import figure
from calc.sums._square_up import MISREAD, drift, proof, work

SIZE = Limit("0 in", "20 m", above=True)

SUM = Sum(
    id="diagonal",
    title="Diagonals",
    moment="mark-out",
    question="Is the frame square, and which corner do I bring in?",
    asks=(
        "is my frame square",
        "diagonal of a rectangle",
        "diagonals are not equal",
        "which corner to bring in",
        "how far out of square",
        "3 4 5 method",
        "square up a carcase",
        "check a box for square with a tape",
        "length of a brace across a frame",
        "how long is the diagonal of 8 by 12",
    ),
    purpose=(
        "From the sides of a frame its true diagonal and the 3-4-5 triangles that fit; from both diagonals as "
        "measured, how far out of square it is, and which corners to bring in by how much."
    ),
    givens=(
        Length(
            name="length", label="Length", help="The near side, left to right; the far side is as long.", limit=SIZE
        ),
        Length(name="width", label="Width", help="From the near side to the far one.", limit=SIZE),
        Length(
            name="first",
            label="Diagonal from near left",
            help="As measured, from the near left corner to the far right.",
            optional=True,
            limit=SIZE,
        ),
        Length(
            name="second",
            label="Diagonal from near right",
            help="As measured, from the near right corner to the far left, between the same edges as the other.",
            optional=True,
            limit=SIZE,
        ),
        rule.Mark(
            name="mark",
            label="Finest mark",
            help="Of the rule or tape you measure with: its unit is that of the 3-4-5 triangles.",
            default_why="common practice: the rule you always use",
        ),
    ),
    answers=(
        Answer(
            name="bring_in",
            label="Bring in the corners",
            kind="text",
            help="The ends of the longer diagonal: a clamp along it, drawn up a little at a time.",
        ),
        Answer(
            name="pull", label="Excess of the longer", kind="fine", help="Draw it in by so much, and both read alike."
        ),
        Answer(name="even", label="Both diagonals once square", kind="length"),
        Answer(
            name="lean",
            label="Lean of the far side",
            kind="fine",
            help="How far it stands to the right of square; below nothing, to the left.",
        ),
        Answer(
            name="corner",
            label="Near left corner",
            kind="angle",
            help="And the far right; square is 90°. Not told where diagonals and sides disagree.",
        ),
        Answer(
            name="difference",
            label="Difference of the diagonals",
            kind="fine",
            help="From near left less from near right.",
        ),
        Answer(name="diagonal", label="Diagonal when square", kind="length"),
        Answer(
            name="misfit",
            label="Disagreement with the sides",
            kind="fine",
            help="What the diagonals say, less what the sides say: more than a slip, and sides differ or were misread.",
        ),
        Answer(
            name="three",
            label="Three parts, along the shorter side",
            kind="length",
            help="Of the largest 3-4-5 triangle in whole inches or centimetres, or in quarters of an inch or mm.",
        ),
        Answer(name="four", label="Four parts, along the longer side", kind="length"),
        Answer(name="five", label="Five parts, straight across", kind="length"),
        Answer(
            name="triangles",
            label="3-4-5 triangles that fit",
            kind="rows",
            help="The largest first, and truest.",
            columns=(
                Answer(name="short", label="Along the shorter", kind="length"),
                Answer(name="long", label="Along the longer", kind="length"),
                Answer(name="across", label="Straight across", kind="length"),
            ),
        ),
    ),
    work=work,
    formulas=(
        Formula("diagonal", "sqrt(length ** 2 + width ** 2)"),
        Formula("difference", "first - second"),
        Formula("even", "sqrt((first ** 2 + second ** 2) / 2)", "the sides keep their length while it is racked"),
        Formula("pull", "max(first, second) - even"),
        Formula("lean", "(first ** 2 - second ** 2) / (4 * length)"),
        Formula("corner", "acos(lean / width)"),
        Formula("misfit", "even - diagonal"),
        Formula("four", "4 * three / 3"),
        Formula("five", "5 * three / 3"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("Euclid, Elements", "book I, propositions 47 and 48", "identity", "And so 3-4-5 is square."),
        Source("Euclid, Elements", "book II, propositions 12 and 13", "identity", "Diagonals of a leaning frame."),
        Source("Clamping along the longer diagonal", basis="common practice"),
    ),
    limits_of=(
        "Four-sided frames with opposite sides alike. Equal diagonals alone do not make a square corner where they are "
        "not: then check a corner by 3-4-5."
    ),
    cautions=(
        Caution(
            "Sides and diagonals do not agree: opposite sides differ, or something was misread. Measure all again.",
            when=lambda v: drift(v) > MISREAD,
            source="geometry",
        ),
        Caution(
            "Draw the clamp up slowly, out of the line of your face, and check for twist before the glue sets.",
            when=lambda v: bool(v["pull"]),
            source="common practice",
        ),
    ),
    example=Example(
        {"length": "12 in", "width": "9 3/4 in", "first": "15 1/2 in", "second": "15 7/16 in"},
        "The sides of the comment-card box, glued and still open: one diagonal reads a mark more than the other.",
    ),
    carry_on=(
        Carry("slope", {"rise": "width", "run": "length"}, "See the angle a brace across it would have"),
        Carry("tally", {}, "Halve a difference, or add to it"),
    ),
)
