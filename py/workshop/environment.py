"""The project's own Python environment in .venv/, with pinned, hash-checked packages."""

import importlib.util
import json
import shutil
import sys

from workshop.pip import pip
from workshop.places import ENVIRONMENT, LOCKS, ROOT, environment_python
from workshop.run import Failed, run
from workshop.say import Trouble, say
from workshop.stamps import fingerprint

STAMP = ENVIRONMENT / "brimbook-stamp.json"
KINDS = {"build": ["build", "page"], "test": ["test"]}


def make_ready(for_tests: bool) -> None:
    """Make .venv/ hold what the build (and the tests) need; quick when it does already.

    An environment made by another Python, in another folder or from other locks
    is made anew. Raises Trouble.
    """
    wanted = _wanted()
    have = _read_stamp()
    if any(have[part] != wanted.get(part) for part in have) or "python" not in have:
        _create()
        have = {"python": wanted["python"]}
        _write_stamp(have)
    for kind in ["build", "test"] if for_tests else ["build"]:
        if kind not in have:
            _install(kind)
            have[kind] = wanted[kind]
            _write_stamp(have)


def _wanted() -> dict[str, str]:
    locks = {
        kind: fingerprint(*(LOCKS / f"{name}.txt" for name in names))
        for kind, names in KINDS.items()
    }
    return {"python": f"{sys.version} in {ROOT}", **locks}


def _read_stamp() -> dict[str, str]:
    try:
        return json.loads(STAMP.read_text())
    except (OSError, ValueError):
        return {}


def _write_stamp(have: dict[str, str]) -> None:
    STAMP.write_text(json.dumps(have, indent=1))


def _create() -> None:
    if not all(importlib.util.find_spec(name) for name in ("venv", "ensurepip")):
        raise Trouble(
            "This Python lacks its venv module; install it (on Debian and Ubuntu the package"
            " python3-venv), then run this again."
        )
    say("Making the Python environment in .venv/")
    shutil.rmtree(ENVIRONMENT, ignore_errors=True)
    try:
        run([sys.executable, "-m", "venv", ENVIRONMENT], log="venv")
    except Failed as failed:
        raise Trouble(f"The Python environment could not be made ({failed.where()}).") from failed


def _install(kind: str) -> None:
    say(f"Fetching Python packages for the {kind}")
    locks = [part for name in KINDS[kind] for part in ("-r", LOCKS / f"{name}.txt")]
    pip(environment_python(), "install", *locks, log=f"pip-{kind}")
