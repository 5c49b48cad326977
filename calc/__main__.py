"""`tenpenny` and `python -m calc`: one question from the command line. See `calc.command_line`."""

import os
import sys
from collections.abc import Sequence

from calc.command_line import run


def main(words: Sequence[str] | None = None) -> int:
    """Run the command line on `words`, or on what the shell passed; 0, or 2 when something could not be used."""
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")  # a terminal without ° or ′ shows ? and goes on
    try:
        told = run(sys.argv[1:] if words is None else words)
        print(told.out, end="\n" if told.out else "", flush=True)
        print(told.err, end="\n" if told.err else "", file=sys.stderr)
    except BrokenPipeError:  # the reader of a pipe has seen enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    return told.status


if __name__ == "__main__":
    sys.exit(main())
