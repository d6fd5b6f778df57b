"""The rooms that a model encloses: open upward, from their floor to where they would run over."""

import math
from array import array
from collections.abc import Generator, Iterable, Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple

from brimbook.mesh import knots
from brimbook.mesh.basins import Pool, lows
from brimbook.mesh.filling import Filling, standing
from brimbook.mesh.model import Room
from brimbook.mesh.nesting import area
from brimbook.mesh.pools import Pools, below, parts, pools
from brimbook.mesh.slices import Slicer
from brimbook.mesh.triangles import Progress, Triangles
from brimbook.shape.outline import Point

# A smaller share of the model's bounding box is a dent or a letter.
LEAST = 0.005
# No more rooms than this are measured.
MOST_ROOMS = 24
# Wells apart below a divider are rooms of their own if each holds such a share of the room that they join to, and all of
# them such a share.
_EACH, _ALL = 0.05, 0.5
# So many ways to part rooms are tried at most.
_TRIES = 48
_MOST_LEVELS, _WITHIN = 24, 1e-5
# Faces that rise by no more than this share of the height are level; those of such a share of the surface make a jump.
_LEVEL, _JUMP, _MOST_JUMPS = 1e-5, 0.005, 6
_CORNERS = 64
_DIVIDED = "Rooms that join above a divider are told apart, each up to the divider."


@dataclass(frozen=True)
class Found:
    """A room that was found.

    triangles: numbers of those of its inner surface, as far up as it runs over. middle: of its opening, from the left and
    from the front. spill: the height at which it runs over. parted: does it join another above a divider?
    """

    room: Room
    triangles: Sequence[int]
    middle: Point
    spill: float
    parted: bool


def rooms(mesh: Triangles, slicer: Slicer) -> Generator[Progress, None, tuple[Found, ...]]:
    """The rooms of a model that stands, the largest first [rooms].

    mesh: that stands [mesh].
    slicer: of this mesh [mesh].

    Wells that join above a divider are rooms of their own up to the divider, unless most of the room is above it: then it
    is one room with a floor in steps. Closed hollows and pipes are no rooms. What was left out is told by the slicer's notes.
    """
    chosen = yield from _chosen(mesh, slicer)
    slicer.notes += [_DIVIDED] if any(well.parted for well in chosen) else []
    slicer.notes += [f"Only {MOST_ROOMS} of {len(chosen)} rooms are measured."] if len(chosen) > MOST_ROOMS else []
    made = []
    for well in sorted(chosen, key=lambda well: well.volume, reverse=True)[:MOST_ROOMS]:
        made.append(_made(slicer, well))
        yield 0.98, "Measuring rooms"
    return tuple(sorted(made, key=lambda each: each.room.levels[-1].volume, reverse=True))


class _Well(NamedTuple):
    """A pool that may be a room: the triangles under it, what it holds, and whether it joins another above a divider."""

    pool: Pool
    triangles: array
    volume: float
    parted: bool


def _chosen(mesh: Triangles, slicer: Slicer) -> Generator[Progress, None, list[_Well]]:
    """Pools that hold enough to be rooms."""
    found_lows = yield from lows(slicer)
    found = yield from pools(slicer, found_lows)
    wide, deep, high = (max(places) - min(places) for places in zip(*mesh.corners))
    parting = _Parting(slicer, found_lows.of, found, wide * deep)
    under = under_pools(slicer, found_lows.of, found)
    yield 0.92, "Measuring rooms"
    chosen, small = [], 0
    for pool, triangles in under:
        volume = standing(slicer, triangles, slicer.heights[pool.spill])
        if volume > LEAST * wide * deep * high:
            chosen += parting.parted(_Well(pool, triangles, volume, False))
        elif volume > 0:
            small += 1
        yield 0.95, "Measuring rooms"
    slicer.notes += [_small(small)] if small else []
    return chosen


def _small(count: int) -> str:
    what = "One dent that holds" if count == 1 else f"{count} dents that hold"
    return f"{what} less than 0.5 % of the model's box {'is' if count == 1 else 'are'} not taken for {'a room' if count == 1 else 'rooms'}."


def under_pools(slicer: Slicer, of: list[int], found: Pools) -> list[tuple[Pool, array]]:
    """Each pool that runs over to the outside, and the triangles under it [pools, numbers].

    slicer: the mesh [mesh].
    of: for each corner, by its rank, the rank of its low [ranks].
    found: its pools [pools].
    """
    outer = found.outer_of()
    limit = {pool.low: slicer.rank_at(slicer.heights[pool.spill]) for pool in found.outer}
    under = {pool.low: array("l") for pool in found.outer}
    for number, low in enumerate(slicer.low):
        pool = outer.get(of[low])
        if pool in under and low < limit[pool]:
            under[pool].append(number)
    return [(pool, under[pool.low]) for pool in found.outer]


class _Parting:
    """Parts a pool into wells below their divider, where most of it is below."""

    def __init__(self, slicer: Slicer, of: list[int], found: Pools, base: float):
        self._slicer, self._of, self._found, self._base, self._tries = slicer, of, found, base, _TRIES

    def parted(self, well: _Well) -> list[_Well]:
        """The wells that count as rooms [wells].

        well: one that holds enough [well].
        """
        for way in parts(self._slicer, self._found.flood, well.pool):
            way = [part for part in way if self._could_hold(part) >= _EACH * well.volume]
            wells = [self._well(part, well.triangles) for part in way] if 1 < len(way) <= self._tries else []
            self._tries -= len(wells)
            wells = [part for part in wells if part.volume >= _EACH * well.volume]
            if len(wells) > 1 and math.fsum(part.volume for part in wells) >= _ALL * well.volume:
                return [room for part in wells for room in self.parted(part)]
        return [well]

    def _could_hold(self, well: Pool) -> float:
        """No well holds more than the model's box does from its low to where it runs over."""
        return self._base * (self._slicer.heights[well.spill] - self._slicer.heights[well.low])

    def _well(self, part: Pool, triangles: Iterable[int]) -> _Well:
        """A part of a pool, of whose triangles some are under it."""
        slicer, own = self._slicer, self._found.lows_of(part)
        spill = slicer.heights[part.spill]
        limit, low, of = slicer.rank_at(spill), slicer.low, self._of
        under = array("l", [number for number in triangles if low[number] < limit and of[low[number]] in own])
        return _Well(part, under, standing(slicer, under, spill), True)


def _made(slicer: Slicer, well: _Well) -> Found:
    triangles, spill = well.triangles, slicer.heights[well.pool.spill]
    filling = Filling(slicer, triangles)
    floor = min(slicer.heights[slicer.low[number]] for number in triangles if filling.flat[number] > 0)
    # What stands sunk into the floor reaches below it.
    sunk = filling.volume(floor)
    volume = filling.volume(spill) - sunk
    needed = [floor, *_jumps(slicer, filling, triangles, floor, spill), spill]
    levels = knots.levels(filling.at, needed, _corner_heights(slicer, triangles, floor, spill), _MOST_LEVELS, _WITHIN * volume)
    levels = [replace(level, volume=level.volume - sunk) for level in levels]
    return Found(Room(tuple(levels)), triangles, _middle(slicer, well.pool, triangles), spill, well.parted)


def _corner_heights(slicer: Slicer, triangles: array, floor: float, spill: float) -> list[float]:
    """Heights of corners, all or such as lie evenly."""
    heights = sorted({slicer.heights[slicer.high[number]] for number in triangles} | {slicer.heights[slicer.low[number]] for number in triangles})
    heights = [height for height in heights if floor < height < spill]
    if len(heights) <= _CORNERS:
        return heights
    chosen = {}
    for height in heights:
        chosen.setdefault(int((height - floor) / (spill - floor) * _CORNERS), height)
    return list(chosen.values())


def _jumps(slicer: Slicer, filling: Filling, triangles: array, floor: float, spill: float) -> list[float]:
    """Heights of level faces of some size: where each begins and ends, as it may be level but for rounding."""
    heights, low, high, flat = slicer.heights, slicer.low, slicer.high, filling.flat
    slack = _LEVEL * (heights[-1] - heights[0])
    faces = sorted((heights[low[number]], heights[high[number]], flat[number]) for number in triangles
                   if flat[number] and heights[high[number]] - heights[low[number]] <= slack
                   and floor <= heights[low[number]] and heights[high[number]] < spill)
    groups = []
    for bottom, top, area_seen in faces:
        if groups and bottom <= groups[-1][1] + slack:
            groups[-1] = (groups[-1][0], max(groups[-1][1], top), groups[-1][2] + area_seen)
        else:
            groups.append((bottom, top, area_seen))
    groups = sorted(groups, key=lambda group: abs(group[2]), reverse=True)[:_MOST_JUMPS]
    largest = max((abs(group[2]) for group in groups), default=0.0)
    return [height for bottom, top, area_seen in groups if abs(area_seen) >= _JUMP * largest for height in (bottom, top)]


def _middle(slicer: Slicer, pool: Pool, triangles: array) -> Point:
    """Middle of a room's opening: of the largest hole of the section just below where it runs over."""
    own = set(triangles)
    holes = [loop.points for loop in slicer.contours(below(slicer, pool.spill)) if loop.triangles[0] in own]
    if not holes:
        corners = [slicer.mesh.corners[slicer.mesh.first[number]] for number in triangles]
        return tuple((min(places) + max(places)) / 2 for places in list(zip(*corners))[:2])
    return centroid(min(holes, key=area))


def centroid(points: Sequence[Point]) -> Point:
    """Middle of a polygon's area [unit of the file].

    points: its corners, either way around [unit of the file].

    >>> centroid(((0.0, 0.0), (4.0, 0.0), (4.0, 2.0), (0.0, 2.0)))
    (2.0, 1.0)
    """
    left, low = points[0]
    sides = [(x - left, y - low, other_x - left, other_y - low) for (x, y), (other_x, other_y) in zip(points, (*points[1:], points[0]))]
    twice = math.fsum(x * other_y - other_x * y for x, y, other_x, other_y in sides)
    if not twice:
        return left, low
    return (left + math.fsum((x + other_x) * (x * other_y - other_x * y) for x, y, other_x, other_y in sides) / (3 * twice),
            low + math.fsum((y + other_y) * (x * other_y - other_x * y) for x, y, other_x, other_y in sides) / (3 * twice))
