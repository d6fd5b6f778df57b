"""Melting: temperatures, and when the pot is due."""

from typing import Any

import pytest
from vessels import put, vessel

from brimbook.candle.cooling import cooled, half_time, wait
from brimbook.quantity.moments import MINUTE, moment_text
from brimbook.quantity.show import Display
from brimbook.work_out import work_out

AT = "wells.0.melting"
FALLING = (("10:00", "84"), ("10:10", "77"))


def melt(*readings: tuple[str, str], display: Display = Display(), **texts: str) -> Any:
    record = vessel(**{f"wells__0__{path}": text for path, text in texts.items()})
    for row, (clock, text) in enumerate(readings):
        put(record, f"{AT}.readings.{row}", {"at": f"2026-11-24T{clock}", "temperature": text})
    return work_out(record, display).melts["wells.0"]


def figures(found: Any) -> dict[str, Any]:
    return {figure.key.removeprefix(f"{AT}."): figure for figure in found.figures}


def due(found: Any) -> dict[str, str]:
    return {each.label: moment_text(each.at)[11:] for each in found.due}


def test_without_readings_its_temperatures_are_told_and_nothing_is_due():
    found = melt()
    assert {name: figure.shown for name, figure in figures(found).items()} == {
        "melt_at": "80 °C", "scent_at": "75 °C", "pour_at": "60 °C"}
    assert found.due == () and found.log is found.pace is None
    assert "Common for this wax: 55 °C to 65 °C" in figures(found)["pour_at"].spread


def test_the_order_at_the_bench():
    assert melt(melting__vessel_at="40 °C", melting__second_at="66 °C").bench == (
        "In the water bath to 80 °C, then off the heat.", "At 75 °C the fragrance, then stir slowly for 2 min.",
        "Fragrance from the room takes the pot from 75 °C to about 72 °C.",
        "Warm the vessel to 40 °C. Pour at 60 °C, slowly.", "Once that has set, heat the wax for a top-up to 66 °C.")
    assert melt(fragrance__load="0 %").bench == ("In the water bath to 80 °C, then off the heat.", "Pour at 60 °C, slowly.")
    assert "about 161 °F" in melt(display=Display(temperature="F")).bench[2]


def test_a_line_for_set_wax_has_a_second_pour_at_the_bench():
    """It is kept back, and heated to what is usual, whether the maker typed that or not."""
    assert melt(basis="set").bench[-1] == "Once that has set, heat what you kept back to 65 °C for the second pour."
    assert melt(basis="set", melting__second_at="66 °C").bench[-1].endswith("to 66 °C for the second pour.")
    assert not any("top-up" in each or "kept back" in each for each in melt().bench)


def test_without_fragrance_no_note_speaks_of_it():
    notes = " ".join(melt(fragrance__load="0 %", melting__melt_at="70 °C", melting__pour_at="78 °C").notes)
    assert "ragrance" not in notes and "poured at 78 °C, hotter than the wax gets, 70 °C" in notes


def test_wax_that_is_not_heated_through_is_told():
    told = "At 55 °C it may not melt all through: it melts at up to 57 °C."
    assert told in melt(melting__melt_at="55 °C").notes and not any("melt all" in note for note in melt(melting__melt_at="57 °C").notes)
    assert any("up to 62 °C" in note for note in melt(melting__melt_at="60 °C", melting__melts_at="62 °C").notes)


def test_a_bath_does_not_reach_where_its_water_boils():
    assert any("water bath can't reach" in note for note in melt(melting__melt_at="100 °C").notes)
    assert not any("water bath can't reach" in note for note in melt(melting__melt_at="99 °C").notes)


def test_a_reading_in_the_minute_of_the_pour_asks_for_no_second_one():
    found = melt(*FALLING, ("10:40", "60"), melting__poured="2026-11-24T10:40")
    assert list(due(found)) == ["Burn test from"] and not any("warm it up again" in note for note in found.notes)


def test_one_reading_tells_no_pace_and_says_so():
    found = melt(("10:00", "84"))
    assert found.due == () and "pour" not in figures(found) and any("again" in note for note in found.notes)


def test_two_readings_tell_when_it_is_due():
    found = melt(*FALLING, fragrance__load="0 %")
    half = half_time(84, 77, 10, 20)
    assert figures(found)["half_time"].value == pytest.approx(half)
    assert figures(found)["pour"].value == pytest.approx(wait(77, 60, 20, half))
    assert figures(found)["pour"].shown == due(found)["Pour"] == "10:41" and list(due(found)) == ["Pour"]
    assert figures(found)["pour"].plus_minus > 5


def test_fragrance_is_due_first_and_brings_the_pour_forward():
    plain, scented = melt(*FALLING, fragrance__load="0 %"), melt(*FALLING, fragrance__load="10 %")
    assert list(due(scented)) == ["Fragrance in", "Stir until", "Pour"]
    assert scented.due[1].at - scented.due[0].at == 2 * MINUTE
    half = figures(scented)["half_time"].value
    # Cooled to the fragrance, taken down by it, and cooled on to the pour.
    first, then = wait(77, 75, 20, half), wait(20 + 55 / 1.1, 60, 20, half)
    assert figures(scented)["scent"].value == pytest.approx(first)
    assert figures(scented)["pour"].value == pytest.approx(first + then)
    assert figures(scented)["pour"].value < figures(plain)["pour"].value


def test_with_the_fragrance_in_only_the_pour_is_due():
    found = melt(*FALLING, ("10:16", "71"), ("10:22", "67.5"))
    assert list(due(found)) == ["Pour"] and "scent" not in figures(found)
    assert "1 +" not in figures(found)["pour"].numbers


def test_it_is_not_poured_before_it_is_stirred():
    found = melt(*FALLING, melting__pour_at="74.5", melting__stir="10 min")
    assert figures(found)["pour"].value == pytest.approx(figures(found)["scent"].value + 10)
    assert due(found)["Pour"] == due(found)["Stir until"]


def test_more_readings_narrow_the_plus_minus():
    pot = [(f"10:{minutes:02d}", f"{cooled(84, 20, 60, minutes):.3f}") for minutes in range(0, 21, 2)]
    few, many = (melt(*some, fragrance__load="0 %") for some in (pot[::10], pot))
    assert figures(many)["pour"].plus_minus < figures(few)["pour"].plus_minus
    assert figures(many)["pour"].value == pytest.approx(figures(few)["pour"].value, abs=0.2)


def test_a_fall_too_small_to_tell_is_not_drawn_out():
    found = melt(("10:00", "84"), ("10:02", "83.5"))
    assert found.due == () and any("don't tell" in note for note in found.notes)


@pytest.mark.parametrize(("texts", "words"), [
    ({"melting__melt_at": "105 °C"}, "water bath can't reach 105 °C"),
    ({"melting__scent_at": "90 °C"}, "hotter than the wax gets"),
    ({"melting__pour_at": "78 °C"}, "hotter than where the fragrance goes in"),
    ({"melting__pour_at": "56 °C"}, "begin to set at 57 °C"),
    ({"melting__pour_at": "45 °C"}, "set below 49 °C"),
    ({"melting__vessel_at": "60 °C"}, "above about 45 °C"),
    ({"melting__pour_at": "50 °C", "melting__melts_at": "40 °C"}, "wax burns skin: 48 °C"),
    ({"melting__pour_at": "45 °C", "melting__melts_at": "40 °C"}, "wax hurts: 44 °C"),
    ({}, "burns skin to blisters: 55 °C"),
])
def test_what_is_odd_is_told(texts, words):
    assert any(words in note for note in melt(**texts).notes)


def test_plain_temperatures_have_no_odd_notes():
    assert len(melt().notes) == 1
    assert melt(melting__pour_at="43 °C", melting__melts_at="40 °C").notes == ()


def test_a_pot_that_is_too_cold_is_told_and_not_timed():
    found = melt(("10:00", "65"), ("10:15", "57"))
    assert due(found) == {} and figures(found)["pour"].value < 0 and figures(found)["pour"].says.startswith("It came to 60 °C")
    assert any("warm it up again" in note for note in found.notes)


def test_a_room_as_warm_as_the_pour_is_told():
    found = melt(("10:00", "70"), ("10:10", "55"), melting__room="40 °C", melting__pour_at="41 °C", fragrance__load="0 %")
    assert found.due == () and any("room is as warm" in note for note in found.notes)


def test_once_poured_its_rest_is_due():
    found = melt(*FALLING, melting__poured="2026-11-24T10:45")
    assert list(due(found)) == ["Burn test from"] and "pour" not in figures(found)
    rested = figures(found)["rested"]
    assert (rested.value, rested.shown, rested.unit) == (14, "Tue, Dec 8", "d")
    assert rested.constants[0].source.standing == "second hand"
    assert figures(melt(melting__poured="2028-02-16T10:00"))["rested"].shown == "Wed, Mar 1"
    assert figures(melt(melting__poured="2027-02-16T10:00"))["rested"].shown == "Tue, Mar 2"
    own = figures(melt(melting__poured="2028-02-16T10:00", melting__rest="3"))["rested"]
    assert (own.value, own.constants[0].source.standing) == (3, "your entry")


def test_a_pot_logged_after_the_pour_is_for_the_second_one():
    found = melt(*FALLING, melting__poured="2026-11-24T09:00", melting__second_at="66 °C")
    assert list(due(found)) == ["Second pour", "Burn test from"]
    assert figures(found)["second"].value == pytest.approx(wait(77, 66, 20, half_time(84, 77, 10, 20)))


@pytest.mark.parametrize("leaf", ["pour_at", "scent_at", "melt_at", "room", "stir", "second_at", "poured", "rest", "melts_at"])
def test_a_faulty_entry_leaves_out_what_needs_it(leaf):
    found = melt(*FALLING, **{f"melting__{leaf}": "?!"})
    told = figures(found)
    assert leaf not in told
    assert ("pour" in told) == (leaf not in ("pour_at", "room"))
    assert all(figure.shown for figure in found.figures)


def test_every_temperature_follows_the_wax():
    assert figures(melt(wax__kind="paraffin"))["pour_at"].shown == "80 °C"
    assert figures(melt(wax__kind="beeswax"))["pour_at"].shown == "70 °C"
