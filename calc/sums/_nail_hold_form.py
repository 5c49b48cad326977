"""What nail-hold asks for, and what it tells: three forces, each with its basis in its name."""

from calc.declare import Answer
from calc.kinds import Given, Length, Limit
from calc.sums import _species
from calc.sums._nail_asked import NAIL, OWN
from calc.typed.measures import Density

GIVENS: tuple[Given, ...] = (
    _species.asked("The wood that holds the point; search by a part of its name: white ash, quercus, douglas."),
    NAIL,
    OWN,
    Length(
        name="into",
        label="In the second piece",
        help="How much of the nail is in the wood that holds it, as the sum called nail finds it.",
        limit=Limit("1/8 in", "6 in"),
    ),
    Density(
        name="density",
        label="Density of your own wood",
        help="At 12 percent moisture, as a merchant states it, if you have a better figure than the table.",
        optional=True,
        limit=Limit("200 kg/m³", "1100 kg/m³"),
    ),
)
ANSWERS = (
    Answer(
        name="ultimate",
        label="Ultimate, draws it on average",
        kind="force",
        help="Wood Handbook 8-1, on the gravity at 12 percent. About half let go sooner: not a load to hang.",
    ),
    Answer(
        name="allowable",
        label="Allowable, for design by the code",
        kind="force",
        help="National Design Specification, on the ovendry gravity, before the factors that it asks for.",
    ),
    Answer(
        name="older",
        label="Older ultimate, draws it on average",
        kind="force",
        help="The form of 1931 to 1965, on the ovendry gravity: to read old tables by.",
    ),
    Answer(name="allowable_inch", label="Allowable pounds for each inch in", kind="number", places=1),
    Answer(name="older_inch", label="Older ultimate pounds for each inch in", kind="number", places=1),
    Answer(name="depths", label="Diameters that it is in", kind="number", places=1),
    Answer(name="thick", label="Thickness of the nail", kind="fine", help="From the tables, or as you measured it."),
    Answer(
        name="gravity_12",
        label="Specific gravity at 12 percent",
        kind="number",
        places=3,
        help="Ovendry mass on the volume at 12 percent moisture: the basis of the ultimate, Wood Handbook 8-1.",
    ),
    Answer(
        name="gravity_0",
        label="Specific gravity ovendry",
        kind="number",
        places=3,
        help="Ovendry mass on the ovendry volume: the basis of the older and of the allowable form.",
    ),
    Answer(name="gravity", label="Basic specific gravity", kind="number", places=3, help="On the green volume."),
    Answer(name="figure_from", label="The wood is from", kind="text"),
    Answer(name="thick_from", label="The nail is from", kind="text"),
)
