"""Standing a model up."""

import pytest
from models import box, cup, standing

from brimbook.mesh.model import UPS
from brimbook.mesh.stand import stood
from brimbook.mesh.triangles import ModelError
from brimbook.mesh.volumes import bounds, size, volume


@pytest.mark.parametrize("up", UPS)
def test_a_model_laid_any_way_stands_again(up):
    upright = stood(cup(lean=7), "+z")
    again = stood(standing(cup(lean=7), up), up)
    assert [corner for place in again.corners for corner in place] == pytest.approx(
        [corner for place in upright.corners for corner in place])


@pytest.mark.parametrize("up", UPS)
def test_it_begins_at_0_and_is_never_mirrored(up):
    mesh = stood(box(60, 40, 50, at=(-400.0, 30.0, 7.0)), up)
    assert bounds(mesh)[0] == (0, 0, 0)
    assert volume(mesh) == pytest.approx(120000)
    assert size(mesh)[2] == {"z": 50, "y": 40, "x": 60}[up[1]]


def test_another_way_up_is_refused():
    with pytest.raises(ModelError, match=r"one of \+z"):
        stood(box(), "up")
