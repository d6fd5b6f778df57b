"""Which pools would stand in a model, and at which corner each would run over."""

from collections.abc import Generator
from dataclasses import dataclass
from itertools import groupby

from brimbook.mesh.basins import OUTSIDE, Flood, Lows, Pool
from brimbook.mesh.nesting import nested
from brimbook.mesh.slices import Slicer
from brimbook.mesh.triangles import Progress

# What is less deep than this share of the model's height is a dent of its surface.
LEAST_DEPTH = 0.005
# Pools that join over this share of the height join at once.
_AT_ONCE = 0.002
# So many cuts tell at most which loops lie around which, of so many loops each.
_MOST_CUTS, _MOST_LOOPS = 24, 100


@dataclass(frozen=True)
class Pools:
    """Pools that run over to the outside, and how lows joined.

    lows: all, from bottom to top.
    """

    outer: tuple[Pool, ...]
    flood: Flood
    lows: tuple[int, ...]

    def outer_of(self) -> dict[int, int]:
        """For each low the low of the pool that runs over to the outside, of those that do [ranks]."""
        flood, own = self.flood, {}
        for low in self.lows:
            if low in flood.into:
                stays = flood.into[low]
                own[low] = low if stays == OUTSIDE else own.get(stays)
        return own

    def lows_of(self, pool: Pool) -> set[int]:
        """The lows that belong to a pool just before it runs over [ranks].

        pool: one of these or part of one [pool].
        """
        top = self.flood.joined_by(pool.spill, self.lows)
        return {low for low, stays in top.items() if stays == pool.low}


def pools(slicer: Slicer, lows: Lows) -> Generator[Progress, None, Pools]:
    """Pools that run over to the outside [pools].

    slicer: the mesh [mesh].
    lows: of the mesh [lows].
    """
    every = tuple(sorted(set(lows.of)))
    least = LEAST_DEPTH * (slicer.heights[-1] - slicer.heights[0])
    flood = _flood(slicer, lows, [], least)
    cuts = _cuts(slicer, lows, flood, every, least)
    yield 0.9, "Looking for rooms"
    arounds = []
    for height in cuts:
        arounds.append(_around(slicer, lows, height))
        yield 0.9, "Looking for rooms"
    if cuts:
        flood = _flood(slicer, lows, arounds, least)
    outer = [Pool(low, rank) for rank, low in flood.deep.get(OUTSIDE, ())]
    return Pools(tuple(outer), flood, every)


def parts(slicer: Slicer, flood: Flood, pool: Pool) -> list[list[Pool]]:
    """The ways in which a pool is made of others further down, the last to join first [pools].

    slicer: the mesh [mesh].
    flood: how lows joined [flood].
    pool: any [pool].
    """
    once = _AT_ONCE * (slicer.heights[-1] - slicer.heights[0])
    joined = [(rank, low) for rank, low in flood.deep.get(pool.low, ()) if rank < pool.spill]
    ways, group = [], []
    for rank, low in reversed(joined):
        if group and slicer.heights[group[0].spill] - slicer.heights[rank] > once:
            ways.append(group)
            group = []
        group.append(Pool(low, rank))
    ways += [group] if group else []
    return [[Pool(pool.low, min(other.spill for other in way)), *way] for way in ways]


def below(slicer: Slicer, rank: int) -> float:
    """A height just below a corner, with no corner between [unit of the file].

    slicer: the mesh [mesh].
    rank: of the corner [rank].
    """
    height = slicer.heights[rank]
    lower = slicer.rank_at(height) - 1
    return (slicer.heights[max(lower, 0)] + height) / 2


def _flood(slicer: Slicer, lows: Lows, arounds: list[list[tuple[int, int, int]]], least: float) -> Flood:
    flood = Flood(slicer, least)
    if not arounds:
        for rank, one, other in lows.passes:
            flood.join(rank, one, other)
        return flood
    around = ((rank, True, piece, air) for found in arounds for rank, piece, air in found)
    for rank, is_around, one, other in sorted([*((rank, False, one, other) for rank, one, other in lows.passes), *around]):
        (flood.place if is_around else flood.join)(rank, one, other)
    return flood


def _cuts(slicer: Slicer, lows: Lows, flood: Flood, every: tuple[int, ...], least: float) -> list[float]:
    """Heights at which loops must be asked what lies around them: none where all of the surface hangs together simply."""
    heights = slicer.heights
    alone = [low for low in every if low not in flood.into and low != OUTSIDE]
    tops = {}
    if alone:
        last = {low: rank for rank, low in enumerate(lows.of)}
        for low, rank in last.items():
            root = flood.low(low)
            tops[root] = max(rank, tops.get(root, 0))
    alone = [low for low in alone if heights[tops[low]] - heights[low] >= least]
    # One of several that reach the outside may be no pool but what hangs down into another, as a core does from a bridge.
    if not alone and not any(deep for low, deep in flood.deep.items() if low != OUTSIDE) and len(flood.deep.get(OUTSIDE, ())) < 2:
        return []
    asked = [(heights[rank] - heights[low], below(slicer, rank)) for deep in flood.deep.values() for rank, low in deep]
    for low in alone:
        depth = heights[tops[low]] - heights[low]
        asked += [(depth, below(slicer, tops[low])), (depth, heights[low] + depth / 2), (depth, heights[low] + depth / 64)]
    asked.sort(reverse=True)
    return [height for height, _ in groupby(sorted(height for _, height in asked[:_MOST_CUTS]))]


def _around(slicer: Slicer, lows: Lows, height: float) -> list[tuple[int, int, int]]:
    """Which lows a cut shows to stand in the same air: those of a solid's loop and of the hole, or the outside, around it."""
    rank = slicer.rank_at(height)
    loops = sorted(slicer.contours(height), key=lambda loop: len(loop.points), reverse=True)[:_MOST_LOOPS]
    pieces = [lows.piece(slicer, loop.triangles[0]) for loop in loops]
    places = nested([loop.points for loop in loops])
    joins = []
    for piece, place in zip(pieces, places):
        # A loop that runs through another, as those of overlapping bodies do, stands in more than one air: it joins none.
        if not place.is_hole and not place.is_crossed and (place.parent is None or places[place.parent].is_hole):
            joins.append((rank, piece, OUTSIDE if place.parent is None else pieces[place.parent]))
    return joins
