"""The stock that the parts of a piece take: strips to glue up, and the run of board for each thickness."""

import math
from collections.abc import Sequence
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from calc.declare import Values
from calc.discover import find

if TYPE_CHECKING:
    from calc.pieces._part import Part


def boards(cut_list: Sequence["Part"], stock_width: Any, kerf: Any) -> list[dict[str, Any]]:
    """The stock to cut the parts from, a row for each thickness: a run of board of the stock's width.

    The run is put up to the next whole millimetre, so that it can be bought, and priced exactly.
    """
    runs: dict[Any, Any] = {}
    for part in cut_list:
        if part.blank:
            runs[part.thickness] = runs.get(part.thickness, 0) + _run(part, stock_width, kerf)
    return [
        {"count": 1, "thickness": thick, "width": stock_width, "length": Fraction(math.ceil(long))}
        for thick, long in runs.items()
    ]


def bought(boards: Sequence[Values], counts: str, waste: Any) -> Values:
    """What the boards come to, by board-measure."""
    return find("board-measure").of(boards=tuple(boards), rule=counts, waste=waste)


def cost(bought: Values, price: Any) -> Any:
    """What that costs; None where no price is given."""
    return None if price is None else bought["to_buy"] * price


def _run(part: "Part", stock_width: Any, kerf: Any) -> Any:
    """How much board one kind of part takes: a length for each strip, narrow parts side by side, a saw cut for each."""
    across = max(1, math.floor((stock_width + kerf) / (part.width + kerf)))
    lengths = part.count * part.strips if part.strips > 1 else math.ceil(part.count / across)
    return lengths * ((part.blank_long or part.length) + kerf)
