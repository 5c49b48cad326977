"""The catalogue: every sum and piece described, with its example worked, as JSON for the page."""

from dataclasses import dataclass
from pathlib import Path
from typing import Any

from calc.bench import Bench
from calc.declare import MOMENTS, Sum
from calc.describe import describe
from calc.discover import everything
from calc.engine import reckon
from make.files import keep, told


@dataclass(frozen=True)
class Catalogue:
    """What the pages are made from: the list of sums, and each one's whole description with its worked example."""

    listed: dict[str, Any]
    data: dict[str, dict[str, Any]]


def gather(folder: Path, version: str) -> Catalogue:
    """Write data/<id>-<hash>.json for every sum and piece, and return the list that names them."""
    data = {one.id: {**describe(one), "worked": _worked(one)} for one in everything()}
    files = {sum_id: keep(folder, f"data/{sum_id}.json", told(one)) for sum_id, one in data.items()}
    sums = [_line(one, files[one["id"]]) for one in data.values()]
    return Catalogue({"version": version, "moments": _moments(), "sums": sums}, data)


def _worked(one: Sum) -> dict[str, Any]:
    return reckon(one, one.example.givens, Bench()).to_dict()


def _moments() -> list[dict[str, str]]:
    return [{"id": one, "title": "Pieces" if one == "piece" else one.replace("-", " ").capitalize()} for one in MOMENTS]


def _line(one: dict[str, Any], file: str) -> dict[str, Any]:
    return {key: one[key] for key in ("id", "title", "moment", "question", "asks", "purpose")} | {"data": file}
