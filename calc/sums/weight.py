"""Weight: what the parts will weigh, of this wood and as damp as it is."""

from calc.bench import Bench
from calc.declare import Carry, Caution, Example, Formula, Source, Sum, Values
from calc.drawing.figure import Figure
from calc.sums import _boards_drawing
from calc.sums._weight import work
from calc.sums._weight_form import ANSWERS, GIVENS
from calc.tables import CHECK
from calc.typed.scales import SCALES

HEAVY = 23
"""Kilograms that the NIOSH lifting equation starts from, held close and well: from memory."""
METRIC = Bench(unit="mm", mark="mm")


def proof(v: Values) -> dict[str, float]:
    """Water and dry wood make up the whole, as the moisture content says; the dry wood fills its green volume."""
    mass, dry, water = float(v["mass"]), float(v["dry"]), float(v["water"])
    lost = 0.265 * v["gravity"] * (1 - min(float(v["moisture"]), 30) / 30)
    green = float(v["volume"]) / 1e9 / (1 - lost)
    return {
        "dry wood and water make up the mass": (dry + water - mass) / mass,
        "the moisture content is water over dry wood": 100 * water / dry - float(v["moisture"]),
        "swollen to its green volume the dry wood has the basic gravity": dry / green / 1000 / v["gravity"] - 1,
        "the rows make up the whole": sum(row["all"] for row in v["rows"]) / mass - 1,
    }


def figure(v: Values) -> Figure:
    """The parts on the face, with what they weigh together."""
    drawing = _boards_drawing.figure(v)
    lowest = min(y for _, y in drawing.points)
    below = -66 if len(v["rows"]) > _boards_drawing.MOST else -48
    drawing.note((0, lowest), str(SCALES["mass"].shown(v["mass"], METRIC)), "start", dy=below, name="mass")
    return drawing


SUM = Sum(
    id="weight",
    title="Weight",
    moment="stock",
    question="What will it weigh?",
    asks=(
        "what will it weigh",
        "how heavy is a board",
        "weight of an ash board",
        "mass of the parts",
        "density of oak",
        "how heavy is green wood",
        "can i lift this plank",
        "kilograms of wood",
        "specific gravity to density",
    ),
    purpose="From the wood, its moisture and the sizes of the parts: what they weigh, each and together.",
    givens=GIVENS,
    answers=ANSWERS,
    work=work,
    formulas=(
        Formula(
            "gravity",
            "gravity_12 / (1 + 0.265 * gravity_12 * (1 - 12 / 30))",
            "equation 4-13 turned round: back to the green volume",
        ),
        Formula("gravity", "gravity_green", "ovendry mass on the green volume"),
        Formula(
            "gravity_now",
            "gravity / (1 - 0.265 * gravity * (1 - min(moisture, 30) / 30))",
            "Wood Handbook, equation 4-13",
        ),
        Formula("density", "1000 * gravity_now * (1 + moisture / 100)", "in kg to the cubic metre, equation 4-14"),
        Formula("mass", "density * volume / metre ** 3", "in kg"),
        Formula("dry", "mass / (1 + moisture / 100)"),
        Formula("water", "mass - dry"),
        Formula("most", "100 * (1.54 - gravity) / (1.54 * gravity)", "equation 4-3: every pore full"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "US Forest Products Laboratory, Wood Handbook, FPL-GTR-282 (2021)",
            "page 4-12, equations 4-13 and 4-14; page 4-3, equation 4-3; table 5-3",
            "read",
            "As digitised by others.",
        ),
        Source(
            "A table of the strength of US woods that follows the Wood Handbook",
            "",
            "read",
            "Gravities of most hardwoods; that they stand for 12 percent is inferred from those of the handbook.",
        ),
        Source(
            "S. J. Record, The Mechanical Properties of Wood (1914)", "table 14", "read", "Woods no newer table has."
        ),
        Source("Woods marked so; botanical names; the load of the lifting caution", "", "memory"),
    ),
    cautions=(
        Caution(
            "Boards of one kind differ: a tenth lighter or heavier is usual. Weigh one where it matters.",
            source="common practice",
        ),
        Caution(
            "This is more than 23 kg (51 lb), the load from which the NIOSH lifting equation starts (from memory): "
            "share it, or take it in parts.",
            lambda v: v["mass"] > HEAVY,
        ),
        Caution(
            "The figure for this wood is from memory and not from a source: weigh a board before you trust it.",
            lambda v: CHECK in v["figure_from"],
        ),
    ),
    carry_on=(
        Carry("sag", {"species": "species", "load": "mass"}, "How far a shelf sags under this"),
        Carry("hang", {"mass": "mass"}, "What the fixings must hold when it hangs"),
    ),
    limits_of=(
        "Sound wood of one kind in square-edged parts, from ovendry to as wet as its pores allow. North American woods "
        "and a few others: of any wood a density of your own may be given."
    ),
    example=Example(
        {
            "species": "white ash",
            "moisture": "9",
            "boards": "2 x 16 mm x 180 mm x 260 mm; 1 x 16 mm x 252 mm x 330 mm; 1 x 16 mm x 220 mm x 252 mm",
        },
        "Two sides, the back and the lid of the comment-card box in 16 mm ash at 9 %, before it is hung on the wall.",
    ),
)
