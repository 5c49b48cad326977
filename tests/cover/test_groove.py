"""Panels in grooves: never wider than the room there is, never out of it, and by the sums of moisture and movement."""

import re
from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

import calc
from calc import Refused

PANEL: dict[str, Any] = {"species": "white ash", "opening": "10 in", "depth": "3/8 in", "moisture_now": "9"}
FRAMES = st.fixed_dictionaries(
    {
        "species": st.sampled_from(["white ash", "black cherry", "sugar maple", "red oak, northern"]),
        "cut": st.sampled_from(["flat", "quarter"]),
        "opening": st.integers(50, 900).map(lambda mm: f"{mm} mm"),
        "depth": st.integers(5, 25).map(lambda mm: f"{mm} mm"),
        "moisture_now": st.integers(2, 24).map(str),
        "humidity_damp": st.integers(50, 90).map(str),
        "humidity_dry": st.integers(10, 50).map(str),
        "spare": st.integers(0, 4).map(lambda mm: f"{mm / 2} mm"),
    }
)


def fitted(frame: dict[str, str]) -> calc.Result:
    """The panel for a frame; frames too shallow for any are drawn again."""
    try:
        return calc.answer("groove", **frame)
    except Refused:
        assume(False)
        raise


@given(frame=FRAMES)
def test_the_panel_itself_never_fills_its_grooves_nor_leaves_them(frame: dict[str, str]) -> None:
    """Moved by the sum of movement to every climate on the way, it leaves the spare and stays in both grooves."""
    answer = fitted(frame)
    room = float(answer["opening"] + 2 * answer["depth"])
    for air in (
        answer["humidity_dry"],
        (answer["humidity_dry"] + answer["humidity_damp"]) / 2,
        answer["humidity_damp"],
    ):
        moved = calc.answer(
            "movement",
            species=frame["species"],
            cut=frame["cut"],
            width=f"{float(answer['panel']):.9f} mm",
            moisture_now=frame["moisture_now"],
            temperature_then="20 °C",
            humidity_then=f"{float(air):.2f}",
        )
        assert float(moved["width_then"]) <= room - float(answer["spare"]) + 1e-4 * room
        assert float(moved["width_then"]) >= float(answer["narrowest"]) - 1e-4 * room
        assert float(moved["width_then"]) > float(answer["opening"])


@given(frame=FRAMES)
def test_gaps_and_holds_are_measured_in_the_frame(frame: dict[str, str]) -> None:
    """Panel in the middle: gap, panel, gap fill the frame; crept to one side, the far groove holds what is told."""
    answer = fitted(frame)
    opening, depth = float(answer["opening"]), float(answer["depth"])
    left = -depth + float(answer["gap"])
    assert left + float(answer["panel"]) == pytest.approx(opening + depth - float(answer["gap"]))
    crept = -depth + float(answer["narrowest"])
    assert crept - opening == pytest.approx(float(answer["hold_far"]), abs=1e-9)
    middle = opening / 2 + float(answer["narrowest"]) / 2
    assert middle - opening == pytest.approx(float(answer["hold"]), abs=1e-9)


def test_a_quarter_sawn_panel_wants_a_smaller_gap() -> None:
    """It moves less, so it is cut wider."""
    flat, quarter = (calc.answer("groove", **PANEL, cut=cut) for cut in ("flat", "quarter"))
    assert quarter["panel"] > flat["panel"]
    assert quarter["gap"] < flat["gap"]


def test_a_panel_already_at_its_dampest_is_cut_to_fill_the_grooves_but_for_the_spare() -> None:
    """It can only shrink: the gap now is the spare, shared."""
    answer = calc.answer("groove", **PANEL | {"moisture_now": "25"})
    assert answer["swells"] < 0
    assert float(answer["gap"]) == pytest.approx(0.25)


def test_a_panel_drier_than_its_driest_can_only_swell() -> None:
    """Its narrowest is as it is cut."""
    answer = calc.answer("groove", **PANEL | {"moisture_now": "3"})
    assert answer["shrinks"] > 0
    assert float(answer["narrowest"]) == pytest.approx(float(answer["panel"]))


@pytest.mark.parametrize("now", ["5", "9", "16"])
def test_the_gap_in_the_dampest_air_is_the_gap_there_whatever_it_is_now(now: str) -> None:
    """By the sum of movement: cut at 16 % the panel is narrower in air of 70 % than now, and the gap is wider."""
    answer = calc.answer("groove", **PANEL | {"moisture_now": now})
    width = f"{float(answer['panel']):.9f} mm"
    there = calc.answer(
        "movement", species="white ash", width=width, moisture_now=now, temperature_then="20 °C", humidity_then="70"
    )
    room = float(answer["opening"] + 2 * answer["depth"])
    assert float(answer["gap_damp"]) == pytest.approx((room - float(there["width_then"])) / 2, abs=1e-6)
    assert (answer["gap_damp"] > answer["gap"]) == (now == "16")


def test_what_holds_the_panel_is_told_for_when_it_is_narrowest() -> None:
    """Cut at 5 %, below the driest air to come, it will never be held by less than now: half of panel less opening."""
    answer = calc.answer("groove", **PANEL | {"moisture_now": "5"})
    assert answer["moisture_dry"] > 5
    assert answer["narrowest"] == answer["panel"]
    assert float(answer["hold"]) == pytest.approx(float(answer["panel"] - answer["opening"]) / 2)
    assert "Held by each groove at its narrowest" in answer.text


@pytest.mark.parametrize(("now", "warned"), [("9", False), ("25", True)])
def test_damp_wood_is_warned_of_as_movement_does(now: str, warned: bool) -> None:
    """Above 20 % a board is still to dry and warps: common practice, no source."""
    assert ("boards warp as they dry" in calc.answer("groove", **PANEL | {"moisture_now": now}).text) == warned


def test_no_groove_is_advised_that_would_itself_be_refused() -> None:
    """Flat-sawn beech 2 m wide cut at 30 % loses more than two grooves of 60 mm hold: only parting it helps."""
    with pytest.raises(Refused) as refused:
        calc.answer("groove", **PANEL | {"species": "beech american", "opening": "2 m", "moisture_now": "30"})
    assert refused.value.refusals[0].instead == "part the panel in two"


def test_the_workshop_s_air_does_instead_of_a_meter() -> None:
    """The humidity the panel lies in gives its moisture by the sum of moisture."""
    air = calc.answer("groove", **{**PANEL, "moisture_now": "", "humidity_now": "55"})
    meter = calc.answer("moisture", temperature="20 °C", humidity="55")
    assert air["moisture_now"] == meter["emc"]


def test_a_groove_is_a_third_of_the_frame_and_a_length_leaves_the_spare() -> None:
    """24 mm stock is ploughed 8 mm wide; 300 mm with two grooves of 10 mm takes 319.5 mm."""
    answer = calc.answer("groove", **PANEL | {"depth": "10 mm"}, frame="24 mm", along="300 mm")
    assert (answer["groove"], float(answer["panel_long"])) == (8, 319.5)


def test_a_groove_too_shallow_is_refused_and_the_depth_it_names_is_enough() -> None:
    """A wide panel in a shallow groove would fall out; cut as deep as the refusal says, it stays."""
    wide = PANEL | {"opening": "1 m", "depth": "3 mm", "moisture_now": "12"}
    with pytest.raises(Refused) as refused:
        calc.answer("groove", **wide)
    (refusal,) = refused.value.refusals
    named = re.search(r"([\d.]+) mm", refusal.instead)
    assert refusal.field == "depth"
    assert named
    enough = calc.answer("groove", **wide | {"depth": f"{named[1]} mm"})
    assert 0 < enough["hold"] < 0.2
    assert enough["hold_far"] < 0


@pytest.mark.parametrize(
    ("change", "count"),
    [({}, 1), ({"depth": "12 mm", "opening": "900 mm"}, 2), ({"depth": "4 mm", "opening": "100 mm"}, 2)],
)
def test_a_panel_hardly_held_is_warned_of(change: dict[str, str], count: int) -> None:
    """Creeping out of the far groove, and less than 3 mm in either."""
    assert len(calc.answer("groove", **PANEL | change).cautions) == count


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"humidity_dry": "80"}, "humidity_dry"),
        ({"humidity_now": "50"}, "humidity_now"),
        ({"moisture_now": ""}, "moisture_now"),
        ({"moisture_now": "31"}, "moisture_now"),
        ({"species": "own"}, "own"),
    ],
)
def test_what_tells_no_panel_is_refused_by_name(change: dict[str, str], field: str) -> None:
    """Dry damper than damp, two moistures, none, one above what moves, a wood of one's own without its figure."""
    with pytest.raises(Refused) as refused:
        calc.answer("groove", **PANEL | change)
    assert refused.value.refusals[0].field == field
