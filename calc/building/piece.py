"""A piece: sizes that depend on one another, and stay true to what really came out of the saw.

A piece is a `Sum`: form, command line, description, figure and tests take it as they take any other. Its `work` is the
piece with nothing cut yet; `calc.building.settle` is the piece while it is being built.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any

from calc.bench import Bench
from calc.building.checking import check
from calc.building.order import led_to, ordered
from calc.building.size import CUT_KINDS, Match, Size, Step, Table
from calc.building.sizing import CANNOT, Known, Plan, Unknown, Worked
from calc.cells import printed
from calc.declare import Formula, Sum, Values
from calc.drawing.solid import Meeting, Solid
from calc.errors import Refusal, listed
from calc.given import Given


@dataclass(frozen=True, kw_only=True)
class Piece(Sum):
    """A `Sum` whose answers are sizes and tables. `steps` are worked out on the way and not shown.

    `work` and `formulas` are made from the sizes, the lines that lead to one before it; a formula that holds only where
    an optional given is left out, or of a size that is not shown, stays with its size. ValueError
    where a name is missing or the sizes go in a circle. `solids` gives each piece of wood where it lies in the whole.
    """

    answers: tuple[Size | Table, ...]
    steps: tuple[Step, ...] = ()
    matches: tuple[Match, ...] = ()
    solids: Callable[[Values], Sequence[Solid]] | None = None
    meetings: tuple[Meeting, ...] = ()
    moment: str = "piece"
    work: Callable[..., Values] = field(init=False, repr=False, compare=False)
    formulas: tuple[Formula, ...] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        check(self)
        object.__setattr__(self, "work", self._whole)
        object.__setattr__(self, "formulas", tuple(_lines(self)))
        super().__post_init__()

    @cached_property
    def sizes(self) -> dict[str, Size]:
        """The sizes by name, in the order declared."""
        return {one.name: one for one in self.answers if isinstance(one, Size)}

    @cached_property
    def cuttable(self) -> dict[str, Given]:
        """How each size that can be cut is asked for: the sizes of parts, and the lengths and angles given."""
        given = {one.name: one for one in self.givens if one.kind in CUT_KINDS}
        return given | {one.name: one.entry for one in self.sizes.values() if one.can_be_cut}

    @property
    def tables(self) -> tuple[Table, ...]:
        """The tables, in the order declared."""
        return tuple(one for one in self.answers if isinstance(one, Table))

    @cached_property
    def plan(self) -> Plan:
        """The sizes and steps in the order they are worked out."""
        group = self.any_of.names if self.any_of else ()
        worked: dict[str, Worked] = {**{one.name: one for one in self.steps}, **self.sizes}
        needs = {
            name: [need for need in one.needs if not (name in group and need in group)] for name, one in worked.items()
        }
        return Plan(tuple(worked[name] for name in ordered(needs, [one.name for one in self.givens])), self.any_of)

    @cached_property
    def in_order(self) -> tuple[Size, ...]:
        """The sizes in the order they are worked out: those of one round as declared."""
        return tuple(step for step in self.plan.steps if isinstance(step, Size))

    def _whole(self, **givens: Any) -> Values:
        """Every size and table with nothing cut; Refusal where one cannot be made."""
        values, refused = self.plan.work_out(givens, {})
        for refusal in refused.values():
            raise refusal
        for size in self.in_order:
            _hold(self, size, values)
        tables, untold = self.tabled(values)
        for refusal in untold.values():
            raise refusal
        return {size: values[size] for size in self.sizes} | tables

    def tabled(self, values: Values) -> tuple[dict[str, Any], dict[str, Refusal]]:
        """The tables that can be made from the sizes known, and why one cannot; what is not decided leaves it out."""
        found: dict[str, Any] = {}
        refused: dict[str, Refusal] = {}
        for table in self.tables:
            try:
                found[table.name] = table.work(Known(values))
            except Unknown:
                continue
            except Refusal as refusal:
                refused[table.name] = refusal
            except (ArithmeticError, ValueError):
                refused[table.name] = CANNOT
        return found, refused


def _lines(piece: Piece) -> Iterator[Formula]:
    optional = {one.name for one in piece.givens if one.optional}
    needs = {step.name: step.needs for step in piece.plan.steps}
    for name in led_to(needs, [size for size in piece.sizes if piece.sizes[size].shown]):
        size = piece.sizes.get(name)
        if size and size.line and size.shown and name not in optional:
            yield size.line


def _hold(piece: Piece, size: Size, values: Values) -> None:
    if broken := size.outside(values[size.name]):
        shown = printed(size, values[size.name], Bench())
        asked = _asked(piece, size)
        change = listed([piece.labels[one.name] for one in asked], "or")
        told = f"it must be {size.limit.text()}; change the {change}"
        raise Refusal(f"the {piece.labels[size.name]} comes out at {shown}, which {broken}", told, asked[0].name)


def _asked(piece: Piece, size: Size) -> list[Given]:
    """The givens a size comes from; of several, those that have no default."""
    wanted = {need for step in piece.plan.leading([size.name], ()) for need in step.needs}
    found = [one for one in piece.givens if one.name in wanted]
    return [one for one in found if not (one.default or one.optional)] or found
