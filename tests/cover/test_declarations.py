"""Every declaration is whole, by itself and beside the others. Nothing here is worked out: that is `test_every_sum`."""

import json
from pathlib import Path

import pytest
from answering import cells

from calc import discover, formula
from calc.bench import Bench
from calc.declare import BASES, Answer, Sum
from calc.describe import describe
from calc.engine import reckon

SUMS = discover.everything()
every_sum = pytest.mark.parametrize("one", SUMS, ids=lambda one: one.id)


def sentence(text: str) -> bool:
    """True for words that begin like a sentence and end like one."""
    return (
        text[:1] == text[:1].upper()
        and text.rstrip().endswith((".", "?"))
        and "  " not in text
        and text == text.strip()
    )


def test_sums_are_found_by_their_files_alone() -> None:
    """Every file of the two folders is a sum, unless its name begins with an underscore, and its id is its name."""
    files = [file for folder in ("sums", "pieces") for file in Path("calc", folder).glob("[!_]*.py")]
    assert sorted(one.id for one in SUMS) == sorted(file.stem.replace("_", "-") for file in files)
    assert len(SUMS) == len({one.title for one in SUMS}) >= 9


@every_sum
def test_words_are_there_and_are_sentences(one: Sum) -> None:
    """A sum says what it is for, what it asks, what it tells and where it stops, in whole sentences."""
    for text in (one.question, one.purpose, one.limits_of, one.example.story, *(given.help for given in cells(one))):
        assert sentence(text), text
    for answer in one.answers:
        assert not answer.help or sentence(answer.help), answer.help
    assert all(sentence(caution.say) for caution in one.cautions)


@every_sum
def test_it_can_be_found_by_its_question(one: Sum) -> None:
    """At least five ways to ask for it, in small letters, each different."""
    assert len(set(one.asks)) == len(one.asks) >= 5
    assert all(ask == ask.lower().strip() and not ask.endswith("?") for ask in one.asks if "I" not in ask)


@every_sum
def test_each_name_is_one_thing(one: Sum) -> None:
    """A name that is both given and answered is of one kind, so that it can be asked either way."""
    assert len({answer.name for answer in one.answers}) == len(one.answers)
    for answer in one.answers:
        for given in one.givens:
            assert given.name != answer.name or given.kind == answer.kind, given.name


@every_sum
def test_formulas_use_known_names_only(one: Sum) -> None:
    """Each formula works out an answer, from givens, answers and the notation, and can be printed."""
    names = {each.name for each in one.named}
    for line in one.formulas:
        assert line.name in {answer.name for answer in one.answers}, line.name
        assert formula.names(line.text) <= names, line.text
        assert formula.letters(line.text, one.labels)


@every_sum
def test_labels_in_a_formula_hold_nothing_that_reads_as_notation(one: Sum) -> None:
    """A sign in a label would be taken for part of the formula."""
    used = {name for line in one.formulas for name in (line.name, *formula.names(line.text))}
    for name in used:
        assert not set(",()+×÷=√") & set(one.labels[name]), one.labels[name]


@every_sum
def test_every_number_answered_has_its_working(one: Sum) -> None:
    """A number has a formula, unless it says where it comes from: a table, a count, a search."""
    worked = {line.name for line in one.formulas}
    for answer in one.answers:
        given = answer.name in {each.name for each in one.givens}
        assert answer.name in worked or answer.kind in ("text", "rows") or answer.help or given, answer.name


@every_sum
def test_sources_say_their_basis(one: Sum) -> None:
    """A source names a work, and a place in it unless it is remembered, a rule of the trade or a table of ours."""
    for source in one.sources:
        assert source.work
        assert source.basis in BASES


@every_sum
def test_the_example_is_whole(one: Sum) -> None:
    """The example fills in whatever must be filled in, and is answered."""
    some = one.any_of.names if one.any_of else ()
    wanted = {given.name for given in one.givens if not (given.default or given.optional or given.name in some)}
    assert wanted <= set(one.example.givens)
    assert reckon(one, one.example.givens, Bench()).answers


@every_sum
def test_carrying_on_goes_somewhere(one: Sum) -> None:
    """What comes next exists, asks for what is handed over, and can read it as it is handed over."""
    told = reckon(one, one.example.givens, Bench()).to_dict()
    for carry, each in zip(one.carry_on, told["carry_on"], strict=True):
        there = discover.find(carry.to)
        assert set(carry.give.values()) <= {known.name for known in one.named}
        for name, text in each["givens"].items():
            assert there.given(name).read(text, Bench()), (carry.to, name, text)


@every_sum
def test_the_description_is_plain_json(one: Sum) -> None:
    """The public description goes through JSON unchanged and names every given and answer."""
    told = describe(one)
    assert json.loads(json.dumps(told, allow_nan=False)) == told
    assert [each["name"] for each in told["answers"]] == [answer.name for answer in one.answers]


def test_an_answer_of_no_known_kind_is_refused_when_declared() -> None:
    """Declarations check themselves when they are made."""
    with pytest.raises(ValueError, match="has kind"):
        Answer(name="size", label="Size", kind="furlongs")
