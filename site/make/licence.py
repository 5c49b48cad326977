"""The licences of everything that dist/ carries."""

from make import wheels
from make.places import MAKE, MODULES, ROOT

PAGE = ("preact", "preact-render-to-string", "idb-keyval")
PYODIDE = (
    "Pyodide is as its makers publish it under this licence, less the functions that this page cannot call; what is "
    "left out, and how: site/make/glue.mjs and interpreter.mjs. Its source: https://github.com/pyodide/pyodide\n\n"
)


def texts() -> str:
    """All of them, one after another, ours first."""
    found = {"Tenpenny": (ROOT / "LICENSE").read_text("utf-8")}
    found |= {"Pyodide": PYODIDE + (MAKE / "licences" / "MPL-2.0").read_text("utf-8")}
    found |= {"Python (CPython)": (MAKE / "licences" / "PSF-2.0").read_text("utf-8")}
    found |= wheels.licences() | {name: _text(name) for name in PAGE}
    return "\n\n".join(f"{'=' * 72}\n{name}\n{'=' * 72}\n\n{text.strip()}\n" for name, text in found.items())


def _text(name: str) -> str:
    files = sorted((MODULES / name).iterdir())
    return next(file for file in files if file.name.upper().startswith("LICEN")).read_text("utf-8")
