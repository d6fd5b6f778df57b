"""What is told about a file's surface, its bodies, its unit, and what is hard to cast."""

import pytest
from vessel_models import cup, cup_vessel, gap, plug, read_into
from vessels import notes, put, sheet, vessel

from brimbook.mesh.model import Draft


def told(model=None, **texts):
    return " ".join(notes(sheet(cup_vessel(model or cup(**DRAFTED), **texts))))


DRAFTED = {"inner": Draft(2.0, 0.0, 0.0)}


@pytest.mark.parametrize(("changed", "texts", "sentence"), [
    ({"open_edges": 9, "gaps": (gap(), gap(around=6.0))}, {},
     "The surface has 2 holes, the largest near 12 mm from the left, 30 mm from the front, 45 mm above the bottom, 18 mm around."),
    ({"open_edges": 3, "gaps": (gap(),)}, {}, "The surface has a hole, near 12 mm from the left"),
    ({"open_edges": 3}, {}, "The surface is open."),
    ({"turned": 1}, {}, "1 triangle faces the wrong way"), ({"turned": 4}, {}, "4 triangles face the wrong way"),
    ({"bodies": 3}, {}, "The file holds 3 bodies. All are counted."),
    ({"crossing": True, "bodies": 2}, {}, "the volume is counted twice"),
    ({"hollows": 1}, {}, "a closed hollow inside"), ({"hollows": 2}, {}, "2 closed hollows inside"),
    ({"thinnest": (2.4, 40.0)}, {}, "The thinnest wall is 2.4 mm, 40 mm above the bottom."),
    ({"inner": Draft(-3.0, 0.0, 0.25)}, {}, "25 % of the walls of the room hang over"),
    ({"inner": Draft(0.0, 1.0, 0.0)}, {}, "All walls of the room stand upright"),
    ({}, {"file__scale": "50 %"}, "Printed at 50 % of the drawing: 40 mm high."),
    ({"notes": ("A part of the file was left out.",)}, {}, "A part of the file was left out."),
])
def test_what_is_wrong_is_told(changed, texts, sentence):
    assert sentence in told(cup(**{**DRAFTED, **changed}), **texts)
    assert sentence not in told(cup(**DRAFTED))


def test_a_unit_in_doubt_is_told_and_asked_in_the_open():
    page = sheet(cup_vessel(cup(by=1 / 25.4), file__unit="in"))
    assert any("doesn't say its unit: it is 80 mm high if drawn in inches" in note for note in notes(page))
    assert [field["path"] for field in page["cards"][0]["fields"]][1] == "casts.0.cavity.file.unit"
    assert "doesn't say" not in told()


@pytest.mark.parametrize(("scale", "word"), [("1000 %", "large"), ("10 %", "small"), ("100 %", "")])
def test_a_size_that_no_vessel_has_is_told(scale, word):
    notes = told(file__scale=scale)
    assert (f"which is {word} for a vessel" in notes) if word else "for a vessel" not in notes


def test_walls_of_a_mold_that_hold_the_piece_are_told():
    assert "25 % of the walls of the room hang over" in told(cup(inner=Draft(-3.0, 0.0, 0.25)), file__holds="mold")
    assert "outside" not in told(cup(inner=Draft(-3.0, 0.0, 0.25)), file__holds="mold")


@pytest.mark.parametrize(("line", "sentence"), [("", "The wax ends at the brim"), ("2 mm", "only 2 mm below the brim"), ("10 mm", "")])
def test_wax_to_the_brim_is_told(line, sentence):
    notes_told = " ".join(notes(sheet(put(cup_vessel(cup(**DRAFTED)), "wells.0.fill.file.line", line))))
    assert sentence in notes_told and ("runs over easily" in notes_told) == bool(sentence)
    assert "runs over" not in " ".join(notes(sheet(read_into(vessel(), "wells.0.fill", plug()))))


def test_rooms_that_no_well_takes_and_rooms_that_two_take_are_told():
    two = cup(**DRAFTED, rooms=(*cup().rooms, *cup(radius=30.0, height=60.0).rooms))
    record = cup_vessel(two)
    assert any("has 2 rooms, and wells here are filled from 1 of them" in note for note in notes(sheet(record)))
    put(record, "wells.1.fill.way", "cast_file")
    assert not any("rooms" in note for note in notes(sheet(record)))
    put(put(record, "wells.0.fill.file.room", "2"), "wells.1.fill.file.room", "2")
    assert any("Well 2 is filled from the same room." in note for note in notes(sheet(record)))


def test_an_outside_that_narrows_upward_is_cast_the_other_way_up():
    assert "hang over" not in told(cup(**{**DRAFTED, "outer": Draft(-4.0, 0.0, 1.0)}))


def test_a_mold_and_a_space_for_wax_need_no_thick_walls():
    assert "thinnest wall" not in told(cup(thinnest=(1.2, 20.0)), file__holds="mold").lower()
    assert not any("hang over" in note for note in notes(sheet(read_into(vessel(), "wells.0.fill", plug(outer=Draft(-5.0, 0.0, 0.5))))))
