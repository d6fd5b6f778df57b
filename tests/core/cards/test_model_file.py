"""The cards of a fill that is measured by a file."""

import pytest
from vessel_models import cup, cup_vessel, plug, read_into
from vessels import figures, put, sheet, vessel

from brimbook.mesh.model import Section

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
    assert mold["table"]["columns"] == ["Height, mm", "Outside, mm", "Inside, mm", "Wall, mm"]
    rows = [row["cells"] for row in mold["table"]["rows"]]
    assert len(rows) == 5 and rows[0][1:] == ["90", "80", "5"] and rows[-1][2:] == ["–", "–"]


def test_a_table_in_inches_is_told_in_tenths():
    table = next(card for card in sheet(cup_vessel(), length="in", decimal="comma")["cards"] if card["id"] == "mold")["table"]
    assert table["columns"][0] == "Height, in" and table["rows"][0]["cells"][1:4:2] == ["3,5", "0,2"]


def test_the_wall_beside_a_room_that_stands_to_one_side_is_the_thinner_one():
    inside = ((10.0, 10.0), (40.0, 10.0), (40.0, 60.0), (10.0, 60.0))
    outside = ((0.0, 0.0), (120.0, 0.0), (120.0, 70.0), (0.0, 70.0))
    sections = tuple(Section(height, (outside, inside[::-1]), (inside,)) for height in (20.0, 60.0))
    table = card(cup_vessel(cup(sections=sections, size=(120.0, 70.0, 80.0))), "mold")["table"]
    assert [row["cells"] for row in table["rows"]] == [["60", "120", "30", "10"], ["20", "120", "30", "10"]]


def test_a_solid_has_no_inside_in_its_table_nor_its_tip():
    tip = Section(71.9, (((0.0, 0.0), (0.2, 0.0), (0.2, 0.2)),), ())
    table = card(read_into(vessel(), FILL, plug(sections=(*plug().sections, tip))), "well")["table"]
    assert table["columns"] == ["Height, mm", "Across, mm"] and table["rows"][0]["cells"][1] == "80"


def test_everything_else_is_behind_more():
    mold, well = card(cup_vessel(), "mold"), card(cup_vessel(), "well")
    assert paths(mold["more"], CAVITY)[:5] == ["file.unit", "file.up", "file.scale", "file.off", "file.section"]
    assert "file.line" not in paths([*mold["fields"], *mold["more"]], CAVITY)
    assert well["picks"] == [] and "readings.0.water" in paths(well["more"], FILL)


def test_which_room_is_asked_where_there_are_several():
    second = put(read_into(cup_vessel(), "casts.1.cavity", cup()), "wells.1.fill.way", "cast_file")
    assert paths(card(second, "well")["fields"], FILL)[0] == "file.room"
    assert paths(card(cup_vessel(cup(rooms=cup().rooms * 2), file__holds="mold"), "mold")["fields"], CAVITY)[1] == "file.room"


def test_the_line_is_asked_in_the_open_where_there_is_one():
    assert paths(card(cup_vessel(), "well")["fields"], FILL)[:2] == ["file.line", "way"]
    assert "file.line" in paths(card(cup_vessel(file__holds="mold"), "mold")["fields"], CAVITY)


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
    (cup_vessel(file__holds="mold"), "The file in the card Mold shows the mold, not the piece."),
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
