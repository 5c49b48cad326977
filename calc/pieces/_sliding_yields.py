"""What gives way in a sliding-lid box when a part comes out other than it was worked out, as a maker would have it.

Only what is still open gives way. A box that came out narrower has its lid follow; once the lid is cut its room in the
grooves shrinks, or its clearance at the back and then its overhang; what is left is said.
"""

from calc.building.size import Yield
from calc.pieces._box_yields import BOTTOM, as_high, as_long, grooved
from calc.pieces._counted import CUT_INTO

YIELDS = {
    "side_long": Yield(
        by=("length",), over="is {} too long for front and back", under="is {} too short for front and back"
    ),
    "second_long": as_long("side_long", "length"),
    "front_long": Yield(
        by=("width",), over="is {} too long to go in between the sides", under="is {} too short to reach both sides"
    ),
    "back_long": as_long("front_long", "width"),
    "side_high": Yield(by=("height",), over="stands {} too high", under="falls {} short"),
    "second_high": as_high("side_high", "height"),
    "back_high": as_high("side_high", "height"),
    # Planing the sides' tops brings no groove down to a low front: it only takes from the wood above.
    "front_high": Yield(
        by=("height",),
        over="stands {} above the groove, and the lid strikes it",
        under="leaves a gap of {} under the lid",
    ),
    # The wood above the groove: more of it is planed off the top, less of it is a new side, or a thinner lid.
    "lip": Yield(
        by=("sunk",),
        over="has its groove {} too low, and the lid lies so far down",
        under="has its groove {} too high, and the lid stands proud, unless all grooves are ploughed so much wider "
        "downwards and their width recorded",
        trims=("lid_thickness",),
    ),
    "second_lip": grooved("sunk"),
    "back_lip": grooved("sunk"),
    **BOTTOM,
    "lid_wide": Yield(
        by=("spare", "width"),
        over="is {} too wide, and binds in damp weather",
        under="is {} too narrow for its grooves",
        trims=("groove_deep",),
    ),
    "lid_long": Yield(
        by=("end_clearance", "overhang", "length"),
        over="stands {} too far over the front",
        under="leaves a gap of {} at the front",
    ),
    "lid_tongue": Yield(by=("play",), over="is {} too thick for its groove", under="rattles {} in its groove"),
    "lid_rabbet": Yield(
        by=("clearance",),
        over="has its edges cut {} wider than they need be",
        under="has its field {} too wide, and it rubs on the sides",
        hollow=True,
    ),
    "rabbet": CUT_INTO,
    "groove_deep": CUT_INTO,
    "notch_deep": CUT_INTO,
}
