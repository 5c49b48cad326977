"""Whether a piece is whole: each name in it stands once, and speaks of what is there."""

from collections.abc import Iterable
from typing import TYPE_CHECKING

from calc.given import Given
from calc.kinds import Angle, Length, Number

if TYPE_CHECKING:
    from calc.building.piece import Piece


def check(piece: "Piece") -> None:
    """ValueError with all that is wrong with the names in a piece; nothing where it is whole."""
    given = {one.name: one for one in piece.givens}
    names = [one.name for one in (*piece.steps, *piece.answers)]
    known, filled = {*given, *names}, given.keys() & set(names)
    some = piece.any_of.names if piece.any_of else ()
    movable = {one.name for one in piece.givens if isinstance(one, Length | Angle | Number)}
    wrong = [f"{name!r} stands twice" for name in names if names.count(name) > 1]
    wrong += [f"{name!r} is always given, never worked out" for name in filled if not _left_out(given[name], some)]
    for size in piece.sizes.values():
        wrong += _strange(size.name, "speaks of", size.formula_names(), set(piece.labels))
        wrong += _strange(size.name, "trims", size.yields.trims, set(piece.sizes) | given.keys())
        wrong += _strange(size.name, "has the play of", [size.yields.play] if size.yields.play else [], known)
        wrong += _strange(size.name, "yields by", size.yields.by, movable)
    for match in piece.matches:
        wrong += _strange(match.names[0], "matches", (*match.names, *match.needs), known)
    if wrong:
        raise ValueError(f"piece {piece.id!r} is not whole: {'; '.join(wrong)}")


def _left_out(given: Given, some: tuple[str, ...]) -> bool:
    return not given.default and (given.optional or given.name in some)


def _strange(name: str, does: str, wanted: Iterable[str], known: set[str]) -> list[str]:
    return [f"{name!r} {does} {one!r}, which it cannot" for one in wanted if one not in known]
