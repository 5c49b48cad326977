"""Masses, forces, pressures and temperatures: read with their units, printed in the maker's own and the other."""

from fractions import Fraction

import pint
import pytest

from calc.bench import Bench
from calc.errors import Refusal
from calc.show import figures
from calc.typed.measures import temperature
from calc.typed.scales import SCALES

METRIC = Bench(unit="mm", mark="mm")
REGISTRY = pint.UnitRegistry()


@pytest.mark.parametrize(
    ("kind", "text", "there"),
    [
        ("mass", "26 lb", "26 pound"),
        ("mass", "7 oz", "7 ounce"),
        ("mass", "350 g", "350 gram"),
        ("force", "300 lbf", "300 force_pound"),
        ("force", "1.5 kN", "1500 newton"),
        ("force", "40 kgf", "40 force_kilogram"),
        ("pressure", "100 psi", "100 psi"),
        ("pressure", "1.74 million psi", "1.74e6 psi"),
        ("pressure", "12 GPa", "12 gigapascal"),
        ("spread", "35 lb/1000 ft²", "0.035 pound/foot**2"),
        ("spread", "160 g/m²", "160 gram/meter**2"),
        ("coverage", "250 ft²/gal", "250 foot**2/gallon"),
        ("coverage", "6 m² per litre", "6 meter**2/liter"),
        ("liquid", "750 ml", "750 milliliter"),
        ("liquid", "1 US quart", "1 quart"),
        ("liquid", "0.5 US gal", "0.5 gallon"),
        ("liquid", "8 US fl oz", "8 fluid_ounce"),
    ],
)
def test_units_agree_with_pints_own_registry(kind: str, text: str, there: str) -> None:
    """Each unit is as many of its base unit as pint's default definitions have it."""
    base = {"mass": "kg", "force": "N", "pressure": "MPa", "spread": "g/m**2", "coverage": "m**2/liter"}.get(
        kind, "mm**3"
    )
    assert float(SCALES[kind].read(text).value) == pytest.approx(REGISTRY.Quantity(there).to(base).magnitude, rel=1e-9)


@pytest.mark.parametrize(
    ("text", "celsius"), [("68 °F", 20), ("-40F", -40), ("32 deg F", 0), ("20", 20), ("20 °C", 20), ("−5℃", -5)]
)
def test_temperatures_are_exact_on_either_scale(text: str, celsius: int) -> None:
    """212 °F is 100 °C: five ninths, exactly."""
    assert temperature(text).value == Fraction(celsius)


@pytest.mark.parametrize("text", ["20", "12.5", "3 stone", "5 mg", "kg", "", "2 lb 3 oz", "nan kg", "1e9 kg"])
def test_a_mass_wants_one_number_and_a_unit(text: str) -> None:
    """Kilograms and pounds are too far apart to guess at."""
    with pytest.raises(Refusal) as refused:
        SCALES["mass"].read(text)
    assert refused.value.instead


def test_a_bench_in_inches_reads_pounds_first() -> None:
    """Both are always there."""
    assert str(SCALES["mass"].shown(Fraction(5), Bench())) == "11 lb (5 kg)"
    assert str(SCALES["mass"].shown(Fraction(5), METRIC)) == "5 kg (11 lb)"
    assert str(SCALES["mass"].shown(Fraction(1, 4), METRIC)) == "250 g (8.82 oz)"


@pytest.mark.parametrize(
    ("value", "text"), [(0.012345, "0.0123"), (1.2345, "1.23"), (123.45, "123"), (12345.6, "12346")]
)
def test_three_figures_are_printed(value: float, text: str) -> None:
    """And none is dropped before the point."""
    assert figures(value) == text


@pytest.mark.parametrize("kind", list(SCALES))
def test_what_is_handed_on_is_read_as_what_it_was(kind: str) -> None:
    """An answer typed into the next sum comes back within a millionth."""
    for value in (Fraction(1, 800), Fraction(3), Fraction(123456, 7)):
        assert float(SCALES[kind].read(SCALES[kind].entry(value)).value) == pytest.approx(float(value), rel=1e-7)
