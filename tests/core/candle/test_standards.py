"""Published limits: which side of each a reading falls on, at the limit itself too."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.candle import standards

FLAMES = st.floats(0, 500)


def test_under_three_inches_and_at_most_75_mm_are_two_wordings():
    assert standards.passes_flame_en(75.0) and not standards.passes_flame_en(75.001)
    assert not standards.passes_flame_astm(76.2) and standards.passes_flame_astm(76.199)
    assert standards.passes_flame_astm(75.5) and not standards.passes_flame_en(75.5)


def test_a_limit_typed_in_inches_is_the_limit():
    assert not standards.passes_flame_astm(3 * 25.4) and 3 * 25.4 < standards.FLAME_ASTM
    assert standards.passes_flame_en(75 / 25.4 * 25.4)


@given(FLAMES)
def test_a_flame_that_passes_the_stricter_passes_the_other(flame):
    assert standards.passes_flame_astm(flame) or not standards.passes_flame_en(flame)


@given(FLAMES)
def test_what_is_left_agrees_with_what_passes(flame):
    assert (standards.below_flame_astm(flame) > 0) == standards.passes_flame_astm(flame)
    assert (standards.below_flame_en(flame) >= 0) == standards.passes_flame_en(flame)


@pytest.mark.parametrize(("seconds", "old", "new"), [(20, 0, 10), (20.5, -0.5, 9.5), (30, -10, 0), (31, -11, -1)])
def test_the_after_smoke_of_both_editions(seconds, old, new):
    assert standards.below_after_smoke(seconds, 2007) == old and standards.below_after_smoke(seconds, 2019) == new


def test_the_method_s_four_and_three_hours():
    assert standards.over_burn(4) == 0 and standards.over_burn(3.5) < 0 < standards.over_burn(4.1)
    assert standards.short_of_cooling(3) == 0 and standards.short_of_cooling(2.9) > 0 > standards.short_of_cooling(12)


def test_a_quarter_inch_is_the_6_mm_that_is_told():
    assert standards.TRIM == pytest.approx(6, abs=0.5) and standards.TRIM == 25.4 / 4
