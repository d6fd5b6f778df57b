"""Upright cuts."""

import math

import models
import pytest

from brimbook.mesh.cut import across, drawn, upright
from brimbook.mesh.nesting import area


def test_a_cup_is_a_u():
    (outline,) = upright(models.moved(models.cup(), 45, 45), 45.0)
    assert area(outline) == pytest.approx(90 * 80 - 80 * 72)
    assert len(outline) == 8
    assert {(round(x, 6), round(z, 6)) for x, z in outline} == {(0, 0), (90, 0), (90, 80), (85, 80), (85, 8), (5, 8), (5, 80), (0, 80)}


def test_it_is_seen_from_the_front():
    """Left stays left: a step on the right side only."""
    step = models.joined(models.box(10, 10, 10), models.box(10, 10, 30, (20, 0, 0)))
    small, large = sorted(upright(step, 5.0), key=area)
    assert max(x for x, _ in small) == 10 and min(x for x, _ in large) == 20
    assert area(small) == pytest.approx(100) and area(large) == pytest.approx(300)


def test_hollows_are_clockwise():
    mesh = models.joined(models.box(60, 60, 60), models.turned_over(models.box(20, 20, 20, (20, 20, 20))))
    assert [area(polygon) for polygon in upright(mesh, 30.0)] == pytest.approx([3600, -400])


def test_through_a_ball():
    ball = models.moved(models.sphere(30, 200, 100), 30, 30, 30)
    (outline,) = upright(ball, 12.0)
    assert len(outline) <= 60
    assert area(outline) == pytest.approx(math.pi * (30**2 - 18**2), rel=2e-3)


def test_each_side_keeps_its_triangle():
    mesh = models.moved(models.cup(lean=9), 45, 45)
    (loop,) = across(mesh, 31.0)
    for one, two, triangle in zip(loop.points, (*loop.points[1:], loop.points[0]), loop.triangles):
        low, high = (pick(mesh.corners[numbers[triangle]][2] for numbers in (mesh.first, mesh.second, mesh.third)) for pick in (min, max))
        assert low - 1e-9 <= min(one[1], two[1]) and max(one[1], two[1]) <= high + 1e-9


def test_beside_the_model_there_is_nothing():
    assert upright(models.box(), -1.0) == upright(models.box(), 41.0) == ()


def test_specks_are_not_drawn():
    speck, square = ((0.0, 0.0), (0.1, 0.0), (0.1, 0.1)), ((0.0, 0.0), (50.0, 0.0), (50.0, 50.0), (0.0, 50.0))
    assert drawn([speck, square], 48) == (square,)
    assert drawn([], 48) == ()
