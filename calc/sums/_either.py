"""An angle, or a rise and run that make it: one or the other, never both."""

from typing import Any

from calc.errors import Refusal


def by_angle(name: str, angle: Any, rise: Any, run: Any) -> bool:
    """True when the angle is given, False when rise and run are; a Refusal naming the field to change for all else."""
    if angle is not None and (rise is not None or run is not None):
        raise Refusal("the angle is given, and a rise or run as well", "clear the angle, or clear rise and run", name)
    if angle is None and rise is None and run is None:
        raise Refusal("nothing says what the angle is", "type the angle, or its rise and run", name)
    if angle is None and (rise is None or run is None):
        raise Refusal(
            "a slope wants both its rise and its run", "fill in this one too", "rise" if rise is None else "run"
        )
    return angle is not None
