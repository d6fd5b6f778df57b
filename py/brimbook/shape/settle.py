"""Points moved step by step so that the farthest spot of an outline comes as near as can be."""

import math

from brimbook.shape.inside import HAIR, inside
from brimbook.shape.least import least_step
from brimbook.shape.outline import Outline, Point, is_convex, sides_of
from brimbook.shape.pieces import pieces
from brimbook.shape.ways import ways
from brimbook.shape.worst import Spot, Spots

# The first step goes so far, as a share of the distance; steps shorter than the least share end it.
_FIRST, _SHORTEST = 0.2, 1e-6
_SPREADS = 8
# Of the far spots and of the walls near a point so many count in a step, for each point.
_MOST, _MOST_WALLS = 8, 5


class Ground:
    """An outline in pieces, and how far points keep from its wall and from each other."""

    def __init__(self, outline: Outline, from_wall: float, between: float):
        self.outline, self.from_wall, self.between = outline, from_wall, between
        self.cut = pieces(outline)
        self._is_convex = is_convex(outline)
        self._sides = [(*one, two[0] - one[0], two[1] - one[1], math.dist(one, two)) for one, two in sides_of(outline)]
        # Each side's line, as what is left of the clearance at the middle and how fast moves use it up.
        self._lines = [((wide * low - tall * left) / -long - from_wall, tall / long, -wide / long)
                       for left, low, wide, tall, long in self._sides]

    def spots(self, points: list[Point]) -> Spots:
        """The far spots for points that stand inside [spots].

        points: inside the outline [mm].
        """
        return Spots(self.cut, [ways(self.cut, point) for point in points])

    def clear(self, point: Point) -> Point | None:
        """A near place that keeps clear of the wall; none without room [mm].

        point: anywhere [mm].
        """
        x, y = point
        if self._is_convex and min([left - x * across - y * up for left, across, up in self._lines]) >= -HAIR:
            return point
        return inside(self.outline, point, self.from_wall)

    def walls(self, point: Point, step: float) -> list[tuple[float, float, float]]:
        """The nearest walls within a step: what is left of the clearance, and how fast moves use it up along x and y [mm].

        point: inside [mm].
        step: as far as it may move [mm].
        """
        x, y = point
        if self._is_convex:
            return sorted([(left - x * across - y * up, across, up) for left, across, up in self._lines
                           if left - x * across - y * up < step])[:_MOST_WALLS]
        near, limits = self.from_wall + step, []
        for (left, low, wide, tall, long), (_, across, up) in zip(self._sides, self._lines):
            share = ((x - left) * wide + (y - low) * tall) / (long * long)
            share = 0.0 if share < 0 else 1.0 if share > 1 else share
            right, above = left + share * wide - x, low + share * tall - y
            far = math.hypot(right, above)
            if far < near:
                is_corner = not 0 < share < 1 and far > HAIR
                limits.append((far - self.from_wall, *((right / far, above / far) if is_corner else (across, up))))
        return sorted(limits)[:_MOST_WALLS]


def settle(ground: Ground, points: list[Point], steps: int, gain: float) -> tuple[float, list[Point]]:
    """The distance of the farthest spot when so many steps are taken, and where the points then stand [mm].

    ground: the outline and what points keep [ground].
    points: that keep what they must [mm].
    steps: at most [count].
    gain: a step that promises less than this share of the distance is not taken [–].

    Source: each step solves the linear program of the far spots' distances as they grow with the points' moves.
    """
    spots, far = ground.spots(points), 0.0
    step = _FIRST * spots.far
    for _ in range(steps):
        far = spots.far
        near = sorted((spot for spot in spots.spots if spot.far > far - 2.83 * step), key=_by_distance)
        rising = [(spot.far, _slopes(spot.pulls)) for spot in near[-_MOST * (len(points) + 1):]]
        moved = least_step(rising, _limits(ground, points, step), 2 * len(points), step)
        if moved is None:
            break
        hoped = far - max(value + math.fsum(slope * moved[way] for way, slope in slopes.items()) for value, slopes in rising)
        if hoped < gain * far:
            break
        tried = _moved(ground, points, moved)
        after = ground.spots(tried) if tried else None
        gained = far - after.far if after else -1.0
        if gained > 0:
            points, spots = tried, after
        step = max(map(abs, moved)) * (2.0 if gained > 0.7 * hoped else 0.7 if gained > 0.2 * hoped else 0.3)
        if step < _SHORTEST * far:
            break
    return spots.far, points


def _by_distance(spot: Spot) -> float:
    return spot.far


def _slopes(pulls: tuple[tuple[int, float, float], ...]) -> dict[int, float]:
    slopes: dict[int, float] = {}
    for number, across, up in pulls:
        slopes[2 * number] = slopes.get(2 * number, 0.0) + across
        slopes[2 * number + 1] = slopes.get(2 * number + 1, 0.0) + up
    return slopes


def _moved(ground: Ground, points: list[Point], moved: list[float]) -> list[Point] | None:
    tried = [ground.clear((x + moved[2 * at], y + moved[2 * at + 1])) for at, (x, y) in enumerate(points)]
    return tried if has_gaps(ground, tried) else None


def has_gaps(ground: Ground, points: list[Point]) -> bool:
    """Whether points keep their distance from each other [yes or no].

    ground: the outline and what points keep [ground].
    points: anywhere [mm].
    """
    return all(math.dist(one, other) >= ground.between - HAIR for at, one in enumerate(points) for other in points[:at])


def _limits(ground: Ground, points: list[Point], step: float) -> list[tuple[float, dict[int, float]]]:
    limits = [(left, {2 * number: across, 2 * number + 1: up}) for number, point in enumerate(points)
              for left, across, up in ground.walls(point, 1.5 * step)]
    for other in range(len(points)):
        for one in range(other):
            apart, slopes = _apart(points, one, other)
            if apart < ground.between + 3 * step:
                limits.append((apart - ground.between, slopes))
    return limits


def _apart(points: list[Point], one: int, other: int) -> tuple[float, dict[int, float]]:
    """The distance of two points, and how fast moves use it up."""
    across, up = points[one][0] - points[other][0], points[one][1] - points[other][1]
    apart = math.hypot(across, up)
    across, up = (across / apart, up / apart) if apart > HAIR else (1.0, 0.0)
    return apart, {2 * one: -across, 2 * one + 1: -up, 2 * other: across, 2 * other + 1: up}


def spread(ground: Ground, points: list[Point]) -> list[Point] | None:
    """Points moved apart until they keep their distances; none when that fails [mm].

    ground: the outline and what points keep [ground].
    points: inside, clear of the wall [mm].
    """
    free = Ground(ground.outline, ground.from_wall, 0.0)
    for turn in range(_SPREADS):
        if has_gaps(ground, points):
            return points
        pairs = [_apart(points, one, other) for other in range(len(points)) for one in range(other)]
        # No farther than is short at first, lest a good layout is lost for a hair; farther where a wall is in the way.
        step = min(ground.between, 2**turn * (HAIR + max(ground.between - apart for apart, _ in pairs)))
        moved = least_step([(ground.between - apart, slopes) for apart, slopes in pairs],
                           _limits(free, points, step), 2 * len(points), step)
        if moved is None:
            return None
        points = [ground.clear((x + moved[2 * at], y + moved[2 * at + 1])) for at, (x, y) in enumerate(points)]
    return points if has_gaps(ground, points) else None
