"""Entries that pieces have in common, and short ways to make a length or borrow a sum's own entry."""

from dataclasses import replace
from typing import Any

from calc import rule
from calc.discover import find
from calc.kinds import Given, Length, Limit, Number

THICK = Limit("3 mm", "60 mm")
SMALL = Limit("0 mm", "150 mm")
STOCK = "the stock's own thickness"


def length(name: str, label: str, help: str, default: str = "", why: str = "", **more: Any) -> Length:
    """A length, held to a limit that suits small sizes unless another is given."""
    return Length(name=name, label=label, help=help, default=default, default_why=why, **({"limit": SMALL} | more))


def thick(name: str, label: str, help: str) -> Length:
    """The thickness of a part: the stock's own unless it is given."""
    return length(name, label, help, why=STOCK, optional=True, limit=THICK)


def theirs(sum_id: str, theirs: str, **ours: Any) -> Given:
    """Another sum's own entry, under our name."""
    return replace(find(sum_id).given(theirs), **ours)


JOINT = length(
    "joint",
    "Lost at each glue joint",
    "What planing both its edges true takes.",
    "2 mm",
    "common practice",
    limit=Limit("0 mm", "10 mm"),
)
COMMON: tuple[Given, ...] = (
    theirs("nail", "kind", name="nails"),
    theirs("nail", "wood"),
    length(
        "spacing", "Nails apart", "About how far from nail to nail along a joint.", "50 mm", "common practice",
        limit=Limit("15 mm", "300 mm"),
    ),
    rule.Mark(name="mark", label="Finest mark", help="The finest mark on the rule you work with.",
              default_why="the rule you always use"),
    theirs("board-measure", "rule", name="counts"),
    Number(
        name="waste", label="Added for waste", help="Knots, ends and mistakes, in percent of the board that is cut.",
        unit="%", default="25", default_why="a quarter, as Noyes (1910) adds for small pieces", limit=Limit("0", "200"),
    ),
    theirs("board-measure", "price"),
)  # fmt: skip
"""Nails and wood, the rule in hand, and what the board costs."""
