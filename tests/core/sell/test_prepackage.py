"""The average system: the ladder of tolerable errors, its limits, and the heights of figures."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.sell import prepackage

NOMINAL = st.floats(5.0, 10_000.0)
JOINS = (50, 100, 200, 300, 500, 1000)


@pytest.mark.parametrize("join", JOINS)
def test_shares_and_weights_meet_at_every_step(join):
    below, at, above = (prepackage.exact_error(join * factor) for factor in (1 - 1e-9, 1.0, 1 + 1e-9))
    assert below == pytest.approx(at, rel=1e-8) and above == pytest.approx(at, rel=1e-8)


@given(NOMINAL, NOMINAL)
def test_a_larger_quantity_never_has_a_smaller_error(one, other):
    small, large = sorted((one, other))
    assert prepackage.exact_error(small) <= prepackage.exact_error(large) * (1 + 1e-12)
    assert prepackage.tolerable_error(small) <= prepackage.tolerable_error(large)


@given(NOMINAL)
def test_a_share_is_rounded_up_by_less_than_a_tenth_and_a_weight_not_at_all(nominal):
    exact, told = prepackage.exact_error(nominal), prepackage.tolerable_error(nominal)
    assert exact - 1e-6 <= told < exact + 0.1
    assert told == pytest.approx(round(told, 1), abs=1e-12)
    if prepackage.share_of_nominal(nominal) is None:
        assert told == exact
    else:
        assert exact == pytest.approx(nominal * prepackage.share_of_nominal(nominal))


@given(NOMINAL)
def test_the_second_limit_is_as_far_below_the_first_as_that_is_below_the_label(nominal):
    first, second = (prepackage.lower_limit(nominal, errors) for errors in (1, 2))
    assert 0 < second < first < nominal
    assert nominal - first == pytest.approx(first - second, abs=2e-6)


@pytest.mark.parametrize("nominal", [0.0, 4.99, 10_000.1, -1.0])
def test_beyond_the_ladder_there_is_no_error(nominal):
    assert not prepackage.covered(nominal)
    for function in (prepackage.exact_error, prepackage.tolerable_error, prepackage.share_of_nominal):
        with pytest.raises(ValueError, match="5 g to 10 kg"):
            function(nominal)


@given(st.lists(st.floats(1, 1000), max_size=30), st.floats(1, 1000))
def test_what_is_at_a_limit_is_not_below_it(weights, limit):
    assert prepackage.below([*weights, limit], limit) == prepackage.below(weights, limit) <= len(weights)
    assert prepackage.below([limit - 0.1], limit) == 1


@given(st.floats(0.1, 1e5), st.floats(0.1, 1e5))
def test_figures_of_more_are_never_smaller(one, other):
    small, large = sorted((one, other))
    assert prepackage.figure_height(small) <= prepackage.figure_height(large)
