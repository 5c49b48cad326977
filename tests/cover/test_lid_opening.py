"""Lid-opening: the section is turned about its pin by a geometry library until it meets something."""

import math
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import LineString, Point, Polygon, affinity, box

import calc
from calc.bench import Bench
from calc.declare import Values
from calc.discover import find
from calc.errors import Refusal, Refused

EXAMPLE = find("lid-opening").example.givens
PIN = Point(0, 0)


def opened(lid: dict[str, Fraction | None], **more: Fraction) -> Values:
    """The sum's values; a strip with no under face left, which it refuses, is set aside."""
    try:
        return find("lid-opening").of(height=None, **lid | more)
    except Refusal:
        assume(False)
        raise


LIDS = st.fixed_dictionaries(
    {
        "strip": st.integers(8, 90).map(Fraction),
        "length": st.integers(20, 300).map(Fraction),
        "thickness": st.integers(4, 40).map(Fraction),
        "angle": st.integers(0, 45).map(Fraction),
        "crest": st.integers(5, 120).map(Fraction),
        "kerf": st.integers(0, 4).map(Fraction),
        "behind": st.none() | st.integers(5, 60).map(Fraction),
    }
)


def shut(v: Values) -> Polygon:
    """The moving lid shut, the pin at the origin, its upper face on the line through it."""
    level = box(float(v["kerf"]) / 2, -float(v["thickness"]), float(v["kerf"]) / 2 + float(v["length"]), 0)
    return affinity.rotate(level, -float(v["angle"]), origin=PIN)


def fixed(v: Values) -> Polygon:
    """Back and wall as one shape, beside the pin; the back's own face is where the strip ends."""
    turn = math.radians(float(v["angle"]))
    along = float(v["strip"] + v["kerf"] / 2)
    left, top = -along * math.cos(turn), float(v["crest"]) + along * math.sin(turn)
    back = box(left - 2000, -2000, left, top)
    if v["behind"] is None:
        return back
    return back.union(box(left - 2000, -2000, left - float(v["behind"]), 2000))


@given(LIDS)
def test_the_lid_turns_until_it_touches_and_no_further(lid: dict[str, Fraction | None]) -> None:
    """A tenth of a degree short of the answer it is free; a tenth beyond it bites into back or wall."""
    v = opened(lid)
    assume(v["opening"] < 179)
    before, after = (affinity.rotate(shut(v), float(v["opening"]) + way / 10, origin=PIN) for way in (-1, 1))
    assert before.intersection(fixed(v)).area == pytest.approx(0, abs=1e-9)
    assert after.intersection(fixed(v)).area > 1e-9


@given(LIDS)
def test_it_is_free_all_the_way(lid: dict[str, Fraction | None]) -> None:
    """At a dozen openings on its way the lid touches neither back nor wall, nor rises above what is answered."""
    v = opened(lid)
    for step in range(13):
        there = affinity.rotate(shut(v), float(v["opening"]) * step / 12, origin=PIN)
        assert there.intersection(fixed(v)).area == pytest.approx(0, abs=1e-6)
        assert there.bounds[3] <= float(v["rises"]) + 1e-6


@given(LIDS)
def test_the_room_above_is_needed(lid: dict[str, Fraction | None]) -> None:
    """Somewhere on its way the lid comes up to what is answered: looked for in steps of a twentieth of a degree."""
    v = opened(lid)
    assume(v["opening"] > 90)
    corners = [complex(x, y) for x, y in shut(v).exterior.coords]
    turns = [math.radians(step / 20) for step in range(int(float(v["opening"]) * 20) + 1)]
    top = max((corner * complex(math.cos(turn), math.sin(turn))).imag for corner in corners for turn in turns)
    assert top == pytest.approx(float(v["rises"]), rel=1e-3)


@given(LIDS)
def test_it_stays_when_its_middle_is_behind_the_pin(lid: dict[str, Fraction | None]) -> None:
    """The centroid of the open lid, by the library: behind the pin it stays, before it the lid falls shut."""
    v = opened(lid)
    middle = affinity.rotate(shut(v), float(v["opening"]), origin=PIN).centroid.x
    assume(abs(middle) > 1e-6)
    assert (middle > 0) == (v["stays"] == "no: it falls shut")


@given(LIDS, st.integers(10, 100))
def test_chain_or_prop_reaches_from_lid_to_side(lid: dict[str, Fraction | None], opening: int) -> None:
    """Its length is that of a line drawn between the two places, the lid turned to where it is held."""
    v = opened(lid, hold=Fraction(opening), crest=Fraction(200))
    deep = affinity.rotate(Point(float(v["fix"]), -float(v["thickness"])), -float(v["angle"]), origin=PIN)
    line = LineString([deep, affinity.rotate(deep, opening, origin=PIN)])
    assert line.length == pytest.approx(float(v["tie"]), rel=1e-9)


def test_the_back_may_be_measured_from_either_level() -> None:
    """Its rise above the lid, or above the hinge line: the same box, the same answers."""
    one = calc.answer("lid-opening", **EXAMPLE)
    givens = {name: text for name, text in EXAMPLE.items() if name != "crest"}
    other = calc.answer("lid-opening", **givens, height=f"{float(one['height']):.9f} mm")
    assert float(other["crest"]) == pytest.approx(40, abs=1e-6)
    assert float(other["opening"]) == pytest.approx(float(one["opening"]), abs=1e-6)


def test_a_level_lid_at_forty_five_degrees_is_exact() -> None:
    """Back as high above the pin as it is behind it: the lid leans 45° past upright, and opens to 135°."""
    found = calc.answer("lid-opening", strip="30 mm", length="200 mm", thickness="12 mm", crest="30 mm", kerf="0 mm")
    assert (found["lean"], found["opening"], found["meets"]) == (45, 135, "the back's upper edge")
    assert isinstance(found["opening"], Fraction)


@pytest.mark.parametrize(
    ("more", "meets"),
    [
        ({"behind": ""}, "the back's upper edge"),
        ({}, "the wall"),
        ({"crest": "300 mm"}, "the face of the back"),
        ({"length": "25 mm"}, "its own strip"),
    ],
)
def test_it_says_what_stops_the_lid(more: dict[str, str], meets: str) -> None:
    """The back's edge, the wall behind it, a tall back's face, or nothing but the strip."""
    assert calc.answer("lid-opening", **{**EXAMPLE, **more})["meets"] == meets


@pytest.mark.parametrize(("more", "opening"), [({"length": "25 mm"}, 180), ({"crest": "0 mm", "behind": ""}, 180)])
def test_with_nothing_in_its_way_it_lies_on_its_strip(more: dict[str, str], opening: float) -> None:
    """A lid shorter than its strip, or a back no higher than the lid: it turns right over."""
    assert float(calc.answer("lid-opening", **{**EXAMPLE, **more})["opening"]) == pytest.approx(opening, abs=1e-9)


@pytest.mark.parametrize(("strip", "say"), [("32 mm", "on to its strip"), ("0 mm", "right over behind its hinge")])
def test_a_lid_without_a_strip_does_not_turn_over_on_to_it(strip: str, say: str) -> None:
    """A level lid behind which nothing rises: on to the strip where there is one, else past the hinge."""
    text = calc.answer("lid-opening", strip=strip, length="165 mm", thickness="16 mm", crest="0 mm").text
    assert say in text
    assert text.count("turns right over") == 1


def test_a_thick_short_lid_against_a_tall_back_falls_shut() -> None:
    """It is propped as wide as it goes, and fingers are warned of."""
    found = calc.answer("lid-opening", strip="4 mm", length="40 mm", thickness="30 mm", crest="200 mm")
    assert found["stays"] == "no: it falls shut"
    assert found["tie_is"].startswith("a prop")
    assert found["hold"] == found["opening"]
    assert "hurts fingers" in found.text


@pytest.mark.parametrize(
    ("more", "field", "say"),
    [
        ({"hold": "170"}, "hold", "does not open so far"),
        ({"fix": "400 mm"}, "fix", "beyond the end"),
        ({"crest": "", "height": "5 mm"}, "height", "stop below"),
        ({"strip": "4 mm"}, "strip", "nothing left of this strip"),
        ({"height": "60 mm"}, "height", "alone is enough"),
    ],
)
def test_what_cannot_be_is_refused_by_name(more: dict[str, str], field: str, say: str) -> None:
    """Each refusal names the entry to change."""
    with pytest.raises(Refused, match=say) as refused:
        calc.answer("lid-opening", Bench(unit="mm", mark="mm"), **{**EXAMPLE, **more})
    assert refused.value.refusals[0].field == field
