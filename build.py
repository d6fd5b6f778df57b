"""Brimbook's one command.

    python3 build.py                      build dist/
    python3 build.py serve [--port N]     build, then serve dist/ on this machine
    python3 build.py test [for pytest]    set up for the tests, build, and run them
    python3 build.py bench [--json] [--runs N]
                                          build, and time a stock start against ours in the
                                          browsers of this machine

It needs Python 3.11 or newer and a network the first time; everything else it
fetches itself into .venv/ and .build/. The work is done by py/workshop.
"""

import os
import sys

if sys.version_info < (3, 11):
    sys.exit("Brimbook needs Python 3.11 or newer; this is Python %d.%d." % sys.version_info[:2])

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "py"))

from workshop.enter import enter  # noqa: E402 - found only once the path is set

if __name__ == "__main__":
    sys.exit(enter(sys.argv[1:]))
