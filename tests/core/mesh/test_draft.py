"""How walls lean, against frustums."""

import math

import pytest

from brimbook.mesh.draft import draft
from tests.core.helpers import models
from tests.core.helpers.lathe_parts import of_lines


def cone(low, high, facets=64):
    return models.lathe([(0, 0), (low, 0), (high, 80), (0, 80)], facets)


def lean(low, high, facets=64):
    """Angle of a facet: its middle runs from one radius to the other."""
    return math.degrees(math.atan((high - low) * math.cos(math.pi / facets) / 80))


@pytest.mark.parametrize(("low", "high"), [(30, 40), (39, 40), (40, 40), (40, 35), (45, 30)])
def test_the_outside_leans_well_when_it_is_narrower_at_the_bottom(low, high):
    mesh = cone(low, high)
    found = draft(mesh, range(len(mesh.first)), False)
    assert found.least == pytest.approx(lean(low, high), abs=0.001)
    assert (found.upright, found.overhanging) == (abs(lean(low, high)) < 1, lean(low, high) <= -1)


@pytest.mark.parametrize(("top", "low"), [(40, 30), (40, 40), (40, 44)])
def test_a_room_leans_well_when_it_opens_upward(top, low):
    profile = [(0, 0), (60, 0), (60, 80), (top, 80), (low, 8), (0, 8)]
    found = draft(models.lathe(profile, 64), of_lines(profile, (3, 4), 64), True)
    assert found.least == pytest.approx(math.degrees(math.atan((top - low) * math.cos(math.pi / 64) / 72)), abs=0.001)


def test_a_small_part_does_not_count_and_a_large_one_does():
    small = [(0, 0), (30, 0), (35, 39.8), (34.9, 40.2), (40, 80), (0, 80)]
    large = [(0, 0), (30, 0), (35, 38), (34, 42), (40, 80), (0, 80)]
    ones = [draft(mesh, range(len(mesh.first)), False) for mesh in (models.lathe(small, 64), models.lathe(large, 64))]
    assert ones[0].least > 7 and ones[1].least < -10
    assert 0.0 < ones[0].overhanging < 0.01 < ones[1].overhanging < 0.1


def test_halves():
    mesh = models.lathe([(0, 0), (40, 0), (40, 40), (44, 80), (0, 80)], 64)
    found = draft(mesh, range(len(mesh.first)), False)
    assert found.least == 0 and found.upright == pytest.approx(0.5, abs=0.03) and found.overhanging == 0


def test_floors_are_no_walls():
    box = models.box()
    assert draft(box, [number for number in range(12) if box.corners[box.first[number]][2] == box.corners[box.second[number]][2] == box.corners[box.third[number]][2]], False) is None
    assert draft(box, [], True) is None
    assert draft(box, range(12), False).upright == 1


def test_a_large_mesh_is_told_from_some_of_its_triangles():
    profile = [(0, 0), (30, 0), *((30 + step / 100, step / 10) for step in range(1, 801)), (0, 80)]
    mesh = models.lathe(profile, 120)
    assert draft(mesh, range(len(mesh.first)), False).least == pytest.approx(math.degrees(math.atan(0.1 * math.cos(math.pi / 120))), abs=0.01)
