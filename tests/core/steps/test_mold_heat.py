"""Heat in the mold."""

import pytest
from arithmetic import split, work_out
from vessels import put, vessel

from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.mold_heat import mix_of, mold_heat
from brimbook.steps.recipe import recipe_of

NEAT = {"casts__0__mix__powder__kind": "portland", "casts__0__mix__powder__particle_density": "3.15 g/mL",
        "casts__0__mix__water_to_powder": "0.4", "casts__0__mix__powder__heat": "100 kJ/kg"}


def warmed(start=20.0, display=Display(), record=None, **texts):
    """The figures of the heat, by name, their numbers worked out again."""
    said = understand(record or vessel(**{**NEAT, **texts}), display)
    said.values["casts.0.curing.temperature"] = start
    found = mold_heat(said, "casts.0", recipe_of(said, "casts.0"))
    for figure in found:
        plain = figure.to_plain()["working"]["numbers"]
        plain = plain.replace(",", ".") if display.decimal == "comma" else plain
        expression, told, half, _ = split(plain)
        assert abs(work_out(expression) - told) <= half * 1.15, plain
    return {figure.key.rpartition(".")[2]: figure for figure in found}


def test_the_known_bound_of_a_neat_paste():
    """w/c 0.4 and 100 kJ/kg warm it by 41 K, to the top of where PLA softens."""
    shown = warmed()
    assert shown["peak"].value == pytest.approx(61, abs=0.5) and "A bound" in shown["peak"].spread
    assert shown["heat_share"].value == pytest.approx(35 / 41.3, abs=0.01)
    assert "PLA softens from 55 °C" in shown["heat_share"].says


def test_a_plastic_that_the_mix_can_t_soften():
    shown = warmed(casts__0__clamping__plastic="petg")
    assert shown["heat_share"].value > 1 and "can't get so warm" in shown["heat_share"].says


def test_a_generic_heat_is_of_the_cement_alone_and_the_maker_s_own_of_the_bag():
    half = {"casts__0__mix__powder__binder_share": "50 %"}
    generic = {"casts__0__mix__powder__heat": ""}
    assert warmed(**half)["peak"].value == pytest.approx(warmed()["peak"].value)
    full, lean = warmed(**generic)["peak"].value - 20, warmed(**half, **generic)["peak"].value - 20
    assert lean == pytest.approx(full / 2)


def test_another_binder_brings_its_own_heat():
    more = {"kind": "portland", "role": "binder", "particle_density": "3.15 g/mL", "heat": "100 kJ/kg"}
    record = put(put(vessel(**NEAT), "casts.0.mix.others", [more]), "casts.0.mix.parts", "1:1:0.8")
    assert warmed(record=record)["peak"].value == pytest.approx(warmed()["peak"].value)
    del more["heat"]
    assert warmed(record=record)["peak"].value > warmed()["peak"].value


def test_sand_keeps_it_cooler():
    sand = {"kind": "sand", "role": "sand", "particle_density": "2.65 g/mL"}
    record = put(put(vessel(**NEAT), "casts.0.mix.others", [sand]), "casts.0.mix.parts", "1:2:0.4")
    assert warmed(record=record)["peak"].value == pytest.approx(20 + 100 / (4.18 * 0.4 + 0.75 * 3))


def test_a_cold_bench_and_fahrenheit():
    shown = warmed(start=-5.0)
    assert shown["peak"].value == pytest.approx(36.3, abs=0.1)
    told = warmed(display=Display(temperature="F", decimal="comma"))
    assert told["peak"].shown.endswith("°F") and told["peak"].worked.endswith("°C")


def test_past_boiling_is_said():
    assert "past boiling" in warmed(casts__0__mix__powder__heat="350 kJ/kg")["peak"].says


def test_a_bench_as_warm_as_the_plastic_softens_tells_no_share():
    assert set(warmed(casts__0__clamping__softens="30 °C", start=40.0)) == {"peak"}


def test_no_heat_no_rise():
    shown = warmed(casts__0__mix__powder__heat="0 kJ/kg")
    assert set(shown) == {"peak"} and shown["peak"].value == 20


def test_nothing_is_told_of_a_powder_whose_heat_is_not_known_or_faulty():
    assert warmed(casts__0__mix__powder__kind="own", casts__0__mix__powder__heat="") == {}
    assert warmed(casts__0__mix__powder__heat="hot") == {}
    assert set(warmed(casts__0__clamping__softens="warm")) == {"peak"}


def test_a_mold_filled_from_the_first_bowl_has_its_mix():
    said = understand(put(vessel(), "casts.1", {"bowl": "first"}), Display())
    assert mix_of(said, "casts.1") == "casts.0.mix" and mix_of(said, "casts.0") == "casts.0.mix"
    assert mix_of(understand(put(vessel(), "casts.1", {}), Display()), "casts.1") == "casts.1.mix"


def test_temperatures_are_told_in_the_maker_s_degrees():
    shown = warmed(display=Display(temperature="F"))
    assert "PLA softens from 131 °F" in shown["heat_share"].says
    assert shown["peak"].shown.removesuffix(" °F").isdigit()
