"""Hang: the shear and the pull on the fixings of a thing hung on a wall."""

from calc.declare import Answer, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Count, Length, Limit, Number
from calc.sums._hang import proof, work
from calc.sums._hang_figure import figure
from calc.typed.measures import Force, Mass

HEAVY = 23
"""Kilograms that the NIOSH lifting equation starts from, held close and well: from memory."""
SUM = Sum(
    id="hang",
    title="Hang on a wall",
    moment="fit",
    question="What must the fixings on the wall hold?",
    asks=(
        "what must the wall fixings hold",
        "how strong a screw to hang a box",
        "pull on the top screws",
        "shear on a wall fixing",
        "hang a cabinet on the wall",
        "will the wall plug pull out",
        "which anchor for a shelf",
        "fixings for a heavy box",
        "how many screws to hang it",
    ),
    purpose="From the mass with what it holds, how far it stands out and where it is fixed: what bears down on each "
    "fixing, the pull out of the wall on each of the top ones, and what they should be rated for.",
    givens=(
        Mass(
            name="mass",
            label="Mass, empty",
            help="Of the thing itself: weigh it, or let the sum called weight reckon it.",
            limit=Limit("10 g", "500 kg"),
        ),
        Mass(
            name="contents",
            label="Mass of what it holds",
            help="As full as it will ever be.",
            default="0 kg",
            default_why="nothing is added that you have not asked for",
            limit=Limit("0 kg", "1000 kg"),
        ),
        Length(
            name="projection",
            label="Stands out from the wall",
            help="From the wall to its front.",
            limit=Limit("5 mm", "1.5 m"),
        ),
        Length(
            name="lever",
            label="Top fixings above the bottom edge",
            help="Plumb, from where its back bears on the wall lowest, to the top fixings.",
            limit=Limit("10 mm", "3 m"),
        ),
        Count(
            name="top",
            label="Top fixings",
            help="How many, all at one height.",
            default="2",
            default_why="one lets it turn",
            limit=Limit("1", "20"),
        ),
        Count(
            name="lower",
            label="Lower fixings",
            help="They share the weight; what they hold of the pull is not counted.",
            default="0",
            default_why="none",
            limit=Limit("0", "20"),
        ),
        Length(
            name="lower_height",
            label="Lower fixings above the bottom edge",
            help="For the drawing, and to see that they are the lower ones.",
            default="0 mm",
            default_why="near the bottom edge",
            limit=Limit("0 mm", "3 m"),
        ),
        Length(
            name="centre",
            label="Middle of its weight from the wall",
            help="Where it would balance; leave it empty for half of how far it stands out.",
            optional=True,
            limit=Limit("1 mm", "1.5 m"),
        ),
        Force(
            name="pull",
            label="Hand on it, downwards",
            help="What somebody may bear on it with, such as a child who holds on: 200 N or 45 lbf.",
            default="0 N",
            default_why="nothing is added that you have not asked for",
            limit=Limit("0 N", "2 kN"),
        ),
        Length(
            name="reach",
            label="Hand from the wall",
            help="Where it bears on it; leave it empty for the very front.",
            optional=True,
            limit=Limit("1 mm", "2 m"),
        ),
        Number(
            name="rating",
            label="Times to spare",
            help="How many times what is reckoned here a fixing should be rated for.",
            default="4",
            default_why="common practice, of low confidence: knocks, crumbling plaster, a screw that bears alone",
            limit=Limit("1", "20"),
        ),
    ),
    answers=(
        Answer(name="pull_each", label="Pull on each top fixing", kind="force", help="Straight out of the wall."),
        Answer(
            name="shear_each", label="Down on each fixing", kind="force", help="Of the weight, and of a hand on it."
        ),
        Answer(name="both_each", label="Both together on a top fixing", kind="force", help="Aslant."),
        Answer(name="pull_rated", label="Pull to be rated for", kind="force", help="On each top fixing."),
        Answer(name="shear_rated", label="Shear to be rated for", kind="force", help="On each fixing."),
        Answer(name="shear_top", label="Down on each should the lower ones fail", kind="force", help="Top ones only."),
        Answer(name="all_mass", label="Mass in all", kind="mass"),
        Answer(name="weight", label="Weight in all", kind="force"),
        Answer(name="pull_all", label="Pull on the top fixings together", kind="force"),
        Answer(name="bearing", label="Bottom edge presses on the wall", kind="force", help="As much as the top pulls."),
        Answer(name="turning", label="Turning moment in newton metres", kind="number", help="About the bottom edge."),
        Answer(
            name="centre", label="Middle of its weight from the wall", kind="length", help="Half, unless you give it."
        ),
        Answer(name="reach", label="Hand from the wall", kind="length", help="At the front, unless you give it."),
    ),
    work=work,
    formulas=(
        Formula("all_mass", "mass + contents", "in kg"),
        Formula("weight", "all_mass * 9.80665", "newtons from kilograms"),
        Formula("turning", "(weight * centre + pull * reach) / metre", "about the bottom edge"),
        Formula("pull_all", "turning * metre / lever", "the top fixings hold it all"),
        Formula("pull_each", "pull_all / top"),
        Formula("shear_each", "(weight + pull) / (top + lower)"),
        Formula("shear_top", "(weight + pull) / top"),
        Formula("both_each", "sqrt(pull_each ** 2 + shear_each ** 2)"),
        Formula("pull_rated", "rating * pull_each"),
        Formula("shear_rated", "rating * shear_each"),
        Formula("bearing", "pull_all"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("Statics: a body at rest, moments about the edge it bears on", "", "identity"),
        Source("Standard gravity, 9.80665 m/s²", "", "memory", "From the 3rd General Conference on Weights, 1901."),
        Source("Bottom edge as pivot; four times to spare; fixings share alike", "", "common practice"),
    ),
    limits_of="A stiff thing at rest on a flat wall, bearing on its bottom edge. Top fixings at one height, each "
    "taking an equal share, which real ones never quite do. Knocks and swinging are not reckoned. It is no promise "
    "that a fixing or a wall holds.",
    cautions=(
        Caution(
            "Fix into a stud or masonry, or use an anchor rated for this wall by its maker; follow the local codes, "
            "and ask a licensed builder where people pass beneath.",
            None,
            "common practice",
        ),
        Caution("Check for cables and pipes before you bore into the wall.", None, "from memory"),
        Caution(
            "One top fixing carries all the pull, and lets it turn: use two at least.",
            lambda v: v["top"] == 1,
            "common practice",
        ),
        Caution(
            "The top fixings pull harder than it weighs: put them higher, or make the back reach lower.",
            lambda v: v["pull_all"] > v["weight"],
            "common practice",
        ),
        Caution(
            "This is more than 23 kg (51 lb), the load from which the NIOSH lifting equation starts (from memory): "
            "lift it two together, and hang it empty.",
            lambda v: v["all_mass"] > HEAVY,
        ),
    ),
    example=Example(
        {"mass": "3.2 kg", "contents": "1.5 kg", "projection": "230 mm", "lever": "300 mm", "pull": "100 N"},
        "The comment-card box, full of cards, hangs in the reading room on two screws through its back; children lean "
        "on it.",
    ),
    carry_on=(Carry("nail-hold", {}, "What a nail's shank holds in wood"), Carry("weight", {}, "What the parts weigh")),
)
