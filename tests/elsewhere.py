"""This project copied to another place, to be built there as it stands or with something changed."""

import shutil
import subprocess
import sys
from pathlib import Path

from make.places import CACHE, MODULES, ROOT


def copied(home: Path, source: Path = ROOT) -> Path:
    """The sources, with what set-up fetched."""
    for name in ("calc", "site", "tests/published"):
        shutil.copytree(
            source / name, home / name, ignore=shutil.ignore_patterns("node_modules", "__pycache__", "dist")
        )
    for name in ("pyproject.toml", "LICENSE"):
        shutil.copy(source / name, home / name)
    (home / "site" / "node_modules").symlink_to(MODULES)
    (home / ".cache").symlink_to(CACHE)
    return home


def changed(home: Path, name: str, was: str, now: str) -> None:
    """Put other words into one of the copied files."""
    text = (home / name).read_text("utf-8")
    assert was in text
    (home / name).write_text(text.replace(was, now), "utf-8")


def built(home: Path) -> Path:
    """Build the copy; its dist folder."""
    words = "import sys, pathlib; sys.path[:0] = ['site', '.']; from make import dist; dist.build(pathlib.Path('dist'))"
    subprocess.run([sys.executable, "-c", words], cwd=home, check=True, capture_output=True)
    return home / "dist"
