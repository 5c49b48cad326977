"""Clamping: how hard a joint is pressed, with how many clamps, where, and how long by the bottle."""

from calc.declare import Carry, Caution, Example, Formula, Source, Sum
from calc.sums._clamping import proof, work
from calc.sums._clamping_figure import figure
from calc.sums._clamping_form import ANSWERS, GIVENS

SUM = Sum(
    id="clamping",
    title="Clamping",
    moment="join",
    question="How many clamps, how hard, and for how long?",
    asks=(
        "how hard to clamp a joint",
        "how many clamps for this joint",
        "clamp pressure for hardwood",
        "force of a clamp on a glued face",
        "how far apart should clamps be",
        "how long to leave it in the clamps",
        "glue in a cold workshop",
        "cramps for a lipping",
        "psi for gluing wood",
    ),
    purpose=(
        "From a glued face and the wood over it: the force, how many clamps and where, what each must press, and the "
        "time in them by the bottle's own label."
    ),
    givens=GIVENS,
    answers=ANSWERS,
    work=work,
    formulas=(
        Formula("area", "length * width"),
        Formula("force", "pressure * length * width"),
        Formula("apart", "2 * through", "pressure fans out at 45° through the wood"),
        Formula("by_reach", "ceil(length / apart)"),
        Formula("by_force", "ceil(force / clamp)"),
        Formula("spacing", "length / clamps"),
        Formula("first", "length / clamps / 2"),
        Formula("each_force", "force / clamps"),
        Formula("across", "ceil(width / apart)"),
        Formula("colder", "max(0, label_at - shop)"),
        Formula("wait", "minutes * 2 ** (colder / 10)", "twice as long for 10 °C colder: low confidence"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "US Forest Products Laboratory, Wood Handbook, chapter on adhesives",
            "",
            "memory",
            "700 kPa (100 psi) for the lightest woods, 1700 kPa (250 psi) for the densest: check.",
        ),
        Source("Pressure fans out at 45° from a clamp", "", "common practice"),
        Source(
            "Twice the time for every 10 °C colder",
            "",
            "common practice",
            "Low confidence: a rule of thumb for how slowly things set, not the glue maker's.",
        ),
        Source("The time in the clamps", "the bottle's own label", "common practice", "What it says goes before this."),
    ),
    cautions=(
        Caution(
            "Clamp it dry first and stop when the joint is closed with a thin bead along it: the pressure here is "
            "from memory, and too much starves the joint. Watch fingers between jaws, and keep bars from tipping."
        ),
        Caution("Follow the glue maker's own words on temperature, time, gloves and fresh air."),
        Caution(
            "The time in the clamps has low confidence: thick, wet or dense wood sets slower. Try the squeeze-out in a "
            "corner, and do not load the joint for a day.",
            lambda v: v["wait"] is not None,
        ),
        Caution(
            "Your shop is colder than the glue may be used: warm wood, glue and room first. No time is given.",
            lambda v: v["coldest"] is not None and v["shop"] < v["coldest"],
        ),
        Caution(
            "The joint is wider than the pressure fans out: lay stiff cauls across it, or set clamps in more rows.",
            lambda v: v["across"] > 1,
        ),
    ),
    carry_on=(
        Carry("glue-up", {"thickness": "width", "panel_length": "length"}, "Strips and clamps for a whole panel"),
    ),
    limits_of=(
        "A flat joint pressed square to its face through solid wood or cauls. Clamps that push on one another, mitres "
        "and curved work need shaped blocks, and are not reckoned."
    ),
    example=Example(
        {
            "length": "260 mm",
            "width": "16 mm",
            "through": "50 mm",
            "wood": "dense",
            "minutes": "30",
            "shop": "14 °C",
            "coldest": "10 °C",
        },
        "A 30 mm ash lipping is glued to the lid of the comment-card box under a 20 mm caul, in a cool shop.",
    ),
)
