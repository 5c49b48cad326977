"""Finish: areas by a geometry library, volumes by pint's own registry, tins by opening them one at a time."""

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import box

import calc
from calc import Refused
from calc.discover import find

EXAMPLE = find("finish").example.givens
UNITS = pint.UnitRegistry()


@given(size=st.tuples(*[st.integers(1, 900)] * 3), count=st.integers(1, 9))
def test_all_six_faces_are_those_of_its_net(size: tuple[int, int, int], count: int) -> None:
    """Each face drawn as a rectangle and measured by the library."""
    thick, wide, long = size
    thick = min(thick, 600)
    faces = [box(0, 0, a, b).area for a, b in ((thick, wide), (wide, long), (thick, long)) for _ in range(2)]
    found = calc.answer("finish", boards=f"{count} x {thick} mm x {wide} mm x {long} mm", coverage="10 m²/l")
    assert found["area"] == count * sum(faces)


@pytest.mark.parametrize(("faces", "area"), [("one", 200 * 300), ("both", 2 * 200 * 300)])
def test_one_face_or_both(faces: str, area: int) -> None:
    """The broad faces alone, without edges or ends."""
    assert calc.answer("finish", boards="1 x 16 mm x 200 mm x 300 mm", coverage="10 m²/l", faces=faces)["area"] == area


@pytest.mark.parametrize("spread", ["250 ft²/gal", "14 m²/l", "400 ft²/US gallon"])
def test_volume_by_another_registry(spread: str) -> None:
    """Three coats on a board two feet by one, both faces, by pint: area over spread, times coats, and a tenth."""
    number, unit = spread.split(" ", 1)
    there = {"ft²/gal": "foot**2/gallon", "m²/l": "meter**2/liter", "ft²/US gallon": "foot**2/gallon"}[unit]
    wanted = UNITS.Quantity(4, "foot**2") / UNITS.Quantity(float(number), there) * 3 * 1.1
    found = calc.answer("finish", boards="1 x 1 in x 1 ft x 2 ft", coverage=spread, coats="3", faces="both")
    assert float(found["liquid"]) == pytest.approx(wanted.to("mm**3").magnitude, rel=1e-9)


@given(long=st.integers(100, 9000), tin=st.integers(20, 900), coats=st.integers(1, 6))
def test_tins_are_opened_until_there_is_enough(long: int, tin: int, coats: int) -> None:
    """One tin more at a time until the coats are on."""
    found = calc.answer(
        "finish", boards=f"1 x 16 mm x 200 mm x {long} mm", coverage="8 m²/l", coats=str(coats), tin=f"{tin} ml"
    )
    tins, held = 0, Fraction(0)
    while held < found["liquid"]:
        tins, held = tins + 1, held + tin * 1000
    assert (found["tins"], found["left"]) == (tins, held - found["liquid"])


def test_by_hand() -> None:
    """A square metre at ten square metres to the litre, two coats and a tenth: 220 ml of 250 (worked by hand)."""
    found = calc.answer("finish", boards="1 x 1 mm x 1 m x 1 m", coverage="10 m²/l", faces="one", tin="250 ml")
    assert found["liquid"] == 220_000
    assert (found["tins"], found["left"], found["goes"]) == (1, 30_000, 1)


def test_a_thirsty_first_coat_adds_to_that_coat_only() -> None:
    """Half as much again for the first of two coats makes two and a half."""
    plain, thirsty = (
        calc.answer("finish", boards="1 x 16 mm x 1 m x 1 m", coverage="10 m²/l", first=first) for first in ("0", "50")
    )
    assert thirsty["liquid"] * 4 == plain["liquid"] * 5


def test_nothing_is_made_up_of_tins_and_money() -> None:
    """Without a tin there are no tins; without a price no cost; a price alone is told what it wants."""
    plain = calc.answer("finish", boards="1 x 16 mm x 1 m x 1 m", coverage="10 m²/l")
    assert plain["tins"] is plain["left"] is plain["cost"] is plain["share"] is None
    assert "wants its size" in calc.answer("finish", boards="1 x 1 in x 1 m x 1 m", coverage="10 m²/l", price="5").text


def test_the_cost_is_of_whole_tins_and_the_share_is_of_what_is_used() -> None:
    """Bought by the tin, reckoned into the price by the drop."""
    found = calc.answer("finish", **EXAMPLE)
    assert found["cost"] == found["tins"] * Fraction("11.50")
    assert found["share"] * 6 == Fraction("11.50") * found["liquid"] / 250_000


def test_oily_rags_are_always_spoken_of() -> None:
    """They heat up, and what to do with them: beside every answer."""
    text = calc.answer("finish", **EXAMPLE).text
    assert "catch fire" in text
    assert "Soak such rags in water" in text


def test_the_spread_must_be_given() -> None:
    """No spread is assumed for any tin."""
    with pytest.raises(Refused) as refused:
        calc.answer("finish", boards="1 x 16 mm x 1 m x 1 m")
    assert refused.value.refusals[0].field == "coverage"
