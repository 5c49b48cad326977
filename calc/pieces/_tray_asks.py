"""What a splayed tray asks for: six entries from the bench, and what is taken for the rest unless it is given."""

from calc.kinds import Angle, Choice, Given, Limit, Option
from calc.pieces._asks import COMMON, JOINT, length, theirs, thick
from calc.pieces._weight import WEIGHS

INSIDE = Limit("50 mm", "1 m")
RAISED = Limit("0 mm", "8 mm", why="a bottom let in as a wedge sits near the foot of the sides")
"""Also how far a bottom that came out large may stay up: common practice, no source. Beyond that it is planed."""
BENCH = (
    length("stock_width", "Width of the stock", "Measured across the board, edges trued.",
           limit=Limit("20 mm", "600 mm")),
    length("stock_thickness", "Thickness of the stock", "Measured, planed as you will use it.",
           limit=Limit("3 mm", "40 mm")),
    length("long", "Inside length at the bottom", "On the floor of the tray, from end to end.", limit=INSIDE),
    length("wide", "Inside width at the bottom", "On the floor of the tray, between the long sides.", limit=INSIDE),
    length("height", "Height", "From what it stands on, plumb up to the top of the sides.",
           limit=Limit("25 mm", "400 mm")),
    Angle(name="lean", label="Lean from upright", help="Of all four sides, outwards: in degrees, or as run in rise.",
          limit=Limit("3", "45")),
)  # fmt: skip
SHAPE = (
    Choice(name="corners", label="Corners", help="How the sides meet.", default="butt",
           default_why="common practice: nails across the corners, sawn at two settings and no more",
           options=(Option("butt", "Butted: the ends between the long sides"), Option("mitre", "Mitred"))),
    Choice(name="edges", label="Top and bottom edges", help="Whether they are planed level or left square.",
           default="level", default_why="it stands without rocking, and the rim is flat to the hand",
           options=(Option("level", "Bevelled level"), Option("square", "Left square"))),
    Choice(name="handles", label="Handles", help="A hand hole in each end, or none.", default="holes",
           default_why="a full tray wants two hands", options=(Option("holes", "Hand holes"), Option("none", "None"))),
    length("bottom_up", "Bottom raised", "Its under face above the lower inner arrises of the sides, plumb.", "3 mm",
           "common practice: the tray stands on its sides, and a bottom planed small sinks a little",
           limit=RAISED),
    length("hand_long", "Length of a hand hole", "Over its round ends.", "95 mm",
           "common practice: four fingers, gloved", limit=Limit("20 mm", "200 mm")),
    length("hand_wide", "Width of a hand hole", "The bit that bores its ends: its radius is half of this.", "30 mm",
           "common practice: fingers pass, a hand does not slip", limit=Limit("10 mm", "80 mm")),
    length("hand_down", "Wood above a hand hole", "Down the inner face from its top arris.", "15 mm",
           "common practice: less breaks out", limit=Limit("5 mm", "150 mm")),
    thick("side_thickness", "Thickness of the sides", "If they are not of the same stock."),
    thick("bottom_thickness", "Thickness of the bottom", "If it is not of the same stock."),
)  # fmt: skip
GIVENS: tuple[Given, ...] = (*BENCH, *SHAPE, *WEIGHS, JOINT, theirs("hinge-strip", "kerf"), *COMMON)
