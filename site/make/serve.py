"""Serving a built folder on this machine, as a careful static host would."""

import contextlib
import os
import re
import socket
import sys
import threading
import webbrowser
from collections.abc import Callable, Iterator
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any

from make.pages import policy
from make.said import Sorry, say

TYPES = {
    ".css": "text/css; charset=utf-8",
    ".html": "text/html; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".mjs": "text/javascript; charset=utf-8",
    ".json": "application/json",
    ".png": "image/png",
    ".svg": "image/svg+xml",
    ".txt": "text/plain; charset=utf-8",
    ".wasm": "application/wasm",
    ".webmanifest": "application/manifest+json",
    ".zip": "application/zip",
}
ENCODINGS = {"br": ".br", "gzip": ".gz"}
HASHED = re.compile(r"-[0-9a-f]{10}[./]")


class Handler(SimpleHTTPRequestHandler):
    """Right types, compressed copies where there are any, files named by their hash kept for good, and the policy."""

    protocol_version = "HTTP/1.1"
    extensions_map = TYPES

    def send_head(self) -> Any:
        """As the base class, but from the compressed copy beside the file where the browser takes it."""
        self.encoding = self._encoding()
        return super().send_head()

    def translate_path(self, path: str) -> str:
        """The file that is sent for a path."""
        return super().translate_path(path) + ENCODINGS.get(getattr(self, "encoding", ""), "")

    def guess_type(self, path: Any) -> str:
        """The type of the file itself, compressed or not."""
        name = str(path).removesuffix(ENCODINGS.get(self.encoding, "\0"))
        return TYPES.get(Path(name).suffix, "application/octet-stream")

    def list_directory(self, path: Any) -> None:
        """No listings."""
        self.send_error(404)

    def end_headers(self) -> None:
        """Add what every answer carries."""
        lasting = HASHED.search(self.path.split("?")[0])
        self.send_header("Cache-Control", "public, max-age=31536000, immutable" if lasting else "no-cache")
        self.send_header("Content-Security-Policy", self.policy)
        self.send_header("X-Content-Type-Options", "nosniff")
        if self.encoding:
            self.send_header("Content-Encoding", self.encoding)
            self.send_header("Vary", "Accept-Encoding")
        super().end_headers()

    encoding = ""
    policy = ""
    heard: Callable[[str], object] = staticmethod(str)

    def _encoding(self) -> str:
        self.encoding = ""
        file, accepted = self.translate_path(self.path), self.headers.get("Accept-Encoding", "")
        return next((one for one, ending in ENCODINGS.items() if one in accepted and os.path.exists(file + ending)), "")

    def log_request(self, code: int | str = "-", size: int | str = "-") -> None:
        """Whoever listens hears what was asked for."""
        self.heard(self.path)

    def log_message(self, format: str, *args: Any) -> None:
        """Nothing: the page is what there is to see."""


class Server(ThreadingHTTPServer):
    """A server that, once stopped, answers nothing more on connections that were left open either."""

    daemon_threads = True

    def __init__(self, folder: Path, port: int, heard: Callable[[str], object]) -> None:
        handler = type("Handler", (Handler,), {"policy": policy(folder), "heard": staticmethod(heard)})
        super().__init__(("127.0.0.1", port), partial(handler, directory=str(folder)))
        self.open: set[socket.socket] = set()

    def get_request(self) -> tuple[socket.socket, Any]:
        """The next connection, remembered."""
        connection, address = super().get_request()
        self.open.add(connection)
        return connection, address

    def shutdown_request(self, request: Any) -> None:
        """A connection done with."""
        self.open.discard(request)
        super().shutdown_request(request)

    def handle_error(self, request: Any, client_address: Any) -> None:
        """A visitor who left in the middle of an answer is nothing to speak of."""
        if not isinstance(sys.exception(), ConnectionError):
            super().handle_error(request, client_address)

    def stop(self) -> None:
        """Stop, and drop every connection."""
        self.shutdown()
        self.server_close()
        for connection in list(self.open):
            with contextlib.suppress(OSError):
                connection.shutdown(socket.SHUT_RDWR)


@contextlib.contextmanager
def serving(folder: Path, port: int = 0, heard: Callable[[str], object] = str) -> Iterator[str]:
    """Serve `folder` on this machine while the block runs; gives its address. `heard` is told each path asked for."""
    server = Server(folder, port, heard)
    threading.Thread(target=server.serve_forever, daemon=True).start()
    try:
        yield f"http://localhost:{server.server_address[1]}/"
    finally:
        server.stop()


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
