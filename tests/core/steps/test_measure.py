"""From the fill's readings to a volume with its ±."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from vessels import figures, fields, full_vessel, good_vessels, notes, put, sheet, vessel

from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.measure import measure

CAVITY = "casts.0.cavity"
VOLUME = 641.8251  # 640 g of water at 20 °C, by factor Z


def fill(**texts):
    """A cast whose cavity is told by these texts alone; two underscores stand for a dot."""
    record = {"casts": [{"cavity": {}}]}
    for path, text in texts.items():
        put(record, f"{CAVITY}.{path.replace('__', '.')}", text)
    return record


def measured(record, display=Display(), porous=False):
    return measure(understand(record, display), CAVITY, porous)


WAYS = {
    "on_scale": {"readings__0__water": "640 g"},
    "full_minus_empty": {"readings__0__full": "1 kg 640 g", "readings__0__empty": "1000 g"},
    "jug": {"readings__0__before": "1480 g", "readings__0__after": "840 g"},
    "poured_out": {"readings__0__water": "640 g"},
    "dry_filler": {"readings__0__filler": "1026.92 g", "filler_density": "1.6"},
    "dimensions": {"solid": "box", "length": "100 mm", "width": "80 mm", "height": "80.228 mm"},
}


@pytest.mark.parametrize("way", sorted(WAYS))
def test_every_way_gives_the_same_volume_when_the_numbers_agree(way):
    room = measured(fill(way=way, **WAYS[way]))
    assert room.volume == pytest.approx(VOLUME, abs=0.005)
    assert room.water == pytest.approx(640, abs=0.01)


def test_readings_of_other_ways_are_left_alone():
    everything = {path: text for texts in WAYS.values() for path, text in texts.items()}
    everything["readings__0__water"] = "640 g"
    for way in WAYS:
        assert measured(fill(way=way, **everything)).volume == pytest.approx(VOLUME, abs=0.005)


def test_the_mean_of_three_readings_counts():
    room = measured(fill(readings__0__water="638 g", readings__1__water="640 g", readings__2__water="642 g"))
    assert room.volume == pytest.approx(VOLUME, abs=0.001)


def test_an_empty_reading_is_passed_over():
    room = measured(fill(readings__0__water="", readings__1__water="640 g", readings__2={}))
    assert room.volume == pytest.approx(VOLUME, abs=0.001)


@pytest.mark.parametrize("texts", [
    {"readings__0__water": "heavy"}, {"readings__0__water": "640 g", "readings__1__water": "-5"},
    {"readings__0__water": ""}, {},
    {"readings__0__water": "640 g", "temperature": "99 °C"}, {"readings__0__water": "640 g", "readability": "none"},
    {"way": "jug", "readings__0__before": "1480 g"}, {"way": "dry_filler", "readings__0__filler": "900 g"},
    {"way": "no such way"},
    {"way": "dimensions", "diameter": "80 mm"}, {"way": "dimensions", "solid": "sphere", "diameter": "80 mm",
                                                 "height": "70 mm"},
])
def test_nothing_is_worked_out_from_half_an_entry(texts):
    assert measured(fill(**texts)) is None


@pytest.mark.parametrize("texts", [
    {"line_error": "wide", "opening_across": "80 mm"}, {"opening_across": "wide"},
    {"opening_across": "80 mm", "opening_other": "wide"},
])
def test_a_faulty_opening_is_not_quietly_taken_for_another(texts):
    """Rather no ± than one of an opening that the maker did not mean."""
    room = measured(fill(readings__0__water="640 g", **texts))
    assert room is None or not any("over an opening" in figure.spread for figure in room.figures)


def test_full_that_weighs_less_than_empty_is_told():
    said = understand(fill(way="full_minus_empty", readings__0__full="400 g", readings__0__empty="1 kg"), Display())
    assert measure(said, CAVITY) is None
    (fault,) = said.faults
    assert fault.path == f"{CAVITY}.readings.0.full" and "swapped" in fault.sentence and fault.sentence.endswith("?")


def test_a_jug_that_gained_weight_is_told():
    said = understand(fill(way="jug", readings__0__before="400 g", readings__0__after="400 g"), Display())
    assert measure(said, CAVITY) is None and "swapped" in said.faults[0].sentence


def test_the_plus_minus_by_hand():
    """311, 312, 313 g at 20 °C on a scale of 1 g, line seen to 0.5 mm over an opening of 84 mm.

    scale: 2 × 1 ÷ √6 = 0.8165 g; spread: 4.303 × 1 ÷ √3 = 2.4843 g; both × 1.002852 mL/g: 0.8188 and 2.4914 mL
    line: π ÷ 4 × 84² × 0.5 ÷ 1000 = 2.7709 mL; together √(0.8188² + 2.4914² + 2.7709²) = 3.8153 mL
    """
    room = measured(fill(readings__0__water="312 g", readings__1__water="313 g", readings__2__water="311 g",
                         opening_across="84 mm"))
    assert room.plus_minus == pytest.approx(3.8153, abs=0.0005)
    figure = room.figures[-1]
    assert figure.plus_minus_shown == "± 3.9 mL"
    for part in ("0.82 mL", "2.5 mL", "2.8 mL", "95 %", "squares"):
        assert part in figure.spread


def test_one_reading_has_only_the_scale_in_its_plus_minus():
    room = measured(fill(readings__0__water="640 g"))
    assert room.plus_minus == pytest.approx(1.002852 * 2 / math.sqrt(6), rel=1e-5)
    assert "fill line is left out" in room.figures[-1].spread


def test_a_rectangular_opening_counts_both_ways():
    round_one = measured(fill(readings__0__water="640 g", opening_across="80 mm"))
    square = measured(fill(readings__0__water="640 g", opening_across="80 mm", opening_other="80 mm"))
    assert square.plus_minus > round_one.plus_minus


def test_a_finer_scale_makes_a_smaller_plus_minus():
    widths = [measured(fill(readings__0__water="640 g", readability=step)).plus_minus
              for step in ("0.1 g", "1 g", "5 g", "1 oz")]
    assert widths == sorted(widths) and widths[1] == pytest.approx(10 * widths[0])


def test_the_plus_minus_of_filler_is_in_milliliters_of_filler():
    room = measured(fill(way="dry_filler", readings__0__filler="800 g", filler_density="1.6"))
    assert (room.volume, room.plus_minus) == (500, pytest.approx(2 / math.sqrt(6) / 1.6))
    assert "packs" in room.figures[-1].spread


def test_the_plus_minus_of_a_box_by_hand():
    room = measured(fill(way="dimensions", solid="box", length="100 mm", width="60 mm", height="50 mm", ruler="0.5 mm"))
    assert room.plus_minus == pytest.approx(math.hypot(3000, 5000, 6000) * 0.5 / 1000)


def test_a_stray_reading_is_pointed_out_and_still_counted():
    record = vessel()
    for row, text in enumerate(["640 g", "641 g", "702 g"]):
        put(record, f"{CAVITY}.readings.{row}.water", text)
    (note,) = [note for note in notes(sheet(record)) if "stands apart" in note]
    assert "Reading 3" in note and "702 g" in note and "still counted" in note
    weighed = figures(record)[f"{CAVITY}.weighed"]
    assert weighed["value"] == pytest.approx((640 + 641 + 702) / 3)


def test_a_stray_reading_is_named_by_the_place_that_the_page_shows():
    """Reading 1 is empty, reading 4 is the stray one: the note must say 4, as the field and its button do."""
    record = vessel()
    for row, text in enumerate(["", "640 g", "641 g", "702 g"]):
        put(record, f"{CAVITY}.readings.{row}.water", text)
    page = sheet(record)
    assert fields(page)[f"{CAVITY}.readings.3.water"]["label"].endswith("reading 4")
    assert any("Reading 4, 702 g" in note for note in notes(page))


def test_readings_that_agree_are_left_in_peace():
    record = full_vessel()
    for row in range(3):
        put(record, f"{CAVITY}.readings.{row}.water", f"64{row} g")
    assert not any("stands apart" in note for note in notes(sheet(record)) if "Reading" in note and "64" in note)


@pytest.mark.parametrize(("way", "sealed", "word"),
                         [("poured_out", "no", "film of water"), ("on_scale", "no", "drinks water"),
                                                     ("full_minus_empty", "no", "drinks water"),
                          ("poured_out", "yes", None)])
def test_what_an_unsealed_vessel_drinks_is_told(way, sealed, word):
    record = vessel(wells__0__fill__way=way, wells__0__sealed=sealed)
    put(record, "wells.0.fill.readings.0.full", "1300 g")
    put(record, "wells.0.fill.readings.0.empty", "1000 g")
    told = " ".join(notes(sheet(record)))
    assert (word in told) if word else ("drinks" not in told)


def test_a_mold_drinks_nothing():
    assert "drinks" not in " ".join(sheet(vessel())["cards"][0]["notes"])


def test_a_fault_that_stops_the_sum_can_be_seen_on_its_card():
    """Dry filler needs no water temperature: one left faulty from another way must not stop it unseen."""
    record = vessel(casts__0__cavity__way="dry_filler", casts__0__cavity__temperature="99 °C",
                    casts__0__cavity__filler_density="1.6")
    put(record, f"{CAVITY}.readings.0.filler", "800 g")
    page = sheet(record)
    shown = [path for path, field in fields(page).items() if field["fault"]]
    assert page["cards"][0]["answer"] or shown


def test_a_warmer_water_means_more_room():
    cold, warm = (measured(fill(readings__0__water="640 g", temperature=told)).volume for told in ("10 °C", "30 °C"))
    assert warm - cold == pytest.approx(640 * (1.0054 - 1.00135), abs=0.05)


def test_an_assumed_temperature_is_told_as_assumed():
    working = figures({"casts": [{"cavity": {"readings": [{"water": "640"}]}}]})[f"{CAVITY}.volume"]["working"]
    assert any("assumed" in constant["name"] for constant in working["constants"])


@given(st.integers(1, 9000), st.integers(1, 500), st.integers(5, 40))
def test_more_water_is_more_room(grams, more, celsius):
    less, much = (measured(fill(readings__0__water=f"{water} g", temperature=f"{celsius} °C")).volume
                  for water in (grams, grams + more))
    assert much > less


@given(good_vessels())
def test_every_measured_room_has_a_plus_minus(record):
    room = measured(record)
    assert room.volume > 0 and 0 < room.plus_minus and math.isfinite(room.plus_minus) and 0 < room.water
