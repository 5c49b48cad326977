"""`tenpenny` and `python -m calc`: one question from the command line. See `calc.command.command_line`.

The one place that reads and writes files: pieces, where the maker says.
"""

import os
import stat
import sys
from collections.abc import Sequence
from contextlib import suppress

from calc.building.saved import OURS
from calc.command.command_line import run
from calc.errors import Refusal
from calc.typed.glyphs import quoted

LONGEST = 8_000_000
"""Bytes of the longest file looked into; no piece has so many."""


class Disk:
    """Files by name, as the shell has them."""

    def read(self, name: str) -> str:
        """The text of a file; Refusal where there is none, or where it is no text."""
        try:
            if not stat.S_ISREG(os.stat(name).st_mode):
                raise Refusal(f"{quoted(name)} is no file", "name the file of a piece")
            with open(name, "rb") as file:
                return file.read(LONGEST).decode("utf-8-sig")  # some editors put a mark in front
        except FileNotFoundError:
            raise Refusal(f"there is no file {quoted(name)}", "begin one with tenpenny piece new") from None
        except UnicodeDecodeError:
            raise Refusal(f"{quoted(name)} is damaged, or no piece", OURS) from None
        except (OSError, ValueError) as error:
            raise _cannot("read", name, error) from None

    def write(self, name: str, text: str, new: bool = False) -> None:
        """The text under this name, whole or not at all: written beside it first, then put in its place."""
        place = os.path.realpath(name)
        if new and os.path.lexists(name):
            raise Refusal(f"{quoted(name)} is there already", "choose another name")
        beside = f"{place}.{os.getpid()}.part"
        try:
            _put(beside, place, text)
        except (OSError, ValueError) as error:
            with suppress(OSError):
                os.unlink(beside)
            raise _cannot("written", name, error) from None


def _put(beside: str, place: str, text: str) -> None:
    with open(beside, "xb") as file:
        file.write(text.encode("utf-8"))
        file.flush()
        os.fsync(file.fileno())
    if os.path.exists(place):
        os.chmod(beside, stat.S_IMODE(os.stat(place).st_mode))
    os.replace(beside, place)


def _cannot(done: str, name: str, error: Exception) -> Refusal:
    why = getattr(error, "strerror", None) or "that is no name for a file"
    return Refusal(f"{quoted(name)} cannot be {done}: {why[0].lower()}{why[1:]}", "try another name or place")


def main(words: Sequence[str] | None = None) -> int:
    """Run the command line on `words`, or on what the shell passed; 0, or 2 when something could not be used."""
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")  # a terminal without ° or ′ shows ? and goes on
    try:
        told = run(sys.argv[1:] if words is None else words, Disk())
        print(told.out, end="\n" if told.out else "", flush=True)
        print(told.err, end="\n" if told.err else "", file=sys.stderr)
    except BrokenPipeError:  # the reader of a pipe has seen enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    return told.status


if __name__ == "__main__":
    sys.exit(main())
