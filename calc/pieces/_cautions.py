"""What pieces warn of alike: tools and dust, stock too narrow, nails; and whom they have it from."""

from collections.abc import Collection

from calc.declare import Caution, Source, Values
from calc.pieces._joints import NAILED
from calc.tables import CHECK

DUST = Source("UK Health and Safety Executive", "wood dust", "read")
NAVY = Source(
    "US Navy training course NAVEDTRA 14119",
    "chapter 3",
    "read",
    "Nails three times as long as the piece they hold is thick.",
)
ALWAYS = (
    Caution("Keep edges sharp, clamp the work, cut away from yourself, and wear eye protection when you nail."),
    Caution(
        "Wood dust harms the lungs, and settled dust the most: plane rather than sand, and keep dust down.",
        source=f"{DUST.work}, {DUST.where}",
    ),
    Caution("Near an end or edge wood splits: bore every hole, and blunt the point."),
)
"""What stands beside every piece that is sawn and nailed: what hurts first, since a small screen folds the rest."""
REMEMBERED_NAIL = Caution(
    "The thickness of a nail here is from memory: measure yours before you bore.",
    lambda v: any(CHECK in row["from"] for row in v["joints"]),
)
UNKNOWN_NAIL = Caution(
    "No table has the thickness of one of these nails: measure yours, and bore a hole to suit.",
    lambda v: any(row["length"] and row["diameter"] is None for row in v["joints"]),
)


def glued_up(told: str, parts: Collection[str] = ()) -> Caution:
    """Said where parts are glued up from several widths of stock: any of them, or one of these."""

    def wide(v: Values) -> bool:
        return any(row["blank"] and row["strips"] > 1 and (not parts or row["part"] in parts) for row in v["parts"])

    return Caution(f"{told} are wider than your stock: glue them up before anything else.", wide)


def none_holds(instead: str) -> Caution:
    """Said where the table of joints has one that no nail of the kind fits; and what to choose."""
    say = f"At one joint no nail of this kind holds without coming through: choose another kind, {instead}."
    return Caution(say, lambda v: any(row["length"] is None and row["by"] == NAILED for row in v["joints"]))


NO_NAIL_HOLDS = none_holds("wire brads for thin wood, or use screws there")
