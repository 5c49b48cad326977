"""Woods by common and botanical name, and what the tables say of each; what they do not say is not made up."""

from collections.abc import Mapping
from fractions import Fraction
from functools import cache

from calc import tables
from calc.errors import Refusal
from calc.kinds import Option
from calc.search import Search, words
from calc.tables import Figure
from calc.units import factor

OWN = "own"
PASCALS = {"MPa": "megapascal", "million psi": "million_psi"}


@cache
def names() -> dict[str, tuple[str, str]]:
    """Common and botanical name of every wood in the tables by its key: {"ash-white": ("Ash, white", ...), ...}."""
    listed = tables.rows("species_names")
    return {"-".join(words(row["species"])): (row["species"], row["botanical"]) for row in listed}


def options() -> tuple[Option, ...]:
    """Every wood as something to choose, and a wood that is in no table."""
    woods = tuple(Option(key, f"{common} ({botanical})") for key, (common, botanical) in names().items())
    return (*woods, Option(OWN, "Another wood, its figure typed below"))


def asked(help: str = "Search by a part of its common or botanical name: white ash, quercus, douglas.") -> Search:
    """The entry in which a wood is chosen."""
    return Search(name="species", label="Wood", help=help, options=options(), what="wood")


@cache
def _rows() -> dict[tuple[str, str], Mapping[str, str]]:
    return {(row["species"], row["quantity"]): row for row in tables.rows("species")}


def _scale(unit: str) -> Fraction | int:
    return factor(PASCALS[unit], "megapascal") if unit in PASCALS else 1


def figure(key: str, quantity: str) -> Figure | None:
    """What the tables say of a wood: coefficients a percent of moisture, shrinkage in percent, specific gravity,
    stiffness in megapascals; None where they say nothing."""
    row = _rows().get((names()[key][0], quantity)) if key in names() else None
    return None if row is None else tables.figure(row, scale=_scale(row["unit"]))


def missing(key: str, what: str, field: str, takes: str = "") -> Refusal:
    """Why nothing can be answered: this figure of this wood is not in the table. `takes` is what the field wants
    instead, where that is another figure."""
    if key == OWN:
        return Refusal("another wood is chosen, and this is empty", f"type its {takes or what}", field)
    own = f"type its {takes}" if takes else "type your own figure for it"
    return Refusal(f"the {what} of {names()[key][0]} is not in the table", own, field)
