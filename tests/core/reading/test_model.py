"""A file read for a fill: what it writes, what it says, and that it leaves alone what the maker typed."""

import json

import models
import pytest
from vessels import figures, put, sheet, vessel

from brimbook.reading import file

CAVITY, FILL = "casts.0.cavity", "wells.0.fill"
CUP = models.as_stl(models.cup())


def read(record, place=CAVITY, name="cup.stl", data=CUP):
    *told, last = (json.loads(text) for text in file.read("model", json.dumps({"record": record, "place": place, "name": name}), data))
    assert all("progress" in each for each in told)
    return last


def answer(*arguments, **named):
    reply = read(*arguments, **named)
    assert "answer" in reply, reply
    return reply["answer"]


def taken(record, *arguments, **named):
    for path, text in answer(record, *arguments, **named)["sets"].items():
        put(record, path, text)
    return record


def empty():
    return put(vessel(), f"{FILL}.readings.0.water", "")


def test_a_piece_fills_the_mold_and_its_room_the_well():
    record = taken(empty())
    told = figures(record)
    share = models.facet_share(48)
    assert told[f"{CAVITY}.volume"]["value"] == pytest.approx(147.027 * share, rel=1e-4)
    assert told[f"{FILL}.volume"]["value"] == pytest.approx(361.911 * share, rel=1e-4)
    assert "wells.0.wicks.needed" in told and sheet(record)["faults"] == []


def test_what_was_read_is_told_in_one_sentence():
    assert answer(empty())["says"].replace("\u00a0", " ") == ("Read cup.stl: 90 × 90 × 80 mm, 147 mL; its room holds 361 mL to the brim. "
                                       "The well takes its room from it.")


def test_a_well_that_was_measured_keeps_its_readings():
    assert f"{FILL}.way" not in answer(vessel())["sets"]


def test_a_well_s_own_file_is_a_space_for_wax_or_a_piece_by_its_rooms():
    assert answer(vessel(), FILL)["sets"][f"{FILL}.file.holds"] == "piece"
    assert answer(vessel(), FILL, data=models.as_stl(models.cylinder()))["sets"][f"{FILL}.file.holds"] == "wax"


def test_what_the_maker_chose_stays():
    record = put(vessel(), f"{CAVITY}.file.holds", "mold")
    assert f"{CAVITY}.file.holds" not in answer(record)["sets"]
    again = put(taken(empty()), f"{CAVITY}.file.unit", "in")
    assert answer(again)["sets"][f"{CAVITY}.file.unit"] == "in"
    assert answer(again, name="bowl.stl")["sets"][f"{CAVITY}.file.unit"] == "mm"


def test_the_same_file_is_read_another_way_up_and_another_file_as_it_stands_best():
    record = put(taken(empty()), f"{CAVITY}.file.up", "-z")
    assert answer(record)["sets"][f"{CAVITY}.file.up"] == "-z"
    assert answer(record, name="bowl.stl")["sets"][f"{CAVITY}.file.up"] == "+z"


def test_another_file_forgets_the_line_of_the_first():
    record = put(taken(vessel(), FILL), f"{FILL}.file.line", "12 mm")
    assert f"{FILL}.file.line" not in answer(record, FILL)["sets"]
    assert answer(record, FILL, name="bowl.stl")["sets"][f"{FILL}.file.line"] == ""


@pytest.mark.parametrize(("name", "kept"), [("C:\\molds\\cup.stl", "cup.stl"), ("a/b/cup.stl", "cup.stl"), ("x" * 300 + ".stl", None)])
def test_only_a_file_s_own_name_is_kept(name, kept):
    told = answer(vessel(), name=name)["sets"][f"{CAVITY}.file.name"]
    assert told == kept or (kept is None and len(told) <= 120 and told.endswith(".stl"))


@pytest.mark.parametrize("place", ["casts.7.cavity", "casts.x.cavity", "wells.0", "", "casts", None, 5])
def test_a_place_that_is_gone_is_told(place):
    assert read(vessel(), place)["fault"]["detail"] == ""


@pytest.mark.parametrize("record", [None, [], {}, {"casts": "none"}])
def test_any_record_is_answered(record):
    assert read(record)["fault"]["detail"] == ""


def test_a_file_that_is_none_is_told():
    assert read(vessel(), data=b"nothing of the kind")["fault"]["detail"] == ""
