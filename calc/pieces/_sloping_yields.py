"""What gives way in a sloping-lid box when a part comes out other than it was worked out, as a maker would have it.

Only what is still open gives way: a size once cut stays. What nothing takes up is said of the part, with its choices.
"""

from calc.building.size import Yield
from calc.pieces._counted import CUT_INTO, HARMLESS

YIELDS = {
    # The gauge is set and the slope sawn with it, so the other edge goes along; only then does the slope give way.
    "back_height": Yield(
        by=("front_height", "angle"), over="stands {} too high at the back", under="falls {} short at the back"
    ),
    "front_height": Yield(
        by=("back_height", "angle"), over="stands {} too high at the front", under="falls {} short at the front"
    ),
    "angle": Yield(
        by=("front_height", "back_height"),
        over="has its top {} steeper than its two edges make it",
        under="has its top {} flatter than its two edges make it",
    ),
    # The second side is held against the first. While neither edge is cut on the first, both follow the second.
    "second_back": Yield(
        by=("back_height", "front_height", "angle"),
        over="stands {} higher than the first at the back",
        under="is {} lower than the first at the back",
        trims=("back_height",),
        play="sides_alike",
    ),
    "second_front": Yield(
        by=("front_height", "back_height", "angle"),
        over="stands {} higher than the first at the front",
        under="is {} lower than the first at the front",
        trims=("front_height",),
        play="sides_alike",
    ),
    "second_deep": Yield(
        by=("depth",),
        over="is {} deeper than the first",
        under="is {} less deep than the first",
        trims=("depth",),
        play="allowance",
    ),
    # The front's length sets the sides apart. Once they are nailed, only its ends or their outer faces can be planed.
    "front_long": Yield(
        by=("inside_width",),
        over="stands {} proud of the sides, both ends together",
        under="is {} short, and the sides stand proud of it, both ends together",
        trims=("side_thickness",),
    ),
    "back_wide": Yield(
        by=("inside_width",),
        over="stands {} proud of the sides, both edges together",
        under="is {} short of the sides' outer faces, both edges together",
        trims=("side_thickness",),
    ),
    # A front planed low lowers the sides' front edges with it, while those are still to be sawn.
    "front_inner": Yield(
        by=("front_height", "back_height", "angle"),
        over="holds the lid {} up at its inner face",
        under="leaves a gap of {} under the lid at its inner face",
        trims=("front_height",),
    ),
    "front_outer": Yield(
        by=("front_height", "back_height", "angle"),
        over="holds the lid {} up at its outer face",
        under="leaves a gap of {} under the lid at its outer face",
        trims=("front_height",),
    ),
    # A lid short of its length hangs less far over the front; then the sides are made less deep, if they can be yet.
    "lid_long": Yield(
        by=("front_overhang", "depth"),
        over="stands {} too far over the front",
        under="leaves a gap of {} at the back",
        trims=("depth",),
    ),
    "lid_under": Yield(
        by=("front_overhang", "depth"),
        over="stands {} too far over the front",
        under="leaves a gap of {} at the back, on its under face",
        trims=("depth",),
    ),
    "lid_wide": Yield(
        by=("side_overhang", "inside_width"),
        over="hangs {} too far over the sides, both together",
        under="leaves {} of the sides bare, both together",
    ),
    # What the saw and the plane took is what is missing; then the lid ends farther back.
    "moving": Yield(
        by=("kerf", "front_overhang"),
        over="comes {} farther over the front than it may",
        under="ends {} short of the front",
    ),
    # Wider does no harm; narrower is warned of, since nails and leaf get near each other.
    "strip": HARMLESS,
    # Out of sight below, then what shows above.
    "back_high": Yield(
        by=("tail", "crest"), over="stands {} too high above the lid", under="is {} too short to reach the lid"
    ),
    # The fitting allowance is there to be used up, and no given gives way: the bottom comes last, and is tried in.
    "bottom_deep": Yield(
        over="is {} too wide, more than its allowance, and does not go in between front and back",
        under="is {} too narrow, and leaves a gap at the back beside its allowance",
        play="allowance",
    ),
    "bottom_wide": Yield(
        over="is {} too long, more than its allowance, and does not go in between the sides",
        under="is {} too short, and leaves gaps at the sides beside its allowance",
        play="allowance",
    ),
    # Shorter battens clear the front all the better.
    "batten_long": Yield(over="is {} too long, and strikes as the lid opens", under="", play="clearance"),
    "slot_length": Yield(over="", under="has its slot {} too short for what goes in", hollow=True),
    "slot_width": Yield(over="", under="has its slot {} too narrow for what goes in", hollow=True),
    "slot_down": HARMLESS,
    "slot_begins": HARMLESS,
    "rabbet": CUT_INTO,
}
