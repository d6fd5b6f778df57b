"""Bodies that touch face to face are taken as one."""

import blocks
import models
import pytest
from measured_models import run

from brimbook.mesh import whole
from brimbook.mesh.touching import without_touching


def halves(apart=0.0):
    mold = blocks.cubes(20, 20, 16) - blocks.cubes(12, 12, 14, (4, 4, 2))
    left = {cube for cube in mold if cube[0] < 10}
    return models.joined(blocks.solid(left, 5.0), models.moved(blocks.solid(mold - left, 5.0), apart))


def read(mesh):
    return run(whole.model("mold.stl", models.as_stl(mesh), "+z"))


def test_two_halves_of_a_mold_that_touch_enclose_a_room():
    found = read(halves())
    assert found.rooms[0].levels[-1].volume == pytest.approx(12 * 12 * 14 * 125, rel=1e-6)
    assert found.solid[-1].volume == pytest.approx((20 * 20 * 16 - 12 * 12 * 14) * 125, rel=1e-6) and found.bodies == 1
    assert any("where bodies touch" in note for note in found.notes)


def test_halves_that_lie_apart_enclose_none():
    assert read(halves(apart=0.2)).rooms == ()


def test_what_touches_nothing_stays_as_it_is():
    mesh = models.cup()
    assert without_touching(mesh) is mesh
