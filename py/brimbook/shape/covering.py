"""Where equal discs stand so that they cover an outline and are as small as can be."""

import math
from dataclasses import dataclass
from functools import lru_cache

from brimbook.shape.flatten import fewer
from brimbook.shape.inside import inside
from brimbook.shape.outline import Outline, Point, area, contains
from brimbook.shape.pieces import pieces
from brimbook.shape.pooling import within
from brimbook.shape.settle import Ground, settle, spread
from brimbook.shape.starts import grounds, nudged, starts
from brimbook.shape.ways import ways
from brimbook.shape.worst import Spots

# The search goes over an outline with so many corners.
_COARSE = 20
# Steps from each start, from the better ones, and at the end; and the share of the distance that a step must promise.
_LAST = (14, 1e-5)
_STAGES = ((2, 1e-3, 12, 1.3), (3, 1e-3, 6, 1.15), (14, 1e-4, 2, 1.08))
# So many of the better starts are followed, and of those so many to the end, when within these shares of the best.
_BEST = (1, 1.01)
# Starts are moved by up to such a share of the side of a square as large.
_NUDGE = 0.02
# Layouts whose discs differ by less than this share are taken as one.
_SAME = 1e-4


@dataclass(frozen=True)
class Covering:
    """Points inside an outline, the distance to the worst-served spot, and that spot; distances go inside the outline."""

    points: tuple[Point, ...]
    radius: float
    worst: Point


@lru_cache(maxsize=128)
def cover(outline: Outline, count: int, from_wall: float, between: float) -> Covering | None:
    """Where so many points stand so that the farthest spot of the outline is as near as can be [covering].

    outline: to be covered [outline].
    count: of points, 1 to 8 [count].
    from_wall: least distance of a point from the wall [mm].
    between: least distance of two points [mm].
    """
    ground, rough = Ground(outline, from_wall, between), Ground(_coarse(outline), from_wall, between)
    begun = [(rough.spots(points).far, points) for start in starts(grounds(rough.outline), count)
             if (points := _placed(rough, nudged(start, _NUDGE * math.sqrt(area(outline)))))]
    for steps, gain, most, within in _STAGES:
        begun = [settle(rough, points, steps, gain) for _, points in _best(begun, most, within)]
    ended = [settle(ground, points, *_LAST) for _, found in _best(begun, *_BEST) if (points := _placed(ground, found))]
    return reach(outline, tuple(min(ended)[1])) if ended else None


@lru_cache(maxsize=16)
def _coarse(outline: Outline) -> Outline:
    return Outline(tuple(fewer(list(outline.points), _COARSE)))


def _placed(ground: Ground, points: list[Point]) -> list[Point] | None:
    clear = [ground.clear(point) for point in points]
    return None if None in clear else spread(ground, clear)


def _best(tried: list[tuple[float, list[Point]]], most: int, within: float) -> list[tuple[float, list[Point]]]:
    """The best layouts, each once, no more than so many and within a multiple of the best."""
    kept: list[tuple[float, list[Point]]] = []
    for far, points in sorted(tried):
        if not kept or (kept[-1][0] * (1 + _SAME) < far < kept[0][0] * within):
            kept.append((far, points))
    return kept[:most]


@lru_cache(maxsize=64)
def reach(outline: Outline, points: tuple[Point, ...]) -> Covering:
    """The worst-served spot for points that stand where they stand [covering].

    outline: to be covered [outline].
    points: inside it; from one outside, the way goes straight to the nearest place inside first [mm].
    """
    cut, found = pieces(outline), []
    for point in points:
        start = point if contains(outline, point) else inside(outline, point, 0.0)
        found.append(ways(cut, start, math.dist(start, point)))
    far, worst = Spots(cut, found).farthest()
    return Covering(points, far, worst)


@lru_cache(maxsize=128)
def pool(outline: Outline, point: Point, radius: float) -> tuple[Point, ...]:
    """What lies within a distance of a point, going inside the outline, as a polygon [mm].

    outline: that holds it [outline].
    point: inside it; from one outside, the nearest place inside stands for it [mm].
    radius: of the pool [mm].

    >>> pool(Outline(((0.0, 0.0), (80.0, 0.0), (80.0, 40.0), (0.0, 40.0))), (40.0, 20.0), 100.0)
    ((0.0, 0.0), (80.0, 0.0), (80.0, 40.0), (0.0, 40.0))
    """
    return within(pieces(outline), point if contains(outline, point) else inside(outline, point, 0.0), radius)
