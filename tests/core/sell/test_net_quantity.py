"""A net weight as printed: never more than there is, and not much less."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.sell import net_quantity

GRAMS = st.floats(1.0, 100_000.0)
# The hair that a typed weight may come back too low by, in steps of its last digit.
HAIR = 1 + 1e-5


@given(GRAMS)
def test_grams_never_overstate_and_lose_less_than_a_step(grams):
    printed = net_quantity.grams_to_print(grams)
    assert printed <= grams * HAIR
    assert printed > grams * (1 - (0.1 if grams < 100 else 0.01)) and printed > 0


@given(GRAMS)
def test_ounces_never_overstate(grams):
    printed = net_quantity.ounces_to_print(grams)
    assert printed <= grams * net_quantity.OUNCES_IN_GRAM * HAIR
    assert printed * 28.349523125 <= grams * (HAIR + 2e-6)


@given(st.floats(28.4, 100_000.0))
def test_ounces_lose_less_than_a_hundredth(grams):
    assert net_quantity.ounces_to_print(grams) > net_quantity.ounces(grams) * 0.99 - 1e-9


@given(GRAMS)
def test_pounds_and_ounces_are_the_ounces(grams):
    told = net_quantity.pounds_and_ounces(grams)
    assert 0 <= told.ounces < 16
    assert told.pounds * 16 + told.ounces == pytest.approx(net_quantity.ounces_to_print(grams), abs=1e-5)


@given(GRAMS, GRAMS)
def test_more_in_it_never_prints_less(one, other):
    small, large = sorted((one, other))
    assert net_quantity.grams_to_print(small) <= net_quantity.grams_to_print(large)
    assert net_quantity.ounces_to_print(small) <= net_quantity.ounces_to_print(large)


@given(GRAMS)
def test_there_are_at_most_three_digits(grams):
    for printed in (net_quantity.grams_to_print(grams) if grams < 1000 else net_quantity.grams_to_print(grams) / 1000,
                    net_quantity.ounces_to_print(grams)):
        told = f"{printed:.9f}".rstrip("0").rstrip(".")
        assert len(told.partition(".")[2]) <= 2
        if printed < 1000:
            assert len(re.sub(r"[.]", "", told).lstrip("0")) <= 3


@pytest.mark.parametrize(("ounces", "pounds", "over"), [(8, 0, 8.0), (12.5, 0, 12.5), (16, 1, 0.0), (20, 1, 4.0), (40, 2, 8.0), (80, 5, 0.0)])
def test_what_was_typed_in_ounces_is_printed_as_it_was_typed(ounces, pounds, over):
    assert net_quantity.pounds_and_ounces(ounces * 28.349523125) == net_quantity.Imperial(pounds, over)


@given(st.lists(st.floats(1, 1e5), min_size=1))
def test_an_average_lies_among_what_was_weighed(weights):
    assert min(weights) * (1 - 1e-12) <= net_quantity.average(weights) <= max(weights) * (1 + 1e-12)


def test_nothing_is_nothing():
    assert net_quantity.down(0.0, 3) == 0.0 and net_quantity.down(-1.0, 3) == 0.0
