"""The bench's server: both sites, each at a port of its own, and the plan that the page goes through.

It runs as a process of its own, so that measuring does not disturb serving. It reads
one JSON object {"folders": {site: folder}, "steps": [step, ...]} from standard input,
prints {"ports": {site: port}} as its first line, and then each result as a line.
A step is {"site", "task", ...}; from a step with "dead" on, the sites answer no more.
"""

import functools
import json
import sys
import threading
from pathlib import Path
from urllib.parse import urlsplit

from workshop.serve import Handler, Listener

HERE = Path(__file__).parent
PAGES = {"/bench.html": "text/html; charset=utf-8", "/bench.js": "text/javascript; charset=utf-8",
         "/bench_book.js": "text/javascript; charset=utf-8"}


class Plan:
    """The steps, the ports, and whether the sites play dead."""

    def __init__(self, steps: list[dict]):
        self.steps = steps
        self.ports: dict[str, int] = {}
        self.dead = False

    def step(self, place: int) -> dict:
        """The step at `place`; the sites may die with it."""
        self.dead = self.steps[place].get("dead", False)
        return self.steps[place]

    def address(self, place: int) -> str:
        """Where the step at `place` is carried out, or "" after the last one."""
        if place >= len(self.steps):
            return ""
        return f"http://127.0.0.1:{self.ports[self.steps[place]['site']]}/bench.html?{place}"


class BenchHandler(Handler):
    """Serves one site below /site/, and the bench's own page."""

    protocol_version = "HTTP/1.1"
    disable_nagle_algorithm = True

    def __init__(self, *arguments, plan: Plan, **named):
        self.plan = plan
        super().__init__(*arguments, **named)

    def do_GET(self) -> None:
        """A file of the site, a page of the bench, or a step of the plan."""
        asked = urlsplit(self.path)
        if asked.path.startswith("/site/"):
            return self._site()
        if asked.path in PAGES:
            return self._send((HERE / asked.path[1:]).read_bytes(), PAGES[asked.path])
        if asked.path == "/bench/step":
            return self._send_json(self.plan.step(int(asked.query)))
        return self._send(b"", "image/x-icon") if asked.path == "/favicon.ico" else self.send_error(404)

    def do_POST(self) -> None:
        """A result: hand it on, and tell the page where to go next."""
        said = json.loads(self.rfile.read(int(self.headers["Content-Length"])))
        print(json.dumps(said), flush=True)
        self._send_json({"next": "" if "fault" in said else self.plan.address(said["step"] + 1)})

    def _site(self) -> None:
        if self.plan.dead:
            self.close_connection = True
            return
        self.path = self.path.removeprefix("/site")
        super().do_GET()

    def _send_json(self, said: dict) -> None:
        self._send(json.dumps(said).encode(), "application/json")

    def _send(self, data: bytes, kind: str) -> None:
        self.send_response(200)
        self.send_header("Content-Type", kind)
        self.send_header("Content-Length", str(len(data)))
        self.end_headers()
        self.wfile.write(data)


def main() -> None:
    """Serve until standard input ends."""
    asked = json.loads(sys.stdin.readline())
    plan = Plan(asked["steps"])
    for site, folder in asked["folders"].items():
        listener = Listener(("127.0.0.1", 0), functools.partial(BenchHandler, plan=plan, directory=folder))
        plan.ports[site] = listener.server_port
        threading.Thread(target=listener.serve_forever, daemon=True).start()
    print(json.dumps({"ports": plan.ports, "first": plan.address(0)}), flush=True)
    sys.stdin.read()


if __name__ == "__main__":
    main()
