"""Octagon: the gauge line that makes a square stick eight-sided, the next for sixteen, and the old rules' miss."""

from calc.declare import Answer, AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Length, Limit
from calc.sums._octagon import figure, proof, work

SIZE = Limit("1 mm", "2 m")

SUM = Sum(
    id="octagon",
    title="Octagon from a square",
    moment="mark-out",
    question="Where do I gauge a square stick to make it eight-sided?",
    asks=(
        "make a square leg octagonal",
        "eight sides from a square",
        "gauge line for an octagon",
        "how to make a dowel by hand",
        "round a square stick with a plane",
        "sixteen sides from eight",
        "spar gauge",
        "5 7 5 rule for an octagon",
        "turn a square blank round before the lathe",
        "eight square a handle",
    ),
    purpose=(
        "From the width of a square stick, or one size of the octagon wanted: where to gauge for eight sides and then "
        "for sixteen, what is left to round, and how far the old rules of whole parts miss."
    ),
    givens=(
        Length(name="width", label="Width of the square", help="Across the stick, planed true and square.", limit=SIZE),
        Length(name="side", label="One of the eight sides", help="Along one flat, arris to arris.", limit=SIZE),
        Length(name="corners", label="Across corners", help="From one arris to the one opposite.", limit=SIZE),
        Length(
            name="small",
            label="Width at the other end",
            help="If the stick is planed to a taper first; leave it empty if it is not.",
            optional=True,
            limit=SIZE,
        ),
    ),
    any_of=AnyOf(1, ("width", "side", "corners")),
    answers=(
        Answer(
            name="gauge", label="Gauge line from each arris", kind="length", help="Two lines on each of four faces."
        ),
        Answer(
            name="gauge_small", label="Gauge line at the other end", kind="length", help="A straight line joins them."
        ),
        Answer(name="side", label="One of the eight sides", kind="length"),
        Answer(name="width", label="Width of the square", kind="length"),
        Answer(name="corners", label="Across corners", kind="length"),
        Answer(name="off_arris", label="Planed off each arris", kind="length", help="Square to the new face."),
        Answer(
            name="gauge_sixteen",
            label="For sixteen, line from each new arris",
            kind="length",
            help="On all eight faces, from both arrises.",
        ),
        Answer(name="side_sixteen", label="One of sixteen sides", kind="length"),
        Answer(name="off_eight", label="Planed off each of the eight arrises", kind="fine", help="Square to the face."),
        Answer(name="proud", label="Left proud of round, at sixteen", kind="fine", help="At each arris."),
        Answer(
            name="rules",
            label="Old rules of whole parts",
            kind="rows",
            columns=(
                Answer(name="parts", label="Parts", kind="text"),
                Answer(name="by_rule", label="Gauge line", kind="length"),
                Answer(name="off", label="Out by", kind="fine"),
                Answer(name="uneven", label="Four sides wider by", kind="fine"),
            ),
        ),
    ),
    work=work,
    formulas=(
        Formula("width", "side * (1 + sqrt(2))"),
        Formula("width", "corners * cos(180 / 8)"),
        Formula("gauge", "width * (1 - 1 / sqrt(2))", "the corner cut off is a right triangle with two equal legs"),
        Formula("side", "width - 2 * gauge", "what the two lines leave, the width times the root of two less one"),
        Formula("corners", "width / cos(180 / 8)"),
        Formula("gauge_small", "small * (1 - 1 / sqrt(2))"),
        Formula("off_arris", "gauge / sqrt(2)"),
        Formula("side_sixteen", "width * tan(180 / 16)"),
        Formula("gauge_sixteen", "(side - side_sixteen) / 2"),
        Formula("off_eight", "gauge_sixteen * sin(180 / 8)"),
        Formula("proud", "width / 2 * (1 / cos(180 / 16) - 1)"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("Euclid, Elements", "book I, proposition 47", "identity", "The diagonal of a square is its side by √2."),
        Source(
            "F. T. Hodgson, ABC of the Steel Square (1908)",
            "the eight-square scale",
            "read",
            "Half a side steps off from the middle of each face. It is called nearly exact there; it is exact.",
        ),
        Source(
            "5 : 7 : 5, and 7 : 10 : 7 on a rule two feet long laid aslant",
            "",
            "common practice",
            "Whole parts that come near; the miss beside each is worked out here.",
        ),
    ),
    limits_of="A stick that is square in section, and one that tapers evenly. Planed to sixteen it is a touch proud.",
    cautions=(
        Caution(
            "Lie the stick in a V or a cradle against a stop, so that it cannot roll under the plane; keep fingers "
            "above its arrises, and ease each sharp one before you handle it.",
            source="general hand-tool practice, from memory",
        ),
    ),
    example=Example(
        {"width": "1 1/2 in", "small": "1 in"},
        "The legs of the low stool under the comment-card box start 1 1/2 in square, are planed to 1 in at the foot, "
        "then made eight-sided and round.",
    ),
    carry_on=(
        Carry("taper", {"start": "width", "end": "small"}, "Taper the stick before you gauge it"),
        Carry("mitre", {"across_flats": "width"}, "Build an eight-sided ring as wide, of eight parts"),
    ),
)
