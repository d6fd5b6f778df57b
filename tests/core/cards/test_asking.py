"""A question as the page shows it: what is typed, what was understood, what is wrong."""

import pytest
from hypothesis import given
from vessels import DISPLAYS, bent_vessels, fields, full_vessel, put, sheet, vessel

from brimbook.cards.asking import ask, keys
from brimbook.quantity import units
from brimbook.quantity.read import Bounds, read
from brimbook.quantity.show import Display
from brimbook.record.said import understand

KEYS = {"path", "label", "kind", "value", "unit", "echo", "fault", "note", "hint", "keys", "choices"}
KINDS = {*units.KINDS, "text", "date", "moment", "choice"}


def asked(path, text, **settings):
    return fields(sheet(put(vessel(), path, text), **settings))[path]


@given(bent_vessels())
def test_every_question_is_whole(record):
    for field in fields(sheet(record)).values():
        assert KEYS <= set(field) and field["kind"] in KINDS
        assert all(isinstance(field[name], str) for name in KEYS - {"keys", "choices"})
        assert field["fault"] == "" or (field["fault"][-1] in ".?" and field["echo"] == "")


def test_what_was_understood_is_shown_in_its_kept_form():
    field = asked("casts.0.scooped", "1lb4oz")
    assert (field["value"], field["echo"], field["fault"]) == ("1 lb 4 oz", "1 lb 4 oz = 567 g", "")


def test_what_was_not_understood_is_kept_as_it_was_typed():
    field = asked("casts.0.scooped", " 6 fl oz?")
    assert field["value"] == " 6 fl oz?" and field["fault"] and field["echo"] == ""


@pytest.mark.parametrize(("path", "settings", "unit"), [
    ("casts.0.scooped", {}, "g"), ("casts.0.scooped", {"mass": "oz"}, "oz"), ("casts.0.scooped", {"mass": "lb"}, "oz"),
    ("casts.0.cavity.temperature", {"temperature": "F"}, "°F"), ("casts.0.cavity.line_error", {"length": "in"}, "in"),
    ("casts.0.mix.air", {}, "%"), ("casts.0.mix.powder.particle_density", {}, "g/mL"), ("casts.0.pieces", {}, ""),
    ("casts.0.mix.water_to_powder", {}, ""), ("casts.0.mix.rule", {}, ""),
])
def test_the_unit_that_a_bare_number_takes(path, settings, unit):
    assert fields(sheet(vessel(), **settings))[path]["unit"] == unit


@pytest.mark.parametrize("settings", DISPLAYS, ids=str)
def test_the_number_pad_types_only_what_can_be_read(settings):
    for field in fields(sheet(full_vessel(), **settings)).values():
        for key in field["keys"]:
            if key in ("½", "¼", ":"):
                continue
            assert read(f"3 {key}", field["kind"], Bounds(-1e9, 1e9)).canonical == f"3 {key}"


def test_halves_and_quarters_can_be_read_after_a_number():
    for key, value in (("½", 2.5), ("¼", 2.25)):
        assert read(f"2{key}", "mass", Bounds(0, 10), "g").value == value


def test_the_pad_begins_with_the_maker_s_own_unit():
    assert keys("mass", Display())[0] == "g" and keys("mass", Display(mass="lb"))[0] == "oz"
    assert keys("temperature", Display(temperature="F"))[0] == "°F"


def test_an_emptied_place_says_what_is_taken_instead():
    assert asked("casts.0.cavity.temperature", "")["note"] == "Empty, so 20 °C is taken."
    assert asked("wells.0.rule", "", decimal="comma")["note"] == "Empty, so 0,834 is taken."
    assert asked("casts.0.scooped", "")["note"] == ""


@pytest.mark.parametrize(("text", "meant"), [("0.06", "6 %"), ("0.06 %", "6 %"), ("0.1", "10 %"), ("6", None),
                                             ("0", None), ("0.5", None)])
def test_a_load_typed_as_a_fraction_is_questioned(text, meant):
    note = asked("wells.0.fragrance.load", text)["note"]
    assert (meant in note and note.endswith("?")) if meant else note == ""


def test_a_comma_maker_sees_commas():
    field = asked("casts.0.scooped", "640,5", decimal="comma")
    assert (field["value"], field["echo"]) == ("640,5 g", "640,5 g")


@pytest.mark.parametrize("settings", [{"decimal": "comma"}, {"decimal": "point"}, {}], ids=str)
@pytest.mark.parametrize("text", ["1.234 kg", "0.640 kg", "2.5", "1250", "1 lb 4.5 oz"])
def test_what_a_field_shows_reads_as_the_same_again(settings, text):
    """The page may send back the text that stands in the field."""
    first = asked("casts.0.scooped", text, **settings)
    again = asked("casts.0.scooped", first["value"], **settings)
    assert again["value"] == first["value"] and again["fault"] == first["fault"] == ""


def test_a_place_that_is_none_is_a_mistake_of_ours():
    with pytest.raises(KeyError):
        ask(understand({}, Display()), "casts.0.no_such_leaf")


def test_choices_are_offered_with_what_they_set():
    powders = {choice["value"]: choice for choice in fields(sheet(vessel()))["casts.0.mix.powder.kind"]["choices"]}
    sets = powders["portland"]["sets"]
    assert {path: text for path, text in sets.items() if text} == {
        "casts.0.mix.powder.particle_density": "3.15 g/mL", "casts.0.mix.powder.role": "binder",
        "casts.0.mix.water_to_powder": "0.40"}
    assert sets["casts.0.mix.powder.working_time"] == sets["casts.0.mix.powder.name"] == ""
    assert powders["own"]["sets"] == {"casts.0.mix.powder.particle_density": ""}
    waxes = {choice["value"]: choice for choice in fields(sheet(vessel()))["wells.0.wax.kind"]["choices"]}
    assert waxes["beeswax"]["sets"] == {"wells.0.wax.density_poured": "0.82 g/mL",
                                        "wells.0.wax.density_set": "0.96 g/mL"}


def test_what_a_choice_sets_is_understood():
    record = full_vessel()
    before = {fault["path"] for fault in sheet(record)["faults"]}
    for name in ("casts.0.mix.powder.kind", "casts.0.mix.others.0.kind", "wells.0.wax.kind"):
        for choice in fields(sheet(record))[name]["choices"]:
            for path, text in {name: choice["value"], **choice["sets"]}.items():
                put(record, path, text)
            assert {fault["path"] for fault in sheet(record)["faults"]} <= before
