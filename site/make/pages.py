"""The pages: index.html and one a sum, whole and readable before any script runs; the manifest and the icons."""

import html
import json
import re
from pathlib import Path
from typing import Any

from make import prepare
from make.catalogue import Catalogue
from make.files import keep, put, told
from make.places import MAKE, SITE
from make.said import Sorry, run

ICONS = {"icon": "icon.svg", "touchIcon": "icon-180.png"}


def write(folder: Path, catalogue: Catalogue, code: dict[str, str]) -> None:
    """Write every page. `assets` names what a page loads, from its own folder."""
    icons = _icons(folder)
    manifest = put(folder, "manifest.webmanifest", told(_manifest(icons)))
    named = {use: icons[name] for use, name in ICONS.items()}
    given = {"catalogue": catalogue.listed, "data": catalogue.data, "assets": {**code, "manifest": manifest, **named}}
    run([prepare.node(), MAKE / "pages.mjs", folder], "Writing the pages", text=json.dumps(given))


def policy(folder: Path) -> str:
    """The security policy that the built pages carry; a host should send it as a header too."""
    found = re.search(r'Content-Security-Policy" content="([^"]+)"', (folder / "index.html").read_text("utf-8"))
    if not found:
        raise Sorry("index.html carries no security policy.")
    return html.unescape(found[1])


def _icons(folder: Path) -> dict[str, str]:
    """Each icon's name in site/icons and where it went."""
    files = sorted((SITE / "icons").glob("*.*"))
    return {file.name: keep(folder, f"icons/{file.name}", file.read_bytes()) for file in files}


def _manifest(icons: dict[str, str]) -> dict[str, Any]:
    manifest = json.loads((SITE / "manifest.json").read_text("utf-8"))
    found = [{**icon, "src": icons[icon["src"]]} for icon in manifest["icons"]]
    return {**manifest, "icons": found}
