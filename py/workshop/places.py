"""Where things lie in the project's tree."""

import os
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PY = ROOT / "py"
CORE = PY / "brimbook"
WEB = ROOT / "web"
WORKSHOP = PY / "workshop"
LOCKS = WORKSHOP / "locks"
PROJECT = ROOT / "pyproject.toml"

DIST = ROOT / "dist"
BUILD = ROOT / ".build"
LOGS = BUILD / "logs"
ENVIRONMENT = ROOT / ".venv"


def environment_python() -> Path:
    """The interpreter inside the project's own environment."""
    return ENVIRONMENT / ("Scripts/python.exe" if os.name == "nt" else "bin/python")


def inside_environment() -> bool:
    """Whether this process already runs in the project's own environment."""
    return Path(sys.prefix).resolve() == ENVIRONMENT.resolve()


def relative(path: Path) -> str:
    """`path` as a person reads it: relative to the project's root where it lies inside."""
    return path.relative_to(ROOT).as_posix() if path.is_relative_to(ROOT) else str(path)
