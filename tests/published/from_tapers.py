"""Griffith's printed tangents as tapers: a board a foot long, one face planed at the angle."""

from collections.abc import Iterator

from published import Check, table

STEEPEST = 60
FOOT = 12


def checks() -> Iterator[Check]:
    """The taper in a foot is twelve times the printed tangent, as near as its last digit allows."""
    for row in table("trig_table_griffith1916.csv"):
        if row["function"] == "tan" and int(row["angle_deg"]) <= STEEPEST:
            yield Check(
                sum="taper",
                given={"length": "12 in", "end": "1 in", "angle": row["angle_deg"]},
                expect={"per_foot": FOOT * float(row["value"])},
                unit={"per_foot": "in"},
                within={"per_foot": FOOT * 0.00005},
                source=row["source"],
                basis=row["basis"],
                printed=row["value"],
                note=row["note"],
            )
