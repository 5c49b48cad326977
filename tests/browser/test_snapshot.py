"""Python wakes from the snapshot; without one that can be used it starts the ordinary way, and answers alike."""

import shutil
from collections.abc import Callable
from pathlib import Path

import pytest
from make import dist
from make.host import serving
from playwright.sync_api import Page, expect

ANSWER = "#answers.now #a-angle .figure"
ASKED = "slope.html#rise=6%20in&run=1%20ft"
Damage = Callable[[Path], object]


@pytest.fixture(scope="module")
def built(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The page as built from this source."""
    folder = tmp_path_factory.mktemp("whole") / "dist"
    dist.build(folder)
    return folder


def answered(page: Page, folder: Path) -> list[str]:
    """Open the page from this folder and see the right answer; what the host was asked for until then."""
    asked: list[str] = []
    with serving(folder, heard=asked.append) as address:
        page.goto(address + ASKED)
        expect(page.locator(ANSWER)).to_have_text("26.6°", timeout=60_000)
    return asked


def replaced(at: int, byte: int) -> Damage:
    """Damage to one byte of a file."""

    def damage(file: Path) -> None:
        found = bytearray(file.read_bytes())
        found[at] ^= byte
        file.write_bytes(found)

    return damage


def test_it_wakes_from_the_snapshot(page: Page, built: Path) -> None:
    """Neither the standard library nor our source is asked for; one sum's code is."""
    asked = answered(page, built)
    assert [path for path in asked if ".snapshot" in path]
    assert [path for path in asked if "stdlib" in path or ".gzip" in path] == []
    assert [path.split("/")[-1].split("-")[0] for path in asked if path.endswith(".code")] == ["slope"]


@pytest.mark.parametrize(
    "damage",
    [
        pytest.param(Path.unlink, id="missing"),
        pytest.param(lambda file: file.write_bytes(b""), id="empty"),
        pytest.param(lambda file: file.write_bytes(file.read_bytes()[:1_000_000]), id="cut short"),
        pytest.param(replaced(-5_000_000, 1), id="one bit changed"),
        pytest.param(replaced(40, 255), id="of another build"),
    ],
)
def test_without_it_python_starts_the_ordinary_way(page: Page, built: Path, tmp_path: Path, damage: Damage) -> None:
    """Never a blank page: the same answer, only later."""
    folder = shutil.copytree(built, tmp_path / "dist")
    damage(next((folder / "python").glob("*.snapshot")))
    said: list[str] = []
    page.on("console", lambda told: said.append(told.text) if told.type == "warning" else None)
    asked = answered(page, folder)
    assert [path for path in asked if "python_stdlib.zip" in path]
    assert [text for text in said if text.startswith("Python starts the ordinary way")]


def test_a_sum_whose_code_is_missing_is_answered_too(page: Page, built: Path, tmp_path: Path) -> None:
    """What the snapshot cannot answer, the ordinary way can."""
    folder = shutil.copytree(built, tmp_path / "dist")
    next((folder / "python" / "sums").glob("slope-*.code")).unlink()
    assert [path for path in answered(page, folder) if "python_stdlib.zip" in path]
