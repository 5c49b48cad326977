"""A piece built by chance: whatever is entered, cuts stay where they were put, all can be told, all is undone."""

import json
from collections.abc import Sequence
from fractions import Fraction

from building import METRIC, begun, numbers
from hypothesis import strategies as st
from hypothesis.strategies import SearchStrategy

from calc.bench import Bench
from calc.building import acts
from calc.building.changes import changes
from calc.building.piece import Piece
from calc.building.piece_text import sheet
from calc.building.piece_told import answered, changed, told
from calc.building.record import Record, undo
from calc.building.saved import from_json, to_json
from calc.building.settle import Settled, settle
from calc.building.size import CUT_KINDS
from calc.errors import Refusal
from calc.kinds import Choice
from calc.remembered import forget

Entry = tuple[str, ...]
WILD = ["0", "1", "3", "1/64 in", "12 in", "200", "19 m", "45°", "0.001 mm", "?", "", "wide"]


def sized(low: int, high: int) -> SearchStrategy[Fraction]:
    """Lengths in millimetres, in quarters."""
    return st.integers(low * 4, high * 4).map(lambda quarters: Fraction(quarters, 4))


def cuts_of(piece: Piece) -> list[str]:
    """The sizes of parts that can be recorded as cut."""
    return [name for name, one in piece.sizes.items() if one.can_be_cut]


def near(piece: Piece, plain: Settled, name: str) -> SearchStrategy[str]:
    """What a size may come out at: a few millimetres or degrees off what it was worked out at."""
    kind, value = piece.cuttable[name].kind, float(plain.values.get(name) or 20)
    off = st.integers(-40, 40).map(lambda tenths: max(value + tenths / 10, 0.1))
    return off.map(lambda size: f"{size:.2f}{'°' if kind == 'angle' else ' mm'}")


def entries(piece: Piece, plain: Settled) -> SearchStrategy[Entry]:
    """One thing to do, sensible or not."""
    cuts, givens = cuts_of(piece), [one.name for one in piece.givens]
    names = st.sampled_from([*givens, *piece.sizes, "nothing"])
    return st.one_of(
        st.sampled_from(givens).flatmap(
            lambda name: st.tuples(st.just("give"), st.just(name), _typed(piece, plain, name))
        ),
        st.sampled_from(cuts).flatmap(lambda name: st.tuples(st.just("cut"), st.just(name), near(piece, plain, name))),
        st.tuples(st.sampled_from(["give", "cut"]), names, st.sampled_from(WILD)),
        st.tuples(st.sampled_from(["uncut", "first"]), st.sampled_from(cuts)),
    )


def _typed(piece: Piece, plain: Settled, name: str) -> SearchStrategy[str]:
    asked = piece.given(name)
    if isinstance(asked, Choice):
        return st.sampled_from([one.key for one in asked.options])
    return near(piece, plain, name) if asked.kind in CUT_KINDS else st.sampled_from(["1", "2", "25", "25 kg"])


def starts(piece: Piece, example: dict[str, str]) -> SearchStrategy[Record]:
    """The example, or nothing given yet, on a bench in inches or in millimetres."""
    empty = st.sampled_from([METRIC, Bench()]).map(lambda bench: Record(piece.id, bench=bench))
    return st.just(begun(piece, **example)) | empty


def walked(piece: Piece, record: Record, acted: Sequence[Entry]) -> None:
    """Each entry is made or refused in words; what stands after it is whole, and what it changed can be told.

    What was remembered on the way makes no difference to how it stands at the end.
    """
    before = settle(piece, record)
    for entry in acted:
        record = act(piece, record, entry)
        after = settle(piece, record)
        whole(after)
        changed(changes(before, after), before, after)
        before = after
    forget()
    assert told(settle(piece, record)) == told(before)


def undone(piece: Piece, record: Record, acted: Sequence[Entry]) -> None:
    """After each undo the same bytes as before the entry, and the same sizes; saved and opened the same piece."""
    states = [record]
    for entry in acted:
        record = act(piece, record, entry)
        states += [record] if record is not states[-1] else []
    for state in reversed(states):
        assert from_json(to_json(record)) == record
        assert to_json(record) == to_json(state)
        assert numbers(settle(piece, record)) == numbers(settle(piece, state))
        record = undo(record) if state is not states[0] else record


def act(piece: Piece, record: Record, entry: Entry) -> Record:
    """The record after an entry; as it was, and a whole sentence, where that is refused."""
    said = ""
    try:
        return undo(record) if entry == ("undo",) else getattr(acts, entry[0])(piece, record, *entry[1:])
    except Refusal as refusal:
        said = refusal.say and refusal.instead
    assert said, entry
    return record


def whole(settled: Settled) -> None:
    """Cuts are where they were put; limits are kept, or named as broken; all of it can be told and drawn."""
    for name, cut in settled.cuts.items():
        assert settled.values[name] == cut
    for name in settled.took:
        assert not settled.piece.given(name).outside(settled.givens[name]), name
        assert name not in settled.cuts
    for name, size in settled.piece.sizes.items():
        if name in settled.values and size.outside(settled.values[name]):
            assert name in settled.broken
        assert name in settled.values or settled.state(name) in ("undecided", "impossible")
    result = answered(settled)
    json.dumps([told(settled), result and result.to_dict()], allow_nan=False)
    assert settled.piece.title in sheet(settled)
