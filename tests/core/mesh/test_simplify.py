"""Fewer corners: the area stays, nothing crosses, little is off."""

import math
import random

import pytest

from brimbook.mesh.nesting import area
from brimbook.mesh.simplify import crosses_itself, simplified


def circle(count, radius=50.0, waves=0, high=0.0):
    angles = [2 * math.pi * number / count for number in range(count)]
    return tuple(((radius + high * math.cos(waves * angle)) * math.cos(angle), (radius + high * math.cos(waves * angle)) * math.sin(angle))
                 for angle in angles)


def off(point, polygon):
    """Distance from the nearest side."""
    nearest = math.inf
    for (x, y), (u, v) in zip(polygon, (*polygon[1:], polygon[0])):
        square = (u - x) ** 2 + (v - y) ** 2
        share = min(1.0, max(0.0, ((point[0] - x) * (u - x) + (point[1] - y) * (v - y)) / square)) if square else 0.0
        nearest = min(nearest, math.hypot(point[0] - x - share * (u - x), point[1] - y - share * (v - y)))
    return nearest


def farthest(points, made):
    return max(max(off(point, made) for point in points), max(off(point, points) for point in made))


@pytest.mark.parametrize("points", [circle(1000), circle(97), circle(700, waves=5, high=6.0)[::-1], circle(20000)])
def test_round_shapes_keep_their_area(points):
    made = simplified(points, 48, 100.0)
    assert len(made) <= 48
    assert area(made) == pytest.approx(area(points), rel=1e-6)
    assert not crosses_itself(made)


def test_a_circle_is_off_by_little_more_than_it_must():
    """48 sides across a circle are off by 0.05 % of its size at the least, in and out; these by less than 0.15 %."""
    assert 0.05 < farthest(circle(600), simplified(circle(600), 48, 100.0)) < 0.15


def test_corners_stay_and_what_lies_on_sides_goes():
    side = [step / 40 * 60 for step in range(40)]
    points = (*((x, 0.0) for x in side), *((60.0, y) for y in side), *((60.0 - x, 60.0) for x in side), *((0.0, 60.0 - y) for y in side))
    assert sorted(simplified(points, 48, 60.0)) == [(0.0, 0.0), (0.0, 60.0), (60.0, 0.0), (60.0, 60.0)]


def test_a_thin_ring_cut_open_does_not_cross_itself():
    """A long thin C, 0.5 wide, whose two sides must not meet."""
    outer = [(50 * math.cos(step / 300 * 6), 50 * math.sin(step / 300 * 6)) for step in range(301)]
    inner = [(49.5 * math.cos(step / 300 * 6), 49.5 * math.sin(step / 300 * 6)) for step in range(300, -1, -1)]
    for most in (48, 24):
        made = simplified((*outer, *inner), most, 100.0)
        assert len(made) <= most and area(made) == pytest.approx(area((*outer, *inner)), rel=1e-6)
    assert not crosses_itself(simplified((*outer, *inner), 48, 100.0))


@pytest.mark.parametrize("seed", range(60))
def test_any_star_keeps_its_area_and_never_crosses(seed):
    chance = random.Random(seed)
    count = chance.randint(5, 300)
    rough = chance.choice((0.5, 5.0, 30.0))
    points = tuple(((50 + rough * chance.random()) * math.cos(2 * math.pi * number / count),
                    (50 + rough * chance.random()) * math.sin(2 * math.pi * number / count)) for number in range(count))
    made = simplified(points, 48, 100.0)
    assert len(made) <= 48
    assert area(made) == pytest.approx(area(points), rel=1e-6)
    assert crosses_itself(points) or not crosses_itself(made)


@pytest.mark.parametrize("points", [((0.0, 0.0),) * 9, tuple((float(step), 0.0) for step in range(9)),
                                    ((0.0, 0.0), (4.0, 4.0), (4.0, 0.0), (0.0, 4.0), (2.0, 9.0), (1.0, -3.0))])
def test_shapes_that_are_none_do_not_fail(points):
    assert len(simplified(points, 4, 10.0)) <= 9
