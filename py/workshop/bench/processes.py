"""A browser as processes: started on its own, its page's process weighed, and all of them ended."""

import contextlib
import os
import re
import signal
import subprocess
import time
from collections.abc import Iterator, Mapping
from pathlib import Path

GRACE = 3.0
PROC = Path("/proc")


@contextlib.contextmanager
def running(command: list[str], surroundings: Mapping[str, str]) -> Iterator[int]:
    """Run a browser while the block lasts; gives its process id, and leaves none of its processes behind."""
    silent = {"stdin": subprocess.DEVNULL, "stdout": subprocess.DEVNULL, "stderr": subprocess.DEVNULL}
    browser = subprocess.Popen(command, env=dict(surroundings), start_new_session=True, **silent)
    try:
        yield browser.pid
    finally:
        _end(browser)


def _end(browser: subprocess.Popen) -> None:
    """Ask it to leave, wait a little, and end whatever of it is still there."""
    family = [browser.pid, *descendants(browser.pid)]
    browser.terminate()
    with contextlib.suppress(subprocess.TimeoutExpired):
        browser.wait(GRACE)
    until = time.monotonic() + GRACE
    while time.monotonic() < until and any(map(_alive, family[1:])):
        time.sleep(0.05)
    browser.kill()
    browser.wait()
    for pid in filter(_alive, family[1:]):
        with contextlib.suppress(ProcessLookupError):
            os.kill(pid, signal.SIGKILL)


def _alive(pid: int) -> bool:
    status = _read(pid, "status")
    return bool(status) and not re.search(r"^State:\s+Z", status, re.MULTILINE)


def descendants(pid: int) -> list[int]:
    """Every process that came from this one, as far as the system tells (Linux); nearest first."""
    parents = {}
    for entry in PROC.glob("[0-9]*"):
        found = re.search(r"^PPid:\s+(\d+)", _read(int(entry.name), "status"), re.MULTILINE)
        if found:
            parents.setdefault(int(found[1]), []).append(int(entry.name))
    family, todo = [], [pid]
    while todo:
        children = parents.get(todo.pop(0), [])
        family += children
        todo += children
    return family


def peak_memory(pid: int, words: str) -> float | None:
    """The most memory [MB] that one process of this browser has held so far, among those with `words` in their command."""
    peaks = [_peak(each) for each in descendants(pid) if words in _read(each, "cmdline")]
    return max((peak for peak in peaks if peak), default=None)


def own_peak() -> float | None:
    """The most memory [MB] that this process has held so far (Linux)."""
    return _peak(os.getpid())


def _peak(pid: int) -> float | None:
    found = re.search(r"^VmHWM:\s+(\d+) kB", _read(pid, "status"), re.MULTILINE)
    return round(int(found[1]) * 1024 / 1e6, 1) if found else None


def _read(pid: int, name: str) -> str:
    """A file of /proc as text; empty where the process or the folder is not there."""
    try:
        return (PROC / str(pid) / name).read_bytes().decode("utf-8", "replace")
    except OSError:
        return ""
