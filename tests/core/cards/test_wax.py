"""The wax card: the wax, waxes blended into it, a cup of it, and pours in several goes."""

import pytest
from hypothesis import given
from vessels import bent_vessels, fields, put, sheet, vessel

from brimbook.record import blank
from brimbook.work_out import work_out

BEESWAX = {"kind": "beeswax", "share": "10 %", "density_poured": "0.82 g/mL", "density_set": "0.96 g/mL"}


def card(record, name="wax", **settings):
    return next(card for card in sheet(record, **settings)["cards"] if card["id"] == name)


def shared(**texts):
    record = vessel(**texts)
    record["wells"].append({"fill": {"readings": [{"water": "150 g"}]}, "pot": "first"})
    return record


def test_few_questions_stand_in_the_open():
    assert [field["path"].removeprefix("wells.0.") for field in card(vessel())["fields"]] == [
        "wax.kind", "basis", "fragrance.load", "fragrance.basis"]


def test_the_button_blends_a_wax_that_is_known():
    wax = card(vessel())
    (blend,) = (action for action in wax["actions"] if action["append"] == "wells.0.wax.blended")
    record = put(vessel(), "wells.0.wax.blended", [blend["value"]])
    (group, cup) = card(record)["groups"]
    assert group["title"] == "Beeswax" and group["summary"] == "24 g · 10 % of the wax" and cup["title"] == "Weigh your own"
    assert group["actions"] == [{"label": "Remove this wax", "remove": "wells.0.wax.blended.0"}]
    assert not work_out(record).said.faults


def test_choosing_a_wax_to_blend_writes_its_densities():
    choices = {each["value"]: each["sets"] for each in
               fields(sheet(put(vessel(), "wells.0.wax.blended", [BEESWAX])))["wells.0.wax.blended.0.kind"]["choices"]}
    assert choices["paraffin"] == {"wells.0.wax.blended.0.density_poured": "0.77 g/mL", "wells.0.wax.blended.0.density_set": "0.90 g/mL"}


def test_choosing_another_wax_forgets_what_the_old_density_was_told_for():
    def sets(**texts):
        return {each["value"]: each["sets"] for each in fields(sheet(vessel(**texts)))["wells.0.wax.kind"]["choices"]}

    assert sets(wells__0__wax__density_at="75 °C")["beeswax"]["wells.0.wax.density_at"] == ""
    assert "wells.0.wax.density_at" not in sets()["beeswax"]


def test_what_a_generic_density_is_told_for_is_shown():
    assert "80 °C" in fields(sheet(vessel()))["wells.0.wax.density_at"]["note"]
    assert fields(sheet(vessel(wells__0__wax__density_poured="0.87")))["wells.0.wax.density_at"]["note"] == ""


@pytest.mark.parametrize(("wax", "summary"), [
    ({"kind": "beeswax"}, "Type how much of it."), ({**BEESWAX, "share": "x"}, "Mend the entry that is marked."),
    ({**BEESWAX, "name": "From the hive"}, "24 g · 10 % of the wax"),
])
def test_a_folded_wax_tells_what_it_says(wax, summary):
    group = card(put(vessel(), "wells.0.wax.blended", [wax]))["groups"][0]
    assert group["summary"] == summary and group["title"] in ("Beeswax", "From the hive")


def test_no_more_waxes_than_are_worked_out():
    assert card(put(vessel(), "wells.0.wax.blended", [{**BEESWAX, "share": "1 %"}] * 10))["actions"] == []
    assert len(card(put(vessel(), "wells.0.wax.blended", [BEESWAX] * 200))["groups"]) == 12


def test_the_cup_tells_both_densities():
    texts = {"cup_volume": "200 mL", "cup_empty": "12 g", "cup_poured": "186 g", "cup_set": "196 g"}
    group = card(vessel(**{f"wells__0__wax__{name}": text for name, text in texts.items()}))["groups"][-1]
    assert group["summary"] == "0.87 g/mL hot · 0.92 g/mL set"
    assert card(put(vessel(), "wells.0.wax.cup_set", "x"))["groups"][-1]["summary"] == "Mend the entry that is marked."


def test_pours_are_told_in_their_order():
    (note,) = (note for note in card(vessel(wells__0__basis="set"))["notes"] if note.startswith("Pour"))
    assert note == ("Pour 261 g first, hot to the line. Pour 16 g more once it has set, hot to the line. Once that has set, 1.2 mL "
                    "is still missing: top it up with what is left.")
    assert not any(note.startswith("Pour") for note in card(vessel())["notes"])


def test_a_shared_well_asks_nothing_of_the_wax():
    wax = card(shared(), "wax-2")
    assert [answer["shown"] for answer in wax["answer"]] == ["123 g", "7 g"]
    assert wax["fields"] == wax["more"] == wax["groups"] == wax["actions"] == []
    assert "From the pot of the first well." in wax["notes"]


@pytest.mark.parametrize(("texts", "waiting"), [
    ({"wells__0__wax__density_poured": ""}, "Once the wax of the first well is known."),
    ({"wells__0__fragrance__load": "lots"}, "Mend the entry that is marked."),
])
def test_a_shared_well_waits_for_the_first(texts, waiting):
    assert card(shared(**texts), "wax-2")["waiting"] == waiting


def test_a_well_says_whose_pot_it_is_filled_from():
    asked = fields(sheet(shared()))
    assert "wells.0.pot" not in asked and asked["wells.1.pot"]["value"] == "first"
    assert [choice["label"] for choice in asked["wells.1.pot"]["choices"]] == ["A pot of its own", "The pot of the first well"]


@given(bent_vessels())
def test_a_card_waits_in_one_short_line(record):
    for each in sheet(record)["cards"]:
        if each["id"].partition("-")[0] in ("wax", "pot"):
            assert len(each["waiting"]) <= 60


def test_a_new_vessel_s_link_is_as_short_as_before():
    """Nothing of the wax's seldom asked questions is in a new record."""
    assert set(blank.blank()["wells"][0]["wax"]) == {"kind", "density_poured", "density_set"}
