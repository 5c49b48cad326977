"""The house keeps its rules: light to start, pure, and no second list of sums anywhere."""

import ast
import json
import re
import subprocess
import sys
import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest

from calc import discover

FILES = sorted(Path("calc").rglob("*.py"))
PURE = {
    "time",
    "datetime",
    "random",
    "secrets",
    "uuid",
    "socket",
    "urllib",
    "http",
    "threading",
    "subprocess",
    "tempfile",
}
MAY = {Path("calc/__main__.py"): {"os"}}
IDS = set(discover.modules())
SOURCES = [file for folder in ("calc", "site/src", "site/make") for file in Path(folder).rglob("*.*")]


def modules_after(code: str) -> set[str]:
    """The top-level modules loaded once `code` has run in a Python of its own."""
    script = f"{code}\nimport json, sys\nprint(json.dumps(sorted({{name.partition('.')[0] for name in sys.modules}})))"
    found = subprocess.run(
        [sys.executable, "-I", "-c", f"import sys; sys.path.insert(0, '.')\n{script}"],
        capture_output=True,
        text=True,
        check=True,
    )
    return set(json.loads(found.stdout))


def imports(file: Path) -> Iterator[str]:
    """The top-level name of everything a file imports, wherever in it."""
    for node in ast.walk(ast.parse(file.read_text("utf-8"))):
        if isinstance(node, ast.Import):
            yield from (alias.name.partition(".")[0] for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and not node.level:
            yield str(node.module).partition(".")[0]


def test_importing_calc_loads_the_standard_library_and_nothing_else() -> None:
    """A light start: neither pint nor anything else from outside."""
    bare = modules_after("")
    assert modules_after("import calc") - bare <= sys.stdlib_module_names | {"calc"}


def test_pint_comes_in_at_the_first_conversion() -> None:
    """Asked what it can do, calc needs none; asked for inches, it does."""
    assert "pint" not in modules_after("from calc import describe, sums; [describe.describe(one) for one in sums()]")
    assert "pint" not in modules_after("from calc.typed import reader; reader.length('75 mm')")
    assert "pint" in modules_after("from calc.typed import reader; reader.length('3 in')")


def test_one_sum_is_answered_without_the_others() -> None:
    """Only the sum that is asked is imported."""
    script = "import calc; calc.answer('slope', rise='3', run='4'); import sys; print(sorted(sys.modules))"
    found = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=True).stdout
    loaded = {name.replace("_", "-") for name in re.findall(r"calc\.(?:sums|pieces)\.([a-z]\w*)", found)}
    assert loaded == {"slope"}


def test_every_library_a_test_imports_is_declared() -> None:
    """What the tests stand on is named in pyproject.toml, so that a fresh machine has it too."""
    told = tomllib.loads(Path("pyproject.toml").read_text("utf-8"))["project"]
    declared = {re.split("[=<>]", one)[0] for one in [*told["dependencies"], *told["optional-dependencies"]["test"]]}
    ours = {file.stem for file in Path("tests").rglob("*") if file.suffix in (".py", "")} | {"calc", "make"}
    used = {name for file in Path("tests").rglob("*.py") for name in imports(file)}
    assert used - ours - sys.stdlib_module_names <= declared


@pytest.mark.parametrize("file", FILES, ids=str)
def test_a_file_imports_only_what_it_may(file: Path) -> None:
    """The standard library and calc itself; pint in one file; no clock, no chance, no network."""
    found = set(imports(file)) - MAY.get(file, set())
    assert found <= sys.stdlib_module_names | {"calc"} | ({"pint"} if file == Path("calc/units.py") else set())
    assert not found & PURE
    assert "os" not in found


@pytest.mark.parametrize(
    "file", [file for file in SOURCES if file.suffix in {".py", ".mjs", ".json", ".html"}], ids=str
)
def test_no_second_list_of_sums(file: Path) -> None:
    """A literal list that names three sums or more would have to be kept by hand; the files themselves are the list."""
    for listed in re.findall(r"[\[({]([^\[\](){}]*)[\])}]", file.read_text("utf-8")):
        named = set(re.findall(r"[\"']([a-z-]+)[\"']", listed)) & IDS
        assert len(named) < 3, named


@pytest.mark.parametrize("file", FILES, ids=str)
def test_a_file_is_short_and_says_what_it_is(file: Path) -> None:
    """Under 150 lines besides what it declares as a table or a sum, under 300 in all; with a docstring on top."""
    text = file.read_text("utf-8")
    tree = ast.parse(text)
    declared = sum(
        node.end_lineno - node.lineno for node in tree.body if isinstance(node, ast.Assign) and node.end_lineno
    )
    assert len(text.splitlines()) < 300
    assert len(text.splitlines()) - declared <= 150
    assert ast.get_docstring(tree)


def test_type_keeps_to_few_sizes() -> None:
    """Some browsers ask another process about each size of each face before they draw the first of its letters."""
    text = "".join(file.read_text("utf-8") for file in sorted(Path("site/src/style").glob("*.css")))
    sizes = {float(size) for size in re.findall(r"font(?:-size)?:[^;]*?([\d.]+)rem", text)}
    bounds = {0.75, 2, 2.5}
    assert sizes - bounds == {0.875, 1, 1.125, 1.25, 1.375, 1.5, 1.6}
