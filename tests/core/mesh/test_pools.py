"""Pools that run over to the outside, beside cubes that are counted one by one."""

import blocks
import models
import pytest
from measured_models import run

from brimbook.mesh import basins, pools
from brimbook.mesh.filling import standing
from brimbook.mesh.rooms import under_pools
from brimbook.mesh.slices import Slicer

SEEDS = range(160)


def found(mesh):
    """Floor, height where it runs over, and volume of each pool."""
    slicer = Slicer(mesh)
    lows = run(basins.lows(slicer))
    told = []
    for pool, triangles in under_pools(slicer, lows.of, run(pools.pools(slicer, lows))):
        spill = slicer.heights[pool.spill]
        told.append((min(slicer.heights[slicer.low[number]] for number in triangles), spill, round(standing(slicer, triangles, spill), 6)))
    return sorted(each for each in told if each[2] > 0)


@pytest.mark.parametrize("seed", SEEDS)
def test_pools_are_those_that_cubes_count(seed):
    filled = blocks.any_solid(seed)
    assert found(blocks.solid(filled)) == blocks.pools(filled)


def test_there_are_pools_to_count():
    counted = [len(blocks.pools(blocks.any_solid(seed))) for seed in SEEDS]
    assert sum(counted) > 25 and max(counted) > 1


def test_the_reference_counts_a_cup():
    assert blocks.pools(blocks.cubes(3, 3, 4) - {(1, 1, 1), (1, 1, 2), (1, 1, 3)}) == [(1, 4, 3)]
    assert blocks.pools(blocks.cubes(3, 3, 4) - {(1, 1, 1)}) == []


@pytest.mark.parametrize("seed", range(40))
def test_cores_of_their_own_count_like_parts_of_the_piece(seed):
    """A cup of cubes with other cubes standing free in it, each a mesh of its own."""
    cup = blocks.cubes(9, 9, 9) - blocks.cubes(7, 7, 8, (1, 1, 1))
    core = {(x + 2, y + 2, z + 2) for x, y, z in blocks.any_solid(seed, 5)}
    assert found(models.joined(blocks.solid(cup), blocks.solid(core))) == blocks.pools(cup | core)


@pytest.mark.parametrize("seed", range(40))
def test_what_hangs_into_a_cup_counts_like_what_stands_in_it(seed):
    """Cubes that hang from a bridge on the rim, in one piece with it and the cup, or of their own on it."""
    cup = blocks.cubes(9, 9, 9) - blocks.cubes(7, 7, 8, (1, 1, 1))
    core = {(x + 2, y + 2, z + 2) for x, y, z in blocks.any_solid(seed, 5)}
    core |= blocks.cubes(1, 1, 8, (4, 4, 2)) | blocks.cubes(9, 1, 1, (0, 4, 9))
    if not blocks.is_clean(cup | core):
        pytest.skip("These cubes touch by edges alone.")
    counted = blocks.pools(cup | core)
    assert found(blocks.solid(cup | core)) == counted


def test_a_height_just_below_a_corner_has_none_between():
    slicer = Slicer(models.cup())
    assert pools.below(slicer, slicer.rank_at(80.0)) == 44.0
    assert pools.below(slicer, 0) == 0.0
