"""Glue-up: strips counted by sawing them, clamps by the wood they reach, glue by pint."""

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, Polygon
from shapely.ops import unary_union

import calc
from calc import Refused

PANEL = {"panel_width": "300 mm", "panel_length": "700 mm", "thickness": "18 mm", "strip_width": "90 mm"}
UNITS = pint.UnitRegistry()


def glued(**given: object) -> calc.Result:
    """The panel answered."""
    return calc.answer("glue-up", **{**PANEL, **given})


@given(panel=st.integers(30, 900), stock=st.integers(25, 300), lost=st.integers(0, 12), trim=st.integers(0, 20))
def test_strips_are_added_until_the_width_is_made(panel: int, stock: int, lost: int, trim: int) -> None:
    """One board, then one more at a time, each joint costing what trueing takes."""
    made, count = stock, 1
    while made < panel + trim:
        made, count = made + stock - lost, count + 1
    found = glued(panel_width=f"{panel} mm", strip_width=f"{stock} mm", lost=f"{lost} mm", trim=f"{trim} mm")
    assert found["strips"] == count
    assert found["spare"] == made - panel - trim
    assert (count - 2) * found["each"] + 2 * (found["outer"] or found["each"]) == panel + trim


@given(panel=st.integers(30, 900), stock=st.integers(25, 300), lost=st.integers(0, 12), trim=st.integers(0, 20))
def test_every_strip_can_be_cut_from_the_stock(panel: int, stock: int, lost: int, trim: int) -> None:
    """Half the loss comes off each edge that meets another: one edge of an outer strip, both of one between."""
    found = glued(panel_width=f"{panel} mm", strip_width=f"{stock} mm", lost=f"{lost} mm", trim=f"{trim} mm")
    if found["joints"]:
        assert found["outer"] + Fraction(lost, 2) <= stock
    if found["joints"] > 1:
        assert found["each"] + lost <= stock
        assert found["each"] <= found["outer"]


def test_strips_that_cannot_be_all_alike_are_told_apart() -> None:
    """11 1/2 in and 1/4 in to trim of 4 in stock: the strip between two joints is 3 7/8 in, the outer 3 15/16 in."""
    found = glued(panel_width="11.5 in", strip_width="4 in")
    assert found["strips"] == 3
    assert (found["each"] / 25.4, found["outer"] / 25.4) == pytest.approx((3.875, 3.9375), rel=1e-12)


def test_stock_as_wide_as_the_panel_is_not_sawn_for_the_spare_in_silence() -> None:
    """A board of 4 in for a panel of 4 in: less spare to trim makes it one board, and that is said."""
    assert "asks for a joint" in glued(panel_width="4 in", strip_width="4 in").text
    assert "asks for a joint" not in glued().text
    assert glued(panel_width="4 in", strip_width="4 in", trim="0")["joints"] == 0


@given(length=st.integers(60, 3000), stock=st.integers(40, 200), caul=st.integers(0, 60))
def test_the_pressure_of_the_clamps_reaches_all_of_the_first_joint(length: int, stock: int, caul: int) -> None:
    """Drawn with a geometry library: fans of 45° from each clamp, through caul and strip, cover the joint."""
    found = glued(panel_length=f"{length} mm", strip_width=f"{stock} mm", caul=f"{caul} mm")
    deep = float(found["outer"] or found["each"]) + caul
    at = [float(row["mark"]) for row in found["marks"]]
    fans = unary_union([Polygon([(x, deep), (x - deep, 0), (x + deep, 0)]) for x in at]).buffer(1e-6)
    assert fans.covers(LineString([(0, 0), (length, 0)]))
    assert found["clamps"] == len(at) >= 2


def test_no_fewer_clamps_would_reach() -> None:
    """With one clamp fewer, evenly spaced, the fans would leave gaps; two there are in any case."""
    found = glued()
    assert found["clamps"] > 2
    assert found["panel_length"] / (found["clamps"] - 1) > found["apart"]


def test_marks_run_from_one_end_without_adding_up_rounding() -> None:
    """The last mark is as far from its end as the first, exactly, and bars lie below and above in turn."""
    found = glued(panel_length="701 mm", strip_width="60 mm")
    marks = [row["mark"] for row in found["marks"]]
    assert marks[0] + marks[-1] == 701
    assert all(isinstance(mark, Fraction) for mark in marks)
    assert [row["side"] for row in found["marks"]][:3] == ["below", "above", "below"]


def test_force_is_pressure_times_the_area_of_a_joint() -> None:
    """150 psi on 28 in by 3/4 in, by pint's own registry; weak clamps are made up for by more of them."""
    found = glued(panel_length="28 in", thickness="3/4 in", own="150 psi")
    there = (UNITS.Quantity(150, "psi") * UNITS.Quantity(28, "inch") * UNITS.Quantity(0.75, "inch")).to("newton")
    assert float(found["force"]) == pytest.approx(there.magnitude, rel=1e-9)
    weak = glued(panel_length="28 in", thickness="3/4 in", own="150 psi", clamp="300 lbf")
    assert weak["clamps"] == weak["by_force"] == 11
    assert weak["each_force"] <= UNITS.Quantity(300, "force_pound").to("newton").magnitude


@pytest.mark.parametrize(("sides", "faces"), [("one", 1), ("both", 2)])
def test_glue_is_what_the_bottle_says_for_the_area(sides: str, faces: int) -> None:
    """Three joints of 700 by 18 mm at 160 g/m², and at 6 m² to the litre."""
    found = glued(spread="160 g/m²", coverage="6 m²/l", sides=sides)
    area = faces * 3 * 0.7 * 0.018
    assert found["joints"] == 3
    assert float(found["mass"]) == pytest.approx(0.16 * area, rel=1e-12)
    assert float(found["liquid"]) == pytest.approx(area / 6 * 1e6, rel=1e-12)


def test_without_a_bottle_no_glue_is_made_up() -> None:
    """Nothing is assumed of what glue covers."""
    assert glued()["mass"] is glued()["liquid"] is None


def test_one_wide_board_needs_no_glue() -> None:
    """No joint, no clamp, no force; and it says so."""
    found = glued(panel_width="80 mm", trim="6 mm", spread="160 g/m²")
    assert (found["strips"], found["joints"], found["area"]) == (1, 0, 0)
    assert found["clamps"] is found["force"] is found["mass"] is found["marks"] is None
    assert "nothing to glue" in found.text


def test_one_wide_board_is_told_nothing_of_bars_and_glue() -> None:
    """Neither bars, nor the glue maker, nor faces to spread; and no clamp is too weak for it."""
    found = glued(panel_width="80 mm", panel_length="5 m", trim="0", wood="dense", clamp="50 N")
    assert found["faces"] is None
    assert len(found.cautions) == 1


@pytest.mark.parametrize(
    ("given", "field", "say"),
    [
        ({"strip_width": "20 mm", "lost": "20 mm"}, "strip_width", "nothing is left of a strip"),
        ({"panel_length": "5 m", "thickness": "4 in", "wood": "dense", "clamp": "100 N"}, "clamp", "takes 8636 clamps"),
        (
            {"panel_width": "60 mm", "panel_length": "5 m", "strip_width": "3/4 in", "lost": "10 mm"},
            "strip_width",
            "clamps",
        ),
    ],
)
def test_what_no_bench_can_glue_is_refused(given: dict[str, str], field: str, say: str) -> None:
    """Each refusal names the field to change."""
    with pytest.raises(Refused, match=say) as refused:
        glued(**given)
    assert refused.value.refusals[0].field == field
