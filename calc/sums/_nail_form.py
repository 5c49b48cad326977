"""What nail asks for, and what it tells."""

from calc.declare import Answer
from calc.kinds import Angle, Choice, Length, Limit, Option

SIZE = Limit("1/16 in", "6 in")
GIVENS = (
    Length(
        name="held",
        label="Thickness held",
        help="The piece the nail goes through first, measured square to its face.",
        limit=SIZE,
    ),
    Length(
        name="second",
        label="Depth of the second piece",
        limit=Limit("1/16 in", "3 m"),
        help="How far the wood goes on behind the first piece, the way the nail is driven.",
    ),
    Choice(
        name="kind",
        label="Kind of nail",
        help="Which nails you have or mean to buy.",
        default="common",
        default_why="common practice; for some sizes no table here has the thickness",
        options=(
            Option("common", "Common wire nail"),
            Option("box", "Box nail"),
            Option("finish", "Finish nail"),
            Option("casing", "Casing nail"),
            Option("brad", "Wire brad"),
        ),
    ),
    Choice(
        name="wood",
        label="Wood",
        help="How heavy the wood is when dry: beech, hard maple and hickory are dense.",
        default="light",
        default_why="the smaller hole, which holds better",
        options=(Option("light", "Specific gravity 0.60 or less"), Option("dense", "Denser than 0.60")),
    ),
    Choice(
        name="end",
        label="The point",
        help="Must it stop inside, or come through and be turned over?",
        default="inside",
        options=(Option("inside", "Must not come through"), Option("clinch", "Comes through and is clinched")),
    ),
    Angle(
        name="lean",
        label="Lean of the nail",
        help="How far the nail is driven from square to the face.",
        default="0",
        default_why="driven square",
        limit=Limit("0", "60"),
    ),
    Length(
        name="margin",
        label="Wood left beyond the point",
        default="1/8 in",
        default_why="common practice: room to set the head and wander",
        help="The least wood to leave between the point and the far face, square to it.",
        limit=Limit("0 in", "2 in"),
    ),
    Length(
        name="turn",
        label="Length to turn over",
        default="3/8 in",
        default_why="common practice",
        help="How much of a clinched nail should stand out before it is turned.",
        limit=Limit("1/8 in", "2 in"),
    ),
    Length(
        name="measured",
        label="Thickness of your own nail",
        help="Measured across the shank with callipers, if you have the nail.",
        optional=True,
        limit=Limit("0.5 mm", "8 mm"),
    ),
)
ANSWERS = (
    Answer(name="nail", label="Nail", kind="text"),
    Answer(
        name="length",
        label="Length of the nail",
        kind="length",
        help="The shortest that answers the rule and stays inside; else the longest that stays inside.",
    ),
    Answer(name="wanted", label="Length by the rule", kind="length", help="At least three times the thickness held."),
    Answer(name="reach", label="Length to clinch", kind="length", help="Through both pieces, and enough to turn over."),
    Answer(name="into", label="In the second piece", kind="length", help="Measured along the nail."),
    Answer(name="share", label="Share in the second piece", kind="percent", places=0),
    Answer(name="left", label="Wood beyond the point", kind="length", help="Measured along the nail."),
    Answer(name="out", label="Stands out to be clinched", kind="length"),
    Answer(name="diameter", label="Thickness of the nail", kind="fine", help="From the tables, or as you measured it."),
    Answer(name="gauge", label="Steel wire gauge", kind="text"),
    Answer(name="hole", label="Widest hole", kind="fine"),
    Answer(name="drill", label="Drill", kind="text", help="The nearest that is no thicker than the hole."),
    Answer(name="drill_size", label="Drill nearest the hole", kind="fine", help="The best of those."),
    Answer(
        name="ratio",
        label="Hole as a share of the nail",
        kind="percent",
        places=0,
        help="The most that keeps the nail's hold, by the National Design Specification.",
    ),
    Answer(name="length_from", label="The length is from", kind="text"),
    Answer(name="thickness_from", label="The thickness is from", kind="text"),
    Answer(name="room", label="Longest nail that stays inside", kind="length"),
    Answer(name="along_held", label="Held, along the nail", kind="length"),
    Answer(name="along_second", label="Second piece, along the nail", kind="length"),
    Answer(
        name="near",
        label="The sizes either side",
        kind="rows",
        columns=(
            Answer(name="nail", label="Nail", kind="text"),
            Answer(name="length", label="Length", kind="length"),
            Answer(name="into", label="In the second piece", kind="length"),
            Answer(name="share", label="Share", kind="percent", places=0),
            Answer(name="word", label="It is", kind="text"),
        ),
    ),
)
