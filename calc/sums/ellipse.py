"""Ellipse: from two of its sizes the pins and string, the trammel, points to plot, and the way round."""

from calc.declare import Answer, AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Length, Limit
from calc.sums._ellipse import figure, proof, work

SIZE = Limit("0 in", "20 m", above=True)


SUM = Sum(
    id="ellipse",
    title="Ellipse",
    moment="mark-out",
    question="Where do the pins go, how long a string, and how long is the edge?",
    asks=(
        "draw an ellipse with string",
        "where are the foci of an oval",
        "string length for an ellipse",
        "trammel for an oval table top",
        "circumference of an ellipse",
        "how long is the edge of an oval",
        "oval mirror frame marking out",
        "area of an oval",
        "points to plot an ellipse",
    ),
    purpose=(
        "From two of long axis, short axis and pins apart: the third, the string, the trammel, points to plot, the "
        "length of the edge and the area."
    ),
    givens=(
        Length(name="long", label="Long axis", help="The greatest width of the oval.", limit=SIZE),
        Length(name="short", label="Short axis", help="The least width, square across the middle.", limit=SIZE),
        Length(
            name="foci",
            label="Pins apart",
            help="Between the two pins the string goes round; nothing for a circle.",
            limit=Limit("0 in", "20 m"),
        ),
    ),
    any_of=AnyOf(2, ("long", "short", "foci")),
    answers=(
        Answer(name="foci", label="Pins apart", kind="length"),
        Answer(name="long", label="Long axis", kind="length"),
        Answer(name="short", label="Short axis", kind="length"),
        Answer(name="pin", label="Each pin from the middle", kind="length", help="On the long axis."),
        Answer(name="loop", label="Loop of string, all round", kind="length", help="Knotted, about pins and pencil."),
        Answer(name="string", label="String tied to both pins", kind="length", help="Between the knots, instead."),
        Answer(
            name="arm_long",
            label="Trammel, pencil to the slider on the short axis",
            kind="length",
            help="A strip of card with three marks does: the pencil's, and one kept on each axis.",
        ),
        Answer(name="arm_short", label="Trammel, pencil to the slider on the long axis", kind="length"),
        Answer(name="sliders", label="Trammel, between the sliders", kind="length"),
        Answer(
            name="perimeter",
            label="Length of the edge",
            kind="length",
            help="All the way round, by the elliptic integral: no rule of thumb.",
        ),
        Answer(name="area", label="Area", kind="area", help="Of the whole oval, by pi times both half axes."),
        Answer(name="end_radius", label="Radius that fits each end", kind="length"),
        Answer(name="side_radius", label="Radius that fits each side", kind="length"),
        Answer(
            name="points",
            label="Points to plot",
            kind="rows",
            help="The same in all four quarters.",
            columns=(
                Answer(name="along", label="From the middle, along", kind="length"),
                Answer(name="off", label="Off the long axis", kind="length"),
            ),
        ),
    ),
    work=work,
    formulas=(
        Formula(
            "foci",
            "sqrt(long ** 2 - short ** 2)",
            "an end of the short axis is half the long one from each pin",
            within=1e-4,
        ),
        Formula("long", "sqrt(short ** 2 + foci ** 2)"),
        Formula("short", "sqrt(long ** 2 - foci ** 2)", within=1e-4),
        Formula("pin", "foci / 2"),
        Formula("loop", "long + foci"),
        Formula("string", "long"),
        Formula("arm_long", "long / 2"),
        Formula("arm_short", "short / 2"),
        Formula("sliders", "arm_long - arm_short"),
        Formula("end_radius", "short ** 2 / (2 * long)"),
        Formula("side_radius", "long ** 2 / (2 * short)"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "Apollonius, Conics",
            "book III, proposition 52",
            "identity",
            "Both distances to the foci add up to the long axis. Book and number from memory.",
        ),
        Source(
            "Proclus on Euclid's first book", "the marked strip", "memory", "A point of a sliding line, the trammel."
        ),
        Source(
            "NIST Digital Library of Mathematical Functions",
            "section 19.8",
            "memory",
            "The edge by the arithmetic-geometric mean of the half axes; the tests hold it to an independent library.",
        ),
        Source("Pins and a string", "", "common practice"),
    ),
    limits_of=(
        "A true ellipse. A border of even width about one is no ellipse itself: gauge it from the cut edge, and do not "
        "draw it with a second string."
    ),
    cautions=(
        Caution(
            "A string that gives draws a shape of its own: use thin wire or unwaxed linen, or the trammel, and check "
            "all four ends before you cut.",
            source="common practice",
        ),
    ),
    example=Example(
        {"long": "12 in", "short": "8 in"},
        "An oval sign of 16 mm ash, 12 in by 8 in, to hang above the comment-card box and say what it is for.",
    ),
    carry_on=(
        Carry("facets", {}, "Round the edge by flats"),
        Carry("arc", {"radius": "end_radius"}, "Find something round that fits the ends"),
    ),
)
