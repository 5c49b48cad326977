"""Inside-out: a box's outside from what goes in it, and back; and how much it holds."""

from calc.declare import Answer, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Choice, Length, Limit, Option
from calc.sums._inside_figure import figure
from calc.sums._inside_out import proof, work

SIZE = Limit("0 in", "10 m", above=True)
WOOD = Limit("0 in", "100 mm", above=True)
ROOM = Limit("0 in", "500 mm")


def sizes(what: str, label: str, helps: str) -> tuple[Answer, ...]:
    """The three sizes of what is answered."""
    names = ("length", "width", "height")
    return tuple(Answer(name=f"{what}_{name}", label=f"{label} {name}", kind="length", help=helps) for name in names)


SUM = Sum(
    id="inside-out",
    title="Inside and out",
    moment="sketch",
    question="How big is the box outside, for what goes inside?",
    asks=(
        "how big a box for these contents",
        "outside size from inside size",
        "inside size of a box from outside",
        "what fits in a box of this size",
        "how many litres does a box hold",
        "volume of a box in cubic inches",
        "box to fit books 9 in by 6 in",
        "add twice the thickness of the sides",
        "how much room is left inside",
    ),
    purpose=(
        "From the contents, the inside or the outside of a box, and its thickness, the other two, and what it holds in "
        "litres and cubic inches."
    ),
    givens=(
        Choice(
            name="known",
            label="The sizes are of",
            help="What did you measure?",
            default="contents",
            options=(
                Option("contents", "What goes in"),
                Option("inside", "The inside"),
                Option("outside", "The outside"),
            ),
        ),
        Length(name="length", label="Length", help="The longer way across, from above.", limit=SIZE),
        Length(name="width", label="Width", help="The other way across, from above.", limit=SIZE),
        Length(name="height", label="Height", help="Upright.", limit=SIZE),
        Length(
            name="thickness",
            label="Thickness of the sides",
            help="Of the wood all four sides are made of.",
            limit=WOOD,
        ),
        Length(
            name="clearance",
            label="Clearance on each side",
            help="Air between the contents and the wood, at both ends and both sides.",
            default="1/8 in",
            default_why="common practice: things go in and come out, and wood moves",
            limit=ROOM,
        ),
        Length(
            name="headroom",
            label="Air above the contents",
            help="Between their top and the lid, or the rim of an open box.",
            default="1/8 in",
            default_why="common practice: as on the sides",
            limit=ROOM,
        ),
        Length(
            name="bottom",
            label="Thickness of the bottom",
            help="If it is not that of the sides; only what lies below the inside.",
            optional=True,
            limit=Limit("0 in", "100 mm"),
        ),
        Length(
            name="lid",
            label="Thickness of the lid",
            help="If it counts in the height outside; leave it empty for an open box.",
            optional=True,
            limit=Limit("0 in", "100 mm"),
        ),
    ),
    answers=(
        *sizes("outside", "Outside", ""),
        *sizes("inside", "Inside", ""),
        *sizes("contents", "Largest contents", ""),
        Answer(name="capacity", label="Capacity", kind="capacity", help="The whole inside, up to the lid or the rim."),
        Answer(
            name="each_side",
            label="Allowance on each side",
            kind="length",
            help="Added to what you measured: the clearance; below nothing, the wood taken off the outside.",
        ),
        Answer(
            name="above",
            label="Allowance in height",
            kind="length",
            help="The air above; below nothing, bottom and lid taken off the outside.",
        ),
        Answer(name="under", label="Bottom as counted", kind="length", help="As given, else as thick as the sides."),
        Answer(name="over", label="Lid as counted", kind="length", help="As given, else nothing."),
    ),
    work=work,
    formulas=(
        Formula("inside_length", "length + 2 * each_side"),
        Formula("inside_width", "width + 2 * each_side"),
        Formula("inside_height", "height + above"),
        Formula("outside_length", "inside_length + 2 * thickness"),
        Formula("outside_width", "inside_width + 2 * thickness"),
        Formula("outside_height", "inside_height + under + over"),
        Formula("contents_length", "inside_length - 2 * clearance"),
        Formula("contents_width", "inside_width - 2 * clearance"),
        Formula("contents_height", "inside_height - headroom"),
        Formula("capacity", "inside_length * inside_width * inside_height"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("GNU Units database, from NIST SP 811 (2008)", "the inch, 25.4 mm exactly; the litre, 1000 cm³", "read"),
        Source("Clearance about the contents", basis="common practice"),
    ),
    limits_of=(
        "Boxes with square corners and upright sides, all four equally thick. A bottom in a groove counts to its upper "
        "face, with what hangs below it."
    ),
    cautions=(
        Caution(
            "Nothing is left inside once the clearance is taken: no contents are told.",
            when=lambda v: v["known"] != "contents" and v["contents_length"] is None,
            source="arithmetic",
        ),
    ),
    example=Example(
        {"length": "8 1/4 in", "width": "6 in", "height": "5 in", "thickness": "16 mm", "bottom": "9 mm"},
        "A stack of comment cards and the reading room's pencils, 8 1/4 by 6 by 5 in, is to stand in an open ash box.",
    ),
    carry_on=(
        Carry(
            "proportion",
            {"size": "outside_height", "other": "outside_length"},
            "See how its front is proportioned",
        ),
        Carry(
            "capacity",
            {"box_length": "inside_length", "box_width": "inside_width", "box_height": "inside_height"},
            "How much goes into it",
        ),
        Carry("diagonal", {"length": "outside_length", "width": "outside_width"}, "Glue it up square"),
        Carry("splay", {}, "Lean its sides outwards instead"),
    ),
)
