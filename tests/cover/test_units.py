"""Our few definitions against the whole registry that pint brings, itself with Fractions: exact, each of them."""

from collections.abc import Iterator
from fractions import Fraction
from functools import cache
from importlib import resources
from typing import Any

import pint
import pytest

from calc import units
from calc.typed import reader

LINES = resources.files("calc").joinpath("units.txt").read_text("utf-8").splitlines()
DEFINED = {line.partition("=")[0].strip(): line for line in LINES if line and not line.startswith("#")}


@cache
def whole_registry() -> Any:
    """pint's own default registry, holding Fractions; the names that are ours alone stand on its units."""
    theirs: Any = pint.UnitRegistry(non_int_type=Fraction, cache_folder=None)
    for name, line in DEFINED.items():
        if name not in theirs:
            theirs.define(line)
    return theirs


def pairs() -> Iterator[tuple[str, str]]:
    """Every two of our units that measure one thing."""
    theirs = whole_registry()
    straight = [name for name in DEFINED if theirs.Unit(name).dimensionality]
    for one in straight:
        yield from ((one, two) for two in straight if theirs.Unit(one).is_compatible_with(theirs.Unit(two)))


@pytest.mark.parametrize(("one", "two"), list(pairs()))
def test_a_factor_is_exactly_that_of_the_whole_registry(one: str, two: str) -> None:
    """Lengths, areas, volumes and masses: GNU units and NIST SP 811 by way of pint's default definitions."""
    theirs = whole_registry().Quantity(Fraction(1), one).to(two).magnitude
    assert units.factor(one, two) == theirs


def test_the_parts_of_a_degree() -> None:
    """Sixty minutes to the degree, sixty seconds to the minute (GNU units; pint goes by way of a float pi)."""
    assert units.factor("degree", "arcminute") == 60
    assert units.factor("arcminute", "arcsecond") == 60


def test_the_constant_is_the_definition() -> None:
    """25.4 mm to the inch, once in the text and once as a number."""
    assert units.factor("inch", "mm") == units.MM_PER_INCH == Fraction(254, 10)


def test_a_board_foot_in_cubic_centimetres_as_published() -> None:
    """2359.737216 cm³ (GNU units database v3.22: ft² × inch = 144 in³)."""
    assert units.factor("board_foot", "cm ** 3") == Fraction("2359.737216")


@pytest.mark.parametrize("name", [name for names in reader.NAMES.values() for name in names if name.isalpha()])
def test_a_name_the_reader_knows_is_the_unit_of_that_name(name: str) -> None:
    """in, inches, foot, yards, millimetre and so on, as pint's own registry reads them."""
    theirs = whole_registry().Quantity(Fraction(1), {"ins": "in", "yds": "yd"}.get(name, name)).to("mm").magnitude
    assert reader.length(f"1 {name}").mm == theirs


def test_what_does_not_measure_one_thing_is_never_converted() -> None:
    """Millimetres are no grams."""
    with pytest.raises(pint.DimensionalityError):
        units.factor("mm", "gram")
