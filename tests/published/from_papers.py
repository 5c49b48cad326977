"""Sheets of the A, B and C series, and a card known by its proportion, as checks of proportion."""

import re
from collections.abc import Iterator

from published import Check, table

SERIES = re.compile(r"[ABC]\d+paper")


def checks() -> Iterator[Check]:
    """Each sheet is root two by design, printed in whole millimetres; the index card is three by five."""
    for row in table("paper_card_envelope_sizes.csv"):
        if SERIES.fullmatch(row["name"]):
            yield _sheet(row)
        if row["name"] == "US index card 3x5":
            yield Check(sum="proportion", given=_sizes(row), expect={"nearest": "3 : 5", "over": 0}, **_said(row))


def _sheet(row: dict[str, str]) -> Check:
    """The true longer side is the printed one, but for the half millimetre by which each side was rounded."""
    return Check(
        sum="proportion",
        given=_sizes(row),
        expect={"nearest": "1 : √2", "times": "1.4142", "true_longer": row["dim2"]},
        within={"true_longer": 0.5 + 0.5 * 2**0.5},
        **_said(row),
    )


def _sizes(row: dict[str, str]) -> dict[str, str]:
    return {"size": f"{row['dim1']} {row['unit']}", "other": f"{row['dim2']} {row['unit']}"}


def _said(row: dict[str, str]) -> dict[str, str]:
    return {"source": row["source"] or "trade size", "basis": row["basis"], "note": row["note"] or row["name"]}
