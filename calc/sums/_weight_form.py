"""What weight asks for, and what it tells."""

from calc.declare import Answer
from calc.kinds import Count, Given, Length, Limit
from calc.rows import Rows
from calc.sums import _species
from calc.typed.measures import Density, Percent

THICK = Limit("0 in", "12 in", above=True)
BOARD = (
    Count(name="count", label="Count", help="How many parts are alike.", limit=Limit("1", "1000")),
    Length(name="thickness", label="Thickness", help="Measured as it is.", limit=THICK),
    Length(name="width", label="Width", help="Measured across the grain.", limit=Limit("0 in", "2 m", above=True)),
    Length(name="length", label="Length", help="Measured along the grain.", limit=Limit("0 in", "20 m", above=True)),
)
GIVENS: tuple[Given, ...] = (
    _species.asked(),
    Rows(
        name="boards",
        label="Parts",
        help="A row for parts alike: count x thickness x width x length.",
        columns=BOARD,
    ),
    Percent(
        name="moisture",
        label="Moisture content",
        help="As a meter reads it; the sum called moisture finds it from the climate.",
        default="12",
        default_why="common practice: air-dried wood under a roof",
        limit=Limit("0", "250"),
    ),
    Density(
        name="own",
        label="Density of your own wood",
        help="At 12 percent moisture, as a merchant states it, if you have a better figure than the table.",
        optional=True,
        limit=Limit("50 kg/m³", "1500 kg/m³"),
    ),
)
ANSWERS = (
    Answer(name="mass", label="Mass of all", kind="mass"),
    Answer(name="density", label="Density, water included", kind="density"),
    Answer(name="water", label="Of that, water", kind="mass"),
    Answer(name="dry", label="Ovendry wood", kind="mass"),
    Answer(name="volume", label="Volume", kind="volume", help="Of the parts as they are."),
    Answer(
        name="gravity_12",
        label="Specific gravity at 12 percent",
        kind="number",
        help="Ovendry mass on the volume at 12 percent moisture.",
    ),
    Answer(
        name="gravity_green",
        label="Specific gravity green",
        kind="number",
        places=3,
        help="Ovendry mass on the green volume, from the table.",
    ),
    Answer(name="gravity", label="Basic specific gravity", kind="number", places=3),
    Answer(name="gravity_now", label="Specific gravity as it is", kind="number", places=3),
    Answer(name="most", label="Most moisture it can hold", kind="percent", places=1),
    Answer(name="figure_from", label="The figure is from", kind="text"),
    Answer(
        name="rows",
        label="Row by row",
        kind="rows",
        columns=(
            Answer(name="count", label="Count", kind="count"),
            Answer(name="thickness", label="Thickness", kind="length"),
            Answer(name="width", label="Width", kind="length"),
            Answer(name="length", label="Length", kind="length"),
            Answer(name="each", label="Each", kind="mass"),
            Answer(name="all", label="All", kind="mass"),
        ),
    ),
)
