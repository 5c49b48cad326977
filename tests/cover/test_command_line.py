"""The command line: every sum asked and told from its declaration, and bad input refused with status 2."""

import json
import shlex
import tomllib
from pathlib import Path
from typing import Any

import pytest

import calc
from calc import discover
from calc.command.command_line import Told, run
from calc.command.guide import command
from calc.describe import describe

SUMS = discover.everything()
every_sum = pytest.mark.parametrize("name", [one.id for one in SUMS])


def told(line: str) -> Told:
    """What a line as typed into a shell is told."""
    return run(shlex.split(line)[1:])


def as_json(line: str) -> Any:
    """The same, for machines."""
    return json.loads(told(line).out)


@every_sum
def test_the_example_is_answered_as_from_python(name: str) -> None:
    """The command that help shows gives the answer that help shows."""
    one = discover.find(name)
    found = told(command(one, one.example.givens))
    assert (found.status, found.err) == (0, "")
    assert found.out.endswith(calc.answer(name, **one.example.givens).text)


@every_sum
def test_machines_get_value_unit_exactness_and_text(name: str) -> None:
    """Per answer, or per cell of a table; no ink."""
    one = discover.find(name)
    reply = as_json(command(one, one.example.givens) + " --json")
    assert "figure" not in reply
    for answer in reply["answers"]:
        for cell in [cell for row in answer.get("rows", []) for cell in row] or [answer]:
            assert {"value", "unit", "exact", "text"} <= set(cell) or answer["rows"] == []


@every_sum
def test_help_tells_everything_declared(name: str) -> None:
    """Each given by name, each answer by label, the worked example, the limits and every source."""
    one, found = discover.find(name), told(f"tenpenny {name} --help")
    text = " ".join(found.out.split())
    for part in (one.question, one.limits_of, one.example.story, *(source.work for source in one.sources)):
        assert " ".join(part.split()) in text
    assert all(f"  {given.name} " in found.out for given in one.givens)
    assert all(answer.label in text for answer in one.answers)
    assert " ".join(calc.answer(name, **one.example.givens).text.split()) in text


def test_the_list_is_the_public_description() -> None:
    """For machines every sum with its fields, units, limits and sources; for people its question."""
    assert as_json("tenpenny --list --json") == [json.loads(json.dumps(describe(one))) for one in SUMS]
    text = told("tenpenny --list").out
    assert all(one.id in text and one.question in text for one in SUMS)
    assert text.startswith("Sketch\n")


@pytest.mark.parametrize("line", ["tenpenny", "tenpenny --help", "tenpenny -h"])
def test_without_a_sum_it_says_how_to_ask(line: str) -> None:
    """Usage, with an example that can be typed as it stands."""
    found = told(line)
    assert found.status == 0
    example = next(row for row in found.out.splitlines() if row.startswith("For example: "))
    assert told(example.removeprefix("For example: ")).status == 0


@pytest.mark.parametrize(
    ("line", "say"),
    [
        ("slope rise=-3 run=5", "Rise: −3 in is too small; type a length more than 0 in, up to 20 m."),
        ("slope rise=x run=wide", "Rise: “x” stands where a number should"),
        ("slope rise=3", "fill in one more."),
        ("slope rise=3 rise=4", "rise: it is given twice; give it once."),
        ("slope width=3", "Slope: there is no “width” here; use rise, run, length or angle."),
        ("slope 3 4", "“3” has no name; write name=value"),
        ("slop", "perhaps slope"),
        ("slope --unit", "--unit stands alone; write it like --unit mm."),
        ("slope --unit furlong rise=3 run=4", "Unit: “furlong” is not one of them"),
        ("slope --metric", "there is no option “--metric”; use --unit"),
        ("slope --json=yes", "there is no option “--json=yes”"),
    ],
)
def test_bad_input_is_refused_in_a_sentence_with_status_2(line: str, say: str) -> None:
    """The same sentences as on the page; nothing on the standard output."""
    found = told(f"tenpenny {line}")
    assert (found.out, found.status) == ("", 2)
    assert say.lower() in found.err.lower()


def test_every_refusal_stands_on_its_own_line() -> None:
    """Two bad entries, two sentences; for machines the same in JSON."""
    assert len(told("tenpenny slope rise=x run=y").err.splitlines()) == 2
    assert [each["field"] for each in as_json("tenpenny slope rise=x run=y --json")["refusals"]] == ["rise", "run"]


def test_settings_may_stand_anywhere() -> None:
    """Before, between and after the entries, with a space or an equals sign."""
    lines = ["--unit mm slope rise=75 run=300", "slope rise=75 --unit=mm run=300", "slope rise=75 run=300 --unit mm"]
    assert len({told(f"tenpenny {line}").out for line in lines}) == 1


def test_a_metric_maker_gets_millimetre_marks() -> None:
    """Unless another mark is asked for."""
    assert "309 mm, strong by 0.23 mm" in told("tenpenny slope rise=75 run=300 --unit mm").out
    assert "12 3/16 in, scant by 0.33 mm" in told("tenpenny slope rise=75 run=300 --unit mm --mark 1/16").out
    assert "14° 2′ (14.04°)" in told("tenpenny slope rise=75 run=300 --angles minutes").out


def test_working_shows_the_numbers_put_in_and_the_sources() -> None:
    """Each formula in words and in numbers, then where it comes from."""
    out = told("tenpenny slope rise='3 in' run='1 ft' --working").out
    assert "  Angle from level = atan(rise ÷ run) = atan(3 in ÷ 12 in) = 14.0°" in out
    assert "  Euclid, Elements, book I, proposition 47" in out


def test_the_version_is_that_of_the_distribution() -> None:
    """Said once in the code and once in the project's own file."""
    project = tomllib.loads(Path("pyproject.toml").read_text("utf-8"))["project"]
    assert told("tenpenny --version").out == f"tenpenny {project['version']}"
