"""Taper: length, widths at both ends, angle and taper in a foot; any three give the others."""

from calc.declare import Answer, AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Angle, Count, Length, Limit
from calc.sums._taper import figure, proof, work

SIZE = Limit("0 in", "1 m", above=True)
STEEP = 15
"""Degrees from which a plane wants to be taken down the slope with care, since the grain runs out."""

SUM = Sum(
    id="taper",
    title="Taper",
    moment="mark-out",
    question="How much does it taper, and how wide is it where?",
    asks=(
        "taper a table leg",
        "taper per foot",
        "angle of a taper",
        "how wide is the foot of a tapered leg",
        "taper angle from two widths",
        "wedge 1 in 8",
        "length of a wedge",
        "mark a tapered leg",
        "where does the taper come to a point",
    ),
    purpose=(
        "From any three of length, large end, small end and how fast it narrows: the others, what to plane off each "
        "face, and the width at every quarter to test it by."
    ),
    givens=(
        Length(
            name="length",
            label="Length of the taper",
            help="Along the straight face, or along the middle line when both faces are planed.",
            limit=Limit("0 in", "20 m", above=True),
        ),
        Length(name="start", label="Width at the large end", help="Where the taper begins.", limit=SIZE),
        Length(
            name="end",
            label="Width at the small end",
            help="Where the taper stops; nothing for a wedge that comes to a point.",
            limit=Limit("0 in", "1 m"),
        ),
        Angle(
            name="angle",
            label="Angle of each planed face",
            help="Between the planed face and the length, in degrees or as 1 in 8.",
            limit=Limit("0", "60", above=True),
        ),
        Length(
            name="per_foot",
            label="Taper in a foot",
            help="How much narrower it is after a foot, both faces together.",
            limit=Limit("0 in", "24 in", above=True),
        ),
        Count(
            name="faces",
            label="Opposite faces planed",
            help="1 when one face stays straight, 2 when both are planed alike.",
            default="1",
            limit=Limit("1", "2"),
        ),
        Length(
            name="straight",
            label="Left straight before the taper",
            help="Such as the top of a leg, where the rails go in.",
            default="0",
            limit=Limit("0 in", "2 m"),
        ),
    ),
    any_of=AnyOf(3, ("length", "start", "end", "angle", "per_foot")),
    answers=(
        Answer(name="end", label="Width at the small end", kind="length"),
        Answer(name="start", label="Width at the large end", kind="length"),
        Answer(name="length", label="Length of the taper", kind="length"),
        Answer(name="angle", label="Angle of each planed face", kind="angle"),
        Answer(name="per_foot", label="Taper in a foot", kind="length", help="Both faces together."),
        Answer(name="drop", label="Planed off at the small end, each face", kind="length"),
        Answer(name="one_in", label="Each face slopes as 1 in", kind="number", help="The length that falls by one."),
        Answer(name="included", label="Angle between the two faces", kind="angle"),
        Answer(name="slant", label="Along the planed face", kind="length"),
        Answer(name="whole", label="Whole length", kind="length", help="With the straight part."),
        Answer(name="point", label="Would come to a point after", kind="length", help="From where the taper begins."),
        Answer(
            name="marks",
            label="Widths along it",
            kind="rows",
            columns=(
                Answer(name="at", label="From the large end", kind="length"),
                Answer(name="width", label="Width", kind="length"),
            ),
        ),
    ),
    work=work,
    formulas=(
        Formula("angle", "atan((start - end) / (faces * length))"),
        Formula("angle", "atan(per_foot / (faces * foot))"),
        Formula("per_foot", "faces * foot * tan(angle)"),
        Formula("per_foot", "(start - end) / length * foot"),
        Formula("length", "(start - end) / per_foot * foot"),
        Formula("length", "(start - end) / (faces * tan(angle))"),
        Formula("end", "start - length / foot * per_foot"),
        Formula("end", "start - faces * length * tan(angle)"),
        Formula("start", "end + length / foot * per_foot"),
        Formula("start", "end + faces * length * tan(angle)"),
        Formula("drop", "(start - end) / faces"),
        Formula("one_in", "length / drop"),
        Formula("included", "2 * angle"),
        Formula("slant", "sqrt(length ** 2 + drop ** 2)"),
        Formula("whole", "straight + length"),
        Formula("point", "length * start / (start - end)", "widths shrink evenly, to nothing at the point"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("Euclid, Elements", "book VI, proposition 2", "identity", "A line across a triangle cuts it in shares."),
        Source("Taper told as so much in a foot, both faces together", "", "common practice"),
    ),
    limits_of="Straight tapers that narrow evenly, in one view at a time: work a leg's two views apart.",
    cautions=(
        Caution(
            "Clamp the piece or lay it against a stop and a rest, and plane from the large end down to the small, with "
            "the grain; keep fingers above the arris.",
            source="general hand-tool practice, from memory",
        ),
        Caution(
            "At this angle the grain runs out through the planed face: saw the waste off first, and expect the small "
            "end to be weak.",
            when=lambda v: v["angle"] > STEEP,
            source="common practice",
        ),
    ),
    example=Example(
        {"length": "10 in", "start": "1 1/2 in", "end": "1 in", "faces": "2", "straight": "2 1/4 in"},
        "The legs of the low stool under the comment-card box stay 1 1/2 in at the top, for 2 1/4 in, and are then "
        "planed on all sides to 1 in at the foot.",
    ),
    carry_on=(
        Carry("bevel", {"angle": "angle"}, "Set the bevel gauge to the taper"),
        Carry("octagon", {"width": "start", "small": "end"}, "Gauge the tapered piece for eight sides"),
        Carry("slope", {"run": "length", "rise": "drop"}, "See the planed face as a slope"),
    ),
)
