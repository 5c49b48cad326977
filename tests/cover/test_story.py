"""The story in shared/a-box-as-it-was-built.md: each command is run, and says what the story says."""

import re
import shlex
from pathlib import Path

import pytest

from calc.__main__ import main

STORY = Path(__file__).parents[2] / "shared" / "a-box-as-it-was-built.md"
BLOCK = re.compile(r"```console\n(.*?)```", re.DOTALL)
COMMAND = re.compile(r"^\$ tenpenny (.*)\n", re.MULTILINE)
GOES_ON = "...\n"


def told() -> list[tuple[str, str]]:
    """Each command of the story, and what it says then."""
    blocks = (COMMAND.split(block)[1:] for block in BLOCK.findall(STORY.read_text("utf-8")))
    return [pair for parts in blocks for pair in zip(parts[::2], parts[1::2], strict=True)]


def test_the_box_comes_out_as_the_story_says(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """From the sketch to the third thing that went wrong, in one folder, command by command."""
    monkeypatch.chdir(tmp_path)
    assert len(told()) > 6
    for command, says in told():
        assert main(shlex.split(command)) == 0, command
        said = capsys.readouterr().out.rstrip() + "\n"
        assert (said[: len(says) - len(GOES_ON)] + GOES_ON if says.endswith(GOES_ON) else said) == says, command
