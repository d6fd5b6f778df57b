"""Areas of triangles, and an even choice of them."""

import math

import pytest

from brimbook.mesh.areas import areas, evenly
from brimbook.mesh.volumes import surface
from tests.core.helpers import models


def test_areas_of_a_box():
    assert math.fsum(areas(models.box(60, 40, 50))) == pytest.approx(2 * (60 * 40 + 60 * 50 + 40 * 50))


@pytest.mark.parametrize("mesh", [models.sphere(), models.cup(lean=7.0)], ids=["sphere", "cup"])
def test_together_they_are_the_surface(mesh):
    assert math.fsum(areas(mesh)) == pytest.approx(surface(mesh), rel=1e-12)


def test_few_are_chosen_and_they_stand_for_nearly_all():
    mesh = models.sphere()
    sizes = areas(mesh)
    chosen = list(evenly(range(len(sizes)), sizes, 100))
    assert 50 < len(chosen) <= 100 and math.fsum(size for _, size in chosen) == pytest.approx(math.fsum(sizes), rel=0.02)


def test_every_large_one_is_chosen():
    mesh = models.joined(models.sphere(), models.box(200, 200, 5))
    sizes = areas(mesh)
    large = {number for number, size in enumerate(sizes) if size > 10_000}
    assert large <= {number for number, _ in evenly(range(len(sizes)), sizes, 20)} and len(large) == 4


def test_without_an_area_none_is_chosen():
    assert list(evenly([0], [0.0], 5)) == []
