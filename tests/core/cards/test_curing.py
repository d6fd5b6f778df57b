"""The card of the clock: short while closed, timers and a calendar once it is poured."""

import pytest
from vessels import fields, put, sheet, vessel

POURED = "2026-11-24T10:00"


def card(record, number=1, **how):
    return next(each for each in sheet(record, **how)["cards"] if each["id"] == ("cure" if number == 1 else f"cure-{number}"))


def group(shown, end):
    return next(each for each in shown["groups"] if each["id"].endswith(end))


def names(asked):
    return [field["path"].rpartition(".")[2] for field in asked]


def portland(**texts):
    return vessel(casts__0__mix__powder={"kind": "portland", "particle_density": "3.15 g/mL"}, **texts)


def test_nothing_typed_asks_when_it_was_poured():
    shown = card(vessel())
    assert shown["answer"] == [] and shown["waiting"] == "Type when, or tap Now."
    assert shown["timers"] == [] and shown["saves"] == []
    assert names(shown["fields"]) == ["poured_at", "temperature"]


def test_once_poured_it_tells_when_to_demold_and_to_fill():
    shown = card(vessel(casts__0__curing__poured_at=POURED))
    assert [(each["label"], len(each["shown"]) < 22) for each in shown["answer"]] == [("Fill", True)]
    assert shown["timers"][0] == {"label": "Demold", "due": "2026-11-24T10:45"}
    assert shown["timers"][-1]["label"] == "Fill"
    assert [each["due"] for each in shown["timers"]] == sorted(each["due"] for each in shown["timers"])
    assert shown["saves"] == [{"label": "Put it into my calendar", "ask": "calendar", "place": "casts.0"}]


def test_seldom_changed_waits_say_what_stands_in():
    noted = {field["path"].rpartition(".")[2]: field["note"] for field in card(portland())["more"]}
    assert noted["damp"] == "Empty, so 3 d is taken."
    assert {field["path"].rpartition(".")[2]: field["note"] for field in card(vessel())["more"]}["damp"] == (
        "Empty, so 1 d is taken.")


def test_only_portland_cement_is_asked_for_its_law():
    assert names(group(card(vessel()), ".setting")["more"]) == []
    assert names(group(card(portland()), ".setting")["more"]) == ["law", "energy"]
    assert names(group(card(portland(casts__0__curing__law="nurse_saul")), ".setting")["more"]) == ["law", "datum"]


def test_a_choice_shows_what_is_taken_while_nothing_is_chosen():
    asked = fields(sheet(portland()))
    assert asked["casts.0.curing.law"]["value"] == "arrhenius"
    assert asked["casts.0.mix.powder.follows"]["value"] == "portland"
    assert fields(sheet(vessel()))["casts.0.mix.powder.follows"]["value"] == "observed"


def test_a_powder_without_a_time_is_asked_for_it_in_the_open():
    shown = card(vessel(casts__0__mix__powder__kind="own"))
    assert "demold_time" in names(shown["fields"]) and "demold_time" not in names(group(shown, ".setting")["fields"])
    assert group(card(vessel()), ".setting")["summary"] == "45 min at 20 °C"


def test_a_mold_from_the_first_bowl_asks_for_no_powder():
    record = portland()
    record["casts"].append({"bowl": "first", "cavity": {}})
    shown = card(record, 2)
    assert all(".mix." not in field["path"] for part in [shown, *shown["groups"]] for field in [*part["fields"], *part["more"]])
    assert names(group(shown, ".setting")["fields"]) == ["law", "energy"]


def test_an_empty_log_says_what_it_is_for():
    log = group(card(vessel()), ".temperatures")
    assert log["fields"] == [] and log["summary"].endswith(".") and not log["open"]
    assert log["actions"] == [{"label": "Log the temperature", "append": "casts.0.curing.temperatures",
                               "value": {"at": "", "temperature": ""}}]


def test_the_newest_readings_stand_first_and_the_last_can_be_removed():
    record = put(vessel(casts__0__curing__poured_at=POURED), "casts.0.curing.temperatures", [
        {"at": f"2026-11-24T{hour}:00", "temperature": f"{hour} °C"} for hour in (11, 14, 18)])
    log = group(card(record, temperature="F"), ".temperatures")
    assert [field["path"] for field in log["fields"]][:2] == [
        "casts.0.curing.temperatures.2.at", "casts.0.curing.temperatures.2.temperature"]
    assert len(log["fields"]) == 4 and len(log["more"]) == 2
    assert log["summary"] == "51.8 °F to 64.4 °F"
    assert log["actions"][1] == {"label": "Remove reading 3", "remove": "casts.0.curing.temperatures.2"}


def test_no_path_is_asked_twice():
    for record in (vessel(), portland(), vessel(casts__0__mix__powder__kind="own")):
        shown = card(record)
        paths = [field["path"] for part in [shown, *shown["groups"]] for field in [*part["fields"], *part["more"]]]
        assert len(paths) == len(set(paths))


@pytest.mark.parametrize("title", ["A fresh cast is still caustic, and weak", "A damp vessel spits hot wax"])
def test_what_can_hurt_stands_here(title):
    assert title in {each["title"] for each in card(vessel())["cautions"]}


def test_a_temperature_logged_before_the_pour_is_known_waits_for_it():
    record = put(vessel(), "casts.0.curing.temperatures", [{"at": POURED, "temperature": "12 °C"}])
    assert any("Type when it was poured" in note for note in card(record)["notes"])


def test_a_leak_test_wets_it_again():
    record = vessel(casts__0__curing__poured_at=POURED, casts__0__leaking__filled="1200 g")
    assert any("A leak test wets it" in note for note in card(record)["notes"])
    assert not any("A leak test" in note for note in card(vessel(casts__0__curing__poured_at=POURED))["notes"])
