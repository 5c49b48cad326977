"""A piece as its example has it: answered, worked out by number, and cut as a maker might have cut it."""

from fractions import Fraction
from typing import Any

import pytest
from building import METRIC, begun, done, numbers
from hypothesis import assume

import calc
from calc.answers import Result
from calc.building.gaps import gaps
from calc.building.piece import Piece
from calc.building.settle import Settled, settle
from calc.declare import Values
from calc.discover import find
from calc.drawing.solid import volume
from calc.errors import Refusal

Cut = tuple[str, str]


class Example:
    """A piece, its example's `givens` as typed, and `plain` as it stands before anything is cut."""

    def __init__(self, name: str) -> None:
        found = find(name)
        assert isinstance(found, Piece)
        self.piece: Piece = found
        self.givens = dict(found.example.givens)
        self.plain = settle(found, begun(found, **self.givens))

    def answer(self, **entry: str | None) -> Result:
        """What the example answers on a metric bench, with these entries instead of its own."""
        return calc.answer(self.piece.id, METRIC, **(self.givens | entry))

    def of(self, **givens: Any) -> Values:
        """The values of the piece by number; one that cannot be built is set aside."""
        try:
            return self.piece.of(**givens)
        except Refusal:
            assume(False)
            raise

    def sized(self, **sizes: int) -> Values:
        """The values of the example with these sizes, in millimetres."""
        given = {name: self.plain.asked[name] for name in self.givens}
        return self.piece.of(**given | {name: Fraction(size) for name, size in sizes.items()})

    def weighs_as_its_solids(self, v: Values) -> None:
        """The solids come to the wood answered, and that times the density to the weight."""
        assert self.piece.solids
        wood = sum(volume(one) for one in self.piece.solids(v))
        assert wood == pytest.approx(float(v["wood_volume"]), rel=1e-9)
        assert float(v["weight"]) == pytest.approx(wood / 1e9 * float(v["density"]), rel=1e-9)

    def cut(self, *cuts: Cut) -> Settled:
        """The example with these cuts."""
        return settle(self.piece, done(self.piece, begun(self.piece, **self.givens), [("cut", *cut) for cut in cuts]))

    def as_worked_out(self, *names: str) -> list[Cut]:
        """These parts cut just as they were worked out, to a millionth."""
        return [(name, f"{float(self.plain.values[name]):.9f}{self._unit(name)}") for name in names]

    def _unit(self, name: str) -> str:
        return "°" if self.piece.sizes[name].kind == "angle" else " mm"


def says(settled: Settled) -> list[str]:
    """What does not fit, in words."""
    return [gap.say for gap in gaps(settled)]


def offers(settled: Settled) -> list[str]:
    """What can be done about it."""
    return [choice.say for gap in gaps(settled) for choice in gap.choices]


def plain(settled: Settled) -> dict[str, Any]:
    """The sizes and givens alone."""
    return {name: one for name, one in numbers(settled).items() if name in settled.piece.labels}


def covered(v: Values) -> None:
    """Face by face, thickness by thickness, the board to buy is at least what the parts come to."""
    for row in v["buy"]:
        parts = [part for part in v["parts"] if part["blank"] and part["thickness"] == row["thickness"]]
        assert row["length"] * row["width"] >= sum(part["count"] * part["length"] * part["width"] for part in parts)
