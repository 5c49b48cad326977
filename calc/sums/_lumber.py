"""Sizes of lumber as it is called and as it is dressed, each list by itself; no size is made up between two."""

from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache

from calc import show, tables
from calc.tables import CHECK
from calc.typed.reading import number
from calc.units import MM_PER_INCH

THICKNESSES = {
    "softwood": ("PS 20 (dry) boards thickness", "PS 20 (dry) dimension thickness"),
    "hardwood": ("NHLA hardwood rough -> S2S",),
    "1910": ("Noyes 1910 rough -> dressed",),
}
WIDTHS = "PS 20 (dry) board width"
BOARDS_ALONE = Fraction(7)
"""Inches of a width that PS 20 has for boards and not for what is 2 in or thicker: from memory, as the widths are."""
DIMENSION = Fraction(2)
WHOLE = "NIST 2017 two-by-four"
"""A size that was read as it stands, both ways."""
EDITION = "Griffith 1916 S1S1E"
SAID = {
    "softwood": "softwood as PS 20 has it dry",
    "hardwood": "hardwood surfaced on two sides",
    "1910": "a book of 1910",
    "1916": "a book of 1916, one side and one edge surfaced",
}


@dataclass(frozen=True)
class Lumber:
    """One size, in millimetres: its name, what it is called, what is left of it; widths None where it has none."""

    name: str
    system: str
    called: tuple[Fraction, Fraction | None]
    dressed: tuple[Fraction, Fraction | None]
    said: str


Pair = tuple[Fraction, Fraction, str]


@cache
def _pairs(system: str) -> tuple[Pair, ...]:
    """Called and dressed inches of one list, in its order, and where each is from."""
    return tuple(
        (inches(row["nominal"].partition(" (")[0]), inches(row["dressed"]), _said(row["source"]))
        for row in tables.rows("lumber_sizes")
        if row["system"] == system
    )


def inches(printed: str) -> Fraction:
    """A printed size such as 1-1/4."""
    found = number(printed).value
    assert isinstance(found, Fraction)
    return found


def _said(source: str) -> str:
    return tables.work(source) if source else CHECK


@cache
def thicknesses(system: str) -> tuple[Lumber, ...]:
    """Every thickness of a list ("softwood", "hardwood", "1910"), thinnest first; widths are left open."""
    pairs = sorted(pair for name in THICKNESSES[system] for pair in _pairs(name))
    return tuple(
        Lumber(_name(system, called), system, (called * MM_PER_INCH, None), (left * MM_PER_INCH, None), said)
        for called, left, said in pairs
    )


def _name(system: str, called: Fraction) -> str:
    """As the trade says it; nothing of an old list is found by its size alone."""
    size = f"{show.fraction(called)} in"
    if system == "1910":
        return f"{size} rough in 1910"
    return f"{called * 4}/4 ({system}, {size})" if system == "hardwood" and called >= 1 else f"{size} ({system})"


@cache
def sizes() -> dict[str, Lumber]:
    """Every size by its key: {"2x4": ..., "4/4": ..., "1910-2": ..., "1916-2x8": ...}."""
    soft = {
        f"{show.fraction(inch(one.called[0]))}x{show.fraction(wide)}": _sawn(one, wide, left, said)
        for one in thicknesses("softwood")
        for wide, left, said in _pairs(WIDTHS)
        if _is_sold(inch(one.called[0]), wide)
    }
    soft |= {key: replace(soft[key], said=one.said) for key, one in _both_ways(WHOLE).items()}
    quarters = {one.name.partition(" ")[0]: one for one in thicknesses("hardwood")}
    old = {f"1910-{show.fraction(inch(one.called[0]))}": one for one in thicknesses("1910")}
    return soft | quarters | old | {f"1916-{key}": one for key, one in _both_ways(EDITION).items()}


def _is_sold(thick: Fraction, wide: Fraction) -> bool:
    """True for a section no thicker than wide whose width the standard has at that thickness."""
    return wide >= thick and not (thick >= DIMENSION and wide == BOARDS_ALONE)


def _sawn(one: Lumber, wide: Fraction, left: Fraction, said: str) -> Lumber:
    """A size of softwood; one of inches and quarters bears the name in quarters as well, such as 5/4 x 6."""
    thick, broad = inch(one.called[0]), show.fraction(wide)
    quarters = "" if thick.denominator == 1 or thick >= DIMENSION else f", {thick * 4}/4 x {broad}"
    name = f"{show.fraction(thick)} x {broad} (softwood{quarters})"
    told = "; ".join(dict.fromkeys((one.said, said)))
    called, dressed = (one.called[0], wide * MM_PER_INCH), (one.dressed[0], left * MM_PER_INCH)
    return Lumber(name, one.system, called, dressed, told)


def _both_ways(system: str) -> dict[str, Lumber]:
    """The sizes that a source prints as thickness by width, by their name: {"2x8": ...}."""
    found = {}
    for row in tables.rows("lumber_sizes"):
        if row["system"] == system:
            called, left = (
                [inches(side) * MM_PER_INCH for side in row[of].split("x")] for of in ("nominal", "dressed")
            )
            name = f"{row['nominal'].replace('x', ' x ')} in 1916"
            found[row["nominal"]] = Lumber(
                name, "1916", (called[0], called[1]), (left[0], left[1]), _said(row["source"])
            )
    return found


def inch(mm: Fraction) -> Fraction:
    """Millimetres as inches."""
    return mm / MM_PER_INCH


def least(system: str, at: int, wanted: Fraction) -> Lumber | None:
    """The thinnest of a list that is at least `wanted` as called (at 0) or as dressed (at 1); None when none is."""
    return next((one for one in thicknesses(system) if (one.called, one.dressed)[at][0] >= wanted), None)
