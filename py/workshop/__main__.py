"""Carries out what was asked, inside the project's own environment."""

import os
import subprocess
import sys

from workshop import command, dist
from workshop.enter import tell
from workshop.places import ROOT
from workshop.say import Trouble


def main() -> int:
    """Build, then serve, test or measure if asked to; the exit code."""
    asked = command.read(sys.argv[1:])
    try:
        if asked.what == "bench":
            from workshop.bench.whole import bench

            return bench(asked.runs, asked.json, asked.only)
        dist.build()
        if asked.what == "serve":
            from workshop.serve import serve

            serve(asked.port)
        if asked.what == "test":
            return test(asked.for_pytest)
    except Trouble as trouble:
        return tell(trouble)
    except KeyboardInterrupt:
        return 130
    return 0


def test(for_pytest: list[str]) -> int:
    """Make a browser ready, then let pytest take over."""
    from workshop.browser import find_browser

    surroundings = {**os.environ, "BRIMBOOK_CHROMIUM": str(find_browser())}
    command_line = [sys.executable, "-m", "pytest", *for_pytest]
    return subprocess.call(command_line, cwd=ROOT, env=surroundings)


if __name__ == "__main__":
    sys.exit(main())
