"""A price that changed on the shelf: which vessels still have the old one, and what brings them up to date."""

import pytest
from hypothesis import given
from vessels import ANYTHING, ask, put, vessel

from brimbook.cards.outdated import behind, outdated
from brimbook.cards.shelf import shelf_of
from brimbook.quantity.show import Display
from brimbook.record.fields import leaf_at
from brimbook.record.said import understand

WAX = {"name": "Harbor wax", "role": "wax", "pack_weight": "5 kg", "pack_price": "46"}
WICK = {"name": "Flat braid 4", "pack_pieces": "100", "pack_price": "12"}


def with_wax(id="1", **copy):
    record = vessel(name=f"Cup {id}")
    record["id"] = id
    record["wells"][0]["wax"].update({"kind": "mine: Harbor wax", "name": "Harbor wax", "pack_weight": "5 kg", "pack_price": "42", **copy})
    return record


def late(*records, materials=(WAX,), wicks=(WICK,)):
    return outdated([{"record": record} for record in records], shelf_of(list(materials), list(wicks), Display()), Display())


def test_a_vessel_with_the_old_price_is_told_with_what_to_write():
    found, = late(with_wax(), with_wax("2", pack_price="46"))
    assert found["name"] == "Harbor wax" and "42.00" in found["says"] and "46.00" in found["says"]
    assert [(each["id"], each["name"]) for each in found["vessels"]] == [("1", "Cup 1")]
    assert found["vessels"][0]["sets"]["wells.0.wax.pack_price"] == "46"


@pytest.mark.parametrize("copy", [{"pack_weight": "5000 g", "pack_price": "46.00"}, {"pack_weight": "", "pack_price": ""},
                                  {"kind": "soy", "name": "Another"}])
def test_the_same_price_no_price_and_another_wax_are_left_alone(copy):
    record = with_wax(pack_price="46")
    record["wells"][0]["wax"].update(copy)
    assert late(record) == []


def test_a_new_pack_counts_too():
    found, = late(with_wax(pack_price="46", pack_weight="4 kg"))
    assert found["vessels"][0]["sets"]["wells.0.wax.pack_weight"] == "5 kg"


def test_a_lot_alone_makes_no_vessel_late():
    assert late(with_wax(pack_price="46", lot="7"), materials=[{**WAX, "lots": [{"lot": "8"}]}]) == []


def test_wicks_packaging_and_powders_are_compared():
    record = put(put(vessel(), "wells.0.wicks", {"name": "flat braid 4", "pack_pieces": "100", "pack_price": "9"}), "packaging.0",
                 {"name": "Fold box", "pack_pieces": "10", "pack_price": "8"})
    record["casts"][0]["mix"]["powder"].update({"kind": "mine: Gray bag mix", "name": "Gray bag mix", "pack_weight": "20 kg", "pack_price": "18"})
    box, bag = {"name": "Fold box", "role": "packaging", "pack_pieces": "10", "pack_price": "7"}, {"name": "Gray bag mix", "pack_weight": "25 kg", "pack_price": "20"}
    assert {found["name"] for found in late(record, materials=[box, bag])} == {"Flat braid 4", "Fold box", "Gray bag mix"}


def test_after_writing_nothing_is_late():
    record = with_wax(pack_weight="4 kg")
    for path, text in late(record)[0]["vessels"][0]["sets"].items():
        assert leaf_at(path) is not None
        put(record, path, text)
    assert late(record) == []


def test_the_open_vessel_is_told_the_same():
    (sentence, sets), = behind(understand(with_wax(), Display()), shelf_of([WAX], [], Display()))
    assert "42.00" in sentence and sets["wells.0.wax.pack_price"] == "46"


def test_the_cost_offers_it():
    cost = next(card for card in ask("work_out", record=with_wax(), settings={}, materials=[WAX])["sheet"]["cards"] if card["id"] == "cost")
    assert cost["table"]["rows"][-1]["sets"]["wells.0.wax.pack_price"] == "46"


@given(ANYTHING, ANYTHING)
def test_any_book_and_shelf_do_no_harm(entries, materials):
    assert isinstance(ask("outdated", entries=entries, materials=[materials, WAX], settings={}), list)
