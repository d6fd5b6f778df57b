"""The mold under load: pressure, force, and the core."""

import json
import math
import random

import pytest
from molds import AT, clamped, faults
from vessels import DISPLAYS, figures, put, vessel

from brimbook.cast.bolts import THREADS


def test_a_published_wall_has_its_published_pressure():
    """150 lb/ft³ and 8 ft press with 8.33 psi: Concrete Construction, “Form pressure”."""
    shown = clamped({"length": "in"}, depth="8 ft", density="150 lb/ft³")
    assert shown["pressure"]["shown"] == "8.33 psi"
    assert {each["source"] for each in shown["pressure"]["working"]["constants"]} >= {"Typed by you"}


def test_the_force_acts_a_third_up():
    shown = clamped(density="2.2 g/mL")
    assert shown["force"]["value"] == pytest.approx(2.2 * 9.80665 * 0.12**2 / 2 * 0.08 * 1000)
    assert "40 mm above the bottom" in shown["force"]["says"]


def test_the_recipe_tells_the_density_and_without_one_it_is_assumed_and_said():
    by_recipe = clamped()["pressure"]
    assert by_recipe["value"] == pytest.approx(1.25 / (1 / 2.98 + 0.25 / 0.9982067) * 9.80665 * 0.12, rel=1e-6)
    record = vessel(casts__0__clamping__depth="100 mm", casts__0__mix__powder__particle_density="heavy")
    assumed = figures(record)[f"{AT}.pressure"]
    assert assumed["value"] == pytest.approx(2.1575, abs=1e-4)
    constant = assumed["working"]["constants"][0]
    assert constant["name"] == "Fresh mix, assumed" and constant["standing"] == "common practice"


@pytest.mark.parametrize(("solid", "sizes", "width"), [
    ("cylinder", {"diameter": "70 mm"}, 70), ("tapered", {"top_diameter": "60 mm", "bottom_diameter": "90 mm"}, 90),
    ("box", {"length": "50 mm", "width": "95 mm"}, 95)])
def test_a_cavity_by_its_dimensions_needs_no_sizes_again(solid, sizes, width):
    record = vessel(casts__0__cavity__way="dimensions", casts__0__cavity__solid=solid, casts__0__cavity__height="110 mm")
    for name, text in sizes.items():
        put(record, f"casts.0.cavity.{name}", text)
    plain, shown = put(put(vessel(), f"{AT}.depth", "110 mm"), f"{AT}.width", f"{width} mm"), figures(record)
    assert shown[f"{AT}.force"]["value"] == pytest.approx(figures(plain)[f"{AT}.force"]["value"])
    put(record, f"{AT}.depth", "220 mm")
    assert figures(record)[f"{AT}.pressure"]["value"] == pytest.approx(2 * shown[f"{AT}.pressure"]["value"])


def test_the_core_floats_up_less_its_own_weight():
    light = clamped(core_volume="200 mL", density="2.2 g/mL")["uplift"]
    assert light["value"] == pytest.approx(4.315, abs=1e-3) and "hold it down with more than 440 g" in light["says"]
    own = clamped(core_volume="200 mL", core_weight="140 g", density="2.2 g/mL")["uplift"]
    assert own["value"] == pytest.approx(0.3 * 9.80665)
    heavy = clamped(core_volume="200 mL", core_weight="500 g", density="2.2 g/mL")["uplift"]
    assert heavy["value"] < 0 and "stays down" in heavy["says"]


def test_the_core_needs_no_depth():
    assert figures(vessel(casts__0__clamping__core_volume="200 mL"))[f"{AT}.uplift"]["value"] > 0


@pytest.mark.parametrize(("name", "gone"), [
    ("depth", {"pressure", "force", "bolts"}), ("width", {"force", "bolts"}), ("density", {"pressure", "uplift"}),
    ("core_weight", {"uplift"}), ("core_volume", {"uplift"})])
def test_what_needs_a_faulty_entry_is_left_out_and_said(name, gone):
    texts = {"core_volume": "200 mL", "core_weight": "40 g", name: "lots"}
    assert gone.isdisjoint(clamped(**texts))
    assert name in faults(**{"depth": "120 mm", **texts})


def test_nothing_is_told_while_nothing_is_typed():
    assert not {key for key in figures(vessel()) if key.startswith(AT) and not key.endswith(("peak", "heat_share"))}


@pytest.mark.parametrize("how", DISPLAYS, ids=json.dumps)
def test_the_numbers_work_out_under_any_settings(how):
    shown = clamped(how, core_volume="200 mL", core_weight="30 g", print_volume="140 mL", spool_price="24.50")
    assert {"pressure", "force", "bolts", "torque", "uplift", "print", "filament", "cost_per_cast"} <= set(shown)


@pytest.mark.parametrize("depth", ["0.1 mm", "3000 mm"])
@pytest.mark.parametrize("density", ["0.3 g/mL", "4 g/mL"])
def test_extremes_are_finite(depth, density):
    assert all(math.isfinite(figure["value"]) for figure in clamped(depth=depth, width=depth, density=density).values())


def test_deeper_wider_and_heavier_push_harder():
    for name, texts in (("depth", ("80 mm", "120 mm", "200 mm")), ("width", ("40 mm", "80 mm", "160 mm")),
                        ("density", ("1.6 g/mL", "2.1 g/mL", "2.4 g/mL"))):
        forces = [clamped(**{name: text})["force"]["value"] for text in texts]
        assert forces == sorted(forces) and forces[0] < forces[-1]


def test_the_numbers_of_any_mold_work_out():
    chance = random.Random(11)
    for _ in range(150):
        texts = {name: f"{math.exp(chance.uniform(math.log(low), math.log(high))):.5g} {unit}" for name, (low, high, unit) in {
            "depth": (5, 3000, "mm"), "width": (5, 3000, "mm"), "density": (0.5, 3, "g/mL"), "gap": (0.02, 5, "mm"),
            "flange_thickness": (1, 50, "mm"), "flange_width": (5, 80, "mm"), "bearing": (0.5, 60, "MPa"),
            "modulus": (20, 9000, "MPa"), "core_volume": (1, 5000, "mL"), "print_weight": (5, 20000, "g"),
            "spool_price": (1, 90000, "")}.items()}
        how = chance.choice(DISPLAYS)
        assert "pressure" in clamped(how, thread=chance.choice(list(THREADS)), **texts)
