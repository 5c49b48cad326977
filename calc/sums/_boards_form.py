"""What board-measure asks for, and what it tells."""

from calc.declare import Answer
from calc.kinds import Choice, Count, Length, Limit, Money, Number, Option
from calc.rows import Rows

THICK = Limit("0 in", "24 in", above=True)
BOARD = (
    Count(name="count", label="Count", help="How many boards are alike.", limit=Limit("1", "1000")),
    Length(name="thickness", label="Thickness", help="Measured, or as it is sold.", limit=THICK),
    Length(name="width", label="Width", help="Measured across the grain.", limit=Limit("0 in", "2 m", above=True)),
    Length(name="length", label="Length", help="Measured along the grain.", limit=Limit("0 in", "20 m", above=True)),
)
GIVENS = (
    Rows(
        name="boards",
        label="Boards",
        help="A row for boards alike: count x thickness x width x length.",
        columns=BOARD,
    ),
    Choice(
        name="rule",
        label="Thickness counts",
        help="How is a board under an inch thick reckoned?",
        default="measured",
        default_why="the wood that is there",
        options=(Option("measured", "As measured"), Option("rough", "Bought rough: under 1 in counts as 1 in")),
    ),
    Number(
        name="waste",
        label="Added for waste",
        help="Ends, knots and kerfs, in percent of the boards listed.",
        unit="%",
        default="0",
        default_why="nothing is added that you have not asked for",
        limit=Limit("0", "200"),
    ),
    Money(
        name="price",
        label="Price of a board foot",
        help="What the merchant asks for one board foot.",
        optional=True,
        limit=Limit("0", "1000000"),
    ),
)
ANSWERS = (
    Answer(name="board_feet", label="Exact measure", kind="board-feet"),
    Answer(name="exactly", label="As a fraction", kind="text"),
    Answer(
        name="tally",
        label="Board feet as the hardwood trade tallies",
        kind="board-feet",
        help="Each board's face in whole square feet, its broken foot of length dropped, times its thickness.",
    ),
    Answer(name="surface", label="Surface measure", kind="count", help="The faces of that tally in whole square feet."),
    Answer(name="volume", label="Volume", kind="volume", help="Of the boards as they are."),
    Answer(name="counted", label="Volume counted", kind="volume", help="Of the boards at the thickness they count as."),
    Answer(name="to_buy", label="To buy, waste added", kind="board-feet"),
    Answer(name="cost", label="Cost of what to buy", kind="money", help="By exact measure, waste added."),
    Answer(
        name="tally_cost",
        label="Cost by the hardwood tally",
        kind="money",
        help="Of the boards as listed, no waste added.",
    ),
    Answer(
        name="rows",
        label="Row by row",
        kind="rows",
        columns=(
            Answer(name="count", label="Count", kind="count"),
            Answer(name="thickness", label="Counts as", kind="length"),
            Answer(name="width", label="Width", kind="length"),
            Answer(name="length", label="Length", kind="length"),
            Answer(name="each", label="Each, exact", kind="board-feet"),
            Answer(name="all", label="All, exact", kind="board-feet"),
            Answer(name="tally", label="Hardwood tally", kind="board-feet"),
        ),
    ),
)
