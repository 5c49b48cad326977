"""One part of a piece, and how many widths of stock it is glued up from."""

from dataclasses import asdict, dataclass, replace
from typing import Any

from calc.errors import Refusal
from calc.sums._lid import strips_of

MOST_STRIPS = 12
Sized = tuple[Any, Any, Any]
"""Millimetres along the grain, across it and thick."""
Stock = tuple[Any, Any]
"""How wide the stock is, and what a glue joint takes of two widths; millimetres."""


@dataclass(frozen=True, kw_only=True)
class Part:
    """One part: millimetres along the grain, across it and thick; `short` is its shorter face or edge.

    `strips` is how many widths of stock to glue up for it. `blank` is False for what is sawn out of another part, which
    has no strips of its own.
    `blank_long` is how long the board for it must be, where that is more than the finished part.
    """

    part: str
    count: int
    length: Any
    width: Any
    thickness: Any
    grain: str
    joins: str
    bevel: Any = None
    cut: str = "square"
    short: Any = None
    strips: int | None = 1
    blank: bool = True
    blank_long: Any = None


def rows(found: list[Part]) -> list[dict[str, Any]]:
    """The parts as rows of the answer."""
    return [asdict(part) for part in found]


def sawn(name: str, count: int, size: Sized, grain: str, joins: str, stock: Stock, **more: Any) -> Part:
    """A part out of this stock: so long along its grain, so wide and so thick. `more` is any of what else it tells."""
    long, wide, thick = size
    told: dict[str, Any] = {"count": count, "grain": grain, "joins": joins, **more}
    return _glued(Part(part=name, length=long, width=wide, thickness=thick, **told), *stock)


def battens(size: Sized, grain: str, joins: str, stock: Stock) -> Part:
    """Two battens; Refusal where the stock is narrower than they are."""
    if size[1] > stock[0]:
        raise _narrow()
    return sawn("Batten", 2, size, grain, joins, stock)


def _glued(part: Part, stock_width: Any, joint: Any) -> Part:
    """The same part with the widths of stock it takes; each glue joint loses what planing both its edges takes."""
    if stock_width <= joint:
        raise _narrow()
    strips = strips_of(part.width, stock_width, joint)
    if strips > MOST_STRIPS:
        say = f"the {part.part.lower()} would be glued up from {strips} strips of this stock"
        raise Refusal(say, "give a wider stock, or a smaller box", "stock_width")
    return replace(part, strips=strips)


def _narrow() -> Refusal:
    """What is said where not even a batten comes out of the stock."""
    told = "give a wider stock or narrower battens"
    return Refusal("this stock is too narrow to make a batten of", told, "stock_width")
