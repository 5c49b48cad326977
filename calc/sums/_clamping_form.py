"""What clamping asks for, and what it tells."""

from calc.declare import Answer
from calc.kinds import Given, Length, Limit, Number
from calc.sums._clamps_form import PRESSED
from calc.typed.measures import Temperature

AIR = Limit("-10 °C", "50 °C")
GIVENS: tuple[Given, ...] = (
    Length(
        name="length",
        label="Length of the joint",
        help="The glued face, the long way.",
        limit=Limit("1/4 in", "5 m"),
    ),
    Length(
        name="width",
        label="Width of the joint",
        help="The glued face, the other way: for an edge joint the thickness of the wood.",
        limit=Limit("1/8 in", "1 m"),
    ),
    Length(
        name="through",
        label="Wood over the joint",
        help="From the clamp's jaw to the glue, cauls counted: the pressure fans out through it.",
        limit=Limit("1/8 in", "2 ft"),
    ),
    *PRESSED,
    Number(
        name="minutes",
        label="The bottle says to clamp for",
        help="The time in the clamps printed on the label, in minutes.",
        unit="min",
        optional=True,
        limit=Limit("1", "2880"),
    ),
    Temperature(
        name="label_at",
        label="At a temperature of",
        help="What the label gives that time for.",
        default="20 °C",
        default_why="a warm room, where the label says nothing",
        limit=AIR,
    ),
    Temperature(
        name="shop",
        label="Your shop",
        help="The temperature of wood and air where the joint will stand.",
        default="20 °C",
        default_why="a warm room",
        limit=AIR,
    ),
    Temperature(
        name="coldest",
        label="The bottle's lowest temperature",
        help="Under which its maker says not to use it.",
        optional=True,
        limit=AIR,
    ),
)
ANSWERS = (
    Answer(
        name="clamps",
        label="Clamps",
        kind="count",
        help="In one row, enough to reach its whole length; and enough for the force, where you say what one gives.",
    ),
    Answer(name="each_force", label="Each clamp must press", kind="force"),
    Answer(name="spacing", label="Between clamps", kind="length"),
    Answer(name="first", label="First clamp from the end", kind="length"),
    Answer(
        name="wait_said",
        label="Leave it clamped, low confidence",
        kind="text",
        help="By the bottle's own label; longer where the shop is colder, never shorter where it is warmer.",
    ),
    Answer(name="force", label="On the joint in all", kind="force"),
    Answer(
        name="pressure",
        label="Pressure on the joint",
        kind="pressure",
        help="From memory of the Wood Handbook, check, unless it is your own.",
    ),
    Answer(name="area", label="Area of the joint", kind="area"),
    Answer(name="apart", label="Clamps no further apart than", kind="length"),
    Answer(name="by_reach", label="Clamps to reach its whole length", kind="count"),
    Answer(name="by_force", label="Clamps for the force alone", kind="count"),
    Answer(name="across", label="Rows of clamps across the joint", kind="count"),
    Answer(name="colder", label="Degrees colder than the label", kind="number", places=1),
    Answer(name="wait", label="Minutes in the clamps", kind="number", places=1),
    Answer(
        name="marks",
        label="Clamps from one end",
        kind="rows",
        columns=(
            Answer(name="clamp", label="Clamp", kind="count"),
            Answer(name="mark", label="At", kind="length"),
        ),
    ),
)
