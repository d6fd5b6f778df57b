"""What to buy of one thing: what it takes, what is on hand, which packs, what is left."""

import math

import pytest
from arithmetic import works_out
from hypothesis import given
from hypothesis import strategies as st

from brimbook.quantity.show import Display
from brimbook.steps.shopping import Pack, Take, Wanted, bought, to_pay, told

KILO, HALF = Pack(1000, 9.0, "1 kg"), Pack(500, 5.0, "500 g")
POINT = Display(decimal="point")


def wanted(*takes, packs=(KILO,), stock=None, measure="mass"):
    return Wanted("Soy wax", "wax", measure, tuple(Take(f"Cup {row}", *take) for row, take in enumerate(takes)), packs, stock)


def figures(made):
    return {figure.key.removeprefix("needs.0."): figure for figure in made.figures}


def test_a_whole_example_by_hand():
    """12 of 200 g with 4 % lost, and 6 of 100 g: 2500 + 600 = 3100; 500 on hand, 2600 missing; 3 kg for 27 leave 400,
    2 kg and 2 of 500 g would cost 28."""
    made = bought(wanted((12, 200.0, 0.96), (6, 100.0, 1.0), packs=(KILO, HALF), stock=500.0), "needs.0", POINT)
    assert (made.need, made.missing, made.buys, made.cost, made.left) == (pytest.approx(3100), pytest.approx(2600), "3 × 1 kg", 27.0, pytest.approx(400))
    shown = {name: (figure.formula, figure.numbers, figure.shown) for name, figure in figures(made).items()}
    assert shown["need"] == ("vessels to make × what one takes ÷ share that turns out, added up", "12 × 200 ÷ 0.96 + 6 × 100", "3.1 kg")
    assert shown["missing"] == ("needed − on hand", "3100 − 500", "2.6 kg")
    assert shown["left"][1:] == ("500 + 3000 − 3100", "400 g")
    assert shown["costs"][1:] == ("3 × 9", "$27.00") and shown["buy"][1:] == ("3 × 1000", "3 × 1 kg")


def test_the_cheapest_packs_are_taken_together():
    made = bought(wanted((1, 1400.0, 1.0), packs=(KILO, HALF)), "needs.0", POINT)
    assert made.buys == "1 × 1 kg + 1 × 500 g" and made.cost == 14.0 and made.left == pytest.approx(100)


def test_enough_on_hand_buys_nothing_and_costs_nothing():
    made = bought(wanted((3, 200.0, 1.0), stock=600.0), "needs.0", POINT)
    assert (made.buys, made.cost, made.left, made.missing) == ("", 0.0, 0.0, 0.0) and set(figures(made)) == {"need", "left"}


def test_the_last_digits_of_a_sum_buy_nothing():
    assert bought(wanted(*[(1, 0.1, 1.0)] * 10, stock=1.0 - 1e-12), "needs.0", POINT).buys == ""
    assert bought(wanted((1, 1000.0 + 1e-7, 1.0)), "needs.0", POINT).buys == "1 × 1 kg"


def test_none_counted_is_as_none_on_hand():
    empty, zero = (bought(wanted((3, 200.0, 1.0), stock=stock), "needs.0", POINT) for stock in (None, 0.0))
    assert empty.buys == zero.buys == "1 × 1 kg" and "missing" not in figures(empty)


def test_without_a_pack_the_bare_amount_is_told():
    made = bought(wanted((3, 200.2, 1.0), packs=(), stock=100.0), "needs.0", POINT)
    assert (made.buys, made.cost, made.left) == ("501 g", None, None) and set(figures(made)) == {"need", "missing"}


def test_without_any_price_the_usual_pack_is_counted():
    made = bought(wanted((3, 200.0, 1.0), packs=(Pack(250, None, "250 g"), Pack(100, None, "100 g"))), "needs.0", POINT)
    assert (made.buys, made.cost, made.left) == ("3 × 250 g", None, pytest.approx(150)) and "costs" not in figures(made)


def test_a_pack_without_a_price_is_passed_over_for_one_that_has_it():
    made = bought(wanted((1, 900.0, 1.0), packs=(Pack(25_000, None, "25 kg"), KILO)), "needs.0", POINT)
    assert made.buys == "1 × 1 kg" and made.cost == 9.0


def test_absurdly_many_packs_are_said_and_the_bare_amount_is_told():
    made = bought(wanted((100_000, 500.0, 1.0), packs=(Pack(1, 0.1, "1 g"),)), "needs.0", POINT)
    assert "more than 10000 packs" in made.fault and made.buys == "50000 kg"
    assert made.cost is None and made.left is None


@pytest.mark.parametrize(("count", "shown"), [(24.0, "24 pieces"), (24.2, "25 pieces"), (1.0, "1 piece")])
def test_pieces_are_whole_needed_up_and_left_down(count, shown):
    made = bought(wanted((1, count, 1.0), packs=(Pack(50, 8.5, "50 pieces"),), measure="pieces"), "needs.0", POINT)
    assert figures(made)["need"].shown == shown
    assert figures(made)["left"].shown == f"{math.floor(50 - count)} pieces"


@pytest.mark.parametrize(("amount", "measure", "display", "up", "shown"), [
    (999.6, "mass", POINT, False, "1000 g"), (1000.0, "mass", POINT, True, "1 kg"), (12_345.6, "mass", POINT, True, "12.35 kg"),
    (12_344.0, "mass", POINT, False, "12.34 kg"), (1500.0, "volume", POINT, False, "1.5 L"), (642.2, "volume", POINT, True, "643 mL"),
    (12_345.6, "mass", Display(decimal="comma"), False, "12,35 kg"), (453.59237 * 2, "mass", Display(mass="lb"), False, "2 lb 0.00 oz"),
    (2.6, "pieces", POINT, False, "2 pieces"), (0.0, "mass", POINT, False, "0 g")])
def test_amounts_are_told_as_one_shops(amount, measure, display, up, shown):
    assert told(amount, measure, display, up) == shown


AMOUNTS = st.floats(0.01, 5000)
PACKS = st.lists(st.tuples(st.sampled_from([50.0, 100.0, 250.0, 453.59237, 1000.0, 5000.0, 25_000.0]), st.one_of(st.none(), st.integers(1, 20_000))),
                 max_size=4)


@given(st.lists(st.tuples(st.integers(1, 40), AMOUNTS, st.floats(0.05, 1)), min_size=1, max_size=5), PACKS,
       st.one_of(st.none(), st.floats(0, 100_000)), st.sampled_from([Display(), Display(mass="oz"), Display(mass="lb", decimal="comma")]),
       st.sampled_from(["mass", "volume", "pieces"]))
def test_what_is_bought_is_enough_and_the_numbers_work_out(takes, packs, stock, display, measure):
    kinds = tuple(Pack(size, None if cents is None else cents / 100, f"{size:g}") for size, cents in packs)
    made = bought(wanted(*takes, packs=kinds, stock=stock, measure=measure), "needs.0", display)
    known: list[str] = []
    for figure in made.figures:
        works_out(figure.to_plain(), display.decimal == "comma")
        assert set(figure.uses) <= set(known)
        known.append(figure.key)
    if made.left is not None:
        assert made.left >= 0
        holds = figures(made)["buy"].value if made.buys else 0.0
        assert (stock or 0.0) + holds - made.need == pytest.approx(made.left, abs=1e-6 * made.need)
    if not made.buys:
        assert made.cost == 0 and (stock or 0.0) >= made.need * (1 - 1e-9)


def test_all_of_it_is_added_up():
    figure = to_pay([("Wax", 27.0, "needs.0.costs"), ("Wick", 8.5, "needs.1.costs")], POINT)
    assert (figure.shown, figure.numbers, figure.uses) == ("$35.50", "27 + 8.5", ("needs.0.costs", "needs.1.costs"))
