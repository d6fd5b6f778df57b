"""The arithmetic of cost: packs, power, what fails, and rounding that adds up."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.sell import cost

AMOUNTS = st.floats(0.0, 1e6)
SHARES = st.floats(0.0, 0.95)


def test_a_part_of_a_pack_and_power_by_hand():
    assert cost.of_pack(600, 25_000, 40) == pytest.approx(0.96)
    assert cost.power(120, 9.5, 0.31) == pytest.approx(0.3534)
    assert cost.power(0, 9.5, 0.31) == 0


def test_what_fails_counted_one_by_one():
    """100 casts at 3 and 20 % lost: 80 fills at 2 and 10 % lost: 72 good ones, each packed for 1."""
    spent = 100 * 3 + 80 * 2 + 72 * 1
    assert 100 * cost.turn_out(0.2, 0.1) == pytest.approx(72)
    assert 72 * cost.good_vessel(3, 2, 1, 0.2, 0.1) == pytest.approx(spent)
    assert 72 * cost.failing(3, 2, 0.2, 0.1) == pytest.approx(spent - 72 * (3 + 2 + 1))


@given(AMOUNTS, AMOUNTS, AMOUNTS, SHARES, SHARES)
def test_good_vessels_bear_all_that_was_spent(cast, candle, packing, first, second):
    begun = 1000
    filled, good = begun * (1 - first), begun * (1 - first) * (1 - second)
    spent = begun * cast + filled * candle + good * packing
    whole = cost.good_vessel(cast, candle, packing, first, second)
    assert good * whole == pytest.approx(spent, rel=1e-9, abs=1e-9)
    assert cast + candle + packing + cost.failing(cast, candle, first, second) == pytest.approx(whole, rel=1e-9, abs=1e-9)


@given(AMOUNTS, AMOUNTS, SHARES, SHARES)
def test_more_failures_never_cost_less(cast, candle, first, second):
    worse = cost.failing(cast, candle, min(first + 0.01, 0.96), min(second + 0.01, 0.96))
    assert worse >= cost.failing(cast, candle, first, second) >= 0


def test_without_failures_nothing_is_borne():
    assert cost.failing(5.0, 3.0, 0.0, 0.0) == 0 and cost.turn_out(0.0, 0.0) == 1


@given(st.lists(AMOUNTS, min_size=1, max_size=14), st.sampled_from([0, 1, 2]))
def test_rounded_parts_add_up_to_the_rounded_sum(amounts, decimals):
    rounded, step = cost.rounded_to_add_up(amounts, decimals), 10.0**-decimals
    whole = f"{math.fsum(amounts):.{decimals}f}"
    assert f"{math.fsum(rounded):.{decimals}f}" == whole
    # As texts they add up too: in whole steps, without any float between.
    assert sum(int(f"{each:.{decimals}f}".replace(".", "")) for each in rounded) == int(whole.replace(".", ""))
    assert all(abs(one - other) <= step * (1 + 1e-6) for one, other in zip(amounts, rounded))


@given(st.lists(AMOUNTS, min_size=2, max_size=8))
def test_of_two_parts_the_larger_never_shows_less(amounts):
    rounded = cost.rounded_to_add_up(amounts, 2)
    pairs = sorted(zip(amounts, rounded))
    assert all(below[1] <= above[1] for below, above in zip(pairs, pairs[1:]) if below[0] < above[0])


def test_rounding_by_hand():
    assert cost.rounded_to_add_up([1.005, 1.005, 1.99], 2) == [1.01, 1.0, 1.99]
    assert cost.rounded_to_add_up([0.4, 0.3, 0.3], 0) == [1.0, 0.0, 0.0]
    assert cost.rounded_to_add_up([33.4, 33.3, 33.3], 0) == [34.0, 33.0, 33.0]
    assert cost.rounded_to_add_up([0.29, 0.57, 1.15], 2) == [0.29, 0.57, 1.15]
