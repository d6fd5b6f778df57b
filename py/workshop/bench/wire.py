"""Bytes on the wire for a first visit: each file as it is, gzipped, and as Brotli packs it."""

import gzip
import json

from workshop.stamps import fingerprint, kept, sha256

PACKED = (".gz", ".zip", ".png", ".whl")
KINDS = ("raw", "gzip", "brotli")

try:
    import brotli
except ImportError:
    brotli = None

Sizes = dict[str, int | None]


def sizes(files: dict[str, bytes], names: list[str]) -> dict[str, Sizes]:
    """Each file's raw, gzip (-9) and brotli (11) size; kept for as long as the files stay the same.

    What is packed already counts as it is. Brotli is None where its package is missing.
    """
    digest = fingerprint(*(part for name in names for part in (name, files[name])), str(bool(brotli)))
    text = kept(f"wire-{sha256(' '.join(names).encode())[:8]}", digest, lambda: _measure(files, names))
    return json.loads(text)


def _measure(files: dict[str, bytes], names: list[str]) -> bytes:
    return json.dumps({name: file_sizes(name, files[name]) for name in names}).encode()


def file_sizes(name: str, data: bytes) -> Sizes:
    """One file's sizes."""
    if name.endswith(PACKED):
        return dict.fromkeys(KINDS, len(data))
    return {
        "raw": len(data),
        "gzip": len(gzip.compress(data, 9)),
        "brotli": len(brotli.compress(data, quality=11)) if brotli else None,
    }


def total(each: dict[str, Sizes], kind: str) -> int | None:
    """All files together; None where one of them could not be measured."""
    found = [sized[kind] for sized in each.values()]
    return None if None in found else sum(found)


def parts(files: dict[str, bytes]) -> dict[str, int]:
    """Bytes of each part of the built page: its top folders, and the files beside them."""
    found: dict[str, int] = {}
    for name, data in files.items():
        part = name.split("/")[0] if "/" in name else "."
        found[part] = found.get(part, 0) + len(data)
    return found
