"""Every piece kept true while it is built: whatever comes out of the saw, in whatever order, and all of it undone."""

from itertools import permutations

import pytest
from examples import Example, plain, says
from hypothesis import given, settings
from hypothesis import strategies as st
from randomly import cuts_of, entries, near, starts, undone, walked

from calc.building.gaps import alike
from calc.building.piece import Piece
from calc.discover import everything

PIECES = {one.id: Example(one.id) for one in everything() if isinstance(one, Piece)}
every_piece = pytest.mark.parametrize("made", PIECES.values(), ids=list(PIECES))


@every_piece
@settings(max_examples=60)
@given(data=st.data())
def test_anything_may_come_out_of_the_saw(made: Example, data: st.DataObject) -> None:
    """Entries, sensible or not: cuts stay where they were put, and what stands can be told and drawn."""
    record = data.draw(starts(made.piece, made.givens))
    entry = entries(made.piece, made.plain) | st.just(("undo",))
    walked(made.piece, record, data.draw(st.lists(entry, max_size=8)))


@every_piece
@settings(max_examples=40)
@given(data=st.data())
def test_undone_to_the_first_it_is_what_it_was(made: Example, data: st.DataObject) -> None:
    """After each undo the same bytes as before the entry, and the same sizes; saved and opened the same piece."""
    record = data.draw(starts(made.piece, made.givens))
    undone(made.piece, record, data.draw(st.lists(entries(made.piece, made.plain), max_size=7)))


@every_piece
@settings(max_examples=30)
@given(data=st.data())
def test_the_order_of_entry_does_not_matter(made: Example, data: st.DataObject) -> None:
    """Up to three cuts in every order give one and the same piece."""
    chosen = data.draw(st.lists(st.sampled_from(cuts_of(made.piece)), min_size=2, max_size=3, unique=True))
    cuts = [(name, data.draw(near(made.piece, made.plain, name))) for name in chosen]
    first, *others = [made.cut(*order) for order in permutations(cuts)]
    for one in others:
        assert (plain(one), one.givens) == (plain(first), first.givens)
        assert (one.took, says(one)) == (first.took, says(first))


@every_piece
def test_where_everything_was_cut_as_worked_out_everything_fits(made: Example) -> None:
    """Every part recorded at its size, to a millionth: no gap, what should be alike is, and nothing moved."""
    after = made.cut(*made.as_worked_out(*cuts_of(made.piece)))
    assert not says(after)
    assert all(one.fits for one in alike(after))
    for name, value in plain(after).items():
        if value is not None:
            assert float(value) == pytest.approx(float(made.plain.values[name]), rel=1e-9, abs=1e-6), name
