"""The rules of accessibility (axe-core) that a page is held against, in each look."""

from make.places import MODULES
from playwright.sync_api import Page

AXE = (MODULES / "axe-core" / "axe.min.js").read_text("utf-8")
LOOKS = ("light", "dark", "sun")
ALL = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
OF_COLOUR = ["color-contrast", "link-in-text-block"]
"""The only ones of these that look at colours; for the rest a page is the same in every look."""


def faults(page: Page, look: str) -> list[tuple[str, str]]:
    """What is broken in a look, and where first; what no look can change is asked about in the first only."""
    page.evaluate("(look) => { document.documentElement.dataset.look = look; }", look)
    if not page.evaluate("'axe' in window"):
        page.evaluate(AXE)
    rules = ALL if look == LOOKS[0] else OF_COLOUR
    found = page.evaluate("(rules) => axe.run(document, { runOnly: rules, resultTypes: ['violations'] })", rules)
    assert found["passes"], "no rule found anything to look at"
    return [(one["id"], one["nodes"][0]["html"]) for one in found["violations"]]
