"""A card holds what the page needs, and nothing that it would have to work out."""

import xml.etree.ElementTree as ET

from hypothesis import given
from vessels import bent_vessels, full_vessel, put, sheet, vessel

from brimbook.cards.card import APART
from brimbook.work_out import work_out

PLACES = {"mold": "casts.0.cavity.", "mix": "casts.0.", "bowl": "casts.0.batch.", "clamp": "casts.0.clamping.",
          "pour": "casts.0.pouring.", "cure": "casts.0.curing.", "dry": "casts.0.drying.", "leak": "casts.0.leaking.",
          "finish": "casts.0.finishing.", "well": "wells.0.fill.", "wax": "wells.0.",
          "scent": "wells.0.scent.", "pot": "wells.0.batch.", "melting": "wells.0.melting.", "wicks": "wells.0.wicks.",
          "holder": "wells.0.holder.", "burning": "wells.0.burning.", "design": "design.0.", "target": "wells.0.target.",
          "cost": "selling.0.", "price": "selling.0.", "label": "labels.0.", "batches": "batches."}
CARD = {"id", "title", "question", "answer", "waiting", "fields", "more", "figures", "notes", "cautions", "drawing",
        "drawing_text",
        "actions", "beside", "groups", "timers", "saves", "chapter", "large", "prints", "table", "drag", "picks", "photo"}


@given(bent_vessels())
def test_every_card_is_whole(record):
    for card in sheet(record)["cards"]:
        assert set(card) == CARD and card["title"] and card["question"]
        assert card["answer"] or card["waiting"].endswith(".")
        assert {answer["key"] for answer in card["answer"]} <= {figure["key"] for figure in card["figures"]}
        assert all(note[-1] in ".?" for note in card["notes"])
        assert bool(card["drawing"]) == bool(card["drawing_text"])
        if card["drawing"]:
            ET.fromstring(card["drawing"])


def test_ids_do_not_clash_when_there_are_several_casts():
    record = vessel()
    record["casts"].append(record["casts"][0])
    record["wells"] += record["wells"] * 2
    ids = [card["id"] for card in sheet(record)["cards"]]
    assert len(ids) == len(set(ids)) and {"mold", "mix", "mold-2", "mix-2", "dry-2", "well", "wax", "wax-3"} <= set(ids)


def test_a_note_is_told_once():
    record = vessel(wells__0__fragrance__load="0.2 %", wells__0__dye="0.2 %")
    for card in sheet(record)["cards"]:
        assert len(card["notes"]) == len(set(card["notes"]))


def test_figures_stand_on_the_card_of_their_step():
    for card in sheet(full_vessel())["cards"]:
        place = PLACES[card["id"]]
        assert all(figure["key"].startswith(place) for figure in card["figures"])
        if card["id"] in ("mix", "wax"):
            assert not any(figure["key"].removeprefix(place).partition(".")[0] in APART for figure in card["figures"])


def test_every_figure_that_another_uses_is_there():
    page = sheet(full_vessel())
    keys = {figure["key"] for card in page["cards"] for figure in card["figures"]}
    assert {used for card in page["cards"] for figure in card["figures"] for used in figure["working"]["uses"]} <= keys


def test_a_figure_uses_only_figures_above_it():
    """Worked out in this order; on the page the log of the pours stands after the mix that it corrects."""
    seen = set()
    for key, figure in work_out(put(full_vessel(), "wells.0.basis", "set")).figures.items():
        assert set(figure.uses) <= seen, key
        seen.add(key)


def beside(record, name, **how):
    return next(card["beside"] for card in sheet(record, **how)["cards"] if card["id"] == name)


def test_the_rule_of_thumb_stands_beside_the_sum():
    assert beside(vessel(), "mix")["columns"] == ["Powder", "Water"]
    assert beside(vessel(), "mix")["rows"] == [["By volume", "1205 g", "301 g"], ["Your rule", "1203 g", "301 g"]]
    assert "an allowance of 9.9 %" in beside(vessel(), "mix")["says"]
    assert beside(vessel(), "wax")["rows"] == [["By density", "246 g", "15 g"], ["Your rule", "250 g", "15 g"]]


def test_without_fragrance_only_wax_is_set_beside():
    assert beside(vessel(wells__0__fragrance__load="0"), "wax")["columns"] == ["Wax"]


def test_nothing_stands_beside_what_is_not_known():
    assert beside(vessel(casts__0__mix__rule="x"), "mix") is None
    assert beside(put(vessel(), "casts.0.cavity.readings.0.water", ""), "mix") is None
    assert beside(vessel(), "mold") is None


@given(bent_vessels())
def test_every_row_beside_has_a_cell_for_every_column(record):
    for card in sheet(record)["cards"]:
        if card["beside"] is not None:
            assert all(len(row) == len(card["beside"]["columns"]) + 1 and all(row) for row in card["beside"]["rows"])
            assert card["beside"]["says"]
