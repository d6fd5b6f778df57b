"""What fills an upright cut to a line: the parts of it, or of its gaps, that lie below."""

from collections.abc import Iterable
from functools import lru_cache

from brimbook.shape.outline import Point

Polygon = tuple[Point, ...]
# Two levels, and two ends of a part, are the same when they are nearer [mm].
_SAME = 1e-6


@lru_cache(maxsize=16)
def solid_below(cut: tuple[Polygon, ...], line: float) -> tuple[Polygon, ...]:
    """The parts of a cut below a line [mm].

    cut: polygons of a solid, holes among them: places from the left, and heights [mm].
    line: its height [mm].

    >>> solid_below((((0.0, 0.0), (4.0, 0.0), (4.0, 6.0), (0.0, 6.0)),), 3.0)
    (((0.0, 3.0), (0.0, 0.0), (4.0, 0.0), (4.0, 3.0)),)
    """
    low = min((z for polygon in cut for _, z in polygon), default=line)
    return _joined(slab[::2] for slab in _slabs(cut, low, line))


@lru_cache(maxsize=16)
def gaps_below(cut: tuple[Polygon, ...], floor: float, line: float, reach: tuple[float, float]) -> tuple[Polygon, ...]:
    """The gaps of a cut between a floor and a line, where a room reaches [mm].

    cut: polygons of a solid, holes among them: places from the left, and heights [mm].
    floor: of the room, its height [mm].
    line: its height [mm].
    reach: of the room, from the left [mm].

    >>> trough = ((0.0, 0.0), (9.0, 0.0), (9.0, 6.0), (8.0, 6.0), (8.0, 1.0), (1.0, 1.0), (1.0, 6.0), (0.0, 6.0))
    >>> gaps_below((trough,), 1.0, 4.0, (1.0, 8.0))
    (((1.0, 4.0), (1.0, 1.0), (8.0, 1.0), (8.0, 4.0)),)
    """
    return _joined([gap for gap in slab[1::2] if _is_within(gap, reach)] for slab in _slabs(cut, floor, line))


def _is_within(gap: tuple, reach: tuple[float, float]) -> bool:
    """Does most of a gap lie where the room reaches?"""
    (_, left, right), (_, left_above, right_above) = gap
    left, right = (left + left_above) / 2, (right + right_above) / 2
    return min(right, reach[1]) - max(left, reach[0]) > (right - left) / 2


def _slabs(cut: tuple[Polygon, ...], low: float, high: float) -> Iterable[list]:
    """From the bottom, between neighboring corners: what lies between one side and the next, parts and gaps in turn.

    Each is told by its height, left and right at its bottom and at its top.
    """
    sides = sorted((min(one, other, key=_height), max(one, other, key=_height)) for polygon in cut
                   for one, other in zip(polygon, (*polygon[1:], polygon[0])) if abs(one[1] - other[1]) > _SAME)
    heights = sorted({low, high, *(z for polygon in cut for _, z in polygon if low < z < high)})
    for under, over in zip(heights, heights[1:]):
        if over - under > _SAME:
            yield _between(sides, under, over)


def _height(point: Point) -> float:
    return point[1]


def _between(sides: list[tuple[Point, Point]], under: float, over: float) -> list:
    middle = (under + over) / 2
    ends = sorted((_across(side, middle), _across(side, under), _across(side, over))
                  for side in sides if side[0][1] < middle < side[1][1])
    return [((under, one[1], other[1]), (over, one[2], other[2])) for one, other in zip(ends, ends[1:])]


def _across(side: tuple[Point, Point], height: float) -> float:
    (left, low), (right, high) = side
    return left + (right - left) * (height - low) / (high - low)


def _joined(slabs: Iterable[list]) -> tuple[Polygon, ...]:
    """Polygons of parts that lie one upon the other."""
    chains: list[list] = []
    for slab in slabs:
        for bottom, top in slab:
            chain = next((each for each in chains if all(abs(a - b) < _SAME for a, b in zip(each[-1], bottom))), None)
            if chain is None:
                chains.append([bottom, top])
            else:
                chain.append(top)
    return tuple(tuple([*((left, z) for z, left, _ in reversed(chain)), *((right, z) for z, _, right in chain)]) for chain in chains)
