"""What a splayed tray answers, the most wanted first."""

from collections.abc import Sequence

from calc.building.size import Size, Table
from calc.declare import Values
from calc.pieces import _tray_sizes as sizes
from calc.pieces._counted import COUNTED
from calc.pieces._tables import BOARDS, JOINTS, NAILS, order_table, parts_table, table
from calc.pieces._tray_order import order
from calc.pieces._tray_shape import CORNERS
from calc.pieces._weight import WEIGHED


def edges(v: Values) -> Sequence[Values]:
    """The four long edges of each kind of side."""
    return [{"part": "Long side", **v["long_edges"]}, {"part": "End", **v["end_edges"]}]


TABLES = (
    parts_table("Longest finished edges, widths to rip; the angle is that of the ends' line, of the bottom's edges."),
    table(
        "side_edges",
        "Edges of the finished sides",
        {"part": ("Part", "text")} | {name: (name.replace("_", ", ").capitalize(), "length") for name in CORNERS},
        edges,
    ),
    JOINTS,
    order_table(order),
    BOARDS,
    NAILS,
)
ANSWERS: tuple[Size | Table, ...] = (
    *sizes.WANTED, *sizes.BOTTOM, *TABLES, *COUNTED, *WEIGHED, *sizes.TRAY, *sizes.HANDS, *sizes.WOOD, *sizes.TAKEN,
    *sizes.ASIDE,
)  # fmt: skip
