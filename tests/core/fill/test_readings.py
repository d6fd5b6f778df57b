"""Several readings: mean, spread, the stray one, and how ± are put together."""

import math
import statistics

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.fill import readings

GRAMS = st.lists(st.floats(1, 1e4), min_size=1, max_size=25)


@given(GRAMS)
def test_mean_and_spread_are_those_of_the_standard_library(values):
    assert readings.mean(values) == pytest.approx(statistics.fmean(values), rel=1e-12)
    exact = statistics.stdev(values) if len(values) > 1 else 0.0
    assert readings.standard_deviation(values) == pytest.approx(exact, rel=1e-9, abs=1e-9)


@given(GRAMS)
def test_the_order_of_the_readings_does_not_matter(values):
    assert readings.spread_of_mean(values) == pytest.approx(readings.spread_of_mean(values[::-1]), rel=1e-9, abs=1e-12)


def test_one_reading_has_no_spread_of_its_own():
    assert readings.standard_deviation([640.0]) == readings.spread_of_mean([640.0]) == 0.0


def test_three_readings_by_hand():
    """311, 312, 313: standard deviation 1, Student's t for 2 degrees of freedom 4.303, over √3."""
    assert readings.standard_deviation([311.0, 312.0, 313.0]) == 1.0
    assert readings.spread_of_mean([311.0, 312.0, 313.0]) == pytest.approx(4.303 / math.sqrt(3))


def test_more_readings_of_the_same_spread_are_surer():
    widths = [readings.spread_of_mean([639.0, 641.0] * pairs) for pairs in range(1, 15)]
    assert widths == sorted(widths, reverse=True)


def test_a_scale_s_step_by_hand():
    assert readings.readability_of_difference(1.0) == pytest.approx(2 * math.sqrt(2) / math.sqrt(12))
    assert readings.readability_of_difference(0.1) == pytest.approx(0.0816, abs=5e-5)


@given(st.lists(st.floats(0, 1e4), min_size=1, max_size=5))
def test_a_combined_plus_minus_lies_between_the_largest_part_and_the_sum(parts):
    assert max(parts) * (1 - 1e-12) <= readings.combine(*parts) <= sum(parts) * (1 + 1e-12)


def test_independent_parts_add_as_squares():
    assert readings.combine(3.0, 4.0, 12.0) == 13.0
    assert readings.combine(5.0, 0.0, 0.0) == 5.0


@pytest.mark.parametrize(("values", "place"), [
    ([640.0, 641.0, 702.0], 2), ([702.0, 640.0, 641.0], 0), ([640.0, 580.0, 641.0, 640.0], 1),
    ([640.0, 640.0, 641.0], None),
    ([640.0, 640.0, 640.0], None), ([640.0, 702.0], None), ([640.0], None), ([600.0, 640.0, 680.0], None),
    ([640.0, 640.0, 643.0], None), ([640.0, 640.0, 646.0], 2),
])
def test_the_stray_reading(values, place):
    assert readings.stray(values, 1.0) == place


def test_a_coarse_scale_makes_no_strays_of_its_own_steps():
    assert readings.stray([640.0, 640.0, 645.0], 5.0) is None
    assert readings.stray([640.0, 640.0, 645.0], 0.1) == 2


@given(st.lists(st.floats(1, 1e4), min_size=0, max_size=30), st.floats(0.01, 10))
def test_at_most_one_reading_is_stray_and_it_is_the_farthest(values, readability):
    place = readings.stray(values, readability)
    if place is not None:
        middle = readings.mean(values)
        assert abs(values[place] - middle) == max(abs(value - middle) for value in values)
        assert abs(values[place] - middle) > 3 * readability


def test_the_tables_fall_and_rise_as_such_tables_do():
    assert list(readings.STUDENT_T) == sorted(readings.STUDENT_T, reverse=True)
    assert list(readings.GRUBBS) == sorted(readings.GRUBBS)
    assert (len(readings.STUDENT_T), len(readings.GRUBBS)) == (19, 18)
    assert sum(readings.STUDENT_T) == pytest.approx(56.386, abs=1e-9)
    assert sum(readings.GRUBBS) == pytest.approx(40.4196, abs=1e-9)
