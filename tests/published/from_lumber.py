"""Every printed or remembered size of lumber, list by list, each as it is asked for by name."""

from collections.abc import Iterator, Mapping
from fractions import Fraction

from published import Check, table

QUARTERS = "NHLA hardwood rough -> S2S"
BOARDS = ("PS 20 (dry) boards thickness", "PS 20 (dry) dimension thickness")
WIDTHS = "PS 20 (dry) board width"
NOYES = "Noyes 1910 rough -> dressed"
GRIFFITH = "Griffith 1916 S1S1E"


def checks() -> Iterator[Check]:
    """A check for each row that is a size."""
    for row in table("lumber_sizes.csv"):
        if names := _named(row):
            name, expect = names
            yield Check(
                sum="dressed",
                given={"size": name},
                expect={answer: float(inches(printed)) for answer, printed in expect.items()},
                unit=dict.fromkeys(expect, "in"),
                within=dict.fromkeys(expect, 1e-12),
                source=row["source"] or f"no source: {row['system']}, recalled",
                basis=row["basis"],
                printed=row["dressed"],
                note=row["note"],
            )


def _named(row: Mapping[str, str]) -> tuple[str, Mapping[str, str]] | None:
    """What a row is asked for by, and what it expects; None for a rule that is no size."""
    called = row["nominal"].partition(" (")[0]
    size = called.replace("-", " ")
    if row["system"] in BOARDS:
        return f"{size} x 12", {"thickness": row["dressed"], "nominal": called}
    if row["system"] == WIDTHS:
        return f"1 x {size}", {"width": row["dressed"], "nominal_width": called}
    if row["system"] == QUARTERS:
        quarters = inches(called) * 4
        return f"{quarters}/4" if quarters >= 4 else f"{size} in", {"thickness": row["dressed"], "nominal": called}
    if row["system"] == NOYES:
        return f"1910-{size}", {"thickness": row["dressed"], "nominal": called}
    if row["system"] == GRIFFITH:
        thick, wide = row["dressed"].split(" x ")
        return f"1916-{called}", {"thickness": thick, "width": wide}
    return None


def inches(printed: str) -> Fraction:
    """A printed size such as 1-1/4."""
    return sum((Fraction(part) for part in printed.split("-")), Fraction(0))
