"""What the page starts from, and the drawing of how it starts."""

import json
import re
import subprocess
from pathlib import Path
from xml.etree import ElementTree

from make import prepare, python, timeline
from make.places import CACHE, MAKE, PYODIDE


def test_the_script_is_made_alike_each_time() -> None:
    """A snapshot fits the script that it was made with, so the script may not differ from build to build."""
    first = (python.interpreter() / python.SCRIPT).read_bytes()
    assert subprocess.run([prepare.node(), MAKE / "glue.mjs"], capture_output=True, check=True).stdout == first
    assert python.interpreter().is_relative_to(CACHE)


def test_the_script_is_far_smaller_and_evaluates_nothing() -> None:
    """Under half of what was released, whose eval the page's policy would forbid anyway."""
    text, whole = script(), (PYODIDE / "pyodide.asm.mjs").read_text("utf-8")
    assert len(text) < len(whole) / 2
    assert re.findall(r"\beval\(", whole)
    assert re.findall(r"\beval\(", text) == []


def test_every_function_the_interpreter_imports_is_given_it() -> None:
    """Outside source: the names that the browser's own reader of modules finds in the files."""
    listed = re.search(r"var wasmImports=\{([^}]*)\}", (PYODIDE / "pyodide.asm.mjs").read_text("utf-8"))
    given = re.search(r"\{([^{}]*__syscall_openat:[^{}]*)\}", script())
    assert listed
    assert given
    assert names(given) == within("imports", PYODIDE) & names(listed)
    assert within("imports", python.interpreter()) & names(listed) <= names(given)


def test_the_interpreter_still_gives_all_that_its_script_calls() -> None:
    """What the script looks up is there where it was there as released, and next to nothing else is."""
    listed = re.search(r'Object\.fromEntries\("([^"]*)"\.split', script())
    assert listed
    asked = set(listed[1].split())
    assert within("exports", python.interpreter()) == asked & within("exports", PYODIDE)
    assert (python.interpreter() / python.WASM).stat().st_size < (PYODIDE / python.WASM).stat().st_size


def within(which: str, folder: Path) -> set[str]:
    """What an interpreter imports or exports, as node reads it."""
    told = (
        "const bytes = require('node:fs').readFileSync(process.argv[2]);"
        "const found = WebAssembly.Module[process.argv[1]](new WebAssembly.Module(bytes));"
        "console.log(JSON.stringify(found.map((one) => one.name)))"
    )
    words = [prepare.node(), "-e", told, which, folder / python.WASM]
    return set(json.loads(subprocess.run(words, capture_output=True, check=True, text=True).stdout))


def script() -> str:
    """The script that the page starts the interpreter with."""
    return (python.interpreter() / python.SCRIPT).read_text("utf-8")


def names(found: re.Match[str]) -> set[str]:
    """The names in an object written out."""
    return {one.split(":")[0] for one in found[1].split(",")}


def test_the_timeline_is_to_scale() -> None:
    """Each bar is as long as its step took, beside the others; names are text, never markup."""
    drawn = ElementTree.fromstring(timeline.drawn([("<first>", 50.0), ("second", 100.0), ("bare", 400.0)]))
    bars = [float(bar.attrib["width"]) for bar in drawn.iter("{http://www.w3.org/2000/svg}rect")]
    assert [round(bar / bars[0], 1) for bar in bars] == [1, 2, 8]
    assert "<first>" in [one.text for one in drawn.iter("{http://www.w3.org/2000/svg}text")]
