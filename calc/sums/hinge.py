"""Hinge: how deep butts are let in, where they stand on a lid, and screws that stay inside the wood."""

from calc.declare import Answer, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Count, Length, Limit
from calc.sums._hinge import proof, work
from calc.sums._hinge_places import figure
from calc.sums._screw import rule

SUM = Sum(
    id="hinge",
    title="Hinges on a lid",
    moment="fit",
    question="Where do the hinges go, and how deep?",
    asks=(
        "where do hinges go on a lid",
        "how deep to let in a butt hinge",
        "gain for a butt",
        "how far from the end to set a hinge",
        "space three hinges along a lid",
        "screws for a hinge",
        "hinge screws come through the lid",
        "marking gauge for a hinge",
        "hinges on a box lid",
    ),
    purpose="From the hinge and the lid: the gain to cut, running marks for every hinge, and screws whose points stay "
    "inside the wood.",
    givens=(
        Length(
            name="size",
            label="Length of the hinge",
            help="Along its pin; butts are named by it.",
            limit=Limit("8 mm", "300 mm"),
        ),
        Length(
            name="leaf",
            label="Hinge leaf",
            help="From the middle of the pin to the edge of one leaf: half the open width.",
            limit=Limit("4 mm", "150 mm"),
        ),
        Length(
            name="knuckle",
            label="Knuckle",
            help="The thickness of the hinge's barrel, across the pin.",
            limit=Limit("1 mm", "30 mm"),
        ),
        Length(
            name="length",
            label="Lid along the hinge line",
            help="From end to end, where the hinges stand.",
            limit=Limit("20 mm", "3 m"),
        ),
        Length(
            name="thickness",
            label="Wood under the leaf",
            help="Before the gain is cut: the lid's thickness, or for a leaf on the edge, how far the wood goes on.",
            limit=Limit("3 mm", "150 mm"),
        ),
        Count(
            name="count",
            label="Hinges",
            help="On the one lid.",
            default="2",
            default_why="enough for a box",
            limit=Limit("1", "12"),
        ),
        Length(
            name="inset",
            label="End of the lid to the first hinge",
            help="Leave it empty for the hinge's own length.",
            optional=True,
            limit=Limit("0 mm", "1 m"),
        ),
        Length(
            name="plate",
            label="Thickness of the leaf",
            help="Of the metal, which the screw goes through.",
            default="1.5 mm",
            default_why="a small butt; measure yours",
            limit=Limit("0.4 mm", "8 mm"),
        ),
        Count(
            name="number",
            label="Screw number",
            help="Whose head fits the countersinks of the leaf; leave it empty for no screws.",
            optional=True,
            limit=Limit("0", "24"),
        ),
        Length(
            name="margin",
            label="Wood left beyond the point",
            help="The least wood between the screw's point and the far face.",
            default="2 mm",
            default_why="common practice for thin lids",
            limit=Limit("0 mm", "50 mm"),
        ),
    ),
    answers=(
        Answer(name="gain", label="Gain depth", kind="fine", help="Each leaf, where both are let in alike."),
        Answer(
            name="inset", label="End of the lid to the first hinge", kind="length", help="Its own length, or yours."
        ),
        Answer(name="between", label="Between hinges", kind="length"),
        Answer(
            name="marks",
            label="Marks from one end",
            kind="rows",
            columns=(
                Answer(name="hinge", label="Hinge", kind="count"),
                Answer(name="start", label="Gain begins", kind="length"),
                Answer(name="end", label="Gain ends", kind="length"),
            ),
        ),
        Answer(name="screw", label="Screw", kind="text"),
        Answer(
            name="screw_length",
            label="Length of the screw",
            kind="length",
            help="The longest needed that stays inside.",
        ),
        Answer(name="screw_into", label="In the wood", kind="length", help="As deep as its hole is bored."),
        Answer(name="screw_left", label="Wood beyond the point", kind="length", help="To the far face."),
        Answer(
            name="screw_gripped",
            label="Thread in the wood in diameters",
            kind="number",
            places=1,
            help="By the sum called screw.",
        ),
        Answer(name="soft_drill", label="Pilot drill, soft wood", kind="text"),
        Answer(name="hard_drill", label="Pilot drill, hard wood", kind="text"),
        Answer(name="pilot_soft", label="Pilot hole, soft wood", kind="fine", help="By the sum called screw."),
        Answer(name="pilot_hard", label="Pilot hole, hard wood", kind="fine", help="By the sum called screw."),
        Answer(
            name="under",
            label="Wood left under the gain",
            kind="length",
            help="Under a leaf let in whole, where it is thicker than half the knuckle.",
        ),
        Answer(name="stands", label="Leaf stands above the face", kind="fine"),
    ),
    work=work,
    formulas=(
        Formula("gain", "knuckle / 2", "the middle of the pin comes level with the face"),
        Formula("between", "(length - 2 * inset - count * size) / (count - 1)"),
        Formula("under", "thickness - max(gain, plate)"),
        Formula("screw_left", "under - screw_into"),
        Formula("screw_into", "screw_length - plate", "its head is flush with the leaf"),
        Formula("stands", "plate - gain", "the leaf is thicker than half the knuckle"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source(
            "W. Noyes, Handwork in Wood (1910)",
            "butt hinges",
            "read",
            "Gain half the knuckle; on a box lid about the hinge's own length from the ends.",
        ),
        Source("Even spaces between hinges; wood beyond the point", "", "common practice"),
        Source("Screws, by the sum of that name", "", "computed"),
    ),
    limits_of="Butts let into both faces alike, the pin in line with them. A leaf let in whole, on one side only, "
    "wants the whole knuckle there. Screws by number, as sold by the inch.",
    cautions=(
        Caution(
            "Bore a pilot hole, wax the screws, and drive steel ones first where brass are to follow: brass breaks.",
            lambda v: v["number"] is not None,
            "common practice",
        ),
        Caution(
            "No screw of this number is so short that it stays inside: choose a thinner hinge, or rivet it.",
            lambda v: v["number"] is not None and v["screw_length"] is None,
        ),
        Caution(
            "Less than seven diameters of thread are in the wood: the screws hold less than they could.",
            lambda v: v["screw_gripped"] is not None and v["screw_gripped"] < rule("screw_penetration"),
            "Wood Handbook, page 8-11",
        ),
        Caution(
            "Less wood is left under the gain than the gain is deep: the lid is weak there.",
            lambda v: 2 * v["under"] < v["thickness"],
            "common practice",
        ),
        Caution(
            "The leaf is thicker than half its knuckle: cut the gain as deep as the leaf, or the lid will not shut.",
            lambda v: v["stands"] is not None,
            "common practice",
        ),
        Caution("Pare towards the waste and away from the hand that holds the lid.", None, "from memory"),
    ),
    example=Example(
        {
            "size": "40 mm",
            "leaf": "14 mm",
            "knuckle": "5 mm",
            "length": "264 mm",
            "thickness": "16 mm",
            "number": "4",
        },
        "Two small brass butts carry the lid of the comment-card box, 264 mm of 16 mm ash.",
    ),
    carry_on=(
        Carry(
            "hinge-strip", {"leaf": "leaf", "knuckle": "knuckle", "thickness": "thickness"}, "A strip for these hinges"
        ),
        Carry("lid-opening", {"thickness": "thickness"}, "How far the lid opens"),
        Carry("screw", {"number": "number"}, "More about the screws"),
    ),
)
