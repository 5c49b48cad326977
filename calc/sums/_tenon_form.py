"""What tenon asks for, and what it tells."""

from calc.declare import Answer
from calc.kinds import Choice, Given, Length, Limit, Number, Option

GIVENS: tuple[Given, ...] = (
    Length(
        name="thickness",
        label="Thickness of the rail",
        help="The stock that gets the tenon; the stile is as thick, or flush on one face.",
        limit=Limit("6 mm", "150 mm"),
    ),
    Length(name="width", label="Width of the rail", help="Across its face.", limit=Limit("10 mm", "400 mm")),
    Length(
        name="into",
        label="Width of the stile",
        help="Of the mortised piece, the way the tenon goes in.",
        limit=Limit("10 mm", "400 mm"),
    ),
    Choice(
        name="place",
        label="Where it is",
        help="At the end of the stile, or somewhere along it?",
        default="corner",
        options=(Option("corner", "At a corner, haunched"), Option("middle", "Along the stile, two shoulders")),
    ),
    Choice(
        name="kind",
        label="How it ends",
        help="Does it stop inside the stile, or come through?",
        default="blind",
        options=(Option("blind", "Stops inside"), Option("through", "Comes through")),
    ),
    Length(
        name="chisel",
        label="Mortise chisel",
        help="The one you will chop with, which is then the tenon's thickness; leave it empty for a third.",
        optional=True,
        limit=Limit("2 mm", "60 mm"),
    ),
    Length(
        name="groove",
        label="Depth of the panel's groove",
        help="Along the inner edge, if the frame has a panel: the tenon loses it, and the haunch fills its end.",
        optional=True,
        limit=Limit("1 mm", "60 mm"),
    ),
    Length(
        name="edge",
        label="Shoulder at the edge",
        help="What the tenon is less than the rail at a free edge, when no groove takes it.",
        default="1/8 in",
        default_why="common practice: it hides a bruised end of the mortise",
        limit=Limit("0 in", "2 in"),
    ),
    Number(
        name="share",
        label="Share of the stile it goes in",
        help="For a mortise that stops inside, such as 2/3.",
        default="2/3",
        default_why="common practice: deep enough to hold, and wood left behind it",
        limit=Limit("0.25", "0.95"),
    ),
    Length(
        name="extra",
        label="Beyond the end",
        help="Room for glue at the bottom of the mortise, or what a through tenon is left long to plane off.",
        default="1/16 in",
        default_why="common practice",
        limit=Limit("0 in", "1 in"),
    ),
    Length(
        name="between",
        label="Between the stiles",
        help="Inside the frame, along the rail; leave it empty to leave out the rail's length.",
        optional=True,
        limit=Limit("10 mm", "5 m"),
    ),
)
ANSWERS = (
    Answer(name="tenon", label="Tenon, thickness", kind="length"),
    Answer(name="shoulder", label="Shoulder on each face", kind="length"),
    Answer(name="length", label="Tenon, length", kind="length", help="From the shoulder."),
    Answer(name="tenon_width", label="Tenon, width", kind="length"),
    Answer(
        name="inner", label="Shoulder at the inner edge", kind="length", help="The groove's depth where there is one."
    ),
    Answer(name="haunch_width", label="Haunch, width", kind="length", help="At the outer edge."),
    Answer(
        name="haunch_long",
        label="Haunch, length",
        kind="length",
        help="As deep as the groove; without a groove as long as the tenon is thick.",
    ),
    Answer(name="mortise", label="Mortise, depth", kind="length"),
    Answer(
        name="mortise_from",
        label="Mortise, from the rail's outer edge",
        kind="length",
        help="A third of the rail at a corner, for the haunch; elsewhere a shoulder.",
    ),
    Answer(name="mortise_to", label="Mortise, to", kind="length", help="From the same edge."),
    Answer(name="gauge_far", label="Gauge, far pin from the face", kind="length", help="The near one is the shoulder."),
    Answer(name="rail", label="Rail, whole length", kind="length", help="Tenon to tenon."),
    Answer(name="third", label="A third of the stock", kind="length"),
    Answer(name="deep", label="Share of the stile", kind="number", help="All of it when the tenon comes through."),
    Answer(name="beyond", label="Tenon past its mortise", kind="length", help="Below nothing it stops short."),
    Answer(name="area", label="Glued cheeks", kind="area"),
    Answer(
        name="chisels",
        label="Chisels on sale nearest a third",
        kind="rows",
        columns=(
            Answer(name="chisel", label="Chisel", kind="text"),
            Answer(name="shoulder", label="Shoulder on each face", kind="length"),
            Answer(name="part", label="Of the stock", kind="percent", places=0),
        ),
    ),
)
