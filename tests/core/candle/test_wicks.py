"""What pools must reach, and what a core may hold."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.candle import wicks


@given(st.floats(100, 1e5), st.integers(1, 8))
def test_pools_cut_to_fit_make_up_the_surface(area, count):
    assert count * math.pi / 4 * wicks.pool_of_area(area, count) ** 2 == pytest.approx(area)


@pytest.mark.parametrize("lead, banned", [(0.0, False), (0.0006, False), (0.000601, True), (0.06, True)])
def test_a_core_with_more_lead_than_the_law_allows(lead, banned):
    assert wicks.is_lead_core(lead) is banned


def test_a_pool_as_wide_as_needed_just_reaches():
    assert wicks.fit(58.0, 58.0) == 1 and wicks.fit(57.9, 58.0) < 1 < wicks.fit(58.1, 58.0)
