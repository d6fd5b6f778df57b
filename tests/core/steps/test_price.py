"""What to ask: a whole example by hand, and what must hold for any."""

import pytest
from arithmetic import works_out
from hypothesis import given
from hypothesis import strategies as st
from vessels import DISPLAYS, bent_vessels, figures, full_vessel, put, sheet, vessel

from brimbook.record import blank
from brimbook.steps.price import NAMES

KEYS = tuple(f"selling.0.{name}" for name in NAMES)
ALL = {"margin": "50 %", "wholesale_margin": "20 %", "tax": "20 %", "fee_share": "5 %", "fee_each": "0.30", "price_step": "0.5",
       "shop_margin": "50 %", "fixed": "100"}


def sold(**texts):
    """A vessel whose cost is 8.00: work of half an hour at 16."""
    record = vessel(selling__0__hour_rate="16", selling__0__labor__casting="30 min")
    for name, text in texts.items():
        put(record, f"selling.0.{name}", text)
    return record


def scented(**texts):
    """With 5 kg of wax for 40 and 500 g of fragrance for 30."""
    record = sold(**texts)
    for path, text in {"wax.pack_weight": "5 kg", "wax.pack_price": "40", "fragrance.pack_weight": "500 g", "fragrance.pack_price": "30"}.items():
        put(record, f"wells.0.{path}", text)
    return record


def prices(record, **how):
    return {key.removeprefix("selling.0."): figure for key, figure in figures(record, **how).items() if key in KEYS}


def told(record, **how):
    return {name: figure["shown"] for name, figure in prices(record, **how).items()}


def faults(record):
    return {fault["path"]: fault["sentence"] for fault in sheet(record)["faults"]}


def test_a_whole_example_by_hand():
    """Cost 8, fee 0.30, fees 5 %, tax 20 %.

    Nothing is left at 8.30 ÷ (1 ÷ 1.2 − 0.05) = 10.5957. For a margin of 50 %: 8.30 ÷ (0.5 ÷ 1.2 − 0.05) = 22.636, up to 23.
    Of 23.00 tax takes 3.8333, fees 1.15 and 0.30: 17.7167 − 8 = 9.7167 is left, 50.70 % of 19.1667 and 121.46 % of 8.
    100 ÷ 9.7167 = 10.29: 11 sales. A shop pays 8 ÷ 0.8 = 10, of which 2 is left, 50 sales; it asks 10 ÷ 0.5 × 1.2 = 24.
    """
    shown = told(sold(**ALL))
    assert shown == {"least": "$10.60", "exact": "$22.64", "retail": "$23.00", "left": "$9.72", "margin": "50.7 %", "markup": "121.5 %",
                     "break_even": "11 vessels", "wholesale_exact": "$10.00", "wholesale": "$10.00", "wholesale_left": "$2.00",
                     "wholesale_margin": "20 %", "wholesale_markup": "25 %", "wholesale_break_even": "50 vessels", "shop_price": "$24.00"}


def test_without_tax_and_fees_the_working_says_nothing_of_them():
    shown = prices(sold(margin="60 %"))
    assert shown["exact"]["working"]["numbers"] == "8 ÷ (1 − 0.6) = 20 $ ≈ $20.00"
    assert shown["left"]["working"]["numbers"] == "20 − 8 = 12 $ ≈ $12.00"


def test_a_markup_of_150_percent_is_a_margin_of_60():
    by_markup, by_margin = told(sold(by="markup", markup="150 %")), told(sold(margin="60 %"))
    assert by_markup["retail"] == by_margin["retail"] == "$20.00"
    assert (by_markup["margin"], by_markup["markup"]) == (by_margin["margin"], by_margin["markup"]) == ("60 %", "150 %")


@pytest.mark.parametrize(("step", "retail"), [("0.5", "$23.00"), ("0.01", "$22.64"), ("1", "$23.00"), ("5", "$25.00"), ("", "$23.00")])
def test_a_price_is_rounded_up_to_the_maker_s_steps(step, retail):
    assert told(sold(**{**ALL, "price_step": step}))["retail"] == retail


def test_a_currency_without_small_coins_goes_in_larger_steps():
    assert told(sold(margin="40 %"), currency="JPY")["retail"] == "20 JPY"
    assert told(sold(margin="40 %", price_step="1"), currency="JPY")["retail"] == "14 JPY"


def test_the_maker_s_own_price_is_told_by_what_it_leaves():
    shown = told(sold(**ALL, asked="18"))
    assert shown["asked"] == "$18.00" and shown["retail"] == "$23.00"
    # 18 ÷ 1.2 − 0.90 − 0.30 − 8 = 5.80, of 15.00.
    assert (shown["left"], shown["margin"], shown["break_even"]) == ("$5.80", "38.7 %", "18 vessels")


def test_a_loss_is_warned_of_and_earns_nothing_back():
    shown = prices(sold(asked="7", fixed="100"))
    assert shown["left"]["notes"] == ["At $7.00 each sale loses $1.00, so no number of sales earns back the fixed costs."]
    assert "break_even" not in shown and shown["left"]["value"] == pytest.approx(-1)


def test_a_price_that_leaves_nothing_is_told():
    assert prices(sold(asked="8"))["left"]["notes"] == ["At $8.00 nothing is left of a sale."]


def test_a_maker_below_the_shop_is_warned():
    below, above = (prices(sold(wholesale_margin="20 %", asked=asked))["shop_price"]["notes"] for asked in ("19.50", "20"))
    assert len(below) == 1 and "$19.50, is below the shop's, $20.00" in below[0] and above == []


def test_without_a_wholesale_margin_nothing_is_told_of_shops():
    assert not [name for name in told(sold(margin="50 %")) if "wholesale" in name or "shop" in name]


@pytest.mark.parametrize(("texts", "path"), [
    ({"margin": "95 %", "fee_share": "10 %"}, "margin"), ({"margin": "60 %", "fee_share": "35 %", "tax": "20 %"}, "margin"),
    ({"margin": "10 %", "fee_share": "60 %", "tax": "100 %"}, "fee_share"), ({"by": "markup", "markup": "50 %", "fee_share": "50 %", "tax": "100 %"}, "fee_share")])
def test_what_takes_the_whole_price_is_said_at_its_field(texts, path):
    record = sold(**texts)
    assert list(faults(record)) == [f"selling.0.{path}"] and "take the whole price" in faults(record)[f"selling.0.{path}"]
    assert "retail" not in prices(record)


def test_a_shop_s_margin_is_faulted_by_itself():
    assert "wholesale" in prices(sold(margin="99 %", fee_share="5 %", wholesale_margin="20 %"))


def test_while_some_of_the_cost_is_missing_every_price_is_told_to_be_too_low():
    record = sold(margin="50 %")
    assert "too low" in prices(record)["least"]["notes"][0]


def test_a_gram_more_of_fragrance_by_hand():
    """0.06 a gram, less 0.86 mL's worth of wax of 0.008 a gram; 10 % of the fills fail."""
    shown = prices(scented(candle_failures="10 %", margin="50 %"))
    assert shown["gram"]["value"] == pytest.approx(0.06) and shown["gram_of_wax"]["value"] == pytest.approx(0.008)
    assert shown["gram_of_fragrance"]["working"]["numbers"].startswith("(0.06 − 0.008 × 0.86 ÷ 1) ÷ (1 − 0.1) = ")
    assert shown["gram_of_fragrance"]["value"] == pytest.approx((0.06 - 0.008 * 0.86) / 0.9)
    assert shown["gram_in_price"]["value"] == pytest.approx(shown["gram_of_fragrance"]["value"] / 0.5)


def test_a_gram_in_the_price_is_what_the_price_rises_by():
    """With a gram's worth of cost more, the price before it is rounded is so much higher."""
    for by in ({"margin": "40 %"}, {"by": "markup", "markup": "120 %"}):
        texts = {**by, "tax": "19 %", "fee_share": "4 %", "fee_each": "0.2"}
        before, more = prices(scented(**texts)), prices(scented(**texts, other_costs="0.0524"))
        rise = more["exact"]["value"] - before["exact"]["value"]
        assert rise / 0.0524 == pytest.approx(before["gram_in_price"]["value"] / before["gram_of_fragrance"]["value"])


def test_scents_are_weighted_by_what_is_used_of_each():
    record = scented()
    for row, (parts, price) in enumerate((("3", "15"), ("1", "40"))):
        put(record, f"wells.0.fragrance.scents.{row}", {"name": f"Scent {row}", "parts": parts, "pack_weight": "100 g", "pack_price": price})
    assert prices(record)["gram"]["value"] == pytest.approx((3 * 0.15 + 1 * 0.40) / 4)


def test_without_a_price_of_wax_its_room_is_not_counted():
    record = scented()
    del record["wells"][0]["wax"]["pack_price"]
    shown = prices(record)
    assert "gram_of_wax" not in shown and "is not counted against it" in shown["gram_of_fragrance"]["says"]
    assert "gram" not in prices(sold())


@pytest.mark.parametrize("how", [*DISPLAYS, {"currency": "JPY"}, {"currency": "€", "decimal": "comma"}], ids=str)
@pytest.mark.parametrize("record", [sold(**ALL), sold(**ALL, asked="9.99"), scented(**ALL), scented(by="markup", markup="180 %", tax="7 %"),
                                    *blank.demos(), full_vessel()], ids=lambda record: record["name"] or "example")
def test_the_numbers_work_out_under_any_settings(record, how):
    shown = figures(record, **how)
    for key in KEYS:
        if key in shown:
            works_out(shown[key], how.get("decimal") == "comma")
            assert all(list(shown).index(used) < list(shown).index(key) for used in shown[key]["working"]["uses"])


@given(st.integers(1, 100_000), st.integers(0, 90), st.integers(0, 25), st.integers(0, 30), st.integers(0, 300),
       st.sampled_from(["0.01", "0.25", "0.5", "1", "10"]))
def test_the_margin_is_never_missed_and_the_step_below_would_miss_it(cents, margin, tax, fee, each, step):
    record = sold(margin=f"{margin} %", tax=f"{tax} %", fee_share=f"{fee} %", fee_each=f"{each / 100}", price_step=step)
    put(record, "selling.0.hour_rate", f"{cents / 50}")
    shown = prices(record)
    if "retail" in shown:
        assert shown["margin"]["value"] >= margin / 100 - 1e-6
        works_out(shown["left"])
        below = shown["retail"]["value"] - float(step)
        assert below < shown["exact"]["value"] <= shown["retail"]["value"] * (1 + 1e-8)


@given(bent_vessels())
def test_a_bent_vessel_tells_only_prices_that_work_out(record):
    for name, figure in prices(record).items():
        assert works_out(figure), name
