"""Whatever rests on a remembered figure says so: the figures are changed, and every answer that moves must own up."""

import json
import subprocess
import sys
from collections.abc import Iterator
from typing import Any

import pytest

from calc import discover
from calc.tables import CHECK

ASK = """
import json, sys
from calc import discover, tables
from calc.bench import Bench
from calc.engine import reckon
from calc.errors import Refused
from calc.typed.reading import number
from calc.show import fraction, plain

read, NUMBERS = tables.rows, ("value", "dressed", "dim1", "dim2", "thickness", "fixed", "turning")

def a_little_more(name):
    return tuple(more(row) if row.get("basis") == "memory" else row for row in read(name))

def more(row):
    grows = () if row.get("quantity") == "gauge_WM" else NUMBERS
    return {key: grown(text) if text and key in grows else text for key, text in row.items()}

def grown(text):
    size = number(text).value * 101 / 100
    return plain(size, 9) if size * 10**9 % 1 == 0 else fraction(size)

if sys.argv[1] == "more":
    tables.rows = a_little_more
for name, givens in json.load(sys.stdin):
    try:
        result = reckon(discover.find(name), givens, Bench())
        told = {one.name: str(result[one.name]) for one in result.answers if one.kind not in ("text", "rows")}
        said = result.text + "".join(line.note for line in result.working)
    except Refused:
        told, said = {}, ""
    print(json.dumps([told, said]))
"""


def questions() -> Iterator[tuple[str, dict[str, str]]]:
    """Every sum's example, with each choice it offers in turn; nails and boards of several sizes."""
    for one in discover.everything():
        sizes: list[dict[str, str]] = [{}]
        if one.id == "nail":
            sizes = [{"held": size, "second": "6 in"} for size in ("1/4 in", "3/8 in", "1/2 in", "1 in", "1 1/2 in")]
        for asked in one.givens:
            if asked.kind == "choice":
                yield from (
                    (one.id, {**one.example.givens, **size, asked.name: option.key})
                    for option in asked.options  # type: ignore[attr-defined]
                    for size in sizes
                )


QUESTIONS = list(questions())


def answers(how: str) -> list[Any]:
    """The numbers and the words of every question's answer, in a Python of its own."""
    done = subprocess.run(
        [sys.executable, "-c", ASK, how], input=json.dumps(QUESTIONS), capture_output=True, text=True, check=True
    )
    return [json.loads(line) for line in done.stdout.splitlines()]


@pytest.fixture(scope="module")
def leaning() -> list[tuple[str, dict[str, str], str]]:
    """The questions whose answer moves with a remembered figure, each with what was said."""
    pairs = zip(QUESTIONS, answers("as they are"), answers("more"), strict=True)
    return [(name, givens, said) for (name, givens), (told, said), (other, _) in pairs if told and told != other]


def test_an_answer_that_rests_on_memory_says_so(leaning: list[tuple[str, dict[str, str], str]]) -> None:
    """No answer moves with a remembered figure without the words that it is from memory."""
    silent = [(name, givens) for name, givens, said in leaning if "from memory" not in said]
    assert silent == []


def test_many_answers_rest_on_memory(leaning: list[tuple[str, dict[str, str], str]]) -> None:
    """Woods, dressed sizes, notes and nails among them: the figures were changed indeed."""
    assert {"movement", "sag", "dressed", "slot", "nail"} <= {name for name, _, _ in leaning}
    assert any(CHECK in said for _, _, said in leaning)
