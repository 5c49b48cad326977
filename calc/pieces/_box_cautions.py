"""What plain boxes warn of and stand on alike."""

from calc.declare import Caution, Source
from calc.pieces._cautions import ALWAYS, DUST, NAVY, REMEMBERED_NAIL, UNKNOWN_NAIL, glued_up, none_holds
from calc.pieces._weight import REMEMBERED
from calc.sums._movement import DISAGREE
from calc.tables import CHECK

LOOSE = 3
"""Millimetres a bottom may move before slim nails no longer give with it: common practice."""


def wide_bottom(nailed: str) -> Caution:
    """Said of a bottom that moves more than nails across its grain give; and how it is nailed instead."""
    return Caution(
        f"So wide a bottom moves more than slim nails give: make it of plywood, or quarter-sawn, or nail it {nailed}.",
        lambda v: v["bottom_across"] * (max(0, v["swells"]) - min(0, v["shrinks"])) / 100 > LOOSE,
        "common practice",
    )


CAUTIONS = (
    *ALWAYS,
    glued_up("Parts"),
    Caution(
        "Less than 5 mm is left to nail through at the rabbets, or to nail the bottom to.",
        lambda v: min(v["tongue"], v["rabbet"]) < 5,
        "common practice",
    ),
    none_holds("such as wire brads for thin wood"),
    REMEMBERED_NAIL,
    UNKNOWN_NAIL,
    Caution(
        "Two figures of the table disagree about this wood: the one that moves further is taken.",
        lambda v: DISAGREE in v["figure_from"],
    ),
    REMEMBERED,
    Caution(
        "The figure for this wood's movement is from memory and not from a source: check it before you trust a fit.",
        lambda v: CHECK in v["figure_from"],
    ),
)
SOURCES = (
    Source("Plane geometry", "parts laid out by coordinates", "identity"),
    Source(
        "US Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010) and FPL-GTR-282 (2021)",
        "as told by the sums of moisture, wood movement and weight",
        "read",
    ),
    NAVY,
    DUST,
    Source("Rabbets half the thickness, clearances, nails apart, order of work", "", "common practice"),
)
