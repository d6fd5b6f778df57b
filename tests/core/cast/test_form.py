"""A mold full of fresh mix: pressure, forces, and the seam."""

import random

import pytest

from brimbook.cast import form


def test_the_force_is_the_pressure_added_up_over_the_face():
    slices, depth = 2000, 150.0
    each = depth / slices
    summed = sum(form.pressure(2.2, (row + 0.5) * each) / 1000 * 80.0 * each for row in range(slices))
    assert form.side_force(2.2, 80.0, depth) == pytest.approx(summed, rel=1e-9)


def test_it_acts_where_the_moments_say():
    slices, depth = 2000, 150.0
    each = depth / slices
    moment = sum(form.pressure(2.2, (row + 0.5) * each) / 1000 * 80.0 * each * (depth - (row + 0.5) * each)
                 for row in range(slices))
    assert form.force_height(depth) == pytest.approx(moment / form.side_force(2.2, 80.0, depth), rel=1e-6)


def test_a_core_as_heavy_as_the_mix_floats_nowhere():
    assert form.uplift(2.2, 300.0, 660.0) == pytest.approx(0)
    assert form.uplift(2.2, 300.0) > 0 > form.uplift(2.2, 300.0, 700.0)


def test_a_cube_s_uplift_is_the_difference_of_pressures_on_it():
    side, top = 50.0, 20.0
    below, above = form.pressure(2.2, top + side), form.pressure(2.2, top)
    assert form.uplift(2.2, side**3 / 1000) == pytest.approx((below - above) / 1000 * side**2)


def test_opening_and_spacing_turn_each_other_round():
    chance = random.Random(4)
    for _ in range(50):
        load, opening, stiffness = chance.uniform(0.01, 5), chance.uniform(0.02, 2), 10 ** chance.uniform(3, 8)
        spacing = form.spacing_for_opening(load, opening, stiffness)
        assert form.seam_opening(load, spacing, stiffness) == pytest.approx(opening)
        assert form.spacing_for_opening(load * 16, opening, stiffness) == pytest.approx(spacing / 2)


def test_the_beam_sags_as_its_own_equation_says():
    """w'''' E I = load, fixed at both ends: worked out by finite differences, independent of the closed form."""
    count, load, span, stiffness = 400, 0.13, 120.0, 1.28e6
    step = span / count
    sag = [load / (24 * stiffness) * x**2 * (span - x) ** 2 for x in (row * step for row in range(count + 1))]
    middle = count // 2
    fourth = (sag[middle - 2] - 4 * sag[middle - 1] + 6 * sag[middle] - 4 * sag[middle + 1] + sag[middle + 2]) / step**4
    assert fourth * stiffness == pytest.approx(load, rel=1e-3)
    assert form.seam_opening(load, span, stiffness) == pytest.approx(2 * sag[middle])


def test_the_seams_together_carry_the_pressure():
    for seams in (1, 2, 4):
        assert form.seam_load(2.2, 80.0, 150.0, seams) * seams == pytest.approx(form.pressure(2.2, 150.0) / 1000 * 80.0)


def test_a_flange_twice_as_thick_is_eight_times_as_stiff():
    assert form.stiffness_of_flange(2000, 15, 16) == pytest.approx(8 * form.stiffness_of_flange(2000, 15, 8))


@pytest.mark.parametrize(("force", "spacing", "bolts"), [
    (0.0, 0.0, 2), (2.0, 1.0, 2), (2.0 + 1e-12, 1.0, 2), (2.001, 1.0, 3), (0.1, 3.2, 4), (9.0, 3.2, 9)])
def test_bolts_are_rounded_up_and_never_fewer_than_two(force, spacing, bolts):
    assert form.bolts_a_seam(force, spacing) == bolts


def test_a_washer_bears_on_its_ring_alone():
    whole = form.bearing_force(8.0, 10.0, 0.0)
    assert form.bearing_force(8.0, 10.0, 6.0) + form.bearing_force(8.0, 6.0, 0.0) == pytest.approx(whole)
