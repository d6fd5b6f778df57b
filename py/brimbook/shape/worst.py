"""The spots of an outline that lie farthest from the nearest of some points, by the shortest way inside."""

import math
from collections.abc import Iterator
from dataclasses import dataclass

from brimbook.shape.flatten import turn
from brimbook.shape.outline import Point
from brimbook.shape.pieces import Pieces
from brimbook.shape.ways import START, Corner, Ways, around, clip, home_of, split

# Spots nearer than this share of the farthest can't become the farthest in one step.
NEARLY = 0.75
# Ways count as equally long within this share; the farthest distance is told within this share, and never too small.
_EVEN, TOLD = 1e-12, 5e-5
_MOST_CUTS = 4000


@dataclass(frozen=True)
class Spot:
    """A spot, its distance, and how fast that grows when a point moves: for each point by number, along x and y."""

    far: float
    place: Point
    pulls: tuple[tuple[int, float, float], ...]


@dataclass(frozen=True)
class _Last:
    """The last corner on the way to a part of the outline: where, whose way, which corner, and how long the way to it is."""

    at: Point
    source: int
    corner: int
    ahead: float

    def far(self, x: float, y: float) -> float:
        """Length of the way to a spot [mm].

        x: of the spot [mm].
        y: of the spot [mm].
        """
        return self.ahead + math.hypot(x - self.at[0], y - self.at[1])


class Spots:
    """The far spots for some points in an outline cut in pieces."""

    def __init__(self, cut: Pieces, found: list[Ways]):
        self._cut, self._found = cut, found
        self.spots: list[Spot] = []
        self._uneven: list[tuple[list[Corner], list[_Last]]] = []
        self._corners()
        for piece in range(len(cut.corners)):
            for part, lasts in self._parts(piece):
                self._look(part, lasts)
        if max(spot.far for spot in self.spots) < self.far * (1 - _EVEN):
            self.spots.append(self._alone(self.far, self.place))

    def _corners(self) -> None:
        fars = list(map(min, zip(*(ways.length for ways in self._found)))) if len(self._found) > 1 else self._found[0].length
        points = self._cut.points
        self.far = max(fars[:len(points)])
        self.place = points[fars.index(self.far)]
        for corner, place in enumerate(points):
            if fars[corner] >= NEARLY * self.far:
                source = next(number for number, ways in enumerate(self._found) if ways.length[corner] == fars[corner])
                self.spots.append(Spot(fars[corner], place, self._pull([(1.0, source, corner)], place)))

    def _alone(self, far: float, place: Point) -> Spot:
        """A spot as if it held still, with the nearest point pulling."""
        home = home_of(self._cut, place)
        last = [around(ways, self._cut, ways.funnels[home], place) for ways in self._found]
        fars = [ways.length[corner] + math.dist(ways.place(corner, self._cut), place)
                for ways, corner in zip(self._found, last)]
        source = fars.index(min(fars))
        return Spot(far, place, self._pull([(1.0, source, last[source])], place))

    def _note(self, far: float, place: Point) -> None:
        if far > self.far:
            self.far, self.place = far, place

    def _parts(self, piece: int) -> Iterator[tuple[list[Corner], list[_Last]]]:
        """Parts of a piece in which the last corner on each point's way is the same all over."""
        corners, beside = self._cut.corners[piece], self._cut.beside[piece]
        whole = [(*self._cut.points[corner], corner if beyond is None else -1) for corner, beyond in zip(corners, beside)]
        near = self._near(corners)
        parts: list[tuple[list[Corner], list[_Last]]] = [(whole, [])] if near else []
        for source, ways in near:
            parts = [(within, [*lasts, _Last(ways.place(corner, self._cut), source, corner, ways.length[corner])])
                     for part, lasts in parts for within, corner in split(ways, self._cut, piece, part)]
        return ((part, kept) for part, lasts in parts if (kept := self._in_play(part, lasts)))

    def _near(self, corners: tuple[int, ...]) -> list[tuple[int, Ways]]:
        """The points that can be nearest somewhere in a piece, with their ways; none when the piece holds no far spot.

        A way's length is largest at a corner of a piece, and changes by no more than one moves.
        """
        ways = list(enumerate(self._found))
        if len(self._cut.corners) == 1:
            return ways
        most = min(max(each.length[corner] for corner in corners) for _, each in ways)
        if most < NEARLY * self.far:
            return []
        first = self._cut.points[corners[0]]
        wide = max(math.dist(first, self._cut.points[corner]) for corner in corners)
        return [(source, each) for source, each in ways if each.length[corners[0]] - wide <= most]

    def _in_play(self, part: list[Corner], lasts: list[_Last]) -> list[_Last]:
        """Those that can be nearest somewhere in a part; none when the part holds no far spot."""
        if len(self._cut.corners) == 1:
            return lasts
        x, y, _ = part[0]
        wide = max(math.hypot(one - x, other - y) for one, other, _ in part)
        most = min(max(last.far(one, other) for one, other, _ in part) for last in lasts)
        if most < NEARLY * self.far:
            return []
        nearest: dict[Point, _Last] = {}
        for last in lasts:
            if last.far(x, y) - wide <= most and (last.at not in nearest or last.ahead < nearest[last.at].ahead):
                nearest[last.at] = last
        return list(nearest.values())

    def _look(self, part: list[Corner], lasts: list[_Last]) -> None:
        is_even = all(abs(last.ahead - lasts[0].ahead) <= _EVEN * self.far for last in lasts)
        if not is_even:
            self._uneven.append((part, lasts))
        for number, last in enumerate(lasts):
            cell = part
            for other in sorted(range(len(lasts)), key=lambda place: math.dist(lasts[place].at, last.at)):
                if other != number and cell:
                    cell = clip(cell, _nearer(cell, last, lasts[other]), -2 - other)
            before = cell[-1][2] if cell else 0
            for x, y, side in cell:
                one, before = before, side
                if one >= 0 and side >= 0:
                    continue
                far = last.far(x, y) if is_even else min(each.far(x, y) for each in lasts)
                self._note(far, (x, y))
                if far >= NEARLY * self.far and (one < -1 or side < -1):
                    self._spot(number, lasts, (x, y), one, side, [] if is_even else part)

    def _spot(self, number: int, lasts: list[_Last], place: Point, one: int, other: int, part: list[Corner]) -> None:
        """A corner of a cell, by the kinds of its two sides; told once, by its least number."""
        points, wall = self._cut.points, max(one, other)
        met = sorted({number, *(-2 - side for side in (one, other) if side < -1)})
        if met[0] != number or len(met) < 2 or (len(met) == 2 and wall < 0):
            return
        nearest = [lasts[each] for each in met]
        line = (points[wall], points[(wall + 1) % len(points)]) if len(met) == 2 else None
        if part:
            place = _evened(nearest, line, place, part)
        ways = [_way(last, place) for last in nearest]
        if line is None:
            shares = [_cross(ways[1], ways[2]), _cross(ways[2], ways[0]), _cross(ways[0], ways[1])]
        else:
            along = [(line[1][0] - line[0][0]) * way[0] + (line[1][1] - line[0][1]) * way[1] for way in ways]
            shares = [along[1], -along[0]]
        whole = math.fsum(shares)
        # No move of the spot makes all of its ways longer.
        if whole and min(share / whole for share in shares) > -1e-6:
            far = min(last.far(*place) for last in lasts)
            self._note(far, place)
            pulls = self._pull([(share / whole, last.source, last.corner) for share, last in zip(shares, nearest)], place)
            self.spots.append(Spot(far, place, pulls))

    def _pull(self, shares: list[tuple[float, int, int]], place: Point) -> tuple[tuple[int, float, float], ...]:
        pulls = []
        for share, source, corner in shares:
            ways = self._found[source]
            first = ways.first[corner]
            toward = place if first == START else self._cut.points[first]
            length = math.dist(toward, ways.start) or 1.0
            pulls.append((source, share * (ways.start[0] - toward[0]) / length, share * (ways.start[1] - toward[1]) / length))
        return tuple(pulls)

    def farthest(self) -> tuple[float, Point]:
        """The farthest spot's distance, never too small and too large by no more than TOLD, and where it is [mm].

        Where the cells of the points have straight sides the distance is exact. Elsewhere parts are halved until the
        bound by their corners is near enough: a distance from a point is largest at a corner of the part.
        """
        waiting, cuts = list(self._uneven), 0
        bound = self.far
        while waiting:
            part, lasts = waiting.pop()
            most = min(max(last.far(x, y) for x, y, _ in part) for last in lasts)
            cuts += 1
            if most <= self.far * (1 + TOLD) or cuts > _MOST_CUTS:
                bound = max(bound, most)
                continue
            for half in _halves(part):
                x, y = (math.fsum(corner[axis] for corner in half) / len(half) for axis in (0, 1))
                self._note(min(last.far(x, y) for last in lasts), (x, y))
                waiting.append((half, lasts))
        return max(bound, self.far), self.place


def _evened(nearest: list[_Last], line: tuple[Point, Point] | None, place: Point, part: list[Corner]) -> Point:
    """Where the ways are equally long, near a place where they nearly are and in its part; on a line, if one is given."""
    x, y = place
    for _ in range(3):
        ways = [_way(last, (x, y)) for last in nearest]
        rows = [(ways[0][0] - way[0], ways[0][1] - way[1], nearest[0].far(x, y) - last.far(x, y))
                for way, last in zip(ways[1:], nearest[1:])]
        if line is not None:
            (left, low), (right, high) = line
            rows.append((high - low, left - right, (x - left) * (high - low) - (y - low) * (right - left)))
        (a, b, one), (c, d, two) = rows
        bottom = a * d - b * c
        if abs(bottom) < 1e-9:
            return place
        x, y = x - (one * d - b * two) / bottom, y - (a * two - c * one) / bottom
    corners = [(one, other) for one, other, _ in part]
    is_in = all(turn(one, two, (x, y)) >= -1e-6 for one, two in zip(corners, [*corners[1:], corners[0]]))
    return (x, y) if is_in else place


def _cross(one: Point, other: Point) -> float:
    return one[0] * other[1] - one[1] * other[0]


def _way(last: _Last, place: Point) -> Point:
    length = math.dist(place, last.at) or 1.0
    return ((place[0] - last.at[0]) / length, (place[1] - last.at[1]) / length)


def _nearer(cell: list[Corner], one: _Last, other: _Last) -> list[float]:
    """Below 0 at the corners that are nearer to one than to the other."""
    if one.ahead == other.ahead:
        across, up = other.at[0] - one.at[0], other.at[1] - one.at[1]
        middle = ((other.at[0] + one.at[0]) * across + (other.at[1] + one.at[1]) * up) / 2
        return [x * across + y * up - middle for x, y, _ in cell]
    return [one.far(x, y) - other.far(x, y) for x, y, _ in cell]


def _halves(part: list[Corner]) -> list[list[Corner]]:
    low, high = ([pick(corner[axis] for corner in part) for axis in (0, 1)] for pick in (min, max))
    axis = 0 if high[0] - low[0] >= high[1] - low[1] else 1
    heights = [corner[axis] - (low[axis] + high[axis]) / 2 for corner in part]
    return [half for half in (clip(part, heights, -1), clip(part, [-height for height in heights], -1)) if half]
