"""Why a number, what an entry changed, and all of it through the page's door."""

import json
from typing import Any

import pytest
from building import begun, built, done
from toys import REST, TRAY

from calc import door, door_pieces
from calc.building.changes import Changes, changes
from calc.building.settle import settle
from calc.discover import find
from calc.probing.why import Link, why

METRIC = {"unit": "mm", "mark": "mm"}


def after(piece: Any, first: list[tuple[str, ...]], *then: tuple[str, ...]) -> Changes:
    """What the last entries changed."""
    record = done(piece, begun(piece), first)
    return changes(settle(piece, record), settle(piece, done(piece, record, then)))


def test_only_what_changed_is_said() -> None:
    """A side cut 2 mm short: the depth, the other side and the bottom follow it; nothing else is mentioned."""
    found = after(TRAY, [], ("cut", "left_deep", "198"))
    assert {
        one.name: (one.before, one.after, one.by) for one in found.sizes if one.name not in ("diagonal", "area")
    } == {
        "depth": (200, 198, -2),
        "bottom_deep": (199, 197, -2),
        "right_deep": (200, 198, -2),
    }
    assert not found.gaps + found.unlike


def test_what_was_just_given_is_not_told_back() -> None:
    """The lip is what was typed; the cover is what changed."""
    assert [one.name for one in after(TRAY, [], ("give", "lip", "7")).sizes] == ["cover_wide"]


def test_a_gap_is_told_once_and_again_when_it_is_another() -> None:
    """Front and back disagree; an entry that has nothing to do with them does not say it again."""
    wrong = [("cut", "front_long", "322"), ("cut", "back_long", "320")]
    assert [one.name for one in after(TRAY, wrong[:1], *wrong[1:]).gaps] == ["back_long"]
    assert [one.names for one in after(TRAY, wrong[:1], *wrong[1:]).unlike] == [("front_long", "back_long")]
    assert not after(TRAY, wrong, ("give", "lip", "7")).gaps
    assert [one.amount for one in after(TRAY, wrong, ("cut", "back_long", "321")).gaps] == [-1]


def test_what_breaks_or_becomes_impossible_is_told() -> None:
    """A front at 1.6 m takes the back past its limit."""
    assert after(TRAY, [], ("cut", "front_long", "1.6 m")).broken == ("back_long",)


def test_a_size_that_becomes_known_has_nothing_before() -> None:
    """Deciding is a change too, without a difference."""
    found = after(REST, [("give", "thickness", "?")], ("give", "thickness", "16"))
    assert {one.name: (one.before, one.after, one.by) for one in found.sizes}["board_thickness"] == (None, 16, None)


def test_the_chain_leads_from_what_was_given_to_the_size() -> None:
    """Each link after all that it is made from, with the numbers put in, as the working of a sum has them."""
    found = why(built(REST, {}), "bevel")
    assert [link.name for link in found.chain] == [
        "depth", "back_height", "front_height", "thickness", "angle", "board_thickness", "bevel",
    ]  # fmt: skip
    assert found.chain[-1] == Link(
        name="bevel",
        label="bevel",
        state="open",
        letters="board thickness × tan(angle)",
        numbers="16 mm × tan(16.7°)",
        result="5 mm, scant by 0.20 mm",
        because="A size.",
    )
    assert {link.name: link.because for link in found.chain}["depth"] == "given as 200 mm"
    assert {link.name: link.because for link in found.chain}["thickness"] == "as good as any"


def test_a_cut_is_where_the_chain_begins() -> None:
    """The bottom comes from the side as cut, and the depth has no part in it any more."""
    found = why(built(TRAY, {"left_deep": "198"}), "bottom_deep")
    assert [(link.name, link.state) for link in found.chain] == [
        ("slack", "default"), ("left_deep", "cut"), ("bottom_deep", "open"),
    ]  # fmt: skip
    assert found.chain[1].because == "what it came out at"


def test_a_given_that_gave_way_says_to_what() -> None:
    """The depth was 200 and made room for the side."""
    (depth, _) = why(built(TRAY, {"left_deep": "198"}), "right_deep").chain
    assert depth.because == "200 mm was given; it gave way to the left side"
    assert depth.result == "198 mm"


def test_what_follows_is_open_and_hangs_on_it() -> None:
    """Cut sizes pass nothing on and are not mentioned."""
    assert why(built(TRAY, {}), "depth").follows == ("left_deep", "right_deep", "diagonal", "area", "bottom_deep")
    assert "bottom_deep" not in why(built(TRAY, {"left_deep": "198"}), "depth").follows


def test_a_size_without_a_formula_says_what_it_is_made_from() -> None:
    """By way of a step that is not shown."""
    link = why(built(REST, {}), "secant").chain[-1]
    assert link.letters == "worked out from back height, front height and depth"


@pytest.fixture
def ask(monkeypatch: pytest.MonkeyPatch) -> Any:
    """The page's door, with the toys behind it."""
    toys = {"tray": TRAY, "rest": REST}
    monkeypatch.setattr(door_pieces, "find", lambda name: toys.get(name) or find(name))

    def asked(**request: Any) -> dict[str, Any]:
        reply: dict[str, Any] = json.loads(door.handle(json.dumps({"id": 7, **request})))
        assert "fault" not in reply, reply
        return reply

    return asked


def test_a_piece_is_built_through_the_door(ask: Any) -> None:
    """A record goes in and comes out one entry longer, with all that stands and what changed."""
    record = None
    for do in (["give", "width", "300"], ["give", "depth", "200"], ["cut", "bottom_deep", "205"]):
        act = dict(zip(("act", "name", "text"), do, strict=True))
        reply = ask(op="piece", sum="tray", record=record, bench=METRIC, do=act)
        record = reply["record"]
    assert [entry["text"] for entry in record["entries"]] == ["300", "200", "205"]
    assert [gap["say"] for gap in reply["changes"]["gaps"]] == ["The bottom stands 5.00 mm proud."]
    assert reply["changes"]["sizes"][0]["name"] == "slack"
    sizes = {one["name"]: one for one in reply["settled"]["sizes"]}
    assert (sizes["bottom_deep"]["state"], sizes["bottom_deep"]["typed"], sizes["left_deep"]["text"]) == (
        "cut", "205", "200 mm",
    )  # fmt: skip
    assert {one["name"]: one["state"] for one in reply["settled"]["givens"]}["slack"] == "yielded"
    assert {one["name"] for one in reply["answer"]["answers"]} == {"parts", *TRAY.sizes}
    back = ask(op="piece", sum="tray", record=record, do={"act": "undo"})
    assert back["record"]["entries"] == record["entries"][:-1]
    assert back["settled"]["gaps"] == []


def test_an_entry_that_is_refused_leaves_the_record(ask: Any) -> None:
    """The reply is a refusal with its field, like any other; the page keeps the record it has."""
    reply = ask(op="piece", sum="tray", record=None, do={"act": "give", "name": "width", "text": "wide"})
    assert (reply["ok"], reply["refusals"][0]["field"]) == (False, "width")
    for request in (
        {"sum": "slope"},
        {"sum": "tray", "do": {"act": "burn"}},
        {"sum": "tray", "record": {"format": "something else"}},
        {"sum": "rest", "record": ask(op="piece", sum="tray")["record"]},
        {"sum": "nothing"},
        {"sum": "tray", "do": {"act": "undo"}},
    ):
        assert ask(op="piece", **request)["refusals"][0]["say"], request


def test_an_unfinished_piece_has_no_answer_yet(ask: Any) -> None:
    """What is known is told; drawing and lists wait."""
    reply = ask(op="piece", sum="rest", record=None)
    assert reply["answer"] is None
    assert not reply["settled"]["whole"]
    assert {one["name"]: one["text"] for one in reply["settled"]["sizes"]}["bevel"] == "not decided yet"
    assert {one["name"]: one["text"] for one in reply["settled"]["sizes"]}["board_thickness"] == "5/8 in"


def test_the_door_tells_why_how_true_and_backwards(ask: Any) -> None:
    """Of a sum from its givens, of a piece from its record."""
    record = ask(op="piece", sum="tray", bench=METRIC, do={"act": "give", "name": "width", "text": "300"})["record"]
    told = ask(op="why", sum="tray", record=record, name="front_long")
    assert [link["name"] for link in told["chain"]] == ["width", "thickness", "inside", "front_long"]
    assert told["follows"] == [{"name": "cover_wide", "label": "cover wide"}]
    true = ask(op="true", sum="tray", record=record, answer="front_long")
    assert (true["slips"][0]["name"], true["slips"][0]["by"]["value"], true["worst"]["value"]) == ("width", 1, 1)
    back = ask(op="backwards", sum="tray", record=record, answer="front_long", wanted="350", given="width")
    assert (back["text"], back["exact"], back["answer"]["text"]) == ("330 mm", True, "350 mm")
    slope = {"sum": "slope", "givens": {"rise": "3 in", "run": "1 ft"}, "answer": "angle"}
    assert ask(op="true", **slope)["say"].startswith("A mark of misreading in each: at worst 0.352°")
    assert ask(op="backwards", **slope, wanted="45", given="run")["text"] == "3 in"
    assert not ask(op="why", sum="tray", record=record, name="nothing")["ok"]
