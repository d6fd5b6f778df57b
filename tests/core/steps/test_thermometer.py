"""The thermometer's log: which readings count."""

from typing import Any

import pytest
from vessels import put, vessel

from brimbook.quantity.moments import read_moment
from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.thermometer import log_of


def log(*readings: tuple[str, str], room: float = 20.0, scented: float | None = None, set_below: float | None = None) -> Any:
    record = vessel()
    for row, (clock, text) in enumerate(readings):
        put(record, f"wells.0.melting.readings.{row}.at", f"2026-11-24T{clock}")
        put(record, f"wells.0.melting.readings.{row}.temperature", text)
    return log_of(understand(record, Display()), "wells.0", room, scented, set_below)


def test_readings_stand_in_the_order_of_time():
    found = log(("10:12", "74"), ("10:00", "84"), ("10:05", "80"))
    assert found.runs == (((0, 84), (5, 80), (12, 74)),)
    assert (found.first, found.newest) == (read_moment("2026-11-24T10:00"), read_moment("2026-11-24T10:12"))
    assert found.read == 74 and found.notes == ()


def test_what_is_missing_or_faulty_is_skipped():
    assert log(("10:00", "84"), ("10:05", ""), ("10:06", "warm"), ("9", "80"), ("10:12", "130")).runs == (((0, 84),),)
    assert log() is None and log(("10:00", "")) is None


def test_of_one_minute_one_reading_is_kept():
    assert log(("10:00", "84"), ("10:00", "83")).runs == (((0, 83),),)


def test_a_pot_that_was_heated_starts_anew_at_its_hottest():
    found = log(("10:00", "70"), ("10:05", "66"), ("10:15", "80"), ("10:17", "80.5"), ("10:20", "79"), ("10:30", "72"))
    assert found.runs == (((0, 80.5), (3, 79), (13, 72)),)
    assert "rose" in found.notes[0]


def test_a_hundredth_up_is_not_heating():
    found = log(("10:00", "84"), ("10:05", "80"), ("10:06", "80.6"), ("10:15", "75"))
    assert len(found.runs[0]) == 4 and found.notes == ()


def test_another_day_is_another_pot():
    found = log(("02:00", "84"), ("02:10", "80"), ("10:00", "79"), ("10:10", "74"))
    assert found.runs == (((0, 79), (10, 74)),) and found.notes == ()


@pytest.mark.parametrize("text", ["20", "21.9", "5"])
def test_what_is_no_warmer_than_the_room_is_left_out_and_told(text):
    found = log(("10:00", "84"), ("10:30", text))
    assert found.runs == (((0, 84),),) and "no warmer than the room" in found.notes[0]


def test_set_wax_is_left_out_and_told():
    found = log(("10:00", "60"), ("10:10", "55"), ("10:30", "48"), set_below=49.0)
    assert found.runs == (((0, 60), (10, 55)),) and "49 °C" in found.notes[0]


def test_the_fragrance_parts_the_log():
    readings = (("10:00", "80"), ("10:05", "75"), ("10:08", "71"), ("10:12", "69"))
    assert log(*readings, scented=75).runs == (((0, 80), (5, 75)), ((8, 71), (12, 69)))
    assert log(*readings, scented=None).runs == (((0, 80), (5, 75), (8, 71), (12, 69)),)
    assert log(*readings, scented=85).runs == log(*readings, scented=60).runs == log(*readings).runs


def test_a_long_log_is_read_from_its_end():
    record = vessel()
    for row in range(600):
        put(record, f"wells.0.melting.readings.{row}", {"at": f"2026-11-24T{row // 300:02d}:{row // 5 % 60:02d}",
                                                        "temperature": f"{90 - row / 20:.2f}"})
    found = log_of(understand(record, Display()), "wells.0", 20.0, None, None)
    assert len(found.runs[0]) == 20
