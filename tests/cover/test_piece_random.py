"""Whatever is done to a piece, in whatever order: never a crash, nothing lost, every cut where it was, all undone."""

import json
from typing import Any

import pytest
from building import begun, numbers
from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.strategies import SearchStrategy
from randomly import act
from toys import REST, TRAY, millimetres

from calc.bench import Bench
from calc.building import acts
from calc.building.changes import changes
from calc.building.gaps import alike, gaps
from calc.building.piece import Piece
from calc.building.piece_told import answered, changed, told
from calc.building.record import Record, undo
from calc.building.saved import from_json, to_json
from calc.building.settle import Settled, settle
from calc.errors import Refusal
from calc.probing.why import why

PIECES = pytest.mark.parametrize("piece", [TRAY, REST], ids=["tray", "rest"])
BENCHES = st.sampled_from([Bench(), Bench(unit="mm", mark="mm"), Bench(mark="1/64"), Bench(unit="cm", mark="half mm")])
SIZES = st.sampled_from(["1", "3", "16.5", "1/64 in", "12 in", "200", "321 mm", "19 m", "45°", "99999", "0", "?", ""])


def entries(piece: Piece) -> SearchStrategy[tuple[str, ...]]:
    """One thing to do, sensible or not."""
    names = st.sampled_from([*(one.name for one in piece.givens), *piece.sizes, "nothing"])
    sound = st.sampled_from([one.name for one in piece.givens]).flatmap(
        lambda name: st.tuples(st.just("give"), st.just(name), millimetres(piece, name))
    )
    return (
        sound
        | st.tuples(st.sampled_from(["give", "cut", "cut", "cut"]), names, SIZES)
        | st.tuples(st.sampled_from(["uncut", "first"]), names)
        | st.just(("undo",))
    )


def holds(settled: Settled) -> None:
    """Every cut is where it was put, every given within its limit, every size within its own or named."""
    piece = settled.piece
    for name, cut in settled.cuts.items():
        assert settled.values[name] == cut
    for name in settled.took:
        assert not piece.given(name).outside(settled.givens[name]), name
        assert name not in settled.cuts
    for name, size in piece.sizes.items():
        if name in settled.values and size.outside(settled.values[name]):
            assert name in settled.broken
    for name, left in settled.misses.items():
        wanted = piece.plan.one(
            piece.plan.by_name[name], settled.values, piece.plan.typed(settled.givens, settled.cuts)
        )
        assert float(settled.cuts[name] - wanted) == pytest.approx(float(left), abs=1e-6)


def said(settled: Settled) -> Any:
    """Everything a page is told, through JSON."""
    result = answered(settled)
    return json.loads(json.dumps([told(settled), result and result.to_dict()], allow_nan=False))


@PIECES
@settings(max_examples=60)
@given(data=st.data())
def test_anything_may_be_done_to_it(piece: Piece, data: st.DataObject) -> None:
    """Each entry is made or refused in words; what stands after it can be told, explained and drawn."""
    record = begun(piece).at(data.draw(BENCHES)) if data.draw(st.booleans()) else Record(piece.id)
    before = settle(piece, record)
    for entry in data.draw(st.lists(entries(piece), max_size=8)):
        record = act(piece, record, entry)
        after = settle(piece, record)
        holds(after)
        said(after)
        changed(changes(before, after), before, after)
        assert len(why(after, data.draw(st.sampled_from(list(piece.sizes)))).chain) > 0
        before = after
    if not before.broken and before.whole:
        assert answered(before)


@PIECES
@settings(max_examples=40)
@given(data=st.data())
def test_undone_to_the_first_it_is_what_it_was(piece: Piece, data: st.DataObject) -> None:
    """After each undo the same bytes as before the entry, and the same sizes; then nothing is left to undo."""
    record = Record(piece.id, bench=data.draw(BENCHES))
    states = [record]
    for entry in data.draw(st.lists(entries(piece).filter(lambda entry: entry != ("undo",)), max_size=8)):
        record = act(piece, record, entry)
        states += [record] if record is not states[-1] else []
    for state in reversed(states):
        assert to_json(record) == to_json(state)
        assert numbers(settle(piece, record)) == numbers(settle(piece, state))
        record = act(piece, record, ("undo",))
    with pytest.raises(Refusal, match="othing is left to undo"):
        undo(record)


@PIECES
@settings(max_examples=40)
@given(data=st.data())
def test_saved_and_opened_it_is_the_same_piece(piece: Piece, data: st.DataObject) -> None:
    """Out and in again, to the last byte and the last size."""
    record = begun(piece).at(data.draw(BENCHES))
    for entry in data.draw(st.lists(entries(piece), max_size=6)):
        record = act(piece, record, entry)
    again = from_json(to_json(record))
    assert again == record
    assert to_json(again) == to_json(record)
    assert said(settle(piece, again)) == said(settle(piece, record))


@PIECES
@given(data=st.data())
def test_where_everything_was_cut_as_worked_out_everything_fits(piece: Piece, data: st.DataObject) -> None:
    """A maker who never errs by more than floats do sees no gap, and nothing gives way."""
    record = begun(piece)
    settled = settle(piece, record)
    for name in data.draw(st.lists(st.sampled_from([*piece.cuttable]), unique=True)):
        text = f"{float(settled.values[name]):.9f}{'°' if name == 'angle' else ' mm'}"
        record = acts.cut(piece, record, name, text)
    after = settle(piece, record)
    assert not gaps(after)
    assert all(one.fits for one in alike(after))
    for name, value in numbers(after).items():
        if not isinstance(value, dict):
            assert float(value) == pytest.approx(float(settled.values[name]), abs=1e-6), name
