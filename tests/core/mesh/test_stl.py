"""STL files, binary and text, against their meshes and against an independent library's reading."""

import io
import struct

import numpy as np
import pytest
import trimesh
from file_reading import FAMILY, refused, run, spots
from model_files import as_text_stl
from models import as_stl, box, cup, moved

@pytest.mark.parametrize("mesh", FAMILY.values(), ids=FAMILY)
@pytest.mark.parametrize("write", [as_stl, as_text_stl])
def test_a_file_brings_back_its_mesh(write, mesh):
    found = run(write(mesh))
    assert np.allclose(spots(found), spots(mesh), rtol=2e-7, atol=1e-5)
    assert len(found.corners) == len(mesh.corners)
    assert (found.unit, found.notes) == ("", ())


@pytest.mark.parametrize("mesh", FAMILY.values(), ids=FAMILY)
@pytest.mark.parametrize("write", [as_stl, as_text_stl])
def test_it_reads_what_the_reference_library_reads(write, mesh):
    """trimesh, an independent reader: same corners bit for bit from binary, same number of corners, same volume."""
    data = write(mesh)
    theirs = trimesh.load(io.BytesIO(data), file_type="stl", process=False)
    ours = run(data)
    assert len(ours.first) == len(theirs.faces)
    if write is as_stl:
        assert np.array_equal(spots(ours), np.array(theirs.triangles))
    assert np.allclose(spots(ours), theirs.triangles, rtol=1e-6, atol=1e-6)


@pytest.mark.parametrize("kind", ["stl", "stl_ascii"])
def test_it_reads_what_the_reference_library_writes(kind):
    theirs = trimesh.creation.annulus(20, 30, 40)
    data = theirs.export(file_type=kind)
    ours = run(data.encode() if isinstance(data, str) else data)
    assert np.allclose(spots(ours), theirs.triangles, atol=1e-5)
    assert len(ours.corners) == len(theirs.vertices)


def test_a_binary_file_may_begin_like_a_text():
    data = as_stl(box())
    assert len(run(b"solid vessel facet normal".ljust(80) + data[80:]).first) == 12


def test_an_exact_binary_file_is_told_by_its_size_whatever_its_name():
    assert len(run(as_stl(box()), "vessel.obj").first) == 12


def test_what_stands_after_the_last_triangle_is_left_out_and_told():
    assert run(as_stl(box()) + b"\0" * 49).notes == ()
    assert run(as_stl(box()) + b"\0" * 120).notes == ("The file tells of 12 triangles; what stands after them was left out.",)


def test_color_bits_and_normals_mean_nothing():
    data = bytearray(as_stl(box()))
    for begin in range(84, len(data), 50):
        data[begin:begin + 12] = struct.pack("<3f", float("nan"), 1e30, 0)
        data[begin + 48:begin + 50] = b"\xff\xff"
    assert np.array_equal(spots(run(bytes(data))), spots(box()))


def test_minus_zero_is_zero():
    data = as_stl(box())
    minus = struct.pack("<f", -0.0)
    # One triangle's corners at 0 written as -0.
    triangle = data[84:134].replace(struct.pack("<f", 0.0), minus)
    found = run(data[:84] + triangle + data[134:])
    assert len(found.corners) == 8
    assert not any(str(value) == "-0.0" for corner in found.corners for value in corner)


def test_a_view_of_memory_is_read_too():
    assert len(run(memoryview(bytearray(as_stl(box())))).first) == 12


@pytest.mark.parametrize("change", [
    bytes.upper, lambda text: text.replace(b"\n", b"\r\n"), lambda text: text.replace(b"\n", b"\r"), lambda text: b"\xef\xbb\xbf" + text,
    lambda text: b"\n\n  " + text, lambda text: b" ".join(text.split()[:2]) + b"\n" + b" ".join(text.split()[2:-2]) + b"\nendsolid",
    lambda text: text.replace(b" ", b"\t  "), lambda text: text.decode().encode("utf-16"), lambda text: text[:text.rindex(b"endsolid")]])
def test_a_text_may_be_written_in_many_ways(change):
    assert np.allclose(spots(run(change(as_text_stl(cup(facets=9))))), spots(cup(facets=9)))


def test_numbers_may_have_exponents():
    assert np.allclose(spots(run(as_text_stl(cup(facets=9), "{:+.8E}"))), spots(cup(facets=9)))


def test_a_text_may_hold_several_solids():
    data = as_text_stl(box(), name="facet of a vessel") + as_text_stl(moved(box(), 100), name="")
    assert len(run(data).first) == 24


def test_a_text_is_read_the_same_in_pieces(monkeypatch):
    data = as_text_stl(cup(facets=40))
    whole = run(data)
    monkeypatch.setattr("brimbook.mesh.stl._PIECE", 1_000)
    assert np.array_equal(spots(run(data)), spots(whole))


def test_damage_is_told():
    binary, text = as_stl(box()), as_text_stl(box())
    assert refused(binary[:-10]) == "This STL file is cut off: it tells of 12 triangles and holds 11. Save or copy it again."
    assert "4,294,967,295 triangles and holds 12" in refused(binary[:80] + b"\xff" * 4 + binary[84:])
    assert "11 triangles could be read" in refused(text[:-60])
    assert "11 triangles could be read" in refused(text.replace(b"   vertex", b"", 1))
    assert "“1,5”" in refused(text.replace(b"vertex 60", b"vertex 1,5", 1))
    assert "no triangles" in refused(b"solid nothing\nendsolid nothing\n")
    assert "no triangles" in refused(b"\0" * 84)


@pytest.mark.parametrize("value", ["nan", "inf", "-1e7"])
def test_corners_that_are_nowhere_are_refused(value):
    text = as_text_stl(box()).replace(b"vertex 60", f"vertex {value}".encode(), 1)
    assert "lies farther than 1,000,000" in refused(text)
    binary = bytearray(as_stl(box()))
    binary[100:104] = struct.pack("<f", float(value))
    assert "lies farther than 1,000,000" in refused(bytes(binary))
