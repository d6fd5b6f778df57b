"""Which kind a file is, whatever its name says."""

import pytest
from file_reading import refused, run
from model_files import as_3mf, as_obj, as_text_stl
from models import as_stl, box, cup

from brimbook.mesh import limits


@pytest.mark.parametrize("write", [as_stl, as_text_stl, as_obj, as_3mf])
@pytest.mark.parametrize("name", ["a.stl", "a.OBJ", "a.3mf", "a", ""])
def test_a_file_is_told_by_what_is_in_it(write, name):
    assert len(run(write(cup(facets=7)), name).first) == len(cup(facets=7).first)


@pytest.mark.parametrize("data", [b"ISO-10303-21;\nHEADER;", b"\x89PNG\r\n\x1a\n" + b"\0" * 200, b"A letter about a vessel", b"<svg/>",
                                  b"\xff" * 300])
def test_what_is_not_read_is_told_with_what_is(data):
    assert refused(data, "vessel.step") == "This is not a file that is read here. Save the model as STL, 3MF or OBJ, and choose that."


def test_a_binary_stl_of_another_length_is_believed_by_its_name_only():
    data = as_stl(box()) + b"\0" * 120
    assert len(run(data, "VESSEL.STL").first) == 12
    assert "not a file that is read here" in refused(data, "vessel.blob")


def test_an_empty_file():
    assert refused(b"") == "This file is empty. Choose an STL, 3MF or OBJ file."


def test_limits_are_told_with_what_would_be_right(monkeypatch):
    assert "65 MB; up to 64 MB are read. Save it as 3MF or binary STL" in refused(memoryview(bytes(65_000_000)))
    count = limits.MOST_TRIANGLES + 1
    data = b"".ljust(80) + count.to_bytes(4, "little") + bytes(50 * count)
    assert "more than 600,000 triangles. Save it with fewer triangles, up to 600,000" in refused(data)
    monkeypatch.setattr(limits, "MOST_TRIANGLES", 11)
    for write in (as_stl, as_text_stl, as_obj, as_3mf):
        assert "more than 11 triangles" in refused(write(box()))
