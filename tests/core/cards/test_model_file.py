"""The cards of a fill that is measured by a file."""

import pytest
from vessel_models import cup, cup_vessel, plug, read_into
from vessels import figures, put, sheet, vessel

CAVITY, FILL = "casts.0.cavity", "wells.0.fill"


def card(record, name):
    return next(card for card in sheet(record)["cards"] if card["id"] == name)


def paths(fields, fill):
    return [field["path"].removeprefix(f"{fill}.") for field in fields]


def test_a_file_is_asked_for_before_anything_is_read():
    mold = card(put(vessel(), f"{CAVITY}.way", "file"), "mold")
    (pick,) = mold["picks"]
    assert (pick["label"], pick["reading"], pick["place"], pick["accept"]) == ("Choose its file", "model", CAVITY, ".stl,.3mf,.obj")
    assert pick["keep"] and not pick["again"] and mold["waiting"] == "Choose the STL, 3MF or OBJ file." and mold["answer"] == []
    assert mold["question"] == "What does its file show?" and paths(mold["fields"], CAVITY) == ["file.holds", "way"]


def test_what_was_read_stands_on_the_card():
    mold = card(cup_vessel(), "mold")
    assert mold["answer"][0]["shown"] == "147 mL" and mold["picks"][0]["says"] == "Read from cup.stl."
    assert "vessel-wall" in mold["drawing"] and mold["drawing_text"].startswith("Section of the piece: 147 mL")
    assert mold["table"]["columns"] == ["Height", "Outside", "Inside", "Wall"]
    assert mold["table"]["rows"][0]["cells"][1] == "90 mm" and mold["table"]["rows"][-1]["cells"][2:] == ["–", "–"]


def test_everything_else_is_behind_more():
    mold, well = card(cup_vessel(), "mold"), card(cup_vessel(), "well")
    assert paths(mold["more"], CAVITY)[:5] == ["file.unit", "file.up", "file.scale", "file.off", "file.section"]
    assert "file.line" in paths(well["more"], FILL) and "file.line" not in paths(mold["more"], CAVITY)
    assert well["picks"] == [] and "readings.0.water" in paths(well["more"], FILL)


def test_the_well_shows_its_line_and_its_fill_curve():
    well = card(put(cup_vessel(), f"{FILL}.file.line", "36 mm"), "well")
    assert well["answer"][0]["shown"] == "181 mL" and "curve" in well["drawing"] and "fill-line" in well["drawing"]
    assert "Fill curve, height above the floor and volume: 0 mm 0.0 mL, 9 mm 45.2 mL" in well["drawing_text"]


def test_a_section_at_any_height_is_drawn():
    plain, asked = (card(cup_vessel(**texts), "mold")["drawing"] for texts in ({}, {"file__section": "50 mm"}))
    assert "at 4" not in plain and "at 47.2 mm" in asked and "13.4 cm²" in asked


def test_another_way_up_asks_for_the_file_again():
    mold = card(cup_vessel(file__up="-z"), "mold")
    assert mold["picks"][0]["again"] and mold["picks"][0]["label"] == "Choose cup.stl again" and mold["answer"] == []
    assert mold["waiting"] == "Choose the file again: it is to stand another way now."


def test_a_damaged_reading_is_told_beside_the_button():
    mold = card(put(cup_vessel(), f"{CAVITY}.file.reading", "?"), "mold")
    assert mold["picks"][0]["says"] == mold["waiting"] != "" and mold["answer"] == []


@pytest.mark.parametrize(("record", "sentence"), [
    (put(vessel(), f"{FILL}.way", "cast_file"), "No cast is measured by the file of its piece yet"),
    (cup_vessel(cup(rooms=())), "The file shows no such room"),
    (put(cup_vessel(), f"{FILL}.file.line", "far"), "Mend the entry that is marked."),
])
def test_a_well_without_a_room_says_what_is_missing(record, sentence):
    assert card(record, "well")["waiting"].startswith(sentence)


def test_ways_are_offered_only_where_there_is_what_they_need():
    ways = [[choice["value"] for choice in next(field for field in card(record, "well")["fields"] if field["path"] == f"{FILL}.way")["choices"]]
            for record in (vessel(), cup_vessel())]
    assert "cast_file" not in ways[0] and "cast_file" in ways[1] and "file" in ways[0] and "design" not in ways[0]


def test_the_wax_and_the_wicks_follow_the_file():
    record = put(cup_vessel(), f"{FILL}.file.line", "36 mm")
    wax, wicks = card(record, "wax"), card(record, "wicks")
    assert "vessel-wall" in wax["drawing"] and 'class="wax"' in wax["drawing"]
    shape = next(field for field in wicks["fields"] if field["path"] == "wells.0.outline.shape")
    assert shape["value"] == "file" and figures(record)["wells.0.wicks.area"]["shown"] == "50.3 cm²"
    assert "file" not in [choice["value"] for choice in next(
        field for field in card(vessel(), "wicks")["fields"] if field["path"] == "wells.0.outline.shape")["choices"]]


def test_a_typed_outline_comes_first():
    record = put(put(cup_vessel(), "wells.0.outline.shape", "round"), "wells.0.outline.across", "70 mm")
    assert figures(record)["wells.0.wicks.area"]["shown"] == "38.5 cm²"


def test_a_space_for_wax_is_drawn_filled_to_its_line():
    well = card(read_into(vessel(), FILL, plug(), file__line="12 mm"), "well")
    assert 'class="water"' in well["drawing"] and 'class="ghost"' in well["drawing"] and well["picks"][0]["place"] == FILL


def test_without_sections_the_drawing_is_not_to_scale():
    mold = card(put(cup_vessel(), f"{CAVITY}.file.sections", ""), "mold")
    assert "not to scale" in mold["drawing"] and mold["table"] is None and mold["answer"][0]["shown"] == "147 mL"
