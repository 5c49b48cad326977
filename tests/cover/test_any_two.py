"""Round trips: where any two (or one, or three) of several things do, every choice of them gives the same answers."""

import math
from collections.abc import Iterator, Sequence
from itertools import combinations
from typing import Any

import pytest
from answering import SUMS
from forms import near
from hypothesis import assume, given
from hypothesis import strategies as st

from calc import discover
from calc.bench import Bench
from calc.declare import Sum, Values
from calc.engine import reckon
from calc.errors import Refusal, Refused
from calc.trig import is_exact

Names = tuple[str, ...]


def choices(one: Sum, values: Values) -> Iterator[Names]:
    """Every choice of as many as are wanted, of those that are known whichever of them was given."""
    assert one.any_of
    told = {answer.name for answer in one.answers}
    known = [name for name in one.any_of.names if name in told and values[name] is not None]
    return combinations(known, one.any_of.count)


def again(one: Sum, values: Values, chosen: Names) -> Values:
    """What the sum answers when only `chosen` of its alternatives are handed to it, all else as it was."""
    assert one.any_of
    asked = {each.name: values[each.name] for each in one.givens}
    left_out = {name: None for name in one.any_of.names if name not in chosen}
    return {**asked, **one.work(**{**asked, **left_out})}


def example(one: Sum) -> Values:
    """The answers of the sum's own example."""
    return reckon(one, one.example.givens, Bench()).values


def answering(one: Sum) -> Iterator[Names]:
    """The choices that the example can be asked by; a choice that says one thing twice is refused."""
    for chosen in choices(one, values := example(one)):
        try:
            again(one, values, chosen)
        except Refusal:
            continue
        yield chosen


ROUND = [(one.id, chosen) for one in SUMS if one.any_of for chosen in answering(one)]


def apart(one: Any, other: Any, exactly: bool) -> bool:
    """True when two answers differ: exact ones at all, others by more than a thousand millionth part."""
    if isinstance(one, Sequence) and not isinstance(one, str):
        return len(one) != len(other) or any(
            apart(row.get(name), each.get(name), exactly)
            for row, each in zip(one, other, strict=True)
            for name in row | each
        )
    if one is None or isinstance(one, str) or other is None or (exactly and is_exact(one)):
        return bool(one != other)
    return not math.isclose(one, other, rel_tol=1e-9, abs_tol=1e-9)


@pytest.mark.parametrize(("name", "chosen"), ROUND, ids=[f"{name} {'+'.join(chosen)}" for name, chosen in ROUND])
@given(data=st.data())
def test_every_choice_of_givens_gives_the_same_answers(name: str, chosen: Names, data: st.DataObject) -> None:
    """Asked by other givens with the values just answered, a sum answers as it did: exact ones to the last bit."""
    one = discover.find(name)
    values = answered(one, data.draw(near(one)))
    found = again(one, values, chosen)
    exactly = all(is_exact(values[each]) for each in chosen)
    differ = [each.name for each in one.named if apart(values[each.name], found[each.name], exactly)]
    assert not differ, {each: (values[each], found[each]) for each in differ}


def answered(one: Sum, texts: dict[str, str]) -> Values:
    """The answers to a form; one that is refused, or that leaves a choice unknown, is drawn again."""
    try:
        return reckon(one, texts, Bench()).values
    except Refused:
        assume(False)
        raise


def test_few_choices_say_one_thing_twice() -> None:
    """The angle and the taper in a foot are one thing; every other choice is answered."""
    refused = [
        (one.id, chosen)
        for one in SUMS
        if one.any_of
        for chosen in choices(one, example(one))
        if (one.id, chosen) not in ROUND
    ]
    assert [name for name, chosen in refused if not {"angle", "per_foot"} <= set(chosen)] == []
    assert len(ROUND) > 30
