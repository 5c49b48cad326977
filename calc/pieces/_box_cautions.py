"""What plain boxes warn of and stand on alike."""

from calc.declare import Caution, Source
from calc.pieces._weight import REMEMBERED
from calc.sums._movement import DISAGREE
from calc.tables import CHECK

LOOSE = 3
"""Millimetres a bottom may move before slim nails no longer give with it: common practice."""
CAUTIONS = (
    Caution("Keep edges sharp, clamp the work, cut away from yourself, and wear eye protection when you nail."),
    Caution("Near an end or edge wood splits: bore every hole, and blunt the point."),
    Caution(
        "Wood dust harms the lungs, and settled dust the most: plane rather than sand, and keep dust down.",
        source="UK Health and Safety Executive, wood dust",
    ),
    Caution(
        "Parts are wider than your stock: glue them up before anything else.",
        lambda v: any(row["strips"] > 1 for row in v["parts"]),
    ),
    Caution(
        "Less than 5 mm is left to nail through at the rabbets, or to nail the bottom to.",
        lambda v: min(v["tongue"], v["rabbet"]) < 5,
        "common practice",
    ),
    Caution(
        "So wide a bottom moves more than slim nails give: make it of plywood, or quarter-sawn, or nail it along the "
        "front and at the middle of the sides only.",
        lambda v: v["bottom_across"] * (max(0, v["swells"]) - min(0, v["shrinks"])) / 100 > LOOSE,
        "common practice",
    ),
    Caution(
        "At one joint nothing of this kind holds without coming through: choose another kind, such as wire brads for "
        "thin wood.",
        lambda v: any(row["length"] is None for row in v["joints"]),
    ),
    Caution(
        "The thickness of a nail here is from memory: measure yours before you bore.",
        lambda v: any(CHECK in row["from"] for row in v["joints"]),
    ),
    Caution(
        "No table has the thickness of one of these nails: measure yours, and bore a hole to suit.",
        lambda v: any(row["length"] and row["diameter"] is None for row in v["joints"]),
    ),
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
    Source(
        "US Navy training course NAVEDTRA 14119",
        "chapter 3",
        "read",
        "Nails three times as long as the piece they hold is thick.",
    ),
    Source("UK Health and Safety Executive", "wood dust", "read"),
    Source("Rabbets half the thickness, clearances, nails apart, order of work", "", "common practice"),
)
