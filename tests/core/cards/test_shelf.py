"""The shelf of materials: the maker's own, generic ones to copy, and both as answers in a mix."""

import json

from hypothesis import given
from vessels import ANYTHING, ask, fields, put, vessel

from brimbook.candle.waxes import WAXES
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
    waxes = [wax.label for wax in WAXES if wax.density_set is not None]
    assert [card["title"] for card in cards] == [*(material.label for material in GENERIC), *waxes]
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
    assert cards[0]["chapter"] == "My materials" and not cards[0]["generic"]
    assert answer["record"]["materials"][0]["working_time"] == "25 min"
    assert {"materials.0.demold_time", "materials.0.pack_price"} <= {field["path"] for field in [*cards[0]["fields"], *cards[0]["more"]]}
    assert "materials.1.demold_time" not in {field["path"] for field in cards[1]["fields"]}


def test_every_leaf_of_a_material_is_asked_for_some_role():
    asked = set()
    for role in LEAVES["materials.*.role"].choices:
        shown = shelf({**BAG, "role": role.value, "packs": [{}], "lots": [{}], "sensitizers": [{}]})["sheet"]
        asked |= {path.replace(".0.", ".*.").replace(".0.", ".*.") for path in fields(shown)} | {
            path.replace(".0.", ".*.") for path in fields(shelf({**BAG, "role": role.value})["sheet"])}
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
    assert group["actions"][0]["sets"] == {"casts.0.mix.parts": "1:0.25", "casts.0.mix.water_to_powder": "1:0.25"}
    assert group["title"] == "Silica sand"


def sets_of(record, path, value):
    return next(each for each in fields(page(record))[path]["choices"] if each["value"] == value)["sets"]


def test_the_water_of_the_parts_stays_when_the_powder_is_left_alone_and_comes_back():
    record = put(vessel(casts__0__mix__parts="1:2:0.45", casts__0__mix__water_to_powder="0.4"),
                 "casts.0.mix.others.0", {"kind": "sand", "role": "sand"})
    (group,) = next(card for card in page(record)["cards"] if card["id"] == "mix")["groups"]
    assert group["actions"][0]["sets"]["casts.0.mix.water_to_powder"] == "1:0.45"
    # Parts from an earlier mix say nothing of the water that is typed now.
    alone = put(vessel(casts__0__mix__parts="1:0.45", casts__0__mix__water_to_powder="0.3"),
                "casts.0.mix.others.0", {"kind": "red_oxide", "share": "3 %"})
    assert sets_of(alone, "casts.0.mix.others.0.kind", "sand")["casts.0.mix.parts"] == "1:1:0.3"


def test_a_dose_is_chosen_with_what_it_is_a_share_of():
    record = put(vessel(), "casts.0.mix.others.0", {"kind": "red_oxide", "share": "3 %"})
    path = "casts.0.mix.others.0"
    assert sets_of(record, f"{path}.kind", "glass_fiber")[f"{path}.base"] == "mix"
    assert sets_of(record, f"{path}.kind", "plastic_fiber")[f"{path}.base"] == "binder"


def test_a_material_of_the_longest_name_can_be_chosen():
    name = "x" * 80
    shown = page(vessel(), {"name": name, "particle_density": "2.84"})
    own = next(each for each in fields(shown)["casts.0.mix.powder.kind"]["choices"] if each["group"] == "Mine" and name in each["value"])
    record = vessel()
    for path, text in {"casts.0.mix.powder.kind": own["value"], **own["sets"]}.items():
        put(record, path, text)
    assert page(record)["faults"] == []


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


def test_another_powder_does_not_keep_the_density_of_the_generic_one():
    path = "casts.0.mix.powder.particle_density"
    assert sets_of(vessel(), "casts.0.mix.powder.kind", "own") == {path: ""}
    assert sets_of(put(vessel(), path, "2.71"), "casts.0.mix.powder.kind", "own") == {}
    mix = next(card for card in page(put(put(vessel(), path, ""), "casts.0.mix.powder.kind", "own"))["cards"] if card["id"] == "mix")
    assert path in [field["path"] for field in mix["fields"]] and path not in [field["path"] for field in mix["more"]]
    assert mix["waiting"].startswith("Type the particle density")


def test_a_fiber_told_of_the_mix_is_asked_of_the_mix():
    path = "casts.0.mix.others.0"
    record = put(vessel(), path, {"kind": "glass_fiber", "role": "fiber", "share": "2 %", "base": "mix"})
    asked = fields(page(record))
    assert (asked[f"{path}.share"]["label"], asked[f"{path}.most"]["label"]) == ("Of the whole wet mix", "Most of it, of the wet mix")
    assert fields(page(put(record, f"{path}.base", "binder")))[f"{path}.share"]["label"] == "Of the binder"
