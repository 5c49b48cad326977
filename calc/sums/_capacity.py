"""How many notes, cards or coins a box holds: stacked in their best way, and thrown in loose by a packing share."""

import math
from collections.abc import Iterator
from fractions import Fraction
from itertools import permutations
from typing import Any

from calc.declare import Values
from calc.errors import Refusal
from calc.sums import _slot_holes
from calc.sums._money import things

SIDES = ("box_length", "box_width", "box_height")
SAID = {"box_length": "length", "box_width": "width", "box_height": "height"}
Spot = tuple[float, float]


def work(what: str, shape: str, halved: int, narrowed: int, loft: Fraction, share: Fraction, **more: Any) -> Values:
    """The size of one, folded; then the best of the ways to stack it; then what a heap of them takes."""
    listed = what != "own"
    round_ = not things()[what].folds if listed else shape == "round"
    if round_ and halved + narrowed:
        raise Refusal("a coin does not fold", "set both folds to 0", "halved" if halved else "narrowed")
    item = _slot_holes.thing(what, more["length"], more["width"], more["thickness"])
    if round_ and item["item_length"] != item["item_width"]:
        raise Refusal("a round thing is as wide as it is long", "give its diameter for both", "width")
    packet = _slot_holes.folded(item, halved, narrowed, loft, "shorter")
    size = (packet["folded_length"], packet["folded_width"], packet["thick"])
    best = _stacked({name: more[name] for name in SIDES}, size, round_)
    volume = more["box_length"] * more["box_width"] * more["box_height"]
    one = math.pi * size[0] ** 2 / 4 * size[2] if round_ else size[0] * size[1] * size[2]
    loose = math.floor(volume * share / 100 / one)
    return {
        **{name: packet[name] for name in ("layers", "ply", "thick")},
        **{"diameter": size[0] if round_ else None, "size_from": item["size_from"], "sheet": item["sheet"]},
        **{name: None if round_ else packet[name] for name in ("folded_length", "folded_width")},
        **{"volume": volume, "one": one, "loose": loose, "filled": 100 * best["stacked"] * one / volume},
        **best,
        **_masses(more["one_mass"], best["stacked"], loose),
    }


def _masses(one: Any, stacked: int, loose: int) -> Values:
    return {
        "mass_most": None if one is None else one * max(stacked, loose),
        "mass_stacked": None if one is None else one * stacked,
        "mass_loose": None if one is None else one * loose,
    }


def _stacked(box: Values, size: tuple[Any, Any, Any], round_: bool) -> Values:
    """The way that holds most: which side of the box the stack rises along, and what lies in one layer of it."""
    ways = [_way(box, names, size, round_) for names in permutations(SIDES)]
    best = max(ways, key=lambda way: way["stacked"])
    if not best["stacked"]:
        folds = "" if round_ else ", or fold it once more"
        raise Refusal("not even one goes inside", f"give a bigger box{folds}", "box_length")
    return best


def _way(box: Values, names: tuple[str, ...], size: tuple[Any, Any, Any], round_: bool) -> Values:
    long, wide, tall = (box[name] for name in names)
    piles = math.floor(tall / size[2])
    grid = math.floor(long / size[0]) * math.floor(wide / size[1])
    close = staggered(long, wide, size[0]) if round_ else 0
    layer = max(grid, close)
    set_ = "in staggered rows" if close > grid else "in straight rows"
    return {
        "stacked": layer * piles,
        "a_layer": layer,
        "high": piles,
        "lie": f"{set_}, the stack rising along the {SAID[names[2]]}",
        "plan": ", ".join(SAID[name] for name in names),
    }


def _rows(wide: Any, across: Any) -> int:
    """Staggered rows that go into a width: each after the first takes the height of a triangle of three circles."""
    return 1 + math.floor(float(wide - across) / (float(across) * math.sqrt(3) / 2))


def staggered(long: Any, wide: Any, across: Any) -> int:
    """How many circles lie in staggered rows; every other row is shifted by half a circle."""
    if min(long, wide) < across:
        return 0
    rows = _rows(wide, across)
    plain, shifted = int(long // across), int((long - across / 2) // across)
    return (rows + 1) // 2 * plain + rows // 2 * shifted


def sides(v: Values) -> list[str]:
    """The names of the two sides a layer lies along, and of the one the stack rises along."""
    return [f"box_{side}" for side in v["plan"].split(", ")]


def bricked(long: Any, wide: Any, across: Any) -> Iterator[Spot]:
    """Middles of circles in staggered rows, each row lying in the hollows of the one before."""
    if min(long, wide) < across:
        return
    pitch = float(across) * math.sqrt(3) / 2
    for row in range(_rows(wide, across)):
        shift = across / 2 if row % 2 else 0
        for at in range(math.floor((long - shift) / across)):
            yield float(shift + across * at + across / 2), float(across) / 2 + row * pitch


def proof(v: Values) -> dict[str, float]:
    """No more is in the box than the box holds, stacked or loose; one more loose would pass the share."""
    volume, one = float(v["volume"]), float(v["one"])
    room = volume * float(v["share"]) / 100
    long, wide, tall = (float(v[name]) for name in sides(v))
    face = one / float(v["thick"])
    return {
        "what is stacked is no more than the box": max(0.0, v["stacked"] * one / volume - 1),
        "what lies in a layer covers no more than its floor": max(0.0, v["a_layer"] * face / (long * wide) - 1),
        "the layers are no higher than the box": max(0.0, v["high"] * float(v["thick"]) / tall - 1),
        "what is loose keeps to its share": max(0.0, v["loose"] * one / room - 1),
        "one more would not": max(0.0, 1 - (v["loose"] + 1) * one / room),
    }
