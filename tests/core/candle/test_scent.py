"""Scents in a fragrance: density together, and the load at a limit."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.candle.scent import density_together, load_at_limit

OILS = st.lists(st.tuples(st.floats(0.1, 100), st.floats(0.5, 1.6)), min_size=1, max_size=8)


@given(OILS)
def test_a_mix_is_no_lighter_than_its_lightest_and_no_heavier_than_its_heaviest(oils):
    parts, densities = zip(*oils)
    together = density_together(list(parts), list(densities))
    assert min(densities) * (1 - 1e-12) <= together <= max(densities) * (1 + 1e-12)


@given(OILS, st.floats(0.1, 50))
def test_only_the_ratio_of_the_parts_counts(oils, factor):
    parts, densities = (list(each) for each in zip(*oils))
    assert density_together([part * factor for part in parts], densities) == pytest.approx(density_together(parts, densities))


def test_equal_volumes_make_the_mean_density():
    assert density_together([0.8, 1.0], [0.8, 1.0]) == pytest.approx(0.9)


@given(st.floats(1e-6, 1), st.floats(1e-3, 1))
def test_at_that_load_the_scent_is_just_at_its_limit(limit, share):
    assert load_at_limit(limit, share) * share == pytest.approx(limit)
