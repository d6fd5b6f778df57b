"""The release: what the page keeps for use offline, and a version that follows from it."""

import hashlib
import json

from workshop.stamps import sha256

OFFLINE = "offline.js"
PLAIN_START = ("python/", "pyodide/python_stdlib.zip", "pyodide/pyodide-lock.json")


def release(files: dict[str, bytes]) -> dict[str, object]:
    """The version of `files` and their lists, leaving out the service worker itself.

    The version is the start of one digest over every name and content, so it
    changes exactly when a file does. files: what a start needs. packed: the same,
    to be kept unpacked. later: what only a plain start needs.
    """
    names = sorted(name for name in files if name != OFFLINE)
    total = hashlib.sha256()
    for name in names:
        total.update(f"{name}\0{sha256(files[name])}\n".encode())
    lists = {"files": [], "packed": [], "later": []}
    for name in names:
        lists[_list_of(name)].append(name)
    return {"version": total.hexdigest()[:16], **lists}


def _list_of(name: str) -> str:
    if name.endswith(".gz"):
        return "packed"
    return "later" if name.startswith(PLAIN_START) else "files"


def with_release(files: dict[str, bytes]) -> dict[str, bytes]:
    """`files` with the release written above the service worker's own text."""
    head = f"const RELEASE = {json.dumps(release(files))};\n"
    return {**files, OFFLINE: head.encode() + files[OFFLINE]}
