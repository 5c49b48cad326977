"""How long a piece takes in the browser to settle an entry: each size that can be cut, one upon another."""

import json
from statistics import median
from typing import Any

from playwright.sync_api import Browser

from calc import discover
from calc.building.piece import Piece
from calc.door import handle
from make.timing import STAY, visitor

OFF = 0.4  # millimetres that a size comes out too large
PAUSE = 100  # milliseconds from one answer to the next entry
ASK = """async ([address, requests, rest, pause]) => {
  const thread = new Worker(address, { type: "module" });
  const heard = () => new Promise((told) => (thread.onmessage = ({ data }) => told(data)));
  await heard();
  const times = [];
  for (const request of requests) {
    const began = performance.now();
    thread.postMessage(request);
    let said = await heard();
    const settled = performance.now() - began;
    while (JSON.parse(said).more) said = await heard();
    times.push([settled, performance.now() - began]);
    await new Promise((on) => setTimeout(on, times.length === 1 ? rest : pause));
  }
  thread.terminate();
  return times;
}"""


def measure(chromium: Browser, host: str) -> dict[str, dict[str, float]]:
    """Milliseconds for each piece, from asking until it is told how it stands, the middle and the longest; and drawn.

    The first entry comes a while after the piece was opened, as it does at the bench: Python has practised meanwhile.
    """
    found = {}
    for piece in (one for one in discover.everything() if isinstance(one, Piece)):
        with visitor(chromium) as someone:
            page = someone.new_page()
            page.goto(f"{host}ours/{piece.id}.html")
            page.wait_for_selector("text=works offline")
            page.wait_for_timeout(STAY)  # the page's own thread has come to rest
            _, *times = page.evaluate(ASK, [page.workers[0].url, _entries(piece), STAY, PAUSE])
        settled, drawn = zip(*times, strict=True)
        found[piece.id] = {
            "median ms": round(median(settled), 1),
            "longest ms": round(max(settled), 1),
            "drawn ms": round(median(drawn), 1),
        }
    return found


def _entries(piece: Piece) -> list[str]:
    """Requests as the page sends them: the example as it is given, then each size cut; every third came out wrong."""
    given = [{"act": "give", "name": name, "text": text} for name, text in piece.example.givens.items()]
    asked = [_request(piece, None, given)]
    told = json.loads(handle(asked[0]))
    for name in [size["name"] for size in told["settled"]["sizes"] if size["can_be_cut"]]:
        size = next(one for one in told["settled"]["sizes"] if one["name"] == name)
        if size["entry"]:
            off = OFF if len(asked) % 3 == 0 and size["kind"] == "length" else 0
            do = {"act": "cut", "name": name, "text": f"{size['value'] + off:.4f} mm" if off else size["entry"]}
            asked.append(_request(piece, told["record"], do))
            told = json.loads(handle(asked[-1]))
    return asked


def _request(piece: Piece, record: Any, do: Any) -> str:
    return json.dumps({"id": 1, "op": "piece", "sum": piece.id, "record": record, "bench": {}, "do": do})
