"""Chords of n equal parts of a circle of radius one, as checks of stepping."""

from collections.abc import Iterator

from published import Check, table


def checks() -> Iterator[Check]:
    """Each chord twice: from the radius, and from the diameter of a circle twice as large."""
    for row in table("chord_per_radius.csv"):
        yield _chord(row, {"radius": "1 in"}, row["chord_per_radius"])
        yield _chord(row, {"diameter": "20 in"}, f"{10 * float(row['chord_per_radius']):.7f}")


def _chord(row: dict[str, str], size: dict[str, str], printed: str) -> Check:
    return Check(
        sum="stepping",
        given={**size, "count": row["divisions"]},
        expect={"setting": printed},
        unit={"setting": "in"},
        source=row["source"],
        basis=row["basis"],
        note=row["note"],
    )
