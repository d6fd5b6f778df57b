"""One browser through a list of steps: a server, a profile, and the results as they come."""

import contextlib
import json
import os
import queue
import subprocess
import sys
import tempfile
import threading
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from workshop.bench.engines import Engine
from workshop.bench.processes import peak_memory, running
from workshop.places import PY
from workshop.say import Trouble

PATIENCE = 45.0


class TooLong(Trouble):
    """A step whose result did not come in time."""


@dataclass(frozen=True)
class Place:
    """Where a session takes place: the engine, the variables of its screen, and the folders of the sites by name."""

    engine: Engine
    screen: dict[str, str]
    folders: dict[str, Path]


def session(place: Place, steps: list[dict], tell) -> list[dict]:
    """The results of all steps in one fresh profile; tried once more if one takes too long. Raises Trouble."""
    try:
        return _session(place, steps)
    except TooLong as trouble:
        tell(f"{trouble} Trying once more.")
        return _session(place, steps)


def _session(place: Place, steps: list[dict]) -> list[dict]:
    engine = place.engine
    with _server(place.folders, steps) as (first, results), _profile() as profile:
        surroundings = engine.surroundings(profile) | place.screen
        with running(engine.command(first, profile), surroundings) as pid:
            got = []
            for step in steps:
                got.append(_result(results, engine, step) | {"memory": peak_memory(pid, engine.page_process)})
            return got


def _result(results: queue.Queue, engine: Engine, step: dict) -> dict:
    try:
        line = results.get(timeout=PATIENCE + step.get("stay", 0) / 1000)
    except queue.Empty:
        what = "ready to work offline" if step.get("ready") else "at its figures"
        raise TooLong(f"{engine.name}, {step['site']} site: not {what} within {PATIENCE:.0f} s.") from None
    said = json.loads(line) if line else {"fault": "the bench's server stopped"}
    if "fault" in said:
        raise Trouble(f"{engine.name} could not carry out a step of the bench: {said['fault']}")
    return said


@contextlib.contextmanager
def _profile() -> Iterator[Path]:
    # A browser's last process may still write while it leaves.
    with tempfile.TemporaryDirectory(prefix="brimbook-bench-", ignore_cleanup_errors=True) as folder:
        yield Path(folder)


@contextlib.contextmanager
def _server(folders: dict[str, Path], steps: list[dict]) -> Iterator[tuple[str, queue.Queue]]:
    """The bench's server; gives the address of the first step, and the queue into which results come as lines."""
    command = [sys.executable, "-m", "workshop.bench.server"]
    piped = {"stdin": subprocess.PIPE, "stdout": subprocess.PIPE, "text": True}
    server = subprocess.Popen(command, env={**os.environ, "PYTHONPATH": str(PY)}, **piped)
    try:
        asked = {"folders": {site: str(folder) for site, folder in folders.items()}, "steps": steps}
        server.stdin.write(json.dumps(asked) + "\n")
        server.stdin.flush()
        first = server.stdout.readline()
        if not first:
            raise Trouble("The bench's server did not start.")
        results: queue.Queue = queue.Queue()
        reader = threading.Thread(target=_read, args=(server.stdout, results), daemon=True)
        reader.start()
        yield json.loads(first)["first"], results
    finally:
        server.terminate()
        server.wait()
        server.stdin.close()
        reader.join()
        server.stdout.close()


def _read(lines, results: queue.Queue) -> None:
    for line in lines:
        results.put(line)
    results.put("")
