"""An order of work: its steps, each what to do, with which tool and what it is set to; gluing up before all else."""

from collections.abc import Callable, Sequence
from typing import Any

from calc.building.sizing import Known
from calc.declare import Values

Step = dict[str, Any]
LACKING = object()


def step(do: str, tool: str, setting: Any = None, second: Any = None, angle: Any = None) -> Step:
    """A step with up to two settings and an angle."""
    return {"do": do, "tool": tool, "setting": setting, "second": second, "angle": angle}


def sure(work: Callable[[Values], Sequence[Step]], v: Values, may_lack: Sequence[str]) -> list[Step]:
    """The steps without those set by one of these sizes where it is not known, since it cannot be made."""
    told = Known({**dict.fromkeys(may_lack, LACKING), **v})
    return [one for one in work(told) if LACKING not in one.values()]


def glued_first(m: Values, *parts: list[Step]) -> list[Step]:
    """The parts of the work one after another; before them the gluing up, where a part takes more than one strip."""
    glue = step("Joint and glue up the wide parts; let them cure", "clamps")
    glued = any(part.blank and part.strips > 1 for part in m["cut_list"])
    return [*([glue] if glued else []), *(one for part in parts for one in part)]
