"""Water on a scale. Outside values are in tests/published; here is how the functions hang together."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.fill import water

CELSIUS = st.floats(water.COLDEST, water.WARMEST)


@given(CELSIUS, st.floats(0.01, 10))
def test_warmer_water_is_lighter(celsius, more):
    assert water.density(celsius + more) < water.density(celsius)


def test_water_is_heaviest_near_four_degrees():
    densities = {tenths: water.density(tenths / 10) for tenths in range(0, 100)}
    assert max(densities, key=densities.get) == 40


@given(st.floats(0.001, 1e5), CELSIUS)
def test_volume_and_reading_undo_each_other(grams, celsius):
    assert water.reading(water.volume(grams, celsius), celsius) == pytest.approx(grams, rel=1e-12)


@given(st.floats(0, 1e5), CELSIUS)
def test_a_gram_of_water_is_always_more_than_a_milliliter(grams, celsius):
    assert water.volume(grams, celsius) >= grams * 1.001


@given(st.floats(1, 1e5))
def test_without_air_the_scale_shows_the_mass(grams):
    assert water.true_mass(grams, 1.0, air_density=0.0) == grams


@given(st.floats(1, 1e5))
def test_what_is_as_dense_as_the_weights_weighs_true(grams):
    assert water.true_mass(grams, water.WEIGHTS_DENSITY) == pytest.approx(grams, rel=1e-12)


def test_air_carries_a_thousandth_of_water():
    assert water.true_mass(1000.0, 0.9982) - 1000.0 == pytest.approx(1.054, abs=0.001)
