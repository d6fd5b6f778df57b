"""Areas to be coated, and what the coats take."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.cast.coating import coating, round_wall_and_floor, upright_wall_and_floor

SIZES = st.floats(0.1, 3000.0)


@given(SIZES, SIZES)
def test_a_straight_round_wall_is_the_same_both_ways(diameter, height):
    assert round_wall_and_floor(diameter, diameter, height) == pytest.approx(
        upright_wall_and_floor(math.pi * diameter, height))


@given(SIZES, SIZES, SIZES, st.floats(1.0, 2.0))
def test_a_larger_vessel_never_has_less_area(top, bottom, height, larger):
    area = round_wall_and_floor(top, bottom, height)
    assert round_wall_and_floor(top, bottom, height * larger) >= area
    assert round_wall_and_floor(top * larger, bottom * larger, height * larger) == pytest.approx(area * larger**2)


@given(SIZES, SIZES, SIZES)
def test_a_rectangle_never_has_more_than_is_told_for_its_outline(length, width, height):
    exact = 2 * (length + width) * height + length * width
    assert exact <= upright_wall_and_floor(2 * (length + width), height) * (1 + 1e-12)


def test_a_flat_ring_is_the_limit_of_a_leaning_wall():
    assert round_wall_and_floor(100, 60, 1e-9) == pytest.approx(math.pi / 4 * 100**2)


@given(st.floats(1, 1e7), st.floats(0.1, 100), st.integers(0, 20))
def test_coats_add_up(area, coverage, coats):
    assert coating(area, coverage, coats) == pytest.approx(coats * coating(area, coverage, 1))


def test_a_square_meter_at_eight_takes_an_eighth_of_a_liter():
    assert coating(1e6, 8.0, 1) == pytest.approx(125)
