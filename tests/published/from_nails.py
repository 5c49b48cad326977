"""Nail tables of three books, one against the other; a nail is asked for by a third of its length."""

from collections.abc import Iterator, Mapping
from fractions import Fraction

from published import Check, table

Row = Mapping[str, str]
PRINTED_MM = {"length_mm": 0.05}
THOUSANDTHS = 0.0005
"""Inches: half a unit of the thousandths in which nails are made; the wire gauge is printed finer."""


def checks() -> Iterator[Check]:
    """Printed lengths and thicknesses of common nails, the wire of their gauge, the penny rule for every kind."""
    rows = table("nail_sizes.csv")
    wires = {row["gauge"]: row for row in table("steel_wire_gauge_washburn_moen.csv")}
    held = {row["penny"]: inches(row["value"]) / 3 for row in rows if row["quantity"] == "length_in"}
    for row in (row for row in rows if row["basis"] == "read"):
        if row["quantity"] == "gauge_WM" and row["value"] in wires:
            yield _wire(held[row["penny"]], wires[row["value"]])
        elif row["type"] == "common" and row["quantity"] != "gauge_WM":
            yield _size("common", held[row["penny"]], row)
    for rule in (row for row in rows if row["type"].startswith("any")):
        kinds = sorted({row["type"] for row in rows if row["penny"] == rule["penny"]} - {rule["type"]})
        yield from (_size(kind, held[rule["penny"]], rule) for kind in kinds)


def inches(printed: str) -> Fraction:
    """A printed size such as 2-1/2."""
    return sum((Fraction(part) for part in printed.split("-")), Fraction(0))


def _given(kind: str, held: Fraction) -> dict[str, str]:
    return {"held": f"{held} in" if held <= 1 else f"1 {held - 1} in", "second": "1 ft", "kind": kind}


def _wire(held: Fraction, wire: Row) -> Check:
    return Check(
        sum="nail",
        given=_given("common", held),
        expect={"diameter": wire["diameter_in"]},
        unit={"diameter": "in"},
        within={"diameter": THOUSANDTHS},
        source=wire["source"],
        basis=wire["basis"],
        note="nails are made to thousandths; the wire gauge is printed finer",
    )


def _size(kind: str, held: Fraction, row: Row) -> Check:
    answer, unit = row["quantity"].split("_")
    return Check(
        sum="nail",
        given=_given(kind, held),
        expect={answer: float(inches(row["value"])) if unit == "in" else row["value"]},
        unit={answer: unit},
        within={answer: PRINTED_MM[row["quantity"]]} if row["quantity"] in PRINTED_MM else {},
        source=row["source"],
        basis=row["basis"],
        note=row["note"],
    )
