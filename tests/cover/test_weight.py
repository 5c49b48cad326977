"""Weight: one board followed as it dries, and what is said where no figure stands."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc import Refused
from calc.sums import _species, _weight

WOODS = [key for key in _species.names() if _weight.gravity(key, None)]
CUBE = "1 x 100 mm x 100 mm x 100 mm"


@given(wood=st.sampled_from(WOODS), wet=st.integers(0, 40), wetter=st.integers(0, 40))
def test_a_board_that_dries_loses_water_and_no_wood(wood: str, wet: int, wetter: int) -> None:
    """Shrunk along with its moisture (26.5 times the basic gravity in all, equation 4-12), it keeps its dry mass."""
    sizes, masses = {}, {}
    for moisture in (wet, wetter):
        basic = float(calc.answer("weight", species=wood, boards=CUBE, moisture=moisture)["gravity"])
        sizes[moisture] = 1000 * (1 - 0.265 * basic * (1 - min(moisture, 30) / 30))
        board = f"1 x 100 mm x 100 mm x {sizes[moisture]:.9f} mm"
        masses[moisture] = calc.answer("weight", species=wood, boards=board, moisture=moisture)
    assert masses[wet]["dry"] == pytest.approx(masses[wetter]["dry"], rel=1e-9)
    assert masses[wet]["water"] == pytest.approx(masses[wet]["dry"] * wet / 100, rel=1e-9, abs=1e-12)


@given(count=st.integers(1, 50), wood=st.sampled_from(WOODS))
def test_so_many_parts_weigh_so_many_times_one(count: int, wood: str) -> None:
    """However the parts are listed, the whole is the same."""
    one = float(calc.answer("weight", species=wood, boards=CUBE)["mass"])
    boards = f"{count} x 4 in x 100 mm x 100 mm; 1 x 100 mm x 100 mm x 100 mm"
    listed = calc.answer("weight", species=wood, boards=boards)
    assert float(listed["mass"]) == pytest.approx(one * (1 + count * 1.016), rel=1e-12)


def test_a_density_of_ones_own_is_that_density_at_12_percent() -> None:
    """700 kg to the cubic metre at 12 % weighs 700 g a litre, whatever wood is chosen."""
    for wood in ("own", "teak", "white ash"):
        found = calc.answer("weight", species=wood, boards=CUBE, own="700 kg/m³")
        assert found["mass"] == pytest.approx(0.7, rel=1e-12)
    pounds = calc.answer("weight", species="own", boards="1 x 1 ft x 1 ft x 1 ft", own="43.7 lb/ft³")
    assert float(pounds["mass"]) / 0.45359237 == pytest.approx(43.7, rel=1e-12)


@pytest.mark.parametrize("wood", ["teak", "bur oak"])
def test_a_gravity_no_table_has_is_not_made_up(wood: str) -> None:
    """The refusal names the wood and where to type a figure."""
    with pytest.raises(Refused, match="is not in the table") as refused:
        calc.answer("weight", species=wood, boards=CUBE)
    assert refused.value.refusals[0].field == "own"
    assert refused.value.refusals[0].instead == "type its density at 12 percent with its unit, as 700 kg/m³"


def test_more_water_than_the_pores_hold_is_refused() -> None:
    """Live woods vary, but no wood of gravity 0.55 holds 150 %."""
    with pytest.raises(Refused, match="holds 117%") as refused:
        calc.answer("weight", species="white ash", boards=CUBE, moisture="150")
    assert refused.value.refusals[0].field == "moisture"
    assert calc.answer("weight", species="white ash", boards=CUBE, moisture="117")["mass"] > 1


def test_a_load_for_two_is_warned_of() -> None:
    """Above 23 kg the caution about lifting stands beside the number."""
    light, heavy = (
        calc.answer("weight", species="white ash", boards=f"{count} x 1 in x 12 in x 8 ft") for count in (1, 2)
    )
    assert light["mass"] < 23 < heavy["mass"]
    assert len(heavy.cautions) == len(light.cautions) + 1


def test_a_remembered_gravity_is_warned_of() -> None:
    """White oak's is from memory; white ash's was read."""
    texts = [calc.answer("weight", species=wood, boards=CUBE).text for wood in ("white oak", "white ash")]
    assert ["from memory and not from a source" in text for text in texts] == [True, False]
