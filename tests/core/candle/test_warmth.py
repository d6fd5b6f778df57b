"""Density by temperature, and by a cup."""

import math
import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.candle import warmth

TOLD, AT, EXPANSION = st.floats(0.7, 1.0), st.floats(20, 150), st.floats(0, 0.002)


@given(TOLD, AT, EXPANSION)
def test_where_it_is_told_it_stands(told, at, expansion):
    assert warmth.density_at(told, at, at, expansion) == told


@given(TOLD, AT, AT, AT, EXPANSION)
def test_by_way_of_a_third_temperature_it_is_the_same(told, at, between, to, expansion):
    on_the_way = warmth.density_at(told, at, between, expansion)
    assert warmth.density_at(on_the_way, between, to, expansion) == pytest.approx(warmth.density_at(told, at, to, expansion))


def test_hotter_is_lighter():
    assert warmth.density_at(0.86, 80, 90, 0.00064) < 0.86 < warmth.density_at(0.86, 80, 60, 0.00064)


@given(st.floats(1, 500), st.floats(10, 5000), TOLD)
def test_a_cup_tells_what_is_in_it(empty, volume, density):
    assert warmth.density_of_cup(empty + volume * density, empty, volume) == pytest.approx(density, rel=1e-6)


def test_a_larger_cup_tells_more():
    small, large = (warmth.plus_minus_of_cup(volume * 0.9, volume, 0.8, 1.0) for volume in (100.0, 400.0))
    assert large < small
    assert warmth.plus_minus_of_cup(90.0, 100.0, 0.0, 0.0) == 0.0


def test_the_plus_minus_of_a_cup_holds_the_truth():
    """Seeded cups on a scale with steps of 1 g, their volume off by 1 mL at 95 %."""
    chance, held, count = random.Random(11), 0, 2000
    for _ in range(count):
        density, volume, empty = chance.uniform(0.75, 0.95), chance.uniform(80, 300), chance.uniform(5, 60)
        said = volume + chance.gauss(0, 0.5)
        net = round(empty + density * volume) - round(empty)
        found = warmth.density_of_cup(net, 0.0, said)
        held += abs(found - density) <= warmth.plus_minus_of_cup(net, said, 2 / math.sqrt(6), 1.0)
    assert 0.93 < held / count < 0.98
