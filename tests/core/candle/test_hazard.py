"""Flash points and sensitizers by CLP: every threshold exactly, from both sides."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.candle import hazard

JUST = 1e-6


@pytest.mark.parametrize(("flash", "below", "at"), [(23.0, 2, 3), (60.0, 3, 3)])
def test_a_category_begins_at_its_flash_point(flash, below, at):
    assert hazard.flammable_category(flash - JUST) == below and hazard.flammable_category(flash) == at


def test_above_sixty_degrees_there_is_no_category():
    assert hazard.flammable_category(60 + JUST) == 0


def test_an_open_cup_is_taken_for_the_lowest_that_it_may_mean():
    assert hazard.closed_cup(70, "open") == 60 and hazard.closed_cup(70, "closed") == 70


@pytest.mark.parametrize(("category", "classifies"), [("1A", 0.001), ("1", 0.01), ("1B", 0.01)])
def test_a_sensitizer_is_named_from_a_tenth_of_what_classifies(category, classifies):
    assert hazard.classifies_from(category) == classifies
    assert hazard.named_from(category) == pytest.approx(classifies / 10, rel=1e-15)


@given(st.sampled_from(["1", "1A", "1B"]), st.floats(1e-6, 1))
def test_a_limit_of_its_own_stands_instead(category, specific):
    assert hazard.classifies_from(category, specific) == specific
    assert hazard.named_from(category, specific) == specific / 10


@given(st.integers(1, 1000), st.integers(1, 1000))
def test_a_product_of_typed_shares_reaches_what_it_comes_to_on_paper(of_scent, of_candle):
    """Tenths of a percent of tenths of a percent, whatever binary fractions make of them."""
    share, limit = (of_scent / 1000) * (of_candle / 1000), of_scent * of_candle / 1_000_000
    assert hazard.reaches(share, limit) and not hazard.exceeds(share, limit)


def test_a_quarter_of_four_percent_is_one_percent():
    assert hazard.reaches(0.25 * 0.04, 0.01) and hazard.reaches(0.1 * 0.03 * (1 / 3), 0.001)


@given(st.floats(1e-6, 1))
def test_a_millionth_below_a_limit_is_below_and_above_is_above(limit):
    assert not hazard.reaches(limit * (1 - JUST), limit) and not hazard.exceeds(limit, limit)
    assert hazard.exceeds(limit * (1 + JUST), limit) and hazard.reaches(math.nextafter(limit, 2), limit)
