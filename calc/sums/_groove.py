"""The working of groove: a panel that may swell without bursting its frame and shrink without leaving it; its proof."""

import math
from fractions import Fraction
from typing import Any

from calc.declare import Values
from calc.discover import find
from calc.errors import Refusal
from calc.show import plain

HUNDRED = Fraction(100)
DEEPEST = 60
"""Millimetres: the deepest groove that is asked for."""


def work(
    species: str,
    cut: str,
    opening: Fraction,
    depth: Fraction,
    along: Fraction | None,
    moisture_now: Any,
    humidity_now: Any,
    temperature: Any,
    humidity_damp: Any,
    humidity_dry: Any,
    spare: Fraction,
    frame: Fraction | None,
    own: Any,
) -> Values:
    """The climates as moisture contents, what they make of the panel's width, and the width that fits them all."""
    if humidity_dry > humidity_damp:
        raise Refusal("the driest air is damper than the dampest", "give the lower humidity here", "humidity_dry")
    now = _moisture(temperature, humidity_now) if moisture_now is None else moisture_now
    damp, dry = (_moisture(temperature, air) for air in (humidity_damp, humidity_dry))
    wood = {"species": species, "cut": cut, "own": own, "moisture_now": now}
    swollen, shrunk = (find("movement").of(**wood, width=HUNDRED, moisture_then=then) for then in (damp, dry))
    room = opening + 2 * depth
    found = _panel(room - spare, swollen["percent"], shrunk["percent"])
    wet = found["panel"] * (1 + swollen["percent"] / 100)
    _refuse(found, opening, spare)
    return {
        **found,
        "gap": (room - found["panel"]) / 2,
        "gap_damp": (room - wet) / 2,
        "hold": (found["narrowest"] - opening) / 2,
        "hold_far": found["narrowest"] - opening - depth,
        "panel_long": None if along is None else along + 2 * depth - spare,
        "groove": None if frame is None else frame / 3,
        "moisture_now": now,
        "moisture_damp": damp,
        "moisture_dry": dry,
        "figure_from": swollen["figure_from"],
    }


def _moisture(temperature: Any, humidity: Any) -> Any:
    return find("moisture").of(temperature=temperature, humidity=humidity)["emc"]


def _panel(fits: Any, swells: Any, shrinks: Any) -> Values:
    """The panel as it is cut, and at its widest and narrowest; it may be so already."""
    panel = fits / (1 + max(0, swells, shrinks) / 100)
    return {
        "panel": panel,
        "swells": swells,
        "shrinks": shrinks,
        "widest": fits,
        "narrowest": panel * (1 + min(0, swells, shrinks) / 100),
    }


def _refuse(found: Values, opening: Any, spare: Any) -> None:
    """Refuse grooves that the panel would leave when it is narrowest, even held in the middle."""
    if found["narrowest"] <= opening:
        least = float(opening * found["widest"] / found["narrowest"] + spare - opening) / 2
        deeper = Fraction(math.floor(least * 10) + 1, 10)
        cut = f"cut them {plain(deeper, 1)} mm deep or more, or " if deeper <= DEEPEST else ""
        raise Refusal(
            "at its narrowest the panel would come out of its grooves", f"{cut}part the panel in two", "depth"
        )


def proof(v: Values) -> dict[str, float]:
    """The panel itself, moved by the sum of wood movement, fills its grooves but for the spare, and stays in them."""
    ends = [
        find("movement").of(
            species=v["species"],
            cut=v["cut"],
            own=v["own"],
            width=v["panel"],
            moisture_now=v["moisture_now"],
            moisture_then=v[name],
        )["width_then"]
        for name in ("moisture_damp", "moisture_dry")
    ]
    room, panel = float(v["opening"] + 2 * v["depth"]), float(v["panel"])
    return {
        "at its widest it leaves the spare": (room - max(panel, *map(float, ends)) - float(v["spare"])) / room,
        "at its narrowest both edges are held as far as is told": (
            min(panel, *map(float, ends)) - 2 * float(v["hold"]) - float(v["opening"])
        )
        / room,
        "so they do in the dampest air": (float(ends[0]) + 2 * float(v["gap_damp"]) - room) / room,
        "panel and both gaps reach from groove to groove": (panel + 2 * float(v["gap"]) - room) / room,
    }
