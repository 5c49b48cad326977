"""What is typed into any field of any sum: read as meant, held to its limit, and never the end of the program."""

import json
from fractions import Fraction

import pytest
from answering import SUMS, answered, every_given, every_sum
from hypothesis import given, settings
from hypothesis import strategies as st
from measured import MEASURED
from measured import plain as spelled_out
from spellings import decimal
from strategies import ends, junk, typed

from calc import discover
from calc.bench import Bench
from calc.door import handle
from calc.errors import Refusal
from calc.given import Given

LIMITED = [
    (one.id, asked.name, end)
    for one in SUMS
    for asked in one.givens
    for end in ("low", "high")
    if getattr(asked.limit, end)
]


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
        return spelled_out(asked.kind, value)
    sign = "−" if value < 0 else ""
    return f"{sign}{decimal(abs(value))}{' mm' if asked.kind == 'length' else ''}"


@every_given
@settings(max_examples=settings.default.max_examples * 3 // 5)
@given(text=junk)
def test_nothing_typed_breaks_it(name: str, field: str, text: str) -> None:
    """Whatever stands in one field of the example, there is an answer or a sentence at the page's door."""
    texts = {**discover.find(name).example.givens, field: text}
    reply = json.loads(handle(json.dumps({"id": 1, "op": "answer", "sum": name, "givens": texts})))
    assert "fault" not in reply, reply
    assert reply["ok"] or all(refusal["say"] and refusal["instead"] for refusal in reply["refusals"]), reply


@every_sum
@given(data=st.data())
def test_no_value_inside_the_limits_breaks_it(name: str, data: st.DataObject) -> None:
    """Any field may take any value its limit allows, its ends too, beside the example's others."""
    one = discover.find(name)
    asked = data.draw(st.sampled_from(one.givens))
    ends = [end for end in (asked.limit.low, asked.limit.high) if end]
    texts = typed(asked).map(lambda pair: pair[0])
    answered(one, {**one.example.givens, asked.name: data.draw(texts | st.sampled_from(ends) if ends else texts)})
