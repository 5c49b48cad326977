"""The table of decimal equivalents, as checks of tally, its misprints marked."""

from collections.abc import Iterator

from published import Check, table

CUT = "the last digit is cut off as often as it is rounded"


def checks() -> Iterator[Check]:
    """Each fraction of an inch in decimals; the book cuts the last digit off as often as it rounds it."""
    for row in table("decimal_equivalents_64ths.csv"):
        misprint = row["note"].startswith("misprint")
        yield Check(
            sum="tally",
            given={"reckoning": f"{row['fraction_in']} in"},
            expect={"decimal_inches": row["decimal_printed"]},
            within={} if misprint else {"decimal_inches": 0.0001},
            misprint=misprint,
            exact={"decimal_inches": float(row["exact_decimal_computed"])} if misprint else {},
            source=row["source"],
            basis=row["basis"],
            note=row["note"] or CUT,
        )
