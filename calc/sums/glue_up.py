"""Glue-up: how many strips make a panel, how many clamps close it and where, and how much glue it takes."""

from calc.declare import Carry, Caution, Example, Formula, Source, Sum, Values
from calc.sums._glue_up import work
from calc.sums._glue_up_figure import figure
from calc.sums._glue_up_form import ANSWERS, GIVENS

WIDE = 150
"""Millimetres over which a strip is wide enough to cup by itself: common practice."""


def proof(v: Values) -> dict[str, float]:
    """The strips make the width and one fewer would not; clamps stand evenly, and press as hard as they must."""
    trued = float(v["strip_width"] - v["lost"])
    short = float(v["rough"] - v["lost"]) - trued * (v["strips"] - 1)
    found = {
        "the strips make the width": max(0.0, -float(v["spare"])),
        "one fewer would not": max(0.0, -short) if v["joints"] else 0.0,
        "what is spare is less than a strip": max(0.0, float(v["spare"]) - trued) if v["joints"] else 0.0,
    }
    if not v["joints"]:
        return found
    inner = max(0, v["strips"] - 2)
    long, ends = float(v["panel_length"]), v["marks"][0]["mark"] + v["marks"][-1]["mark"]
    return found | {
        "outer and inner strips make the width": float((2 * v["outer"] + inner * v["each"]) / v["rough"]) - 1,
        "a strip trued on both edges is cut from the stock": max(0.0, float(v["each"]) - trued) if inner else 0.0,
        "a strip trued on one edge is cut from the stock": max(
            0.0, float(v["outer"] + v["lost"] / 2 - v["strip_width"])
        ),
        "the last clamp is as far from its end as the first": float(ends) / long - 1,
        "no point of a joint is past the 45° of a clamp": max(0.0, float(v["first"] - v["outer"] - v["caul"])),
        "force over area is the pressure": float(v["each_force"] * v["clamps"] * v["joints"] / v["area"])
        / float(v["pressure"])
        - 1,
    }


SUM = Sum(
    id="glue-up",
    title="Glue up a panel",
    moment="stock",
    question="How many strips and clamps does a panel take?",
    asks=(
        "how many strips for a panel",
        "how many clamps are needed",
        "glue up a panel",
        "edge joint",
        "space between clamps",
        "how much glue",
        "clamp pressure for a joint",
        "boards for a lid of 300 mm",
        "join narrow boards into a wide one",
        "cramps for a table top",
    ),
    purpose=(
        "From the panel wanted and the stock in hand: strips and their width, clamps with running marks, what each "
        "must press, and the glue."
    ),
    givens=GIVENS,
    answers=ANSWERS,
    work=work,
    formulas=(
        Formula("rough", "panel_width + trim"),
        Formula("strips", "max(1, ceil((rough - lost) / (strip_width - lost)))", "the outer edges lose nothing more"),
        Formula("joints", "strips - 1"),
        Formula(
            "each",
            "min(rough / strips, strip_width - lost * min(1, joints / 2))",
            "a strip loses half of that at each edge that is trued",
        ),
        Formula("outer", "(rough - (strips - 2) * each) / 2"),
        Formula("spare", "strips * strip_width - joints * lost - rough"),
        Formula("apart", "2 * (outer + caul)", "pressure fans out at 45° through the outer strip"),
        Formula("by_reach", "max(2, ceil(panel_length / apart))", "two at least"),
        Formula("force", "pressure * panel_length * thickness"),
        Formula("by_force", "ceil(force / clamp)"),
        Formula("spacing", "panel_length / clamps"),
        Formula("first", "spacing / 2"),
        Formula("each_force", "force / clamps"),
        Formula("area", "joints * panel_length * thickness"),
        Formula("liquid", "area * faces / coverage"),
        Formula("mass", "area * faces * spread / metre ** 3", "in kg"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "Pressure fans out at 45° from a clamp; two clamps at least; shavings at a joint; spare to trim",
            "",
            "common practice",
        ),
        Source(
            "US Forest Products Laboratory, Wood Handbook, chapter on adhesives",
            "",
            "memory",
            "700 kPa (100 psi) for the lightest woods, 1700 kPa (250 psi) for the densest: check.",
        ),
    ),
    cautions=(
        Caution(
            "Lay the strips dry in the clamps first, bars above and below in turn, and stop when the joint is closed: "
            "the pressure here is from memory, and too much bows the panel and starves the joint.",
            lambda v: v["joints"],
        ),
        Caution(
            "Follow the glue maker's own words on temperature, time in the clamps, gloves and fresh air.",
            lambda v: v["joints"],
        ),
        Caution(
            "One board is wide enough: there is nothing to glue.",
            lambda v: not v["joints"],
        ),
        Caution(
            "The stock is as wide as the panel: only the spare to trim asks for a joint. With less of it one will do.",
            lambda v: v["joints"] and v["panel_width"] <= v["strip_width"],
        ),
        Caution(
            "Strips this wide may cup by themselves: rip them, or turn their heart sides up and down in turn "
            "(common practice).",
            lambda v: v["joints"] and v["outer"] > WIDE,
        ),
    ),
    carry_on=(
        Carry("movement", {"width": "panel_width"}, "How far the panel swells and shrinks"),
        Carry(
            "clamping",
            {"length": "panel_length", "width": "thickness", "wood": "wood", "own": "own", "clamp": "clamp"},
            "Clamp one joint of it, and how long",
        ),
        Carry("board-measure", {}, "What the strips come to"),
    ),
    limits_of=(
        "Straight strips of one stock, edge to edge, along the grain. What a bottle covers is taken as "
        "printed, with nothing for squeeze-out, brush or pot."
    ),
    example=Example(
        {
            "panel_width": "220 mm",
            "panel_length": "260 mm",
            "thickness": "16 mm",
            "strip_width": "95 mm",
            "wood": "dense",
            "spread": "160 g/m²",
        },
        "The lid of the comment-card box, 220 mm by 260 mm of 16 mm ash, is glued up from boards 95 mm wide.",
    ),
)
