"""A model's file, whichever kind it is: its triangles."""

import re
from collections.abc import Generator

from brimbook.mesh import obj, stl, three_mf
from brimbook.mesh.archive import BEGINS
from brimbook.mesh.limits import check_size
from brimbook.mesh.triangles import ModelError, Progress, Triangles

_BEGINNING = 4_000
_TEXT_STL = re.compile(rb"\s*solid\b", re.IGNORECASE)
_MARKS = {b"\xff\xfe": "utf-16", b"\xfe\xff": "utf-16"}


def triangles(name: str, data: bytes | memoryview) -> Generator[Progress, None, Triangles]:
    """Reads an STL, 3MF or OBJ file, told apart by what is in it [steps, then the mesh].

    name: the file's name; its ending decides only how a damaged file is spoken of [text].
    data: the file [bytes].
    """
    view = memoryview(data).cast("B")
    if not view:
        raise ModelError("This file is empty. Choose an STL, 3MF or OBJ file.")
    check_size(len(view))
    yield 0.0, "Reading the file"
    if bytes(view[:4]) in BEGINS:
        return (yield from three_mf.read(view))
    count = stl.told_count(view)
    if len(view) == stl.binary_size(count) and count:
        return (yield from stl.binary(view))
    plain = _plain(view)
    if plain is not None and _TEXT_STL.match(plain):
        return (yield from stl.text(plain))
    if plain is not None and obj.is_obj(plain):
        return (yield from obj.read(plain))
    return (yield from _other(name, view))


def _plain(view: memoryview) -> bytes | None:
    """The file's text, without the mark that may begin it; none where it is not a text."""
    coding = _MARKS.get(bytes(view[:2]))
    if coding:
        return bytes(view).decode(coding, "replace").encode("utf-8")
    beginning = bytes(view[:_BEGINNING])
    return None if b"\0" in beginning else bytes(view).removeprefix(b"\xef\xbb\xbf")


def _other(name: str, view: memoryview) -> Generator[Progress, None, Triangles]:
    # Anything may stand where a count is read, so a binary file of another length needs its name to be believed.
    if name.lower().endswith(".stl"):
        return (yield from stl.binary(view))
    raise ModelError("This is not a file that is read here. Save the model as STL, 3MF or OBJ, and choose that.")
