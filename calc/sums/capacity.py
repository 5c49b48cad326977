"""Capacity: how many notes, cards or coins a box holds, stacked and loose."""

from calc.declare import Answer, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Choice, Length, Limit, Option
from calc.sums._capacity import proof, work
from calc.sums._capacity_figure import figure
from calc.sums._money import DISAGREE
from calc.sums._slot_form import GIVENS as SLOT
from calc.tables import CHECK
from calc.typed.measures import Mass, Percent

INSIDE = Limit("5 mm", "1 m")
THING = ("what", "length", "width", "thickness", "halved", "narrowed", "loft")

SUM = Sum(
    id="capacity",
    title="Capacity",
    moment="fit",
    question="How many notes, cards or coins does it hold?",
    asks=(
        "how many coins does the box hold",
        "how many cards fit inside",
        "how many folded notes fit in a box",
        "when will the money box be full",
        "stack of coins in a tray",
        "loose coins in a jar",
        "how big a box for a hundred cards",
        "what does a box of coins weigh",
    ),
    purpose="From the inside of the box and what goes in, folded or not: how many stacked in the best way, and how "
    "many thrown in loose.",
    givens=(
        Length(name="box_length", label="Inside length", help="Between the faces of the ends.", limit=INSIDE),
        Length(name="box_width", label="Inside width", help="Between the faces of the sides.", limit=INSIDE),
        Length(
            name="box_height",
            label="Inside height",
            help="From the bottom up to where it may be filled; under a sloping lid take the middle.",
            limit=INSIDE,
        ),
        *(one for one in SLOT if one.name in THING),
        Choice(
            name="shape",
            label="Shape of your own",
            help="For a size of your own: what shape has it?",
            default="square",
            options=(Option("square", "Square-cornered"), Option("round", "Round, its diameter for both sides")),
        ),
        Percent(
            name="share",
            label="Packing share when loose",
            help="How much of a heap is not air. Fill a jar, count, and work out your own.",
            default="50",
            default_why="common practice, of low confidence: folded notes heap looser, shaken coins closer",
            limit=Limit("5", "90"),
        ),
        Mass(
            name="one_mass",
            label="Mass of one",
            help="To see what the full box weighs: weigh ten and divide.",
            optional=True,
            limit=Limit("0.1 g", "1 kg"),
        ),
    ),
    answers=(
        Answer(name="stacked", label="Stacked, at most", kind="count"),
        Answer(name="loose", label="Thrown in loose, about", kind="count"),
        Answer(name="a_layer", label="In a layer", kind="count", help="In straight or staggered rows, all one way."),
        Answer(name="high", label="High", kind="count", help="Whole ones, the way the stack rises."),
        Answer(name="lie", label="They lie", kind="text"),
        Answer(name="mass_loose", label="Mass of a loose filling", kind="mass"),
        Answer(name="mass_stacked", label="Mass of a stacked filling", kind="mass"),
        Answer(name="mass_most", label="Mass of the heavier filling", kind="mass"),
        Answer(name="filled", label="Of the box filled when stacked", kind="percent", places=0),
        Answer(name="volume", label="Inside volume", kind="capacity"),
        Answer(name="one", label="One takes", kind="capacity"),
        Answer(name="diameter", label="Diameter", kind="fine", help="As you gave it, or from the table."),
        Answer(name="folded_length", label="Length when folded", kind="length", help="Halved by each such fold."),
        Answer(name="folded_width", label="Width when folded", kind="length", help="Halved by each such fold."),
        Answer(name="thick", label="Thickness of one", kind="fine", help="All its layers."),
        Answer(name="layers", label="Layers of one", kind="count", help="Doubled by each fold."),
        Answer(
            name="ply", label="Each layer takes", kind="fine", help="Its own thickness, or more where folds hold it."
        ),
        Answer(name="sheet", label="Thickness of one layer", kind="fine", help="As given, from the table, or paper's."),
        Answer(name="size_from", label="Its size is from", kind="text"),
        Answer(name="plan", label="A layer lies along, and rises along", kind="text"),
    ),
    work=work,
    formulas=(
        Formula("volume", "box_length * box_width * box_height"),
        Formula("thick", "layers * ply"),
        Formula("one", "folded_length * folded_width * thick"),
        Formula("one", "pi * diameter ** 2 / 4 * thick", "a disc"),
        Formula("loose", "floor(volume * share / 100 / one)"),
        Formula("stacked", "a_layer * high", "the best of six ways to turn it"),
        Formula("filled", "100 * stacked * one / volume"),
        Formula("mass_loose", "loose * one_mass"),
        Formula("mass_stacked", "stacked * one_mass"),
        Formula("mass_most", "max(mass_loose, mass_stacked)"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("Sizes of notes, coins and cards, as in the sum called slot", "", "read", "Its sources are told there."),
        Source("Layers counted in straight rows and in staggered ones", "", "identity"),
        Source("Half of a loose heap is air; paper 0.1 mm thick; spring of folded paper", "", "common practice"),
    ),
    limits_of="Things all alike, turned all one way, in whole layers. A cleverer mixture of ways may hold a few more. "
    "The loose count is a guess by its share, and no better than that share.",
    cautions=(
        Caution(
            "How many go in loose is a rule of thumb of low confidence: try it with a jar, and give your own share.",
            None,
            "common practice",
        ),
        Caution(
            "The size of this is from memory and not from a source: measure one.", lambda v: CHECK in v["size_from"]
        ),
        Caution("Sources disagree about this size: measure one.", lambda v: DISAGREE in v["size_from"]),
        Caution(
            "A filling of more than 10 kg (22 lb) strains bottom and fixings: reckon what hangs on the wall.",
            lambda v: (v["mass_most"] or 0) > 10,
            "common practice",
        ),
    ),
    example=Example(
        {
            "box_length": "220 mm",
            "box_width": "180 mm",
            "box_height": "150 mm",
            "what": "index-card-3-x-5-in",
            "halved": "1",
            "one_mass": "1.8 g",
        },
        "Readers fold their comment cards once and drop them in: how long before the box has to be emptied?",
    ),
    carry_on=(
        Carry("hang", {"contents": "mass_most"}, "What the fixings must hold when it is full"),
        Carry("slot", {"halved": "halved", "narrowed": "narrowed"}, "A slot to drop them through"),
        Carry("inside-out", {}, "The outside of a box this size"),
    ),
)
