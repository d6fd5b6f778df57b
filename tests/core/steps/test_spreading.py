"""The spread of the logged pours, and the water that moves it."""

import pytest
from arithmetic import split, work_out
from vessels import DISPLAYS, figures, vessel


def spreads(*pours, how=None, **texts):
    log = [{"powder": "1000 g", "water": water, "spread_1": first, "spread_2": second} for water, first, second in pours]
    shown = figures(vessel(casts__0__pours=log, **texts), **(how or {}))
    for figure in shown.values():
        numbers = figure["working"]["numbers"]
        if (how or {}).get("decimal") == "comma":
            numbers = numbers.replace(",", ".")
        expression, told, half, _ = split(numbers)
        assert abs(work_out(expression) - told) <= half * 1.15, figure["key"]
    return {key.removeprefix("casts.0.pouring."): figure for key, figure in shown.items() if "pouring" in key}


THREE = (("240 g", "138 mm", "142 mm"), ("250 g", "150 mm", ""), ("260 g", "", "160 mm"))


def test_the_spread_to_aim_for_is_the_average_and_its_flow_stands_on_the_cone():
    shown = spreads(*THREE)
    assert shown["spread"]["value"] == pytest.approx(150) and shown["spread"]["shown"] == "150 mm"
    assert shown["flow"]["value"] == pytest.approx(112 / 38)
    ring = spreads(("250 g", "210 mm", "210 mm"), casts__0__flow__cone="flow_table")
    assert ring["flow"]["shown"] == "110 %" and "mortar" not in ring["flow"]["says"]


def test_a_class_is_told_for_its_own_table_alone():
    shown = spreads(("250 g", "210 mm", "210 mm"), casts__0__flow__cone="mortar_table")
    assert "a soft mortar" in shown["flow"]["says"]
    assert [each["standing"] for each in shown["flow"]["working"]["constants"]] == ["from memory", "second hand",
                                                                                   "from memory"]


def test_ten_millimeters_for_a_gram_in_a_hundred():
    shown = spreads(*THREE)
    assert shown["spread_slope"]["value"] == pytest.approx(10)
    assert "10 mm wider" in shown["spread_slope"]["says"] and "from 24 g to 26 g" in shown["spread_slope"]["says"]


def test_water_for_a_spread_between_those_seen():
    shown = spreads(*THREE, casts__0__flow__target="155 mm")
    assert shown["spread_water"]["value"] == pytest.approx(25.5)
    assert "the recipe has 25 g" in shown["spread_water"]["says"]


def test_a_spread_far_from_those_seen_gets_no_number():
    shown = spreads(*THREE, casts__0__flow__target="220 mm")
    assert "spread_water" not in shown and "too far" in shown["spread_slope"]["notes"][0]


@pytest.mark.parametrize("pours", [
    (("240 g", "160 mm", ""), ("260 g", "140 mm", "")),
    (("240 g", "150 mm", ""), ("250 g", "120 mm", ""), ("260 g", "156 mm", "")),
])
def test_a_slope_that_is_not_sure_says_what_to_do(pours):
    shown = spreads(*pours, casts__0__flow__target="150 mm")
    assert "spread_water" not in shown and "too little to go by" in shown["spread_slope"]["notes"][0]


def test_pours_of_one_water_move_nothing():
    assert set(spreads(("250 g", "150 mm", ""), ("251 g", "152 mm", ""))) == {"spread", "flow"}


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
def test_the_numbers_work_out_under_any_settings(how):
    shown = spreads(("240 g", "138 mm", "142 mm"), ("250 g", "149 mm", ""), ("260 g", "161 mm", ""), how=how,
                    casts__0__flow__target="155 mm")
    assert "spread_water" in shown and shown["spread_slope"]["plus_minus"].startswith("± ")


def test_a_long_log_is_told_in_short():
    shown = spreads(*[(f"{240 + row} g", f"{140 + row + row % 3} mm", "") for row in range(20)])
    assert all(len(figure["working"]["numbers"]) < 300 for figure in shown.values())


def test_a_spread_that_is_wanted_is_the_one_to_aim_for():
    assert "aim for that" in spreads(*THREE)["spread"]["says"]
    says = spreads(*THREE, casts__0__flow__target="155 mm")["spread"]["says"]
    assert "aim" not in says and says.endswith("you want 155 mm")
