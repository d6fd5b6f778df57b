"""The arithmetic of prices: margin, markup, fees, tax, whole steps, sales that earn back what is fixed, and a gram of fragrance."""

import math
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from brimbook.sell import price

COST = st.floats(0.01, 10_000)
TAX, FEE, EACH = st.floats(0, 1), st.floats(0, 0.4), st.floats(0, 20)
MARGIN, MARKUP = st.floats(0, 0.95), st.floats(0, 50)


def test_a_sale_counted_out_by_hand():
    """24.00 paid: tax 4.00 of it, 1.20 to the card, 0.30 for the sale; 8.00 made it: 10.50 is left of 20.00."""
    left = price.left_of(24.0, 8.0, 0.2, 0.05, 0.3)
    assert left == pytest.approx(10.5)
    assert price.margin_of(24.0, left, 0.2) == pytest.approx(0.525) and price.markup_of(8.0, left) == pytest.approx(1.3125)
    assert price.by_margin(8.0, 0.525, 0.2, 0.05, 0.3) == pytest.approx(24.0)
    assert price.by_markup(8.0, 1.3125, 0.2, 0.05, 0.3) == pytest.approx(24.0)


@given(COST, MARGIN, TAX, FEE, EACH)
def test_the_margin_asked_for_is_what_is_left(cost, margin, tax, share, each):
    assume(price.room(margin, tax, share) > 0.01)
    asked = price.by_margin(cost, margin, tax, share, each)
    left = price.left_of(asked, cost, tax, share, each)
    assert left == pytest.approx(margin * asked / (1 + tax), abs=1e-9 * asked)
    assert price.margin_of(asked, left, tax) == pytest.approx(margin, abs=1e-9)


@given(COST, MARKUP, TAX, FEE, EACH)
def test_the_markup_asked_for_is_what_is_left(cost, markup, tax, share, each):
    assume(price.room(0.0, tax, share) > 0.01)
    asked = price.by_markup(cost, markup, tax, share, each)
    assert price.left_of(asked, cost, tax, share, each) == pytest.approx(markup * cost, rel=1e-9, abs=1e-9 * asked)


@given(COST, MARGIN)
def test_without_tax_and_fees_a_margin_is_its_markup(cost, margin):
    assert price.by_margin(cost, margin) == pytest.approx(price.by_markup(cost, margin / (1 - margin)))


@given(COST, TAX, FEE, EACH)
def test_with_no_margin_nothing_is_left(cost, tax, share, each):
    assume(price.room(0.0, tax, share) > 0.01)
    asked = price.by_margin(cost, 0.0, tax, share, each)
    assert price.left_of(asked, cost, tax, share, each) == pytest.approx(0, abs=1e-9 * asked)
    assert price.left_of(asked * 1.01, cost, tax, share, each) > 0 > price.left_of(asked * 0.99, cost, tax, share, each)


@pytest.mark.parametrize("taken", [(0.6, 0.0, 0.4), (0.5, 0.0, 0.6), (0.0, 1.0, 0.5)])
def test_no_price_is_high_enough_where_all_of_it_is_taken(taken):
    with pytest.raises(ValueError, match="whole price"):
        price.by_margin(4.0, *taken)


def test_a_markup_is_impossible_only_by_tax_and_fees():
    assert price.by_markup(4.0, 100.0) == 404.0
    with pytest.raises(ValueError, match="whole price"):
        price.by_markup(4.0, 0.1, 1.0, 0.5)


@given(st.integers(1, 10**6), st.sampled_from(["0.01", "0.05", "0.1", "0.25", "0.5", "1", "5", "10"]))
def test_a_price_goes_up_to_the_next_step_and_no_further(cents, step):
    steps = price.steps_up(cents / 100, float(step))
    exact = Fraction(cents, 100) / Fraction(step)
    assert steps == math.ceil(exact)


@given(st.floats(0.01, 1e6), st.floats(0.01, 1e4))
def test_the_sales_that_earn_back_are_enough_and_one_fewer_is_not(fixed, left):
    sales = price.sales_to_earn(fixed, left)
    assert sales * left >= fixed * (1 - 1e-8) and (sales - 1) * left < fixed


@pytest.mark.parametrize("left", [0.0, -1.0])
def test_a_loss_earns_nothing_back(left):
    with pytest.raises(ValueError, match="nothing is left"):
        price.sales_to_earn(100.0, left)


@given(COST, st.floats(0, 0.9), TAX)
def test_a_shop_keeps_its_margin_of_what_it_asks_before_tax(wholesale, margin, tax):
    asked = price.shop_price(wholesale, margin, tax)
    assert asked / (1 + tax) - wholesale == pytest.approx(margin * asked / (1 + tax))


def test_a_gram_of_a_blend_is_between_its_scents():
    blend = price.price_of_gram(((10.0, 100.0, 15.0), (30.0, 250.0, 20.0)))
    assert blend == pytest.approx((10 * 0.15 + 30 * 0.08) / 40) and 0.08 < blend < 0.15


def test_a_gram_more_of_fragrance_by_two_pours():
    """100 mL to the line: 80 g wax of 0.9 g/mL and the rest of its room fragrance of 1 g/mL; then with one gram more of it."""
    def costs(oil):
        return oil * 0.15 + (100 - oil / 1.0) * 0.9 * 0.01
    assert price.gram_in_place_of_wax(0.15, 0.01, 1.0, 0.9) == pytest.approx(costs(12) - costs(11))
    assert price.gram_in_place_of_wax(0.15, 0.01, 1.0, 0.9, 0.2) == pytest.approx((costs(12) - costs(11)) / 0.8)
    assert price.gram_in_place_of_wax(0.15, 0.0, 1.0, 1.0) == 0.15
