"""The bolts of a mold."""

import pytest
from molds import clamped, faults


def test_a_small_mold_takes_two_bolts_a_seam():
    shown = clamped()
    assert shown["bolts"]["shown"] == "4" and "the least" in shown["bolts"]["says"]
    assert "the plastic governs" in shown["by_force"]["says"]


def test_the_plastic_under_the_washer_governs_the_bolt_and_the_torque():
    shown = clamped()
    assert shown["bearing"]["value"] == pytest.approx(8 * 3.14159265 / 4 * (10**2 - 5.3**2))
    assert shown["torque"]["value"] == pytest.approx(0.2 * 0.005 * shown["bearing"]["value"])
    assert "press the washer into the plastic" in shown["torque"]["says"]


def test_a_plastic_as_hard_as_steel_leaves_it_to_the_bolt():
    shown = clamped(bearing="200 MPa", thread="m3", washer_outside="15 mm")
    assert shown["bearing"]["value"] > shown["proof"]["value"]
    assert "the bolt gives way" in shown["by_force"]["says"] and "stretch the bolt" in shown["torque"]["says"]
    assert shown["torque"]["value"] == pytest.approx(0.2 * 0.003 * 0.75 * shown["proof"]["value"])


def test_the_force_sets_the_count_of_a_large_mold():
    shown = clamped(depth="800 mm", width="600 mm", flange_thickness="200 mm", bearing="1 MPa", safety="4")
    needed = shown["force"]["value"] * 4 / (2 * shown["bearing"]["value"])
    assert shown["by_force"]["value"] == pytest.approx(needed) and needed > 3
    assert shown["bolts"]["value"] == 2 * -(-needed // 1) and "the force sets it" in shown["bolts"]["says"]
    assert any("closer together" in note for note in shown["bolts"]["notes"])


def test_a_thin_flange_sets_the_count_by_its_spacing():
    shown = clamped(flange_thickness="3 mm")
    assert "the flange would bend open" in shown["bolts"]["says"]
    assert shown["bolts"]["value"] == 2 * -(-(120 / shown["spacing"]["value"] + 1) // 1)


def test_the_spacing_by_hand():
    """The pull on 1 mm of seam at the bottom, both flanges bending: (0.1 × 384 E I ÷ 2 w)^¼."""
    shown = clamped(density="2.2 g/mL", modulus="2 GPa", flange_width="15 mm", flange_thickness="8 mm")
    pull = 2.2 * 9.80665 * 120 / 1e6 * 80 / 2
    assert shown["spacing"]["value"] == pytest.approx((0.1 * 384 * 2000 * 15 * 512 / 12 / (2 * pull)) ** 0.25)


@pytest.mark.parametrize(("name", "texts"), [
    ("flange_thickness", ("2 mm", "4 mm", "8 mm")), ("flange_width", ("5 mm", "10 mm", "30 mm")),
    ("gap", ("0.02 mm", "0.1 mm", "1 mm")), ("modulus", ("100 MPa", "1000 MPa", "3000 MPa"))])
def test_stiffer_flanges_let_bolts_stand_farther_apart(name, texts):
    apart = [clamped(**{name: text})["spacing"]["value"] for text in texts]
    assert apart == sorted(apart) and apart[0] < apart[-1]


def test_one_seam_takes_the_whole_load():
    one, two = clamped(seams="1"), clamped(seams="2")
    assert one["by_force"]["value"] == pytest.approx(2 * two["by_force"]["value"])
    assert one["spacing"]["value"] == pytest.approx(two["spacing"]["value"] / 2**0.25)


def test_inch_bolts_have_grades_and_metric_ones_classes():
    inch = clamped({"length": "in"}, thread="1/4-20", grade="5")["proof"]
    assert inch["value"] == pytest.approx(2700 * 4.4482216, rel=0.005) and inch["shown"].endswith(" lbf")
    assert clamped(thread="m6", property_class="8.8")["proof"]["value"] == pytest.approx(11600, rel=0.01)


def test_a_washer_s_standing_is_told():
    sources = {thread: clamped(thread=thread)["bearing"]["working"]["constants"] for thread in ("m6", "3/8-16")}
    assert [each["standing"] for each in sources["m6"]] == ["from memory", "second hand"]
    assert [each["standing"] for each in sources["3/8-16"]] == ["from memory", "from memory"]
    own = clamped(washer_outside="18 mm", bearing="6 MPa")["bearing"]
    assert [each["standing"] for each in own["working"]["constants"]] == ["your entry", "your entry"]


def test_a_hole_as_wide_as_its_washer_is_a_fault():
    texts = {"depth": "120 mm", "width": "80 mm", "washer_hole": "12 mm"}
    assert "as wide as the washer" in faults(**texts)["washer_hole"]
    assert {"bolts", "bearing"}.isdisjoint(clamped(washer_hole="12 mm"))
    assert "washer_outside" in faults(depth="120 mm", width="80 mm", washer_outside="5 mm")


def test_a_washer_wider_than_its_flange_is_told():
    assert any("wider than the flange" in note for note in clamped(flange_width="8 mm")["bearing"]["notes"])
    assert clamped()["bearing"]["notes"] == []


def test_bolts_too_close_for_a_wrench_are_told():
    assert any("make it thicker" in note for note in clamped(plastic="tpu", flange_thickness="2 mm")["spacing"]["notes"])


def test_another_plastic_asks_for_its_own_figures():
    assert {"bolts", "bearing", "spacing"}.isdisjoint(clamped(plastic="own"))
    assert clamped(plastic="own", bearing="5 MPa", modulus="900 MPa")["bolts"]["value"] >= 4


@pytest.mark.parametrize(("name", "gone"), [
    ("thread", {"proof", "bearing", "spacing", "bolts", "torque"}), ("property_class", {"proof", "bolts", "torque"}),
    ("bearing", {"bearing", "bolts", "torque"}), ("modulus", {"spacing", "bolts"}), ("gap", {"spacing", "bolts"}),
    ("safety", {"bolts"}), ("seams", {"spacing", "bolts"}), ("washer_outside", {"bearing", "bolts"}),
    ("flange_thickness", {"spacing", "bolts"}), ("plastic", {"bearing", "spacing", "bolts"})])
def test_what_needs_a_faulty_entry_is_left_out(name, gone):
    assert gone.isdisjoint(clamped(**{name: "x"})) and name in faults(**{name: "x"})
    assert "force" in clamped(**{name: "x"})


def test_more_safety_never_takes_fewer_bolts():
    counts = [clamped(depth="700 mm", width="500 mm", safety=text, flange_thickness="200 mm")["bolts"]["value"]
              for text in ("1", "2", "4", "10")]
    assert counts == sorted(counts) and counts[-1] > counts[0]


def test_a_bolt_goes_through_its_hole():
    assert "M5 doesn't go through 4 mm" in faults(depth="120 mm", width="80 mm", washer_hole="4 mm")["washer_hole"]
    assert "bolts" not in clamped(washer_hole="4 mm") and "bolts" in clamped(washer_hole="5 mm")


def test_a_plastic_without_a_name_stands_well_in_its_sentences():
    says = clamped(plastic="own", bearing="8 MPa", modulus="2000 MPa")["bearing"]["says"]
    assert says.startswith("The plastic bears about")
