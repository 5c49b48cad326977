"""Timing in the browser: from navigation to an answer standing on the page."""

import json
from dataclasses import dataclass

from playwright.sync_api import Browser, BrowserContext, Page

from make import slow

LONGEST = 300_000  # milliseconds
SETTLING = 1500  # milliseconds: the browser's own frame has things to load when a window opens
STAY = 6000  # milliseconds that a visitor stays after an answer: the browser keeps what it compiled a while after that
TOOK = "answered after "
OFTEN = "{ subtree: true, childList: true, characterData: true, attributes: true }"
WATCH = """{
  const [selector, text] = %s;
  const look = () => {
    const root = document.documentElement;
    if (root?.dataset.took || document.querySelector(selector)?.textContent !== text) return;
    root.dataset.took = performance.now();
    console.debug(`%s${root.dataset.took}`);
  };
  new MutationObserver(look).observe(document, %s);
}"""
SPIN = """() => new Promise((done) => {
  const spin = () => {
    const began = performance.now();
    for (let i = 0, x = 0; i < 1e8; i++) x += Math.sqrt(i);
    postMessage(performance.now() - began);
  };
  const worker = new Worker(URL.createObjectURL(new Blob([`(${spin})()`], { type: "text/javascript" })));
  worker.onmessage = ({ data }) => done(data);
})"""


STEPS = """() => JSON.stringify({
  origin: performance.timeOrigin,
  steps: performance.getEntries().flatMap(({ entryType, name, startTime }) =>
    entryType === "mark" || name === "first-contentful-paint" ? [[name, startTime]] : []),
})"""


@dataclass(frozen=True)
class Visit:
    """How a visit went, in milliseconds from navigation: the first answer, and when each step was reached."""

    took: float
    steps: dict[str, float]


@dataclass(frozen=True)
class Rival:
    """A page to time: where it is, where its first answer stands and what it says, and what shows that it is kept."""

    name: str
    path: str
    answer: str
    text: str
    kept: str


FIGURE = "#answers.now #a-angle .figure"
OURS = Rival("ours", "ours/slope.html#rise=6%20in&run=1%20ft", FIGURE, "26.6°", ".offline >> text=works offline")
BARE = Rival("bare Pyodide", "bare/index.html", "#answer", "2", "#kept >> text=whole")


def visitor(browser: Browser) -> BrowserContext:
    """Somebody who has never been here, with a phone's screen."""
    return browser.new_context(viewport={"width": 360, "height": 740})


def settled(visitor: BrowserContext, rival: Rival) -> Page:
    """A window in which nothing goes on, that will say in its console when a rival's first answer is on its page."""
    page = visitor.new_page()
    page.add_init_script(WATCH % (json.dumps([rival.answer, rival.text]), TOOK, OFTEN))
    page.wait_for_timeout(SETTLING)
    return page


def asleep(page: Page) -> None:
    """Put the service workers to sleep, as a browser does soon after their last page is closed."""
    tools = page.context.new_cdp_session(page)
    for wish in ("enable", "stopAllWorkers", "disable"):
        tools.send(f"ServiceWorker.{wish}")


def first_answer(page: Page, host: str, rival: Rival, *, keep: bool = False) -> Visit:
    """The way from navigation to the first answer; with `keep`, a visitor stays until all is kept, then a while."""
    with page.expect_console_message(lambda told: told.text.startswith(TOOK), timeout=LONGEST) as heard:
        page.goto(host + rival.path, wait_until="commit")
    if keep:
        page.wait_for_selector(rival.kept, timeout=LONGEST)
        page.wait_for_timeout(STAY)
    return Visit(float(heard.value.text.removeprefix(TOOK)), _steps(page))


def _steps(page: Page) -> dict[str, float]:
    """When each step was reached, on the page and in its worker, from the page's navigation."""
    told = [json.loads(page.evaluate(STEPS)), *(json.loads(worker.evaluate(STEPS)) for worker in page.workers)]
    start = told[0]["origin"]
    return {name: one["origin"] + at - start for one in told for name, at in one["steps"]}


def spin(browser: Browser, rate: int) -> float:
    """Milliseconds that a fixed piece of work takes a worker, in a page already there: how slow a rate truly is."""
    page = browser.new_page()
    page.wait_for_timeout(SETTLING)
    with slow.slowed(rate):
        took = float(page.evaluate(SPIN))
    page.close()
    return took
