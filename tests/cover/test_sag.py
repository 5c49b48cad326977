"""Sag: against a beam of finite elements, in proportion, at its longest span, and where no figure stands."""

from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc import Refused
from calc.sums import _beams

PARTS = 32
SHELF = {"species": "white ash", "span": "900 mm", "width": "200 mm", "thickness": "18 mm", "load": "12 kg"}
BARE = {**SHELF, "species": "own", "own": "11 GPa"}
cases = pytest.mark.parametrize("case", list(_beams.CASES))


def bent(case: str) -> Any:
    """Deflections at PARTS + 1 nodes of a beam of length, load and stiffness one, by Hermite beam elements (numpy)."""
    load, _, support = case.partition("-")
    long = 1 / PARTS
    stiff, force = np.zeros((2 * PARTS + 2,) * 2), np.zeros(2 * PARTS + 2)
    element = np.array(
        [
            [12, 6 * long, -12, 6 * long],
            [6 * long, 4 * long**2, -6 * long, 2 * long**2],
            [-12, -6 * long, 12, -6 * long],
            [6 * long, 2 * long**2, -6 * long, 4 * long**2],
        ]
    )
    for n in range(PARTS):
        span = slice(2 * n, 2 * n + 4)
        stiff[span, span] += element / long**3
        if load == "uniform":
            force[span] += np.array([long / 2, long**2 / 12, long / 2, -(long**2) / 12])
    places = {"uniform": (), "centre": (0.5,), "quarters": (0.25, 0.75), "end": (1.0,)}[load]
    for place in places:
        force[2 * round(place * PARTS)] += 1 / len(places)
    held = {"simple": [0, 2 * PARTS], "clamped": [0, 1, 2 * PARTS, 2 * PARTS + 1], "cantilever": [0, 1]}[support]
    free = [n for n in range(2 * PARTS + 2) if n not in held]
    found = np.zeros(2 * PARTS + 2)
    found[free] = np.linalg.solve(stiff[np.ix_(free, free)], force[free])
    return found[::2]


@cases
def test_the_coefficient_is_that_of_a_beam_of_finite_elements(case: str) -> None:
    """Table 9-1 against a beam put together of 32 elements, which is exact at its nodes."""
    assert float(_beams.coefficient(case)) == pytest.approx(bent(case).max(), rel=1e-8)


@cases
def test_the_curve_drawn_is_the_curve_it_bends_to(case: str) -> None:
    """The shape in the figure, node by node, and the place where it bends most."""
    nodes = bent(case)
    shape = [_beams.CASES[case].shape(n / PARTS) for n in range(PARTS + 1)]
    assert np.allclose(shape, nodes / nodes.max(), atol=1e-7)
    assert nodes[round(PARTS * _beams.CASES[case].lowest)] == nodes.max()


@cases
def test_the_bending_moments_give_the_same_coefficient(case: str) -> None:
    """The unit-load method of Maxwell and Mohr, by which every answer is proved."""
    assert _beams.by_moments(case) == pytest.approx(float(_beams.coefficient(case)), rel=1e-12)


@pytest.mark.parametrize(("name", "size", "share"), [("width", 600, 1 / 3), ("thickness", 54, 1 / 27)])
def test_a_beam_in_proportion(name: str, size: int, share: float) -> None:
    """Three times as wide sags a third, three times as thick a 27th (S. J. Record, 1914)."""
    sags = [float(calc.answer("sag", **{**BARE, name: text})["sag"]) for text in (BARE[name], f"{size} mm")]
    assert sags[1] / sags[0] == pytest.approx(share)


def test_three_times_the_span_sags_27_times() -> None:
    """S. J. Record (1914), for a beam without weight of its own."""
    sags = [float(calc.answer("sag", **{**BARE, "load": "1 kg", "span": span})["sag"]) for span in ("300 mm", "900 mm")]
    assert sags[1] / sags[0] == pytest.approx(27)


@cases
@given(load=st.integers(1, 30), thick=st.integers(16, 60))
def test_its_longest_span_just_meets_the_limit(case: str, load: int, thick: int) -> None:
    """Asked again at that span, with an even load grown in proportion, the sag in the long run is the limit's."""
    shelf = {**SHELF, "span": "400 mm", "case": case, "load": f"{load} kg", "thickness": f"{thick} mm"}
    most = float(calc.answer("sag", **shelf)["span_most"])
    if not 50.8 <= most <= 5000:
        return
    grown = load * (most / 400 if case.startswith("uniform") else 1)
    again = calc.answer("sag", **{**shelf, "span": f"{most:.9f} mm", "load": f"{grown:.9f} kg"})
    assert float(again["sag_later"]) == pytest.approx(float(again["allowed"]), rel=1e-6)


def test_its_own_weight_counts() -> None:
    """The ash board weighs what the sum called weight says of it at 12 %, and adds to the sag."""
    found, bare = (
        calc.answer("sag", **SHELF),
        calc.answer("sag", **{**SHELF, "species": "own", "own": "11.9968777 GPa"}),
    )
    board = calc.answer("weight", species="white ash", boards="1 x 18 mm x 200 mm x 900 mm")
    assert found["own_mass"] == pytest.approx(board["mass"])
    assert found["sag"] / bare["sag"] == pytest.approx(1 + float(board["mass"]) / 12, rel=1e-6)
    assert bare["own_mass"] is None
    assert "own weight is left out" in bare.text


def test_a_stiffness_no_table_has_is_not_made_up() -> None:
    """Teak's stiffness is in no table of ours; the maker may type one."""
    with pytest.raises(Refused, match="stiffness of Teak is not in the table") as refused:
        calc.answer("sag", **{**SHELF, "species": "teak"})
    assert refused.value.refusals[0].field == "own"
    assert calc.answer("sag", **{**SHELF, "species": "teak", "own": "10.7 GPa"})["sag"] > 0


def test_bent_too_far_is_refused() -> None:
    """Past a tenth of the span no formula of these holds."""
    with pytest.raises(Refused, match="more than a tenth of its span"):
        calc.answer("sag", **{**SHELF, "thickness": "6 mm", "load": "60 kg"})


@pytest.mark.parametrize(
    ("given", "say"),
    [
        ({"load": "60 kg"}, "more than the limit"),
        ({"case": "uniform-clamped"}, "reckon them as resting"),
        ({"case": "end-cantilever", "span": "300 mm", "load": "2 kg"}, "holds the fast end gives way"),
        ({"case": "uniform-cantilever", "span": "300 mm", "load": "2 kg"}, "holds the fast end gives way"),
        ({"span": "200 mm"}, "by shear"),
        ({"species": "white oak"}, "from memory"),
        ({}, "follow local codes and ask someone licensed"),
    ],
)
def test_it_warns_of_what_it_cannot_say(given: dict[str, str], say: str) -> None:
    """Each caution stands where it should."""
    assert say in calc.answer("sag", **{**SHELF, **given}).text
