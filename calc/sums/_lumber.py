"""Sizes of lumber as it is called and as it is dressed, each list by itself; no size is made up between two."""

from dataclasses import dataclass
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
        if wide >= inch(one.called[0])
    }
    quarters = {one.name.partition(" ")[0]: one for one in thicknesses("hardwood")}
    old = {f"1910-{show.fraction(inch(one.called[0]))}": one for one in thicknesses("1910")}
    return soft | quarters | old | _edition()


def _sawn(one: Lumber, wide: Fraction, left: Fraction, said: str) -> Lumber:
    name = f"{show.fraction(inch(one.called[0]))} x {show.fraction(wide)} (softwood)"
    told = "; ".join(dict.fromkeys((one.said, said)))
    called, dressed = (one.called[0], wide * MM_PER_INCH), (one.dressed[0], left * MM_PER_INCH)
    return Lumber(name, one.system, called, dressed, told)


def _edition() -> dict[str, Lumber]:
    """The two sizes that a book of 1916 prints as thickness by width."""
    found = {}
    for row in tables.rows("lumber_sizes"):
        if row["system"] == EDITION:
            called, left = (
                [inches(side) * MM_PER_INCH for side in row[of].split("x")] for of in ("nominal", "dressed")
            )
            name = f"{row['nominal'].replace('x', ' x ')} in 1916"
            size = Lumber(name, "1916", (called[0], called[1]), (left[0], left[1]), _said(row["source"]))
            found[f"1916-{row['nominal']}"] = size
    return found


def inch(mm: Fraction) -> Fraction:
    """Millimetres as inches."""
    return mm / MM_PER_INCH


def least(system: str, at: int, wanted: Fraction) -> Lumber | None:
    """The thinnest of a list that is at least `wanted` as called (at 0) or as dressed (at 1); None when none is."""
    return next((one for one in thicknesses(system) if (one.called, one.dressed)[at][0] >= wanted), None)
