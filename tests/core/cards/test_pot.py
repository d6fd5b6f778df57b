"""The pot's card: how much in all, what each well takes, how large the pot must be."""

import pytest
from vessels import fields, put, sheet, vessel


def card(record, name="pot", **settings):
    return next(card for card in sheet(record, **settings)["cards"] if card["id"] == name)


def two_wells(**texts):
    record = vessel(**texts)
    record["wells"].append({"fill": {"readings": [{"water": "150 g"}]}, "pot": "first"})
    return record


def test_the_closed_card_tells_all_that_is_in_the_pot():
    pot = card(vessel())
    assert [(answer["shown"], answer["label"]) for answer in pot["answer"]] == [("266 g", "In the pot")]
    assert pot["large"] == ["wells.0.batch.wax", "wells.0.batch.fragrance"]


def test_few_questions_stand_in_the_open():
    assert [field["path"] for field in card(vessel())["fields"]] == ["wells.0.batch.pieces", "wells.0.batch.melted"]


def test_as_many_as_are_cast_stand_in():
    assert "3 is taken" in fields(sheet(vessel(casts__0__pieces="3")))["wells.0.batch.pieces"]["note"]


@pytest.mark.parametrize(("path", "text", "waiting"), [
    ("wells.0.wax.density_poured", "", "Once the wax is known."),
    ("wells.0.batch.left", "some", "Mend the entry that is marked."),
])
def test_while_it_waits_it_says_for_what(path, text, waiting):
    pot = card(put(vessel(), path, text))
    assert pot["answer"] == [] and pot["waiting"] == waiting


def test_one_vessel_poured_at_once_needs_no_list():
    assert not any("vessels" in note or "first" in note for note in card(vessel())["notes"])


def test_what_each_well_takes_of_several_vessels():
    notes = card(two_wells(wells__0__basis="set", wells__0__batch__pieces="3"))["notes"]
    assert "Well 1: 261 g first, then 16 g in each of 3 vessels." in notes
    assert "Well 2: 130 g first, then 8 g in each of 3 vessels." in notes
    assert any(note.startswith("Keep back") and note.endswith("melt it again.") for note in notes)


def test_a_line_for_hot_wax_is_told_in_one_pour():
    assert "261 g in each of 3 vessels." in card(vessel(casts__0__pieces="3"))["notes"]
    assert "Well 2: 130 g." in card(two_wells())["notes"]


def test_what_was_melted_is_told_beside_what_is_needed():
    notes = card(vessel(wells__0__batch__melted="500 g", wells__0__batch__pieces="3"))["notes"]
    assert {"It fills 2 vessels.", "It is 257 g short.", "Melt 243 g more wax."} <= set(notes)


def test_the_size_of_the_pot_is_folded_away():
    (size,) = card(vessel())["groups"]
    assert size["title"] == "Size of the pot" and size["summary"] == "Take a pot that holds 409 mL or more."
    assert card(put(vessel(), "wells.0.batch.capacity", "x"))["groups"][0]["summary"] == "Mend the entry that is marked."
    small = card(vessel(wells__0__batch__capacity="300 mL"))
    assert "Your pot is too small for all of it: melt it in 2 lots." in small["notes"]


def test_a_shared_well_has_no_pot_of_its_own():
    ids = [each["id"] for each in sheet(two_wells())["cards"]]
    assert "pot" in ids and "pot-2" not in ids


def test_a_page_of_wells_is_told_in_part():
    record = vessel(wells__0__batch__pieces="2")
    record["wells"] += [{"fill": {"readings": [{"water": "150 g"}]}, "pot": "first"}] * 100
    assert sum(note.startswith("Well ") for note in card(record)["notes"]) == 12


def test_a_pot_that_is_short_tells_its_pours_for_what_it_fills():
    record = two_wells(wells__0__basis="set", wells__0__batch__pieces="3", wells__0__batch__melted="800 g")
    notes = card(record)["notes"]
    assert "It fills 2 vessels." in notes and any(note.endswith("in each of 2 vessels.") for note in notes)
    assert not any("3 vessels" in note for note in notes)
    nothing = card(put(record, "wells.0.batch.melted", "20 g"))["notes"]
    assert not any(note.startswith(("Well 1", "Keep back")) for note in nothing)
