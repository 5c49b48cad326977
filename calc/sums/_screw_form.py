"""What screw asks for, and what it tells."""

from calc.declare import Answer
from calc.kinds import Count, Length, Limit

THICK = Limit("1.5 mm", "9.5 mm")
GIVENS = (
    Count(name="number", label="Screw number", help="As it stands on the box: 6, 8, 10.", limit=Limit("0", "24")),
    Length(
        name="own",
        label="Thickness of your own screw",
        help="Instead of a number: across the plain part, or as a metric box says, 4 mm.",
        limit=THICK,
    ),
    Length(
        name="held",
        label="Thickness held",
        help="The piece the screw goes through first; less what the head is sunk under its face.",
        limit=Limit("1/16 in", "5 in"),
    ),
    Length(
        name="second",
        label="Depth of the second piece",
        help="How far the wood goes on behind the first piece, if the point may come through it.",
        optional=True,
        limit=Limit("1/8 in", "3 m"),
    ),
    Length(
        name="measured",
        label="Root, measured",
        help="Between the threads with callipers, if you have the screw: makers differ.",
        optional=True,
        limit=Limit("0.8 mm", "9 mm"),
    ),
    Length(
        name="margin",
        label="Wood left beyond the point",
        help="The least wood to leave between the point and the far face.",
        default="1/8 in",
        default_why="common practice",
        limit=Limit("0 in", "2 in"),
    ),
)
ANSWERS = (
    Answer(
        name="diameter",
        label="Thickness of the screw",
        kind="fine",
        help="Of the plain part, by the present rule for numbers, or as you measured it.",
    ),
    Answer(
        name="clear_drill",
        label="Clearance drill, piece held",
        kind="text",
        help="0.2 mm wider at least.",
    ),
    Answer(
        name="soft_drill", label="Pilot drill, soft wood", kind="text", help="The nearest no thicker than the hole."
    ),
    Answer(
        name="hard_drill", label="Pilot drill, hard wood", kind="text", help="The nearest no thicker than the hole."
    ),
    Answer(
        name="length",
        label="Length of the screw",
        kind="length",
        help="The shortest of those sold, some of them in few thicknesses, that grips as it should and stays inside; "
        "else the longest that stays inside.",
    ),
    Answer(name="into", label="In the second piece", kind="length", help="As deep as the pilot hole is bored."),
    Answer(name="left", label="Wood beyond the point", kind="length", help="What is left of the second piece."),
    Answer(name="pilot_soft", label="Pilot hole, soft wood", kind="fine"),
    Answer(name="pilot_hard", label="Pilot hole, hard wood", kind="fine"),
    Answer(name="root", label="Root of the screw", kind="fine", help="Its thickness between the threads."),
    Answer(name="root_from", label="The root is from", kind="text"),
    Answer(name="head", label="Countersink, about", kind="fine", help="A flat head is about twice the plain part."),
    Answer(name="thread", label="Thread", kind="length", help="About two thirds of the length."),
    Answer(name="wanted", label="Length by the rule", kind="length"),
    Answer(name="gripping", label="Thread in the second piece", kind="length"),
    Answer(name="gripped", label="Thread in it in diameters", kind="number", places=1),
    Answer(name="room", label="Longest that stays inside", kind="length"),
    Answer(
        name="root_ratio",
        label="Root as a share of the plain part",
        kind="percent",
        places=1,
        help="Of most screws, from memory of the Wood Handbook, check.",
    ),
    Answer(name="soft_size", label="Soft wood, best drill", kind="fine", help="Of the pilot drills named."),
    Answer(name="hard_size", label="Hard wood, best drill", kind="fine", help="Of the pilot drills named."),
    Answer(name="clear_size", label="Clearance, best drill", kind="fine", help="Of the clearance drills named."),
    Answer(
        name="others",
        label="Other tables print for this number",
        kind="rows",
        help="Where they differ, measure the screw in hand.",
        columns=(
            Answer(name="table", label="Table", kind="text"),
            Answer(name="printed", label="Thickness", kind="fine"),
            Answer(name="differs", label="It is", kind="text"),
        ),
    ),
)
