"""Splay: sides that lean outwards, mitred or butted: every cut, and the size of every part."""

from calc.declare import Answer, AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Angle, Choice, Count, Length, Limit, Option
from calc.sums._splay import STEEPEST, proof, work
from calc.sums._splay_drawing import figure

SIZE = Limit("0 in", "5 m", above=True)
SMALL = 75
"""Millimetres of slant or length under which a part is too small to hold by hand: common practice."""
EDGES = tuple(
    Answer(name=f"{face}_{edge}", label=f"{face.title()}, {edge}", kind="length")
    for face in ("outside", "inside")
    for edge in ("top", "bottom")
)

SUM = Sum(
    id="splay",
    title="Splayed sides",
    moment="mark-out",
    question="How are the corners of a box with leaning sides cut?",
    asks=(
        "hopper angles",
        "compound angle for a sloping sided tray",
        "planter box with leaning sides",
        "what angle do i cut for a six sided lampshade",
        "butt joint on splayed sides",
        "bevel on the top edge of a leaning side",
        "angle between two leaning sides",
        "board width for a tray that leans 15 degrees",
        "knife box with sloping sides",
    ),
    purpose="From the lean, the number of sides and the size at the bottom, every cut and the edges of each part.",
    givens=(
        Count(
            name="sides",
            label="Sides",
            help="How many sides go round.",
            default="4",
            default_why="common practice: a box",
            limit=Limit("3", "12"),
        ),
        Choice(
            name="joint",
            label="Corners",
            help="How the sides meet; butted corners have four sides.",
            default="mitre",
            default_why="common practice",
            options=(Option("mitre", "mitred"), Option("butt", "butted")),
        ),
        Length(
            name="size",
            label="Inside length at the bottom",
            help="Along one side inside the bottom, corner to corner; if butted, of the pair that stands between.",
            limit=SIZE,
        ),
        Length(
            name="other",
            label="The other two sides",
            help="The same for the second pair, if four sides are not all alike.",
            optional=True,
            limit=SIZE,
        ),
        Angle(
            name="lean",
            label="Lean from upright",
            help="How far the sides lean outwards, from upright; or leave it empty and give rise and run.",
            optional=True,
            limit=Limit("0", str(STEEPEST)),
        ),
        Length(name="rise", label="Rise", help="Upright, while leaning out by the run.", optional=True, limit=SIZE),
        Length(name="run", label="Run", help="How far a side leans out in that rise.", optional=True, limit=SIZE),
        Length(name="height", label="Height", help="Upright, from the bottom to the top edge.", limit=SIZE),
        Length(name="slant", label="Slant height", help="Up the face of a side, from edge to edge.", limit=SIZE),
        Length(
            name="thickness",
            label="Thickness",
            help="How thick the sides are.",
            limit=Limit("0 in", "100 mm", above=True),
        ),
    ),
    any_of=AnyOf(1, ("height", "slant")),
    answers=(
        Answer(name="lean", label="Lean from upright", kind="angle"),
        Answer(name="face_cut", label="Cut across the face, off square", kind="angle"),
        Answer(
            name="mitre_mark",
            label="Line across a square edge, off square",
            kind="angle",
            help="Saw to the lines on face and edge. On an edge bevelled level it is 180° by the number of sides.",
        ),
        Answer(
            name="mitre_bevel",
            label="Bevel of the mitre, off square",
            kind="angle",
            help="Between the sawn end and square to the face, measured square to the cut.",
        ),
        Answer(
            name="butt_mark",
            label="Line across a square edge, off square",
            kind="angle",
            help="Saw to the lines on face and edge. On an edge bevelled level it is square.",
        ),
        Answer(
            name="butt_bevel",
            label="Bevel of the end, off square",
            kind="angle",
            help="Between the sawn end and square to the face, measured square to the cut.",
        ),
        Answer(name="dihedral", label="Angle between two sides", kind="angle", help="To test the corner with, inside."),
        Answer(
            name="level_bevel",
            label="Bevel of top and bottom edges",
            kind="angle",
            help="Off square, so that they sit level: plane it on both edges, sloping the same way.",
        ),
        Answer(name="slant", label="Slant height", kind="length"),
        Answer(name="height", label="Height", kind="length"),
        Answer(name="spread", label="Leans out by", kind="length"),
        Answer(name="wall", label="Thickness measured level", kind="length"),
        Answer(
            name="blank_width", label="Width of stock", kind="length", help="Enough for both edges before bevelling."
        ),
        Answer(name="top_size", label="Inside length at the top", kind="length"),
        Answer(
            name="parts",
            label="Parts",
            kind="rows",
            help="Edges of the finished parts. Sawn with square edges, a butted side has its longest arris inside, "
            "above the top: allow for it in the stock.",
            columns=(
                Answer(name="part", label="Part", kind="text"),
                Answer(name="count", label="Count", kind="count"),
                *EDGES,
            ),
        ),
    ),
    work=work,
    formulas=(
        Formula("lean", "atan(run / rise)"),
        Formula("face_cut", "atan(sin(lean) * tan(180 / sides))"),
        Formula("mitre_mark", "atan(cos(lean) * tan(180 / sides))"),
        Formula("mitre_bevel", "asin(cos(lean) * sin(180 / sides))"),
        Formula("butt_mark", "atan(sin(lean) * tan(lean))"),
        Formula("butt_bevel", "asin(sin(lean) ** 2)"),
        Formula("dihedral", "180 - 2 * asin(cos(lean) * sin(180 / sides))"),
        Formula("level_bevel", "lean"),
        Formula("slant", "height / cos(lean)"),
        Formula("height", "slant * cos(lean)"),
        Formula("spread", "height * tan(lean)"),
        Formula("wall", "thickness / cos(lean)"),
        Formula("blank_width", "slant + thickness * tan(lean)", "the second part is the bevels' own"),
        Formula("top_size", "size + 2 * spread * tan(180 / sides)"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "International Correspondence Schools, The Building Trades Pocketbook",
            "Hopper bevels, fig. 25",
            "read",
            "A drawn construction of face, mitre and butt bevels; here they follow from the planes of the faces.",
        ),
        Source("Normals of the faces", "the angle of two planes is that of their normals", "identity"),
    ),
    limits_of=(
        "All sides lean alike and outwards, up to 80° from upright, with level top and bottom; for a box that "
        "closes in, turn it over. Four sides may be of two lengths, any other number is regular. Butted corners: "
        "four sides, ends trimmed flush with the outer faces."
    ),
    cautions=(
        Caution(
            "A slanting cut pulls the saw aside: clamp the board, start on the waste side, keep hands behind the edge. "
            "The bevelled arris is thin and sharp: ease it.",
            when=lambda v: v["lean"] > 0,
            source="general hand-tool practice, from memory",
        ),
        Caution(
            "Parts this small cannot be held safely by hand: saw the angles on a longer board first, or clamp them.",
            when=lambda v: min(v["size"], v["other"] or v["size"], v["slant"]) < SMALL,
            source="common practice",
        ),
    ),
    example=Example(
        {"sides": "4", "size": "7 in", "other": "10 in", "lean": "15", "height": "3 in", "thickness": "16 mm"},
        "A tray for blank cards, beside the comment-card box: 7 in by 10 in inside the bottom, its 16 mm ash sides "
        "leaning out by 15°.",
    ),
    carry_on=(
        Carry("bevel", {"angle": "face_cut"}, "Set the bevel gauge for the face"),
        Carry("bevel", {"angle": "mitre_mark"}, "Set a second gauge for the edge"),
        Carry("bevel", {"angle": "level_bevel"}, "Set it for the top and bottom edges"),
    ),
)
