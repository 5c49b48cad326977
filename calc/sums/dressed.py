"""Dressed: what is left of a size of lumber once it is planed, and what to buy for a thickness wanted."""

from calc.declare import Answer, AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Choice, Length, Limit, Option
from calc.search import Search
from calc.sums._dressed import figure, proof, work
from calc.sums._lumber import sizes
from calc.tables import CHECK

SUM = Sum(
    id="dressed",
    title="Dressed size",
    moment="stock",
    question="How big is a 2 by 4 really, and what do I buy for this thickness?",
    asks=(
        "how thick is a 2x4 really",
        "actual size of a 1x6",
        "nominal and actual lumber sizes",
        "how thick is 4/4 planed",
        "what does 5/4 hardwood dress to",
        "quarter sizes of hardwood",
        "what rough thickness for 3/4 in",
        "planed size of boards",
        "old lumber sizes",
    ),
    purpose=(
        "From what a board is called, softwood by thickness and width or hardwood in quarters: its size once dressed. "
        "Or from the thickness wanted: the thinnest board to buy."
    ),
    givens=(
        Search(
            name="size",
            label="Called",
            help="Softwood as 2x4 or 5/4x6; hardwood as 4/4 or 5/4; old lists as 1910 or 1916.",
            options=tuple(Option(key, one.name) for key, one in sizes().items()),
            what="size",
            by="name, such as 2x4 or 5/4",
        ),
        Length(
            name="finished",
            label="Thickness wanted",
            help="Instead of a name: finished, and the thinnest board that dresses to it is found.",
            limit=Limit("1/8 in", "4 in"),
        ),
        Choice(
            name="trade",
            label="Buying",
            help="Which list to look in for a thickness wanted?",
            default="hardwood",
            default_why="ash, oak and their like are sold rough in quarters",
            options=(Option("hardwood", "Hardwood in quarters"), Option("softwood", "Softwood by its name")),
            beside="finished",
        ),
    ),
    any_of=AnyOf(1, ("size", "finished")),
    answers=(
        Answer(name="name", label="Board", kind="text"),
        Answer(name="thickness", label="Thickness dressed", kind="length", help="From the table."),
        Answer(name="width", label="Width dressed", kind="length", help="From the table; hardwood comes in any width."),
        Answer(name="nominal", label="Thickness as called", kind="length", help="From the table."),
        Answer(name="nominal_width", label="Width as called", kind="length", help="From the table."),
        Answer(name="spare", label="Thicker than wanted by", kind="length"),
        Answer(name="lost", label="Thickness lost", kind="length"),
        Answer(name="lost_width", label="Width lost", kind="length"),
        Answer(name="left", label="Thickness left", kind="percent", places=1),
        Answer(name="share", label="Wood left of what is paid for", kind="percent", places=1),
        Answer(name="a_foot", label="Paid for in each foot of length", kind="board-feet", places=3),
        Answer(name="system", label="By the list for", kind="text"),
        Answer(name="figure_from", label="Source of the figures", kind="text"),
    ),
    work=work,
    formulas=(
        Formula("lost", "nominal - thickness"),
        Formula("lost_width", "nominal_width - width"),
        Formula("left", "100 * thickness / nominal"),
        Formula("share", "100 * thickness * width / (nominal * nominal_width)"),
        Formula("a_foot", "(nominal / inch) * (nominal_width / inch) / 12", "lumber is paid for as it is called"),
        Formula("spare", "thickness - finished"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "American Softwood Lumber Standard, PS 20, dry sizes",
            "",
            "memory",
            "Check. All but 2 x 4.",
        ),
        Source("National Hardwood Lumber Association, rules, surfaced thickness", "", "memory", "Check."),
        Source("W. Noyes, Handwork in Wood (1910)", "sizes of lumber", "read", "An eighth off. An old edition."),
        Source("I. S. Griffith, Carpentry (1916)", "surfaced lumber", "read", "2 x 8 and 2 x 12. An old edition."),
        Source("NIST, Making sure lumber measures up (2017)", "", "read", "A two-by-four is 1.5 in by 3.5 in."),
    ),
    cautions=(
        Caution(
            "These sizes are from memory and not from a source, and merchants differ: measure the board, or ask, "
            "before you cut to them.",
            lambda v: CHECK in v["figure_from"],
        ),
        Caution(
            "This list is more than a hundred years old: it tells what an old drawing meant, not what is sold now.",
            lambda v: "book of 19" in v["system"],
        ),
    ),
    carry_on=(
        Carry("rough-size", {"thickness": "thickness"}, "What to saw out before it is planed"),
        Carry("board-measure", {}, "What the boards come to"),
    ),
    limits_of=(
        "North American names and sizes, dry. A size that is not in the list is not made up; elsewhere wood is sold by "
        "the size it is sawn to, in millimetres."
    ),
    example=Example(
        {"finished": "16 mm"},
        "The comment-card box is to be of 16 mm ash, and the merchant sells ash rough, in quarters of an inch.",
    ),
)
