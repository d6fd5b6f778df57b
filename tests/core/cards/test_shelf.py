"""The shelf of materials: the maker's own, generic ones to copy, and both as answers in a mix."""

import json

from hypothesis import given
from vessels import ANYTHING, ask, fields, put, vessel

from brimbook.cast.materials import GENERIC
from brimbook.quantity.show import Display
from brimbook.record.fields import LEAVES

BAG = {"name": "Gray bag mix", "role": "binder", "particle_density": "2.84", "working_time": "25", "binder_share": "40 %",
       "pack_price": "18.50", "pack_weight": "20 kg"}
PIGMENT = {"name": "Harbor blue", "role": "pigment", "particle_density": "4.5", "most": "8 %"}


def shelf(*materials, **settings):
    return ask("shelf", record={"materials": list(materials)}, settings=settings)


def page(record, *materials):
    return ask("work_out", record=record, settings={}, materials=list(materials))["sheet"]


def test_an_empty_shelf_offers_the_generic_ones_to_copy():
    cards = shelf()["sheet"]["cards"]
    assert [card["title"] for card in cards] == [material.label for material in GENERIC]
    assert cards[0]["chapter"] == "To copy from" and all(card["generic"] and card["figures"] for card in cards)
    assert shelf()["sheet"]["actions"][0]["append"] == "materials"


def test_what_is_copied_reads_without_a_fault_and_keeps_every_figure():
    for card in shelf()["sheet"]["cards"]:
        value = card["actions"][0]["value"]
        answer = shelf(value)
        assert answer["sheet"]["faults"] == [] and answer["record"]["materials"] == [value]
        assert {figure["key"].split(".")[-1] for figure in card["figures"]} <= set(value)


def test_a_generic_figure_shows_its_source():
    for card in shelf()["sheet"]["cards"]:
        for figure in card["figures"]:
            (constant,) = figure["working"]["constants"]
            assert constant["source"] and constant["standing"]


def test_own_materials_come_first_and_are_asked():
    answer = shelf(BAG, PIGMENT)
    cards = answer["sheet"]["cards"]
    assert [card["title"] for card in cards[:2]] == ["Gray bag mix", "Harbor blue"]
    assert cards[0]["chapter"] == "Mine" and not cards[0]["generic"]
    assert answer["record"]["materials"][0]["working_time"] == "25 min"
    assert {"materials.0.demold_time", "materials.0.pack_price"} <= {field["path"] for field in [*cards[0]["fields"], *cards[0]["more"]]}
    assert "materials.1.demold_time" not in {field["path"] for field in cards[1]["fields"]}


def test_every_leaf_of_a_material_is_asked_for_some_role():
    asked = set()
    for role in LEAVES["materials.*.role"].choices:
        asked |= {path.replace(".0.", ".*.") for path in fields(shelf({**BAG, "role": role.value})["sheet"])}
    assert asked == {path for path in LEAVES if path.startswith("materials.")} - {"materials.*.kind"}


def test_a_wrong_entry_is_told_beside_its_field_and_kept():
    answer = shelf({**BAG, "particle_density": "heavy"})
    field = fields(answer["sheet"])["materials.0.particle_density"]
    assert field["value"] == "heavy" and field["fault"] and answer["record"]["materials"][0]["particle_density"] == "heavy"


def test_a_mix_is_offered_the_maker_s_own_powder_and_takes_its_figures():
    choice = next(each for each in fields(page(vessel(), BAG, PIGMENT))["casts.0.mix.powder.kind"]["choices"]
                  if each["label"] == "Gray bag mix")
    assert choice["group"] == "Mine"
    record = put(vessel(), "casts.0.mix.powder.kind", choice["value"])
    for path, text in choice["sets"].items():
        put(record, path, text)
    shown = ask("work_out", record=record, settings={})["sheet"]
    assert shown["faults"] == []
    figure = next(each for card in shown["cards"] for each in card["figures"] if each["key"] == "casts.0.mix_per_gram")
    assert "1 ÷ 2.84" in figure["working"]["numbers"]
    # In a vessel that came by link, the choice is offered although this shelf is empty.
    again = fields(shown)["casts.0.mix.powder.kind"]
    assert again["value"] in [each["value"] for each in again["choices"]]


def test_an_ingredient_that_enters_the_ratio_makes_room_in_the_parts():
    record = put(vessel(), "casts.0.mix.others.0.kind", "red_oxide")
    put(put(record, "casts.0.mix.others.0.role", "pigment"), "casts.0.mix.others.0.share", "3 %")
    sand = next(each for each in fields(page(record))["casts.0.mix.others.0.kind"]["choices"] if each["value"] == "sand")
    assert sand["sets"]["casts.0.mix.parts"] == "1:1:0.25"
    for path, text in {"casts.0.mix.others.0.kind": "sand", **sand["sets"]}.items():
        put(record, path, text)
    shown = page(record)
    assert shown["faults"] == [] and shown["line"].startswith("733 g powder")
    (group,) = next(card for card in shown["cards"] if card["id"] == "mix")["groups"]
    assert group["actions"][0]["sets"] == {"casts.0.mix.parts": "1:0.25"} and group["title"] == "Silica sand"


def test_a_price_is_never_in_a_link():
    record = put(put(vessel(), "casts.0.mix.powder.pack_price", "18.50"), "casts.0.mix.powder.pack_weight", "20 kg")
    shared = ask("share", record=record, address="", settings={})["link"]
    opened = ask("open_link", fragment=shared[1:], settings={})["record"]
    assert "pack_price" not in opened["casts"][0]["mix"]["powder"]
    assert opened["casts"][0]["mix"]["powder"]["pack_weight"] == "20 kg"
    assert "18.50" in json.dumps(record)


@given(ANYTHING)
def test_any_shelf_is_answered(anything):
    ask("shelf", record=anything, settings={})
    ask("work_out", record=vessel(), settings={}, materials=anything)


def test_a_price_in_another_currency_is_asked_about():
    (fault,) = shelf({**BAG, "pack_price": "18.50 €"})["sheet"]["faults"]
    assert "Prices here are in $" in fault["sentence"]
    assert shelf({**BAG, "pack_price": "18,50 €"}, currency="€", decimal="comma")["record"]["materials"][0]["pack_price"] == "18.50"
    assert Display().currency == "$"
