"""Liquid over parts of surfaces, exactly."""

import math

import models
import pytest

from brimbook.mesh.filling import Filling, standing
from brimbook.mesh.slices import Slicer


def inner(mesh, test):
    """Triangles whose middle passes a test."""
    middles = [[math.fsum(mesh.corners[number][axis] for number in triple) / 3 for axis in range(3)] for triple in models.triples(mesh)]
    return [number for number, middle in enumerate(middles) if test(*middle)]


CONE = models.lathe([(0, 0), (40, 0), (40, 30), (30, 30), (0, 0.001)], 48)


@pytest.mark.parametrize("height", [0.001, 5.0, 17.3, 30.0])
def test_a_cone_fills_with_the_cube_of_its_depth(height):
    slicer = Slicer(CONE)
    over = inner(CONE, lambda x, y, z: z > 0 and math.hypot(x, y) < 25)
    filling = Filling(slicer, over)
    depth, whole = height - 0.001, 29.999
    base = math.pi * models.facet_share(48) * (30 * depth / whole) ** 2
    level = filling.at(height)
    told = [level.volume, filling.volume(height), standing(slicer, over, height)]
    assert told == pytest.approx([base * depth / 3] * 3, rel=1e-12, abs=1e-9)
    assert level.below == pytest.approx(base, abs=1e-9)


def test_a_step_makes_the_surface_jump():
    cup = models.cup()
    filling = Filling(Slicer(cup), inner(cup, lambda x, y, z: z >= 8 and math.hypot(x, y) < 41 and z < 80))
    area = math.pi * 40**2 * models.facet_share(48)
    assert (filling.at(8.0).volume, filling.at(8.0).below) == (0.0, 0.0)
    assert filling.at(8.0).above == pytest.approx(area)
    assert filling.at(50.0).volume == pytest.approx(42 * area)


def test_the_whole_surface_of_a_solid_takes_its_volume_away():
    """Over all of a closed mesh stands nothing but what the solid itself displaces."""
    ball = models.moved(models.sphere(), z=30.0)
    slicer = Slicer(ball)
    every = range(len(ball.first))
    volume = math.fsum(_signed(ball, number) for number in every)
    assert Filling(slicer, every).volume(60.0) == pytest.approx(-volume)
    assert standing(slicer, every, 60.0) == pytest.approx(-volume)
    assert standing(slicer, every, 30.0) == pytest.approx(-volume / 2)


def _signed(mesh, number):
    (ax, ay, az), (bx, by, bz), (cx, cy, cz) = (mesh.corners[numbers[number]] for numbers in (mesh.first, mesh.second, mesh.third))
    return (ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)) / 6
