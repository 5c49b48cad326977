"""Nails in the shop: every size the tables list of a kind, each figure with its source; nothing is made up."""

from dataclasses import dataclass
from fractions import Fraction
from functools import cache

from calc import show, tables
from calc.errors import Refusal
from calc.search import words
from calc.tables import Figure
from calc.units import MM_PER_INCH

KINDS = ("common", "box", "finish", "casing", "brad")
ANY = "any (penny rule)"
QUARTER_A_PENNY = range(3, 11)
"""Pennies whose lengths go up by a quarter inch each, 3d being 1 1/4 in: W. Noyes, Handwork in Wood (1910)."""


@dataclass(frozen=True)
class Nail:
    """One nail: what to ask for, length and diameter in millimetres, gauge as printed; None where no table has it."""

    name: str
    length: Figure
    diameter: Figure | None
    gauge: str = ""

    @property
    def order(self) -> tuple[Fraction, bool, Fraction]:
        """Shortest first; of one length the thinnest whose diameter is known."""
        return self.length.value, self.diameter is None, self.diameter.value if self.diameter else Fraction(0)


@cache
def stock(kind: str) -> tuple[Nail, ...]:
    """Every nail of a kind (one of KINDS), shortest first."""
    found = _brads() if kind == "brad" else [_penny(kind, penny) for penny in _pennies(kind)]
    return tuple(sorted(found, key=lambda nail: nail.order))


@cache
def named() -> dict[str, Nail]:
    """Every nail of every kind by a key made of its name: {"6d-common-nail": ...}."""
    return {"-".join(words(nail.name)).replace("/", "-"): nail for kind in KINDS for nail in stock(kind)}


def thickness_of(nail: str | None, own: Fraction | None) -> tuple[Fraction, str]:
    """The thickness of a nail of the shop, by its key, or of the maker's own, and where that is from."""
    if own is not None:
        return own, "measured by you"
    found = named()[nail or ""]
    if found.diameter is None:
        raise Refusal(f"no table here has the thickness of a {found.name}", "measure it and give that instead", "nail")
    return found.diameter.value, found.diameter.said


def _pennies(kind: str) -> list[int]:
    listed = {
        row["penny"]
        for row in tables.rows("nail_sizes")
        if row["type"] in ((kind, ANY) if kind == "common" else (kind,))
    }
    return sorted(
        {int(penny.removesuffix("d")) for penny in listed} | (set(QUARTER_A_PENNY) if kind == "common" else set())
    )


def _penny(kind: str, penny: int) -> Nail:
    gauges = _listed(kind, penny, "gauge_WM")
    mm, inch = (_figures(kind, penny, f"diameter_{unit}", scale) for unit, scale in (("mm", 1), ("in", MM_PER_INCH)))
    return Nail(f"{penny}d {kind} nail", _length(kind, penny), _best([*mm, *inch]), _gauge(gauges))


def _length(kind: str, penny: int) -> Figure:
    """The length of a penny size: read for this kind, or by the penny rule, or the common nail's; last, from memory."""
    own = _figures(kind, penny, "length_in", MM_PER_INCH)
    read = [one for one in own + _figures(ANY, penny, "length_in", MM_PER_INCH) if not one.remembered]
    same = [
        Figure(one.value, one.source, "common practice", "the common nail of that penny")
        for one in _figures("common", penny, "length_in", MM_PER_INCH)
    ]
    return [*read, *_by_rule(penny), *same, *own][0]


def _by_rule(penny: int) -> list[Figure]:
    if penny not in QUARTER_A_PENNY:
        return []
    start = _figures(ANY, QUARTER_A_PENNY.start, "length_in", MM_PER_INCH)[0]
    up = (penny - QUARTER_A_PENNY.start) * MM_PER_INCH / 4
    return [Figure(start.value + up, start.source, "computed", "a quarter inch a penny from 3d")]


def _listed(kind: str, penny: int, quantity: str) -> list[dict[str, str]]:
    return [
        dict(row)
        for row in tables.rows("nail_sizes")
        if (row["type"], row["penny"], row["quantity"]) == (kind, f"{penny}d", quantity)
    ]


def _figures(kind: str, penny: int, quantity: str, scale: Fraction | int) -> list[Figure]:
    return [tables.figure(row, scale=scale) for row in _listed(kind, penny, quantity)]


def _best(figures: list[Figure]) -> Figure | None:
    return min(figures, key=lambda one: one.remembered, default=None)


def _gauge(rows: list[dict[str, str]]) -> str:
    row = min(rows, key=lambda row: row["basis"] == "memory", default=None)
    return _told(row["value"].replace("-", " "), row["basis"] == "memory") if row else ""


def _told(gauge: str, remembered: bool) -> str:
    return f"{gauge}, {tables.CHECK}" if remembered else gauge


def _brads() -> list[Nail]:
    wires = {
        row["gauge"]: tables.figure(row, "diameter_in", MM_PER_INCH)
        for row in tables.rows("steel_wire_gauge_washburn_moen")
    }
    return [_brad(dict(row), wires.get(row["wire_gauge"])) for row in tables.rows("wire_brads_1916")]


def _brad(row: dict[str, str], wire: Figure | None) -> Nail:
    length = tables.figure(row, "length_in", MM_PER_INCH)
    size = show.fraction(length.value / MM_PER_INCH)
    return Nail(f"{size} in wire brad, {row['wire_gauge']} gauge", length, wire, row["wire_gauge"])
