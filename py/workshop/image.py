"""The memory image: what web/core/restore.js puts back in place of a slow start; and what it leaves out of the core."""

import io
import json
import tempfile
import zipfile
from pathlib import Path

import deflate

from workshop.node import run_node
from workshop.places import WORKSHOP
from workshop.run import Failed
from workshop.say import Trouble, say
from workshop.stamps import fingerprint, joined, kept, parted

STRONGEST = 12
MAKERS = [WORKSHOP / name for name in ("image.py", "image.mjs", "pyodide.mjs", "inside")]


def image(dist: Path) -> dict[str, bytes]:
    """The image of the core in a built page: its pages gzipped, a module that says where they go, the rest. Raises Trouble."""
    digest = fingerprint(dist / "pyodide", dist / "python", *MAKERS)
    index, pages, rest = parted(kept("image", digest, lambda: joined(*_make(dist))))
    return {"image/image.js": _module(json.loads(index)), "image/pages.gz": pages, "image/reading.zip": rest}


def _make(dist: Path) -> tuple[bytes, bytes, bytes]:
    say("Making the memory image")
    with tempfile.TemporaryDirectory() as out:
        try:
            run_node(WORKSHOP / "image.mjs", dist, out, log="image")
        except Failed as failed:
            raise Trouble(f"The memory image could not be made: {failed.last_line()} ({failed.where()}).") from failed
        index, pages, site = ((Path(out) / name).read_bytes() for name in ("image.json", "pages.bin", "site.zip"))
        return index, deflate.gzip_compress(pages, STRONGEST), _rest(site, set(json.loads(index)["modules"]))


def _rest(site: bytes, loaded: set[str]) -> bytes:
    """The core's compiled modules that are not in the image, which only reading a file takes, as an archive."""
    rest = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(site)) as given, zipfile.ZipFile(rest, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as archive:
        for name in given.namelist():
            if name.startswith("brimbook/") and _module_of(name) not in loaded:
                archive.writestr(zipfile.ZipInfo(name), given.read(name), zipfile.ZIP_DEFLATED)
    return rest.getvalue()


def _module_of(name: str) -> str:
    """The module that a compiled file holds, by its name in an archive."""
    return name.removesuffix(".pyc").removesuffix("/__init__").replace("/", ".")


def _module(index: dict) -> bytes:
    """What a start needs before the pages come, as code rather than as one more file to wait for."""
    lines = [
        "// Made by the build. header: Pyodide's own, which names the build that the image belongs to.",
        f"export const header = Uint8Array.from({json.dumps(index['header'])});",
        "// What Pyodide would read from pyodide-lock.json.",
        f"export const lock = {json.dumps(index['lock'])};",
        "// Places among the 32-bit words of memory that belong to the engine and keep what it put there.",
        f"export const words = {json.dumps(index['words'])};",
        "// How much memory it needs; a fresh instance may have less.",
        f"export const memory = {index['memory']};",
        "// Each run of pages: its place in memory, then where it begins and ends in pages.gz, unpacked.",
        f"export const length = {index['runs'][-1][2]};",
        f"export const runs = {json.dumps(index['runs'], separators=(',', ':'))};",
    ]
    return "\n".join([*lines, ""]).encode()
