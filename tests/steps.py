"""Counting work without a clock: the lines of `calc` that run."""

import contextlib
import sys
from collections.abc import Callable
from types import FrameType
from typing import Any

from calc.errors import Refusal, Refused


def steps(work: Callable[[], Any]) -> int:
    """How many lines of calc's own code run while `work` does, whether it answers or refuses."""
    count = 0

    def trace(frame: FrameType, event: str, _: Any) -> Any:
        nonlocal count
        count += event == "line"
        return trace if frame.f_globals.get("__name__", "").startswith("calc.") else None

    before = sys.gettrace()
    sys.settrace(trace)
    try:
        with contextlib.suppress(Refusal, Refused):
            work()
    finally:
        sys.settrace(before)
    return count
