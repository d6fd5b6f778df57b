"""Fewer levels for the same curve."""

from brimbook.mesh import curve
from brimbook.mesh.model import Level
from brimbook.mesh.thin import thinned
from tests.core.helpers.read_models import cone_levels


def test_levels_of_a_cone_can_all_be_spared():
    levels = cone_levels(10, 40, 0.0, 80.0, 30)
    few = thinned(levels, 2)
    assert few == (levels[0], levels[-1])
    assert all(abs(curve.volume_at(few, level.height) - level.volume) < 1e-9 * levels[-1].volume for level in levels)


def test_a_jump_is_kept():
    levels = (Level(0, 0, 0, 100), Level(10, 1000, 100, 100), Level(20, 2000, 100, 100), Level(30, 3000, 100, 50), Level(40, 3500, 50, 50))
    assert [level.height for level in thinned(levels, 3)] == [0, 30, 40]


def test_enough_room_changes_nothing():
    levels = cone_levels(10, 40, 0.0, 80.0, 6)
    assert thinned(levels, 6) == levels
