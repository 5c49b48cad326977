"""Bevel: the two marks on a rule that set a bevel gauge nearest to an angle, and what they leave over."""

from calc import rule
from calc.declare import Answer, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Angle, Length, Limit
from calc.sums._bevel import PLAIN_TO_SEE, figure, proof, work

LEG = Limit("0 in", "20 m", above=True)

SUM = Sum(
    id="bevel",
    title="Bevel gauge",
    moment="mark-out",
    question="Which two marks on my rule set this angle?",
    asks=(
        "set a bevel gauge without a protractor",
        "set a sliding bevel to 14 degrees",
        "which marks on my rule give this angle",
        "angle from a framing square",
        "rise and run on my rule for an angle",
        "step off an angle with dividers",
        "chord for an angle",
        "complement of an angle",
        "how far out is my bevel",
    ),
    purpose="From an angle, or a rise and run, the two marks on the rule in hand that come nearest, and their miss.",
    givens=(
        Angle(
            name="angle",
            label="Angle",
            help="The angle to set, in degrees or as 1 in 7; or leave it empty and give rise and run.",
            optional=True,
            limit=Limit("0", "90", above=True, below=True),
        ),
        Length(name="rise", label="Rise", help="How much it rises in the run below.", optional=True, limit=LEG),
        Length(
            name="run", label="Run", help="How far along it rises that much, measured level.", optional=True, limit=LEG
        ),
        rule.Mark(
            name="mark",
            label="Finest mark",
            help="The finest mark on the rule you will set the gauge by.",
            default_why="common practice: the rule you always use",
        ),
        Length(
            name="longest",
            label="Longest leg",
            help="The longest leg that the gauge's blade and the board you draw on allow.",
            default="12 in",
            default_why="common practice: a one-foot rule",
            limit=Limit("1 in", "2 m"),
        ),
        Length(
            name="cut",
            label="Length of the cut",
            help="How far the line or cut made with the gauge will run.",
            default="12 in",
            default_why="common practice: drift is told over a foot",
            limit=Limit("0 in", "5 m", above=True),
        ),
        Length(
            name="radius",
            label="Radius for the chord",
            help="The radius you can strike with your dividers or trammel.",
            default="6 in",
            default_why="common practice: what a bench pair of dividers opens to",
            limit=Limit("0 in", "2 m", above=True),
        ),
    ),
    answers=(
        Answer(name="set_run", label="Run to mark", kind="length", help="Along the straight edge of a board."),
        Answer(
            name="set_rise", label="Rise to mark", kind="length", help="Square from that edge, at the end of the run."
        ),
        Answer(name="angle", label="Angle", kind="angle"),
        Answer(name="set_angle", label="Angle those marks give", kind="angle"),
        Answer(
            name="error",
            label="Left over, in degrees",
            kind="number",
            places=4,
            help="What the marks give, less what is wanted: below nothing is too shallow.",
        ),
        Answer(
            name="drift", label="Drift at the end of the cut", kind="fine", help="How far off the line the cut ends."
        ),
        Answer(
            name="coarse_run",
            label="Or run, in coarser marks",
            kind="length",
            help="The coarsest marks, easier to find, that set it so nearly as true that the drift does not show.",
        ),
        Answer(name="coarse_rise", label="Or rise, in coarser marks", kind="length", help="Square from the same edge."),
        Answer(name="coarse_error", label="What the coarser leave over, in degrees", kind="number", places=4),
        Answer(name="coarse_drift", label="Drift with the coarser marks", kind="fine"),
        Answer(name="complement", label="Complement", kind="angle", help="The same line measured from square."),
        Answer(
            name="chord",
            label="Chord to step off",
            kind="length",
            help="Strike the radius from the corner; step the chord along that arc.",
        ),
    ),
    work=work,
    formulas=(
        Formula("angle", "atan(rise / run)"),
        Formula("set_angle", "atan(set_rise / set_run)", "the nearest of all pairs of marks"),
        Formula("error", "set_angle - angle"),
        Formula("drift", "cut * tan(error)"),
        Formula("coarse_error", "atan(coarse_rise / coarse_run) - angle", "the nearest pair of the coarser marks"),
        Formula("coarse_drift", "cut * tan(coarse_error)"),
        Formula("complement", "90 - angle"),
        Formula("chord", "2 * radius * sin(angle / 2)"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "Euclid, Elements", "book III, proposition 3", "identity", "Half a chord is the sine of half its angle."
        ),
        Source("I. S. Griffith, Carpentry (1916)", "appendix, table of natural functions", "read"),
        Source(
            "Setting a gauge by two marks",
            basis="common practice",
            note="Of two that miss alike the longer is set truer; a drift of 0.25 mm is taken as plain to see.",
        ),
    ),
    limits_of="Angles above 0° and below 90°. For a blunter one set what is left of 180° and mark from the other side.",
    cautions=(
        Caution(
            "No pair of marks comes nearer, and the drift will show: a finer mark or a longer leg is worth having.",
            when=lambda v: abs(v["drift"]) > PLAIN_TO_SEE,
            source="common practice",
        ),
    ),
    example=Example(
        {"angle": "14 degrees", "cut": "9 1/2 in"},
        "The lid of the comment-card box lies at 14°, and its back end, 9 1/2 in across, is planed to that bevel.",
    ),
    carry_on=(
        Carry("slope", {"rise": "set_rise", "run": "set_run"}, "See the slope those marks give"),
        Carry("splay", {"lean": "complement"}, "Lean the sides of a tray by the complement"),
    ),
)
