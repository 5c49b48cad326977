"""What is measured beside length: mass, force, pressure and the like; read with its unit behind it, printed in two.

A bare number is never taken for a mass or a force: kilograms and pounds are too far apart to guess at the bench.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from calc.bench import Bench
from calc.errors import Refusal, listed
from calc.show import Shown, figures
from calc.trig import Number
from calc.typed.glyphs import quoted, tidy
from calc.typed.reader import said
from calc.typed.reading import Reading, number
from calc.units import factor

_PLAIN = {"²": "2", "³": "3", " per ": "/", "square feet": "ft2", "square metres": "m2", "sq ft": "ft2", "sq m": "m2"}


@dataclass(frozen=True)
class Scale:
    """One thing measured. `units`: pint's name of each unit -> its spellings, the first as printed.

    base: the unit `work` is handed. metric, inch: the units it prints in, largest first.
    """

    base: str
    units: Mapping[str, tuple[str, ...]]
    metric: tuple[str, ...]
    inch: tuple[str, ...]

    def read(self, text: str) -> Reading:
        """A number with its unit behind it, in the base unit. Raises Refusal."""
        typed = tidy(_spelled(text))
        unit, rest = self._unit(typed)
        if not unit:
            told = listed([names[0] for names in self.units.values()], "or")
            raise Refusal(f"{quoted(tidy(text))} has no unit this can read", f"put {told} after the number")
        value = number(rest).value
        return Reading(value * factor(unit, self.base), unit, f"{said(value, '')} {self.units[unit][0]}")

    def _unit(self, typed: str) -> tuple[str, str]:
        """The unit at the end, by the longest spelling that stands there, and what is before it."""
        names = [(_spelled(name), unit) for unit, spellings in self.units.items() for name in spellings]
        for name, unit in sorted(names, key=lambda pair: -len(pair[0])):
            before = typed.lower().removesuffix(name.lower())
            if len(before) < len(typed) and not before[-1:].isalpha():
                return unit, before
        return "", typed

    def shown(self, value: Number, bench: Bench) -> Shown:
        """A value in the base unit as it prints: in the maker's own units, the others beside."""
        own, other = (self.inch, self.metric) if bench.system == "in" else (self.metric, self.inch)
        return Shown(self._text(value, own), also=self._text(value, other))

    def _text(self, value: Number, units: tuple[str, ...]) -> str:
        size, unit = self._sized(value, units)
        return f"{figures(size)} {self.units[unit][0]}"

    def _sized(self, value: Number, units: tuple[str, ...]) -> tuple[Number, str]:
        """A value in the largest of some units that is not larger than it, else in the smallest."""
        sizes: list[tuple[Number, str]] = [(value / factor(unit, self.base), unit) for unit in units]
        return next((pair for pair in sizes if abs(float(pair[0])) >= 1), sizes[-1])

    def entry(self, value: Number) -> str:
        """A value in the base unit as it would be typed."""
        size, unit = self._sized(value, self.metric)
        return f"{figures(size, 9)} {self.units[unit][0]}"


def _spelled(text: str) -> str:
    """A unit's powers and fractions in the plainest spelling."""
    for sign, simple in _PLAIN.items():
        text = text.replace(sign, simple)
    return text
