"""Arc: any two of span, rise and radius; then the curve laid out, and the round thing that traces it nearest."""

from calc.declare import Answer, AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Count, Length, Limit, Text
from calc.rows import Rows
from calc.sums._arc import proof, work
from calc.sums._arc_figure import figure

LONG = 2500
"""Millimetres of radius from which a trammel is awkward at the bench: common practice."""

SUM = Sum(
    id="arc",
    title="Arc",
    moment="sketch",
    question="What radius makes this curve, and what can I trace it with?",
    asks=(
        "radius of an arch from width and height",
        "what radius for this curve",
        "radius from span and rise",
        "how high is the curve in the middle",
        "draw a curve without a compass",
        "which tin or plate traces this curve",
        "length of a curved edge",
        "lay out a flat arch with a lath",
        "where is the centre of the arc",
        "how far along and how high are points on a curve",
    ),
    purpose=(
        "From any two of span, rise and radius, the third, the length along the curve, its centre, points to draw it "
        "by, and which of your own round things traces it nearest."
    ),
    givens=(
        Length(
            name="span",
            label="Span",
            help="Straight across between the two ends of the curve.",
            limit=Limit("0 in", "20 m", above=True),
        ),
        Length(
            name="rise",
            label="Rise at the middle",
            help="From the middle of the span, square up to the curve.",
            limit=Limit("0 in", "10 m", above=True),
        ),
        Length(
            name="radius",
            label="Radius",
            help="From the centre of the circle to its edge.",
            limit=Limit("0 in", "200 m", above=True),
        ),
        Count(
            name="steps",
            label="Points each side",
            help="Into how many equal steps each half of the span is parted, to mark points of the curve.",
            default="4",
            default_why="common practice: halve, and halve again",
            limit=Limit("1", "50"),
        ),
        Rows(
            name="things",
            label="Your round things",
            help="What you have to trace round, a row each: name x diameter, as paint tin x 176 mm.",
            optional=True,
            columns=(
                Text(name="thing", label="Thing", help="What you call it."),
                Length(
                    name="diameter",
                    label="Diameter",
                    help="Straight across, through its middle.",
                    limit=Limit("1 mm", "5 m"),
                ),
            ),
        ),
    ),
    any_of=AnyOf(2, ("span", "rise", "radius")),
    answers=(
        Answer(name="radius", label="Radius", kind="length"),
        Answer(name="rise", label="Rise at the middle", kind="length"),
        Answer(name="span", label="Span", kind="length"),
        Answer(name="arc_length", label="Length along the curve", kind="length"),
        Answer(
            name="nearest",
            label="Trace it round",
            kind="text",
            help="Of your round things, the one whose edge, laid through both ends, comes nearest at the crown.",
        ),
        Answer(
            name="miss",
            label="Miss at the crown",
            kind="fine",
            help="Above nothing its edge stands too high, below nothing too low.",
        ),
        Answer(name="nearest_rise", label="Rise it gives", kind="length"),
        Answer(
            name="nearest_diameter",
            label="Diameter of that thing",
            kind="length",
            help="As you listed it.",
        ),
        Answer(name="diameter", label="Diameter that would be true", kind="length"),
        Answer(
            name="centre",
            label="Centre below the span",
            kind="length",
            help="On the square line through the middle of the span: where the trammel's point stands.",
        ),
        Answer(name="angle", label="Angle at the centre", kind="angle", help="Between the radii to both ends."),
        Answer(name="half_chord", label="From an end straight to the crown", kind="length"),
        Answer(
            name="lath_angle",
            label="Angle of two laths",
            kind="angle",
            help="Laths nailed at this angle and slid against a nail at each end draw the curve with a pencil between.",
        ),
        Answer(
            name="marks",
            label="Points of the curve",
            kind="rows",
            help="Each way from the middle of the span, and square up from it.",
            columns=(
                Answer(name="along", label="From the middle", kind="length"),
                Answer(name="height", label="Up to the curve", kind="length"),
            ),
        ),
        Answer(
            name="traced",
            label="Your round things",
            kind="rows",
            help="Each laid through both ends of the span, nearest first.",
            columns=(
                Answer(name="thing", label="Thing", kind="text"),
                Answer(name="diameter", label="Diameter", kind="length"),
                Answer(name="crown", label="Its rise", kind="length"),
                Answer(name="miss", label="Misses by", kind="fine"),
                Answer(name="word", label="It is", kind="text"),
            ),
        ),
    ),
    work=work,
    formulas=(
        Formula("radius", "((span / 2) ** 2 + rise ** 2) / (2 * rise)"),
        Formula("rise", "radius - sqrt(radius ** 2 - (span / 2) ** 2)", "the flatter of the two"),
        Formula("span", "2 * sqrt(rise * (2 * radius - rise))"),
        Formula("diameter", "2 * radius"),
        Formula("centre", "radius - rise"),
        Formula("angle", "4 * atan(2 * rise / span)"),
        Formula("arc_length", "pi * radius * angle / 180"),
        Formula("half_chord", "sqrt((span / 2) ** 2 + rise ** 2)"),
        Formula("lath_angle", "180 - angle / 2"),
        Formula(
            "nearest_rise",
            "nearest_diameter / 2 - sqrt((nearest_diameter / 2) ** 2 - (span / 2) ** 2)",
            "its edge through both ends of the span",
        ),
        Formula("miss", "nearest_rise - rise"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("Euclid, Elements", "book III, proposition 35", "identity", "Of two chords that cross."),
        Source("Euclid, Elements", "book III, proposition 21", "identity", "Why two laths at a fixed angle draw it."),
        Source("Points by the rise at each step of the span; tracing round a tin", basis="common practice"),
    ),
    limits_of=(
        "Parts of a circle up to half of one, with a span up to 20 m. A bent lath is not quite a circle; an ellipse is "
        "none at all."
    ),
    cautions=(
        Caution(
            "None of your round things is as wide as the span: draw it by its points, or with two laths.",
            when=lambda v: bool(v["things"]) and v["nearest"] is None,
            source="geometry",
        ),
        Caution(
            "The centre is too far off for a trammel at the bench: draw it by its points, or with two laths.",
            when=lambda v: v["radius"] > LONG,
            source="common practice",
        ),
    ),
    example=Example(
        {
            "span": "9 3/4 in",
            "rise": "1 1/2 in",
            "things": "tea tray x 16 in; bucket x 11 in; paint tin x 176 mm",
        },
        "The top edge of the comment-card box's back is to rise in a curve, 1 1/2 in over its 9 3/4 in.",
    ),
    carry_on=(
        Carry("stepping", {"line": "arc_length"}, "Step the curve off into equal parts"),
        Carry("spacing", {"opening": "arc_length"}, "Space slats or pegs along the curve"),
    ),
)
