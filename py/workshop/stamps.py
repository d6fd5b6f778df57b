"""Stamps: what a thing was made from, so that only what changed is made again."""

import hashlib
from collections.abc import Callable, Iterable
from pathlib import Path

from workshop.places import BUILD

STAMPS = BUILD / "stamps"


def sha256(data: bytes) -> str:
    """The SHA-256 of `data` in hexadecimal."""
    return hashlib.sha256(data).hexdigest()


def source_files(folder: Path) -> list[Path]:
    """Every file under `folder` that a person wrote, sorted; none if there is no folder."""
    return sorted(
        path
        for path in folder.rglob("*")
        if path.is_file()
        and "__pycache__" not in path.parts
        and not any(part.startswith(".") for part in path.relative_to(folder).parts)
    )


def fingerprint(*parts: Path | bytes | str) -> str:
    """One digest over names and contents of files and folders, and over plain texts."""
    total = hashlib.sha256()
    for name, data in _pieces(parts):
        total.update(f"{name}\0{sha256(data)}\n".encode())
    return total.hexdigest()


def _pieces(parts: Iterable[Path | bytes | str]) -> Iterable[tuple[str, bytes]]:
    for part in parts:
        if isinstance(part, bytes):
            yield "", part
        elif isinstance(part, str):
            yield "", part.encode()
        elif part.is_dir():
            for path in source_files(part):
                yield path.relative_to(part).as_posix(), path.read_bytes()
        else:
            yield part.name, part.read_bytes() if part.exists() else b"(missing)"


def is_stamped(name: str, digest: str) -> bool:
    """Whether `name` was last made from what has this digest."""
    path = STAMPS / name
    return path.exists() and path.read_text() == digest


def stamp(name: str, digest: str) -> None:
    """Note that `name` has been made from what has this digest."""
    STAMPS.mkdir(parents=True, exist_ok=True)
    (STAMPS / name).write_text(digest)


def kept(name: str, digest: str, make: Callable[[], bytes]) -> bytes:
    """The bytes kept under `name` if made from this digest, else made and kept now."""
    path = BUILD / "kept" / name
    if path.exists() and is_stamped(f"kept-{name}", digest):
        return path.read_bytes()
    data = make()
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes(data)
    stamp(f"kept-{name}", digest)
    return data


def joined(*pieces: bytes) -> bytes:
    """Several pieces as one, to be kept under one name."""
    return b"".join(len(piece).to_bytes(4, "little") + piece for piece in pieces)


def parted(whole: bytes) -> list[bytes]:
    """The pieces that `joined` made one."""
    pieces, at = [], 0
    while at < len(whole):
        end = at + 4 + int.from_bytes(whole[at : at + 4], "little")
        pieces.append(whole[at + 4 : end])
        at = end
    return pieces
