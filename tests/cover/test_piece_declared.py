"""A piece checks itself when it is declared, orders its sizes, and serves as a sum wherever a sum is wanted."""

import json
import re
from dataclasses import replace
from fractions import Fraction
from graphlib import TopologicalSorter
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from toys import REST, TRAY, filled, length, size

from calc import Bench, Refused, formula
from calc.building.order import ordered
from calc.building.piece import Piece
from calc.building.size import Size, Step, Table, Yield, parameters
from calc.describe import describe
from calc.engine import reckon
from calc.kinds import Limit

PIECES = pytest.mark.parametrize("piece", [TRAY, REST], ids=["tray", "rest"])


def with_sizes(*sizes: Size | Table, **more: Any) -> Piece:
    """The tray with other sizes."""
    return replace(TRAY, answers=sizes, **{"matches": (), "steps": (), **more})


def test_what_a_size_depends_on_is_what_its_function_names() -> None:
    """The parameters are the dependencies; any number of them names none."""
    assert parameters(lambda depth, lip: depth + lip) == ("depth", "lip")
    with pytest.raises(ValueError, match="one parameter each"):
        parameters(lambda *sizes: sum(sizes))


def test_a_circle_is_told_with_its_way_round() -> None:
    """Every link of the circle stands in the sentence, each after the one before it."""
    with pytest.raises(ValueError, match="go round in a circle") as circle:
        ordered({"side": ["lid"], "slope": ["side"], "lid": ["slope", "depth"]}, ["depth"])
    links = re.findall(r"'(\w+)' is worked out from '(\w+)'", str(circle.value))
    assert set(links) == {("side", "lid"), ("lid", "slope"), ("slope", "side")}
    assert all(one[1] == following[0] for one, following in pairwise(links))


def test_a_missing_name_is_told_with_who_wants_it() -> None:
    """And with what it may have been meant to be, and what it was on the way to."""
    with pytest.raises(ValueError, match=r"'lip', on the way to 'lid', needs 'dept', .* did you mean 'depth'"):
        ordered({"lip": ["dept"], "lid": ["lip"]}, ["depth"])


@given(st.data())
def test_the_order_puts_each_size_after_what_it_needs(data: st.DataObject) -> None:
    """Any graph without circles, in rounds; within a round as declared."""
    names = [f"size_{number}" for number in range(8)]
    needs = {name: data.draw(st.sets(st.sampled_from([*names[:at], "given"]))) for at, name in enumerate(names)}
    shuffled = {name: needs[name] for name in data.draw(st.permutations(names))}
    order = ordered(shuffled, ["given"])
    assert sorted(order) == sorted(names)
    for at, name in enumerate(order):
        assert needs[name] - {"given"} <= set(order[:at])
    first = TopologicalSorter({name: wanted - {"given"} for name, wanted in shuffled.items()})
    first.prepare()
    ready = set(first.get_ready())
    assert list(order[: len(ready)]) == [name for name in shuffled if name in ready]


@pytest.mark.parametrize(
    ("made", "told"),
    [
        (lambda: with_sizes(size("a", lambda b: b, "b"), size("b", lambda a: a, "a")), "circle"),
        (lambda: with_sizes(size("a", lambda widht: widht, "width")), "'widht'"),
        (lambda: with_sizes(size("a", lambda width: width, "widht")), "speaks of 'widht'"),
        (lambda: with_sizes(size("a", lambda width: width, "width", "side", ("a",))), "yields by 'a'"),
        (lambda: with_sizes(size("a", lambda width: width, "width", "side", trims=("b",))), "trims 'b'"),
        (lambda: with_sizes(size("a", lambda width: width, "width"), size("a", lambda depth: depth)), "stands twice"),
        (lambda: with_sizes(size("width", lambda depth: depth, "depth")), "always given"),
        (lambda: with_sizes(size("a", lambda width: width, "width"), matches=TRAY.matches), "matches"),
        (lambda: with_sizes(size("a", lambda step: step, "step"), steps=(Step(name="step", work=lambda width: width),)),
         "speaks of 'step'"),
        (lambda: size("a", lambda width: width, kind="rows"), "kind"),
        (lambda: size("a", lambda width: width, kind="number", limit=Limit("1", "2")), "cannot be held to"),
        (lambda: Yield(over="stands proud"), "one {} each"),
        (lambda: with_sizes(replace(size("a", lambda width: width, "width"), yields=Yield(play="b"))), "play of 'b'"),
    ],
)  # fmt: skip
def test_what_is_not_whole_is_refused_when_declared(made: Any, told: str) -> None:
    """Before anyone can ask it anything, and saying which name."""
    with pytest.raises(ValueError, match=told):
        made()


def test_a_size_may_stand_for_a_given_that_was_left_out() -> None:
    """Given, it is what was given; left out, it is worked out; either way others see it under the one name."""
    texts = {"depth": "200 mm", "back_height": "200 mm", "front_height": "140 mm"}
    left_out, given_it = reckon(REST, texts, Bench()), reckon(REST, texts | {"board_thickness": "20 mm"}, Bench())
    assert (left_out["board_thickness"], given_it["board_thickness"]) == (16, 20)
    assert given_it["bevel"] == Fraction(20 * 3, 10)


@pytest.mark.parametrize("missing", ["back_height", "front_height", "angle"])
def test_any_two_of_three_give_the_third(missing: str) -> None:
    """A 3-4-5 slope in every way of giving it: rise 150 on run 200 is exact from the heights."""
    whole = {"back_height": "250 mm", "front_height": "100 mm", "angle": "36.869897645844021°"}
    texts = {"depth": "200 mm", **{name: text for name, text in whole.items() if name != missing}}
    found = reckon(REST, texts, Bench())
    assert float(found["board_long"]) == pytest.approx(212 * 1.25, abs=1e-9)
    assert float(found[missing]) == pytest.approx(float(whole[missing].split(" ")[0].rstrip("°")), abs=1e-9)


@PIECES
@given(data=st.data())
def test_a_piece_answers_as_a_sum(piece: Piece, data: st.DataObject) -> None:
    """Every size and table answered or refused in words; its formulas worked out as shown give its sizes."""
    try:
        result = reckon(piece, data.draw(filled(piece)), Bench())
    except Refused as refused:
        said = [one for one in refused.refusals if not (one.say and one.instead)]
        assert not said
        return
    assert set(result.values) == {one.name for one in piece.named}
    for one in (one for one in piece.sizes.values() if one.line and one.name not in result.readings):
        shown = formula.work(one.formula, result.values)
        assert float(shown) == pytest.approx(float(result[one.name]), rel=1e-9, abs=one.within)
    assert all(abs(miss) < 1e-6 for miss in piece.proof(result.values).values())
    assert json.dumps(result.to_dict(), allow_nan=False)


def test_a_size_outside_its_limit_is_refused_with_what_to_change() -> None:
    """With nothing cut, the sum says which size comes out wrong and which givens make it."""
    with pytest.raises(Refused) as refused:
        reckon(TRAY, {"width": "1.6 m", "depth": "200 mm"}, Bench(mark="mm"))
    assert str(refused.value.refusals[0]) == (
        "Width: the back long comes out at 63 3/4 in, strong by 0.75 mm (1620 mm), which is too large; "
        "it must be from 20 mm to 1.5 m; change the width."
    )


def test_the_description_says_what_can_be_cut() -> None:
    """On which part, within what; nothing of a size that is of no part."""
    told = {one["name"]: one for one in describe(TRAY)["answers"]}
    assert told["back_long"]["limit"] == "from 20 mm to 1.5 m"
    assert (told["back_long"]["part"], told["back_long"]["can_be_cut"]) == ("back", True)
    assert not told["diagonal"]["can_be_cut"]
    assert "can_be_cut" not in told["parts"]


def test_a_size_that_says_another_again_is_worked_out_and_not_printed() -> None:
    """Neither among the answers nor in the working, but there to be cut."""
    second = size("second_long", lambda front_long: front_long, "front_long", "second front", shown=False)
    one = replace(TRAY, answers=(*TRAY.answers, second))
    result = reckon(one, TRAY.example.givens, Bench())
    assert result["second_long"] == result["front_long"]
    assert result.text == reckon(TRAY, TRAY.example.givens, Bench()).text
    assert [line.name for line in one.formulas] == [line.name for line in TRAY.formulas]


def test_the_working_leads_up_to_each_size() -> None:
    """What a size is made from stands before it, and a size that is wanted first comes first."""
    names = [line.name for line in TRAY.formulas]
    assert names[:3] == ["inside", "bottom_wide", "left_deep"]
    assert sorted(names) == sorted(one.name for one in TRAY.sizes.values() if one.formula)


def test_what_a_piece_asks_for_may_bear_any_kind() -> None:
    """A given that no size asks for is no fault: a table may want it."""
    assert replace(TRAY, givens=(*TRAY.givens, length("spare", "1 mm"))).of(width=300, depth=200)["front_long"] == 320
