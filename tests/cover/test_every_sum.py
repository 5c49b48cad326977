"""Every sum, asked with what its own declaration allows: answered or refused in words, proved, as its formulas say."""

import json
import math
from fractions import Fraction
from typing import Any

import measured
import pytest
from forms import forms
from hypothesis import assume, given
from hypothesis import strategies as st
from measured import MEASURED
from strategies import benches, ends, junk, typed

from calc import discover, formula
from calc.answers import Result
from calc.bench import Bench
from calc.declare import Sum
from calc.door import handle
from calc.engine import reckon
from calc.errors import Refusal, Refused
from calc.given import Given

SUMS = discover.everything()
every_sum = pytest.mark.parametrize("name", [one.id for one in SUMS])
every_given = pytest.mark.parametrize(("name", "field"), [(one.id, asked.name) for one in SUMS for asked in one.givens])
LIMITED = [
    (one.id, asked.name, end)
    for one in SUMS
    for asked in one.givens
    for end in ("low", "high")
    if getattr(asked.limit, end)
]


def answered(one: Sum, texts: dict[str, str], bench: Bench | None = None) -> Result | None:
    """The answer, or None where the sum refuses; every refusal is whole."""
    try:
        return reckon(one, texts, bench or Bench())
    except Refused as refused:
        for refusal in refused.refusals:
            assert refusal.say, texts
            assert refusal.instead, str(refusal)
            assert refusal.field in ("", *(asked.name for asked in one.givens)), str(refusal)
        return None


def some_answer(one: Sum, data: st.DataObject, bench: Bench | None = None) -> Result:
    """An answer to some form; forms that are refused are drawn again, and hypothesis fails when nearly all are."""
    result = answered(one, data.draw(forms(one)), bench)
    assume(result)
    assert result
    return result


@every_sum
@given(data=st.data())
def test_it_returns_what_it_declares(name: str, data: st.DataObject) -> None:
    """Every answer declared is returned, and nothing else but the givens; a given goes through unchanged."""
    one = discover.find(name)
    result = some_answer(one, data)
    names = {asked.name for asked in one.givens} | {answer.name for answer in one.answers}
    assert set(result.values) == names
    for name, reading in result.readings.items():
        assert result[name] == reading.value, name


@every_sum
@given(data=st.data())
def test_its_proof_holds(name: str, data: st.DataObject) -> None:
    """The identities that the answers must satisfy are missed by less than a thousand millionth."""
    one = discover.find(name)
    result = some_answer(one, data)
    misses = one.proof(result.values)
    assert misses
    for identity, miss in misses.items():
        assert abs(miss) < 1e-9, identity


@every_sum
@given(data=st.data())
def test_the_formulas_shown_give_its_answers(name: str, data: st.DataObject) -> None:
    """Each formula whose parts are known, worked out as it is printed, gives what `work` gave."""
    one = discover.find(name)
    result = some_answer(one, data)
    for line in one.formulas:
        if all(result.values.get(name) is not None for name in (line.name, *formula.names(line.text))):
            shown, worked = formula.work(line.text, result.values), result[line.name]
            assert math.isclose(shown, worked, rel_tol=1e-9, abs_tol=line.within), line.text


@every_sum
@given(data=st.data())
def test_it_can_be_read_on_any_bench(name: str, data: st.DataObject) -> None:
    """The answer as text, and as JSON without NaN; every number finite; an exact one with its fraction."""
    one = discover.find(name)
    result = some_answer(one, data, data.draw(benches))
    assert result.text
    assert [str(line) for line in result.working] or not one.formulas
    for answer in json.loads(json.dumps(result.to_dict(), allow_nan=False))["answers"]:
        for cell in [each for row in answer.get("rows", []) for each in row] or [answer]:
            whole(cell)


def whole(cell: dict[str, Any]) -> None:
    """A cell says its value exactly when it says that it is exact."""
    if cell.get("exact") and isinstance(cell.get("value"), int | float):
        assert math.isclose(Fraction(cell["fraction"]), cell["value"], rel_tol=1e-12, abs_tol=1e-12), cell


@every_given
@given(data=st.data())
def test_what_is_typed_is_read_as_meant(name: str, field: str, data: st.DataObject) -> None:
    """Every spelling of a value inside the limit is read as exactly that value."""
    asked = discover.find(name).given(field)
    text, value = data.draw(typed(asked))
    found = asked.read(text, Bench()).value
    assert found == value if asked.kind != "rows" else [list(row.values()) for row in found] == value


@pytest.mark.parametrize(("name", "field", "end"), LIMITED)
def test_limits_refuse_just_outside_and_accept_just_inside(name: str, field: str, end: str) -> None:
    """A hair's breadth decides: the end itself is in unless the limit leaves it out."""
    asked = discover.find(name).given(field)
    at, hair = ends(asked)[end == "high"], Fraction(1) if asked.kind == "count" else Fraction(1, 1000)
    outside, inside = (at - hair, at + hair) if end == "low" else (at + hair, at - hair)
    open_end = asked.limit.above if end == "low" else asked.limit.below
    refused, read = ([outside, at], [inside]) if open_end else ([outside], [inside, at])
    for value in read:
        assert asked.read(plain(asked, value), Bench()).value == value
    for value in refused:
        with pytest.raises(Refusal, match="too small" if end == "low" else "too large"):
            asked.read(plain(asked, value), Bench())


def plain(asked: Given, value: Fraction) -> str:
    """A value as a decimal to be typed, with its unit."""
    if asked.kind in MEASURED:
        return measured.plain(asked.kind, value)
    return f"{float(value):.4f}{' mm' if asked.kind == 'length' else ''}" if asked.kind != "count" else str(value)


@every_given
@given(text=junk)
def test_nothing_typed_breaks_it(name: str, field: str, text: str) -> None:
    """Whatever stands in one field of the example, there is an answer or a sentence, here and at the page's door."""
    one, asked = discover.find(name), discover.find(name).given(field)
    texts = {**one.example.givens, asked.name: text}
    answered(one, texts)
    reply = json.loads(handle(json.dumps({"id": 1, "op": "answer", "sum": one.id, "givens": texts})))
    assert "fault" not in reply, reply


@every_sum
@given(data=st.data())
def test_no_value_inside_the_limits_breaks_it(name: str, data: st.DataObject) -> None:
    """Any field may take any value its limit allows, its ends too, beside the example's others."""
    one = discover.find(name)
    asked = data.draw(st.sampled_from(one.givens))
    ends = [end for end in (asked.limit.low, asked.limit.high) if end]
    texts = typed(asked).map(lambda pair: pair[0])
    answered(one, {**one.example.givens, asked.name: data.draw(texts | st.sampled_from(ends) if ends else texts)})
