"""Spots over a surface, and faces in cells."""

import math

import pytest

from brimbook.mesh.areas import areas
from brimbook.mesh.spots import faces, spots
from tests.core.helpers import models
from tests.core.helpers.lathe_parts import run


def laid(mesh, side, around=0.0):
    return run(faces(mesh, bytes(len(mesh.first)), ((number, around) for number in range(len(mesh.first))), side))[0]


def test_spots_lie_on_the_surface_and_look_outward():
    mesh = models.moved(models.sphere(), 30, 30, 30)
    found = spots(mesh, range(len(mesh.first)), areas(mesh), 7, 200)
    assert 100 < len(found) < 1000 and {spot.owner for spot in found} == {7}
    for spot in found:
        out = [value - 30 for value in spot.place]
        assert math.hypot(*out) == pytest.approx(30, abs=0.1)
        assert sum(a * b for a, b in zip(out, spot.way)) > 29


def test_a_large_triangle_has_spots_within():
    mesh = models.box(60, 40, 50)
    found = spots(mesh, [0], areas(mesh), 0, 100)
    assert len(found) == 66 and all(spot.place[2] == 0 for spot in found)


@pytest.mark.parametrize("side", [2.0, 15.0, 80.0])
def test_the_face_below_a_place_is_among_the_near_ones(side):
    cells = laid(models.box(60, 40, 50), side)
    near = cells.near(20.0, 10.0, 1.5, 1.8)
    assert any(face.z == -1.0 and face.holds((20.0, 10.0, 0.0)) for face in near)


def test_a_face_holds_what_is_on_it_and_knows_its_edge():
    triangle = models.made([(0, 0, 0), (10, 0, 0), (0, 10, 0)], [(0, 1, 2)])
    (face,) = laid(triangle, 50.0).cells[0]
    assert face.holds((2.0, 2.0, 0.0)) and face.holds((0.0, 0.0, 0.0)) and not face.holds((6.0, 6.0, 0.0)) and not face.holds((-0.1, 3.0, 0.0))
    assert face.edge((6.0, 6.0, 0.0)) == pytest.approx((5.0, 5.0, 0.0)) and face.edge((60.0, 3.0, 0.0)) == pytest.approx((10.0, 0.0, 0.0))


def test_a_face_that_stands_for_its_neighbors_holds_what_is_near_its_middle():
    (face,) = laid(models.made([(0, 0, 0), (3, 0, 0), (0, 3, 0)], [(0, 1, 2)]), 50.0, around=16.0).cells[0]
    assert face.holds((4.9, 1.0, 0.0)) and not face.holds((5.1, 1.0, 0.0)) and face.edge((4.0, 4.0, 0.0)) is None
