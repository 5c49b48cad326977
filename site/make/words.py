"""The words build.py understands."""

import argparse
import shutil
from collections.abc import Callable
from pathlib import Path

from make import prepare
from make.places import CACHE, DIST
from make.said import Sorry, say


def main(words: list[str]) -> int:
    """Do what the words ask; 0 when it went well, else the exit status to leave with."""
    parser = _parser()
    asked, rest = parser.parse_known_args(words)
    if rest and asked.word != "test":
        parser.error(f"{rest[0]} is not understood here")
    asked.rest = rest
    if asked.word is None:
        parser.print_help()
        return 0
    try:
        if asked.word != "clean":
            prepare.enter(words)
        return WORDS[asked.word](asked)
    except Sorry as sorry:
        say(str(sorry))
        return 1
    except KeyboardInterrupt:
        return 130


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="build.py", description="Tenpenny: set up, build, serve, test and measure.")
    words = parser.add_subparsers(dest="word", metavar="word")
    serve = words.add_parser("serve", help="build, then serve the page on this machine and open it")
    serve.add_argument("--port", type=int, default=8010, help="the port to serve on (default 8010; the next free one)")
    serve.add_argument("--no-open", action="store_true", help="do not open a browser")
    build = words.add_parser("build", help="build dist/: plain files for any static host, under any path")
    build.add_argument("--into", type=Path, default=DIST, help="the folder to build into (default dist/)")
    build.add_argument("--compress", action="store_true", help="put .br and .gz copies beside the files")
    words.add_parser("test", help="build, then run every check and every test; what follows goes to pytest")
    bench = words.add_parser("bench", help="measure the page: first answer, bytes, keystroke to answer")
    bench.add_argument("--runs", type=int, default=5, help="runs of each measure (default 5)")
    bench.add_argument("--growth", action="store_true", help="instead: what 50, 200 and 800 more sums cost")
    words.add_parser("clean", help="remove what was built and cached; the next run sets up afresh")
    return parser


def _build(asked: argparse.Namespace) -> int:
    from make import dist

    dist.build(asked.into.resolve(), compressed=asked.compress)
    return 0


def _serve(asked: argparse.Namespace) -> int:
    from make import dist, serve

    dist.build(DIST)
    return serve.forever(DIST, asked.port, opening=not asked.no_open)


def _test(asked: argparse.Namespace) -> int:
    from make import check

    return check.everything(asked.rest)


def _bench(asked: argparse.Namespace) -> int:
    from make import bench, growth

    return growth.measure(asked.runs) if asked.growth else bench.measure(asked.runs)


def _clean(asked: argparse.Namespace) -> int:
    for folder in (DIST, CACHE):
        shutil.rmtree(folder, ignore_errors=True)
    prepare.forget()
    return 0


WORDS: dict[str, Callable[[argparse.Namespace], int]] = {
    "serve": _serve,
    "build": _build,
    "test": _test,
    "bench": _bench,
    "clean": _clean,
}
