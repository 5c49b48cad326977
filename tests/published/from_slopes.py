"""Slopes, pitches and the table of natural functions, as checks of slope."""

import re
from collections.abc import Iterator

from published import Check, table

PITCH = re.compile(r"rise (\d+) in 12")
FUNCTIONS = {
    "sin": ({"length": "1 in"}, "rise"),
    "cos": ({"length": "1 in"}, "run"),
    "tan": ({"run": "1 in"}, "rise"),
    "cot": ({"rise": "1 in"}, "run"),
}
"""How a printed function of an angle is asked of the triangle: the leg that is 1 in, and the one to read off."""


def checks() -> Iterator[Check]:
    """Griffith's printed functions 1-89 degrees, and the angles of so many inches in twelve."""
    yield from (_function(row) for row in table("trig_table_griffith1916.csv"))
    for row in table("slopes_and_pitches.csv"):
        if pitch := PITCH.fullmatch(row["item"]):
            yield _pitch(row, pitch[1])


def _function(row: dict[str, str]) -> Check:
    given, answer = FUNCTIONS[row["function"]]
    return Check(
        sum="slope",
        given={"angle": row["angle_deg"], **given},
        expect={answer: row["value"]},
        unit={answer: "in"},
        source=row["source"],
        basis=row["basis"],
        note=row["note"],
    )


def _pitch(row: dict[str, str], rise: str) -> Check:
    return Check(
        sum="slope",
        given={"rise": f"{rise} in", "run": "12 in"},
        expect={"angle": row["value"]},
        source=row["source"],
        basis=row["basis"],
        note=row["note"],
    )
