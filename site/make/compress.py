"""Compressed copies beside the files, for hosts that send them as they are."""

from pathlib import Path

from make import prepare
from make.places import CACHE, MAKE
from make.said import run, say


def beside(folder: Path) -> None:
    """Put name.br and name.gz beside every file that they make smaller."""
    say("Compressing ...")
    run([prepare.node(), MAKE / "compress.mjs", folder, CACHE / "compressed"], "Compressing")
