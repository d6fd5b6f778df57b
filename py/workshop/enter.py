"""From any Python 3.11 into the project's own environment, and on with the work."""

import os
import subprocess
import sys
from collections.abc import Sequence

from workshop import command, environment
from workshop.places import PY, ROOT, environment_python
from workshop.say import Trouble
from workshop.turn import one_at_a_time


def enter(arguments: Sequence[str]) -> int:
    """Make the environment ready for what is asked, then carry on inside it.

    Returns an exit code where the work runs as a child; elsewhere this process becomes it.
    """
    asked = command.read(arguments)
    try:
        with one_at_a_time():
            environment.make_ready(for_tests=asked.what == "test")
    except Trouble as trouble:
        return tell(trouble)
    except KeyboardInterrupt:
        return 130
    inside = [str(environment_python()), "-m", "workshop", *arguments]
    surroundings = {**os.environ, "PYTHONPATH": str(PY)}
    os.chdir(ROOT)
    if os.name == "nt":
        return subprocess.call(inside, env=surroundings)
    os.execve(inside[0], inside, surroundings)


def tell(trouble: Trouble) -> int:
    """Print an expected failure as one sentence; the exit code for it."""
    print(f"build.py: {trouble}", file=sys.stderr, flush=True)
    return 1
