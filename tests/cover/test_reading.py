"""Numbers, counts, amounts and angles as people write them."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from spellings import angles, numbers
from strategies import junk

from calc.bench import Bench
from calc.errors import Refusal
from calc.kinds import Money, Number
from calc.typed import reading

ANGLES = {
    "14": 14,
    "14.5°": Fraction(29, 2),
    "14° 30'": Fraction(29, 2),
    "14°30′": Fraction(29, 2),
    "14 30'": Fraction(29, 2),
    "14º 30’ 36”": Fraction(1451, 100),
    "22 1/2": Fraction(45, 2),
    "22½°": Fraction(45, 2),
    "1/2°": Fraction(1, 2),
    "−14,5 deg": -Fraction(29, 2),
    "1 in 1": 45,
    "100%": 45,
    "-1:1": -45,
    "0%": 0,
}
REFUSED_ANGLES = {
    "30'": "type degrees",
    "1430'": "type degrees",
    "14° 60'": "type degrees",
    "14.5 30'": "type degrees",
    "14 30.5' 20\"": "type degrees",
    "14 30": "type degrees",
    "3/12": "could mean degrees or a slope",
    "1 in 0": "not a slope",
    "1 in 7 in": "not a slope",
    "1 in -7": "“-” stands",
    "--25%": "“-” stands",
    "°": "“°” stands",
    "1,500": "could mean 1500 or 1.500",
    "steep": "“steep” stands",
    "": "nothing is typed",
}


@pytest.mark.parametrize("text", ANGLES)
def test_an_angle_is_read_exactly(text: str) -> None:
    """Degrees, minutes, seconds, fractions of a degree, and the slopes whose angle is a whole number."""
    assert reading.angle(text).value == ANGLES[text]


@pytest.mark.parametrize("text", REFUSED_ANGLES)
def test_what_is_no_angle_or_could_be_two_is_refused(text: str) -> None:
    """30' alone is half a degree to one and thirty feet to another; it is never read as 3° 0'."""
    with pytest.raises(Refusal) as refused:
        reading.angle(text)
    assert REFUSED_ANGLES[text] in f"{refused.value.say}; {refused.value.instead}"


@pytest.mark.parametrize(("text", "degrees"), [("1 in 6", 9.46), ("1 to 8", 7.125), ("3:12", 14.036), ("12 in 12", 45)])
def test_a_slope_is_read_as_its_angle(text: str, degrees: float) -> None:
    """Slopes of dovetails and roofs; the published angles are checked with the sum called slope."""
    assert reading.angle(text).value == pytest.approx(degrees, abs=0.005)


@given(
    st.integers(0, 90 * 3600 - 1).flatmap(lambda n: st.sampled_from(angles(Fraction(n, 3600))).map(lambda t: (n, t)))
)
def test_every_second_of_a_right_angle_is_read(pair: tuple[int, str]) -> None:
    """n seconds, in every spelling, for n to 90 degrees."""
    n, text = pair
    assert reading.angle(text).value == Fraction(n, 3600)


@given(st.integers(0, 10**6).flatmap(lambda n: st.sampled_from(numbers(Fraction(n, 64))).map(lambda text: (n, text))))
def test_every_number_is_read_in_every_spelling(pair: tuple[int, str]) -> None:
    """n/64 for any n, with fractions, glyphs, points and commas."""
    n, text = pair
    assert reading.number(text).value == Fraction(n, 64)


@pytest.mark.parametrize("text", ["10%", "10 %", "10", "１０％", "20/2 %"])
def test_a_number_may_carry_its_own_unit(text: str) -> None:
    """A percentage typed with its sign is that percentage."""
    assert Number(name="waste", label="Waste", help="How much.", unit="%").read(text, Bench()).value == 10


@pytest.mark.parametrize("text", ["£3.20", "3.20", "3.2 £", "$ 3.20", "kr 3,2", "3 1/5"])
def test_an_amount_may_carry_its_sign(text: str) -> None:
    """A currency sign or the maker's own label, before or behind."""
    found = Money(name="price", label="Price", help="What it costs.").read(text, Bench(currency="kr"))
    assert (found.value, found.read) == (Fraction(16, 5), "3.20")


@pytest.mark.parametrize(
    ("text", "say"), [("2.5", "type 2 or another"), ("1,000", "could mean"), ("two", "stands"), ("", "nothing")]
)
def test_a_count_is_a_whole_number(text: str, say: str) -> None:
    """Half a tail is refused, and the nearest whole number named."""
    with pytest.raises(Refusal) as refused:
        reading.count(text)
    assert say in f"{refused.value.say}; {refused.value.instead}"


@given(junk)
def test_anything_typed_is_read_or_refused(text: str) -> None:
    """Numbers and angles answer or refuse, and what was understood of a number is understood again."""
    for read in (reading.number, reading.angle, reading.money, reading.count):
        try:
            found = read(text)
        except Refusal:
            continue
        assert read is reading.angle or read(found.read).value == found.value
