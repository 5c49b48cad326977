"""The working of spacing: how many fit a wanted gap, the exact gap, running marks from one end; its proof."""

import math
from fractions import Fraction

from calc.declare import Values
from calc.errors import Refusal
from calc.sums._in_both import in_both

MOST = 200
"""Items that are still marked out one by one."""
ENDS = {"full": Fraction(1), "half": Fraction(1, 2), "none": Fraction(0)}
"""How many gaps there are at each end."""
Size = Fraction


def work(opening: Size, count: int | None, near_gap: Size | None, width: Size, ends: str, start: Size) -> Values:
    """The items that come nearest to the gap, where that is asked; then the gap, and each mark from the exact gap."""
    share = ENDS[ends]
    number = _count(opening, near_gap, width, share) if near_gap is not None else count or 0
    gap = _gap(opening, number, width, share)
    if gap is None or gap < 0:
        raise _crowded(opening, number, width, "near_gap" if count is None else "count")
    fewer, more = (_gap(opening, other, width, share) for other in (number - 1, number + 1))
    return {
        "count": number,
        "end_share": share,
        "spaces": number - 1 + 2 * share,
        "gap": gap,
        "end_gap": share * gap,
        "pitch": gap + width,
        "gap_fewer": fewer,
        "gap_more": more if more is not None and more >= 0 else None,
        "marks": _marks(opening, number, gap, width, share, start),
    }


def _gap(opening: Size, count: int, width: Size, share: Fraction) -> Size | None:
    """The gap between so many items; None where no gap is left to speak of."""
    spaces = count - 1 + 2 * share
    return (opening - count * width) / spaces if count > 0 and spaces > 0 else None


def _count(opening: Size, gap: Size, width: Size, share: Fraction) -> int:
    """How many items leave a gap nearest to `gap`; of two as near, the fewer."""
    exact = (opening - gap * (2 * share - 1)) / (gap + width)
    if exact > MOST:
        raise Refusal(f"this takes more than {MOST} items", "give a wider gap", "near_gap")
    least = 1 if share else 2
    tried = sorted({max(least, math.floor(exact)), max(least, math.ceil(exact))})
    gaps = {one: found for one in tried if (found := _gap(opening, one, width, share)) is not None and found >= 0}
    return min(gaps, key=lambda one: (abs(gaps[one] - gap), one), default=least)


def _crowded(opening: Size, count: int, width: Size, field: str) -> Refusal:
    if count * width <= opening:
        return Refusal("one item alone has no gap beside it", "leave a gap at the ends, or take two items", "ends")
    items = "one item is" if count == 1 else f"{count} items are together"
    say = f"{items} {in_both(count * width)}, wide, which is more than the opening"
    most = math.floor(opening / width) if field == "count" else 0
    return Refusal(say, f"use at most {most}, or narrower ones" if most else "use narrower items", field)


def _marks(opening: Size, count: int, gap: Size, width: Size, share: Fraction, start: Size) -> list[Values]:
    """Each item's edges and centre from one end, and the end itself; items with no width have a centre only."""
    first = start + share * gap
    begins = [first + at * (gap + width) for at in range(count)]
    rows = [
        {
            "item": str(at),
            "near": near if width else None,
            "centre": near + width / 2,
            "far": near + width if width else None,
        }
        for at, near in enumerate(begins, 1)
    ]
    end = start + opening
    return [*rows, {"item": "end", "near": None, "centre": None if width else end, "far": end if width else None}]


def proof(v: Values) -> dict[str, float]:
    """Turned end for end the marks are the same; what lies between them is the gap; the last is the opening."""
    rows, end = v["marks"][:-1], v["start"] + v["opening"]
    centres = [row["centre"] for row in rows]
    turned = [one + other - v["start"] - end for one, other in zip(centres, reversed(centres), strict=True)]
    last = v["marks"][-1]["far" if v["width"] else "centre"]
    left = v["opening"] - sum((v["width"] + v["gap"] for _ in rows[1:]), v["width"]) - 2 * v["end_gap"]
    return {
        "turned end for end the marks are the same": float(max(map(abs, turned)) / v["opening"]),
        "items, gaps and both ends fill the opening": float(left / v["opening"]),
        "the last mark is the far end": float(last - end),
    }
