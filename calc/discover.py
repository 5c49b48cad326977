"""Finding the sums and pieces by their files: no second list anywhere."""

import pkgutil
from functools import cache
from importlib import import_module

import calc.pieces
import calc.sums
from calc.declare import MOMENTS, Sum
from calc.errors import Refusal, listed

PLACES = {"calc.sums": calc.sums.__path__, "calc.pieces": calc.pieces.__path__}


@cache
def modules() -> dict[str, str]:
    """The module of each id, in no import of them: {"hinge-strip": "calc.sums.hinge_strip", ...}."""
    return {
        found.name.replace("_", "-"): f"{place}.{found.name}"
        for place, path in PLACES.items()
        for found in pkgutil.iter_modules(path)
        if not found.name.startswith("_")
    }


@cache
def find(sum_id: str) -> Sum:
    """The sum or piece with this id; a Refusal when there is none."""
    if sum_id not in modules():
        raise _unknown(sum_id[:40])
    found = import_module(modules()[sum_id]).SUM
    if not isinstance(found, Sum) or found.id != sum_id:
        raise TypeError(f"{modules()[sum_id]} does not declare the sum {sum_id}")
    return found


def _unknown(sum_id: str) -> Refusal:
    import difflib  # only when something was misspelt

    near = difflib.get_close_matches(sum_id, modules(), cutoff=0.5)
    instead = f"perhaps {listed(near, 'or')} was meant" if near else f"choose one of {listed(sorted(modules()), 'or')}"
    return Refusal(f"there is no sum called “{sum_id}”", instead)


def everything() -> tuple[Sum, ...]:
    """Every sum and piece, in the order of the work, then by title."""
    found = [find(sum_id) for sum_id in modules()]
    return tuple(sorted(found, key=lambda one: (MOMENTS.index(one.moment), one.title)))
