"""Sizes worked out in their order: what is not decided is left out, what cannot be is refused, nothing else stops."""

import math
from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Any

from calc.building.size import Size, Step
from calc.declare import AnyOf, Values
from calc.errors import Refusal
from calc.remembered import Kept

CANNOT = Refusal("it cannot be worked out from these sizes", "change one of the sizes it comes from")
Worked = Size | Step


class Unknown(Exception):
    """A size wants what is not decided yet."""


class Known(dict[str, Any]):
    """Sizes by name, which says `Unknown` of one that is not there."""

    def __missing__(self, name: str) -> Any:
        raise Unknown(name)


@dataclass(frozen=True, eq=False)
class Plan:
    """The steps of a piece in their order, and which of its givens are asked for as "any two of"."""

    steps: tuple[Worked, ...]
    any_of: AnyOf | None = None

    @cached_property
    def _felt(self) -> Kept[tuple[str, ...]]:
        """What `touched` has found: the steps never change, and the same is asked over and over."""
        return Kept(1024)

    @cached_property
    def _led(self) -> Kept[tuple[Worked, ...]]:
        """What `leading` has found."""
        return Kept(1024)

    @cached_property
    def _fed(self) -> Kept[tuple[str, ...]]:
        """What `feeding` has found."""
        return Kept(1024)

    def work_out(self, givens: Values, cuts: Values) -> tuple[dict[str, Any], dict[str, Refusal]]:
        """Every given, cut and size that is known, by name; and why a size could not be worked out.

        givens: what was given, None for what may be left out, no name for what is not decided yet.
        cuts: what came out of the saw; a cut stands whatever its function would say.
        """
        values = self.known(givens, cuts)
        refused: dict[str, Refusal] = {}
        self.redo(self.steps, values, self.typed(givens, cuts), refused)
        return values, refused

    def known(self, givens: Values, cuts: Values) -> dict[str, Any]:
        """What is known before anything is worked out; None stands for what is left out and not worked out either."""
        return {name: one for name, one in givens.items() if one is not None or name not in self.by_name} | dict(cuts)

    def redo(self, steps: Sequence[Worked], values: dict[str, Any], typed: Values, refused: dict[str, Refusal]) -> None:
        """Work out those of `steps` that `values` does not hold yet, into it."""
        for step in steps:
            if step.name not in values:
                try:
                    values[step.name] = self.one(step, values, typed)
                except Unknown:
                    continue
                except Refusal as refusal:
                    refused[step.name] = refusal

    def one(self, step: Worked, values: Values, typed: Values) -> Any:
        """One size by its function, whatever it was cut to; raises Unknown or Refusal."""
        some = self.any_of
        group = some.names if some and step.name in some.names else ()
        if some and group and len(typed) < some.count:
            raise Unknown(step.name)
        try:
            needed = {name: typed.get(name) if name in group else values[name] for name in step.needs}
        except KeyError:
            raise Unknown(step.name) from None
        try:
            return _sound(step.work(**needed))
        except (ArithmeticError, ValueError):
            raise replace(CANNOT) from None

    def touched(self, moved: Collection[str], fixed: Collection[str]) -> tuple[str, ...]:
        """The sizes whose function feels it when givens move; a fixed size feels it and passes nothing on."""
        asked = frozenset(moved), frozenset(fixed)
        return self._felt.get(asked, lambda: self._touched(*asked))

    def _touched(self, moved: Collection[str], fixed: Collection[str]) -> tuple[str, ...]:
        reached, found = set(moved), []
        for step in self.steps:
            if step.name not in moved and not reached.isdisjoint(step.needs):
                found.append(step.name)
                if step.name not in fixed:
                    reached.add(step.name)
        return tuple(found)

    def leading(self, rows: Collection[str], fixed: Collection[str]) -> tuple[Worked, ...]:
        """The steps that the functions of these sizes want first, however long the way; fixed ones need no working."""
        asked = frozenset(rows), frozenset(fixed)
        return self._led.get(asked, lambda: self._leading(*asked))

    def _leading(self, rows: Collection[str], fixed: Collection[str]) -> tuple[Worked, ...]:
        wanted: set[str] = set()
        found: list[Worked] = []
        for step in reversed(self.steps):
            if step.name in rows or (step.name in wanted and step.name not in fixed):
                wanted.update(step.needs)
                found += [step] if step.name not in fixed else []
        return tuple(reversed(found))

    def feeding(self, rows: Collection[str], fixed: Collection[str]) -> tuple[str, ...]:
        """These sizes, and all that is not worked out and that their functions come from, however long the way."""
        asked = frozenset(rows), frozenset(fixed)
        return self._fed.get(asked, lambda: self._feeding(*asked))

    def _feeding(self, rows: frozenset[str], fixed: frozenset[str]) -> tuple[str, ...]:
        worked = [*self.leading(rows, fixed), *(self.by_name[row] for row in rows)]
        wanted = {need for step in worked for need in step.needs}
        return tuple(sorted({need for need in wanted if need in fixed or need not in self.by_name} | rows))

    def typed(self, givens: Values, cuts: Values) -> dict[str, Any]:
        """What "any two of" was given, at the size it was cut to; None for the rest of them."""
        some = self.any_of.names if self.any_of else ()
        return {name: cuts.get(name, givens[name]) for name in some if givens.get(name) is not None}

    @cached_property
    def by_name(self) -> dict[str, Worked]:
        """Each step by its name."""
        return {step.name: step for step in self.steps}


def _sound(value: Any) -> Any:
    if isinstance(value, complex) or (isinstance(value, float) and not math.isfinite(value)):
        raise ValueError(value)
    return value
