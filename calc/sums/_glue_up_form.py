"""What glue-up asks for, and what it tells."""

from calc.declare import Answer
from calc.kinds import Choice, Given, Length, Limit, Option
from calc.sums._clamps_form import PRESSED
from calc.typed.measures import Coverage, Spread

GIVENS: tuple[Given, ...] = (
    Length(
        name="panel_width",
        label="Panel width",
        help="Across the grain, as it is wanted in the end.",
        limit=Limit("1 in", "3 m"),
    ),
    Length(
        name="panel_length",
        label="Panel length",
        help="Along the grain, as it is glued up.",
        limit=Limit("2 in", "5 m"),
    ),
    Length(name="thickness", label="Thickness", help="Of the strips where they meet.", limit=Limit("1/8 in", "4 in")),
    Length(
        name="strip_width",
        label="Width of the stock",
        help="Of the boards as they are, before their edges are trued.",
        limit=Limit("3/4 in", "1 m"),
    ),
    Length(
        name="lost",
        label="Loss at a joint",
        help="What trueing takes from the two edges that meet, together.",
        default="1/8 in",
        default_why="common practice: a few shavings from each edge",
        limit=Limit("0 in", "1 in"),
    ),
    Length(
        name="trim",
        label="Spare to trim",
        help="Glued up wider than wanted by this, both edges together.",
        default="1/4 in",
        default_why="common practice",
        limit=Limit("0 in", "4 in"),
    ),
    Length(
        name="caul",
        label="Width of the cauls",
        help="Of the battens between clamps and panel, if there are any: they spread the pressure.",
        default="0 in",
        default_why="none",
        limit=Limit("0 in", "6 in"),
    ),
    *PRESSED,
    Choice(
        name="sides",
        label="Glue is spread on",
        help="One edge of each joint, or both?",
        default="one",
        default_why="the rate on most bottles is for one glue line",
        options=(Option("one", "one edge"), Option("both", "both edges")),
    ),
    Coverage(
        name="coverage",
        label="Cover by the bottle",
        help="Area to the volume as printed on it: 6 m²/l or 250 ft²/gal, a US gallon.",
        optional=True,
        limit=Limit("0.5 m²/l", "50 m²/l"),
    ),
    Spread(
        name="spread",
        label="Spread by the bottle",
        help="Or mass to the area, as printed on it: 160 g/m² or 35 lb/1000 ft².",
        optional=True,
        limit=Limit("20 g/m²", "1000 g/m²"),
    ),
)
ANSWERS = (
    Answer(name="strips", label="Strips", kind="count"),
    Answer(name="each", label="Each strip, trued", kind="length", help="All alike, unless the outer ones are wider."),
    Answer(
        name="outer",
        label="Outer strips, trued",
        kind="length",
        help="On one edge only: they make up what strips between them, trued on both, cannot be.",
    ),
    Answer(name="spare", label="Over in all", kind="length", help="What the strips have to spare beyond that."),
    Answer(
        name="clamps",
        label="Clamps",
        kind="count",
        help="Enough to reach all of a joint; and enough for the force, where you say what one gives.",
    ),
    Answer(name="spacing", label="Between clamps", kind="length"),
    Answer(name="first", label="First clamp from the end", kind="length"),
    Answer(name="liquid", label="Glue by volume", kind="liquid", help="As the bottle covers, with nothing to spare."),
    Answer(name="mass", label="Glue by mass", kind="mass", help="As the bottle says, with nothing to spare."),
    Answer(name="each_force", label="Each clamp must press", kind="force"),
    Answer(name="force", label="On one joint in all", kind="force"),
    Answer(
        name="pressure",
        label="Pressure on the joint",
        kind="pressure",
        help="From memory of the Wood Handbook, check, unless it is your own.",
    ),
    Answer(name="joints", label="Joints", kind="count"),
    Answer(name="rough", label="Width as glued up", kind="length"),
    Answer(name="apart", label="Clamps no further apart than", kind="length"),
    Answer(name="by_reach", label="Clamps to reach all of a joint", kind="count"),
    Answer(
        name="by_force", label="Clamps for the force alone", kind="count", help="Of clamps that press as you stated."
    ),
    Answer(name="area", label="Area of the joints", kind="area", help="One face of each."),
    Answer(name="faces", label="Faces spread at a joint", kind="count", help="As you chose."),
    Answer(
        name="marks",
        label="Clamps from one end",
        kind="rows",
        columns=(
            Answer(name="clamp", label="Clamp", kind="count"),
            Answer(name="mark", label="At", kind="length"),
            Answer(name="side", label="Bar", kind="text"),
        ),
    ),
)
