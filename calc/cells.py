"""One answer of any kind: as it prints, as machines read it, as it would be typed into the next sum."""

from fractions import Fraction
from typing import Any

from calc import show
from calc.bench import Bench
from calc.declare import Answer
from calc.remembered import remembered
from calc.show import Shown
from calc.trig import is_exact
from calc.typed.measures import shown_temperature
from calc.typed.scales import SCALES
from calc.units import MM_PER_INCH, factor

UNIT_OF = {"length": "mm", "fine": "mm", "angle": "degree", "volume": "mm³", "board-feet": "board foot", "percent": "%"}
UNIT_OF |= {"temperature": "°C", "mass": "kg", "force": "N", "pressure": "MPa", "area": "mm²", "liquid": "mm³"}
UNIT_OF |= {"density": "kg/m³", "spread": "g/m²", "coverage": "m²/l", "capacity": "mm³"}
EMPTY = {"text": "", "left": "", "also": "", "value": None, "unit": "", "exact": True}


def printed(answer: Answer, value: Any, bench: Bench) -> Shown:
    """One answer of any kind but rows, printed."""
    return _printed(answer.kind, answer.places, value, bench)


def _printed(kind: str, places: int, value: Any, bench: Bench) -> Shown:
    value = number(value) if isinstance(value, float) else value
    match kind:
        case "length":
            return show.length(value, bench)
        case "fine":
            return show.fine(value, bench)
        case "angle":
            return show.angle(value, bench)
        case "money":
            return show.money(value, bench)
        case "percent":
            return Shown(f"{show.telling(value, places)}%")
        case "volume":
            return volume(value)
        case "board-feet":
            size = show.telling(value, places)
            return Shown(f"{size} board {'foot' if size == '1' else 'feet'}")
        case "count":
            return Shown(show.plain(value, 0))
        case "number":
            return Shown(show.telling(value, places))
        case "temperature":
            return shown_temperature(value)
        case _ if kind in SCALES:
            return SCALES[kind].shown(value, bench)
    return Shown(str(value))


def volume(mm3: Any, count: int = 4) -> Shown:
    """A volume in cubic metres to so many figures at least, and in litres, or cubic centimetres when it is small.

    >>> print(volume(1_497_600), volume(6000), sep="; ")
    0.001498 m³ (1.498 litres); 0.000006 m³ (6 cm³)
    """
    litres = mm3 / factor("litre", "mm**3")
    small = litres < Fraction(1, 10)
    also = f"{show.figures(litres * 1000, count)} cm³" if small else f"{show.figures(litres, count)} litres"
    return Shown(f"{show.figures(litres / 1000, count)} m³", also=also)


def cell(answer: Answer, value: Any, bench: Bench, rounded: bool = False) -> dict[str, Any]:
    """One answer as plain values: its text in parts, its number and unit, and whether any rounding has touched it.

    `rounded` when an entry was rounded already: then no number worked out from it is exact.
    """
    return dict(EMPTY if value is None else _cell(answer.kind, answer.places, value, bench, rounded))


@remembered(1024)  # of a piece most stays as it was from one entry to the next; 1/2 is exact, 0.5 not
def _cell(kind: str, places: int, value: Any, bench: Bench, rounded: bool) -> dict[str, Any]:
    shown = _printed(kind, places, value, bench)
    exact = isinstance(value, str) or (is_exact(value) and not rounded)
    return {
        "text": shown.text,
        "left": shown.left,
        "also": shown.also,
        "value": number(value),
        "unit": UNIT_OF.get(kind, ""),
        "exact": exact,
        **({"fraction": str(value)} if exact and not isinstance(value, str) else {}),
    }


def entry(kind: str, value: Any, bench: Bench) -> str:
    """A value as it would be typed into the next sum: exact where that is short, else to six places.

    >>> entry("length", 127, Bench()), entry("length", 127, Bench(unit="mm", mark="mm"))
    ('5 in', '127 mm')
    """
    if isinstance(value, str):
        return value
    if kind in SCALES:
        return SCALES[kind].entry(value)
    if kind == "temperature":
        return f"{show.plain(value, 6)} °C"
    if kind not in ("length", "fine"):
        return show.plain(value, 6)
    inches = value / MM_PER_INCH
    rule = is_exact(value) and 64 % inches.denominator == 0
    return f"{show.fraction(inches)} in" if rule and bench.system == "in" else f"{show.plain(value, 6)} mm"


def number(value: Any) -> Any:
    """What a machine reads: text and whole numbers as they are, else a decimal that is the same on every machine.

    What is not exact is given to nine decimals and twelve figures, since the last digits of a sine differ between
    one C library and the next.

    >>> from fractions import Fraction
    >>> number(219.77288639946264), number(Fraction(1, 3))
    (219.772886399, 0.3333333333333333)
    """
    if isinstance(value, str | int):
        return value
    return float(value) if is_exact(value) else float(f"{round(value, 9):.12g}") + 0.0  # never −0
