"""Python for the browser: Pyodide's own files, the library zip and our calc zip."""

import json
from pathlib import Path
from typing import Any

from make import wheels
from make.files import digest, keep, packed, put
from make.places import PYODIDE, ROOT

CORE = {
    "pyodide.asm.mjs": "pyodide.asm.js",  # .js, since not every host serves .mjs as a script
    "pyodide.asm.wasm": "pyodide.asm.wasm",
    "python_stdlib.zip": "python_stdlib.zip",
}


def core(folder: Path) -> dict[str, Any]:
    """Copy the interpreter into a folder named by its hash; what the worker needs to know of it."""
    content = {name: (PYODIDE / source).read_bytes() for source, name in CORE.items()}
    home = f"python/core-{digest(b''.join(content.values()))[:10]}/"
    for name, each in content.items():
        put(folder, home + name, each)
    return {"home": f"../{home}", "info": json.loads((PYODIDE / "pyodide-lock.json").read_text())["info"]}


def changing(folder: Path) -> dict[str, str]:
    """Write what changes more often than the interpreter; python.json, which names it, is read at every start."""
    return {"lib": keep(folder, "python/lib.gzip", wheels.library()), "calc": keep(folder, "python/calc.gzip", calc())}


def calc() -> bytes:
    """The zip of calc: source, and the tables and texts it reads."""
    found = [file for file in (ROOT / "calc").rglob("*") if file.is_file() and "__pycache__" not in file.parts]
    return packed({file.relative_to(ROOT).as_posix(): file.read_bytes() for file in found})
