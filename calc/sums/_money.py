"""Notes, coins and cards by the tables: sizes with their sources; where sources disagree, the larger, and saying so."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache

from calc import tables
from calc.kinds import Option
from calc.tables import Figure
from calc.units import MM_PER_INCH

MM = {"mm": Fraction(1), "in": MM_PER_INCH}
Row = Mapping[str, str]
DISAGREE = "sources disagree, the larger taken"


@dataclass(frozen=True)
class Thing:
    """A note, coin or card. Sizes in millimetres; a coin's length and width are both its diameter."""

    key: str
    label: str
    folds: bool
    length: Figure
    width: Figure
    thickness: Figure | None
    disagree: bool

    @property
    def said(self) -> str:
        """Where its sizes are from."""
        told = [one.said for one in (self.length, self.width, self.thickness) if one]
        return "; ".join([*dict.fromkeys(told), *([DISAGREE] if self.disagree else [])])

    @property
    def thick(self) -> Fraction | None:
        """How thick it is, in millimetres; None where no table says."""
        return self.thickness.value if self.thickness else None


@cache
def things() -> Mapping[str, Thing]:
    """Every thing the tables hold, by its key, in their order."""
    found = [*_money(), *(_card(row) for row in tables.rows("card_sizes"))]
    return {thing.key: thing for thing in found}


def options() -> tuple[Option, ...]:
    """What can be chosen: the maker's own size first, then everything in the tables."""
    return Option("own", "My own size"), *(Option(thing.key, thing.label) for thing in things().values())


def _money() -> Iterator[Thing]:
    groups: dict[tuple[str, str, str], dict[str, list[Row]]] = {}
    for row in tables.rows("money_sizes"):
        sizes = groups.setdefault((row["currency"], row["kind"], row["denomination"]), {})
        sizes.setdefault(row["quantity"].partition(" ")[0], []).append(row)
    return (_thing(*named, sizes) for named, sizes in groups.items())


def _thing(currency: str, kind: str, denomination: str, sizes: Mapping[str, list[Row]]) -> Thing:
    wanted = ("diameter", "diameter") if kind == "coin" else ("length", "width")
    long, wide = (_largest(sizes[name]) for name in wanted)
    thick = _largest(sizes["thickness"]) if "thickness" in sizes else None
    name = re.sub(", all\\b", "", f"{currency} {kind}, {denomination}")
    differ = any(_differ(rows) for quantity, rows in sizes.items() if quantity != "mass")
    return Thing(_key(name), name, kind != "coin", long, wide, thick, differ)


def _key(name: str) -> str:
    return re.sub(r"[^a-z0-9]+", "-", name.lower()).strip("-")


def _largest(rows: list[Row]) -> Figure:
    return max((tables.figure(row, scale=MM[row["unit"]]) for row in rows), key=lambda one: one.value)


def _differ(rows: list[Row]) -> bool:
    """True when two sources print different figures in one unit."""
    return any(len({row["value"] for row in rows if row["unit"] == unit}) > 1 for unit in MM)


def _card(row: Row) -> Thing:
    long, wide = sorted(
        (tables.figure(row, side, MM[row["unit"]]) for side in ("dim1", "dim2")), key=lambda one: -one.value
    )
    thick = tables.figure(row, "thickness", MM[row["unit"]]) if row["thickness"] else None
    return Thing(_key(row["name"]), row["name"], True, long, wide, thick, False)
