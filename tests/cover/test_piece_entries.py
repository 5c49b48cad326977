"""What the page needs to take entries: several as one, each size as it would be typed, how much more it is now."""

import json
from typing import Any

from calc import door
from calc.discover import find

BOX = "sloping-lid-box"
METRIC = {"unit": "mm", "mark": "mm", "angles": "tenths", "currency": ""}


def asked(record: Any, do: Any) -> dict[str, Any]:
    """The door's reply."""
    request = {"id": 1, "op": "piece", "sum": BOX, "record": record, "bench": METRIC, "do": do}
    reply: dict[str, Any] = json.loads(door.handle(json.dumps(request)))
    assert "fault" not in reply, reply
    return reply


def given() -> dict[str, Any]:
    """The example, given in one go."""
    return asked(None, [act("give", name, text) for name, text in find(BOX).example.givens.items()])


def act(what: str, name: str = "", text: str = "") -> dict[str, str]:
    """One thing to do."""
    return {"act": what, "name": name, "text": text}


def test_several_acts_are_one_entry() -> None:
    """What changed is told from before the first to after the last."""
    box = given()
    assert len(box["record"]["entries"]) == len(find(BOX).example.givens)
    assert box["answer"]
    swapped = asked(box["record"], [act("give", "front_height", ""), act("give", "angle", "14")])
    assert "set_rise" in [one["name"] for one in swapped["changes"]["sizes"]]
    back = asked(swapped["record"], [act("undo"), act("undo")])
    assert back["record"] == box["record"]


def test_one_refused_refuses_the_whole_list() -> None:
    """Nothing is half done."""
    reply = asked(given()["record"], [act("cut", "lid_long", "180"), act("cut", "lid_wide", "wide")])
    assert (reply["ok"], reply["refusals"][0]["field"]) == (False, "lid_wide")


def test_a_size_cut_as_it_would_be_typed_changes_nothing_else() -> None:
    """Each size that can be cut, recorded by its own entry: no other moves, and nothing gapes."""
    box = given()
    sizes = [one for one in box["settled"]["sizes"] + box["settled"]["givens"] if one["can_be_cut"] and one["entry"]]
    reply = asked(box["record"], [act("cut", one["name"], one["entry"]) for one in sizes])
    assert len(sizes) > 20
    moved = [one for one in reply["changes"]["sizes"] if one["before"]["text"] != one["after"]["text"]]
    assert (moved, reply["changes"]["gaps"], reply["settled"]["gaps"]) == ([], [], [])


def test_a_given_says_whether_it_can_be_cut() -> None:
    """A length can; a choice or a price cannot."""
    can = {one["name"]: (one["kind"], one["can_be_cut"]) for one in given()["settled"]["givens"]}
    assert (can["depth"], can["note"][1], can["price"]) == (("length", True), False, ("money", False))


def test_how_much_more_or_less_is_said_as_at_the_bench() -> None:
    """A lid 3 mm narrower across: in words for lengths, and nothing for what is counted or paid."""
    reply = asked(given()["record"], act("cut", "second_deep", "147"))
    told = {one["name"]: one["amount"] for one in reply["changes"]["sizes"]}
    assert told["bottom_deep"] == "3.00 mm less"
    assert told["angle"].endswith("° more")
    assert told["cost"] == ""
