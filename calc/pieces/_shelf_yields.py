"""What gives way in a wall shelf when a part comes out other than it was worked out, as a maker would have it."""

from calc.building.size import Yield
from calc.pieces._counted import CUT_INTO, HARMLESS

YIELDS = {
    # The shelf sets the ends apart, as long as the rail is still to be sawn; then only the housings can be deepened.
    "shelf_long": Yield(
        by=("inside_width",),
        over="is {} too long for its housings, both ends together",
        under="is {} short of the floors of its housings, both ends together, unless the rail is sawn as much shorter",
        trims=("housing_deep",),
    ),
    "rail_long": Yield(
        by=("inside_width",),
        over="is {} too long to go in between the ends",
        under="is {} short and leaves gaps at the ends, both together",
        trims=("shelf_long",),
    ),
    "shelf_deep": Yield(
        by=("depth",),
        over="stands {} proud of the ends at the front",
        under="stands {} back from the front edges of the ends",
        trims=("depth",),
    ),
    # What is missing from an end is missing above the shelf first, where nothing stands on it; then below.
    "end_high": Yield(by=("rise", "drop"), over="is {} too long", under="is {} too short to keep its shape"),
    # A housing follows the board it is for. Once it is chopped, the shelf can be planed to it.
    "housing_wide": Yield(
        by=("shelf_thickness",),
        over="has its housing {} wider than the shelf is thick",
        under="has its housing {} narrower than the shelf is thick",
        hollow=True,
        trims=("shelf_thickness",),
    ),
    "second_deep": Yield(
        by=("depth",),
        over="is {} deeper than the first",
        under="is {} less deep than the first",
        trims=("depth",),
        play="ends_alike",
    ),
    "second_drop": Yield(
        by=("drop",),
        over="has its housing {} higher than the first",
        under="has its housing {} lower than the first",
        trims=("drop",),
        play="ends_alike",
    ),
    "drop": HARMLESS,
    "housing_deep": CUT_INTO,
}
