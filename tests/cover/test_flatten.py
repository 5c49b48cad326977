"""Flatten: against surfaces laid out point by point, a section drawn with a geometry library, and in proportion."""

import math
from fractions import Fraction
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon, box

import calc
from calc import Refused

BOARD = {"thickness": "40 mm", "width": "200 mm", "length": "900 mm"}
tenths = st.integers(0, 80).map(lambda n: n / 10)


def flat(**given: object) -> calc.Result:
    """The board flattened."""
    return calc.answer("flatten", **{**BOARD, **given})


def surface(cup: float, twist: float) -> tuple[Any, Any, Any]:
    """A face over a grid from -1 to 1 both ways: the cup lifts both edges, the twist each corner by a quarter."""
    x, y = np.meshgrid(np.linspace(-1, 1, 161), np.linspace(-1, 1, 1601), indexing="ij")
    return x, y, cup * y**2 + twist / 4 * x * y


@given(cup=tenths, twist=tenths, tilt=st.tuples(st.floats(-3, 3), st.floats(-3, 3)))
def test_two_planes_take_off_as_much_as_the_face_stands_out_of_flat(
    cup: float, twist: float, tilt: tuple[float, float]
) -> None:
    """Highest less lowest point of the face laid out point by point; and no tilt of the planes takes off less."""
    if not (cup or twist):
        return
    found = flat(cup=f"{cup} mm", twist=f"{twist} mm")
    x, y, face = surface(float(found["cup_each"]), float(found["twist_each"]))
    assert np.ptp(face) == pytest.approx(float(found["loss"]), abs=1e-4)
    assert np.ptp(face + tilt[0] * x + tilt[1] * y) >= float(found["loss"]) - 1e-4


@given(cup=st.integers(1, 200).map(lambda n: n / 10), strips=st.integers(1, 8))
def test_the_flat_strip_lies_inside_the_cupped_one(cup: float, strips: int) -> None:
    """Drawn with a geometry library: between two arcs and two edges that point to their centre."""
    found = flat(cup=f"{cup} mm", strips=strips)
    radius, thick = float(found["radius"]), 40.0
    half = math.radians(found["half_angle"]) / strips
    turns = np.linspace(-half, half, 400)
    outer = [((radius + thick) * math.sin(t), -(radius + thick) * math.cos(t)) for t in turns]
    inner = [(radius * math.sin(t), -radius * math.cos(t)) for t in reversed(turns)]
    section = Polygon(outer + inner).buffer(1e-3)
    reach = radius * math.sin(half)
    low, high = -(radius + thick) * math.cos(half), -radius
    assert high - low == pytest.approx(float(found["left"]), abs=1e-9)
    assert section.contains(box(-reach, low, reach, high))


@given(strips=st.integers(2, 12))
def test_a_slight_cup_falls_with_the_square_of_the_strips(strips: int) -> None:
    """One millimetre over 200: within a thousandth of 1 / k²."""
    whole, ripped = flat(cup="1 mm"), flat(cup="1 mm", strips=strips)
    assert float(whole["cup_each"]) / float(ripped["cup_each"]) == pytest.approx(strips**2, rel=1e-3)


@pytest.mark.parametrize(("strips", "lengths"), [(2, 1), (1, 2), (3, 2)])
def test_a_twist_falls_with_the_number_of_pieces(strips: int, lengths: int) -> None:
    """Width and length count alike, exactly; a twist alone takes half of itself."""
    found = flat(twist="12 mm", strips=strips, lengths=lengths)
    assert found["twist_each"] * strips * lengths == 12
    assert found["loss"] * 2 == found["twist_each"]
    assert found["left"] == 40 - found["loss"]


def test_winding_sticks_say_the_same_as_a_bench() -> None:
    """Sticks three times as long as the board is wide show three times the twist."""
    assert flat(twist="9 mm", sticks="600 mm")["loss"] == flat(twist="3 mm")["loss"]


def test_the_fewest_strips_are_found() -> None:
    """One fewer leaves less than is wanted, and these leave enough."""
    found = flat(cup="12 mm", wanted="36 mm")
    need = found["need"]
    assert need > 1
    assert flat(cup="12 mm", strips=need)["left"] >= 36 > flat(cup="12 mm", strips=need - 1)["left"]
    assert flat(cup="12 mm", wanted="41 mm")["need"] is None
    assert "start from thicker stock" in flat(cup="12 mm", wanted="41 mm").text


def test_the_table_is_what_each_count_of_strips_would_answer() -> None:
    """Row by row, asked again."""
    for row in flat(cup="5 mm", twist="4 mm")["rows"]:
        again = flat(cup="5 mm", twist="4 mm", strips=row["strips"])
        assert (again["left"], again["width_left"]) == (row["left"], row["width_left"])


def test_a_strip_is_what_the_rips_leave_of_its_share() -> None:
    """By hand: 200 mm less two losses of 1/8 in is 193.65 mm, and a third of that 64.55 mm; the table says the same."""
    found = flat(cup="5 mm", strips="3")
    assert (found["strip_width"], found["width_left"]) == (Fraction("64.55"), Fraction("193.65"))
    assert [row["each"] * row["strips"] for row in found["rows"]] == [row["width_left"] for row in found["rows"]]
    assert found["rows"][2]["each"] == found["strip_width"]


def test_the_trued_strips_glue_up_to_what_was_told() -> None:
    """Carried on, three strips make the width again, with nothing more to true: glue-up asks for no fourth."""
    found = flat(cup="5 mm", strips="3")
    carried = next(one["givens"] for one in found.to_dict()["carry_on"] if one["to"] == "glue-up")
    glued = calc.answer("glue-up", **carried, panel_width=f"{float(found['width_left'])} mm", trim="0")
    assert (glued["strips"], glued["spare"]) == (3, 0)


def test_a_board_cut_shorter_is_not_called_whole() -> None:
    """Twist goes by length: by hand the whole board loses half of 12 mm and leaves 19, a quarter of it leaves 23.5."""
    board = {"thickness": "25 mm", "length": "1 m", "twist": "12 mm", "wanted": "22 mm"}
    assert flat(**board, lengths="4")["verdict"] == "cut into 4 lengths it need not be ripped"
    assert flat(**{**board, "wanted": "19 mm"}, lengths="4")["verdict"] == "whole, it leaves what you want"
    assert (
        flat(**{**board, "wanted": "24 mm"}, lengths="4")["verdict"]
        == "cut it into 4 lengths and rip each into 2 first"
    )
    assert flat(**board)["verdict"] == "rip it into 2 first"


def test_no_strip_is_advised_of_which_nothing_is_left() -> None:
    """By hand: three losses of 1/4 in are all of 3/4 in, so the list stops at three strips and no more are tried."""
    found = flat(thickness="1 in", width="3/4 in", length="24 in", cup="0.18 in", lost="1/4 in", wanted="0.97 in")
    assert [row["strips"] for row in found["rows"]] == [1, 2, 3]
    assert found["need"] is None
    assert "start from thicker stock" in found["verdict"]


@pytest.mark.parametrize(
    ("given", "field", "say"),
    [
        ({}, "cup", "neither cup nor twist"),
        ({"cup": "2 in"}, "cup", "more than a quarter"),
        ({"twist": "101 mm"}, "twist", "more than half"),
        ({"cup": "1 mm", "strips": "12", "lost": "20 mm"}, "strips", "no wood between"),
    ],
)
def test_what_is_no_board_to_flatten_is_refused(given: dict[str, str], field: str, say: str) -> None:
    """Each refusal names the field to change."""
    with pytest.raises(Refused, match=say) as refused:
        flat(**given)
    assert refused.value.refusals[0].field == field


def test_a_board_that_goes_to_shavings_is_warned_of() -> None:
    """Nothing left, and less than three fifths left, each with its own words."""
    assert "Nothing is left" in flat(thickness="1/4 in", cup="12 mm").text
    assert "goes into shavings" in flat(thickness="20 mm", cup="9 mm").text
    assert "shavings" not in flat(cup="3 mm").text
