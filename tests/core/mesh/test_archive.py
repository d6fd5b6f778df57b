"""Archives: parts come out as they went in, and nothing grows beyond what it tells."""

import io
import struct
import zipfile
import zlib

import pytest

from brimbook.mesh import limits
from brimbook.mesh.archive import Archive
from brimbook.mesh.triangles import ModelError

LONG = bytes(number * number % 251 for number in range(300_000))
PARTS = {"3D/a.model": b"<a/>", "long": LONG, "even": b"e" * 1_000_000, "empty": b""}


def zipped(parts=PARTS, method=zipfile.ZIP_DEFLATED, **how):
    file = io.BytesIO()
    with zipfile.ZipFile(file, "w", method) as archive:
        for name, content in parts.items():
            told = zipfile.ZipInfo(name)
            told.compress_type = method
            with archive.open(told, "w", **how) as part:
                part.write(content)
    return file.getvalue()


def refused(data, name="long"):
    with pytest.raises(ModelError) as error:
        list(Archive(memoryview(data)).pieces(name))
    return str(error.value)


def entry(data, name):
    """Where the directory's entry of a part begins."""
    return data.rindex(name) - 46


def changed(data, place, new):
    return data[:place] + new + data[place + len(new):]


@pytest.mark.parametrize("method", [zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED])
@pytest.mark.parametrize("how", [{}, {"force_zip64": True}])
def test_parts_come_out_as_they_went_in(method, how):
    archive = Archive(memoryview(zipped(method=method, **how)))
    for name, content in PARTS.items():
        pieces = list(archive.pieces(name))
        assert b"".join(pieces) == content
        assert archive.size(name) == len(content)
        assert max(map(len, pieces), default=0) <= 65_536


def test_a_part_written_as_it_came_is_read():
    """Written without going back, sizes stand after each part and in the directory."""
    class Forward(io.RawIOBase):
        def __init__(self):
            self.kept = b""

        def writable(self):
            return True

        def write(self, more):
            self.kept += bytes(more)
            return len(more)

    file = Forward()
    with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("long", LONG)
    assert b"".join(Archive(memoryview(file.kept)).pieces("long")) == LONG


def test_names_are_found_with_a_slash_and_in_any_letters():
    archive = Archive(memoryview(zipped()))
    assert archive.has("/3d/A.MODEL") and not archive.has("3D")


def test_remarks_and_what_stands_before_the_end_are_passed_over():
    file = io.BytesIO(zipped())
    with zipfile.ZipFile(file, "a") as archive:
        archive.comment = b"a remark " * 7_000
    assert b"".join(Archive(memoryview(file.getvalue())).pieces("long")) == LONG


def test_a_directory_for_large_archives_is_read():
    data = zipped({"long": LONG})
    end = data.rindex(b"PK\x05\x06")
    size, begin = struct.unpack("<2L", data[end + 12:end + 20])
    record = struct.pack("<4sQ2H2L4Q", b"PK\x06\x06", 44, 45, 45, 0, 0, 1, 1, size, begin)
    pointer = struct.pack("<4sLQL", b"PK\x06\x07", 0, end, 1)
    made = data[:end] + record + pointer + changed(data[end:], 8, b"\xff" * 12)
    assert b"".join(Archive(memoryview(made)).pieces("long")) == LONG
    assert "damaged" in refused(changed(made, end, b"XX"))
    assert "damaged" in refused(data[:end] + changed(data[end:], 8, b"\xff" * 12))


def test_damage_is_told():
    data, first = zipped(), zipped({"long": LONG})
    assert "damaged" in refused(data[:-30])
    assert "damaged" in refused(data[:200] + data[300:])
    assert "damaged" in refused(changed(first, 5_000 if len(first) > 9_000 else 60, b"gone"))
    assert "damaged" in refused(changed(first, 0, b"XX"))
    assert "damaged" in refused(changed(data, entry(data, b"long"), b"XX"))
    assert "damaged" in refused(changed(data, entry(data, b"long") + 16, b"gone")), "check sum"
    assert "damaged" in refused(changed(data, entry(data, b"long") + 42, b"\xf0\xff\xff\x7f")), "begins beyond the end"
    assert "damaged" in refused(changed(data, entry(data, b"long") + 20, b"\xff\xff\xff\x7f")), "longer than the file"
    assert "damaged" in refused(changed(data, entry(data, b"long") + 24, b"\xff\xff\xff\xff")), "a long size that is not there"


def test_the_same_name_twice_is_damage():
    data = zipped({"long": LONG, "lonk": LONG})
    assert "damaged" in refused(data.replace(b"lonk", b"LONG"))


def test_what_is_not_read_is_told():
    data = zipped()
    assert "password" in refused(changed(data, entry(data, b"long") + 8, b"\x01"))
    assert "unusual way" in refused(changed(data, entry(data, b"long") + 10, b"\x0c"))
    end = data.rindex(b"PK\x05\x06")
    assert "one of several" in refused(changed(data, end + 4, b"\x01"))
    assert "more than 4,000 parts" in refused(changed(data, end + 8, b"\xf0\xff\xf0\xff"))


def test_too_much_is_told_before_anything_is_unpacked(monkeypatch):
    data = zipped()
    big = changed(data, entry(data, b"long") + 24, (300_000_000).to_bytes(4, "little"))
    assert "unpacks to 300 MB; up to 200 MB are read" in refused(big)
    monkeypatch.setattr(limits, "MOST_INFLATED", 1_000_100)
    archive = Archive(memoryview(data))
    list(archive.pieces("even"))
    with pytest.raises(ModelError, match="unpacks to"):
        next(archive.pieces("long"))


def test_a_part_that_grows_beyond_what_it_tells_is_stopped_there():
    bomb = zipped({"long": bytes(100_000_000)})
    small = changed(bomb, entry(bomb, b"long") + 24, (100_000).to_bytes(4, "little"))
    taken = 0
    with pytest.raises(ModelError, match="damaged"):
        for piece in Archive(memoryview(small)).pieces("long"):
            taken += len(piece)
    assert taken <= 100_000


def test_packed_text_that_ends_too_soon_is_damage():
    packed = zlib.compress(LONG, wbits=-15)
    data = zipped({"long": LONG})
    place = entry(data, b"long") + 20
    assert data[place:place + 4] == len(packed).to_bytes(4, "little")
    assert "damaged" in refused(changed(data, place, (len(packed) - 40).to_bytes(4, "little")))
