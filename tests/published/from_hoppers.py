"""Settings of leaning sides, as checks of splay."""

from collections.abc import Iterator
from typing import Any

from published import Check, table

BOX = {"size": "300 mm", "height": "100 mm", "thickness": "15 mm"}


def checks() -> Iterator[Check]:
    """The square hopper, mitred and butted, from a drawn construction; and compound cuts for 3 to 12 sides."""
    for row in table("hopper_square_box_bevels.csv"):
        yield _check(row, "4", "mitre", face_cut="face_cut_off_square_deg", mitre_mark="miter_off_square_deg")
        yield _check(row, "4", "mitre", mitre_bevel="blade_tilt_for_miter_deg", dihedral="dihedral_between_sides_deg")
        yield _check(row, "4", "butt", face_cut="face_cut_off_square_deg", butt_mark="butt_off_square_deg")
    for row in table("compound_miter_computed.csv"):
        yield _check(row, row["sides"], "mitre", face_cut="miter_gauge_off_square_deg", mitre_bevel="blade_tilt_deg")


def _check(row: dict[str, str], sides: str, joint: str, **columns: str) -> Check:
    given: dict[str, Any] = {"sides": sides, "joint": joint, "lean": row["tilt_from_vertical_deg"], **BOX}
    return Check(
        sum="splay",
        given=given,
        expect={answer: row[column] for answer, column in columns.items()},
        source=row["source"],
        basis=row["basis"],
        note=row.get("note", ""),
    )
