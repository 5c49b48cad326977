"""The page's code, bundled by esbuild: the worker, the page, its style and the service worker."""

import json
from pathlib import Path
from typing import Any

from make import prepare
from make.files import keep, put
from make.places import MAKE
from make.said import run


def code(folder: Path, core: dict[str, Any]) -> dict[str, str]:
    """Write the page's code and style under names that carry their hashes; their names, as prerender.mjs calls them."""
    worker = keep(folder, "code/worker.js", bundled("src/worker.mjs", {"CORE": core}))
    app = keep(folder, "code/app.js", bundled("src/app.mjs", {"WORKER": worker}))
    first = keep(folder, "code/first.js", bundled("src/first.mjs", {"APP": app, "WORKER": worker}, form="iife"))
    style = keep(folder, "code/page.css", bundled("src/style/page.css", {}))
    return {"first": first, "style": style}


def service_worker(folder: Path, listed: dict[str, Any]) -> None:
    """Write sw.js, a classic script since not every browser takes a module here, holding the list of what to keep."""
    put(folder, "sw.js", bundled("src/sw.mjs", {"LISTED": listed}, form="iife"))


def bundled(entry: str, define: dict[str, Any], form: str = "esm") -> bytes:
    """One entry, bundled; each name in `define` stands for its value in the code."""
    asked = {"entry": entry, "format": form, "define": {name: json.dumps(value) for name, value in define.items()}}
    return run([prepare.node(), MAKE / "bundle.mjs"], f"Bundling {entry}", text=json.dumps(asked)).encode()
