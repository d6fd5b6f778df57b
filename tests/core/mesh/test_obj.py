"""OBJ files, against their meshes and against an independent library's reading."""

import io

import numpy as np
import pytest
import trimesh
from file_reading import FAMILY, refused, run, spots
from model_files import as_obj
from models import box, cup, made

SQUARE = b"v 0 0 0\nv 4 0 0\nv 4 4 0\nv 0 4 0\n"


def area(mesh):
    """Area of all triangles, and that of their sum of directions: equal where all of a level face look the same way."""
    directed = np.cross(spots(mesh)[:, 1] - spots(mesh)[:, 0], spots(mesh)[:, 2] - spots(mesh)[:, 0]) / 2
    return np.linalg.norm(directed, axis=1).sum(), np.linalg.norm(directed.sum(axis=0))


@pytest.mark.parametrize("mesh", FAMILY.values(), ids=FAMILY)
@pytest.mark.parametrize("how", [{}, {"more": "/1"}, {"more": "//1"}, {"more": "/1/1", "backward": True}, {"end": "\r\n"}, {"end": "\r"}])
def test_a_file_brings_back_its_mesh(how, mesh):
    found = run(as_obj(mesh, **how), "vessel.obj")
    assert np.allclose(spots(found), spots(mesh))
    assert len(found.corners) == len(mesh.corners)


@pytest.mark.parametrize("mesh", FAMILY.values(), ids=FAMILY)
def test_it_reads_what_the_reference_library_reads(mesh):
    data = as_obj(mesh)
    theirs = trimesh.load(io.BytesIO(data), file_type="obj", process=False, group_material=False, split_object=False)
    assert np.array_equal(spots(run(data)), np.array(theirs.triangles))


def test_it_reads_what_the_reference_library_writes():
    theirs = trimesh.creation.annulus(20, 30, 40)
    ours = run(theirs.export(file_type="obj", include_normals=True).encode())
    assert np.allclose(spots(ours), theirs.triangles)


def test_faces_are_taken_apart():
    faces = [(0, 2, 3, 1), (4, 5, 7, 6), (0, 1, 5, 4), (1, 3, 7, 5), (3, 2, 6, 7), (2, 0, 4, 6)]
    found = run(as_obj(box(), faces=faces))
    assert len(found.first) == 12
    assert area(found) == pytest.approx((2 * (60 * 40 + 60 * 50 + 40 * 50), 0))
    assert found.notes == ("6 faces with more than three corners were taken apart into triangles.",)


@pytest.mark.parametrize("rim", [
    [(0, 0), (4, 0), (1, 1), (0, 4)], [(0, 0), (4, 4), (0, 1), (-4, 4)], [(0, 0), (2, 0), (4, 0), (4, 4), (2, 4), (0, 4)],
    [(0, 0), (9, 0), (9, 9), (6, 9), (6, 3), (3, 3), (3, 9), (0, 9)],
    [(x, y) for step in range(12) for x, y in [(4 * step, 0 if step % 2 else 9)]] + [(44, -20), (0, -20)]])
@pytest.mark.parametrize("laid", [lambda x, y: (x, y, 0), lambda x, y: (y, 0, x), lambda x, y: (0, x, y), lambda x, y: (y, x, x + y)])
def test_a_hollow_face_is_filled_once(rim, laid):
    corners = [laid(x, y) for x, y in rim]
    for turn in range(len(rim)):
        around = [(number + turn) % len(rim) for number in range(len(rim))]
        found = run(as_obj(made(corners, []), faces=[around]))
        whole, directed = area(found)
        assert len(found.first) == len(rim) - 2
        assert whole == pytest.approx(directed)
        flat = [corner for corner in corners]
        assert directed == pytest.approx(np.linalg.norm(sum(np.cross(one, other) for one, other in zip(flat, flat[1:] + flat[:1]))) / 2)
        assert min(np.linalg.norm(np.cross(one[1] - one[0], one[2] - one[0])) for one in spots(found)) > 0


def test_a_line_may_go_on_in_the_next():
    for end in (b"\n", b"\r\n", b"\r"):
        assert len(run((SQUARE + b"f 1 \\\n2 3 \\\n4\n").replace(b"\n", end)).first) == 2


def test_corners_may_have_a_weight_or_a_color_and_lines_remarks():
    found = run(b"v 0 0 0 1.0\nv 4 0 0 0.1 0.2 0.3\n  v\t0 4 0 # back\nf 1 2 3 # the only one\nl 1 2\np 1\n")
    assert found.corners == [(0, 0, 0), (4, 0, 0), (0, 4, 0)]


def test_corners_at_one_place_are_one():
    assert len(run(b"v 0 0 0\nv 4 0 0\nv 4 4 0\nf 1 2 3\nv -0 0 0\nv 4 4 0\nv 0 4 0\nf -3 -2 -1\n").corners) == 4


def test_it_is_read_the_same_in_pieces(monkeypatch):
    data = as_obj(cup(facets=40), "/1/1", True, "\r\n").replace(b"/1/1 ", b"/1/1 \\\r\n")
    whole = run(data)
    for size in (97, 1_000):
        monkeypatch.setattr("brimbook.mesh.obj._PIECE", size)
        assert run(data) == whole


@pytest.mark.parametrize(("face", "says"), [
    (b"f 1 2 5", "corner that is not there"), (b"f 0 1 2", "corner that is not there"), (b"f -5 1 2", "corner that is not there"),
    (b"f 1 2", "fewer than three corners"), (b"f 1 2 x", "“x” stands where a whole number such as 12"), (b"v 1 2", "fewer than three numbers"),
    (b"v 1 2 1,5", "“1,5” stands where a number"), (b"cstype bezier", "free-form"), (b"surf 0 1 0 1 1 2 3", "free-form"),
    (b"v 1e9 0 0\nf 1 2 5", "lies farther"), (b"v nan 0 0\nf 1 2 3 4 5", "lies farther"), (b"", "no triangles"),
    (b"f " + b"9" * 5000 + b" 1 2", "whole number")])
def test_what_is_wrong_is_told(face, says):
    assert says in refused(SQUARE + face + b"\n")


def test_a_comb_with_too_many_teeth_is_refused():
    rim = [(step, 0 if step % 2 else 9) for step in range(6_000)] + [(6_000, -9), (0, -9)]
    data = as_obj(made([(x, y, 0) for x, y in rim], []), faces=[range(len(rim))])
    assert "Save it as triangles" in refused(data)
