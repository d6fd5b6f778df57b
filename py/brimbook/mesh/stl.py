"""Triangles of an STL file, binary or text."""

import re
import struct
from collections.abc import Generator, Iterator

from brimbook.mesh.corners import floats, numbering, shared
from brimbook.mesh.limits import check_triangles
from brimbook.mesh.triangles import ModelError, Progress, Triangles

# 80 bytes of anything, the count, then 50 bytes a triangle: its normal, three corners, two bytes that mean nothing here.
_HEAD = 84
_EACH = 50
_CORNERS = struct.Struct("<12x12s12s12s2x")
_STEP = 20_000

_PIECE = 1_000_000
_NUMBERS = rb"\s++(\S++\s++\S++\s++\S++)"
_FACET = re.compile(rb"\bfacet\s++normal\s++\S++\s++\S++\s++\S++\s++outer\s++loop" + (rb"\s++vertex" + _NUMBERS) * 3
                    + rb"\s++endloop\s++endfacet\b", re.IGNORECASE)
# What may stand between triangles: the lines that begin and end a solid, with its name.
_BETWEEN = re.compile(rb"\s*+(?:(?:end)?solid\b[^\r\n]*+\s*+)*+", re.IGNORECASE)
_SAYS = "Reading triangles"


def told_count(data: memoryview) -> int:
    """How many triangles the head of a binary file tells of; 0 without a head [triangles].

    data: the file [bytes].
    """
    return int.from_bytes(data[_HEAD - 4:_HEAD], "little") if len(data) >= _HEAD else 0


def binary_size(count: int) -> int:
    """How long a binary file of so many triangles is [bytes].

    count: number of triangles [triangles].

    >>> binary_size(2)
    184
    """
    return _HEAD + _EACH * count


def binary(data: memoryview) -> Generator[Progress, None, Triangles]:
    """Reads a binary STL file [steps, then the mesh].

    data: the file [bytes].
    """
    count = told_count(data)
    held = max(0, len(data) - _HEAD) // _EACH
    if count > held:
        raise ModelError(f"This STL file is cut off: it tells of {count:,} triangles and holds {held:,}. Save or copy it again.")
    check_triangles(count)
    numbers, columns = numbering(), ([], [], [])
    for begin in range(0, count, _STEP):
        part = data[binary_size(begin):binary_size(min(begin + _STEP, count))]
        for column, keys in zip(columns, zip(*_CORNERS.iter_unpack(part))):
            column.extend(map(numbers.__getitem__, keys))
        yield 0.9 * min(begin + _STEP, count) / count, _SAYS
    corners = list(struct.iter_unpack("<3f", b"".join(numbers)))
    notes = ()
    if held > count:
        notes = (f"The file tells of {count:,} triangles; what stands after them was left out.",)
    return (yield from shared(corners, columns, notes=notes))


def text(data: bytes) -> Generator[Progress, None, Triangles]:
    """Reads a text STL file [steps, then the mesh].

    data: the file [bytes].
    """
    numbers, columns = numbering(), ([], [], [])
    for end, piece in _pieces(data):
        parts = _FACET.split(piece)
        _check_between(b"\n".join(parts[::4]), len(columns[0]) + len(parts) // 4)
        for place, column in enumerate(columns):
            column.extend(map(numbers.__getitem__, parts[place + 1::4]))
        check_triangles(len(columns[0]))
        yield 0.8 * end / len(data), _SAYS
    values = iter(floats(b" ".join(numbers).split()))
    yield 0.9, _SAYS
    return (yield from shared(list(zip(values, values, values)), columns))


def _pieces(data: bytes) -> Iterator[tuple[int, bytes]]:
    """Where each piece ends, and its text: whole facets, as far as they are whole."""
    begin = 0
    while begin < len(data):
        piece = data[begin:begin + _PIECE]
        last = piece.lower().rfind(b"endfacet") if begin + _PIECE < len(data) else -1
        if last >= 0:
            piece = piece[:last + len(b"endfacet")]
        begin += len(piece)
        yield begin, piece


def _check_between(between: bytes, read: int) -> None:
    if not _BETWEEN.fullmatch(between):
        raise ModelError(f"This text STL file is damaged or cut off: {read:,} triangles could be read, "
                         "others are not three corners each. Save or copy it again.")
