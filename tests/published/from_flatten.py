"""Radii from a chord and its depth, as checks of the cup of flatten."""

from collections.abc import Iterator

from published import Check, table

WIDE = 1000
"""Millimetres: the widest board that flatten takes."""


def checks() -> Iterator[Check]:
    """A board as wide as the span and cupped by the rise has the radius of the table."""
    for row in table("arc_from_span_and_rise.csv"):
        unit, size = ("mm", 1) if int(row["span"]) >= 600 else ("in", 25.4)
        if int(row["span"]) * size <= WIDE and int(row["rise"]) * size <= 50.8:
            yield Check(
                sum="flatten",
                given={
                    "thickness": "6 in",
                    "width": f"{row['span']} {unit}",
                    "length": "1 m",
                    "cup": f"{row['rise']} {unit}",
                },
                expect={"radius": row["radius"]},
                unit={"radius": unit},
                source=row["source"],
                basis=row["basis"],
                note=row["note"],
            )
