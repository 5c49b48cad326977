"""The pages that tell how far each sum is to be trusted, as the build makes them."""

import json
import re
from pathlib import Path

import pytest
from make import about, catalogue
from make.places import ROOT

from calc import discover

IDS = [one.id for one in discover.everything()]


@pytest.fixture(scope="module")
def told(tmp_path_factory: pytest.TempPathFactory) -> dict[str, str]:
    """Every page of the folder, by name."""
    folder = tmp_path_factory.mktemp("dist")
    about.write(folder, catalogue.gather(folder, "1"), "code/page.css")
    return {file.stem: file.read_text("utf-8") for file in (folder / "about").iterdir()}


def test_every_sum_has_its_row_and_its_page(told: dict[str, str]) -> None:
    """The table names every sum and piece once, in the order of the work, and each has a page of its own."""
    rows = re.findall(r'<tr><th class="text" scope="row"><span><a href="([a-z-]+)\.html">', told["index"])
    assert rows == IDS
    assert sorted(told) == sorted(["index", *IDS])


def test_no_list_of_sums_is_kept_beside_the_sums() -> None:
    """What makes the pages names no sum at all."""
    makers = [ROOT / "site" / name for name in ("make/about.py", "make/about.mjs", "src/views/trust.mjs")]
    for file in (*makers, ROOT / "tests" / "published" / "deviations.py"):
        assert not set(re.findall(r'"([a-z-]+)"', file.read_text("utf-8"))) & set(IDS) - {"sums"}, file


@pytest.mark.parametrize("name", IDS)
def test_a_page_tells_all_there_is_to_tell(told: dict[str, str], name: str) -> None:
    """Its figure, every formula, every given with its range, every source with its basis, and no script."""
    one, page = discover.find(name), told[name]
    assert "<script" not in page
    assert '<svg class="drawing"' in page
    assert page.count('<p class="letters">') == len(one.formulas)
    assert page.count('<span class="basis">') == len(one.sources)
    assert page.count("from memory: check it") == sum(source.basis == "memory" for source in one.sources)
    assert re.search(r'id="printed"|Nobody is known to have printed', page)


def test_the_figures_told_are_those_of_the_checks() -> None:
    """As many figures as the checks expect, each sum's worst told where there is one."""
    held = json.loads(json.dumps(about.held()))
    assert list(held) == IDS
    assert all(bool(one["count"]) == bool(one["worst"]) for one in held.values())
    assert held["moisture"]["count"] == len(Path("tests/published/data/wood_emc_table.csv").read_text().splitlines())
