"""A Chromium for the tests and the bench: one that is installed, or one that can be."""

import os
import shutil
import subprocess
import sys
from functools import cache

from playwright.sync_api import Error, sync_playwright

from make.said import Sorry, say

NAMES = ("chromium", "chromium-browser", "google-chrome-stable", "google-chrome")
ARGUMENTS = (
    "--no-sandbox",
    "--disable-gpu",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--no-first-run",
)


@cache
def executable() -> str | None:
    """The installed browser, or None for Playwright's own."""
    return next((found for name in NAMES if (found := shutil.which(name))), None)


def ready() -> None:
    """See to it that there is a browser, installing one if need be; Sorry when there is none to be had."""
    if _runs():
        return
    say("No Chromium here: setting one up ...")
    _quietly(sys.executable, "-m", "playwright", "install", "chromium")
    if not _runs() and shutil.which("apt-get") and os.geteuid() == 0:
        _quietly("apt-get", "update")
        _quietly("apt-get", "install", "--yes", "--no-install-recommends", "chromium")
        executable.cache_clear()
    if not _runs():
        raise Sorry("The tests need Chromium. On Debian or Ubuntu: apt-get install chromium")


def _runs() -> bool:
    try:
        with sync_playwright() as playwright:
            playwright.chromium.launch(executable_path=executable(), args=list(ARGUMENTS)).close()
    except Error:
        return False
    return True


def _quietly(*words: str) -> None:
    surroundings = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    subprocess.run(words, env=surroundings, capture_output=True, check=False)
