"""The table of decimal equivalents, as checks of convert in both directions, its misprints marked."""

from collections.abc import Iterator
from fractions import Fraction

from from_decimals import CUT
from published import Check, table

NEAREST = "neighbours.0.mark"
"""With no neighbours each side, the strip is the nearest mark alone."""


def checks() -> Iterator[Check]:
    """Each fraction of an inch in decimals, and each decimal on a rule of sixty-fourths."""
    for row in table("decimal_equivalents_64ths.csv"):
        yield _decimal(row)
        yield _fraction(row)


def _decimal(row: dict[str, str]) -> Check:
    """The book cuts the last digit off as often as it rounds it."""
    wrong = row["note"].startswith("misprint")
    return Check(
        sum="convert",
        given={"length": f"{row['fraction_in']} in"},
        expect={"decimal_inches": row["decimal_printed"]},
        within={} if wrong else {"decimal_inches": 0.0001},
        misprint=wrong,
        exact={"decimal_inches": float(row["exact_decimal_computed"])} if wrong else {},
        source=row["source"],
        basis=row["basis"],
        note=row["note"] or CUT,
    )


def _fraction(row: dict[str, str]) -> Check:
    """A decimal printed beside the wrong fraction must lead to its own: counted here in sixty-fourths."""
    wrong = row["note"].startswith("misprint")
    own = Fraction(round(float(row["decimal_printed"]) * 64), 64)
    return Check(
        sum="convert",
        given={"length": f"{row['decimal_printed']} in", "mark": "1/64", "each_side": "0"},
        expect={NEAREST: f"{row['fraction_in']} in"},
        misprint=wrong,
        exact={NEAREST: f"{own} in"} if wrong else {},
        source=row["source"],
        basis=row["basis"],
        note=row["note"],
    )
