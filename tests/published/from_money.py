"""Notes and coins by those who issue them, as checks of slot; where two sources disagree the larger is wanted."""

import re
from collections.abc import Iterator, Mapping

from published import MM, Check, table

ANSWERS = {"length": "item_length", "width": "item_width", "diameter": "item_length", "thickness": "thick"}
Row = Mapping[str, str]


def checks() -> Iterator[Check]:
    """Every printed length, width, diameter and thickness; none from memory, since that proves nothing."""
    rows = [row for row in table("money_sizes.csv") if row["basis"] == "read" and row["quantity"] != "mass"]
    yield from (_check(row, rows) for row in rows)


def _check(row: Row, rows: list[Row]) -> Check:
    answer = ANSWERS[row["quantity"].partition(" ")[0]]
    largest = max((other["value"] for other in rows if _same(row, other)), key=float)
    smaller = largest != row["value"]
    return Check(
        sum="slot",
        given={"what": _key(row)},
        expect={answer: row["value"]},
        unit={answer: row["unit"]},
        source=row["source"],
        basis=row["basis"],
        note=row["note"],
        misprint=smaller,
        exact={answer: largest} if smaller else {},
    )


def _same(row: Row, other: Row) -> bool:
    """True for the same size of the same thing in the same unit, from whichever source."""
    named = ("currency", "kind", "denomination", "quantity", "unit")
    return other["unit"] in MM and all(row[name] == other[name] for name in named)


def _key(row: Row) -> str:
    """What the thing is called on the command line."""
    name = f"{row['currency']} {row['kind']} {'' if row['denomination'] == 'all' else row['denomination']}"
    return re.sub(r"[^a-z0-9]+", "-", name.lower()).strip("-")
