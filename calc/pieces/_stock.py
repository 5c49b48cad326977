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

    Parts of one width and thickness share a width of stock, longest first. The run is put up to the next whole
    millimetre, so that it can be bought, and priced exactly.
    """
    alike: dict[tuple[Any, Any], list[Part]] = {}
    for part in cut_list:
        if part.blank:
            alike.setdefault((part.thickness, part.width), []).append(part)
    runs: dict[Any, Any] = {}
    for (thick, width), parts in alike.items():
        runs[thick] = runs.get(thick, 0) + _run(parts, width, stock_width, kerf)
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


def _run(parts: Sequence["Part"], width: Any, stock_width: Any, kerf: Any) -> Any:
    """The board that parts of one width take: a length for each strip, narrow ones side by side, a saw cut for each."""
    across = max(1, math.floor((stock_width + kerf) / (width + kerf)))
    longest = [long for part in parts for long in [part.blank_long or part.length] * part.count * (part.strips or 1)]
    return sum(long + kerf for long in sorted(longest, reverse=True)[::across])
