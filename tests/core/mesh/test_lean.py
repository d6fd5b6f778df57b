"""Vessels that were saved tilted."""

import math

import pytest
from measured_models import rotated
from models import box, cup, lathe, sphere

from brimbook.mesh.lean import lean


def leaning(mesh, degrees):
    return lean(rotated(mesh, math.radians(degrees), 0.0, 0.4), range(len(mesh.first)))


@pytest.mark.parametrize("degrees", [0.3, 1.0, 3.0, 15.0])
@pytest.mark.parametrize("mesh", [cup(), cup(facets=200), box(), lathe([(30, 0), (45, 0), (45, 80), (40, 80), (40, 20), (0, 20), (0, 12), (30, 12)])],
                         ids=["cup", "many facets", "box", "hollow foot"])
def test_a_flat_bottom_tells_how_far_it_leans(mesh, degrees):
    assert leaning(mesh, degrees) == pytest.approx(degrees, abs=0.11)


def test_what_stands_straight_or_is_round_below_does_not_lean():
    assert leaning(cup(), 0.0) == leaning(cup(), 0.1) == 0.0
    assert leaning(sphere(), 5.0) == leaning(box(), 45.0) == 0.0
    bowl = lathe([(0, 0), (20, 1.5), (40, 8), (40, 12), (0, 4)])
    assert leaning(bowl, 0.0) == 0.0
