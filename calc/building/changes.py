"""What one entry changed: open sizes that are not what they were, cuts that no longer agree, and nothing else."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from calc.building.gap import Gap
from calc.building.gaps import Alike, alike, gaps
from calc.building.settle import Settled
from calc.show import NOISE


@dataclass(frozen=True)
class Change:
    """An open size or a given before and after; None where it was or is not known. `by` is after less before."""

    name: str
    before: Any
    after: Any

    @property
    def by(self) -> Any:
        """How much larger it is now; None where that makes no sense."""
        numbers = not isinstance(self.before, str | None) and not isinstance(self.after, str | None)
        return self.after - self.before if numbers else None


@dataclass(frozen=True)
class Changes:
    """sizes: open ones that changed. gaps, unlike, broken, impossible: what has gone wrong since, or differently."""

    sizes: tuple[Change, ...]
    gaps: tuple[Gap, ...]
    unlike: tuple[Alike, ...]
    broken: tuple[str, ...]
    impossible: tuple[str, ...]


def changes(before: Settled, after: Settled) -> Changes:
    """What differs between two settlings of one piece; what the maker has just given or cut is left out."""
    gone = {gap.name: gap.amount for gap in gaps(before)}
    apart = {one.names: one.apart for one in alike(before) if not one.fits}
    return Changes(
        tuple(_sizes(before, after)),
        tuple(gap for gap in gaps(after) if not _same(gone.get(gap.name), gap.amount)),
        tuple(one for one in alike(after) if not one.fits and not _same(apart.get(one.names), one.apart)),
        tuple(name for name in after.broken if name not in before.broken),
        tuple(name for name in after.refused if name not in before.refused),
    )


def _sizes(before: Settled, after: Settled) -> Iterator[Change]:
    names = dict.fromkeys([*(one.name for one in after.piece.givens), *after.piece.sizes])
    for name in names:
        was, now = before.values.get(name), after.values.get(name)
        if name not in after.cuts and not _entered(before, after, name) and not _same(was, now):
            yield Change(name, was, now)


def _entered(before: Settled, after: Settled, name: str) -> bool:
    """True when its own entry is what changed, and it stands as it was entered."""
    typed = before.record.givens.get(name) != after.record.givens.get(name)
    return typed and name not in after.took


def held(before: Settled, after: Settled) -> list[str]:
    """What has just been given and is cut already, or gives way to a cut, so that the new entry has to wait."""
    longer = len(after.record.entries) > len(before.record.entries)
    given = {name for name, one in after.record.givens.items() if before.record.givens.get(name) != one}
    return [name for name in (*after.cuts, *after.took) if longer and name in given]


def _same(was: Any, now: Any) -> bool:
    if was is None or now is None or isinstance(was, str) or isinstance(now, str):
        return bool(was == now)
    return bool(abs(float(was) - float(now)) <= NOISE)
