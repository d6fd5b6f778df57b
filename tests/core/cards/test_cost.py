"""The card of the cost: its bar, its table, what it asks, and the prices of the shelf."""

import xml.etree.ElementTree as ET

import pytest
from hypothesis import given
from vessels import DISPLAYS, ask, bent_vessels, put, vessel

from brimbook.record import blank
from brimbook.record.fields import LEAVES
from brimbook.record.link import from_fragment
from brimbook.record.tree import parts

KEEL = 3
# What to ask for a vessel is asked on a card of its own.
OF_THE_PRICE = {"by", "margin", "markup", "wholesale_margin", "wholesale_markup", "shop_margin", "fee_share", "fee_each", "tax", "price_step",
                "asked", "fixed"}


def cost_card(record, materials=(), wicks=(), **how):
    """The card as the page would show it."""
    page = ask("work_out", record=record, settings=how, materials=list(materials), wicks=list(wicks))["sheet"]
    return next(card for card in page["cards"] if card["id"] == "cost")


def asked(card):
    """Every path that the card asks, starred."""
    fields = [each for part in [card, *card["groups"]] for each in [*part["fields"], *part["more"]]]
    return {".".join("*" if step.isdigit() else step for step in each["path"].split(".")) for each in fields}


def group(card, title):
    return next(each for each in card["groups"] if each["title"] == title)


def test_a_new_vessel_waits_for_a_price():
    card = cost_card(blank.blank())
    assert card["waiting"] == "Type what a pack of anything costs." and not card["answer"] and card["table"] is None
    assert [each["title"] for each in card["groups"]] == ["Rapid-setting cement", "Soy wax", "Fragrance", "Wick", "Your work",
                                                         "Power and printer", "Failures and other costs"]
    assert group(card, "Soy wax")["summary"] == "How much of it is not known yet."


def test_the_answer_is_the_cost_of_one_and_of_the_batch():
    card = cost_card(blank.demos()[KEEL])
    assert card["large"] == ["selling.0.cost", "selling.0.batch_cost"] and [each["label"] for each in card["answer"]] == ["One vessel"]
    assert card["answer"][0]["shown"] == card["table"]["rows"][-1]["cells"][1]


@pytest.mark.parametrize("how", [*DISPLAYS, {"currency": "€", "decimal": "comma"}, {"currency": "JPY"}], ids=str)
@pytest.mark.parametrize("demo", [2, KEEL])
def test_the_table_adds_up_as_it_is_read(demo, how):
    rows = [row["cells"] for row in cost_card(blank.demos()[demo], **how)["table"]["rows"]]
    steps = [int("".join(character for character in cells[1] if character.isdigit())) for cells in rows]
    shares = [0 if cells[2] == "under 1 %" else int(cells[2].removesuffix(" %")) for cells in rows]
    assert sum(steps[:-1]) == steps[-1] and sum(shares[:-1]) == shares[-1] == 100


def test_the_bar_has_the_numbers_of_the_table():
    card = cost_card(blank.demos()[KEEL])
    numbers = [each.text for each in ET.fromstring(card["drawing"]).iter("{http://www.w3.org/2000/svg}text")]
    assert numbers == [row["cells"][0].partition(" ")[0] for row in card["table"]["rows"][:-1]]
    assert "9 your work 68 %" in card["drawing_text"]


def test_the_vessels_cast_stand_in_for_those_of_a_batch():
    assert cost_card(vessel(casts__0__pieces="6"))["fields"][0]["note"] == "Empty, so 6 is taken."


def test_a_thing_is_told_folded_in_one_line():
    record = vessel(wells__0__wax__pack_price="40", wells__0__wax__pack_weight="5 kg", wells__0__wicks__count="2",
                    casts__0__mix__powder__pack_price="30")
    card = cost_card(record)
    assert group(card, "Soy wax")["summary"] == "251 g · $2.01"
    assert group(card, "Wick")["summary"] == "2 pieces · no price yet"
    assert group(card, "Rapid-setting cement")["summary"] == "1205 g · type what a pack holds"
    assert card["notes"][-2:] == ["No price yet for: Fragrance; Wick.", "Type what a pack holds of: Rapid-setting cement."]
    assert group(cost_card(put(record, "wells.0.wax.pack_price", "x")), "Soy wax")["summary"] == "Mend the entry that is marked."


def test_every_leaf_of_cost_and_packaging_is_asked():
    expected = {path for path in LEAVES if path.startswith("packaging.")}
    expected |= {path for path in LEAVES if path.startswith("selling.") and path.removeprefix("selling.*.") not in OF_THE_PRICE}
    card = cost_card(blank.demos()[KEEL])
    assert expected <= asked(card) and not {f"selling.*.{name}" for name in OF_THE_PRICE} & asked(card)


def test_every_pack_price_and_lot_can_be_typed_where_it_is_used():
    card = cost_card(blank.demos()[2])
    for place, pack in (("casts.*.mix.powder", "pack_weight"), ("casts.*.mix.others.*", "pack_weight"), ("wells.*.wax", "pack_weight"),
                        ("casts.*.finishing.sealer", "pack_volume"), ("wells.*.fragrance", "pack_weight"), ("wells.*.coloring", "pack_weight"),
                        ("wells.*.wicks", "pack_pieces")):
        assert {f"{place}.{name}" for name in (pack, "pack_price", "lot")} <= asked(card)


def test_packaging_is_added_kept_while_it_is_typed_and_removed():
    card = cost_card(blank.blank())
    assert card["actions"] == [{"label": "Add packaging", "append": "packaging", "value": {"each": "1"}}]
    record = put(blank.blank(), "packaging.0", {"each": "0"})
    row = group(cost_card(record), "Packaging 1")
    assert row["summary"] == "none of it" and row["actions"] == [{"label": "Remove this packaging", "remove": "packaging.0"}]
    assert not cost_card(put(record, "packaging", [{}] * 40))["actions"]


def test_how_long_each_printed_mold_takes_is_asked():
    record = vessel()
    record["casts"] += [{"bowl": "first", "clamping": {"print_weight": "80 g"}}, {"bowl": "first"}]
    labels = [field["label"] for field in group(cost_card(record), "Power and printer")["fields"]]
    assert "Printing the mold takes" in labels and "Printing mold 2 takes" in labels and "Printing mold 3 takes" not in labels


SHELF = [{"name": "Box", "role": "packaging", "pack_pieces": "25", "pack_price": "24"}, {"name": "Tin", "role": "packaging"}]


def test_packaging_is_chosen_from_the_shelf():
    record = put(blank.blank(), "packaging.0.each", "1")
    field = next(each for each in group(cost_card(record, SHELF), "Packaging 1")["fields"] if each["path"] == "packaging.0.name")
    box = next(choice for choice in field["choices"] if choice["value"] == "Box")
    assert field["kind"] == "choice" and box["sets"]["packaging.0.pack_price"] == "24" and box["sets"]["packaging.0.pack_pieces"] == "25"


def test_a_newer_price_on_the_shelf_is_told_and_offered():
    card = cost_card(blank.demos()[KEEL], SHELF)
    row = card["table"]["rows"][-1]
    assert row["cells"][0] == "Take the prices of your shelf" and row["sets"] == {"packaging.0.pack_price": "24"}
    assert any("Box" in note and "$24.00" in note and "$21.00" in note for note in card["notes"])
    assert "Take the prices of your shelf" not in [each["cells"][0] for each in cost_card(blank.demos()[KEEL])["table"]["rows"]]


def test_a_faulty_entry_is_waited_for():
    card = cost_card(vessel(selling__0__vessels="x", wells__0__wax__pack_price="40", wells__0__wax__pack_weight="5 kg"))
    assert card["waiting"] == "Mend the entry that is marked." and not card["figures"]
    assert group(cost_card(vessel(selling__0__hour_rate="x")), "Your work")["summary"] == "Mend the entry that is marked."


def test_no_price_goes_into_a_link():
    record = blank.demos()[KEEL]
    link = ask("share", record=record, settings={}, address="https://example.org/")["link"]
    opened = from_fragment(link.partition("#")[2])
    assert cost_card(record)["answer"] and not cost_card(opened)["answer"]
    texts = [path for path, part in parts(opened) if isinstance(part, str)]
    assert "packaging.0.pack_pieces" in texts and not [path for path in texts if "price" in path or "hour_rate" in path]


@given(bent_vessels())
def test_a_bent_vessel_has_a_whole_card(record):
    card = cost_card(record)
    assert bool(card["table"]) == bool(card["drawing"]) == bool(card["answer"])
    for part in [card, *card["groups"]]:
        assert all(field["path"] for field in [*part["fields"], *part["more"]])
    assert len({each["id"] for each in card["groups"]}) == len(card["groups"])
