"""Water beside the file: what a difference may mean."""

import math

import pytest
from vessel_models import cup, cup_vessel
from vessels import figures, put

ROOM = math.pi * 40**2 * 72 / 1000 / 1.00285
FILL = "wells.0.fill"


def beside(share, **texts):
    record = put(cup_vessel(**texts), f"{FILL}.readings.0.water", f"{ROOM * share:.1f} g")
    return figures(record)[f"{FILL}.file.difference"]


@pytest.mark.parametrize(("share", "shown", "meaning"), [
    (1.001, "0.1 % more", "agree within"), (0.95, "5 % less", "layer lines"), (1.05, "5 % more", "a leak"),
    (1.331, "33.1 % more", "at 110 %"), (0.729, "27.1 % less", "at 90 %"),
    (0.5, "50 % less", "at 79.4 %"),
])
def test_a_difference_says_what_it_may_mean(share, shown, meaning):
    told = beside(share)
    assert told["shown"] == shown and any(meaning in note for note in told["notes"])


@pytest.mark.parametrize(("unit", "by", "meant"), [("cm", 1.0, "millimeters"), ("in", 1.0, "millimeters"), ("mm", 1 / 25.4, "inches"),
                                                   ("mm", 0.1, "centimeters"), ("m", 1 / 304.8, "feet")])
def test_a_wrong_unit_is_named(unit, by, meant):
    told = beside(1.02, model=cup(by=by), file__unit=unit)
    assert any(f"drawn in {meant}" in note for note in told["notes"])


def test_a_difference_is_told_as_so_much_of_the_line():
    assert "The difference is as much as 3.6 mm of the fill line." in beside(0.95)["notes"]


def test_both_plus_minus_are_in_it_and_water_changes_no_volume():
    with_water = put(cup_vessel(), f"{FILL}.readings.0.water", "340 g")
    without = put(cup_vessel(), f"{FILL}.readings.0.water", "")
    assert figures(with_water)[f"{FILL}.volume"] == figures(without)[f"{FILL}.volume"]
    assert f"{FILL}.file.difference" not in figures(without)
    assert figures(with_water)[f"{FILL}.file.difference"]["plus_minus"] == "± 1.3 %"


@pytest.mark.parametrize("text", ["heavy", "-3 g"])
def test_a_faulty_reading_of_water_leaves_the_file_alone(text):
    told = figures(put(cup_vessel(), f"{FILL}.readings.0.water", text))
    assert f"{FILL}.volume" in told and f"{FILL}.file.difference" not in told
