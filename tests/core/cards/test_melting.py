"""The card of melting."""

import xml.etree.ElementTree as ET
from typing import Any

from vessels import fields, put, sheet, vessel

AT = "wells.0.melting"


def record(*readings: tuple[str, str], **texts: str) -> dict[str, Any]:
    made = vessel(**{f"wells__0__{path}": text for path, text in texts.items()})
    for row, (clock, text) in enumerate(readings):
        put(made, f"{AT}.readings.{row}", {"at": f"2026-11-24T{clock}", "temperature": f"{text} °C"})
    return made


def card(made: dict[str, Any], **how: str) -> dict[str, Any]:
    return next(each for each in sheet(made, **how)["cards"] if each["id"] == "melting")


def test_a_new_vessel_is_told_its_pour_and_how_to_begin():
    found = card(record())
    assert found["answer"] == [] and found["waiting"] == "Heat to 80 °C, pour at 60 °C."
    assert found["timers"] == [] and found["drawing"] == "" and found["notes"][0].startswith("In the water bath to 80 °C")
    (log, after) = found["groups"]
    assert log["open"] and not after["open"]
    assert log["actions"] == [{"label": "Log the thermometer", "append": f"{AT}.readings",
                               "value": {"at": "", "temperature": ""}, "now": ["at"]}]


def test_an_appended_reading_is_asked_for_and_can_be_removed():
    made = record()
    put(made, f"{AT}.readings.0", {"at": "2026-11-24T10:00", "temperature": ""})
    log = card(made)["groups"][0]
    assert [field["path"] for field in log["fields"]] == [f"{AT}.readings.0.temperature", f"{AT}.readings.0.at"]
    assert log["actions"][1] == {"label": "Remove reading 1", "remove": f"{AT}.readings.0"}


def test_the_newest_readings_stand_in_the_open():
    log = card(record(("10:00", "84"), ("10:05", "80"), ("10:10", "77")))["groups"][0]
    assert [field["label"] for field in log["fields"]] == ["Reading 3", "Read", "Reading 2", "Read"]
    assert [field["label"] for field in log["more"]] == ["Reading 1", "Read"] and log["summary"] == "77 °C at last"


def test_a_cooling_pot_has_timers_and_a_chart():
    found = card(record(("10:00", "84"), ("10:10", "77")))
    assert [timer["label"] for timer in found["timers"]] == ["Fragrance in", "Stir until", "Pour"]
    assert [each["label"] for each in found["answer"]] == ["Pours at", "Pour time"]
    assert found["timers"][2]["due"][11:] == found["answer"][1]["shown"]
    ET.fromstring(found["drawing"])
    assert found["drawing_text"].startswith("2 readings: from 84 °C at 10:00 to 77 °C at 10:10. It comes to 60 °C at ")


def test_the_closed_card_fits_one_line_of_a_phone():
    logged = (("10:00", "84"), ("10:10", "77"))
    for made in (record(melting__pour_at="62.5 °C"), record(*logged), record(melting__poured="2026-11-24T10:45"),
                 record(*logged, melting__poured="2026-11-24T09:00")):
        for how in ({}, {"temperature": "F"}):
            answer = card(made, **how)["answer"]
            assert 1 <= len(answer) <= 2
            assert len("   ".join(f"{each['shown']} {each['label']}" for each in answer)) <= 34


def test_once_poured_it_tells_when_to_test():
    found = card(record(melting__poured="2028-02-16T10:45"))
    assert [(each["label"], each["shown"]) for each in found["answer"]] == [("Burn test from", "Wed, Mar 1")]
    assert found["timers"] == [{"label": "Burn test from", "due": "2028-03-01T10:45"}]
    assert found["groups"][1]["summary"] == "It has rested for its burn test on Wed, Mar 1"


def test_what_is_common_is_told_in_the_maker_s_unit():
    asked = fields(sheet(record(wax__kind="paraffin"), temperature="F"))[f"{AT}.pour_at"]
    assert asked["note"] == "Empty, so 176 °F is taken." and asked["hint"].startswith("Common: 167 °F to 185 °F. ")


def test_a_faulty_pour_leaves_the_card_waiting():
    found = card(record(melting__pour_at="200 °C"))
    assert found["answer"] == [] and found["waiting"] == "Mend the entry that is marked."
    assert found["fields"][0]["fault"].startswith("Wax here is between 30 and 120 °C")


def test_every_degree_of_the_chart_follows_the_maker():
    drawn = card(record(("10:00", "84"), ("10:10", "77")), temperature="F")["drawing"]
    assert "°F" in drawn and "°C" not in drawn


def test_a_pot_shared_with_the_first_well_is_melted_there():
    made = record()
    made["wells"].append({**made["wells"][0], "pot": "first"})
    assert [each["id"] for each in sheet(made)["cards"] if each["id"].startswith("melting")] == ["melting"]


def test_its_cautions_say_the_bath_the_lid_and_the_skin():
    found = card(record())["cautions"]
    told = " ".join(each["sentence"] for each in found)
    for words in ("water bath", "thermometer", "lid on", "a water jet never", "do not pull it off", "55 °C", "data sheet", "steam"):
        assert words in told
    assert len(found) == 4


def test_a_flash_point_that_is_passed_is_told_where_the_fragrance_goes_in():
    scents = [{"name": "Fig", "flash": "70 °C"}, {"name": "Moss", "flash": "120 °C"}]
    made = put(record(), "wells.0.fragrance.scents", scents)
    told = [note for note in card(made)["notes"] if "no flame and no spark" in note]
    assert len(told) == 1 and told[0].startswith("Fig goes in at 75 °C")
    assert not any("spark" in note for note in card(put(made, "wells.0.fragrance.load", "0"))["notes"])
