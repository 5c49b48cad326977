"""What is left out is told as what it is: the answers that are missing for it, and no others."""

from typing import Any

import pytest

from calc.building import acts
from calc.building.record import Record
from calc.building.settle import Settled, settle
from calc.discover import find
from calc.probing.why import unsaid


def without(name: str, *left_out: str, **more: str) -> Settled:
    """A piece with its example, these of its givens left empty."""
    piece: Any = find(name)
    record = Record(piece.id)
    for given, text in {**piece.example.givens, **more}.items():
        if given not in left_out:
            record = acts.give(piece, record, given, text)
    return settle(piece, record)


@pytest.mark.parametrize("name", ["sloping-lid-box", "splayed-tray"])
def test_without_a_wood_nothing_is_said_of_its_weight(name: str) -> None:
    """And the piece is whole all the same; with one, its weight is there."""
    empty = without(name, "species")
    assert (empty.whole, unsaid(empty, "species")) == (True, ["weight", "density"])
    assert unsaid(without(name), "species") == []


@pytest.mark.parametrize("name", ["sloping-lid-box", "flat-lid-box", "sliding-lid-box", "wall-shelf", "splayed-tray"])
def test_without_a_price_nothing_is_said_of_the_cost(name: str) -> None:
    """Of nothing else."""
    empty = without(name, "price")
    assert (empty.whole, unsaid(empty, "price")) == (True, ["cost"])
    assert unsaid(without(name), "price") == []


def test_what_is_worked_out_when_it_is_left_empty_leaves_nothing_unsaid() -> None:
    """A lid of the same stock has its thickness, and a shrinkage of one's own is no more than a better figure."""
    assert unsaid(without("sloping-lid-box"), "lid_thickness") == []
    assert unsaid(without("flat-lid-box", "price"), "shrinkage") == []
