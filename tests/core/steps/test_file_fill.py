"""The figures of a fill from a file, with their working and ±."""

import math

import pytest
from arithmetic import works_out
from vessel_models import cup, cup_vessel, plug, read_into
from vessels import DISPLAYS, figures, put, vessel

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
    assert told[f"{CAVITY}.volume"]["plus_minus"] == "± 17 mL"
    wet, top = math.pi * (40**2 + 2 * 40 * 72) * 0.3 / 1000, math.pi * 40**2 / 1000
    room = understand(record, Display())
    assert wetted(modeled(room, FILL)) * 0.3 / 1000 == pytest.approx(wet, rel=0.002)
    assert float(told[f"{FILL}.volume"]["plus_minus"].split()[1]) == pytest.approx(math.hypot(wet, top), abs=0.1)


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
