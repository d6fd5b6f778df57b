"""Lows of a mesh and where they join, beside joining all its edges one by one."""

import random

import blocks
import models
import pytest
from measured_models import run

from brimbook.mesh.basins import Flood, lows
from brimbook.mesh.slices import Slicer


def joined_by_edges(slicer, rank):
    """For each corner below a rank the lowest one that a way of edges below the rank leads to."""
    lowest = list(range(rank))
    changed = True
    while changed:
        changed = False
        for triple in zip(*slicer.ranks):
            inside = [corner for corner in triple if corner < rank]
            least = min((lowest[corner] for corner in inside), default=0)
            for corner in inside:
                if lowest[corner] != least:
                    lowest[corner], changed = least, True
    return lowest


MESHES = [models.cup(facets=7), models.joined(models.cup(facets=5), models.moved(models.sphere(facets=6, rings=5), 9, 9, 9)),
          blocks.solid(blocks.any_solid(3, 4)), blocks.solid(blocks.any_solid(8, 4))]


@pytest.mark.parametrize("mesh", MESHES)
@pytest.mark.parametrize("seed", range(3))
def test_corners_below_a_height_are_joined_as_edges_join_them(mesh, seed):
    chance = random.Random(seed)
    mesh = models.made([(x, y, z + seed * chance.random() * 4) for x, y, z in mesh.corners], models.triples(mesh))
    slicer = Slicer(mesh)
    found = run(lows(slicer))
    for rank in range(1, len(slicer.heights), max(1, len(slicer.heights) // 12)):
        flood = Flood(slicer, 0.0)
        for each in found.passes:
            if each.rank < rank:
                flood.join(each.rank, each.one, each.other)
        assert [flood.low(found.of[corner]) for corner in range(rank)] == joined_by_edges(slicer, rank)


def test_what_joined_by_a_rank_is_told_afterwards():
    slicer = Slicer(models.cup(facets=7))
    found = run(lows(slicer))
    flood = Flood(slicer, 1.0)
    for each in found.passes:
        flood.join(each.rank, each.one, each.other)
    every = sorted(set(found.of))
    brim = slicer.rank_at(80.0)
    before, after = flood.joined_by(brim, every), flood.joined_by(len(slicer.heights), every)
    assert len(set(before.values())) == 2 and set(after.values()) == {0}
    assert [(slicer.heights[rank], slicer.heights[low]) for rank, low in flood.deep[0]] == [(80.0, 8.0)]


def test_the_low_below_a_triangle():
    slicer = Slicer(models.box())
    found = run(lows(slicer))
    assert {slicer.heights[found.piece(slicer, number)] for number in range(12)} <= {0.0, 50.0}
