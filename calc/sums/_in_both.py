"""A size inside a sentence, such as a refusal: in millimetres and in inches, whichever the maker works in."""

from calc.show import plain
from calc.trig import Number
from calc.units import MM_PER_INCH


def in_both(mm: Number) -> str:
    """A size in millimetres as words, to a tenth of one and to a hundredth of an inch.

    >>> in_both(127)
    '127 mm, 5 in'
    """
    return f"{plain(mm, 1)} mm, {plain(mm / MM_PER_INCH, 2)} in"
