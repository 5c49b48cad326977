"""Stepping: a line or a circle into equal steps with dividers, and what a setting rounded to the rule gathers."""

from calc import rule
from calc.declare import Answer, AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Count, Length, Limit
from calc.sums._stepping import proof, work
from calc.sums._stepping_figure import figure

PLAIN_TO_SEE = 0.5
"""Millimetres gathered from which the last step is plainly longer or shorter: common practice."""

SUM = Sum(
    id="stepping",
    title="Stepping off",
    moment="sketch",
    question="To what do I set the dividers for so many equal steps?",
    asks=(
        "divide a circle into equal parts",
        "divider setting for 7 steps",
        "step off a circle with dividers",
        "chord for n parts of a circle",
        "divide a line into equal parts with dividers",
        "holes round a circle",
        "why does the last step not come out",
        "how far out after stepping off 12 times",
        "mark a clock face",
    ),
    purpose=(
        "From a line or a circle and a number of steps, the setting of the dividers, and how much n steps are out when "
        "that setting is rounded to a mark of the rule."
    ),
    givens=(
        Length(
            name="line",
            label="Line",
            help="The straight line to be parted, end to end.",
            limit=Limit("0 in", "20 m", above=True),
        ),
        Length(
            name="diameter",
            label="Diameter of the circle",
            help="Straight across the circle you step round.",
            limit=Limit("0 in", "20 m", above=True),
        ),
        Length(
            name="radius",
            label="Radius of the circle",
            help="What the circle was struck with.",
            limit=Limit("0 in", "10 m", above=True),
        ),
        Count(name="count", label="Steps", help="How many equal steps to part it into.", limit=Limit("2", "360")),
        rule.Mark(
            name="mark",
            label="Finest mark",
            help="The finest mark on the rule you set the dividers by.",
            default_why="common practice: the rule you always use",
        ),
    ),
    any_of=AnyOf(1, ("line", "diameter", "radius")),
    answers=(
        Answer(name="setting", label="Divider setting", kind="length", help="Straight from point to point."),
        Answer(
            name="set_to",
            label="Nearest mark",
            kind="length",
            help="The mark of your rule that comes nearest to the setting and can be stepped.",
        ),
        Answer(
            name="gathered",
            label="Gathered error",
            kind="fine",
            help="After all steps at that mark, how far past the end you are; below nothing, how far short.",
        ),
        Answer(
            name="last_gap",
            label="Last gap at that mark",
            kind="length",
            help="What is left, straight across, after all steps but one; below nothing they have run past the end.",
        ),
        Answer(
            name="hair",
            label="Setting beyond that mark",
            kind="fine",
            help="Open the dividers from the mark by this; below nothing, close them.",
        ),
        Answer(name="turn", label="Turn of one step", kind="angle", help="At the centre."),
        Answer(name="set_turn", label="Turn of a step at that mark", kind="angle"),
        Answer(name="along", label="One step along the edge", kind="length", help="As a tape lies round the rim."),
        Answer(name="diameter", label="Diameter of the circle", kind="length"),
        Answer(name="radius", label="Radius of the circle", kind="length"),
    ),
    work=work,
    formulas=(
        Formula("diameter", "2 * radius"),
        Formula("radius", "diameter / 2"),
        Formula("turn", "360 / count"),
        Formula("setting", "line / count"),
        Formula("setting", "diameter * sin(180 / count)", "the chord of half the turn, twice"),
        Formula("set_turn", "2 * asin(set_to / diameter)"),
        Formula("gathered", "count * set_to - line"),
        Formula("gathered", "pi * diameter * (count * set_turn - 360) / 360", "along the edge"),
        Formula("last_gap", "line - (count - 1) * set_to"),
        Formula("last_gap", "diameter * sin(180 - (count - 1) * set_turn / 2)"),
        Formula("hair", "setting - set_to"),
        Formula("along", "pi * diameter / count"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("Euclid, Elements", "book III, proposition 3", "identity", "Half a chord is the sine of half its turn."),
        Source("Euclid, Elements", "book VI, proposition 9", "identity", "To cut off a part of a line."),
        Source("Trimming the dividers by a share of what is left over", basis="common practice"),
    ),
    limits_of=(
        "2 to 360 steps of at least half a mark of the rule, on a circle at least a mark across. Gathered error is "
        "told for steps that never slip."
    ),
    cautions=(
        Caution(
            "Stepped at the nearest mark the last gap will show: open or close the dividers by what is told, step "
            "again, and prick nothing until the last step comes home.",
            when=lambda v: abs(v["gathered"]) > PLAIN_TO_SEE,
            source="common practice",
        ),
    ),
    example=Example(
        {"diameter": "6 1/2 in", "count": "12"},
        "The hours of the ash clock face beside the reading room's comment-card box, on a circle 6 1/2 in across.",
    ),
    carry_on=(
        Carry("spacing", {"opening": "line"}, "Mark a line from one end instead: nothing gathers"),
        Carry("mitre", {"sides": "count", "across_corners": "diameter"}, "Frame the circle with as many sides"),
        Carry("bevel", {"angle": "turn"}, "Set the bevel gauge to one turn"),
    ),
)
