"""A new vessel, and the demo vessels."""

import pytest
from vessels import DISPLAYS

from brimbook.quantity.show import Display
from brimbook.record import blank, tree
from brimbook.record.fields import VERSION, leaf_at, shape_at
from brimbook.record.said import understand
from brimbook.settings import display_of, whole
from brimbook.work_out import work_out


@pytest.mark.parametrize("settings", [*DISPLAYS, {"readability": "0.01 g"}, {"readability": "0.001 g"},
                                      {"readability": "0.005 g"},
                                      {"readability": "0.01 g", "mass": "oz"}, {"readability": "0.1 oz", "mass": "oz"},
                                      {"readability": "1/8 oz", "mass": "lb"}, {"readability": "100 g"}], ids=str)
def test_a_new_vessel_is_without_fault_under_any_settings(settings):
    display = display_of(whole(settings))
    said = understand(blank.blank(display), display)
    assert said.faults == []
    for fill in ("casts.0.cavity", "wells.0.fill"):
        assert said.value(f"{fill}.readability") == pytest.approx(display.readability, rel=0.02)


@pytest.mark.parametrize("settings", DISPLAYS, ids=str)
def test_a_new_vessel_is_written_as_it_will_be_kept(settings):
    display = display_of(whole(settings))
    record = blank.blank(display)
    assert tree.copy_with(record, understand(record, display).canonical) == record


@pytest.mark.parametrize("record", [blank.blank(), *blank.demos()], ids=lambda record: record["name"] or "blank")
def test_every_leaf_is_a_known_one(record):
    assert [path for path, _ in tree.parts(record)
            if path != "version" and leaf_at(path) is None and shape_at(path) is None] == []
    assert record["version"] == VERSION


def test_a_new_vessel_asks_for_water_first():
    assert blank.blank()["casts"][0]["cavity"]["readings"] == [{}]


@pytest.mark.parametrize("demo", blank.demos(), ids=lambda demo: demo["name"])
@pytest.mark.parametrize("settings", DISPLAYS, ids=str)
def test_a_demo_is_without_fault_and_whole(demo, settings):
    answer = work_out(demo, display_of(whole(settings)))
    assert answer.said.faults == []
    assert {"casts.0.powder", "casts.0.water", "wells.0.wax", "wells.0.fragrance"} <= set(answer.figures)
    assert tree.copy_with(demo, answer.said.canonical) == demo


def test_demos_are_made_afresh_each_time():
    one = blank.demos()
    one[0]["casts"][0]["pieces"] = "9"
    assert blank.demos()[0]["casts"][0]["pieces"] == "1"
    assert len({demo["id"] for demo in blank.demos()}) == len(blank.demos())
    ours, theirs = blank.blank(), blank.blank(Display())
    ours["wells"][0]["fill"]["readings"].append({})
    assert theirs["wells"][0]["fill"]["readings"] == [{}]
