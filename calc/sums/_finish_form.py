"""What finish asks for, and what it tells."""

from calc.declare import Answer
from calc.kinds import Choice, Count, Given, Length, Limit, Money, Option
from calc.rows import Rows
from calc.typed.measures import Coverage, Liquid, Percent

BOARD = (
    Count(name="count", label="Count", help="How many parts are alike.", limit=Limit("1", "1000")),
    Length(name="thickness", label="Thickness", help="Measured as it is.", limit=Limit("0 in", "24 in", above=True)),
    Length(name="width", label="Width", help="Of the face.", limit=Limit("0 in", "3 m", above=True)),
    Length(name="length", label="Length", help="Of the face.", limit=Limit("0 in", "20 m", above=True)),
)
GIVENS: tuple[Given, ...] = (
    Rows(
        name="boards",
        label="Parts",
        help="A row for parts alike: count x thickness x width x length; or the outside of the whole thing as one.",
        columns=BOARD,
    ),
    Choice(
        name="faces",
        label="Finished on",
        help="Which of its faces are finished?",
        default="all",
        default_why="finished alike on all faces wood stays flat",
        options=(
            Option("all", "all six faces, edges and ends with them"),
            Option("both", "both broad faces"),
            Option("one", "one broad face"),
        ),
    ),
    Coverage(
        name="coverage",
        label="Spread printed on the tin",
        help="For one coat, in m²/l or ft²/gal, a US gallon; of two figures take the lower.",
        limit=Limit("0.5 m²/l", "100 m²/l"),
    ),
    Count(
        name="coats",
        label="Coats",
        help="As many as the tin asks for.",
        default="2",
        default_why="common practice: one soaks in, one stays on",
        limit=Limit("1", "20"),
    ),
    Percent(
        name="first",
        label="More for the first coat",
        help="Bare wood drinks more than the next coats do, end grain most of all; in percent of a coat.",
        default="0",
        default_why="nothing is added to what the tin says",
        limit=Limit("0", "300"),
    ),
    Percent(
        name="waste",
        label="Left in brush, rag and pot",
        help="In percent of what goes on the wood.",
        default="10",
        default_why="common practice, of low confidence: small work wastes more",
        limit=Limit("0", "200"),
    ),
    Count(
        name="batch",
        label="How many alike",
        help="As many of the thing whose parts are listed.",
        default="1",
        limit=Limit("1", "10000"),
    ),
    Liquid(
        name="tin",
        label="Size of a tin",
        help="As it is sold: 250 ml, 1 l or 1 US quart.",
        optional=True,
        limit=Limit("10 ml", "25 l"),
    ),
    Money(
        name="price",
        label="Price of a tin",
        help="To see what the finish costs; or leave it empty.",
        optional=True,
        limit=Limit("0", "100000"),
    ),
)
ANSWERS = (
    Answer(name="liquid", label="Finish in all", kind="liquid", help="All coats, with what is left in brush and rag."),
    Answer(name="tins", label="Tins", kind="count"),
    Answer(name="left", label="Left over", kind="liquid"),
    Answer(name="area", label="Area to finish", kind="area", help="Every face that is finished, once."),
    Answer(name="one", label="One coat takes", kind="liquid", help="On the wood itself, as the tin says."),
    Answer(name="covered", label="Area of all coats", kind="area"),
    Answer(name="each", label="Finish for one", kind="liquid"),
    Answer(name="goes", label="Things one tin does", kind="count", help="Wholly, with all their coats."),
    Answer(name="cost", label="Cost of the tins", kind="money"),
    Answer(name="share", label="Finish used on one costs", kind="money", help="Its share of a tin."),
    Answer(
        name="rows",
        label="Row by row",
        kind="rows",
        columns=(
            Answer(name="count", label="Count", kind="count"),
            Answer(name="width", label="Width", kind="length"),
            Answer(name="length", label="Length", kind="length"),
            Answer(name="each", label="Area of one", kind="area"),
            Answer(name="all", label="Area of all", kind="area"),
        ),
    ),
)
