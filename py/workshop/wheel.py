"""Brimbook's own wheel, written as a plain zip that comes out the same every time."""

import base64
import hashlib
import io
import tomllib
import zipfile
from pathlib import Path

from workshop.places import CORE, PROJECT
from workshop.say import Trouble
from workshop.stamps import source_files

# The earliest time a zip can hold: the wheel must not depend on when it was written.
NO_TIME = (1980, 1, 1, 0, 0, 0)


def version() -> str:
    """Brimbook's version, from pyproject.toml."""
    return tomllib.loads(PROJECT.read_text(encoding="utf-8"))["project"]["version"]


def wheel_name() -> str:
    """The wheel's file name."""
    return f"brimbook-{version()}-py3-none-any.whl"


def wheel(package: Path = CORE) -> bytes:
    """The wheel of the core in `package`. Raises Trouble if there is no core."""
    files = {
        f"brimbook/{path.relative_to(package).as_posix()}": path.read_bytes()
        for path in source_files(package)
    }
    if not files:
        raise Trouble("py/brimbook holds no core to build from.")
    info = f"brimbook-{version()}.dist-info"
    files[f"{info}/METADATA"] = _metadata()
    files[f"{info}/WHEEL"] = (
        b"Wheel-Version: 1.0\nGenerator: workshop\nRoot-Is-Purelib: true\nTag: py3-none-any\n"
    )
    files[f"{info}/RECORD"] = _record(files, f"{info}/RECORD")
    return _zip(files)


def _metadata() -> bytes:
    project = tomllib.loads(PROJECT.read_text(encoding="utf-8"))["project"]
    lines = [
        "Metadata-Version: 2.1",
        f"Name: {project['name']}",
        f"Version: {project['version']}",
        f"Summary: {project['description']}",
        f"Requires-Python: {project['requires-python']}",
        *(f"Requires-Dist: {needed}" for needed in project["dependencies"]),
    ]
    return ("\n".join(lines) + "\n").encode()


def _record(files: dict[str, bytes], own_name: str) -> bytes:
    lines = []
    for name, data in sorted(files.items()):
        digest = base64.urlsafe_b64encode(hashlib.sha256(data).digest()).rstrip(b"=").decode()
        lines.append(f"{name},sha256={digest},{len(data)}\n")
    return ("".join(lines) + f"{own_name},,\n").encode()


def _zip(files: dict[str, bytes]) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, data in sorted(files.items()):
            entry = zipfile.ZipInfo(name, NO_TIME)
            entry.compress_type = zipfile.ZIP_DEFLATED
            # Said outright, since the default differs between systems.
            entry.create_system = 3
            entry.external_attr = 0o644 << 16
            archive.writestr(entry, data)
    return out.getvalue()
