"""Fewer corners for the same polygon, its area kept exactly."""

import heapq
import math
from collections.abc import Sequence

from brimbook.mesh.model import Polygon
from brimbook.mesh.nesting import area
from brimbook.shape.outline import Point

# Below this share of the size a corner is told by no drawing.
_FINE = 1e-4
# Where sides would cross, so many times the corners are kept before each step is looked at.
_FIRST = 4
# Of a polygon with more corners than this, evenly chosen ones are taken first.
_MANY = 6000


def simplified(points: Polygon, most: int, size: float) -> Polygon:
    """A polygon with fewer corners and the same area, which doesn't cross itself if the polygon doesn't [unit of the file].

    points: corners of the polygon, either way around [unit of the file].
    most: no more corners than this [count].
    size: of the drawing; what is off by less than a ten-thousandth of it is left out anyway [unit of the file].

    Sides are taken away, the least one first: its neighbors are drawn out until they meet where the area stays the same.

    >>> simplified(((0.0, 0.0), (2.0, 0.0), (4.0, 0.0), (4.0, 3.0), (0.0, 3.0)), 12, 4.0)
    ((0.0, 0.0), (4.0, 0.0), (4.0, 3.0), (0.0, 3.0))
    """
    if len(points) > _MANY:
        points = _evenly(points)
    if len(points) <= 4:
        return points
    plain = _Ring(points, False).down_to(most, _FINE * size)
    if not crosses_itself(plain):
        return plain
    more = _Ring(points, False).down_to(_FIRST * most, _FINE * size)
    careful = _Ring(more, True).down_to(most, _FINE * size)
    return careful if len(careful) <= most else plain


def _evenly(points: Polygon) -> Polygon:
    """Corners at even steps, drawn out from the middle so that the area stays."""
    step = -(-len(points) // _MANY)
    fewer = points[::step]
    share = area(points) / (area(fewer) or 1.0)
    grown = math.sqrt(share) if 0.9 < share < 1.1 else 1.0
    x, y = math.fsum(x for x, _ in fewer) / len(fewer), math.fsum(y for _, y in fewer) / len(fewer)
    return tuple((x + grown * (right - x), y + grown * (up - y)) for right, up in fewer)


class _Ring:
    """A polygon whose sides can be taken away."""

    def __init__(self, points: Sequence[Point], careful: bool):
        count = len(points)
        self._points, self._careful = list(points), careful
        self._after = [*range(1, count), 0]
        self._before = [count - 1, *range(count - 1)]
        self._stamp = [0] * count
        self._kept = set(range(count))
        self._queue = [entry for number in range(count) if (entry := self._entry(number)) is not None]
        self._waiting = {entry[2] for entry in self._queue}
        heapq.heapify(self._queue)

    def down_to(self, most: int, fine: float) -> Polygon:
        """What is left when sides are taken away [unit of the file].

        most: corners that may be left [count].
        fine: sides that make less than this are taken away in any case [unit of the file].
        """
        while self._queue and len(self._kept) > 4:
            off, _, number, stamp, place = heapq.heappop(self._queue)
            self._waiting.discard(number)
            if number not in self._kept:
                continue
            if stamp != self._stamp[number]:
                # What changed since is worked out only when its turn comes.
                self._push(number)
                continue
            if len(self._kept) <= most and off > fine:
                break
            if not self._careful or self._is_clear(number, place):
                self._take(number, place)
        return tuple(self._points[number] for number in sorted(self._kept))

    def _entry(self, number: int) -> tuple[float, float, int, int, Point] | None:
        """The side after a corner: how far off it would be without, and where its neighbors would meet."""
        points, two = self._points, self._after[number]
        p, a, b, q = points[self._before[number]], points[number], points[two], points[self._after[two]]
        place = _meeting(p, a, b, q)
        if place is None:
            return None
        off = max(_off(a, p, place), _off(b, place, q), _off(place, a, b) if place not in (a, b) else 0.0)
        return off, math.dist(a, b), number, self._stamp[number], place

    def _take(self, number: int, place: Point) -> None:
        gone = self._after[number]
        self._points[number] = place
        self._kept.discard(gone)
        self._after[number] = self._after[gone]
        self._before[self._after[gone]] = number
        before = self._before[number]
        for changed in (self._before[before], before, number, self._after[number]):
            self._stamp[changed] += 1
            if changed not in self._waiting:
                self._push(changed)

    def _push(self, number: int) -> None:
        entry = self._entry(number)
        if entry is not None:
            heapq.heappush(self._queue, entry)
            self._waiting.add(number)

    def _is_clear(self, number: int, place: Point) -> bool:
        """Would the two new sides cross no other?"""
        points, gone = self._points, self._after[number]
        before, after = self._before[number], self._after[gone]
        sides = ((points[before], place), (place, points[after]))
        here = after
        while here != before:
            there = self._after[here]
            if any(_cross(points[here], points[there], one, two) for one, two in sides
                   if points[here] not in (one, two) and points[there] not in (one, two)):
                return False
            here = there
        return True


def _meeting(p: Point, a: Point, b: Point, q: Point) -> Point | None:
    """Where the ways p–E–q meet so that they hold the area that p–a–b–q holds, E on one of the outer sides' lines.

    Source: triangle p E q has the signed area of p a b q, so E lies on a line along p–q.
    """
    along, up = q[0] - p[0], q[1] - p[1]
    base = math.hypot(along, up)
    if base == 0:
        return None
    twice = ((a[0] - p[0]) * (b[1] - p[1]) - (b[0] - p[0]) * (a[1] - p[1])
             + (b[0] - p[0]) * (q[1] - p[1]) - (q[0] - p[0]) * (b[1] - p[1]))
    side = -twice / base
    one, two = _height(a, p, along, up, base), _height(b, p, along, up, base)
    if one * two < 0:
        start, end = (p, a) if one * side > 0 else (q, b)
    else:
        start, end = (p, a) if abs(one) > abs(two) else (q, b)
    rise = _height(end, p, along, up, base)
    if abs(rise) <= 1e-12 * base:
        return a if abs(side) <= 1e-9 * base else None
    share = side / rise
    return start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1])


def _height(point: Point, p: Point, along: float, up: float, base: float) -> float:
    return (along * (point[1] - p[1]) - up * (point[0] - p[0])) / base


def _off(point: Point, one: Point, two: Point) -> float:
    """Distance of a point from a side."""
    along, up = two[0] - one[0], two[1] - one[1]
    square = along * along + up * up
    share = ((point[0] - one[0]) * along + (point[1] - one[1]) * up) / square if square else 0.0
    share = min(1.0, max(0.0, share))
    return math.hypot(point[0] - one[0] - share * along, point[1] - one[1] - share * up)


def crosses_itself(points: Polygon) -> bool:
    """Do two sides of a polygon that aren't neighbors meet [yes or no]?

    points: its corners [unit of the file].

    >>> crosses_itself(((0.0, 0.0), (4.0, 4.0), (4.0, 0.0), (0.0, 4.0)))
    True
    """
    sides = list(zip(points, (*points[1:], points[0])))
    return any(_cross(*sides[number], *sides[other]) for number in range(len(sides))
               for other in range(number + 2, len(sides) - (number == 0)))


def _cross(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Do two sides meet?"""
    if max(a[0], b[0]) < min(c[0], d[0]) or max(c[0], d[0]) < min(a[0], b[0]) \
            or max(a[1], b[1]) < min(c[1], d[1]) or max(c[1], d[1]) < min(a[1], b[1]):
        return False
    return _turn(a, b, c) * _turn(a, b, d) <= 0 and _turn(c, d, a) * _turn(c, d, b) <= 0


def _turn(a: Point, b: Point, c: Point) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
