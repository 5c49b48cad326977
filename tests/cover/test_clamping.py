"""Clamping: force by pint, fans by a geometry library, and a time that never undercuts the bottle."""

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, Polygon, unary_union

import calc
from calc import Refused

JOINT = {"length": "400 mm", "width": "20 mm", "through": "60 mm"}
UNITS = pint.UnitRegistry()


def clamped(**entries: str) -> calc.Result:
    """The joint answered."""
    return calc.answer("clamping", **{**JOINT, **entries})


@given(length=st.integers(10, 2000), through=st.integers(10, 300))
def test_the_pressure_reaches_all_of_the_joint_and_one_fewer_would_not(length: int, through: int) -> None:
    """Fans of 45° from evenly spaced clamps cover the glue line, drawn with a geometry library."""
    found = clamped(length=f"{length} mm", through=f"{through} mm")
    at = [float(row["mark"]) for row in found["marks"]]
    assert covered(length, through, at)
    fewer = found["clamps"] - 1
    assert not covered(length, through, [length * (n + 0.5) / fewer for n in range(fewer)])


def covered(length: int, through: int, at: list[float]) -> bool:
    """True when fans from clamps at these places leave no part of the joint out."""
    fans = unary_union([Polygon([(x, through), (x - through, 0), (x + through, 0)]) for x in at])
    return bool(fans.buffer(1e-6).covers(LineString([(0, 0), (length, 0)])))


@pytest.mark.parametrize(("wood", "psi"), [("light", 100), ("dense", 250)])
def test_force_is_pressure_on_the_area(wood: str, psi: int) -> None:
    """The remembered psi on 10 in by 1 in, by pint's own registry, within the twentieth the two units differ by."""
    found = clamped(length="10 in", width="1 in", wood=wood)
    there = (UNITS.Quantity(psi, "psi") * UNITS.Quantity(10, "inch**2")).to("newton").magnitude
    assert float(found["force"]) == pytest.approx(there, rel=0.05)
    assert float(found["each_force"]) * found["clamps"] == pytest.approx(float(found["force"]))


def test_weak_clamps_are_made_up_for_by_more() -> None:
    """A joint that needs 5600 N takes twelve clamps of 500 N, and none presses more than it can."""
    found = clamped(clamp="500 N")
    assert (found["force"], found["clamps"], found["by_force"]) == (5600, 12, 12)
    assert found["each_force"] <= 500


@pytest.mark.parametrize(
    ("shop", "minutes", "said"),
    [
        ("20 °C", 30, "30 min"),
        ("10 °C", 60, "1 h"),
        ("0 °C", 120, "2 h"),
        ("30 °C", 30, "30 min"),
        ("50 °F", 60, "1 h"),
    ],
)
def test_the_time_doubles_for_ten_degrees_of_cold_and_is_never_cut(shop: str, minutes: int, said: str) -> None:
    """Common practice, no source, and marked so; a warm shop does not shorten what the bottle says."""
    found = clamped(minutes="30", shop=shop)
    assert (found["wait"], found["wait_said"]) == (minutes, said)
    assert "low confidence" in found.text


def test_a_time_between_is_rounded_up_to_five_minutes() -> None:
    """Five degrees colder is √2 as long: 42.4 minutes, said as 45."""
    found = clamped(minutes="30", shop="15 °C")
    assert found["wait"] == pytest.approx(30 * 2**0.5)
    assert found["wait_said"] == "45 min"


def test_without_a_bottle_no_time_is_made_up() -> None:
    """Nor is one given where the bottle says that it is too cold."""
    assert clamped()["wait"] is clamped()["wait_said"] is None
    cold = clamped(minutes="30", shop="4 °C", coldest="10 °C")
    assert cold["wait"] is None
    assert "colder than the glue may be used" in cold.text


def test_one_clamp_alone_has_none_to_be_apart_from() -> None:
    """It stands in the middle, and no spacing is told."""
    found = clamped(length="100 mm")
    assert (found["clamps"], found["spacing"], found["first"]) == (1, None, 50)


def test_a_wide_joint_asks_for_cauls() -> None:
    """Wider than twice the wood over it, one row of clamps does not press it all."""
    assert "more rows" in clamped(width="121 mm").text
    assert "more rows" not in clamped(width="120 mm").text


@pytest.mark.parametrize(
    ("entries", "field"),
    [({"length": "5 m", "through": "10 mm"}, "through"), ({"width": "1 m", "clamp": "50 N"}, "clamp")],
)
def test_what_no_bench_can_clamp_is_refused(entries: dict[str, str], field: str) -> None:
    """Each refusal names the field to change."""
    with pytest.raises(Refused) as refused:
        clamped(**entries)
    assert refused.value.refusals[0].field == field
