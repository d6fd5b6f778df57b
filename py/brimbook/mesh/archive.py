"""A ZIP archive in memory: its parts, unpacked piece by piece and never farther than it tells."""

import struct
import zlib
from collections.abc import Iterator
from dataclasses import dataclass

from brimbook.mesh.limits import check_inflated
from brimbook.mesh.triangles import ModelError

BEGINS = (b"PK\x03\x04", b"PK\x05\x06")
_END = struct.Struct("<4s4H2LH")
_END_64 = struct.Struct("<4sQ2H2L4Q")
_ENTRY = struct.Struct("<4s6H3L5H2L")
_HEAD = struct.Struct("<4s5H3L2H")
# The end record may be followed by a remark of up to 65,535 bytes.
_FARTHEST_END = _END.size + 65_535
_MOST_PARTS = 4_000
_PIECE = 65_536
_STORED, _DEFLATED = 0, 8
_LONG = 0xFFFFFFFF

_DAMAGED = "This file is damaged or cut off: its parts can't be unpacked. Save or copy it again."


@dataclass(frozen=True)
class _Part:
    encrypted: bool
    method: int
    check: int
    packed: int
    size: int
    offset: int


class Archive:
    """Parts of a ZIP archive by name. Stored and deflated parts are read."""

    def __init__(self, data: memoryview) -> None:
        self._data = data
        self._told = 0
        self._parts = _parts(data)

    def has(self, name: str) -> bool:
        """Is there a part of this name? [yes or no].

        name: with or without a slash before it, in small or capital letters [text].
        """
        return _plain(name) in self._parts

    def size(self, name: str) -> int:
        """How long a part is unpacked, as the archive tells [bytes].

        name: of a part that is there [text].
        """
        return self._parts[_plain(name)].size

    def pieces(self, name: str) -> Iterator[bytes]:
        """A part, unpacked piece by piece [bytes].

        name: of a part that is there [text].

        All parts that are read from an archive count together against what may be unpacked.
        """
        part = self._parts[_plain(name)]
        self._told += part.size
        check_inflated(self._told)
        if part.encrypted:
            raise ModelError("This file is locked with a password. Save it without one.")
        if part.method not in (_STORED, _DEFLATED):
            raise ModelError("This file is packed in an unusual way. Save it again as plain 3MF, or as STL.")
        yield from _checked(part, _unpacked(part, self._packed(part)))

    def _packed(self, part: _Part) -> memoryview:
        head = self._data[part.offset:part.offset + _HEAD.size]
        if len(head) < _HEAD.size or bytes(head[:4]) != BEGINS[0]:
            raise ModelError(_DAMAGED)
        *_, name, extra = _HEAD.unpack(head)
        begin = part.offset + _HEAD.size + name + extra
        packed = self._data[begin:begin + part.packed]
        if len(packed) < part.packed:
            raise ModelError(_DAMAGED)
        return packed


def _unpacked(part: _Part, packed: memoryview) -> Iterator[bytes]:
    if part.method == _STORED:
        yield from (bytes(packed[begin:begin + _PIECE]) for begin in range(0, len(packed), _PIECE))
        return
    unpacker = zlib.decompressobj(-zlib.MAX_WBITS)
    try:
        for begin in range(0, len(packed), _PIECE):
            rest = packed[begin:begin + _PIECE]
            while rest and not unpacker.eof:
                piece = unpacker.decompress(rest, _PIECE)
                rest = unpacker.unconsumed_tail
                yield piece
        yield unpacker.flush()
    except zlib.error:
        raise ModelError(_DAMAGED) from None
    if not unpacker.eof:
        raise ModelError(_DAMAGED)


def _checked(part: _Part, pieces: Iterator[bytes]) -> Iterator[bytes]:
    """The pieces, as long as they don't go beyond what was told; at the end their check sum must fit."""
    size = check = 0
    for piece in pieces:
        size += len(piece)
        if size > part.size:
            raise ModelError(_DAMAGED)
        check = zlib.crc32(piece, check)
        if piece:
            yield piece
    if size != part.size or check != part.check:
        raise ModelError(_DAMAGED)


def _plain(name: str) -> str:
    return name.lstrip("/").lower()


def _parts(data: memoryview) -> dict[str, _Part]:
    """The parts that the directory at the end of the archive names."""
    count, offset = _directory(data)
    if count > _MOST_PARTS:
        raise ModelError(f"This file has more than {_MOST_PARTS:,} parts. Save the model alone, as 3MF or STL.")
    found: dict[str, _Part] = {}
    for _ in range(count):
        head = data[offset:offset + _ENTRY.size]
        if len(head) < _ENTRY.size or bytes(head[:4]) != b"PK\x01\x02":
            raise ModelError(_DAMAGED)
        (_, _, _, flags, method, _, _, check, packed, size, name_size, extra_size, remark_size, _, _, _, begin) = _ENTRY.unpack(head)
        offset += _ENTRY.size
        name = _plain(bytes(data[offset:offset + name_size]).decode("utf-8", "replace"))
        extra = bytes(data[offset + name_size:offset + name_size + extra_size])
        offset += name_size + extra_size + remark_size
        if name in found:
            raise ModelError(_DAMAGED)
        size, packed, begin = _lengthened(extra, (size, packed, begin))
        found[name] = _Part(bool(flags & 1), method, check, packed, size, begin)
    return found


def _directory(data: memoryview) -> tuple[int, int]:
    """How many parts the directory names, and where it begins."""
    tail_begin = max(0, len(data) - _FARTHEST_END)
    place = bytes(data[tail_begin:]).rfind(BEGINS[1])
    if place < 0 or tail_begin + place + _END.size > len(data):
        raise ModelError(_DAMAGED)
    place += tail_begin
    _, disk, first_disk, _, count, _, offset, _ = _END.unpack(data[place:place + _END.size])
    if count == 0xFFFF or offset == _LONG:
        return _long_directory(data, place)
    if disk or first_disk:
        raise ModelError("This file is one of several that belong together. Save the model as one 3MF or STL file.")
    return count, offset


def _long_directory(data: memoryview, end: int) -> tuple[int, int]:
    """The same from the record for large archives, which some programs always write."""
    pointer = bytes(data[max(0, end - 20):end])
    if len(pointer) < 20 or pointer[:4] != b"PK\x06\x07":
        raise ModelError(_DAMAGED)
    place = int.from_bytes(pointer[8:16], "little")
    record = data[place:place + _END_64.size]
    if len(record) < _END_64.size or bytes(record[:4]) != b"PK\x06\x06":
        raise ModelError(_DAMAGED)
    *_, count, _, offset = _END_64.unpack(record)
    return count, offset


def _lengthened(extra: bytes, told: tuple[int, ...]) -> list[int]:
    """Size, packed size and offset, of which each that is too long for its field stands among the extra fields."""
    longer = b""
    while len(extra) >= 4:
        kind, size = struct.unpack_from("<2H", extra)
        if kind == 1:
            longer = extra[4:4 + size]
        extra = extra[4 + size:]
    numbers = []
    for value in told:
        if value == _LONG:
            if len(longer) < 8:
                raise ModelError(_DAMAGED)
            value, longer = int.from_bytes(longer[:8], "little"), longer[8:]
        numbers.append(value)
    return numbers
