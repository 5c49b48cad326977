"""Lid: how long to cut it on both faces, the bevel at the back, its width, and the strips to glue up."""

from calc.declare import Answer, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Angle, Choice, Length, Limit, Option
from calc.sums._lid import proof, work
from calc.sums._lid_figure import figure

OVER = Limit("0 mm", "300 mm")
SUM = Sum(
    id="lid",
    title="Lid",
    moment="fit",
    question="How big is the lid to be cut?",
    asks=(
        "how long is a sloping lid",
        "size of a box lid",
        "back bevel of a lid",
        "lid against the back of a box",
        "overhang of a lid",
        "how much longer is the upper face",
        "how many boards for a lid",
        "desk lid on a slope",
    ),
    purpose="From the box and its slope: the lid's length on its upper and its under face, the bevel at the back and "
    "what it takes, its width, and the strips to glue it from.",
    givens=(
        Length(
            name="depth",
            label="Depth under the lid",
            help="Level, from the face of the back to the outside of the front.",
            limit=Limit("20 mm", "2 m"),
        ),
        Length(
            name="width",
            label="Outside width of the box",
            help="Over its sides, along the lid's grain.",
            limit=Limit("20 mm", "3 m"),
        ),
        Length(
            name="thickness", label="Lid thickness", help="Measured square to the face.", limit=Limit("3 mm", "100 mm")
        ),
        Angle(
            name="angle",
            label="Slope of the lid",
            help="From level, in degrees or as a rise in a run such as 1 in 3.",
            default="0",
            default_why="a level lid",
            limit=Limit("0", "60"),
        ),
        Length(
            name="front",
            label="Overhang at the front",
            help="Level, of the under face past the front.",
            default="12 mm",
            default_why="common practice: a finger's hold",
            limit=OVER,
        ),
        Length(
            name="side",
            label="Overhang at each side",
            help="Past the outside of the box.",
            default="6 mm",
            default_why="common practice: room to clean off the ends",
            limit=OVER,
        ),
        Choice(
            name="back",
            label="Back end",
            help="Is it bevelled to stand plumb against the back, or left square?",
            default="bevelled",
            default_why="it shuts against the back without a gap",
            options=(Option("bevelled", "Bevelled to the slope"), Option("square", "Square to the face")),
        ),
        Length(
            name="stock",
            label="Width of the stock",
            help="Of the boards it is glued from, before their edges are trued; or leave it empty.",
            optional=True,
            limit=Limit("15 mm", "1 m"),
        ),
        Length(
            name="joint",
            label="Lost at each glue joint",
            help="What trueing takes from the two edges that meet, together.",
            default="2 mm",
            default_why="common practice",
            limit=Limit("0 mm", "20 mm"),
        ),
        Length(
            name="trim",
            label="Spare to trim",
            help="Glued up longer down the slope than wanted by this.",
            default="0 mm",
            default_why="nothing is added that you have not asked for",
            limit=Limit("0 mm", "100 mm"),
        ),
    ),
    answers=(
        Answer(name="upper", label="Down the slope, upper face", kind="length", help="The length to cut."),
        Answer(name="wide", label="Side to side", kind="length", help="Along the grain."),
        Answer(name="under", label="Down the slope, under face", kind="length"),
        Answer(name="bevel", label="Extra for the bevel", kind="length", help="Upper face longer than under face."),
        Answer(name="bevel_angle", label="Bevel from square", kind="angle", help="The slope itself."),
        Answer(name="strips", label="Strips to glue up", kind="count"),
        Answer(name="each", label="Each strip before trueing", kind="length", help="All alike."),
        Answer(name="spare", label="Over in all", kind="length", help="What the full stock has to spare."),
        Answer(name="rough", label="Glued up down the slope", kind="length"),
        Answer(name="drop", label="Falls from back to front", kind="length", help="Of the under face."),
        Answer(name="nose", label="Upper arris further out in front", kind="length", help="Than the under one."),
        Answer(
            name="gap",
            label="Level gap at the back, left square",
            kind="length",
            help="Between its arris and the back.",
        ),
    ),
    work=work,
    formulas=(
        Formula("under", "(depth + front) / cos(angle)"),
        Formula("bevel", "thickness * tan(angle)", "the back end stands plumb"),
        Formula("upper", "under + bevel"),
        Formula("wide", "width + 2 * side"),
        Formula("drop", "(depth + front) * tan(angle)"),
        Formula("gap", "thickness * sin(angle)", "its upper arris, seen level"),
        Formula("nose", "thickness * sin(angle)", "its front end is square to the face"),
        Formula("rough", "upper + trim"),
        Formula("strips", "max(1, ceil((rough - joint) / (stock - joint)))"),
        Formula("each", "(rough + (strips - 1) * joint) / strips"),
        Formula("spare", "strips * stock - (strips - 1) * joint - rough", within=1e-6),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("Right triangles of the slope: a secant down it, a tangent for the bevel", "", "identity"),
        Source("Overhangs, loss at a joint", "", "common practice"),
    ),
    limits_of="Slopes up to 60 degrees, a flat lid of one thickness whose front end is square to its face. The grain "
    "runs side to side, so it moves down the slope.",
    cautions=(
        Caution(
            "Cut the bevel first, try it against the back, and only then cut the front end to length.",
            lambda v: bool(v["bevel"]),
            "common practice",
        ),
        Caution(
            "A sloping lid left square at the back stands off it: rain, dust and coins get in.",
            lambda v: v["gap"] is not None,
            "common practice",
        ),
        Caution("Plane the bevel away from the hand that holds the lid, and clamp it.", None, "from memory"),
    ),
    example=Example(
        {"depth": "172 mm", "width": "252 mm", "thickness": "16 mm", "angle": "1 in 3", "stock": "95 mm"},
        "The comment-card box is 252 mm wide and 172 mm deep, and its lid of 16 mm ash falls 1 in 3 to the reader.",
    ),
    carry_on=(
        Carry(
            "hinge-strip",
            {"length": "upper", "thickness": "thickness", "angle": "angle"},
            "Saw the fixed strip off its top",
        ),
        Carry("glue-up", {"panel_width": "upper", "panel_length": "wide", "thickness": "thickness"}, "Glue it up"),
        Carry("bevel", {"angle": "angle"}, "Set a bevel gauge for it"),
        Carry("movement", {"width": "upper"}, "How far it moves"),
    ),
)
