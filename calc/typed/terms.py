"""A reckoning cut into signs and sizes, in one pass from the left.

Each size is handed whole to `calc.typed.reader`, so that a length means here what it means anywhere. `5-3/8` is one
mixed number, `5 - 3/8` takes away; `5 -3/8` could be either, and so could `12+5-3/8`: both are refused.
"""

import re
from dataclasses import dataclass

from calc.errors import Refusal
from calc.typed import glyphs, reader
from calc.typed.glyphs import quoted
from calc.typed.reckoning import BARE, LENGTH, Leaf

LIKE = "type it like 9 3/4 + 2 x 16 mm"

_PIECE = re.compile(
    r""" ?(?:(?P<fraction>\d+ ?/ ?\d+(?![\d.,]))|(?P<number>[.,]?\d[\d.,]*)"""
    r"""|(?P<unit>[a-wyz]+\.?|['"])|(?P<sign>[-+x÷/()]))"""
)


@dataclass(frozen=True)
class Piece:
    """A sign, a bracket or a piece of a term, with where it stands and whether spaces stand before and after it."""

    kind: str
    text: str
    start: int
    end: int
    spaced: bool
    clear: bool

    def tight(self) -> bool:
        """True for a sign of arithmetic with no space about it."""
        return self.kind == "sign" and self.text not in "()" and not (self.spaced or self.clear)


def signs_and_sizes(text: str) -> list[str | Leaf]:
    """Signs and brackets as text, every run of other pieces as the one length or number it is. Raises Refusal."""
    typed = glyphs.tidy(text)
    if not typed:
        raise Refusal("nothing is typed here", LIKE)
    pieces, found, run = _pieces(typed), list[str | Leaf](), list[Piece]()
    for at, piece in enumerate(pieces):
        _sure(piece, pieces[at - 1] if at else piece)
        if piece.kind != "sign" or _joins(pieces, at, typed):
            run.append(piece)
            continue
        found += [_leaf(run, typed)] if run else []
        found.append("÷" if piece.text == "/" else piece.text)
        run = []
    return found + ([_leaf(run, typed)] if run else [])


def _pieces(typed: str) -> list[Piece]:
    found: list[Piece] = []
    at, text = 0, typed.lower()
    while at < len(text):
        if not (match := _PIECE.match(text, at)):
            raise Refusal(f"{quoted(typed[at:].strip())} is not understood in a reckoning", LIKE)
        start, end = match.start(match.lastgroup or 0), match.end()
        found.append(Piece(match.lastgroup or "", text[start:end], start, end, start > at, text[end : end + 1] == " "))
        at = end
    return found


def _joins(pieces: list[Piece], at: int, typed: str) -> bool:
    """True for the hyphen of a mixed number or of feet and inches; a Refusal where it could as well take away."""
    sign = pieces[at]
    if sign.text != "-" or not 0 < at < len(pieces) - 1 or (sign.spaced and sign.clear):
        return False
    before, after = pieces[at - 1], pieces[at + 1]
    mixed = before.kind == "number" and before.text.isdecimal() and after.kind == "fraction"
    feet = before.text.rstrip(".") in reader.NAMES["ft"] and after.kind in ("number", "fraction")
    crowded = mixed and at > 2 and pieces[at - 2].tight() and not _joins(pieces, at - 2, typed)
    if (mixed or feet) and (sign.spaced or sign.clear or crowded):
        one, two = (before.text, after.text) if mixed else ("5'", '3"')
        instead = f"type {one} {two} for one size, or {one} - {two} to take away"
        raise Refusal(f"{quoted(typed)} could mean two things", instead)
    return mixed or feet


def _sure(piece: Piece, before: Piece) -> None:
    """A Refusal where a stroke with spaces, or a second stroke, could be a fraction's or a division's."""
    spaced = piece.kind == "fraction" and " " in piece.text and (before.kind == "unit" or before.text in ("÷", "/"))
    if spaced or (piece.text == "/" and before.kind == "fraction"):
        raise Refusal(
            f"the / in “{before.text} {piece.text}” could mean two things", "type ÷ to divide, 3/8 for a fraction"
        )


def _leaf(run: list[Piece], typed: str) -> Leaf:
    text = typed[run[0].start : run[-1].end]
    measured = any(piece.kind == "unit" for piece in run)
    try:
        found = reader.length(text, "mm")
    except Refusal as refusal:
        instead = refusal.instead.replace(f"; {reader.TALLY}", "")
        raise Refusal(refusal.say, instead) from None
    return Leaf(found.mm, found.read, LENGTH if measured else BARE)
