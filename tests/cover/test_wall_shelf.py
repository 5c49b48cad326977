"""Wall shelf: the example by another road, the beam formula, the order of work, and the drawing."""

import math
from fractions import Fraction

import pytest
from building import METRIC, begun
from drawings import nothing_cut_off, words_apart
from examples import Example

import calc
from calc.bench import Bench
from calc.building.settle import Settled, settle
from calc.errors import Refused

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
    assert tools.index("rip saw, plane") < min(at for at, tool in enumerate(tools) if "hammer" in tool)
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


WEAK = {"inside_width": "2 m", "depth": "250 mm", "stock_width": "300 mm", "stock_thickness": "12 mm", "load": "60 kg"}
"""A 12 mm board of 2 m under 60 kg: by the formula of a beam it would bend more than its own length."""


def weak(**entry: str) -> Settled:
    """That shelf as it stands in the making."""
    return settle(SHELF.piece, begun(SHELF.piece, **SHELF.givens | WEAK | entry))


def test_a_shelf_that_cannot_carry_its_load_says_so_and_what_could() -> None:
    """Refused with the least thickness and the longest span, which are also told while it is being built."""
    with pytest.raises(Refused) as refused:
        SHELF.answer(**WEAK)
    (refusal,) = refused.value.refusals
    found = weak().values
    assert "cannot carry its load" in refusal.say
    assert f"{math.ceil(found['shelf_least'] * 10) / 10} mm thick or more" in refusal.instead
    assert f"{math.floor(found['span_most'] * 10) / 10} mm or less apart" in refusal.instead
    assert found["verdict"].startswith("cannot carry it")
    assert found["allowed"] == Fraction(2000, 384)


def test_what_is_said_to_carry_it_does() -> None:
    """At the least thickness, or the longest span with the load of that length, it sags just as far as allowed."""
    found = weak().values
    thick = SHELF.answer(**WEAK | {"shelf_thickness": f"{found['shelf_least']:.9f} mm"})
    load = f"{60 * found['span_most'] / 2000:.9f} kg"
    short = SHELF.answer(**WEAK | {"inside_width": f"{found['span_most']:.9f} mm", "load": load})
    for one in (thick, short):
        assert float(one["sag_later"]) == pytest.approx(float(one["allowed"]), rel=1e-6)


def test_only_what_may_be_asked_for_is_said_to_carry_it() -> None:
    """No shelf thicker than 60 mm can be entered, nor ends nearer than 120: 250 kg want nearer ends, a ton on 6 mm less
    of it."""
    heavy = str(weak(load="250 kg").refused["sagged"])
    assert "thick or more" not in heavy
    assert "or less apart" in heavy
    assert str(weak(load="1000 kg", stock_thickness="6 mm").refused["sagged"]).endswith("; put less on it.")
