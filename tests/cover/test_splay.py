"""Leaning sides against the solid itself: planes in space, the points where three meet, and angles measured there."""

import math
from itertools import product
from typing import Any

import numpy as np
import numpy.typing as npt
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

import calc
from calc import Refused

Vector = npt.NDArray[np.float64]
Plane = tuple[Vector, float]
BOTTOM: Plane = (np.array([0.0, 0.0, 1.0]), 0.0)

LEANS = st.integers(0, 800).map(lambda tenths: tenths / 10)
BOXES = st.fixed_dictionaries(
    {
        "sides": st.integers(3, 12),
        "lean": LEANS,
        "size": st.integers(20, 900),
        "height": st.integers(5, 600),
        "thickness": st.integers(3, 40),
    }
)


def face(turn: float, lean: float, away: float) -> Plane:
    """A face whose foot stands `away` from the middle in the direction `turn`, leaning outwards, all in degrees."""
    t, s = math.radians(turn), math.radians(lean)
    return np.array([math.cos(t) * math.cos(s), math.sin(t) * math.cos(s), -math.sin(s)]), away * math.cos(s)


def outer(plane: Plane, thickness: float) -> Plane:
    """The other face of the same board."""
    return plane[0], plane[1] + thickness


def meet(*planes: Plane) -> Vector:
    """The point where three planes meet."""
    return np.linalg.solve(np.array([one[0] for one in planes]), np.array([one[1] for one in planes]))


def between(one: Vector, other: Vector) -> float:
    """The angle between two directions in degrees."""
    return math.degrees(math.atan2(float(np.linalg.norm(np.cross(one, other))), float(one @ other)))


def mitre(one: Plane, other: Plane) -> Plane:
    """The plane that a mitre between two faces is sawn along: through their corner, halfway between them."""
    normal = one[0] - other[0]
    return normal / np.linalg.norm(normal), float(normal @ meet(one, other, BOTTOM) / np.linalg.norm(normal))


def edges(inside: Plane, thickness: float, height: float, ends: tuple[Plane, Plane]) -> dict[str, float]:
    """The four long edges of one board, measured between its corner points."""
    top = (BOTTOM[0], height)
    faces, levels = {"inside": inside, "outside": outer(inside, thickness)}, {"bottom": BOTTOM, "top": top}
    return {
        f"{side}_{level}": float(
            np.linalg.norm(meet(faces[side], levels[level], ends[0]) - meet(faces[side], levels[level], ends[1]))
        )
        for side, level in product(faces, levels)
    }


def cuts(inside: Plane, end: Plane) -> tuple[float, float, float]:
    """How an end is cut, off square: along the face, across a square edge, and its bevel."""
    normal, sawn = inside[0], end[0]
    along = np.cross(BOTTOM[0], normal) / np.linalg.norm(np.cross(BOTTOM[0], normal))
    up = np.cross(normal, along)
    on_face, on_edge = np.cross(normal, sawn), np.cross(up, sawn)
    acute = [between(line, square) for line, square in ((on_face, up), (on_edge, normal), (sawn, normal))]
    face_cut, edge_mark, tilt = (min(one, 180 - one) for one in acute)
    return face_cut, edge_mark, 90 - tilt


@settings(max_examples=80, deadline=None)
@given(box=BOXES)
def test_mitred_sides_are_the_solid_cut_by_its_planes(box: dict[str, Any]) -> None:
    """Every edge and angle of a regular mitred box equals what is measured on the solid built from its planes."""
    answer = calc.answer("splay", calc.Bench(unit="mm"), **box)
    away, turn = box["size"] / 2 / math.tan(math.pi / box["sides"]), 360 / box["sides"]
    last, here, following = (face(way, box["lean"], away) for way in (-turn, 0, turn))
    ends = mitre(here, last), mitre(here, following)
    measured = edges(here, box["thickness"], box["height"], ends)
    assert {name: float(answer["parts"][0][name]) for name in measured} == pytest.approx(measured, rel=1e-9)
    told = answer["face_cut"], answer["mitre_mark"], answer["mitre_bevel"]
    assert [float(one) for one in told] == pytest.approx(cuts(here, ends[1]), abs=1e-6)
    assert float(answer["dihedral"]) == pytest.approx(180 - between(here[0], following[0]), abs=1e-6)


@settings(max_examples=80, deadline=None)
@given(box=BOXES, other=st.integers(20, 900), joint=st.sampled_from(["mitre", "butt"]))
def test_four_sides_of_two_lengths_are_the_solid_cut_by_its_planes(box: dict[str, Any], other: int, joint: str) -> None:
    """An oblong box, mitred or butted: both kinds of side measure on the solid as they are listed."""
    assume(other != box["size"])
    told = box | {"sides": 4, "other": other, "joint": joint}
    answer = calc.answer("splay", calc.Bench(unit="mm"), **told)
    thick, high = box["thickness"], box["height"]
    first, left, right = (
        face(way, box["lean"], far) for way, far in ((0, other / 2), (-90, box["size"] / 2), (90, box["size"] / 2))
    )
    second, near, far = (
        face(way, box["lean"], far) for way, far in ((90, box["size"] / 2), (0, other / 2), (180, other / 2))
    )
    if joint == "mitre":
        ends = (mitre(first, left), mitre(first, right)), (mitre(second, near), mitre(second, far))
    else:
        ends = (left, right), (outer(near, thick), outer(far, thick))
    found = edges(first, thick, high, ends[0]), edges(second, thick, high, ends[1])
    for part, measured in zip(answer["parts"], found, strict=True):
        assert {name: float(part[name]) for name in measured} == pytest.approx(measured, rel=1e-9)
    edge = ("mitre_mark", "mitre_bevel") if joint == "mitre" else ("butt_mark", "butt_bevel")
    angles = [float(answer[name]) for name in ("face_cut", *edge)]
    assert angles == pytest.approx(cuts(first, ends[0][1]), abs=1e-6)
    assert angles == pytest.approx(cuts(second, ends[1][1]), abs=1e-6)


@given(lean=LEANS, thickness=st.integers(3, 40), height=st.integers(5, 600))
def test_the_stock_is_as_wide_as_the_side_laid_on_its_face(lean: float, thickness: int, height: int) -> None:
    """The section's four corners, measured up the slope of the face, span the width of stock."""
    answer = calc.answer("splay", size="300 mm", lean=lean, thickness=f"{thickness} mm", height=f"{height} mm")
    s, wall, spread = (
        math.radians(lean),
        thickness / math.cos(math.radians(lean)),
        height * math.tan(math.radians(lean)),
    )
    corners = [(0, 0), (wall, 0), (spread, height), (wall + spread, height)]
    along = [x * math.sin(s) + y * math.cos(s) for x, y in corners]
    assert float(answer["blank_width"]) == pytest.approx(max(along) - min(along), rel=1e-9)


def test_upright_sides_are_an_ordinary_box() -> None:
    """No lean: square faces, mitres of 45°, square butts, all of it exact."""
    box = calc.answer("splay", size="7 in", lean="0", height="3 in", thickness="16 mm")
    assert (box["face_cut"], box["mitre_bevel"], box["dihedral"], box["top_size"]) == (0, 45, 90, box["size"])
    assert calc.answer("splay", joint="butt", size="7 in", lean="0", height="3 in", thickness="16 mm")["butt_mark"] == 0


def test_a_lean_may_be_given_as_rise_and_run_and_a_height_as_slant() -> None:
    """3 up and 4 out leans by the angle whose tangent is 4/3; 5 up the slope is 3 high."""
    box = calc.answer("splay", size="7 in", rise="3 in", run="4 in", slant="5 in", thickness="1/2 in")
    assert float(box["lean"]) == pytest.approx(math.degrees(math.atan2(4, 3)))
    assert float(box["height"]) == pytest.approx(3 * 25.4)


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"joint": "butt", "sides": "6"}, "joint"),
        ({"other": "9 in", "sides": "5"}, "other"),
        ({"lean": ""}, "lean"),
        ({"rise": "1 in"}, "lean"),
        ({"lean": "", "rise": "1 in"}, "run"),
        ({"lean": "", "rise": "1 in", "run": "9 in"}, "run"),
        ({"lean": "81"}, "lean"),
        ({"sides": "13"}, "sides"),
        ({"slant": "4 in"}, "slant"),
        ({"height": ""}, "height"),
    ],
)
def test_what_makes_no_box_is_refused_by_name(change: dict[str, str], field: str) -> None:
    """Butted hexagons, leans past 80°, two leans, two heights and none are refused, each at its own field."""
    texts = {"size": "7 in", "lean": "15", "height": "3 in", "thickness": "16 mm"} | change
    with pytest.raises(Refused) as refused:
        calc.answer("splay", **texts)
    assert refused.value.refusals[0].field == field


def test_small_parts_are_warned_of() -> None:
    """A tray two inches high brings the caution to saw the angles on a longer board."""
    texts = {"size": "7 in", "lean": "15", "thickness": "10 mm"}
    small, large = calc.answer("splay", height="2 in", **texts), calc.answer("splay", height="4 in", **texts)
    assert len(small.cautions) == len(large.cautions) + 1


def test_upright_sides_have_no_slanting_cut_to_warn_of() -> None:
    """By geometry: without a lean every line across a face is square, and no top or bottom edge is bevelled."""
    box = {"size": "7 in", "height": "4 in", "thickness": "16 mm"}
    upright, leaning = (calc.answer("splay", lean=lean, **box) for lean in ("0", "15"))
    assert (upright["face_cut"], upright["level_bevel"]) == (0, 0)
    assert "slanting" not in upright.text
    assert "slanting" in leaning.text


def test_a_butted_side_is_longest_where_it_is_planed_away() -> None:
    """Its square-edged stock is cut by the planes of its neighbours: the inner top arris, above the rim, is longer than
    any edge of the finished part, which is said beside them."""
    lean, thick, high = 15.0, 12.0, 90.0
    box = calc.answer(
        "splay", joint="butt", size="170 mm", other="260 mm", lean="15", height="90 mm", thickness="12 mm"
    )
    near, end = face(0, lean, 85), outer(face(90, lean, 130), thick)
    level = (np.array([0.0, 0.0, 1.0]), high + thick * math.sin(math.radians(lean)))
    blank = 2 * meet(near, end, level)[1]
    finished = max(value for name, value in box["parts"][-1].items() if name.startswith(("inside", "outside")))
    assert blank - float(finished) == pytest.approx(
        2 * thick * math.sin(math.radians(lean)) * math.tan(math.radians(lean))
    )
    told = {one.name: one.help for one in box.sum.answers}
    assert "allow for it in the stock" in told["parts"]
