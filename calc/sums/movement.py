"""Movement: how far a board swells or shrinks across the grain, and the gap to leave for it."""

from calc.declare import Carry, Caution, Example, Formula, Source, Sum, Values
from calc.sums._movement import DAMP, DISAGREE, work
from calc.sums._movement_figure import figure
from calc.sums._movement_form import ANSWERS, GIVENS
from calc.tables import CHECK


def proof(v: Values) -> dict[str, float]:
    """The green width is the same reckoned from either end; the coefficient is that shrinkage on the size at 10 %."""
    width, now, then = float(v["width"]), float(v["moisture_now"]), float(v["moisture_then"])
    if v["coefficient"] is not None:
        shrinkage = 3000 / (1 / float(v["coefficient"]) + 20)
        tenth = width * (then - now) / (3000 / shrinkage - 30 + 10)
        return {"the shrinkage that the coefficient stands for moves it as far": (v["change"] - tenth) / width}
    lost = float(v["shrinkage"]) / 100
    green = [size / (1 - lost * (1 - wet / 30)) for size, wet in ((width, now), (float(v["width_then"]), then))]
    return {"the green width is the same from either end": (green[1] - green[0]) / width}


SUM = Sum(
    id="movement",
    title="Wood movement",
    moment="stock",
    question="How much will this board move, and what gap does it want?",
    asks=(
        "how much will oak move",
        "how much will this board move",
        "wood movement",
        "will the panel shrink",
        "gap to leave for swelling",
        "expansion of a table top",
        "shrinkage of a board in winter",
        "how much does ash swell",
        "quarter sawn or flat sawn",
        "room for a floating panel",
    ),
    purpose=(
        "From the wood, its cut and width, and two moisture contents or two climates: how far it swells or shrinks, "
        "and the gap to leave."
    ),
    givens=GIVENS,
    answers=ANSWERS,
    work=work,
    formulas=(
        Formula(
            "change",
            "width * coefficient * (moisture_then - moisture_now)",
            "within 6 to 14 %: Wood Handbook, equation 13-2",
        ),
        Formula(
            "change",
            "width * (moisture_then - moisture_now) / (30 * 100 / shrinkage - 30 + moisture_now)",
            "shrinkage in a straight line from nothing at 30 %: equation 13-3",
        ),
        Formula("width_then", "width + change"),
        Formula("percent", "100 * change / width"),
        Formula("gap", "change", "as much as it swells"),
        Formula("opens", "-change", "as much as it shrinks"),
        Formula("each_side", "abs(change) / 2"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "US Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010)",
            "chapter 13, equation 13-2 and table 13-5; tables 4-3 and 4-4",
            "read",
            "Coefficients and shrinkages; equation 13-2 as quoted by others.",
        ),
        Source(
            "US Forest Products Laboratory, Wood Handbook, FPL-GTR-282 (2021)",
            "page 4-10, equation 4-9; page 4-3, equation 4-5",
            "read",
            "Shrinkage runs straight from 30 %: equation 13-3, itself from memory, follows from it. Climates.",
        ),
        Source(
            "Wood Handbook tables",
            "13-5 against 4-3",
            "computed",
            "Every printed coefficient is S / (3000 − 20 S); by that the missing one of a pair is filled in.",
        ),
        Source("S. J. Record, The Mechanical Properties of Wood (1914)", "table 14", "read", "Two woods more."),
        Source("Woods marked so, most softwood coefficients; botanical names", "", "memory"),
    ),
    cautions=(
        Caution(
            "Hold a wide board fast along one line only, and let the rest slide: glued or nailed fast across its "
            "grain it splits, or bursts what holds it (common practice)."
        ),
        Caution(
            "Along the grain wood hardly moves, 0.1 to 0.2 % from green to ovendry: leave no gap there.",
            source="American Wood Council",
        ),
        Caution(
            "Two figures of the table disagree about this wood: the one that moves further is taken.",
            lambda v: DISAGREE in v["figure_from"],
        ),
        Caution(
            "The figure for this wood is from memory and not from a source: check it before you trust a fit to it.",
            lambda v: CHECK in v["figure_from"],
        ),
        Caution(
            "Green or damp boards warp as they dry: let them settle before you cut to a fit.",
            lambda v: v["moisture_now"] > DAMP,
        ),
    ),
    carry_on=(
        Carry("glue-up", {"panel_width": "width"}, "Glue up a panel as wide as this"),
        Carry(
            "groove",
            {"species": "species", "cut": "cut", "moisture_now": "moisture_now", "own": "own"},
            "Leave it room in the groove of a frame",
        ),
        Carry("batten", {"width": "width", "movement": "gap"}, "Hold it flat with battens that let it move"),
    ),
    limits_of=(
        "Moisture contents from 0 to 30 %, above which wood does not move. Single boards differ from the average of "
        "their kind by a quarter or more; rings that slant across the end move between the two cuts."
    ),
    example=Example(
        {
            "species": "white ash",
            "width": "220 mm",
            "moisture_now": "8",
            "temperature_then": "18 °C",
            "humidity_then": "60",
        },
        "The lid of the comment-card box, 220 mm of 16 mm ash at 8 %, will hang in a reading room of 18 °C and 60 %.",
    ),
)
