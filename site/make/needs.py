"""What each of calc's files needs of the others, read from its imports and from the sums that it asks by name.

Nothing is imported to find out.
"""

import ast
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import PurePosixPath

APART = ("calc/sums/", "calc/pieces/")
ASKING = {"find", "ask", "answered", "theirs"}
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
        wanted = _wanted(texts[ahead.pop()])
        new = {file for module in wanted.modules for file in _files(module, texts)}
        new |= {file for name in wanted.by_name for file in _by_name(name, texts)}
        new -= found
        found |= new
        ahead += new
    return found


def modules(names: set[str], texts: Mapping[str, str]) -> list[str]:
    """The modules that are not ours which these files import, at the start or later."""
    asked = {one for name in names for one in _wanted(texts[name]).outside}
    return sorted(one for one in asked if one.split(".")[0] != "calc" and not _file(one, texts))


@dataclass(frozen=True)
class Wanted:
    """What one text asks for.

    modules: what it imports, and each name that it imports from one, which may be a module too.
    outside: the modules alone.
    by_name: the sums that it asks.
    """

    modules: frozenset[str]
    outside: frozenset[str]
    by_name: frozenset[str]


@cache
def _wanted(text: str) -> Wanted:
    """Read once for each text, however many sums stand on it."""
    nodes = list(ast.walk(ast.parse(text)))
    plain = {one.name for node in nodes if isinstance(node, ast.Import) for one in node.names}
    froms = [(node.module, node.names) for node in nodes if isinstance(node, ast.ImportFrom) and node.module]
    outside = plain | {module for module, _ in froms}
    within = {f"{module}.{one.name}" for module, names in froms for one in names}
    return Wanted(frozenset(outside | within), frozenset(outside), frozenset(filter(None, map(_asked, nodes))))


def _asked(node: ast.AST) -> str:
    """The sum that a call asks by name; "" for any other node."""
    match node:
        case ast.Call(func=ast.Name(id=asks), args=[ast.Constant(value=str(name)), *_]) if asks in ASKING:
            return name
    return ""


def _by_name(name: str, texts: Mapping[str, str]) -> Iterator[str]:
    """The file of a sum that is asked by name."""
    stem = name.replace("-", "_")
    yield from (file for folder in APART if (file := f"{folder}{stem}.py") in texts)


def _files(module: str, texts: Mapping[str, str]) -> Iterator[str]:
    """The files of a module and of the packages that it is in."""
    parts = module.split(".")
    yield from (file for upto in range(1, len(parts) + 1) if (file := _file(".".join(parts[:upto]), texts)))


def _file(module: str, texts: Mapping[str, str]) -> str | None:
    stem = module.replace(".", "/")
    return next((name for name in (f"{stem}.py", f"{stem}/__init__.py") if name in texts), None)
