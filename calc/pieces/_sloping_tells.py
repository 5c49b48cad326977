"""What a sloping-lid box answers, the most wanted first."""

from collections.abc import Callable, Sequence

from calc.declare import Answer, Values
from calc.pieces import _sloping_lid_sizes as lid
from calc.pieces import _sloping_sizes as box
from calc.pieces._sloping_order import order
from calc.pieces._sloping_part import rows
from calc.pieces._sloping_work import shopping
from calc.size import Size, Table


def _table(
    name: str,
    label: str,
    columns: dict[str, tuple[str, str]],
    work: Callable[[Values], Sequence[Values]],
    help: str = "",
) -> Table:
    made = tuple(Answer(name=key, label=told, kind=kind) for key, (told, kind) in columns.items())
    return Table(name=name, label=label, help=help, columns=made, work=work)


TABLES = (
    _table(
        "parts",
        "Parts",
        {
            "part": ("Part", "text"),
            "count": ("Count", "count"),
            "length": ("Along the grain", "length"),
            "width": ("Across the grain", "length"),
            "thickness": ("Thick", "length"),
            "grain": ("Grain runs", "text"),
            "bevel": ("Angle", "angle"),
            "cut": ("Ends and edges", "text"),
            "short": ("Shorter face or edge", "length"),
            "strips": ("Widths of stock", "count"),
            "joins": ("Joins", "text"),
        },
        lambda v: rows(v["cut_list"]),
        "Finished sizes. Strip and moving lid are sawn out of the lid.",
    ),
    _table(
        "joints",
        "Joints",
        {
            "joint": ("Joint", "text"),
            "nail": ("Nail", "text"),
            "length": ("Length", "length"),
            "hole": ("Hole, at most", "fine"),
            "count": ("Nails", "count"),
            "glue": ("Glue", "text"),
        },
        lambda v: v["jointed"],
    ),
    _table(
        "order",
        "Order of work",
        {
            "do": ("Do", "text"),
            "tool": ("Tool", "text"),
            "setting": ("Setting", "length"),
            "second": ("Second setting", "length"),
            "angle": ("Angle", "angle"),
        },
        order,
        "Across the grain before along it.",
    ),
    _table(
        "buy",
        "Board to cut it from",
        {"thickness": ("Thick", "length"), "width": ("Wide", "length"), "length": ("Run of board", "length")},
        lambda v: v["boards"],
        "Before waste is added.",
    ),
    _table(
        "nail_list",
        "Nails to buy",
        {"nail": ("Nail", "text"), "length": ("Length", "length"), "count": ("Count", "count")},
        lambda v: shopping(v["jointed"]),
    ),
)
ANSWERS: tuple[Size | Table, ...] = (
    *lid.WANTED, *TABLES, *box.COUNTED, *box.BOX, *lid.FACES, *box.ROUND, *lid.CARRIED, *box.TAKEN, *box.ASIDE,
    *lid.ASIDE,
)  # fmt: skip
