"""The Wood Handbook's table of equilibrium moisture content, cell by cell, as checks of moisture, both ways."""

from collections.abc import Iterator, Mapping

from published import Check, table

WITHIN = 0.06
"""Percent of moisture: the table was rounded to 0.1 and worked from the same equation in degrees Fahrenheit."""


def checks() -> Iterator[Check]:
    """Each printed cell asked forwards, and one worked example of the equation."""
    yield from (_cell(row) for row in table("wood_emc_table.csv"))
    example = next(row for row in table("wood_rules.csv") if row["id"] == "emc_example")
    yield Check(
        sum="moisture",
        given={"temperature": "140 °F", "humidity": "55"},
        expect={"emc": example["value"]},
        source=example["source"],
        basis=example["basis"],
        printed=example["quantity"],
    )


def _cell(row: Mapping[str, str]) -> Check:
    return Check(
        sum="moisture",
        given={"temperature": f"{row['temp_degF']} °F", "humidity": row["rh_percent"]},
        expect={"emc": row["emc_percent"]},
        within={"emc": WITHIN},
        source=f"{row['source']}, table 4-2",
        basis=row["basis"],
        note="worked out in degrees Fahrenheit by those who printed it",
    )
