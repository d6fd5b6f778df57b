"""Wax, fragrance and dye that come to the line together."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st
from vessels import figures, good_vessels, put, sheet, vessel

from brimbook.work_out import work_out

ROOM = 300.8555  # 300 g of water at 20 °C


def told(name, **texts):
    return figures(vessel(**texts))[f"wells.0.{name}"]


def test_the_usual_well_by_hand():
    """301 mL; 1 ÷ 0.86 + 0.06 = 1.2228 mL of blend from a gram of wax: 246 g wax, 14.8 g fragrance."""
    assert told("wax")["value"] == pytest.approx(ROOM / (1 / 0.86 + 0.06), rel=1e-6)
    assert (told("wax")["says"], told("fragrance")["says"]) == ("Weigh 246 g wax", "Weigh 15 g fragrance")
    assert told("pot")["shown"] == "261 g"


@given(good_vessels())
def test_wax_fragrance_and_dye_come_to_the_line(record):
    answer = work_out(record)
    value = answer.said.value
    basis = value("wells.0.basis")
    grams = {name: answer.figures[f"wells.0.{name}"].value if f"wells.0.{name}" in answer.figures else 0.0
             for name in ("wax", "fragrance", "dye")}
    volume = ((grams["wax"] + grams["dye"]) / value(f"wells.0.wax.density_{basis}")
              + grams["fragrance"] / value("wells.0.fragrance.density"))
    assert volume == pytest.approx(answer.rooms["wells.0.fill"].volume, rel=1e-9)


@given(good_vessels())
def test_the_load_is_the_share_that_the_maker_asked_for(record):
    answer = work_out(record)
    grams = {name: answer.figures[f"wells.0.{name}"].value if f"wells.0.{name}" in answer.figures else 0.0
             for name in ("wax", "fragrance", "dye")}
    whole = grams["wax"] if answer.said.value("wells.0.fragrance.basis") == "wax" else sum(grams.values())
    assert grams["fragrance"] / whole == pytest.approx(answer.said.value("wells.0.fragrance.load"), rel=1e-9, abs=1e-12)


@given(st.integers(1, 5000), st.integers(0, 500))
def test_more_water_to_the_line_never_asks_for_less_wax(grams, more):
    less, much = (told("wax", wells__0__fill__readings__0__water=f"{water} g")["value"]
                  for water in (grams, grams + more))
    assert much >= less


@pytest.mark.parametrize(("load", "basis", "of_wax", "of_blend"), [
    ("10 %", "wax", "10 %", "9.09 %"), ("10 %", "blend", "11.11 %", "10 %"), ("6 %", "wax", "6 %", "5.66 %"),
    ("6 %", "blend", "6.38 %", "6 %"), ("1 oz/lb", "wax", "6.25 %", "5.88 %"), ("0 %", "wax", "0 %", "0 %"),
])
def test_the_load_is_told_both_ways(load, basis, of_wax, of_blend):
    shown = figures(vessel(wells__0__fragrance__load=load, wells__0__fragrance__basis=basis))
    assert shown["wells.0.load_of_wax"]["says"] == f"{of_wax} of the wax"
    assert shown["wells.0.load_of_blend"]["says"] == f"{of_blend} of the blend"


def test_dye_counts_in_the_blend():
    assert told("load_of_blend", wells__0__fragrance__load="10 %", wells__0__dye="10 %")["shown"] == "8.33 %"


def test_without_fragrance_none_is_weighed():
    shown = figures(vessel(wells__0__fragrance__load="0"))
    assert "wells.0.fragrance" not in shown and shown["wells.0.wax"]["value"] == pytest.approx(ROOM * 0.86, rel=1e-6)


def test_the_rule_of_thumb_stands_beside_the_sum():
    figure = told("rule_difference")
    assert "Your rule: 250 g wax, 1.7 % more" in figure["says"]
    assert "0.875 g/mL" in figure["says"] and "0.86 g/mL hot, as poured" in figure["says"]
    assert told("rule_wax")["value"] == pytest.approx(300 * 0.834)


def test_a_rule_below_the_sum_is_told_as_less():
    assert re.search(r"\d % less", told("rule_difference", wells__0__rule="0.7")["says"])


@pytest.mark.parametrize("texts", [
    {"wells__0__rule": "3", "wells__0__fragrance__load": "50 %", "wells__0__fragrance__basis": "blend",
     "wells__0__fragrance__density": "0.5"},
    {"wells__0__rule": "3", "wells__0__fragrance__load": "40 %"},
    {"wells__0__rule": "2", "wells__0__fragrance__load": "50 %"},
])
def test_a_rule_that_no_wax_could_fit_is_not_given_a_density(texts):
    """Where the rule leaves no room for the wax itself, there is no density that fits, least of all one below zero."""
    says = told("rule_difference", **texts)["says"]
    found = re.search(r"for a wax of (−?[\d.]+) g/mL", says)
    assert found is None or 0.3 < float(found[1].replace("−", "-")) < 3


HOT, COLD = 1 / 0.86 + 0.06, 1 / 0.92 + 0.06  # blend from a gram of wax, with 6 % fragrance of 1 g/mL


def test_sinking_as_it_sets():
    figure = told("sink")
    assert figure["value"] == pytest.approx(ROOM * (1 - COLD / HOT), rel=1e-6)
    assert "18.7 mL" in figure["says"] and "6.2 % of the hot volume" in figure["says"]


def test_without_fragrance_the_wax_alone_sinks():
    figure = told("sink", wells__0__fragrance__load="0")
    assert figure["value"] == pytest.approx(ROOM * (1 - 0.86 / 0.92), rel=1e-6)
    assert "6.5 % of the hot volume" in figure["says"]


def test_a_line_for_set_wax_stands_above_itself_while_hot():
    record = vessel(wells__0__basis="set")
    assert figures(record)["wells.0.sink"]["value"] == pytest.approx(ROOM * HOT / COLD - ROOM, rel=1e-6)
    assert figures(record)["wells.0.wax"]["value"] == pytest.approx(ROOM / (1 / 0.92 + 0.06), rel=1e-6)
    assert "above the line" in figures(record)["wells.0.sink"]["says"]


@pytest.mark.parametrize("basis", ["poured", "set"])
def test_wax_that_would_swell_as_it_sets_is_questioned_not_told_with_a_minus(basis):
    """Hot denser than cold: the two were likely swapped."""
    record = vessel(wells__0__wax__density_poured="0.95", wells__0__wax__density_set="0.86", wells__0__basis=basis)
    says = figures(record).get("wells.0.sink", {"says": ""})["says"]
    assert "−" not in says


def test_one_density_is_enough_when_the_line_needs_no_other():
    shown = figures(vessel(wells__0__wax__density_set=""))
    assert "wells.0.wax" in shown and "wells.0.sink" not in shown
    assert "wells.0.wax" not in figures(vessel(wells__0__wax__density_poured=""))


@pytest.mark.parametrize("name", ["basis", "fragrance.load", "fragrance.basis", "fragrance.density", "dye",
                                  "wax.density_poured"])
def test_a_faulty_entry_leaves_the_wax_out_but_not_the_volume(name):
    shown = figures(put(vessel(), f"wells.0.{name}", "x"))
    assert "wells.0.fill.volume" in shown and "wells.0.wax" not in shown


@pytest.mark.parametrize("typed", ["0.86 g/mL", "0.86", "0.86g/ml"])
def test_a_density_keeps_its_source_however_it_is_spelled(typed):
    constants = told("blend_per_gram", wells__0__wax__density_poured=typed)["working"]["constants"]
    assert constants[0]["standing"] == "second hand"


def test_a_well_without_a_cast_is_worked_out_all_the_same():
    record = vessel()
    record["casts"] = []
    assert figures(record)["wells.0.wax"]["shown"] == "246 g"


def test_a_rule_beside_wax_without_fragrance_does_not_speak_of_fragrance_in_it():
    assert "Without fragrance it comes" in told("rule_difference", wells__0__fragrance__load="0")["says"]
    assert "With this fragrance it comes" in told("rule_difference")["says"]


def test_the_scale_is_told_once_of_each_thing_that_is_weighed():
    """The rule's own fragrance is only looked at."""
    (wax,) = (card for card in sheet(vessel(wells__0__basis="set"))["cards"] if card["id"] == "wax")
    assert len([note for note in wax["notes"] if "of this fragrance" in note]) == 1
