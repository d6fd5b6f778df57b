"""The card of the pours: short while closed, a group for each pour, the newest first."""

import pytest
from vessels import DISPLAYS, figures, put, sheet, vessel

from brimbook.work_out import work_out

POUR = {"when": "2026-09-12T10:30", "powder": "1200 g", "water": "300 g", "left_over": "90 g"}
CUP = {"cup_volume": "100 mL", "cup_empty": "12 g", "cup_full": "218 g"}


def card(*pours, settings=None, **texts):
    record = vessel(casts__0__pours=list(pours), **texts)
    return next(each for each in sheet(record, **(settings or {}))["cards"] if each["id"] == "pour")


def test_an_empty_log_asks_for_a_pour_in_one_line():
    shown = card()
    assert shown["answer"] == [] and shown["groups"] == [] and shown["drawing"] == ""
    assert shown["waiting"].endswith(".") and len(shown["waiting"]) <= 60


def test_a_log_without_a_rest_says_what_to_weigh():
    waiting = card({"powder": "1200 g"})["waiting"]
    assert "the rest" in waiting and len(waiting) <= 60


def test_the_closed_card_tells_the_density_and_the_open_one_the_allowance_too():
    assert [each["label"] for each in card(POUR, POUR)["answer"]] == ["Your mix"]
    assert card(POUR, POUR)["large"] == ["casts.0.pouring.density", "casts.0.pouring.allowance"]
    assert card(POUR)["large"] == ["casts.0.pouring.density", "casts.0.pouring.needed"]
    assert all(len(each["shown"]) <= 12 for each in card(POUR, POUR)["answer"])


def test_the_newest_pour_is_first_and_open_while_it_is_not_filled_in():
    groups = card(POUR, POUR, {"when": ""})["groups"]
    assert [(group["title"], group["open"]) for group in groups] == [("Pour 3", True), ("Pour 2", False), ("Pour 1", False)]
    assert not card(POUR, {**POUR})["groups"][0]["open"]


def test_four_questions_in_the_open_and_no_path_twice():
    (group,) = card(POUR)["groups"]
    assert [field["path"].rpartition(".")[2] for field in group["fields"]] == ["powder", "water", "left_over", "pieces"]
    paths = [field["path"] for field in [*group["fields"], *group["more"]]]
    assert len(paths) == len(set(paths))
    assert group["actions"] == [{"label": "Remove this pour", "remove": "casts.0.pours.0"}]


def test_a_pour_is_told_in_its_line():
    (group,) = card({**POUR, **CUP})["groups"]
    assert group["summary"].startswith("Sat, Sep 12 · 2.06 g/mL · needed ") and len(group["summary"]) < 45


def test_the_notes_say_it_in_words_and_what_the_next_pour_takes():
    notes = card(POUR, {**POUR, **CUP})["notes"]
    assert any("lighter than the table says" in note for note in notes)
    powder = figures(vessel(casts__0__pours=[POUR, {**POUR, **CUP}]))["casts.0.powder"]["shown"]
    assert any(f"The next pour takes {powder} of powder" in note for note in notes)


def logged(record, settings=None):
    """The record after Log a pour was tapped."""
    page = sheet(record, **(settings or {}))
    action = next(action for each in page["cards"] if each["id"] == "pour" for action in each["actions"])
    record["casts"][0].setdefault("pours", []).append(action["value"])
    return record["casts"][0]["pours"][-1]


@pytest.mark.parametrize("settings", DISPLAYS, ids=str)
def test_a_new_pour_starts_from_what_was_to_be_weighed(settings):
    record = vessel(casts__0__mix__others=[{"kind": "red_oxide", "role": "pigment", "share": "3 %"}])
    asked = work_out(record).plans["casts.0"].portions
    pour = logged(record, settings)
    said = work_out(record).said
    assert said.faults == [] and pour["when"] == ""
    for portion, path in zip(asked, ("powder", "others.0.weighed", "water")):
        assert said.value(f"casts.0.pours.0.{path}") == pytest.approx(portion.grams, abs=3.0)


def test_a_new_pour_takes_what_was_scooped_instead():
    pour = logged(vessel(casts__0__scooped="1300 g"))
    assert (pour["powder"], pour["water"]) == ("1300 g", "325 g")
    pour = logged(vessel(casts__0__scooped="1300 g", casts__0__scooped_water="330 g"))
    # The bowl card says to add powder to that much water.
    assert (pour["powder"], pour["water"]) == ("1320 g", "330 g")


def test_a_new_pour_without_a_plan_is_empty():
    assert logged(vessel(casts__0__cavity__readings__0__water="")) == {"when": ""}


def test_what_stands_in_for_an_empty_place_is_told():
    record = vessel(casts__0__pours=[{**POUR, **CUP}, {"powder": "1000 g", "cup_full": "218 g"}])
    put(record, "casts.0.mix.others.0", {"kind": "red_oxide", "role": "pigment", "share": "3 %"})
    shown = next(each for each in sheet(record)["cards"] if each["id"] == "pour")
    noted = {field["path"]: field["note"] for group in shown["groups"] for field in [*group["fields"], *group["more"]]}
    assert noted["casts.0.pours.1.water"] == "Empty, so 250 g is taken."
    assert noted["casts.0.pours.1.others.0.weighed"] == "Empty, so 30 g is taken."
    assert noted["casts.0.pours.1.cup_volume"] == "Empty, so 100 mL is taken."
    assert noted["casts.0.pours.1.cup_empty"] == "Empty, so 12 g is taken."
    assert noted["casts.0.pours.0.cup_volume"] == "" and noted["casts.0.pours.1.pieces"].startswith("Empty, so 1")


def test_the_base_is_asked_of_a_ring_of_one_s_own_alone():
    asked = [[field["path"].rpartition(".")[2] for field in card(casts__0__flow__cone=cone)["more"]] for cone in ("mini", "own")]
    assert asked == [["cone", "target"], ["cone", "base", "target"]]


def test_a_mold_poured_from_the_first_bowl_has_no_log():
    record = vessel()
    record["casts"].append({"bowl": "first", "cavity": {}})
    assert [each["id"] for each in sheet(record)["cards"]].count("pour-2") == 0


def test_wet_mix_is_warned_of_where_it_is_poured():
    assert "Wet mix burns skin and eyes" in {each["title"] for each in card()["cautions"]}


def test_a_long_log_is_no_burden():
    shown = card(*[POUR] * 120)
    assert len(shown["groups"]) == 120 and len(shown["figures"]) < 25


def test_a_pour_keeps_the_mix_and_the_pieces_that_it_was_of():
    record = vessel(casts__0__pieces="6", casts__0__batch__bowl="1500 mL")
    put(record, "casts.0.mix.others.0", {"kind": "red_oxide", "share": "3 %"})
    pour = logged(record)
    each = figures(record)["casts.0.batch.mix_1.powder"]["shown"]
    assert (pour["powder"], pour["pieces"], pour["of"]) == (each, "2", "rapid + red_oxide")
    put(record, "casts.0.pours.0.left_over", "100 g")
    del record["casts"][0]["batch"]
    record["casts"][0]["pieces"] = "1"
    assert "needed" in next(each for each in sheet(record)["cards"] if each["id"] == "pour")["groups"][0]["summary"]
    # Without the pigment, the third of an ounce of it would pass for what now stands in its place.
    record["casts"][0]["mix"]["others"] = [{"kind": "sand", "role": "sand"}]
    record["casts"][0]["mix"]["parts"] = "1:1:0.4"
    shown = next(each for each in sheet(record)["cards"] if each["id"] == "pour")
    assert shown["groups"][0]["summary"] == "of another mix" and "casts.0.pouring.density" not in figures(record)
    assert shown["notes"] == ["Pour 1 was of another mix (Rapid-setting cement + Red iron oxide): kept, and not counted."]
    assert "casts.0.pours.0.of" in [field["path"] for field in shown["groups"][0]["more"]]


def test_a_scoop_that_is_filled_up_is_logged_filled_up():
    record = vessel(casts__0__scooped="1300 g", casts__0__scooped_water="310 g")
    assert figures(record)["casts.0.batch.scooped.water"]["says"] == "Add 15 g water to what is there"
    assert logged(record)["water"] == "325 g"


def test_the_allowance_of_the_pours_is_told_where_another_one_is_typed():
    pours = [POUR, {**POUR, **CUP}, POUR]
    mix = next(each for each in sheet(vessel(casts__0__pours=pours))["cards"] if each["id"] == "mix")
    (field,) = [each for each in mix["fields"] if each["path"] == "casts.0.allowance"]
    plan = figures(vessel(casts__0__pours=pours))["casts.0.pouring.allowance"]["shown"]
    assert field["value"] == "10 %" and field["note"] == f"Your pours say {plan}, and that is taken: see below."
    typed = next(each for each in sheet(vessel(casts__0__pours=pours, casts__0__allowance_from="typed"))["cards"] if each["id"] == "mix")
    assert [each["note"] for each in typed["fields"] if each["path"] == "casts.0.allowance"] == [""]


def test_a_pour_that_needed_less_says_so():
    assert "less" in card({**POUR, "powder": "1000 g", "water": "250 g"})["groups"][0]["summary"]


def test_a_folded_pour_says_that_an_entry_in_it_is_marked():
    shown = card({**POUR, "cup_full": "x"}, POUR)
    assert [group["summary"] == "Mend the entry that is marked." for group in shown["groups"]] == [False, True]
