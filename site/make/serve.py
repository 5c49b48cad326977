"""`build.py serve`: the page on this machine until it is stopped."""

import contextlib
import os
import sys
import threading
import webbrowser
from pathlib import Path

from make.host import serving
from make.said import Sorry, say


def forever(folder: Path, port: int, *, opening: bool) -> int:
    """Serve until stopped, on this port or the next free one."""
    for chosen in range(port, port + 20):
        try:
            with serving(folder, chosen) as address:
                return _wait(address, opening=opening)
        except OSError:
            continue
    raise Sorry(f"No port from {port} to {port + 19} is free; name another: python3 build.py serve --port 9000")


def _wait(address: str, *, opening: bool) -> int:
    say(f"Tenpenny is at {address}\nPress Ctrl+C to stop.")
    if opening and (sys.platform != "linux" or os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY")):
        webbrowser.open(address)
    with contextlib.suppress(KeyboardInterrupt):
        threading.Event().wait()
    return 0
