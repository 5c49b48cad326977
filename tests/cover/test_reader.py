"""Lengths as people write them: every spelling read exactly, whatever could mean two things refused."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from spellings import inches, metric, mixed, numbers
from steps import steps
from strategies import junk, keys

from calc.errors import Refusal
from calc.typed import reader

INCH = Fraction(254, 10)
FIVE = Fraction(43, 8) * INCH
SPELLINGS = {
    "5 3/8": FIVE,
    "5-3/8": FIVE,
    "5-⅜": FIVE,
    "5⅜": FIVE,
    '5 3⁄8"': FIVE,
    "5.375in": FIVE,
    "5' 3 1/2\"": Fraction(127, 2) * INCH,
    "5 ft 3": 63 * INCH,
    "136": 136 * INCH,
    "136mm": Fraction(136),
    "13,6 cm": Fraction(136),
    "1.2 m": Fraction(1200),
    "５ ３／８": FIVE,
    "5′ 3½″": Fraction(127, 2) * INCH,
    "5’ 3½”": Fraction(127, 2) * INCH,
    "5ʹ 3½ʺ": Fraction(127, 2) * INCH,
    "5' 3½''": Fraction(127, 2) * INCH,
    "5'-3 1/2\"": Fraction(127, 2) * INCH,
    "5\u20093/8\u202fin": FIVE,
    "5\u00a03/8": FIVE,
    "−5 3/8": -FIVE,
    "–5 3/8 in": -FIVE,
    "+5 3/8": FIVE,
    ".5 in": INCH / 2,
    "0,125 in": INCH / 8,
    "5/4": 5 * INCH / 4,
    "11/64": 11 * INCH / 64,
    "2 yd 1 ft 3 in": 87 * INCH,
    "1 m 20 cm 5 mm": Fraction(1205),
    "5 FT. 3 IN.": 63 * INCH,
    "1.500 in": INCH * 3 / 2,
}
REFUSED = {
    "1,500": "could mean 1500 or 1.500",
    "12,345 mm": "could mean 12345 or 12.345",
    "1,500,000": "is not a number",
    "1.234,5": "is not a number",
    "53/8": "could mean 6 5/8 or 5 3/8",
    "113/16": "could mean 7 1/16 or 1 13/16 or 11 3/16",
    "5 -3/8": "could mean two things",
    "5 - 3/8": "could mean two things",
    "5' -3\"": "could mean two things",
    "5 3": "could mean two things",
    "5 3 mm": "could mean two things",
    "5 3/8 1/2": "could mean two things",
    "1.5 1/2": "a decimal and a fraction together",
    "5 11/8": "type 6 3/8",
    "5 8/8": "type 6 if",
    "3/0": "divides by nothing",
    "5.5 ft 3 in": "is not one length",
    "3 in 5 ft": "is not one length",
    "5 mm 3 in": "is not one length",
    "1 m 20": "no unit at its end",
    "nan": "“nan” stands where a number should",
    "inf": "“inf” stands where a number should",
    "1e5": "“e” for a unit",
    "5 furlongs": "“furlongs” for a unit",
    "0x10": "“x” for a unit",
    "5 in in": "“in” stands where a number should",
    "--5": "“-” stands where a number should",
    "5 3/8!": "“!” is not understood",
    "5 3/8 in; 4": "“; 4” is not understood",
    "٣": "“٣” is a digit this does not read",
    "5²": "“²” is a digit this does not read",
    "Ⅻ in": "“Ⅻ” is a digit",
    "5.": "is not a number",
    "in": "“in” stands where a number should",
    "-": "“-” is not finished",
    "": "nothing is typed",
    " \t\n": "nothing is typed",
    "1" * 201: "201 characters long",
}


@pytest.mark.parametrize("text", SPELLINGS)
def test_each_spelling_is_read_exactly(text: str) -> None:
    """The spellings of bench and keyboard all come to the same exact length."""
    assert reader.length(text).mm == SPELLINGS[text]


@pytest.mark.parametrize("text", REFUSED)
def test_what_could_mean_two_things_is_refused_with_what_to_type(text: str) -> None:
    """A refusal says what is wrong in the maker's own words, and what to type instead."""
    with pytest.raises(Refusal) as refused:
        reader.length(text)
    assert REFUSED[text] in f"{refused.value.say}; {refused.value.instead}"
    assert refused.value.instead


def test_every_sixty_fourth_to_a_hundred_inches_is_read() -> None:
    """n/64 in, written as a rule is read, for each n to 6400: an inch is 25.4 mm (GNU units, from NIST SP 811)."""
    for n in range(6401):
        assert reader.length(mixed(Fraction(n, 64))).mm == Fraction(n, 64) * Fraction(254, 10)


@given(st.integers(0, 6400).flatmap(lambda n: st.sampled_from(inches(Fraction(n, 64))).map(lambda text: (n, text))))
def test_inches_are_read_in_every_spelling(pair: tuple[int, str]) -> None:
    """Feet, primes, glyphs, hyphens and decimals included; the bench's unit has no say where one is written."""
    n, text = pair
    assert reader.length(text, "mm").mm == Fraction(n, 64) * INCH


@given(st.integers(0, 50000).flatmap(lambda n: st.sampled_from(metric(Fraction(n, 10))).map(lambda text: (n, text))))
def test_metric_lengths_are_read_in_every_spelling(pair: tuple[int, str]) -> None:
    """Millimetres, centimetres and metres, with point or comma."""
    n, text = pair
    assert reader.length(text).mm == Fraction(n, 10)


@given(st.integers(0, 640).flatmap(lambda n: st.sampled_from(numbers(Fraction(n, 64))).map(lambda text: (n, text))))
def test_a_bare_number_takes_the_unit_of_the_bench(pair: tuple[int, str]) -> None:
    """In, ft, mm, cm and m, each exactly (25.4 mm to the inch, 12 in to the foot)."""
    n, text = pair
    for unit, size in {"in": INCH, "ft": 12 * INCH, "mm": 1, "cm": 10, "m": 1000}.items():
        assert reader.length(text, unit).mm == Fraction(n, 64) * size


@given(st.text(keys, max_size=30) | junk)
def test_anything_typed_is_read_or_refused(text: str) -> None:
    """There is a length or a sentence; and what was understood, typed again, is understood the same."""
    try:
        found = reader.length(text)
    except Refusal:
        return
    assert reader.length(found.read).mm == found.mm


@pytest.mark.parametrize(
    "piece", ["9", "1 ", "1/", "1/2 ", "5 3/8 ", "-", "'", "1'", "½", " ", "a", "1.", ",", "1 in "]
)
def test_reading_takes_steps_in_proportion_to_the_length(piece: str) -> None:
    """Twice as long a text takes at most twice as many steps, counted as lines of ours that run, not timed."""
    short, long = (
        steps(lambda count=count: reader.length(piece * count)) for count in (98 // len(piece), 196 // len(piece))
    )
    assert long <= 2 * short + 60
