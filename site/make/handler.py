"""Answering one request from a built folder, as a careful static host would."""

import os
import re
from collections.abc import Callable
from http.server import SimpleHTTPRequestHandler
from pathlib import Path
from typing import Any

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

    def send_response(self, code: int, message: str | None = None) -> None:
        """Note how it went."""
        self.code = code
        super().send_response(code, message)

    def end_headers(self) -> None:
        """Add what every answer carries."""
        lasting = self.code in (200, 304) and HASHED.search(self.path.split("?")[0])
        self.send_header("Cache-Control", "public, max-age=31536000, immutable" if lasting else "no-cache")
        self.send_header("Content-Security-Policy", self.policy)
        self.send_header("X-Content-Type-Options", "nosniff")
        if self.encoding:
            self.send_header("Content-Encoding", self.encoding)
            self.send_header("Vary", "Accept-Encoding")
        super().end_headers()

    code = 0
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
