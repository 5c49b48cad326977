"""Arcs worked out from their span and rise, as checks of arc: each from all three pairs of its sizes."""

from collections.abc import Iterator
from itertools import combinations

from published import Check, table

SIZES = ("span", "rise", "radius")


def checks() -> Iterator[Check]:
    """The size not given, and the length along the curve; the table is of any unit, so its large sizes are taken for
    millimetres and the others for inches."""
    for row in table("arc_from_span_and_rise.csv"):
        yield from (_arc(row, pair) for pair in combinations(SIZES, 2))


def _arc(row: dict[str, str], pair: tuple[str, ...]) -> Check:
    unit = "mm" if int(row["span"]) >= 600 else "in"
    wanted = (*(name for name in SIZES if name not in pair), "arc_length")
    return Check(
        sum="arc",
        given={name: f"{row[name]} {unit}" for name in pair},
        expect={name: row[name] if "." in row[name] else f"{row[name]}.000000" for name in wanted},
        unit=dict.fromkeys(wanted, unit),
        source=row["source"],
        basis=row["basis"],
        note=row["note"],
    )
