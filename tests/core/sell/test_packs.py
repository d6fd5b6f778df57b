"""The cheapest packs: beside trying everything, beside an outside solver, and by what must hold of any list of packs."""

import itertools
import math
import random
import time

import numpy
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import Bounds, LinearConstraint, milp

from brimbook.quantity.error import QuantityError
from brimbook.sell.packs import MOST_PACKS, fewest_money

LISTS = st.lists(st.tuples(st.integers(1, 400), st.integers(1, 5000)), min_size=1, max_size=5)


def tried(need: int, packs: list[tuple[int, int]]) -> tuple[int, int, int, tuple[int, ...]]:
    """Every selection that could matter: cost, what is left over, packs, and counts from the largest pack down, each below zero."""
    order = sorted(range(len(packs)), key=lambda row: -packs[row][0])
    best = None
    for counts in itertools.product(*(range(-(-need // packs[row][0]) + 1) for row in order)):
        holds = sum(count * packs[row][0] for count, row in zip(counts, order))
        if holds >= need:
            cost = sum(count * packs[row][1] for count, row in zip(counts, order))
            told = (cost, holds - need, sum(counts), tuple(-count for count in counts))
            best = told if best is None or told < best else best
    return best


def small(seed: int) -> tuple[int, list[tuple[int, int]]]:
    """A need and up to four kinds of packs of different sizes; prices often follow the size, so that many selections cost the same."""
    chance = random.Random(seed)
    sizes = chance.sample(range(1, 26), chance.randint(1, 4))
    by_size = chance.random() < 0.4
    return chance.randint(1, 45), [(size, size * 3 if by_size else chance.randint(0, 40)) for size in sizes]


@pytest.mark.parametrize("start", range(0, 500, 50))
def test_the_same_as_trying_everything(start):
    for seed in range(start, start + 50):
        need, packs = small(seed)
        found = fewest_money(need, [(float(size), price / 4) for size, price in packs])
        order = sorted(range(len(packs)), key=lambda row: -packs[row][0])
        told = (round(found.cost * 4), round(found.over), sum(found.counts), tuple(-found.counts[row] for row in order))
        assert told == tried(need, packs), (seed, need, packs)


@pytest.mark.parametrize("start", range(0, 100, 20))
def test_no_dearer_than_an_outside_solver_and_no_cheaper(start):
    for seed in range(start, start + 20):
        chance = random.Random(10_000 + seed)
        sizes = chance.sample([50, 100, 113, 227, 250, 454, 500, 907, 1000, 2268, 2500, 5000, 10_000, 25_000], chance.randint(2, 6))
        packs = [(float(size), round(size**chance.uniform(0.75, 0.98) * chance.uniform(0.02, 0.03), 2) or 0.01) for size in sizes]
        need = float(chance.randint(20, 200) * chance.choice(sizes))
        need = min(need, 5000.0 * min(sizes))
        found = fewest_money(need, packs)
        solved = milp(numpy.array([price for _, price in packs]), integrality=numpy.ones(len(packs)), bounds=Bounds(0, numpy.inf),
                      constraints=LinearConstraint(numpy.array([[size for size, _ in packs]]), lb=need), options={"mip_rel_gap": 0})
        assert solved.success and found.bought >= need
        assert found.cost == pytest.approx(solved.fun, abs=1e-6), (seed, need, packs)
        assert found.cost == pytest.approx(math.fsum(count * price for count, (_, price) in zip(found.counts, packs)))


@given(st.integers(1, 3000), LISTS, st.tuples(st.integers(1, 400), st.integers(1, 5000)))
def test_one_more_pack_to_choose_from_never_costs_more(need, packs, more):
    assert fewest_money(need, [*packs, more]).cost <= fewest_money(need, packs).cost


@given(st.integers(1, 3000), LISTS)
def test_never_below_the_best_price_for_its_size_and_never_above_one_kind_alone(need, packs):
    found = fewest_money(need, packs)
    assert found.bought >= need and found.over == found.bought - need
    assert found.cost >= need * min(price / size for size, price in packs) * (1 - 1e-9)
    assert found.cost <= min(math.ceil(need / size) * price for size, price in packs)


@given(st.integers(1, 3000), LISTS, st.randoms(use_true_random=False))
def test_the_order_in_which_packs_are_told_changes_no_cost(need, packs, chance):
    shuffled = chance.sample(packs, len(packs))
    one, other = fewest_money(need, packs), fewest_money(need, shuffled)
    assert (one.cost, one.bought, sum(one.counts)) == (other.cost, other.bought, sum(other.counts))


@pytest.mark.parametrize(("need", "packs", "counts"), [
    (1000, [(250, 5.0), (500, 10.0), (1000, 20.0)], (0, 0, 1)),
    (750, [(250, 5.0), (500, 10.0), (1000, 15.0)], (1, 1, 0)),
    (1000, [(600, 10.0), (500, 10.0)], (0, 2)),
    (10, [(3, 3.0), (4, 4.0), (6, 6.0), (7, 7.0)], (1, 0, 0, 1)),
    (500, [(500, 8.0), (500, 7.0)], (0, 1)),
])
def test_of_what_costs_the_same_the_least_is_left_then_the_fewest_packs_then_the_larger(need, packs, counts):
    assert fewest_money(need, packs).counts == counts


@pytest.mark.parametrize("need", [999.9999999, 1000.0, 1000.0000001])
def test_the_last_digits_of_a_sum_call_for_no_further_pack(need):
    found = fewest_money(need, [(1000.0, 9.0)])
    assert found.counts == (1,) and found.over == pytest.approx(0, abs=1e-6)


def test_a_little_more_than_a_pack_calls_for_another():
    assert fewest_money(1000.01, [(1000.0, 9.0)]).counts == (2,)


@pytest.mark.parametrize("packs", [[(453.59237, 7.0)], [(28.349523125, 1.0)]])
def test_ounces_and_pounds_come_out_whole(packs):
    assert fewest_money(packs[0][0] * 7, packs).counts == (7,)
    assert fewest_money(packs[0][0] * 0.1 * 70, packs).counts == (7,)


def test_nothing_is_bought_of_nothing_and_no_pack_sells_nothing():
    assert fewest_money(0, [(1000, 9.0)]).counts == (0,) and fewest_money(5, []).counts == ()
    assert fewest_money(5, [(0, 1.0), (5, 2.0)]).counts == (0, 1)


@pytest.mark.parametrize("bad", [(-1.0, [(1, 1)]), (math.nan, [(1, 1)]), (1.0, [(-1, 1)]), (1.0, [(1, math.inf)])])
def test_what_is_no_amount_is_refused(bad):
    with pytest.raises(ValueError, match="from 0 up"):
        fewest_money(*bad)


def test_absurdly_many_packs_are_refused_with_a_sentence():
    assert fewest_money(MOST_PACKS * 5, [(5, 1.0)]).counts == (MOST_PACKS,)
    with pytest.raises(QuantityError, match="more than 10000 packs"):
        fewest_money(MOST_PACKS * 5 + 1, [(5, 1.0)])


def test_prices_of_nothing_leave_the_least_over():
    assert fewest_money(700, [(500, 0.0), (250, 0.0)]).counts == (1, 1)


# No two of them come together in less than millions of packs.
ODD = (453.59237, 1000.0, 700.1, 331.7, 2267.96, 911.13)


def test_odd_sizes_for_nothing_still_cost_nothing():
    found = fewest_money(450_000, [(size, 0.0) for size in ODD])
    assert found.cost == 0 and 0 <= found.over < 1 and sum(found.counts) <= MOST_PACKS


def test_packs_that_no_price_list_has_are_refused_before_the_page_waits_long():
    """Prices that follow odd sizes to five decimals: every selection costs nearly the same for what it holds."""
    with pytest.raises(QuantityError, match="cost so nearly the same"):
        fewest_money(450_000, [(size, size) for size in ODD])


def test_the_same_sizes_at_prices_in_cents_are_told():
    found = fewest_money(137_321, [(size, round(size / 100, 2)) for size in ODD])
    assert found.cost >= 137_321 * min(round(size / 100, 2) / size for size in ODD) and found.over < 10


def test_a_long_list_is_quick():
    """Six sizes and some 200 packs; the least of several tries, for a busy machine."""
    packs, spent = [(50, 3.1), (100, 5.9), (250, 13.9), (500, 26.5), (1000, 51.0), (2500, 126.0)], []
    for need in (12_345, 49_990, 99_999, 499_999.5):
        tries = []
        for _ in range(5):
            start = time.perf_counter()
            fewest_money(need, packs)
            tries.append(time.perf_counter() - start)
        spent.append(min(tries))
    assert max(spent) < 0.1
