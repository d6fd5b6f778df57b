"""The figures of a fill from a file, with their working and ±."""

import math

import pytest
from arithmetic import works_out
from vessel_models import cup, cup_vessel, plug, read_into, ring
from vessels import DISPLAYS, figures, put, sheet, vessel

from brimbook.mesh.model import Level, Room, Section
from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.file_fill import wetted
from brimbook.steps.model_file import modeled

CAVITY, FILL = "casts.0.cavity", "wells.0.fill"


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
@pytest.mark.parametrize("texts", [{}, {"file__scale": "73.5 %"}, {"file__unit": "in", "file__scale": "4 %"}, {"file__holds": "mold"},
                                   {"readings__0__water": "180 g"}], ids=str)
def test_every_number_works_out(texts, how):
    for key, figure in figures(put(cup_vessel(**texts), f"{FILL}.file.line", "0.2 mm"), **how).items():
        if key.startswith((CAVITY, FILL)):
            told, off, _ = works_out(figure, how.get("decimal") == "comma")
            assert abs(figure["value"] * (100 if figure["unit"] == "–" else 1) - told) <= off, key


def test_sizes_walls_and_rooms_are_told():
    told = {key.removeprefix(f"{CAVITY}.file."): figure["shown"] for key, figure in figures(cup_vessel(readings__0__water="")).items()
            if ".cavity.file." in key}
    assert told == {"room_1": "362 mL", "wide": "90 mm", "deep": "90 mm", "high": "80 mm", "surface": "534 cm²", "wall": "5 mm", "floor": "8 mm",
                    "outer_draft": "0.0°", "inner_draft": "0.0°"}


def test_the_surface_and_the_line_make_the_plus_minus():
    record = cup_vessel(file__off="0.3 mm")
    put(record, f"{FILL}.file.off", "0.3 mm")
    put(record, f"{FILL}.line_error", "1 mm")
    told = figures(record)
    assert told[f"{CAVITY}.volume"]["plus_minus"] == "± 8.2 mL"
    wet, top, shrunk = math.pi * (40**2 + 2 * 40 * 72) * 0.15 / 1000, math.pi * 40**2 / 1000, 0.009 * math.pi * 40**2 * 72 / 1000
    room = understand(record, Display())
    assert wetted(modeled(room, FILL)) * 0.15 / 1000 == pytest.approx(wet, rel=0.002)
    assert float(told[f"{FILL}.volume"]["plus_minus"].split()[1]) == pytest.approx(math.hypot(wet, top, shrunk), abs=0.1)
    assert [each["name"] for each in told[f"{FILL}.volume"]["working"]["constants"]][1:] == ["Sizes of a print are off by", "A print shrinks by up to"]


@pytest.mark.parametrize("name", ["file.off", "line_error"])
def test_with_a_faulty_part_of_the_plus_minus_there_is_no_volume(name):
    record = put(cup_vessel(), f"{FILL}.{name}", "wide")
    assert f"{FILL}.volume" not in figures(record) and f"{CAVITY}.volume" in figures(record)
    assert next(card for card in sheet(record)["cards"] if card["id"] == "well")["waiting"] == "Mend the entry that is marked."


def test_a_core_is_wetted_too():
    """A mold 45 mm wide around a core of 42 mm: both walls, and the floor between them."""
    core, wall = (ring(radius, (60.0, 60.0)) for radius in (42.0, 45.0))
    area = math.pi * (45**2 - 42**2)
    room = Room((Level(10.0, 0.0, 0.0, area), Level(70.0, 60 * area, area, 0.0)))
    sections = tuple(Section(height, (ring(60.0, (60.0, 60.0)), wall[::-1], core), (wall,)) for height in (20.0, 50.0))
    record = cup_vessel(cup(rooms=(room,), sections=sections, size=(120.0, 120.0, 80.0)), file__holds="mold")
    found = modeled(understand(record, Display()), CAVITY)
    assert wetted(found) == pytest.approx(area + 2 * math.pi * (45 + 42) * 60, rel=0.005)
    assert found.volume == pytest.approx(area * 60 / 1000)


def test_a_core_is_wetted_through_a_link_too():
    """Without its sections, as a link brings it, by the surface that the file's reading tells of the room."""
    area, walls = math.pi * (45**2 - 42**2), 2 * math.pi * (45 + 42) * 60
    room = Room((Level(10.0, 0.0, 0.0, area), Level(70.0, 60 * area, area, 0.0)), area + walls)
    record = cup_vessel(cup(rooms=(room,), sections=(), size=(120.0, 120.0, 80.0)), file__holds="mold")
    assert wetted(modeled(understand(record, Display()), CAVITY)) == pytest.approx(area + walls, rel=1e-4)
    half = understand(put(record, f"{CAVITY}.file.line", "30 mm"), Display())
    assert area + walls / 3 < wetted(modeled(half, CAVITY)) < area + walls


def test_the_top_of_a_space_for_wax_is_no_wall():
    said = understand(read_into(vessel(), FILL, plug()), Display())
    assert wetted(modeled(said, FILL)) == pytest.approx(math.pi * (40**2 + 2 * 40 * 72), rel=0.002)


def test_all_rooms_of_a_mold_are_wetted():
    side = tuple((x + 100.0, y) for x, y in ring(40.0))
    rooms = cup().rooms * 2
    sections = tuple(Section(height, (), (ring(40.0), side)) for height in (20.0, 50.0))
    said = understand(cup_vessel(cup(rooms=rooms, sections=sections, size=(190.0, 90.0, 80.0)), file__holds="mold"), Display())
    assert wetted(modeled(said, CAVITY)) == pytest.approx(2 * math.pi * (40**2 + 2 * 40 * 72), rel=0.002)


def test_without_sections_a_room_is_taken_as_round():
    said = understand(put(cup_vessel(), f"{CAVITY}.file.sections", ""), Display())
    assert wetted(modeled(said, FILL)) == pytest.approx(math.pi * (40**2 + 2 * 40 * 72), rel=0.001)


def test_only_the_surface_below_the_line_is_wetted():
    said = understand(put(cup_vessel(), f"{FILL}.file.line", "36 mm"), Display())
    assert wetted(modeled(said, FILL)) == pytest.approx(math.pi * (40**2 + 2 * 40 * 36), rel=0.002)


def test_a_space_for_wax_tells_its_depth_and_its_surface():
    told = figures(read_into(vessel(), FILL, plug(), file__line="12 mm"))
    assert told[f"{FILL}.file.depth"]["shown"] == "60 mm" and told[f"{FILL}.file.line_area"]["shown"] == "50.3 cm²"
    assert f"{FILL}.file.floor" not in told


def test_a_cast_of_several_rooms_numbers_them():
    told = figures(cup_vessel(cup(rooms=(*cup().rooms, *cup(radius=30.0).rooms))))
    assert [told[f"{CAVITY}.file.room_{number}"]["label"][:6] for number in (1, 2)] == ["Room 1", "Room 2"]
