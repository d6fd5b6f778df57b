"""Run another program, keep what it printed, and tell a failure in one sentence."""

import os
import subprocess
from collections.abc import Mapping, Sequence
from pathlib import Path

from workshop.places import LOGS, ROOT, relative
from workshop.say import Trouble


def run(
    command: Sequence[str | Path],
    log: str,
    environment: Mapping[str, str] | None = None,
    given: str = "",
) -> str:
    """Run `command` in the project's root and return what it printed.

    Its standard error goes to `.build/logs/<log>.txt`. Raises Failed, which
    carries all that was printed, if the program is missing or fails.
    """
    LOGS.mkdir(parents=True, exist_ok=True)
    path = LOGS / f"{log}.txt"
    try:
        done = subprocess.run(
            [str(part) for part in command],
            cwd=ROOT,
            env={**os.environ, **(environment or {})},
            input=given,
            capture_output=True,
            encoding="utf-8",
            errors="replace",
        )
    except OSError as error:
        raise Failed(f"{command[0]} could not be started: {error.strerror}.", "", path) from error
    path.write_text(f"{done.stdout}\n{done.stderr}", encoding="utf-8")
    if done.returncode:
        raise Failed(f"{Path(command[0]).name} failed.", done.stdout + done.stderr, path)
    return done.stdout


class Failed(Trouble):
    """A program that failed: `printed` is all it said, `log` where that is kept."""

    def __init__(self, sentence: str, printed: str, log: Path):
        super().__init__(sentence)
        self.printed = printed
        self.log = log

    def last_line(self) -> str:
        """The last line the program printed, where the reason usually stands."""
        lines = [line.strip() for line in self.printed.splitlines() if line.strip()]
        return lines[-1] if lines else "it printed nothing"

    def where(self) -> str:
        """Where all that it printed can be read."""
        return f"all it printed is in {relative(self.log)}"
