"""How warm a mix could get."""

import pytest

from brimbook.cast import heat


def test_water_alone_and_solids_alone():
    assert heat.heat_capacity(1.0, 0.0) == 4.18 and heat.heat_capacity(0.0, 1.0) == 0.75


def test_the_heat_warms_the_whole_mix():
    water, solids = 0.4, 3.0
    warmed = heat.rise(100.0, water, solids)
    assert warmed * heat.heat_capacity(water, solids) * (water + solids) == pytest.approx(100.0)


def test_sand_and_water_keep_it_cooler():
    neat = heat.rise(100.0, 0.4, 1.0)
    assert heat.rise(100.0, 0.4, 3.0) < neat and heat.rise(100.0, 0.6, 1.0) < neat
    assert heat.rise(200.0, 0.4, 1.0) == pytest.approx(2 * neat) and heat.rise(0.0, 0.4, 1.0) == 0


def test_the_share_that_softens_brings_the_mix_just_there():
    share = heat.share_to_soften(55.0, 20.0, 41.0)
    assert 20.0 + share * 41.0 == pytest.approx(55.0)
