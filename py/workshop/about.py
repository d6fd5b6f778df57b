"""about.json: what the page carries from others, and under which license."""

import email
import io
import json
import re
import tomllib
import zipfile
from email.message import Message
from pathlib import Path

from workshop.packages import NpmPackage
from workshop.places import PROJECT
from workshop.say import Trouble
from workshop.stamps import sha256

# From the license that comes with CPython; python_stdlib.zip itself names none.
STANDARD_LIBRARY_LICENSE = "PSF-2.0"

LICENSE_FILE = re.compile(r"\.dist-info/(licenses/)?LICENSE[^/]*$")

# Older wheels name their license only by a classifier; that theirs is the
# three-clause one was read in the license files which they carry.
BY_CLASSIFIER = {
    "License :: OSI Approved :: BSD License": "BSD-3-Clause",
    "License :: OSI Approved :: MIT License": "MIT",
    "License :: OSI Approved :: Apache Software License": "Apache-2.0",
}


def about(own_wheel: bytes, wheels: list[Path], npm: list[NpmPackage]) -> bytes:
    """The JSON text: a list of pieces, Brimbook first.

    Each piece has name, version, sha256 (of the file as fetched), license and
    license_text ("" where the file as fetched holds none).
    """
    project = tomllib.loads(PROJECT.read_text(encoding="utf-8"))["project"]
    own = _piece("Brimbook", project["version"], own_wheel, "", "")
    pieces = [own, *map(_of_npm, npm), *map(_of_wheel, wheels)]
    pieces += [_standard_library(package) for package in npm if "python_stdlib.zip" in package.files]
    return (json.dumps(pieces, indent=1, ensure_ascii=False) + "\n").encode()


def _piece(name: str, version: str, data: bytes, license_name: str, text: str) -> dict[str, str]:
    return {
        "name": name,
        "version": version,
        "sha256": sha256(data),
        "license": license_name,
        "license_text": text,
    }


def _of_npm(package: NpmPackage) -> dict[str, str]:
    said = json.loads(package.files["package.json"])
    text = package.files.get("LICENSE", b"").decode()
    data = package.tarball.read_bytes()
    return _piece(package.name, package.version, data, said["license"], text)


def _standard_library(pyodide: NpmPackage) -> dict[str, str]:
    version = json.loads(pyodide.files["pyodide-lock.json"])["info"]["python"]
    data = pyodide.files["python_stdlib.zip"]
    return _piece("Python standard library", version, data, STANDARD_LIBRARY_LICENSE, "")


def _of_wheel(path: Path) -> dict[str, str]:
    data = path.read_bytes()
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        names = archive.namelist()
        info = next(name for name in names if name.endswith(".dist-info/METADATA"))
        said = email.message_from_bytes(archive.read(info))
        texts = [archive.read(name).decode() for name in names if LICENSE_FILE.search(name)]
    license_name = _license(said, path.name)
    return _piece(said["Name"], said["Version"], data, license_name, "\n\n".join(texts))


def _license(said: Message, wheel: str) -> str:
    if said["License-Expression"]:
        return said["License-Expression"]
    for classifier in said.get_all("Classifier", []):
        if classifier in BY_CLASSIFIER:
            return BY_CLASSIFIER[classifier]
    raise Trouble(f"{wheel} does not say its license in a way that the build can read.")
