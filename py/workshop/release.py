"""The release: what the page keeps for use offline, and a version that follows from it."""

import hashlib
import json

from workshop.stamps import sha256

OFFLINE = "offline.js"


def release(files: dict[str, bytes]) -> dict[str, object]:
    """The version and the list of `files`, leaving out the service worker itself.

    The version is the start of one digest over every name and content, so it
    changes exactly when a file does.
    """
    names = sorted(name for name in files if name != OFFLINE)
    total = hashlib.sha256()
    for name in names:
        total.update(f"{name}\0{sha256(files[name])}\n".encode())
    return {"version": total.hexdigest()[:16], "files": names}


def with_release(files: dict[str, bytes]) -> dict[str, bytes]:
    """`files` with the release written above the service worker's own text."""
    head = f"const RELEASE = {json.dumps(release(files))};\n"
    return {**files, OFFLINE: head.encode() + files[OFFLINE]}
