"""Arcs against circles drawn by other means: through three points, by a line integral, by a geometry library."""

import math
from fractions import Fraction

import mpmath
import numpy as np
import pytest
import sympy
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, Point

import calc
from calc import Refused

SPANS = st.integers(10, 4000)
SHARES = st.fractions(Fraction(1, 100), Fraction(1, 2), max_denominator=200)


def arc(**sizes: object) -> calc.Result:
    """An arc by its sizes in millimetres, or by texts."""
    texts = {name: f"{float(size):.12f} mm" if isinstance(size, int | float | Fraction) else size
             for name, size in sizes.items()}  # fmt: skip
    return calc.answer("arc", **texts)


@pytest.mark.parametrize(("span", "rise"), [(240, 40), (1219, 153), (96, 48), (900, 1), (17, 5)])
def test_the_circle_goes_through_both_ends_and_the_crown(span: int, rise: int) -> None:
    """sympy's circle through those three points has the same radius and the same centre, exactly."""
    ends = sympy.Point(0, 0), sympy.Point(span, 0), sympy.Point(sympy.Rational(span, 2), rise)
    circle, answer = sympy.Circle(*ends), arc(span=span, rise=rise)
    assert answer["radius"] == Fraction(int(circle.radius.p), int(circle.radius.q))
    assert answer["centre"] == -Fraction(int(circle.center.y.p), int(circle.center.y.q))


@pytest.mark.parametrize(("span", "rise"), [(240, 40), (1219, 153), (96, 30), (900, 1), (17, 5)])
def test_the_length_along_the_curve_is_its_line_integral(span: int, rise: int) -> None:
    """mpmath adds up the curve bit by bit from its height over the span, knowing nothing of angles."""
    answer = arc(span=span, rise=rise)
    squared = mpmath.mpf(answer["radius"].numerator) ** 2 / answer["radius"].denominator ** 2

    def bit(x: mpmath.mpf) -> mpmath.mpf:
        return mpmath.sqrt(1 + mpmath.diff(lambda at: mpmath.sqrt(squared - at * at), x) ** 2)

    assert float(answer["arc_length"]) == pytest.approx(float(2 * mpmath.quad(bit, [0, span / 2])), rel=1e-9)


def test_a_flat_curve_keeps_its_figures() -> None:
    """Over a span of 1 m a radius of 200 m rises 0.6 mm: fifty figures of mpmath agree with ours to eleven."""
    with mpmath.workdps(50):
        rise = 200_000 - mpmath.sqrt(mpmath.mpf(200_000) ** 2 - 500**2)
    assert float(arc(span=1000, radius=200_000)["rise"]) == pytest.approx(float(rise), rel=1e-11)


@given(span=SPANS, share=SHARES)
def test_any_two_sizes_give_the_same_arc(span: int, share: Fraction) -> None:
    """Span, rise and radius, taken two at a time, lead to one arc."""
    first = arc(span=span, rise=float(span * share))
    for pair in (("span", "rise"), ("span", "radius"), ("rise", "radius")):
        texts = {name: float(first[name]) for name in pair}
        if 2 * texts.get("radius", math.inf) < texts.get("span", 0):
            texts["radius"] += 1e-9  # half a circle, its radius rounded down on the way
        again = arc(**texts)
        for name in ("span", "rise", "radius", "arc_length", "half_chord"):
            assert float(again[name]) == pytest.approx(float(first[name]), rel=1e-4), (pair, name)


@given(span=SPANS, share=SHARES, steps=st.integers(2, 12))
def test_two_laths_at_one_angle_reach_every_point(span: int, share: Fraction, steps: int) -> None:
    """From every point marked, the two ends of the span are seen under the angle at which the laths are nailed."""
    answer = arc(span=span, rise=float(span * share), steps=str(steps))
    ends = np.array([[-span / 2, 0], [span / 2, 0]])
    for mark in answer["marks"][:-1]:
        legs = ends - np.array([float(mark["along"]), float(mark["height"])])
        seen = math.degrees(math.acos(legs[0] @ legs[1] / math.prod(np.linalg.norm(legs, axis=1))))
        assert seen == pytest.approx(float(answer["lath_angle"]), abs=1e-5)


def test_points_begin_at_the_crown_and_end_at_the_end() -> None:
    """Equal steps of half the span; a 6-8-10 arc is exact throughout, and the last height is nothing."""
    answer = arc(span="16 in", rise="4 in", steps="2")
    assert answer["radius"] == 254
    assert [mark["along"] for mark in answer["marks"]] == [0, Fraction("101.6"), Fraction("203.2")]
    assert (answer["marks"][0]["height"], answer["marks"][-1]["height"]) == (Fraction("101.6"), 0)


@given(span=SPANS, share=SHARES, sizes=st.lists(st.integers(10, 5000), min_size=1, max_size=6))
def test_the_thing_named_comes_nearest_of_all(span: int, share: Fraction, sizes: list[int]) -> None:
    """Each disc, drawn by shapely with both ends of the span on its edge, stands that high; none comes nearer."""
    rise = float(span * share)
    answer = arc(span=span, rise=rise, things="; ".join(f"disc {size} x {size} mm" for size in sizes))
    heights = {size: _stands(size / 2, span) for size in sizes if size >= span}
    if not heights:
        assert answer["nearest"] is answer["miss"] is None
        return
    best = min(abs(height - rise) for height in heights.values())
    assert abs(float(answer["miss"])) == pytest.approx(best, abs=0.02)
    assert float(answer["miss"]) == pytest.approx(heights[int(answer["nearest"].split()[1])] - rise, abs=0.02)
    assert [row["word"] for row in answer["traced"]].count("too small") == len([one for one in sizes if one < span])


def _stands(radius: float, span: int) -> float:
    """How high the crown of a disc stands over a chord of it as long as the span."""
    disc = Point(0, 0).buffer(radius, quad_segs=2000)
    low, high = 0.0, radius
    for _ in range(60):
        middle = (low + high) / 2
        chord = disc.intersection(LineString([(-2 * radius, middle), (2 * radius, middle)])).length
        low, high = (middle, high) if chord > span else (low, middle)
    return radius - low


def test_a_thing_without_a_name_is_counted() -> None:
    """The list's own order names what the maker has not."""
    assert arc(span="4 in", rise="1 in", things="x 5 in")["nearest"] == "thing 1"


@pytest.mark.parametrize(
    ("sizes", "field"),
    [
        ({"span": "4 in", "rise": "2 1/8 in"}, "rise"),
        ({"rise": "2 in", "radius": "1 in"}, "rise"),
        ({"span": "4 in", "radius": "1 15/16 in"}, "radius"),
        ({"span": "4 in"}, "rise"),
        ({"span": "4 in", "rise": "1 in", "radius": "3 in"}, "radius"),
        ({"span": "4 in", "rise": "1 in", "things": "jar"}, "things"),
    ],
)
def test_what_is_no_arc_is_refused_by_name(sizes: dict[str, str], field: str) -> None:
    """More than half a circle, a circle too small for its span, too few sizes or too many name the field to change."""
    with pytest.raises(Refused) as refused:
        calc.answer("arc", **sizes)
    assert refused.value.refusals[0].field == field


def test_half_a_circle_is_the_roundest_and_is_exact() -> None:
    """Rise half the span: the radius is the rise, the angle 180°, the centre on the span itself."""
    answer = arc(span="6 in", rise="3 in")
    assert (answer["radius"], answer["angle"], answer["centre"]) == (Fraction("76.2"), 180, 0)
    assert float(answer["arc_length"]) == pytest.approx(math.pi * 76.2)


def test_things_that_are_all_too_small_are_said() -> None:
    """A span wider than every disc brings the advice to draw it otherwise; one that is wide enough does not."""
    small, wide = (arc(span="12 in", rise="2 in", things=f"jar x {size} in") for size in (3, 14))
    assert any("None of your round things" in caution.say for caution in small.cautions)
    assert not wide.cautions


def test_a_thing_that_misses_by_nothing_is_true() -> None:
    """By hand: (150² + 20²) / 40 is a radius of 572.5 mm, and two things 1145 mm across have it; 900 is less."""
    rows = arc(span="300 mm", rise="20 mm", things="lid x 1145 mm; tub x 1145 mm; pan x 900 mm")["traced"]
    assert [row["word"] for row in rows] == ["true", "true", "too high"]
