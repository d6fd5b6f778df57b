"""The thinnest wall against vessels whose walls are known."""

import math

import pytest

from brimbook.mesh.areas import areas
from brimbook.mesh.walls import Inside, thinnest
from tests.core.helpers import models
from tests.core.helpers.lathe_parts import of_lines, run


def measured(profile, lines, brim, facets=48):
    mesh = models.lathe(profile, facets)
    mesh = models.moved(mesh, *(-min(axis) for axis in zip(*mesh.corners)))
    return run(thinnest(mesh, [Inside(of_lines(profile, lines, facets), brim)], areas(mesh)))[0]


def cup(outer=45.0, height=80.0, wall=5.0, floor=8.0, lean=0.0):
    """The profile of models.cup; its room is lines 3 and 4."""
    inner = outer - wall
    low = inner - lean * (height - floor) / height
    return [(0, 0), (outer - lean, 0), (outer, height), (inner, height), (low, floor), (0, floor)]


@pytest.mark.parametrize("facets", [24, 48, 200])
@pytest.mark.parametrize("wall", [1.2, 3.0, 5.0, 14.0])
def test_an_upright_wall(wall, facets):
    found = measured(cup(wall=wall, floor=16.0), (3, 4), 80.0, facets)
    assert found[0] == pytest.approx(wall * math.cos(math.pi / facets), rel=0.001)


@pytest.mark.parametrize("lean", [5.0, 15.0, 30.0])
def test_a_leaning_wall_is_measured_square_to_it(lean):
    found = measured(cup(wall=5.0, floor=10.0, lean=lean, outer=60.0), (3, 4), 80.0, 96)
    assert found[0] == pytest.approx(5.0 * math.cos(math.atan(lean / 80)), rel=0.01)


@pytest.mark.parametrize("floor", [1.5, 4.0])
def test_a_floor_thinner_than_the_walls(floor):
    found = measured(cup(wall=6.0, floor=floor), (3, 4), 80.0)
    assert found[0] == pytest.approx(floor, rel=1e-6) and found[1] == pytest.approx(floor / 2, rel=1e-6)


def test_a_wall_that_is_thinner_at_the_brim_is_thinnest_there():
    profile = [(0, 0), (45, 0), (45, 80), (42, 80), (37, 8), (0, 8)]
    found = measured(profile, (3, 4), 80.0, 96)
    assert found[0] == pytest.approx(3.0, rel=0.01) and found[1] == pytest.approx(80, abs=0.5)


def test_a_groove_outside_counts():
    profile = [(0, 0), (45, 0), (45, 38), (42, 40), (45, 42), (45, 80), (40, 80), (40, 8), (0, 8)]
    found = measured(profile, (6, 7), 80.0, 96)
    assert found[0] == pytest.approx(2.0, rel=0.01) and found[1] == pytest.approx(40, abs=0.2)


def test_a_groove_inside_counts():
    profile = [(0, 0), (45, 0), (45, 80), (40, 80), (40, 43), (43.5, 42), (43.5, 38), (40, 37), (40, 8), (0, 8)]
    found = measured(profile, (3, 4, 5, 6, 7, 8), 80.0, 96)
    assert found[0] == pytest.approx(1.5, rel=0.01)


def test_a_round_rim_is_no_thinner_than_its_wall():
    bead = [(42.5 + 2.5 * math.cos(math.pi * step / 16), 77.5 + 2.5 * math.sin(math.pi * step / 16)) for step in range(17)]
    profile = [(0, 0), (45, 0), *bead, (40, 8), (0, 8)]
    found = measured(profile, (*range(10, 18), 18, 19), 80.0, 96)
    assert found[0] == pytest.approx(5.0, rel=0.01)


def test_a_chamfered_rim_is_no_thinner_than_its_wall():
    profile = [(0, 0), (45, 0), (45, 77), (42, 80), (40, 80), (40, 8), (0, 8)]
    assert measured(profile, (4, 5), 80.0, 96)[0] == pytest.approx(5.0, rel=0.01)


def test_a_thick_mold():
    profile = [(0, 0), (90, 0), (90, 120), (50, 120), (45, 60), (0, 60)]
    assert measured(profile, (3, 4), 120.0)[0] == pytest.approx(40 * math.cos(math.pi / 48), rel=0.01)


def test_many_triangles_are_measured_as_well():
    profile = [(0, 0), (45, 0), *((45, z / 4) for z in range(1, 321)), *((40 + 0.5 * math.sin(z / 10), z / 4) for z in range(320, 31, -1)), (0, 8)]
    mesh = models.moved(models.lathe(profile, 144), 45, 45)
    found, shares = run(thinnest(mesh, [Inside(of_lines(profile, range(322, 612), 144), 80.0)], areas(mesh)))
    assert found[0] == pytest.approx(4.5, rel=0.01)
    assert len(shares) > 10 and all(0 <= share <= 1 for share in shares)


def test_between_two_rooms_the_divider_counts():
    wells = [models.turned_over(models.box(40, 40, 41, (left, 10, 9))) for left in (8, 51)]
    mesh = models.joined(models.box(100, 60, 50), *wells)
    found, _ = run(thinnest(mesh, [Inside(range(12, 24), 50.0), Inside(range(24, 36), 50.0)], areas(mesh)))
    assert found[0] == pytest.approx(3.0)


def test_without_a_room_there_is_no_wall():
    assert run(thinnest(models.box(), [], []))[0] is None
