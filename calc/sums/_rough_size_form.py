"""What rough-size asks for, and what it tells."""

from calc.declare import Answer
from calc.kinds import Count, Length, Limit

GIVENS = (
    Length(
        name="length",
        label="Finished length",
        help="Along the grain, joints counted, as it goes into the work.",
        limit=Limit("1/4 in", "10 m"),
    ),
    Length(name="width", label="Finished width", help="Across the grain.", limit=Limit("1/8 in", "2 m")),
    Length(name="thickness", label="Finished thickness", help="When it is planed.", limit=Limit("1/32 in", "12 in")),
    Count(
        name="count",
        label="Parts alike",
        help="How many of them, a spare one counted if you want it.",
        default="1",
        limit=Limit("1", "500"),
    ),
    Length(
        name="face",
        label="To plane off each face",
        help="Nothing for stock that is planed already.",
        default="1/16 in",
        default_why="common practice for flat stock; more for a board that is cupped, see flatten",
        limit=Limit("0 in", "1 in"),
    ),
    Length(
        name="edge",
        label="To plane off each edge",
        help="From sawn to straight and square.",
        default="1/8 in",
        default_why="common practice",
        limit=Limit("0 in", "2 in"),
    ),
    Length(
        name="end",
        label="To trim off each end",
        help="Checks, snipe and a square cut; more at the end of a board that has split.",
        default="1/2 in",
        default_why="common practice",
        limit=Limit("0 in", "12 in"),
    ),
    Length(
        name="kerf",
        label="Saw kerf",
        help="What one cut of your saw takes away.",
        default="1/8 in",
        default_why="common practice: more than any handsaw takes",
        limit=Limit("0 in", "1/2 in"),
    ),
)
ANSWERS = (
    Answer(name="rough_length", label="Rough length", kind="length"),
    Answer(name="rough_width", label="Rough width", kind="length"),
    Answer(name="rough_thickness", label="Rough thickness", kind="length"),
    Answer(
        name="quarters",
        label="Hardwood to buy",
        kind="text",
        help="The thinnest sold rough that is thick enough; names from memory, check.",
    ),
    Answer(
        name="layers",
        label="Layers to glue it up of",
        kind="count",
        help="Where none is thick enough: of the thickest, each planed on both faces before it is glued.",
    ),
    Answer(name="end_to_end", label="All in one board, end to end", kind="length", help="Kerfs between them counted."),
    Answer(name="side_by_side", label="All from one board, side by side", kind="length", help="Across its width."),
    Answer(name="boards", label="As a list", kind="text", help="Count x thickness x width x length, to reckon on."),
    Answer(name="kept", label="Wood that is left when finished", kind="percent", places=1),
    Answer(name="rough_volume", label="Volume rough", kind="volume"),
    Answer(name="finished_volume", label="Volume finished", kind="volume"),
)
