"""Anything at all typed into any sum: an answer, a warning or a refusal. DEVELOPERS.md says how to ask at length."""

import json
from functools import cache
from itertools import chain
from typing import Any

from answering import answered, every_sum
from forms import Form, forms
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.strategies import SearchStrategy
from strategies import benches, junk

from calc import discover
from calc.answers import Result
from calc.given import Given

NO_NUMBERS = {"nan", "inf", "-inf", "None", "True", "False"}


@cache
def anything(name: str) -> SearchStrategy[Form]:
    """Two forms of three as its declaration allows; the third with one field spoiled."""
    one = discover.find(name)
    usual = forms(one)
    fields = st.one_of(
        [st.fixed_dictionaries({asked.name: st.sampled_from(edges(asked)) | junk}) for asked in one.givens]
    )
    return st.one_of(usual, usual, st.builds(lambda form, field: form | field, usual, fields))


def edges(asked: Given) -> list[str]:
    """The ends of its range, nothing at all, and nought."""
    return ["", "0", *filter(None, (asked.limit.low, asked.limit.high))]


@every_sum
@given(data=st.data())
def test_whatever_is_typed_there_is_an_answer_or_a_sentence(name: str, data: st.DataObject) -> None:
    """Never the end of the program, never a number that is none, never a blank where an answer should stand."""
    if result := answered(discover.find(name), data.draw(anything(name)), data.draw(benches)):
        whole(result, json.loads(json.dumps(result.to_dict(), allow_nan=False)))


def whole(result: Result, told: dict[str, Any]) -> None:
    """An answer says something in words and finite numbers, with its working, its cautions and its drawing."""
    assert told["answers"]
    assert told["figure"]["nodes"]
    for cell in chain.from_iterable(_cells(answer) for answer in told["answers"]):
        assert cell["value"] is None or cell["text"].strip(), cell
    said = [word for line in told["working"] for word in (line["numbers"], line["result"])]
    assert all(text.strip() for text in said)
    words = {
        word.strip(",.;:()°%") for text in (*said, *result.text.split("\nTake care: ")[:1]) for word in text.split()
    }
    assert not words & NO_NUMBERS, words & NO_NUMBERS


def _cells(answer: dict[str, Any]) -> list[dict[str, Any]]:
    return [cell for row in answer["rows"] for cell in row] if answer["kind"] == "rows" else [answer]
