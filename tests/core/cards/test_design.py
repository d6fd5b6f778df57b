"""The card of the design: what it asks for each shape, the button that adds it, what it gives away."""

import io
import json
from xml.etree import ElementTree

import pytest
import trimesh
from designs import SHAPES, designed_vessel
from vessel_models import cup_vessel
from vessels import ask, put, sheet, vessel

from brimbook import door
from brimbook.record import blank


def card(record):
    return next((card for card in sheet(record)["cards"] if card["id"] == "design"), None)


def action(record):
    return next((action for action in sheet(record)["actions"] if action["label"] == "Design a vessel"), None)


def asked(record):
    return [field["path"].removeprefix("design.0.") for field in card(record)["fields"]]


def test_a_vessel_without_a_design_has_no_card_but_a_button():
    assert card(vessel()) is None and action(vessel())["append"] == "design"


def test_what_was_not_measured_yet_goes_by_the_design():
    assert action(blank.blank())["sets"] == {"casts.0.cavity.way": "design", "wells.0.fill.way": "design"}
    assert action(vessel())["sets"] == {}
    assert action({"wells": [{}]})["sets"] == {"wells.0.fill.way": "design"}


def test_a_well_that_takes_its_room_from_a_file_keeps_it():
    assert action(cup_vessel())["sets"] == {}


def test_removing_the_design_leaves_no_fill_without_a_way():
    record = put(put(designed_vessel(), "casts.1.cavity.way", "design"), "wells.1.fill.way", "design")
    (remove,) = card(record)["actions"]
    assert remove["sets"] == {"casts.0.cavity.way": "on_scale", "casts.1.cavity.way": "on_scale",
                              "wells.0.fill.way": "poured_out", "wells.1.fill.way": "poured_out"}


@pytest.mark.parametrize("shape", SHAPES)
def test_mold_and_well_are_drawn_as_designed(shape):
    mold, well = (next(each for each in sheet(designed_vessel(shape))["cards"] if each["id"] == name) for name in ("mold", "well"))
    assert mold["drawing_text"].startswith("Section of the piece") and "water" not in mold["drawing"]
    assert "not to scale" not in mold["drawing"] + well["drawing"] and 'class="water"' in well["drawing"]
    assert [field["path"] for field in well["more"]] == ["wells.0.fill.line_error"] and mold["more"] == []


def test_what_the_button_adds_is_a_design_to_be_filled_in():
    record = blank.blank()
    offered = action(record)
    put(record, "design.0", offered["value"])
    for path, text in offered["sets"].items():
        put(record, path, text)
    shown = card(record)
    assert shown["chapter"] == "Design" and sheet(record)["cards"][0]["id"] == "design" and action(record) is None
    assert shown["waiting"] == "Type the sizes that you want." and not shown["drawing"]
    (remove,) = shown["actions"]
    assert remove["remove"] == "design.0" and set(remove["sets"].values()) == {"on_scale", "poured_out"}


@pytest.mark.parametrize(("shape", "sizes"), [
    ("round", ["across"]), ("tapered", ["across", "bottom"]), ("oval", ["across", "other"]), ("rectangle", ["across", "other"]),
    ("polygon", ["across", "sides"]), ("bowl", ["across"]), ("path", ["path"])])
def test_each_shape_asks_for_what_tells_it(shape, sizes):
    assert asked(designed_vessel(shape)) == ["shape", *sizes, "height", "wall_thickness", "floor_thickness", "line"]


@pytest.mark.parametrize("shape", SHAPES)
def test_it_is_drawn_and_told_in_words(shape):
    shown = card(designed_vessel(shape, lean="2"))
    assert ElementTree.fromstring(shown["drawing"]).tag.endswith("svg")
    assert shown["drawing_text"].startswith("Outside ") and shown["drawing_text"] in shown["notes"]
    assert [figure["label"] for figure in shown["answer"]] == ["The cast, fresh", "Filling"]


@pytest.mark.parametrize("shape", SHAPES)
def test_the_file_is_a_closed_solid_of_that_volume(shape):
    record = {**designed_vessel(shape, lean="2"), "name": "Tide cup"}
    made = ask("design_model", record=record, settings={}, place="design.0")
    body = trimesh.load(io.StringIO(made["text"]), file_type="stl")
    cast = next(figure for figure in card(record)["figures"] if figure["key"] == "design.0.cast")["value"]
    assert made["name"] == "tide-cup-design.stl" or made["name"].endswith("-design.stl")
    assert body.is_watertight and body.volume / 1000 == pytest.approx(cast, rel=2e-3)


def test_without_sizes_there_is_no_file():
    reply = json.loads(door.ask("design_model", json.dumps({"record": vessel(), "settings": {}, "place": "design.0"})))
    assert "Type the sizes" in reply["fault"]["sentence"]


def test_more_designs_than_one_are_kept_and_the_first_is_shown():
    record = designed_vessel()
    record["design"].append({"across": "50 mm"})
    assert len([each for each in sheet(record)["cards"] if each["title"].startswith("Design")]) == 1
    assert ask("work_out", record=record, settings={})["record"]["design"][1] == {"across": "50 mm"}
