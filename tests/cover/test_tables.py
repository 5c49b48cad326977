"""Published figures: every row can be read, says how it is known, and names a work that is listed."""

from fractions import Fraction
from importlib import resources

import pytest

from calc import tables
from calc.declare import BASES
from calc.units import MM_PER_INCH

NAMES = sorted(
    file.name.removesuffix(".csv") for file in resources.files("calc.tables").iterdir() if file.name.endswith(".csv")
)
FIGURES = [name for name in NAMES if name != "sources"]
NUMBERS = ("value", "diameter_in", "length_in", "dim1", "dim2")


@pytest.mark.parametrize("name", FIGURES)
def test_each_row_says_how_it_is_known(name: str) -> None:
    """A figure was read, computed or remembered; only what is remembered has no source, and every source is listed."""
    assert tables.rows(name)
    for row in tables.rows(name):
        assert row["basis"] in BASES, row
        assert (row["basis"] == "memory") == (not row["source"]), row
        assert not row["source"] or tables.work(row["source"]), row


@pytest.mark.parametrize("name", FIGURES)
def test_each_figure_can_be_read(name: str) -> None:
    """Every number is more than nothing; gauges and pennies are names, not numbers."""
    for row in tables.rows(name):
        for column in (column for column in NUMBERS if column in row and row.get("quantity") != "gauge_WM"):
            assert tables.figure(row, column).value > 0, row


def test_a_mixed_number_is_read_exactly() -> None:
    """Tables print 11-1/2 for eleven and a half."""
    row = {"value": "11-1/2", "source": "S10", "basis": "read"}
    assert tables.figure(row).value == Fraction(23, 2)


def test_a_figure_can_be_turned_into_millimetres() -> None:
    """A scale multiplies exactly: 0.0043 in is 0.10922 mm."""
    assert tables.figure({"value": "0.0043", "source": "S14", "basis": "read"}, scale=MM_PER_INCH).value == Fraction(
        "0.10922"
    )


def test_a_remembered_figure_says_so() -> None:
    """Whoever prints where a figure is from prints that it is from memory."""
    assert tables.figure({"value": "1", "source": "", "basis": "memory"}).said == tables.CHECK
    assert tables.figure({"value": "1", "source": "S10", "basis": "read"}).said == "I. S. Griffith, Carpentry (1916)"


def test_a_table_that_is_not_there_is_an_error() -> None:
    """A name misspelt is found out at once."""
    with pytest.raises(FileNotFoundError):
        tables.rows("nails_of_the_moon")


def test_number_drills_lie_between_their_neighbours() -> None:
    """The larger the number the thinner the drill, and No. 30 is 0.1285 in (GNU Units, definitions, 2024)."""
    drills = sorted(tables.rows("number_drill_sizes"), key=lambda row: int(row["drill_number"]))
    sizes = [tables.figure(row, "diameter_in").value for row in drills]
    assert sizes == sorted(sizes, reverse=True)
    assert dict(zip((row["drill_number"] for row in drills), sizes, strict=True))["30"] == Fraction("0.1285")
