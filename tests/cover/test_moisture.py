"""Moisture: the equation against a second set of constants, forwards and back, and where the table ends."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

import calc
from calc import Refused

CLIMATES = st.tuples(st.integers(30, 200), st.integers(5, 95))


def emc(fahrenheit: int, humidity: object) -> float:
    """What the sum answers."""
    return float(calc.answer("moisture", temperature=f"{fahrenheit} °F", humidity=humidity)["emc"])


@given(climate=CLIMATES)
def test_it_agrees_with_the_constants_in_fahrenheit(climate: tuple[int, int]) -> None:
    """The handbook's inch-pound constants (from memory) give the same to 0.1 % over the whole range."""
    t, h = climate[0], climate[1] / 100
    w, k = 330 + 0.452 * t + 0.00415 * t**2, 0.791 + 0.000463 * t - 0.000000844 * t**2
    k1, k2 = 6.34 + 0.000775 * t - 0.0000935 * t**2, 1.09 + 0.0284 * t - 0.0000904 * t**2
    kh = k * h
    there = 1800 / w * (kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh**2) / (1 + k1 * kh + k1 * k2 * kh**2))
    assert emc(*climate) == pytest.approx(there, abs=0.1)


@given(climate=st.tuples(st.integers(30, 200), st.integers(6, 94)))
def test_a_moisture_content_leads_back_to_its_humidity(climate: tuple[int, int]) -> None:
    """Asked with the moisture content of a climate, the sum finds the humidity it came from."""
    wet = emc(*climate)
    back = calc.answer("moisture", temperature=f"{climate[0]} °F", emc=f"{wet:.12f}")
    assert back["humidity"] == pytest.approx(climate[1], abs=1e-8)


@given(fahrenheit=st.integers(30, 200), humidity=st.integers(5, 94))
def test_damper_air_never_makes_drier_wood(fahrenheit: int, humidity: int) -> None:
    """The curve rises all the way."""
    assert emc(fahrenheit, humidity) < emc(fahrenheit, humidity + 1)


def test_either_scale_of_temperature_means_the_same() -> None:
    """68 °F is 20 °C exactly, and a bare number is in degrees Celsius."""
    told = {calc.answer("moisture", temperature=text, humidity=50)["emc"] for text in ("68 °F", "20 C", "20")}
    assert len(told) == 1
    assert calc.answer("moisture", temperature="68 F", humidity=50)["temperature"] == Fraction(20)


@pytest.mark.parametrize("wet", ["1", "26"])
def test_a_moisture_no_air_of_the_table_keeps_is_refused_with_the_range(wet: str) -> None:
    """At 20 °C the table's air keeps wood between 1.4 and 23.9 %: the refusal says so."""
    with pytest.raises(Refused, match=r"5 to 95% humidity keeps wood at 1\.4 to 23\.9%") as refused:
        calc.answer("moisture", temperature="20 °C", emc=wet)
    assert refused.value.refusals[0].field == "emc"


@pytest.mark.parametrize(("name", "text"), [("temperature", "29 °F"), ("temperature", "201 °F"), ("humidity", "96")])
def test_outside_the_table_there_is_no_number(name: str, text: str) -> None:
    """The handbook's own range, with its reason."""
    with pytest.raises(Refused, match="the handbook's table does not go there"):
        calc.answer("moisture", **{"temperature": "20 °C", "humidity": "50", name: text})


def test_damp_wood_is_warned_of() -> None:
    """Above 20 % the caution about mould stands beside the number; at 12 % it does not."""
    damp, dry = (calc.answer("moisture", temperature="15 °C", emc=wet).cautions for wet in ("21", "12"))
    assert len(damp) == len(dry) + 1
