"""Tapered pieces against the shape itself, cut across, and by every three sizes that tell one."""

import math
from fractions import Fraction
from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, Polygon
from shapely.affinity import translate

import calc
from calc import Refused

NAMES = ("length", "start", "end", "angle", "per_foot")
TAPERS = st.fixed_dictionaries(
    {
        "length": st.integers(100, 2000).map(lambda mm: f"{mm} mm"),
        "start": st.integers(60, 150).map(lambda mm: f"{mm} mm"),
        "end": st.integers(5, 55).map(lambda mm: f"{mm} mm"),
        "faces": st.sampled_from(["1", "2"]),
    }
)


def side(answer: calc.Result) -> Polygon:
    """The piece from the side, its large end on the line x = 0, the upper face planed, the lower one if both are."""
    long, large, small = (float(answer[name]) for name in ("length", "start", "end"))
    low = (large - small) / 2 if answer["faces"] == 2 else 0
    return Polygon([(0, 0), (long, low), (long, low + small), (0, large)])


@given(sizes=TAPERS, straight=st.integers(0, 100))
def test_widths_are_those_of_the_shape_cut_across(sizes: dict[str, str], straight: int) -> None:
    """A line across the drawn piece at each mark is as long inside it as the table says."""
    answer = calc.answer("taper", **sizes, straight=f"{straight} mm")
    shape = translate(side(answer), straight)
    for row in answer["marks"]:
        across = LineString([(float(row["at"]), -1000), (float(row["at"]), 1000)])
        assert shape.intersection(across).length == pytest.approx(float(row["width"]), rel=1e-6)
    assert float(answer["marks"][-1]["at"]) == pytest.approx(shape.bounds[2])


@given(sizes=TAPERS)
def test_angle_slant_and_point_are_measured_on_the_shape(sizes: dict[str, str]) -> None:
    """The planed face is as long and as steep as told, and both faces drawn on meet at the point."""
    answer = calc.answer("taper", **sizes)
    corners = list(side(answer).exterior.coords)
    (x0, y0), (x1, y1) = corners[3], corners[2]
    assert float(answer["slant"]) == pytest.approx(math.dist(corners[3], corners[2]))
    assert float(answer["angle"]) == pytest.approx(math.degrees(math.atan2(y0 - y1, x1 - x0)))
    far = 2 * float(answer["point"])
    upper = LineString([(x0, y0), (x0 + far, y0 - far * (y0 - y1) / (x1 - x0))])
    lower = LineString([(0, 0), (far, far * corners[1][1] / x1)])
    assert upper.intersection(lower).x == pytest.approx(float(answer["point"]), rel=1e-6)
    assert (answer["included"] is None) == (sizes["faces"] == "1")


@given(sizes=TAPERS)
def test_any_three_sizes_give_the_same_taper(sizes: dict[str, str]) -> None:
    """Every three of the five but angle with taper in a foot lead to the same piece."""
    first = calc.answer("taper", **sizes)
    assert float(first["per_foot"]) == pytest.approx(
        float(first["start"] - first["end"]) * 304.8 / float(first["length"])
    )
    for three in (three for three in combinations(NAMES, 3) if not {"angle", "per_foot"} <= set(three)):
        typed = {name: f"{float(first[name]):.12f}{'' if name == 'angle' else ' mm'}" for name in three}
        again = calc.answer("taper", **typed, faces=sizes["faces"])
        for name in NAMES:
            assert float(again[name]) == pytest.approx(float(first[name]), rel=1e-6), (three, name)


def test_a_taper_told_in_lengths_alone_is_exact() -> None:
    """No angle, no rounding: an eighth of an inch in a foot over 18 in takes 3/16 in."""
    answer = calc.answer("taper", length="18 in", start="2 in", per_foot="1/8 in")
    assert answer["end"] == Fraction("25.4") * Fraction(29, 16)
    assert isinstance(answer["one_in"], Fraction)


def test_a_wedge_comes_to_its_point_at_its_end() -> None:
    """Nothing at the small end: the point is the length."""
    answer = calc.answer("taper", start="1/2 in", end="0", angle="1 in 8")
    assert float(answer["point"]) == pytest.approx(float(answer["length"])) == pytest.approx(4 * 25.4)


@pytest.mark.parametrize(
    ("sizes", "field"),
    [
        ({"length": "10 in", "start": "1 in", "end": "1 in"}, "end"),
        ({"length": "10 in", "start": "1 in", "end": "2 in"}, "end"),
        ({"length": "10 in", "start": "1 in", "angle": "1 in 8"}, "length"),
        ({"length": "10 in", "angle": "5", "per_foot": "1 in"}, "per_foot"),
        ({"length": "20 m", "end": "1 m", "angle": "60", "faces": "2"}, "length"),
        ({"start": "20 in", "end": "1 in", "angle": "0.001"}, "angle"),
        ({"start": "20 in", "end": "1 in", "per_foot": "0.001 in"}, "per_foot"),
        ({"start": "2 in", "end": "1 in"}, "length"),
    ],
)
def test_what_is_no_taper_is_refused_by_name(sizes: dict[str, str], field: str) -> None:
    """Ends alike or the wrong way round, past its point, the same thing said twice, without end, too little said."""
    with pytest.raises(Refused) as refused:
        calc.answer("taper", **sizes)
    assert refused.value.refusals[0].field == field


def test_a_steep_taper_is_warned_of() -> None:
    """From fifteen degrees the grain runs out."""
    sizes = {"start": "4 in", "end": "1 in"}
    gentle, steep = (calc.answer("taper", angle=angle, **sizes) for angle in ("10", "20"))
    assert len(steep.cautions) == len(gentle.cautions) + 1


def test_a_large_end_is_held_to_its_limit_when_it_is_answered() -> None:
    """By hand: two faces at 45° widen 100 mm by twice the length, to a metre after 450 mm; more is refused."""
    taper = {"end": "100 mm", "angle": "45", "faces": "2"}
    assert calc.answer("taper", length="450 mm", **taper)["start"] == 1000
    with pytest.raises(Refused, match=r"the large end would be 1002 mm, 39\.45 in wide"):
        calc.answer("taper", length="451 mm", **taper)
