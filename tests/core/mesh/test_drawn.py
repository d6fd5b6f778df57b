"""Polygons as letters: what is equal is told once."""

import dataclasses

from brimbook.mesh import drawn
from tests.core.helpers import read_models


def test_an_upright_vessel_is_told_in_little():
    one, other = read_models.vessel(), read_models.vessel()
    first = one.sections[0]
    other = dataclasses.replace(other, sections=tuple(dataclasses.replace(first, height=each.height) for each in one.sections))
    assert len(drawn.packed(other)) < len(drawn.packed(one)) / 5


def test_a_polygon_too_small_for_the_grid_is_left_out():
    model = read_models.vessel(sections=1)
    speck = ((10.0, 10.0), (10.0001, 10.0), (10.0, 10.0001))
    section = dataclasses.replace(model.sections[0], solid=(*model.sections[0].solid, speck))
    sections, _ = drawn.unpacked(drawn.packed(dataclasses.replace(model, sections=(section,))), model.size, 1)
    assert len(sections[0].solid) == 2


def test_too_many_polygons_are_cut_down_to_the_largest():
    model = read_models.vessel()
    many = tuple(read_models.ring(0.5 + 0.01 * place, 30, 10 + place % 9 * 9.0, 10 + place // 9 * 9.0) for place in range(80))
    model = dataclasses.replace(model, sections=tuple(dataclasses.replace(each, solid=(*many, *each.solid)) for each in model.sections))
    text = drawn.packed(model)
    sections, cut = drawn.unpacked(text, model.size, 1)
    assert len(text) <= drawn.LONGEST and cut and len(sections) >= 4
    assert all(max(x for polygon in each.solid for x, _ in polygon) > 85 for each in sections)
