"""Sizes that pieces have in common: what is counted and paid for, the thicknesses taken, what passes for alike."""

from collections.abc import Mapping
from fractions import Fraction

from calc.building.size import Size, Step, Yield
from calc.pieces import _stock as stock
from calc.pieces._joints import NAILED, held
from calc.pieces._size import sizes_by

HARMLESS = Yield(over="", under="")
"""A size that is chosen, not forced: cut otherwise, the rest goes by it."""
CUT_INTO = Yield(over="", under="", hollow=True)
"""The same of what is cut into a part, such as a groove: made already, it can only be cut deeper."""
CARD = Fraction(3, 10)
"""The thickness of a comment card, in millimetres: ours, measured on no standard."""

size = sizes_by({})
WALLS_ALIKE = size("alike", "Walls alike within", "The thickness of a card.", lambda: CARD, shown=False)
COUNTED = (
    size("board_feet", "Board feet to buy", "Waste added.", lambda bought: bought["to_buy"], kind="board-feet"),
    size("cost", "Cost of the wood", "By exact measure, waste added.", stock.cost, kind="money"),
    size(
        "nail_count", "Nails in all", "By their spacing, two at least to a joint, where one of the kind fits.",
        lambda jointed: sum(row["count"] for row in held(jointed, NAILED)), kind="count",
    ),
)  # fmt: skip
STOCKED = (Step(name="boards", work=stock.boards), Step(name="bought", work=stock.bought))
"""The stock that the step `cut_list` takes."""


def thicknesses(parts: Mapping[str, str]) -> tuple[Size, ...]:
    """The thickness of each part: the stock's own unless it is given.

    parts: as the size is named, and as a sentence names them: {"side": "sides"}.
    """
    return tuple(
        size(
            f"{part}_thickness",
            f"Thickness of the {told}",
            "The stock's own, unless given.",
            lambda stock_thickness: stock_thickness,
            part=part,
            yields=HARMLESS,
        )
        for part, told in parts.items()
    )
