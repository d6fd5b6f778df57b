"""Points moved step by step so that the farthest spot of an outline comes as near as can be."""

import math
from dataclasses import dataclass

from brimbook.shape.inside import HAIR, inside
from brimbook.shape.least import least_step
from brimbook.shape.outline import Outline, Point, contains, is_convex, sides_of
from brimbook.shape.pieces import Pieces, pieces
from brimbook.shape.ways import ways
from brimbook.shape.worst import Spots

# A step that promises less than this share is not worth taking; steps shorter than this share of the distance end it.
_GAIN, _SHORTEST = 1e-6, 1e-6
_FIRST, _SPREADS = 0.4, 8


@dataclass(frozen=True)
class Ground:
    """An outline in pieces, and how far points keep from its wall and from each other."""

    outline: Outline
    from_wall: float
    between: float

    @property
    def cut(self) -> Pieces:
        """The outline in pieces [pieces]."""
        return pieces(self.outline)

    def spots(self, points: list[Point]) -> Spots:
        """The far spots for points that stand inside [spots].

        points: inside the outline [mm].
        """
        return Spots(self.cut, [ways(self.cut, point) for point in points])


def settle(ground: Ground, points: list[Point], steps: int) -> tuple[float, list[Point]]:
    """The distance of the farthest spot when so many steps are taken, and where the points then stand [mm].

    ground: the outline and what points keep [ground].
    points: that keep what they must [mm].
    steps: at most [count].

    Source: each step solves the linear program of the far spots' distances as they grow with the points' moves.
    """
    spots, far = ground.spots(points), 0.0
    step = _FIRST * spots.far
    for _ in range(steps):
        far = spots.far
        rising = [(spot.far, _slopes(spot.pulls)) for spot in spots.spots if spot.far > far - 2.83 * step]
        moved = least_step(rising, _limits(ground, points, step), 2 * len(points), step)
        if moved is None:
            break
        hoped = far - max(value + sum(slope * moved[way] for way, slope in slopes.items()) for value, slopes in rising)
        if hoped < _GAIN * far:
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


def _slopes(pulls: tuple[tuple[int, float, float], ...]) -> dict[int, float]:
    slopes: dict[int, float] = {}
    for number, across, up in pulls:
        slopes[2 * number] = slopes.get(2 * number, 0.0) + across
        slopes[2 * number + 1] = slopes.get(2 * number + 1, 0.0) + up
    return slopes


def _moved(ground: Ground, points: list[Point], moved: list[float]) -> list[Point] | None:
    tried = [(x + moved[2 * at], y + moved[2 * at + 1]) for at, (x, y) in enumerate(points)]
    if not is_convex(ground.outline):
        tried = [inside(ground.outline, point, ground.from_wall) for point in tried]
    return tried if has_gaps(ground, tried) else None


def has_gaps(ground: Ground, points: list[Point]) -> bool:
    """Whether points keep their distance from each other [yes or no].

    ground: the outline and what points keep [ground].
    points: anywhere [mm].
    """
    return all(math.dist(one, other) >= ground.between - HAIR for at, one in enumerate(points) for other in points[:at])


def _limits(ground: Ground, points: list[Point], step: float) -> list[tuple[float, dict[int, float]]]:
    limits = [limit for number, point in enumerate(points) for limit in _walls(ground, number, point, 1.5 * step)]
    for other in range(len(points)):
        for one in range(other):
            apart, slopes = _apart(points, one, other)
            if apart < ground.between + 3 * step:
                limits.append((apart - ground.between, slopes))
    return limits


def _walls(ground: Ground, number: int, point: Point, step: float) -> list[tuple[float, dict[int, float]]]:
    x, y = point
    near, limits = ground.from_wall + step, []
    for (left, low), (right, high) in sides_of(ground.outline):
        wide, tall = right - left, high - low
        share = ((x - left) * wide + (y - low) * tall) / (wide * wide + tall * tall)
        share = 0.0 if share < 0 else 1.0 if share > 1 else share
        across, up = left + share * wide - x, low + share * tall - y
        far = math.hypot(across, up)
        if far < near:
            if 0 < share < 1 or far < HAIR:
                length = math.hypot(wide, tall)
                across, up, over = tall / length, -wide / length, 1.0
            else:
                over = far
            limits.append((far - ground.from_wall, {2 * number: across / over, 2 * number + 1: up / over}))
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
    for _ in range(_SPREADS):
        if has_gaps(ground, points):
            return points
        pairs = [_apart(points, one, other) for other in range(len(points)) for one in range(other)]
        step = ground.between
        moved = least_step([(ground.between - apart, slopes) for apart, slopes in pairs],
                           _limits(free, points, step), 2 * len(points), step)
        if moved is None:
            return None
        points = [inside(ground.outline, (x + moved[2 * at], y + moved[2 * at + 1]), ground.from_wall)
                  for at, (x, y) in enumerate(points)]
    return points if has_gaps(ground, points) else None
