"""What groove asks for, and what it tells."""

from calc.declare import Answer
from calc.kinds import Given, Length, Limit
from calc.sums import _movement_form as movement
from calc.sums._emc import DAMPEST, DRIEST
from calc.sums._groove import DEEPEST
from calc.typed.measures import Percent, Temperature

AIR = Limit(str(DRIEST), str(DAMPEST), why=movement.NO_TABLE)
SAME = {one.name: one for one in movement.GIVENS}
GIVENS: tuple[Given, ...] = (
    SAME["species"],
    SAME["cut"],
    Length(
        name="opening",
        label="Opening across the grain",
        help="Of the frame, from inner edge to inner edge, the way the panel's width runs.",
        limit=Limit("10 mm", "2 m"),
    ),
    Length(
        name="depth",
        label="Depth of the groove",
        help="How deep the frame is grooved, on each side.",
        limit=Limit("2 mm", f"{DEEPEST} mm"),
    ),
    Percent(
        name="moisture_now",
        label="Moisture content now",
        help="Of the panel as you cut it, as a meter reads it; or give the humidity it lies in.",
        limit=movement.WET,
    ),
    Percent(
        name="humidity_now",
        label="Relative humidity now",
        help="Of the air the panel has lain in for weeks.",
        limit=AIR,
    ),
    Percent(
        name="humidity_damp",
        label="Dampest it will meet",
        help="Relative humidity where the panel will live, over the dampest weeks.",
        default="70",
        default_why="common practice: a room with its windows open in a wet summer",
        limit=AIR,
    ),
    Percent(
        name="humidity_dry",
        label="Driest it will meet",
        help="Relative humidity where the panel will live, over the driest weeks.",
        default="35",
        default_why="common practice: a heated room in a hard winter",
        limit=AIR,
    ),
    Temperature(
        name="temperature",
        label="Temperature",
        help="Of the air in all three; a bare number is in degrees Celsius.",
        default="20 °C",
        default_why="common practice: a room people sit in",
        limit=Limit("30 °F", "200 °F", why=movement.NO_TABLE),
    ),
    Length(
        name="along",
        label="Opening along the grain",
        help="The other way of the frame; leave it empty to leave out the panel's length.",
        optional=True,
        limit=Limit("10 mm", "3 m"),
    ),
    Length(
        name="spare",
        label="Room left at the dampest",
        help="In all, both sides together, so that the panel never quite fills its grooves.",
        default="0.5 mm",
        default_why="common practice: glue, dust and a board that moves more than its kind",
        limit=Limit("0 mm", "10 mm"),
    ),
    Length(
        name="frame",
        label="Thickness of the frame",
        help="For the width of the groove; leave it empty if the groove is ploughed already.",
        optional=True,
        limit=Limit("6 mm", "100 mm"),
    ),
    SAME["own"],
)
ANSWERS = (
    Answer(name="panel", label="Panel, width to cut", kind="length", help="Across the grain, as dry as it is now."),
    Answer(name="panel_long", label="Panel, length to cut", kind="length", help="Along the grain, where it keeps."),
    Answer(name="gap", label="Gap to leave in each groove", kind="length", help="At the bottom, now."),
    Answer(name="groove", label="Width of the groove", kind="length", help="A third of the frame, as for a tenon."),
    Answer(name="hold", label="Held by each groove at its narrowest", kind="length", help="The panel in the middle."),
    Answer(
        name="hold_far",
        label="Held by the far groove at its narrowest",
        kind="length",
        help="When the panel has crept all to one side; below nothing it is out.",
    ),
    Answer(name="gap_damp", label="Gap in each groove in the dampest air", kind="length"),
    Answer(
        name="widest", label="Panel at its widest", kind="length", help="In the dampest air, or now if that is damper."
    ),
    Answer(
        name="narrowest",
        label="Panel at its narrowest",
        kind="length",
        help="In the driest air, or now if that is drier.",
    ),
    Answer(name="swells", label="Change to the dampest", kind="percent", help="By the sum of wood movement."),
    Answer(name="shrinks", label="Change to the driest", kind="percent", help="By the sum of wood movement."),
    Answer(name="moisture_now", label="Moisture content now", kind="percent", places=1, help="By the sum of moisture."),
    Answer(name="moisture_damp", label="Moisture at the dampest", kind="percent", places=1, help="By the same sum."),
    Answer(name="moisture_dry", label="Moisture at the driest", kind="percent", places=1, help="By the same sum."),
    Answer(name="figure_from", label="The figure is from", kind="text"),
)
