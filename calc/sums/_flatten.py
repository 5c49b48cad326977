"""How much of a warped board is left when both its faces are flat, whole or first ripped and cut across.

A cup bends the board to one radius across its width; a twist lifts its corners in turn, so that between two ends its
height is that of a saddle, in proportion to width times length. Both faces have one shape, and two parallel planes take
off, in all, as much as that shape stands out of flat.
"""

from fractions import Fraction
from typing import Any

from calc import trig
from calc.declare import Values
from calc.errors import Refusal
from calc.trig import Number

ROWS = 6
MANY = 12
"""Strips beyond which nobody rips a board to flatten it."""
STEEP = 4
"""A cup of more than a quarter of the width, or a twist of half of it, is no board to flatten."""


def work(
    thickness: Fraction,
    width: Fraction,
    length: Fraction,
    cup: Fraction,
    twist: Fraction,
    sticks: Fraction | None,
    strips: int,
    lengths: int,
    lost: Fraction,
    clean: Fraction,
    wanted: Fraction | None,
) -> Values:
    """The shape of the whole board, then of each piece of it, then what two planes leave."""
    if not (cup or twist):
        raise Refusal("a board with neither cup nor twist is flat", "type the cup, the twist or both", "cup")
    reach = sticks or width
    corner = twist * width / reach
    _held(cup, corner, width)
    radius = width * width / (8 * cup) + cup / 2 if cup else None
    whole = {
        "radius": radius,
        "half_angle": trig.asin(width / (2 * radius)) if radius else None,
        "corner": corner,
        "thickness": thickness,
        "lengths": lengths,
        "clean": clean,
    }
    rows = [_row(whole, count, width, lost) for count in range(1, MANY + 1) if _trued(width, count, lost) > 0]
    need = next((row["strips"] for row in rows if wanted is not None and row["left"] >= wanted), None)
    return {
        **{name: whole[name] for name in ("radius", "half_angle", "corner")},
        "reach": reach,
        **_alone(piece(whole, strips)),
        **_sizes(width, length, strips, lengths, lost),
        "need": need,
        "verdict": _verdict(wanted, need, whole),
        "rows": rows[: max(ROWS, need or 0)],
    }


def _held(cup: Fraction, corner: Fraction, width: Fraction) -> None:
    if cup * STEEP > width:
        raise Refusal("this cup is more than a quarter of the width", "measure it again", "cup")
    if corner * STEEP > width * 2:
        raise Refusal("this twist is more than half of the width", "measure it again", "twist")


def piece(whole: Values, strips: int) -> dict[str, Any]:
    """Cup and twist of one piece, what flattening takes from it and what it leaves, in millimetres."""
    cup = _cup(whole, strips)
    twist = whole["corner"] / (strips * whole["lengths"])
    governs = max(8 * cup, twist)
    loss = (governs + twist) ** 2 / (8 * governs)
    left = max(Fraction(0), whole["thickness"] - loss - 2 * whole["clean"])
    return {"cup_each": cup, "twist_each": twist, "governs": governs, "loss": loss, "left": left}


def _alone(found: dict[str, Any]) -> Values:
    """Without a cup there is nothing but the twist, which takes half of itself."""
    cupped = bool(found["cup_each"])
    return {
        **found,
        "governs": found["governs"] if cupped else None,
        "twist_alone": None if cupped else found["twist_each"],
    }


def _cup(whole: Values, strips: int) -> Number:
    """How far the outer, rounded face of a strip stands up at its middle; the hollow one has the smaller radius."""
    if whole["radius"] is None:
        return Fraction(0)
    turn, radius = trig.sin(whole["half_angle"] / (2 * strips)), float(whole["radius"] + whole["thickness"])
    return 2 * radius * turn * turn


def _row(whole: Values, strips: int, width: Fraction, lost: Fraction) -> dict[str, Any]:
    each = _trued(width, strips, lost)
    return {"strips": strips, "each": each, **piece(whole, strips), "width_left": strips * each}


def _sizes(width: Fraction, length: Fraction, strips: int, lengths: int, lost: Fraction) -> Values:
    each = _trued(width, strips, lost)
    if each <= 0:
        raise Refusal("so many strips leave no wood between the cuts", "rip it into fewer", "strips")
    sizes = {"strip_width": each, "length_each": length / lengths, "width_left": strips * each}
    return {**sizes, "to_true": Fraction(0)}


def _trued(width: Fraction, strips: int, lost: Fraction) -> Fraction:
    """The width of one strip, sawn and trued: between the strips there is one rip fewer than strips."""
    return (width - (strips - 1) * lost) / strips


def _verdict(wanted: Fraction | None, need: int | None, whole: Values) -> str | None:
    if wanted is None:
        return None
    if need is None:
        return "no ripping leaves what you want: start from thicker stock"
    cut = whole["lengths"]
    if need == 1:
        enough = cut == 1 or piece({**whole, "lengths": 1}, 1)["left"] >= wanted
        return "whole, it leaves what you want" if enough else f"cut into {cut} lengths it need not be ripped"
    return f"rip it into {need} first" if cut == 1 else f"cut it into {cut} lengths and rip each into {need} first"
