"""How long a piece takes in the browser to settle an entry: each size that can be cut, one upon another."""

import json
from statistics import median
from typing import Any

from playwright.sync_api import Browser

from calc import discover
from calc.building.piece import Piece
from calc.door import handle
from make.timing import STAY, visitor

ASK = """async ([address, requests, rest]) => {
  const thread = new Worker(address, { type: "module" });
  const heard = () => new Promise((told) => (thread.onmessage = told));
  await heard();
  const times = [];
  for (const request of requests) {
    const began = performance.now();
    thread.postMessage(request);
    await heard();
    times.push(performance.now() - began);
    if (times.length === 1) await new Promise((on) => setTimeout(on, rest));
  }
  thread.terminate();
  return times;
}"""


def measure(chromium: Browser, host: str) -> dict[str, dict[str, float]]:
    """Milliseconds for each piece, from asking to the answer: the middle and the longest.

    The first entry comes a while after the piece was opened, as it does at the bench: Python has practised meanwhile.
    """
    found = {}
    for piece in (one for one in discover.everything() if isinstance(one, Piece)):
        with visitor(chromium) as someone:
            page = someone.new_page()
            page.goto(f"{host}ours/{piece.id}.html")
            page.wait_for_selector("text=works offline")
            page.wait_for_timeout(STAY)  # the page's own thread has come to rest
            _, *times = page.evaluate(ASK, [page.workers[0].url, _entries(piece), STAY])
        found[piece.id] = {"median ms": round(median(times), 1), "longest ms": round(max(times), 1)}
    return found


def _entries(piece: Piece) -> list[str]:
    """Requests as the page sends them: the example as it is given, then each size cut as it was planned."""
    given = [{"act": "give", "name": name, "text": text} for name, text in piece.example.givens.items()]
    asked = [_request(piece, None, given)]
    told = json.loads(handle(asked[0]))
    for size in told["settled"]["sizes"]:
        if size["can_be_cut"] and size["entry"]:
            asked.append(_request(piece, told["record"], {"act": "cut", "name": size["name"], "text": size["entry"]}))
            told = json.loads(handle(asked[-1]))
    return asked


def _request(piece: Piece, record: Any, do: Any) -> str:
    return json.dumps({"id": 1, "op": "piece", "sum": piece.id, "record": record, "bench": {}, "do": do})
