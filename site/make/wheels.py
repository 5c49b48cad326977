"""pint and what it needs, as micropip installs them in the browser's Python: once at build time, never at run time."""

import json
import shutil
import sys
from pathlib import Path

from make import prepare
from make.files import digest
from make.places import CACHE, MAKE, PYODIDE
from make.said import run, say

PINS = MAKE / "browser.txt"
LEFT_OUT = ("tests", "testsuite", "testing.py", "py.typed", "__main__.py", "default_en.txt", "constants_en.txt")


def library() -> dict[str, str]:
    """The modules that calc needs besides the standard library, by name."""
    return {name: file.read_text("utf-8") for name, file in _files().items() if _needed(name)}


def licences() -> dict[str, str]:
    """The licence text of each package in the library."""
    return {
        name.split(".dist-info")[0]: file.read_text("utf-8")
        for name, file in _files().items()
        if ".dist-info/" in name and "LICENSE" in file.name.upper().replace("LICENCE", "LICENSE")
    }


def _needed(name: str) -> bool:
    parts = name.split("/")
    return not parts[0].endswith(".dist-info") and not any(part in LEFT_OUT for part in parts)


def _files() -> dict[str, Path]:
    home = installed()
    return {file.relative_to(home).as_posix(): file for file in sorted(home.rglob("*")) if file.is_file()}


def installed() -> Path:
    """The folder that micropip installed into; made anew when a pin, Pyodide or the way of installing changes."""
    key = digest(PINS.read_bytes() + (PYODIDE / "package.json").read_bytes() + (MAKE / "install.mjs").read_bytes())
    home = CACHE / f"installed-{key[:16]}"
    if not home.exists():
        say("Installing pint into the browser's Python ...")
        install(home)
    return home


def install(home: Path) -> None:
    """Install the pinned wheels with micropip inside Pyodide, and copy what they installed to `home`."""
    wheels, making = home.with_suffix(".wheels"), home.with_suffix(".making")
    for folder in (wheels, making):
        shutil.rmtree(folder, ignore_errors=True)
    download(wheels)
    run(
        [prepare.node(), MAKE / "install.mjs", wheels, making],
        "Installing pint with micropip",
        text=json.dumps(_order(wheels)),
    )
    shutil.rmtree(wheels)
    making.rename(home)


def download(folder: Path) -> None:
    """Download the pinned wheels, checked against their hashes, for the Python that Pyodide is."""
    python = json.loads((PYODIDE / "pyodide-lock.json").read_text())["info"]["python"]
    pip = [sys.executable, "-m", "pip", "download", "--quiet", "--no-deps", "--require-hashes", "--only-binary=:all:"]
    run([*pip, "--python-version", python, "--dest", folder, "-r", PINS], "Downloading pint")


def _order(folder: Path) -> list[str]:
    pins = [line.split("==")[0].replace("-", "_") for line in PINS.read_text().splitlines() if not line.startswith("#")]
    names = sorted(file.name for file in folder.iterdir())
    return [next(name for name in names if name.lower().startswith(f"{pin}-")) for pin in pins]
