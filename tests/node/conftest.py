"""Pyodide under Node, started once each way from the files that the page loads."""

import json
import subprocess
import zipfile
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from dataclasses import asdict
from pathlib import Path

import pytest
from make import prepare, python, snapshot
from make.places import PYODIDE

HERE = Path(__file__).parent
Ask = Callable[[str], str]


@pytest.fixture(scope="session")
def in_the_browser(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Ask]:
    """Ask the browser's Python, started the ordinary way: a request as one line of JSON in, the reply out."""
    folder = tmp_path_factory.mktemp("python")
    with asking("pyodide.mjs", *(folder / name for name in python.changing(folder))) as ask:
        yield ask


@pytest.fixture(scope="session")
def just_woken(tmp_path_factory: pytest.TempPathFactory) -> Callable[[], AbstractContextManager[Ask]]:
    """The same, woken from the snapshot each time, with a standard library that has nothing in it."""
    folder = tmp_path_factory.mktemp("snapshot")
    (folder / "written.json").write_text(json.dumps(asdict(snapshot.write(folder))))
    zipfile.ZipFile(folder / "empty.zip", "w").close()
    return lambda: asking("from_snapshot.mjs", folder, folder / "empty.zip", PYODIDE, python.interpreter())


@pytest.fixture(scope="session")
def from_the_snapshot(just_woken: Callable[[], AbstractContextManager[Ask]]) -> Iterator[Ask]:
    """One of them, woken once."""
    with just_woken() as ask:
        yield ask


@contextmanager
def asking(script: str, *words: Path) -> Iterator[Ask]:
    """Ask a script, a line at a time."""
    told = [prepare.node(), HERE / script, *words]
    with subprocess.Popen(told, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, encoding="utf-8") as process:
        assert process.stdin
        assert process.stdout

        def ask(request: str) -> str:
            print(request, file=process.stdin, flush=True)
            return process.stdout.readline().removesuffix("\n")

        yield ask
        process.stdin.close()
