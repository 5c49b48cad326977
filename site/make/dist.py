"""Building dist/: plain files with relative names, the same bytes every time."""

import shutil
import tomllib
from pathlib import Path
from typing import Any

from make import about, bundle, catalogue, compress, licence, pages, python, snapshot
from make.files import digest, put, told
from make.places import ROOT
from make.said import say

SHELL = ("index.html", "code/", "icons/", "manifest.webmanifest", "catalogue.json", "python.json")


def build(folder: Path, *, compressed: bool = False) -> None:
    """Build everything into `folder`, whose old content goes only when the new is whole."""
    making = folder.with_name(f".{folder.name}-making")
    shutil.rmtree(making, ignore_errors=True)
    making.mkdir(parents=True)
    _write(making)
    if compressed:
        compress.beside(making)
    shutil.rmtree(folder, ignore_errors=True)
    making.rename(folder)
    say(f"Built {folder.name}/: {len(files(folder))} files, {sum(one['bytes'] for one in files(folder)) / 1e6:.1f} MB.")


def _write(folder: Path) -> None:
    started = snapshot.write(folder)
    snapshot_file = {"url": started.name, "hash": digest((folder / started.name).read_bytes())}
    core = {**python.core(folder), "snapshot": snapshot_file}
    put(folder, "python.json", told({"parts": python.changing(folder), "sums": started.sums}))
    found = catalogue.gather(folder, _release())
    put(folder, "catalogue.json", told(found.listed))
    code = bundle.code(folder, core)
    pages.write(folder, found, code)
    about.write(folder, found, code["style"])
    put(folder, "licences.txt", licence.texts().encode())
    every = files(folder)
    bundle.service_worker(folder, {"version": f"{_release()}-{digest(told(every))[:8]}", "files": every})


def _release() -> str:
    return str(tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]["version"])


def files(folder: Path) -> list[dict[str, Any]]:
    """Every file the page can ask for: its name, its SHA-256, its size, and whether it is part of the small shell."""
    found = [file for file in sorted(folder.rglob("*")) if file.is_file() and file.name != "sw.js"]
    return [_line(folder, file) for file in found if file.suffix not in (".br", ".gz")]


def _line(folder: Path, file: Path) -> dict[str, Any]:
    name, content = file.relative_to(folder).as_posix(), file.read_bytes()
    part = "shell" if name.startswith(SHELL) else "runtime"
    return {"url": name, "hash": digest(content), "bytes": len(content), "part": part}
