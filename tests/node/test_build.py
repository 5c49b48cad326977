"""The build: the same bytes every time and everywhere, and little to fetch again when a sum changes."""

import hashlib
import json
import re
from pathlib import Path

import pytest
from elsewhere import built, changed, copied
from make.places import ROOT

SMALL = 200_000  # bytes: what a change to a sum may cost those who have the page already (the user's limit)
Files = dict[str, bytes]


def content(folder: Path) -> Files:
    """Every file under a folder."""
    return {file.relative_to(folder).as_posix(): file.read_bytes() for file in folder.rglob("*") if file.is_file()}


@pytest.fixture(scope="module")
def project(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A copy of this project, as it stands."""
    return copied(tmp_path_factory.mktemp("project"))


@pytest.fixture(scope="module")
def here(project: Path) -> Files:
    """What it builds."""
    return content(built(project))


@pytest.fixture(scope="module")
def copy(project: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The same at another place."""
    return copied(tmp_path_factory.mktemp("elsewhere"), project)


def test_a_second_build_has_the_same_bytes(here: Files, copy: Path) -> None:
    """Built again, from another folder, every file is the same."""
    again = content(built(copy))
    assert sorted(again) == sorted(here)
    assert [name for name in here if again[name] != here[name]] == []


def test_a_change_to_a_sum_is_little_to_fetch(here: Files, copy: Path) -> None:
    """Only our own Python, that sum's page and data, and the lists change; together they stay small."""
    changed(copy, "calc/sums/slope.py", 'label="Rise"', 'label="Height gained"')
    new = {name: found for name, found in content(built(copy)).items() if here.get(name) != found}
    ours = r"python/sums-\d-\w+\.gzip|python/sums/slope-\w+\.code|data/slope-\w+\.json|slope\.html|about/slope\.html"
    allowed = ours + r"|python\.json|catalogue\.json|sw\.js"
    assert [name for name in new if not re.fullmatch(allowed, name)] == []
    assert "slope.html" in new
    assert sum(len(found) for found in new.values()) < SMALL


def test_no_file_tells_where_it_was_built(here: Files, project: Path) -> None:
    """No folder of this machine stands in what is published."""
    assert [name for name, found in here.items() if any(str(home).encode() in found for home in (ROOT, project))] == []


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
    python = json.loads(here["python.json"])
    named = [
        *(*python["parts"], *(name for each in python["sums"].values() for name in each)),
        *(one["data"] for one in json.loads(here["catalogue.json"])["sums"]),
    ]
    assert [name for name in named if name not in here] == []
