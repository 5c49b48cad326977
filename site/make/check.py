"""Every check and every test, the quick ones first, pytest last.

Tests in the browser come one after another, since a page that shares the processor is slow to answer; all others are
shared out among the processors, a file to each at a time.
"""

import subprocess
import sys
from pathlib import Path

from make import browser, dist, prepare
from make.places import DIST, MODULES, ROOT, SITE
from make.said import say

BROWSER = "tests/browser"
TYPES = ("tsconfig.json", "tsconfig.workers.json")


def everything(rest: list[str]) -> int:
    """Build, then run ruff, mypy, tsc and pytest; 0 when all is well. With `rest` pytest runs once, as that says."""
    dist.build(DIST)
    browser.ready()
    tsc: list[str | Path] = [prepare.node(), MODULES / "typescript" / "bin" / "tsc", "-p"]
    steps: dict[str, list[str | Path]] = {
        "ruff check": [_tool("ruff"), "check", "."],
        "ruff format": [_tool("ruff"), "format", "--check", "."],
        "mypy": [_tool("mypy")],
        **{f"tsc {name}": [*tsc, SITE / name] for name in TYPES},
        **{f"pytest {name}": [_tool("pytest"), *words] for name, words in _tests(rest).items()},
    }
    failed = [name for name, step in steps.items() if not _passes(name, step)]
    return 1 if failed else 0


def _tests(rest: list[str]) -> dict[str, list[str]]:
    """What pytest is told, by what it is called."""
    if rest:
        return {" ".join(rest): rest}
    return {"in the browser": [BROWSER], "of the rest": [f"--ignore={BROWSER}", "-n", "auto", "--dist", "loadfile"]}


def _tool(name: str) -> Path:
    return Path(sys.executable).with_name(name)


def _passes(name: str, step: list[str | Path]) -> bool:
    say(f"--- {name}")
    passed = subprocess.run([str(word) for word in step], cwd=ROOT, check=False).returncode == 0
    if not passed:
        say(f"--- {name} failed")
    return passed
