"""From a record to every figure: pure, whole, and careful with what it does not know."""

import json
import time

import pytest
from hypothesis import given, settings
from vessels import ANYTHING, DISPLAYS, ask, bent_vessels, full_vessel, good_vessels, put, sheet, vessel

from brimbook.quantity.show import Display
from brimbook.record import blank
from brimbook.settings import display_of, whole
from brimbook.work_out import places, work_out


@given(bent_vessels())
def test_the_record_itself_is_left_alone(record):
    before = json.dumps(record)
    work_out(record)
    assert json.dumps(record) == before


@given(good_vessels())
def test_the_same_record_gives_the_same_answer(record):
    assert work_out(record).figures == work_out(json.loads(json.dumps(record))).figures


@given(good_vessels())
@settings(max_examples=25)
def test_values_do_not_hang_on_how_the_maker_reads_them(record):
    kept = ask("work_out", record=record, settings={})["record"]
    values = [{key: figure.value for key, figure in work_out(kept, display_of(whole(how))).figures.items()
               if key.split(".")[-1] not in ("bowl", "pot")} for how in DISPLAYS]
    assert all(each == values[0] for each in values)


@given(good_vessels())
def test_a_good_vessel_has_every_figure(record):
    keys = set(work_out(record).figures)
    assert {"casts.0.cavity.volume", "casts.0.powder", "casts.0.water", "casts.0.rule_allowance", "wells.0.fill.volume",
            "wells.0.wax",
            "wells.0.rule_difference"} <= keys


@given(bent_vessels())
def test_a_bent_vessel_is_worked_out_as_far_as_it_goes(record):
    answer = work_out(record)
    for figure in answer.figures.values():
        assert figure.value == figure.value and abs(figure.value) < 1e12


@pytest.mark.parametrize("record", [
    {}, {"casts": []}, {"casts": [{}]}, {"wells": [{}]}, {"casts": [{"cavity": {}}]}, {"casts": [{"mix": {}}]},
    {"casts": [[]]},
    {"casts": [5]}, {"casts": [None]}, {"casts": {}}, {"casts": "x"}, {"casts": [{"cavity": "x"}]},
    {"casts": [{"cavity": []}]},
    {"casts": [{"cavity": {"readings": "x"}}]}, {"casts": [{"cavity": {"readings": [5]}}]}, {"wells": [{"fill": None}]},
    {"casts": [{"cavity": {"readings": {"0": {"water": "640 g"}}}}]}, {"wells": [{"fill": {"readings": [[]]}}]},
    {"casts": [{"cavity": {"way": ["jug"]}}]}, {"casts": [{"cavity": {"way": "dimensions", "solid": {}}}]},
], ids=str)
def test_a_record_with_parts_missing_or_of_another_shape_is_no_crash(record):
    page = ask("work_out", record=record, settings={})
    assert page["record"] == record


@given(ANYTHING)
def test_anything_at_all_is_no_crash(record):
    assert ask("work_out", record=record, settings={})["record"] == record


@given(bent_vessels())
@settings(max_examples=25)
def test_a_bent_vessel_is_no_crash_under_any_settings(record):
    for how in DISPLAYS:
        ask("work_out", record=record, settings=how)


def test_what_is_not_known_here_is_kept():
    record = full_vessel()
    for path, text in {"casts.0.demolded_on": "2026-09-13", "burns.0.hours": "4", "wells.0.wick.series": "CD 10",
                       "stars": "5"}.items():
        put(record, path, text)
    record["lid"] = {"fits": True, "gap": 0.5, "prints": [1, 2, None]}
    assert ask("work_out", record=record, settings={})["record"] == record


def test_a_name_with_dots_is_not_taken_for_a_path():
    """An unknown name that reads like the path of a leaf must not write into that leaf."""
    record = {**vessel(), "casts.0.pieces": "3 pieces"}
    answer = ask("work_out", record=record, settings={})
    assert answer["record"] == record
    assert answer["sheet"]["line"].startswith("1205 g powder")


def test_casts_and_wells_are_worked_out_each_by_itself():
    record = vessel()
    record["casts"].append({**record["casts"][0], "pieces": "x"})
    record["wells"].append({**record["wells"][0], "rule": "x"})
    keys = set(work_out(record).figures)
    assert {"casts.0.powder", "casts.1.cavity.volume", "wells.1.wax"} <= keys
    assert not {"casts.1.powder", "wells.1.rule_wax"} & keys


def test_places_are_told_in_order():
    record = vessel()
    record["casts"] *= 3
    assert places(work_out(record).said, "casts") == ["casts.0", "casts.1", "casts.2"]


# Regression. By its pours: 2.2 % lighter than the table, and 7.8 % beyond the mold instead of the 10 % typed.
KEEL = ("563 g", "141 g", "162 g")


@pytest.mark.parametrize("demo", blank.demos(), ids=lambda demo: demo["name"])
def test_the_demos_by_hand(demo):
    """Worked with a calculator.

    Tide cup: 312 g × 1.002852 × 1.1 ÷ 0.58602 = 587 g powder; 196 g × 1.002852 ÷ 1.22279 = 161 g wax.
    Heron bowl, 18 °C: 617 g × 1.00247 × 1.1 ÷ 0.58602 = 1161 g; 402 g × 1.002852 ÷ (1 ÷ 0.92 + 0.0625) = 351 g.
    Tumblers: 18.5 oz = 524.466 g × 1.002852 × 6 × 1.1 ÷ (1 ÷ 3.15 + 1 ÷ 2.65 + 0.03 ÷ 5.2 + 0.4 ÷ 0.998207) = 3152 g;
    water 3152 × (0.4 − 0.04) = 1135 g, as the sand brings 4 % of its own;
    π ÷ 12 × (72² + 72 × 64 + 64²) × 70 ÷ 1000 = 254.5 mL ÷ (1.002 ÷ 0.86 + 0.06) = 208 g.
    """
    shown = {key: figure.shown for key, figure in work_out(demo, Display()).figures.items()}
    told = {"Tide cup": ("587 g", "147 g", "161 g"), "Low heron bowl": ("1161 g", "290 g", "351 g"),
            "Ballast tumblers, six": ("3152 g", "1135 g", "208 g"), "Keel bowl, third pour": KEEL}[demo["name"]]
    assert (shown["casts.0.powder"], shown["casts.0.water"], shown["wells.0.wax"]) == told


def _long_records():
    """Records within limits, each long in another way."""
    mold = {"cavity": {"readings": [{"water": "640 g"}]}, "mix": {"powder": {"particle_density": "2.98"}}}
    pour = {"powder": "1000 g", "water": "250 g", "left_over": "40 g", "cup_full": "190 g"}
    yield "casts", {"casts": [{} for _ in range(2900)]}
    yield "bowls", {"casts": [mold] * 330}
    yield "sharing", {"casts": [{**mold, "bowl": "first", "batch": {"bowl": "90 mL"}} for _ in range(270)]}
    yield "pours", vessel(casts__0__pours=[pour] * 500)
    yield "ingredients", vessel(casts__0__mix__others=[{"kind": "sand"}] * 1400)
    yield "both", vessel(casts__0__pours=[{"powder": "1 kg"}] * 400, casts__0__mix__others=[{"kind": "red_oxide", "share": "0.1 %"}] * 700)
    yield "faults", {"casts": [{"pieces": "x", "allowance": "x", "mix": {"air": "x"}} for _ in range(500)]}


@pytest.mark.parametrize("record", [pytest.param(record, id=name) for name, record in _long_records()])
def test_no_record_within_limits_keeps_the_maker_waiting(record):
    """Generous beside what it takes, about a second: without care it was five to eighty."""
    began = time.process_time()
    sheet(record)
    assert time.process_time() - began < 4
