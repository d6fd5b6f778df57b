"""Reading files of meshes to the end, and meshes to do it with."""

import numpy as np
import pytest
from models import box, cup, cylinder, joined, moved, sphere, triples

from brimbook.mesh import read
from brimbook.mesh.triangles import ModelError

FAMILY = {"box": box(), "cylinder": cylinder(facets=9), "cup": cup(facets=12, lean=4), "sphere": sphere(facets=10, rings=6),
          "two": joined(box(), moved(sphere(facets=8, rings=5), 200)), "fine": cup(facets=700)}


def run(data, name="vessel.stl"):
    """The mesh that reading ends with."""
    steps = read.triangles(name, data)
    while True:
        try:
            share, says = next(steps)
            assert 0 <= share <= 1 and says
        except StopIteration as end:
            return end.value


def spots(mesh):
    """The three corners of each triangle, as arrays."""
    return np.array(mesh.corners)[np.array(triples(mesh))]


def refused(data, name="vessel.stl"):
    with pytest.raises(ModelError) as error:
        run(data, name)
    return str(error.value)
