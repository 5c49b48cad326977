"""The page's one door: JSON in, JSON out, and never an exception."""

import json
from typing import Any

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

import calc
from calc import discover, door
from calc.building.piece import Piece
from calc.declare import Sum

ASK = {"id": 7, "op": "answer", "sum": "slope", "givens": {"rise": "3 in", "run": "1 ft"}, "bench": {"mark": "1/32"}}
PIECES = [one for one in discover.everything() if isinstance(one, Piece)]
plain = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=8),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=8), inner, max_size=3),
)


def ask(**changes: Any) -> dict[str, Any]:
    """The reply to the question above, changed."""
    reply: dict[str, Any] = json.loads(door.handle(json.dumps({**ASK, **changes})))
    return reply


def test_an_answer_comes_back_with_the_number_of_its_question() -> None:
    """The same as from Python, the figure and all."""
    told = calc.answer("slope", calc.Bench(mark="1/32"), rise="3 in", run="1 ft").to_dict()
    assert ask() == {"id": 7, "ok": True, "answer": json.loads(json.dumps(told))}


def test_a_refusal_comes_back_in_words_with_what_could_be_read() -> None:
    """Field, label and sentence for the form; the other entries as understood."""
    reply = ask(givens={"rise": "3 inn", "run": "1 ft"})
    (refused,) = reply["refusals"]
    assert (reply["ok"], refused["field"], refused["label"]) == (False, "rise", "Rise")
    assert refused["text"] == "Rise: “3 inn” has “inn” for a unit; use in, ft, yd, mm, cm or m."
    assert reply["givens"] == {"run": {"typed": "1 ft", "read": "1 ft", "unit": "ft"}}


def test_empty_fields_are_as_good_as_none() -> None:
    """The page sends every field of the form."""
    assert ask(givens={"rise": "3 in", "run": "1 ft", "length": "", "angle": ""}) == ask()


def test_hello_tells_what_there_is() -> None:
    """The ready handshake names every sum and piece."""
    assert ask(op="hello")["sums"] == [one.id for one in discover.everything()]


@pytest.mark.parametrize("changes", [{"sum": "slop"}, {"bench": {"unit": "furlong"}}, {"bench": {"currency": 5}}])
def test_what_the_page_never_sends_is_refused_in_words(changes: dict[str, Any]) -> None:
    """An unknown sum or setting has a sentence too."""
    reply = ask(**changes)
    assert reply["ok"] is False
    assert reply["refusals"][0]["instead"]


@pytest.mark.parametrize("nested", ["[" * 200_000 + "]" * 200_000, '{"a":' * 30 + "1" + "}" * 30])
def test_what_is_nested_too_deep_is_refused_before_it_is_read(nested: str) -> None:
    """A file can hold it, and reading it would end the browser's Python; the reply bears the question's number."""
    told = json.loads(door.handle(f'{{"op": "piece", "sum": "wall-shelf", "record": {nested}, "id": 12}}'))
    assert (told["id"], told["ok"], "fault" in told) == (12, False, False)
    assert told["refusals"][0]["text"].startswith("This is damaged, or no piece; choose a file")
    assert json.loads(door.handle(nested))["refusals"] == told["refusals"]


def test_brackets_in_words_are_no_depth() -> None:
    """A title of brackets is a title, with a quotation mark and a backslash in it too."""
    for title in ("[" * 60, '"' + "{" * 60, "\\" + "[" * 60):
        assert not door.deep(json.dumps({"record": {"title": title}}))


def test_a_piece_of_a_kind_not_known_here_is_refused_in_words() -> None:
    """As a newer Tenpenny may have saved it, or a file that says anything."""
    record = {"format": "tenpenny piece", "version": 1, "piece": "__proto__", "title": "", "entries": []}
    bench = {"unit": "mm", "mark": "mm", "angles": "tenths", "currency": ""}
    reply = ask(op="piece", sum="wall-shelf", record={**record, "bench": bench})
    assert reply["refusals"][0]["text"].startswith("There is no piece called “__proto__” here; ")


@pytest.mark.parametrize("request_", ["", "{", "[]", "7", "null", '{"id": 3}', '{"id": 3, "op": "launch"}', "[" * 20])
def test_a_broken_request_is_a_fault_said_in_the_reply(request_: str) -> None:
    """No exception leaves the door, so that the page goes on."""
    reply = json.loads(door.handle(request_))
    assert reply["ok"] is False
    assert reply["fault"]


@given(st.text(max_size=40) | plain.map(json.dumps))
def test_any_text_has_a_reply(request_: str) -> None:
    """Whatever is said at the door, JSON comes back."""
    assert json.loads(door.handle(request_))["ok"] is False


@example("id", float("nan"))
@example("givens", {"rise": "\ud800"})
@given(st.sampled_from(["sum", "givens", "bench", "id", "op"]), plain)
def test_a_wrong_value_anywhere_has_a_reply(name: str, value: Any) -> None:
    """One part of a good request replaced by anything at all."""
    reply = json.loads(door.handle(json.dumps({**ASK, name: value})))
    assert isinstance(reply["ok"], bool)


def in_parts(request: str) -> tuple[list[dict[str, Any]], dict[str, Any]]:
    """What is told sooner, and the last part."""
    parts, sooner = door.replies(request), []
    while True:
        try:
            sooner.append(json.loads(next(parts)))
        except StopIteration as end:
            return sooner, json.loads(end.value)


@pytest.mark.parametrize("one", discover.everything(), ids=lambda one: one.id)
def test_the_answers_come_first_and_the_parts_make_the_whole(one: Sum) -> None:
    """The first part has every answer and no drawing; nothing is in both."""
    request = json.dumps({**ASK, "sum": one.id, "givens": dict(one.example.givens)})
    (first,), last = in_parts(request)
    assert (first["more"], last.get("more")) == (True, None)
    assert {"answers", "cautions", "givens"} < first["answer"].keys()
    assert {"carry_on", "figure"} < last["answer"].keys()
    assert not first["answer"].keys() & last["answer"].keys()
    assert {**last, "answer": {**first["answer"], **last["answer"]}} == json.loads(door.handle(request))


@pytest.mark.parametrize("one", PIECES, ids=lambda one: one.id)
def test_a_piece_stands_before_it_is_drawn(one: Piece) -> None:
    """The first part has the record, every size and what changed; the second what is drawn; the whole has both."""
    do = [{"act": "give", "name": name, "text": text} for name, text in one.example.givens.items()]
    request = json.dumps({"id": 7, "op": "piece", "sum": one.id, "record": None, "bench": {}, "do": do})
    (first,), last = in_parts(request)
    assert first.pop("more")
    assert "more" not in last
    assert first["settled"]["whole"]
    assert first["record"]["entries"]
    assert first["changes"]["sizes"]
    assert {"carry_on", "figure", "exploded", "working"} == last["answer"].keys()
    assert {**first, "answer": {**first["answer"], **last["answer"]}} == json.loads(door.handle(request))


def test_what_is_refused_or_not_decided_yet_comes_in_one_part() -> None:
    """There is nothing to tell sooner."""
    for changes in ({"givens": {"rise": "3 inn"}}, {"op": "piece", "sum": "wall-shelf"}, {"op": "hello"}):
        request = json.dumps({**ASK, **changes})
        assert in_parts(request) == ([], json.loads(door.handle(request)))


def test_a_drawing_that_fails_is_a_fault_of_the_whole(monkeypatch: pytest.MonkeyPatch) -> None:
    """The answers have been told; the last part says what is wrong."""
    monkeypatch.setattr("calc.answers.drawings", lambda one, values: 1 / 0)
    sooner, last = in_parts(json.dumps(ASK))
    assert [part["ok"] for part in sooner] == [True]
    assert last["fault"].startswith("ZeroDivisionError")
    assert ask() == last


def test_a_number_that_is_none_is_a_fault(monkeypatch: pytest.MonkeyPatch) -> None:
    """JSON has no word for it."""
    monkeypatch.setattr("calc.answers.Result.to_read", lambda self: {"answers": float("nan")})
    assert ask()["fault"].startswith("ValueError")
