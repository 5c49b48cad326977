"""How much memory a page's process has held at most, as the system counts it (Linux only)."""

import re
from pathlib import Path
from tempfile import TemporaryDirectory

from playwright.sync_api import BrowserContext, BrowserType, ViewportSize

from make import browser
from make.timing import Rival, first_answer, settled


def peak(kind: BrowserType, host: str, rival: Rival) -> int | None:
    """Bytes held at most by the process of a kept page, until a while after its answer; None where nobody tells."""
    with TemporaryDirectory() as profile:
        with _browser(kind, profile) as first, settled(first, rival) as page:
            first_answer(page, host, rival, keep=True)
        with _browser(kind, profile) as second, settled(second, rival) as page:
            first_answer(page, host, rival, keep=True)
            assert second.browser
            running = second.browser.new_browser_cdp_session().send("SystemInfo.getProcessInfo")["processInfo"]
            held = [_held(one["id"]) for one in running if one["type"] == "renderer"]
    return max((each for each in held if each), default=None)


def _browser(kind: BrowserType, profile: str) -> BrowserContext:
    """A browser that remembers what it kept, so that it can be closed and opened again."""
    arguments, size = list(browser.ARGUMENTS), ViewportSize(width=360, height=740)
    return kind.launch_persistent_context(profile, executable_path=browser.executable(), args=arguments, viewport=size)


def _held(process: int) -> int | None:
    try:
        found = re.search(r"VmHWM:\s+(\d+) kB", Path(f"/proc/{process}/status").read_text())
    except OSError:
        return None
    return int(found[1]) * 1024 if found else None
