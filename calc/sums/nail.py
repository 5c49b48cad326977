"""Nail: how long, which penny size, what hole to bore for it, and whether it comes through."""

from fractions import Fraction

from calc import trig
from calc.declare import Carry, Caution, Example, Formula, Source, Sum, Values
from calc.sums import _nail_choice as choice
from calc.sums import _nail_form as form
from calc.sums._nail_drawing import figure
from calc.tables import CHECK
from calc.trig import Number

TWO_THIRDS = Fraction(200, 3)


def work(
    held: Fraction,
    second: Fraction,
    kind: str,
    wood: str,
    end: str,
    lean: Number,
    margin: Fraction,
    turn: Fraction,
    measured: Fraction | None,
) -> Values:
    """The wanted length by the rule, then the nail of the shop that comes nearest to it, then its hole."""
    through, behind = held / trig.cos(lean), second / trig.cos(lean)
    clinched = end == "clinch"
    wanted = through + behind + turn if clinched else choice.rule("navy_nail_length") * through
    room = None if clinched else through + behind - margin / trig.cos(lean)
    nail = choice.choose(kind, wanted, through + behind if clinched else through, room)
    return {
        "along_held": through,
        "along_second": behind,
        "room": room,
        "wanted": None if clinched else wanted,
        "reach": wanted if clinched else None,
        **choice.stands(nail, through, behind, clinched),
        **choice.bore(nail, wood, measured),
        "near": choice.near(kind, nail, wanted, (through, behind, room)),
    }


def proof(v: Values) -> dict[str, float]:
    """All of the nail is somewhere, and what the nail crosses square to the faces is the wood there is."""
    beyond = v["out"] or 0
    crossed = v["along_held"] + v["into"] + (v["left"] or 0)
    return {
        "held, second and beyond make up the nail": float(v["along_held"] + v["into"] + beyond - v["length"])
        / float(v["length"]),
        "the wood crossed, turned square, is both thicknesses": float(
            crossed * trig.cos(v["lean"]) - v["held"] - v["second"]
        )
        / float(v["held"]),
        "the point keeps its distance square from the far face": _near(v),
        "a nail as long as the rule has two thirds in the second piece": _short(v),
        "the drill is no thicker than the hole": max(0.0, float((v["drill_size"] or 0) - (v["hole"] or 0))),
    }


def _near(v: Values) -> float:
    kept = 0.0 if v["left"] is None else float(v["margin"] - v["left"] * trig.cos(v["lean"]))
    return max(0.0, kept) / float(v["held"])


def _short(v: Values) -> float:
    return max(0.0, float(TWO_THIRDS - v["share"])) if v["wanted"] and v["length"] >= v["wanted"] else 0.0


SUM = Sum(
    id="nail",
    title="Nail",
    moment="join",
    question="How long a nail, and what hole for it?",
    asks=(
        "how long a nail",
        "what size nail",
        "penny size",
        "nail for 16 mm boards",
        "pilot hole for a nail",
        "drill before nailing",
        "will the nail come through",
        "how long to clinch a nail",
        "two thirds in the second piece",
        "stop the wood splitting",
    ),
    purpose=(
        "From the thickness held: the length by the trade's rule, the nail sold that answers it, its hole, and "
        "whether it comes through."
    ),
    givens=form.GIVENS,
    answers=form.ANSWERS,
    work=work,
    formulas=(
        Formula("along_held", "held / cos(lean)", "a nail that leans crosses more wood"),
        Formula("along_second", "second / cos(lean)"),
        Formula("wanted", "3 * along_held", "one third to hold, two thirds to be held by"),
        Formula("reach", "along_held + along_second + turn"),
        Formula("room", "along_held + along_second - margin / cos(lean)"),
        Formula("into", "min(length - along_held, along_second)"),
        Formula("share", "100 * into / length"),
        Formula("left", "along_held + along_second - length"),
        Formula("out", "length - along_held - along_second"),
        Formula("hole", "diameter * ratio / 100"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "US Navy training course NAVEDTRA 14119",
            "chapter 3",
            "read",
            "At least three times the thickness held; two thirds in the second piece.",
        ),
        Source(
            "I. S. Griffith, Carpentry (1916)", "appendix III", "read", "Lengths of common nails and of wire brads."
        ),
        Source("W. Noyes, Handwork in Wood (1910)", "nails", "read", "3d to 10d: a quarter inch a penny."),
        Source(
            "US Forest Products Laboratory, Wood Handbook (2021)",
            "table 8-1, as digitised by others",
            "read",
            "Common nails 6d to 50d: thickness, gauge.",
        ),
        Source(
            "National Design Specification",
            "as quoted in a building-design handbook",
            "read",
            "Holes of at most 75 %, in wood denser than 0.60 90 %, of the nail's thickness.",
        ),
        Source(
            "Box, finish and casing nails; common 2d, 4d, 9d",
            "",
            "memory",
            "Their thicknesses are from memory: check them on a nail.",
        ),
        Source("Wood left beyond the point, length to turn over", "", "common practice"),
    ),
    cautions=(
        Caution("Wear eye protection; a nail struck badly flies, and a clinched point is sharp until it is buried."),
        Caution(
            "Near an end or edge wood splits: bore the hole, blunt the point, or move the nail in. No "
            "standard gives a distance that is always safe."
        ),
        Caution(
            "This nail is shorter than the rule, since a longer one would come through, end too near the far face, or "
            "is not in the table: less than two thirds of it is in the second piece, and it holds less.",
            lambda v: v["wanted"] is not None and v["share"] < TWO_THIRDS,
        ),
        Caution(
            "How thick this nail is stands in no table, so no hole is answered: measure yours and type it.",
            lambda v: v["diameter"] is None,
        ),
        Caution(
            "A figure here is from memory and not from a source: check the nail itself before you bore.",
            lambda v: any(CHECK in str(v[name]) for name in ("length_from", "thickness_from", "gauge")),
        ),
    ),
    carry_on=(
        Carry("nail-line", {"nail": "nail"}, "How many of these along the joint, and where"),
        Carry("hinge-strip", {"nail": "diameter"}, "Keep this nail clear of a hinge's leaf"),
    ),
    limits_of=(
        "One nail, driven up to 60° from square, of the sizes in the tables: a figure that is not in them is not "
        "made up. It does not say what load the nail carries."
    ),
    example=Example(
        {"held": "16 mm", "second": "180 mm"},
        "The 16 mm ash back of the comment-card box is nailed to the back edges of its sides, which are 180 mm deep.",
    ),
)
