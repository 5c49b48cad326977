"""How true a number is: slopes against sympy, slips together against the uncertainties library and by chance."""

import math
import random
from fractions import Fraction
from typing import Any

import pytest
import sympy
from building import begun, built
from hypothesis import given
from hypothesis import strategies as st
from toys import REST, TRAY
from uncertainties import ufloat
from uncertainties.umath import atan, hypot

from calc import Bench, Refusal
from calc.building import acts
from calc.building.settle import settle
from calc.discover import find
from calc.probing.how_true import HowTrue, how_true
from calc.probing.probe import of_piece, of_sum

FINE = Bench(unit="mm", mark="1/64")
BOTH = {"rise": "1/64", "run": "1/64"}
RISE, RUN = st.integers(20, 900), st.integers(20, 900)


def slope(rise: Any, run: Any, name: str, bench: Bench = FINE, marks: dict[str, str] | None = None) -> HowTrue:
    """How true an answer of the sum called slope is."""
    return how_true(of_sum(find("slope"), {"rise": f"{rise} mm", "run": f"{run} mm"}, bench, name), marks)


@given(RISE, RUN)
def test_slopes_are_sympys(rise: int, run: int) -> None:
    """Angle, length and percent of a slope, differentiated by sympy."""
    up, along = sympy.symbols("up along")
    answers = {
        "angle": sympy.deg(sympy.atan(up / along)),
        "length": sympy.sqrt(up**2 + along**2),
        "percent": 100 * up / along,
    }
    for name, answer in answers.items():
        found = {slip.name: slip.slope for slip in slope(rise, run, name).slips}
        for given_name, one in (("rise", up), ("run", along)):
            wanted = float(answer.diff(one).subs({up: rise, along: run}))
            assert float(found[given_name]) == pytest.approx(wanted, rel=1e-6, abs=1e-9), (name, given_name)


def test_a_straight_relation_is_exact_to_the_last_fraction() -> None:
    """The percentage is straight in the rise and not in the run."""
    slips = {slip.name: slip for slip in slope(30, 70, "percent", marks=BOTH).slips}
    assert slips["rise"].exact
    assert slips["rise"].slope == Fraction(100, 70)
    assert slips["rise"].by == Fraction(100, 70) * Fraction(254, 640)
    assert not slips["run"].exact


@given(RISE, RUN)
def test_slips_together_are_those_of_the_uncertainties_library(rise: int, run: int) -> None:
    """Root of squares: that library's standard deviation for deviations of a mark; the worst: its parts added up."""
    mark = 25.4 / 64
    up, along = ufloat(rise, mark), ufloat(run, mark)
    for name, wanted in {"angle": atan(up / along) * 180 / math.pi, "length": hypot(up, along)}.items():
        found = slope(rise, run, name, marks=BOTH)
        parts = [abs(slope) * mark for slope in wanted.derivatives.values()]
        assert found.likely == pytest.approx(wanted.std_dev, rel=0.03)
        assert found.worst == pytest.approx(sum(parts), rel=0.03)


def test_slips_together_are_what_chance_makes_of_them() -> None:
    """Twenty thousand misreadings, spread as a bell with a mark for its deviation, spread the answer as much."""
    chance = random.Random(1914)
    mark = 25.4 / 64
    lengths = [math.hypot(chance.gauss(300, mark), chance.gauss(400, mark)) for _ in range(20_000)]
    middle = sum(lengths) / len(lengths)
    spread = math.sqrt(sum((one - middle) ** 2 for one in lengths) / len(lengths))
    assert slope(300, 400, "length", marks=BOTH).likely == pytest.approx(spread, rel=0.02)


def test_one_mark_is_the_rules_own() -> None:
    """Millimetres are read off a rule in millimetres, inches off the bench's, an angle in degrees, unless told."""
    texts = {"rise": "3 in", "angle": "14°"}
    found = {slip.name: slip.mark for slip in how_true(of_sum(find("slope"), texts, Bench(), "run")).slips}
    assert found == {"rise": Fraction(254, 160), "angle": 1}
    assert {slip.mark for slip in slope(30, 70, "angle", Bench()).slips} == {1}
    told = slope(30, 70, "angle", Bench(), {"rise": "half mm", "run": "0.1 mm"})
    assert {slip.name: slip.mark for slip in told.slips} == {"rise": Fraction(1, 2), "run": Fraction(1, 10)}


def test_a_slip_past_the_limit_is_not_counted_on_that_side() -> None:
    """A rise of 1 mm cannot be read as nothing, but it can as 2."""
    (slip,) = [one for one in slope(1, 100, "percent", Bench(mark="mm")).slips if one.name == "rise"]
    assert slip.by == 1


def test_defaults_were_not_read_and_do_not_count() -> None:
    """Only what was typed can have been misread."""
    texts = {"width": "300 mm", "depth": "200 mm"}
    assert [one.name for one in how_true(of_sum(TRAY, texts, FINE, "front_long")).slips] == ["width", "depth"]


def test_an_answer_that_leaps_shows_it() -> None:
    """A count of strips may be one more for a mark."""
    texts = dict(find("sloping-lid-box").example.givens)
    found = how_true(of_sum(find("sloping-lid-box"), texts, Bench(), "board_feet"))
    assert all(slip.by is not None for slip in found.slips)
    assert found.worst > found.likely > 0


def test_of_a_piece_the_cuts_count_too() -> None:
    """The bottom follows the side as cut, and no longer the depth; what has given way has to be read right as well."""
    slips = {one.name: one.by for one in how_true(of_piece(built(TRAY, {"left_deep": "198"}), "bottom_deep")).slips}
    assert slips == {"left_deep": 1, "width": 0, "depth": 0}


def test_of_a_piece_a_mark_is_followed_through_what_gives_way() -> None:
    """A board cut at 230 with 5 mm of overhang left: a mark more of it is a mark more of overhang, by the slope."""
    found = how_true(of_piece(built(REST, {"board_long": "225"}), "overhang"))
    slips = {one.name: one for one in found.slips}
    secant = math.hypot(200, 60) / 200
    assert float(slips["board_long"].by) == pytest.approx(1 / secant, abs=1e-7)


def test_what_has_no_number_is_refused() -> None:
    """A table, a name nobody knows, what is given, what is not decided."""
    record = acts.give(REST, begun(REST), "thickness", "?")
    for name, told in (("parts", "no number called"), ("nothing", "no number called")):
        with pytest.raises(Refusal, match=told):
            of_sum(TRAY, {"width": "300", "depth": "200"}, FINE, name)
    with pytest.raises(Refusal, match="given, not answered"):
        of_sum(find("slope"), {"rise": "3", "run": "4"}, FINE, "rise")
    with pytest.raises(Refusal, match="no number yet"):
        of_piece(settle(REST, record), "bevel")


def test_it_is_said_in_a_sentence() -> None:
    """Finer than the rule shows. By hand: 57.3 x 400/250000 and 57.3 x 300/250000 are 0.092 and 0.069."""
    assert slope(300, 400, "angle", Bench(mark="mm")).say == (
        "A mark of misreading in each: at worst 0.161° out, most likely within 0.115°."
    )
