"""Joining corners, and leaving out what counts for nothing."""

import pytest
from measured_models import doubled, loose, measured, run, without
from models import box, cup, joined, made, moved, sphere, triples

from brimbook.mesh.volumes import volume
from brimbook.mesh.weld import welded


@pytest.mark.parametrize("mesh", [box(), cup(), sphere()], ids=["box", "cup", "sphere"])
def test_repeated_corners_are_one(mesh):
    found = run(welded(loose(mesh)))
    assert len(found.corners) == len(set(mesh.corners))
    assert found.closed
    assert found.notes == ()
    assert volume(found) == pytest.approx(volume(mesh), rel=1e-12)


def test_what_is_joined_already_is_left_as_it_is():
    mesh = cup()
    found = run(welded(mesh))
    assert (found.corners, found.first, found.closed) == (mesh.corners, mesh.first, True)


def test_minus_0_is_0():
    corners = [(0.0, 0.0, 0.0), (1.0, -0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (-0.0, -0.0, 0.0)]
    assert len(run(welded(made(corners, [(0, 2, 1), (4, 1, 3), (1, 2, 3), (2, 4, 3)]))).corners) == 4


def test_corners_without_a_triangle_count_in_no_size():
    mesh = made([*box().corners, (900.0, 0.0, 0.0)], triples(box()))
    assert len(run(welded(mesh)).corners) == 8


def test_triangles_without_an_area_are_left_out_and_told():
    found = run(welded(made(box().corners, [*triples(box()), (0, 0, 1), (3, 2, 3)])))
    assert len(found.first) == 12
    assert found.notes == ("2 triangles without an area were left out.",)


def test_repeated_triangles_count_once_and_are_told():
    found = run(welded(doubled(cup(), [5])))
    assert found.closed
    assert found.notes == ("1 triangle was there twice; one was left out.",)
    assert run(welded(joined(box(), box()))).notes == ("12 triangles were there twice; they count once.",)


def test_a_crack_is_closed_and_told():
    """The upper half of a box stands 0.0002 beside the lower one's corners."""
    mesh = loose(box())
    shaken = made([(x + 2e-4 * (place % 3), y, z) for place, (x, y, z) in enumerate(mesh.corners)], triples(mesh))
    found = run(welded(shaken))
    assert found.closed
    assert found.notes == ("Corners nearer to each other than 1/10,000 of the largest side were joined.",)
    assert volume(found) == pytest.approx(120000, rel=1e-4)


def test_a_real_gap_stays_open():
    found = run(welded(without(box(), {0})))
    assert not found.closed
    assert found.notes == ()
    assert len(found.corners) == 8


def test_corners_close_together_in_a_closed_mesh_stay_apart():
    thin = moved(box(60, 40, 2e-4), 0)
    assert len(run(welded(thin)).corners) == 8
    assert measured(thin)[1].volumes[0] == pytest.approx(60 * 40 * 2e-4)


def test_a_file_of_nothing():
    found = run(welded(made([], [])))
    assert (len(found.first), found.closed) == (0, False)
