"""The slot itself: what goes in, how big the slot, the holes that start it and where they are marked."""

import math
from fractions import Fraction
from typing import Any

from calc import trig
from calc.declare import Values
from calc.errors import Refusal
from calc.show import plain
from calc.sums import _drills
from calc.sums._money import things

PAPER = Fraction(1, 10)
PRACTICE = "0.1 mm thick by common practice, no source"
Size = Fraction | None
RACKS = {"inch": _drills.inch, "mm": _drills.halves}


def thing(what: str, length: Size, width: Size, thickness: Size) -> Values:
    """The sizes of what goes in, the maker's own or the table's, and where they are from."""
    if what != "own":
        found = things()[what]
        return _told(found.length.value, found.width.value, thickness or found.thick, found.said)
    if length is None or width is None:
        field = "length" if length is None else "width"
        raise Refusal("nothing is typed here", "measure what is to go in, or choose it from the list", field)
    return _told(length, width, thickness, "your own")


def _told(length: Fraction, width: Fraction, thickness: Size, said: str) -> Values:
    told = said if thickness else f"{said}; {PRACTICE}"
    return {"item_length": length, "item_width": width, "sheet": thickness or PAPER, "size_from": told}


def folded(item: Values, halved: int, narrowed: int, loft: Fraction, leads: str) -> Values:
    """The folded thing: its faces, its layers, and the edge that lies along the slot."""
    layers = 2 ** (halved + narrowed)
    long, wide = item["item_length"] / 2**halved, item["item_width"] / 2**narrowed
    ply = item["sheet"] if layers == 1 else max(loft, item["sheet"])
    side = max(long, wide) if leads == "longer" else min(long, wide)
    return {
        "layers": layers,
        "ply": ply,
        "folded_length": long,
        "folded_width": wide,
        "thick": layers * ply,
        "side": side,
        "deep": long + wide - side,
    }


def cut(side: Fraction, thick: Fraction, clearance: Fraction, ease: Fraction, rack: str, folds: str) -> Values:
    """The slot to cut: as long as the thing and its clearance, as wide as a drill that leaves it room."""
    wanted, long = thick + 2 * ease, side + 2 * clearance
    drill = _drills.at_least(wanted, RACKS[rack](), "ease")
    wide = drill.diameter
    if long <= wide:
        say = f"the slot would be {plain(long, 1)} mm long and {plain(wide, 1)} mm wide"
        raise Refusal(say, *(("fold it less", folds) if folds else ("give more clearance at each end", "clearance")))
    takes = wide / 2 - trig.sqrt(wide * wide / 4 - thick * thick / 4)
    return {"slot_length": long, "room": wanted, "slot_width": wide, "drill": drill.name, "round_takes": takes}


def holes(slot_length: Fraction, slot_width: Fraction, web: Fraction) -> Values:
    """Hole centres evenly along the slot, the first and last making its ends; at least `web` of wood between."""
    run = slot_length - slot_width
    gaps = max(1, math.floor(run / (slot_width + web)))
    pitch = run / gaps
    return {"run": run, "holes": gaps + 1, "pitch": pitch, "waste": pitch - slot_width, "gaps": gaps}


def placed(slot_length: Fraction, lid: Size, start: Size, low: Size, high: Size) -> Values:
    """Where the slot begins and ends on the lid: as told, else midway between battens, else midway on the lid."""
    if low is not None and high is not None and high <= low:
        raise Refusal("the free space ends before it begins", "measure both from the same end of the lid", "clear_to")
    begins = start if start is not None else _midway(slot_length, lid, low, high)
    ends = None if begins is None else begins + slot_length
    if lid is not None and begins is not None and ends is not None and (begins < 0 or ends > lid):
        raise Refusal(
            f"the slot is {plain(slot_length, 1)} mm long and would run off the lid",
            "give a longer lid or move the slot",
            "lid",
        )
    return {
        "begins": begins,
        "ends": ends,
        "clear_low": None if begins is None or low is None else begins - low,
        "clear_high": None if ends is None or high is None else high - ends,
        "marks_from": "the end of the slot" if begins is None else "the end of the lid",
    }


def _midway(slot_length: Fraction, lid: Size, low: Size, high: Size) -> Size:
    if low is not None and high is not None:
        return (low + high - slot_length) / 2
    return None if lid is None else (lid - slot_length) / 2


def centres(values: Values) -> list[dict[str, Any]]:
    """Each hole's centre as a running mark from one end, worked from the exact pitch so that nothing adds up."""
    first = (values["begins"] or 0) + values["slot_width"] / 2
    return [{"hole": at + 1, "mark": first + at * values["pitch"]} for at in range(values["holes"])]


FINGER = Fraction(12)
"""Millimetres: the jointed test finger of IEC 60529, from memory."""
