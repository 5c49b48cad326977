"""What legs asks for, and what it tells."""

from calc.declare import Answer
from calc.kinds import Angle, Given, Length, Limit
from calc.sums._legs import STEEPEST

LEAN = Limit("0", "45")
GIVENS: tuple[Given, ...] = (
    Angle(
        name="rake",
        label="Rake",
        help="How far the leg leans to the front or back, off upright, seen from the side.",
        limit=LEAN,
    ),
    Angle(
        name="splay",
        label="Splay",
        help="How far the leg leans to the left or right, off upright, seen from the front.",
        limit=LEAN,
    ),
    Angle(
        name="lean",
        label="Whole lean",
        help="How far the leg is off upright, seen square to the way it leans.",
        limit=Limit("0", str(STEEPEST)),
    ),
    Angle(
        name="sight",
        label="Sight line",
        help="From the line across the seat, left to right, to the line along which the leg leans.",
        limit=Limit("0", "90"),
    ),
    Length(
        name="height",
        label="Height under the seat",
        help="From the floor up to the under face, where the middle of the leg goes in.",
        limit=Limit("1 in", "2 m"),
    ),
    Length(
        name="seat",
        label="Depth of the hole",
        help="Square to the seat: its whole thickness when the leg comes through. Nothing for a leg under it.",
        limit=Limit("0 in", "6 in"),
    ),
    Length(
        name="thick",
        label="Thickness of the leg",
        help="Across its widest way at shoulder or foot; leave it empty to leave out how the ends slant.",
        optional=True,
        limit=Limit("5 mm", "150 mm"),
    ),
    Length(
        name="holes",
        label="Holes apart",
        help="Between the middles of two holes side by side, on the under face; for the spread of the feet.",
        optional=True,
        limit=Limit("0 in", "2 m"),
    ),
)
ANSWERS = (
    Answer(name="lean", label="Whole lean", kind="angle", help="Off square, along the sight line."),
    Answer(name="drill", label="Drill, from the face of the seat", kind="angle", help="Set the bevel to this."),
    Answer(
        name="sight",
        label="Sight line",
        kind="angle",
        help="From the line across; stand the bevel's stock on this line, and drill beside its blade.",
    ),
    Answer(name="sight_back", label="Sight line, from front to back", kind="angle", help="The same line."),
    Answer(name="leg", label="Leg under the seat", kind="length", help="Along its middle, shoulder to foot."),
    Answer(name="whole", label="Leg with what is in the seat", kind="length", help="Along its middle."),
    Answer(name="blank", label="Least length to saw", kind="length", help="The slants of both ends taken in."),
    Answer(name="bore", label="Depth along the drill", kind="length"),
    Answer(name="rake", label="Rake", kind="angle"),
    Answer(name="splay", label="Splay", kind="angle"),
    Answer(
        name="front_line",
        label="Shoulder and foot, on the front and back faces",
        kind="angle",
        help="Off square, on a square leg tipped along its sight line without a twist.",
    ),
    Answer(name="side_line", label="Shoulder and foot, on the side faces", kind="angle", help="The same, there."),
    Answer(
        name="drop",
        label="Shoulder and foot, high side to low",
        kind="length",
        help="Along the leg, from one side of the sight line to the other; half of it at each side of the middle.",
    ),
    Answer(name="out", label="Foot stands off sideways", kind="length", help="From below its hole."),
    Answer(name="back", label="Foot stands off to the front or back", kind="length", help="From below its hole."),
    Answer(name="foot", label="Foot stands off along the sight line", kind="length"),
    Answer(name="feet", label="Feet apart", kind="length", help="Middle to middle, of the two side by side."),
)
