"""What others have printed, against what the sums answer."""

import re

import pytest
from published import Check, everything

from calc.declare import BASES

CHECKS = everything()
PRINTS = [check for check in CHECKS if not check.misprint]
MISPRINTS = [check for check in CHECKS if check.misprint]


@pytest.mark.parametrize("check", PRINTS, ids=str)
def test_an_answer_agrees_with_what_was_printed(check: Check) -> None:
    """Every published figure is met to within half a unit of its last digit, or as near as its check allows."""
    assert check.expect, f"{check} expects nothing"
    assert not check.misses(check.expect), f"{check.source}: {check.printed} {check.note}"


@pytest.mark.parametrize("check", MISPRINTS, ids=str)
def test_a_misprint_is_not_repeated(check: Check) -> None:
    """Where the print is wrong the answer equals the exact figure, and differs from the print."""
    assert check.misses(check.expect).keys() == check.exact.keys() > set(), "the answer repeats the print"
    assert not check.misses(check.exact), f"{check.source}: {check.printed} {check.note}"


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_a_check_says_where_its_figure_comes_from(check: Check) -> None:
    """Each check names its source, and how the figure is known: read, computed, memory, common practice or identity."""
    assert check.source or check.basis == "computed"
    assert re.match("|".join(BASES), check.basis), check.basis
