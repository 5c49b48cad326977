"""Where things are."""

from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
SITE = ROOT / "site"
MAKE = SITE / "make"
MODULES = SITE / "node_modules"
PYODIDE = MODULES / "pyodide"
DIST = ROOT / "dist"
CACHE = ROOT / ".cache"
VENV = ROOT / ".venv"
