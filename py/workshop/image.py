"""The memory image: what web/core/restore.js puts back in place of a slow start."""

import json
import tempfile
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
    """The image of the core in a built page: its pages gzipped, and a module that says where they go. Raises Trouble."""
    digest = fingerprint(dist / "pyodide", dist / "python", *MAKERS)
    both = kept("image", digest, lambda: joined(*_make(dist)))
    index, pages = parted(both)
    return {"image/image.js": _module(json.loads(index)), "image/pages.gz": pages}


def _make(dist: Path) -> tuple[bytes, bytes]:
    say("Making the memory image")
    with tempfile.TemporaryDirectory() as out:
        try:
            run_node(WORKSHOP / "image.mjs", dist, out, log="image")
        except Failed as failed:
            raise Trouble(f"The memory image could not be made: {failed.last_line()} ({failed.where()}).") from failed
        pages = (Path(out) / "pages.bin").read_bytes()
        return (Path(out) / "image.json").read_bytes(), deflate.gzip_compress(pages, STRONGEST)


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
