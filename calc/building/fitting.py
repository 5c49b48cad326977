"""How the givens give way to what really came out of the saw.

A cut keeps its size. Where its own function says otherwise, the givens that may yield to it move, in the order the
piece declares: the first as far as its limit lets it, then the next. Moving one may upset a cut that was settled
before; then the two are settled together, with one more given to move, or that given is passed over. A cut to which
nothing yields is never settled, but while it fits, nothing moves that would make it misfit.
"""

from collections.abc import Hashable, Iterator, Mapping, Sequence
from fractions import Fraction
from itertools import islice

from calc.building.elimination import Misses, Point
from calc.building.moves import Moved, moved
from calc.building.piece import Piece
from calc.building.sizing import Unknown
from calc.building.trials import still
from calc.declare import Values
from calc.errors import Refusal
from calc.remembered import Kept
from calc.trig import Number

PACE = Fraction(1, 64)
"""How far a given is moved to see who feels it, in millimetres or degrees."""
MOST_TRIED = 12
"""How many ways of moving givens together are tried for one cut and one given."""

MOVES: Kept[Moved | None] = Kept(1024)  # where givens went, by all that it hung on


class Fitting:
    """The givens as they stand while cuts are settled in their order; `took` says which given moved for which cut."""

    def __init__(self, piece: Piece, givens: Values, cuts: Values, order: Sequence[str]) -> None:
        self.piece, self.plan, self.cuts = piece, piece.plan, cuts
        self.givens = dict(givens)
        self.took: dict[str, str] = {}
        self.fixed = cuts.keys() | {name for name, one in givens.items() if one is not None}
        self.lead = self.plan.leading(order, self.fixed)
        self.values = self.plan.known(givens, cuts)
        self.missed: dict[str, Number | None] = {}  # true until a given moves that the cut feels
        self.feeling: dict[tuple[str, str], bool] = {}  # the same
        self._follow(())
        for at, row in enumerate(order):
            self._settle(row, order[:at])

    def _follow(self, moved: Sequence[str]) -> None:
        """Bring what leads to the cuts up to date after givens have moved."""
        felt = set(self.plan.touched(moved, self.fixed))
        stale = felt - self.fixed
        self.missed = {row: one for row, one in self.missed.items() if row not in felt}
        self.feeling = {(row, name): one for (row, name), one in self.feeling.items() if row not in felt}
        self.values = {name: one for name, one in self.values.items() if name not in stale}
        self.values |= {name: self.givens[name] for name in moved}
        self.plan.redo(self.lead, self.values, self.plan.typed(self.givens, self.cuts), {})

    def misses(self, rows: Sequence[str], movers: Sequence[str]) -> Misses:
        """How much larger the cuts `rows` are than their functions say, for any sizes of the givens `movers`."""
        stale = set(self.plan.touched(movers, self.fixed)) - self.fixed
        kept = {name: one for name, one in self.values.items() if name not in stale}
        lead, worked = self.plan.leading(rows, self.fixed), [self.plan.by_name[row] for row in rows]

        def found(point: Point) -> list[Number] | None:
            moved = dict(zip(movers, point, strict=True))
            values, typed = kept | moved, self.plan.typed(self.givens | moved, self.cuts)
            self.plan.redo(lead, values, typed, {})
            try:
                return [self.cuts[step.name] - self.plan.one(step, values, typed) for step in worked]
            except (Unknown, Refusal):
                return None

        return found

    def miss(self, row: str) -> Number | None:
        """How much larger this cut is than its function says; None when that cannot be said."""
        if row not in self.missed:
            found = self.misses((row,), ())(())
            self.missed[row] = found[0] if found else None
        return self.missed[row]

    def yields(self, row: str) -> list[str]:
        """The givens that may move for this cut: those that are given, and not cut themselves."""
        named = self.piece.sizes[row].yields.by
        return [name for name in named if self.givens.get(name) is not None and name not in self.cuts]

    def _settle(self, row: str, earlier: Sequence[str]) -> None:
        for taken in (False, True):
            for name in self.yields(row):
                for movers in islice(self._movers({row: name}, earlier), MOST_TRIED):
                    left = self.miss(row)
                    if left is None or still(left):
                        return
                    if (self.took.get(name, row) != row) == taken:
                        self._move(movers, earlier)

    def _movers(self, movers: dict[str, str], earlier: Sequence[str]) -> Iterator[dict[str, str]]:
        """Each way to let givens move for these cuts and every earlier one that this upsets, the least new first."""
        behind = self._upset(movers, earlier)
        if not behind:
            yield movers
            return
        free = [one for one in self.yields(behind) if one not in movers.values()]
        for one in sorted(free, key=lambda one: self.took.get(one) != behind):
            yield from self._movers({**movers, behind: one}, earlier)

    def _upset(self, movers: Mapping[str, str], earlier: Sequence[str]) -> str:
        names = list(movers.values())
        settled = [one for one in self._felt(names, earlier) if one not in movers and self.yields(one)]
        return next((one for one in settled if any(self._feels(one, name) for name in names)), "")

    def _felt(self, names: Sequence[str], rows: Sequence[str]) -> list[str]:
        """Those of the cuts that may feel it when these givens move."""
        felt = self.plan.touched(names, self.fixed)
        return [one for one in rows if one in felt]

    def _feels(self, row: str, name: str) -> bool:
        """Whether a cut does feel it when a given moves: a function may ask for one of which it makes nothing."""
        if (row, name) not in self.feeling:
            here, beside = self.miss(row), self.misses((row,), (name,))((Fraction(self.givens[name]) + PACE,))
            self.feeling[row, name] = here is None or beside is None or not still(beside[0] - here)
        return self.feeling[row, name]

    def _fits(self, row: str, missed: Number) -> bool:
        return not self.piece.sizes[row].harms(missed, self.values)

    def _spoils(self, names: Sequence[str], to: Moved, rows: Sequence[str]) -> bool:
        """Whether a cut to which nothing yields, and which fits, would not when these givens move."""
        here = {one: self.miss(one) for one in self._felt(names, rows) if not self.yields(one)}
        held = [one for one, missed in here.items() if missed is not None and self._fits(one, missed)]
        after = self.misses(held, names)(tuple(Fraction(one) for one in to))
        return after is None or not all(self._fits(one, missed) for one, missed in zip(held, after, strict=True))

    def _move(self, movers: Mapping[str, str], earlier: Sequence[str]) -> None:
        names = list(movers.values())
        found = MOVES.get(self._feeding(movers), lambda: self._moved(movers))
        if found and not self._spoils(names, found, earlier):
            self.givens |= dict(zip(names, found, strict=True))
            self.took |= {name: row for row, name in movers.items()}
            self._follow(names)

    def _feeding(self, movers: Mapping[str, str]) -> Hashable:
        """All that `_moved` hangs on. Most of it stands as it did when a piece was last settled."""
        typed = self.plan.typed(self.givens, self.cuts)
        names = self.plan.feeding(movers, self.fixed)
        values = [*(self.values.get(name, Unknown) for name in names), *typed.values()]
        return self.plan, names, *movers.items(), *typed, *values, *map(type, values)

    def _moved(self, movers: Mapping[str, str]) -> Moved | None:
        givens = [(self.piece.given(name), self.givens[name]) for name in movers.values()]
        return moved(self.misses(list(movers), list(movers.values())), givens)
