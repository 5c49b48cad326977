"""Every check and every test, the quick ones first, pytest last."""

import subprocess
import sys
from pathlib import Path

from make import browser, dist, prepare
from make.places import DIST, MODULES, ROOT, SITE
from make.said import say

TYPES = ("tsconfig.json", "tsconfig.workers.json")


def everything(rest: list[str]) -> int:
    """Build, then run ruff, mypy, tsc and pytest; 0 when all is well. What `rest` says is handed on to pytest."""
    dist.build(DIST)
    browser.ready()
    tsc: list[str | Path] = [prepare.node(), MODULES / "typescript" / "bin" / "tsc", "-p"]
    steps: dict[str, list[str | Path]] = {
        "ruff check": [_tool("ruff"), "check", "."],
        "ruff format": [_tool("ruff"), "format", "--check", "."],
        "mypy": [_tool("mypy")],
        **{f"tsc {name}": [*tsc, SITE / name] for name in TYPES},
        "pytest": [_tool("pytest"), *rest],
    }
    failed = [name for name, step in steps.items() if not _passes(name, step)]
    return 1 if failed else 0


def _tool(name: str) -> Path:
    return Path(sys.executable).with_name(name)


def _passes(name: str, step: list[str | Path]) -> bool:
    say(f"--- {name}")
    passed = subprocess.run([str(word) for word in step], cwd=ROOT, check=False).returncode == 0
    if not passed and name != "pytest":
        say(f"--- {name} failed")
    return passed
