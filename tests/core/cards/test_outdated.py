"""A price that changed on the shelf: which vessels still have the old one, and what brings them up to date."""

import pytest
from hypothesis import given
from vessels import ANYTHING, ask, bent_vessels, full_vessel, put, vessel

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


TWO_PACKS = {**WAX, "packs": [{"weight": "20 kg", "price": "150"}, {"weight": "25 kg"}]}


@pytest.mark.parametrize(("copy", "sets"), [
    # Another pack of the shelf's is as good as the usual one; of its own size only the price has changed.
    ({"pack_weight": "20 kg", "pack_price": "150"}, {}), ({"pack_weight": "20 kg", "pack_price": "140"}, {"pack_price": "150"}),
    # A size that the shelf has no price of, or does not have, becomes the usual pack.
    ({"pack_weight": "25 kg", "pack_price": "160"}, {"pack_weight": "5 kg", "pack_price": "46"}),
    ({"pack_weight": "", "pack_price": "46"}, {"pack_weight": "5 kg"}), ({"pack_weight": "5 kg", "pack_price": ""}, {"pack_price": "46"}),
    ({"pack_weight": "5 kg", "pack_price": "dear"}, {"pack_price": "46"}), ({"pack_weight": "x", "pack_price": "y"}, {}),
])
def test_every_pack_of_the_shelf_counts(copy, sets):
    found = late(with_wax(**copy), materials=[TWO_PACKS])
    written = found[0]["vessels"][0]["sets"] if found else {}
    assert written == {f"wells.0.wax.{name}": text for name, text in sets.items()}


@pytest.mark.parametrize(("shelf", "copy", "sets"), [
    ({"pack_weight": ""}, {"pack_weight": "4 kg", "pack_price": "42"}, {"pack_price": "46"}),
    ({"pack_price": ""}, {"pack_weight": "4 kg", "pack_price": "42"}, {"pack_weight": "5 kg"}),
    ({"pack_price": "", "pack_weight": ""}, {"pack_weight": "4 kg", "pack_price": "42"}, {}),
    ({"pack_weight": ""}, {"pack_weight": "4 kg", "pack_price": "46"}, {}),
])
def test_what_the_shelf_does_not_tell_stays(shelf, copy, sets):
    found = late(with_wax(**copy), materials=[{**WAX, **shelf}])
    assert (found[0]["vessels"][0]["sets"] if found else {}) == {f"wells.0.wax.{name}": text for name, text in sets.items()}


def test_the_sentence_counts_vessels_and_tells_both_prices():
    records = [with_wax(str(number)) for number in range(3)]
    assert late(*records)[0]["says"] == "3 vessels have Harbor wax at $42.00 for 5 kg; the shelf says $46.00 for 5 kg."
    assert late(records[0])[0]["says"].startswith("1 vessel has Harbor wax at")
    assert late(*records, with_wax("9", pack_price="41"))[0]["says"] == (
        "4 vessels have Harbor wax at several packs or prices; the shelf says $46.00 for 5 kg.")
    comma = Display(decimal="comma", currency="€")
    assert outdated([{"record": records[0]}], shelf_of([WAX], [], comma), comma)[0]["says"].endswith("the shelf says 46,00 € for 5 kg.")


def test_every_copy_in_a_vessel_is_brought_up_to_date():
    record = with_wax()
    record["wells"][0]["wax"]["blended"] = [{"kind": "soy", "name": "harbor WAX ", "share": "10 %", "pack_weight": "5 kg", "pack_price": "40"}]
    record["wells"].append({"wax": {"kind": "mine: Harbor wax", "pack_weight": "5 kg", "pack_price": "46"}})
    found, = late(record)
    assert found["vessels"][0]["sets"] == {"wells.0.wax.pack_price": "46", "wells.0.wax.blended.0.pack_price": "46"}


def test_a_powder_is_known_by_its_kind_and_a_scent_or_coat_by_its_name():
    things = [{"name": "Deep", "role": role, measure: size, "pack_price": "9"} for role, measure, size in (
        ("sand", "pack_weight", "5 kg"), ("fragrance", "pack_weight", "100 g"), ("coating", "pack_volume", "1 L"), ("dye", "pack_weight", "10 g"))]
    old = {"name": "Deep", "pack_price": "8"}
    record = vessel()
    put(put(record, "casts.0.mix.others.0", {**old, "kind": "sand"}), "casts.0.mix.others.1", {**old, "kind": "mine: Deep"})
    put(put(record, "casts.0.finishing.paint", old), "wells.0.coloring", old)
    put(record, "wells.0.fragrance.scents", [{"name": "Other", "pack_price": "8"}, old])
    found = late(record, materials=things)
    assert [set(each["vessels"][0]["sets"]) for each in found] == [
        {f"{place}.{pack}", f"{place}.pack_price"} for place, pack in (
            ("casts.0.mix.others.1", "pack_weight"), ("wells.0.fragrance.scents.1", "pack_weight"),
            ("casts.0.finishing.paint", "pack_volume"), ("wells.0.coloring", "pack_weight"))]


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


def test_a_vessel_in_which_everything_is_bought_is_late_in_everything():
    record = full_vessel()
    things = [{"name": record["name"], "role": role, "pack_weight": "3 kg", "pack_volume": "3 L", "pack_pieces": "3", "pack_price": "1"}
              for role in ("binder", "wax", "fragrance", "dye", "coating", "packaging")]
    for mix in (record["casts"][0]["mix"]["powder"], record["casts"][0]["mix"]["others"][0]):
        mix["kind"] = f"mine: {record['name']}"
    sets = {path for each in late(record, materials=things, wicks=[things[0]]) for path in each["vessels"][0]["sets"]}
    # A fragrance that lists its scents is not bought itself.
    assert sets == {path for path in packs_and_prices(record) if not path.startswith("wells.0.fragrance.pack_")}


def test_a_fragrance_counts_itself_only_while_it_lists_no_scents():
    oil = {"name": "Fig", "role": "fragrance", "pack_weight": "100 g", "pack_price": "9"}
    record = put(vessel(), "wells.0.fragrance.name", "Fig")
    put(put(record, "wells.0.fragrance.pack_price", "8"), "wells.0.fragrance.scents", [{"name": ""}])
    assert len(late(record, materials=[oil])) == 1
    assert late(put(record, "wells.0.fragrance.scents.0.name", "Cedar"), materials=[oil]) == []


def packs_and_prices(part, path=""):
    """Every leaf of a record that says what a pack holds or costs."""
    for step, inner in part.items() if isinstance(part, dict) else enumerate(part) if isinstance(part, list) else ():
        here = f"{path}.{step}".lstrip(".")
        if str(step).startswith("pack_"):
            yield here
        else:
            yield from packs_and_prices(inner, here)


@given(bent_vessels())
def test_any_vessel_is_looked_through_and_brought_up_to_date(record):
    """Whatever it is bent into, what is written are leaves, and once written nothing is late."""
    notched = [{"name": full_vessel()["name"], "role": role, "pack_weight": "3 kg", "pack_volume": "3 L", "pack_pieces": "3", "pack_price": "1"}
               for role in ("binder", "wax", "fragrance", "dye", "coating", "packaging")]
    found = late(record, materials=notched, wicks=[{**notched[0], "role": ""}])
    for path, text in [item for each in found for item in each["vessels"][0]["sets"].items()]:
        assert leaf_at(path) is not None
        put(record, path, text)
    assert late(record, materials=notched, wicks=[{**notched[0], "role": ""}]) == []


@given(ANYTHING, ANYTHING)
def test_any_book_and_shelf_do_no_harm(entries, materials):
    assert isinstance(ask("outdated", entries=entries, materials=[materials, WAX], settings={}), list)
