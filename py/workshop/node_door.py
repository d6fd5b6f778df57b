"""The door as the page meets it: the core under Pyodide, in Node, from a built dist/."""

import json
import subprocess
import tempfile
from pathlib import Path

from workshop.node import node
from workshop.places import WORKSHOP
from workshop.say import Trouble


class NodeDoor:
    """Asks the core under Pyodide; one process answers until `close`."""

    def __init__(self, dist: Path):
        self._said = tempfile.TemporaryFile(mode="w+", encoding="utf-8")
        self._process = subprocess.Popen(
            [node(), WORKSHOP / "ask.mjs", dist],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=self._said,
            encoding="utf-8",
        )

    def ask(self, name: str, request: dict) -> dict:
        """The door's whole reply to `name`: {"answer": ...} or {"fault": ...}. Raises Trouble."""
        try:
            self._process.stdin.write(json.dumps({"name": name, "request": request}) + "\n")
            self._process.stdin.flush()
            reply = self._process.stdout.readline()
        except BrokenPipeError:
            reply = ""
        if not reply:
            self._said.seek(0)
            raise Trouble(f"The core under Node stopped: {self._said.read()[-2000:]}")
        return json.loads(reply)

    def close(self) -> None:
        """End the process."""
        if not self._process.stdin.closed:
            self._process.communicate(timeout=30)
        self._said.close()
