"""A server on this machine, as a careful static host would be: for `build.py serve`, the tests and the bench."""

import contextlib
import socket
import sys
import threading
from collections.abc import Callable, Iterator
from functools import partial
from http.server import ThreadingHTTPServer
from pathlib import Path
from typing import Any

from make.handler import Handler
from make.pages import policy


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
