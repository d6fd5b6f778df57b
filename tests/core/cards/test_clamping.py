"""The card of the closed mold."""

import pytest
from vessels import full_vessel, put, sheet, vessel

from brimbook.record.leaves.clamping import CLAMPING

AT = "casts.0.clamping"


def card(how=None, **texts):
    record = vessel(**{f"casts__0__clamping__{name}": text for name, text in texts.items()})
    return told(record, how)


def told(record, how=None):
    return next(each for each in sheet(record, **(how or {}))["cards"] if each["id"] == "clamp")


def names(fields):
    return [field["path"].rpartition(".")[2] for field in fields]


def test_four_questions_stand_in_the_open_and_the_closed_card_has_one_answer():
    shown = card(depth="120 mm", width="80 mm")
    assert names(shown["fields"]) == ["depth", "width", "thread", "plastic"]
    assert [(each["label"], each["shown"]) for each in shown["answer"]] == [("Bolts", "4")]
    assert shown["large"] == ["casts.0.clamping.bolts", "casts.0.clamping.pressure"]
    assert [group["title"] for group in shown["groups"]] == ["Bolts and flange", "Heat", "The print"]
    assert not any(group["open"] for group in shown["groups"])


def test_it_says_what_to_do_while_there_is_no_answer():
    assert 0 < len(card()["waiting"]) <= 60 and card()["answer"] == []
    assert card(depth="deep")["waiting"] == "Mend the entry that is marked."
    assert any("Type the width" in note for note in card(depth="120 mm")["notes"])


def test_a_cavity_by_its_dimensions_fills_in_depth_and_width():
    record = vessel(casts__0__cavity__way="dimensions", casts__0__cavity__height="110 mm", casts__0__cavity__diameter="70 mm")
    depth, width = told(record)["fields"][:2]
    assert (depth["note"], width["note"]) == ("Empty, so 110 mm is taken.", "Empty, so 70 mm is taken.")
    assert len(told(record)["large"]) == 2
    assert told(vessel())["fields"][0]["note"] == ""


@pytest.mark.parametrize(("thread", "leaf"), [("m6", "property_class"), ("1/4-20", "grade"), ("x", "property_class")])
def test_the_bolt_s_strength_is_asked_as_its_standard_does(thread, leaf):
    assert names(card(thread=thread)["groups"][0]["fields"])[0] == leaf


def test_what_stands_in_is_told_for_thread_and_plastic():
    bolts = {field["path"].rpartition(".")[2]: field["note"] for group in card(thread="m8", plastic="petg")["groups"]
             for field in [*group["fields"], *group["more"]]}
    assert bolts["washer_outside"] == "Empty, so 16 mm is taken." and bolts["washer_hole"] == "Empty, so 8.4 mm is taken."
    assert bolts["bearing"] == "Empty, so 7 MPa is taken." and bolts["softens"] == "Empty, so 75 °C is taken."
    assert bolts["heat"] == "Empty, so 350 kJ/kg is taken." and bolts["plastic_density"] == "Empty, so 1.27 g/mL is taken."


def test_another_plastic_says_what_it_lacks():
    assert any("plastic of your own" in note for note in card(plastic="own")["notes"])
    own = card(plastic="own", bearing="5 MPa", modulus="900 MPa", softens="80 °C")
    assert not any("plastic of your own" in note for note in own["notes"])


def test_the_findings_stand_in_words():
    shown = card(depth="120 mm", width="80 mm", core_volume="200 mL")
    assert any("4 bolts, 2 a seam" in note for note in shown["notes"])
    assert any("hold it down" in note for note in shown["notes"])


def test_heat_is_cautioned_where_it_softens_the_mold():
    assert [each["title"] for each in card()["cautions"]] == ["It heats as it sets"]


def test_every_leaf_is_asked_for_some_thread():
    asked = set()
    for thread in ("m5", "1/4-20"):
        shown = card(thread=thread)
        fields = [*shown["fields"], *shown["more"], *(field for group in shown["groups"]
                                                      for field in [*group["fields"], *group["more"]])]
        asked |= set(names(fields))
    assert set(CLAMPING) <= asked


def test_a_group_s_summary_is_its_finding():
    shown = card(depth="120 mm", width="80 mm", print_weight="180 g", spool_price="24")
    assert shown["groups"][0]["summary"].endswith(" apart, at most")
    assert shown["groups"][2]["summary"] == "$0.22 a cast"


def test_a_second_mold_has_a_card_of_its_own():
    record = put(put(vessel(), "casts.1", {"bowl": "first"}), "casts.1.clamping", {"depth": "90 mm", "width": "50 mm"})
    second = next(each for each in sheet(record)["cards"] if each["id"] == "clamp-2")
    assert second["answer"] and second["answer"][0]["key"] == "casts.1.clamping.bolts"


def test_a_full_vessel_has_its_card():
    assert told(full_vessel(), {"decimal": "comma"})["figures"]
