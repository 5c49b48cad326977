"""The holes to bore, in the order of work: each step with its drill, from the joint or the screw it is bored for."""

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Any

from calc.building.size import Table
from calc.declare import Answer, Values
from calc.pieces._order import Step
from calc.pieces._tables import order_table

HOLE = Answer(name="hole", label="Hole, at most", kind="fine")


def bore(one: Step, hole: Any) -> Step:
    """The step with the hole that is bored in it, in millimetres; None where that is not known."""
    return {**one, "hole": hole}


def nailed(one: Step, m: Values, joint: str) -> Step:
    """The step with the hole for the nails of this joint; blank where it is not decided or no table has it."""
    row = m.get(joint)
    return bore(one, row and row["hole"])


def bored_order(work: Callable[[Values], Sequence[Step]]) -> Table:
    """The order of work, with a column for the holes."""
    one = order_table(work)
    return replace(one, columns=(*one.columns, HOLE))
