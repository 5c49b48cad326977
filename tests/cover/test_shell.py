"""The command line as a shell meets it: streams, status, completion."""

import io
import shutil
import subprocess
import sys

import pytest

from calc.__main__ import main
from calc.command.completion import complete
from calc.command.guide import BASH


def test_answers_go_out_and_refusals_go_to_the_error_stream(capsys: pytest.CaptureFixture[str]) -> None:
    """Status 0 and an answer, or status 2 and a sentence."""
    assert main(["slope", "rise=3 in", "run=1 ft"]) == 0
    assert "14.0°" in capsys.readouterr().out
    assert main(["slope", "rise=3 in"]) == 2
    found = capsys.readouterr()
    assert (found.out, found.err.count("\n")) == ("", 1)


def test_a_terminal_without_our_signs_still_gets_an_answer(monkeypatch: pytest.MonkeyPatch) -> None:
    """Where ° cannot be printed a question mark stands in its place, and nothing fails."""
    raw = io.BytesIO()
    monkeypatch.setattr(sys, "stdout", io.TextIOWrapper(raw, encoding="ascii"))
    assert main(["slope", "rise=3 in", "run=1 ft"]) == 0
    assert b"14.0?" in raw.getvalue()


def test_it_runs_as_a_module() -> None:
    """`python -m calc`, in a process of its own."""
    found = subprocess.run([sys.executable, "-m", "calc", "slope", "rise=3", "run=-4"], capture_output=True, text=True)
    assert found.returncode == 2
    assert found.stderr == "Run: −4 in is too small; type a length more than 0 in, up to 20 m.\n"


def test_a_reader_who_has_seen_enough_is_no_error() -> None:
    """A pipe closed early, as by `head`, ends without a traceback."""
    with subprocess.Popen([sys.executable, "-m", "calc", "--list", "--json"], stdout=-1, stderr=-1) as process:
        assert process.stdout
        assert process.stderr
        process.stdout.close()
        assert process.stderr.read() == b""


@pytest.mark.parametrize(
    ("words", "found"),
    [
        (["bev"], ["bevel "]),
        (["slope", ""], ["rise=", "run=", "length=", "angle="]),
        (["slope", "rise", "=", "3", "ri"], []),
        (["slope", "r"], ["rise=", "run="]),
        (["slope", "rise", "=", "3", "r"], ["run="]),
        (["nail", "wood", "="], ["light", "dense"]),
        (["nail", "wood", "=", "d"], ["dense"]),
        (["slope", "rise", "=", "3"], []),
        (["slope", "--cur"], ["--currency"]),
        (["zzz"], []),
    ],
)
def test_completion_offers_what_may_come_next(words: list[str], found: list[str]) -> None:
    """Sums, then the entries not yet given, then the keys of a choice; bash hands name=value over as three words."""
    assert complete(words) == found


@pytest.mark.skipif(not shutil.which("bash"), reason="there is no bash here")
def test_the_line_given_for_bash_works() -> None:
    """The documented lines, with this Python standing in for the installed command."""
    script = f"""tenpenny() {{ "{sys.executable}" -m calc "$@"; }}
{BASH}
COMP_WORDS=(tenpenny slope ri); COMP_CWORD=2; _tenpenny; echo "${{COMPREPLY[@]}}"
complete -p tenpenny"""
    found = subprocess.run(["bash", "--norc", "-c", script], capture_output=True, text=True)
    assert found.stdout == "rise=\ncomplete -o nospace -F _tenpenny tenpenny\n"
