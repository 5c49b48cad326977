"""How far the sums stand from the prints, as it is told on their pages."""

import pytest
from deviations import Tally, cells, tallies
from published import Check, everything

from calc import discover

FOUND = tallies()
CHECKS = everything()
FIVE = Check(
    sum="slope",
    given={"rise": "3 in", "run": "4 in"},
    expect={"length": "5.1"},
    unit={"length": "in"},
    source="",
    basis="computed",
)


def test_every_sum_has_its_tally_and_nothing_else_has() -> None:
    """The sums' own files are the list; one that no print bears on has an empty tally."""
    assert list(FOUND) == [one.id for one in discover.everything()]
    assert sum(len(tally.cells) for tally in FOUND.values()) == sum(len(check.expect) for check in CHECKS)


@pytest.mark.parametrize("name", [name for name, tally in FOUND.items() if tally.cells])
def test_a_print_is_missed_by_half_its_last_digit_or_a_reason_is_told(name: str) -> None:
    """Wherever a check allows more than half a digit, its note says why; a misprint is not held against the sum."""
    cells = [cell for cell in FOUND[name].cells if not cell.misprint]
    assert [cell for cell in cells if cell.digits > 0.5 * (1 + 1e-9) and not cell.note] == []
    assert FOUND[name].worst == max(cells, key=lambda cell: cell.digits)


def test_a_miss_is_told_in_digits_and_in_the_answers_unit() -> None:
    """Five inches printed as 5.1: one tenth of an inch is one unit of the last digit, and 2.54 mm."""
    (cell,) = cells(FIVE)
    assert (cell.digits, cell.off, cell.unit) == (pytest.approx(1), pytest.approx(2.54), "mm")


def test_a_misprint_is_counted_and_is_not_the_worst() -> None:
    """The decimal tables hold misprints, each far further off than any other figure there."""
    tally = FOUND["tally"]
    assert tally.misprints >= 3
    assert tally.worst
    assert tally.worst.digits < 1 < max(cell.digits for cell in tally.cells)


def test_each_answers_own_tally_is_a_part_of_the_whole() -> None:
    """Split by answer nothing is lost."""
    for tally in FOUND.values():
        assert sum(len(part.cells) for part in tally.by_answer.values()) == len(tally.cells)
        assert sum(tally.kinds.values()) == len(tally.cells)


def test_a_sum_without_prints_has_no_worst() -> None:
    """Nothing printed, nothing missed."""
    assert Tally(()).worst is None
