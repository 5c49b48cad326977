"""Backwards: which size of one given makes an answer what it should be; and when none does, how near it can come.

Exact where the relation is straight, else closed in on (`calc.roots`). What is found is written as it would be typed,
read back and answered again: what is said of it is what the reader and the sum make of that text.
"""

from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Any

from calc import show
from calc.answer_kinds import as_answer
from calc.building.moves import HAIR, room
from calc.building.trials import Reached, still
from calc.cells import entry, printed
from calc.declare import Answer
from calc.errors import Refusal
from calc.given import Given
from calc.probing.probe import Input, Probe
from calc.probing.wanted import read_wanted
from calc.roots import reach
from calc.show import NOISE
from calc.trig import is_exact
from calc.typed.as_typed import as_typed
from calc.units import MM_PER_INCH

FIXED = ("choice", "rows", "reckoning", "text")
MOST_COUNTED = 2000


@dataclass(frozen=True)
class Trial:
    """A given as it would be typed (≈ in front of a rounded one), its number, and the answer it makes."""

    text: str
    value: Any
    answer: Any


@dataclass(frozen=True)
class Backwards:
    """What makes an answer `wanted`. `reached`: it does; else it comes as near as any within the limit.

    exact: the answer is `wanted` to the last Fraction. on_rule: the nearest mark and what it makes, for a length.
    """

    given: Given
    answer: Answer
    wanted: Any
    found: Trial
    reached: bool
    exact: bool
    on_rule: Trial | None
    say: str


def backwards(probe: Probe, wanted: str, name: str) -> Backwards:
    """Make the answer `wanted`, as typed, by changing the given `name`. Raises Refusal where that cannot be asked."""
    moved, goal = _moved(probe, name), read_wanted(probe.answer, wanted, probe.bench)
    found = _search(probe, moved, goal)
    trial = _tried(probe, moved, found) if found else None
    if found is None or trial is None:
        raise Refusal("no answer can be made by changing this", "change another", name, moved.given.label)
    missed = trial.answer - goal
    if moved.value is None and abs(float(probe.value - goal)) <= abs(float(missed)):
        raise Refusal("nothing typed here brings it nearer", "leave it empty", name, moved.given.label)
    reached = found.there or abs(float(missed)) <= NOISE
    say = _said(probe, moved, trial, goal, reached)
    exact = is_exact(missed) and missed == 0
    return Backwards(moved.given, probe.answer, goal, trial, reached, exact, _on_rule(probe, moved, trial), say)


def _moved(probe: Probe, name: str) -> Input:
    moved = probe.inputs.get(name)
    if moved is None:
        raise Refusal("this is not given, it follows from the others", "choose another to change", name)
    if moved.given.kind in FIXED or isinstance(moved.value, str | tuple):
        raise Refusal("this cannot be changed little by little", "choose another to change", name, moved.given.label)
    return moved


def _search(probe: Probe, moved: Input, goal: Any) -> Reached | None:
    """The value of the given that makes the answer `goal`, or comes nearest."""
    name = moved.given.name

    def miss(value: Any) -> Any:
        answer = probe.at(name, value)
        return None if answer is None or isinstance(answer, str) else answer - goal

    low, high = room(moved.given, moved.value or 0)
    now = Fraction((low + high) / 2 if moved.value is None else moved.value)
    if moved.given.kind != "count":
        return reach(miss, now, low, high)
    numbers = range(int(low), min(int(high), int(low) + MOST_COUNTED) + 1)
    made = [(abs(float(left)), abs(number - now), number) for number in numbers if (left := miss(number)) is not None]
    best = min(made, default=None)
    return best and Reached(Fraction(best[2]), best[0])


def _unfelt(probe: Probe, moved: Input) -> bool:
    """Whether the answer is the same whatever this given is, as where a part that it leads to is cut already."""
    low, high = room(moved.given, moved.value or 0)
    now = (low + high) / 2 if moved.value is None else Fraction(moved.value)
    as_given = int if moved.given.kind == "count" else Fraction
    tried = [as_given(one) for one in (low, (low + now) / 2, now - 1, now + 1, (now + high) / 2, high)]
    return all(probe.at(moved.given.name, one) in (None, probe.value) for one in tried if low <= one <= high)


def _tried(probe: Probe, moved: Input, found: Reached) -> Trial | None:
    """The value as typed, read back and answered; a hair nearer to where it was if rounding put it out of reach."""
    hair = HAIR if moved.value is None or moved.value > found.value else -HAIR
    for value in (found, replace(found, value=found.value + hair)):
        text = as_typed(moved.given, value.value, value.exact, moved.bench)
        typed = moved.given.parse(text, moved.bench).value
        answer = None if moved.given.outside(typed) else probe.at(moved.given.name, typed)
        if answer is not None:
            return Trial(text if typed == value.value else f"≈ {text}", typed, answer)
    return None


def _on_rule(probe: Probe, moved: Input, found: Trial) -> Trial | None:
    """The mark of the rule nearest to a length, and the answer it makes; None where the length is on it, or none."""
    step = probe.bench.step * (MM_PER_INCH if probe.bench.system == "in" else 1)
    mark = show.marks(found.value, step) if moved.given.kind == "length" else found.value
    if still(mark - found.value) or moved.given.outside(mark):
        return None
    return Trial(entry("length", mark, probe.bench), mark, probe.at(moved.given.name, mark))


def _said(probe: Probe, moved: Input, found: Trial, goal: Any, reached: bool) -> str:
    answer, label, bench = probe.answer, moved.given.label, probe.bench
    named = answer.label[0].lower() + answer.label[1:]
    at, makes, asked = (
        printed(kind, one, bench).on_rule
        for kind, one in ((as_answer(moved.given, places=6), found.value), (answer, found.answer), (answer, goal))
    )
    if reached:
        return f"{label} {at}: {named} {makes}."
    if _unfelt(probe, moved):
        return f"{label} makes no difference to {named}, which is {makes}; choose another to change."
    if found.answer == probe.value:
        return f"No other {label.lower()} brings {named} nearer to {asked} than {makes}, which it is now."
    limit = f" {moved.given.limit.text()}" if moved.given.limit.text() else ""
    return f"{label}{limit} never makes {named} {asked}; it comes nearest at {at}, with {makes}."
