"""Lengths told in every way, against the decimal module, pint's own registry, and the marks of every rule."""

from decimal import ROUND_HALF_EVEN, Decimal
from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc import Bench, Refused
from calc.bench import MARKS
from calc.rule import step
from calc.typed.reader import length

SIZES = st.integers(0, 10**5).map(lambda n: Decimal(n) / 100)
RULES = st.sampled_from(sorted(MARKS))


def converted(text: str, **more: str) -> calc.Result:
    """The answer about one length."""
    return calc.answer("convert", length=text, **more)


@given(size=SIZES, unit=st.sampled_from(["in", "mm", "cm", "ft", "yd", "m"]))
def test_decimals_agree_with_the_units_library(size: Decimal, unit: str) -> None:
    """pint's own registry, not ours, turns the same size into the same inches and millimetres."""
    ours = converted(f"{size} {unit}")
    theirs = pint.get_application_registry().Quantity(float(size), {"in": "inch", "yd": "yard"}.get(unit, unit))
    assert float(ours["decimal_inches"]) == pytest.approx(theirs.to("inch").magnitude, rel=1e-12)
    assert float(ours["millimetres"]) == pytest.approx(theirs.to("mm").magnitude, rel=1e-12)


@given(size=SIZES, mark=RULES)
def test_the_middle_of_the_strip_is_the_nearest_mark(size: Decimal, mark: str) -> None:
    """The decimal module, rounding ties to even, finds the same mark among its neighbours."""
    answer = converted(f"{size} mm", mark=mark, each_side="3")
    one = step(mark)
    marks = (size * one.denominator / one.numerator).quantize(Decimal(1), rounding=ROUND_HALF_EVEN)
    nearest = min(answer["neighbours"], key=lambda row: (abs(row["off"]), row["millimetres"] / one % 2))
    assert nearest["millimetres"] == int(marks) * one
    assert len(answer["neighbours"]) == 4 + min(3, int(marks))


@given(size=SIZES, mark=RULES, each_side=st.integers(0, 64))
def test_neighbours_are_marks_and_say_how_far_off(size: Decimal, mark: str, each_side: int) -> None:
    """Each is read back by the reader as its own size; size and what is beyond make up the length, exactly."""
    answer = converted(f"{size} mm", mark=mark, each_side=str(each_side))
    for row in answer["neighbours"]:
        assert length(row["mark"]).mm == row["millimetres"]
        assert row["millimetres"] % step(mark) == 0
        assert row["millimetres"] + row["off"] == answer["length"]
        assert row["decimal_inches"] * Fraction("25.4") == row["millimetres"]


@given(size=SIZES)
def test_every_rule_has_its_nearest_mark(size: Decimal) -> None:
    """Each rule's mark is within half a step, and is the one told when that rule is chosen."""
    for row, mark in zip(converted(f"{size} mm")["rules"], MARKS, strict=True):
        assert abs(length(row["mark"]).mm - Fraction(size)) <= step(mark) / 2
        assert converted(f"{size} mm", mark=mark, each_side="0")["neighbours"][0]["mark"] == row["mark"]
        assert (row["left"] == "on the mark") == (length(row["mark"]).mm == Fraction(size))


def test_a_table_of_a_whole_inch_can_be_had() -> None:
    """Thirty-two sixty-fourths each side of half an inch: sixty-five marks from nothing to one inch."""
    rows = converted("1/2 in", mark="1/64", each_side="32")["neighbours"]
    assert [row["decimal_inches"] for row in rows] == [Fraction(n, 64) for n in range(65)]
    assert (rows[0]["mark"], rows[21]["mark"], rows[-1]["mark"]) == ("0 in", "21/64 in", "1 in")


def test_it_prints_on_the_rule_chosen() -> None:
    """The rule in hand wins over the bench's; what is left over is never hidden."""
    text = calc.answer("convert", Bench(mark="mm"), length="16 mm", mark="1/32").text
    assert "Mark on your rule: 5/8 in, strong by 0.12 mm (16 mm)" in text


def test_feet_are_told_from_one_foot_on() -> None:
    """Eleven inches are not said in feet; a foot and more is."""
    assert converted("11 15/16 in")["feet_inches"] is None
    assert converted("1 m")["feet_inches"] == "3 ft 3 3/8 in, scant by 0.12 mm"


def test_what_is_exact_is_told_exactly() -> None:
    """Sixteen millimetres are eighty of an inch's hundred and twenty-seven parts."""
    assert converted("16 mm")["exactly"] == "80/127 in, or 16 mm"
    assert converted("1/3 in")["decimal_inches"] == Fraction(1, 3)


def test_less_than_nothing_is_refused() -> None:
    """No rule has a mark below nothing."""
    with pytest.raises(Refused, match="too small"):
        converted("-1 in")
