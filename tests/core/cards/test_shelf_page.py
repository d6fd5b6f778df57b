"""The page of the shelf: what each role asks, what a kg or a piece costs, other packs, what is on hand, and lots."""

import pytest
from arithmetic import works_out
from hypothesis import given
from vessels import ANYTHING, DISPLAYS, ask, branches, fields, put

from brimbook.candle.waxes import generic_wax
from brimbook.cards.shelf_reading import shelf_said
from brimbook.quantity.show import Display
from brimbook.record.fields import leaf_at

WAX = {"name": "Harbor wax", "role": "wax", "density_poured": "0.85 g/mL", "pack_weight": "5 kg", "pack_price": "42", "stock_weight": "2.5 kg",
       "packs": [{"weight": "20 kg", "price": "140"}, {"weight": "1 kg"}], "lots": [{"lot": "A1", "got_on": "2026-03-01"}, {"lot": "A2"}, {"lot": ""}]}
SEALER = {"name": "Deep sealer", "role": "coating", "coverage": "11 m²/L", "pack_volume": "750 mL", "pack_price": "18", "stock_volume": "1.5 L"}
BOX = {"name": "Fold box", "role": "packaging", "pack_pieces": "50", "pack_price": "31", "stock_pieces": "120"}
WICK = {"name": "Flat braid 4", "pool": "62 mm", "pack_pieces": "100", "pack_price": "12", "stock_pieces": "0"}


def page(*materials, wicks=(), **settings):
    return ask("shelf", record={"materials": list(materials), "wicks": list(wicks)}, settings=settings)["sheet"]


def card(*materials, **more):
    return page(*materials, **more)["cards"][0]


def shown(card):
    return {figure["key"].rpartition(".")[2]: figure["shown"] for figure in card["figures"]}


@pytest.mark.parametrize(("thing", "told"), [
    # 140 ÷ 20 is less than 42 ÷ 5; 2.5 × 7.
    (WAX, {"unit_price": "$7.00", "on_hand": "2.5 kg", "worth": "$17.50"}),
    # 18 ÷ 0.75; 1.5 × 24.
    (SEALER, {"unit_price": "$24.00", "on_hand": "1.5 L", "worth": "$36.00"}),
    # 31 ÷ 50; 120 × 0.62.
    (BOX, {"unit_price": "$0.62", "on_hand": "120", "worth": "$74.40"}),
])
def test_what_a_kg_a_liter_and_a_piece_cost_and_what_is_on_hand(thing, told):
    assert shown(card(thing)) == told


def test_those_who_weigh_in_ounces_are_told_of_pounds_and_fluid_ounces():
    # 7 × 0.45359237; 24 × 0.0295735.
    assert shown(card(WAX, mass="oz"))["unit_price"] == "$3.18" and shown(card(SEALER, mass="lb"))["unit_price"] == "$0.71"
    assert card(WAX, mass="oz")["answer"][0]["label"] == "a lb · wax"


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
def test_its_figures_work_out_in_every_display(how):
    sheet = page(WAX, SEALER, BOX, wicks=[WICK], **how)
    figures = {figure["key"]: figure for each in sheet["cards"] if not each["generic"] for figure in each["figures"]}
    assert len(figures) == 12
    for figure in figures.values():
        told, off, unit = works_out(figure, how.get("decimal") == "comma")
        assert unit == figure["unit"] and figure["value"] == pytest.approx(told, abs=off)
        assert set(figure["working"]["uses"]) <= set(figures)


def test_closed_it_tells_price_role_and_stock():
    assert [(each["shown"], each["label"]) for each in card(WAX)["answer"]] == [("$7.00", "a kg · wax"), ("2.5 kg", "on hand")]
    assert [(each["shown"], each["label"]) for each in card({**BOX, "pack_price": ""})["answer"]] == [("120", "on hand · packaging")]
    assert [(each["shown"], each["label"]) for each in card(wicks=[WICK])["answer"]] == [("$0.12", "each · wick"), ("0", "on hand")]
    wax = card({"name": "x", "role": "wax", "density_poured": "0.85 g/mL"})
    assert (wax["answer"], wax["waiting"]) == ([], "Wax, 0.85 g/mL")
    assert card({"role": "dye"})["waiting"] == "Dye: type its pack and price."


def test_a_price_without_a_pack_is_asked_for_it():
    assert any("what a kg costs" in note for note in card({"role": "wax", "pack_price": "42"})["notes"])
    assert any("how many pieces" in note for note in card({"role": "packaging", "pack_price": "42"})["notes"])
    assert card({"role": "wax", "pack_price": "42", "pack_weight": "5 kg"})["notes"] == []


@pytest.mark.parametrize(("role", "asked"), [
    ("wax", {"density_poured", "density_set", "wax_most", "pour_at", "pack_weight", "stock_weight"}),
    ("fragrance", {"supplier_most", "supplier_basis", "ifra_most", "flash", "flash_cup", "density", "pack_weight"}),
    ("coating", {"coverage", "hours", "pack_volume", "stock_volume"}), ("packaging", {"pack_pieces", "stock_pieces"}),
    ("plastic", {"plastic_density", "pack_weight"}), ("dye", {"pack_weight", "pack_price"}),
])
def test_each_role_asks_its_own_facts(role, asked):
    paths = {path.removeprefix("materials.0.") for path in fields(page({"role": role}))}
    assert asked <= paths and "particle_density" not in paths
    assert not paths & ({"pack_weight", "pack_volume", "pack_pieces"} - asked)


def test_other_packs_are_groups_that_can_be_added_and_removed():
    made = card(WAX)
    large, small = (each for each in made["groups"] if ".packs." in each["id"])
    assert (large["title"], large["summary"]) == ("Pack of 20 kg", "$140.00") and small["summary"] == "What it costs."
    assert large["actions"] == [{"label": "Remove this pack", "remove": "materials.0.packs.0"}]
    (add,) = (each for each in made["actions"] if each.get("append") == "materials.0.packs")
    again = card({**WAX, "packs": [*WAX["packs"], add["value"]]})
    assert [each["title"] for each in again["groups"] if ".packs." in each["id"]][-1] == "Another pack"
    assert {field["path"] for field in small["fields"]} == {"materials.0.packs.1.weight", "materials.0.packs.1.price"}


def test_the_newest_lot_with_a_name_is_in_use_and_a_new_one_gets_today():
    lots = [each for each in card(WAX)["groups"] if ".lots." in each["id"]]
    assert [(each["title"], each["summary"]) for each in lots] == [
        ("Lot A1", "got on 2026-03-01"), ("Lot A2", "in use now"), ("New lot", "As printed on the pack.")]
    (add,) = (each for each in card(WAX)["actions"] if each.get("append") == "materials.0.lots")
    assert add["today"] == ["got_on"]
    assert "materials.0.lot" not in fields(page(WAX)) and "materials.0.lot" in fields(page(BOX))


def test_a_wrong_entry_is_told_in_its_group_and_nothing_is_lost():
    reply = ask("shelf", record={"materials": [{**WAX, "pack_price": "dear", "lots": [{"lot": "A1", "got_on": "spring"}]}], "wicks": []}, settings={})
    assert {fault["path"] for fault in reply["sheet"]["faults"]} == {"materials.0.pack_price", "materials.0.lots.0.got_on"}
    made = reply["sheet"]["cards"][0]
    assert next(each for each in made["groups"] if ".lots." in each["id"])["summary"] == "Mend the entry that is marked."
    assert reply["record"]["materials"][0]["pack_price"] == "dear" and shown(made)["unit_price"] == "$7.00"
    assert card({"role": "wax", "density_poured": "x"})["waiting"] == "Mend the entry that is marked."


def test_what_was_typed_of_another_role_is_kept_and_marks_nothing():
    dear = {"name": "Harbor wax", "role": "binder", "particle_density": "heavy", "packs": [{"volume": "much", "price": "9"}]}
    assert card(dear)["waiting"] == "Mend the entry that is marked."
    reply = ask("shelf", record={"materials": [{**dear, "role": "wax"}], "wicks": []}, settings={})
    made = reply["sheet"]["cards"][0]
    assert (made["waiting"], made["groups"][0]["summary"], reply["sheet"]["faults"]) == ("Wax: type its pack and price.", "$9.00", [])
    thing = reply["record"]["materials"][0]
    assert (thing["particle_density"], thing["packs"][0]["volume"]) == ("heavy", "much")


def test_a_wick_with_a_wrong_entry_says_that_it_is_marked():
    assert card(wicks=[{**WICK, "pool": "wide", "pack_price": ""}])["waiting"] == "Mend the entry that is marked."


def test_what_has_no_field_of_its_own_is_told_on_its_card():
    sheet = page(WAX, {**BOX, "lots": "many"}, {"name": "Endless", "lots": [{"lot": "1"}] * 4000}, wicks=[7])
    notes = [each["notes"] for each in sheet["cards"] if not each["generic"]]
    unread = ["A part of this can't be read. It is kept as it is."]
    assert notes == [[], unread, ["There is more in this than can be read. It is kept as it is."], unread]
    assert [fault["path"] for fault in sheet["faults"]] == ["materials.1.lots", "materials.2", "wicks.0"]


def test_what_is_beyond_the_longest_shelf_is_kept_and_told():
    things = [{"name": f"Wax {row}", "role": "wax"} for row in range(203)]
    reply = ask("shelf", record={"materials": things, "wicks": [WICK]}, settings={})
    sheet, own = reply["sheet"], [each for each in reply["sheet"]["cards"] if not each["generic"]]
    assert len(own) == 201 and own[199]["notes"] == ["The first 200 materials are shown here, and 3 more are kept."]
    assert own[198]["notes"] == own[200]["notes"] == [] and len(reply["record"]["materials"]) == 203
    # Nothing is added where it would not be seen.
    assert [each["append"] for each in sheet["actions"]] == ["wicks"]
    assert not any(each["actions"] for each in sheet["cards"] if each["generic"])
    assert len(page(*things[:199])["actions"]) == 2


def test_a_fragrance_keeps_its_sensitizers():
    made = card({"name": "Salt and fig", "role": "fragrance", "sensitizers": [{"name": "Linalool", "share": "4.125 %", "class": "1B"}, {}]})
    first, second = (each for each in made["groups"] if ".sensitizers." in each["id"])
    assert (first["title"], first["summary"], second["title"]) == ("Linalool", "4.125 % of the scent", "Sensitizer 2")
    assert any(each.get("append") == "materials.0.sensitizers" for each in made["actions"])


def test_generic_waxes_can_be_copied_with_the_temperature_they_are_told_for():
    made = next(each for each in page()["cards"] if each["id"] == "generic-soy")
    value = made["actions"][0]["value"]
    assert value["role"] == "wax" and float(value["density_set"].split()[0]) == generic_wax("soy").density_set
    assert value["density_at"] == "80 °C" and page(value)["faults"] == []
    assert not any(each["id"] == "generic-own" for each in page()["cards"])


def test_a_shelf_of_many_lots_is_read_and_one_that_is_too_large_spoils_no_other():
    """Each thing is read by itself: a vessel's limits hold for each, not for all together."""
    many = [{"name": f"Wax {row}", "role": "wax", "lots": [{"lot": str(lot), "got_on": "2026-03-01"} for lot in range(30)]} for row in range(100)]
    sheet = page(*many)
    assert sheet["faults"] == [] and sheet["cards"][99]["title"] == "Wax 99"
    sheet = page({"name": "Endless", "lots": [{"lot": "1"}] * 4000}, WAX)
    assert [fault["path"] for fault in sheet["faults"]] == ["materials.0"] and sheet["cards"][1]["title"] == "Harbor wax"


def test_what_stands_at_its_place_reads_as_it_does_alone():
    said = shelf_said({"materials": [BOX, {**WAX, "pack_price": "?"}], "wicks": [WICK]}, Display())
    assert said.value("materials.1.pack_weight") == 5000 and said.count("materials.1.lots") == 3 and said.count("materials") == 2
    assert said.fault_at("materials.1.pack_price") and said.is_marked_below("materials.1") and not said.is_marked_below("materials.0")
    assert said.canonical["wicks.0.pool"] == "62 mm"


@given(ANYTHING, ANYTHING)
def test_whatever_lies_on_the_shelf_its_page_is_whole(thing, other):
    """Each part of a good material in turn is something else."""
    for path in branches(WAX):
        if path:
            bent = put({"materials": [{**WAX, "lots": [dict(each) for each in WAX["lots"]], "packs": [dict(each) for each in WAX["packs"]]}]},
                       "materials.0." + ".".join(str(step) for step in path), thing)
            bent["wicks"] = [other, WICK]
            for made in ask("shelf", record=bent, settings={})["sheet"]["cards"]:
                assert made["answer"] or made["waiting"]
                assert all(leaf_at(field["path"]) is not None for field in [*made["fields"], *made["more"]])
