"""What a wall shelf asks for: six entries from the bench, and what is taken for the rest unless it is given."""

from calc.kinds import Given, Limit
from calc.pieces._asks import COMMON, JOINT, length, theirs, thick

BENCH = (
    length("stock_width", "Width of the stock", "Measured across the board, edges trued.",
           limit=Limit("20 mm", "600 mm")),
    length("stock_thickness", "Thickness of the stock", "Measured, planed as you will use it.",
           limit=Limit("6 mm", "60 mm")),
    length("inside_width", "Between the ends", "The clear span: from the inner face of one end to that of the other.",
           limit=Limit("120 mm", "2.4 m")),
    length("depth", "Depth from the wall", "From the wall to the front edge, level.", limit=Limit("60 mm", "500 mm")),
    theirs("sag", "species"),
    theirs("sag", "load", help="All that will ever stand on it, with its unit: weigh a foot of it and multiply."),
)  # fmt: skip
SHAPE = (
    length("drop", "Ends below the shelf", "From the foot of an end up to the under face of the shelf.",
           why="two thirds of the depth, common practice: the foot bears on the wall well below the screws",
           optional=True, limit=Limit("30 mm", "600 mm")),
    length("rise", "Ends above the shelf", "From the upper face of the shelf to the top of an end.", "60 mm",
           "common practice: it keeps the last book from falling", limit=Limit("10 mm", "400 mm")),
    length("radius", "Radius of the curve", "Half the width of the round thing you draw it round.", "60 mm",
           "a saucer, 120 mm over", limit=Limit("5 mm", "2 m")),
    length("land", "Left straight beside the shelf", "Between each curve and the housing.", "6 mm",
           "common practice: short grain beside a housing breaks away", limit=Limit("1 mm", "25 mm")),
    length("housing_deep", "Depth of the housings", "How deep the shelf goes into each end.",
           why="a third of the end's thickness, common practice", optional=True, limit=Limit("1 mm", "40 mm")),
    length("rail_wide", "Width of the rail", "Under the shelf at the wall, up and down.", "60 mm",
           "common practice: wood enough about a screw", limit=Limit("20 mm", "200 mm")),
    thick("shelf_thickness", "Thickness of the shelf", "If it is not of the same stock."),
    thick("end_thickness", "Thickness of the ends", "If they are not of the same stock."),
    thick("rail_thickness", "Thickness of the rail", "If it is not of the same stock."),
)  # fmt: skip
WALL = (
    theirs("screw", "number", name="screw", label="Number of the wall screws", default="8",
           default_why="common practice: what usual wall plugs take"),
    length("screw_in", "First screw from the end", "From each end of the rail.", "40 mm",
           "common practice: nearer, the rail's end splits", limit=Limit("15 mm", "300 mm")),
    length("screw_apart", "Screws apart at most", "Along the rail; where there are studs, as they stand.", "400 mm",
           "common practice: about the studs of a wall, 16 in", limit=Limit("100 mm", "1 m")),
)  # fmt: skip
WOOD = (
    theirs("sag", "ratio", default="384", default_why="common practice: 1/32 in to the foot"),
    theirs("sag", "creep"),
    theirs("sag", "own", name="own_stiffness"),
    theirs("weight", "moisture"),
    theirs("weight", "own", name="own_density"),
    JOINT,
    theirs("hinge-strip", "kerf"),
)
GIVENS: tuple[Given, ...] = (*BENCH, *SHAPE, *WALL, *WOOD, *COMMON)
