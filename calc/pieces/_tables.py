"""The tables that pieces have in common: parts, joints, order of work, what to buy."""

from collections.abc import Callable, Sequence

from calc.building.size import Table
from calc.declare import Answer, Values
from calc.pieces._joints import NAILED, SCREWED, shopping
from calc.pieces._order import Step, sure
from calc.pieces._part import rows


def table(
    name: str,
    label: str,
    columns: dict[str, tuple[str, str]],
    work: Callable[[Values], Sequence[Values]],
    help: str = "",
) -> Table:
    """A table of these columns, each a label and a kind."""
    made = tuple(Answer(name=key, label=told, kind=kind) for key, (told, kind) in columns.items())
    return Table(name=name, label=label, help=help, columns=made, work=work)


def parts_table(help: str) -> Table:
    """The parts, from the step called cut_list."""
    return table(
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
        help,
    )


def order_table(work: Callable[[Values], Sequence[Step]], may_lack: Sequence[str] = ()) -> Table:
    """The order of work. Where one of the sizes it may lack is not known, only the steps set by that are left out."""
    return table(
        "order",
        "Order of work",
        {
            "do": ("Do", "text"),
            "tool": ("Tool", "text"),
            "setting": ("Setting", "length"),
            "second": ("Second setting", "length"),
            "angle": ("Angle", "angle"),
        },
        lambda v: sure(work, v, may_lack),
        "Across the grain before along it.",
    )


JOINTS = table(
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
)
BOARDS = table(
    "buy",
    "Board to cut it from",
    {"thickness": ("Thick", "length"), "width": ("Wide", "length"), "length": ("Run of board", "length")},
    lambda v: v["boards"],
    "Before waste is added.",
)
NAILS = table(
    "nail_list",
    "Nails to buy",
    {"nail": ("Nail", "text"), "length": ("Length", "length"), "count": ("Count", "count")},
    lambda v: shopping(v["jointed"], NAILED),
)
SCREWS = table(
    "screw_list",
    "Screws to buy",
    {"nail": ("Screw", "text"), "length": ("Length", "length"), "count": ("Count", "count")},
    lambda v: shopping(v["jointed"], SCREWED),
)
