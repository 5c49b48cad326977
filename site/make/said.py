"""What build.py says, and how it runs other programs: quietly, and in full only when they fail."""

import os
import re
import subprocess
from collections.abc import Mapping, Sequence
from pathlib import Path

from make.places import ROOT


class Sorry(Exception):
    """Something the person at the keyboard can put right: a sentence that says how."""


def say(text: str) -> None:
    """One line, at once."""
    print(text, flush=True)


def run(words: Sequence[str | Path], why: str, env: Mapping[str, str] | None = None, text: str | None = None) -> str:
    """Run a program and return what it printed; Sorry, with the end of what it said, when it fails."""
    told = [str(word) for word in words]
    surroundings = {**os.environ, **(env or {})}
    done = subprocess.run(told, cwd=ROOT, env=surroundings, input=text, capture_output=True, text=True, check=False)
    if done.returncode:
        raise Sorry(f"{why} failed:\n{plain((done.stdout + done.stderr)[-6000:])}")
    return done.stdout


def plain(text: str) -> str:
    """The text without the hosts things were fetched from and without this machine's folders."""
    return re.sub(r"\b(?:https?|file)://[^\s'\",)]*", "(address)", text).replace(str(ROOT), ".").rstrip()
