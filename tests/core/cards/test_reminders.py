"""The schedule as a calendar file, by the door."""

import json

import icalendar
import pytest
from hypothesis import given
from vessels import ANYTHING, ask, put, vessel

from brimbook import door

NOW, STAMP = "2026-11-24T10:02:33", "20261124T093000Z"


def poured(**texts):
    return vessel(name="Tide cup", casts__0__curing__poured_at="2026-11-24T10:00", **texts)


def made(record, place="casts.0", now=NOW, stamp=STAMP, **settings):
    return ask("calendar", record=record, settings=settings, place=place, now=now, stamp=stamp)


def events(file):
    return icalendar.Calendar.from_ical(file["text"]).walk("VEVENT")


def fault(**request):
    whole = {"record": poured(), "settings": {}, "place": "casts.0", "now": NOW, "stamp": STAMP, **request}
    return json.loads(door.ask("calendar", json.dumps(whole)))["fault"]


def test_the_file_is_named_after_the_vessel():
    file = made(poured())
    assert (file["name"], file["kind"]) == ("tide-cup.ics", "text/calendar")


@pytest.mark.parametrize(("name", "expected"), [("", "vessel.ics"), ("茶碗", "vessel.ics"), ("Schüssel / 3", "schussel-3.ics"),
                                                ("../../x", "x.ics")])
def test_a_file_s_name_is_plain(name, expected):
    assert made(put(poured(), "name", name))["name"] == expected


def test_each_step_is_an_entry_with_what_to_do():
    found = events(made(poured()))
    assert [str(each["SUMMARY"]) for each in found][:2] == ["Tide cup: demold", "Tide cup: stop keeping damp"]
    assert found[0]["DTSTART"].dt.isoformat() == "2026-11-24T10:45:00"
    assert "12 min earlier or later" in found[0]["DESCRIPTION"] and "gloves" in found[0]["DESCRIPTION"]
    assert "steam" in found[-1]["DESCRIPTION"]


def test_the_ids_stay_when_the_times_move():
    before, after = (events(made(poured(casts__0__curing__temperature=celsius, id="3F2B-8c54"))) for celsius in ("20 °C", "9 °C"))
    assert [str(each["UID"]) for each in before] == [str(each["UID"]) for each in after]
    assert before[0]["DTSTART"].dt < after[0]["DTSTART"].dt
    assert str(before[0]["UID"]) == "3f2b-8c54-1-demold@brimbook"
    assert len({str(each["UID"]) for each in before}) == len(before)


def test_what_is_over_rings_no_more():
    found = events(made(poured(), now="2026-11-24T12:00:00"))
    assert [bool(each.walk("VALARM")) for each in found] == [False, *[True] * (len(found) - 1)]


def test_a_second_mold_is_told_apart():
    record = poured()
    record["casts"].append({"bowl": "first", "cavity": {}, "curing": {"poured_at": "2026-11-24T11:00"}})
    first, second = events(made(record)), events(made(record, "casts.1"))
    assert str(second[0]["SUMMARY"]) == "Tide cup, mold 2: demold"
    assert not {str(each["UID"]) for each in first} & {str(each["UID"]) for each in second}


@pytest.mark.parametrize("change", [
    {"record": vessel()}, {"record": None}, {"place": "casts.7"}, {"place": None}, {"place": []}, {"now": "soon"},
    {"now": None}, {"stamp": ""}, {"stamp": None}, {"stamp": "20261124T093000Z\r\nX:1"}, {"stamp": "٢٠٢٦١١٢٤T093000Z"},
    {"stamp": "20261324T093000Z"}], ids=str)
def test_what_can_t_be_made_is_one_sentence(change):
    told = fault(**change)
    assert told["detail"] == "" and told["sentence"].endswith(".")


@given(ANYTHING)
def test_any_name_and_id_make_a_calendar(scrap):
    file = made({**poured(), "name": scrap, "id": scrap})
    assert len(events(file)) == len(events(made(poured())))


def test_only_demolding_rings_at_night():
    """Poured at 21:30: demolded at 22:15, unwrapped a day later at 22:15, which rings at 8:00."""
    found = events(made(poured(), now="2026-11-01T12:00:00")), events(
        made(put(poured(), "casts.0.curing.poured_at", "2026-11-24T21:30"), now="2026-11-01T12:00:00"))
    rings = [[each.walk("VALARM")[0]["TRIGGER"].dt.total_seconds() / 3600 for each in part] for part in found]
    assert rings[0][:3] == [0, 0, 0] and rings[1][0] == 0 and rings[1][1] == 9.75
    for each in found[1][1:]:
        ring = each["DTSTART"].dt + each.walk("VALARM")[0]["TRIGGER"].dt
        assert 8 <= ring.hour <= 21


def test_vessels_without_an_id_are_told_apart_in_any_script():
    one, other = (events(made({**poured(), "name": name, "id": ""}))[0] for name in ("茶碗", "花瓶"))
    assert str(one["UID"]) != str(other["UID"]) and str(one["UID"]).isascii()


def test_sealing_has_its_caution():
    found = {str(each["SUMMARY"]): str(each["DESCRIPTION"]) for each in events(made(poured()))}
    assert "Solvents burn" in found["Tide cup: dry, as planned"]
