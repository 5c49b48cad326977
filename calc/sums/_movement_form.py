"""What movement asks for: the wood, its cut and width, how dry it is at both ends of the way; and what it tells."""

from calc.declare import Answer
from calc.kinds import Choice, Given, Length, Limit, Option
from calc.sums import _species
from calc.sums._emc import DAMPEST, DRIEST
from calc.typed.measures import Percent, Temperature

NO_TABLE = "the handbook's table does not go there"
WET = Limit("0", "30", why="wood moves between 0 and 30 % only, and green wood counts as 30")


def _end(when: str, told: str, help: str) -> tuple[Given, ...]:
    return (
        Percent(
            name=f"moisture_{when}",
            label=f"Moisture content {told}",
            help=f"{help} Or leave it empty and give the climate.",
            optional=True,
            limit=WET,
        ),
        Temperature(
            name=f"temperature_{when}",
            label=f"Temperature {told}",
            help="Of the air about the wood, over weeks; a bare number is in degrees Celsius.",
            optional=True,
            limit=Limit("30 °F", "200 °F", why=NO_TABLE),
        ),
        Percent(
            name=f"humidity_{when}",
            label=f"Relative humidity {told}",
            help="Of the same air, over weeks.",
            optional=True,
            limit=Limit(str(DRIEST), str(DAMPEST), why=NO_TABLE),
        ),
    )


GIVENS: tuple[Given, ...] = (
    _species.asked(),
    Choice(
        name="cut",
        label="Cut of the board",
        help="Look at its end: do the rings lie along the width, or stand across it?",
        default="flat",
        default_why="the one that moves more",
        options=(Option("flat", "Flat-sawn: rings lie along the width"), Option("quarter", "Quarter-sawn: they stand")),
    ),
    Length(
        name="width",
        label="Width across the grain",
        help="Of the board or the glued panel, as it is now.",
        limit=Limit("0 in", "3 m", above=True),
    ),
    *_end("now", "now", "As a meter reads it."),
    *_end("then", "later", "What it will come to where it is used."),
    Percent(
        name="own",
        label="Shrinkage of your own wood",
        help="From green to ovendry, this way across the grain, if you have a better figure than the table.",
        optional=True,
        limit=Limit("0.5", "20"),
    ),
)
ANSWERS = (
    Answer(name="change", label="Change in width", kind="length"),
    Answer(name="gap", label="Gap to leave", kind="length", help="Across the width, in all."),
    Answer(name="opens", label="Gap that opens", kind="length", help="Across the width, in all."),
    Answer(name="each_side", label="On each side", kind="length", help="When the board is held along its middle only."),
    Answer(name="width_then", label="Width later", kind="length"),
    Answer(name="percent", label="Change in percent", kind="percent"),
    Answer(name="moisture_now", label="Moisture content now", kind="percent", places=1),
    Answer(name="moisture_then", label="Moisture content later", kind="percent", places=1),
    Answer(
        name="other",
        label="Cut the other way",
        kind="length",
        help="The change in width of a board as wide, quarter-sawn for flat-sawn or the reverse.",
    ),
    Answer(name="form", label="Worked by", kind="text"),
    Answer(
        name="coefficient",
        label="Change for 1 percent of moisture",
        kind="number",
        places=5,
        help="In parts of the width, from the table.",
    ),
    Answer(
        name="shrinkage",
        label="Shrinkage green to ovendry",
        kind="percent",
        help="From the table, or your own figure.",
    ),
    Answer(name="figure_from", label="The figure is from", kind="text"),
)
