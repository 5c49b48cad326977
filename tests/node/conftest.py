"""Pyodide under Node, started once from the files that the page loads."""

import subprocess
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from make import prepare, python

HERE = Path(__file__).parent


@pytest.fixture(scope="session")
def in_the_browser(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Callable[[str], str]]:
    """Ask the browser's Python: a request as one line of JSON in, the reply out."""
    folder = tmp_path_factory.mktemp("python")
    parts = [folder / name for name in python.changing(folder)]
    words = [prepare.node(), HERE / "pyodide.mjs", *parts]
    with subprocess.Popen(words, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, encoding="utf-8") as process:
        assert process.stdin
        assert process.stdout

        def ask(request: str) -> str:
            print(request, file=process.stdin, flush=True)
            return process.stdout.readline().removesuffix("\n")

        yield ask
        process.stdin.close()
