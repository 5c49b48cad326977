"""What nail-line asks for, and what it tells."""

from calc.declare import Answer
from calc.kinds import Choice, Count, Length, Limit, Number, Option
from calc.sums._nail_asked import NAIL, OWN

BY = Limit("1", "40", why="distances are counted in diameters of the nail")
GIVENS = (
    Length(
        name="line",
        label="Length of the line",
        help="From one end of the board, or of the joint, to the other, along the row of nails.",
        limit=Limit("1/2 in", "10 m"),
    ),
    NAIL,
    OWN,
    Choice(
        name="run",
        label="The row runs",
        help="Along or across the grain of the piece that would split, mostly the one nailed through?",
        default="along",
        default_why="a back or a lid nailed along its edge",
        options=(Option("along", "Along the grain"), Option("across", "Across the grain, near the end of a board")),
    ),
    Choice(
        name="hole",
        label="Holes",
        help="Is a hole bored for each nail?",
        default="none",
        default_why="the wider distances",
        options=(Option("none", "Driven without a hole"), Option("bored", "A hole bored for each")),
    ),
    Choice(
        name="wood",
        label="Wood",
        help="How heavy it is: most softwoods are light; ash, oak, beech and maple are dense.",
        default="medium",
        default_why="the wider distances",
        options=(
            Option("light", "Up to 420 kg/m³"),
            Option("medium", "420 to 500 kg/m³"),
            Option("dense", "More than 500 kg/m³"),
        ),
    ),
    Choice(
        name="load",
        label="The load pulls",
        help="Does what the nails carry press them towards the end or edge of this piece?",
        default="yes",
        default_why="the wider distances",
        options=(
            Option("yes", "Towards the end or edge, or not known"),
            Option("no", "Away from it, or hardly at all"),
        ),
    ),
    Length(
        name="wanted",
        label="Nails no further apart than",
        help="As close as the joint wants them; the number is the least that keeps to it.",
        default="3 in",
        default_why="common practice in boxes and cases",
        limit=Limit("1/4 in", "2 m"),
    ),
    Count(
        name="count",
        label="Number of nails, if you have settled it",
        help="Instead of a spacing: so many nails, equally apart.",
        optional=True,
        limit=Limit("1", "500"),
    ),
    Length(
        name="from_end",
        label="First and last nail from the ends",
        help="If you have settled it; else as near as the wood allows.",
        optional=True,
        limit=Limit("1/16 in", "2 ft"),
    ),
    Length(
        name="row_in",
        label="Row from the side of the board",
        help="If it is settled by the piece behind, as half its thickness; else as near as the wood allows.",
        optional=True,
        limit=Limit("1/16 in", "2 ft"),
    ),
    Length(
        name="thickness",
        label="Thickness nailed through",
        help="Of the piece next to the heads: a thin board with a thick nail splits.",
        optional=True,
        limit=Limit("1/16 in", "6 in"),
    ),
    Number(
        name="own_end",
        label="Diameters from the ends of the line",
        help="Your own rule in place of the table's.",
        optional=True,
        limit=BY,
    ),
    Number(
        name="own_beside",
        label="Diameters beside the row",
        help="Your own rule in place of the table's.",
        optional=True,
        limit=BY,
    ),
    Number(
        name="own_apart",
        label="Diameters from nail to nail",
        help="Your own rule in place of the table's.",
        optional=True,
        limit=BY,
    ),
)
ANSWERS = (
    Answer(name="nails", label="Nails", kind="count", help="As asked for, or the fewest that keep to the spacing."),
    Answer(name="apart", label="Nail to nail", kind="length"),
    Answer(
        name="kept",
        label="First and last from the ends",
        kind="length",
        help="As settled, or the least; blank for one nail.",
    ),
    Answer(name="beside", label="Row from the side", kind="length", help="As settled, or the least."),
    Answer(
        name="marks",
        label="Running marks",
        kind="rows",
        help="All from one end, each rounded from its exact place; the last one is checked from the other end.",
        columns=(
            Answer(name="at", label="Nail", kind="count"),
            Answer(name="mark", label="From this end", kind="length"),
            Answer(name="other", label="From the other end", kind="length"),
        ),
    ),
    Answer(name="end_least", label="Least from the ends", kind="length"),
    Answer(name="beside_least", label="Least from the side", kind="length"),
    Answer(name="apart_least", label="Least from nail to nail", kind="length"),
    Answer(name="most", label="Most nails that have room", kind="count"),
    Answer(name="by_wish", label="Nails for the spacing wanted", kind="count"),
    Answer(name="thick", label="Thickness of the nail", kind="fine", help="From the tables, or as you measured it."),
    Answer(name="end_by", label="Ends in diameters", kind="number", help="From the table of distances, or yours."),
    Answer(name="beside_by", label="Side in diameters", kind="number", help="From the table of distances, or yours."),
    Answer(name="apart_by", label="Spacing in diameters", kind="number", help="From the table of distances, or yours."),
    Answer(name="thick_from", label="The thickness is from", kind="text"),
    Answer(name="rules_from", label="The distances are from", kind="text"),
)
