"""The snapshot of the started interpreter, and each sum's own code, compiled: what the page starts from.

The snapshot holds the interpreter, the standard library as far as it is used, pint with its registry, and what every
sum stands on. The sums are kept apart, so that a change to one is little to fetch, and many start as soon as few.
"""

import json
from dataclasses import dataclass
from pathlib import Path

from make import needs, prepare, python, wheels
from make.files import digest, keep, told
from make.places import CACHE, MAKE, PYODIDE, SITE
from make.said import run, say

MADE = CACHE / "snapshot"
WARM = (MAKE / "warm.py").read_text("utf-8")
Texts = dict[str, str]


@dataclass(frozen=True)
class Written:
    """The snapshot's name, and for each sum's file the names of those that hold its code and what it needs."""

    name: str
    sums: dict[str, list[str]]


def write(folder: Path) -> Written:
    """Write the snapshot and the sums' code."""
    texts = {name: text for part in python.calc().values() for name, text in part.items()}
    sums = {name: needs.reached(name, texts) for name in sorted(texts) if needs.is_sum(name)}
    core = {one for one in needs.reached("calc/door.py", texts).union(*sums.values()) if needs.is_core(one)}
    taken = {name: texts[name] for name in [*sorted(core), "calc/units.txt"]}
    tables = {name: text for name, text in texts.items() if name.endswith(".csv")}
    own = {name: {one: texts[one] for one in sorted(reached - core)} for name, reached in sums.items()}
    made = _compiled({"core": taken, "tables": tables, **{Path(name).stem: each for name, each in own.items()}})
    core_code = made.pop("core")
    kept = {name: keep(folder, f"python/sums/{name}.code", file.read_bytes()) for name, file in made.items()}
    also = {name: [kept["tables"]] if "calc/tables/__init__.py" in reached else [] for name, reached in sums.items()}
    wanted = needs.modules(core.union(*sums.values()), texts)
    snapshot = keep(folder, "python/start.snapshot", _snapshot(core_code, wanted))
    return Written(snapshot, {name: [kept[Path(name).stem], *also[name]] for name in sums})


def _compiled(bundles: dict[str, Texts]) -> dict[str, Path]:
    """Each bundle compiled by Pyodide's Python: a file of ours, made once for what is in it."""
    key = digest((MAKE / "compile.mjs").read_bytes() + (PYODIDE / "package.json").read_bytes())
    files = {name: MADE / f"{digest(told([key, texts]))}.code" for name, texts in bundles.items()}
    missing = {str(file): bundles[name] for name, file in files.items() if not file.exists()}
    if missing:
        MADE.mkdir(parents=True, exist_ok=True)
        run([prepare.node(), MAKE / "compile.mjs"], "Compiling Python", text=json.dumps(missing))
    return files


def _snapshot(core: Path, wanted: list[str]) -> bytes:
    """The snapshot, made once for what is in it."""
    late = {"late.py": (SITE / "src" / "late.py").read_text("utf-8")}
    parts = _compiled({"stdlib": {}, "lib": wheels.library(), "late": late})
    order = {
        "interpreter": str(python.interpreter()),
        "stdlib": str(parts["stdlib"]),
        "late": str(parts["late"]),
        "bundles": [str(parts["lib"]), str(core)],
        "modules": [*wanted, "calc.door"],
        "warm": WARM,
    }
    scripts = [MAKE / "snapshot.mjs", MAKE / "settle.mjs", SITE / "src" / "snapshot.mjs"]
    names = [file.name for file in (*parts.values(), core, python.interpreter())]
    file = MADE / f"{digest(told([names, wanted, WARM, *(one.read_text('utf-8') for one in scripts)]))}.snapshot"
    if not file.exists():
        say("Taking the snapshot of the started interpreter ...")
        run([prepare.node(), MAKE / "snapshot.mjs", file], "Taking the snapshot", text=json.dumps(order))
    return file.read_bytes()
