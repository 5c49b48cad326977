"""Thickness by number in three tables; the two newer agree to their last digit, the oldest is another rule."""

from collections.abc import Iterator, Mapping

from published import Check, table

OLDER = 0.003
"""Inches that the numbers of 1916 differ by at most, up to number 24."""
LAST = 24


def checks() -> Iterator[Check]:
    """Every printed number that the sum takes."""
    for row in table("wood_screw_diameter_asme_rule.csv"):
        yield _check(row, row["screw_number"], {"diameter": row["diameter_in"]}, "in", {"diameter": 1e-9})
    for row in table("wood_screw_diameter_wood_handbook.csv"):
        yield _check(row, row["screw_number"], {"diameter": row["shank_diameter_mm"]}, "mm", {})
    for row in table("wood_screw_diameter_1916.csv"):
        if row["screw_gauge"] != "00" and int(row["screw_gauge"]) <= LAST:
            older = {**row, "note": "the numbers of 1916 follow another rule"}
            yield _check(older, row["screw_gauge"], {"diameter": row["diameter_in"]}, "in", {"diameter": OLDER})


def _check(
    row: Mapping[str, str], number: str, expect: Mapping[str, str], unit: str, within: Mapping[str, float]
) -> Check:
    return Check(
        sum="screw",
        given={"number": number, "held": "1/2 in"},
        expect=expect,
        unit=dict.fromkeys(expect, unit),
        within=within,
        source=row["source"],
        basis=row["basis"],
        note=row["note"],
    )
