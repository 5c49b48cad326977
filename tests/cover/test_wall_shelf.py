"""Wall shelf: the example by another road, the beam formula, the order of work, and the drawing."""

import math
from fractions import Fraction

import pytest
from building import METRIC
from drawings import nothing_cut_off, words_apart
from examples import Example

import calc
from calc.bench import Bench

SHELF = Example("wall-shelf")


def test_the_example_by_hand() -> None:
    """19 mm ash, 600 between the ends, 180 deep.

    By hand: housings 19/3 deep, so the shelf is 600 + 38/3; ends 120 + 19 + 60; outside 600 + 38. The lower curve is a
    whole quarter of the saucer; above, 60 - 6 of its edge have room, and √(60² - 54²) = √684 of depth is left to it.
    Screws: 600 - 80 is 520, parted in two.
    """
    result = SHELF.answer()
    assert result["shelf_long"] == 600 + Fraction(38, 3)
    assert [result[name] for name in ("end_high", "outside", "foot_deep", "screws", "screw_gap")] == [
        199, 638, 120, 3, 260,
    ]  # fmt: skip
    assert result["top_deep"] == pytest.approx(120 + math.sqrt(684))


def test_it_sags_as_the_formula_of_a_beam_says() -> None:
    """5 w L⁴ / (384 E I), Wood Handbook table 9-1 and any book of beams, by other numbers than the sum's own.

    White ash, 1.74 million psi (source S08), a psi being 6894.757 Pa; 18 kg and the board's own 600 · 180 · 19 mm at
    its answered density, spread over 600 mm; I = b h³/12. Twice that in the long run.
    """
    result = SHELF.answer()
    own = 600 * 180 * 19 / 1e9 * float(result["density"])
    spread = (18 + own) * 9.80665 / 600
    sag = 5 * spread * 600**4 / (384 * 1.74 * 6894.757 * 180 * 19**3 / 12)
    assert result["sag_later"] == pytest.approx(2 * sag, rel=1e-6)
    assert result["allowed"] == Fraction(600, 384)


def test_too_much_sag_is_warned_of_with_what_would_do() -> None:
    """A span of 1 m of the same board is answered, with a caution the example does not have."""
    long = SHELF.answer(inside_width="1 m")
    assert long["span_most"] < 1000
    assert long["shelf_least"] > 19
    assert any("sags more than the limit" in one.say for one in long.cautions)
    assert not any("sags more" in one.say for one in SHELF.answer().cautions)


def test_across_the_grain_comes_before_along_it_and_no_glue_crosses_it() -> None:
    """Crosscuts and housings stand before planes, nails after; only the shelf on its rail is glued."""
    result = SHELF.answer()
    tools = [row["tool"] for row in result["order"]]
    assert max(tools.index("crosscut saw"), tools.index("tenon saw, chisel")) < tools.index("rip saw, plane")
    assert tools.index("rip saw, plane") < tools.index("hammer, punch")
    assert [row["joint"] for row in result["joints"] if row["glue"].startswith("yes")] == ["Shelf to rail"]


BENCHES = {"inch": Bench(), "mm": METRIC, "fine": Bench(mark="1/64")}
SHAPES: dict[str, dict[str, str]] = {
    "example": {},
    "long": {"inside_width": "40 in", "depth": "6 in", "stock_thickness": "1 in", "radius": "8 in", "drop": "6 in"},
    "narrow": {"inside_width": "150 mm", "depth": "400 mm", "rise": "20 mm"},
}


@pytest.mark.parametrize("bench", BENCHES.values(), ids=list(BENCHES))
@pytest.mark.parametrize("changed", SHAPES.values(), ids=list(SHAPES))
def test_the_drawing_can_be_read(changed: dict[str, str], bench: Bench) -> None:
    """No word over another, nothing cut off, and each size that can be touched is asked or answered."""
    drawn = calc.answer("wall-shelf", bench, **SHELF.givens | changed).to_dict()["figure"]
    words_apart(drawn)
    nothing_cut_off(drawn)


def test_a_nail_whose_thickness_no_table_has_is_to_be_measured() -> None:
    """An 18 mm shelf takes a 7d nail, which no table here prints: its hole is blank, and a caution says so."""
    result = SHELF.answer(stock_thickness="18 mm")
    assert any(row["length"] and row["hole"] is None for row in result["joints"])
    assert any("No table has the thickness" in one.say for one in result.cautions)
    thin = SHELF.answer(stock_thickness="12 mm", inside_width="300 mm")
    assert not any("No table has the thickness" in one.say for one in thin.cautions)
