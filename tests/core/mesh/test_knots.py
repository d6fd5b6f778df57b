"""Levels of fill curves whose law is known."""

import math

import pytest

from brimbook.mesh.curve import volume_at
from brimbook.mesh.knots import levels
from brimbook.mesh.model import Level


def of(volume, area):
    return lambda height: Level(height, volume(height), area(height), area(height))


def wavy(height):
    return 100 * height + 30 * math.sin(height)


def test_a_prism_needs_only_its_ends():
    made = levels(of(lambda height: 5 * height, lambda height: 5.0), [0.0, 10.0], [2.0, 3.0], 24, 1e-9)
    assert [level.height for level in made] == [0.0, 10.0]


def test_a_curve_gets_as_many_as_it_needs():
    made = levels(of(wavy, lambda height: 100 + 30 * math.cos(height)), [0.0, 9.0], [], 24, 1e-2)
    assert 4 < len(made) < 24
    assert max(abs(volume_at(made, step / 100) - wavy(step / 100)) for step in range(901)) < 2e-2


def test_it_parts_where_the_curve_bends():
    """Straight, then a cone's walls: the corner between them is found, and hardly more is needed."""
    volume, area = (lambda h: 4 * h if h < 3.7 else 14.8 + ((h - 1.7) ** 3 - 8) / 3), (lambda h: 4.0 if h < 3.7 else (h - 1.7) ** 2)
    made = levels(of(volume, area), [0.0, 9.0], [1.0, 2.0, 3.7, 5.0], 24, 1e-6)
    assert 3.7 in [level.height for level in made] and len(made) <= 4


def test_there_are_no_more_than_allowed():
    made = levels(of(wavy, lambda height: 100 + 30 * math.cos(height)), [0.0, 9.0], [], 5, 1e-9)
    assert len(made) == 5


def test_the_curve_never_falls():
    """An area that belongs to a much thinner stretch than the one that it is in."""
    steep = levels(lambda height: Level(height, height, 50.0, 50.0), [0.0, 1.0, 2.0], [], 3, 1e-9)
    told = [volume_at(steep, step / 50) for step in range(101)]
    assert told == sorted(told)
    assert [level.volume for level in steep] == pytest.approx([0.0, 1.0, 2.0])
