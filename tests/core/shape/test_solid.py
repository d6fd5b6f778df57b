"""Solids at ordinary sizes, at nothing, and where one becomes another."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.shape import solid

SIZE = st.floats(1, 1000)


@given(SIZE, SIZE)
def test_a_cone_frustum_with_upright_walls_is_a_cylinder(diameter, height):
    assert solid.tapered(diameter, diameter, height) == pytest.approx(solid.cylinder(diameter, height))


@given(SIZE, SIZE)
def test_a_cone_is_a_third_of_its_cylinder(diameter, height):
    assert solid.tapered(diameter, 0.0, height) == pytest.approx(solid.cylinder(diameter, height) / 3)


@given(SIZE, SIZE, SIZE)
def test_upside_down_it_holds_as_much(top, bottom, height):
    assert solid.tapered(top, bottom, height) == pytest.approx(solid.tapered(bottom, top, height))


@given(SIZE, SIZE, SIZE, st.floats(0.1, 0.9))
def test_a_frustum_is_the_sum_of_its_slices(top, bottom, height, share):
    middle = bottom + (top - bottom) * share
    parts = solid.tapered(middle, bottom, height * share) + solid.tapered(top, middle, height * (1 - share))
    assert parts == pytest.approx(solid.tapered(top, bottom, height))


@given(SIZE, SIZE, SIZE, st.floats(0.1, 5))
def test_scaled_in_length_it_scales_in_volume(one, other, height, scale):
    for form in (solid.tapered, solid.box):
        assert form(one * scale, other * scale, height * scale) == pytest.approx(form(one, other, height) * scale**3)


@pytest.mark.parametrize("name", sorted(solid.SOLIDS))
def test_without_height_there_is_no_room(name):
    entry = solid.SOLIDS[name]
    assert entry.volume(**{key: 0.0 if key == "height" else 50.0 for key in entry.dimensions}) == 0.0


@pytest.mark.parametrize("name", sorted(solid.SOLIDS))
def test_the_written_formula_names_each_dimension(name):
    entry = solid.SOLIDS[name]
    written = entry.written.format(**{key: key.upper() for key in entry.dimensions})
    assert all(key.upper() in written for key in entry.dimensions) and "{" not in written


@given(SIZE, SIZE, SIZE, st.floats(0, 0.5))
def test_the_plus_minus_of_a_box_by_hand(length, width, height, ruler):
    by_hand = math.hypot(width * height, length * height, length * width) * ruler / 1000
    assert solid.plus_minus("box", {"length": length, "width": width, "height": height},
                            ruler) == pytest.approx(by_hand, abs=1e-9)


@given(SIZE, SIZE, st.floats(0, 0.5))
def test_the_plus_minus_of_a_cylinder_by_hand(diameter, height, ruler):
    by_hand = math.hypot(math.pi / 2 * diameter * height, math.pi / 4 * diameter**2) * ruler / 1000
    assert solid.plus_minus("cylinder", {"diameter": diameter, "height": height}, ruler) == pytest.approx(by_hand,
                                                                                                          abs=1e-9)


def test_only_the_solid_s_own_dimensions_count():
    dimensions = {"diameter": 80.0, "height": 70.0, "length": 9999.0}
    assert solid.plus_minus("cylinder", dimensions, 0.5) == solid.plus_minus("cylinder",
                                                                             {"diameter": 80.0, "height": 70.0}, 0.5)


def test_openings():
    assert solid.opening_area(80.0) == pytest.approx(5026.548, abs=0.001)
    assert solid.opening_area(100.0, 60.0) == 6000.0
