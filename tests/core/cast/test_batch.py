"""Splitting a plan into mixes; what a scoop or a shortage changes."""

import math
import time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from brimbook.cast.batch import (MOST_TOGETHER, Mold, batch_factor, divide, most_in_one_mix, number_of, pieces_in_time,
                                 pieces_made, setting_factor)

VOLUMES = st.floats(1.0, 3000.0)
HANDS = st.one_of(st.none(), st.integers(1, 30))
MOLDS = st.lists(st.builds(Mold, st.integers(1, 12), VOLUMES, HANDS), min_size=1, max_size=4).map(tuple)
BOWLS = st.one_of(st.none(), st.floats(20.0, 9000.0))
MOST = st.one_of(st.none(), st.integers(0, 20))


def fits(molds, mixes, bowl, most):
    """Does one of these mixes keep to the bowl, the time and the molds?"""
    return ((bowl is None or mixes.volume(molds) <= bowl * (1 + 1e-6))
            and (most is None or sum(mixes.pieces) <= max(1, most))
            and all(mold.at_hand is None or pieces <= mold.at_hand for mold, pieces in zip(molds, mixes.pieces)))


@given(MOLDS, BOWLS, MOST)
def test_every_piece_is_poured_once_and_no_mix_is_too_large(molds, bowl, most):
    kinds = divide(molds, bowl, most)
    for row, mold in enumerate(molds):
        assert sum(mixes.count * mixes.pieces[row] / mixes.parts for mixes in kinds) == pytest.approx(mold.pieces)
    assert all(mixes.count >= 1 and sum(mixes.pieces) >= 1 and fits(molds, mixes, bowl, most) for mixes in kinds)
    assert len({(mixes.pieces, mixes.parts) for mixes in kinds}) == len(kinds)


@given(st.integers(1, 400), VOLUMES, HANDS, BOWLS, MOST)
def test_pieces_of_one_mold_are_spread_evenly_over_the_least_number_of_mixes(pieces, volume, at_hand, bowl, most):
    mold = Mold(pieces, volume, at_hand)
    kinds = divide((mold,), bowl, most)
    if bowl is not None and volume > bowl * (1 + 1e-9):
        assert [mixes.parts for mixes in kinds] == [math.ceil(volume / bowl - 1e-9)]
        return
    sizes = [mixes.pieces[0] for mixes in kinds]
    assert max(sizes) - min(sizes) <= 1
    fewest = next(number for number in range(1, pieces + 1)
                  if math.ceil(pieces / number) <= most_in_one_mix(mold, bowl, most))
    assert number_of(kinds) == fewest


@given(MOLDS, st.floats(20.0, 5000.0), st.floats(1.0, 2.0))
def test_one_mold_never_needs_more_mixes_of_a_larger_bowl(molds, bowl, larger):
    one = molds[:1]
    assert number_of(divide(one, bowl * larger, None)) <= number_of(divide(one, bowl, None))


@pytest.mark.parametrize(("molds", "bowl", "most", "told"), [
    ((Mold(10, 300.0),), None, None, [(1, (10,), 1)]),
    ((Mold(10, 300.0),), 3000.0, None, [(1, (10,), 1)]),
    ((Mold(10, 300.0),), 2999.0, None, [(2, (5,), 1)]),
    ((Mold(10, 300.0),), 1300.0, None, [(1, (4,), 1), (2, (3,), 1)]),
    ((Mold(10, 300.0),), 1300.0, 2, [(5, (2,), 1)]),
    ((Mold(10, 300.0, 1),), 1300.0, 2, [(10, (1,), 1)]),
    ((Mold(2, 300.0),), 299.0, None, [(4, (1,), 2)]),
    ((Mold(2, 300.0),), 300.0 - 1e-12, None, [(2, (1,), 1)]),
    ((Mold(3, 100.0),), None, 0, [(3, (1,), 1)]),
    ((Mold(2, 300.0), Mold(2, 80.0)), 400.0, None, [(2, (1, 1), 1)]),
    ((Mold(3, 300.0), Mold(4, 80.0)), 700.0, None, [(1, (2, 0), 1), (1, (1, 4), 1)]),
    ((Mold(1, 900.0), Mold(4, 80.0)), 400.0, None, [(1, (0, 4), 1), (3, (1, 0), 3)]),
])
def test_mixes_by_hand(molds, bowl, most, told):
    assert [(mixes.count, mixes.pieces, mixes.parts) for mixes in divide(molds, bowl, most)] == told


def test_many_pieces_of_several_molds_are_mixed_mold_by_mold():
    molds = (Mold(MOST_TOGETHER, 100.0), Mold(MOST_TOGETHER, 50.0))
    assert all(sum(1 for pieces in mixes.pieces if pieces) == 1 for mixes in divide(molds, 1000.0, None))


def test_the_largest_record_is_split_in_a_moment():
    start = time.perf_counter()
    divide(tuple(Mold(10_000, 100.0 + row) for row in range(900)), 100.0, 1)
    divide(tuple(Mold(1, 100.0 + row, 1) for row in range(MOST_TOGETHER)), 320.0, 2)
    divide((Mold(1, 1000.0), Mold(MOST_TOGETHER - 1, 999.0)), 1000.0, None)
    assert time.perf_counter() - start < 5


@given(st.floats(-20, 60), st.floats(0, 50))
def test_setting_goes_faster_on_a_warmer_bench(celsius, reference):
    assert setting_factor(celsius, reference) > setting_factor(celsius + 1, reference)
    assert setting_factor(celsius, reference) * setting_factor(reference, celsius) == pytest.approx(1)


def test_six_hours_at_70_become_three_at_90_and_twelve_at_50_fahrenheit():
    in_celsius = {fahrenheit: (fahrenheit - 32) / 1.8 for fahrenheit in (50, 70, 90)}
    assert 6 * setting_factor(in_celsius[90], in_celsius[70]) == pytest.approx(3)
    assert 6 * setting_factor(in_celsius[50], in_celsius[70]) == pytest.approx(12)


@pytest.mark.parametrize(("working", "mixing", "pouring", "pieces"), [
    (900, 180, 60, 12), (900, 180, 61, 11), (240, 180, 60, 1), (239, 180, 60, 0), (60, 180, 60, 0)])
def test_pieces_in_the_working_time(working, mixing, pouring, pieces):
    assert pieces_in_time(working, mixing, pouring) == pieces


@given(MOLDS, st.floats(0, 1e5), st.floats(0, 1e4))
def test_more_mix_never_makes_fewer_whole_sets(molds, volume, more):
    sets = math.gcd(*(mold.pieces for mold in molds))

    def whole(mix):
        return min(made * sets // mold.pieces for made, mold in zip(pieces_made(molds, mix), molds))

    assert whole(volume + more) >= whole(volume)


@given(MOLDS, st.floats(0, 1e5))
def test_the_pieces_made_never_take_more_than_there_is(molds, volume):
    made = pieces_made(molds, volume)
    assert all(pieces >= 0 for pieces in made)
    assert sum(pieces * mold.volume for pieces, mold in zip(made, molds)) <= volume * (1 + 1e-6) + 1e-6


@given(MOLDS)
def test_just_enough_makes_every_piece(molds):
    assert pieces_made(molds, math.fsum(mold.pieces * mold.volume for mold in molds)) == tuple(mold.pieces for mold in molds)


def test_sets_come_first_then_pieces_in_order():
    cups_and_lids = (Mold(4, 300.0), Mold(8, 50.0))
    assert [pieces_made(cups_and_lids, volume) for volume in (0, 49, 299, 399, 400, 800, 1150, 1600)] == [
        (0, 0), (0, 0), (0, 2), (1, 1), (1, 2), (2, 4), (3, 5), (4, 8)]


PLANNED = {"powder": 1000.0, "others.0": 400.0, "water": 250.0}


@pytest.mark.parametrize(("weighed", "factor"), [
    ({"powder": 1100.0}, 1.1), ({"powder": 900.0}, 0.9), ({"others.0": 300.0}, 0.75), ({"water": 300.0}, 1.2),
    ({"water": 200.0}, 1.0), ({"powder": 900.0, "water": 250.0}, 1.0), ({"powder": 900.0, "water": 200.0}, 0.9),
    ({"powder": 1000.0, "others.0": 404.0}, 1.01),
])
def test_the_largest_share_of_its_plan_rules(weighed, factor):
    assert batch_factor(PLANNED, weighed) == pytest.approx(factor)


@given(st.dictionaries(st.sampled_from(list(PLANNED)), st.floats(0.001, 1e5), min_size=1))
@settings(max_examples=200)
def test_nothing_has_to_be_taken_out_of_the_bowl(weighed):
    factor = batch_factor(PLANNED, weighed)
    assert all(PLANNED[name] * factor >= grams * (1 - 1e-12) for name, grams in weighed.items())
