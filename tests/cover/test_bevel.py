"""The pair of marks that bevel finds, against a search of every pair there is."""

import math
from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import calc
from calc import Bench, Refused, rule
from calc.bench import MARKS
from calc.units import MM_PER_INCH

ANGLES = st.integers(1, 8999).map(lambda hundredths: hundredths / 100)


def brute(angle: float, marks: int) -> float:
    """The least miss of any run and rise from 1 to `marks`, in degrees: every pair is tried."""
    rise, run = np.meshgrid(np.arange(1, marks + 1), np.arange(1, marks + 1))
    return float(np.abs(np.degrees(np.arctan2(rise, run)) - angle).min())


@settings(max_examples=60, deadline=None)
@given(angle=ANGLES, marks=st.integers(1, 120))
def test_no_pair_of_marks_is_nearer(angle: float, marks: int) -> None:
    """Of all runs and rises on the rule none comes nearer than the pair found, at any angle, steep ones too."""
    run, rise = rule.nearest_pair(Fraction(math.tan(math.radians(angle))), marks)
    assert 0 <= run <= marks
    assert 0 <= rise <= marks
    miss = abs(math.degrees(math.atan2(rise, run)) - angle)
    assert miss <= brute(angle, marks) + 1e-9


@given(
    top=st.integers(1, 40), bottom=st.integers(1, 40), marks=st.integers(40, 400), mark=st.sampled_from(sorted(MARKS))
)
def test_a_slope_that_is_on_the_rule_is_set_exactly_and_as_long_as_can_be(
    top: int, bottom: int, marks: int, mark: str
) -> None:
    """A rise and run in whole marks leave nothing over, and no longer pair of the same slope fits the rule."""
    run, rise = rule.nearest_pair(Fraction(top, bottom), marks)
    assert Fraction(rise, run) == Fraction(top, bottom)
    step = math.gcd(run, rise)
    assert max(run, rise) + max(run, rise) // step > marks


def test_steep_and_shallow_swap_their_legs() -> None:
    """The pair for an angle is the pair for its complement turned over."""
    shallow, steep = calc.answer("bevel", angle="14"), calc.answer("bevel", angle="76")
    assert (shallow["set_run"], shallow["set_rise"]) == (steep["set_rise"], steep["set_run"])
    assert shallow["error"] == pytest.approx(-steep["error"], abs=1e-12)


@given(angle=ANGLES.filter(lambda angle: 2 < angle < 88), cut=st.integers(1, 190))
def test_what_is_left_over_is_measured_on_the_marks(angle: float, cut: int) -> None:
    """The pair's own direction, less the one wanted, is the error; a line that long ends that far from the true one."""
    answer = calc.answer("bevel", angle=f"{angle:.2f}", cut=f"{cut} in")
    set_at = math.degrees(math.atan2(answer["set_rise"], answer["set_run"]))
    assert float(answer["error"]) == pytest.approx(set_at - angle, abs=1e-9)
    end = cut * 25.4 * np.array([1, math.tan(math.radians(set_at - angle))])
    assert float(answer["drift"]) == pytest.approx(end[1], abs=1e-9)
    assert float(answer["complement"]) == pytest.approx(math.degrees(math.atan2(1, math.tan(math.radians(angle)))))


def test_an_exact_pair_is_answered_exactly() -> None:
    """Rise and run in whole marks: nothing left over, and the answer says exact."""
    answer = calc.answer("bevel", rise="3 in", run="12 in")
    assert (answer["error"], answer["drift"]) == (Fraction(0), Fraction(0))


def test_lengths_print_on_the_rule_in_hand() -> None:
    """The rule chosen in the sum wins over the bench's, so that what is printed is a mark that rule has."""
    shown = calc.answer("bevel", Bench(mark="1/16"), angle="33", mark="mm").text
    assert "Run to mark: 251 mm (" in shown
    assert "Rise to mark: 163 mm (" in shown


def test_an_empty_mark_is_the_maker_s_own_rule() -> None:
    """Nobody is asked twice which rule they use."""
    answer = calc.answer("bevel", Bench(mark="half mm"), angle="33")
    assert answer["mark"] == "half mm"
    assert answer["set_run"] % Fraction(1, 2) == 0


@pytest.mark.parametrize(
    ("givens", "field"),
    [
        ({}, "angle"),
        ({"angle": "14", "rise": "1 in"}, "angle"),
        ({"angle": "14", "rise": "1 in", "run": "2 in"}, "angle"),
        ({"rise": "1 in"}, "run"),
        ({"run": "1 in"}, "rise"),
        ({"angle": "0.05"}, "longest"),
        ({"angle": "89.95"}, "longest"),
        ({"angle": "90"}, "angle"),
        ({"angle": "0"}, "angle"),
        ({"angle": "14", "longest": "1/2 in"}, "longest"),
    ],
)
def test_what_sets_no_gauge_is_refused_by_name(givens: dict[str, str], field: str) -> None:
    """Neither angle nor slope, both, half a slope, and angles flatter than the rule can show, name their field."""
    with pytest.raises(Refused) as refused:
        calc.answer("bevel", **givens)
    assert refused.value.refusals[0].field == field


def test_a_drift_that_shows_is_warned_of() -> None:
    """Eleven degrees with eighths of an inch on a short leg: the number, and a caution."""
    assert calc.answer("bevel", angle="11", mark="1/8", longest="1 in").cautions
    assert not calc.answer("bevel", rise="1 in", run="7 in").cautions


def test_fourteen_degrees_is_set_on_whole_inches_too() -> None:
    """Three in twelve misses by a thousandth of a degree more than the best of all sixteenths."""
    answer = calc.answer("bevel", angle="14", cut="9 1/2 in")
    assert (answer["coarse_run"] / MM_PER_INCH, answer["coarse_rise"] / MM_PER_INCH) == (12, 3)
    assert float(answer["coarse_error"]) == pytest.approx(math.degrees(math.atan2(3, 12)) - 14)
    assert abs(answer["error"]) < abs(answer["coarse_error"]) < abs(answer["error"]) + 0.002


@given(angle=ANGLES, mark=st.sampled_from(sorted(MARKS)), longest=st.integers(2, 24))
def test_no_coarser_pair_is_nearer_nor_any_coarser_rule_true_enough(angle: float, mark: str, longest: int) -> None:
    """Of all pairs on the marks chosen none comes nearer, and on coarser ones every pair's drift shows."""
    try:
        answer = calc.answer("bevel", angle=str(angle), mark=mark, longest=f"{longest} in", cut="12 in")
    except Refused:
        return
    drifts = {size: shows(angle, int(longest * Fraction("25.4") / size)) for size in rule.coarser(mark)}
    true = [size for size, drift in drifts.items() if drift <= 0.25]
    if answer["coarse_run"] is not None:
        assert answer["coarse_run"] % true[0] == answer["coarse_rise"] % true[0] == 0
        assert abs(answer["coarse_drift"]) == pytest.approx(drifts[true[0]], abs=1e-6)
    elif true:
        assert answer["set_run"] % true[0] == answer["set_rise"] % true[0] == 0


def shows(angle: float, marks: int) -> float:
    """The least drift over a foot of any pair from 1 to `marks`; without end where there is none."""
    return 304.8 * math.tan(math.radians(min(brute(angle, marks), 89))) if marks else math.inf


def test_where_no_coarser_marks_will_do_none_are_told() -> None:
    """Over five metres only the finest marks keep the drift from showing, if any do."""
    answer = calc.answer("bevel", angle="14", cut="5 m")
    assert answer["coarse_run"] is None
    assert "coarser" not in answer.text
