"""Where it counts which of several cuts came first: only beside one that would change what gives way."""

import json
from typing import Any

from building import built, done, numbers
from toys import TRAY

from calc import door
from calc.building.contest import contested
from calc.building.settle import Settled, settle
from calc.discover import find

BOX = find("sloping-lid-box")


def first(settled: Settled, name: str) -> Settled:
    """The same with one said to have come first."""
    return settle(settled.piece, done(settled.piece, settled.record, [("first", name)]))


def test_cuts_that_fit_are_not_asked_after() -> None:
    """One alone, two that agree, and two that call on different givens."""
    for cuts in (
        {"front_long": "322"},
        {"front_long": "322", "back_long": "322"},
        {"left_deep": "198", "front_long": "322"},
    ):
        assert contested(built(TRAY, cuts)) == [], cuts


def test_of_two_that_disagree_the_one_that_gave_way_is_asked_after() -> None:
    """The front has moved the width; had the back come first, it would have."""
    before = built(TRAY, {"front_long": "322", "back_long": "320"})
    assert contested(before) == ["back_long"]
    after = first(before, "back_long")
    assert (numbers(before)["width"], numbers(after)["width"]) == (302, 300)
    assert contested(after) == ["front_long"]


def test_a_cut_that_would_change_nothing_is_not_asked_after() -> None:
    """A cover has its own lip to move first, whichever of front and back came first; and so with the lid of a box."""
    assert contested(built(TRAY, {"front_long": "322", "back_long": "320", "cover_wide": "340"})) == ["back_long"]


def test_the_door_tells_what_is_asked_after_and_what_was_said() -> None:
    """As the page takes it."""
    do = [{"act": "give", "name": name, "text": text} for name, text in BOX.example.givens.items()]
    do += [
        {"act": "cut", "name": "front_long", "text": "7 in"},
        {"act": "cut", "name": "back_wide", "text": "7 1/8 in"},
    ]
    before = asked(do)
    assert (before["first"], before["contested"]) == ([], ["back_wide"])
    after = asked([*do, {"act": "first", "name": "back_wide", "text": ""}])
    assert (after["first"], after["contested"]) == (["back_wide"], ["front_long"])


def asked(do: list[dict[str, str]]) -> dict[str, Any]:
    """What stands after these acts on a new box."""
    found: dict[str, Any] = json.loads(door.handle(json.dumps({"id": 1, "op": "piece", "sum": BOX.id, "do": do})))
    return found["settled"]  # type: ignore[no-any-return]
