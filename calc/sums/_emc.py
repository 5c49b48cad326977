"""Equilibrium moisture content by the Wood Handbook's equation in SI units, and the humidity that goes with it.

FPL-GTR-282 (2021), chapter 4, equation 4-5: temperature in degrees Celsius, h relative humidity over 100.
The constants agree with W. T. Simpson, FPL-RN-0268 (1998).
"""

import math
from typing import Any

from calc import show
from calc.declare import Values
from calc.errors import Refusal
from calc.trig import Number

DRIEST, DAMPEST = 5, 95
"""Relative humidity, percent, between which the handbook's table is printed."""


def constants(celsius: Number) -> tuple[float, float, float, float]:
    """W, K, K1 and K2 at a temperature."""
    t = float(celsius)
    return (
        349 + 1.29 * t + 0.0135 * t * t,
        0.805 + 0.000736 * t - 0.00000273 * t * t,
        6.27 - 0.00938 * t - 0.000303 * t * t,
        1.91 + 0.0407 * t - 0.000293 * t * t,
    )


def moisture(celsius: Number, humidity: Number) -> float:
    """Equilibrium moisture content in percent of the ovendry mass, at a relative humidity in percent.

    >>> round(moisture(21, 65), 1)
    12.0
    """
    w, k, k1, k2 = constants(celsius)
    x = k * float(humidity) / 100
    return 1800 / w * (x / (1 - x) + (k1 * x + 2 * k1 * k2 * x * x) / (1 + k1 * x + k1 * k2 * x * x))


def humidity(celsius: Number, wanted: Number) -> float:
    """The relative humidity in percent at which wood comes to a moisture content; Refusal outside the table."""
    low, high = float(DRIEST), float(DAMPEST)
    if not moisture(celsius, low) <= wanted <= moisture(celsius, high):
        raise _outside(celsius, low, high)
    while (middle := (low + high) / 2) not in (low, high):
        low, high = (middle, high) if moisture(celsius, middle) < wanted else (low, middle)
    return high


def _outside(celsius: Number, low: float, high: float) -> Refusal:
    dry, wet = math.ceil(10 * moisture(celsius, low)) / 10, math.floor(10 * moisture(celsius, high)) / 10
    at = f"at {show.plain(celsius, 1)} °C air of {DRIEST} to {DAMPEST}% humidity keeps wood at {dry} to {wet}%"
    return Refusal(at, "type a moisture content between those", "emc")


def work(temperature: Number, humidity: Any, emc: Any) -> Values:
    """The moisture content of a climate, or the humidity of a moisture content, and what the equation is made of."""
    damp = _humidity(temperature, emc) if humidity is None else humidity
    w, k, k1, k2 = constants(temperature)
    return {
        "emc": moisture(temperature, damp) if emc is None else emc,
        "humidity": damp,
        "w": w,
        "k": k,
        "k1": k1,
        "k2": k2,
        "x": k * float(damp) / 100,
        "near": [{"humidity": air, "emc": moisture(temperature, air)} for air in range(30, 91, 10)],
    }


_humidity = humidity
