"""What a wall shelf answers, the most wanted first."""

from calc.building.size import Size, Table
from calc.pieces import _shelf_sizes as sizes
from calc.pieces._counted import COUNTED
from calc.pieces._shelf_order import order
from calc.pieces._tables import BOARDS, JOINTS, NAILS, order_table, parts_table
from calc.pieces._weight import WEIGHED

TABLES = (parts_table("Finished sizes, before curves and housings."), JOINTS, order_table(order), BOARDS, NAILS)
ANSWERS: tuple[Size | Table, ...] = (
    *sizes.WANTED, *sizes.BEARS, *TABLES, *COUNTED, *WEIGHED, *sizes.ENDS, *sizes.RAIL, *sizes.WOOD, sizes.FROM,
    *sizes.TAKEN, *sizes.ASIDE,
)  # fmt: skip
