"""What a sloping-lid box answers, the most wanted first."""

from calc.building.size import Size, Table
from calc.pieces import _sloping_lid_sizes as lid
from calc.pieces import _sloping_sizes as box
from calc.pieces._counted import COUNTED
from calc.pieces._sloping_hinges import HINGES, MARKS
from calc.pieces._sloping_order import order
from calc.pieces._tables import BOARDS, JOINTS, NAILS, SCREWS, order_table, parts_table

TABLES = (
    parts_table("Finished sizes. Strip and moving lid are sawn out of the lid."),
    JOINTS,
    order_table(order, may_lack=("slot_length", "slot_begins")),
    MARKS,
    BOARDS,
    NAILS,
    SCREWS,
    HINGES,
)
ANSWERS: tuple[Size | Table, ...] = (
    *lid.WANTED, *TABLES, *COUNTED, *box.WEIGHT, *box.BOX, *lid.FACES, *box.ROUND, *lid.CARRIED, *box.TAKEN,
    *box.ASIDE, *lid.ASIDE,
)  # fmt: skip
