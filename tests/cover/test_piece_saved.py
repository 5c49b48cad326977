"""A piece as a file: one form for one record, described by the published schema, and nothing else gets in."""

import json
from pathlib import Path
from typing import Any

import pytest
from building import begun, done
from hypothesis import given
from hypothesis import strategies as st
from jsonschema import Draft202012Validator
from toys import TRAY

from calc import Refusal
from calc.bench import Bench
from calc.building import acts
from calc.building.record import MOST_ENTRIES, Record, undo
from calc.building.saved import LONGEST_FILE, from_json, to_json
from calc.building.settle import settle

SCHEMA = Draft202012Validator(json.loads(Path("shared/piece.schema.json").read_text("utf-8")))
RECORD = done(TRAY, begun(TRAY), [("cut", "left_deep", "198"), ("first", "left_deep"), ("uncut", "left_deep")])
ANYTHING = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=8),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=8), inner, max_size=3),
    max_leaves=8,
)


def plain(**more: Any) -> dict[str, Any]:
    """A file's contents, some of it put otherwise."""
    return {**json.loads(to_json(RECORD)), **more}


def test_a_file_is_what_the_schema_says() -> None:
    """Every kind of entry in it."""
    SCHEMA.check_schema(SCHEMA.schema)
    assert {entry["act"] for entry in plain()["entries"]} == set(acts_known())
    SCHEMA.validate(plain())


def acts_known() -> list[str]:
    """The acts that the schema knows."""
    known: list[str] = SCHEMA.schema["$defs"]["entry"]["properties"]["act"]["enum"]
    return known


def test_a_file_can_be_read_by_people() -> None:
    """A line to each entry."""
    assert to_json(RECORD).splitlines()[6:8] == [
        '  "entries": [',
        '    {"act": "give", "name": "width", "text": "300", "unit": "mm", "mark": "mm"},',
    ]
    assert to_json(Record("tray")).splitlines()[-2] == '  "entries": []'


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("", "damaged, or no piece"),
        (to_json(RECORD)[:-9], "damaged, or no piece"),
        ("[" * 100_000, "damaged, or no piece"),
        (" " * (LONGEST_FILE + 1), "too large"),
        ("[]", "no saved piece"),
        ("{}", "no saved piece"),
        (json.dumps(plain(format="something else")), "no saved piece"),
        (json.dumps(plain(version="1")), "no saved piece"),
        (json.dumps(plain(version=0)), "no saved piece"),
        (json.dumps(plain(version=2)), "newer Tenpenny"),
        (json.dumps(plain(entries={})), "its entries"),
        (json.dumps(plain(entries=[1])), "one of its entries"),
        (json.dumps(plain(entries=[{**plain()["entries"][0], "act": "burn"}])), "one of its entries"),
        (json.dumps(plain(entries=[{**plain()["entries"][0], "text": "\ud800"}])), "its text"),
        (json.dumps(plain(entries=[{**plain()["entries"][0], "text": "9" * 6001}])), "its text"),
        (json.dumps(plain(entries=[{**plain()["entries"][0], "unit": "ell"}])), "is not one of them"),
        (json.dumps(plain(entries=plain()["entries"] * 500)), "its entries"),
        (json.dumps(plain(bench={"unit": "mm"})), "its bench"),
        (json.dumps(plain(title=7)), "its title"),
        (json.dumps(plain(title="a\u0007b")), "no name for a piece"),
    ],
)
def test_a_file_that_is_no_good_is_refused_in_words(text: str, told: str) -> None:
    """Damaged, newer, foreign or hostile."""
    with pytest.raises(Refusal, match=told):
        from_json(text)


@given(st.dictionaries(st.sampled_from([*plain()]), ANYTHING), st.sampled_from([*plain()["entries"][0]]), ANYTHING)
def test_whatever_stands_in_a_file_it_is_opened_or_refused(parts: dict[str, Any], name: str, inside: Any) -> None:
    """And what is opened is what the schema allows, and can be settled."""
    entries = [{**plain()["entries"][0], name: inside}]
    for told in (plain(**parts), plain(entries=entries)):
        try:
            record = from_json(json.dumps(told))
        except Refusal:
            continue
        SCHEMA.validate(json.loads(to_json(record)))
        settle(TRAY, record)


def test_names_of_another_time_are_kept_and_not_used() -> None:
    """A piece whose sizes were renamed since: its file opens, says which entries mean nothing now, and keeps them."""
    old = plain(entries=[{**entry, "name": entry["name"].replace("width", "breadth")} for entry in plain()["entries"]])
    record = from_json(json.dumps(old))
    settled = settle(TRAY, record)
    assert [refusal.field for refusal in settled.refusals] == ["breadth"]
    assert json.loads(to_json(record)) == old


def test_what_is_wrong_in_a_file_is_said_and_the_rest_settled() -> None:
    """A width that cannot be read, a lip beyond its limit, a cut that is no length."""
    first = plain()["entries"][0]
    wrong = [{**first, "text": "wide"}, {**first, "name": "lip", "text": "1 m"}, {**first, "act": "cut", "text": "?"}]
    settled = settle(TRAY, from_json(json.dumps(plain(entries=[*wrong, plain()["entries"][1]]))))
    assert [refusal.field for refusal in settled.refusals] == ["width", "lip", "width"]
    assert settled.values["left_deep"] == 200


def test_a_bare_number_keeps_the_unit_it_was_typed_with() -> None:
    """The bench is changed to inches, and 300 is still millimetres."""
    record = RECORD.at(Bench())
    assert settle(TRAY, record).values["width"] == 300
    assert (
        settle(TRAY, acts.give(TRAY, record, "width", "12")).values["width"]
        == 12 * settle(TRAY, acts.give(TRAY, record, "width", "1 in")).values["width"]
    )


def test_there_is_an_end_to_it() -> None:
    """After so many entries no more are taken, and the record stays."""
    record = RECORD
    while len(record.entries) < MOST_ENTRIES:
        record = record.then("give", "width", "300")
    with pytest.raises(Refusal, match="entries are in this piece"):
        acts.give(TRAY, record, "width", "301")
    assert len(undo(record).entries) == MOST_ENTRIES - 1


def test_begun_again_it_has_the_same_givens_and_nothing_cut() -> None:
    """For the second of a pair, or when there is no more room for entries."""
    again = acts.cut(TRAY, RECORD, "front_long", "321").again("The second")
    assert (again.title, [*again.givens], again.cuts) == ("The second", ["width", "depth"], {})
    assert settle(TRAY, again).values["front_long"] == 320


@pytest.mark.parametrize(
    ("act", "name", "text", "told"),
    [
        ("give", "breadth", "3", "no “breadth” to give"),
        ("give", "lip", "1 m", "too large"),
        ("give", "lip", "a few", "Lip"),
        ("cut", "diagonal", "300", "nothing that is cut"),
        ("cut", "front_long", "0", "not what a part can come out at"),
        ("cut", "front_long", "101 m", "not what a part can come out at"),
        ("cut", "front_long", "", "nothing is typed"),
        ("uncut", "front_long", None, "not recorded as cut"),
        ("first", "front_long", None, "not recorded as cut"),
    ],
)
def test_what_cannot_be_entered_is_refused_in_words(act: str, name: str, text: str | None, told: str) -> None:
    """With the field it concerns."""
    with pytest.raises(Refusal, match=f"(?i){told}") as refused:
        getattr(acts, act)(TRAY, RECORD, name, *([] if text is None else [text]))
    assert refused.value.field == name
    assert refused.value.instead
