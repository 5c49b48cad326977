"""What each of calc's files needs of the others, read from its imports and from the sums that it asks by name.

Nothing is imported to find out.
"""

import ast
from collections.abc import Iterator, Mapping
from pathlib import PurePosixPath

APART = ("calc/sums/", "calc/pieces/")
ASKING = {"find", "ask", "answered", "theirs", "_theirs"}
"""The functions whose first word is the name of a sum: calc.discover's, and those made of it."""


def is_core(name: str) -> bool:
    """True for what the sums stand on: neither in a sum nor in a piece, nor a table."""
    return name.endswith(".py") and (not name.startswith(APART) or name.endswith("__init__.py"))


def is_sum(name: str) -> bool:
    """True for the file of a sum or piece itself: named as it is, with no underscore in front."""
    return name.startswith(APART) and name.endswith(".py") and not PurePosixPath(name).name.startswith("_")


def reached(start: str, texts: Mapping[str, str]) -> set[str]:
    """The file itself, and all of ours that it imports or asks, or that those do, at the start or later."""
    found, ahead = {start}, [start]
    while ahead:
        text = texts[ahead.pop()]
        new = {*_imported(text, texts), *_by_name(text, texts)} - found
        found |= new
        ahead += new
    return found


def modules(names: set[str], texts: Mapping[str, str]) -> list[str]:
    """The modules that are not ours which these files import, at the start or later."""
    asked = {one for name in names for one in _asked(texts[name])}
    return sorted(one for one in asked if one.split(".")[0] != "calc" and not _file(one, texts))


def _imported(text: str, texts: Mapping[str, str]) -> Iterator[str]:
    for asked in _asked(text, within=True):
        parts = asked.split(".")
        for upto in range(1, len(parts) + 1):
            if file := _file(".".join(parts[:upto]), texts):
                yield file


def _by_name(text: str, texts: Mapping[str, str]) -> Iterator[str]:
    """The files of the sums that are asked by name."""
    for node in ast.walk(ast.parse(text)):
        match node:
            case ast.Call(func=ast.Name(id=asks), args=[ast.Constant(value=str(name)), *_]) if asks in ASKING:
                stem = name.replace("-", "_")
                yield from (file for folder in APART if (file := f"{folder}{stem}.py") in texts)


def _asked(text: str, *, within: bool = False) -> Iterator[str]:
    """Each module that is imported; with `within`, also each name imported from one, which may be a module too."""
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, ast.Import):
            yield from (one.name for one in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            yield node.module
            yield from (f"{node.module}.{one.name}" for one in node.names if within)


def _file(module: str, texts: Mapping[str, str]) -> str | None:
    stem = module.replace(".", "/")
    return next((name for name in (f"{stem}.py", f"{stem}/__init__.py") if name in texts), None)
