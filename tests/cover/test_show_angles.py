"""Angles and the small figures, printed."""

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc import show
from calc.bench import Bench
from calc.cells import printed
from calc.declare import Answer
from calc.errors import Refusal
from calc.typed import reading

turns = st.fractions(-360, 360, max_denominator=10**5) | st.floats(-360, 360)


@given(turns)
def test_minutes_are_never_sixty(degrees: Fraction | float) -> None:
    """Whole minutes from 0 to 59, the degrees carried, and off by half a minute at most."""
    text = show.minutes(degrees)
    minutes = re.fullmatch(r"−?\d+° (\d+)′", text)
    assert minutes
    assert int(minutes[1]) < 60
    assert abs(Fraction(reading.angle(text).value) - Fraction(degrees)) <= Fraction(1, 120)


@pytest.mark.parametrize("whole", range(0, 91, 5))
def test_just_under_a_whole_degree_carries(whole: int) -> None:
    """A hair less than a degree is that degree and no minutes."""
    assert show.minutes(whole - 1e-9) == f"{whole}° 0′"


@given(turns)
def test_tenths_of_a_degree_are_off_by_half_a_tenth_at_most(degrees: Fraction | float) -> None:
    """To the nearest tenth, with its degree sign."""
    assert abs(Fraction(reading.angle(show.angle(degrees, Bench()).text).value) - Fraction(degrees)) <= Fraction(1, 20)


@given(turns)
def test_both_ways_of_printing_an_angle_agree(degrees: Fraction | float) -> None:
    """Tenths beside minutes, or minutes beside hundredths: each is the same angle to the digits it shows."""
    tenths, minutes = show.angle(degrees, Bench()), show.angle(degrees, Bench(angles="minutes"))
    assert tenths.also in ("", minutes.text)
    assert abs(Fraction(reading.angle(minutes.also).value) - Fraction(degrees)) <= Fraction(1, 200)


def test_an_angle_that_a_tenth_says_in_full_is_said_once() -> None:
    """22.5° needs no minutes beside it; 22.55° does."""
    assert show.angle(Fraction(45, 2), Bench()).also == ""
    assert show.angle(Fraction(2255, 100), Bench()).also == "22° 33′"


@pytest.mark.parametrize(
    ("kind", "value", "text"),
    [
        ("percent", Fraction(25, 2), "12.5%"),
        ("number", Fraction(1, 3), "0.33"),
        ("count", 12, "12"),
        ("count", -1, "−1"),
        ("board-feet", 1, "1 board foot"),
        ("board-feet", Fraction(3, 2), "1.5 board feet"),
        ("volume", 5_600_000, "0.0056 m³ (5.6 litres)"),
        ("volume", 1_497_600, "0.001498 m³ (1.498 litres)"),
        ("volume", 6000, "0.000006 m³ (6 cm³)"),
        ("volume", 123_456_789_012, "123.5 m³ (123457 litres)"),
        ("percent", Fraction(17, 10**4), "0.0017%"),
        ("number", Fraction(-17, 10**5), "−0.00017"),
        ("number", 0, "0"),
        ("number", 1e-14, "0"),
        ("money", Fraction(19, 2), "£ 9.50"),
        ("text", "6d common nail", "6d common nail"),
    ],
)
def test_each_kind_of_answer_prints_in_its_own_way(kind: str, value: object, text: str) -> None:
    """One printer for every kind; the maker's own label before money; nothing that is not nothing prints as 0."""
    assert str(printed(Answer(name="x", label="X", kind=kind), value, Bench(currency="£"))) == text


@pytest.mark.parametrize(
    ("texts", "said"),
    [
        ({"angle": "89.99", "run": "20 m"}, "Slope as 1 in: 0.00017\n"),
        ({"angle": "0.001", "rise": "1 in"}, "Slope in percent: 0.0017%\n"),
    ],
)
def test_a_slope_is_never_told_as_nothing(texts: dict[str, str], said: str) -> None:
    """By hand: the tangent of 0.01° is 0.00017453, and that of 0.001° a tenth of it; in the working no angle is 0°."""
    answer = calc.answer("slope", **texts)
    assert said in answer.text
    assert not any("(0°)" in line.numbers for line in answer.working)


@pytest.mark.parametrize(
    ("setting", "say"),
    [({"unit": "furlong"}, "Unit: “furlong”"), ({"mark": "1/5"}, "Mark: “1/5”"), ({"currency": "x" * 9}, "Currency: ")],
)
def test_a_bench_refuses_what_it_does_not_know(setting: dict[str, str], say: str) -> None:
    """A setting that is none of those known is refused with those that are."""
    with pytest.raises(Refusal) as refused:
        Bench(**setting)
    assert str(refused.value).startswith(say)
    assert refused.value.instead
