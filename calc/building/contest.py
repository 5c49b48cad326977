"""Which cuts contend for the same givens, so that it counts which of them came first."""

from calc.building.fitting import Fitting
from calc.building.settle import Settled, order_of
from calc.building.trials import still


def contested(settled: Settled) -> list[str]:
    """The cuts that, had they come first, would make other givens give way than now; none where no misfit does harm.

    Each calls on a given that a cut which misfits calls on as well.
    """
    order = order_of(settled.piece, settled.record, settled.asked, settled.cuts)
    calls = {name: calls_on(settled, name) for name in order}
    sizes = settled.piece.sizes
    missing = [name for name in order if sizes[name].harms(settled.misses.get(name, 0), settled.values)]
    near = [name for name in order if any(calls[name] & calls[one] for one in missing)]
    return [name for name in near if len(near) > 1 and _counts(settled, name, order)]


def calls_on(settled: Settled, name: str) -> set[str]:
    """The givens that may move for a cut: those that are given, and not cut themselves."""
    by = settled.piece.sizes[name].yields.by
    return {one for one in by if settled.asked.get(one) is not None and one not in settled.cuts}


def _counts(settled: Settled, name: str, order: list[str]) -> bool:
    """Whether a given would stand elsewhere with this cut in front; one that is there already changes nothing."""
    if name == order[0]:
        return False
    in_front = [name, *(one for one in order if one != name)]
    other = Fitting(settled.piece, settled.asked, settled.cuts, in_front)
    return any(not still(other.givens[one] - settled.givens[one]) for one in {*settled.took, *other.took})
