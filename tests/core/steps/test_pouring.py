"""The figures of the pours: worked by hand, told in words, and what mixing takes from them."""

import math
import re

import pytest
from arithmetic import split, work_out
from hypothesis import given
from hypothesis import strategies as st
from vessels import DISPLAYS, figures, put, vessel

from brimbook import work_out as order

WATER = 0.9982067
CAVITY = 641.8251
TABLE = 1.25 / (1 / 2.98 + 0.25 / WATER)
POUR = {"powder": "1200 g", "water": "300 g", "left_over": "90 g"}
CUP = {"cup_volume": "100 mL", "cup_empty": "12 g", "cup_full": "218 g"}


def log(*pours, **texts):
    return vessel(casts__0__pours=list(pours), **texts)


def pouring(record, **how):
    return {key.removeprefix("casts.0.pouring."): figure for key, figure in figures(record, **how).items()
            if key.startswith("casts.0.pouring.")}


def learned(record):
    return order.work_out(record).learned.get("casts.0")


def check(record, **how):
    """The numbers of each figure come to what is told."""
    shown = pouring(record, **how)
    for key, figure in shown.items():
        numbers = figure["working"]["numbers"]
        expression, told, half, _ = split(numbers.replace(",", ".") if how.get("decimal") == "comma" else numbers)
        assert abs(work_out(expression) - told) <= half * 1.15, f"{key}: {numbers}"
        value = figure["value"] * (100 if figure["unit"] == "–" else 1)
        assert abs(value - told) <= half * 1.15, f"{key}: {numbers}"
    return shown


def test_nothing_logged_teaches_nothing():
    assert pouring(vessel()) == {} and learned(vessel()) is None
    assert pouring(log()) == {} and pouring(log({}, {"when": "2026-09-12T10:30"}, {"powder": "1200 g"})) == {}


def test_one_pour_by_hand():
    """1500 g weighed, 90 g left: 1410 g in 642 mL of room; 3 % film is expected, and 0.97 of what is off goes to it."""
    seen = math.log(1410 / CAVITY / TABLE)
    variance = 0.02**2, 0.03**2 + 0.01**2
    expected = math.exp((seen - math.log(1.03)) * variance[0] / sum(variance))
    assert learned(log(POUR)).density_ratio == pytest.approx(expected, rel=1e-4)
    assert learned(log(POUR)).allowance is None
    shown = check(log(POUR))
    assert shown["density"]["value"] == pytest.approx(TABLE * expected, rel=1e-4)
    assert "allowance" not in shown and "One pour more" in shown["needed"]["notes"][0]


def test_a_cup_by_hand():
    """206 g in 100 mL."""
    shown = check(log({**POUR, **CUP}))
    assert shown["cup_1"]["value"] == pytest.approx(2.06)
    assert 2.06 < shown["density"]["value"] < TABLE
    assert re.match(r"Your mix is 2\.\d % lighter than the table says: 2\.0\d+ g/mL ± 0\.0\d+ g/mL", shown["density"]["says"])


def test_a_cup_alone_teaches_the_density():
    shown = check(log(CUP))
    assert shown["density"]["value"] < TABLE and "needed" not in shown and "weight_pours" not in shown


def test_the_weights_come_to_a_hundred():
    record = log({**POUR, **CUP}, POUR)
    shown = check(record)
    percents = [int(shown[f"weight_{name}"]["shown"].removesuffix(" %")) for name in ("table", "cups", "pours")]
    assert sum(percents) == 100 and percents[1] > percents[0] > percents[2]


@given(st.lists(st.integers(0, 200), min_size=1, max_size=4), st.lists(st.integers(190, 230), max_size=3))
def test_weights_of_any_log_come_to_a_hundred_and_all_numbers_work_out(left, cups):
    pours = [{**POUR, "left_over": f"{grams} g"} for grams in left] + [{**CUP, "cup_full": f"{grams} g"} for grams in cups]
    shown = check(log(*pours))
    assert sum(int(figure["shown"].removesuffix(" %")) for name, figure in shown.items() if name.startswith("weight")) == 100


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
def test_the_numbers_work_out_under_any_settings(how):
    pours = [{**POUR, **CUP, "spread_1": "148 mm"}, {**POUR, "left_over": "0.1 kg", "cup_full": "7.5 oz"},
             {"powder": "1190 g", "water": "10 1/2 oz", "short": "12 g"}]
    assert "allowance" in check(log(*pours, casts__0__cavity__readability="0.5 g"), **how)


def test_a_log_of_many_pours_is_told_in_short_and_counted_in_full():
    pours = [{**POUR, **CUP, "left_over": f"{80 + row % 7} g", "cup_full": f"{216 + row % 3} g"} for row in range(60)]
    shown = check(log(*pours))
    assert [name for name in shown if name.startswith("needed_")] == [f"needed_{row}" for row in range(53, 61)]
    assert "The last 60 pours" in shown["needed"]["says"]
    assert all(len(figure["working"]["numbers"]) < 600 for figure in shown.values())


def test_the_next_pour_starts_from_what_was_learned():
    plain, taught = figures(vessel()), figures(log(POUR, POUR))
    shown = pouring(log(POUR, POUR))
    needed = shown["allowance"]["value"]
    assert taught["casts.0.mix_needed"]["value"] == pytest.approx(CAVITY * (1 + needed), rel=1e-6)
    assert taught["casts.0.powder"]["value"] == pytest.approx(
        CAVITY * (1 + needed) / shown["yield"]["value"], rel=1e-6)
    assert taught["casts.0.powder"]["value"] != pytest.approx(plain["casts.0.powder"]["value"], rel=1e-3)
    assert "casts.0.pouring.density" in taught["casts.0.mix_per_gram_known"]["working"]["uses"]


def test_a_maker_who_always_needs_the_same_is_told_to_weigh_that_and_a_margin():
    """1410 g of mix went in each time: what is planned comes to 1410 g and about 2 % more."""
    taught = figures(log(*[POUR] * 6))
    assert 1410 * 1.01 < taught["casts.0.bowl"]["value"] < 1410 * 1.03


def test_the_typed_allowance_can_be_kept():
    shown = figures(log(POUR, POUR, casts__0__allowance_from="typed"))
    assert shown["casts.0.mix_needed"]["value"] == pytest.approx(CAVITY * 1.1, rel=1e-6)


def test_an_old_pour_still_teaches_after_a_change_of_recipe():
    """Each pour is held against the table for its own weights: the ratio of another recipe later changes nothing in it."""
    before = learned(log(POUR, {**POUR, "left_over": "80 g"}))
    after = learned(log(POUR, {**POUR, "left_over": "80 g"}, casts__0__mix__water_to_powder="3:1"))
    assert after == before


def test_water_left_empty_is_the_recipe_s():
    typed, empty = (learned(log({"powder": "1200 g", "left_over": "90 g", **more})) for more in ({"water": "300 g"}, {}))
    assert typed.density_ratio == pytest.approx(empty.density_ratio)


def test_more_water_held_back_makes_the_pour_s_own_mix_heavier():
    thick, thin = (pouring(log({**POUR, **CUP, "water": water}))["density"]["value"] for water in ("280 g", "320 g"))
    assert thick < thin


def with_sand(*pours, **texts):
    record = log(*pours, casts__0__mix__parts="1:1:0.4", **texts)
    return put(record, "casts.0.mix.others.0", {"kind": "sand", "role": "sand", "moisture": "3 %"})


def test_other_ingredients_count_by_their_own_weights():
    pour = {"powder": "600 g", "water": "240 g", "left_over": "100 g"}
    as_planned = learned(with_sand(pour))
    assert as_planned == learned(with_sand({**pour, "others": [{}]}))
    more = learned(with_sand({**pour, "others": [{"weighed": "700 g"}]}))
    assert more.pours.values[0] > as_planned.pours.values[0]
    check(with_sand(pour, {**pour, **CUP, "cup_full": "230 g"}))


def test_pieces_are_as_planned_unless_typed():
    two = log({**POUR, "powder": "2400 g", "water": "600 g"}, casts__0__pieces="2")
    typed = log({**POUR, "powder": "2400 g", "water": "600 g", "pieces": "2"})
    assert learned(two).pours.values == learned(typed).pours.values


def test_a_pour_that_came_short_is_what_it_took():
    short = learned(log({"powder": "1000 g", "water": "250 g", "short": "160 g"}))
    over = learned(log({"powder": "1200 g", "water": "300 g", "left_over": "90 g"}))
    assert short.pours.values == pytest.approx(over.pours.values)


def test_molds_that_share_the_bowl_count_with_their_pieces():
    record = log({**POUR, "powder": "2400 g", "water": "600 g", "left_over": "180 g"})
    record["casts"].append({"bowl": "first", "pieces": "1", "cavity": {"readings": [{"water": "640 g"}]}})
    assert learned(record).pours.values == pytest.approx(learned(log(POUR)).pours.values)
    record["casts"][1]["cavity"]["readings"] = [{}]
    assert learned(record) is None


def test_without_a_measured_mold_cups_still_teach():
    record = log({**POUR, **CUP}, casts__0__cavity__readings__0__water="")
    assert learned(record).pours is None and learned(record).cups is not None
    assert "density" in check(record)


def test_a_pour_that_stands_apart_is_told_and_counted():
    pours = [{**POUR, "left_over": f"{grams} g"} for grams in (90, 92, 88, 91, 89, 300)]
    shown = check(log(*pours))
    (note,) = shown["scatter_pours"]["notes"]
    assert note.startswith("Pour 6 stands apart") and "still counted" in note
    assert shown["allowance"]["value"] > check(log(*pours[:5]))["allowance"]["value"]
    assert check(log(*pours[:5]))["scatter_pours"]["notes"] == []


def test_a_stray_pour_is_named_by_its_place_in_the_log():
    pours = [{}, *({**POUR, "left_over": f"{grams} g"} for grams in (90, 92, 88)), CUP,
             *({**POUR, "left_over": f"{grams} g"} for grams in (91, 300, 89))]
    (note,) = check(log(*pours))["scatter_pours"]["notes"]
    assert note.startswith("Pour 7 ")


def test_a_coarse_scale_teaches_less_of_a_small_cup():
    small = log({"cup_volume": "20 mL", "cup_empty": "0 g", "cup_full": "41 g"})
    assert pouring(small, readability="5 g")["density"]["value"] > pouring(small, readability="0.1 g")["density"]["value"]


def test_what_needed_less_than_the_mold_holds_says_so():
    shown = check(log({**POUR, "left_over": "240 g"}, {**POUR, "left_over": "240 g"}, CUP, CUP))
    assert shown["allowance"]["value"] < 0 and "Measure the mold again" in shown["allowance"]["notes"][0]


def test_a_plan_never_follows_pours_that_leave_the_mold_half_empty():
    pours = [{"powder": "900 g", "water": "225 g", "left_over": "90 g"}] * 3
    shown = figures(vessel(casts__0__pours=pours))
    assert "casts.0.pouring.allowance" not in shown
    assert shown["casts.0.mix_needed"]["working"]["numbers"].startswith("1 × 641.82515 × (1 + 0.1)")
    assert "less than the mold is measured to hold" in shown["casts.0.pouring.needed"]["says"]
    assert "No mold takes so much less" in shown["casts.0.pouring.needed"]["notes"][0]
