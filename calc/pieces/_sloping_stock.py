"""The stock that the parts of a sloping-lid box take: strips to glue up, and the run of board for each thickness."""

import math
from collections.abc import Sequence
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from calc.declare import Values

if TYPE_CHECKING:
    from calc.pieces._sloping_parts import Part


def boards(found: Sequence["Part"], m: Values) -> list[dict[str, Any]]:
    """The stock to cut the parts from, a row for each thickness: a run of board of the stock's width.

    The run is put up to the next whole millimetre, so that it can be bought, and priced exactly.
    """
    runs: dict[Any, Any] = {}
    for part in found:
        if part.blank:
            runs[part.thickness] = runs.get(part.thickness, 0) + _run(part, m)
    width = m["stock_width"]
    return [
        {"count": 1, "thickness": thick, "width": width, "length": Fraction(math.ceil(long))}
        for thick, long in runs.items()
    ]


def _run(part: "Part", m: Values) -> Any:
    """How much board one kind of part takes: a length for each strip, narrow parts side by side, a saw cut for each."""
    across = max(1, math.floor((m["stock_width"] + m["kerf"]) / (part.width + m["kerf"])))
    lengths = part.count * part.strips if part.strips > 1 else math.ceil(part.count / across)
    return lengths * (part.length + m["kerf"])
