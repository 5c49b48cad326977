"""Nail hold: what draws a smooth nail straight out, by three published forms kept apart."""

from calc.declare import AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.sums._nail_hold import SHALLOW, proof, work
from calc.sums._nail_hold_figure import figure
from calc.sums._nail_hold_form import ANSWERS, GIVENS
from calc.tables import CHECK

SUM = Sum(
    id="nail-hold",
    title="Hold of a nail",
    moment="join",
    question="What pulls a nail out?",
    asks=(
        "how much does a nail hold",
        "what pulls a nail out",
        "nail withdrawal",
        "holding power of a nail",
        "withdrawal load in pine",
        "pull out strength of a nail",
        "do nails hold better in oak",
        "allowable load for one nail",
    ),
    purpose=(
        "From the wood, the nail and how deep it is in: the pull that draws it on average, by the present and by the "
        "older form, and what the American code allows. The three are of different kinds and never to be mixed."
    ),
    givens=GIVENS,
    any_of=AnyOf(1, ("nail", "own")),
    answers=ANSWERS,
    work=work,
    formulas=(
        Formula(
            "gravity_12",
            "gravity / (1 - 0.265 * gravity * (1 - 12 / 30))",
            "ovendry mass on the volume at 12 percent, Wood Handbook equation 4-13",
        ),
        Formula("gravity_0", "gravity / (1 - 0.265 * gravity)", "ovendry mass on the ovendry volume, equation 4-13"),
        Formula(
            "ultimate",
            "54.12 * gravity_12 ** 2.5 * (thick / mm) * (into / mm)",
            "in newtons: Wood Handbook, equation 8-1; how hard on average",
        ),
        Formula("allowable_inch", "1380 * gravity_0 ** 2.5 * (thick / inch)", "National Design Specification"),
        Formula("allowable", "allowable_inch * (into / inch) * 4.4482216152605", "newtons to the pound"),
        Formula("older_inch", "6900 * gravity_0 ** 2.5 * (thick / inch)", "Technical Note 236 and FPL-093"),
        Formula("older", "older_inch * (into / inch) * 4.4482216152605", "newtons to the pound"),
        Formula("depths", "into / thick"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "US Forest Products Laboratory, Wood Handbook, FPL-GTR-282 (2021)",
            "page 8-2, equation 8-1; page 4-12, equation 4-13",
            "read",
            "Ultimate, an average; gravity on the volume at 12 percent. As digitised by others.",
        ),
        Source(
            "FPL Technical Note 236 (1931, revised 1958) and Research Note FPL-093 (1965)",
            "nail-withdrawal resistance of American woods",
            "read",
            "The older ultimate, 6900; gravity on ovendry weight and volume.",
        ),
        Source(
            "National Design Specification",
            "as quoted in a worked article",
            "read",
            "Allowable, 1380: a fifth of 6900.",
        ),
        Source(
            "A book of structural timber design to Eurocode 5",
            "worked example",
            "read",
            "Smooth nails: 8 diameters in.",
        ),
        Source("Loss of hold in wood that dries; no load on nails in end grain", "", "memory"),
    ),
    cautions=(
        Caution(
            "Do not hang anything that can hurt by nails pulled straight out: turn the joint so that they are pushed "
            "across, or use screws or bolts. Where people are under it follow your local code and licensed practice."
        ),
        Caution(
            "This is one nail, alone. Nails in a row do not share a pull evenly: so many times one nail is no promise."
        ),
        Caution(
            "It holds for side grain only. In end grain, and in wood that dries after it is nailed, a nail may lose "
            "most of its hold (from memory, check)."
        ),
        Caution(
            "Less than eight diameters are in: Eurocode 5 does not count a smooth nail as shallow as that.",
            lambda v: v["depths"] < SHALLOW,
        ),
        Caution(
            "A figure here is from memory and not from a source: check the nail, or weigh a board.",
            lambda v: CHECK in v["figure_from"] or CHECK in v["thick_from"],
        ),
    ),
    carry_on=(Carry("nail-line", {"own": "thick"}, "How many along a joint, and where"),),
    limits_of=(
        "One smooth round nail, pulled straight out of the side grain of sound wood soon after it was driven. Not for "
        "ringed, twisted, coated or clinched nails, nor a push across the nail, nor boards made of chips or ply."
    ),
    example=Example(
        {"species": "white ash", "nail": "6d common nail", "into": "34 mm"},
        "The back of the comment-card box is nailed to its ash sides, with 34 mm of each nail in the side.",
    ),
)
