"""What would be if a given or a cut were otherwise, everything else as it is."""

from typing import Any

from calc.building.fitting import Fitting
from calc.building.settle import Settled, order_of
from calc.building.sizing import Unknown
from calc.declare import Values
from calc.errors import Refusal
from calc.trig import Number


def value_if(settled: Settled, name: str, moved: Values) -> Any:
    """What a given or size would be if these had been given or cut otherwise; None when that cannot be said."""
    cuts = {cut: moved.get(cut, one) for cut, one in settled.cuts.items()}
    asked = {**settled.asked, **{given: one for given, one in moved.items() if given not in cuts}}
    return _value(settled, name, asked, cuts)


def value_uncut(settled: Settled, name: str) -> Any:
    """What a size would be were its part still to be cut; None when that cannot be said."""
    return _value(settled, name, settled.asked, {cut: one for cut, one in settled.cuts.items() if cut != name})


def _value(settled: Settled, name: str, asked: Values, cuts: Values) -> Any:
    piece = settled.piece
    givens = _fitting(settled, asked, cuts).givens
    values = piece.plan.known(givens, cuts)
    steps = piece.plan.leading([name], values.keys())
    piece.plan.redo(steps, values, piece.plan.typed(givens, cuts), {})
    return values.get(name)


def _fitting(settled: Settled, asked: Values, cuts: Values) -> Fitting:
    return Fitting(settled.piece, asked, cuts, order_of(settled.piece, settled.record, asked, cuts))


def fitted_if(settled: Settled, name: str, value: Number) -> Fitting:
    """How the givens would stand if `name` were cut so, and all settled again."""
    return _fitting(settled, settled.asked, {**settled.cuts, name: value})


def impossible_if(settled: Settled, after: Fitting) -> bool:
    """Whether something could not be made any more if the givens stood so, such as a groove right through its wall."""
    _, refused = settled.piece.plan.work_out(after.givens, after.cuts)
    return not refused.keys() <= settled.refused.keys()


def miss_if(settled: Settled, row: str, name: str, value: Number) -> Number | None:
    """How much larger the cut `row` would be than its function says if `name` were cut to `value`."""
    plan, cuts = settled.piece.plan, {**settled.cuts, name: value}
    values, typed = plan.known(settled.givens, cuts), plan.typed(settled.givens, cuts)
    plan.redo(plan.leading([row], values.keys()), values, typed, {})
    try:
        missed: Number = cuts[row] - plan.one(plan.by_name[row], values, typed)
    except (Unknown, Refusal):
        return None
    return missed
