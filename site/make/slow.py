"""A slower processor: our own browser's processes let run only part of the time.

Chromium's own throttling slows a page's main thread but not its workers, where Python is (measured); so every process
of the browser is stopped and let go again, many times a second.
"""

import contextlib
import os
import signal
import threading
import time
from collections.abc import Iterator
from pathlib import Path

RUN = 0.001  # seconds let run at a time: a slow processor is slow all the time, not gone for half a frame
LOOK = 0.1  # seconds from one look for new processes to the next


def ours() -> list[int]:
    """The browser processes that this process started, and those that they started."""
    parents = {pid: parent for pid, parent in map(_parent, Path("/proc").glob("[0-9]*")) if parent}
    return [pid for pid in parents if _descends(pid, parents) and "chrom" in _name(pid)]


def _parent(folder: Path) -> tuple[int, int]:
    try:
        return int(folder.name), int((folder / "stat").read_text().rpartition(")")[2].split()[1])
    except OSError:
        return int(folder.name), 0


def _descends(pid: int, parents: dict[int, int]) -> bool:
    while pid in parents:
        pid = parents[pid]
        if pid == os.getpid():
            return True
    return False


def _name(pid: int) -> str:
    try:
        return Path(f"/proc/{pid}/comm").read_text()
    except OSError:
        return ""


def _tell(pids: list[int], which: signal.Signals) -> None:
    for pid in pids:
        with contextlib.suppress(ProcessLookupError):
            os.kill(pid, which)


@contextlib.contextmanager
def slowed(times: int) -> Iterator[None]:
    """While the block runs, the browser has one part in `times` of the processor."""
    done = threading.Event()
    thread = threading.Thread(target=_brake, args=(times, done))
    if times > 1:
        thread.start()
    try:
        yield
    finally:
        done.set()
        if times > 1:
            thread.join()


def _brake(times: int, done: threading.Event) -> None:
    pids, looked = ours(), time.monotonic()
    while not done.is_set():
        _tell(pids, signal.SIGSTOP)
        stopped = time.monotonic()
        if stopped - looked > LOOK:
            pids, looked = ours(), stopped  # nothing runs on meanwhile
        time.sleep(max(0, stopped + RUN * (times - 1) - time.monotonic()))
        _tell(pids, signal.SIGCONT)
        time.sleep(RUN)
    _tell(ours(), signal.SIGCONT)
