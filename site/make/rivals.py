"""The two pages that the bench compares, on one host: ours, and the least page that starts Pyodide as it comes."""

import shutil
from pathlib import Path

from make import bundle, compress, dist
from make.places import CACHE, MAKE, PYODIDE

BENCH = CACHE / "bench"
PYODIDE_FILES = ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm", "pyodide-lock.json", "python_stdlib.zip")


def host() -> Path:
    """A folder with ours/ and bare/ in it, and compressed copies beside the files."""
    shutil.rmtree(BENCH, ignore_errors=True)
    dist.build(BENCH / "ours")
    shutil.copy(BENCH / "ours" / "index.html", BENCH / "index.html")
    _bare(BENCH / "bare")
    compress.beside(BENCH)
    return BENCH


def _bare(folder: Path) -> None:
    shutil.copytree(MAKE / "bare", folder)
    (folder / "pyodide").mkdir()
    for name in PYODIDE_FILES:
        shutil.copy(PYODIDE / name, folder / "pyodide" / name)
    bundle.service_worker(folder, {"version": "bare", "files": dist.files(folder)})
