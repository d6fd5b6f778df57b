"""What is measured beside trimesh, an independent library: on meshes made from seeds, and on drawn parts.

The drawn parts come in the wheels of gym-aloha and gym-xarm (Apache License 2.0): robot links and fingers, drawn by several
hands, some of them open or of many bodies. trimesh is used as it reads: it joins equal corners, and leaves all triangles.
"""

import io
import math

import numpy as np
import pytest
import trimesh
from measured_models import grown, levels_of, measured, run, spoiled
from models import as_stl, triples
from sample_meshes import sample_files

from brimbook.mesh import read
from brimbook.mesh.curve import volume_at
from brimbook.mesh.edges import check
from brimbook.mesh.stand import stood
from brimbook.mesh.volumes import bounds, surface, volume
from brimbook.mesh.weld import welded


def theirs(mesh):
    return trimesh.Trimesh(np.array(mesh.corners, dtype=float), np.array(triples(mesh)), process=False)


def in_order(mesh):
    """Closed and facing one way: each edge once in each direction."""
    found = run(check(stood(mesh, "+z")))
    return (found.open_edges, found.turned, found.crowded) == (0, 0, 0)


@pytest.mark.parametrize("block", range(10))
def test_meshes_made_from_seeds(block):
    for seed in range(25 * block, 25 * block + 25):
        mesh = grown(seed)
        other = theirs(mesh)
        assert volume(mesh) == pytest.approx(other.volume, rel=1e-6), seed
        assert surface(mesh) == pytest.approx(other.area, rel=1e-9), seed
        assert np.array(bounds(mesh)) == pytest.approx(other.bounds), seed
        assert in_order(mesh) == other.is_watertight == other.is_winding_consistent is True, seed
        assert measured(mesh)[1].count == other.body_count, seed


@pytest.mark.parametrize("block", range(10))
def test_spoiled_meshes(block):
    for seed in range(25 * block, 25 * block + 25):
        mesh = spoiled(seed)
        other = theirs(mesh)
        found = run(check(stood(mesh, "+z")))
        assert surface(mesh) == pytest.approx(other.area, rel=1e-9), seed
        assert in_order(mesh) == (other.is_watertight and other.is_winding_consistent), seed
        uses = np.unique(other.edges_sorted, axis=0, return_counts=True)[1]
        assert found.open_edges == (uses == 1).sum(), seed
        if uses.max() <= 2:
            assert (found.turned == 0) == other.is_winding_consistent, seed


@pytest.mark.parametrize("seed", range(30))
def test_what_lies_below_a_height(seed):
    """trimesh cuts the mesh and measures the lower part, open at the cut: its sum over from the cut's own height is exact."""
    mesh = stood(grown(seed), "+z")
    levels, whole = levels_of(mesh), volume(mesh)
    for share in (0.2, 0.55, 0.9):
        height = share * levels[-1].height
        part = theirs(mesh).slice_plane((0, 0, height), (0, 0, -1))
        corners = part.triangles - (0, 0, height)
        below = np.einsum("ij,ij->i", corners[:, 0], np.cross(corners[:, 1], corners[:, 2])).sum() / 6
        assert volume_at(levels, height) == pytest.approx(below, abs=2e-4 * whole), share


SAMPLES = dict(sample_files())


@pytest.mark.parametrize("name", SAMPLES)
def test_drawn_parts(name):
    data = SAMPLES[name]
    other = trimesh.load(io.BytesIO(data), file_type="stl")
    raw = run(read.triangles("part.stl", data))
    mesh = run(welded(raw))
    assert np.array(bounds(raw)) == pytest.approx(other.bounds)
    assert surface(raw) == pytest.approx(other.area, rel=1e-9)
    found, bodies = measured(raw)
    if other.is_watertight and other.is_winding_consistent:
        assert mesh.closed
        assert abs(volume(mesh)) == pytest.approx(abs(other.volume), rel=1e-6)
        assert bodies.count + bodies.hollows == other.body_count
    if mesh.closed and not mesh.notes:
        assert other.is_winding_consistent
    levels = levels_of(bodies.mesh)
    assert levels[-1].volume == pytest.approx(volume(bodies.mesh), rel=1e-6)
    assert all(low.volume <= high.volume for low, high in zip(levels, levels[1:]))
    assert bodies.count + bodies.hollows >= 1


def test_there_are_drawn_parts():
    assert len(SAMPLES) >= 30


def test_the_way_through_a_file_changes_nothing():
    """Rounding to the 32 bits of the file is all that is lost."""
    mesh = grown(3)
    _, bodies = measured(run(read.triangles("part.stl", as_stl(mesh))))
    assert volume(bodies.mesh) == pytest.approx(volume(mesh), rel=1e-5)
    assert math.isfinite(surface(bodies.mesh))
