"""Help for the command line, written from the declarations: the contents, how to ask, and a page for each sum."""

import shlex
import textwrap
from collections.abc import Iterator, Mapping, Sequence
from itertools import groupby

from calc.answers import Result
from calc.bench import MARKS, UNITS, Bench
from calc.command.asking import SETTINGS
from calc.command.command_line import sources
from calc.declare import MOMENTS, Sum
from calc.engine import reckon
from calc.kinds import Choice, Given
from calc.rows import Rows
from calc.search import Search

WIDTH = 100
BASH = """\
_tenpenny() { mapfile -t COMPREPLY < <(tenpenny --complete "${COMP_WORDS[@]:1:COMP_CWORD}"); }
complete -o nospace -F _tenpenny tenpenny"""


def usage(sums: Sequence[Sum]) -> str:
    """How to ask, for someone who has typed no more than the name."""
    first = sums[0]
    return "\n".join(
        [
            "tenpenny SUM name=value ...   answers a sum",
            "tenpenny SUM --help           says what it asks, with a worked example",
            "tenpenny --list               lists the sums in the order of the work",
            "tenpenny piece --help         keeps a piece in a file while it is built",
            "",
            *(f"  {line}" for line in _options()),
            "",
            f"For example: {command(first, first.example.givens)}",
            "",
            "In bash, to complete the names:",
            *(f"  {line}" for line in BASH.splitlines()),
        ]
    )


def _options() -> list[str]:
    told = {
        "unit": f"what a bare number is in: {', '.join(UNITS)}",
        "mark": f"the finest mark of your rule: {', '.join(MARKS)}",
        "angles": "tenths of a degree, or minutes",
        "currency": "a label for money",
    }
    flags = ("--working     shows the working and the sources", "--json        answers, or lists, for machines")
    return [f"--{name:<12}{told[name]}" for name in SETTINGS] + [*flags, "--version     says which release this is"]


def contents(sums: Sequence[Sum]) -> str:
    """Every sum with its question, under the moment of the work it belongs to."""
    wide = max(len(one.id) for one in sums)
    parts = [
        "\n".join([heading(moment), *(f"  {one.id:<{wide}}  {one.question}" for one in group)])
        for moment, group in groupby(sorted(sums, key=lambda one: MOMENTS.index(one.moment)), lambda one: one.moment)
    ]
    return "\n\n".join(parts)


def heading(moment: str) -> str:
    """A moment of the work as a heading: Mark out."""
    return moment.replace("-", " ").capitalize()


def command(one: Sum, givens: Mapping[str, str]) -> str:
    """The command that asks a sum these entries, ready for a shell."""
    return " ".join(["tenpenny", one.id, *(f"{name}={shlex.quote(text)}" for name, text in givens.items())])


def page(one: Sum, bench: Bench) -> str:
    """All there is to know of one sum: what it asks, its worked example, its limits and its sources."""
    return "\n".join(_page(one, reckon(one, one.example.givens, bench)))


def _page(one: Sum, worked: Result) -> Iterator[str]:
    yield from (f"{one.title}. {one.question}", *_wrapped(one.purpose, ""), "", "It asks:")
    wide = max(len(given.name) for given in one.givens)
    for given in one.givens:
        yield from _wrapped(_entry(given), f"  {given.name:<{wide}}  ")
    if one.any_of:
        yield from _wrapped(f"Give any {one.any_of.count} of {', '.join(one.any_of.names)}.", "  ")
    yield from (
        "",
        "It answers:",
        *(f"  {each.label}" + (f": {each.help}" if each.help else "") for each in one.answers),
    )
    yield from ("", "For example:", *_wrapped(one.example.story, "  "), f"  {command(one, one.example.givens)}")
    yield from (f"    {line}" for line in worked.text.splitlines())
    yield from ("", *_wrapped(f"Limits: {one.limits_of}", ""), "From:", *sources(one))
    if one.carry_on:
        yield from ("", "Carry on with:", *(f"  {each.to}  {each.why}" for each in one.carry_on))


def _entry(given: Given) -> str:
    parts = [f"{given.label}.", given.help, _choices(given), f"({given.limit.text()})" if given.limit.text() else ""]
    usual = f"Usually {given.default}{f', {given.default_why}' if given.default_why else ''}." if given.default else ""
    return " ".join(part for part in (*parts, usual, "It may be left out." if given.optional else "") if part)


def _choices(given: Given) -> str:
    if isinstance(given, Search):
        return (
            f"Found by a part of its name, as in “{given.options[0].label}”; {len(given.options)} are listed by --json."
        )
    if isinstance(given, Choice):
        return (
            "One of: "
            + ", ".join(f"{one.key} ({one.label})" if one.key != one.label else one.key for one in given.options)
            + "."
        )
    if isinstance(given, Rows):
        return f"Each row {' x '.join(column.label.lower() for column in given.columns)}; rows apart by a semicolon."
    return ""


def _wrapped(text: str, head: str) -> list[str]:
    return textwrap.wrap(text, WIDTH, initial_indent=head, subsequent_indent=" " * len(head)) or [head]
