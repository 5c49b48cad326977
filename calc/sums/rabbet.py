"""Rabbet: its width and depth, the tongue that is left, the plane's settings, and the lengths of both boards."""

from fractions import Fraction

from calc.declare import Answer, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Length, Limit, Number
from calc.sums._rabbet import figure, proof, work

THICK = Limit("3 mm", "100 mm")
INSIDE = Limit("5 mm", "5 m")
THIN = 3
"""Millimetres under which a tongue of short grain breaks in the making: common practice."""
LEAST, MOST = Fraction(1, 3), Fraction(3, 4)
"""Shares kept under which the tongue is weak, and over which the rabbet locates the other board poorly."""

SUM = Sum(
    id="rabbet",
    title="Rabbet",
    moment="join",
    question="How wide and deep is the rabbet, and how is the plane set?",
    asks=(
        "rabbet width and depth",
        "how deep a rebate",
        "rebate for a 16 mm board",
        "set the fence of a rebate plane",
        "rabbeted corner of a box",
        "rebate for a cabinet back",
        "how thick is the tongue left by a rabbet",
        "length of sides with rabbeted corners",
        "what shows of a rabbet joint",
    ),
    purpose=(
        "From two thicknesses and the share kept: the rabbet (or rebate), the tongue left and what shows of it, the "
        "fence and the depth stop of the plane, and the lengths of both boards from the inside of the box."
    ),
    givens=(
        Length(
            name="thickness",
            label="Thickness of the rabbeted board",
            help="The board that the rabbet is cut in.",
            limit=THICK,
        ),
        Length(
            name="let_in",
            label="Thickness of the board let in",
            help="The board whose end or edge lies in the rabbet: a side, or a cabinet's back.",
            limit=THICK,
        ),
        Number(
            name="kept",
            label="Share kept",
            help="How much of the thickness stays as the tongue, such as 1/2 or 1/3.",
            default="1/2",
            default_why="common practice: half is cut away and half stays",
            limit=Limit("0.1", "0.9"),
        ),
        Length(
            name="proud",
            label="Left to plane off",
            help="How far the tongue should stand past the other board, to be planed flush after glueing.",
            default="0",
            limit=Limit("0 in", "10 mm"),
        ),
        Length(
            name="inside",
            label="Inside, between the boards let in",
            help="Along the rabbeted board; leave it empty to leave out its length.",
            optional=True,
            limit=INSIDE,
        ),
        Length(
            name="between",
            label="Inside, between the rabbeted boards",
            help="Along the board let in, with a rabbet at both ends; leave it empty to leave out its length.",
            optional=True,
            limit=INSIDE,
        ),
    ),
    answers=(
        Answer(name="width", label="Width of the rabbet", kind="length", help="Across the inner face, from the end."),
        Answer(name="depth", label="Depth of the rabbet", kind="length", help="Into the thickness."),
        Answer(name="tongue", label="Tongue left", kind="length"),
        Answer(name="shows", label="Shows at the corner", kind="length", help="The end of the tongue, from the side."),
        Answer(
            name="fence",
            label="Plane: fence to the iron's far side",
            kind="length",
            help="The fence riding on the end or edge, the sole on the inner face.",
        ),
        Answer(name="stop", label="Plane: depth stop", kind="length", help="From the sole."),
        Answer(name="long", label="Rabbeted board, whole length", kind="length", help="A rabbet at both ends."),
        Answer(name="let_long", label="Board let in, whole length", kind="length", help="Into both rabbets."),
        Answer(name="outside_wide", label="Outside, along the rabbeted board", kind="length", help="Planed flush."),
        Answer(name="outside_deep", label="Outside, along the board let in", kind="length"),
    ),
    work=work,
    formulas=(
        Formula("width", "let_in + proud", "the board let in comes flush with the end"),
        Formula("tongue", "thickness * kept"),
        Formula("depth", "thickness - tongue"),
        Formula("shows", "tongue"),
        Formula("fence", "width"),
        Formula("stop", "depth"),
        Formula("long", "inside + 2 * width"),
        Formula("let_long", "between + 2 * depth"),
        Formula("outside_wide", "inside + 2 * let_in"),
        Formula("outside_deep", "between + 2 * thickness"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "Half the thickness kept, a third at the least",
            "",
            "common practice",
            "No published rule was found: change the share if your wood or your joint wants another.",
        ),
        Source("Lengths added along the box", "", "identity"),
    ),
    limits_of="Square rabbets at both ends, or along both edges, of boards that meet square. Strength is not told.",
    cautions=(
        Caution(
            "Across the grain, knife the line first and plane from both ends inward, or the far edge breaks out. Keep "
            "fingers off the side of the iron: it cuts too.",
            source="general hand-tool practice, from memory",
        ),
        Caution(
            "A tongue this thin is short in the grain at an end, and breaks in the making: keep more of it.",
            lambda v: v["tongue"] < THIN or v["kept"] < LEAST,
            "common practice",
        ),
        Caution(
            "A rabbet this shallow hardly keeps the other board in its place: keep less.",
            lambda v: v["kept"] > MOST,
            "common practice",
        ),
    ),
    example=Example(
        {"thickness": "16 mm", "let_in": "16 mm", "inside": "9 in", "between": "5 in"},
        "The front of the comment-card box is rabbeted at both ends for the sides, all of 16 mm ash; the room inside "
        "is to be 9 in by 5 in.",
    ),
    carry_on=(
        Carry("nail", {"held": "tongue"}, "Choose the nails that go through the tongue"),
        Carry("nail-line", {}, "Space the nails along the joint"),
    ),
)
