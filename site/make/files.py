"""Files of the build: names that carry a hash of what is inside, JSON that comes out the same every time."""

import gzip
import hashlib
import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any


def digest(content: bytes) -> str:
    """The SHA-256 of some bytes, in hexadecimal."""
    return hashlib.sha256(content).hexdigest()


def hashed(name: str, content: bytes) -> str:
    """A file name with a hash of the content put in: `code/app.js` -> `code/app-1f2e3d4c5b.js`."""
    stem, dot, ending = name.rpartition(".")
    return f"{stem}-{digest(content)[:10]}{dot}{ending}"


def put(folder: Path, name: str, content: bytes) -> str:
    """Write a file and return its name."""
    file = folder / name
    file.parent.mkdir(parents=True, exist_ok=True)
    file.write_bytes(content)
    return name


def keep(folder: Path, name: str, content: bytes) -> str:
    """Write a file under a name that carries its hash, and return that name."""
    return put(folder, hashed(name, content), content)


def told(value: Any) -> bytes:
    """A value as compact JSON."""
    return json.dumps(value, ensure_ascii=False, separators=(",", ":")).encode()


def packed(texts: Mapping[str, str]) -> bytes:
    """Text files by name, as gzipped JSON: small on the wire from any host, and undated."""
    return gzip.compress(told(dict(sorted(texts.items()))), 9, mtime=0)
