"""The burn test: its figures work out by hand, whatever is known and however the maker reads them."""

import pytest
from burns import AT, FILLED, LOG, burn, faults, plan
from hypothesis import given, settings
from hypothesis import strategies as st
from vessels import ANYTHING, DISPLAYS, figures, vessel

from brimbook.figure import Figure
from brimbook.quantity.moments import read_moment
from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.burning import burning
from brimbook.steps.filling import Filled


def test_an_empty_log_tells_nothing():
    assert burn([])[1].figures == burn([{}])[1].figures == ()
    assert burn([])[1].verdicts == () and burn([])[1].due == ()


def test_the_rate_is_what_burned_in_all_the_hours():
    _, _, figures = burn()
    assert figures["rate"].value == pytest.approx(46 / 12.5) and figures["rate"].shown == "3.7 g/h"
    assert [figures[f"rate_{number}"].value for number in (1, 2, 3)] == pytest.approx([3.5, 3.75, 17 / 4.5])
    assert figures["rate"].uses == tuple(f"{AT}.rate_{number}" for number in (1, 2, 3))
    assert figures["drift"].says == "The rate is steady from cycle to cycle"


def test_one_cycle_has_a_wide_plus_minus_and_no_drift():
    _, _, figures = burn(LOG[:1])
    assert figures["rate"].value == 3.5 and figures["rate"].plus_minus / 3.5 > 0.2 and "drift" not in figures
    assert "One cycle says nothing of the next" in figures["rate"].spread


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
@pytest.mark.parametrize("wicks", [None, plan(), plan(2)], ids=["no plan", "one", "two"])
def test_the_numbers_work_out_for_every_way_of_reading(how, wicks):
    assert {"rate", "power", "drift", "growth", "flame_en"} <= set(burn(how=how, wicks=wicks)[2])
    burn(how=how, wicks=wicks, rest="weight", rest_weight="1 1/2 oz", vessel_weight="370 g")


def test_heat_is_told_for_waxes_whose_heat_is_known():
    assert burn()[2]["power"].value == pytest.approx(46 / 12.5 * 43.86 / 3.6)
    assert burn(kind="soy")[2]["power"].value == pytest.approx(46 / 12.5 * 36.87 / 3.6)
    assert "power" not in burn(kind="own")[2]


def test_hours_by_the_weight_that_stays():
    _, _, figures = burn(rest="weight", rest_weight="40 g")
    assert figures["hours"].value == pytest.approx((200 - 40) / (46 / 12.5)) and figures["hours"].shown == "43 h"
    assert figures["left"].value == pytest.approx((200 - 40 - 46) / (46 / 12.5))
    assert figures["hours"].plus_minus / figures["hours"].value == pytest.approx(figures["rate"].plus_minus / figures["rate"].value)


def test_hours_by_the_height_that_stays():
    _, _, figures = burn(wicks=plan())
    assert figures["rest"].value == pytest.approx(3600 * 13 / 1000 * 0.9)
    assert figures["hours"].value == pytest.approx((200 - 42.12) / (46 / 12.5))
    assert "military fire office" in figures["rest"].constants[0].source.text
    assert burn(wicks=plan(), rest_height="1 in")[2]["rest"].value == pytest.approx(3600 * 25.4 / 1000 * 0.9)


def test_the_density_of_what_stays_has_its_source_and_falls_back_to_the_hot_one():
    own = burn(wicks=plan())[2]["rest"].constants[1]
    assert own.shown == "0.9 g/mL" and own.source.standing == "second hand"
    assert burn(wicks=plan(), kind="own")[2]["rest"].constants[1].source.standing == "your entry"
    said = understand({"wells": [{"burning": {"cycles": LOG}, "wax": {"density_set": "", "density_poured": "0.8 g/mL"}}]}, Display())
    rest = next(each for each in burning(said, "wells.0", plan(), FILLED).figures if each.key == f"{AT}.rest")
    assert rest.value == pytest.approx(3600 * 13 / 1000 * 0.8)


def test_a_well_of_the_first_pot_has_its_wax():
    wells = [{"wax": {"kind": "paraffin"}}, {"wax": {"kind": "soy"}, "burning": {"cycles": LOG}}]
    heats = {}
    for pot in ("own", "first"):
        wells[1]["pot"] = pot
        said = understand({"wells": wells}, Display())
        heats[pot] = next(each.value for each in burning(said, "wells.1", None, None).figures if each.key.endswith(".power"))
    assert heats["first"] / heats["own"] == pytest.approx(43.86 / 36.87)


def test_without_an_outline_the_height_can_t_be_told():
    assert not {"rest", "hours", "left"} & set(burn()[2])


def test_a_weighed_vessel_tells_the_wax_better_than_the_fill():
    _, _, figures = burn(rest="weight", rest_weight="40 g", vessel_weight="360 g")
    assert figures["hours"].value == pytest.approx((570 - 360 - 40) / (46 / 12.5)) and figures["hours"].uses[0] == f"{AT}.rest"


def test_a_surer_fill_makes_surer_hours():
    wide = burn(rest="weight", rest_weight="40 g", filled=_with_plus_minus(30.0))[2]["hours"]
    narrow = burn(rest="weight", rest_weight="40 g", filled=_with_plus_minus(1.0))[2]["hours"]
    assert wide.plus_minus > narrow.plus_minus > 0


def _with_plus_minus(half):
    wax = Figure("wells.0.wax", "Wax", 188.0, "g", "188 g", "", "", plus_minus=half)
    return Filled("wells.0", 188.0, 12.0, 0.0, 0.0, (wax,))


def test_what_is_burned_down_has_nothing_left():
    _, _, figures = burn(rest="weight", rest_weight="160 g")
    assert "hours" in figures and "left" not in figures


@pytest.mark.parametrize(("texts", "place"), [
    ({"rest": "weight", "rest_weight": "200 g"}, "rest_weight"), ({"rest": "weight", "rest_weight": "20 g", "vessel_weight": "570 g"}, "vessel_weight"),
])
def test_wax_that_is_not_there_is_told(texts, place):
    said, _, figures = burn(**texts)
    assert place in faults(said) and "hours" not in figures


def test_each_wick_of_several():
    said, _, figures = burn(wicks=plan(2))
    assert figures["per_wick"].value == pytest.approx(23 / 12.5) and "per_wick" not in burn(wicks=plan(1))[2]


def test_pool_growth_is_that_of_the_first_pool_that_had_room():
    figures = burn(wicks=plan())[2]
    assert figures["growth"].value == 13 and figures["pool"].value == pytest.approx(66 / 70)
    assert figures["by_rule"].value == pytest.approx(70 / 25.4)
    assert not {"pool", "by_rule"} & set(burn()[2])
    assert "growth" not in burn([{**LOG[0], "reached": "wall"}])[2]


def test_the_tallest_flame_stands_beside_both_limits():
    figures = burn([{**LOG[0], "flame": "30 mm"}, {**LOG[1], "flame": "75.5 mm"}])[2]
    assert figures["flame_astm"].value == pytest.approx(0.7) and figures["flame_en"].value == pytest.approx(-0.5)
    assert {figures[name].constants[0].source.standing for name in ("flame_astm", "flame_en")} == {"second hand"}


def test_while_it_burns_it_is_looked_at_each_hour_and_put_out_after_four():
    lit = read_moment("2026-11-03T09:00")
    due = burn([*LOG, {"lit_at": "2026-11-03T09:00"}])[1].due
    assert [(each.at - lit) / 3600 for each in due] == [1, 2, 3, 4] and due[-1].label == "Put it out"


def test_once_it_is_out_it_cools_for_three_hours():
    (due,) = burn()[1].due
    assert due.at == read_moment("2026-11-02T16:30")


def test_a_faulty_step_leaves_the_rate_out():
    said, found, figures = burn(readability="fine")
    assert found.rate is None and "rate" not in figures and "flame_en" in figures and "readability" in faults(said)


@given(st.recursive(ANYTHING, lambda inner: st.dictionaries(st.sampled_from(["cycles", "rest", *LOG[0], "minutes"]), inner), max_leaves=8))
@settings(max_examples=60)
def test_no_shape_of_a_log_is_too_odd(bent):
    burning(understand(vessel(wells__0__burning=bent), Display()), "wells.0", plan(2), FILLED)
    burning(understand(vessel(wells__0__burning={"cycles": [bent, LOG[0], bent]}), Display()), "wells.0", None, None)


def test_what_burned_in_a_cycle_without_hours_is_gone_too():
    """570 to 500 g untimed, then 20 g in 4 h: 200 − 40 − 90 = 70 g are left at 5 g/h."""
    untimed = [{"before": "570 g", "after": "500 g"}, {"minutes": "4 h", "after": "480 g"}]
    figures = burn(untimed, rest="weight", rest_weight="40 g")[2]
    assert figures["hours"].value == pytest.approx(160 / 5) and figures["left"].value == pytest.approx(70 / 5)


def test_a_faulty_weight_is_not_the_newest():
    log = [{"minutes": "4 h", "before": "570 g", "after": "550 g"}, {"minutes": "4 h", "after": "590 g"}]
    assert burn(log, rest="weight", rest_weight="40 g")[2]["left"].value == pytest.approx((200 - 40 - 20) / 5)


def test_it_is_put_out_sooner_where_less_wax_is_left():
    """60 g burned of 200 at 5 g/h: with 130 g to stay 10 g are left, 2 h."""
    log = [{"minutes": "12 h", "before": "570 g", "after": "510 g"}, {"lit_at": "2026-11-03T09:00"}]
    due = burn(log, rest="weight", rest_weight="130 g")[1].due
    assert [(each.label, round((each.at - due[0].at) / 3600, 6)) for each in due] == [("Look: flame, pool, soot", 0), ("Put it out", 1)]
    assert len(burn(log, rest="weight", rest_weight="40 g")[1].due) == 4


def test_what_is_down_to_its_rest_is_never_told_to_be_lit_again():
    log = [{"lit_at": "2026-11-01T10:00", "out_at": "2026-11-01T14:00", "before": "570 g", "after": "550 g"}]
    found = burn(log, rest="weight", rest_weight="190 g")[1]
    assert found.due == () and "don't light it again" in found.verdicts[0]
    lit = burn([*log, {"lit_at": "2026-11-03T09:00"}], rest="weight", rest_weight="190 g")[1]
    assert "put it out now" in lit.verdicts[0] and [each.label for each in lit.due] == ["Put it out"]
    assert burn(log, rest="weight", rest_weight="40 g")[1].due[0].label == "Cold enough to light again"
    reached = burn([{**log[0], "reached": "wall"}], rest="weight", rest_weight="190 g")[1]
    assert not any("go on to the last cycle" in each for each in reached.verdicts)


def test_what_stays_weighs_as_the_wax_that_is_in_it():
    """36 cm² × 13 mm of all the wax: by the cup, or by the volumes of a blend."""
    wax = {"kind": "own", "cup_volume": "200 mL", "cup_empty": "12 g", "cup_set": "196 g"}
    rest = _in_full(wax)
    assert rest["value"] == pytest.approx(36 * 1.3 * 0.92, rel=1e-3) and rest["working"]["constants"][1]["shown"] == "0.92 g/mL"
    half = {"kind": "soy", "density_set": "0.92 g/mL", "blended": [{"kind": "beeswax", "share": "50 %", "density_set": "0.96 g/mL"}]}
    assert _in_full(half)["value"] == pytest.approx(36 * 1.3 / (0.5 / 0.92 + 0.5 / 0.96), rel=1e-3)


def test_the_heat_of_a_blend_is_not_told_as_that_of_its_first_wax():
    half = {"kind": "soy", "density_set": "0.92 g/mL", "blended": [{"kind": "beeswax", "share": "50 %", "density_set": "0.96 g/mL"}]}
    assert "wells.0.burning.power" not in figures(_full(half))
    assert "wells.0.burning.power" in figures(_full({**half, "blended": []}))


def _full(wax):
    return vessel(wells__0__burning={"cycles": LOG}, wells__0__wax=wax, wells__0__basis="set",
                  wells__0__outline={"shape": "rectangle", "across": "60 mm", "other": "60 mm"})


def _in_full(wax):
    return figures(_full(wax))["wells.0.burning.rest"]

