"""Mitre: a regular frame of any number of sides from one of its sizes: angles, edges, and the stock it takes."""

from calc.declare import Answer, AnyOf, Carry, Caution, Example, Formula, Source, Sum
from calc.kinds import Count, Length, Limit
from calc.sums._mitre import figure, proof, work

SIZE = Limit("0 in", "20 m", above=True)
SHORT = 100
"""Millimetres under which a piece is too short to be held by hand at the saw: common practice."""

SUM = Sum(
    id="mitre",
    title="Mitred frame",
    moment="mark-out",
    question="At what angle do I cut the sides of a frame, and how long are they?",
    asks=(
        "what angle do i cut for a hexagon frame",
        "mitre angle for 8 sides",
        "how long are the sides of an octagon",
        "picture frame mitre and length",
        "hexagon across flats to side",
        "inside length of a mitred frame",
        "how much moulding do i need for a frame",
        "angle between the sides of a pentagon",
        "12 sided ring from strips",
        "angle for a six sided ring",
    ),
    purpose="From the number of equal sides and one size, the cut, both edges of a side, and the stock needed.",
    givens=(
        Count(name="sides", label="Sides", help="How many equal sides the frame has.", limit=Limit("3", "24")),
        Length(name="side", label="Side, long edge", help="The outer edge of one side, corner to corner.", limit=SIZE),
        Length(
            name="across_flats",
            label="Across flats",
            help="From a side square across to the one opposite; for an odd number, twice from the middle to a side.",
            limit=SIZE,
        ),
        Length(
            name="across_corners",
            label="Across corners",
            help="From a corner to the one opposite; for an odd number, twice from the middle to a corner.",
            limit=SIZE,
        ),
        Length(
            name="width",
            label="Stock width",
            help="How wide a side is, from its outer to its inner edge; leave it empty for the outside alone.",
            optional=True,
            limit=Limit("0 in", "1 m", above=True),
        ),
        Length(
            name="kerf",
            label="Saw cut",
            help="The width of wood that the saw turns to dust in one cut.",
            default="1 mm",
            default_why="common practice for a fine handsaw; try yours on a scrap",
            limit=Limit("0 mm", "10 mm"),
        ),
    ),
    any_of=AnyOf(1, ("side", "across_flats", "across_corners")),
    answers=(
        Answer(name="cut_angle", label="Cut, off square", kind="angle", help="Half of what a corner turns."),
        Answer(name="corner_angle", label="Angle between sides", kind="angle", help="Inside the frame."),
        Answer(name="side", label="Side, long edge", kind="length"),
        Answer(name="short_edge", label="Side, short edge", kind="length"),
        Answer(name="across_flats", label="Across flats", kind="length"),
        Answer(name="across_corners", label="Across corners", kind="length"),
        Answer(name="corner_to_side", label="Corner to the side opposite", kind="length", help="For an odd number."),
        Answer(name="inside_flats", label="Inside, across flats", kind="length"),
        Answer(
            name="stock_turned",
            label="Stock, every other piece turned over",
            kind="length",
            help="Plain stock: one slanting cut serves two pieces. A trimming cut at each end is counted.",
        ),
        Answer(
            name="stock_alike",
            label="Stock, all pieces one way up",
            kind="length",
            help="Rebated or moulded stock, long edges in a row. A trimming cut at each end is counted.",
        ),
    ),
    work=work,
    formulas=(
        Formula("cut_angle", "180 / sides"),
        Formula("corner_angle", "180 - 2 * cut_angle"),
        Formula("side", "across_flats * tan(cut_angle)"),
        Formula("side", "across_corners * sin(cut_angle)"),
        Formula("across_flats", "side / tan(cut_angle)"),
        Formula("across_corners", "side / sin(cut_angle)"),
        Formula("corner_to_side", "(across_flats + across_corners) / 2"),
        Formula("short_edge", "side - 2 * width * tan(cut_angle)"),
        Formula("inside_flats", "across_flats - 2 * width"),
        Formula(
            "stock_turned",
            "sides * (side - width * tan(cut_angle)) + width * tan(cut_angle) + (sides + 1) * kerf / cos(cut_angle)",
            "a slanting cut takes the more length",
        ),
        Formula("stock_alike", "sides * side + (sides + 1) * kerf / cos(cut_angle)"),
    ),
    proof=proof,
    figure=figure,
    sources=(
        Source("W. Fairham, Woodwork Joints", "mitre: half the angle of the joint", "read"),
        Source("F. T. Hodgson, ABC of the Steel Square (1908)", "sides of polygons for a foot across", "read"),
        Source("Stock with every other piece turned over", basis="common practice"),
    ),
    limits_of=(
        "3 to 24 equal sides, all angles alike. Across flats is the circle that just touches the sides within, across "
        "corners the circle through the corners. Stock must be narrower than half of across flats."
    ),
    cautions=(
        Caution(
            "Keep hands behind the saw and the chisel, and clamp the work in a mitre block.",
            source="general hand-tool practice, from memory",
        ),
        Caution(
            "Pieces this short cannot be held safely by hand: cut them from a long strip, or clamp them.",
            when=lambda v: v["side"] < SHORT,
            source="common practice",
        ),
    ),
    example=Example(
        {"sides": "6", "across_flats": "7 in", "width": "1 1/4 in"},
        "A six-sided ash frame round the clock face beside the reading room's comment-card box, 7 in across flats.",
    ),
    carry_on=(
        Carry("bevel", {"angle": "cut_angle"}, "Set the bevel gauge to the cut"),
        Carry("splay", {"sides": "sides"}, "Lean the sides outwards"),
    ),
)
