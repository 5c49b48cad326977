"""The browser's Python and this one answer alike, to the last character.

Outside source: CPython on this machine, whose arithmetic and C library are not those of the browser's Python.
"""

import json
from collections.abc import Callable

import pytest
from forms import forms
from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import benches, junk

from calc import discover
from calc.bench import Bench
from calc.door import handle

Ask = Callable[[str], str]
SUMS = discover.everything()
every_sum = pytest.mark.parametrize("name", [one.id for one in SUMS])


def asked(name: str, texts: dict[str, str], bench: Bench | None = None) -> str:
    """A request as the page sends it."""
    return json.dumps({"id": 1, "op": "answer", "sum": name, "givens": texts, "bench": vars(bench or Bench())})


@every_sum
def test_the_example_is_answered_alike(name: str, in_the_browser: Ask) -> None:
    """Each sum's own example, the figure and the working included."""
    request = asked(name, dict(discover.find(name).example.givens))
    reply = in_the_browser(request)
    assert json.loads(reply)["ok"], reply
    assert reply == handle(request)


@every_sum
@settings(max_examples=30)
@given(data=st.data())
def test_what_may_be_typed_is_answered_alike(name: str, in_the_browser: Ask, data: st.DataObject) -> None:
    """Whole forms made from the declaration, on any bench: answered or refused in the same words."""
    request = asked(name, data.draw(forms(discover.find(name))), data.draw(benches))
    assert in_the_browser(request) == handle(request)


@settings(max_examples=100)
@given(name=st.sampled_from([one.id for one in SUMS]), text=junk, which=st.integers(0, 20))
def test_what_nobody_meant_to_type_is_refused_alike(name: str, text: str, which: int, in_the_browser: Ask) -> None:
    """The example with one field spoilt: the same refusal, in the same words."""
    one = discover.find(name)
    field = one.givens[which % len(one.givens)].name
    request = asked(name, dict(one.example.givens) | {field: text})
    assert in_the_browser(request) == handle(request)


def test_a_broken_request_is_answered_alike(in_the_browser: Ask) -> None:
    """What is no request at all comes back as a fault, and the next question is answered."""
    for request in ('{"id": 7, "op": "dance"}', '{"id": 8}', "[]", '{"id": 9, "op": "hello"}'):
        assert in_the_browser(request) == handle(request)
