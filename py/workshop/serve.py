"""A small server for a built page, on this machine alone."""

import functools
import os
import threading
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

from workshop.places import DIST
from workshop.say import Trouble, say

KINDS = {
    ".css": "text/css; charset=utf-8",
    ".html": "text/html; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".json": "application/json",
    ".mjs": "text/javascript; charset=utf-8",
    ".png": "image/png",
    ".svg": "image/svg+xml",
    ".wasm": "application/wasm",
    ".webmanifest": "application/manifest+json",
    ".whl": "application/zip",
    ".zip": "application/zip",
}

PORTS_TO_TRY = 20


class Handler(SimpleHTTPRequestHandler):
    """Serves plain files; a browser asks again each time whether they changed."""

    extensions_map = {**SimpleHTTPRequestHandler.extensions_map, **KINDS}

    def end_headers(self) -> None:
        self.send_header("Cache-Control", "no-cache")
        super().end_headers()

    def log_message(self, *_: object) -> None:
        """Say nothing: a line a file would hide the address."""


class Listener(ThreadingHTTPServer):
    """A listener that leaves at once, whatever its threads still do."""

    daemon_threads = True
    # Windows would let two servers share a port.
    allow_reuse_address = os.name != "nt"

    def handle_error(self, request, client_address) -> None:
        """Say nothing: a browser that hangs up halfway is no fault."""


class Server:
    """Serves a folder at `.address`; can be stopped and started again on the same port."""

    def __init__(self, folder: Path = DIST, port: int = 0):
        self.folder = folder
        self.port = port
        self._listener: Listener | None = None

    @property
    def address(self) -> str:
        """The page's address, with a slash at its end."""
        return f"http://localhost:{self.port}/"

    def start(self) -> "Server":
        """Listen, in a thread of its own. Raises OSError if the port is taken."""
        if self._listener:
            return self
        handler = functools.partial(Handler, directory=str(self.folder))
        self._listener = Listener(("127.0.0.1", self.port), handler)
        self.port = self._listener.server_port
        threading.Thread(target=self._listener.serve_forever, args=(0.05,), daemon=True).start()
        return self

    def stop(self) -> None:
        """Stop listening, as a lost network would look to the page."""
        if self._listener:
            self._listener.shutdown()
            self._listener.server_close()
            self._listener = None


def serve(port: int) -> None:
    """Serve dist/ at `port`, or the next free one, until Ctrl-C. Raises Trouble."""
    server = _first_free(port)
    say(f"Brimbook is at {server.address} (Ctrl-C stops it)")
    try:
        threading.Event().wait()
    finally:
        server.stop()


def _first_free(first: int) -> Server:
    for port in range(first, min(first + PORTS_TO_TRY, 65536)):
        try:
            server = Server(port=port).start()
        except OSError:
            continue
        if port != first:
            say(f"Port {first} is in use; {port} is free.")
        return server
    raise Trouble(f"Every port from {first} to {port} is in use: name another with --port.")
