"""Kinds of entry beside length and angle: temperature, percent, mass, force, pressure, what a bottle of glue says."""

from dataclasses import dataclass
from fractions import Fraction
from typing import ClassVar

from calc.bench import Bench
from calc.kinds import Given, Number
from calc.show import Shown, plain
from calc.trig import Number as Real
from calc.typed.glyphs import tidy
from calc.typed.reader import said
from calc.typed.reading import Reading, number
from calc.typed.scales import SCALES

CELSIUS = ("degrees celsius", "degrees c", "celsius", "centigrade", "deg c", "°c", "° c", "c", "degrees", "deg", "°")
FAHRENHEIT = ("degrees fahrenheit", "degrees f", "fahrenheit", "deg f", "°f", "° f", "f")
_SIGNS = str.maketrans({"℃": "°c", "℉": "°f"})


def temperature(text: str) -> Reading:
    """A temperature in degrees Celsius, exactly; a bare number is in degrees Celsius. Raises Refusal.

    >>> temperature("68 °F").value
    Fraction(20, 1)
    """
    typed = tidy(text.translate(_SIGNS)).lower()
    names = sorted((*CELSIUS, *FAHRENHEIT), key=len, reverse=True)
    unit = next((name for name in names if typed.endswith(name)), "")
    value = number(typed.removesuffix(unit)).value
    if unit in FAHRENHEIT:
        celsius = (value - 32) * Fraction(5, 9)
        return Reading(celsius, "degF", f"{said(value, '')} °F, {plain(celsius, 1)} °C")
    return Reading(value, "degC", f"{said(value, '')} °C")


def shown_temperature(celsius: Real) -> Shown:
    """A temperature to a tenth of a degree, Celsius first."""
    return Shown(f"{plain(celsius, 1)} °C", also=f"{plain(celsius * Fraction(9, 5) + 32, 1)} °F")


@dataclass(frozen=True, kw_only=True)
class Temperature(Given):
    """A temperature, 20 °C or 68 °F; `work` is handed degrees Celsius. A bare number is in degrees Celsius."""

    kind: ClassVar[str] = "temperature"
    noun: ClassVar[str] = "a temperature"

    def parse(self, text: str, bench: Bench) -> Reading:
        """The temperature in degrees Celsius."""
        return temperature(text)


@dataclass(frozen=True, kw_only=True)
class Percent(Number):
    """A share in hundredths; `work` is handed 12 for 12 %."""

    kind: ClassVar[str] = "percent"
    unit: str = "%"


@dataclass(frozen=True, kw_only=True)
class Measured(Given):
    """A quantity with its unit behind it; `work` is handed the base unit of its scale in `calc.typed.scales`."""

    def parse(self, text: str, bench: Bench) -> Reading:
        """The quantity in the base unit of its scale."""
        return SCALES[self.kind].read(text)


@dataclass(frozen=True, kw_only=True)
class Mass(Measured):
    """A mass; `work` is handed kilograms."""

    kind: ClassVar[str] = "mass"
    noun: ClassVar[str] = "a mass"


@dataclass(frozen=True, kw_only=True)
class Force(Measured):
    """A force; `work` is handed newtons."""

    kind: ClassVar[str] = "force"
    noun: ClassVar[str] = "a force"


@dataclass(frozen=True, kw_only=True)
class Pressure(Measured):
    """A pressure or a stiffness; `work` is handed megapascals, which are newtons to the square millimetre."""

    kind: ClassVar[str] = "pressure"
    noun: ClassVar[str] = "a pressure"


@dataclass(frozen=True, kw_only=True)
class Density(Measured):
    """Mass to a volume; `work` is handed kilograms to the cubic metre."""

    kind: ClassVar[str] = "density"


@dataclass(frozen=True, kw_only=True)
class Spread(Measured):
    """Mass of glue or finish to an area; `work` is handed grams to the square metre."""

    kind: ClassVar[str] = "spread"


@dataclass(frozen=True, kw_only=True)
class Coverage(Measured):
    """Area that a volume of glue or finish covers; `work` is handed square metres to the litre."""

    kind: ClassVar[str] = "coverage"


@dataclass(frozen=True, kw_only=True)
class Liquid(Measured):
    """A volume as a tin or a bottle states it; `work` is handed cubic millimetres."""

    kind: ClassVar[str] = "liquid"
    noun: ClassVar[str] = "a volume"
