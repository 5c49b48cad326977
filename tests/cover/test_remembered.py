"""What is remembered from one question to the next changes no answer."""

import json
from fractions import Fraction
from typing import Any

import pytest
from building import begun, done
from toys import OURS, length, rectangle, size

from calc import discover, door
from calc.bench import Bench
from calc.building.piece import Piece
from calc.building.settle import settle
from calc.cells import cell
from calc.declare import Answer, Example, Sum
from calc.remembered import forget, remembered

BENCHES = [{}, {"unit": "mm", "mark": "half mm", "angles": "minutes", "currency": "kr"}]


def asked(one: Sum, bench: dict[str, Any], **more: Any) -> str:
    """The reply to a sum's example."""
    request = {"id": 1, "op": "answer", "sum": one.id, "givens": dict(one.example.givens), "bench": bench}
    return door.handle(json.dumps({**request, **more}))


@pytest.mark.parametrize("one", discover.everything(), ids=lambda one: one.id)
def test_the_answers_are_the_same_with_and_without(one: Sum) -> None:
    """By one rule, by another and by the first again; then anew."""
    told = [asked(one, bench) for bench in (*BENCHES, *BENCHES)]
    assert told[:2] == told[2:]
    assert told[:2] == [asked(one, bench, anew=True) for bench in BENCHES]


@pytest.mark.parametrize("numbers", [(Fraction(1, 2), 0.5), (0.5, Fraction(1, 2)), (0.0, -0.0), (-0.0, 0.0)])
def test_numbers_that_are_equal_and_yet_not_alike_are_told_apart(numbers: tuple[Any, Any]) -> None:
    """A half is exact and 0.5 is not; nought has no sign, whichever was asked for first."""
    one = Answer(name="a", label="A", kind="number")
    fresh = []
    for number in numbers:
        forget()
        fresh.append(json.dumps(cell(one, number, Bench())))
    forget()
    assert [json.dumps(cell(one, number, Bench())) for number in numbers] == fresh
    assert not any("-0" in told for told in fresh)


def test_what_is_forgotten_is_worked_out_again() -> None:
    """Once, however often it is asked for; then once more."""
    worked = []

    @remembered(4)
    def twice(number: int) -> int:
        worked.append(number)
        return 2 * number

    for _ in range(3):
        assert twice(3) == 6
    assert worked == [3]
    forget()
    assert twice(3) == 6
    assert worked == [3, 3]


def test_what_a_caller_does_to_a_cell_is_not_remembered() -> None:
    """Each gets one of its own."""
    one = Answer(name="a", label="A", kind="number")
    cell(one, 7, Bench())["text"] = "spoilt"
    assert cell(one, 7, Bench())["text"] == "7"


HALVES = Piece(
    id="halves",
    title="Halves",
    question="How long are they?",
    asks=("how long are both halves",),
    purpose="Two halves.",
    givens=(length("a"), length("b"), length("extra", low="1 mm", optional=True)),
    answers=(
        size("one", lambda a, b, extra: a + b + (extra or 0), "", "front", ("b",)),
        size("two", lambda a: a, "a", "back", ("a",)),
    ),
    proof=lambda values: {},
    figure=rectangle,
    sources=OURS,
    example=Example({"a": "100 mm", "b": "50 mm"}, "Two halves."),
    limits_of="Square corners.",
)


@pytest.mark.parametrize("texts", [("?", ""), ("", "?")])
def test_what_is_left_out_is_not_what_is_not_decided(texts: tuple[str, str]) -> None:
    """With the extra left out both halves can be settled, not so before it is decided; whichever came first."""
    took = []
    for text in texts:
        record = begun(HALVES, a="100", b="50", extra=text)
        record = done(HALVES, record, [("cut", "one", "150"), ("cut", "two", "103")])
        took.append(settle(HALVES, record).took)
    assert took[texts.index("?")] == {}
    assert took[texts.index("")] == {"a": "two", "b": "one"}
