"""The rule in the maker's hand: which marks it has, and the pair of them that comes nearest to an angle."""

from dataclasses import dataclass
from fractions import Fraction

from calc.bench import MARKS, Bench
from calc.kinds import Choice, Option
from calc.typed.reading import Reading
from calc.units import MM_PER_INCH

OWN = "own"
OPTIONS = (
    Option(OWN, "my own rule"),
    *(Option(key, f"{key} in" if unit == "in" else f"{key} marks") for key, (unit, _) in MARKS.items()),
)


@dataclass(frozen=True, kw_only=True)
class Mark(Choice):
    """The finest mark of the rule in hand; `work` is handed its key in `calc.bench.MARKS`.

    An empty entry is the bench's own rule. Every length of the sum prints on the rule in hand.
    """

    default: str = OWN
    options: tuple[Option, ...] = OPTIONS

    def parse(self, text: str, bench: Bench) -> Reading:
        """The mark chosen, or the bench's own."""
        found = super().parse(text, bench)
        return super().parse(bench.mark, bench) if found.value == OWN else found


def step(mark: str) -> Fraction:
    """How far apart the marks stand, in millimetres.

    >>> step("1/16")
    Fraction(127, 80)
    """
    unit, size = MARKS[mark]
    return size * (MM_PER_INCH if unit == "in" else 1)


def coarser(mark: str) -> list[Fraction]:
    """How far apart the coarser marks stand that are easier to find, the coarsest first, in millimetres.

    On an inch rule every second mark, every fourth and so on up to whole inches; else millimetres, fives and tens.

    >>> [str(size / step("1/8")) for size in coarser("1/8")]
    ['8', '4', '2']
    """
    unit, size = MARKS[mark]
    halved = [Fraction(1, 2**times) for times in range(6)] if unit == "in" else [Fraction(each) for each in (10, 5, 1)]
    return [each * (MM_PER_INCH if unit == "in" else 1) for each in halved if each > size]


def nearest_pair(tangent: Fraction, marks: int) -> tuple[int, int]:
    """The run and rise, whole numbers up to `marks`, whose angle comes nearest to the one with this tangent.

    Every run is tried with the rises on both sides of the true one: an angle misses by the angle whose tangent is
    (rise - run t) / (run + rise t), compared in whole numbers. Of pairs that miss alike the longest is
    taken. A leg of 0 means that no pair comes as near as a straight line does.

    >>> nearest_pair(Fraction(1, 7), 16)
    (14, 2)
    """
    steep = tangent > 1
    top, bottom = (1 / tangent if steep else tangent).as_integer_ratio()
    best, miss, size = (1, 0), top, bottom
    for run in range(1, marks + 1):
        low, over = divmod(run * top, bottom)
        for rise, off in ((low, over), (low + 1, bottom - over)):
            along = run * bottom + rise * top
            if off * size <= miss * along:
                best, miss, size = (run, rise), off, along
    return (best[1], best[0]) if steep else best
