"""Polygon settings of the steel square, and chords of n equal parts, as checks of mitre."""

from collections.abc import Iterator
from fractions import Fraction

from published import Check, half_unit, table

ASKED = {
    "side per 12 (12*tan(180/n))": ({"across_flats": "12 in"}, "side", "in"),
    "hip run per 12 run (12/cos(180/n))": ({"across_flats": "12 in"}, "across_corners", "in"),
    "half central angle deg": ({"side": "1 in"}, "cut_angle", ""),
}
"""How a printed setting is asked of the frame: what is given, which answer it is, in which unit."""


def checks() -> Iterator[Check]:
    """Each setting as printed, to half of its finest mark; the same worked out; and the chord as a side of a ring."""
    for row in table("polygon_settings.csv"):
        if row["quantity"] in ASKED:
            yield _setting(row, row["printed"], "read")
            yield _setting(row, row["exact_computed"], "computed")
    yield from (_chord(row) for row in table("chord_per_radius.csv") if int(row["divisions"]) <= 24)


def _setting(row: dict[str, str], printed: str, basis: str) -> Check:
    given, answer, unit = ASKED[row["quantity"]]
    value = sum(Fraction(part) for part in printed.split())
    half = 0.5 if value.denominator == 1 and "." not in printed else 0.5 / value.denominator
    return Check(
        sum="mitre",
        given={"sides": row["sides"], **given},
        expect={answer: float(value)},
        within={answer: half_unit(printed) if "." in printed else half * bool(unit)},
        unit={answer: unit} if unit else {},
        source=row["source"],
        basis=basis,
        printed=printed,
        note=row["note"],
    )


def _chord(row: dict[str, str]) -> Check:
    return Check(
        sum="mitre",
        given={"sides": row["divisions"], "across_corners": "2 in"},
        expect={"side": row["chord_per_radius"]},
        unit={"side": "in"},
        source=row["source"],
        basis=row["basis"],
        note=row["note"],
    )
