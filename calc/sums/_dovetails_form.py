"""What dovetails asks for, and what it tells."""

from calc.declare import Answer
from calc.kinds import Choice, Count, Given, Length, Limit, Number, Option

THICK = Limit("3 mm", "60 mm")
PIN = Limit("0.5 mm", "60 mm")
GIVENS: tuple[Given, ...] = (
    Length(
        name="width",
        label="Width of the boards",
        help="Across the grain, the length of the joint.",
        limit=Limit("10 mm", "1.5 m"),
    ),
    Count(name="tails", label="Tails", help="How many tails across the width.", limit=Limit("1", "60")),
    Length(
        name="thickness",
        label="Thickness of the pin board",
        help="The tails are as long as this, less any lap.",
        limit=THICK,
    ),
    Length(
        name="other",
        label="Thickness of the tail board",
        help="The pins are as long as this; leave it empty when both boards are alike.",
        optional=True,
        limit=THICK,
    ),
    Choice(
        name="wood",
        label="Wood",
        help="Soft wood crushes, and wants more slope; hard wood breaks at the corners, and wants less.",
        default="hard",
        options=(Option("soft", "Soft: 1 in 6"), Option("hard", "Hard: 1 in 8")),
    ),
    Number(
        name="slope",
        label="Slope, 1 in",
        help="Your own, if the wood is not to choose it: 7 for 1 in 7.",
        optional=True,
        limit=Limit("3", "20"),
    ),
    Length(
        name="pin",
        label="Narrowest width of a pin",
        help="On the outer face, where pins are narrowest: a chisel must get between the tails there.",
        default="1/4 in",
        default_why="common practice: a chisel that everyone has goes between",
        limit=PIN,
    ),
    Length(
        name="half",
        label="Narrowest width of a half pin",
        help="The pin at each edge, on the outer face; leave it empty to have it as wide as the others.",
        optional=True,
        limit=PIN,
    ),
    Length(
        name="lap",
        label="Wood left in front",
        help="For lapped dovetails, such as a drawer's front; nothing when the tails come through.",
        default="0",
        limit=Limit("0 in", "57 mm"),
    ),
)
ENDS = (("from", "from"), ("to", "to"))
ANSWERS = (
    Answer(name="tail", label="Tail, at its end", kind="length"),
    Answer(name="tail_narrow", label="Tail, on its base line", kind="length"),
    Answer(name="angle", label="Slope in degrees", kind="angle", help="Off square to the end of the board."),
    Answer(name="slope", label="Slope, 1 in", kind="number", help="By the wood, unless given."),
    Answer(name="pin_wide", label="Pin, on the inner face", kind="length", help="A whole one."),
    Answer(name="half", label="Narrowest width of a half pin", kind="length", help="As wide as a pin unless given."),
    Answer(name="half_wide", label="Half pin, on the inner face", kind="length"),
    Answer(name="flare", label="Each side slopes by", kind="fine", help="From the end to the base line."),
    Answer(name="tail_line", label="Gauge on the tail board", kind="length", help="The base line, from the end."),
    Answer(name="pin_line", label="Gauge on the pin board", kind="length", help="The base line, from the end."),
    Answer(name="other", label="Thickness of the tail board", kind="length", help="Like the other unless given."),
    Answer(name="ratio", label="Tail to pin", kind="number", help="How many pins, at their narrowest, make a tail."),
    Answer(
        name="tail_marks",
        label="Tail board, all from one edge",
        kind="rows",
        columns=(
            Answer(name="tail", label="Tail", kind="count"),
            *(Answer(name=f"end_{key}", label=f"At the end, {word}", kind="length") for key, word in ENDS),
            *(Answer(name=f"base_{key}", label=f"On the base line, {word}", kind="length") for key, word in ENDS),
        ),
    ),
    Answer(
        name="pin_marks",
        label="Pin board, all from one edge",
        kind="rows",
        help="Where wood is left in front, the narrow end of a pin is at the inside of that lap.",
        columns=(
            Answer(name="pin", label="Pin", kind="text"),
            *(Answer(name=f"out_{key}", label=f"Outer face or lap, {word}", kind="length") for key, word in ENDS),
            *(Answer(name=f"in_{key}", label=f"Inner face, {word}", kind="length") for key, word in ENDS),
        ),
    ),
)
