"""Hang: forces and moments solved again as linear equations, and by hand."""

import numpy as np
import pytest
import sympy
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc import Refused
from calc.discover import find

EXAMPLE = find("hang").example.givens
G = 9.80665


@given(
    mass=st.integers(1, 60),
    out=st.integers(40, 800),
    lever=st.integers(50, 1500),
    top=st.integers(1, 6),
    hand=st.integers(0, 800),
)
def test_the_forces_solve_the_equations_of_rest(mass: int, out: int, lever: int, top: int, hand: int) -> None:
    """Level forces, plumb forces and moments about the front's foot set to nothing, solved by numpy."""
    found = calc.answer(
        "hang", mass=f"{mass} kg", projection=f"{out} mm", lever=f"{lever} mm", top=str(top), pull=f"{hand} N"
    )
    weight, front = mass * G, float(out)
    equations = np.array(
        [
            [top, -1.0, 0.0],  # level: pull of all fixings, push of the foot
            [0.0, 0.0, top],  # plumb: what the fixings hold up
            [top * lever, 0.0, -top * front],  # about the foot of the front: pulls, push (through it), shears
        ]
    )
    rest = np.array([0.0, weight + hand, -weight * (front - front / 2)])
    pull, push, shear = np.linalg.solve(equations, rest)
    assert float(found["pull_each"]) == pytest.approx(pull, rel=1e-9)
    assert float(found["bearing"]) == pytest.approx(push, rel=1e-9)
    assert float(found["shear_each"]) == pytest.approx(shear, rel=1e-9)


def test_pull_by_hand() -> None:
    """Ten kilograms half a metre out on a lever of half a metre pull as they weigh: 98.0665 N."""
    found = calc.answer("hang", mass="10 kg", projection="1 m", centre="500 mm", lever="500 mm", top="2")
    assert float(found["pull_all"]) == pytest.approx(98.0665, abs=1e-12)
    assert float(found["shear_each"]) == pytest.approx(98.0665 / 2, abs=1e-12)
    assert float(found["both_each"]) == pytest.approx(98.0665 / 2**0.5, rel=1e-12)


def test_pull_is_as_symbols_say() -> None:
    """With sympy: the pull that balances weight and hand about the bottom edge, for the example's own figures."""
    pull, weight, hand, out, lever = sympy.symbols("pull weight hand out lever", positive=True)
    (solved,) = sympy.solve(weight * out / 2 + hand * out - 2 * pull * lever, pull)
    there = solved.subs({weight: 4.7 * G, hand: 100, out: 230, lever: 300})
    assert float(calc.answer("hang", **EXAMPLE)["pull_each"]) == pytest.approx(float(there), rel=1e-12)


def test_lower_fixings_share_the_weight_and_not_the_pull() -> None:
    """Two below halve the shear; the pull on the top ones stays; it is told what they bear alone."""
    plain, shared = calc.answer("hang", **EXAMPLE), calc.answer("hang", **EXAMPLE, lower="2")
    assert shared["shear_each"] * 2 == plain["shear_each"] == shared["shear_top"]
    assert shared["pull_each"] == plain["pull_each"]
    assert plain["shear_top"] is None


def test_ratings_are_so_many_times_what_is_borne() -> None:
    """Four times unless the maker says otherwise."""
    found = calc.answer("hang", **EXAMPLE, rating="2.5")
    assert found["pull_rated"] == found["pull_each"] * 5 / 2
    assert calc.answer("hang", **EXAMPLE)["shear_rated"] == 4 * found["shear_each"]


def test_what_bears_down_is_named_as_weight_and_hand_together() -> None:
    """Four kilograms and 100 N on two fixings are 69.6 N each, which is more than the weight alone."""
    found = calc.answer("hang", mass="4 kg", projection="200 mm", lever="300 mm", pull="100 N")
    assert float(found["shear_each"]) == pytest.approx((4 * G + 100) / 2)
    named = {answer.name: answer for answer in find("hang").answers}["shear_each"]
    assert "Weight" not in named.label
    assert "hand" in named.help


def test_it_always_says_to_find_a_stud_and_to_look_for_cables() -> None:
    """The usual cautions stand beside every answer; a load over the lifting equation's brings its own."""
    text = calc.answer("hang", **EXAMPLE).text
    assert "stud" in text
    assert "cables and pipes" in text
    assert "local codes" in text
    assert "NIOSH" not in text
    assert "NIOSH" in calc.answer("hang", **{**EXAMPLE, "mass": "30 kg"}).text


@pytest.mark.parametrize(
    ("more", "field", "say"),
    [
        ({"centre": "400 mm"}, "centre", "further than the thing itself"),
        ({"lower": "2", "lower_height": "300 mm"}, "lower_height", "as high as the top"),
        ({"mass": "0 kg"}, "mass", "too small"),
    ],
)
def test_what_cannot_be_is_refused_by_name(more: dict[str, str], field: str, say: str) -> None:
    """Each refusal names the entry to change."""
    with pytest.raises(Refused, match=say) as refused:
        calc.answer("hang", **{**EXAMPLE, **more})
    assert refused.value.refusals[0].field == field
