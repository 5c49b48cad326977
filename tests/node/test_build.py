"""The build: the same bytes every time and everywhere, and little to fetch again when a sum changes."""

import hashlib
import json
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from make import dist
from make.places import CACHE, MODULES, ROOT

SMALL = 200_000  # bytes: what a change to a sum may cost those who have the page already (the user's limit)
Files = dict[str, bytes]


def content(folder: Path) -> Files:
    """Every file under a folder."""
    return {file.relative_to(folder).as_posix(): file.read_bytes() for file in folder.rglob("*") if file.is_file()}


def copied(home: Path) -> Path:
    """This project at another place, with what set-up fetched."""
    for name in ("calc", "site"):
        shutil.copytree(ROOT / name, home / name, ignore=shutil.ignore_patterns("node_modules", "__pycache__"))
    for name in ("pyproject.toml", "LICENSE"):
        shutil.copy(ROOT / name, home / name)
    (home / "site" / "node_modules").symlink_to(MODULES)
    (home / ".cache").symlink_to(CACHE)
    return home


def built(home: Path) -> Files:
    """What another copy of the project builds."""
    words = "import sys, pathlib; sys.path[:0] = ['site', '.']; from make import dist; dist.build(pathlib.Path('dist'))"
    subprocess.run([sys.executable, "-c", words], cwd=home, check=True, capture_output=True)
    return content(home / "dist")


@pytest.fixture(scope="module")
def here(tmp_path_factory: pytest.TempPathFactory) -> Files:
    """What this project builds."""
    folder = tmp_path_factory.mktemp("here") / "dist"
    dist.build(folder)
    return content(folder)


@pytest.fixture(scope="module")
def elsewhere(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A copy of this project at another place."""
    return copied(tmp_path_factory.mktemp("elsewhere"))


def test_a_second_build_has_the_same_bytes(here: Files, elsewhere: Path) -> None:
    """Built again, from another folder, every file is the same."""
    again = built(elsewhere)
    assert sorted(again) == sorted(here)
    assert [name for name in here if again[name] != here[name]] == []


def test_a_change_to_a_sum_is_little_to_fetch(here: Files, elsewhere: Path) -> None:
    """Only our own Python, that sum's page and data, and the lists change; together they stay small."""
    sum_file = elsewhere / "calc" / "sums" / "slope.py"
    sum_file.write_text(sum_file.read_text("utf-8").replace('label="Rise"', 'label="Height gained"'), "utf-8")
    changed = {name: found for name, found in built(elsewhere).items() if here.get(name) != found}
    allowed = r"python/calc-\w+\.gzip|data/slope-\w+\.json|slope\.html|python\.json|catalogue\.json|sw\.js"
    assert [name for name in changed if not re.fullmatch(allowed, name)] == []
    assert "slope.html" in changed
    assert sum(len(found) for found in changed.values()) < SMALL


def test_no_file_tells_where_it_was_built(here: Files) -> None:
    """No folder of this machine stands in what is published."""
    assert [name for name, found in here.items() if str(ROOT).encode() in found] == []


def test_every_address_is_relative(here: Files) -> None:
    """Pages, manifest and lists name files from where they stand, so that any folder of any host will do."""
    pages = {name: found.decode() for name, found in here.items() if name.endswith((".html", ".webmanifest"))}
    address = re.compile(r'(?:href|src|data-file|start_url|scope|id)"?[=:]"(/|https?:)')
    assert [name for name, page in pages.items() if address.search(page)] == []


def test_the_service_worker_lists_every_file(here: Files) -> None:
    """All but the service worker itself, each with its SHA-256 and its size."""
    told = re.findall(r'url:"([^"]+)",hash:"([0-9a-f]{64})",bytes:([\d.e]+)', here["sw.js"].decode())
    listed = {url: (digest, int(float(size))) for url, digest, size in told}
    assert listed == {
        name: (hashlib.sha256(found).hexdigest(), len(found)) for name, found in here.items() if name != "sw.js"
    }


def test_what_is_named_by_its_hash_is_found(here: Files) -> None:
    """python.json and the catalogue name files that are there."""
    named = [
        *json.loads(here["python.json"]).values(),
        *(one["data"] for one in json.loads(here["catalogue.json"])["sums"]),
    ]
    assert [name for name in named if name not in here] == []
