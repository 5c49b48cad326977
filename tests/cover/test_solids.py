"""Every piece that declares its solids: they are closed, they do not overlap, they meet, they are the parts listed."""

from collections import Counter
from collections.abc import Callable
from itertools import combinations

import manifold3d
import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from hypothesis.strategies import DataObject, SearchStrategy
from strategies import typed
from wood import bent, body, shared, sizes

import calc
from calc.answers import Result
from calc.bench import Bench
from calc.building.piece import Piece
from calc.discover import everything
from calc.drawing.solid import Solid, volume
from calc.errors import Refused

PIECES = {one.id: one for one in everything() if isinstance(one, Piece) and one.solids}
METRIC = Bench(unit="mm", mark="mm")
WITHIN = ("Batten",)
"""Parts that stand inside a lid; the room inside is answered up to the lid."""
every_piece = pytest.mark.parametrize("piece", PIECES.values(), ids=list(PIECES))


def over_the_range(check: Callable[..., None]) -> Callable[..., None]:
    """The check for each piece, on its example and on a few others of its kind."""
    return every_piece(settings(max_examples=12)(given(data=st.data())(check)))


def built(piece: Piece, data: DataObject) -> tuple[Result, list[Solid]]:
    """The example, or one with some of its measures anywhere within their limits; set aside where it cannot be made."""
    try:
        result = calc.answer(piece.id, METRIC, **dict(piece.example.givens) | data.draw(changes(piece)))
    except Refused:
        assume(False)
        raise
    assert piece.solids
    return result, list(piece.solids(result.values))


def changes(piece: Piece) -> SearchStrategy[dict[str, str]]:
    """A few measures of a piece as they may be typed; of an "any two of" only those that the example gives."""
    some = set(piece.any_of.names) - set(piece.example.givens) if piece.any_of else set()
    free = [one for one in piece.givens if one.kind in ("length", "angle", "count") and one.name not in some]
    picked = st.lists(st.sampled_from(free), max_size=3, unique_by=lambda one: one.name)
    return picked.flatmap(
        lambda names: st.fixed_dictionaries({one.name: typed(one).map(lambda drawn: drawn[0]) for one in names})
    )


@over_the_range
def test_every_face_is_plane_and_every_solid_closed(piece: Piece, data: DataObject) -> None:
    """manifold3d takes each solid for a closed mesh, and finds in it the volume that the piece says."""
    for solid in built(piece, data)[1]:
        assert max(map(bent, solid.faces)) < 1e-6, solid.part
        assert volume(solid) > 0, solid.part
        assert body(solid).volume() == pytest.approx(volume(solid), rel=1e-9), solid.part


@over_the_range
def test_no_two_parts_share_wood(piece: Piece, data: DataObject) -> None:
    """What two parts have in common is less than a millionth of the smaller."""
    found = [(solid.part, body(solid)) for solid in built(piece, data)[1]]
    for (one, first), (other, second) in combinations(found, 2):
        assert (first ^ second).volume() < 1e-6 * min(first.volume(), second.volume()), (one, other)


@over_the_range
def test_parts_meet_face_to_face(piece: Piece, data: DataObject) -> None:
    """Each part lies against every other that it is said to meet, at just the clearance said and with some of a face;
    and every part is said to meet another."""
    result, solids = built(piece, data)
    assert {solid.part for solid in solids} == {name for one in piece.meetings for name in (one.one, one.other)}
    for meeting in piece.meetings:
        room = float(meeting.room(result.values))
        ones, others = ([solid for solid in solids if solid.part == name] for name in (meeting.one, meeting.other))
        for these, those in ((ones, others), (others, ones)):
            for one in these:
                assert max(shared(one, other, room) for other in those if other is not one) > 1, meeting


@over_the_range
def test_the_list_of_parts_gives_the_sizes_of_the_solids(piece: Piece, data: DataObject) -> None:
    """So many of each as are listed, as long along the grain, as wide and as thick; what has no solid is sawn up."""
    result, solids = built(piece, data)
    count = Counter(solid.part for solid in solids)
    rows = {row["part"]: row for row in result["parts"]}
    assert count.keys() <= rows.keys()
    for name, row in rows.items():
        assert row["count"] == count[name] or "sawn into" in row["joins"], name
    for solid in solids:
        wanted = [float(rows[solid.part][size]) for size in ("length", "width", "thickness")]
        assert min(np.abs(np.subtract(found, wanted)).max() for found in sizes(solid)) < 1e-6, (solid, wanted)


@over_the_range
def test_volume_and_weight_are_the_sum_of_the_parts(piece: Piece, data: DataObject) -> None:
    """The wood in the piece is that in its solids, and weighs so much by its density."""
    result, solids = built(piece, data)
    whole = sum(map(volume, solids))
    assert float(result["wood_volume"]) == pytest.approx(whole, rel=1e-9)
    assert float(result["weight"]) == pytest.approx(whole / 1e9 * float(result["density"]), rel=1e-9)


@every_piece
def test_the_room_inside_is_as_answered(piece: Piece) -> None:
    """With no play, overhang or hand hole, what is shut in over the bottom has the volume that is answered."""
    if "volume" not in piece.sizes:
        pytest.skip("holds nothing")
    none = {one.name: f"{one.limit.low}" for one in piece.givens if one.kind == "length" and one.limit.low == "0 mm"}
    shut = {one.name: "none" for one in piece.givens if one.name == "handles"}
    result = calc.answer(piece.id, METRIC, **dict(piece.example.givens) | none | shut)
    assert piece.solids
    assert inside(list(piece.solids(result.values))) == pytest.approx(float(result["volume"]), rel=1e-5)


def inside(solids: list[Solid]) -> float:
    """The room in cubic millimetres that the parts leave of their hull, over the middle of the bottom."""
    walls = [body(solid) for solid in solids if solid.part not in WITHIN]
    swelled = [wall.translate(-middle(wall)).scale([1 + 1e-7] * 3).translate(middle(wall)) for wall in walls]
    whole = manifold3d.Manifold.batch_boolean(swelled, manifold3d.OpType.Add)
    rooms = (manifold3d.Manifold.batch_hull(walls) - whole).decompose()
    bottom = body(next(solid for solid in solids if solid.part == "Bottom"))
    x, y, _ = middle(bottom)
    over = manifold3d.Manifold.cube([1, 1, 1]).translate([x, y, bottom.bounding_box()[5] + 0.5])
    return float(next(room.volume() for room in rooms if (room ^ over).volume() > 0.5))


def middle(one: manifold3d.Manifold) -> np.ndarray:
    """The middle of the box round a solid."""
    box = one.bounding_box()
    return np.add(box[:3], box[3:]) / 2
