"""Movement: two formulas, two ways of saying how dry the wood is, and what is said when a figure is missing."""

from statistics import mean

import pytest
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc import Refused
from calc.sums import _movement, _species

ASH = {"species": "white ash", "width": "200 mm"}
WOODS = [key for key in _species.names() if _movement.known(key, "flat", None)]
woods = st.sampled_from(WOODS)
wet = st.integers(0, 300).map(lambda tenths: tenths / 10)


def change(**given: object) -> float:
    """The change in width, in millimetres."""
    return float(calc.answer("movement", **given)["change"])


@given(wood=woods, now=wet, then=wet)
def test_drying_there_and_wetting_back_closes(wood: str, now: float, then: float) -> None:
    """By the wide form the board comes back to its width; by the coefficient it misses by the square of the change."""
    there = calc.answer("movement", species=wood, width="1 m", moisture_now=now, moisture_then=then)
    width = f"{float(there['width_then']):.10f} mm"
    back = calc.answer("movement", species=wood, width=width, moisture_now=then, moisture_then=now)
    slack = 1e-7 if there["coefficient"] is None else float(there["change"]) ** 2 / 1000 + 1e-7
    assert float(back["width_then"]) == pytest.approx(1000, abs=slack)


@given(wood=woods, now=st.integers(6, 14), then=st.integers(6, 14))
def test_the_two_forms_agree_where_they_meet(wood: str, now: int, then: int) -> None:
    """Within 6 to 14 % the coefficient is within a twentieth of the straight line from 30 % that it stands for."""
    known = _movement.known(wood, "flat", None)
    assert known
    line = 1000 * (then - now) / (3000 / float(known.shrinkage) - 30 + now)
    assert change(species=wood, width="1 m", moisture_now=now, moisture_then=then) == pytest.approx(
        line, rel=0.05, abs=1e-9
    )


@pytest.mark.parametrize(
    ("now", "then", "narrow"), [(6, 14, True), (14, 6, True), (5.9, 14, False), (6, 14.1, False), (30, 0, False)]
)
def test_it_says_which_form_was_used(now: float, then: float, narrow: bool) -> None:
    """The coefficient from 6 to 14 %, the shrinkage outside, and only the one used is shown."""
    found = calc.answer("movement", **ASH, moisture_now=now, moisture_then=then)
    assert ("coefficient, which holds" in found["form"]) == narrow
    assert (found["coefficient"] is None) == (not narrow)
    assert (found["shrinkage"] is None) == narrow


def test_a_climate_does_as_well_as_a_moisture_content() -> None:
    """Either end as temperature and humidity gives what its moisture content gives."""
    damp = calc.answer("moisture", temperature="18 °C", humidity="70")["emc"]
    told = change(**ASH, moisture_now="8", moisture_then=f"{damp:.12f}")
    assert change(**ASH, moisture_now="8", temperature_then="18 °C", humidity_then="70") == pytest.approx(told)


@pytest.mark.parametrize(
    ("given", "field", "say"),
    [
        ({}, "moisture_now", "nothing says how dry"),
        ({"moisture_now": "8", "humidity_now": "50"}, "moisture_now", "a climate is given as well"),
        ({"temperature_now": "20 °C"}, "humidity_now", "fill in both"),
        ({"humidity_now": "50"}, "temperature_now", "fill in both"),
        ({"moisture_now": "31"}, "moisture_now", "between 0 and 30 %"),
    ],
)
def test_each_end_is_said_once(given: dict[str, str], field: str, say: str) -> None:
    """A moisture content or a whole climate, not both and not half; never above 30 %."""
    with pytest.raises(Refused, match=say) as refused:
        calc.answer("movement", **ASH, moisture_then="10", **given)
    assert refused.value.refusals[0].field == field


def test_swelling_wants_a_gap_and_shrinking_opens_one() -> None:
    """Only one of the two is told."""
    grows, shrinks = (calc.answer("movement", **ASH, moisture_now="8", moisture_then=then) for then in ("12", "6"))
    assert grows["gap"] == grows["change"] > 0
    assert shrinks["opens"] == -shrinks["change"] > 0
    assert grows["opens"] is shrinks["gap"] is None


def test_a_figure_no_table_has_is_not_made_up() -> None:
    """Red alder's shrinkage is in no table of ours: the sum says so, and takes the maker's own."""
    with pytest.raises(Refused, match="Alder, red is not in the table"):
        calc.answer("movement", species="alder", width="200 mm", moisture_now="8", moisture_then="12")
    own = calc.answer("movement", species="alder", width="1 m", moisture_now="30", moisture_then="0", own="7.3")
    assert float(own["change"]) == pytest.approx(-73)
    with pytest.raises(Refused, match="another wood is chosen"):
        calc.answer("movement", species="own", width="200 mm", moisture_now="8", moisture_then="12")


@pytest.mark.parametrize("wood", ["elm, cedar", "black oak", "redwood, old growth"])
def test_where_two_figures_disagree_the_larger_is_taken(wood: str) -> None:
    """The maker leaves the larger gap, and is told of the disagreement."""
    found = calc.answer("movement", species=wood, width="1 m", moisture_now="30", moisture_then="0")
    key = found["species"]
    c, s = _species.figure(key, "c_tangential"), _species.figure(key, "shrink_tangential")
    assert c is not None
    assert s is not None
    assert float(found["shrinkage"]) == pytest.approx(float(max(s.value, _movement.by_coefficient(c.value))))
    assert "disagree about this wood" in found.text


def test_a_remembered_figure_is_warned_of() -> None:
    """Teak stands in no source that was read; white ash does."""
    texts = [
        calc.answer("movement", species=wood, width="1 m", moisture_now="8", moisture_then="9").text
        for wood in ("teak", "white ash")
    ]
    assert ["from memory and not from a source" in text for text in texts] == [True, False]


def test_four_percent_of_moisture_is_about_one_of_size() -> None:
    """The rule of the American Wood Council (S36), over every wood of the table, either cut."""
    moves = [
        calc.answer("movement", species=wood, cut=cut, width="1 m", moisture_now="10", moisture_then="14")["percent"]
        for wood in WOODS
        for cut in ("flat", "quarter")
    ]
    assert mean(map(float, moves)) == pytest.approx(1, abs=0.25)


def test_softwood_dries_as_the_lumber_standard_allows() -> None:
    """Green to 15 %: about 2.8 % of the width (PS 20, quoted in FPL-RP-489), for softwood between its two cuts."""
    soft = [key for key in WOODS if key.startswith(("douglas", "fir", "hemlock", "pine", "larch", "spruce"))]
    lost = [
        -float(calc.answer("movement", species=key, cut=cut, width="1 m", moisture_now=30, moisture_then=15)["percent"])
        for key in soft
        for cut in ("flat", "quarter")
    ]
    assert mean(lost) == pytest.approx(2.8, abs=0.4)
