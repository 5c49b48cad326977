"""The table of woods against the tables it was made from, and those tables against each other."""

from collections.abc import Mapping
from fractions import Fraction
from statistics import mean

import pytest
from published import table

from calc import tables
from calc.sums import _movement

COLUMNS = {
    "wood_dimensional_change_coefficients.csv": {"C_R_per_pct_mc": "c_radial", "C_T_per_pct_mc": "c_tangential"},
    "wood_shrinkage_green_to_ovendry.csv": {
        "radial_pct": "shrink_radial",
        "tangential_pct": "shrink_tangential",
        "volumetric_pct": "shrink_volume",
    },
    "wood_strength_us_12pct.csv": {"specific_gravity_12pct": "gravity_12", "MOE_million_psi": "stiffness"},
}
ROWS = tables.rows("species")
READ = [row for row in ROWS if row["basis"] == "read"]
QUANTITIES = {(row["species"], row["quantity"]): row for row in ROWS}


def printed() -> set[tuple[str, str, Fraction]]:
    """Every figure of the source tables: printed name, quantity, value."""
    found = set()
    for name, columns in COLUMNS.items():
        for row in table(name):
            found |= {(row["species"], to, Fraction(row[at])) for at, to in columns.items() if row[at]}
    for row in table("wood_strength_metric.csv"):
        found.add((row["species"], f"gravity_{row['moisture'].rstrip('%')}", Fraction(row["specific_gravity"])))
        found.add((row["species"], "stiffness", Fraction(row["MOE_MPa"])))
    return found | set(_circular())


def _circular() -> list[tuple[str, str, Fraction]]:
    """The first lot of each wood in Circular 213, which is the only one where a figure is marked as read."""
    columns = {
        "sg_volume_green": "gravity_green",
        "shrink_radial_pct": "shrink_radial",
        "shrink_tangential_pct": "shrink_tangential",
        "shrink_volume_pct": "shrink_volume",
    }
    rows = table("wood_sg_shrinkage_circ213.csv")
    return [(row["species_as_printed"], to, Fraction(row[at])) for row in rows for at, to in columns.items() if row[at]]


PRINTED = printed()


@pytest.mark.parametrize("row", READ, ids=lambda row: f"{row['species']} {row['quantity']}")
def test_a_figure_marked_as_read_is_as_printed(row: Mapping[str, str]) -> None:
    """Name, quantity and value stand in the source's own table."""
    assert (row["printed"], row["quantity"], Fraction(row["value"])) in PRINTED


PAIRS = [
    (species, way)
    for species in sorted({row["species"] for row in ROWS})
    for way in ("radial", "tangential")
    if all(QUANTITIES.get((species, f"{kind}_{way}"), {}).get("basis") == "read" for kind in ("c", "shrink"))
]


@pytest.mark.parametrize(("species", "way"), PAIRS)
def test_printed_coefficients_and_shrinkages_are_one_relation(species: str, way: str) -> None:
    """Tables 13-5 and 4-3 agree by C = S / (3000 - 20 S), to the last digit printed, but for cedar elm."""
    c, s = (Fraction(QUANTITIES[species, f"{kind}_{way}"]["value"]) for kind in ("c", "shrink"))
    agrees = abs(_movement.by_shrinkage(s) - c) <= Fraction(1, 100000)
    assert agrees == (species != "Elm, cedar")


def test_enough_pairs_bear_the_relation_out() -> None:
    """Nineteen woods, both ways."""
    assert len(PAIRS) == 38


@pytest.mark.parametrize(("way", "typical"), [("radial", 4), ("tangential", 8)])
def test_the_average_wood_shrinks_as_an_encyclopedia_says(way: str, typical: int) -> None:
    """About 4 % radially and 8 % tangentially (S37)."""
    assert mean(float(row["value"]) for row in READ if row["quantity"] == f"shrink_{way}") == pytest.approx(
        typical, abs=0.9
    )


def test_gravity_at_12_percent_follows_from_gravity_green() -> None:
    """Equation 4-13 takes each green gravity of the handbook to that printed at 12 %: near for each, nearer for all."""
    green = [row for row in READ if row["quantity"] == "gravity_green" and row["source"] != "S09" and not row["note"]]
    misses = [_at_12(float(row["value"])) - float(QUANTITIES[row["species"], "gravity_12"]["value"]) for row in green]
    assert max(map(abs, misses)) < 0.025
    assert mean(misses) == pytest.approx(0, abs=0.005)


def _at_12(green: float) -> float:
    return green / (1 - 0.265 * green * (1 - 12 / 30))
