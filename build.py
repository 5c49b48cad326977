"""Tenpenny's one front door: `python3 build.py` says what it can do. Standard library only; Python 3.11 or newer."""

import sys
from pathlib import Path

if sys.version_info < (3, 11):  # noqa: UP036  (an older Python is told so in a sentence)
    sys.exit(f"Tenpenny needs Python 3.11 or newer; this is {sys.version.split()[0]}. Run build.py with a newer one.")

sys.path.insert(0, str(Path(__file__).resolve().parent / "site"))

from make.words import main

if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
