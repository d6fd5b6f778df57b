"""PNG files, written with the standard library alone."""

import struct
import zlib

SIGNATURE = b"\x89PNG\r\n\x1a\n"


def png(width: int, height: int, pixels: bytes) -> bytes:
    """A PNG of `pixels`: red, green, blue and alpha, one byte each, row by row."""
    if len(pixels) != width * height * 4:
        raise ValueError(f"{len(pixels)} bytes do not fill {width} x {height} pixels")
    header = struct.pack(">IIBBBBB", width, height, 8, 6, 0, 0, 0)
    stride = width * 4
    # Each row starts with its filter's number: 0, none.
    rows = b"".join(b"\0" + pixels[start : start + stride] for start in range(0, len(pixels), stride))
    return SIGNATURE + b"".join(
        _chunk(kind, data)
        for kind, data in [(b"IHDR", header), (b"IDAT", zlib.compress(rows, 9)), (b"IEND", b"")]
    )


def _chunk(kind: bytes, data: bytes) -> bytes:
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))
