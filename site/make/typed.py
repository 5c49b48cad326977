"""From keystroke to answer, on the page of every sum: one of its givens taken in hand and typed over and over."""

import json
import math
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import pairwise
from statistics import median
from urllib.parse import urlencode

from playwright.sync_api import Browser, BrowserContext

from calc import discover
from calc.building.piece import Piece
from calc.declare import Sum
from calc.door import handle
from calc.kinds import Choice
from calc.rows import Rows
from make import slow
from make.timing import LONGEST, OFTEN, visitor

TIMES = 8
QUIET = 50  # milliseconds from one look to the next
REACH = 1000  # milliseconds that a hand takes at least from the first answer to a field
RISE = 300  # milliseconds from the touch of a field, while its keys rise, to the first of them
ANSWERED = "performance.getEntriesByName('answered').length > 0"
"""Said by the thread once it has answered for what came in the address; a keystroke before that waits for it."""
TYPE = """async ([field, answer, texts]) => {
  const input = document.querySelector(field);
  const figure = () => document.querySelector(answer)?.textContent;
  const answered = (text) => new Promise((done) => {
    const [before, began] = [figure(), performance.now()];
    const observer = new MutationObserver(() => {
      if (!figure() || figure() === before) return;
      observer.disconnect();
      done(performance.now() - began);
    });
    observer.observe(document.body, %s);
    input.value = text;
    input.dispatchEvent(new InputEvent("input", { bubbles: true }));
  });
  const times = [];
  input.focus();
  await new Promise((rest) => setTimeout(rest, %d));
  for (const text of texts) {
    times.push(await answered(text));
    await new Promise((rest) => setTimeout(rest, 80));
  }
  return times;
}"""


@dataclass(frozen=True)
class Typing:
    """What is typed into which field of a sum, one after another, and an answer that changes each time."""

    sum: str
    query: str
    field: str
    answer: str
    texts: list[str]


def measure(chromium: Browser, host: str, rate: int) -> dict[str, int | str]:
    """Milliseconds over all sums, and the sum that is slowest in the middle."""
    with visitor(chromium) as someone:
        someone.new_page().goto(f"{host}ours/")
        someone.pages[0].wait_for_selector("text=works offline", timeout=LONGEST)
        with slow.slowed(rate):
            found = {one.sum: _times(someone, host, one) for one in typings()}
    slowest = max(found, key=lambda name: median(found[name]))
    every = sorted(time for times in found.values() for time in times)
    return {
        "median ms": round(median(every)),
        "p95 ms": round(every[math.ceil(0.95 * len(every)) - 1]),
        "slowest": slowest,
        "slowest median ms": round(median(found[slowest])),
    }


def typings() -> Iterator[Typing]:
    """One for every sum that has a given in a field of its own."""
    for one in (each for each in discover.everything() if not isinstance(each, Piece)):
        if found := next(_tried(one), None):
            yield found


def _tried(one: Sum) -> Iterator[Typing]:
    """Each given in turn, a figure of its text made larger step by step, where an answer changes with each step."""
    typed = {given.name for given in one.givens if not isinstance(given, Choice | Rows)}
    for name, text in ((name, text) for name, text in one.example.givens.items() if name in typed):
        for texts in _larger(text):
            told = [_answers(one, {**one.example.givens, name: each}) for each in (text, *texts)]
            if changed := next((each for each in told[0] if _moves([one.get(each) for one in told])), None):
                yield Typing(one.id, urlencode(one.example.givens), f"#f-{name}", f"#a-{changed}", texts)


def _larger(text: str) -> Iterator[list[str]]:
    """The text with its first, then with its last whole number one larger, two larger and so on."""
    numbers = list(re.finditer(r"\d+", text))
    for found in numbers[:: max(1, len(numbers) - 1)]:
        before, after = text[: found.start()], text[found.end() :]
        yield [f"{before}{int(found[0]) + by}{after}" for by in range(1, TIMES + 1)]


def _moves(values: list[list[str] | None]) -> bool:
    """Whether each is there and another than the one before."""
    return all(values) and all(one != other for one, other in pairwise(values))


def _answers(one: Sum, givens: Mapping[str, str]) -> dict[str, list[str]]:
    """Each single answer as the page prints it."""
    told = json.loads(handle(json.dumps({"id": 1, "op": "answer", "sum": one.id, "givens": dict(givens), "bench": {}})))
    answers = told["answer"]["answers"] if told["ok"] else []
    return {
        each["name"]: [each[part] for part in ("text", "left", "also")] for each in answers if each["kind"] != "rows"
    }


def _times(someone: BrowserContext, host: str, one: Typing) -> list[float]:
    page = someone.new_page()
    page.goto(f"{host}ours/{one.sum}.html#{one.query}")
    page.wait_for_selector(".status.ready, .offline", timeout=LONGEST)
    while not page.workers[0].evaluate(ANSWERED):
        page.wait_for_timeout(QUIET)
    page.wait_for_timeout(REACH)
    times: list[float] = page.evaluate(TYPE % (OFTEN, RISE), [one.field, one.answer, one.texts])
    page.close()
    return times
