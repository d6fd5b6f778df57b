"""What of a model is filled, up to which line, as large as it is printed."""

import math

import pytest
from vessel_models import cup, cup_vessel, plug, read_into, ring
from vessels import put, vessel

from brimbook.mesh.model import UPS, Room, Section
from brimbook.mesh.units import MILLIMETERS
from brimbook.quantity.show import Display
from brimbook.record.leaves import file
from brimbook.record.said import understand
from brimbook.shape.outline import area
from brimbook.steps.file_outline import outline_at, outline_of, sides_of
from brimbook.steps.model_file import is_outdated, modeled

CAVITY, FILL = "casts.0.cavity", "wells.0.fill"
PIECE = math.pi * (45**2 * 80 - 40**2 * 72) / 1000
ROOM = math.pi * 40**2 * 72 / 1000


def found(record, fill):
    return modeled(understand(record, Display()), fill)


def faults(record, fill):
    said = understand(record, Display())
    assert modeled(said, fill) is None
    return {fault.path: fault.sentence for fault in said.faults}


def test_the_record_knows_the_ways_to_stand_and_the_units_of_models():
    assert [each.value for each in file.UPS] == list(UPS)
    assert {each.value for each in file.UNITS} == set(MILLIMETERS)


@pytest.mark.parametrize("holds", ["piece", "cavity"])
def test_a_piece_takes_what_is_solid(holds):
    assert found(cup_vessel(file__holds=holds), CAVITY).volume == pytest.approx(PIECE, rel=1e-5)


def test_a_mold_takes_what_its_room_holds_up_to_the_line():
    assert found(cup_vessel(file__holds="mold"), CAVITY).volume == pytest.approx(ROOM, rel=1e-5)
    assert found(cup_vessel(file__holds="mold", file__line="36 mm"), CAVITY).volume == pytest.approx(ROOM / 2, rel=1e-5)


def test_a_well_takes_the_room_of_the_cast():
    record = put(cup_vessel(), f"{FILL}.file.line", "36 mm")
    well = found(record, FILL)
    assert well.file == CAVITY and well.line == pytest.approx(44.0)
    assert well.volume == pytest.approx(ROOM / 2, rel=1e-5) and well.area == pytest.approx(math.pi * 1600, rel=1e-4)


def test_without_a_cast_from_a_file_there_is_no_room_of_it():
    assert found(put(vessel(), f"{FILL}.way", "cast_file"), FILL) is None
    assert found(cup_vessel(file__holds="mold"), FILL) is None


def test_a_space_for_wax_is_filled_up_to_the_line():
    record = read_into(vessel(), FILL, plug(), file__line="18 mm")
    assert found(record, FILL).volume == pytest.approx(math.pi * 1600 * 54 / 1000, rel=1e-5)


def test_the_next_well_takes_the_next_room_and_there_are_no_more_than_the_file_shows():
    small = cup(radius=30.0, height=60.0)
    record = cup_vessel(cup(rooms=(*cup().rooms, *small.rooms)))
    for number in (1, 2):
        put(record, f"wells.{number}.fill.way", "cast_file")
    assert found(record, "wells.1.fill").volume == pytest.approx(small.rooms[0].levels[-1].volume / 1000, rel=1e-4)
    assert found(record, "wells.2.fill") is None
    put(record, "wells.2.fill.file.room", "1")
    assert found(record, "wells.2.fill").volume == pytest.approx(ROOM, rel=1e-5)
    put(record, "wells.2.fill.file.room", "3")
    assert faults(record, "wells.2.fill") == {"wells.2.fill.file.room": "The file shows 2 rooms."}


def test_a_well_leaves_the_room_that_another_names():
    record = cup_vessel(cup(rooms=(*cup().rooms, *cup(radius=30.0, height=60.0).rooms)))
    put(record, "wells.1.fill.way", "cast_file")
    put(record, "wells.0.fill.file.room", "2")
    assert [found(record, f"wells.{number}.fill").rooms for number in (0, 1)] == [(1,), (0,)]


def test_the_rooms_of_a_second_cast_follow_those_of_the_first():
    record = read_into(cup_vessel(), "casts.1.cavity", cup(radius=30.0, height=60.0))
    put(record, "wells.1.fill.way", "cast_file")
    assert [found(record, f"wells.{number}.fill").file for number in (0, 1)] == [CAVITY, "casts.1.cavity"]
    put(put(record, "wells.0.fill.file.room", "2"), "wells.1.fill.file.room", "9")
    assert found(record, FILL).file == "casts.1.cavity" and found(record, "wells.1.fill") is None


def test_what_stands_in_a_room_is_not_counted_as_its_outline():
    core, wall = ring(20.0), ring(40.0)
    section = Section(20.0, (ring(45.0), wall[::-1], core), (wall,))
    assert sides_of(section, (0,)) == (wall, core[::-1]) and outline_of(section, (0,))[0] == wall
    assert outline_of(section, (0,))[1] == pytest.approx(math.pi * (40**2 - 20**2), rel=1e-6)


def test_all_rooms_of_a_mold_are_filled_together():
    both = (*cup().rooms, *cup(radius=30.0, height=60.0).rooms)
    mold = found(cup_vessel(cup(rooms=both), file__holds="mold"), CAVITY)
    assert mold.volume == pytest.approx(sum(room.levels[-1].volume for room in both) / 1000, rel=1e-4)
    half = found(cup_vessel(cup(rooms=both), file__holds="mold", file__line="50 mm"), CAVITY)
    assert half.volume == pytest.approx(math.pi * (1600 + 625) * 22 / 1000, rel=1e-4)


@pytest.mark.parametrize(("unit", "by"), [("cm", 0.1), ("in", 1 / 25.4), ("m", 0.001), ("um", 1000.0), ("ft", 1 / 304.8)])
def test_the_unit_counts(unit, by):
    assert found(cup_vessel(cup(by=by), file__unit=unit), CAVITY).volume == pytest.approx(PIECE, rel=1e-5)


def test_the_printed_scale_counts_in_all_directions():
    half = found(cup_vessel(file__scale="50 %"), CAVITY)
    assert half.volume == pytest.approx(PIECE / 8, rel=1e-5) and half.model.size == pytest.approx((45.0, 45.0, 40.0), rel=1e-5)


def test_a_line_below_the_floor_is_told():
    assert "below the floor" in faults(put(cup_vessel(), f"{FILL}.file.line", "72 mm"), FILL)[f"{FILL}.file.line"]


def test_a_damaged_reading_is_told_once():
    record = put(cup_vessel(), f"{CAVITY}.file.reading", "nonsense")
    said = understand(record, Display())
    assert modeled(said, CAVITY) is None and modeled(said, FILL) is None
    assert [fault.path for fault in said.faults] == [f"{CAVITY}.file.reading"]


def test_a_reading_of_another_way_up_no_longer_fits():
    record = cup_vessel(file__up="-z")
    assert found(record, CAVITY) is None and is_outdated(understand(record, Display()), CAVITY)
    assert not is_outdated(understand(cup_vessel(), Display()), CAVITY)
    assert not is_outdated(understand(cup_vessel(file__scale="many"), Display()), CAVITY)


def test_the_outline_is_as_large_as_the_room_at_that_height():
    lean = Room(tuple(level for level in cup().rooms[0].levels))
    well = found(cup_vessel(cup(rooms=(lean,))), FILL)
    assert area(outline_at(well, 40.0)) == pytest.approx(math.pi * 1600, rel=2e-3)
    assert outline_at(well, 200.0) is None


def test_without_sections_there_is_no_outline_but_a_volume():
    record = put(cup_vessel(), f"{CAVITY}.file.sections", "")
    well = found(record, FILL)
    assert outline_at(well, 40.0) is None and well.volume == pytest.approx(ROOM, rel=1e-5)
