"""What every glued joint is asked of its wood, its glue and its clamps."""

from calc.kinds import Choice, Given, Limit, Option
from calc.typed.measures import Force, Pressure

PRESSED: tuple[Given, ...] = (
    Choice(
        name="wood",
        label="Wood",
        help="Which end of the scale is it nearer to?",
        default="light",
        default_why="the lower pressure, which starves no joint",
        options=(Option("light", "Light, as pine or poplar"), Option("dense", "Dense, as oak or beech")),
    ),
    Pressure(
        name="own",
        label="Pressure of your own",
        help="On the joint, as the maker of the glue asks for it: 1 MPa or 150 psi.",
        optional=True,
        limit=Limit("50 kPa", "5000 kPa"),
    ),
    Force(
        name="clamp",
        label="What one clamp gives",
        help="As its maker states it, in N, kN or lbf; then there are clamps enough for the force as well.",
        optional=True,
        limit=Limit("50 N", "50 kN"),
    ),
)
