"""Sag: how far a shelf bends, new and after years, and how far it may span."""

from calc.declare import Carry, Caution, Example, Formula, Source, Sum, Values
from calc.sums import _beams
from calc.sums._sag import LEFT_OUT, work
from calc.sums._sag_figure import figure
from calc.sums._sag_form import ANSWERS, GIVENS
from calc.tables import CHECK

DEEP = 14
"""Span over thickness at which stiffness is measured: shorter beams bend more by shear. Wood Handbook, from memory."""


def proof(v: Values) -> dict[str, float]:
    """The sag from the bending moments by a unit load; at the longest span the sag is the limit's."""
    moments = [_beams.by_moments(case) for case in (v["case"], _beams.CASES[v["case"]].own)]
    second = float(v["width"] * v["thickness"] ** 3) / 12
    pull = moments[0] * v["load_force"] + moments[1] * v["own_force"]
    span, most = float(v["span"]), v["span_most"]
    share = most / span
    load = v["load_force"] * (share if v["spread"] else 1)
    there = (moments[0] * load + moments[1] * v["own_force"] * share) * most**3 / (float(v["stiffness"]) * second)
    return {
        "the moments bend it as far": pull * span**3 / (float(v["stiffness"]) * second) / v["sag"] - 1,
        "at its longest span it sags as far as allowed": there * float(v["creep"] * v["ratio"]) / most - 1,
    }


SUM = Sum(
    id="sag",
    title="Shelf sag",
    moment="stock",
    question="How far will this shelf sag?",
    asks=(
        "how far will a shelf sag",
        "how thick should a shelf be",
        "how long can a shelf be",
        "shelf for books",
        "will the shelf bend",
        "longest span of a shelf",
        "deflection of a board",
        "stiffness of wood",
        "modulus of elasticity",
        "shelf between two supports",
    ),
    purpose=(
        "From the wood, the board, the span and the load: how far it sags new and after years, its own weight counted, "
        "and the longest span that stays within a limit."
    ),
    givens=GIVENS,
    answers=ANSWERS,
    work=work,
    formulas=(
        Formula("load_force", "load * 9.80665", "newtons from kilograms"),
        Formula(
            "sag",
            "12 * (coefficient * load_force + own_coefficient * own_force) * span ** 3"
            " / (stiffness * width * thickness ** 3)",
            "Wood Handbook, equation 9-2, bending alone",
        ),
        Formula("sag_later", "sag * creep"),
        Formula("allowed", "span / ratio"),
        Formula("spread", "load_force + own_force"),
        Formula(
            "span_most",
            "(stiffness * width * thickness ** 3 * span / (12 * creep * ratio * coefficient * spread)) ** (1 / 3)",
            "so that the sag in the long run is the span over the limit",
            within=1e-6,
        ),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "US Forest Products Laboratory, Wood Handbook, FPL-GTR-282 (2021)",
            "equation 9-2, table 9-1; tables 5-3 and 4-3",
            "read",
            "Coefficients, stiffness, gravity, as digitised by others.",
        ),
        Source(
            "A table of the strength of US woods that follows the Wood Handbook",
            "",
            "read",
            "Stiffness of most hardwoods; that it is at 12 percent is inferred from those of the handbook.",
        ),
        Source(
            "S. J. Record, The Mechanical Properties of Wood (1914)",
            "beam formulas; note to table 22",
            "read",
            "The same for a load at the middle; half the stiffness for loads that stay.",
        ),
        Source("Woods marked so; botanical names; that beams under 14 depths long bend more", "", "memory"),
        Source("A sag of 1 in 360; that ends in housings hardly count as held fast", "", "common practice"),
    ),
    cautions=(
        Caution(
            "This is how far it bends, not what it or its fixings bear. For a load over people's heads, or any that "
            "could hurt if it fell, follow local codes and ask someone licensed. Fix into the stud or a rated anchor, "
            "and look for cables and pipes first."
        ),
        Caution("Knots, slanting grain and damp make a board less stiff than the table, by a quarter or more."),
        Caution(
            "In the long run it sags more than the limit: shorten the span, thicken the board, or add a front strip.",
            lambda v: v["sag_later"] > v["allowed"],
        ),
        Caution(
            "Ends in housings or on screws give way a little: reckon them as resting, unless they are built in "
            "(common practice).",
            lambda v: v["case"].endswith("clamped"),
        ),
        Caution(
            "What holds the fast end gives way a little, and the free end drops further than this: build it in deep, "
            "or prop it (common practice).",
            lambda v: v["case"].endswith("cantilever"),
        ),
        Caution(
            "So short and thick a board bends further than this, by shear (from memory: below 14 thicknesses).",
            lambda v: v["span"] < DEEP * v["thickness"],
        ),
        Caution(
            "The shelf's own weight is left out, since the gravity of this wood is not in the table.",
            lambda v: v["gravity_from"] == LEFT_OUT,
        ),
        Caution(
            "A figure for this wood is from memory and not from a source: check it before you trust a shelf to it.",
            lambda v: CHECK in v["figure_from"] or CHECK in v["gravity_from"],
        ),
    ),
    carry_on=(Carry("movement", {"species": "species", "width": "width"}, "How its depth swells and shrinks"),),
    limits_of=(
        "A straight board of one thickness, clear wood at about 12 % moisture, bent no more than a tenth of its span. "
        "Shear is left out, which the stiffness, measured at 14 thicknesses, makes good."
    ),
    example=Example(
        {"species": "white ash", "span": "700 mm", "width": "200 mm", "thickness": "16 mm", "load": "18 kg"},
        "A shelf of 16 mm ash under the comment-card box, between uprights 700 mm apart, is to take 18 kg of books.",
    ),
)
