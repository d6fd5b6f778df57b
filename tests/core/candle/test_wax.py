"""Wax, fragrance and dye to the line."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.candle import wax

DENSITY, OIL, LOAD, DYE, VOLUME = (st.floats(0.7, 1.1), st.floats(0.6, 1.5), st.floats(0, 0.5), st.floats(0, 0.1),
                                   st.floats(0.1, 1e5))


@given(VOLUME, DENSITY, OIL, LOAD, DYE)
def test_wax_fragrance_and_dye_come_to_the_line(volume, density, oil, load, dye):
    grams = wax.wax_for_volume(volume, wax.volume_per_gram_of_wax(density, oil, load, dye))
    assert grams / density + grams * dye / density + grams * load / oil == pytest.approx(volume, rel=1e-12)


@given(LOAD, DYE)
def test_the_two_bases_of_a_load_undo_each_other(load, dye):
    assert wax.load_of_wax(wax.load_of_blend(load, dye), dye) == pytest.approx(load, abs=1e-12)


@given(LOAD, DYE)
def test_a_load_of_the_blend_is_grams_in_grams(load, dye):
    """100 g of wax with its fragrance and dye: the share is fragrance over everything."""
    fragrance, color = 100 * load, 100 * dye
    assert wax.load_of_blend(load, dye) == pytest.approx(fragrance / (100 + fragrance + color))


@given(st.floats(0.001, 0.5), DYE)
def test_told_of_the_blend_a_load_is_less(load, dye):
    assert wax.load_of_blend(load, dye) < load


@given(VOLUME, DENSITY, OIL, st.floats(0, 0.4), st.floats(0.001, 0.1))
def test_more_fragrance_leaves_room_for_less_wax(volume, density, oil, load, more):
    def grams(share):
        return wax.wax_for_volume(volume, wax.volume_per_gram_of_wax(density, oil, share))

    assert grams(load + more) < grams(load)


@given(DENSITY, OIL, st.floats(0, 0.2), DYE)
def test_the_density_behind_a_rule_that_is_the_sum_itself(density, oil, load, dye):
    rule = 1.0029 / wax.volume_per_gram_of_wax(density, oil, load, dye)
    assert wax.density_behind_rule(rule, 1.0029, oil, load, dye) == pytest.approx(density)


@given(VOLUME, st.floats(0.7, 0.9), st.floats(0.9, 1.1))
def test_setting_keeps_the_mass(volume, poured, cold):
    assert (volume - wax.sink(volume, poured, cold)) * cold == pytest.approx(volume * poured)


def test_what_does_not_shrink_does_not_sink():
    assert wax.sink(100.0, 0.9, 0.9) == 0.0


def test_each_pour_refills_the_sink_of_the_one_before():
    """Pours to the line again and again add up to the geometric series in the contraction."""
    share = wax.sink(1.0, 0.847, 0.9408)
    poured = 0.0
    pour = 100.0
    for _ in range(60):
        poured += pour
        pour = wax.sink(pour, 0.847, 0.9408)
    assert poured == pytest.approx(100 / (1 - share), rel=1e-12)
    assert poured * 0.847 == pytest.approx(100 * 0.9408)
