"""Powder and water by absolute volume."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.cast import mix

DENSITY, RATIO, AIR, VOLUME = st.floats(1, 8), st.floats(0.05, 1), st.floats(0, 0.5), st.floats(0.1, 1e5)


@given(VOLUME, DENSITY, RATIO, AIR)
def test_powder_and_water_fill_the_volume_with_their_air(volume, density, ratio, air):
    per_gram = mix.volume_per_gram_of_powder(density, ratio, 0.9982, air)
    powder = mix.powder_for_volume(volume, per_gram)
    assert (powder / density + powder * ratio / 0.9982) / (1 - air) == pytest.approx(volume, rel=1e-12)
    assert mix.absolute_volume([powder, powder * ratio], [density, 0.9982], air) == pytest.approx(volume, rel=1e-12)


@given(VOLUME, st.floats(1e-3, 1e4), DENSITY, RATIO, AIR)
def test_more_room_takes_more_powder(volume, more, density, ratio, air):
    per_gram = mix.volume_per_gram_of_powder(density, ratio, 1.0, air)
    assert mix.powder_for_volume(volume + more, per_gram) > mix.powder_for_volume(volume, per_gram)


@given(DENSITY, RATIO, AIR, st.floats(0.001, 0.1))
def test_more_water_or_air_makes_more_mix_from_a_gram(density, ratio, air, more):
    least = mix.volume_per_gram_of_powder(density, ratio, 1.0, air)
    assert mix.volume_per_gram_of_powder(density, ratio + more, 1.0, air) > least
    assert mix.volume_per_gram_of_powder(density, ratio, 1.0, air + more) > least


def test_nothing_takes_no_room():
    assert mix.absolute_volume([], []) == 0.0
    assert mix.absolute_volume([0.0, 0.0], [2.98, 1.0], 0.5) == 0.0
    assert mix.powder_for_volume(0.0, 0.586) == mix.powder_by_rule(0.0, 1.88) == 0.0


def test_half_air_doubles_the_volume():
    assert mix.absolute_volume([100.0], [2.0], 0.5) == 100.0


def test_each_mass_needs_its_density():
    with pytest.raises(ValueError):
        mix.absolute_volume([1.0, 2.0], [3.15])


@given(DENSITY, RATIO, st.floats(0.998, 1.01))
def test_a_rule_that_is_the_sum_itself_has_no_allowance(density, ratio, per_water):
    per_gram = mix.volume_per_gram_of_powder(density, ratio, 0.9982)
    assert mix.allowance_in_rule(per_water / per_gram, per_water, per_gram) == pytest.approx(0, abs=1e-12)
    assert mix.allowance_in_rule(1.1 * per_water / per_gram, per_water, per_gram) == pytest.approx(0.1)


@pytest.mark.parametrize(("volume", "pieces"), [(0, 0), (639.99, 0), (640, 1), (1279.99, 1), (1280, 2), (6400, 10)])
def test_only_whole_pieces(volume, pieces):
    assert mix.pieces_from(volume, 640.0) == pieces


@given(st.integers(1, 500), st.floats(0.5, 5000))
def test_mix_for_just_so_many_pieces_makes_so_many(pieces, piece):
    assert mix.pieces_from(pieces * piece, piece) == pieces
