"""The card of the leak test."""

import pytest
from vessels import full_vessel, sheet, vessel

from brimbook.record.leaves.leaking import LEAKING

WEIGHED = {"dry": "1000 g", "filled": "1640 g", "later": "1630 g"}


def card(how=None, **texts):
    record = vessel(**{f"casts__0__leaking__{name}": text for name, text in texts.items()})
    return next(each for each in sheet(record, **(how or {}))["cards"] if each["id"] == "leak")


def names(fields):
    return [field["path"].rpartition(".")[2] for field in fields]


def test_the_readings_stand_in_the_order_they_are_taken():
    assert names(card()["fields"]) == ["dry", "filled", "later", "emptied", "hours", "air"]
    assert card()["groups"] == []


@pytest.mark.parametrize(("texts", "label", "shown"), [
    (WEIGHED, "Leaked", "10 g"),
    ({**WEIGHED, "later": "1640 g"}, "At most: it holds", "0.82 g"),
    ({**WEIGHED, "air": "open"}, "Lost", "10 g"),
    ({**WEIGHED, "air": "open", "opening": "70 mm"}, "Lost", "10 g")])
def test_the_closed_card_tells_the_outcome(texts, label, shown):
    answer = card(**texts)["answer"][0]
    assert (answer["label"], answer["shown"]) == (label, shown)


@pytest.mark.parametrize(("texts", "words"), [
    ({}, "Weigh it dry"), ({"dry": "1000 g"}, "fill it with water"), ({"filled": "1640 g"}, "again after a day"),
    ({"filled": "wet"}, "Mend the entry")])
def test_it_says_what_to_do_next(texts, words):
    shown = card(**texts)
    assert words in shown["waiting"] and len(shown["waiting"]) <= 60


def test_the_verdict_and_the_drying_stand_in_words():
    notes = card(**WEIGHED)["notes"]
    assert notes[0] == "Leaks 10 g ± 0.82 g in 1 d."
    assert any("steady weight before any wax" in note for note in notes)
    assert any("Drying off" in note for note in card(**WEIGHED, air="open")["notes"])


def test_drying_off_is_asked_only_where_it_stood_open():
    (drying,) = card(air="open")["groups"]
    assert names(drying["fields"]) == ["opening", "opening_other"] and drying["open"]
    (cup,) = card(air="cup")["groups"]
    assert names(cup["fields"]) == ["cup_first", "cup_later", "cup_opening", "opening"]


def test_every_leaf_is_asked_somewhere():
    asked = set()
    for way in ("covered", "open", "cup"):
        shown = card(air=way)
        asked |= set(names([*shown["fields"], *shown["more"], *(
            field for group in shown["groups"] for field in [*group["fields"], *group["more"]])]))
    assert asked == set(LEAKING)


@pytest.mark.parametrize(("how", "step"), [({}, "1 g"), ({"readability": "5 g"}, "5 g"),
                                           ({"readability": "0.1 oz", "mass": "oz", "decimal": "comma"}, "0,1 oz")])
def test_the_scale_of_the_settings_stands_in(how, step):
    assert card(how)["more"][0]["note"] == f"Empty, so {step} is taken."


def test_a_damp_vessel_is_cautioned():
    assert [each["title"] for each in card()["cautions"]] == ["A damp vessel spits hot wax",
                                                              "An unsealed vessel can burn like a wick"]


def test_a_full_vessel_is_told_what_is_wrong_with_it():
    page = sheet(full_vessel())
    assert any(fault["path"].startswith("casts.0.leaking.") for fault in page["faults"])


def test_a_dry_weight_of_the_drying_vessel_is_not_asked_for_again():
    record = vessel(casts__0__drying__dry_weight="641 g")
    shown = next(each for each in sheet(record)["cards"] if each["id"] == "leak")
    assert shown["waiting"] == "Now fill it with water, weigh it." and shown["fields"][0]["note"] == "Empty, so 641 g is taken."
