"""What gives way in a splayed tray when a part comes out other than it was worked out, as a maker would have it."""

from calc.building.size import Yield

# What could be taken off the other part instead is said in words: neither size is worked out from the other, so that no
# trim can be offered as an entry.
YIELDS = {
    # The gauge is set and the ends sawn with it: the sides lean as they were sawn.
    "face_cut": Yield(
        by=("lean",),
        over="has its ends sawn {} further off square than its lean wants",
        under="has its ends sawn {} nearer square than its lean wants",
    ),
    "bevel": Yield(
        over="is bevelled {} too much at its ends, and the corner does not close",
        under="is bevelled {} too little at its ends, and the corner does not close",
    ),
    # A side sawn short makes the tray shorter, as long as the bottom is open; then the bottom sits higher or lower.
    "long_side": Yield(
        by=("long", "bottom_up"),
        over="is {} too long for its bottom, along its outer top arris",
        under="is {} too short for its bottom, along its outer top arris, "
        "unless as much is taken off the bottom's length",
    ),
    "end_side": Yield(
        by=("wide", "bottom_up"),
        over="is {} too long for its bottom, along its outer top arris",
        under="is {} too short for its bottom, along its outer top arris, "
        "unless as much is taken off the bottom's width",
    ),
    "second_long": Yield(
        by=("long",),
        over="is {} longer than the first",
        under="is {} shorter than the first",
        trims=("long_side",),
        play="sides_alike",
    ),
    "second_end": Yield(
        by=("wide",),
        over="is {} longer than the first",
        under="is {} shorter than the first",
        trims=("end_side",),
        play="sides_alike",
    ),
    "side_wide": Yield(by=("height",), over="stands {} too high, up its face", under="is {} too low, up its face"),
    "end_wide": Yield(
        by=("height",),
        over="stands {} above the long sides, up its face",
        under="is {} lower than the long sides, up its face",
        trims=("side_wide",),
        play="sides_alike",
    ),
    # Being a wedge, a bottom planed small sinks until it is tight again, as long as there is room beneath it.
    "bottom_long": Yield(
        by=("long", "bottom_up"),
        over="is {} too long to go down between the ends",
        under="is {} too short and leaves gaps at the ends, both together, "
        "unless the long sides are sawn as much shorter",
    ),
    "bottom_wide": Yield(
        by=("wide", "bottom_up"),
        over="is {} too wide to go down between the long sides",
        under="is {} too narrow and leaves gaps at the long sides, both together, "
        "unless the ends are sawn as much shorter",
    ),
}
