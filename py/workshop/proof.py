"""The proof that what ships loads: the page's wheels in the page's Pyodide, under Node."""

import json
import math
import sys
from pathlib import Path

from workshop.node import run_node
from workshop.packages import wheels
from workshop.places import CORE, LOCKS, PY, WORKSHOP
from workshop.run import Failed, run
from workshop.say import Trouble, say
from workshop.stamps import fingerprint, is_stamped, kept, stamp

# Two math libraries may differ in a number's last digits; never in what is shown.
SAME_NUMBER = 1e-9

ASK_FIRST = 'import sys; from brimbook import door; sys.stdout.write(door.ask("first", "{}"))'


def first_answer() -> bytes:
    """What this machine's Python answers to "first", as the door's JSON. Raises Trouble."""
    if not (CORE / "door.py").exists():
        raise Trouble("The core has no door yet: py/brimbook/door.py is missing.")
    return kept("first.json", fingerprint(CORE, LOCKS / "page.txt", sys.version), _ask_first)


def _ask_first() -> bytes:
    say("Asking the core its first answer")
    surroundings = {"PYTHONPATH": str(PY), "PYTHONIOENCODING": "utf-8"}
    try:
        reply = run([sys.executable, "-c", ASK_FIRST], log="first", environment=surroundings)
    except Failed as failed:
        raise Trouble(f"The core does not start: {failed.last_line()} ({failed.where()}).") from failed
    return _answered(reply, "Python").encode()


def _answered(reply: str, where: str) -> str:
    try:
        read = json.loads(reply)
    except ValueError as error:
        raise Trouble(f"The core's first answer under {where} is not JSON: {reply[:80]!r}.") from error
    if "answer" not in read:
        fault = read.get("fault", {}).get("sentence", "no sentence")
        raise Trouble(f"The core answers its first question with a fault under {where}: {fault}")
    return reply


def prove(dist: Path, first: bytes) -> None:
    """Fail unless Pyodide, loaded from `dist`, answers as this machine's Python did.

    Proven once for the same files: later calls with them return at once. Raises Trouble.
    """
    scripts = [WORKSHOP / name for name in ("prove.mjs", "pyodide.mjs")]
    installers = wheels("proof")
    digest = fingerprint(dist / "pyodide", dist / "python", first, *scripts, *installers)
    if is_stamped("proof", digest):
        return
    say("Proving that the page's Python loads and answers")
    try:
        reply = run_node(scripts[0], dist, *installers, log="proof")
    except Failed as failed:
        raise Trouble(f"The core does not load under Pyodide: {failed.last_line()} ({failed.where()}).") from failed
    differs = difference(json.loads(first), json.loads(_answered(reply, "Pyodide")))
    if differs:
        raise Trouble(f"Pyodide and Python answer the first question differently, at {differs}.")
    stamp("proof", digest)


def difference(one: object, other: object, at: str = "answer") -> str:
    """Where two JSON values first differ, or "" if they are the same.

    Numbers are the same within a relative 1e-9.
    """
    if isinstance(one, dict) and isinstance(other, dict) and one.keys() == other.keys():
        return _first_of(difference(one[key], other[key], f"{at}.{key}") for key in one)
    if isinstance(one, list) and isinstance(other, list) and len(one) == len(other):
        pairs = enumerate(zip(one, other, strict=True))
        return _first_of(difference(a, b, f"{at}.{place}") for place, (a, b) in pairs)
    if isinstance(one, float) and isinstance(other, float):
        return "" if math.isclose(one, other, rel_tol=SAME_NUMBER, abs_tol=1e-12) else at
    return "" if type(one) is type(other) and one == other else at


def _first_of(found) -> str:
    return next((place for place in found if place), "")
