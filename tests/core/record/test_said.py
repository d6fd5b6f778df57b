"""What the maker said: every leaf read, every fault told, whatever the record's shape."""

import pytest
from hypothesis import given
from vessels import ANYTHING, bent_vessels, branches, full_vessel, good_vessels, put, vessel

from brimbook.quantity.show import Display
from brimbook.record import tree
from brimbook.record.fields import LEAVES
from brimbook.record.said import echo, understand

COMMA = Display(decimal="comma")


def faults(record, display=Display()):
    return {fault.path: fault.sentence for fault in understand(record, display).faults}


def test_a_full_vessel_is_without_fault():
    assert faults(full_vessel()) == {}


def test_all_faults_are_told_at_once():
    record = vessel(casts__0__pieces="two", casts__0__allowance="-5", wells__0__dye="50 %", made_on="yesterday",
                    name="x" * 121)
    assert set(faults(record)) == {"casts.0.pieces", "casts.0.allowance", "wells.0.dye", "made_on", "name"}


def test_a_fault_names_its_label():
    (fault,) = understand({"casts": [{"pieces": "two"}]}, Display()).faults
    assert (fault.path, fault.label) == ("casts.0.pieces", "Pieces")


BRANCHES = ["casts", "casts.0", "casts.0.cavity", "casts.0.cavity.readings", "casts.0.cavity.readings.0", "casts.0.mix",
            "casts.0.mix.powder", "wells", "wells.0", "wells.0.fill", "wells.0.wax"]


def silent(paths, wrong):
    """The places where something of another shape goes by without a word."""
    return [path for path in paths
            if not any(place.startswith(path) for place in faults(put(full_vessel(), path, wrong)))]


@pytest.mark.parametrize("wrong", [5, 1.5, True, None, ["640 g"], {"water": "640 g"}], ids=repr)
def test_a_leaf_of_another_shape_is_a_fault_there(wrong):
    """A number, a list or a name where a text belongs: told at that leaf, or just below it."""
    assert silent([path.replace("*", "0") for path in LEAVES], wrong) == []


@pytest.mark.parametrize("wrong", ["640 g", 5, None, True], ids=repr)
def test_a_branch_of_another_shape_is_a_fault_there(wrong):
    assert silent(BRANCHES, wrong) == []


@pytest.mark.parametrize(("path", "wrong"), [("casts", {"0": {"pieces": "2"}}),
                                             ("casts.0.cavity.readings", {"0": {"water": "640 g"}}),
                                             ("casts.0", ["2"]), ("casts.0.mix", [{"rule": "1.88"}])])
def test_a_list_for_names_or_names_for_a_list_is_a_fault(path, wrong):
    assert [place for place in faults(put(full_vessel(), path, wrong)) if place.startswith(path)]


@pytest.mark.parametrize("path", ["casts.0.pieces", "casts.0.allowance", "casts.0.cavity.temperature",
                                  "wells.0.fragrance.load"])
@pytest.mark.parametrize("wrong", [5, None, "two", ["2"]], ids=repr)
def test_nothing_usual_stands_in_for_a_faulty_entry(path, wrong):
    said = understand(put(full_vessel(), path, wrong), Display())
    assert said.value(path) is None


@pytest.mark.parametrize("record", [None, 5, "x", [], [{}], True, 1.5], ids=repr)
def test_what_is_no_record_at_all_is_one_fault(record):
    (fault,) = understand(record, Display()).faults
    assert fault.sentence.endswith(".")


def test_a_record_fifty_deep_is_one_fault():
    record = {"name": "x"}
    for _ in range(50):
        record = {"notes": record}
    (fault,) = understand(record, Display()).faults
    assert fault.sentence.endswith(".")


@given(bent_vessels())
def test_every_fault_of_a_bent_vessel_has_path_label_and_sentence(record):
    for fault in understand(record, Display()).faults:
        assert isinstance(fault.path, str) and fault.label and fault.sentence[-1] in ".?"
        assert "\n" not in fault.sentence


@given(ANYTHING)
def test_anything_at_all_is_understood_or_told(record):
    said = understand(record, Display())
    assert all(fault.label and fault.sentence[-1] in ".?" for fault in said.faults)
    if not isinstance(record, dict):
        assert said.faults


@given(good_vessels())
def test_a_good_vessel_is_without_fault(record):
    assert faults(record) == {}


@given(good_vessels())
def test_canonical_texts_mean_the_same_under_any_settings(record):
    usual = understand(record, Display())
    kept = tree.copy_with(record, usual.canonical)
    for display in (COMMA, Display(decimal="point"), Display(mass="oz", length="in", temperature="F")):
        again = understand(kept, display)
        assert again.values == usual.values and again.canonical == usual.canonical


def test_a_bare_number_takes_the_maker_s_own_unit():
    ours = Display(mass="oz", length="in", temperature="F")
    record = put(vessel(casts__0__scooped="22", casts__0__cavity__temperature="68"), "casts.0.cavity.height", "3")
    said = understand(record, ours)
    assert [said.canonical[f"casts.0.{path}"] for path in ("scooped", "cavity.temperature",
                                                           "cavity.height")] == ["22 oz", "68 °F", "3 in"]


def test_usual_values_stand_in_for_what_is_empty_or_missing():
    said = understand({"casts": [{"pieces": " ", "cavity": {}}]}, Display())
    assert (said.value("casts.0.pieces"), said.value("casts.0.cavity.temperature"),
            said.value("casts.0.allowance")) == (1, 20, 0.1)
    assert said.value("casts.0.scooped") is None and said.value("no.such.leaf") is None


@pytest.mark.parametrize("record", [{}, {"casts": []}, {"casts": [{}]}, {"casts": [{"cavity": {}}]}, {"casts": [5]},
                                    {"casts": "x"},
                                    {"casts": [{"cavity": "x"}]}, {"casts": [{"cavity": {"readings": "x"}}]}], ids=str)
def test_readings_are_counted_whatever_is_there(record):
    assert understand(record, Display()).count("casts.0.cavity.readings") == 0


@pytest.mark.parametrize(("text", "fine"), [("2026-09-12", True), ("2028-02-29", True), ("2026-02-29", False),
                                            ("12.9.2026", False),
                                            ("", True), ("2026-9-12", False)])
def test_dates(text, fine):
    assert ("made_on" not in faults({"made_on": text})) == fine


@pytest.mark.parametrize(("path", "text", "told"), [
    ("casts.0.scooped", "1 lb 4 oz", "1 lb 4 oz = 567 g"), ("casts.0.scooped", "640", "640 g"),
    ("casts.0.scooped", "0,640 kg", "0.640 kg = 640 g"),
    ("casts.0.scooped", "640.25", "640.25 g"), ("casts.0.cavity.height", "3.25 in", "3.25 in = 82.55 mm"),
    ("casts.0.cavity.temperature", "68 F", "68 °F = 20 °C"), ("casts.0.cavity.temperature", "20.25", "20.25 °C"),
    ("wells.0.fragrance.load", "1 oz/lb", "1 oz/lb = 6.25 %"), ("wells.0.dye", "0.125 %", "0.125 %"),
    ("casts.0.mix.powder.particle_density", "2.985", "2.985 g/mL"),
    ("wells.0.fragrance.density", "1.045", "1.045 g/mL"),
    ("casts.0.mix.rule", "1.875", "1.875"), ("name", "Tide cup", ""), ("casts.0.pieces", "two", ""),
])
def test_what_was_understood_is_told_back_as_exactly_as_it_was_typed(path, text, told):
    assert echo(understand(put(vessel(), path, text), Display()), path) == told


@pytest.mark.parametrize(("mass", "text", "told"), [
    ("oz", "22.5", "22.5 oz"), ("oz", "1 lb 4 oz", "1 lb 4 oz = 20 oz"), ("lb", "1 lb 4 oz", "1 lb 4 oz"),
    ("oz", "640 g", "640 g = 22.575 oz"),
])
def test_ounces_are_told_back_without_empty_digits(mass, text, told):
    assert echo(understand({"casts": [{"scooped": text}]}, Display(mass=mass)), "casts.0.scooped") == told


def test_the_maker_s_comma_is_told_back():
    assert echo(understand({"casts": [{"scooped": "640,5"}]}, COMMA), "casts.0.scooped") == "640,5 g"


def test_the_full_vessel_has_every_leaf_and_no_more():
    paths = {".".join("*" if step.isdigit() else step for step in path.split("."))
             for path, part in tree.parts(full_vessel()) if not isinstance(part, (dict, list))}
    assert paths == {path for path in LEAVES if not path.startswith(("materials.", "wicks.", "plan."))} | {"version"}
    assert len(full_vessel()["notes"]) == 300 and len(branches(full_vessel())) > 90


def test_more_molds_than_a_page_can_show_are_kept_and_told():
    said = understand({"casts": [{"pieces": "2"}] * 401, "wells": [{}] * 400}, Display())
    assert (said.count("casts"), said.count("wells")) == (400, 400)
    assert [fault.path for fault in said.faults] == ["casts"] and "401" in said.faults[0].sentence
    assert said.value("casts.400.pieces") == 2


def test_a_fault_is_below_its_own_cast_alone():
    said = understand({"casts": [{} if row != 10 else {"pieces": "x"} for row in range(12)]}, Display())
    assert said.is_marked_below("casts.10") and not said.is_marked_below("casts.1") and not said.is_marked_below("casts.10.mix")
    assert said.fault_at("casts.10.pieces") and not said.fault_at("casts.1.pieces")
