"""Legs against arrows in space turned by rotation matrices, and at what cannot be a leg."""

import math

import numpy as np
import numpy.typing as npt
import pytest
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc import Refused

Vector = npt.NDArray[np.float64]
LEANS = st.integers(1, 450).map(lambda tenths: tenths / 10)
PAIRS = [
    ("rake", "splay"),
    ("rake", "lean"),
    ("splay", "lean"),
    ("rake", "sight"),
    ("splay", "sight"),
    ("lean", "sight"),
]
STOOL = {"height": "400 mm", "seat": "35 mm", "thick": "38 mm", "holes": "230 mm"}


def tipped(about: Vector, degrees: float) -> npt.NDArray[np.float64]:
    """The matrix that turns by so many degrees about an axis: O. Rodrigues (1840)."""
    x, y, z = about / np.linalg.norm(about)
    cross = np.array([[0, -z, y], [z, 0, -x], [-y, x, 0]])
    turn = math.radians(degrees)
    return np.eye(3) + math.sin(turn) * cross + (1 - math.cos(turn)) * cross @ cross


def leg(rake: float, splay: float) -> Vector:
    """The direction of a leg, x to the side and y to the back, from the planes that hold its two views."""
    a, s = math.radians(rake), math.radians(splay)
    front, side = np.array([math.cos(s), 0, -math.sin(s)]), np.array([0, math.cos(a), -math.sin(a)])
    along = np.cross(front, side)
    return along / np.linalg.norm(along)


@given(rake=LEANS, splay=LEANS)
def test_lean_and_sight_line_are_those_of_an_arrow_in_space(rake: float, splay: float) -> None:
    """The line in which the planes of both views meet stands off upright by the lean, over the sight line."""
    answer, arrow = calc.answer("legs", rake=rake, splay=splay, **STOOL), leg(rake, splay)
    assert float(answer["lean"]) == pytest.approx(math.degrees(math.acos(arrow[2])))
    assert float(answer["sight"]) == pytest.approx(math.degrees(math.atan2(arrow[1], arrow[0])))
    assert float(answer["sight"] + answer["sight_back"]) == pytest.approx(90)
    assert float(answer["drill"]) == pytest.approx(90 - math.degrees(math.acos(arrow[2])))


@given(rake=LEANS, splay=LEANS)
def test_lengths_are_measured_between_floor_and_seat(rake: float, splay: float) -> None:
    """The arrow cut by the floor, the under face and the upper face gives leg, bore and where the foot stands."""
    answer, arrow = calc.answer("legs", rake=rake, splay=splay, **STOOL), leg(rake, splay)
    down = arrow * 400 / arrow[2]
    assert float(answer["leg"]) == pytest.approx(float(np.linalg.norm(down)))
    assert float(answer["bore"]) == pytest.approx(float(np.linalg.norm(arrow * 35 / arrow[2])))
    assert [float(answer["out"]), float(answer["back"])] == pytest.approx(down[:2].tolist())
    assert float(answer["foot"]) == pytest.approx(math.hypot(*down[:2]))
    assert float(answer["feet"]) == pytest.approx(230 + 2 * down[0])


@given(rake=LEANS, splay=LEANS)
def test_a_square_leg_tipped_without_a_twist_shows_splay_and_rake_on_its_faces(rake: float, splay: float) -> None:
    """The floor cuts its front face along a line off square by the splay, and its side face by the rake."""
    answer = calc.answer("legs", rake=rake, splay=splay, **STOOL)
    sight = math.radians(float(answer["sight"]))
    turned = tipped(np.array([-math.sin(sight), math.cos(sight), 0]), float(answer["lean"]))
    across, along, up = turned.T
    for face, name in ((across, "front_line"), (along, "side_line")):
        level = np.cross(np.cross(face, up), [0, 0, 1])
        off = math.degrees(math.asin(abs(level @ up) / float(np.linalg.norm(level))))
        assert off == pytest.approx(float(answer[name]), abs=1e-7)


@given(rake=LEANS, splay=LEANS)
def test_a_round_leg_s_foot_is_the_slice_of_a_cylinder(rake: float, splay: float) -> None:
    """The level slice of a cylinder 38 mm thick reaches so far along it as the drop says, and fits the blank."""
    answer, arrow = calc.answer("legs", rake=rake, splay=splay, **STOOL), leg(rake, splay)
    one = np.cross(arrow, [0.0, 0.0, 1.0])
    one, two = one / np.linalg.norm(one), np.cross(arrow, one / np.linalg.norm(one))
    turns = np.linspace(0, 2 * math.pi, 721)
    rim = 19 * (np.outer(np.cos(turns), one) + np.outer(np.sin(turns), two))
    along = -rim[:, 2] / arrow[2]
    assert float(answer["drop"]) == pytest.approx(float(along.max() - along.min()), rel=1e-4)
    ends = along.max() - along.min() + float(np.linalg.norm(arrow * 435 / arrow[2]))
    assert float(answer["blank"]) == pytest.approx(float(ends), rel=1e-4)


@given(rake=st.integers(10, 350).map(lambda tenths: tenths / 10), splay=st.integers(10, 350).map(lambda one: one / 10))
def test_any_two_angles_give_the_same_leg(rake: float, splay: float) -> None:
    """Whichever two of the four are typed, the others come back."""
    first = calc.answer("legs", rake=rake, splay=splay, **STOOL)
    for pair in PAIRS:
        again = calc.answer("legs", **{name: f"{float(first[name]):.12f}" for name in pair}, **STOOL)
        for name in ("rake", "splay", "lean", "sight", "leg", "feet"):
            assert float(again[name]) == pytest.approx(float(first[name]), rel=1e-7), (pair, name)


def test_an_upright_leg_has_no_sight_line_and_is_exact() -> None:
    """Nothing leans: the leg is as long as the seat is high, and there is no way it leans."""
    answer = calc.answer("legs", rake="0", splay="0", **STOOL)
    assert (answer["lean"], answer["drill"], answer["leg"], answer["drop"]) == (0, 90, 400, 0)
    assert answer["sight"] is None


@pytest.mark.parametrize(("rake", "splay", "sight"), [("10", "0", 90), ("0", "10", 0)])
def test_a_leg_that_leans_one_way_only_leans_along_that_line(rake: str, splay: str, sight: int) -> None:
    """All rake runs from front to back, all splay from side to side."""
    answer = calc.answer("legs", rake=rake, splay=splay, **STOOL)
    assert answer["sight"] == sight
    assert float(answer["lean"]) == pytest.approx(10)


@pytest.mark.parametrize(
    ("angles", "other"), [({"rake": "10", "sight": "90"}, "splay"), ({"splay": "10", "sight": "0"}, "rake")]
)
def test_a_sight_line_square_to_the_seat_tells_the_lean(angles: dict[str, str], other: str) -> None:
    """By hand: of a leg that leans straight back, or straight out, one view shows the whole lean and the other none."""
    answer = calc.answer("legs", **angles, **STOOL)
    assert (answer[other], float(answer["lean"])) == (0, pytest.approx(10))


@pytest.mark.parametrize(
    ("angles", "say"),
    [
        ({"rake": "10", "sight": "0"}, "along the 0° line a leg has no rake, so its lean stays open"),
        ({"splay": "10", "sight": "90"}, "along the 90° line a leg has no splay, so its lean stays open"),
        ({"rake": "0", "sight": "30"}, "a rake of 0° does not say how far it leans"),
        ({"splay": "0", "sight": "0"}, "a splay of 0° does not say how far it leans"),
    ],
)
def test_a_lean_that_stays_open_is_refused_in_a_sentence(angles: dict[str, str], say: str) -> None:
    """Seen along the line it leans on a leg stands upright: any lean at all would look so."""
    with pytest.raises(Refused, match=say):
        calc.answer("legs", **angles, **STOOL)


@pytest.mark.parametrize(
    ("angles", "field"),
    [
        ({"rake": "12", "lean": "10"}, "lean"),
        ({"splay": "12", "lean": "10"}, "lean"),
        ({"rake": "0", "sight": "30"}, "sight"),
        ({"rake": "10", "sight": "0"}, "sight"),
        ({"splay": "10", "sight": "90"}, "sight"),
        ({"splay": "40", "sight": "80"}, "sight"),
        ({"lean": "0", "sight": "30"}, "sight"),
        ({"rake": "46", "splay": "0"}, "rake"),
        ({"rake": "10"}, "splay"),
        ({"rake": "10", "splay": "10", "lean": "10"}, "lean"),
    ],
)
def test_what_is_no_leg_is_refused_by_name(angles: dict[str, str], field: str) -> None:
    """A lean less than the rake, a sight line that tells nothing, legs that lie down, one angle and three."""
    with pytest.raises(Refused) as refused:
        calc.answer("legs", **angles, **STOOL)
    assert refused.value.refusals[0].field == field
