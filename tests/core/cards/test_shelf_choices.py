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
