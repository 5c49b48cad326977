"""What people might type for a temperature, a mass, a force and their like, each spelled with its unit."""

from collections.abc import Callable
from fractions import Fraction

from hypothesis import strategies as st
from hypothesis.strategies import SearchStrategy
from spellings import decimal

from calc.kinds import Given

Within = Callable[[Given, Fraction], SearchStrategy[Fraction]]
MEASURED: dict[str, dict[str, Fraction]] = {
    "temperature": {"°C": Fraction(1), "C": Fraction(1), " deg C": Fraction(1), "℃": Fraction(1), "": Fraction(1)},
    "mass": {" kg": Fraction(1), "kg": Fraction(1), " g": Fraction(1, 1000), " KILOGRAMS": Fraction(1)},
    "force": {" N": Fraction(1), " kN": Fraction(1000), " newtons": Fraction(1)},
    "pressure": {" MPa": Fraction(1), " GPa": Fraction(1000), " N/mm²": Fraction(1), "kPa": Fraction(1, 1000)},
    "density": {" kg/m³": Fraction(1), " kg/m3": Fraction(1), "kg per m³": Fraction(1)},
    "spread": {" g/m²": Fraction(1), " gsm": Fraction(1), " g per m2": Fraction(1)},
    "liquid": {" ml": Fraction(1000), " l": Fraction(10**6), " litres": Fraction(10**6), "ML": Fraction(1000)},
    "coverage": {" m²/l": Fraction(1), " m2/litre": Fraction(1), " m² per litre": Fraction(1)},
}
"""Spellings of each kind's units, and how many of its base unit each is."""


def measured(kind: str, within: Within, given: Given) -> SearchStrategy[tuple[str, Fraction]]:
    """A value in hundredths of the base unit inside the limit, in one of its spellings."""
    units = st.sampled_from(sorted(MEASURED[kind].items()))
    return st.tuples(within(given, Fraction(1, 100)), units).map(lambda pair: spelled(pair[0], *pair[1]))


def spelled(value: Fraction, unit: str, size: Fraction) -> tuple[str, Fraction]:
    """The value in one unit, as text, with the value."""
    sign = "−" if value < 0 else ""
    return f"{sign}{decimal(abs(value) / size)}{unit}", value


def plain(kind: str, value: Fraction) -> str:
    """A value as a decimal with its unit; a temperature in Fahrenheit, so that either end of a table can be typed."""
    if kind == "temperature":
        return f"{float(value * Fraction(9, 5) + 32):.4f} °F"
    unit, size = max(MEASURED[kind].items(), key=lambda one: (one[1] == 1, -len(one[0])))
    return spelled(value, unit, size)[0]
