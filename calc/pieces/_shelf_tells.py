"""What a wall shelf answers, the most wanted first."""

from collections.abc import Sequence
from dataclasses import replace

from calc.building.size import Size, Table
from calc.declare import Values
from calc.pieces import _shelf_sizes as sizes
from calc.pieces._counted import COUNTED
from calc.pieces._shelf_order import order
from calc.pieces._tables import BOARDS, JOINTS, NAILS, SCREWS, order_table, parts_table
from calc.pieces._weight import WEIGHED


def wall_screws(v: Values) -> Sequence[Values]:
    """The screws through the rail; how long they must be is the wall's affair."""
    return [{"nail": f"No. {v['screw']} countersunk, length to suit the wall", "length": None, "count": v["screws"]}]


TABLES = (
    parts_table("Finished sizes, before curves and housings."),
    JOINTS,
    order_table(order),
    BOARDS,
    NAILS,
    replace(SCREWS, work=wall_screws),
)
ANSWERS: tuple[Size | Table, ...] = (
    *sizes.WANTED, *sizes.BEARS, *TABLES, *COUNTED, *WEIGHED, *sizes.ENDS, *sizes.RAIL, *sizes.WOOD, sizes.FROM,
    *sizes.TAKEN, *sizes.ASIDE,
)  # fmt: skip
