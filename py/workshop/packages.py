"""What is fetched from outside: wheels for the page and the proof, and npm packages.

Every file is checked against its locked hash each time it is used, not only when
it is fetched.
"""

import base64
import hashlib
import json
import re
import shutil
import sys
import tarfile
from pathlib import Path

from workshop.node import run_npm
from workshop.pip import pip
from workshop.places import BUILD, LOCKS
from workshop.run import Failed
from workshop.say import Trouble, say
from workshop.stamps import sha256

FETCHED = BUILD / "fetched"

# The Python inside Pyodide 314; only wheels without compiled code fit it.
PYODIDE_PYTHON = ["--python-version", "3.14", "--implementation", "py", "--abi", "none"]


def wheels(lock: str) -> list[Path]:
    """The wheels of py/workshop/locks/<lock>.txt in its order, fetched if need be. Raises Trouble."""
    text = (LOCKS / f"{lock}.txt").read_text()
    folder = FETCHED / f"{lock}-{sha256(text.encode())[:16]}"
    locked = re.findall(r"^([A-Za-z0-9._-]+)==(\S+)", text, re.MULTILINE)
    if not folder.exists():
        _fetch_wheels(lock, folder)
    found = [_wheel_of(folder, name, version) for name, version in locked]
    hashes = set(re.findall(r"sha256:([0-9a-f]{64})", text))
    for path in found:
        if sha256(path.read_bytes()) not in hashes:
            raise Trouble(f"{path.name} does not match its locked hash: delete .build/ and run this again.")
    return found


def _fetch_wheels(lock: str, folder: Path) -> None:
    say(f"Fetching Python packages for the {lock}")
    part = folder.with_suffix(".part")
    shutil.rmtree(part, ignore_errors=True)
    kind = ["--no-deps", *PYODIDE_PYTHON, "--platform", "any", "--dest", part]
    pip(sys.executable, "download", *kind, "-r", LOCKS / f"{lock}.txt", log=f"pip-{lock}-wheels")
    part.rename(folder)


def _wheel_of(folder: Path, name: str, version: str) -> Path:
    wanted = f"{_plain(name)}-{version}-"
    for path in folder.glob("*.whl"):
        if _plain(path.name).startswith(_plain(wanted)):
            return path
    raise Trouble(f"The wheel of {name} {version} is missing: delete .build/ and run this again.")


def _plain(name: str) -> str:
    return name.lower().replace("-", "_")


class NpmPackage:
    """One fetched npm package: its name, version, tarball, and the files inside."""

    def __init__(self, name: str, version: str, tarball: Path):
        self.name = name
        self.version = version
        self.tarball = tarball
        with tarfile.open(tarball) as archive:
            self.files = {
                member.name.partition("/")[2]: archive.extractfile(member).read()
                for member in archive.getmembers()
                if member.isfile()
            }


def npm_package(name: str) -> NpmPackage:
    """The npm package `name` as locked in npm.json, fetched if need be. Raises Trouble."""
    locked = json.loads((LOCKS / "npm.json").read_text())[name]
    version, integrity = locked["version"], locked["integrity"]
    tarball = FETCHED / f"{name}-{version}.tgz"
    if not tarball.exists():
        _fetch_tarball(name, version)
    digest = hashlib.sha512(tarball.read_bytes()).digest()
    if f"sha512-{base64.b64encode(digest).decode()}" != integrity:
        tarball.unlink()
        raise Trouble(f"The npm package {name} {version} does not match its locked hash.")
    return NpmPackage(name, version, tarball)


def _fetch_tarball(name: str, version: str) -> None:
    say(f"Fetching {name} {version}")
    FETCHED.mkdir(parents=True, exist_ok=True)
    wanted = [f"{name}@{version}", "--pack-destination", FETCHED]
    # What npm still has from before will do, for the hash is checked here.
    manners = ["--loglevel=error", "--prefer-offline", "--fetch-retries=1"]
    try:
        run_npm("pack", *manners, *wanted, log=f"npm-{name}")
    except Failed as failed:
        raise Trouble(
            f"The npm package {name} {version} could not be fetched, perhaps for want of a network"
            f" ({failed.where()})."
        ) from failed
