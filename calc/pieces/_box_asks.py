"""What plain boxes ask for alike: the board, the wood and its climates, and of what the sizes are."""

from calc.kinds import Choice, Given, Limit, Option
from calc.pieces._asks import COMMON, JOINT, THICK, length, theirs
from calc.pieces._seasons import SEASONS

LONG = Limit("20 mm", "1.5 m")
ROOM = Limit("10 mm", "1.5 m")
"""What a box must be inside, each way."""
STOCK: tuple[Given, ...] = (
    length(
        "stock_width", "Width of the stock", "Measured across the board, edges trued.", limit=Limit("20 mm", "600 mm")
    ),
    length("stock_thickness", "Thickness of the stock", "Measured, planed as you will use it.", limit=THICK),
    theirs("weight", "species"),
)
MEASURED = Choice(
    name="measured",
    label="These are sizes of the",
    help="Inside: the room for what goes in. Outside: over the walls, and from the table to the top.",
    default="inside",
    default_why="common practice: a box is made for what goes into it",
    options=(Option("inside", "Inside"), Option("outside", "Outside")),
)
ALLOWANCE = length(
    "allowance", "Fitting allowance of the bottom", "How much smaller than its rabbets, each way, in all.", "1 mm",
    "common practice: it drops in without force", limit=Limit("0 mm", "10 mm"),
)  # fmt: skip
RABBET = length(
    "rabbet", "Depth of the rabbets", "Of corners and bottom alike, so that one setting of the plane does for both.",
    why="half the walls' thickness", optional=True, limit=Limit("1 mm", "50 mm"),
)  # fmt: skip
LAST: tuple[Given, ...] = (
    ALLOWANCE,
    JOINT,
    theirs("hinge-strip", "kerf"),
    *COMMON,
    theirs("weight", "moisture"),
    *SEASONS,
    theirs("weight", "own", name="own_density"),
)
