"""What gives way in a flat-lid box when a part comes out other than it was worked out, as a maker would have it.

Only what is still open gives way. A box that came out narrower has its lid follow; once the lid is cut its overhang
shrinks first, and the battens' clearance before that; then what is left is said. Battens are fitted to the walls: they
use up their clearance and never make the box larger.
"""

from calc.building.size import Yield
from calc.pieces._box_yields import BOTTOM, as_high, as_long
from calc.pieces._counted import CUT_INTO

YIELDS = {
    "front_long": Yield(
        by=("width",), over="is {} too long, both ends together", under="is {} too short for the sides, both together"
    ),
    "back_long": as_long("front_long", "width"),
    "side_long": Yield(
        by=("depth",), over="is {} too long for front and back", under="is {} too short for front and back"
    ),
    "second_long": as_long("side_long", "depth"),
    "front_high": Yield(by=("height",), over="stands {} too high", under="falls {} short"),
    "back_high": as_high("front_high", "height"),
    "side_high": as_high("front_high", "height"),
    "second_high": as_high("front_high", "height"),
    **BOTTOM,
    "lid_long": Yield(
        by=("end_overhang", "width"),
        over="hangs {} too far over the sides, both together",
        under="leaves {} of the sides bare, both together",
    ),
    "lid_wide": Yield(
        by=("edge_overhang", "depth"),
        over="hangs {} too far over front and back, both together",
        under="leaves {} of front and back bare, both together",
    ),
    "batten_long": Yield(
        by=("clearance",),
        over="is {} too long to go in between front and back",
        under="leaves the lid {} loose",
    ),
    "battens_over": Yield(
        by=("side_clearance",),
        over="is {} too wide to go in between the sides",
        under="leaves the lid {} loose from side to side",
    ),
    "rabbet": CUT_INTO,
}
