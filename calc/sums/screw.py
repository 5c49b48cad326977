"""Screw: what its number means, what holes to bore for it, how long it should be."""

from calc.declare import AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.sums._screw import SOLD, SUNK, proof, rule, work
from calc.sums._screw_figure import figure
from calc.sums._screw_form import ANSWERS, GIVENS

SUM = Sum(
    id="screw",
    title="Screw",
    moment="join",
    question="What hole for a screw, and how long a screw?",
    asks=(
        "what size hole for a no 8 screw",
        "pilot hole for a screw",
        "clearance hole for a no 10 screw",
        "how thick is a number 6 screw",
        "pilot hole in hardwood",
        "how long a screw",
        "screw gauge to mm",
        "drill size for a wood screw",
        "countersink for a screw",
        "screw into oak without snapping",
    ),
    purpose=(
        "From the screw's number and the thickness it holds: its thickness, clearance hole, pilot holes in soft and in "
        "hard wood with the nearest drills, and its length."
    ),
    givens=GIVENS,
    any_of=AnyOf(1, ("number", "own")),
    answers=ANSWERS,
    work=work,
    formulas=(
        Formula("diameter", "(0.060 + 0.013 * number) * inch", "the rule for numbers attributed to ASME B18.6.1"),
        Formula("root", "diameter * root_ratio / 100"),
        Formula("pilot_soft", "0.70 * root", "about: Wood Handbook"),
        Formula("pilot_hard", "0.90 * root", "about: Wood Handbook"),
        Formula("head", "2 * diameter", "common practice"),
        Formula("wanted", "max(held + 7 * diameter, 10.5 * diameter)", "seven diameters of thread in the second piece"),
        Formula("room", "held + second - margin"),
        Formula("thread", "length * 2 / 3"),
        Formula("into", "length - held"),
        Formula("gripping", "min(into, thread)"),
        Formula("gripped", "gripping / diameter"),
        Formula("left", "held + second - length"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "GNU Units, definitions 3.22 (2024)",
            "wood and machine screws",
            "read",
            "0.060 in and 0.013 in a number, attributed there to ASME B18.6.1: the rule used here.",
        ),
        Source(
            "US Forest Products Laboratory, Wood Handbook, FPL-GTR-282 (2021)",
            "page 8-10; page 8-11; table 8-9",
            "read",
            "Pilot about 70 % of the root in softwood, 90 % in hardwood; 7 diameters of thread in. As digitised by "
            "others.",
        ),
        Source("I. S. Griffith, Carpentry (1916)", "table of screw gauges", "read", "Numbers as they were: thinner."),
        Source(
            "W. Noyes, Handwork in Wood (1910)", "screws", "read", "Thread about two thirds; a hole it slips through."
        ),
        Source("Root about two thirds of the plain part", "", "memory", "Of the Wood Handbook: measure yours."),
        Source(
            "Lengths sold; heads twice the plain part, of 82°; 0.2 mm to slip through; wood left beyond the point",
            "",
            "common practice",
        ),
    ),
    cautions=(
        Caution(
            "The root is reckoned from memory, and screws with a thread all the way are thinner there: try drill and "
            "screw in an offcut of the same wood. Wear eye protection.",
            lambda v: v["measured"] is None,
        ),
        Caution("In hard wood drive a steel screw first, then the brass one, and wax both: brass snaps."),
        Caution(
            "Less than seven diameters of thread are in the second piece: it holds less than it could.",
            lambda v: v["gripped"] < rule("screw_penetration"),
        ),
        Caution(
            "The plain part reaches into the second piece: bore that much of the pilot as wide as the screw.",
            lambda v: v["thread"] < v["into"],
        ),
        Caution(
            "The countersunk head is deeper than the piece held: take a thinner screw, or one with a round head.",
            lambda v: v["held"] < SUNK * v["diameter"],
            "common practice",
        ),
        Caution(
            "So thick a screw is hardly sold so short, nor a thin one so long: ask for it, or take another number.",
            lambda v: not SOLD[0] <= v["length"] / v["diameter"] <= SOLD[1],
            "common practice",
        ),
        Caution(
            "What hangs over people wants more than a rule of thumb: follow your local code and licensed practice."
        ),
    ),
    carry_on=(
        Carry("convert", {"length": "length"}, "The length on every rule"),
        Carry("spacing", {}, "Space several equally"),
    ),
    limits_of=(
        "Countersunk wood screws, number 0 to 24 or 1.5 to 9.5 mm thick, up to 6 in long, into side grain. It does not "
        "say what load a screw carries; in end grain it carries much less."
    ),
    example=Example(
        {"number": "8", "held": "16 mm", "second": "45 mm"},
        "The 16 mm back of the comment-card box is screwed to a 45 mm batten on the reading room's wall.",
    ),
)
