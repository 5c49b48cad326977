"""Python woken from the snapshot: it answers as one that started the ordinary way; made twice, it is the same."""

import json
import re
from collections.abc import Callable
from contextlib import AbstractContextManager
from pathlib import Path

import pytest
from forms import forms
from hypothesis import given
from hypothesis import strategies as st
from make import needs, python, snapshot
from make.places import PYODIDE, SITE
from strategies import benches

from calc import discover
from calc.door import handle

Ask = Callable[[str], str]
SUMS = discover.everything()
every_sum = pytest.mark.parametrize("name", [one.id for one in SUMS])


@every_sum
def test_the_example_is_answered_alike_however_python_started(
    name: str, in_the_browser: Ask, from_the_snapshot: Ask
) -> None:
    """Each sum's example: woken from the snapshot with no standard library at hand, started anew, and here."""
    request = json.dumps({"id": 1, "op": "answer", "sum": name, "givens": dict(discover.find(name).example.givens)})
    reply = from_the_snapshot(request)
    assert json.loads(reply)["ok"], reply
    assert reply == in_the_browser(request) == handle(request)


@every_sum
def test_a_python_just_woken_has_all_that_a_sum_asks(
    name: str, just_woken: Callable[[], AbstractContextManager[Ask]]
) -> None:
    """Nothing that another question brought helps it: other sums that it asks come with it."""
    request = json.dumps({"id": 1, "op": "answer", "sum": name, "givens": dict(discover.find(name).example.givens)})
    with just_woken() as ask:
        assert ask(request) == handle(request)


@every_sum
@given(data=st.data())
def test_what_may_be_typed_is_answered_alike(name: str, from_the_snapshot: Ask, data: st.DataObject) -> None:
    """Whole forms, answered or refused in the same words: whatever is imported late is in the snapshot."""
    texts, bench = data.draw(forms(discover.find(name))), data.draw(benches)
    request = json.dumps({"id": 1, "op": "answer", "sum": name, "givens": texts, "bench": vars(bench)})
    assert from_the_snapshot(request) == handle(request)


def test_what_is_no_question_is_answered_alike(from_the_snapshot: Ask) -> None:
    """What is misspelt or no request at all, and the list of every sum."""
    strange = '{"id": 6, "op": "answer", "sum": "slop"}'
    for request in (strange, '{"id": 7, "op": "dance"}', '{"id": 8}', "[]", "nonsense", '{"id": 9, "op": "hello"}'):
        assert from_the_snapshot(request) == handle(request)


def test_the_snapshot_is_the_same_every_time(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Compiled and taken twice, with nothing kept between: not a byte differs."""
    made = []
    for turn in ("once", "again"):
        monkeypatch.setattr(snapshot, "MADE", tmp_path / f"made {turn}")
        (tmp_path / turn).mkdir()
        snapshot.write(tmp_path / turn)
        made.append({file.name: file.read_bytes() for file in (tmp_path / turn).rglob("*.*")})
    assert made[0].keys() == made[1].keys()
    assert [name for name in made[0] if made[0][name] != made[1][name]] == []


def test_no_sum_is_in_the_snapshot(tmp_path: Path) -> None:
    """A sum's own words are in its own file only, so that a change to it leaves the snapshot alone."""
    named = snapshot.write(tmp_path)
    memory = (tmp_path / named.name).read_bytes()
    assert b"calc.door" in memory
    assert [one.id for one in SUMS if one.purpose.encode() in memory] == []


def test_the_release_is_the_one_that_was_looked_into() -> None:
    """The way in leans on what Pyodide does inside: at a new one, see that boot-snapshot.mjs fits, then name it."""
    release = json.loads((PYODIDE / "package.json").read_text("utf-8"))["version"]
    script = (SITE / "src" / "boot-snapshot.mjs").read_text("utf-8")
    assert re.findall(r'RELEASE = "([^"]+)"', script) == [release]


def test_needs_are_read_from_imports() -> None:
    """What is imported from a package, from inside a function, or by way of another file, is needed."""
    texts = {
        "calc/__init__.py": "",
        "calc/sums/__init__.py": "",
        "calc/sums/one.py": "from calc.sums import _two\nimport math",
        "calc/sums/_two.py": "def late():\n    from calc.three import three\n    import difflib, os.path",
        "calc/three.py": "",
        "calc/other.py": "import csv",
    }
    reached = needs.reached("calc/sums/one.py", texts)
    assert reached == set(texts) - {"calc/other.py"}
    assert needs.modules(reached, texts) == ["difflib", "math", "os.path"]


def test_every_part_of_calc_is_known(tmp_path: Path) -> None:
    """Each sum and piece has its code among the files that are written."""
    named = snapshot.write(tmp_path)
    sums = {file for part in python.calc().values() for file in part if needs.is_sum(file)}
    assert set(named.sums) == sums
    assert len(sums) == len(SUMS)
