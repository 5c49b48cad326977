"""Pages to be read, one a sum and a table of all: formulas, ranges, sources, and how near each comes to the prints."""

import json
import sys
from importlib import import_module
from pathlib import Path
from typing import Any

from calc.show import plain
from make import prepare
from make.catalogue import Catalogue
from make.places import MAKE, ROOT
from make.said import run

PRINTS = ROOT / "tests" / "published"
"""Where the printed figures are, and what reckons how far the sums stand from them: nothing of it is shipped."""


def write(folder: Path, catalogue: Catalogue, style: str) -> None:
    """Write about/index.html and about/<id>.html for every sum and piece of the catalogue, in the pages' own style."""
    given = {"sums": list(catalogue.data.values()), "held": held(), "style": f"../{style}"}
    run([prepare.node(), MAKE / "about.mjs", folder], "Writing what is told about the sums", text=json.dumps(given))


def held() -> dict[str, dict[str, Any]]:
    """For every sum how it stands to what was printed, in all and answer by answer, and whose figures those are."""
    if str(PRINTS) not in sys.path:
        sys.path.append(str(PRINTS))
    tallies = import_module("deviations").tallies()
    return {name: _whole(tally) for name, tally in tallies.items()}


def _whole(tally: Any) -> dict[str, Any]:
    answers = [{"label": label, **_told(part)} for label, part in tally.by_answer.items()]
    return {**_told(tally), "works": list(tally.works.items()), "answers": answers}


def _told(tally: Any) -> dict[str, Any]:
    kinds = [f"{count} {kind}" for kind, count in tally.kinds.items()]
    misprints = [f"{tally.misprints} of them misprinted"] if tally.misprints else []
    return {"count": len(tally.cells), "kinds": ", ".join(kinds + misprints), "worst": worst(tally.worst)}


def worst(cell: Any) -> str:
    """The worst miss in words: in units of the last digit printed, and in the unit of the answer."""
    if cell is None or not cell.off:
        return "none" if cell else ""
    off = "under 0.001" if cell.off < 0.001 else plain(cell.off, 3)
    far = f"{plain(cell.digits, 2)} of the last digit, {off}{'' if cell.unit in ('°', '%') else ' '}{cell.unit}".strip()
    return f"{far}: {cell.note}" if cell.digits > 0.5 and cell.note else far
