"""A vessel's page and its line on the shelf."""

import pytest
from vessels import put, sheet, vessel

from brimbook.record import blank


def test_cards_come_in_the_order_of_the_job():
    assert [card["id"] for card in sheet(blank.blank())["cards"]] == [
        "mold", "mix", "bowl", "clamp", "pour", "cure", "dry", "leak", "finish", "well", "wax", "target",
        "scent", "pot", "melting", "wicks", "holder", "burning", "cost", "price", "label", "batches"]


@pytest.mark.parametrize(("name", "title"), [("Tide cup", "Tide cup"), ("", "New vessel"), ("  ", "New vessel"),
                                             (" x ", "x")])
def test_the_title(name, title):
    assert sheet(put(vessel(), "name", name))["title"] == title


def test_the_line_on_the_shelf():
    assert sheet(vessel())["line"] == "1205 g powder · 301 g water · 246 g wax · 15 g fragrance"
    assert sheet(blank.blank())["line"] == ""


def test_what_it_costs_is_not_on_the_shelf():
    record = put(put(vessel(), "wells.0.wax.pack_weight", "5 kg"), "wells.0.wax.pack_price", "40")
    assert any(figure["key"] == "selling.0.wax" for card in sheet(record)["cards"] for figure in card["figures"])
    assert sheet(record)["line"] == sheet(vessel())["line"]


def test_every_fault_is_listed_with_its_place():
    page = sheet(put(put(vessel(), "casts.0.pieces", "two"), "made_on", "soon"))
    assert [(fault["path"], fault["label"]) for fault in page["faults"]] == [("made_on", "Made on"),
                                                                             ("casts.0.pieces", "Pieces")]
    assert all(fault["sentence"][-1] in ".?" for fault in page["faults"])


def test_a_page_without_casts_or_wells():
    assert sheet({"name": "x"})["cards"] == []
