"""One step of an order of work: what to do, with which tool, and what it is set to."""

from typing import Any

Step = dict[str, Any]


def step(do: str, tool: str, setting: Any = None, second: Any = None, angle: Any = None) -> Step:
    """A step with up to two settings and an angle."""
    return {"do": do, "tool": tool, "setting": setting, "second": second, "angle": angle}


GLUE = step("Joint and glue up the wide parts; let them cure", "clamps")
