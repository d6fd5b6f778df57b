"""Level cuts: loops that close, hold what they should, and turn the right way."""

import math
import random

import blocks
import models
import pytest

from brimbook.mesh.nesting import area
from brimbook.mesh.slices import Slicer
from brimbook.mesh.triangles import Triangles


def areas(slicer, height, above=False):
    return sorted(round(area(loop.points), 6) for loop in slicer.contours(height, above))


def test_a_cup_has_an_outline_and_a_hole():
    slicer = Slicer(models.cup())
    share = math.pi * models.facet_share(48)
    assert areas(slicer, 40.0) == pytest.approx([-(40**2) * share, 45**2 * share])


def test_a_level_face_is_told_from_either_side():
    slicer = Slicer(models.cup(floor=8.0, height=80.0))
    share = math.pi * models.facet_share(48)
    assert areas(slicer, 8.0) == pytest.approx([45**2 * share])
    assert areas(slicer, 8.0, True) == pytest.approx([-(40**2) * share, 45**2 * share])
    assert areas(slicer, 80.0) == pytest.approx([-(40**2) * share, 45**2 * share])
    assert areas(slicer, 80.0, True) == areas(slicer, 0.0) == []
    assert areas(slicer, 0.0, True) == pytest.approx([45**2 * share])


def test_beyond_the_model_there_is_nothing():
    slicer = Slicer(models.box())
    assert slicer.contours(-1.0) == slicer.contours(51.0) == []


def test_each_side_lies_in_its_triangle():
    mesh = models.cup(lean=12.0)
    corners, slicer = mesh.corners, Slicer(mesh)
    for loop in slicer.contours(33.0):
        for one, two, triangle in zip(loop.points, (*loop.points[1:], loop.points[0]), loop.triangles):
            a, b, c = (corners[numbers[triangle]] for numbers in (mesh.first, mesh.second, mesh.third))
            edges = ((a, b), (b, c), (c, a))
            crossed = [tuple(p + (33.0 - low[2]) / (high[2] - low[2]) * (q - p) for p, q in zip(low[:2], high[:2]))
                       for low, high in edges if (low[2] < 33.0) != (high[2] < 33.0)]
            assert all(min(math.dist(point, place) for place in crossed) < 1e-9 for point in (one, two))


@pytest.mark.parametrize("seed", range(12))
def test_a_cut_finds_each_triangle_that_it_goes_through(seed):
    """Whatever cells triangles lie in: tall ones, short ones, all across."""
    chance = random.Random(seed)
    corners = [tuple(chance.choice((chance.random(), 0.25, chance.random() ** 4)) for _ in range(3)) for _ in range(chance.choice((9, 400, 9000)))]
    mesh = models.made(corners, [tuple(chance.randrange(len(corners)) for _ in range(3)) for _ in range(500)])
    slicer = Slicer(mesh)
    for height in (0.0, 0.001, 0.25, 0.5, 0.97, 1.5):
        for above in (False, True):
            below = [corner[2] <= height if above else corner[2] < height for corner in corners]
            mixed = [number for number, triple in enumerate(models.triples(mesh)) if len({below[corner] for corner in triple}) == 2]
            assert sorted(slicer.crossing(slicer.rank_at(height, above))) == mixed


@pytest.mark.parametrize("seed", range(20))
def test_cubes_are_counted_at_their_faces_too(seed):
    filled = blocks.any_solid(seed)
    slicer = Slicer(blocks.solid(filled))
    for height in range(8):
        for above in (False, True):
            loops = slicer.contours(float(height), above)
            assert math.fsum(area(loop.points) for loop in loops) == sum(z == height - (not above) for *_, z in filled)
    assert slicer.left_out == 0


def without(mesh, gone):
    kept = [number for number in range(len(mesh.first)) if number not in gone]
    return Triangles(mesh.corners, *([numbers[number] for number in kept] for numbers in (mesh.first, mesh.second, mesh.third)))


def test_a_small_hole_in_the_surface_is_bridged():
    mesh = models.cylinder(facets=48)
    crossed = Slicer(mesh).contours(30.0)[0].triangles
    slicer = Slicer(without(mesh, set(crossed[:2]) | {crossed[40]}))
    (loop,) = slicer.contours(30.0)
    assert area(loop.points) == pytest.approx(math.pi * 40**2 * models.facet_share(48), rel=0.01)
    assert slicer.left_out == 0


def test_a_surface_half_gone_is_left_out_and_counted():
    mesh = models.cylinder(facets=48)
    slicer = Slicer(without(mesh, set(Slicer(mesh).contours(30.0)[0].triangles[:50])))
    assert slicer.contours(30.0) == []
    assert slicer.left_out == 1


def test_an_edge_of_four_triangles_leaves_closed_loops():
    """Two cubes that touch along an upright edge."""
    slicer = Slicer(blocks.solid({(0, 0, 0), (1, 1, 0)}))
    assert math.fsum(area(loop.points) for loop in slicer.contours(0.5)) == 2.0


@pytest.mark.parametrize("seed", range(30))
def test_torn_and_turned_meshes_never_fail(seed):
    chance = random.Random(seed)
    mesh = models.joined(models.cup(facets=12), models.moved(models.box(), 3.0, 4.0, 5.0))
    triangles = [chance.sample(triple, 3) if chance.random() < 0.1 else triple for triple in models.triples(mesh) if chance.random() > 0.1]
    slicer = Slicer(models.made(mesh.corners, triangles))
    for height in (0.0, 5.0, 8.0, 29.0, 55.0, 80.0):
        assert all(len(loop.points) == len(loop.triangles) >= 3 for loop in slicer.contours(height))
