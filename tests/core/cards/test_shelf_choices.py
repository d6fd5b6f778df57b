"""Whatever is bought can be chosen from the shelf where it is asked: a copy of all that a vessel keeps of it is written."""

import pytest
from hypothesis import given
from vessels import ANYTHING, ask, fields, put, vessel

from brimbook.record import link
from brimbook.record.fields import leaf_at

BOUGHT = {"pack_weight": "5 kg", "pack_price": "42", "lots": [{"lot": "A1"}, {"lot": "A2"}]}
MATERIALS = [
    {"name": "Harbor wax", "role": "wax", "density_poured": "0.85 g/mL", "density_set": "0.91 g/mL", "pour_at": "63 °C", **BOUGHT},
    {"name": "Salt and fig", "role": "fragrance", "supplier_most": "9 %", "flash": "88 °C", "density": "0.97 g/mL", **BOUGHT,
     "sensitizers": [{"name": "Linalool", "share": "4 %", "class": "1B"}]},
    {"name": "Deep sealer", "role": "coating", "coverage": "11 m²/L", "hours": "6 h", "pack_volume": "750 mL", "pack_price": "19", "lot": "S9"},
    {"name": "Fold box", "role": "packaging", "pack_pieces": "50", "pack_price": "31"},
]
WICKS = [{"name": "Flat braid 4", "pool": "62 mm", "rate": "4.1", "pack_pieces": "100", "pack_price": "12", "lots": [{"lot": "W7"}]}]


def page(record, materials=MATERIALS, wicks=WICKS):
    return ask("work_out", record=record, settings={}, materials=materials, wicks=wicks)["sheet"]


def choice_of(record, path, label):
    return next(each for each in fields(page(record))[path]["choices"] if each["label"] == label)


def chosen(record, path, label):
    choice = choice_of(record, path, label)
    for place, text in {path: choice["value"], **choice["sets"]}.items():
        put(record, place, text)
    return record


def well(record):
    return record["wells"][0]


def test_a_wax_brings_its_densities_its_pack_and_the_lot_in_use():
    wax = well(chosen(vessel(), "wells.0.wax.kind", "Harbor wax"))
    assert {name: wax["wax"][name] for name in ("kind", "name", "density_poured", "density_set", "pack_weight", "pack_price", "lot")} == {
        "kind": "mine: Harbor wax", "name": "Harbor wax", "density_poured": "0.85 g/mL", "density_set": "0.91 g/mL", "pack_weight": "5 kg",
        "pack_price": "42", "lot": "A2"}
    assert wax["melting"]["pour_at"] == "63 °C"


def test_a_generic_wax_takes_nothing_over_from_the_one_before():
    record = chosen(chosen(vessel(), "wells.0.wax.kind", "Harbor wax"), "wells.0.wax.kind", "Paraffin wax")
    wax = well(record)["wax"]
    assert wax["kind"] == "paraffin" and wax["density_set"] == "0.90 g/mL"
    assert not any(wax.get(name) for name in ("name", "pack_weight", "pack_price", "lot"))


def test_a_blended_wax_is_chosen_too():
    record = put(vessel(), "wells.0.wax.blended.0", {"kind": "beeswax", "share": "10 %"})
    blended = well(chosen(record, "wells.0.wax.blended.0.kind", "Harbor wax"))["wax"]["blended"][0]
    assert (blended["kind"], blended["density_set"], blended["lot"], blended["share"]) == ("mine: Harbor wax", "0.91 g/mL", "A2", "10 %")


def test_a_wax_that_left_the_shelf_stands_as_it_is():
    record = chosen(vessel(), "wells.0.wax.kind", "Harbor wax")
    kept = fields(page(record, materials=[]))["wells.0.wax.kind"]
    assert kept["choices"][-1]["label"] == "Harbor wax" and kept["choices"][-1]["hint"] == "As it is in this vessel." and not kept["fault"]


def test_a_scent_brings_its_sheet_and_its_sensitizers():
    record = put(vessel(), "wells.0.fragrance.scents.0", {"name": ""})
    scent = well(chosen(record, "wells.0.fragrance.scents.0.name", "Salt and fig"))["fragrance"]["scents"][0]
    assert (scent["supplier_most"], scent["flash"], scent["lot"]) == ("9 %", "88 °C", "A2")
    assert scent["sensitizers"] == [{"name": "Linalool", "share": "4 %", "class": "1B"}]


def test_a_sealer_brings_its_coverage_and_hours():
    finishing = chosen(vessel(), "casts.0.finishing.sealer.name", "Deep sealer")["casts"][0]["finishing"]
    assert (finishing["sealer_coverage"], finishing["sealer_hours"], finishing["sealer"]["pack_volume"], finishing["sealer"]["lot"]) == (
        "11 m²/L", "6 h", "750 mL", "S9")


def test_without_coatings_on_the_shelf_a_coat_asks_no_name_there():
    finish = next(card for card in page(vessel(), materials=[])["cards"] if card["id"] == "finish")
    assert not [field for group in finish["groups"] for field in group["fields"] if field["path"].endswith(".name")]


def test_a_wick_brings_its_pack_and_lot():
    record = vessel(wells__0__outline__across="70 mm")
    table = next(card for card in page(record)["cards"] if card["id"] == "wicks")["table"]
    sets = next(row["sets"] for row in table["rows"] if "Flat braid 4" in row["cells"][0])
    assert (sets["wells.0.wicks.pack_pieces"], sets["wells.0.wicks.pack_price"], sets["wells.0.wicks.lot"]) == ("100", "12", "W7")


def test_a_wick_is_chosen_by_its_name_too():
    wick = well(chosen(vessel(wells__0__outline__across="70 mm"), "wells.0.wicks.name", "Flat braid 4"))["wicks"]
    assert (wick["name"], wick["pool"], wick["pack_pieces"], wick["pack_price"], wick["lot"]) == ("Flat braid 4", "62 mm", "100", "12", "W7")


def test_a_dye_is_chosen_where_it_is_dosed_if_the_shelf_has_any():
    assert "wells.0.coloring.name" not in {field["path"] for field in next(
        card for card in page(vessel())["cards"] if card["id"] == "wax")["more"]}
    dye = {"name": "Dusk blue", "role": "dye", "pack_weight": "20 g", "pack_price": "6"}
    field = next(each for card in page(vessel(), [dye])["cards"] if card["id"] == "wax" for each in card["more"] if each["path"] == "wells.0.coloring.name")
    assert [choice["label"] for choice in field["choices"]] == ["None of my shelf", "Dusk blue", "Another dye"]
    assert field["choices"][1]["sets"]["wells.0.coloring.pack_weight"] == "20 g"


def test_another_one_leaves_nothing_of_the_one_before_and_stays_to_be_named():
    path = "wells.0.fragrance.scents.0"
    record = chosen(chosen(put(vessel(), path, {"name": "", "parts": "3"}), f"{path}.name", "Salt and fig"), f"{path}.name", "Another scent")
    scent = well(record)["fragrance"]["scents"][0]
    assert {name: text for name, text in scent.items() if text and name != "sensitizers"} == {"name": "Another scent", "parts": "3"}
    assert not any(text for row in scent["sensitizers"] for text in row.values())
    field = fields(page(record))[f"{path}.name"]
    assert (field["kind"], field["note"]) == ("text", "Empty it to choose from your shelf.")
    assert fields(page(put(record, f"{path}.name", "")))[f"{path}.name"]["kind"] == "choice"


def test_a_pack_of_an_earlier_price_goes_with_what_it_was_of():
    record = chosen(vessel(), "wells.0.wax.kind", "Harbor wax")
    put(record, "wells.0.wax.pack_price", "39")
    put(record, "wells.0.melting.pour_at", "59 °C")
    taken = well(chosen(record, "wells.0.wax.kind", "Beeswax"))
    assert taken["wax"]["pack_price"] == "" and taken["melting"]["pour_at"] == "59 °C"


def test_sensitizers_of_another_scent_go_and_those_of_the_same_one_stay():
    path = "wells.0.fragrance.scents.0"
    def typed():
        return {"sensitizers": [{"name": "Citral", "share": "2 %"}, {"name": "Eugenol", "share": "1 %"}]}

    for name in ("", "salt and FIG"):
        scent = well(chosen(put(vessel(), path, {"name": name, **typed()}), f"{path}.name", "Salt and fig"))["fragrance"]["scents"][0]
        assert scent["sensitizers"] == [{"name": "Linalool", "share": "4 %", "class": "1B"}, {"name": "", "share": ""}]
    bare = [{"name": name, "role": "fragrance", "flash": "88 °C"} for name in ("Salt and fig", "Juniper")]

    def cleared(name, other):
        choices = fields(page(put(vessel(), path, {"name": name, **typed()}), bare))[f"{path}.name"]["choices"]
        return {place for choice in choices if choice["label"] == other for place in choice["sets"] if "sensitizers" in place}

    assert cleared("salt and fig", "Salt and fig") == cleared("", "Juniper") == set()
    assert cleared("Juniper", "Salt and fig") == {f"{path}.sensitizers.{row}.{name}" for row in (0, 1) for name in ("name", "share")}


def test_another_powder_gives_up_name_pack_and_figures_of_the_shelf_s():
    bag = {"name": "Gray bag mix", "particle_density": "2.84", "pack_weight": "20 kg", "pack_price": "18", "lot": "G1"}
    record = vessel()
    for label in ("Gray bag mix", "Another powder"):
        choice = next(each for each in fields(page(record, [bag]))["casts.0.mix.powder.kind"]["choices"] if each["label"] == label)
        for place, text in {"casts.0.mix.powder.kind": choice["value"], **choice["sets"]}.items():
            put(record, place, text)
    powder = record["casts"][0]["mix"]["powder"]
    assert powder["kind"] == "own" and not any(powder[name] for name in ("name", "particle_density", "pack_weight", "pack_price", "lot"))


def test_a_name_written_otherwise_is_the_same_thing():
    record = put(vessel(), "packaging.0", {"each": "1", "name": " fold BOX"})
    field = fields(page(record))["packaging.0.name"]
    assert field["kind"] == "choice" and [choice["label"] for choice in field["choices"]] == ["fold BOX", "Fold box", "Other packaging"]


def test_of_two_that_are_called_alike_one_is_offered():
    box = MATERIALS[3]
    shown = fields(page(put(vessel(), "packaging.0", {"each": "1"}), [box, {**box, "pack_price": "99"}]))["packaging.0.name"]["choices"]
    (offered,) = (choice for choice in shown if choice["label"] == "Fold box")
    assert offered["sets"]["packaging.0.pack_price"] == "31"


@pytest.mark.parametrize("settings", [{"decimal": "comma"}, {"mass": "lb", "length": "in", "temperature": "F"}, {"currency": "€"}], ids=str)
def test_a_copy_reads_the_same_under_any_settings(settings):
    """What is written is canonical: it neither faults nor changes its meaning for another maker."""
    wax = {"name": "Harbor wax", "role": "wax", "density_set": "0.91 g/mL", "pack_weight": "1.2340 kg", "pack_price": "42.50"}
    shown = ask("work_out", record=vessel(), settings=settings, materials=[wax])["sheet"]
    sets = next(each for each in fields(shown)["wells.0.wax.kind"]["choices"] if each["label"] == "Harbor wax")["sets"]
    assert (sets["wells.0.wax.pack_weight"], sets["wells.0.wax.pack_price"], sets["wells.0.wax.density_set"]) == ("1.2340 kg", "42.50", "0.91 g/mL")
    record = vessel()
    for place, text in sets.items():
        put(record, place, text)
    assert ask("work_out", record=record, settings={})["sheet"]["faults"] == []


def test_the_longest_name_can_be_chosen_everywhere():
    name = "x" * 80
    record = put(vessel(), "wells.0.fragrance.scents.0", {"name": ""})
    put(record, "wells.0.wax.blended.0", {"kind": "beeswax", "share": "10 %"})
    things = [{"name": name, "role": role} for role in ("wax", "fragrance", "coating")]
    for path in ("wells.0.wax.kind", "wells.0.wax.blended.0.kind", "wells.0.fragrance.scents.0.name", "casts.0.finishing.paint.name", "wells.0.wicks.name"):
        choice = next(each for each in fields(page(record, things, [{"name": name}]))[path]["choices"] if each["label"] == name)
        for place, text in {path: choice["value"], **choice["sets"]}.items():
            put(record, place, text)
    assert not [fault for fault in page(record, things)["faults"] if "room for" in fault["sentence"]]


@pytest.mark.parametrize("path", ["wells.0.wax.kind", "wells.0.fragrance.scents.0.name", "casts.0.finishing.sealer.name", "packaging.0.name"])
def test_choosing_writes_leaves_alone_and_no_price_leaves_by_link(path):
    record = put(put(vessel(), "wells.0.fragrance.scents.0", {"name": ""}), "packaging.0", {"each": "1"})
    shown = fields(page(record))[path]["choices"]
    assert all(leaf_at(place) is not None for choice in shown for place in choice["sets"])
    taken = chosen(record, path, next(choice["label"] for choice in shown if choice.get("group") == "Mine"))
    assert "pack_price" in str(taken)
    fragment = ask("share", record=taken, settings={}, address="https://example.org/")["link"].partition("#")[2]
    assert "pack_price" not in str(link.from_fragment(fragment))


@given(ANYTHING, ANYTHING)
def test_any_shelf_leaves_the_page_whole(materials, wicks):
    assert page(vessel(), [materials, {"name": materials, "role": "wax", "lots": materials}], [wicks, {"name": "x", "lots": [wicks]}])["cards"]
