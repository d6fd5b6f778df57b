"""pip, held to the locks: pinned versions, checked hashes, ready-made wheels only."""

from pathlib import Path

from workshop.run import Failed, run
from workshop.say import Trouble

# A person's own pip settings may ask for these, and neither fits an environment of its own.
NEUTRAL = {"PIP_USER": "0", "PIP_REQUIRE_VIRTUALENV": "0", "PIP_NO_INPUT": "1"}


def pip(python: Path | str, verb: str, *arguments: str | Path, log: str) -> None:
    """Run pip's `verb` ("install" or "download") under `python`. Raises Trouble."""
    command = [python, "-m", "pip", verb, "--quiet", "--retries", "2"]
    held = ["--disable-pip-version-check", "--require-hashes", "--only-binary", ":all:"]
    try:
        run([*command, *held, *arguments], log=log, environment=NEUTRAL)
    except Failed as failed:
        raise Trouble(_reason(failed)) from failed


def _reason(failed: Failed) -> str:
    printed = failed.printed
    if "DO NOT MATCH THE HASHES" in printed:
        return f"A fetched Python package does not match its locked hash ({failed.where()})."
    if "No space left" in printed:
        return "The disk is full: Python packages could not be stored."
    if any(sign in printed for sign in ("NewConnectionError", "ConnectTimeout", "ProxyError")):
        return "Python packages could not be fetched: there seems to be no network."
    return f"Python packages could not be fetched: {failed.last_line()} ({failed.where()})"
