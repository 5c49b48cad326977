"""Python for the browser: Pyodide's own files, the library that calc needs, and calc itself."""

import json
import shutil
from pathlib import Path
from typing import Any
from zlib import crc32

from make import prepare, wheels
from make.files import digest, keep, packed, put
from make.places import CACHE, MAKE, PYODIDE, ROOT, SITE
from make.said import run

SUM_PARTS = 4
SCRIPT = "glue.mjs"
WASM = "pyodide.asm.wasm"
MADE_FROM = (MAKE / "glue.mjs", MAKE / "interpreter.mjs", PYODIDE / "package.json", SITE / "package-lock.json")


def core(folder: Path) -> dict[str, Any]:
    """Copy the interpreter into a folder named by its hash; what the worker needs to know of it."""
    made = interpreter()
    content = {
        "glue.js": (made / SCRIPT).read_bytes(),  # .js, since not every host serves .mjs as a script
        WASM: (made / WASM).read_bytes(),
        "python_stdlib.zip": (PYODIDE / "python_stdlib.zip").read_bytes(),
    }
    home = f"python/core-{digest(b''.join(content.values()))[:10]}/"
    for name, each in content.items():
        put(folder, home + name, each)
    wasm = {"url": home + WASM, "hash": digest(content[WASM])}
    return {"home": f"../{home}", "wasm": wasm, "info": json.loads((PYODIDE / "pyodide-lock.json").read_text())["info"]}


def interpreter() -> Path:
    """A folder with Pyodide's interpreter and its own script, less what we cannot call: made once for each release."""
    folder = CACHE / "interpreter" / digest(b"".join(one.read_bytes() for one in MADE_FROM))
    if not folder.exists():
        making = folder.with_name(f"{folder.name}.making")
        shutil.rmtree(making, ignore_errors=True)
        text = run([prepare.node(), MAKE / "glue.mjs"], "Leaving out what Pyodide's script does not need")
        put(making, SCRIPT, text.encode())
        run([prepare.node(), MAKE / "interpreter.mjs", making], "Leaving out what the interpreter does not need")
        making.rename(folder)
    return folder


def changing(folder: Path) -> list[str]:
    """Write what changes more often than the interpreter, in parts; the names of the parts, which python.json holds."""
    return [
        keep(folder, f"python/{name}.gzip", packed(files))
        for name, files in {"lib": wheels.library(), **calc()}.items()
    ]


def calc() -> dict[str, dict[str, str]]:
    """Our own Python by part: source, and the tables and texts it reads.

    The sums and pieces are dealt out by the first word of their names, so that a change to one sum is little to fetch.
    """
    parts: dict[str, dict[str, str]] = {}
    for file in sorted((ROOT / "calc").rglob("*")):
        if file.is_file() and "__pycache__" not in file.parts:
            parts.setdefault(_part(file), {})[file.relative_to(ROOT).as_posix()] = file.read_text("utf-8")
    return parts


def _part(file: Path) -> str:
    word = file.stem.strip("_").split("_")[0]
    return f"sums-{crc32(word.encode()) % SUM_PARTS}" if file.parent.name in ("sums", "pieces") else "calc"
