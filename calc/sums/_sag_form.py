"""What sag asks for, and what it tells."""

from calc.declare import Answer
from calc.kinds import Choice, Given, Length, Limit, Number
from calc.sums import _beams, _species
from calc.typed.measures import Mass, Pressure

GIVENS: tuple[Given, ...] = (
    _species.asked(),
    Length(
        name="span",
        label="Span",
        help="Between the insides of its supports; of a shelf held at one end, how far it stands out.",
        limit=Limit("2 in", "5 m"),
    ),
    Length(
        name="width",
        label="Depth from front to back",
        help="How wide the board is.",
        limit=Limit("1/4 in", "1.5 m"),
    ),
    Length(name="thickness", label="Thickness", help="Of the board, up and down.", limit=Limit("1/8 in", "6 in")),
    Mass(
        name="load",
        label="Load",
        help="All that stands on it, with its unit: weigh a foot of it and multiply.",
        limit=Limit("0 kg", "1000 kg", above=True),
    ),
    Choice(
        name="case",
        label="Held and loaded",
        help="How are its ends held, and where does the load stand?",
        default="uniform-simple",
        default_why="a full shelf on pins or battens",
        options=_beams.OPTIONS,
    ),
    Number(
        name="ratio",
        label="Sag allowed, 1 part in",
        help="The span over this may be lost in sag; the eye sees about 1 in 360.",
        default="360",
        default_why="common practice",
        limit=Limit("50", "2000"),
    ),
    Number(
        name="creep",
        label="Long-run factor",
        help="Loaded wood goes on sagging for years: twice as far when dry, more if it dries under load.",
        default="2",
        default_why="half the stiffness for loads that stay, S. J. Record (1914)",
        limit=Limit("1", "5"),
    ),
    Pressure(
        name="own",
        label="Stiffness of your own wood",
        help="Modulus of elasticity, as 11 GPa or 1.6 million psi, if you have a better figure than the table.",
        optional=True,
        limit=Limit("0.5 GPa", "40 GPa"),
    ),
)
ANSWERS = (
    Answer(name="sag_later", label="Sag in the long run", kind="length"),
    Answer(name="sag", label="Sag at once", kind="length"),
    Answer(name="allowed", label="Sag allowed", kind="length"),
    Answer(name="verdict", label="The shelf", kind="text"),
    Answer(
        name="span_most",
        label="Longest span within the limit",
        kind="length",
        help="In the long run; an even load keeps its load to the length, other loads stay as they are.",
    ),
    Answer(name="load_force", label="Pull of the load", kind="force"),
    Answer(name="own_mass", label="The shelf's own mass", kind="mass", help="Dry, from its specific gravity."),
    Answer(name="own_force", label="Pull of its own weight", kind="force", help="From its specific gravity at 12 %."),
    Answer(name="spread", label="Load and own weight", kind="force"),
    Answer(
        name="coefficient",
        label="Coefficient of the load",
        kind="number",
        places=5,
        help="From table 9-1 of the Wood Handbook.",
    ),
    Answer(
        name="own_coefficient",
        label="Coefficient of its own weight",
        kind="number",
        places=5,
        help="That of an even load, held the same way.",
    ),
    Answer(
        name="stiffness",
        label="Stiffness of the wood",
        kind="pressure",
        help="Modulus of elasticity at 12 percent moisture.",
    ),
    Answer(name="figure_from", label="The stiffness is from", kind="text"),
    Answer(name="gravity_from", label="The weight of the wood is from", kind="text"),
)
