"""Legs: rake and splay, or a lean along its sight line; what to drill, how long a leg, how its shoulder is cut."""

from calc.declare import AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.sums import _legs_form as form
from calc.sums._legs import proof, work
from calc.sums._legs_figure import figure

SUM = Sum(
    id="legs",
    title="Leaning legs",
    moment="mark-out",
    question="At what angle do I drill for legs that lean two ways, and how long are they?",
    asks=(
        "rake and splay of stool legs",
        "what angle to drill for chair legs",
        "sight line and resultant angle",
        "leg length for a leaning leg",
        "splayed table legs",
        "how far apart are the feet of a stool",
        "cut the bottom of angled legs level",
        "shoulder angle on a raked leg",
        "compound angle for legs",
    ),
    purpose=(
        "From rake and splay, or a lean and its sight line: the one angle to drill at and the line to drill along, the "
        "leg's length, where its foot stands, and the lines of its shoulder and foot."
    ),
    givens=form.GIVENS,
    any_of=AnyOf(2, ("rake", "splay", "lean", "sight")),
    answers=form.ANSWERS,
    work=work,
    formulas=(
        Formula("lean", "atan(sqrt(tan(rake) ** 2 + tan(splay) ** 2))", "the tangents make a right triangle"),
        Formula(
            "splay", "atan(sqrt(max(0, tan(lean) ** 2 - tan(rake) ** 2)))", "the same triangle, backwards", within=1e-5
        ),
        Formula("rake", "atan(sqrt(max(0, tan(lean) ** 2 - tan(splay) ** 2)))", within=1e-5),
        Formula("rake", "atan(tan(lean) * sin(sight))"),
        Formula("splay", "atan(tan(lean) * cos(sight))"),
        Formula(
            "sight",
            "2 * atan(tan(rake) / (tan(lean) + tan(splay)))",
            "the angle whose tangent is tan rake by tan splay, good without splay too",
        ),
        Formula("drill", "90 - lean"),
        Formula("sight_back", "90 - sight"),
        Formula("leg", "height / cos(lean)"),
        Formula("bore", "seat / cos(lean)"),
        Formula("whole", "(height + seat) / cos(lean)"),
        Formula("drop", "thick * tan(lean)"),
        Formula("blank", "whole + drop"),
        Formula("front_line", "splay"),
        Formula("side_line", "rake"),
        Formula("out", "height * tan(splay)"),
        Formula("back", "height * tan(rake)"),
        Formula("foot", "height * tan(lean)"),
        Formula("feet", "holes + 2 * out"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("A line in space and its two views", "tangents of the views, by Pythagoras", "identity"),
        Source("Rake, splay, sight line: the chairmaker's words and way of drilling", "", "common practice"),
    ),
    limits_of=(
        "A level seat on a level floor; rake and splay up to 45°, the whole lean up to 55°. It does not say what a "
        "stool bears, nor when it tips."
    ),
    cautions=(
        Caution(
            "Clamp the seat, hold the brace or drill with both hands, and stop when the point shows: finish from the "
            "other side.",
            source="general hand-tool practice, from memory",
        ),
        Caution(
            "Feet that stand inside the edge of the seat let it tip: set the holes wider, or lean the legs more. What "
            "people sit or stand on should be tried with care, low down and with more than their weight.",
            source="common practice",
        ),
    ),
    example=Example(
        {
            "rake": "8",
            "splay": "12",
            "height": "10 1/2 in",
            "seat": "1 3/8 in",
            "thick": "1 1/2 in",
            "holes": "9 in",
        },
        "A low stool under the comment-card box, so that children can reach the slot: its four legs rake 8° and "
        "splay 12°.",
    ),
    carry_on=(
        Carry("bevel", {"angle": "drill"}, "Set the bevel gauge to drill by"),
        Carry("bevel", {"angle": "sight"}, "Set a second gauge to draw the sight line"),
        Carry("taper", {"length": "whole", "start": "thick"}, "Taper the legs"),
        Carry("octagon", {"width": "thick"}, "Make the legs eight-sided or round"),
    ),
)
