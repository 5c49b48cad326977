"""What the page starts from, and the drawing of how it starts."""

import json
import re
import subprocess
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
    text, whole = (python.interpreter() / python.SCRIPT).read_text("utf-8"), (PYODIDE / "pyodide.asm.mjs").read_text("utf-8")
    assert len(text) < len(whole) / 2
    assert re.findall(r"\beval\(", whole)
    assert re.findall(r"\beval\(", text) == []


def test_every_function_the_interpreter_imports_is_given_it() -> None:
    """Outside source: the names that the browser's own reader of modules finds in the released file."""
    script = (
        "const bytes = require('node:fs').readFileSync(process.argv[1]);"
        "console.log(JSON.stringify(WebAssembly.Module.imports(new WebAssembly.Module(bytes)).map((one) => one.name)))"
    )
    words = [prepare.node(), "-e", script, PYODIDE / "pyodide.asm.wasm"]
    wanted = set(json.loads(subprocess.run(words, capture_output=True, check=True, text=True).stdout))
    listed = re.search(r"var wasmImports=\{([^}]*)\}", (PYODIDE / "pyodide.asm.mjs").read_text("utf-8"))
    given = re.search(r"\{([^{}]*__syscall_openat:[^{}]*)\}", (python.interpreter() / python.SCRIPT).read_text("utf-8"))
    assert listed
    assert given
    assert names(given) == wanted & names(listed)


def names(found: re.Match[str]) -> set[str]:
    """The names in an object written out."""
    return {one.split(":")[0] for one in found[1].split(",")}


def test_the_timeline_is_to_scale() -> None:
    """Each bar is as long as its step took, beside the others; names are text, never markup."""
    drawn = ElementTree.fromstring(timeline.drawn([("<first>", 50.0), ("second", 100.0), ("bare", 400.0)]))
    bars = [float(bar.attrib["width"]) for bar in drawn.iter("{http://www.w3.org/2000/svg}rect")]
    assert [round(bar / bars[0], 1) for bar in bars] == [1, 2, 8]
    assert "<first>" in [one.text for one in drawn.iter("{http://www.w3.org/2000/svg}text")]
