"""The card of the price: what it asks, its table, and what margin and markup mean."""

import pytest
from hypothesis import given
from vessels import ask, bent_vessels, put, vessel

from brimbook.record import blank
from brimbook.record.fields import LEAVES
from brimbook.record.link import from_fragment
from brimbook.record.tree import parts

OF_THE_PRICE = {"by", "margin", "markup", "wholesale_margin", "wholesale_markup", "shop_margin", "fee_share", "fee_each", "tax", "price_step",
                "asked", "fixed"}


def sold(**texts):
    """A vessel whose cost is 8.00: work of half an hour at 16."""
    record = vessel(selling__0__hour_rate="16", selling__0__labor__casting="30 min")
    for name, text in texts.items():
        put(record, f"selling.0.{name}", text)
    return record


def price_card(record, **how):
    page = ask("work_out", record=record, settings=how, materials=[], wicks=[])["sheet"]
    return next(card for card in page["cards"] if card["id"] == "price")


def cells(card):
    return [row["cells"] for row in card["table"]["rows"]]


def asked(card):
    return {field["path"].removeprefix("selling.0.") for field in [*card["fields"], *card["more"]]}


def test_it_waits_for_a_cost_then_for_a_margin_then_for_a_mended_entry():
    assert price_card(blank.blank())["waiting"] == "Type what a pack of anything costs first."
    card = price_card(sold())
    assert card["waiting"] == "Type a margin." and [each["label"] for each in card["answer"]] == ["Nothing is left at"]
    assert price_card(sold(margin="x"))["waiting"] == "Mend the entry that is marked."


def test_the_answer_is_the_price_then_the_shop_s_then_how_many_to_sell():
    card = price_card(sold(margin="60 %", wholesale_margin="20 %", fixed="100"))
    figures = {figure["key"]: figure for figure in card["figures"]}
    assert [(figures[key]["label"], figures[key]["shown"]) for key in card["large"]] == [
        ("Ask for it", "$20.00"), ("Ask of a shop", "$10.00"), ("Sell to break even", "9 vessels")]
    assert [each["label"] for each in card["answer"]] == ["Ask for it"]
    assert price_card(sold(margin="60 %", asked="18"))["answer"][0] == {"label": "You ask now", "shown": "$18.00", "key": "selling.0.asked"}


def test_the_table_tells_each_price_both_ways():
    assert cells(price_card(sold(margin="60 %", wholesale_margin="20 %"))) == [
        ["Worked out", "$20.00", "$12.00", "60 %", "150 %"], ["To a shop", "$10.00", "$2.00", "20 %", "25 %"]]
    assert cells(price_card(sold(margin="60 %", asked="16"))) == [
        ["You ask now", "$16.00", "$8.00", "50 %", "100 %"], ["Worked out", "$20.00", "", "", ""]]


def test_it_says_what_margin_and_markup_and_fees_are_shares_of():
    notes = " ".join(price_card(sold(margin="60 %"))["notes"])
    assert "margin is what is left as a share of the price before tax" in notes and "a share of the cost" in notes
    assert "Fees are a share of all that a buyer pays, tax too" in notes


@pytest.mark.parametrize(("by", "other"), [("margin", "markup"), ("markup", "margin")])
def test_only_what_the_price_comes_from_is_asked(by, other):
    assert asked(price_card(sold(by=by))) == OF_THE_PRICE - {other, f"wholesale_{other}"}


def test_every_leaf_of_the_price_is_asked_and_none_of_the_cost():
    assert OF_THE_PRICE <= {path.removeprefix("selling.*.") for path in LEAVES if path.startswith("selling.")}
    assert asked(price_card(sold())) | asked(price_card(sold(by="markup"))) == OF_THE_PRICE


def test_what_stands_in_for_the_steps_follows_the_currency():
    def note(**how):
        return next(field["note"] for field in price_card(sold(), **how)["more"] if field["path"].endswith("price_step"))
    assert note() == "Empty, so 0.5 is taken." and note(currency="JPY") == "Empty, so 10 is taken."


def test_a_margin_that_takes_all_is_told_beside_its_field_and_kept():
    field = next(each for each in price_card(sold(margin="95 %", fee_share="10 %"))["fields"] if each["path"] == "selling.0.margin")
    assert field["value"] == "95 %" and "take the whole price" in field["fault"]


def test_nothing_of_the_price_goes_into_a_link():
    record = sold(margin="60 %", wholesale_margin="20 %", asked="18", fixed="100", fee_share="5 %", fee_each="0.3", tax="20 %")
    link = ask("share", record=record, settings={}, address="https://example.org/")["link"]
    kept = {path for path, part in parts(from_fragment(link.partition("#")[2])) if isinstance(part, str)}
    assert not {f"selling.0.{name}" for name in OF_THE_PRICE - {"tax"}} & kept


@given(bent_vessels())
def test_a_bent_vessel_has_a_whole_card(record):
    page = ask("work_out", record=record, settings={}, materials=[], wicks=[])["sheet"]
    for card in (each for each in page["cards"] if each["id"] == "price"):
        assert card["waiting"] and {field["path"] for field in card["fields"]} >= {"selling.0.by", "selling.0.asked"}
        assert all(len(row["cells"]) == len(card["table"]["columns"]) for row in (card["table"] or {"rows": []})["rows"])
