"""A model in millimeters, at the scale of its print."""

import dataclasses

import pytest

from brimbook.mesh import curve
from brimbook.mesh.scaled import scaled
from tests.core.helpers import read_models

MODEL = read_models.vessel(gaps=1)


def test_lengths_areas_and_volumes_grow_each_in_its_way():
    large = scaled(MODEL, 25.4)
    assert large.unit == "mm" and large.size == pytest.approx((2540, 2540, 2032))
    assert large.surface == pytest.approx(25.4 ** 2 * MODEL.surface)
    room = dataclasses.replace(MODEL.rooms[0], surface=100.0)
    assert scaled(dataclasses.replace(MODEL, rooms=(room,)), 25.4).rooms[0].surface == pytest.approx(25.4 ** 2 * 100)
    assert large.solid[-1].volume == pytest.approx(25.4 ** 3 * MODEL.solid[-1].volume)
    assert curve.volume_at(large.rooms[0].levels, 25.4 * 40) == pytest.approx(25.4 ** 3 * curve.volume_at(MODEL.rooms[0].levels, 40))
    assert large.thinnest == pytest.approx((25.4 * 3.25, 25.4 * 41.5))
    assert large.gaps[0].around == pytest.approx(25.4 * 40)
    assert large.sections[3].height == pytest.approx(25.4 * MODEL.sections[3].height)
    assert large.sections[3].rooms[0][0] == pytest.approx(tuple(25.4 * side for side in MODEL.sections[3].rooms[0][0]))
    assert large.cut[0][2] == pytest.approx((2540, 2032))


def test_counts_and_angles_stay():
    large = scaled(MODEL, 2.0)
    assert (large.triangles, large.outer, large.inner, large.notes) == (MODEL.triangles, MODEL.outer, MODEL.inner, MODEL.notes)


def test_there_and_back_is_the_same():
    assert scaled(scaled(MODEL, 4.0), 0.25) == MODEL
