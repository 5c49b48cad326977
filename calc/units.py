"""The one door to pint: exact factors between units, and nothing else.

pint never sees what a person typed and never prints (see DEVELOPERS.md, decisions). It is imported at the first
conversion, so that `import calc` needs the standard library only.
"""

from fractions import Fraction
from functools import cache
from importlib import resources
from typing import Any

MM_PER_INCH = Fraction(254, 10)


@cache
def registry() -> Any:
    """pint's registry over our own short definitions, with Fractions for numbers."""
    import pint

    made: Any = pint.UnitRegistry(None, non_int_type=Fraction, cache_folder=None)
    made.load_definitions(resources.files("calc").joinpath("units.txt").read_text("utf-8").splitlines())
    return made


@cache
def factor(source: str, target: str) -> Fraction:
    """How many `target` one `source` is, exactly; pint.DimensionalityError where the two do not measure one thing.

    >>> factor("inch", "mm")
    Fraction(127, 5)
    """
    if source == target:
        return Fraction(1)
    one = registry().Quantity(Fraction(1), source)
    return Fraction(one.to(target).magnitude)
