"""A question in one's own words finds its sum first, by the page's own search over the real catalogue."""

import csv
import json
from pathlib import Path

import pytest
from make import prepare
from make.said import run

from calc.discover import everything

HERE = Path(__file__).parent
TOLD = ("id", "title", "question", "asks", "purpose")
WRITTEN = list(csv.DictReader((HERE / "questions.csv").read_text("utf-8").splitlines()))


def _found(questions: list[str]) -> dict[str, list[str]]:
    """The ids found for each question, best first."""
    sums = [{name: getattr(one, name) for name in TOLD} for one in everything()]
    told = json.dumps({"sums": sums, "questions": questions})
    return dict(
        zip(questions, json.loads(run([prepare.node(), HERE / "asked.mjs"], "Searching", text=told)), strict=True)
    )


@pytest.fixture(scope="module")
def found() -> dict[str, list[str]]:
    """What is found for the written questions."""
    return _found([one["question"] for one in WRITTEN])


@pytest.mark.parametrize("one", WRITTEN, ids=[one["question"] for one in WRITTEN])
def test_a_written_question_finds_its_sum_first(one: dict[str, str], found: dict[str, list[str]]) -> None:
    """Written by hand as a maker might ask; invented, no source."""
    assert found[one["question"]][0] == one["sum"]


def test_every_question_of_a_sum_s_own_finds_it_first() -> None:
    """Its title, its question and what it says it is asked."""
    own = {text.lower(): one.id for one in everything() for text in (one.title, one.question, *one.asks)}
    found = _found(list(own))
    assert {text: found[text][:1] for text in own if found[text][:1] != [own[text]]} == {}


def test_every_sum_has_a_written_question() -> None:
    """A sum that comes later is asked for too."""
    assert {one.id for one in everything()} - {one["sum"] for one in WRITTEN} == set()
