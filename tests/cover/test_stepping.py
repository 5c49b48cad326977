"""Steps walked point by point, as dividers walk them, against what stepping says they gather."""

import cmath
import math
from fractions import Fraction
from itertools import pairwise

import pytest
import sympy
from hypothesis import assume, given
from hypothesis import strategies as st

import calc
from calc import Bench, Refused
from calc.bench import MARKS
from calc.rule import step

COUNTS = st.integers(2, 60)
SIZES = st.integers(100, 3000)


def walked(radius: float, chord: float, count: int) -> tuple[float, float]:
    """Points pricked one after another where the circle about the last meets the rim: turn in all, and the last gap.

    Each point comes from the meeting of two circles; no sine or angle of a step is used.
    """
    along = radius - chord * chord / (2 * radius)
    across = math.sqrt(max(0.0, radius * radius - along * along))
    one = complex(along, across) / radius
    spots = [complex(radius)]
    for _ in range(count):
        spots.append(spots[-1] * one)
    turned = sum(abs(cmath.phase(after / before)) for before, after in pairwise(spots))
    return turned, abs(spots[count - 1] - spots[0])


@given(diameter=SIZES, count=COUNTS, mark=st.sampled_from(sorted(MARKS)))
def test_a_walk_round_the_rim_gathers_what_is_told(diameter: int, count: int, mark: str) -> None:
    """Walked at the nearest mark, the end is that far along the rim past the beginning, and the last gap that wide."""
    answer = calc.answer("stepping", diameter=f"{diameter} mm", count=count, mark=mark)
    turned, gap = walked(diameter / 2, float(answer["set_to"]), count)
    assert float(answer["gathered"]) == pytest.approx((turned - 2 * math.pi) * diameter / 2, abs=1e-4)
    assert abs(float(answer["last_gap"])) == pytest.approx(gap, abs=1e-4)


@given(line=SIZES, count=COUNTS, mark=st.sampled_from(sorted(MARKS)))
def test_a_walk_along_a_line_gathers_what_is_told(line: int, count: int, mark: str) -> None:
    """Marks added one by one end that far past the line, exactly; the last gap is what they left of it."""
    answer = calc.answer("stepping", line=f"{line} mm", count=count, mark=mark)
    at = sum([answer["set_to"]] * count, Fraction(0))
    assert answer["gathered"] == at - line
    assert answer["last_gap"] == line - (at - answer["set_to"])
    assert answer["setting"] * count == line


@given(diameter=SIZES, count=COUNTS, mark=st.sampled_from(sorted(MARKS)))
def test_no_mark_comes_nearer(diameter: int, count: int, mark: str) -> None:
    """The setting is on the rule, can be stepped within the circle, and neither of its neighbours is nearer."""
    answer = calc.answer("stepping", diameter=f"{diameter} mm", count=count, mark=mark)
    one, wanted = step(mark), float(answer["setting"])
    assert answer["set_to"] % one == 0
    assert 0 < answer["set_to"] <= diameter
    for other in (answer["set_to"] - one, answer["set_to"] + one):
        if other <= diameter:
            assert abs(other - wanted) >= abs(float(answer["hair"])) - 1e-9


@pytest.mark.parametrize("count", [2, 3, 4, 5, 6, 7, 12, 17, 60, 360])
def test_the_setting_agrees_with_exact_trigonometry(count: int) -> None:
    """The chord is sympy's distance between two points of a unit circle that far apart."""
    turn = 2 * sympy.pi / count
    chord = sympy.Point(1, 0).distance(sympy.Point(sympy.cos(turn), sympy.sin(turn)))
    answer = calc.answer("stepping", radius="1 m", count=count)
    assert float(answer["setting"]) == pytest.approx(1000 * float(sympy.N(chord, 30)), rel=1e-12)


def test_six_steps_are_the_radius_exactly() -> None:
    """A hexagon's side is its radius: nothing is rounded, nothing gathers, and the answer says exact."""
    answer = calc.answer("stepping", radius="3 in", count="6")
    assert answer["setting"] == answer["set_to"] == answer["last_gap"] == Fraction("76.2")
    assert answer["hair"] == answer["gathered"] == 0
    assert not answer.cautions


def test_radius_and_diameter_are_one_circle() -> None:
    """Either is given, the other is answered; a line has neither."""
    one, other = (calc.answer("stepping", count="9", **size) for size in ({"radius": "5 in"}, {"diameter": "10 in"}))
    assert {**one.values, "radius": 0, "diameter": 0} == {**other.values, "radius": 0, "diameter": 0}
    line = calc.answer("stepping", line="10 in", count="9")
    assert line["radius"] is line["turn"] is line["along"] is None


def test_a_step_at_its_widest_stays_inside_the_circle() -> None:
    """Two steps are the diameter: where the nearest mark is beyond it, the mark below is set."""
    answer = calc.answer("stepping", Bench(mark="mm"), diameter="100.6 mm", count="2")
    assert answer["set_to"] == 100
    assert answer["gathered"] < 0


def test_steps_that_run_far_past_have_no_last_gap() -> None:
    """A setting rounded up by half of itself goes more than half round again: only what is gathered is told."""
    answer = calc.answer("stepping", Bench(mark="mm"), diameter="60 mm", count="360")
    assert answer["set_to"] == 1
    assert answer["last_gap"] is None
    assert answer["gathered"] > 60 * math.pi / 2


@given(count=st.integers(2, 360), line=st.integers(1, 400))
def test_a_step_under_half_a_mark_is_refused(count: int, line: int) -> None:
    """Eighths of an inch cannot set a smaller step; the refusal names the number of steps."""
    assume(line / count < 25.4 / 16 - 1e-9)
    with pytest.raises(Refused, match="too short for any mark") as refused:
        calc.answer("stepping", line=f"{line} mm", count=count, mark="1/8")
    assert refused.value.refusals[0].field == "count"


def test_a_step_of_just_half_a_mark_is_set_to_the_first() -> None:
    """By hand: 5 mm in ten steps is half a millimetre each; ten whole ones run 5 mm past the end."""
    answer = calc.answer("stepping", line="5 mm", count="10", mark="mm")
    assert (answer["setting"], answer["set_to"], answer["gathered"]) == (Fraction(1, 2), 1, 5)


def test_what_is_gathered_is_warned_of_when_it_shows() -> None:
    """Seven parts of a metre gather a whole millimetre; eight of them none."""
    assert calc.answer("stepping", line="1 m", count="7", mark="mm").cautions
    assert not calc.answer("stepping", line="1 m", count="8", mark="mm").cautions
